package slackchat_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"net/http"
	"net/http/httptest"
	"slices"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"lazyhand/bot/desk"
	"lazyhand/bot/practice"
	"lazyhand/bot/slackchat"
)

// reply is what the bot says about a report, in all its parts.
func reply(key, thread string) desk.Post {
	return desk.Post{Key: key, Kind: desk.Say, Channel: field, Thread: thread, Body: desk.Body{
		Lead: "123 Elm St: 92 psi at the rear bibb is above 80", Heard: "92 psi, rear bibb, heater idle",
		Facts: []string{"The regulator is 12 years old", "Up 6 psi since March"}, Next: []string{"Read again with the heater idle"},
		Cautions: []string{"Keep clear of the relief valve: it can scald"},
		Buttons:  []desk.Button{{Name: "undo", Label: "Take it back", Value: "1"}, {Name: "elsewhere", Label: "Not this house", Value: "1"}},
	}}
}

func TestAPostCarriesItsWholeTextItsKeyAndItsButtons(t *testing.T) {
	s := open(t, practice.Options{})
	ts := s.say("rosa", "field", "", "92 rear, 123 Elm")
	p := reply("reply:1", ts)
	ref, err := s.bot.Post(t.Context(), p)
	must(t, err)
	m := s.Thread("field", ts)[1]
	for _, part := range slices.Concat([]string{p.Body.Lead, p.Body.Heard}, p.Body.Facts, p.Body.Next, p.Body.Cautions) {
		if !strings.Contains(m.Text, part) {
			t.Errorf("the text lacks %q", part)
		}
	}
	got, found, err := s.bot.Find(t.Context(), p)
	if err != nil || !found || got != ref {
		t.Errorf("found %v %q %v, want %q", found, got, err, ref)
	}
	if _, found, _ := s.bot.Find(t.Context(), reply("reply:2", ts)); found {
		t.Error("a post that was never said is found")
	}
	s.until("the message reached the desk", func() bool { return len(s.messages()) == 1 })
	must(t, s.Press(t.Context(), practice.Press{User: "rosa", Channel: "field", TS: ref, ActionID: "desk:elsewhere:1"}))
	s.until("the button reached the desk", func() bool { return len(s.messages()) == 2 })
	b := s.messages()[1]
	if b.Kind != desk.Pressed || b.Button != "elsewhere" || b.Value != "1" || b.Thread != ts || b.Author != rosa || b.Channel != field {
		t.Errorf("pressed: %+v", b)
	}
}

func TestAPostInAChannelIsFoundToo(t *testing.T) {
	s := open(t, practice.Options{})
	p := desk.Post{Key: "alert:1:1", Kind: desk.Say, Channel: dispatch, Body: desk.Body{Lead: "123 Elm St: 160 psi"}}
	ref, err := s.bot.Post(t.Context(), p)
	must(t, err)
	for i := range 250 { // more than a page
		s.say("dee", "dispatch", "", fmt.Sprint("on my way ", i))
	}
	if got, found, err := s.bot.Find(t.Context(), p); err != nil || !found || got != ref {
		t.Errorf("found %v %q %v", found, got, err)
	}
}

func TestANewWordingTakesThePlaceOfTheOld(t *testing.T) {
	s := open(t, practice.Options{})
	p := desk.Post{Key: "alert:1:1", Kind: desk.Say, Channel: dispatch, Body: desk.Body{Lead: "raised", Buttons: []desk.Button{{Name: "claim", Label: "I take it", Value: "1"}}}}
	ref, err := s.bot.Post(t.Context(), p)
	must(t, err)
	_, err = s.bot.Post(t.Context(), desk.Post{Key: "alert:1:2", Kind: desk.Change, Channel: dispatch, Target: "alert:1:1", Ref: ref, Body: desk.Body{Lead: "claimed by Dee"}})
	must(t, err)
	all := s.Messages("dispatch")
	if len(all) != 1 || all[0].Text != "claimed by Dee" || strings.Contains(string(mustJSON(t, all[0].Blocks)), "button") {
		t.Errorf("got %+v", all)
	}
	if got, found, err := s.bot.Find(t.Context(), p); err != nil || !found || got != ref {
		t.Errorf("the changed post is not found by its name: %v %v", found, err)
	}
}

func mustJSON(t *testing.T, v any) []byte {
	t.Helper()
	b, err := json.Marshal(v)
	must(t, err)
	return b
}

