package intents

import (
	"slices"
	"strings"
)

// phraseSet is a table of words and phrases that one rule knows by their letters, as the
// lexicon spells them. What means the same to many rules is a class of the lexicon.
type phraseSet map[string]bool

// phrases makes a table of what is written as in the lexicon: "not a | never had | no".
func phrases(list string) phraseSet {
	set := phraseSet{}
	for p := range strings.SplitSeq(list, "|") {
		set[strings.TrimSpace(p)] = true
	}
	return set
}

// lastWord is the last word of a phrase.
func lastWord(t string) string { return t[strings.LastIndexByte(t, ' ')+1:] }

// beginsWith tells whether s begins with one of the stems: "pospon", "aplaza".
func beginsWith(s string, stems ...string) bool {
	for _, stem := range stems {
		if strings.HasPrefix(s, stem) {
			return true
		}
	}
	return false
}

// oneOf tells whether s is one of some words.
//
//go:noinline
func oneOf(s string, words ...string) bool { return among(s, words) }

// among tells whether s is one of some words. Most differ from it in their length or in their first letter.
func among(s string, words []string) bool {
	if s == "" {
		return slices.Contains(words, "")
	}
	for _, w := range words {
		if len(w) == len(s) && w[0] == s[0] && w == s {
			return true
		}
	}
	return false
}

// pastForm tells whether a word is a form of the past only, so that a day beside
// it lies behind.
func pastForm(t string) bool {
	switch t {
	case "cambiamos", "instalamos":
		return true
	}
	first, _, _ := strings.Cut(t, " ")
	return strings.HasSuffix(first, "ed") || strings.HasSuffix(first, "ada") || strings.HasSuffix(first, "ado")
}

// holdsWord tells whether a phrase holds a word.
func holdsWord(phrase, w string) bool { return strings.Contains(" "+phrase+" ", " "+w+" ") }
