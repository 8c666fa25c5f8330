package intents

import (
	"slices"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listPromises = listOf("promises")
)

// planned is a follow-up on its way to a statement.
type planned struct {
	at int
	assess.Plan
}

// action is a word of something to do.
type action struct {
	at     int
	code   assess.Action
	other  bool
	needed bool // needs no date: the sentence says that it is to be done
	used   bool // it is planned already, or said by another one
}

// findPlans reads what is to be done later.
func (m *message) findPlans() {
	m.spans()
	for s := range m.sents {
		m.planSentence(s)
	}
	for k := range m.plans {
		if p := &m.plans[k]; p.InDays == nil {
			p.InDays = m.spanAlone(m.items[p.at].sent + 1)
		}
	}
	m.plans = slices.DeleteFunc(m.plans, m.datedToo)
	m.plans = slices.DeleteFunc(m.plans, m.doneSince)
}

// spanAlone returns the days of a sentence that is nothing but a time to come: "boss wants a
// recheck. 30 days."; nil for none.
func (m *message) spanAlone(s int) *int {
	if s >= len(m.sents) {
		return nil
	}
	se := &m.sents[s]
	for _, w := range m.moments {
		if w.at < se.from || w.at >= se.to || m.past(w) || w.unsure {
			continue
		}
		for i := se.from; i < se.to; i++ {
			if (i < w.at || i >= w.end) && !m.items[i].mark && !m.items[i].site && !m.says(i, "in", "en") {
				return nil
			}
		}
		days := w.days
		return &days
	}
	return nil
}

// doneSince tells whether a plan without a day only tells the need of what was done on the
// visit: "last time I quoted the tank, today I put it in".
func (m *message) doneSince(p planned) bool {
	return p.InDays == nil && slices.ContainsFunc(m.work, func(w workDone) bool {
		switch p.Action {
		case assess.InstallTank, assess.ReplaceTank:
			return w.Action == assess.InstalledTank || w.Action == assess.ReplacedTank
		case assess.ReplacePRV:
			return w.Action == assess.ReplacedPRV || w.Action == assess.InstalledPRV
		case assess.SetPRV:
			return w.Action == assess.SetPRV
		}
		return false
	})
}

// datedToo tells whether a plan without a day only names the need of what another one
// gives a day: "Tank: none, want one / Install tank Thursday".
func (m *message) datedToo(p planned) bool {
	return p.InDays == nil && p.Action != assess.OtherAction && slices.ContainsFunc(m.plans, func(q planned) bool {
		return q.Action == p.Action && q.InDays != nil
	})
}

// planSentence reads what a sentence says is to be done, and when.
func (m *message) planSentence(s int) {
	se := &m.sents[s]
	if se.question && !m.planish(s) && !m.sentenceSays(s, "could", "can", "would", "puedes", "pueden", "podrias", "puede", "podemos") {
		return
	}
	if se.snoozes || se.asksDue || se.asksSize || se.aside {
		return // the follow-ups it names are those asked about
	}
	var acts []action
	for i := se.from; i < se.to; i++ {
		if !m.mayAct(i) {
			continue
		}
		if a, ok := m.actionAt(i, s); ok && !m.putsReportRight(a, se) {
			acts = append(acts, a)
		}
	}
	whens := m.daysOf(se)
	if len(acts) == 0 && len(whens) > 0 {
		m.planDays(s, whens)
	}
	for _, w := range whens {
		m.planForDay(s, w, acts, whens)
	}
	m.secondPlan(se)
	m.planUndated(s, acts, len(whens) > 0)
}

// putsReportRight tells whether what is to be done is done to the last report: "my last one needs to be
// fixed, kitchen was 66".
func (m *message) putsReportRight(a action, se *sentence) bool {
	return a.code == assess.OtherAction && se.asking && m.hasAsk(AskCorrect) && len(m.daysOf(se)) == 0
}

