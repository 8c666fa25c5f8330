package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listLeadsToYear = listOf("leads to year")
)

// Years of an installation, in two digits, as a date code or a month of a date.

// stampedYear tells whether two digits are a year: "PRV has 98 stamped on it", "reg 06,
// wh 15" beside one that begins with a zero, "put in twenty two".
func (m *message) stampedYear(i int) bool {
	it := &m.items[i]
	if now := m.ctx.Today.Year % 100; int(it.value) > now && it.value < 70 || it.point != "" {
		return false
	}
	if m.isFrom(i) {
		return true
	}
	if m.points(i) {
		return false
	}
	if m.is(i-1, cHint, "setting") {
		return false // "setting 70 on the tag"
	}
	if t := m.text(i + 1); (strings.HasPrefix(t, "stamped") || t == "on" && m.text(i+2) == "the" && m.text(i+3) == "tag" ||
		t == "on the tag") && m.itemIn(it.sent) != "" {
		return true
	}
	if m.says(i-1, "a", "an") && m.inList(i-2, listLinks) && it.value >= 70 && m.closes(i) && m.isAny(i-3, cItem, "prv", "softener", "recirc") {
		return true // "prv is a 98"
	}
	if m.putInAt(i) && m.thingIn(it.sent) && m.closes(i) && (it.num.words || m.says(i-1, "in", "back in") && len(it.num.digits) == 2) {
		return true
	}
	if m.says(i-1, "from", "since") && m.is(i-2, cItem, "") && m.items[i-2].point == "" && m.closes(i) && len(it.num.digits) == 2 && it.num.integer {
		return true // "prv from 21"
	}
	if !m.is(i-1, cItem, "") || m.items[i-1].point != "" {
		return false
	}
	s := &m.sents[it.sent]
	for k := s.from; k < s.to; k++ {
		if n := m.items[k].num; n != nil && k != i && len(n.digits) == 2 && n.digits[0] == '0' && n.integer && !n.words && m.is(k-1, cItem, "") {
			return true
		}
	}
	return false
}

// isFrom tells whether the spoken number at i is the year that a thing is said to be from, whatever is said
// next without a pause: "prv is from ninety eight side bib seventy seven".
func (m *message) isFrom(i int) bool {
	n := m.items[i].num
	return n.words && n.integer && len(n.digits) == 2 && m.items[i].unit == "" && m.text(i-1) == "from" &&
		m.inList(i-2, listLinks) && m.is(i-3, cItem, "") && m.items[i-3].point == ""
}

// putInAt tells whether the number at i follows what tells an installation: "put in ninety
// eight", "went in in oh nine".
func (m *message) putInAt(i int) bool {
	if m.says(i-1, "put in", "installed", "went in") {
		return true
	}
	return m.says(i-1, "in", "back in") && m.left(i, 4, false, func(k int) bool {
		return m.is(k, cHint, "wentin") || m.is(k, cDid, "installed") || m.is(k, cDid, "replaced") || m.says(k, "put", "done")
	}) >= 0
}

// monthOfDate tells whether the number at i is the month of a date that a thing bears, its
// year behind a stroke: "prv dated 3/14".
func (m *message) monthOfDate(i int) bool {
	if i < 0 || !m.isNum(i) || !m.isMark(i+1, "/") || !m.isNum(i+2) || m.isMark(i+3, "/") || m.isMark(i-1, "/") {
		return false
	}
	mo, yr := &m.items[i], &m.items[i+2]
	if !mo.num.integer || mo.value < 1 || mo.value > 12 || !yr.num.integer || len(yr.num.digits) != 2 {
		return false
	}
	if yr.value > 70 && yr.value < 80 || yr.value < 70 && int(yr.value) > m.ctx.Today.Year%100 {
		return false
	}
	return m.thingIn(mo.sent) && m.left(i, 4, false, func(k int) bool { return m.is(k, cHint, "dated") || m.is(k, cHint, "stamp") }) >= 0
}

// monthYear returns the two digits of the year of a date code, "heater mfg 0314"; "" for none.
func (m *message) monthYear(i int) string {
	n := m.items[i].num
	if len(n.digits) != 4 || !n.integer || n.words || n.digits[:2] < "01" || n.digits[:2] > "12" || !m.thingIn(m.items[i].sent) {
		return ""
	}
	if y := int(n.value) % 100; y > m.ctx.Today.Year%100 && y < 80 {
		return ""
	}
	if m.left(i, 4, false, func(k int) bool { return m.is(k, cHint, "stamp") }) < 0 {
		return ""
	}
	return n.digits[2:]
}

// spokenYear tells whether "oh nine" is a year: beside a thing or a house that was built,
// where no pressure is told.
func (m *message) spokenYear(i int) bool {
	if m.isFrom(i) {
		return true
	}
	if m.points(i) || m.items[i].point != "" || m.items[i].unit != "" {
		return false
	}
	return m.thingIn(m.items[i].sent) || m.itemIn(m.items[i].sent) != "" || m.yearCue(i)
}

// yearCue tells whether a year is told as one of an installation.
func (m *message) yearCue(i int) bool {
	return m.left(i, 4, false, func(k int) bool {
		if m.inList(k, listLeadsToYear) {
			return true
		}
		return false
	}) >= 0
}
