package intents

import (
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listHadDone   = listOf("had done")
	listYearsBack = listOf("years back")
)

// workDone is a deed on its way to a statement.
type workDone struct {
	at     int
	object string
	assess.Work
}

// shutForJob tells whether the water was only shut while another deed was done: "put a tank in too
// while I had the water off".
func (m *message) shutForJob(v *verb) bool {
	first := m.clauseStart(v.at)
	for m.items[first].mark && first < v.at {
		first++
	}
	if !m.says(first, "while", "with", "w/", "w", "since", "once", "as long as", "mientras", "con", "ya que", "aprovechando que") {
		return false
	}
	for k := range m.verbs {
		if o := &m.verbs[k]; o.done && o.what != "shut" && m.items[o.at].sent == m.items[v.at].sent && (o.object != "" || o.what == "fixed") {
			return true
		}
	}
	return false
}

// findWork reads what was done on the visit.
func (m *message) findWork() {
	for k := range m.verbs {
		v := &m.verbs[k]
		if !v.done || m.items[v.at].role == roleTaken {
			continue
		}
		if m.pastService(v) || v.what == "shut" && (m.underFound(v.at) || m.shutForJob(v)) {
			continue
		}
		a, obj, ok := m.workOf(v)
		if ok {
			m.addWork(workDone{at: v.at, object: obj, Work: assess.Work{Action: a}})
		} else if v.object != "check_valve" && v.object != "softener" && v.object != "recirc" {
			continue // "installed a check valve and a tank": the second is a deed
		}
		if v.what == "replaced" || v.what == "installed" {
			m.secondObject(v)
		}
	}
	// numbers that belong to a deed
	for i := range m.items {
		it := &m.items[i]
		if it.num == nil {
			continue
		}
		if it.why == "both at" {
			for k := range m.work {
				if putIn(m.work[k].Action) && m.items[m.work[k].at].sent == it.sent {
					p := toPSI(it.value, it.unit)
					m.work[k].ToPSI = &p
				}
			}
		}
		if it.owner == 0 || it.role != roleTo && it.role != roleFrom {
			continue
		}
		if it.role == roleFrom && it.unit == "" && it.value < 15 {
			for k := range m.items {
				if b := &m.items[k]; b.num != nil && b.owner == it.owner && b.role == roleTo && b.unit == "bar" {
					it.unit = b.unit // "turned it down to 4 bar from 6"
				}
			}
		}
		p := toPSI(it.value, it.unit)
		w := m.workAt(it.owner - 1)
		if w == nil {
			continue
		}
		if it.role == roleTo {
			w.ToPSI = &p
			for k := range m.work {
				if x := &m.work[k]; it.why == bothAt && m.items[x.at].sent == it.sent && x.at > w.at {
					x.ToPSI = &p
				}
			}
		} else {
			w.FromPSI = &p
		}
	}
	m.airOfNew()
	m.mergeWork()
}

// airOfNew gives the air told of a tank that was put in on the visit to the deed: "spun a
// new one on, air at 62".
func (m *message) airOfNew() {
	for k := range m.work {
		w := &m.work[k]
		if w.ToPSI != nil || w.Action != assess.ReplacedTank && w.Action != assess.InstalledTank {
			continue
		}
		for i := w.at + 1; i < len(m.items) && m.items[i].sent <= m.items[w.at].sent+1; i++ {
			if it := &m.items[i]; it.num != nil && it.role == roleCharge {
				p := toPSI(it.value, it.unit)
				w.ToPSI = &p
				m.setRole(i, roleTo, "air of the new tank")
				it.owner = w.at + 1
				break
			}
		}
	}
}

// workAt returns the deed told at an item, nil for none.
func (m *message) workAt(at int) *workDone {
	for k := range m.work {
		if m.work[k].at == at {
			return &m.work[k]
		}
	}
	return nil
}

// addWork adds a deed, one an item.
func (m *message) addWork(w workDone) {
	for k := range m.work {
		if m.work[k].at == w.at {
			return
		}
	}
	m.work = append(m.work, w)
}

