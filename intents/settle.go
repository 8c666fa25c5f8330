package intents

import (
	"cmp"
	"slices"

	"lazyhand/assess"
)

// settle applies the rules that reach across clauses.
func (m *message) settle() {
	m.undoneFor()
	m.whens()
	m.alsoThen()
	m.underHeads()
	m.columns()
	m.beforeAndAfter()
	m.saidTwice()
	m.placeless()
	m.foundAir()
	m.foundSetting()
	m.othersSetting()
	m.movesReport()
}

// foundAir: the air found in a tank before it was pumped up belongs to the work.
func (m *message) foundAir() {
	f := m.equipment.facts["expansion_tank"]
	if f == nil || f.SettingPSI == nil {
		return
	}
	for k := range m.work {
		w := &m.work[k]
		switch w.Action {
		case assess.ChargedTank:
			m.foundAndLeft(w)
			if w.FromPSI == nil && w.ToPSI != nil && *w.ToPSI != *f.SettingPSI {
				w.FromPSI = f.SettingPSI
			}
			f.SettingPSI = nil
		case assess.ReplacedTank, assess.InstalledTank:
			if w.ToPSI == nil {
				w.ToPSI = f.SettingPSI
			}
			f.SettingPSI = nil
		}
		if f.SettingPSI == nil {
			break
		}
	}
	if f.empty() {
		delete(m.equipment.facts, "expansion_tank")
	}
}

// empty tells whether nothing is left to say of the item.
func (f *fact) empty() bool {
	e := f.Equipment
	e.Item = ""
	return e == (assess.Equipment{}) && !f.named
}

var timeOpener = opener{classes: setOf(cBefore, cAfter, cNow), hints: []string{"leaving", "enters"}, words: []string{
	"had", "till", "til", "until",
}}

// timeWord tells whether item i places a reading before or after work: weak
// words ("was", "now") only count beside work.
func (m *message) timeWord(i int, worked bool) assess.When {
	if !m.begins(i, keyTime) {
		return ""
	}
	t := m.text(i)
	if m.items[i].point != "" || m.items[i].mark {
		return ""
	}
	if m.isNum(i+1) && (m.items[i+1].role == roleTo || m.items[i+1].role == roleFrom || m.items[i+1].role == roleSetting) {
		return "" // "quedó en 60" of a regulator
	}
	if t == "after" || t == "before" {
		// "the PRV is after the irrigation tee": a place
		if k := i + 1; m.is(k, cDeterminer, "") && m.is(k+1, cPoint, "irrigation") {
			return ""
		}
	}
	if t == "it was" && (m.text(i-1) == "read" || m.text(i-1) == "looked" || m.text(i-1) == "checked" || m.text(i-1) == "i read") {
		return "" // "the pressure there when I read it was 76"
	}
	if t == "since the" && !m.is(i+1, cItem, "") && !m.is(i+1, cPart, "") && !m.is(i+1, cBase, "") && !m.is(i+1, cHint, "job") && !m.is(i+1, cDid, "") {
		return "" // "charged 70 since the house runs 70"
	}
	if t == "had" && worked && m.isNum(i+1) && m.items[i+1].role == roleReading && m.leftTag(i, 9, cAfter, "") < 0 {
		return assess.Before // "replaced the prv, front 60, had 118"
	}
	if (t == "till" || t == "til" || t == "until") && worked && m.verbLeft(i, 6, "set") != nil {
		return assess.After // "dialed the reg til the kitchen read 60"
	}
	if m.is(i, cBefore, "") {
		switch t {
		case "was", "were", "it was", "had been", "estaba", "estaban", "traia", "tenia", "found", "start",
			"starting", "initial", "to start", "pre", "found at", "at first", "primero", "inicial", "inicio",
			"first reading", "encontre", "antes", "found it at", "prior", "starting pressure", "af", "initially":
			if !worked || t == "antes" && m.text(i+1) == "no" && m.says(i+2, "habia", "tenia", "tenian") {
				return "" // "instalamos un prv, antes no había"
			}
		case "came in at", "coming in", "started at":
			if !worked || m.left(i, 8, false, func(k int) bool { return m.is(k, cAfter, "") }) >= 0 {
				return "" // "afterwards the rear bib came in at 61"
			}
		case "before", "bfr", "b4", "bef":
			if k := i - 1; m.is(k, cNeg, "") && !m.isNum(i+1) || m.text(k) == "there" && m.is(k-1, cNeg, "") || m.is(k, cItem, "") && m.is(k-1, cNeg, "") && m.stopAt(i+1) {
				return "" // "no prv before, put one in"
			}
			// "before the kitchen remodel": an occasion
			if !worked && !m.touched(i) {
				return ""
			}
		default:
			if !worked && !m.touched(i) {
				return ""
			}
		}
		return assess.Before
	}
	if worked && m.text(i+1) == ":" {
		switch {
		case m.is(i, cHint, "leaving") && (m.has(cBefore, "") || m.headLine("enters")):
			return assess.After // "Llegada: atrás 104 … Salida: atrás 60"
		case m.is(i, cHint, "enters") && m.headLine("leaving"):
			return assess.Before // "Entrada: … Trabajo: … Salida: …"
		}
	}
	if m.is(i, cAfter, "") || m.is(i, cNow, "") {
		if !worked {
			return ""
		}
		switch t {
		case "al", "left", "end", "up to", "finally", "al final", "post":
			if t == "al" && m.text(i+1) != ":" {
				return ""
			}
			if t == "left" && m.text(i+1) == "side" {
				return ""
			}
		case "after", "aftr", "despues":
			if m.text(i+1) == "hours" || m.text(i+1) == "lunch" || m.isNum(i+1) && m.items[i+1].unit == "hour" {
				return ""
			}
		}
		return assess.After
	}
	return ""
}

