package store

import (
	"context"
	"database/sql"
	"database/sql/driver"
	"slices"
	"strings"
)

// The search index lags behind the messages: to write it costs as much as a
// tenth of all that follows from a message, and nobody waits for it. Messages
// get into it in the order of their ids; those after the last one in it are
// looked through by themselves, so that a search misses nothing.

const lastIndexed = `(SELECT ifnull(max(docid), 0) FROM message_words_docsize)`

// atOnceIndexed is how many messages share one transaction.
const atOnceIndexed = 1000

// IndexWords brings the search index up to date with the messages.
func (db *DB) IndexWords(ctx context.Context) error {
	for {
		behind := false
		err := db.Read(ctx, func(tx *Tx) (err error) {
			_, err = tx.one([]any{&behind}, `SELECT EXISTS (SELECT 1 FROM message WHERE id > `+lastIndexed+`)`)
			return err
		})
		if err != nil || !behind {
			return err
		}
		if err := db.Write(ctx, func(tx *Tx) error { return tx.indexWords(atOnceIndexed) }); err != nil {
			return err
		}
	}
}

// indexWords puts messages into the search index, -1 for all that are not yet.
func (tx *Tx) indexWords(limit int) error {
	_, err := tx.exec(`INSERT INTO message_words (docid, text) SELECT id, text FROM message WHERE id > `+lastIndexed+` ORDER BY id LIMIT ?`, limit)
	return err
}

const searchMessages = `SELECT ` + messageColumns + ` FROM message WHERE id IN (SELECT docid FROM message_words WHERE message_words MATCH ? ORDER BY docid DESC LIMIT ?) ORDER BY id DESC`

// Search returns the newest messages that hold all of the words; a word that
// ends in * stands for all that begin so. Case and accents do not matter.
func (tx *Tx) Search(words string, limit int) ([]Message, error) {
	match := phrase(words)
	if match == "" {
		return nil, nil
	}
	ids, err := tx.searchNewest(match)
	if err != nil {
		return nil, err
	}
	var found []Message
	for _, id := range ids[:min(limit, len(ids))] {
		m, _, err := tx.Message(id)
		if err != nil {
			return nil, err
		}
		found = append(found, m)
	}
	earlier, err := all(tx, scanMessage, searchMessages, match, limit-len(found))
	return append(found, earlier...), err
}

// searchNewest finds messages that are not in the index yet, newest first, by
// an index of their own that lives as long as the question.
func (tx *Tx) searchNewest(match string) (ids []int64, err error) {
	type said struct {
		id   int64
		text string
	}
	list, err := all(tx, func(scan func(...any) error) (s said, err error) {
		err = scan(&s.id, &s.text)
		return s, err
	}, `SELECT id, text FROM message WHERE id > `+lastIndexed+` ORDER BY id`)
	if err != nil || len(list) == 0 {
		return nil, err
	}
	apart, err := sql.Open("sqlite3", ":memory:")
	if err != nil {
		return nil, err
	}
	defer apart.Close()
	err = on(context.Background(), apart, func(w *wire) error {
		if _, _, err := w.run(`CREATE VIRTUAL TABLE words USING fts4 (text, tokenize=unicode61)`, nil); err != nil {
			return err
		}
		if err := w.begin("BEGIN"); err != nil {
			return err
		}
		for _, s := range list {
			if _, _, err := w.run(`INSERT INTO words (docid, text) VALUES (?, ?)`, []any{s.id, s.text}); err != nil {
				return err
			}
		}
		return w.rows(`SELECT docid FROM words WHERE words MATCH ? ORDER BY docid`, []any{match}, func(row []driver.Value) error {
			var id int64
			err := assign([]any{&id}, row)
			ids = append(ids, id)
			return err
		})
	})
	slices.Reverse(ids)
	return ids, err
}

// phrase quotes each word, so that nothing in them is an operator.
func phrase(words string) string {
	var out []string
	for _, w := range strings.Fields(words) {
		bare := strings.Trim(strings.ReplaceAll(w, `"`, ""), "*")
		if strings.ContainsFunc(bare, isWord) {
			if strings.HasSuffix(w, "*") {
				bare += "*"
			}
			out = append(out, `"`+bare+`"`)
		}
	}
	return strings.Join(out, " ")
}

func isWord(r rune) bool {
	return r >= '0' && r <= '9' || r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r >= 0x80
}
