package main

import (
	"encoding/json"
	"net"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/spf13/cobra"

	"lazyhand/config"
	"lazyhand/store"
)

// home gives the test a user of its own: no settings, no data, no variables.
func home(t *testing.T) string {
	t.Helper()
	dir := t.TempDir()
	t.Setenv("HOME", dir)
	t.Setenv("XDG_CONFIG_HOME", filepath.Join(dir, "config"))
	t.Setenv("XDG_DATA_HOME", filepath.Join(dir, "data"))
	for _, e := range os.Environ() {
		if name, _, _ := strings.Cut(e, "="); strings.HasPrefix(name, "LAZYHAND_") {
			t.Setenv(name, "") // brings it back at the end
			os.Unsetenv(name)
		}
	}
	return dir
}

// everyCommand calls do with each command a person may give.
func everyCommand(do func(*cobra.Command)) {
	var walk func(*cobra.Command)
	walk = func(c *cobra.Command) {
		do(c)
		for _, sub := range c.Commands() {
			walk(sub)
		}
	}
	root := (&program{}).rootCommand()
	root.InitDefaultHelpCmd()
	walk(root)
}

func TestEveryCommandShowsExamplesThatItTakes(t *testing.T) {
	everyCommand(func(c *cobra.Command) {
		if c.Example == "" || c.Short == "" || c.Long == "" {
			t.Errorf("%s lacks an example or an explanation", c.CommandPath())
		}
		for line := range strings.Lines(c.Example) {
			line = strings.TrimSpace(line)
			at := strings.LastIndex(line, "lazyhand")
			if i := strings.Index(line, "lazyhand"); strings.HasPrefix(line, "lazyhand") {
				at = i
			} else if i := strings.Index(line, "| lazyhand"); i >= 0 {
				at = i + 2
			}
			if at < 0 {
				continue
			}
			words := strings.Fields(regexp.MustCompile(`[<>|].*`).ReplaceAllString(line[at:], ""))
			cmd, rest, err := (&program{}).rootCommand().Find(words[1:])
			if err != nil {
				t.Errorf("%s: example %q: %v", c.CommandPath(), line, err)
				continue
			}
			if cmd.CommandPath() != c.CommandPath() && c.HasParent() && c.Name() != "help" {
				t.Errorf("%s: example %q is one of %s", c.CommandPath(), line, cmd.CommandPath())
			}
			if err := cmd.ParseFlags(rest); err != nil {
				t.Errorf("%s: example %q: %v", c.CommandPath(), line, err)
			}
		}
	})
}

func TestEveryCommandTakesTheFileFlags(t *testing.T) {
	everyCommand(func(c *cobra.Command) {
		for _, flag := range []string{"config", "db", "set"} {
			if c.Flag(flag) == nil && c.InheritedFlags().Lookup(flag) == nil {
				t.Errorf("%s has no --%s", c.CommandPath(), flag)
			}
		}
	})
}

func TestInitWritesAFileThatCheckTakes(t *testing.T) {
	dir := home(t)
	out, errOut, code := lazyhand(t, "", "init")
	if code != 0 || !strings.Contains(out, filepath.Join(dir, "config", "lazyhand", "lazyhand.yaml")) {
		t.Fatalf("code %d: %s%s", code, out, errOut)
	}
	out, errOut, code = lazyhand(t, "", "check")
	if code != 0 || !strings.Contains(out, "ok              configuration") {
		t.Errorf("code %d: %s%s", code, out, errOut)
	}
	_, errOut, code = lazyhand(t, "", "init")
	if code != 1 || !strings.Contains(errOut, "exists already") {
		t.Errorf("code %d: %s", code, errOut)
	}
	if out, _, code = lazyhand(t, "", "init", "--print"); code != 0 || out != config.Document() {
		t.Errorf("code %d: %s", code, out)
	}
}

