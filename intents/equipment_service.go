package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listNever    = listOf("never")
	listInMonth  = listOf("in month")
	listNotOnce  = listOf("not once")
	listThisYear = listOf("this year")
	listGotTo    = listOf("got to")

	listEverSince = listOf("ever since")
	listHowLong   = listOf("how long")
	listForSoLong = listOf("for so long")
	listNotServed = listOf("not served")
	listWanted    = listOf("wanted then")
)

// The last flush or service of what is installed.

// neverServiced reads "never flushed", "flushed: never", "nunca lavado".
func (m *message) neverServiced(i int) bool {
	if !m.isService(i) || m.left(i, 3, true, func(k int) bool { return m.inList(k, listGotTo) && m.text(k-1) != "they" }) >= 0 {
		return false // "never got to the flush": today
	}
	if k := m.right(i, 2, false, func(k int) bool { return m.is(k, cItem, "") }); k >= 0 && m.items[k].seg == m.items[i].seg &&
		!m.is(k-1, cNeg, "") && !m.isAny(k, cItem, "heater", "drain_valve") && !m.serviceWord(i) && !(k == i+1 && strings.Contains(m.text(i), "flush")) {
		return false // "never touched the prv", but "heater never flushed prv age unknown"
	}
	if m.right(i, 8, true, func(k int) bool { return m.items[k].why == sinceServed }) >= 0 {
		return false // "nobody has flushed the heater in 3 years"
	}
	never := func(k int) bool { return m.text(k) == "never" }
	since := m.right(i, 4, true, func(k int) bool { return m.text(k) == "since" })
	if since > 0 && m.isNum(since+1) && !m.is(since+2, cBase, "installed") && m.left(i, 4, true, never) < 0 {
		return false // "nobody has flushed it since 2017"
	}
	if x := m.itemIn(m.items[i].sent); m.text(i) == "touched" && !m.serviceWord(i) && x != "" && x != "heater" {
		return false // "factory preset of 50 on the reducer, never touched"
	}
	if m.text(i+1) == "?" && m.says(i+2, "never", "nunca") && m.closes(i+2) {
		return true // "last flush? never"
	}
	if m.text(i-1) == "no" && m.right(i, 3, true, func(k int) bool {
		return m.text(k) == "ever" || m.text(k) == "since" && m.says(k+1, "new", "it", "install")
	}) >= 0 {
		return true // "no flush yet ever", "no flush since new"
	}
	nobody := func(k int) bool {
		return m.inList(k, listNever) ||
			m.says(k, "nobody", "no one") && m.text(i) != "touched" && m.items[k].seg == m.items[i].seg
	}
	if m.left(i, 5, true, nobody) >= 0 || m.right(i, 3, true, nobody) >= 0 {
		return true
	}
	return m.notOnce(i)
}

// notOnce reads a service that was not had in words apart: "hasn't been flushed once", "not
// ever flushed".
func (m *message) notOnce(i int) bool {
	once := func(k int) bool {
		return m.says(k, "ever", "once", "one time") || m.text(k) == "since" && m.says(k+1, "new", "it")
	}
	not := func(k int) bool { return m.says(k, "hasnt", "not", "havent") }
	if m.left(i, 4, true, not) >= 0 && (m.right(i, 2, true, once) >= 0 || m.text(i-1) == "once") {
		return true
	}
	if m.left(i, 4, true, func(k int) bool { return m.text(k) == "ever" }) < 0 {
		return false
	}
	return m.left(i, 6, true, func(k int) bool { return m.inList(k, listNotOnce) }) >= 0
}

// sinceServed says that a time is that since the last service.
const sinceServed = "since its last service"

// unservedFor tells whether the years at item i are those since the last service: "hasn't been flushed in
// 3 years", "three years since the heater was flushed", "went 5 years without a flush".
func (m *message) unservedFor(i int) bool {
	if !m.kinds.meets(setOf(cDid, cHint)) {
		return false
	}
	served := func(k int) bool { return m.isService(k) && !strings.HasPrefix(m.text(k), "been ") }
	from := i + 1
	for m.is(from, cUnit, "") || m.says(from, "now") {
		from++
	}
	if m.inList(from, listEverSince) {
		k := m.right(from, 6, false, served)
		return k >= 0 && m.items[k].seg == m.items[from].seg
	}
	k := i - 1
	for m.inList(k, listAbout) || m.inList(k, listHowLong) || m.is(k, cHint, "hedge") {
		k--
	}
	if !m.inList(k, listForSoLong) {
		return false
	}
	if m.text(k-1) == "unflushed" {
		return true
	}
	at := k
	k = m.left(at, 5, false, served)
	due := func(j int) bool { return m.inList(j, listWanted) && j > k }
	if k < 0 || m.items[k].seg != m.items[i].seg || m.left(at, 5, false, due) >= 0 {
		return false
	}
	return m.left(k, 6, false, func(j int) bool { return m.inList(j, listNotServed) && m.items[j].seg == m.items[k].seg }) >= 0
}

