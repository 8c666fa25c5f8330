package intents

import (
	"maps"
	"slices"
	"strings"
)

// besideArrival are the words that may stand beside a street line in a message that says
// nothing but that its writer is there or on the way.
var besideArrival = set(
	"at", "here", "im", "i", "am", "on", "site", "onsite", "arrived", "arriving", "arr", "next", "now", "up", "to", "heading",
	"headed", "head", "rolling", "rollin", "rolled", "swung", "by", "stopped",
	"driving", "going", "off", "omw", "way", "my", "the", "in", "into", "pulled", "pulling", "got", "made", "it", "back", "first",
	"second", "third", "last", "stop",
	"house", "job", "call", "one", "ok", "okay", "k", "alright", "morning", "good", "all", "guys", "team", "just", "starting",
	"start", "started", "out", "front",
	"of", "this", "then", "over", "and", "for", "day", "is", "were", "we", "are", "parked", "outside", "landed", "aqui", "aca", "ya",
	"en", "estoy", "estamos",
	"llegue", "llegamos", "llegando", "voy", "vamos", "a", "para", "rumbo", "siguiente", "ahora", "la", "el", "casa", "primera",
	"primero", "buenos", "dias", "mean", "meant", "again", "1st", "2nd", "3rd", "4th", "5th", "yo", "hey", "hi", "hola", "dale", "oye", "bueno", "sale", "va", "listo", "done", "finally", "por", "fin", "tardes", "afternoon", "everyone", "gang", "boss",
)

// stops count the houses of a day: "1st stop", "house 2:".
var stops = set("stop", "house", "job", "call", "casa", "parada")

func set(words ...string) map[string]bool {
	out := make(map[string]bool, len(words))
	for _, w := range words {
		out[w] = true
	}
	return out
}

// Arrives tells whether a message names a house and says at most that its writer is there,
// or goes there next, or at which tap the gauge is: "here, 412 Tanager Ln", "8:40 at 412 Tanager
// Ln", "rear bib, 412 Tanager Ln".
func (p *Parser) Arrives(text string, ctx Context) bool {
	return p.besideHouse(text, ctx, besideArrival) || p.GaugeAt(text, ctx) != ""
}

// besideRight are the words that may stand beside a street line which is the right one for
// what was filed under another.
var besideRight = set(
	"no", "nope", "not", "wrong", "house", "its", "it", "was", "thats", "that", "this", "is", "meant", "mean", "i", "sorry", "oops",
	"my", "bad", "actually", "the", "one",
	"for", "should", "be", "address", "addr", "different", "other", "another", "not that", "es", "era", "la", "casa", "perdon",
	"equivocada", "otra", "en", "quise", "decir",
)

// besideOther are those words and others that may stand beside a house which is another one than was said.
var besideOther = union(besideRight, set("wait", "hold", "on", "hang", "scratch", "make", "rather", "correction", "typo", "sry", "whoops", "nah",
	"digo", "mejor", "espera", "esperen", "disculpa", "disculpen", "perdona", "al", "a", "el", "at", "im", "were", "going", "heading", "to", "voy",
	"estoy", "me", "equivoque", "guys"))

// union returns the words of two sets.
func union(a, b map[string]bool) map[string]bool {
	out := maps.Clone(a)
	maps.Copy(out, b)
	return out
}

// rightCues are those of them that say by themselves that what was said before was wrong.
var rightCues = set("no", "nope", "nah", "not", "wrong", "meant", "mean", "sorry", "sry", "oops", "whoops", "actually", "wait", "scratch", "rather",
	"correction", "typo", "perdon", "perdona", "disculpa", "disculpen", "digo", "quise", "equivoque", "equivocada", "mejor", "espera")

// RightHouse tells whether a message names a house and says at most that it is the right
// one: "40 Cedar Rd", "no, that was 40 Cedar Rd".
func (p *Parser) RightHouse(text string, ctx Context) bool {
	return p.besideHouse(text, ctx, besideRight)
}

// PutsHouseRight tells whether a message says nothing but that a house is another one than was said
// before: "wait no, 5 Windmill Dr", "perdón, 22 Cedar Rd".
func (p *Parser) PutsHouseRight(text string, ctx Context) bool {
	return slices.ContainsFunc(plainWords(text), func(w string) bool { return rightCues[w] }) && p.besideHouse(text, ctx, besideOther)
}

// besideHouse tells whether a message names a house and beside it only words of a set, marks
// and times of day.
func (p *Parser) besideHouse(text string, ctx Context, words map[string]bool) bool {
	m := p.read(text, ctx, new(scratch), false)
	if m.site == nil {
		return false
	}
	stop := words["heading"] && slices.ContainsFunc(m.items, func(it item) bool { return stops[it.text] })
	return !slices.ContainsFunc(m.items, func(it item) bool {
		switch {
		case it.text == "?":
			return true
		case it.mark, it.site, it.num != nil && it.num.time:
			return false
		case it.num != nil:
			return !it.num.integer || it.value > 12 || !stop
		case stop && oneOf(it.text, "st", "nd", "rd", "th", "#"):
			return false
		}
		return slices.ContainsFunc(strings.Fields(it.text), func(w string) bool { return !words[w] })
	})
}