func TestOneMarkStandsAtATime(t *testing.T) {
	s := open(t, practice.Options{})
	ts := s.say("rosa", "field", "", "92 rear")
	mark := func(m desk.Mark) {
		t.Helper()
		_, err := s.bot.Post(t.Context(), desk.Post{Key: "react:1:" + string(m), Kind: desk.React, Channel: field, Target: ts, Ref: ts, Mark: m})
		must(t, err)
	}
	names := func() (out []string) {
		for _, r := range s.Reactions("field", ts) {
			out = append(out, r.Name)
		}
		return out
	}
	mark(desk.MarkQuestion)
	mark(desk.MarkQuestion) // again, after a lost answer
	if got := names(); !slices.Equal(got, []string{"grey_question"}) {
		t.Errorf("got %v", got)
	}
	mark(desk.MarkStored)
	if got := names(); !slices.Equal(got, []string{"white_check_mark"}) {
		t.Errorf("got %v", got)
	}
	// A bot that was started anew does not know which mark stands.
	must(t, s.stop())
	must(t, s.Advance(time.Minute))
	s.join()
	mark(desk.MarkSetAside)
	if got := names(); !slices.Equal(got, []string{"inbox_tray"}) {
		t.Errorf("after a restart: %v", got)
	}
}

func TestWhatPeopleTypedCanNeitherMentionNorLink(t *testing.T) {
	s := open(t, practice.Options{})
	evil := "<!channel> <@U00000004> <https://example.com|123 Elm> *x* & <!subteam^S00000001>"
	p := reply("reply:1", "")
	p.Body.Lead, p.Body.Facts, p.Body.Buttons[0].Label = evil, []string{evil}, evil
	_, err := s.bot.Post(t.Context(), p)
	must(t, err)
	m := s.Messages("field")[0]
	if strings.ContainsAny(m.Text, "<>") || !strings.Contains(m.Text, "&lt;!channel&gt;") {
		t.Errorf("the text is %q", m.Text)
	}
	var walk func(v any)
	walk = func(v any) {
		switch v := v.(type) {
		case map[string]any:
			switch v["type"] {
			case "mrkdwn", "markdown", "user", "broadcast", "usergroup", "link":
				t.Errorf("a block that can mention or link: %v", v)
			}
			for _, x := range v {
				walk(x)
			}
		case []any:
			for _, x := range v {
				walk(x)
			}
		}
	}
	var blocks any
	must(t, json.Unmarshal(mustJSON(t, m.Blocks), &blocks))
	walk(blocks)
}

func TestLongPostsAreShortenedWhereItHurtsLeast(t *testing.T) {
	s := open(t, practice.Options{})
	p := reply("reply:1", "")
	for i := range 400 {
		p.Body.Facts = append(p.Body.Facts, fmt.Sprintf("2026-01-01 visit %d: <92> psi & more", i))
	}
	_, err := s.bot.Post(t.Context(), p)
	must(t, err)
	m := s.Messages("field")[0]
	if n := utf8.RuneCountInString(m.Text); n > 4000 || n < 3000 || !strings.Contains(m.Text, p.Body.Cautions[0]) || !strings.Contains(m.Text, p.Body.Lead) || !strings.Contains(m.Text, "more)") {
		t.Errorf("%d characters: %.200s", n, m.Text)
	}
}

func TestRefusalsOfThePlatform(t *testing.T) {
	s := open(t, practice.Options{})
	post := func(channel string) error {
		_, err := s.bot.Post(t.Context(), desk.Post{Key: "reply:1", Kind: desk.Say, Channel: channel, Body: desk.Body{Lead: "x"}})
		return err
	}
	var no *desk.Refusal
	if err := post("C404"); !errors.As(err, &no) || !no.Final || !strings.Contains(no.Why, "check its id") {
		t.Errorf("no such channel: %v", err)
	}
	s.Remove("dispatch", s.app.Name)
	if err := post(dispatch); !errors.As(err, &no) || !no.Final || !strings.Contains(no.Why, "/invite") {
		t.Errorf("not invited: %v", err)
	}
	s.SetFaults(practice.Faults{Method: "chat.postMessage", RateLimit: 1, RetryAfter: 7 * time.Second})
	if err := post(field); !errors.As(err, &no) || no.Final || no.After != 7*time.Second {
		t.Errorf("429: %v", err)
	}
	for what, f := range map[string]practice.Faults{"503": {ServerError: 1}, "a lost answer": {LostAnswer: 1}, "a lost call": {LostCall: 1}} {
		f.Method = "chat.postMessage"
		s.SetFaults(f)
		if err := post(field); err == nil || errors.As(err, &no) {
			t.Errorf("%s leaves it open whether it was said: %v", what, err)
		}
	}
	s.Revoke(s.app.BotToken)
	if err := post(field); !errors.As(err, &no) || no.Final || no.After < time.Minute {
		t.Errorf("a revoked token waits for a new one: %v", err)
	}
	away := slackchat.New(slackchat.Options{APIURL: "http://127.0.0.1:1/", BotToken: "xoxb-1"})
	if _, err := away.Post(t.Context(), reply("reply:1", "")); !errors.As(err, &no) || no.Final || no.After == 0 {
		t.Errorf("nobody there: %v", err)
	}
}

