package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listIntoUnit     = listOf("into unit")
	listEquals       = listOf("equals")
	listAsksFirst    = listOf("asks first")
	listTellsReading = listOf("tells reading")
	listAmountsTo    = listOf("amounts to")
	listTurnsInto    = listOf("turns into")
)

// A conversion needs a unit other than psi.
var convertGate = onlyWith(cUnit, "bar", "kpa", "ft", "feet", "m", "metre", "mpa", "kgcm")

// conversion is what a sentence tells of a conversion that it may ask for.
type conversion struct {
	cue      bool   // something asks
	nums     []int  // items with a number and a unit
	from, to string // units named alone, the first and the one asked for
}

// convert reads a question for a unit conversion.
func (m *message) convert(s int) bool {
	if m.shut(convertGate) {
		return false
	}
	c, ok := m.conversionIn(s)
	if !ok {
		return false
	}
	if len(c.nums) == 0 {
		if c.from == "" && c.cue && c.to != "" && s > 0 {
			c.from = m.loneUnit(s - 1) // "his gauge is all in bar. whats 5.5 in psi"
		}
		m.unitMeant(s, &c)
	}
	if c.to == "" && c.cue && len(c.nums) == 1 && s > 0 {
		if u := m.loneUnit(s - 1); u != convertible(m.items[c.nums[0]].unit) {
			c.to = u // "the engineer wants kpa, what do i write down for 62 psi"
		}
	}
	if c.to == "" && len(c.nums) == 1 && m.items[c.nums[0]].unit != "psi" && m.whatIsThat(s) {
		c.to, c.cue = "psi", true // "the inspector wrote 600 kPa, whats that"
	}
	if first := m.firstOf(s); c.to == "" && len(c.nums) == 1 && m.items[c.nums[0]].unit != "psi" && m.is(first, cAsk, "convert") {
		c.to, c.cue = "psi", true // "convert 4 bar"
	}
	if first := m.sents[s].from; c.to == "" && len(c.nums) == 1 && m.items[c.nums[0]].unit != "psi" && m.closes(c.nums[0]) &&
		m.says(first, "whats", "what is", "cuanto es", "cuanto son") && c.nums[0] == first+1 {
		c.to, c.cue = "psi", true // "whats 4.2 bar"
	}
	if c.to == "" && len(c.nums) == 1 && (m.asksHowMuch(s, c.nums[0]) || m.asksWorth(c.nums[0]) && m.items[c.nums[0]].unit != "psi") {
		c.to, c.cue = "psi", true // "how much is 6 bar", "what does 6 bar come to"
	}
	if n := len(c.nums); n >= 3 && (c.to == "" || c.to == convertible(m.items[c.nums[n-1]].unit)) &&
		m.items[c.nums[n-1]].unit == m.items[c.nums[0]].unit {
		c.to = convertible(m.items[c.nums[1]].unit) // "if 10 m is 14 psi what is 35 m"
	}
	if c.to == "" || !c.cue && (!m.shortSentence(s, 7) || m.readingCueWords(s)) {
		return false
	}
	pick := -1
	for _, i := range c.nums {
		if convertible(m.items[i].unit) != c.to {
			pick = i
		}
	}
	if pick < 0 {
		return false
	}
	v := m.items[pick].value
	a := m.addAsk(pick, AskConvert)
	a.Value, a.Unit, a.To = &v, convertible(m.items[pick].unit), c.to
	return true
}

// asksHowMuch tells whether sentence s asks no more than how much the pressure is that number i
// tells in another unit: "how much pressure is 6 bar", but not "how much is 20 ft of pipe".
func (m *message) asksHowMuch(s, i int) bool {
	k := m.firstOf(s)
	if m.text(k) == "how" && m.text(k+1) == "much" {
		k++
	} else if m.text(k) != "how much" {
		return false
	}
	pressure := m.says(k+1, "pressure")
	if pressure {
		k++
	}
	u := convertible(m.items[i].unit)
	return m.says(k+1, "is", "would", "does") && i <= k+3 && u != "" && u != "psi" && (pressure || !oneOf(m.items[i].unit, "feet", "metre"))
}

