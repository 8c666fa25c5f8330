package intents

import (
	"fmt"
	"strings"
)

// cueSet is what a single word, or a pair of words, lends to a clause that may ask
// for something: "owe" speaks of follow-ups, "yank" of taking away. Cues carry
// requests worded in ways that no phrase of the lexicon foresees. Each is a bit of
// the set.
type cueSet uint64

// Cues of words; the lines "cue NAME: …" of the lexicon list the words.
const (
	cueWh        cueSet = 1 << iota // opens a question: what, who, cuál
	cueAux                          // opens a question that wants yes or no: did, has, any
	cueShow                         // wants to be shown: show, send, dig up
	cueWant                         // wants something: need, would like
	cueMake                         // wants something made for somebody: print, write
	cueSmall                        // words that add nothing: the, for, please
	cueRemove                       // takes away: delete, erase
	cueTake                         // takes away only beside a report: drop, toss
	cueKeep                         // "don't forget", "note that"
	cueLast                         // the last one
	cueSent                         // what was sent, posted, logged
	cueEntry                        // a report: report, reading, entry
	cueUnmeant                      // not meant: "didn't mean"
	cueMisplaced                    // another house than meant: "wrong yard"
	cueMistake                      // a number told wrong: "my mistake"
	cueAmend                        // puts a number right: change, edit
	cuePast                         // what was found or done before
	cueRecord                       // what is on record: notes, numbers, visits
	cueOwed                         // what is still to be done: owe, overdue
	cueFollow                       // a follow-up: recheck, reminder
	cueTrend                        // a course over time: drifting, "over the years"
	cueEnough                       // whether a size will do: enough, "big enough"
	cuePuzzle                       // what may be wrong: culprit, "next move"
	cuePaper                        // a sheet for the customer: sheet, paperwork
	cuePerson                       // a customer: owner, lady, buyers
	cueOffice                       // who is no customer: office, city
	cueCrew                         // the shop's people: crew, everybody, we
	cuePeriod                       // a stretch of work: week, month
	cueResult                       // what came of it: busy, done
	cueSumUp                        // adds up: "sum up"
	cueClose                        // closes a follow-up: cross, close
	cueClosed                       // as closed: off, done
	cueShift                        // puts off: push, wait
	cueHow                          // the way to do something: how
	cueTell                         // tells the bot: log, type
	cueBot                          // the bot and its things: you, reading
	cueErrand                       // the way there, keys, prices: no question of the record
	cueForeign                      // a thing of no house: truck, coffee, compressor
	cueHail                         // greets: hey, buenas
	cuePreface                      // opens a message when a mark follows: "Update:", "ok so,"
	cuePlain                        // a pair whose first word lends nothing of its own here: "before noon"
	cueFinish                       // closes a follow-up, and nothing else: tick, wrap up
	cueDefer                        // puts a follow-up off, and nothing else: park, stall
	cueHowTo                        // shows how the bot is used: example, instructions
	cueFalse                        // of a report: mistaken, incorrect
	cueSizing                       // asks for a size: size, calc, smallest
	cueRise                         // leads to degrees of a rise
	cueInlet                        // leads to the degrees of the cold water
	cueDial                         // leads to the degrees of a thermostat
	cueStatic                       // leads to the pressure of a question
	cueLoose                        // a small word that leads to a number only where no other does: at, in
	// Cues of what the rules know already.
	cueSite
	cueThat  // that, this
	cueIt    // it, me: what a clause without a name speaks of
	cueGreet // may stand before a question of yes or no: hey, ok, so
	cueHere  // the house at hand: there, here, this house
	cueItem
	cueGallons
	cueReading
	cueSpan   // a time to come
	cueAsks   // said as a question
	cueOrders // said as an order
	cueMark   // ends in a question mark
	cueOther  // a word that no cue knows
)

