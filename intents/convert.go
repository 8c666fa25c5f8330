package intents

import "strings"

// A conversion needs a unit other than psi.
var convertGate = onlyWith(cUnit, "bar", "kpa", "ft", "feet", "m", "metre", "mpa", "kgcm")

// convert reads a question for a unit conversion.
func (m *message) convert(s int) bool {
	if m.shut(convertGate) {
		return false
	}
	se := &m.sents[s]
	canon := func(u string) string {
		switch u {
		case "feet":
			return "ft"
		case "metre":
			return "m"
		case "psi", "bar", "kpa", "ft", "m", "mpa", "kgcm":
			return u
		}
		return ""
	}
	var from, to string // units named alone, the first and the one asked for
	cue := se.question || m.wants(s)
	var nums []int
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		if it.num != nil {
			if canon(it.unit) != "" {
				nums = append(nums, i)
			}
			continue
		}
		if len(nums) > 0 && to != "" && it.site && it.seg != m.items[nums[0]].seg && se.numbers == 1 {
			break // "how many psi is 3 bar, the lady at 5 Elm Ct wants to know"
		}
		if it.point != "" && !it.weak || m.is(i, cItem, "") && m.text(i) != "gauge" && m.text(i) != "tank" || it.site {
			if to == "" || it.site {
				if !m.is(i, cAsk, "") && m.text(i) != "meter" {
					return false
				}
			}
		}
		if m.is(i, cAsk, "convert") || m.is(i, cAsk, "") && strings.HasPrefix(m.text(i), "what") || i == se.from && m.wordCues(it.tok)&cues(cueWant, cueShow) != 0 {
			cue = true
		}
		if m.is(i, cQuestion, "") && (i <= se.from+3 || m.items[i-1].mark || m.text(i-1) == "then" || m.text(i-1) == "tell") {
			switch m.text(i) {
			case "do", "does", "is", "did", "are", "could", "can", "should", "que":
			default:
				cue = true
			}
		}
		if m.is(i, cUnit, "") && m.text(i+1) == "for" && m.isNum(i+2) {
			cue = true // "psi for 310 kpa"
		}
		switch m.text(i) {
		case "?":
			cue = true
		case "equals", "equal", "equivale", "equivalent", "how many", "how much", "much", "many", "cuantos", "cuantas", "cuanto es", "cuanto son":
			cue = true
		}
		if u, ok := m.val(i, cUnit); ok && canon(u) != "" && m.text(i) != "kg" && !(m.text(i) == "meter" && m.text(i-1) != "in" && m.text(i-1) != "to") {
			if to == "" || m.says(i-1, "in", "to", "en", "a", "into", "many", "cuantas", "cuantos") {
				from, to = to, canon(u)
			}
		}
	}
	if k := m.bare(s); len(nums) == 0 && cue && k >= 0 && to != "" && to != "psi" && (m.has2(s, "how many", "cuantos", "cuantas") || m.text(se.from) == "how") {
		// "how many kpa is 65": psi where no unit is said
		m.items[k].unit = "psi"
		nums = append(nums, k)
	}
	if n := len(nums); n >= 3 && (to == "" || to == canon(m.items[nums[n-1]].unit)) && m.items[nums[n-1]].unit == m.items[nums[0]].unit {
		to = canon(m.items[nums[1]].unit) // "if 10 m is 14 psi what is 35 m"
	}
	if k := m.bare(s); len(nums) == 0 && k >= 0 && (cue || m.shortSentence(s, 6)) && from != "" && to != "" && from != to {
		m.items[k].unit = from // "gauge is in bar, 4.5, what's that in psi"
		nums = append(nums, k)
	}
	if k := m.spokenOf(s, to); len(nums) == 0 && cue && k >= 0 {
		nums = append(nums, k)
		if !m.anyIn(s-1, func(int) bool { return true }, pointClasses) { // else it was measured, and asked about besides
			m.sents[s-1].asking, m.sents[s-1].asksConvert = true, true
		}
	}
	if len(nums) == 0 || to == "" {
		return false
	}
	if !cue && !m.shortSentence(s, 7) {
		return false
	}
	pick := -1
	for _, i := range nums {
		if canon(m.items[i].unit) != to {
			pick = i
		}
	}
	if pick < 0 {
		return false
	}
	if !cue && m.readingCueWords(s) {
		return false
	}
	v := m.items[pick].value
	a := m.addAsk(pick, AskConvert)
	a.Value, a.Unit, a.To = &v, canon(m.items[pick].unit), to
	return true
}

func (m *message) readingCueWords(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		switch m.text(i) {
		case "at", "got", "reading", "gauge", "shows", "reads", "static", "now":
			return true
		}
	}
	return false
}

// bare returns the one number of a sentence when it has no unit, else -1.
func (m *message) bare(s int) int {
	at := -1
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.items[i].num == nil {
			continue
		}
		if at >= 0 || m.items[i].unit != "" || m.items[i].num.time || m.items[i].num.money {
			return -1
		}
		at = i
	}
	return at
}

// spokenOf returns the one pressure of the sentence before s that is not in unit
// to, when s asks for no more than "what is it in psi"; else -1.
func (m *message) spokenOf(s int, to string) int {
	if s == 0 || to == "" || !m.shortSentence(s, 6) || !m.has2(s, "it", "that", "eso", "what is it", "whats that", "what is that") {
		return -1
	}
	at := -1
	for i := m.sents[s-1].from; i < m.sents[s-1].to; i++ {
		if u := m.items[i].unit; m.items[i].num == nil || u == "" {
			continue
		} else if u == to || at >= 0 {
			return -1
		}
		at = i
	}
	if at < 0 && to != "psi" && m.anyIn(s-1, func(int) bool { return true }, pointClasses) {
		// "54 in the shower, what's that in bar"
		for i := m.sents[s-1].from; i < m.sents[s-1].to; i++ {
			if n := m.items[i].num; n != nil && m.items[i].unit == "" && m.items[i].value >= 20 {
				at = i
			}
		}
		if at >= 0 {
			m.items[at].unit = "psi"
		}
	}
	return at
}
