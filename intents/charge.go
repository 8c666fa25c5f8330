package intents

// changedTo reads the charge of a tank where "changed" was written for "charged":
// "swapped ET, chgd 60#".
func (m *message) changedTo(i int) (role, string, bool) {
	if !m.is(i-1, cDid, "replaced") || !pressureUnit(m.items[i].unit) {
		return 0, "", false
	}
	for k := range m.verbs {
		if v := &m.verbs[k]; v.at < i-1 && v.at >= i-8 && v.done && v.object == "expansion_tank" {
			m.items[i].owner = v.at + 1
			return roleTo, "charged to", true
		}
	}
	return roleIgnored, "changed, not measured", true
}

// chargeRole tells whether a number is the air of the expansion tank.
func (m *message) chargeRole(i int) (role, string, bool) {
	it := &m.items[i]
	if v := m.verbLeft(i, 8, "charged"); v != nil && !m.pointBetween(v.at, i) && m.numsBetween(v.at, i) == 0 && m.directly(v.at, i) {
		if v.planned || v.negated {
			return roleIgnored, "planned charge", true
		}
		it.owner = v.at + 1
		return roleTo, "charged to", true
	}
	// "set prv 60 and tank 60"
	if p := m.prevNum(i); p >= 0 && m.items[p].role == roleTo && m.is(i-1, cItem, "") && (m.text(i-2) == "and" || m.text(i-2) == "y" || m.text(i-2) == ",") {
		if c, _ := m.val(i-1, cItem); m.itemCode(i-1, c) == "expansion_tank" {
			m.verbs = append(m.verbs, verb{at: i - 1, what: "charged", done: true, object: "expansion_tank", objAt: i - 1})
			it.owner = i
			return roleTo, "and the tank", true
		}
	}
	if r, why, ok := m.leftWith(i); ok && why == "charged to" {
		return r, why, true
	}
	if m.heldByTank(i) {
		return roleCharge, "in the tank", true
	}
	air := m.left(i, 5, false, func(k int) bool { return m.is(k, cPart, "air") })
	if air < 0 {
		if r := m.right(i, 3, false, func(k int) bool { return m.is(k, cPart, "air") }); r >= 0 && m.items[r].seg == it.seg {
			air = r
		}
	}
	tank, at := m.topicBefore(i)
	if air >= 0 {
		if m.pointBetween(min(air, i), max(air, i)) {
			return 0, "", false
		}
		if m.targeted(i) {
			return roleIgnored, "what the air should be", true
		}
		// "set the air to 60", "air now 60" after pumping
		if v := m.verbLeft(i, 8, "set", "charged"); v != nil && v.done && m.prepBefore(i) {
			it.owner = v.at + 1
			v.what = "charged"
			v.object = "expansion_tank"
			return roleTo, "air set to", true
		}
		return roleCharge, "air", true
	}
	if tank == "expansion_tank" && at >= 0 && !m.points(i) && m.chargedIn(it.sent) && i-at <= 8 && !m.pointBetween(at, i) {
		switch m.text(i - 1) {
		case "en", "at", "was", "had", "tenia", "estaba", "de", "traia", "only", "found", "con":
			return roleCharge, "air found", true
		}
	}
	if tank == "expansion_tank" && at >= 0 && m.items[at].seg == it.seg && i-at <= 4 && !m.pointBetween(at, i) && m.items[i].point == "" && !(i+1 < len(m.items) && m.items[i+1].point != "") {
		if v := m.verbLeft(i, 6, "replaced", "installed", "set"); v != nil && v.at > at-6 {
			if v.what == "set" && v.done && m.prepBefore(i) {
				it.owner = v.at + 1
				v.what, v.object = "charged", "expansion_tank"
				return roleTo, "tank set to", true
			}
			if v.what == "set" && v.state {
				return roleCharge, "tank set at", true
			}
			return 0, "", false
		}
		switch m.text(i - 1) {
		case "at", "is", "was", "was at", "down to", "sitting at", "only at", "has", "reads", "read", "only", "a", "en", "con", "tiene", "trae", "holding", "showing", "had", "shows", "just", "tenia", "traia":
			if !m.targeted(i) {
				return roleCharge, "tank at", true
			}
		}
		if at == i-1 && pressureUnit(it.unit) {
			return roleCharge, "tank", true
		}
	}
	return 0, "", false
}

func (m *message) pointBetween(a, b int) bool {
	for k := a + 1; k < b; k++ {
		if m.items[k].point != "" && !m.items[k].weak {
			return true
		}
	}
	return false
}

func (m *message) numsBetween(a, b int) int {
	n := 0
	for k := a + 1; k < b; k++ {
		if m.items[k].num != nil && m.items[k].role != roleFrom && m.items[k].role != roleTaken && m.items[k].role != roleSize {
			n++
		}
	}
	return n
}

// directly tells whether a number follows a verb without a clause between.
func (m *message) directly(v, i int) bool {
	for k := v + 1; k < i; k++ {
		t := m.text(k)
		if m.items[k].mark && t != ":" && t != "=" && t != "\"" && t != "(" && t != "->" {
			return false
		}
		switch t {
		case "sys", "system", "house", "now", "reads", "reading", "but", "then", "static", "front", "rear", "got", "shows", "showing":
			return false
		}
	}
	return true
}

// prepBefore tells whether "to", "at" or the like leads to the number.
func (m *message) prepBefore(i int) bool {
	for k := i - 1; k >= 0 && k >= i-3; k-- {
		switch m.text(k) {
		case "to", "at", "->", "a", "en", "down to", "up to", "@", ":", "=", "dejando", "hasta", "al", "on", "for", "back to":
			return true
		case "about", "around", "like", "right", "exactly", "it", "roughly", "como", "a nice", "nice", "an", "even", "the", "unos":
			continue
		}
		return false
	}
	return false
}

// chargedIn tells whether air was put into a tank in sentence s.
func (m *message) chargedIn(s int) bool {
	for _, v := range m.verbs {
		if v.what == "charged" && v.done && m.items[v.at].sent == s {
			return true
		}
	}
	return false
}

// heldByTank tells whether a pressure is said to be in the tank: "50 lbs in the
// tank", "a 2 gal tank with 58 in it".
func (m *message) heldByTank(i int) bool {
	if m.text(i+1) == "in it" || m.text(i+1) == "in" && m.text(i+2) == "it" {
		topic, at := m.topicBefore(i)
		return topic == "expansion_tank" && !m.pointBetween(at, i) && i-at <= 8
	}
	if m.text(i+1) != "in" && m.text(i+1) != "en" {
		return false
	}
	for k := i + 2; k < len(m.items) && k <= i+4 && !m.items[k].mark; k++ {
		if v, ok := m.val(k, cItem); ok {
			return m.itemCode(k, v) == "expansion_tank"
		}
		if m.items[k].num != nil || m.items[k].point != "" {
			return false
		}
	}
	return false
}
