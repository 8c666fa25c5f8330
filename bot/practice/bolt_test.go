package practice_test

import (
	"bufio"
	"context"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"lazyhand/bot/practice"
)

// npm installs the pinned packages of a folder under testdata into the
// user's cache, once, and returns the folder with node_modules.
func npm(t *testing.T, folder string) string {
	t.Helper()
	for _, program := range []string{"node", "npm"} {
		if _, err := exec.LookPath(program); err != nil {
			t.Skipf("%s is missing", program)
		}
	}
	from := filepath.Join("..", "..", "testdata", folder)
	lock, err := os.ReadFile(filepath.Join(from, "package-lock.json"))
	check(t, err)
	for _, line := range strings.Split(string(lock), "\n") {
		if strings.Contains(line, `"resolved"`) {
			t.Fatalf("%s names where a package comes from: %s", folder, line)
		}
	}
	cache, err := os.UserCacheDir()
	if err != nil {
		cache = os.TempDir()
	}
	sum := sha256.Sum256(lock)
	to := filepath.Join(cache, "lazyhand-tests", folder+"-"+hex.EncodeToString(sum[:6]))
	if _, err := os.Stat(filepath.Join(to, "node_modules", ".package-lock.json")); err != nil {
		check(t, os.MkdirAll(to, 0o755))
		for _, name := range []string{"package.json", "package-lock.json", ".npmrc"} {
			b, err := os.ReadFile(filepath.Join(from, name))
			check(t, err)
			check(t, os.WriteFile(filepath.Join(to, name), b, 0o644))
		}
		install := exec.Command("npm", "ci", "--ignore-scripts")
		install.Dir = to
		if out, err := install.CombinedOutput(); err != nil {
			t.Fatalf("npm ci in testdata/%s: %v\n%s", folder, err, out)
		}
	}
	return to
}

