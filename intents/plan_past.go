package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listBehindSpan     = listOf("behind span")
	listFormer         = listOf("former")
	listFills          = listOf("fills")
	listBeforePastSpan = listOf("before past span")
	listDealtWith      = listOf("dealt with")
	listWentThere      = listOf("went there")
	listFixesDate      = listOf("fixes date")
)

// Days that are no days to come.

// past tells whether a moment lies behind: "last flushed", "2 weeks ago", "for 3 days".
func (m *message) past(w moment) bool {
	if m.text(w.end) == "on" && m.closes(w.end) {
		return true // "follow-up visit, one month on"
	}
	if w.at > 0 && m.items[w.at-1].why == sumEachTime {
		return true // "she pays 110 a month for water"
	}
	if w.span && strings.HasPrefix(m.text(w.end), "since") { // not "a tank Monday since there isn't one"
		return true // "30 days since the new reg"
	}
	opens := m.items[w.at].sent == 0 && w.at <= m.sents[0].from+4
	if w.span && opens && m.says(w.end, "after", "since") && (m.is(w.end+1, cItem, "") || m.is(w.end+2, cItem, "")) && m.anyReadingLike() {
		return true // "recheck visit, 2 wks after reg swap"
	}
	if m.inList(w.end, listBehindSpan) {
		return true
	}
	if m.left(w.at, 4, true, func(k int) bool { return m.inList(k, listFills) && m.items[k].seg == m.items[w.at].seg }) >= 0 {
		return true // "fills a bucket in a day", "cubeta llena en un día"
	}
	if m.inList(w.at-2, listFormer) && (m.is(w.at-1, cDo, "") || m.is(w.at-1, cBase, "")) {
		return true // "past install 5/15"
	}
	if t := m.text(w.at - 2); (t == "desde" || t == "since") && m.is(w.at-1, cDeterminer, "") {
		return true // "desde el lunes"
	}
	if m.inList(w.at-1, listWentThere) || m.is(w.at-1, cDeterminer, "") && m.inList(w.at-2, listWentThere) {
		return true // "fui el lunes y no había nadie"
	}
	if k := w.at - 1; strings.Contains(m.text(k), " ") && m.inList(k, listDealtWith) || m.says(k, "it", "that", "this", "them", "those") && m.inList(k-1, listDealtWith) {
		return !w.span // "that reminder can go, handled it Friday"
	}
	if m.inList(w.at-1, listBeforePastSpan) {
		return m.text(w.at-1) != "for" || w.span && !m.setsDate(w.at-1) && !m.fromToday(w.end)
	}
	return false
}

// setsDate tells whether what stands before the "for" at item k sets a date: "booked for".
func (m *message) setsDate(k int) bool {
	if m.inList(k-1, listFixesDate) {
		return true
	}
	return m.is(k-1, cDo, "") || m.is(k-2, cDo, "") || m.is(k-1, cWill, "")
}
