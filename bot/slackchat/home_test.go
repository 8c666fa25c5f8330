package slackchat_test

import (
	"bytes"
	"context"
	"fmt"
	"image"
	"image/png"
	"strings"
	"testing"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/bot/practice"
	"lazyhand/bot/slackchat"
)

// fullHome is a home page with all that it can hold.
func fullHome(person string) desk.Home {
	var lines []string
	for i := range 20 {
		lines = append(lines, fmt.Sprintf("%d Elm St: <!here> & %s", i, strings.Repeat("a long line ", 300)))
	}
	return desk.Home{Person: person, Role: desk.Dispatcher,
		Alerts: desk.Section{Title: "Open alerts", Lines: lines}, Due: desk.Section{Title: "Due this week", Empty: "Nothing"},
		FollowUps: desk.Section{Title: "My follow-ups", Lines: lines}, Reports: desk.Section{Title: "My last reports", Lines: lines}, Worst: desk.Section{Title: strings.Repeat("Worst valves ", 30), Lines: lines}}
}

func TestTheHomeTab(t *testing.T) {
	s := open(t, practice.Options{}, func(o *slackchat.Options) {
		o.Home = func(_ context.Context, person string, _ time.Time) (desk.Home, error) { return fullHome(person), nil }
	})
	must(t, s.OpenHome("dee", s.app.ID, "messages"))
	s.settled()
	if _, shown := s.Home(s.app.ID, "dee"); shown {
		t.Error("published for another tab")
	}
	start := time.Now()
	must(t, s.OpenHome("dee", s.app.ID, "home"))
	s.until("it is shown", func() bool { _, shown := s.Home(s.app.ID, "dee"); return shown })
	if d := time.Since(start); d > time.Second {
		t.Errorf("it took %v", d)
	}
	v, _ := s.Home(s.app.ID, "dee")
	for _, want := range []string{"Open alerts", "Nothing", "My last reports"} {
		if !strings.Contains(string(v.Blocks), want) {
			t.Errorf("%q is missing", want)
		}
	}
	must(t, s.Press(t.Context(), practice.Press{User: "dee", ViewID: v.ID, ActionID: "open_report_form"}))
	views := s.Views("dee")
	if len(views) != 1 {
		t.Fatalf("the form: %+v", views)
	}
	_, err := s.Submit(t.Context(), "dee", views[0].ID, map[string]map[string]practice.Entered{"house": {"house": {"9 Oak Ct"}}, "pressure": {"pressure": {"61"}}, "point": {"point": {"3"}}})
	must(t, err)
	if got := s.messages(); len(got) != 1 || got[0].Channel != field || got[0].Text != "61 psi laundry tap, 9 Oak Ct" {
		t.Errorf("got %+v", got)
	}
}

// A button of the home tab, or of a direct message, is answered in direct
// messages.
func TestAButtonWithoutAChannelIsAnsweredInDirectMessages(t *testing.T) {
	p := newPeer(t)
	got := make(chan desk.Message, 1)
	p.run(t, p.options(), func(_ context.Context, m desk.Message) error { got <- m; return nil })
	p.out <- []byte(`{"envelope_id":"e1","type":"interactive","payload":{"type":"block_actions","user":{"id":"U1"},"container":{"type":"view","view_id":"V1"},"view":{"id":"V1","type":"home"},"actions":[{"action_id":"desk:done:0","type":"button","value":"7","action_ts":"1764072000.000100"}]}}`)
	m := <-got
	if m.Channel != "@U1" || !m.Direct || m.Button != "done" || m.Value != "7" || m.Kind != desk.Pressed {
		t.Errorf("got %+v", m)
	}
}

func TestAPlotIsDrawnByThePlatformWhereItFits(t *testing.T) {
	s := open(t, practice.Options{})
	c := &desk.Chart{Title: "12 Alder St", Categories: []string{"2026-01-05", "2026-04-02", "2026-06-15"}, Series: []desk.Series{
		{Name: "House, psi", Values: []float64{62, 71, 84}}, {Name: "max 80", Values: []float64{80, 80, 80}}, {Name: "min 40", Values: []float64{40, 40, 40}}}}
	var b bytes.Buffer
	must(t, png.Encode(&b, image.NewRGBA(image.Rect(0, 0, 2, 2))))
	pic := &desk.Picture{Name: "plot.png", Alt: "12 Alder St: 62, 71, 84 psi", PNG: b.Bytes()}
	p := desk.Post{Key: "reply:1", Kind: desk.Say, Channel: field, Body: desk.Body{Lead: "12 Alder St: rises 22 psi a year", Chart: c, Picture: pic}}
	_, err := s.bot.Post(t.Context(), p)
	must(t, err)
	if m := s.Messages("field"); len(m) != 1 || !strings.Contains(string(m[0].Blocks), "data_visualization") {
		t.Fatalf("got %+v", m)
	}

	// Too many days for the platform: the picture comes into the thread.
	c.Categories = nil
	for i := range 30 {
		c.Categories = append(c.Categories, fmt.Sprintf("2026-01-%02d", i+1))
	}
	for i := range c.Series {
		c.Series[i].Values = make([]float64, 30)
	}
	p.Key = "reply:2"
	p.Body.File = &desk.File{Name: "sheet.pdf", Title: "For the customer", Data: []byte("%PDF-1.4")}
	s.SetFaults(practice.Faults{Method: "files.completeUploadExternal", RateLimit: 1, RetryAfter: time.Second})
	ref, err := s.bot.Post(t.Context(), p)
	must(t, err)
	s.until("the picture and the paper are in the thread", func() bool { return len(s.Thread("field", ref)) == 3 })
	th := s.Thread("field", ref)
	if f := th[1].Files; len(f) != 1 || f[0].AltText != pic.Alt || f[0].MIME != "image/png" || !bytes.Equal(f[0].Bytes, pic.PNG) {
		t.Errorf("the picture is %+v", f)
	}
	if f := th[2].Files; len(f) != 1 || f[0].Name != "sheet.pdf" {
		t.Errorf("the paper is %+v", f)
	}
	if strings.Contains(string(th[0].Blocks), "data_visualization") {
		t.Error("drawn although it does not fit")
	}
}

func TestOnlyWhomTheDeskCallsIsMentioned(t *testing.T) {
	s := open(t, practice.Options{})
	p := desk.Post{Key: "alert:1:1", Kind: desk.Say, Channel: dispatch, Body: desk.Body{Lead: "<@U00000001> 160 psi", Calls: []string{"U00000004", "S00000002"}}}
	_, err := s.bot.Post(t.Context(), p)
	must(t, err)
	m := s.Messages("dispatch")[0]
	if m.Text != "<@U00000004> <!subteam^S00000002> &lt;@U00000001&gt; 160 psi" {
		t.Errorf("the text is %q", m.Text)
	}
	if b := string(m.Blocks); !strings.Contains(b, `"user_id":"U00000004"`) || !strings.Contains(b, `"usergroup_id":"S00000002"`) || strings.Contains(b, `"user_id":"U00000001"`) {
		t.Errorf("the blocks are %s", b)
	}
}
