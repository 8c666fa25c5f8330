package intents

// class is a kind of meaning that the lexicon gives a phrase.
type class uint8

const (
	cNone class = iota
	cPoint
	cPlace
	cBibb
	cFixture
	cSkip
	cItem
	cPart
	cFuel
	cMaterial
	cCond
	cPresent
	cState
	cOn
	cOff
	cBurner
	cNeg
	cStatic
	cFlowing
	cPeak
	cNow
	cBefore
	cAfter
	cSym
	cRelief
	cDischarge
	cDry
	cBlocked
	cColor
	cWater
	cPipe
	cDid
	cDo
	cWill
	cMemory
	cTarget
	cAsk
	cQuestion
	cUnit
	cWhose
	cClaim
	cOwn
	cDeterminer
	cNamed
	cInitial
	cSame
	cGauged
	cBetween
	cRetract
	cOpened
	cTurns
	cLacks   // before an item: the house has none
	cAbsent  // after an item: there is none
	cHad     // leads to a verb in its base form that tells a deed: "had to", "ended up"
	cBase    // a verb of work in its base form
	cAge     // "how old", "age"
	cUnknown // nobody knows
	cFitting // parts that leak, and what happens to them
	cMove    // "brought", "took": a change of a setting when a regulator or a tank follows
	cHint    // a small class of its own, told by its value
	cAside   // talk of things that stand in no customer's house
	cWord    // an everyday word, known so that it may be written short
)

var classNames = map[string]class{
	"point": cPoint, "place": cPlace, "bibb": cBibb, "fixture": cFixture, "skip": cSkip, "item": cItem, "part": cPart,
	"fuel": cFuel, "material": cMaterial, "cond": cCond, "present": cPresent, "state": cState, "on": cOn, "off": cOff,
	"burner": cBurner, "neg": cNeg, "static": cStatic, "flowing": cFlowing, "peak": cPeak, "current": cNow, "before": cBefore,
	"after": cAfter, "sym": cSym, "relief": cRelief, "discharge": cDischarge, "dry": cDry, "blocked": cBlocked, "color": cColor,
	"water": cWater, "pipe": cPipe, "did": cDid, "do": cDo, "will": cWill, "memory": cMemory, "target": cTarget, "ask": cAsk,
	"question": cQuestion, "unit": cUnit, "word": cWord,
	"whose": cWhose, "claim": cClaim, "own": cOwn, "determiner": cDeterminer,
	"named": cNamed, "initial": cInitial, "same": cSame,
	"gauged": cGauged, "between": cBetween, "retract": cRetract, "opened": cOpened, "turns": cTurns, "hint": cHint,
	"lacks": cLacks, "absent": cAbsent, "had": cHad, "base": cBase, "move": cMove, "fitting": cFitting, "age": cAge,
	"unknown": cUnknown, "aside": cAside,
}

// classSet is a set of classes, one bit each.
type classSet uint64

// There is one bit for every class; a 65th class does not compile.
const _ = uint(63 - cWord)

func (s classSet) has(c class) bool { return s&(1<<(c&63)) != 0 }

// meets tells whether the sets share a class.
func (s classSet) meets(t classSet) bool { return s&t != 0 }

// within tells whether all classes of the set are in t.
func (s classSet) within(t classSet) bool { return s&^t == 0 }

// setOf returns the set of classes.
func setOf(cs ...class) (s classSet) {
	for _, c := range cs {
		s |= 1 << c
	}
	return s
}

// classesOf returns the classes of tags.
func classesOf(tags []tag) (s classSet) {
	for _, t := range tags {
		s |= 1 << t.class
	}
	return s
}

// valueSet is a set of values of tags, one bit each. Two values may fall on one bit: what is
// not in the set is surely no value.
type valueSet uint64

// bitOf returns the set of one value.
func bitOf(value string) valueSet {
	n := len(value)
	return 1 << ((n*5 + int(value[0])*3 + int(value[n-1])) & 63)
}

// mayHave tells whether a value, not an empty one, may be in the set.
func (s valueSet) mayHave(value string) bool { return s&bitOf(value) != 0 }

// valuesOf returns the values of tags.
func valuesOf(tags []tag) (s valueSet) {
	for _, t := range tags {
		if t.value != "" {
			s |= bitOf(t.value)
		}
	}
	return s
}

// has tells whether tags hold a class with a value; an empty value is any.
func (p *Parser) has(tags []tag, c class, value string) bool {
	for i := range tags {
		if tags[i].class == c && (value == "" || tags[i].value == value) {
			return true
		}
	}
	return false
}

// value returns the value of the first tag of a class.
func (p *Parser) value(tags []tag, c class) (string, bool) {
	for i := range tags {
		if tags[i].class == c {
			return tags[i].value, true
		}
	}
	return "", false
}
