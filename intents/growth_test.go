package intents_test

import (
	"strings"
	"testing"
	"time"

	"lazyhand/intents"
)

// slowest is far above what a message of the greatest length takes (some 10 ms)
// and far below what it took when rules compared all of it with all of it.
const slowest = 150 * time.Millisecond

// A message that says one thing over and over until it is as long as any may be
// is read about as fast for its length as a short one. The growth itself is
// BenchmarkVisitNote's to show.
func TestNoLongMessageIsSlow(t *testing.T) {
	p := newParser(t)
	for _, between := range []string{" ", ", ", "\n"} {
		for _, l := range readCorpus(t, "../testdata/intents/dev.jsonl") {
			text := strings.Repeat(l.Text+between, 7900/(len(l.Text)+len(between)))
			best := time.Hour
			for range 3 {
				start := time.Now()
				p.Parse(text, intents.Context{})
				if best = min(best, time.Since(start)); best < slowest {
					break
				}
			}
			if best >= slowest {
				t.Errorf("%d bytes of %.60q took %v", len(text), l.Text+between, best)
			}
		}
	}
}
