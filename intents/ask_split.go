package intents

import "slices"

// splitQuestions parts a sentence that asks for two things, so that each is read
// by itself: "what's due, and what's the story on 9 Elm", "plot 9 Elm and print
// the sheet".
func (m *message) splitQuestions() {
	for s := 0; s < len(m.sents); s++ {
		se := m.sents[s]
		wh, asks := m.asksFirst(se)
		if !asks {
			continue
		}
		for i := se.from + 2; i+1 < se.to; i++ {
			if !m.asksAgain(i) {
				continue
			}
			first, second := se, se
			first.to, second.from = i+1, i+1
			first.question = se.question || wh
			m.sents[s] = first
			m.sents = slices.Insert(m.sents, s+1, second)
			break // what follows is looked at in its turn
		}
	}
}

// asksFirst tells whether the first word of a sentence that adds something asks
// or orders, and whether it is a question word.
func (m *message) asksFirst(se sentence) (wh, asks bool) {
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		if it.mark || it.site || it.num != nil {
			return false, false
		}
		set := m.wordCues(it.tok)
		if set&cues(cueWh, cueShow, cueMake, cueTrend) != 0 || it.kinds.has(cAsk) && !set.has(cueSmall) {
			return set.has(cueWh), true
		}
		if !set.has(cueSmall) {
			return false, false
		}
	}
	return false, false
}

// asksAgain tells whether item i joins another question or order to what stands
// before it.
func (m *message) asksAgain(i int) bool {
	next := &m.items[i+1]
	if next.mark || next.site || next.num != nil {
		return false
	}
	set := m.wordCues(next.tok)
	switch m.text(i) {
	case "and", "y", "&":
		return set&cues(cueWh, cueShow, cueMake, cueFinish) != 0 || m.text(i+1) == "mark"
	case ",":
		return set.has(cueWh)
	}
	return false
}