// Slack's own framework for Node, unchanged, joins with the tokens of the
// second app.
func TestBoltJoins(t *testing.T) {
	t.Parallel()
	modules := npm(t, "bolt")
	w := practice.New(practice.Options{})
	server := httptest.NewServer(w.Handler())
	t.Cleanup(func() {
		w.Close()
		server.Close()
	})
	second := w.Apps()[1]

	script, err := filepath.Abs(filepath.Join("..", "..", "testdata", "bolt", "bot.js"))
	check(t, err)
	ctx, cancel := context.WithCancel(context.Background())
	node := exec.CommandContext(ctx, "node", script)
	node.Env = append(os.Environ(), "API="+server.URL+"/api/", "BOT_TOKEN="+second.BotToken, "APP_TOKEN="+second.AppToken,
		"NODE_PATH="+filepath.Join(modules, "node_modules"))
	node.Stderr = os.Stderr
	out, err := node.StdoutPipe()
	check(t, err)
	check(t, node.Start())
	type note struct{ Did, Text, Psi, User string }
	var mu sync.Mutex
	var notes []note
	read := make(chan struct{})
	go func() {
		defer close(read)
		lines := bufio.NewScanner(out)
		for lines.Scan() {
			var n note
			if json.Unmarshal(lines.Bytes(), &n) == nil && n.Did != "" {
				mu.Lock()
				notes = append(notes, n)
				mu.Unlock()
			}
		}
	}()
	t.Cleanup(func() {
		cancel()
		<-read
		_ = node.Wait() // it was killed
	})
	did := func(what string) (found []note) {
		mu.Lock()
		defer mu.Unlock()
		for _, n := range notes {
			if n.Did == "error" {
				t.Errorf("the bot met an error: %s", n.Text)
			}
			if n.Did == what {
				found = append(found, n)
			}
		}
		return found
	}
	until := func(what string, ok func() bool) {
		t.Helper()
		if !w.Wait(20*time.Second, ok) {
			calls := w.Calls()
			t.Fatalf("waited in vain for %s; the bot did %+v; its last calls were %+v", what, notes, calls[max(0, len(calls)-12):])
		}
	}
	wait(t, "the bot", func() bool { return len(did("ready")) == 1 })
	if who := did("ready")[0].User; who != second.BotUserID {
		t.Errorf("auth.test says %s, want %s", who, second.BotUserID)
	}

	// It hears messages and answers in threads.
	ts := must[string](t)(w.Say("rosa", "field", "", "@guestbot 92 psi <b>"))
	until("the answer", func() bool { return len(w.Thread("field", ts)) == 2 && len(w.Reactions("field", ts)) == 1 })
	wait(t, "the mention", func() bool { return len(did("mentioned")) == 1 })
	answer := w.Thread("field", ts)[1]
	if answer.AppID != second.ID || !strings.HasPrefix(answer.Text, "heard: ") {
		t.Errorf("answer %+v", answer)
	}

	// Its own button opens a modal, which refuses, then takes.
	check(t, w.Press(ctx, practice.Press{User: "rosa", Channel: "field", TS: answer.TS, ActionID: "fix"}))
	until("the modal", func() bool { return len(w.Views("rosa")) == 1 })
	v := w.Views("rosa")[0]
	psi := func(n string) map[string]map[string]practice.Entered {
		return map[string]map[string]practice.Entered{"psi": {"value": {n}}}
	}
	if v.PrivateMetadata != ts {
		t.Errorf("private metadata %q", v.PrivateMetadata)
	}
	if got := must[practice.Outcome](t)(w.Submit(ctx, "rosa", v.ID, psi("820"))); got.Errors["psi"] != "No gauge reads that high." {
		t.Errorf("a wrong number: %+v", got)
	}
	if got := must[practice.Outcome](t)(w.Submit(ctx, "rosa", v.ID, psi("82"))); got.Open != "" {
		t.Errorf("a right number: %+v", got)
	}
	until("the direct message", func() bool { return len(w.Messages(w.DM("rosa", second.ID))) == 1 })

	// It sends a file and reads the history in pages.
	plot := must[string](t)(w.Say("rosa", "team", "", "plot it"))
	must[string](t)(w.Say("beto", "team", "", "thanks"))
	wait(t, "the file", func() bool { return len(did("uploaded")) == 1 })
	files := w.Thread("team", plot)
	if len(files) != 2 || files[1].Text != "The plot" || len(files[1].Files) != 1 || string(files[1].Files[0].Bytes) != "not really a picture" || files[1].Files[0].AltText != "It rises" {
		t.Errorf("the file came as %+v", files)
	}
	if got := did("uploaded")[0].Text; got != "thanks | plot it" {
		t.Errorf("the history was read as %q", got)
	}

	// Slash command, message shortcut, home tab.
	check(t, w.Slash(ctx, "dee", "dispatch", "/guest", "hello"))
	until("both answers", func() bool { return len(w.Messages("dispatch")) == 2 })
	check(t, w.Shortcut(ctx, "dee", "field", ts, "second_app"))
	until("the reaction", func() bool {
		return slices.ContainsFunc(w.Reactions("field", ts), func(r practice.Reaction) bool { return r.Name == "inbox_tray" })
	})
	check(t, w.OpenHome("dee", second.ID, "home"))
	until("the home tab", func() bool { _, ok := w.Home(second.ID, "dee"); return ok })

	// It comes back after a refresh, and after the line is cut: by itself
	// after five seconds, its own pause.
	leaves := []func(){
		func() { w.RefreshSockets(second.ID, "refresh_requested", 10*time.Second) },
		func() { w.DropSockets(second.ID) },
	}
	if testing.Short() {
		leaves = leaves[:1]
	}
	for n, leave := range leaves {
		opens := func() (count int) {
			for _, c := range w.Calls() {
				if c.Method == "apps.connections.open" && c.AppID == second.ID {
					count++
				}
			}
			return count
		}
		leave()
		until("another socket", func() bool { return opens() == n+2 && w.Apps()[1].Sockets == 1 })
		ts := must[string](t)(w.Say("beto", "field", "", "60 psi"))
		until("the answer on the new socket", func() bool { return len(w.Thread("field", ts)) == 2 })
	}
	wait(t, "every acknowledgement", func() bool { return w.Deliveries(second.ID) == 0 })
	did("")
}
