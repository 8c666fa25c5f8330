package intents

import (
	"slices"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listDripDenies = listOf("drip denies")
	listDrips      = listOf("drips")
	listDripEnds   = listOf("drip ends")
	listDripTalk   = listOf("drip talk")
)

// What drips is told once: "relief valve dripping", then "still dripping", "ya no gotea".

// mostOfSign is how many words tell no more than whether something still drips.
const mostOfSign = 6

// MayDrip tells whether a text says no more than that something drips, or does no longer.
func (p *Parser) MayDrip(text string) bool {
	words := wholeWords(text)
	drips := false
	for _, w := range words {
		switch {
		case p.lex.inList(w, listDrips), p.lex.inList(w, listDripEnds):
			drips = true
		case !p.lex.inList(w, listDripTalk):
			return false
		}
	}
	return drips && len(words) <= mostOfSign
}

// Drips reads such a text as told of the relief valve, where the report before it says that this
// drips, or did; told is false where that tells of no drip, or of another.
func (p *Parser) Drips(text string, before, plain Frame) (f Frame, told bool) {
	relief := false
	for _, s := range before.Statements {
		if s, ok := s.(assess.Symptom); ok {
			relief = relief || s.Symptom == assess.ReliefDischarge
			if s.Symptom == assess.Leak {
				return plain, false
			}
		}
	}
	if !relief {
		return plain, false
	}
	over := slices.ContainsFunc(wholeWords(text), func(w string) bool { return p.lex.inList(w, listDripEnds) || p.lex.inList(w, listDripDenies) })
	plain.Statements = []assess.Statement{assess.Symptom{Symptom: assess.ReliefDischarge, Absent: over}}
	plain.Unclear = nil
	return plain, true
}
