package intents

import (
	"slices"
	"strings"
)

// Lists of the lexicon that these rules know.
var (
	listLastNamed  = listOf("last named")
	listNoSlip     = listOf("no slip")
	listThatNumber = listOf("that number")
	listFixThat    = listOf("fix that")
)

// correctTalk is a phrase that may correct an earlier report, and what stands around it.
type correctTalk struct {
	*message
	s, at         int
	begins        bool // only small words stand before it
	last          bool // what was sent last is named
	quoted        bool // the message quotes a line
	before, after bool // a number stands before it, after it
}

// sent tells whether the talk is of something that was sent.
func (c *correctTalk) sent() bool { return c.last || c.quoted }

// onlyAfter tells whether the message has no number but behind the phrase.
func (c *correctTalk) onlyAfter() bool { return c.after && !c.before }

// correctRules tell when a phrase corrects an earlier report, not something within this message.
var correctRules = phraseRules{
	"is wrong|was off|esta mal|esta wrong|estaba wrong|estuvo mal|estaba mal|is off": func(c *correctTalk) bool {
		return c.sent() || c.reportTalk(c.s) || c.numberToldBefore()
	},
	"was wrong": func(c *correctTalk) bool {
		return c.sent() || c.reportTalk(c.s) || c.begins && c.after || c.numberToldBefore()
	},
	"that was wrong": func(c *correctTalk) bool {
		return c.sent() || c.begins && c.after // "that was wrong, 12 Elm was 78"
	},
	"supposed to be|thats supposed to be|no thats supposed to be|no its supposed to be": func(c *correctTalk) bool {
		return c.sent() && c.after
	},
	"should say|shouldve said|should of been|shoulda been|shoud of been|shud of been|shld have been|should of said|shoulda said|" +
		"should have said|should have been|shouldve been|debe decir|deberia decir|debio ser|that should be|" +
		"that should have been|that was supposed to be": func(c *correctTalk) bool { return !c.airTold(c.at) },
	"should read": func(c *correctTalk) bool { // "should read 60 and reads 95"
		return c.sent() || c.begins && !c.numbersAfter(c.s, c.at, 2) ||
			c.cuesOf(c.s, c.sents[c.s].from, c.at).has(cueEntry) && !c.before
	},
	"should be": func(c *correctTalk) bool {
		slipped := func(k int) bool { return k < c.at && c.is(k, cHint, "slipped") }
		if c.isNum(c.at-1) && c.isNum(c.at+1) && sameDigits(c.items[c.at-1].value, c.items[c.at+1].value) {
			return true // "29 should be 92"
		}
		return c.after && c.isNum(c.at-1) && c.says(c.at-2, "my", "mi") || // "my 83 should be a 63"
			c.before && c.after && c.anyIn(c.s, slipped, setOf(cHint)) || // "the 84 on Elm was a typo, should be 48 front"
			c.last && (c.quoted || c.reportTalk(c.s))
	},
	"make it|make that|change that to|change it to|cambialo a|change the last|cambia eso|cambia mi": func(c *correctTalk) bool {
		return c.onlyAfter() && (c.begins || c.last)
	},
	"fat fingers|fat thumbs|fat thumb": func(c *correctTalk) bool { return c.onlyAfter() },
	"fat fingered|fat finger|typo":     func(c *correctTalk) bool { return !c.noSlip(c.at) },
	"mistyped|meant to say|meant to type|quise poner|misread|transposed": func(c *correctTalk) bool {
		return c.sent() || c.begins || !c.before
	},
	"flipped the digits|swapped the digits|reversed the digits|switched the digits|mixed up the digits|digits backwards|digits flipped|" +
		"digits swapped|digits reversed": func(c *correctTalk) bool {
		return c.sent() || c.begins || !c.before
	},
	"please fix my entry|please fix my report|please fix my last|fix my entry|fix my report": always,
	"number stays|numbers right|number is right|same number|number was right|numbers good": func(c *correctTalk) bool {
		for k := range c.at { // "I put rear bib and it was the side bib. Number stays, 77"
			if c.is(k, cHint, "reported") && c.items[k].sent >= c.s-1 {
				return true
			}
		}
		return false
	},
	"i meant|meant|quise decir": func(c *correctTalk) bool {
		return c.sent() || !c.before || c.begins && !c.after || c.wrote()
	},
	"read it wrong|read that wrong|read the gauge wrong|read wrong|misread it|misread the gauge|saw it wrong|heard it wrong|typed it wrong|entered it wrong|" +
		"wrote it wrong|put it down wrong|lei mal|vi mal|le anote mal|lo anote mal|apunte mal|lo apunte mal|en realidad son|en realidad es|" +
		"en realidad era|en realidad eran|en realidad fue|actual is|actual was": (*correctTalk).onlyAfter,
	"la lectura buena es|lectura buena es|la buena es|buena es|the right number is|the correct number is|the real number is|" +
		"the actual number is|right number is|correct number is|real number is|actual number is|the right reading is|the correct reading is|" +
		"right reading is|correct reading is|the right number was|the correct number was|the real number was": func(c *correctTalk) bool {
		return c.onlyAfter() && c.right(c.at, 3, false, c.isNum) >= 0
	},
	"me falle|me confundi|la regue|let me correct that|let me fix that|let me correct myself|correcting myself|correct myself|i stand corrected": func(c *correctTalk) bool {
		return c.begins && c.onlyAfter()
	},
	"looked at it again|looked again|took another look|took a second look|on second look|on a second look|second look|looking at it again": func(c *correctTalk) bool {
		return c.begins && c.after && c.sentenceSays(c.s, "not", "was", "it was", "instead", "really", "actually")
	},
	"was really|was actually|is really|is actually|should really be|should actually be": func(c *correctTalk) bool {
		return c.isNum(c.at-1) && c.isNum(c.at+1) && c.inList(c.at-2, listThatNumber) // "that 92 was really 82"
	},
	"transposed the numbers|transposed my numbers|transposed the digits|transposed my digits|i transposed the numbers|i transposed the digits|" +
		"i transposed my numbers|i transposed my digits|numbers backwards|my numbers backwards|" +
		"got my numbers backwards": func(c *correctTalk) bool {
		return c.sent() || c.begins || !c.before || !c.after // "its 82, I transposed the numbers"
	},
	"correction|correccion|corrijo|corrige|corrige eso": func(c *correctTalk) bool {
		return c.begins || c.last
	},
	"era|eran": func(c *correctTalk) bool {
		sorry := oneOf(c.text(c.at-1), ",", "perdon", "perdona") && c.says(0, "perdon", "perdona", "disculpa")
		return c.onlyAfter() && (sorry || c.at > 0 && c.is(0, cAsk, "correct")) || // "está mal, era 72"
			c.last && c.after && c.reportTalk(c.s)
	},
	"no era|no eran": func(c *correctTalk) bool {
		return c.last || c.onlyAfter()
	},
	"no es": func(c *correctTalk) bool { // not "ya no es confiable, se quedó en 40"
		return (c.last || c.onlyAfter()) && c.right(c.at, 4, true, func(k int) bool { return c.items[k].num != nil }) >= 0
	},
	"actually it was|it was actually|it was really": (*correctTalk).onlyAfter,
	"the last one was|my last one was": func(c *correctTalk) bool {
		return c.after
	},
	"fix that": func(c *correctTalk) bool { // not "I'll stop by and fix that drip"
		return (c.begins || c.last || c.after) && (c.closes(c.at) || c.isNum(c.at+1) || c.inList(c.at+1, listFixThat))
	},
	"last reading was wrong|last reading wrong|last report wrong|last one wrong|last report was wrong|correct my|correct that|fix my last|fix the last|change my last|" +
		"update my last|amend|amend that|edit my last|wrong number|wrong reading|bad number|i put the wrong|put it in wrong|" +
		"puse mal|lo puse mal|anote mal|escribi mal|error mio|perdon era|perdon eran|not what i meant|me equivoque|me equivoque en": always,
	"i sent|i gave": func(c *correctTalk) bool {
		return c.after &&
			c.sentenceSays(c.s, "really", "actually", "should", "its really", "supposed to be", "meant", "its actually", "not")
	},
	"its really|its actually|it is really|really its|its supposed to say": func(c *correctTalk) bool {
		return c.before && c.after && c.sentenceSays(c.s, "i sent", "i said", "i put", "sent", "said", "i gave", "i typed",
			"i wrote", "i logged", "last", "reported")
	},
	"thats not right|that isnt right|nope thats not right|no thats not right|eso no es|no thats wrong": func(c *correctTalk) bool {
		return c.after && (c.quoted || c.begins)
	},
	"wrong|nope": func(c *correctTalk) bool {
		return c.quoted && c.after
	},
	"my bad": func(c *correctTalk) bool {
		return c.last || c.begins
	},
	"made a mistake|i made a mistake|my mistake|mistake on my part|my error": func(c *correctTalk) bool {
		return c.last || c.begins && c.onlyAfter() // "my mistake, it was 64"
	},
	"i put": func(c *correctTalk) bool { // not "I put a new fill valve in"
		return (c.sent() || c.isNum(c.at+1) || c.isNum(c.at+2) || c.isNum(c.at+3)) && c.typedWrong()
	},
	"i typed|i wrote|i entered": (*correctTalk).typedWrong,
}.byPhrase()

