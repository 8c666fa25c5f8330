package desk

import (
	"encoding/json"
	"fmt"
	"strconv"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// answer takes frame as the answer to a question of ours; done is false when
// it is none, and then the message stands for itself.
func (t *turn) answer(q store.Question, f intents.Frame) (done bool, err error) {
	near := t.direct || q.Thread == t.m.Thread
	switch q.Kind {
	case askNoSite:
		if !namesOnly(f) {
			return false, nil
		}
		named := assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}
		found, sure, err := t.resolve(named, true)
		if err != nil {
			return true, err
		}
		if !sure {
			m, ok, err := t.tx.Message(q.Message)
			if err != nil || !ok {
				return ok, err
			}
			return true, t.askWhich(m, named, found)
		}
		return true, t.finish(q, found[0])
	case askWhichSite:
		var w whichSite
		if err := json.Unmarshal(q.Body, &w); err != nil {
			return false, fmt.Errorf("read the open question: %w", err)
		}
		if i, ok := choice(t.m.Text, len(w.Sites)); ok && near {
			s, err := t.tx.Site(w.Sites[i])
			if err != nil {
				return true, err
			}
			return true, t.finish(q, s)
		}
		if !namesOnly(f) {
			return false, nil
		}
		for _, id := range w.Sites {
			s, err := t.tx.Site(id)
			if err != nil {
				return true, err
			}
			if s.Key() == (assess.Site{Line: f.Site}).Key() {
				return true, t.finish(q, s)
			}
		}
		return false, nil
	case askUnclear:
		if !near || len(reports(f)) == 0 {
			return false, nil
		}
		if err := t.tx.EndQuestion(q.ID, "answered"); err != nil {
			return true, err
		}
		return false, t.clearMark(q.Message)
	}
	return false, nil
}

// namesOnly tells whether a message says nothing but a house.
func namesOnly(f intents.Frame) bool { return f.Site != "" && isChatter(f) }

// finish files the message that a question was about under the house that the
// answer names.
func (t *turn) finish(q store.Question, site store.SiteRecord) error {
	if err := t.tx.EndQuestion(q.ID, "answered"); err != nil {
		return err
	}
	m, found, err := t.tx.Message(q.Message)
	if err != nil || !found || m.State != store.Taken {
		return err
	}
	var f intents.Frame
	if err := json.Unmarshal(m.Frame, &f); err != nil {
		return fmt.Errorf("read the frame of message %d: %w", m.ID, err)
	}
	for _, id := range []int64{t.m.ID, m.ID} {
		if err := t.tx.FileUnder(id, site.Named); err != nil {
			return err
		}
	}
	f.Site = "" // settled: site stands for it
	return t.act(m, f, site, false)
}

// clearMark takes the question mark off a message that has been asked about;
// what follows from the answer stands under the answer.
func (t *turn) clearMark(message int64) error {
	m, found, err := t.tx.Message(message)
	if err != nil || !found || m.ID == t.m.ID {
		return err
	}
	if _, reported, err := t.tx.ReportOf(m.ID); err != nil || reported {
		return err
	}
	return t.mark(m, MarkNone)
}

// choice reads "2", "the second one", "la primera" as one of n offered.
func choice(text string, n int) (int, bool) {
	words := strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return strings.ContainsRune(" .,!#)(", r) })
	if len(words) == 0 || len(words) > 4 {
		return 0, false
	}
	for _, w := range words {
		if i, err := strconv.Atoi(w); err == nil && i >= 1 && i <= n {
			return i - 1, len(words) <= 2
		}
		if i, ok := ordinals[w]; ok && i < n {
			return i, true
		}
	}
	return 0, false
}

var ordinals = map[string]int{
	"first": 0, "1st": 0, "second": 1, "2nd": 1, "third": 2, "3rd": 2, "fourth": 3, "4th": 3,
	"primera": 0, "primero": 0, "segunda": 1, "segundo": 1, "tercera": 2, "tercero": 2, "cuarta": 3, "cuarto": 3,
}

// quote repeats a person's words in one short line.
func quote(s string) string {
	return "“" + shorten(strings.Join(strings.Fields(s), " "), 120) + "”"
}

// shorten cuts a text after so many letters and says so.
func shorten(s string, most int) string {
	if r := []rune(s); len(r) > most {
		return string(r[:most-1]) + "…"
	}
	return s
}
