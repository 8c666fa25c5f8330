package intents

// bothAt is why a number is what both parts of two deeds were set to.
const bothAt = "both set to"

// bothDeeds returns the deed whose two parts the number at i is told for: "installed
// PRV and exp tank, both at 60".
func (m *message) bothDeeds(i int) *verb {
	k := i - 1
	if m.prepBefore(i) {
		k--
	}
	for m.is(k, cDid, "set") || m.is(k, cDid, "charged") {
		k--
	}
	if !m.is(k, cHint, "both") || !m.isMark(k-1, ",", "(", "-", ".", "\n") && m.text(k-1) != "and" {
		return nil
	}
	v := m.verbLeft(i, 14, "installed", "replaced")
	if v == nil || !v.done || v.object != "prv" && v.object != "expansion_tank" || m.numsBetween(v.at, i) > 0 || m.pointBetween(v.at, i) {
		return nil
	}
	return v
}

// bothSetTo tells whether the number at i is what the two parts of a deed were set to:
// "changed out the prv and hung their first exp tank today, both at 60".
func (m *message) bothSetTo(i int) bool {
	k := i - 1
	for m.text(k) == "at" || m.text(k) == "to" || m.text(k) == "set" || m.text(k) == "set at" || m.text(k) == "@" {
		k--
	}
	if m.text(k) != "both" || k == i-1 || m.points(i) {
		return false
	}
	v := m.verbLeft(k, 16, "installed", "replaced")
	return v != nil && v.done && (v.object == "prv" || v.object == "expansion_tank") && m.namesItem("prv") && m.namesItem("expansion_tank")
}

// deedBefore finds the last deed done on a part in the sentences before item i.
func (m *message) deedBefore(i int, object string) *verb {
	for k := len(m.verbs) - 1; k >= 0; k-- {
		if v := &m.verbs[k]; v.at < i && v.done && v.object == object {
			return v
		}
	}
	return nil
}

// onlyFound tells whether the one number between a deed and item i is the air that
// was found: "le eché aire al tanque, traía 25 y quedó en 58".
func (m *message) onlyFound(at, i int) bool {
	p := m.prevNum(i)
	return p > at && m.items[p].role == roleCharge && m.numsBetween(at, i) == 1
}

// setLast tells whether the number at i, a clause of its own, is what the part of
// the deed v was set to: "le puse la reguladora nueva a la señora, a 58 libras",
// "installed an exp tank, 2 gal, at 60 psi".
func (m *message) setLast(v *verb, i int) bool {
	if t := m.text(i - 1); t != "a" && t != "at" && t != "en" && t != "to" || !m.isMark(i-2, ",") || v.object != "prv" && v.object != "expansion_tank" {
		return false
	}
	end := i
	if m.is(i+1, cUnit, "") {
		end++
	}
	return m.closes(end) && m.numsBetween(v.at, i) == 0 && !m.pointBetween(v.at, i)
}

// fromBefore reads the setting that a regulator had before it was changed: "la
// reguladora estaba en 95, la bajé a 60", "prv was at 95, lowered it to 60".
func (m *message) fromBefore() {
	for i := 0; i < len(m.items) && m.gave(roleTo); i++ {
		if m.items[i].num == nil || m.items[i].role != roleTo || m.items[i].owner == 0 {
			continue
		}
		at := m.items[i].owner - 1
		p := m.prevNum(at)
		if p < 0 || m.items[p].role != roleReading && m.items[p].role != roleSetting || m.points(p) || m.pointInClause(p) ||
			m.items[p].value == m.items[i].value {
			continue
		}
		if m.text(p-1) == "de" && p+1 == at {
			m.setRole(p, roleFrom, "the setting before") // "de 90 bajé la reguladora a 60"
			m.items[p].owner = at + 1
			continue
		}
		if topic, k := m.topicBefore(p); topic != "prv" || p-k > 5 || m.items[k].seg != m.items[p].seg {
			continue
		}
		set := false
		for _, v := range m.verbs {
			set = set || v.at == at && v.what == "set" && v.done
		}
		if !set {
			continue
		}
		k := p - 1
		for m.text(k) == "en" || m.text(k) == "at" || m.text(k) == "set" || m.text(k) == "a" || m.text(k) == "como" {
			k--
		}
		if m.inList(k, listWasSet) {
			m.setRole(p, roleFrom, "the setting before")
			m.items[p].owner = at + 1
		}
	}
}