// servedSoLongAgo tells whether the service at item i is the one since which a time is told: "been 3 years
// since it was flushed".
func (m *message) servedSoLongAgo(i int) bool {
	k := m.left(i, 9, false, func(k int) bool { return m.items[k].unit == "year" })
	return k >= 0 && m.unservedFor(k)
}

// isService tells whether item k says that something was flushed or serviced.
func (m *message) isService(k int) bool {
	return m.is(k, cDid, "flushed") || m.is(k, cHint, "served") || m.serviceWord(k)
}

// maintainedYear tells whether a year is that of the last service: "flushed in 2019".
func (m *message) maintainedYear(i int) bool {
	s := &m.sents[m.items[i].sent]
	last := m.says(i-1, "last time", "last one") || m.text(i-2) == "last time" || m.says(i-1, "one", "was") && m.text(i-2) == "last"
	if m.rebuiltThen(i) || m.items[i].why == sinceServed {
		return true
	}
	if last && m.left(i, 12, true, m.isService) >= 0 {
		return true // "flushes it every year, last time 2025"
	}
	for k := i - 1; k >= s.from && k >= i-7; k-- {
		if m.isService(k) {
			// "flushed it, heater is a 2016"
			for j := k + 1; j < i; j++ {
				if m.items[j].mark && m.text(j) == "," || m.is(j, cItem, "") && !m.is(j, cItem, "heater") && !m.is(j-2, cDid, "flushed") ||
					m.text(i+1) == "install" {
					return false
				}
				if m.text(j) == "installed" || m.is(j, cHint, "wentin") || m.is(j, cDid, "installed") || m.says(j, "dated", "tag", "built") || m.text(j) == "since" && m.text(j-1) == "in" || m.is(j, cFuel, "") || m.items[j].role == roleSize || m.text(j) == "from" && m.text(k) != "last" {
					return false // "flushed htr 40 gal gas 2018"
				}
			}
			return true
		}
		if m.items[k].mark && m.text(k) != ":" {
			break
		}
		if m.is(k, cItem, "") && !m.is(k, cItem, "heater") && !m.serviceWord(k-1) && !m.serviceWord(k-2) &&
			!(m.is(k-2, cDid, "flushed") && m.is(k-1, cDeterminer, "")) {
			break
		}
	}
	for k := i + 1; k < s.to && k <= i+3; k++ {
		if m.items[k].mark && m.text(k) != ")" || m.text(k) == "and" || m.text(k) == "y" {
			break
		}
		if m.isService(k) {
			if n := m.nextNum(k); n > 0 && n-k <= 3 && m.items[n].fullYear() && m.items[i].fullYear() {
				return false // "put in in 2015 with the last service in 2022"
			}
			return m.text(i-1) == "in" || m.text(i-1) == "en" || m.text(k) == "flush" && k == i+1 || m.text(i-1) == "last" ||
				m.items[i].role == roleAgo
		}
	}
	return false
}

// rebuiltThen tells whether the year, or the time gone by, at item i is when a regulator was rebuilt: "prv
// last rebuilt 2022", "rebuilt the prv in 2021".
func (m *message) rebuiltThen(i int) bool {
	k := i - 1
	in := m.says(k, "in", "back in", "around", "about", "en") || m.items[i].role == roleAgo
	if in && m.items[i].role != roleAgo {
		k--
	}
	behind := m.is(k, cItem, "prv")
	if behind && in {
		for k--; m.is(k, cDeterminer, ""); k-- {
		}
	}
	if !m.is(k, cDid, "rebuilt") {
		return false
	}
	named := behind && in || m.text(k-1) == "last" || m.left(k, 4, true, func(j int) bool { return m.is(j, cItem, "prv") }) >= 0
	return named && (strings.HasPrefix(m.text(k), "rebuil") || m.text(k-1) == "last")
}

