package desk

import (
	"fmt"
	"slices"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// orders reads what a dispatcher says of the open alert of a house outside of the
// alert's own thread: "I'll take 123 Elm", "send Ben to 123 Elm Thursday", "close
// 123 Elm, customer declined". done is false when the words stand for themselves.
func (t *turn) orders(f intents.Frame) (done bool, err error) {
	if t.role < Dispatcher || f.Site == "" || len(f.Unclear) > 0 || !ordersOnly(f) {
		return false, nil
	}
	found, sure, err := t.resolve(assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}, false)
	if err != nil || !sure || found[0].ID == 0 {
		return false, err
	}
	site := found[0]
	a, open, err := t.tx.OpenAlert(site.ID)
	if err != nil {
		return false, err
	}
	crew, err := t.tx.People()
	if err != nil {
		return false, err
	}
	text := besideHouse(t.m.Text, f.Site)
	if first, rest, _ := strings.Cut(text, " "); onTheBoard[strings.ToLower(first)] {
		text = "book " + rest
	}
	var step func() error
	if reason, ok := saysClosed(text); ok {
		step = func() error { return t.closeAlert(a, reason) }
	} else if saysClaim(text) {
		step = func() error { return t.claim(a) }
	} else if b, ok := readBooking(text, t.day, crew); ok && open && !strings.Contains(text, "?") {
		step = func() error { return t.book(a, b) }
	}
	if step == nil || !open && len(f.Asks()) > 0 && f.Asks()[0].About == intents.AskDone {
		return false, nil // "close 123 Elm" may mean its follow-up
	}
	if err := t.file(t.m, site.Named); err != nil {
		return true, err
	}
	if !open {
		return true, t.say(Body{Lead: fmt.Sprintf(t.words().NoAlertAt, siteLine(site.Site))})
	}
	if err := step(); err != nil {
		return true, err
	}
	now, there, err := t.tx.Alert(a.ID)
	if err != nil || !there || now.Change == a.Change {
		return true, err // it asked for what is missing
	}
	return true, t.say(Body{Lead: siteLine(site.Site) + ": " + t.stateIn(now, t.words())})
}

// ordersOnly tells whether a frame holds nothing that another part of the bot is
// to answer: chatter, a visit without a purpose of its own, something that is done.
func ordersOnly(f intents.Frame) bool {
	return !slices.ContainsFunc(f.Statements, func(s assess.Statement) bool {
		switch s := s.(type) {
		case assess.Plan:
			return s.Action != assess.OtherAction
		case intents.Ask:
			return s.About != intents.AskNone && s.About != intents.AskDone && s.About != intents.AskNextCheck
		}
		return true
	})
}

// besideHouse is what a text says beside the house that it names, and beside the
// small words that lead to it: "close the alert at 123 Elm, done" → "close, done".
func besideHouse(text, line string) string {
	site := wordSet(strings.Join(plainWords(line), " "))
	list := strings.Fields(text)
	gone := make([]bool, len(list)+1)
	for i := len(list) - 1; i >= 0; i-- {
		plain := strings.Join(plainWords(list[i]), "")
		gone[i] = site[plain] || ofHouse[plain] && gone[i+1]
	}
	var out []string
	for i, w := range list {
		if i > 0 && gone[i-1] && suffixes[strings.Join(plainWords(w), "")] {
			gone[i] = true
		}
		if !gone[i] {
			out = append(out, w)
		} else if sign := w[len(strings.TrimRight(w, ",;:.!?-–—")):]; sign != "" && len(out) > 0 {
			out[len(out)-1] += sign
		}
	}
	return strings.Join(out, " ")
}

var (
	ofHouse  = wordSet("at the alert alerts one house on for out alerta casa calle en la el de del")
	suffixes = wordSet("street avenue drive lane road court circle boulevard place trail terrace parkway highway")
)

// onTheBoard are verbs that book a visit where they open an order about a house:
// "put 123 Elm on for the 22nd".
var onTheBoard = wordSet("have put pencil slot squeeze get add fit pon ponme apunta anota agrega mete")

// askSameTwo reads a message that names two houses as saying that they are one,
// or that the second is the right address of the first. done is false when it
// says neither.
func (t *turn) askSameTwo(f intents.Frame) (done bool, err error) {
	if f.Site != "" || len(f.Statements) > 0 || len(f.Unclear) != 1 || len(f.Unclear[0].MightBe) != 2 {
		return false, nil
	}
	said := strings.Join(plainWords(t.m.Text), " ")
	renamed := saysRenamed(said)
	if !renamed && !saysSame(said) && !saysOne(said) || saysApart(said) || t.numbersBeside(f.Unclear[0].MightBe) {
		return false, nil
	}
	var houses [2]store.SiteRecord
	for i, line := range f.Unclear[0].MightBe {
		found, sure, err := t.resolve(assess.Site{Line: line}, renamed && i == 1)
		if err != nil || !sure {
			return false, err
		}
		houses[i] = found[0]
		if found[0].ID == 0 {
			return true, t.notOnRecord(found[0].Site)
		}
	}
	goes, stays := houses[0], houses[1]
	if !renamed && !saysSame(said) && goes.ID < stays.ID { // "A and B are one house": under the name that was known first
		goes, stays = stays, goes
	}
	if goes.ID == stays.ID {
		return false, nil
	}
	if err := t.file(t.m, stays.Named); err != nil {
		return true, err
	}
	return true, t.join(stays, store.SiteRecord{ID: goes.ID, Named: goes.ID, Site: goes.Site})
}

// numbersBeside tells whether the message gives a number that is none of its
// houses': a report, not a word about two addresses.
func (t *turn) numbersBeside(lines []string) bool {
	of := wordSet(strings.Join(plainWords(strings.Join(lines, " ")), " "))
	return slices.ContainsFunc(plainWords(t.m.Text), func(w string) bool { return w[0] <= '9' && !of[w] })
}

// saysOne tells whether words say of two houses that they are one.
func saysOne(said string) bool {
	for _, p := range []string{"same house", "same place", "same address", "the same one", "are the same", "one house", "one and the same", "duplicate", "misma casa", "la misma", "son una", "una sola casa", "repetida"} {
		if strings.Contains(said, p) {
			return true
		}
	}
	return false
}

// saysRenamed tells whether words give the right address of a house.
func saysRenamed(said string) bool {
	for _, p := range []string{"should be", "is now", "ahora es", "shouldve been", "should have been", "is really", "is actually", "was really", "was actually", "supposed to be", "rename", "its really", "its actually", "right address",
		"correct address", "wrong address", "address is wrong", "address for", "address of", "debe ser", "deberia ser", "en realidad", "direccion correcta", "direccion esta mal", "mal la direccion"} {
		if strings.Contains(said, p) {
			return true
		}
	}
	return strings.HasPrefix(said, "change ") || strings.HasPrefix(said, "correct ") || strings.HasPrefix(said, "cambia ") || strings.HasPrefix(said, "corrige ")
}