// pastService tells whether a deed lies years back: "they had it flushed last
// year", "installed 2014", "never flushed".
func (m *message) pastService(v *verb) bool {
	s := &m.sents[m.items[v.at].sent]
	seg := m.items[v.at].seg
	for k := v.at - 1; k >= s.from && k >= v.at-5; k-- {
		if m.inList(k, listHadDone) {
			if v.what == "installed" || v.what == "flushed" || v.what == "replaced" || v.what == "rebuilt" {
				if m.yearNear(v.at) {
					return true
				}
			}
		}
		if m.text(k) == "last" && v.what == "flushed" {
			return true
		}
	}
	if v.what == "shut" {
		return false
	}
	// a year or "ago" in the clause
	for k := v.at + 1; k < s.to && k <= v.at+8; k++ {
		if m.items[k].seg != seg && k > v.at+2 && !(k == v.at+3 && m.text(k-1) == "/" && m.isNum(k-2)) {
			break // but "installed 03/2014"
		}
		if m.is(k, cDid, "") {
			break
		}
		it := &m.items[k]
		if it.num != nil && (it.role == roleAgo || it.role == roleYear && !m.newFact(v, k)) && (v.what != "flushed" || m.maintainedYear(k)) {
			return true
		}
		if v.what == "flushed" && m.servicedInMonth(k) {
			return true // "heater 2019, flushed in march"
		}
		if m.inList(k, listYearsBack) {
			return true
		}
	}
	for k := v.at - 1; k >= s.from && k >= v.at-3; k-- {
		if t := m.text(k); m.items[k].mark || t == "and" || t == "y" || t == "so" {
			break
		}
		if m.items[k].num != nil && m.items[k].role == roleYear && (v.what == "installed" || v.what == "flushed") {
			return true
		}
		if m.inList(k, listYearsBack) {
			return true
		}
	}
	return false
}

// yearNear tells whether a year, or a span of time gone by, stands near item at in its sentence.
func (m *message) yearNear(at int) bool {
	for k := max(0, at-4); k < min(len(m.items), at+7); k++ {
		if m.items[k].sent != m.items[at].sent {
			continue
		}
		it := &m.items[k]
		if it.num != nil && (it.role == roleYear || it.role == roleAgo) {
			return true
		}
		if m.inList(k, listYearsBack) {
			return true
		}
	}
	return false
}

// newFact tells whether a year after a deed is of another thing: "replaced the
// prv, heater 2016".
func (m *message) newFact(v *verb, k int) bool {
	for j := v.at + 1; j < k; j++ {
		if m.items[j].mark && m.text(j) == "," {
			return true
		}
		if c, ok := m.val(j, cItem); ok && m.itemCode(j, c) != v.object {
			return true
		}
	}
	return m.text(k-1) == "old" || m.text(k-1) == "the" || m.text(k+1) == "prv"
}

// firstOfItsKind makes a new part an installed one where the message says that there was
// none before: "hung a new expansion tank, there wasn't one".
func (m *message) firstOfItsKind(w *workDone) {
	if w.Action != assess.ReplacedPRV && w.Action != assess.ReplacedTank ||
		!strings.Contains(m.text(w.at), "new") && !m.newNear(w.at) || m.has(cPart, "old") || !m.noneBefore(w.object) {
		return
	}
	if w.Action = assess.InstalledTank; w.object == "prv" {
		w.Action = assess.InstalledPRV
	}
}

// mergeWork joins deeds that are one: "replaced the prv and set it to 60".
func (m *message) mergeWork() {
	out := m.work[:0]
	for _, w := range m.work {
		merged := false
		for k := range out {
			o := &out[k]
			same := o.Action == w.Action
			switch {
			case w.Action == assess.SetPRV && (o.Action == assess.ReplacedPRV || o.Action == assess.InstalledPRV || o.Action == assess.RebuiltPRV),
				w.Action == assess.ChargedTank && (o.Action == assess.ReplacedTank || o.Action == assess.InstalledTank),
				w.Action == assess.InstalledTank && o.Action == assess.ReplacedTank,
				w.Action == assess.InstalledPRV && o.Action == assess.ReplacedPRV,
				w.Action == assess.FlushedHeater && o.Action == assess.ReplacedHeater: // the old one was drained, the new one filled
				same = true
			case o.Action == assess.SetPRV && (w.Action == assess.ReplacedPRV || w.Action == assess.InstalledPRV || w.Action == assess.RebuiltPRV),
				o.Action == assess.ChargedTank && (w.Action == assess.ReplacedTank || w.Action == assess.InstalledTank),
				o.Action == assess.FlushedHeater && w.Action == assess.ReplacedHeater:
				o.Action, same = w.Action, true
			case o.Action == assess.InstalledPRV && w.Action == assess.ReplacedPRV, o.Action == assess.InstalledTank &&
				w.Action == assess.ReplacedTank:
				if m.noneBefore(o.object) {
					same = true
				} else {
					o.Action, same = w.Action, true
				}
			}
			if same {
				if w.ToPSI != nil {
					o.ToPSI = w.ToPSI
				}
				if w.FromPSI != nil && o.Action != assess.ReplacedPRV && o.Action != assess.ReplacedTank {
					o.FromPSI = w.FromPSI
				}
				merged = true
				break
			}
		}
		if !merged {
			out = append(out, w)
		}
	}
	for k := range out {
		m.firstOfItsKind(&out[k])
	}
	m.work = out
}

// putIn tells whether a regulator or an expansion tank was put in, so that it was set too.
func putIn(a assess.Action) bool {
	switch a {
	case assess.ReplacedPRV, assess.InstalledPRV, assess.ReplacedTank, assess.InstalledTank:
		return true
	}
	return false
}
