package intents

import "strings"

// newUnsaidGate: the rule needs the word that makes a part new.
var newUnsaidGate = onlyWith(cPart, "new")

// newUnsaid asks about a new regulator or heater that stands in the message by its name alone,
// "12 Elm new prv": it may be in, and it may be what the house needs.
func (m *message) newUnsaid() {
	if m.shut(newUnsaidGate) {
		return
	}
	for i := range m.items {
		part := m.newAlone(i)
		if part < 0 {
			continue
		}
		words := m.span(min(i, part), max(i, part)+1)
		name, is := "PRV", []string{"", ""}
		if m.partAt(part) == "heater" {
			name = "heater"
		}
		is[0], is[1] = "new "+name+newIsIn, needsNew+name
		if m.spanish() {
			is[0], is[1] = words+newIsInSpanish, needsNewSpanish+words
		}
		m.unclear(words, is, "Is the new "+name+" in, or does the house need one?", "¿La pieza nueva ("+words+") ya está, o falta?")
		return
	}
}

// The two things that a new part named by itself may mean, as they are read in its place.
const (
	newIsIn         = " is in"
	newIsInSpanish  = " ya instalada"
	needsNew        = "needs a new "
	needsNewSpanish = "falta "
)

// asksNewPart tells whether the options of a question are those of a new part: a plain no is
// the second of them.
func asksNewPart(options []string) bool {
	return len(options) == 2 && (strings.HasPrefix(options[1], needsNew) || strings.HasPrefix(options[1], needsNewSpanish))
}

// newAlone returns the regulator or heater that the "new" at item i makes new in a clause that
// says no more of it, when nothing else in the message tells of work; else -1.
func (m *message) newAlone(i int) int {
	if !m.is(i, cPart, "new") {
		return -1
	}
	first, part := i, i+1
	for m.sizeOrFact(part) && part < i+4 {
		part++
	}
	last := part
	if m.spanish() {
		first, part, last = i-1, i-1, i // "reguladora nueva"
	}
	o := m.partAt(part)
	if o != "prv" && o != "heater" || !m.is(part, cItem, "") {
		return -1
	}
	if f := m.equipment.find(o); f != nil && f.said {
		return -1 // "new heater, 50 gal gas"
	}
	if m.says(first-1, "a", "una", "un") && m.says(first-2, "got", "tiene") {
		first -= 2 // "12 Elm got a new prv"
	}
	opens := first == m.sents[m.items[i].sent].from || m.items[first-1].mark || m.items[first-1].site
	if !opens || !m.closes(last) && !(m.says(last+1, "at", "en") && last+2 < len(m.items) && m.items[last+2].site) {
		return -1
	}
	if s := m.items[i].sent; m.sents[s].question || m.planish(s) || m.tellsOfWork() {
		return -1
	}
	return part
}

// tellsOfWork tells whether the message tells of work, done or to be done.
func (m *message) tellsOfWork() bool { return len(m.plans) > 0 || len(m.verbs) > 0 }