// servicedInMonth tells whether item i is the month, without a day or a year, of a service
// that was done: "tankless, 2019, serviced in march".
func (m *message) servicedInMonth(i int) bool {
	if !m.inList(i-1, listInMonth) {
		return false
	}
	if _, ok := months[m.text(i)]; !ok {
		return false
	}
	if m.isNum(i+1) || m.isMark(i+1, ",") && m.isNum(i+2) && year(m.items[i+2].value) {
		return false
	}
	k := m.left(i, 4, false, m.isService)
	if k < 0 || m.items[k].seg != m.items[i].seg || m.numsBetween(k, i) > 0 {
		return false
	}
	planned := m.left(k+1, 6, false, func(j int) bool { return m.meets(j, setOf(cDo, cWill, cNeg)) })
	return planned < 0
}

// maintained writes the year of the last service down.
func (m *message) maintained(a attribute, items []mentionOf) {
	y := 0
	switch a.what {
	case "year":
		y = m.fullYear(m.items[a.at].value)
	case "ago":
		y = m.ctx.Today.Year - int(m.items[a.at].value)
	case "lastyear":
		ok := false
		s := &m.sents[m.items[a.at].sent]
		for k := max(s.from, a.at-7); k < min(s.to, a.at+4); k++ {
			if m.isService(k) {
				ok = true
			}
		}
		if !ok {
			// "installed last year"
			for k := max(s.from, a.at-6); k < a.at; k++ {
				if m.is(k-1, cRelief, "") {
					return // "t&p replaced last year, heater is 2011"
				}
				if t := m.text(k); t == "instalaron" || t == "pusieron" || t == "cambiaron" {
					m.installedLastYear(a, items)
					return
				}
				if m.says(k, "new", "nw") || m.is(k, cPart, "new") || m.is(k, cDid, "installed") || m.is(k, cDid, "replaced") ||
					m.is(k, cHint, "wentin") || m.putsIn(k) && m.text(k) == "put" {
					m.installedLastYear(a, items)
					return
				}
			}
			return
		}
		y = m.yearLately(a.at)
	}
	item := m.servicedItem(a.at, items)
	if m.rebuiltThen(a.at) {
		item = "prv"
	}
	f := m.equipment.get(item, a.at)
	if f.MaintainedYear == nil {
		f.MaintainedYear = &y
	}
	f.said = true
}

// serviceWord tells whether item i is a word of service that may be done to anything:
// "serviced", "looked after"; only a heater is flushed.
func (m *message) serviceWord(i int) bool { return m.is(i, cHint, "serviced") }

// servicedItem finds what a word of service at or near item at is said of: the thing
// before it in the sentence, else the one after it, else the heater.
func (m *message) servicedItem(at int, items []mentionOf) string {
	s := &m.sents[m.items[at].sent]
	w := -1
	for k := max(s.from, at-8); k < min(s.to, at+5); k++ {
		if m.serviceWord(k) {
			w = k
		}
	}
	if w < 0 {
		return "heater"
	}
	found := ""
	for _, x := range items {
		if x.at < s.from || x.at >= s.to || x.item == "gauge" || x.item == "drain_valve" {
			continue
		}
		if x.at < w || found == "" && x.at <= w+4 {
			found = x.item
		}
	}
	if found == "" {
		return "heater"
	}
	return found
}

// yearLately returns the year of the span or the month at item i, in which something was done:
// "last spring", "serviced in march".
func (m *message) yearLately(i int) int {
	today := m.ctx.Today
	switch {
	case m.inList(i, listThisYear):
		return today.Year
	case m.says(i, "the year before last", "year before last"):
		return today.Year - 2
	case m.text(i) == "last spring":
		return m.seasonYear(3)
	case m.text(i) == "last summer":
		return m.seasonYear(6)
	case m.text(i) == "last fall":
		return m.seasonYear(9)
	case m.text(i) == "last winter":
		return m.seasonYear(12)
	}
	if month, ok := months[m.text(i)]; ok && month <= today.Month {
		return today.Year
	}
	return today.Year - 1
}

// seasonYear returns the year of the last season that began in a month.
func (m *message) seasonYear(month int) int {
	y := m.ctx.Today.Year
	if int(m.ctx.Today.Month) < month+2 {
		y-- // the season of this year is not over: the one before is meant
	}
	return y
}

// installedLastYear writes the year of an installation down that a word like "last year" tells.
func (m *message) installedLastYear(a attribute, items []mentionOf) {
	a2 := attribute{a.at, "year"}
	owner, old, ok := m.ownerOf(a2, items)
	if !ok || old {
		return
	}
	y := m.yearLately(a.at)
	f := m.equipment.get(owner, a.at)
	f.InstalledYear, f.said = &y, true
}