// daysOf returns the days to come that a sentence tells, without those taken back or denied.
func (m *message) daysOf(se *sentence) []moment {
	var whens []moment
	for _, w := range m.moments {
		if w.at >= se.from && w.at < se.to && !m.past(w) && !m.deniedDay(w) && !m.dayOfEvent(w) {
			whens = append(whens, w)
		}
	}
	for k := len(whens) - 2; k >= 0; k-- {
		if m.takesBack(whens[k].end, whens[k+1].at) {
			whens = slices.Delete(whens, k, k+1) // "back next month no scratch that in two weeks"
		}
	}
	if n := len(whens); n > 1 {
		whens = slices.DeleteFunc(whens, func(w moment) bool { return m.arrival(w, n) })
	}
	return whens
}

// planDays plans where days are told and no word of doing: "ping me in a week about 14
// Maple", "new prv Tuesday".
func (m *message) planDays(s int, whens []moment) {
	se := &m.sents[s]
	if len(whens) == 1 && (m.sentenceIs(s, cHint, "remind") || m.putsOn(s)) {
		d := whens[0].days
		m.plans = append(m.plans, planned{whens[0].at, assess.Plan{Action: assess.OtherAction, InDays: &d}})
	}
	if len(whens) == 1 && m.againAtEnd(whens[0]) {
		d := whens[0].days
		m.plans = append(m.plans, planned{whens[0].at, assess.Plan{Action: assess.Recheck, InDays: &d}})
	}
	m.plans = append(m.plans, m.itemsAndDays(se, whens)...)
	if !slices.ContainsFunc(m.plans, func(p planned) bool { return p.at >= se.from && p.at < se.to }) {
		m.plans = append(m.plans, m.bookedItems(whens)...)
	}
}

// planForDay plans what is to be done on a day: the action that belongs to it best. What says
// the same besides is used up with it; whens are all days of the sentence.
func (m *message) planForDay(s int, w moment, acts []action, whens []moment) {
	only := len(whens) == 1
	best, cost := -1, 1e9
	for k, a := range acts {
		if !only && m.hasDayBeside(a, w, acts, whens) {
			continue
		}
		c := m.distanceTo(a, w)
		if !only && m.partedAhead(w.at, a.at) {
			c += 3 // "put a tank in on June 24 and recheck in 45 days"
		}
		if (!a.used || only) && c < cost {
			best, cost = k, c
		}
	}
	if best < 0 {
		m.plans = append(m.plans, m.itemToo(&m.sents[s], w)...)
		return
	}
	a := &acts[best]
	if a.other && !m.promised(s, *a) && !m.changesOn(a.at, w.at) {
		return
	}
	a.used = true
	code, other := a.code, a.other
	if other {
		if c, ok := m.brings(s, a.at); ok {
			code, other = c, false
		} else if m.seenAgain(a.at, w) {
			code, other = assess.Recheck, false
		}
	}
	p := planned{a.at, assess.Plan{Action: code}}
	if d := w.days; !w.unsure {
		p.InDays = &d
	}
	m.plans = append(m.plans, p)
	m.joinedJobs(p, a, acts, only)
	for k := range acts {
		b := &acts[k]
		b.used = b.used || b.other && !m.ownDay(b, a, w, whens) || b.code == code && (only || m.items[b.at].seg == m.items[a.at].seg)
	}
}

// hasDayBeside tells whether action a has another day than w in its own clause, and the clause of w an action of
// its own: "pump up the tank thurs, recheck 1 wk".
func (m *message) hasDayBeside(a action, w moment, acts []action, whens []moment) bool {
	here, there := m.clauseStart(a.at), m.clauseStart(w.at)
	return here != there && slices.ContainsFunc(whens, func(o moment) bool { return m.clauseStart(o.at) == here }) &&
		slices.ContainsFunc(acts, func(b action) bool { return m.clauseStart(b.at) == there })
}

// ownDay tells whether action b has a day of its own, in a clause that "and" or a comma parts from
// action a and its day w: "back tomorrow to change the prv, and remind me in 2 months to call her".
func (m *message) ownDay(b, a *action, w moment, whens []moment) bool {
	for _, o := range whens {
		if o.at == w.at {
			continue
		}
		from, to := max(a.at, w.at), min(b.at, o.at)
		if from > to {
			from, to = max(b.at, o.at), min(a.at, w.at)
		}
		for k := from + 1; k < to; k++ {
			if m.items[k].mark || m.says(k, "and", "then", "y", "luego") {
				return true
			}
		}
	}
	return false
}

