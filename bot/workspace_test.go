package main

import (
	"bytes"
	"context"
	"encoding/json"
	"io"
	"net/http"
	"os"
	"strings"
	"testing"
	"time"

	"lazyhand/bot/practice"
)

// practising opens a practice workspace with the bot in it.
func practising(t *testing.T, demo time.Duration) (w *practice.Workspace, stop func() error) {
	t.Helper()
	return practisingAt(t, time.Now, demo)
}

func practisingAt(t *testing.T, now func() time.Time, demo time.Duration) (w *practice.Workspace, stop func() error) {
	t.Helper()
	home(t)
	log := &lockedBuffer{}
	p := &program{out: io.Discard, errOut: log, now: now}
	ctx, cancel := context.WithCancel(t.Context())
	joined, done := make(chan *practice.Workspace, 1), make(chan error, 1)
	go func() {
		done <- p.practice(ctx, "127.0.0.1:0", demo, func(w *practice.Workspace) error { joined <- w; return nil })
	}()
	t.Cleanup(cancel)
	select {
	case w = <-joined:
	case err := <-done:
		t.Fatalf("ended with %v:\n%s", err, log)
	case <-time.After(time.Minute):
		t.Fatalf("the bot never joins:\n%s", log)
	}
	return w, func() error { cancel(); return <-done }
}

func TestTheBotJoinsThePracticeWorkspaceAsItWouldJoinSlack(t *testing.T) {
	w, stop := practising(t, 0)
	ts, err := w.Say("rosa", "field", "", report)
	if err != nil {
		t.Fatal(err)
	}
	answered := func() bool {
		for _, m := range w.Thread("field", ts) {
			if m.AppID != "" && strings.Contains(m.Text, "92") {
				return true
			}
		}
		return false
	}
	if !w.Wait(10*time.Second, answered) {
		t.Errorf("no answer in the thread: %+v", w.Thread("field", ts))
	}
	start := time.Now()
	if err := stop(); err != nil {
		t.Error(err)
	}
	if took := time.Since(start); took > 10*time.Second {
		t.Errorf("it took %v to stop", took)
	}
}

func TestPracticeTellsWhereItIsAndLetsAnotherAppIn(t *testing.T) {
	home(t)
	tmp := t.TempDir()
	t.Setenv("TMPDIR", tmp)
	var out lockedBuffer
	ctx, cancel := context.WithCancel(t.Context())
	done := make(chan error, 1)
	go func() {
		done <- run(ctx, []string{"practice", "--listen", "127.0.0.1:0", "--json"}, strings.NewReader(""), &out, io.Discard)
	}()
	out.until(t, "\n")
	var ready practice.Ready
	if err := json.Unmarshal([]byte(out.String()), &ready); err != nil || strings.Count(out.String(), "\n") != 1 {
		t.Fatalf("%v: %s", err, out.String())
	}
	req, err := http.NewRequest("POST", ready.API+"auth.test", nil)
	if err != nil {
		t.Fatal(err)
	}
	req.Header.Set("Authorization", "Bearer "+ready.BotToken)
	resp, err := http.DefaultClient.Do(req)
	if err != nil {
		t.Fatal(err)
	}
	body, err := io.ReadAll(resp.Body)
	resp.Body.Close()
	if err != nil || !bytes.Contains(body, []byte(`"ok":true`)) {
		t.Errorf("auth.test: %s %v", body, err)
	}
	cancel()
	if err := <-done; err != nil {
		t.Error(err)
	}
	if left, err := os.ReadDir(tmp); err != nil || len(left) > 0 {
		t.Errorf("left behind: %v %v", left, err)
	}
}

func TestPracticeIsForThisMachineOnly(t *testing.T) {
	home(t)
	for _, address := range []string{"0.0.0.0:4080", ":4080", "192.0.2.1:4080", "example.invalid:1"} {
		if _, errOut, code := lazyhand(t, "", "practice", "--listen", address); code != 1 || !strings.Contains(errOut, "can be reached by others") {
			t.Errorf("--listen %s: code %d: %s", address, code, errOut)
		}
	}
}