var cueNames = map[string]cueSet{
	"wh": cueWh, "aux": cueAux, "show": cueShow, "want": cueWant, "make": cueMake, "small": cueSmall, "remove": cueRemove,
	"take": cueTake, "keep": cueKeep, "last": cueLast, "sent": cueSent, "entry": cueEntry, "unmeant": cueUnmeant,
	"misplaced": cueMisplaced, "mistake": cueMistake, "amend": cueAmend, "past": cuePast, "record": cueRecord, "owed": cueOwed,
	"follow": cueFollow, "trend": cueTrend, "enough": cueEnough, "puzzle": cuePuzzle, "paper": cuePaper, "person": cuePerson,
	"office": cueOffice, "crew": cueCrew, "period": cuePeriod, "result": cueResult, "sumup": cueSumUp, "close": cueClose,
	"closed": cueClosed, "shift": cueShift, "how": cueHow, "tell": cueTell, "bot": cueBot, "errand": cueErrand,
	"foreign": cueForeign, "here": cueHere, "that": cueThat, "it": cueIt, "greet": cueGreet,
	"hail": cueHail, "preface": cuePreface, "plain": cuePlain,
	"finish": cueFinish, "defer": cueDefer, "howto": cueHowTo, "false": cueFalse, "sizing": cueSizing, "rise": cueRise,
	"inlet": cueInlet, "dial": cueDial, "static": cueStatic, "loose": cueLoose,
}

// leading are the cues that say what a number of a question is; they lend a clause
// nothing.
const leading = cueRise | cueInlet | cueDial | cueStatic | cueLoose

func (s cueSet) has(c cueSet) bool { return s&c != 0 }

// addCue keeps a word or a pair of words of a cue line.
func (l *lexicon) addCue(name, body string) error {
	c, ok := cueNames[name]
	if !ok {
		return fmt.Errorf("the lexicon has a cue %q that the parser does not know", name)
	}
	for _, phrase := range strings.Split(body, "|") {
		w := strings.Fields(strings.ReplaceAll(fold(phrase), "-", " ")) // "go-back" is two words
		switch {
		case len(w) == 3 && w[1] == "...":
			e := l.entry(w[0])
			e.parted = append(e.parted, parted{w[2], c})
		case len(w) == 1:
			l.entry(w[0]).cue.alone |= c
		case len(w) == 2:
			l.entry(w[0]).cue.pair(l.entry(w[1]), c)
		default:
			return fmt.Errorf("the cue %q is not one word or two, nor a verb and its particle with ... between them", phrase)
		}
	}
	return nil
}

// parted is the particle of a verb that stands apart from it, and what both lend
// together: "put … off", "take … back".
type parted struct {
	particle string
	cues     cueSet
}

// widestParting is how many words a verb and its particle may stand apart.
const widestParting = 9

// cuesIn returns the cues of all words of sentence s, whatever stands beside them, and
// that of a question mark: what its clauses lack is not among them.
func (m *message) cuesIn(s int) cueSet {
	se := &m.sents[s]
	if se.cued {
		return se.cues
	}
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		switch {
		case it.site || it.num != nil:
		case it.mark:
			if it.text == "?" {
				se.cues |= cueMark
			}
		default:
			for k := it.tok; k < it.tok+it.n; k++ {
				if t := &m.toks[k]; t.kind == word && m.p.lex.of(t).cues != 0 {
					se.cues |= m.wordCues(k)
				}
			}
		}
	}
	se.cued = true
	return se.cues
}

