package main

import (
	"context"
	"errors"
	"io"
	"net/http/httptest"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"lazyhand/bot/practice"
	"lazyhand/bot/slackchat"
)

// hired is a workspace, and a program that is set up for it by the environment
// as at a shop.
func hired(t *testing.T) (*practice.Workspace, *program, *lockedBuffer) {
	t.Helper()
	dir := home(t)
	w := practice.New(practice.Options{Apps: []practice.AppOptions{practice.MainApp("lazyhand")}})
	server := httptest.NewServer(w.Handler())
	t.Cleanup(func() {
		w.Close()
		server.Close()
	})
	app := w.Apps()[0]
	t.Setenv("LAZYHAND_SLACK_BOT_TOKEN", app.BotToken)
	t.Setenv("LAZYHAND_SLACK_APP_TOKEN", app.AppToken)
	log := &lockedBuffer{}
	return w, &program{out: io.Discard, errOut: log, now: time.Now, dbFile: filepath.Join(dir, "shop.db"), slackURL: server.URL + "/api/",
		set: []string{"health.listen=", "shop.quiet_hours=none", "slack.field_channels=" + w.Channel("field"), "slack.dispatch_channel=" + w.Channel("dispatch"), "slack.team_channel=" + w.Channel("team")}}, log
}

func TestServeAnswersInTheThreadOfTheReport(t *testing.T) {
	w, p, log := hired(t)
	c, err := p.settings()
	if err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithCancel(t.Context())
	done := make(chan error, 1)
	go func() { done <- p.serve(ctx, c, p.joinSlack) }()
	log.until(t, "connected to Slack")
	ts, err := w.Say("rosa", "field", "", "105 psi laundry tap, heater idle, nothing running, 123 Elm St")
	if err != nil {
		t.Fatal(err)
	}
	reply := func() bool {
		th := w.Thread("field", ts)
		return len(th) == 2 && strings.Contains(th[1].Text, "123 Elm St")
	}
	alert := func() bool { return len(w.Messages("dispatch")) > 0 }
	marked := func() bool { return len(w.Reactions("field", ts)) == 1 }
	if !w.Wait(10*time.Second, func() bool { return reply() && alert() && marked() }) {
		t.Errorf("thread %+v\ndispatch %+v\n%s", w.Thread("field", ts), w.Messages("dispatch"), log)
	}
	if strings.Contains(log.String(), "Elm") || strings.Contains(log.String(), "xoxb") {
		t.Errorf("the log tells too much:\n%s", log)
	}
	cancel()
	if err := <-done; err != nil {
		t.Error(err)
	}
}

func TestServeWithAWrongTokenEndsWithOneLine(t *testing.T) {
	_, p, _ := hired(t)
	t.Setenv("LAZYHAND_SLACK_BOT_TOKEN", "xoxb-wrong")
	c, err := p.settings()
	if err != nil {
		t.Fatal(err)
	}
	err = p.serve(t.Context(), c, p.joinSlack)
	var f *slackchat.Fatal
	if !errors.As(err, &f) || strings.Contains(err.Error(), "\n") || !strings.Contains(err.Error(), "copy both tokens anew") || strings.Contains(err.Error(), "xoxb-wrong") {
		t.Errorf("got %v", err)
	}
}

func TestCheckAsksSlack(t *testing.T) {
	w, p, _ := hired(t)
	w.Remove("dispatch", "lazyhand")
	p.probeSlack = p.askSlack
	var got strings.Builder
	for _, c := range p.check(t.Context()) {
		if strings.HasPrefix(c.Name, "slack") {
			got.WriteString(string(c.State) + " " + c.Name + ": " + c.Says + "\n")
		}
	}
	for _, want := range []string{"ok slack sign-in: @lazyhand", "fault slack channel: " + w.Channel("dispatch"), "ok slack channel: " + w.Channel("field"), "ok slack socket mode", "attention slack events"} {
		if !strings.Contains(got.String(), want) {
			t.Errorf("%q is missing in\n%s", want, &got)
		}
	}
}

func TestManifestIsPrinted(t *testing.T) {
	home(t)
	var out strings.Builder
	if err := run(t.Context(), []string{"manifest"}, strings.NewReader(""), &out, io.Discard); err != nil || !strings.Contains(out.String(), `"socket_mode_enabled": true`) || strings.Contains(out.String(), "usergroups:read") {
		t.Errorf("%v\n%s", err, &out)
	}
	out.Reset()
	if err := run(t.Context(), []string{"manifest", "--url", "https://bot.example.com/slack", "--set", "slack.role_dispatch=S0000000001"}, strings.NewReader(""), &out, io.Discard); err != nil || !strings.Contains(out.String(), `"request_url": "https://bot.example.com/slack"`) || !strings.Contains(out.String(), "usergroups:read") {
		t.Errorf("%v\n%s", err, &out)
	}
	if err := run(t.Context(), []string{"manifest", "--url", "http://x"}, strings.NewReader(""), &out, io.Discard); err == nil || !strings.Contains(err.Error(), "https://") {
		t.Errorf("got %v", err)
	}
}
