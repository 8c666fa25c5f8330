package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listThereIsOne      = listOf("there is one")
	listThereIsNone     = listOf("there is none")
	listBeforeThere     = listOf("before there")
	listBehindNoneThere = listOf("behind none there")
	listWhereItIs       = listOf("where it is")
	listElsewhere       = listOf("elsewhere")
)

// Whether there is a thing is told without its name where it was looked for: "there isnt one",
// "wait there is one, behind the heater", "no hay".

// mostOfThere is how many words tell no more than that there is a thing, or none.
const mostOfThere = 10

// ToldThere tells whether a text says no more than that a thing looked for is there, or that it is
// not.
func (p *Parser) ToldThere(text string) (there, told bool) {
	words := wholeWords(text)
	if len(words) == 0 || len(words) > mostOfThere || strings.Contains(text, "?") {
		return false, false
	}
	for i := 0; i < len(words); i++ {
		rest := strings.Join(words[i:], " ")
		if n := opensWith(rest, p.lex.lists[listThereIsNone]); n > 0 {
			return false, allOf(words[i+n:], p.lex.lists[listBehindNoneThere])
		}
		if n := opensWith(rest, p.lex.lists[listThereIsOne]); n > 0 {
			behind := words[i+n:]
			return true, len(behind) == 0 || p.lex.inList(behind[0], listWhereItIs) && !someOf(behind, p.lex.lists[listElsewhere])
		}
		if !p.lex.inList(words[i], listBeforeThere) {
			return false, false
		}
	}
	return false, false
}

// opensWith returns how many words of the longest of some phrases a text opens with, 0 for none.
func opensWith(text string, list phraseSet) (words int) {
	for p := range list {
		if text == p || strings.HasPrefix(text, p+" ") {
			words = max(words, strings.Count(p, " ")+1)
		}
	}
	return words
}

// allOf tells whether every word is one of a set, someOf whether one is.
func allOf(words []string, set phraseSet) bool {
	for _, w := range words {
		if !set[w] {
			return false
		}
	}
	return true
}

func someOf(words []string, set phraseSet) bool {
	for _, w := range words {
		if set[w] {
			return true
		}
	}
	return false
}

// wholeWords are the words of a text, with "isn't" one of them.
func wholeWords(text string) []string {
	return plainWords(strings.NewReplacer("'", "", "’", "").Replace(text))
}
