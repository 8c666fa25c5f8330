package intents

import "lazyhand/assess"

// The second part that one deed was done to.

// secondObject reads "replaced the prv and the tank": one word, two deeds.
func (m *message) secondObject(v *verb) {
	if v.objAt < v.at {
		m.bothBefore(v)
		return
	}
	joined, listed := false, false
	for k := v.objAt + 1; k < m.sents[m.items[v.at].sent].to && k <= v.objAt+10; k++ {
		switch m.text(k) {
		case "and", "y", "plus", "+", "&":
			joined, listed = true, false
			continue
		}
		if m.text(k) == "," && (m.text(k+1) == "and" || m.text(k+1) == "plus" || m.isNum(k+1) && m.items[k+1].unit == "gal" ||
			m.text(k+1) == "a" || m.text(k+1) == "new") {
			joined, listed = true, m.text(k+1) != "and" && m.text(k+1) != "plus" // "a 50 gal gas heater, 2 gal exp tank, charged to 60"
			continue
		}
		if m.items[k].num != nil && m.items[k].unit == "gal" || m.is(k, cFuel, "") {
			continue
		}
		if m.items[k].mark || m.is(k, cDid, "") || m.is(k, cNeg, "") || m.items[k].point != "" && !m.is(k, cItem, "") {
			return
		}
		if c, ok := m.val(k, cItem); ok && joined {
			w := *v
			w.object, w.objAt = m.itemCode(k, c), k
			// a fact after it is no deed: "and the heater is fine"
			if listed && !m.closes(k) && !m.says(k+1, "and", "with") && !m.is(k+1, cDid, "") {
				return
			}
			if m.is(k+1, cCond, "") || m.items[min(k+1, len(m.items)-1)].mark && m.is(k+2, cCond, "") {
				return
			}
			if m.inList(k+1, listLinks) || m.numIs(k+1, roleYear) {
				return
			}
			if a, obj, ok := m.workOf(&w); ok && w.object != v.object {
				if a == assess.ReplacedTank && m.right(k, 5, true, func(j int) bool { return m.is(j, cAbsent, "") }) >= 0 {
					a = assess.InstalledTank // "and a tank where there never was one"
				}
				m.addWork(workDone{at: k, object: obj, Work: assess.Work{Action: a}})
			}
			joined = false // "prv + tank + drain valve"
			continue
		}
	}
}

// bothBefore reads the first of two parts that stand before the deed done on both: "prv
// and exp tank both changed".
func (m *message) bothBefore(v *verb) {
	k := v.objAt - 1
	if m.is(k, cDeterminer, "") {
		k--
	}
	if t := m.text(k); t != "and" && t != "&" && t != "y" && t != "+" || !m.is(k-1, cItem, "") || m.is(k-1, cItem, "gauge") {
		return
	}
	if m.left(k-1, 8, true, func(j int) bool { return m.is(j, cDid, "") || m.is(j, cBase, "") || m.is(j, cNeg, "") }) >= 0 {
		return // "flushed the heater and prv replaced"
	}
	w := *v
	c, _ := m.val(k-1, cItem)
	w.object, w.objAt = m.itemCode(k-1, c), k-1
	if a, obj, ok := m.workOf(&w); ok && w.object != v.object {
		m.addWork(workDone{at: k - 1, object: obj, Work: assess.Work{Action: a}})
	}
}
