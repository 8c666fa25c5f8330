package desk_test

import (
	"context"
	"strings"
	"testing"

	"lazyhand/store"
)

// What was said of "it", of where people are and after work is read anew as it was.
func TestARebuildReadsTheSameOfIt(t *testing.T) {
	w := &world{t: t, path: quickDir(t) + "/it.db"}
	if err := w.start(); err != nil {
		t.Fatal(err)
	}
	defer func() { w.db.Close() }()
	for _, m := range [][4]string{
		{"ana", "2026-06-15 08:00", "heading to 2210 Windrow Dr", ""},
		{"ana", "2026-06-15 08:30", "96 at the washer, burner off, prv looks like a 2003", "2210 Windrow Dr: High at 96"},
		{"ana", "2026-06-15 09:00", "swapped it, 60 now at the laundry", "2210 Windrow Dr: In band at 60"},
		{"ana", "2026-06-15 09:10", "recheck in 2 weeks", "recheck Mon 2026-06-29"},
		{"ana", "2026-06-15 09:11", "sorry, 3 weeks", "recheck Mon 2026-07-06"},
		{"ana", "2026-06-15 09:12", "backed it off, 57 on the same tap", "In band at 57"},
		{"eva", "2026-06-15 09:12", "28 en la lavadora", "¿Qué casa es?"},
		{"eva", "2026-06-15 09:13", "reguladora del 2009", "¿Qué casa es?"},
		{"eva", "2026-06-15 09:14", "18 Birch Ln", "18 Birch Ln: Baja: 28"},
		{"ben", "2026-06-15 09:20", "88 rear, 12 Alder St", "12 Alder St: High at 88"},
		{"ben", "2026-06-15 09:30", "66 rear, 9 Oak Ct", "9 Oak Ct: In band at 66"},
		{"ben", "2026-06-15 09:31", "the 88 at 12 Alder was the front bib not the rear", "12 Alder St: Read it again"},
	} {
		w.say(t, m[0], m[1], m[2])
		if said := strings.Join(w.hear(t, m[1]), "\n"); !strings.Contains(said, m[3]) {
			t.Errorf("%q is answered %q, want %q", m[2], said, m[3])
		}
	}
	if _, err := w.desk.Rebuild(context.Background(), true, nil, func(c store.Change) error {
		t.Errorf("a rebuild makes different: %s of message %d %q: %s -> %s", c.What, c.Message, c.Text, c.Was, c.Now)
		return nil
	}); err != nil {
		t.Fatal(err)
	}
}
