package intents

import (
	"strings"

	"lazyhand/assess"
)

// Plans told by other words than a verb of doing and its object.

// unswallow undoes phrases that swallow a verb's particle or a stress: "swap that heater out
// next month", "needs a tank bad".
func (m *message) unswallow() {
	if m.kinds.has(cState) && m.kinds.has(cDo) {
		for i := range m.items {
			if m.is(i, cState, "idle") && strings.HasSuffix(m.text(i), " out") && m.left(i, 3, true, func(k int) bool {
				return (m.is(k, cDo, "replace") || m.is(k, cBase, "replaced")) && !m.is(k, cPart, "") && m.items[k].seg == m.items[i].seg
			}) >= 0 {
				m.say(i, "heater")
			}
		}
	}
	if !m.kinds.has(cCond) || !m.kinds.has(cWill) {
		return
	}
	for i := range m.items {
		if m.text(i) == "bad" && m.is(i-1, cItem, "") && m.left(i, 4, true, func(k int) bool { return m.is(k, cWill, "") && strings.HasPrefix(m.text(k), "need") }) >= 0 {
			m.unsay(i)
		}
	}
}

// plannedDeed names the follow-up of a verb at item i that is told as to come: "coming
// back Wednesday to put the new regulator in", "will pump the exp tank up Thursday",
// "quieren que la cambie mañana".
func (m *message) plannedDeed(i, s int) (action, bool) {
	if m.is(i, cDo, "") || m.sents[s].question {
		return action{}, false
	}
	for _, v := range m.verbs {
		if v.at != i || !v.planned || v.negated || !m.willNear(i) && !m.momentIn(s) || m.left(i, 6, true, func(k int) bool {
			return m.is(k, cHint, "meant") && m.wasWill(k) || m.text(k) == "if" || m.text(k) == "whether"
		}) >= 0 {
			continue
		}
		switch v.what {
		case "replaced", "installed":
			what := map[string]string{"replaced": "replace", "installed": "install"}[v.what]
			if code, ok := m.planCode(what, i, s); ok && (code != assess.OtherAction || m.momentIn(s)) {
				return action{at: i, code: code, needed: true}, true
			}
		case "set":
			if v.object == "prv" || v.object == "" && m.carriedTo(i) == "prv" {
				return action{at: i, code: assess.SetPRV, needed: true}, true
			}
		case "charged", "flushed", "rebuilt", "fixed", "mended":
			if m.momentIn(s) {
				return action{at: i, code: assess.OtherAction, needed: true}, true
			}
		}
	}
	return action{}, false
}

// looksAhead tells whether the word at i is a pressure that is to be looked at on a day to
// come: "test the pressure the day after tomorrow", "another pressure test next year",
// "nueva medición de presión en 3 meses".
func (m *message) looksAhead(i, s int) bool {
	if !m.is(i, cHint, "measured") || !m.momentIn(s) || m.doneWords(s) || m.denied(i) {
		return false
	}
	seg := m.items[i].seg
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if m.items[k].seg == seg && (m.pressureLike(k) && m.items[k].role == roleReading || m.is(k, cSym, "")) {
			return false
		}
	}
	looks := func(k int) bool { return m.is(k, cHint, "measures") && m.items[k].seg == seg }
	near := func(k int) bool {
		for _, w := range m.moments {
			if w.at >= m.sents[s].from && w.at < m.sents[s].to && !m.past(w) && m.items[w.at].seg == seg {
				return true
			}
		}
		return false
	}
	verb := m.is(i, cHint, "measures") && (m.text(i-1) == "to" || m.text(i-1) == "and") && m.is(i+1, cHint, "goes") // "to gauge it"
	return near(i) && (verb || m.left(i, 4, true, looks) >= 0 || m.right(i, 2, true, looks) >= 0)
}

// pronounAction names what "swap it" at item i speaks of where no part was named as such:
// one named as a place ("past the PRV I'm at 84, gonna swap it Friday"), else anything.
func (m *message) pronounAction(i, s int) (assess.Action, bool) {
	if t := m.text(i); !strings.HasSuffix(t, " it") && !strings.HasSuffix(t, " that") && m.text(i+1) != "it" || !m.momentIn(s) && !m.willNear(i) {
		return "", false
	}
	for k := i - 1; k >= 0; k-- {
		if m.items[k].sent == m.items[i].sent && m.strangeThing(k) {
			return "", false // "nitrogen bottle's down, swap it before Thursday"
		}
		if p := m.items[k].point; p == "after_prv" || p == "street" {
			if t := m.text(k); strings.HasSuffix(t, "prv") || strings.HasSuffix(t, "reg") || strings.HasSuffix(t, "regulator") {
				return assess.ReplacePRV, true
			}
		}
	}
	return assess.OtherAction, m.momentIn(s)
}

// itemsAndDays gives each item of a line that tells nothing but items and days its own
// follow-up: "prv friday and tank the week after", "tanque el miércoles".
func (m *message) itemsAndDays(se sentence, whens []moment) []planned {
	if len(whens) == 0 || se.question {
		return nil
	}
	var out []planned
	item, next := -1, 0
	for k := se.from; k < se.to; k++ {
		switch {
		case next < len(whens) && k == whens[next].at:
			if whens[next].span || item < 0 {
				return nil
			}
			v, _ := m.val(item, cItem)
			code, ok := m.neededCode(m.itemCode(item, v))
			if !ok || code == assess.OtherAction {
				return nil
			}
			d := whens[next].days
			out = append(out, planned{item, assess.Plan{Action: code, InDays: &d}})
			k, item, next = whens[next].end-1, -1, next+1
		case m.items[k].mark, m.text(k) == "and", m.text(k) == "y", m.text(k) == "on", m.is(k, cDeterminer, ""), m.is(k, cPart, "new"):
		case m.is(k, cItem, "") && item < 0:
			item = k
		default:
			return nil
		}
	}
	if item >= 0 {
		return nil
	}
	return out
}
