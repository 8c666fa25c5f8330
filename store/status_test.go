package store

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"lazyhand/assess"
)

func TestStatusCountsWhatIsOpen(t *testing.T) {
	ctx := t.Context()
	path := filepath.Join(t.TempDir(), "shop.db")
	db, err := Open(ctx, path)
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	at := time.Date(2026, 6, 15, 9, 0, 0, 0, time.UTC)
	err = db.Write(ctx, func(tx *Tx) error {
		for i, text := range []string{"a", "b", "c"} {
			id, _, err := tx.AddMessage(Message{Key: "C1/" + text, Kind: Said, Channel: "C1", TS: text, Thread: text, Author: "U1", At: at, Text: text})
			if err != nil {
				return err
			}
			if i == 0 {
				if err := tx.Mark(id, SetAside, "strange"); err != nil {
					return err
				}
			}
			if err := tx.Queue(Post{Key: "reply:" + string(rune('0'+id)), Channel: "C1", Thread: text, Body: []byte(`{}`), After: at.Add(time.Duration(i) * time.Minute), Since: at}); err != nil {
				return err
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	err = db.Write(ctx, func(tx *Tx) error {
		p, _, err := tx.PostByKey("reply:1")
		if err != nil {
			return err
		}
		if _, err := tx.Sending(p.ID, "ready", at); err != nil {
			return err
		}
		return tx.Sent(p.ID, "ref", at.Add(2*time.Second))
	})
	if err != nil {
		t.Fatal(err)
	}
	s, err := db.Status(ctx, assess.Date{Year: 2026, Month: 6, Day: 15})
	if err != nil {
		t.Fatal(err)
	}
	if s.Messages[Taken] != 2 || s.Messages[SetAside] != 1 || s.Ready != 2 || s.Sending != 0 || !s.OldestOpen.Equal(at.Add(time.Minute)) || s.Bytes == 0 || s.Version != len(steps()) {
		t.Errorf("%+v", s)
	}
	within, all, sum, err := db.ReplyTimes(ctx, []time.Duration{time.Second, 5 * time.Second})
	if err != nil || within[0] != 0 || within[1] != 1 || all != 1 || sum != 2*time.Second {
		t.Errorf("%v %d %v %v", within, all, sum, err)
	}
	if faults, err := db.Integrity(ctx); err != nil || len(faults) > 0 {
		t.Errorf("a sound record: %v %v", faults, err)
	}
}

func TestIntegrityNamesADamagedFile(t *testing.T) {
	ctx := t.Context()
	path := filepath.Join(t.TempDir(), "shop.db")
	db, err := Open(ctx, path)
	if err != nil {
		t.Fatal(err)
	}
	if err := db.Close(); err != nil {
		t.Fatal(err)
	}
	body, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	for i := len(body) - 6*pageSize; i < len(body)-3*pageSize; i++ { // behind what names the tables
		body[i] = 0xff
	}
	if err := os.WriteFile(path, body, 0o600); err != nil {
		t.Fatal(err)
	}
	r, err := OpenReader(ctx, path)
	if err != nil {
		t.Fatal(err)
	}
	defer r.Close()
	faults, err := r.Integrity(ctx)
	if err == nil && len(faults) == 0 {
		t.Error("a damaged file passes")
	}
	if err != nil && !strings.Contains(err.Error(), "damaged") {
		t.Errorf("not in plain words: %v", err)
	}
}
