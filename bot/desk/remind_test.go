package desk

import (
	"testing"

	"pgregory.net/rapid"

	"lazyhand/assess"
	"lazyhand/store"
)

// Houses of one street, and streets of one postcode, stand side by side; nobody
// is lost.
func TestNearestTogether(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(0, 12).Draw(t, "n")
		var list []store.FollowUp
		for i := range n {
			list = append(list, store.FollowUp{ID: int64(i + 1), Street: rapid.SampledFrom([]string{"alder", "birch", "cedar", ""}).Draw(t, "street"),
				Postcode: rapid.SampledFrom([]string{"", "10001", "10002"}).Draw(t, "postcode")})
		}
		got := nearestTogether(list)
		if len(got) != n {
			t.Fatalf("%d of %d are left", len(got), n)
		}
		seen := map[string]int{}
		for i, f := range got {
			place := f.Postcode + "/" + f.Street
			if f.Street == "" || f.Postcode == "" {
				continue
			}
			if last, ok := seen[place]; ok && i-last > 1 {
				for _, between := range got[last+1 : i] {
					if between.Street != f.Street && between.Postcode != f.Postcode {
						t.Fatalf("%s is parted by %+v in %+v", place, between, got)
					}
				}
			}
			seen[place] = i
		}
	})
}

// A follow-up that is less urgent waits longer, but not for ever.
func TestHeadStartIsBounded(t *testing.T) {
	for u, days := range headStart {
		if days > 30 {
			t.Errorf("%s goes %d days before a note", u, days)
		}
	}
	if headStart[assess.Now] <= headStart[assess.Soon] || headStart[assess.Soon] <= headStart[assess.Watch] || headStart[assess.Watch] <= headStart[assess.Note] {
		t.Error("the urgent do not go first")
	}
}
