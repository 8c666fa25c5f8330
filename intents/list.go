package intents

import (
	"fmt"
	"slices"
	"strings"
)

// A list is words and phrases that one rule knows by their letters, as the lexicon spells
// them. It stands in the lexicon, "list ended: gone | quit", and gives its words no
// meaning; what means the same to many rules is a class. A rule names its lists beside it.
type list uint16

// mostLists is how many lists there is room for.
const mostLists = 1024

// listNames are the names of all lists.
var listNames []string

// Lists that the rules of several files know.
var (
	listBareChecks     = listOf("bare checks")
	listBetweenNumbers = listOf("between numbers")
	listReadAt         = listOf("read at")
	listParticleIn     = listOf("particle in")
	listStrainers      = listOf("strainers")
	listWentTo         = listOf("went to")
	listWasSet         = listOf("was set")
	listLabels         = listOf("labels")
	listBeforeClause   = listOf("before clause")
	listTurnedWhichWay = listOf("turned which way")
	listDotted         = listOf("dotted")
	listLinking        = listOf("linking")
	listNotWhatWasSent = listOf("not what was sent")
	listClitics        = listOf("clitics")
	listSlipFillers    = listOf("slip fillers")
	listAnswerFillers  = listOf("answer fillers")
	listFillers        = listOf("fillers")
	listSmallWords     = listOf("small words")
	listPeople         = listOf("people")
	listLinks          = listOf("links")
	listPlanHeads      = listOf("plan heads")
	listSays           = listOf("says")
	listTurnsRound     = listOf("turns round")
	listWeak           = listOf("weak")
	listDenialGoes     = listOf("denial goes")
	listEnded          = listOf("ended")
	listStops          = listOf("stops")
	listRefersBack     = listOf("refers back")
	listPays           = listOf("pays")
	listAccounts       = listOf("accounts")
	listTomorrow       = listOf("tomorrow")
	listOne            = listOf("one")
	listSlipShould     = listOf("slip should")
	listSlipSorry      = listOf("slip sorry")
)

// listOf returns the list of a name in the lexicon.
func listOf(name string) list {
	if len(listNames) == mostLists {
		panic(fmt.Sprintf("there is no room for list %q: raise mostLists", name))
	}
	listNames = append(listNames, name)
	return list(len(listNames) - 1)
}

// addList keeps the words of a list line.
func (l *lexicon) addList(name, body string) error {
	x := slices.Index(listNames, name)
	if x < 0 {
		return fmt.Errorf("there is no list %q", name)
	}
	if l.lists[x] == nil {
		l.lists[x] = phraseSet{}
	}
	for phrase := range strings.SplitSeq(body, "|") {
		l.lists[x][fold(strings.TrimSpace(phrase))] = true
	}
	return nil
}

// listSet is a set of lists, one bit each.
type listSet [mostLists / 64]uint64

func (s *listSet) has(x list) bool { return s != nil && s[x>>6%(mostLists/64)]>>(x&63)&1 != 0 }

// listsOf returns the lists that each word stands in. Most words stand in few; those that
// stand in the same ones share a set.
func listsOf(lists []phraseSet) map[string]*listSet {
	sets, shared := map[string]*listSet{}, map[listSet]*listSet{}
	for x, words := range lists {
		for w := range words {
			var s listSet
			if sets[w] != nil {
				s = *sets[w]
			}
			s[x>>6] |= 1 << (x & 63)
			if shared[s] == nil {
				shared[s] = &s
			}
			sets[w] = shared[s]
		}
	}
	return sets
}

// enterLeads gives the words that a phrase of two words or more begins with the lists that it stands in, and marks those
// that go on with one.
func (l *lexicon) enterLeads() {
	for x, words := range l.lists {
		for phrase := range words {
			w, rest, more := strings.Cut(phrase, " ")
			if !more {
				continue
			}
			for next := range strings.SplitSeq(rest, " ") {
				l.entry(next).follows = true
			}
			e := l.entry(w)
			if e.leads == nil {
				e.leads = new(listSet)
			}
			e.leads[x>>6] |= 1 << (x & 63)
		}
	}
}

// inList tells whether a word or a phrase that is no item reads as one of a list.
func (l *lexicon) inList(s string, x list) bool { return s != "" && l.look(s).lists.has(x) }

// inList tells whether item i reads as one of a list.
//
//go:noinline
func (m *message) inList(i int, x list) bool {
	return uint(i) < uint(len(m.items)) && m.items[i].lists.has(x)
}
