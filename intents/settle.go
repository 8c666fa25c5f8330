package intents

import (
	"cmp"
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listFound  = listOf("found")
	listLeftAt = listOf("left at")
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
	m.neededTank()
	m.foundAir()
	m.foundSetting()
	m.othersSetting()
	m.movesReport()
}

// neededTank: the size of a tank that is still to be put in is no fact of the house: "need a
// 2 gal tank for 610 Walnut".
func (m *message) neededTank() {
	f := m.equipment.find("expansion_tank")
	if f == nil || f.SizeGal == nil {
		return
	}
	size := f.SizeGal
	f.SizeGal = nil
	if f.Absent() && m.tankPlan() {
		return // "no exp tank, hanging a 2 gal on Friday"
	}
	for _, p := range m.plans {
		tank := p.Action == assess.InstallTank || p.Action == assess.ReplaceTank
		if tank && f.empty() && m.items[p.at].seg == m.items[f.at].seg && m.items[p.at].sent == m.items[f.at].sent {
			return
		}
	}
	f.SizeGal = size
}

// foundAir: the air found in a tank before it was pumped up belongs to the work.
func (m *message) foundAir() {
	f := m.equipment.find("expansion_tank")
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
}

// empty tells whether nothing is left to say of the item.
func (f *fact) empty() bool {
	e := f.Equipment
	e.Item = ""
	return e == (assess.Equipment{}) && !f.named
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
			for more := true; more; {
				x, p := r.Reading, ""
				p, names, more = strings.Cut(names, "+")
				x.Point = assess.TestPoint(p)
				all = append(all, toldAt{r.at, x})
			}
		}
	}
	for _, f := range m.equipment {
		if !f.empty() {
			all = append(all, toldAt{f.at, f.Equipment})
		}
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
	if inOrder := func(a, b toldAt) int { return cmp.Compare(a.at, b.at) }; !slices.IsSortedFunc(all, inOrder) {
		slices.SortStableFunc(all, inOrder)
	}
	m.scratch.said = all
	m.frame.Statements = slices.Grow(m.frame.Statements, len(all))
	for _, p := range all {
		m.frame.Statements = append(m.frame.Statements, p.s)
	}
	if len(m.frame.Statements) == 0 {
		m.unsaidNumbers()
	}
	if len(m.frame.Statements) == 0 && len(m.frame.Unclear) == 0 {
		m.frame.Statements = []assess.Statement{Ask{About: AskNone}}
	}
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
			if m.inList(k, listFound) {
				return true
			}
			return false
		})
		if k < 0 {
			continue
		}
		switch {
		case m.inList(k, listLeftAt):
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
