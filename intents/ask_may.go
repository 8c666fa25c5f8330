package intents

import (
	"iter"
	"math/bits"
	"strings"
)

// Most messages ask nothing: whether the words are there at all without which no formula and no question
// for an opinion can be is found once a message, when its words are looked up.

// askSet is a set of the lists that formulas and opinions cannot do without, one bit each.
type askSet [2]uint64

// join adds the lists of another set.
func (s *askSet) join(t *askSet) { s[0], s[1] = s[0]|t[0], s[1]|t[1] }

// holds tells whether all lists of another set are in it.
func (s *askSet) holds(t *askSet) bool { return t[0]&^s[0]|t[1]&^s[1] == 0 }

// all goes over the numbers of its lists.
func (s *askSet) all() iter.Seq[int] {
	return func(yield func(int) bool) {
		for k, half := range s {
			for ; half != 0; half &= half - 1 {
				if !yield(k<<6 + bits.TrailingZeros64(half)) {
					return
				}
			}
		}
	}
}

// opinions are, by way of asking for an opinion, the lists that it cannot do without; the last one needs a
// question mark as well.
var opinions = [...][]list{
	{listFair, listIsIt}, {listFair, listThinksIt}, {listFair, listToldFair},
	{listSurelyFair, listIsIt}, {listSurelyFair, listThinksIt}, {listSurelyFair, listToldFair},
	{listOfTrouble, listMayCause}, {listOfTrouble, listCantBe},
	{listShallTest, listWhoTests, listProbed}, {listShallTest, listWhoTests, listWhichProbe},
	{listWorth, listProbing},
	{listSurelyFair},
}

// needed numbers the lists of formulas and opinions: at most as many as an askSet has bits.
var needed = func() map[list]int {
	numbers := map[list]int{}
	for _, lists := range opinions {
		for _, l := range lists {
			if _, ok := numbers[l]; !ok {
				numbers[l] = len(numbers)
			}
		}
	}
	for k := range formulas {
		for _, s := range formulas[k].steps {
			if _, ok := numbers[s.list]; !ok && s.kind == stepOne {
				numbers[s.list] = len(numbers)
			}
		}
	}
	if len(numbers) > 128 {
		panic("there is no room for another list of formulas: widen askSet")
	}
	return numbers
}()

// setOfLists is the set of some of those lists.
func setOfLists(lists ...list) (s askSet) {
	for _, l := range lists {
		s[needed[l]>>6] |= 1 << (needed[l] & 63)
	}
	return s
}

// opinionNeeds are those lists as sets.
var opinionNeeds = func() (needs [len(opinions)]askSet) {
	for k, lists := range opinions {
		needs[k] = setOfLists(lists...)
	}
	return needs
}()

// formulaNeeds are, by formula, the lists of its places.
var formulaNeeds = func() []askSet {
	needs := make([]askSet, len(formulas))
	for k := range formulas {
		for _, s := range formulas[k].steps {
			if s.kind == stepOne {
				set := setOfLists(s.list)
				needs[k].join(&set)
			}
		}
	}
	return needs
}()

// formulaHooks are, by list, the formulas that are looked at where a word of it is heard: each is hung up at the one
// of its lists that the fewest formulas share.
var formulaHooks = func() (hooks [128][]int) {
	var shared [128]int
	for k := range formulas {
		for l := range formulaNeeds[k].all() {
			shared[l]++
		}
	}
	for k := range formulas {
		hook := -1
		for l := range formulaNeeds[k].all() {
			if hook < 0 || shared[l] < shared[hook] {
				hook = l
			}
		}
		hooks[hook] = append(hooks[hook], k)
	}
	return hooks
}()

// enterAsks gives the words of those lists the lists that they stand in. A phrase is known by its longest word, which
// stands in fewer messages than the others.
func (l *lexicon) enterAsks() {
	for x := range needed {
		set := setOfLists(x)
		for phrase := range l.lists[x] {
			longest := ""
			for w := range strings.SplitSeq(phrase, " ") {
				if len(w) > len(longest) {
					longest = w
				}
			}
			l.entry(longest).asks.join(&set)
		}
	}
}

// hear finds whether the message can ask by cues, by a formula or for an opinion at all.
func (m *message) hear() {
	if m.heard {
		return
	}
	m.heard = true
	if m.mayCue = m.cues&askHooks != 0; m.mayCue {
		m.mayCue, m.mayCueFirst = cuesMeet(m.cues)
	}
	if m.held == (askSet{}) {
		return
	}
	for k := range opinionNeeds {
		if m.held.holds(&opinionNeeds[k]) && (k < len(opinions)-1 || m.cues.has(cueMark)) {
			m.mayOpine = true
			break
		}
	}
	for l := range m.held.all() {
		for _, k := range formulaHooks[l] {
			if m.held.holds(&formulaNeeds[k]) {
				if m.mayAsk = true; formulas[k].first {
					m.mayAskFirst = true
					return
				}
			}
		}
	}
}