// numberToldBefore tells whether the phrase is said of a number that was sent, and the right one
// follows: "ese 58 de la cocina estaba mal, son 85".
func (c *correctTalk) numberToldBefore() bool {
	k := c.left(c.at, 6, true, c.isNum)
	return k > 0 && c.inList(k-1, listThatNumber) && c.numbersAfter(c.s, c.at, 1)
}

// wrote tells whether a number that was written stands before the phrase and the right one
// behind it: "wrote 92 meant 82".
func (c *correctTalk) wrote() bool {
	k := c.left(c.at, 3, true, c.isNum)
	return k > 0 && c.inList(k-1, listSlipWrote) && c.isNum(c.at+1)
}

// noSlip tells whether the word for a slip at item i is denied: "75 at the tub, not a typo".
func (m *message) noSlip(i int) bool {
	return m.inList(i-1, listNoSlip) || m.is(i-1, cDeterminer, "") && m.inList(i-2, listNoSlip)
}

// typedWrong tells whether what was typed is said to be wrong, or told anew.
func (c *correctTalk) typedWrong() bool {
	the68 := c.isNum(c.at-1) && c.inList(c.at-2, listThatNumber) // "the 68 I typed is wrong"
	return (c.sent() || the68 || c.reportTalk(c.s)) &&
		(c.after || c.anyIn(c.s, func(k int) bool { return c.is(k, cHint, "wrong") }, setOf(cHint)))
}

