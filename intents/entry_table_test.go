package intents

import (
	"strconv"
	"testing"
)

func TestATableOfEntriesGrowsAndFindsEachOfThem(t *testing.T) {
	table := newEntryTable(1)
	const words = 500
	for k := range words {
		table.add(&entry{word: strconv.Itoa(k)})
	}
	for k := range words {
		if e := table.find(strconv.Itoa(k)); e == nil || e.word != strconv.Itoa(k) {
			t.Fatalf("%d is not found", k)
		}
	}
	if e := table.find("-1"); e != nil {
		t.Errorf("found %q, which was never added", e.word)
	}
	n := 0
	for range table.all() {
		n++
	}
	if n != words || table.n != words {
		t.Errorf("%d entries are gone over and %d counted, want %d", n, table.n, words)
	}
}