// asksWorth tells whether a question asks what the number at i comes to: "what does 5.5 bar come to", "what
// would 620 kPa be".
func (m *message) asksWorth(i int) bool {
	k := i - 1
	if m.says(k, "does", "would", "do", "is") {
		k--
	}
	return m.says(k, "what", "whats", "what does", "what would", "what is", "what do") && m.inList(i+1, listAmountsTo)
}

// turnedInto tells whether the unit at item i is what somebody asks to have a number turned into: "can you
// turn that into psi", "change it to bar".
func (m *message) turnedInto(i int) bool {
	t := m.items[i].tok
	if t > 0 && m.p.lex.of(&m.toks[t-1]).lists.has(listIntoUnit) {
		t--
	}
	return t > 1 && oneOf(m.toks[t-1].text, "that", "it", "this", "those", "them") && m.p.lex.of(&m.toks[t-2]).lists.has(listTurnsInto)
}

// unitNamed returns the item of sentence s that names a unit of pressure by itself, -1 for none.
func (m *message) unitNamed(s int) int {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if u, ok := m.val(i, cUnit); ok && convertible(u) != "" {
			return i
		}
	}
	return -1
}

// loneUnit returns the unit of pressure that sentence s names, when it holds no number and no test
// point: "inspector wants bar".
func (m *message) loneUnit(s int) (unit string) {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if it := &m.items[i]; it.num != nil || it.point != "" || it.site {
			return ""
		}
		if u, ok := m.val(i, cUnit); ok && m.text(i) != "kg" {
			unit = convertible(u)
		}
	}
	return unit
}

// whatIsThat tells whether sentence s ends by asking what the number in it is.
func (m *message) whatIsThat(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.says(i, "whats that", "what is that") ||
			m.says(i, "whats", "what is", "what") &&
				(m.text(i+1) == "that" && m.closes(i+1) || m.text(i+1) == "is" && m.text(i+2) == "that" && m.closes(i+2)) {
			return true
		}
	}
	return false
}

// asksItConverted tells whether a clause that begins at item i asks for what was told before it in a unit of
// pressure: "whats that in psi", "how much would it be in bar".
func (m *message) asksItConverted(i int) bool {
	if m.shut(convertGate) || m.wordCues(m.items[i].tok)&cueWh == 0 {
		return false
	}
	it := false
	for k := i; k < min(i+5, len(m.items)) && !m.items[k].mark && m.items[k].num == nil; k++ {
		if it && m.inList(k, listIntoUnit) {
			u, ok := m.val(k+1, cUnit)
			return ok && convertible(u) != ""
		}
		it = it || m.says(k, "it", "that", "eso", "whats that", "what is that", "what is it")
	}
	return false
}

// convertible returns the unit as a conversion names it, "" for one that none is asked of.
func convertible(unit string) string {
	switch unit {
	case "feet":
		return "ft"
	case "metre":
		return "m"
	case "psi", "bar", "kpa", "ft", "m", "mpa", "kgcm":
		return unit
	}
	return ""
}

// conversionIn gathers what a sentence tells of a conversion; ok is false when it speaks of
// a house instead.
func (m *message) conversionIn(s int) (c conversion, ok bool) {
	se := &m.sents[s]
	c.cue = se.question || m.wants(s)
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		if it.num != nil {
			if convertible(it.unit) != "" {
				c.nums = append(c.nums, i)
				c.cue = c.cue || m.items[i].unit != "psi" && m.asksWorth(i)
			}
			continue
		}
		if len(c.nums) > 0 && c.to != "" && it.site && it.seg != m.items[c.nums[0]].seg && se.numbers == 1 {
			break // "how many psi is 3 bar, the lady at 5 Elm Ct wants to know"
		}
		named := it.point != "" && !it.weak || m.is(i, cItem, "") && !m.is(i, cItem, "gauge") && m.text(i) != "tank"
		if (it.site || named && c.to == "") && !m.is(i, cAsk, "") && !m.says(i, "meter", "meters") {
			return c, false
		}
		c.cue = c.cue || m.asksToConvert(i, se)
		if u, ok := m.val(i, cUnit); ok && convertible(u) != "" && m.text(i) != "kg" &&
			!(m.text(i) == "meter" && !m.says(i-1, "in", "to", "many", "much")) {
			if into := m.inList(i-1, listIntoUnit); c.to == "" || into {
				c.from, c.to = c.to, convertible(u)
				// "gonna need 700 kPa in psi, the drawings came from overseas"
				c.cue = c.cue || into && m.isNum(i-2) && convertible(m.items[i-2].unit) != "" && convertible(m.items[i-2].unit) != c.to && !m.readingCueWords(s)
			}
		}
	}
	return c, true
}

