package main

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"os"
	"strings"
	"testing"
	"time"
)

// lazyhand runs the program in this process and returns what it printed and
// its exit code.
func lazyhand(t *testing.T, in string, args ...string) (out, errOut string, code int) {
	t.Helper()
	var o, e bytes.Buffer
	err := run(t.Context(), args, strings.NewReader(in), &o, &e)
	code = exitCode(err, &e)
	return o.String(), e.String(), code
}

func TestPureCommandsKeepInputAndOutputInStep(t *testing.T) {
	house := `{"id":"a","today":"2026-06-15","visits":[{"date":"2026-06-15","frame":{"site":"123 Elm St","statements":[]}}]}`
	tests := []struct {
		what, command, in string
		lines             int   // printed
		bad               []int // numbers of the lines complained about
	}{
		{"no input", "parse", "", 0, nil},
		{"plain text", "parse", "92 rear tap\n\nlunch?\n", 3, nil},
		{"no newline at the end", "parse", "92 rear tap", 1, nil},
		{"windows line ends", "parse", "{\"text\":\"a\"}\r\n{\"text\":\"b\"}\r\n", 2, nil},
		{"a byte order mark", "parse", "\ufeff{\"text\":\"a\"}\n", 1, nil},
		{"a torn line among JSON", "parse", "{\"text\":\"a\"}\n\"text\":\"92 rear, 123 Elm\"}\n{\"text\":\"b\"}\n", 3, []int{2}},
		{"an open object", "parse", "{\"text\":\"a\"\n{\"text\":\"b\"}\n", 2, []int{1}},
		{"two objects on a line", "parse", "{\"text\":\"a\"} {\"text\":\"b\"}\n", 1, []int{1}},
		{"text that is a number", "parse", "{\"text\":92}\n", 1, []int{1}},
		{"no text", "parse", "{\"context\":{}}\n", 1, []int{1}},
		{"a day that is none", "parse", "{\"text\":\"a\",\"context\":{\"today\":\"2026-02-30\"}}\n", 1, []int{1}},
		{"an empty context", "parse", "{\"text\":\"a\",\"context\":null}\n", 1, nil},
		{"binary", "parse", "\x00\xff\xfe\x01\n", 1, nil},
		{"a house", "assess", house + "\n", 1, nil},
		{"a house without visits", "assess", `{"id":1,"today":"2026-06-15","visits":[]}`, 1, nil},
		{"bad houses between good ones", "assess", house + "\nx\n[]\n\n" + house + "\n", 5, []int{2, 3, 4}},
		{"a visit without a day", "assess", `{"id":1,"visits":[{"frame":{"statements":[]}}]}`, 1, []int{1}},
		{"a statement of no known kind", "assess", `{"id":1,"visits":[{"date":"2026-06-15","frame":{"statements":[{"kind":"guess"}]}}]}`, 1, []int{1}},
		{"a band upside down", "assess", `{"id":1,"visits":[],"shop":{"band_psi":[80,40]}}`, 1, []int{1}},
	}
	for _, tt := range tests {
		t.Run(tt.what, func(t *testing.T) {
			out, errOut, code := lazyhand(t, tt.in, tt.command)
			if want := min(len(tt.bad), 1); code != want {
				t.Errorf("exit code %d, want %d", code, want)
			}
			if got := strings.Count(out, "\n"); got != tt.lines {
				t.Fatalf("%d lines printed, want %d:\n%s", got, tt.lines, out)
			}
			printed := strings.Split(out, "\n")
			for i, l := range printed[:tt.lines] {
				if !json.Valid([]byte(l)) {
					t.Errorf("line %d is no JSON: %s", i+1, l)
				}
			}
			if got := strings.Count(errOut, "\n"); got != len(tt.bad) {
				t.Errorf("%d complaints, want %d:\n%s", got, len(tt.bad), errOut)
			}
			for _, n := range tt.bad {
				if !strings.Contains(errOut, fmt.Sprintf("line %d: ", n)) {
					t.Errorf("no complaint about line %d:\n%s", n, errOut)
				}
				if printed[n-1] != "{}" {
					t.Errorf("line %d gave %s, want {}", n, printed[n-1])
				}
			}
		})
	}
}

func TestAssessAlwaysPrintsEveryKeyAndTheIDAsGiven(t *testing.T) {
	for _, id := range []string{`"a1"`, `17`, `null`, `{"n":1}`} {
		out, errOut, code := lazyhand(t, `{"id":`+id+`,"today":"2026-06-15","visits":[]}`, "assess")
		if code != 0 {
			t.Fatalf("exit code %d: %s", code, errOut)
		}
		var got map[string]json.RawMessage
		if err := json.Unmarshal([]byte(out), &got); err != nil {
			t.Fatal(err)
		}
		if string(got["id"]) != id {
			t.Errorf("id %s came back as %s", id, got["id"])
		}
		for _, key := range strings.Fields("id readings house_psi street_psi band findings causes next_check drift valve expansion cautions follow_ups") {
			if _, ok := got[key]; !ok {
				t.Errorf("no key %q", key)
			}
		}
		for _, list := range strings.Fields("readings findings causes cautions follow_ups") {
			if string(got[list]) == "null" {
				t.Errorf("list %q is null", list)
			}
		}
	}
}

