package intents

import "strings"

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
func oneOf(s string, words ...string) bool {
	for _, w := range words {
		if s == w {
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