// asksToConvert tells whether item i asks what something is in another unit.
func (m *message) asksToConvert(i int, se *sentence) bool {
	if m.inList(i, listEquals) || strings.HasPrefix(m.text(i), "how high ") || strings.HasPrefix(m.text(i), "how tall ") {
		return true
	}
	if m.is(i, cAsk, "convert") || i == se.from && m.says(i, "say", "put", "write") && m.isNum(i+1) || m.is(i, cAsk, "") && strings.HasPrefix(m.text(i), "what") ||
		i <= se.from+1 && (i == se.from || m.inList(se.from, listFillers)) && m.wordCues(m.items[i].tok)&(cueWant|cueShow) != 0 {
		return true
	}
	if m.is(i, cQuestion, "") && m.says(i-1, "is", "es", "makes", "son") && (m.closes(i) || m.inList(i+1, listIntoUnit)) {
		return true // "if 1 bar is 14.5 then 3.7 bar is what in psi"
	}
	if m.is(i, cQuestion, "") && (i <= se.from+3 || m.items[i-1].mark || m.says(i-1, "then", "tell", "so", "and", "but")) &&
		!m.inList(i, listAsksFirst) {
		return true
	}
	return m.is(i, cUnit, "") && (m.text(i+1) == "for" && m.isNum(i+2) || m.turnedInto(i)) // "psi for 310 kpa"
}

// unitMeant finds the number that a conversion means when none has a unit beside it.
func (m *message) unitMeant(s int, c *conversion) {
	k := m.bare(s)
	switch {
	case k < 0:
	case c.cue && c.to != "" && c.to != "psi" && (m.sentenceSays(s, "how", "how many", "cuantos", "cuantas") || m.inList(k+1, listIntoUnit) && m.is(k+2, cUnit, "") && m.shortSentence(s, 4)):
		m.items[k].unit = "psi" // "how many kpa is 65": psi where no unit is said
		c.nums = append(c.nums, k)
		return
	case (c.cue || m.shortSentence(s, 6)) && c.from != "" && c.to != "" && c.from != c.to:
		m.items[k].unit = c.from // "gauge is in bar, 4.5, what's that in psi"
		c.nums = append(c.nums, k)
		return
	}
	if k := m.spokenOf(s, c.to); c.cue && k >= 0 {
		c.nums = append(c.nums, k)
		if !m.sentenceMeets(s-1, pointClasses) { // else it was measured, and asked about besides
			m.sents[s-1].asking, m.sents[s-1].asksConvert = true, true
		}
	}
}

// readingCueWords tells whether sentence s has words that tell a reading rather than ask for a conversion.
func (m *message) readingCueWords(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.inList(i, listTellsReading) {
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

// onlyAsksUnit tells whether sentence s is a question that holds no more than a unit: "psi?",
// "cuántas libras son?".
func (m *message) onlyAsksUnit(s int) bool {
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if it := &m.items[i]; !it.mark && !m.is(i, cUnit, "") && !m.is(i, cQuestion, "") && !m.inList(i, listIntoUnit) && !m.says(i, "son", "is", "es", "please") {
			return false
		}
	}
	return m.sents[s].question || m.says(m.firstOf(s), "how", "how many") // "60 psi, how many bar"
}

// longQuestion is how many words a question about what the sentence before it told may have.
const longQuestion = 9

// spokenOf returns the one pressure of the sentence before s that is not in unit
// to, when s asks for no more than "what is it in psi"; else -1.
func (m *message) spokenOf(s int, to string) int {
	asks := m.is(m.firstOf(s), cQuestion, "") && m.inList(m.unitNamed(s)-1, listIntoUnit)
	if s == 0 || to == "" || !m.shortSentence(s, 6) && !((m.sents[s].question || asks) && m.shortSentence(s, longQuestion)) ||
		!m.sentenceSays(s, "it", "that", "eso", "what is it", "whats that", "what is that", "would that be") && !m.onlyAsksUnit(s) && !asks {
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
	if at < 0 && to != "psi" && m.sentenceMeets(s-1, pointClasses) {
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