func TestPureCommandsTakeLinesOfAnyLength(t *testing.T) {
	long := strings.Repeat("water ", 40_000)
	out, errOut, code := lazyhand(t, long+"\n"+`{"text":"`+long+`"}`+"\nhello\n", "parse")
	if code != 0 || strings.Count(out, "\n") != 3 {
		t.Fatalf("exit code %d, %d lines: %s", code, strings.Count(out, "\n"), errOut)
	}
}

func TestAPanicCostsOneLineOnly(t *testing.T) {
	var out, errOut bytes.Buffer
	err := eachLine(t.Context(), strings.NewReader("a\nb\nc\n"), &out, &errOut, func(line []byte) ([]byte, error) {
		if string(line) == "b" {
			panic("strange")
		}
		return line, nil
	})
	if err != errTold || out.String() != "a\n{}\nc\n" || !strings.HasPrefix(errOut.String(), "line 2: ") {
		t.Errorf("printed %q and %q, error %v", out.String(), errOut.String(), err)
	}
}

func TestAnswersComeWhileTheInputIsStillOpen(t *testing.T) {
	inR, inW, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	outR, outW, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	done := make(chan error, 1)
	go func() {
		done <- run(context.Background(), []string{"parse"}, inR, outW, os.Stderr)
		outW.Close()
	}()
	fmt.Fprintln(inW, "hello")
	outR.SetReadDeadline(time.Now().Add(10 * time.Second))
	if n, err := outR.Read(make([]byte, 100)); n == 0 {
		t.Errorf("no answer before the input ended: %v", err)
	}
	inW.Close()
	if err := <-done; err != nil {
		t.Error(err)
	}
}

func TestWrongWordsAreNamedInOneLine(t *testing.T) {
	tests := []struct{ args, want string }{
		{"pars", `did you mean parse?`},
		{"parse --todai 2026-01-01", "--todai"},
		{"parse --today yesterday", "YYYY-MM-DD"},
		{"parse messages.txt", "messages.txt"},
		{"assess --lang xx", "en or es"},
	}
	for _, tt := range tests {
		_, errOut, code := lazyhand(t, "", strings.Fields(tt.args)...)
		if code == 0 || strings.Count(errOut, "\n") != 1 || !strings.Contains(errOut, tt.want) {
			t.Errorf("lazyhand %s: code %d, %q, want one line with %q", tt.args, code, errOut, tt.want)
		}
	}
}

// FuzzPureCommands: whatever comes in, each line gives one line of JSON.
func FuzzPureCommands(f *testing.F) {
	f.Add("92 rear tap\n{\"text\":\"a\"}\n")
	f.Add("{\"text\":\"a\",\"context\":{\"today\":\"2026-06-15\"}}\n{\n")
	f.Add(`{"id":"a","visits":[{"date":"2026-06-15","frame":{"site":null,"statements":[{"kind":"reading","psi":92}]}}]}`)
	f.Fuzz(func(t *testing.T, in string) {
		want := strings.Count(in, "\n")
		if in != "" && !strings.HasSuffix(in, "\n") {
			want++
		}
		for _, command := range []string{"parse", "assess"} {
			out, _, _ := lazyhand(t, in, command)
			if got := strings.Count(out, "\n"); got != want {
				t.Fatalf("%s: %d lines for %d", command, got, want)
			}
			for l := range strings.Lines(out) {
				if !json.Valid([]byte(l)) {
					t.Fatalf("%s printed no JSON: %q", command, l)
				}
			}
		}
	})
}

func TestAssessAddsFiguresWhenAsked(t *testing.T) {
	house := `{"id":1,"today":"2026-06-15","visits":[{"date":"2026-06-15","frame":{"statements":[{"kind":"reading","psi":92,"point":"laundry","heater":"idle"}]}}]}`
	var got struct {
		Figures []struct{ Code, Text string } `json:"figures"`
	}
	out, _, code := lazyhand(t, house, "assess", "--figures")
	if err := json.Unmarshal([]byte(out), &got); err != nil || code != 0 || len(got.Figures) == 0 || got.Figures[0].Code != "saving" {
		t.Errorf("with --figures: %s (%v, exit code %d)", out, err, code)
	}
	if out, _, _ := lazyhand(t, house, "assess"); strings.Contains(out, `"figures"`) {
		t.Errorf("without --figures: %s", out)
	}
}
