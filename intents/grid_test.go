package intents

import (
	"slices"
	"strings"
	"sync"
	"testing"
)

// The tests of the files grid_*_test.go hold products: the ways to say one fact, made of what may stand in each
// place of it, so that no way is known and its sister not.

// product returns every phrase that takes one word of each axis, in order; "" leaves a place out.
func product(axes ...[]string) []string {
	phrases := []string{""}
	for _, axis := range axes {
		var longer []string
		for _, phrase := range phrases {
			for _, word := range axis {
				longer = append(longer, strings.Join(strings.Fields(phrase+" "+word), " "))
			}
		}
		phrases = longer
	}
	return phrases
}

// oneParser is the parser of all grids, which keeps nothing of what it reads.
var oneParser = sync.OnceValues(func() (*Parser, error) { return New() })

// inFrames checks that each phrase, put in the place of "{}" into each frame, is read as the frame says.
func inFrames(t *testing.T, frames [][2]string, phrases ...[]string) {
	t.Helper()
	p, err := oneParser()
	if err != nil {
		t.Fatal(err)
	}
	for _, phrase := range slices.Concat(phrases...) {
		for _, frame := range frames {
			text := strings.Replace(frame[0], "{}", phrase, 1)
			if got := inWords(p.Parse(text, Context{})); got != frame[1] {
				t.Errorf("%q\n got %s\nwant %s", text, got, frame[1])
			}
		}
	}
}
