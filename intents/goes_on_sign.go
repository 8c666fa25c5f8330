package intents

import (
	"slices"

	"lazyhand/assess"
)

// What drips is told once: "relief valve dripping", then "still dripping", "ya no gotea".

// mostOfSign is how many words tell no more than whether something still drips.
const mostOfSign = 6

var (
	dripWords = phrases(`dripping | drips | drip | leaking | leaks | weeping | weeps | spitting | dumping | running | discharging
		| gotea | goteando | tira | tirando | chorrea | chorreando | escurre | escurriendo`)
	dripEnds = phrases("stopped | quit | dry | dried | paro | dejo | seca | seco")
	dripTalk = phrases(`still | again | yet | not | no | longer | anymore | any | more | it | its | is | has | now | ya | sigue | todavia | de
		| up | se | esta | tho | though | but | a | little | bit | poquito | un | poco | and | y | bone | isnt | aint | doesnt`)
	dripDenies = phrases("not | no | isnt | aint | doesnt")
)

// MayDrip tells whether a text says no more than that something drips, or does no longer.
func MayDrip(text string) bool {
	words := wholeWords(text)
	drips := false
	for _, w := range words {
		switch {
		case dripWords[w], dripEnds[w]:
			drips = true
		case !dripTalk[w]:
			return false
		}
	}
	return drips && len(words) <= mostOfSign
}

// Drips reads such a text as told of the relief valve, where the report before it says that this
// drips, or did; told is false where that tells of no drip, or of another.
func Drips(text string, before, plain Frame) (f Frame, told bool) {
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
	over := slices.ContainsFunc(wholeWords(text), func(w string) bool { return dripEnds[w] || dripDenies[w] })
	plain.Statements = []assess.Statement{assess.Symptom{Symptom: assess.ReliefDischarge, Absent: over}}
	plain.Unclear = nil
	return plain, true
}