// touched tells whether "before" speaks of work though none is told: "before I touched anything".
func (m *message) touched(i int) bool {
	for k := i; k < len(m.items) && k <= i+4; k++ {
		switch m.text(k) {
		case "touched", "touching", "tchd", "anything", "before i touched anything", "before touching anything", "antes de tocar", "adjusting", "work", "adjust", "did", "any":
			return true
		}
	}
	switch m.text(i) {
	case "before i touched anything", "before touching anything", "antes de tocar", "before work", "pre work",
		"before i did", "before i touched", "before i adjusted", "before i started":
		return true
	}
	return false
}

// whens places readings before and after the work of the message.
func (m *message) whens() {
	worked := len(m.work) > 0 || m.foundLeft || m.changed()
	type told struct {
		at   int
		when assess.When
	}
	var all []told
	for i := range m.items {
		if w := m.timeWord(i, worked); w != "" {
			if !m.whenApplies(i, w) {
				continue
			}
			all = append(all, told{i, w})
		}
	}
	if worked {
		m.inTurn()
		m.wentTo()
		defer m.sinceTheDeed()
	}
	if len(all) == 0 {
		return
	}
	for k := range m.readings {
		r := &m.readings[k]
		best := r.nearest(len(all), func(j int) int { return all[j].at })
		if best < 0 || r.When != "" || r.Peak && m.pastTense(all[best].at) {
			continue
		}
		if m.pastTense(all[best].at) {
			// "as left the shower was at 57": a plain "was" gives way
			for j := range all {
				if m.coversAsWell(all[j].at, r) {
					best = j
				}
			}
		}
		r.When = all[best].when
		m.chainBack(k, all[best].at)
	}
	// said first, it covers the sentence; said of a whole line, the sentence too
	for _, a := range all {
		s := m.items[a.at].sent
		lo, hi := m.readingsOf(s)
		if lo < hi {
			if m.weakTime(a.at) && !m.closesList(a.at, lo, hi) && !m.headed(a.at, m.readings[lo].at) && !(a.at == m.sents[s].from && m.is(a.at, cNow, "")) {
				// "now 60 in the kitchen and 58 at the tub": what is joined to it too
				for k := lo + 1; k < hi; k++ {
					if last, r := &m.readings[k-1], &m.readings[k]; last.When == a.when && r.When == "" && a.at < last.at && m.sameTime(a.at, last.at, r.at) {
						r.When = a.when
					}
				}
				continue
			}
			if m.text(a.at+1) == ":" && a.at > m.readings[lo].at && a.at < m.readings[hi-1].at {
				// "as found: kit 96, tub 95 / swapped reg / as left: kit 58, tub 58"
				for k := lo; k < hi && lo < hi; k++ {
					if r := &m.readings[k]; r.at > a.at && r.When == "" {
						r.When = a.when
					} else if r.at > a.at && r.When != a.when {
						break
					}
				}
				continue
			}
			if a.at < m.readings[lo].at || m.closesList(a.at, lo, hi) {
				for k := lo; k < hi; k++ {
					r := &m.readings[k]
					if r.When == "" {
						other := a.when == assess.Before && m.workedBetween(a.at, r.at)
						for _, b := range all {
							if b.when != a.when && b.at > a.at && b.at < r.at && !m.pastTense(b.at) {
								other = true
							}
						}
						if !other {
							r.When = a.when
						}
					}
				}
			}
			continue
		}
		// a head line: "AS FOUND", "Before:", "al llegar"
		se := &m.sents[s]
		if m.weakTime(a.at) && se.to-se.from > 5 || a.at-se.from > 6 {
			continue
		}
		if !(m.endsColon(s) || se.to-se.from <= 5 || m.heading(s)) {
			continue
		}
		for k := range m.readings {
			r := &m.readings[k]
			if r.sent <= s || r.When != "" {
				continue
			}
			stop := false
			for _, b := range all {
				if b.at > a.at && b.at < r.at {
					stop = true
				}
			}
			for _, w := range m.work {
				if w.at > a.at && w.at < r.at {
					stop = true
				}
			}
			if stop {
				break
			}
			r.When = a.when
		}
	}
}