func TestCheckSaysALineAboutEachThing(t *testing.T) {
	type report struct {
		OK     bool
		Checks []checked
	}
	check := func(t *testing.T, args ...string) (report, int) {
		out, errOut, code := lazyhand(t, "", append([]string{"check", "--json"}, args...)...)
		var r report
		if err := json.Unmarshal([]byte(out), &r); err != nil || errOut != "" {
			t.Fatalf("%v: %s%s", err, out, errOut)
		}
		return r, code
	}
	state := func(r report, name string) (states []checkedState, says string) {
		for _, c := range r.Checks {
			if c.Name == name {
				states, says = append(states, c.State), says+c.Says+"\n"
			}
		}
		return states, says
	}
	wants := func(t *testing.T, r report, name string, want checkedState, says string) {
		t.Helper()
		states, said := state(r, name)
		if len(states) == 0 || states[0] != want || !strings.Contains(said, says) {
			t.Errorf("%s: %v %s, want %s with %q", name, states, said, want, says)
		}
	}
	t.Run("on a fresh machine nothing is configured and nothing fails", func(t *testing.T) {
		home(t)
		r, code := check(t)
		if code != 0 || !r.OK {
			t.Errorf("code %d: %+v", code, r)
		}
		for _, name := range []string{"configuration", "record", "backup", "slack"} {
			wants(t, r, name, unset, "")
		}
		for _, name := range []string{"clock", "disk"} {
			wants(t, r, name, fine, "")
		}
	})
	t.Run("every fault of the configuration has its line", func(t *testing.T) {
		dir := home(t)
		name := filepath.Join(dir, "shop.yaml")
		text := "shop:\n  timezone: UTC\njobs:\n  weekly_summary: every friday\nslack:\n  team_channel: \"#team\"\nalerts:\n  raise: [over_releif]\nwords:\n  - {says: x, means: rear_bibb}\npressure:\n  base_rates: {pasing: 0.5}\n"
		if err := os.WriteFile(name, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
		r, code := check(t, "--config", name)
		if code != 1 || r.OK {
			t.Errorf("code %d", code)
		}
		wants(t, r, "configuration", fault, "line 2: shop.timezone")
		// A key that is not known hides the values until it is put right.
		if err := os.WriteFile(name, []byte(strings.Replace(text, "timezone", "time_zone", 1)), 0o600); err != nil {
			t.Fatal(err)
		}
		r, _ = check(t, "--config", name)
		for _, says := range []string{"line 4: jobs.weekly_summary: ", "line 6: slack.team_channel: ", "line 8: alerts.raise: \"over_releif\" is not known: did you mean over_relief?", "line 12: pressure.base_rates: \"pasing\" is not known: did you mean passing?"} {
			wants(t, r, "configuration", fault, says)
		}
	})
	t.Run("a missing file is a fault when it was named", func(t *testing.T) {
		home(t)
		r, code := check(t, "--config", "nowhere.yaml")
		if code != 1 {
			t.Errorf("code %d", code)
		}
		wants(t, r, "configuration", fault, "lazyhand init --config nowhere.yaml")
	})
	t.Run("a record is looked through", func(t *testing.T) {
		dir := home(t)
		file := filepath.Join(dir, "shop.db")
		db, err := store.Open(t.Context(), file)
		if err != nil {
			t.Fatal(err)
		}
		old := time.Now().Add(-100 * time.Hour)
		err = db.Write(t.Context(), func(tx *store.Tx) error {
			id, _, err := tx.AddMessage(store.Message{Key: "C/1", Kind: store.Said, Channel: "C", TS: "1", Thread: "1", Author: "U", At: old, Text: "x"})
			if err != nil {
				return err
			}
			if err := tx.Mark(id, store.SetAside, "strange"); err != nil {
				return err
			}
			return tx.Queue(store.Post{Key: "reply:1", Channel: "C", Body: []byte("{}"), After: old, Since: old})
		})
		if err != nil {
			t.Fatal(err)
		}
		r, code := check(t, "--db", file) // while another process has it open for writing
		if code != 1 {
			t.Errorf("code %d", code)
		}
		wants(t, r, "record", fine, "version")
		wants(t, r, "outbox", fault, "1 waiting")
		wants(t, r, "messages", attention, "1 set aside")
		wants(t, r, "backup", fault, "lazyhand backup")
		if err := db.Close(); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(file, []byte("this is no record at all, but a letter"), 0o600); err != nil {
			t.Fatal(err)
		}
		r, _ = check(t, "--db", file)
		wants(t, r, "record", fault, "restore the last backup")
	})
	t.Run("half a Slack is a fault that names the other half", func(t *testing.T) {
		home(t)
		t.Setenv("LAZYHAND_SLACK_BOT_TOKEN", "xoxb-hidden")
		r, code := check(t)
		if code != 1 {
			t.Errorf("code %d", code)
		}
		wants(t, r, "slack", fault, "slack.app_token_file (or LAZYHAND_SLACK_APP_TOKEN)")
	})
}

func TestSecretsAreInNothingThatIsPrinted(t *testing.T) {
	dir := home(t)
	t.Setenv("LAZYHAND_SLACK_BOT_TOKEN", "xoxb-hidden")
	t.Setenv("LAZYHAND_SLACK_APP_TOKEN", "xapp-hidden")
	db := filepath.Join(dir, "shop.db")
	for _, args := range [][]string{{"check"}, {"check", "--json"}, {"init"}, {"version"}, {"service"}, {"--help"}, {"--set", "slack.bot_token=xoxb-hidden", "check"}} {
		out, errOut, _ := lazyhand(t, "", append(args, "--db", db)...)
		if strings.Contains(out+errOut, "hidden") {
			t.Errorf("lazyhand %v shows a secret: %s%s", args, out, errOut)
		}
	}
}

func TestVersionSaysWhichBuildItIs(t *testing.T) {
	out, _, code := lazyhand(t, "", "version")
	if code != 0 || !strings.HasPrefix(out, "lazyhand ") || !strings.Contains(out, "\ncommit ") || !strings.Contains(out, "\ngo1.") {
		t.Errorf("code %d: %s", code, out)
	}
}

func TestCompletionKnowsTheCommands(t *testing.T) {
	for _, shell := range []string{"bash", "zsh", "fish", "powershell"} {
		out, _, code := lazyhand(t, "", "completion", shell)
		if code != 0 || !strings.Contains(out, "lazyhand") {
			t.Errorf("%s: code %d", shell, code)
		}
	}
	if out, _, _ := lazyhand(t, "", "__complete", "ch"); !strings.Contains(out, "check") {
		t.Errorf("ch completes to %s", out)
	}
	if _, errOut, code := lazyhand(t, "", "completion", "csh"); code != 1 || !strings.Contains(errOut, "bash, zsh") {
		t.Errorf("code %d: %s", code, errOut)
	}
}

func TestTheUnitIsOneThatSystemdTakes(t *testing.T) {
	out, errOut, code := lazyhand(t, "", "service", "--program", "/bin/true")
	if code != 0 {
		t.Fatal(errOut)
	}
	for _, line := range []string{"Type=notify", "NoNewPrivileges=yes", "ProtectSystem=strict", "DynamicUser=yes", "ExecStart=/bin/true serve --config /etc/lazyhand/lazyhand.yaml --db /var/lib/lazyhand/lazyhand.db"} {
		if !strings.Contains(out, "\n"+line) {
			t.Errorf("no line %s", line)
		}
	}
	analyze, err := exec.LookPath("systemd-analyze")
	if err != nil {
		t.Skip("systemd-analyze is not on this machine")
	}
	unit := filepath.Join(t.TempDir(), "lazyhand.service")
	if err := os.WriteFile(unit, []byte(out), 0o600); err != nil {
		t.Fatal(err)
	}
	said, err := exec.CommandContext(t.Context(), analyze, "verify", "--man=no", unit).CombinedOutput()
	for line := range strings.Lines(string(said)) {
		if strings.Contains(line, "lazyhand") { // it also speaks of other units of the machine
			t.Errorf("systemd-analyze: %s", line)
		}
	}
	if err != nil && !strings.Contains(string(said), "lazyhand") {
		t.Logf("systemd-analyze cannot run here: %v: %s", err, said)
	}
}

func TestTheContainerFileRunsTheBot(t *testing.T) {
	out, _, code := lazyhand(t, "", "service", "container")
	if code != 0 || !strings.Contains(out, "USER 65532") || !strings.Contains(out, `ENTRYPOINT ["lazyhand", "serve"`) {
		t.Errorf("code %d: %s", code, out)
	}
	if _, errOut, code := lazyhand(t, "", "service", "floppy"); code != 1 || !strings.Contains(errOut, "systemd and container") {
		t.Errorf("code %d: %s", code, errOut)
	}
}

func TestTheServiceManagerIsTold(t *testing.T) {
	socket := filepath.Join(t.TempDir(), "notify")
	conn, err := net.ListenUnixgram("unixgram", &net.UnixAddr{Name: socket, Net: "unixgram"})
	if err != nil {
		t.Fatal(err)
	}
	defer conn.Close()
	if err := (notifier{socket}).tell("READY=1\nSTATUS=connected"); err != nil {
		t.Fatal(err)
	}
	buf := make([]byte, 100)
	conn.SetReadDeadline(time.Now().Add(5 * time.Second))
	if n, err := conn.Read(buf); err != nil || string(buf[:n]) != "READY=1\nSTATUS=connected" {
		t.Errorf("%q, %v", buf[:n], err)
	}
	if err := (notifier{}).tell("READY=1"); err != nil {
		t.Errorf("with no service manager: %v", err)
	}
	if err := (notifier{socket + "-gone"}).tell("READY=1"); err == nil {
		t.Error("a socket that is not there took it")
	}
	for usec, want := range map[string]time.Duration{"": 0, "x": 0, "-1": 0, "120000000": time.Minute} {
		if got := watchdogEvery(usec); got != want {
			t.Errorf("watchdog %q: every %v, want %v", usec, got, want)
		}
	}
}
