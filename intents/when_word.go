package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listBeforeReading = listOf("before reading")
	listNoTimeAfter   = listOf("no time after")
	listTouches       = listOf("touches")
	listOccasions     = listOf("occasions")
	listSits          = listOf("sits")
	listAfterWork     = listOf("after work")
	listWorkEnds      = listOf("work ends")
	listNextThen      = listOf("next then")
	listJobTimes      = listOf("job times")
)

var timeOpener = opener{classes: setOf(cBefore, cAfter, cNow), hints: []string{"leaving", "enters"}, words: []string{
	"had", "till", "til", "until", "once", "since",
}, lists: []list{listArrives, listDeparts, listLeavesAt}}

// timeWord tells whether item i places a reading before or after work: weak
// words ("was", "now") only count beside work.
func (m *message) timeWord(i int, worked bool) assess.When {
	if !m.begins(i, keyTime) || m.items[i].point != "" && !m.cameIn(i) || m.items[i].mark || m.noTimeWord(i) {
		return ""
	}
	if (m.text(i) == "had" || m.pastTense(i)) && m.onlyShutOff() {
		return "" // "I turned the water off at the curb. The kitchen had 126"
	}
	switch t := m.text(i); {
	case t == "had" && worked && m.isNum(i+1) && m.right(i, 8, true, func(k int) bool { return m.is(k, cNow, "") && (m.isNum(k+1) || m.isNum(k-1)) }) > 0:
		return assess.Before // "laundry had 104, now 63"
	case t == "had" && worked && m.isNum(i+1) && m.items[i+1].role == roleReading && m.leftTag(i, 9, cAfter, "") < 0 && m.workedBetween(-1, i) &&
		m.left(i, 5, true, func(k int) bool { return m.says(k, "then", "luego") }) < 0: // "turned it down. then the kitchen had 61"
		return assess.Before // "replaced the prv, front 60, had 118"
	case (t == "till" || t == "til" || t == "until") && worked && m.verbLeft(i, 6, "set") != nil:
		return assess.After // "dialed the reg til the kitchen read 60"
	case t == "once" && worked && m.says(i+1, "i", "we", "ive", "weve"):
		return assess.After // "once I backed the prv off kitchen was 62"
	case t == "since" && worked && !m.is(i-1, cNeg, "") && (m.stopAt(i+1) && m.clauseStart(i) != i || m.isMark(i+1, ":")) && m.workedBetween(-1, i):
		return assess.After // "turned it down, tub reads 63 since"
	case worked && m.visitEnds(i) != "":
		return m.visitEnds(i)
	case m.text(i) == "was at" && !m.isNum(i+1):
		return "" // "swapped the tank while I was at it"
	case m.is(i, cBefore, "") && (m.pastTense(i) || m.says(i, "tenia", "traia", "marcaba")) && m.inList(m.firstOf(m.items[i].sent), listNextThen) && m.workedBetween(-1, i):
		return assess.After // "cambié la reguladora. Luego la cocina tenía 60"
	case m.is(i, cBefore, ""):
		if m.tellsOfBefore(i, worked) {
			return assess.Before
		}
		return ""
	case worked && m.text(i+1) == ":" && m.is(i, cHint, "leaving") && (m.has(cBefore, "") || m.headLine("enters")):
		return assess.After // "Llegada: atrás 104 … Salida: atrás 60"
	case worked && m.text(i+1) == ":" && m.is(i, cHint, "enters") && m.headLine("leaving"):
		return assess.Before // "Entrada: … Trabajo: … Salida: …"
	case m.is(i, cAfter, "") && m.afterWork(i):
		return assess.After
	case (worked && (m.is(i, cAfter, "") || m.is(i, cNow, "")) || m.is(i, cAfter, "") && m.touchedSince(i)) && m.tellsOfAfter(i):
		return assess.After
	}
	return ""
}

// onlyShutOff tells whether no more was done than to shut the water off, which parts no pressure before it
// from one after it.
func (m *message) onlyShutOff() bool {
	return len(m.work) > 0 && !slices.ContainsFunc(m.work, func(w workDone) bool { return w.Action != assess.ShutOff })
}

// afterWork tells whether item i says that a reading was taken after work, though not after which: "lndry
// 64 aftr i fnshd th wrk", "kitchen 61 once I was done".
func (m *message) afterWork(i int) bool {
	if m.jobOfTime(i) >= 0 {
		return m.besideJob(i)
	}
	first, rest, _ := strings.Cut(m.text(i), " ")
	if !m.p.lex.inList(first, listAfterWork) || !beginsWith(rest, "i ", "we ", "the ") {
		return false
	}
	last := lastWord(rest)
	return m.p.lex.inList(last, listWorkEnds) && (m.stopAt(i+1) || m.isNum(i+1) || m.items[min(i+1, len(m.items)-1)].point != "")
}

// besideJob tells whether the time at item i is that of the job, told of the reading behind it or before it:
// "after the job kitchen 60", "rear 100 before the swap".
func (m *message) besideJob(i int) bool {
	end := m.jobOfTime(i)
	if end < 0 || m.clauseStart(i) < i && m.left(i, longestSentence, true, func(k int) bool {
		return m.items[k].seg == m.items[i].seg && (m.isNum(k) || m.items[k].point != "")
	}) < 0 {
		return false // "rear 70, lunch after the job"
	}
	next := min(end+1, len(m.items)-1)
	return m.stopAt(end+1) || m.isNum(next) || m.items[next].point != ""
}

