package intents

import (
	"bufio"
	"encoding/json"
	"math/rand/v2"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"
)

// gatedAndOpen returns a parser, and one whose gates are all open.
func gatedAndOpen(t *testing.T) (gated, open *Parser) {
	t.Helper()
	gated, err := New()
	if err != nil {
		t.Fatal(err)
	}
	if open, err = New(); err != nil {
		t.Fatal(err)
	}
	open.ungated = true
	return gated, open
}

// labelled calls do with every labelled message and where it stands.
func labelled(t *testing.T, do func(file string, line int, text string, ctx Context)) {
	t.Helper()
	files, _ := filepath.Glob("../testdata/intents/*.jsonl")
	more, _ := filepath.Glob("../testdata/intents/*/*.jsonl")
	tempting, _ := filepath.Glob("../testdata/tempting/*.jsonl")
	n := 0
	for _, name := range slices.Concat(files, more, tempting) {
		f, err := os.Open(name)
		if err != nil {
			t.Fatal(err)
		}
		defer f.Close()
		sc := bufio.NewScanner(f)
		sc.Buffer(nil, 1<<20)
		for line := 1; sc.Scan(); line++ {
			var l struct {
				Text    string
				Context Context
			}
			if err := json.Unmarshal(sc.Bytes(), &l); err != nil {
				t.Fatalf("%s:%d: %v", name, line, err)
			}
			n++
			do(name, line, l.Text, l.Context)
		}
	}
	if n < 1000 {
		t.Errorf("only %d labelled messages were found", n)
	}
}

// Gates only spare work: with all of them open every labelled message is read as it is
// with them.
func TestGatesChangeNothing(t *testing.T) {
	gated, open := gatedAndOpen(t)
	labelled(t, func(file string, line int, text string, ctx Context) {
		if a, b := gated.Parse(text, ctx), open.Parse(text, ctx); !reflect.DeepEqual(a, b) {
			t.Errorf("%s:%d is read in another way with all gates open", file, line)
		}
	})
}

// Nor does it matter which word of a list stands in a message: a gate has all the words that
// its rule has, also those that no labelled message holds.
func TestGatesChangeNothingWhateverWordStands(t *testing.T) {
	gated, open := gatedAndOpen(t)
	var phrases []string
	for _, words := range gated.lex.lists {
		phrases = append(phrases, wordsOf(words)...)
	}
	slices.Sort(phrases)
	random := rand.New(rand.NewPCG(1, 2))
	labelled(t, func(_ string, _ int, text string, ctx Context) {
		words := strings.Split(text, " ")
		words[random.IntN(len(words))] = phrases[random.IntN(len(phrases))]
		text = strings.Join(words, " ")
		if a, b := gated.Parse(text, ctx), open.Parse(text, ctx); !reflect.DeepEqual(a, b) {
			t.Errorf("%q is read in another way with all gates open", text)
		}
	})
}
