package desk_test

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"lazyhand/bot/desk"
	"lazyhand/store"
	"lazyhand/store/storetest"
)

// TestOlderRecordsGoOn opens the records that released programs wrote and works
// on with them.
func TestOlderRecordsGoOn(t *testing.T) {
	for version := 1; version <= 5; version++ {
		t.Run(fmt.Sprint(version), func(t *testing.T) { goesOn(t, version) })
	}
}

// leftSince are visits with work that a later message read again: the kept
// records were made when only the work's own message told what was left.
var leftSince = map[string]string{
	"18 Birch Ln 2026-06-17 61": "18 Birch Ln 2026-06-17 63",
	"31 Larch Ct 2026-06-29 58": "31 Larch Ct 2026-06-29 62",
}

// promisedSince is a recheck that the visit itself asked for: the kept records were made when
// that visit's next reading ended it, and a later one was opened in its place.
var promisedSince = map[string]string{"done recheck 2026-08-28": "done recheck 2026-07-29"}

func goesOn(t *testing.T, version int) {
	w := &world{t: t, path: storetest.Older(t, version, quickDir(t))}
	if err := w.start(); err != nil {
		t.Fatal(err)
	}
	defer func() { w.db.Close() }()
	rebuilds := func() {
		t.Helper()
		_, err := w.desk.Rebuild(context.Background(), true, nil, func(c store.Change) error {
			if c.What == "read" { // today's parser may tell more of a message
				t.Logf("message %d %q is read otherwise: %s -> %s", c.Message, c.Text, c.Was, c.Now)
				return nil
			}
			if c.What == "filed" && leftSince[strings.TrimSuffix(c.Was, ".0 psi")] == strings.TrimSuffix(c.Now, ".0 psi") {
				return nil
			}
			if c.What == "follow-up" && promisedSince[c.Was] == c.Now && c.Now != "" {
				return nil
			}
			t.Errorf("a rebuild makes different: %s of message %d %q: %s -> %s", c.What, c.Message, c.Text, c.Was, c.Now)
			return nil
		})
		if err != nil {
			t.Error(err)
		}
	}
	rebuilds()
	w.n = 1000 // names of messages that were not used yet
	w.say(t, "ana", "2026-06-30 13:00", "61 laundry, heater idle, 18 Birch Ln")
	if said := strings.Join(w.hear(t, "2026-06-30 13:01"), "\n"); !strings.Contains(said, "18 Birch Ln: In band at 61") {
		t.Errorf("a new report is answered %q", said)
	}
	// What was asked before is answered now.
	var asked store.Message
	err := w.db.Read(t.Context(), func(tx *store.Tx) (err error) {
		asked, _, err = tx.Message(23)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	answer := desk.Message{Key: "field/1782843000.001001", Kind: store.Said, Channel: "field", TS: "1782843000.001001", Thread: asked.TS,
		Author: "ana", Name: "ana", At: at(t, "2026-06-30 13:10"), Text: "12 Alder St"}
	if err := w.desk.Take(t.Context(), answer); err != nil {
		t.Fatal(err)
	}
	if said := strings.Join(w.hear(t, "2026-06-30 13:11"), "\n"); !strings.Contains(said, "12 Alder St: High at 84") {
		t.Errorf("the answer to an older question is answered %q", said)
	}
	// An alert that was claimed before is closed.
	m := desk.Message{Key: "press/1100", Kind: store.Pressed, Channel: "dispatch", TS: "1100", Author: "dana", Name: "dana", At: at(t, "2026-06-30 13:20"), Button: "close", Value: "1"}
	if err := w.desk.Take(t.Context(), m); err != nil {
		t.Fatal(err)
	}
	w.hear(t, "2026-06-30 13:21")
	rebuilds()
	if faults, err := w.db.Integrity(t.Context()); err != nil || len(faults) > 0 {
		t.Errorf("%v %v", faults, err)
	}
}