func always(*correctTalk) bool { return true }

// phraseRules are rules by the phrases that they are for, with strokes between them.
type phraseRules map[string]func(*correctTalk) bool

// byPhrase gives each phrase an entry of its own.
func (r phraseRules) byPhrase() phraseRules {
	each := phraseRules{}
	for phrases, rule := range r {
		for phrase := range strings.SplitSeq(phrases, "|") {
			each[phrase] = rule
		}
	}
	return each
}

// correcting tells whether the phrase at item i corrects an earlier report, not something within
// this message.
func (m *message) correcting(s, i int, begins bool) bool {
	rule := correctRules[m.text(i)]
	return rule != nil && rule(&correctTalk{
		message: m, s: s, at: i,
		begins: begins,
		last:   m.lastNamed(i),
		quoted: len(m.clean.quoted) > 0,
		before: slices.ContainsFunc(m.items[:i], func(it item) bool { return it.num != nil && it.role != roleDate }),
		after:  m.numberAfter(i),
	})
}

// lastNamed tells whether what was sent last is named not far from item i.
func (m *message) lastNamed(i int) bool {
	for k := max(0, i-longestSentence); k < min(len(m.items), i+13); k++ {
		if m.inList(k, listLastNamed) {
			return true
		}
		if m.is(k, cAsk, "history") && m.says(k, "last reading", "ultima lectura", "last readings") ||
			m.isAny(k, cAsk, "correct", "undo") && strings.Contains(m.text(k), "last") ||
			m.is(k, cMemory, "") && m.text(k) == "last time" {
			return true
		}
	}
	return false
}