// coversAsWell tells whether a word of time at item i says when a reading was taken that a
// plain "was" stands nearer to.
func (m *message) coversAsWell(i int, r *reading) bool {
	if m.pastTense(i) || m.is(i, cNow, "") || i < r.from || i >= r.to {
		return false
	}
	return m.items[i].seg == m.items[r.at].seg || i == m.sents[r.sent].from
}

// sameTime tells whether the time told at item at goes on from one reading to the next: both
// are joined, or stand in a list that it opens.
func (m *message) sameTime(at, from, to int) bool {
	return !m.workedBetween(from, to) && (m.chained(from, to) || m.opens(at) && m.plainList(from, to))
}

// alsoThen gives a reading with "too" behind it the time of the one before: "laundry 60
// afterwards, 60 kitchen too".
func (m *message) alsoThen() {
	for k := 1; k < len(m.readings); k++ {
		a, b := &m.readings[k-1], &m.readings[k]
		if b.When != "" || a.When == "" || a.sent != b.sent {
			continue
		}
		if too := m.right(b.at, 4, false, func(j int) bool { return m.text(j) == "too" || m.text(j) == "also" || m.text(j) == "tambien" }); too > 0 && m.separators(b.at, too) == 0 {
			b.When = a.When
		}
	}
}

// workedBetween tells whether work stands between two items.
func (m *message) workedBetween(a, b int) bool {
	for _, w := range m.work {
		if w.at > a && w.at < b {
			return true
		}
	}
	return false
}

func (m *message) endsColon(s int) bool {
	se := &m.sents[s]
	for k := se.to - 1; k >= se.from; k-- {
		if m.text(k) == "\n" {
			continue
		}
		return m.text(k) == ":"
	}
	return false
}

// weakTime are words that place only the number beside them.
func (m *message) weakTime(i int) bool {
	switch m.text(i) {
	case "was", "were", "it was", "now", "nw", "had been", "estaba", "estaban", "traia", "tenia", "ahora",
		"ahorita", "right now", "currently", "down to", "up to", "before", "after", "settled", "ya quedo", "quedo",
		"left", "found", "live", "current":
		return true
	}
	return m.is(i, cNow, "")
}

// closesList tells whether a time word after a list speaks of all of it: "5.8
// front and 5.7 in the kitchen when I came", "142 front, 95 rear before".
func (m *message) closesList(at, lo, hi int) bool {
	if at < m.readings[hi-1].at {
		return false
	}
	switch m.text(at) {
	case "when i came", "when i got here", "when i got there", "when i arrived", "on arrival", "as found",
		"al llegar", "cuando llegue", "when i left", "as left", "al terminar", "going out", "when i showed up",
		"when we got there", "when we got here", "when i pulled up", "upon arrival", "before i touched anything",
		"before touching anything", "cuando termine", "al salir", "antes de tocar", "after that":
		return true
	case "before", "after", "antes", "despues":
		// "shower 58, kit 58 after"
		for k := lo + 1; k < hi; k++ {
			if m.readings[k-1].When != "" || !m.plainList(m.readings[k-1].at, m.readings[k].at) {
				return false
			}
		}
		return m.isMark(at+1, "\n", ".") || at+1 == len(m.items)
	}
	return m.touched(at)
}