// partedAhead tells whether "and" parts the item at from the one behind it at to.
func (m *message) partedAhead(from, to int) bool {
	return m.right(from, to-from-1, true, func(k int) bool { return m.says(k, "and", "then", "y", "luego") }) >= 0
}

// distanceTo tells how far an action is from a day: the less, the sooner they belong together.
func (m *message) distanceTo(a action, w moment) float64 {
	c := float64(abs(a.at - w.at))
	if a.at > w.at {
		c++
	}
	if m.items[a.at].seg != m.items[w.at].seg {
		c += 4
	}
	if a.other {
		c += 10
	} else if !a.needed {
		c += 2
	}
	return c
}

// planUndated plans what is to be done on no day; dated tells that the sentence names days.
func (m *message) planUndated(s int, acts []action, dated bool) {
	used := func(a action) bool { return a.used }
	for k, a := range acts {
		if a.used || !a.needed || a.other && (!m.sentenceIs(s, cHint, "remind") || !dated && slices.ContainsFunc(acts, used)) {
			continue
		}
		if slices.ContainsFunc(acts[:k], func(b action) bool { return b.used && b.code == a.code }) {
			continue
		}
		acts[k].used = true
		m.plans = append(m.plans, planned{a.at, assess.Plan{Action: a.code}})
		if m.text(a.at) == "both" {
			m.plans = append(m.plans, planned{a.at, assess.Plan{Action: assess.ReplaceTank}})
		}
	}
}

// promised tells whether a plain "back", "call" or the like is a follow-up.
func (m *message) promised(s int, a action) bool {
	for _, w := range m.moments {
		if w.at <= m.sents[s].from+1 && w.end == a.at && !m.past(w) {
			return true // "en un año lavar el boiler"
		}
	}
	if (a.at <= m.sents[s].from+1 || m.isMark(a.at-1, ",", "-", ":") && m.momentSeg(a.at)) && m.text(a.at) != "back" ||
		m.sentenceIs(s, cHint, "remind") {
		return true // "Flush again in a year"
	}
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		if m.is(i, cHint, "promise") {
			return true // "en dos semanas les lavo el boiler"
		}
		if m.inList(i, listPromises) {
			return true
		}
	}
	return false
}

// momentIn tells whether sentence s tells a time to come.
func (m *message) momentIn(s int) bool {
	for _, w := range m.moments {
		if w.at >= m.sents[s].from && w.at < m.sents[s].to && !m.past(w) {
			return true
		}
	}
	return false
}

// momentSeg tells whether the clause of item i tells a time to come close by.
func (m *message) momentSeg(i int) bool {
	for _, w := range m.moments {
		if m.items[w.at].sent == m.items[i].sent && abs(w.at-i) <= 9 && (m.items[w.at].seg == m.items[i].seg || m.partedDay(w, i)) && !m.past(w) {
			return true
		}
	}
	return false
}

// partedDay tells whether only a mark parts item i from a day that a clause of its own holds, and
// nothing else: "planning to swap the tank, June 22", "in 3 days - regulator swap".
func (m *message) partedDay(w moment, i int) bool {
	from, to := w.at, w.end
	for m.says(from-1, "in", "on", "by", "about", "like", "within", "en", "el", "the", "first thing", "this", "para") {
		from--
	}
	for m.says(to, "from", "out", "now", "today", "from now", "from today") {
		to++ // "2 weeks from now"
	}
	s := &m.sents[m.items[i].sent]
	if i < w.at {
		return from > s.from && m.isMark(from-1, ",", "-", ":") && (to >= s.to || m.closes(to-1)) && m.items[from-2].seg == m.items[i].seg
	}
	return from == s.from && to < s.to && m.isMark(to, ",", "-", ":") && m.items[to+1].seg == m.items[i].seg
}

