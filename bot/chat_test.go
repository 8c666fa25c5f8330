package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// chatAt runs the chat in the terminal over piped lines at a time of day.
func chatAt(t *testing.T, at time.Time, in string, set ...string) (out, errOut string, code int) {
	t.Helper()
	var o, e bytes.Buffer
	p := &program{in: strings.NewReader(in), out: &o, errOut: &e, now: func() time.Time { return at }, set: set}
	code = exitCode(chat(t.Context(), p), &e)
	return o.String(), e.String(), code
}

func TestThePipedLineOfTheReadmeIsAnsweredFirstAndAnyHour(t *testing.T) {
	for _, hour := range []int{3, 10, 23} {
		home(t)
		out, errOut, code := chatAt(t, time.Date(2026, 6, 15, hour, 0, 0, 0, time.UTC), "92 rear tap, heater idle, 123 Elm\n", "shop.time_zone=UTC")
		first, rest, _ := strings.Cut(out, "\n")
		if code != 0 || !strings.HasPrefix(first, "123 Elm: ") || !strings.Contains(rest, "\n[dispatch] 123 Elm: ") {
			t.Errorf("at %d:00: code %d\n%s%s", hour, code, out, errOut)
		}
	}
}

func TestTheFirstRunSaysWhereTheRecordIs(t *testing.T) {
	dir := home(t)
	now := time.Date(2026, 6, 15, 9, 0, 0, 0, time.UTC)
	file := filepath.Join(dir, "data", "lazyhand", "lazyhand.db")
	if _, errOut, _ := chatAt(t, now, "lunch?\n"); !strings.Contains(errOut, file) {
		t.Errorf("said %q, not where %s is", errOut, file)
	}
	if _, errOut, _ := chatAt(t, now, "lunch?\n"); errOut != "" {
		t.Errorf("the second time it says %q", errOut)
	}
	info, err := os.Stat(file)
	if err != nil || info.Mode().Perm() != 0o600 {
		t.Errorf("mode %v, %v", info.Mode(), err)
	}
}

func TestBadInputGetsAShortAnswerOrSilenceAndIsNeverStored(t *testing.T) {
	now := time.Date(2026, 6, 15, 9, 0, 0, 0, time.UTC)
	for what, text := range map[string]string{
		"nothing":             "",
		"blanks":              " \t \u00a0\u200b\n",
		"a very long message": strings.Repeat("water hammer ", 3_100) + "\n",
		"a longer line yet":   strings.Repeat("x", 400_000) + "\n",
		"binary":              "\x00\xff\xfe\x80\x01\x02\n",
		"emoji":               "🚿🔧💧👍🏽\n",
		"control characters":  "\x1b[2J\x1b]0;x\x07\b\b\n",
		"SQL":                 "'; DROP TABLE message; --\n",
		"a broadcast":         "<!channel> <@U1> *hey*\n",
		"an impossible value": "900 psi at the laundry, 123 Elm St\n",
		"a negative one":      "-5 psi at the laundry, 123 Elm St\n",
	} {
		t.Run(what, func(t *testing.T) {
			home(t)
			out, errOut, code := chatAt(t, now, text)
			if code != 0 || len(out) > 1500 || strings.ContainsAny(out, "\x1b\x00\a\b") {
				t.Errorf("code %d: %.300q %.300q", code, out, errOut)
			}
			if rows, _, _ := lazyhand(t, "", "export"); strings.Contains(rows, "900") || strings.Contains(rows, "-5,") {
				t.Errorf("stored:\n%s", rows)
			}
			if out, _, code := chatAt(t, now.Add(time.Minute), "61 laundry, heater idle, 9 Oak Ave\n"); code != 0 || !strings.Contains(out, "61") {
				t.Errorf("afterwards: code %d: %s", code, out)
			}
		})
	}
}

func TestARecordThatCannotBeUsedIsSaidInOneLine(t *testing.T) {
	dir := home(t)
	now := time.Date(2026, 6, 15, 9, 0, 0, 0, time.UTC)
	damaged := filepath.Join(dir, "damaged.db")
	if err := os.WriteFile(damaged, []byte(strings.Repeat("no record ", 1000)), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct{ file, want string }{
		{damaged, "restore the last backup"},
		{dir, ""},
		{filepath.Join(damaged, "shop.db"), ""},
		{"/proc/shop.db", ""},
	} {
		_, errOut, code := chatAt(t, now, "61 laundry\n", "record.file="+tt.file)
		if code != 1 || strings.Count(errOut, "\n") != 1 || !strings.Contains(errOut, tt.want) || !strings.HasPrefix(errOut, "lazyhand: ") {
			t.Errorf("%s: code %d: %s", tt.file, code, errOut)
		}
	}
	if _, errOut, code := chatAt(t, now, "61 laundry\n", "jobs.follow_ups=every day"); code != 1 || !strings.Contains(errOut, "jobs.follow_ups") || strings.Count(errOut, "\n") != 1 {
		t.Errorf("code %d: %s", code, errOut)
	}
}