// whenApplies tells whether a time word at i speaks of readings at all: "now" of
// "no hammer now", "was" of "pilot was out" do not.
func (m *message) whenApplies(i int, w assess.When) bool {
	t := m.text(i)
	lo, hi := m.readingsOf(m.items[i].sent)
	if !m.weakTime(i) {
		// "after I cranked the prv down", "before i closed anything"
		return true
	}
	if t == "was" || t == "were" || t == "estaba" || t == "it was" || t == "tenia" || t == "traia" || t == "had been" || t == "estaban" {
		// beside a number
		for k := i + 1; k <= i+4 && k < len(m.items); k++ {
			if m.items[k].num != nil && m.items[k].role == roleReading {
				return true
			}
			switch m.text(k) {
			case "at", "about", "around", "reading", "showing", "en", "a", "like", "up", "sitting", "como", "running", "psi", "still":
				continue
			}
			if m.is(k, cStatic, "") || m.items[k].point != "" {
				continue
			}
			return false
		}
		return false
	}
	if m.is(i, cNow, "") || t == "left" || t == "found" || t == "now" {
		near := false
		for k := lo; k < hi; k++ {
			if abs(m.readings[k].at-i) <= 5 && m.seps(i, m.readings[k].at) == 0 {
				near = true
			}
		}
		if !near {
			return false
		}
		// "no hammer now"
		for k := i - 1; k >= 0 && k >= i-3; k-- {
			if m.is(k, cSym, "") && m.items[k].sent == m.items[i].sent && !m.isNum(i+1) {
				return false
			}
			if m.items[k].num != nil || m.items[k].mark {
				break
			}
		}
	}
	return true
}

func (m *message) seps(a, b int) int {
	if a > b {
		a, b = b, a
	}
	return m.separators(a, b)
}

// toldAt is a statement with the item that it stands at.
type toldAt struct {
	at int
	s  assess.Statement
}

// collect writes the statements in the order told.
func (m *message) collect() {
	all := m.scratch.said[:0]
	for k := range m.readings {
		r := &m.readings[k]
		if len(r.points) == 0 {
			all = append(all, toldAt{r.at, r.Reading})
			continue
		}
		for _, names := range r.points {
			for _, p := range twoPoints(names) {
				x := r.Reading
				x.Point = assess.TestPoint(p)
				all = append(all, toldAt{r.at, x})
			}
		}
	}
	for _, item := range m.equipment.order {
		f := m.equipment.facts[item]
		if f == nil || f.empty() {
			continue
		}
		all = append(all, toldAt{f.at, f.Equipment})
	}
	for _, s := range m.symptoms {
		all = append(all, toldAt{s.at, s.Symptom})
	}
	for _, w := range m.work {
		all = append(all, toldAt{w.at, w.Work})
	}
	for _, p := range m.plans {
		all = append(all, toldAt{p.at, p.Plan})
	}
	for _, a := range m.asks {
		all = append(all, toldAt{a.at, a.Ask})
	}
	slices.SortStableFunc(all, func(a, b toldAt) int { return cmp.Compare(a.at, b.at) })
	m.scratch.said = all
	m.frame.Statements = slices.Grow(m.frame.Statements, len(all))
	for _, p := range all {
		m.frame.Statements = append(m.frame.Statements, p.s)
	}
	if len(m.frame.Statements) == 0 && len(m.frame.Unclear) == 0 {
		m.frame.Statements = []assess.Statement{Ask{About: AskNone}}
	}
}

// chained tells whether two readings are joined by "and", or stand in a row: "kitchen
// 61 shower 60".
func (m *message) chained(a, b int) bool {
	row := b > a+1
	for k := a + 1; k < b; k++ {
		switch m.text(k) {
		case "and", "y":
			return true
		}
		row = row && m.items[k].point != ""
	}
	return row
}

// foundAndLeft reads the two charges of a tank's service: "found 31, left 62".
func (m *message) foundAndLeft(w *workDone) {
	for i := range m.items {
		it := &m.items[i]
		if it.num == nil || it.role != roleCharge {
			continue
		}
		p := toPSI(it.value, it.unit)
		k := m.left(i, 5, false, func(k int) bool {
			switch m.text(k) {
			case "found", "was", "antes", "had", "before", "as found", "found it at", "estaba", "left", "now", "after", "as left", "left it at", "ahora", "quedo":
				return true
			}
			return false
		})
		if k < 0 {
			continue
		}
		switch m.text(k) {
		case "left", "now", "after", "as left", "left it at", "ahora", "quedo":
			if w.ToPSI == nil {
				w.ToPSI = &p
			}
		default:
			if w.FromPSI == nil {
				w.FromPSI = &p
			}
		}
	}
}