// headerPlan tells whether the line is headed as a plan: "NEXT:", "F/U".
func (m *message) headerPlan(s int) bool {
	if m.sents[s].header < 0 {
		return false
	}
	for k := m.sents[s].from; k < m.sents[s].header; k++ {
		if m.inList(k, listPlanHeads) {
			return true
		}
	}
	return false
}

// lastFailed finds the regulator or tank said to have failed before item at.
func (m *message) lastFailed(at int) string {
	for k := at - 1; k >= 0; k-- {
		if v, ok := m.val(k, cItem); ok && !m.taken(k) {
			c := m.itemCode(k, v)
			if c == "prv" || c == "expansion_tank" {
				for j := max(0, k-6); j < min(len(m.items), k+12); j++ {
					if j < k && m.items[j].sent != m.items[k].sent {
						continue // "regulator's shot. Tank's fine. Swap is on me for Friday"
					}
					if m.is(j, cCond, "failed") || m.is(j, cCond, "suspect") {
						return c
					}
				}
			}
		}
	}
	return ""
}

// noTank tells whether the message says that there is no expansion tank.
func (m *message) noTank() bool {
	for k := range m.items {
		if v, ok := m.val(k, cItem); ok && m.itemCode(k, v) == "expansion_tank" {
			if m.itemAbsent(k) {
				return true
			}
		}
	}
	return false
}

// soundTank tells whether an expansion tank is there and said to be good.
func (m *message) soundTank() bool {
	for k := range m.items {
		if v, ok := m.val(k, cItem); ok && m.itemCode(k, v) == "expansion_tank" && m.is(k+1, cCond, "good") {
			return true
		}
	}
	return false
}

// failedTank tells whether an expansion tank is there and said to be failing.
func (m *message) failedTank() bool {
	if m.noTank() {
		return false
	}
	for k := range m.items {
		if m.numIs(k, roleCharge) {
			return true // a tank with air in it is there: "12 lbs of air left in it, needs a new one"
		}
		if v, ok := m.val(k, cItem); !ok || m.itemCode(k, v) != "expansion_tank" {
			continue
		}
		lo, hi := k, k
		other := func(j int) bool {
			v, ok := m.val(j, cItem)
			return ok && m.itemCode(j, v) != "expansion_tank" && m.clauseStart(j) != m.clauseStart(k)
		}
		for lo > 0 && lo > k-6 && !m.is(lo-1, cItem, "prv") && !other(lo-1) {
			lo--
		}
		for hi+1 < len(m.items) && hi < k+11 && !m.is(hi+1, cItem, "prv") && !other(hi+1) {
			hi++
		}
		for j := lo; j <= hi; j++ {
			if in := m.items[j].sent; in != m.items[k].sent && (m.itemIn(in) != "" && m.itemIn(in) != "expansion_tank" || m.otherSubject(j) || m.sentenceMeets(in, notEquipment) ||
				m.sentenceIs(in, cSym, "creep") || m.pointInSentence(in)) {
				continue // "heater jacket rusted through. needs an expansion tank"
			}
			if in := m.items[j].sent; in < m.items[k].sent && m.itemIn(in) == "" && oneOf(m.carried(in), "prv", "heater") || m.reliefNear(j) {
				continue // "the regulator's age is not known. It is corroded. needs a tank", "T&P has been weeping"
			}
			if m.ofOtherItem(j, k) || m.is(j, cSym, "low_flow") && m.clauseStart(j) != m.clauseStart(k) {
				continue // "gauge is acting up, she wants a tank put in"
			}
			if (m.is(j, cCond, "failed") || m.is(j, cCond, "suspect")) && !m.adverb(j) && !(m.is(j, cSym, "") && m.waterNear(j)) {
				return true
			}
		}
	}
	return false
}

// ofOtherItem tells whether the clause of the condition at item j names another piece of equipment
// than the tank at item k.
func (m *message) ofOtherItem(j, k int) bool {
	if m.clauseStart(j) == m.clauseStart(k) {
		return false
	}
	other := false
	for i := m.clauseStart(j); i < m.clauseEnd(j); i++ {
		if v, ok := m.val(i, cItem); ok && !m.taken(i) {
			if m.itemCode(i, v) == "expansion_tank" {
				return false
			}
			other = true
		}
	}
	return other
}
