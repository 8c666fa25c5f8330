package intents

import "strings"

// Whether there is a thing is told without its name where it was looked for: "there isnt one",
// "wait there is one, behind the heater", "no hay".

// mostOfThere is how many words tell no more than that there is a thing, or none.
const mostOfThere = 10

var (
	thereIs = []string{"there is one", "theres one", "there was one", "found one", "found it", "i see one", "got one", "has one", "they have one",
		"si hay", "si hay uno", "si hay una", "si tiene", "si trae", "ya lo encontre", "ya la encontre", "lo encontre", "la encontre", "encontre uno", "encontre una"}
	thereIsNone = []string{"there isnt one", "there isnt any", "there isnt", "there is none", "theres none", "there aint one", "theres not one",
		"cant find one", "couldnt find one", "dont see one", "not seeing one", "didnt find one", "dont have one", "doesnt have one", "never had one",
		"none here", "none there", "no sign of one", "no one here", "none", "no hay", "no tiene", "no trae", "no encontre", "no hay ninguno", "no hay ninguna", "no lo encontre", "no la encontre"}
	beforeThere = phrases("wait | oh | ah | no | nope | nah | hey | actually | ok | well | sorry | yep | yeah | yes | but | and | i | we | looks | like | ya | espera | pues | pero | y | oye | perdon | que | turns | out")
	behindNone  = phrases("here | anywhere | that | i | can | see | find | could | in | at | the | this | house | place | all | either | tho | on | aqui | por | ningun | lado | en | esta | la | casa | ninguno | ninguna | uno | una | one | any | of | them")
	whereItIs   = phrases("behind | out | in | at | by | under | on | up | next | above | outside | over | below | near | back | down | atras | detras | en | abajo | arriba | junto | afuera | here | aqui | after | tho | though | tucked | hidden")
	elsewhere   = phrases("truck | van | shop | store | warehouse | order | service | troca | camioneta | taller | leaking | broken")
)

// ToldThere tells whether a text says no more than that a thing looked for is there, or that it is
// not.
func ToldThere(text string) (there, told bool) {
	words := wholeWords(text)
	if len(words) == 0 || len(words) > mostOfThere || strings.Contains(text, "?") {
		return false, false
	}
	for i := 0; i < len(words); i++ {
		rest := strings.Join(words[i:], " ")
		if n := opensWith(rest, thereIsNone); n > 0 {
			return false, allOf(words[i+n:], behindNone)
		}
		if n := opensWith(rest, thereIs); n > 0 {
			behind := words[i+n:]
			return true, len(behind) == 0 || whereItIs[behind[0]] && !someOf(behind, elsewhere)
		}
		if !beforeThere[words[i]] {
			return false, false
		}
	}
	return false, false
}

// opensWith returns how many words of the longest of some phrases a text opens with, 0 for none.
func opensWith(text string, list []string) (words int) {
	for _, p := range list {
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
