package slackchat_test

import (
	"strings"
	"testing"

	"lazyhand/bot/desk"
	"lazyhand/bot/practice"
	"lazyhand/bot/slackchat"
)

func TestACommandDoesWhatAMessageDoes(t *testing.T) {
	s := open(t, practice.Options{})
	must(t, s.Slash(t.Context(), "rosa", "field", "/lazyhand", "history 123 Elm & Oak <!here>"))
	got := s.messages()
	if len(got) != 1 || got[0].Author != rosa || !got[0].Mention || got[0].Kind != desk.Said || got[0].Channel != field {
		t.Fatalf("got %+v", got)
	}
	said := s.Messages("field")
	if len(said) != 1 || said[0].TS != got[0].TS || !strings.Contains(said[0].Text, "history 123 Elm &amp; Oak !here") || got[0].Thread != said[0].TS {
		t.Errorf("the channel shows %+v", said)
	}
	must(t, s.Slash(t.Context(), "rosa", "field", "/lazyhand", ""))
	if got = s.messages(); len(got) != 2 || got[1].Text != "help" {
		t.Errorf("an empty command: %+v", got)
	}
	s.settled()
	if got = s.messages(); len(got) != 2 {
		t.Errorf("the bot heard what it said for somebody: %+v", got)
	}
}

func TestACommandWhereTheBotIsNotGoesToDirectMessages(t *testing.T) {
	s := open(t, practice.Options{})
	s.Remove("team", s.app.Name)
	must(t, s.Slash(t.Context(), "rosa", "team", "/lazyhand", "due"))
	got := s.messages()
	if len(got) != 1 || !got[0].Direct || got[0].Channel != s.DM("rosa", s.app.ID) {
		t.Errorf("got %+v", got)
	}
}

func TestACommandThatCannotBeKeptSaysSo(t *testing.T) {
	s := open(t, practice.Options{})
	s.mu.Lock()
	s.fail = 1
	s.mu.Unlock()
	must(t, s.Slash(t.Context(), "rosa", "field", "/lazyhand", "due"))
	if n := s.whispered("rosa", "nothing was kept"); n != 1 {
		t.Errorf("%d hints", n)
	}
}

func TestAReportByForm(t *testing.T) {
	s := open(t, practice.Options{})
	must(t, s.Slash(t.Context(), "rosa", "field", "/lazyhand", "form"))
	views := s.Views("rosa")
	if len(views) != 1 {
		t.Fatalf("got %+v", views)
	}
	values := map[string]map[string]practice.Entered{
		"house": {"house": {"123  Elm St <!here>"}}, "pressure": {"pressure": {"92.5"}}, "point": {"point": {"0"}}, "heater": {"heater": {"0"}}, "note": {"note": {"relief valve drips"}},
	}
	out, err := s.Submit(t.Context(), "rosa", views[0].ID, values)
	if err != nil || len(out.Errors) > 0 || out.Open != "" {
		t.Fatalf("%+v %v", out, err)
	}
	got := s.messages()
	if len(got) != 1 || got[0].Text != "92.5 psi rear bibb, heater idle, 123 Elm St &lt;!here&gt;. relief valve drips" || got[0].Author != rosa || got[0].Channel != field {
		t.Errorf("got %+v", got)
	}
	if m := s.Messages("field"); len(m) != 1 || strings.Contains(m[0].Text, "<") || !strings.Contains(m[0].Text, "by form") {
		t.Errorf("the channel shows %+v", m)
	}
}

func TestAFormSaysWhichFieldIsWrong(t *testing.T) {
	s := open(t, practice.Options{})
	must(t, s.Slash(t.Context(), "rosa", "field", "/lazyhand", "form"))
	id := s.Views("rosa")[0].ID
	out, err := s.Submit(t.Context(), "rosa", id, map[string]map[string]practice.Entered{
		"house": {"house": {"   "}}, "pressure": {"pressure": {"92"}}, "point": {"point": {"0"}}})
	if err != nil || !strings.Contains(out.Errors["house"], "such as 123 Elm St") && out.Errors["house"] == "" || out.Open != id || len(s.messages()) != 0 {
		t.Errorf("%+v %v", out, err)
	}
}

func TestReportThisMessage(t *testing.T) {
	s := open(t, practice.Options{})
	s.Invite("team", s.app.Name)
	ts := s.say("beto", "team", "", "92 rear & idle at <https://maps.example.com/x>, 123 Elm")
	must(t, s.Shortcut(t.Context(), "dee", "team", ts, slackchat.ShortcutMessage))
	v := s.Views("dee")
	if len(v) != 1 || !strings.Contains(string(v[0].Blocks), "92 rear \\u0026 idle") {
		t.Fatalf("the form is %s", v[0].Blocks)
	}
	_, err := s.Submit(t.Context(), "dee", v[0].ID, map[string]map[string]practice.Entered{"text": {"text": {"92 rear bibb, heater idle, 123 Elm"}}})
	must(t, err)
	s.until("it is reported", func() bool { return s.count("taken: asked by form") == 1 })
	var m desk.Message
	for _, x := range s.messages() {
		if x.Text == "92 rear bibb, heater idle, 123 Elm" {
			m = x
		}
	}
	if m.Thread != ts || m.Author != s.userID("dee") || !m.Mention {
		t.Errorf("got %+v", m)
	}
}

func TestAReportIsPutRightByForm(t *testing.T) {
	s := open(t, practice.Options{})
	ts := s.say("rosa", "field", "", "92 rear, 123 Elm")
	ref, err := s.bot.Post(t.Context(), desk.Post{Key: "reply:1", Kind: desk.Say, Channel: field, Thread: ts,
		Body: desk.Body{Lead: "123 Elm: 92 psi", Buttons: []desk.Button{{Name: "correct", Label: "Put right", Value: "1"}}}})
	must(t, err)
	must(t, s.Press(t.Context(), practice.Press{User: "rosa", Channel: "field", TS: ref, ActionID: "desk:correct:0"}))
	s.until("the form holds what was written", func() bool {
		v := s.Views("rosa")
		return len(v) == 1 && strings.Contains(string(v[0].Blocks), "92 rear, 123 Elm")
	})
	_, err = s.Submit(t.Context(), "rosa", s.Views("rosa")[0].ID, map[string]map[string]practice.Entered{"text": {"text": {"82 rear, 123 Elm"}}})
	must(t, err)
	s.until("the desk has it", func() bool { return len(s.messages()) == 2 })
	if m := s.messages()[1]; m.Kind != desk.Pressed || m.Button != "correct" || m.Value != "1" || m.Text != "82 rear, 123 Elm" || m.Thread != ts || m.Author != rosa {
		t.Errorf("got %+v", m)
	}
}

func TestButtonsAndFormsOfOthersAreIgnoredByName(t *testing.T) {
	s := open(t, practice.Options{})
	must(t, s.Slash(t.Context(), "rosa", "field", "/lazyhand", "form"))
	must(t, s.CloseView(t.Context(), "rosa", s.Views("rosa")[0].ID))
	if len(s.messages()) != 0 {
		t.Errorf("got %+v", s.messages())
	}
}