// jobOfTime returns the last item of a time before or after the job that item i begins, -1 where it begins
// none: "after the job", "antes del cambio".
func (m *message) jobOfTime(i int) int {
	switch {
	case !m.is(i, cBefore, "") && !m.is(i, cAfter, ""):
	case m.says(i+1, "the", "this", "our", "el", "la", "del") && m.inList(i+2, listJobTimes):
		return i + 2
	case m.p.lex.inList(lastWord(m.text(i)), listJobTimes):
		return i
	}
	return -1
}

// leadsToSetting tells whether what follows item i is what a part was set or charged to: "quedó en 60" of
// a regulator, "encontré el tanque con 30".
func (m *message) leadsToSetting(i int) bool {
	k := i + 1
	for m.is(k, cDeterminer, "") || m.is(k, cItem, "") || k > i+1 && m.is(k, cHint, "putat") || m.says(k, "con") {
		k++
	}
	if !m.isNum(k) {
		return false
	}
	r := m.items[k].role
	return r == roleTo || r == roleFrom || r == roleSetting || r == roleCharge
}

// noTimeWord tells whether what may be a word of time is none.
func (m *message) noTimeWord(i int) bool {
	if m.leadsToSetting(i) {
		return true
	}
	switch m.text(i) {
	case "after", "before":
		// "the PRV is after the irrigation tee": a place
		return m.is(i+1, cDeterminer, "") && m.is(i+2, cPoint, "irrigation")
	case "left at":
		return m.isNum(i+1) && m.items[i+1].num.time // "left at 2:15"
	case "it was":
		return m.says(i-1, "read", "looked", "checked", "i read") // "the pressure there when I read it was 76"
	case "since the":
		// "charged 70 since the house runs 70"
		return !m.is(i+1, cItem, "") && !m.is(i+1, cPart, "") && !m.is(i+1, cBase, "") && !m.is(i+1, cHint, "job") && !m.is(i+1, cDid, "")
	}
	return false
}

// tellsOfBefore tells whether a word of the time before tells that of a reading.
func (m *message) tellsOfBefore(i int, worked bool) bool {
	switch t := m.text(i); {
	case m.inList(i, listBeforeReading):
		// "instalamos un prv, antes no había"
		return worked && !(t == "antes" && m.text(i+1) == "no" && m.says(i+2, "habia", "tenia", "tenian"))
	case oneOf(t, "came in at", "coming in", "started at"):
		// "afterwards the rear bib came in at 61"
		behind := m.isNum(i+1) && m.is(i+2, cAfter, "") && m.closes(i+2) // "came in at 56 after"
		return worked && !behind && m.left(i, 8, false, func(k int) bool { return m.is(k, cAfter, "") }) < 0
	case oneOf(t, "before", "bfr", "b4", "bef"):
		if m.neverBefore(i) || m.inList(i+1, listOccasions) {
			return false
		}
	}
	return worked || m.besideJob(i) || m.touched(i) // "before the kitchen remodel" is an occasion
}

// neverBefore reads "no prv before, put one in".
func (m *message) neverBefore(i int) bool {
	return m.is(i-1, cNeg, "") && !m.isNum(i+1) ||
		m.text(i-1) == "there" && m.is(i-2, cNeg, "") ||
		m.is(i-1, cItem, "") && m.is(i-2, cNeg, "") && m.stopAt(i+1)
}

// tellsOfAfter tells whether a word of the time after tells that of a reading.
func (m *message) tellsOfAfter(i int) bool {
	switch m.text(i) {
	case "al":
		return m.text(i+1) == ":" || (m.isNum(i+1) || i+1 < len(m.items) && m.items[i+1].point != "") && m.left(i, 12, true, func(k int) bool { return m.text(k) == "af" }) >= 0 // "AF 95 AL 60"
	case "left":
		// "lazy hand left overnight: 143"
		return !m.inList(i+1, listNoTimeAfter)
	case "after", "aftr", "despues":
		return !m.inList(i+1, listOccasions) && !(m.isNum(i+1) && (m.items[i+1].unit == "hour" || m.items[i+1].value <= 12)) // "nobody home after 4"
	case "luego":
		return m.workedBetween(-1, i) // "apagué el boiler y luego medí"
	case "finally":
		return m.right(i, 4, false, m.pressed) >= 0 // "finally got into 920 Bayfront"
	}
	if m.inList(i, listSits) {
		return m.workedBetween(-1, i) // "kitchen's sitting at 90. Turned the prv down"
	}
	return true
}

// touchedSince tells whether a time before work that is not told otherwise stands before item i: "before
// I adjusted: 94. after: 60".
func (m *message) touchedSince(i int) bool {
	for k := range i {
		if m.is(k, cBefore, "") && m.touched(k) {
			return true
		}
	}
	return false
}

// touched tells whether "before" speaks of work though none is told: "before I touched anything".
func (m *message) touched(i int) bool {
	for k := i; k < len(m.items) && k <= i+4; k++ {
		if m.inList(k, listTouches) {
			return true
		}
	}
	if rest, ok := strings.CutPrefix(m.text(i), "before "); ok { // "before i start", a phrase of its own
		for _, w := range [...]string{"start", "begin", "began", "touch", "i did", "doing", "work", "adjust"} {
			if strings.Contains(rest, w) {
				return true
			}
		}
	}
	return false
}
