package main

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
	"golang.org/x/tools/txtar"
)

func TestMain(m *testing.M) {
	// Scripts find the program itself under its name.
	testscript.Main(m, map[string]func(){"lazyhand": main})
}

// quoted is one command as a README quotes it, with what it shows: in a fenced
// block of kind "console", a line that begins with "$ " and the lines after it.
// A command that is talked to shows the person's lines after "you> ".
type quoted struct {
	line    int // of the README
	command string
	said    []string // the person's lines
	shown   []string
}

// prompt is what the chat in the terminal puts before the person's lines.
const promptText = "you> "

// quotes finds the commands that a README quotes.
func quotes(readme string) (out []quoted) {
	in := false
	for i, l := range strings.Split(readme, "\n") {
		switch {
		case strings.HasPrefix(l, "```"):
			in = l == "```console"
		case !in:
		case strings.HasPrefix(l, "$ "):
			out = append(out, quoted{line: i + 1, command: strings.TrimPrefix(l, "$ ")})
		case len(out) == 0:
		case strings.HasSuffix(out[len(out)-1].command, `\`):
			q := &out[len(out)-1]
			q.command = strings.TrimSuffix(q.command, `\`) + strings.TrimPrefix(strings.TrimLeft(l, " "), "> ")
		case strings.HasPrefix(l, promptText):
			q := &out[len(out)-1]
			q.said = append(q.said, strings.TrimPrefix(l, promptText))
		default:
			q := &out[len(out)-1]
			q.shown = append(q.shown, l)
		}
	}
	return out
}

// skips returns the beginnings of commands that a test does not run.
func skips(rules string) (out []string) {
	for l := range strings.Lines(rules) {
		if rule, ok := strings.CutPrefix(l, "skip "); ok {
			rule, _, _ = strings.Cut(rule, "#")
			out = append(out, strings.TrimSpace(rule))
		}
	}
	return out
}

// script makes a test script that runs the commands and compares what they
// show.
func script(list []quoted, rules *txtar.Archive) []byte {
	skip := skips(string(rules.Comment))
	var text strings.Builder
	a := &txtar.Archive{Files: slices.Clone(rules.Files)}
	for i, q := range list {
		fmt.Fprintf(&text, "# line %d: %s\n", q.line, q.command)
		if slices.ContainsFunc(skip, func(s string) bool { return q.command == s || strings.HasPrefix(q.command, s+" ") }) {
			continue
		}
		name := fmt.Sprintf(".readme/%d", i)
		a.Files = append(a.Files,
			txtar.File{Name: name + ".sh", Data: []byte("exec 2>&1\n" + q.command + "\n")},
			txtar.File{Name: name + ".said", Data: []byte(strings.Join(q.said, "\n") + "\n")},
			txtar.File{Name: name + ".shown", Data: []byte(strings.Join(q.shown, "\n") + "\n")})
		fails := ""
		if slices.ContainsFunc(q.shown, func(l string) bool { return strings.HasPrefix(l, "lazyhand: ") }) {
			fails = "! "
		}
		if len(q.said) > 0 {
			fmt.Fprintf(&text, "stdin %s.said\n", name)
		}
		fmt.Fprintf(&text, "%sexec sh %s.sh\n", fails, name)
		if len(q.shown) > 0 {
			fmt.Fprintf(&text, "shows %s.shown\n", name)
		}
	}
	a.Comment = []byte(text.String())
	return txtar.Format(a)
}

var (
	dayText  = regexp.MustCompile(`((Mon|Tue|Wed|Thu|Fri|Sat|Sun) )?\d{4}-\d\d-\d\d( \d\d:\d\d)?`)
	pathText = regexp.MustCompile(`(~|/)[^ ]*/lazyhand/`)
	hashText = regexp.MustCompile(`^commit .*|^lazyhand .*|^go1\..*`)
)

// same brings to one spelling what differs from day to day and machine to
// machine: days, the user's folders, the build.
func same(line string) string {
	line = dayText.ReplaceAllString(strings.TrimRight(line, " \t\r"), "2026-06-15")
	line = pathText.ReplaceAllString(line, "~/lazyhand/")
	return hashText.ReplaceAllString(line, "<build>")
}

// matches compares what is shown with what was printed, line by line; a shown
// line "…" stands for any number of lines.
func matches(shown, printed []string) error {
	for i, s := range shown {
		if s == "…" || s == "..." {
			for j := 0; j <= len(printed); j++ {
				if matches(shown[i+1:], printed[j:]) == nil {
					return nil
				}
			}
			return fmt.Errorf("nothing printed matches what follows the dots: %q", shown[i+1:])
		}
		if len(printed) == 0 {
			return fmt.Errorf("the README shows %q, but nothing more is printed", s)
		}
		if same(s) != same(printed[0]) {
			return fmt.Errorf("the README shows\n\t%s\nthe program prints\n\t%s", s, printed[0])
		}
		printed = printed[1:]
	}
	if len(printed) > 0 {
		return fmt.Errorf("the program also prints\n\t%s", strings.Join(printed, "\n\t"))
	}
	return nil
}

func linesOf(text string) (out []string) {
	for l := range strings.Lines(text) {
		if l = strings.TrimRight(l, "\n"); l != "" && !strings.HasPrefix(l, "Tell me a reading, such as: ") { // said to a person at the keyboard only
			out = append(out, l)
		}
	}
	return out
}

// runQuotes runs the commands that a README quotes.
func runQuotes(t testscript.T, dir string, readme string, rules *txtar.Archive, root string) error {
	list := quotes(readme)
	file := filepath.Join(dir, "readme.txtar")
	if err := os.WriteFile(file, script(list, rules), 0o600); err != nil {
		return err
	}
	testscript.RunT(t, testscript.Params{
		Files: []string{file},
		Setup: func(env *testscript.Env) error {
			home := filepath.Join(env.WorkDir, "home")
			env.Setenv("HOME", home)
			env.Setenv("XDG_DATA_HOME", filepath.Join(home, ".local", "share"))
			env.Setenv("XDG_CONFIG_HOME", filepath.Join(home, ".config"))
			env.Setenv("TZ", "America/Chicago")
			env.Setenv("LANG", "C.UTF-8")
			// go run ./bot and ./lazyhand are this very program; go build is
			// run where the project is.
			bin := filepath.Join(env.WorkDir, ".bin")
			for name, text := range map[string]string{
				filepath.Join(bin, "go"): fmt.Sprintf("#!/bin/sh\nif [ \"$1 $2\" = 'run ./bot' ]; then shift 2; exec lazyhand \"$@\"; fi\n"+
					"if [ \"$1\" = build ]; then cd %q; fi\nexec %q \"$@\"\n", root, goTool()),
				filepath.Join(env.WorkDir, "lazyhand"): "#!/bin/sh\nexec lazyhand \"$@\"\n",
			} {
				if err := os.MkdirAll(filepath.Dir(name), 0o700); err != nil {
					return err
				}
				if err := os.WriteFile(name, []byte(text), 0o700); err != nil {
					return err
				}
			}
			env.Setenv("PATH", bin+string(os.PathListSeparator)+env.Getenv("PATH"))
			return nil
		},
		Cmds: map[string]func(*testscript.TestScript, bool, []string){
			"shows": func(ts *testscript.TestScript, _ bool, args []string) {
				if err := matches(linesOf(ts.ReadFile(args[0])), linesOf(ts.ReadFile("stdout"))); err != nil {
					ts.Fatalf("%v", err)
				}
			},
		},
	})
	return nil
}

func goTool() string {
	for _, dir := range filepath.SplitList(os.Getenv("PATH")) {
		if name := filepath.Join(dir, "go"); !strings.Contains(dir, ".bin") {
			if _, err := os.Stat(name); err == nil {
				return name
			}
		}
	}
	return "go"
}

func TestEveryCommandOfTheReadmeRunsAndShowsWhatItSays(t *testing.T) {
	readme, err := os.ReadFile(filepath.Join("..", "README.md"))
	if os.IsNotExist(err) {
		t.Skip("there is no README yet")
	}
	if err != nil {
		t.Fatal(err)
	}
	rules, err := txtar.ParseFile(filepath.Join("..", "testdata", "readme.txt"))
	if err != nil {
		t.Fatal(err)
	}
	root, err := filepath.Abs("..")
	if err != nil {
		t.Fatal(err)
	}
	if len(quotes(string(readme))) == 0 {
		t.Fatal("the README quotes no command in a block of kind console")
	}
	if err := runQuotes(scriptT{t, new(bool)}, t.TempDir(), string(readme), rules, root); err != nil {
		t.Fatal(err)
	}
}

// scriptT is a testing.T for scripts; a quiet one keeps a failure to itself.
type scriptT struct {
	*testing.T
	failed *bool
}

func (s scriptT) Run(_ string, do func(testscript.T)) { do(s) }
func (s scriptT) Verbose() bool                       { return testing.Verbose() }

// quietT lets a script fail without failing the test around it.
type quietT struct {
	scriptT
}

type quietEnd struct{}

func (q quietT) Fatal(...any) { *q.failed = true; panic(quietEnd{}) }
func (q quietT) FailNow()     { *q.failed = true; panic(quietEnd{}) }
func (q quietT) Log(...any)   {}
func (q quietT) Run(_ string, do func(testscript.T)) {
	defer func() {
		if r := recover(); r != nil && r != (quietEnd{}) {
			panic(r)
		}
	}()
	do(q)
}

func TestTheReadmeRunnerTellsRightFromWrong(t *testing.T) {
	rules, err := txtar.ParseFile(filepath.Join("..", "testdata", "readme.txt"))
	if err != nil {
		t.Fatal(err)
	}
	block := func(text string) string { return "# Title\n```console\n" + text + "```\n" }
	tests := []struct {
		what, readme string
		ok           bool
	}{
		{"a command whose output is not shown", block("$ go run ./bot version\n"), true},
		{"dots for any lines", block("$ go run ./bot init --print\n# Lazyhand's configuration. Every key stands here with its default.\n…\n  level: info\n"), true},
		{"a pipe", block("$ echo lunch? | go run ./bot parse\n{\"site\":null,\"statements\":[{\"kind\":\"ask\",\"about\":\"none\"}]}\n"), true},
		{"a day that differs", block("$ echo Wed 2026-11-25 10:42\nThu 2026-01-01 23:00\n"), true},
		{"a command that fails as shown", block("$ go run ./bot pars\nlazyhand: there is no command \"pars\": did you mean parse?\n"), true},
		{"a command over two lines", block("$ echo a \\\n>   b\na b\n"), true},
		{"a chat", block("$ cat\nyou> lunch?\nlunch?\n"), true},
		{"a command that is skipped", block("$ sudo nothing at all\nany output\n"), true},
		{"text of another kind", "```sh\n$ false\n```\n", true},
		{"a command that there is not", block("$ go run ./bot brew\n"), false},
		{"an output that is not printed", block("$ echo a\na\nb\n"), false},
		{"an output that is not shown", block("$ printf 'a\\nb\\n'\na\n"), false},
		{"another output", block("$ echo a\nb\n"), false},
		{"dots that lead nowhere", block("$ echo a\n…\nb\n"), false},
	}
	for _, tt := range tests {
		t.Run(tt.what, func(t *testing.T) {
			failed := false
			if err := runQuotes(quietT{scriptT{t, &failed}}, t.TempDir(), tt.readme, rules, t.TempDir()); err != nil {
				t.Fatal(err)
			}
			if failed == tt.ok {
				t.Errorf("failed: %v", failed)
			}
		})
	}
}
