package intents

// convert reads a question for a unit conversion.
func (m *message) convert(s int) bool {
	se := m.sents[s]
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
	var to string
	cue := se.question
	var nums []int
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		if it.num != nil {
			if canon(it.unit) != "" {
				nums = append(nums, i)
			}
			continue
		}
		if it.point != "" && !it.weak || m.is(i, cItem, "") && m.text(i) != "gauge" || it.site {
			if to == "" || it.site {
				if !m.is(i, cAsk, "") && m.text(i) != "meter" {
					return false
				}
			}
		}
		if m.is(i, cAsk, "convert") {
			cue = true
		}
		if m.is(i, cQuestion, "") && (i <= se.from+3 || m.items[i-1].mark || m.text(i-1) == "then" || m.text(i-1) == "tell") {
			switch m.text(i) {
			case "do", "does", "is", "did", "are", "could", "can", "should", "que":
			default:
				cue = true
			}
		}
		switch m.text(i) {
		case "equals", "equal", "equivale", "equivalent", "how many", "cuantos", "cuantas", "cuanto es", "cuanto son":
			cue = true
		}
		if u, ok := m.val(i, cUnit); ok && canon(u) != "" && m.text(i) != "kg" && !(m.text(i) == "meter" && m.text(i-1) != "in" && m.text(i-1) != "to") {
			if to == "" || m.text(i-1) == "in" || m.text(i-1) == "to" || m.text(i-1) == "en" || m.text(i-1) == "a" || m.text(i-1) == "into" || m.text(i-1) == "many" || m.text(i-1) == "cuantas" || m.text(i-1) == "cuantos" {
				to = canon(u)
			}
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
