package intents

import (
	"reflect"
	"testing"
)

func TestTheLexiconFitsTheRoomMadeForIt(t *testing.T) {
	l, err := readLexicon(nil)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		what    string
		n, room int
	}{{"nodes", len(l.nodes), nodes}, {"letters", len(l.spelling), spelt * nodes}, {"words", l.entries.n, entries}} {
		if c.n > c.room {
			t.Errorf("%d %s, with room for %d: what outgrows its room is copied, which takes longer than to read it; raise the number", c.n, c.what, c.room)
		}
	}
}

func TestAShopsWordsAreItsOwn(t *testing.T) {
	knows := func(words ...Word) bool {
		p, err := New(words...)
		if err != nil {
			t.Fatal(err)
		}
		return reflect.DeepEqual(p.Parse("71 psi at the zolly", Context{}), p.Parse("71 psi at the laundry", Context{}))
	}
	if knows() || !knows(Word{Says: "zolly", Means: "laundry"}) || knows() {
		t.Error(`"zolly" is to be the laundry for the shop that says so, and for nobody before or after it`)
	}
}