// A layout that the platform does not take is said as plain text; one that is
// too long is said shorter.
func TestWhatIsNotTakenIsSaidMorePlainly(t *testing.T) {
	for _, tt := range []struct {
		file string
		want func(first, then http.Request) string
	}{
		{"error-invalid_blocks.json", func(_, then http.Request) string {
			if then.FormValue("blocks") != "" {
				return "blocks again"
			}
			return ""
		}},
		{"error-msg_blocks_too_long.json", func(first, then http.Request) string {
			if len(then.FormValue("text")) >= len(first.FormValue("text")) {
				return "not shorter"
			}
			return ""
		}},
	} {
		body := map[string]string{"error-invalid_blocks.json": `{"ok":false,"error":"invalid_blocks","response_metadata":{"messages":["[ERROR] must be less than 151 characters [json-pointer:/blocks/0/text/text]"]}}`,
			"error-msg_blocks_too_long.json": `{"ok":false,"error":"msg_blocks_too_long"}`}[tt.file]
		var calls []http.Request
		server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
			must(t, r.ParseForm())
			calls = append(calls, *r)
			if len(calls) == 1 {
				fmt.Fprint(w, body)
				return
			}
			fmt.Fprint(w, `{"ok":true,"channel":"C1","ts":"1764072000.000100"}`)
		}))
		s := slackchat.New(slackchat.Options{APIURL: server.URL + "/", BotToken: "xoxb-1"})
		p := reply("reply:1", "")
		for i := range 100 {
			p.Body.Facts = append(p.Body.Facts, fmt.Sprintf("visit %d: 92 psi at the rear bibb", i))
		}
		ref, err := s.Post(t.Context(), p)
		server.Close()
		if err != nil || ref == "" || len(calls) != 2 {
			t.Fatalf("%s: %q %v, %d calls", tt.file, ref, err, len(calls))
		}
		if wrong := tt.want(calls[0], calls[1]); wrong != "" {
			t.Errorf("%s: %s", tt.file, wrong)
		}
		if calls[1].FormValue("unfurl_links") != "false" || calls[1].FormValue("unfurl_media") != "false" {
			t.Error("links would be unfurled")
		}
	}
}

func TestPostsInOneChannelKeepTheirPace(t *testing.T) {
	s := open(t, practice.Options{}, func(o *slackchat.Options) { o.Pace = 60 * time.Millisecond })
	start := time.Now()
	for i := range 4 {
		p := reply(fmt.Sprintf("reply:%d", i), "")
		_, err := s.bot.Post(t.Context(), p)
		must(t, err)
	}
	if d := time.Since(start); d < 180*time.Millisecond {
		t.Errorf("four posts in %v", d)
	}
}

func TestDirectMessagesThatTheBotBegins(t *testing.T) {
	s := open(t, practice.Options{})
	p := desk.Post{Key: "remind:1", Kind: desk.Say, Channel: "@" + rosa, Body: desk.Body{Lead: "Due today"}}
	ref, err := s.bot.Post(t.Context(), p)
	must(t, err)
	dm := s.DM("rosa", s.app.ID)
	if all := s.Messages(dm); len(all) != 1 || all[0].TS != ref {
		t.Fatalf("got %+v", all)
	}
	if got, found, err := s.bot.Find(t.Context(), p); err != nil || !found || got != ref {
		t.Errorf("found %v %q %v", found, got, err)
	}
	p.Kind, p.Ref, p.Target, p.Body.Lead = desk.Change, ref, "remind:1", "Done"
	_, err = s.bot.Post(t.Context(), p)
	must(t, err)
	if all := s.Messages(dm); all[0].Text != "Done" {
		t.Errorf("got %+v", all)
	}
	s.say("rosa", dm, "", "92 rear, 123 Elm")
	s.until("direct messages are heard", func() bool { return len(s.messages()) == 1 })
	if m := s.messages()[0]; !m.Direct || m.Channel != dm {
		t.Errorf("got %+v", m)
	}
}
