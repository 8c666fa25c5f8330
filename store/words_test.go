package store

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"
)

// search returns the texts that a search finds, newest first.
func search(t testing.TB, db *DB, words string, limit int) (texts []string) {
	t.Helper()
	err := db.Read(t.Context(), func(tx *Tx) error {
		list, err := tx.Search(words, limit)
		for _, m := range list {
			texts = append(texts, m.Text)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return texts
}

// TestASearchFindsWhatIsNotIndexedYet asks with some messages in the index and
// some not.
func TestASearchFindsWhatIsNotIndexedYet(t *testing.T) {
	db := fresh(t)
	for i := range 4 {
		if i == 2 {
			if err := db.IndexWords(t.Context()); err != nil {
				t.Fatal(err)
			}
		}
		say(t, db, fmt.Sprint("field/", i), fmt.Sprint("válvula ", i, " at Elm"))
	}
	for _, tt := range []struct {
		words string
		limit int
		want  []string
	}{
		{"VALVULA", 10, []string{"válvula 3 at Elm", "válvula 2 at Elm", "válvula 1 at Elm", "válvula 0 at Elm"}},
		{"valv* elm", 3, []string{"válvula 3 at Elm", "válvula 2 at Elm", "válvula 1 at Elm"}},
		{"elm", 1, []string{"válvula 3 at Elm"}},
		{"2 elm", 10, []string{"válvula 2 at Elm"}},
		{"1", 10, []string{"válvula 1 at Elm"}},
		{"oak", 10, nil},
	} {
		if got := search(t, db, tt.words, tt.limit); !slices.Equal(got, tt.want) {
			t.Errorf("%q (%d): %q, want %q", tt.words, tt.limit, got, tt.want)
		}
	}
}

// TestTheSearchIndexKeepsUp says, changes, removes and indexes in any order: a
// search finds what is on record, no less and no more, and the index holds
// together.
func TestTheSearchIndexKeepsUp(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		db := fresh(t)
		defer db.Close()
		texts := map[int64]string{}
		n := 0
		some := func() int64 {
			ids := make([]int64, 0, len(texts))
			for id := range texts {
				ids = append(ids, id)
			}
			slices.Sort(ids)
			if len(ids) == 0 {
				return 0
			}
			return rapid.SampledFrom(ids).Draw(rt, "id")
		}
		exec := func(query string, args ...any) {
			write(t, db, func(tx *Tx) error { _, err := tx.exec(query, args...); return err })
		}
		rt.Repeat(map[string]func(*rapid.T){
			"say": func(rt *rapid.T) {
				n++
				text := rapid.SampledFrom([]string{"elm", "oak", "elm oak", ""}).Draw(rt, "text")
				texts[say(t, db, fmt.Sprint("field/", n), text)] = text
			},
			"change": func(rt *rapid.T) {
				id := some()
				if id == 0 {
					return
				}
				exec(`UPDATE message SET text = 'oak', sum = 0 WHERE id >= ?`, id)
				for k := range texts {
					if k >= id {
						texts[k] = "oak"
					}
				}
			},
			"remove": func(rt *rapid.T) {
				id := some()
				exec(`DELETE FROM message WHERE id = ?`, id)
				delete(texts, id)
			},
			"index": func(rt *rapid.T) {
				if err := db.IndexWords(t.Context()); err != nil {
					rt.Fatal(err)
				}
			},
			"": func(rt *rapid.T) {
				for _, word := range []string{"elm", "oak"} {
					var ids []int64
					for id, text := range texts {
						if strings.Contains(text, word) {
							ids = append(ids, id)
						}
					}
					slices.Sort(ids)
					slices.Reverse(ids)
					var got []int64
					err := db.Read(t.Context(), func(tx *Tx) error {
						list, err := tx.Search(word, 1000)
						for _, m := range list {
							got = append(got, m.ID)
						}
						return err
					})
					if err != nil || !slices.Equal(got, ids) {
						rt.Fatalf("%s: %v %v, want %v", word, got, err, ids)
					}
				}
			},
		})
		if err := db.IndexWords(t.Context()); err != nil {
			rt.Fatal(err)
		}
		exec(`INSERT INTO message_words (message_words) VALUES ('integrity-check')`)
	})
}

// TestARemovedHouseLeavesNoWordBehindThatWasNotIndexed removes a house right
// after it was spoken of.
func TestARemovedHouseLeavesNoWordBehindThatWasNotIndexed(t *testing.T) {
	db := fresh(t)
	_, site := report(t, db, "field/1", "ana", "77 Quarry Rd", "92 rear tap, 77 Quarry Rd")
	say(t, db, "field/2", "the dog at 77 Quarry bites")
	var house SiteRecord
	if err := db.Read(t.Context(), func(tx *Tx) (err error) { house, err = tx.Site(site); return err }); err != nil {
		t.Fatal(err)
	}
	if _, err := db.ForgetHouse(t.Context(), house.Site, time.Unix(0, 0), nil); err != nil {
		t.Fatal(err)
	}
	if got := search(t, db, "quarry", 10); len(got) > 0 {
		t.Errorf("still found: %q", got)
	}
	if err := db.Read(t.Context(), func(tx *Tx) error {
		left, err := tx.messages(`WHERE text LIKE '%Quarry%'`)
		if len(left) > 0 {
			t.Errorf("still on record: %v", left)
		}
		return err
	}); err != nil {
		t.Fatal(err)
	}
}
