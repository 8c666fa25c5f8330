package intents

// Lists of the lexicon that these rules know.
var (
	listOldBuildings = listOf("old buildings")
	listYearsOf      = listOf("years of")
)

// yearsRole tells an age from a time to come and from a time ago.
func (m *message) yearsRole(i int) (role, string) {
	if m.inList(i+1, listPeople) || m.text(i+1) == "old" && m.inList(i+2, listPeople) {
		return roleIgnored, "years of a person" // "60 yr old lady"
	}
	switch {
	case m.inList(i+1, listOldBuildings):
		return roleIgnored, "years of the house"
	case m.text(i+1) == "on" && m.is(i+2, cDeterminer, "") && m.is(i+3, cItem, ""):
		return roleAge, "years on it" // "12 years on the reg"
	case m.text(i+1) == "on":
		if t := m.text(i + 2); (t == "it" || t == "him" || t == "her" || t == "them") && m.thingIn(m.items[i].sent) {
			return roleAge, "years on it"
		}
		return roleIgnored, "years of something else"
	case m.text(i+1) == "in":
		if m.closes(i+1) && m.thingIn(m.items[i].sent) {
			return roleAge, "years in" // "heat pump, two years in"
		}
		return roleIgnored, "years of something else"
	case m.inList(i+1, listYearsOf):
		if m.text(i+1) != "of" || m.text(i+2) != "age" && m.text(i+2) != "service" {
			return roleIgnored, "years of something else"
		}
	}
	if m.unservedFor(i) {
		return roleAgo, sinceServed
	}
	if m.right(i, 2, false, func(k int) bool { t := m.text(k); return t == "ago" || t == "back" || t == "atras" }) >= 0 {
		return roleAgo, "ago"
	}
	if m.left(i, 2, false, func(k int) bool { return m.text(k) == "hace" }) >= 0 {
		return roleAgo, "hace"
	}
	if (m.is(i-1, cHint, "inuse") || m.beenIn(i)) && m.thingIn(m.items[i].sent) {
		return roleAge, "years in use" // "heater in service 9 years"
	}
	if m.left(i, 2, false, func(k int) bool {
		t := m.text(k)
		return t == "in" || t == "en" || t == "dentro" || t == "every" || t == "cada" || t == "for" || t == "within" || t == "next"
	}) >= 0 {
		if t := m.text(i - 1); t == "every" || t == "cada" || t == "for" && !m.setsDate(i-1) {
			return roleIgnored, t
		}
		return roleDuration, "time to come"
	}
	if m.left(i, 2, false, func(k int) bool { return m.is(k, cDo, "recheck") }) >= 0 && m.text(i+1) != "old" && !m.is(i+1, cItem, "") {
		return roleDuration, "time of a recheck"
	}
	if m.is(i+1, cHint, "followup") || m.is(i+1, cDo, "recheck") {
		return roleDuration, "time of a recheck" // "1 yr recheck"
	}
	someone := func(k int) bool {
		return m.inList(k, listPeople) && (m.items[k].seg == m.items[i].seg || !m.thingIn(m.items[i].sent)) // "never flushed per the owner, 11 yrs old"
	}
	if m.left(i, 4, false, someone) >= 0 && m.left(i, 4, false, func(k int) bool { return m.is(k, cItem, "") }) < 0 {
		return roleIgnored, "a person's age"
	}
	return roleAge, "years"
}

// beenIn tells whether the time at item i is that for which a thing has been in its place: "reg has
// been in there 12 years", "in service for 12 years", "in place about 12 years".
func (m *message) beenIn(i int) bool {
	k := i - 1
	for m.text(k) == "for" || m.is(k, cHint, "hedge") {
		k--
	}
	if m.is(k, cHint, "inuse") || m.text(k) == "place" && m.text(k-1) == "in" {
		return true
	}
	last := k
	for m.says(k, "in", "there", "here", "installed", "in there", "in here", "running") {
		k--
	}
	if k == last || !m.says(k, "been", "has been", "have been", "its been") {
		return false
	}
	for m.says(k, "been", "has been", "has", "have", "been", "s", "have been") {
		k--
	}
	return m.is(k, cItem, "")
}

// thingIn tells whether sentence s speaks of something installed, by its name or as a
// heater by its fuel: "gas-fired forty, nine years on it".
func (m *message) thingIn(s int) bool {
	if m.itemIn(s) != "" {
		return true
	}
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if m.is(k, cFuel, "") {
			return true
		}
	}
	return false
}