// cuesOf collects the cues of items from..to of sentence s.
func (m *message) cuesOf(s, from, to int) cueSet {
	var set, opener cueSet
	told := false     // "we have": told, not asked
	promised := false // "I'll send": promised, not ordered
	for i := from; i < to; i++ {
		it := &m.items[i]
		switch {
		case it.site:
			set |= cueSite
			continue
		case it.num != nil:
			if unitDays(it.unit) > 0 {
				set |= cueSpan
			}
			if it.unit == "gal" || it.unit == "litre" {
				set |= cueGallons
			}
			for k := it.tok + 1; it.unit == "other" && i+1 < len(m.items) && k < m.items[i+1].tok; k++ {
				set |= m.wordCues(k) & cueCrew // "the 5 of us"
			}
			continue
		case it.mark:
			if it.text == "?" {
				set |= cueMark | cueAsks
			}
			continue
		}
		if it.kinds.has(cItem) {
			set |= cueItem
		}
		for k := it.tok; k < it.tok+it.n; k++ {
			if m.toks[k].kind != word {
				continue
			}
			here := m.wordCues(k)
			if m.toks[k].text == "mejor" && set.has(cueSpan) {
				here &^= cueDefer // "recheck en 2 semanas, no, mejor en 3" puts the plan right
			}
			if m.toks[k].text == "did" && i+2 < to && m.items[i+1].site && (m.items[i+2].mark && m.text(i+2) != "?" || m.is(i+2, cDid, "")) {
				here &^= cueAux // "did 606 N Thrasher St. flushed heater" tells of a visit
			}
			if it.kinds.has(cWill) && m.toks[k].text == "hay" {
				here = 0 // "hay que volver" asks nothing
			}
			if here&^leading == 0 && !m.paired(k) && !it.kinds.has(cItem) && !it.kinds.has(cAsk) && !m.timeWordAt(i) {
				here = cueOther
			}
			promised = promised || opener == 0 && m.promises(k)
			// what opens a clause says how it is meant, after words that add nothing
			switch {
			case opener != 0:
				here &^= cueWh | cueAux | cueHow | cueShow
			case !here.has(cueSmall) || here.has(cueWh) || here.has(cueAux) && m.asksOf(i):
				if told {
					here &^= cueAux
				}
				opener = here | cueSmall
			default:
				told = told || !here.has(cueGreet)
				here &^= cueWh | cueAux | cueHow
			}
			set |= here
		}
	}
	if opener&(cueWh|cueAux|cueHow) != 0 {
		set |= cueAsks
	}
	if promised {
		opener &^= cueShow | cueMake
	}
	if opener&(cueShow|cueWant|cueMake|cueShift) != 0 {
		set |= cueOrders
	}
	for _, w := range m.moments {
		if w.at >= from && w.at < to {
			set |= cueSpan
		}
	}
	if m.readingAmong(s, from, to) {
		set |= cueReading
	}
	return set
}

// promises tells whether the word at token k says that the writer is to do what follows:
// "I'll send the pressure when I'm done", but "will you send".
func (m *message) promises(k int) bool {
	switch m.toks[k].text {
	case "ill", "will", "gonna":
		return k+1 < len(m.toks) && m.toks[k+1].text != "you" && m.toks[k+1].text != "need"
	}
	return false
}

// wordCues returns the cues of the word at token k, alone and with the next word.
func (m *message) wordCues(k int) cueSet {
	t := &m.toks[k]
	if t.cued {
		return t.cues
	}
	w := m.p.lex.of(t)
	if w.cues == 0 {
		return 0
	}
	t.cued = true
	t.cues = w.cue.alone
	next := k + 1
	if next+1 < len(m.toks) && m.toks[next].text == "-" && m.toks[next].glued && m.toks[next+1].glued {
		next++ // "go-back", "roll-up"
	}
	if len(w.cue.pairs) > 0 && next < len(m.toks) && m.toks[next].kind == word {
		if pair := w.cue.with(m.p.lex.of(&m.toks[next])); pair.has(cuePlain) {
			t.cues = pair
		} else {
			t.cues |= pair
		}
	}
	for _, p := range w.parted {
		for j := k + 2; j < len(m.toks) && j <= k+widestParting && (m.toks[j].kind != mark || m.toks[j].text == "-"); j++ {
			if m.toks[j].text == p.particle {
				t.cues |= p.cues
				break
			}
		}
	}
	return t.cues
}

// asksOf tells whether a small word at item i asks of the house or of what was
// spoken of: "is 14 Maple …", "is it …".
func (m *message) asksOf(i int) bool {
	if i+1 >= len(m.items) || i > m.sents[m.items[i].sent].from || m.items[i].n > 1 {
		return false
	}
	next := &m.items[i+1]
	return next.site || !next.mark && next.num == nil && m.wordCues(next.tok)&(cueIt|cueThat|cueHere) != 0
}

// paired tells whether the word before token k has cues together with it.
func (m *message) paired(k int) bool {
	if k == 0 || m.toks[k-1].kind != word {
		return false
	}
	w := m.p.lex.of(&m.toks[k-1])
	return len(w.cue.pairs) > 0 && w.cue.with(m.p.lex.of(&m.toks[k])) != 0
}

// timeWordAt tells whether the word at item i names a day or a span.
func (m *message) timeWordAt(i int) bool {
	for _, w := range m.moments {
		if i >= w.at && i < w.end {
			return true
		}
	}
	return false
}
