package intents

// Lists of the lexicon that these rules know.
var (
	listGoesToSetting  = listOf("goes to a setting")
	listLeavesSetting  = listOf("leaves a setting")
	listHasIt          = listOf("has it")
	listBeforeSetting  = listOf("before a setting")
	listSettingOnPart  = listOf("setting on the part")
	listSettingNotPast = listOf("setting not past")
)

// The regulator named behind what it was set to: "only went to 50 on the prv", "left it at 60 on
// the regulator".

// onPart reads the number at i, or the number that a change goes on to, as a setting of the regulator
// that is named behind it.
func (m *message) onPart(i int) (role, string, bool) {
	if m.shut(regulatorGate) || !m.settingLike(i) || m.pointInClause(i) {
		return 0, "", false // "front bib went to 72 on the new prv"
	}
	if j := i + 2; m.says(i-1, "from", "de") && m.isNum(j) && m.towards(i+1) && m.settingLike(j) {
		if part := m.partBehind(j); part >= 0 && m.putWord(i-1) == wentToSetting && !m.openDenied(m.items[i].sent, j) {
			return m.settledAt(part, i, roleFrom, foundAt)
		}
	}
	part := m.partBehind(i)
	if part < 0 {
		return 0, "", false
	}
	if k := i - 2; m.towards(i-1) && m.numIs(k, roleFrom) && m.items[k].owner == part+1 {
		return m.settledAt(part, i, roleTo, "from … to, on the part")
	}
	put := m.putWord(i)
	switch denied := m.openDenied(m.items[i].sent, i) && !(m.inList(i-2, listSettingNotPast) && m.text(i-3) == "no"); {
	case put != noSettingWord && denied:
		return roleIgnored, "planned or wanted", true
	case put == wentToSetting:
		return m.settledAt(part, i, roleTo, "put to, on the part")
	case put == leftAtSetting:
		if v := m.deedBefore(i, "prv"); v != nil && !m.ownsNumberAs(v.at, roleTo) {
			return m.ofDeed(v, i, roleTo, "left at, on the part")
		}
		return roleSetting, "left at, on the part", true
	case m.closes(part) && !denied && m.clauseStart(i) == i:
		m.askPlace(i)
		return roleIgnored, regulatorsOwn, true
	}
	return 0, "", false
}

// partBehind returns the regulator that the number at i is told of right behind it: "50 on the prv";
// -1 for none.
func (m *message) partBehind(i int) int {
	k := i + 1
	if m.is(k, cUnit, "") {
		k++
	}
	if !m.inList(k, listSettingOnPart) {
		return -1
	}
	for k++; m.is(k, cDeterminer, "") || m.is(k, cHint, "possessive") || m.is(k, cPart, "new"); k++ {
	}
	if !m.is(k, cItem, "prv") || m.is(k+1, cItem, "gauge") || m.pointAt(k+1) || m.items[k].sent != m.items[i].sent {
		return -1
	}
	return k
}

// settingVerb is what the word that leads to a number says of a setting.
type settingVerb uint8

const (
	noSettingWord settingVerb = iota
	wentToSetting
	leftAtSetting
)

// putWord tells whether what leads to the number at i says that a setting was moved there, or left
// there.
func (m *message) putWord(i int) settingVerb {
	k := i - 1
	for k >= 0 && m.items[k].seg == m.items[i].seg && (m.towards(k) || m.inList(k, listBeforeSetting) || m.is(k, cHint, "particle") || m.is(k, cHint, "hedge")) {
		k--
	}
	if m.inList(k, listSettingNotPast) {
		k--
	}
	for m.inList(k+1, listSettingNotPast) && m.says(k, "no", "any") {
		k-- // "went no higher than 55"
	}
	switch {
	case k < 0 || m.items[k].seg != m.items[i].seg:
	case m.inList(k, listLeavesSetting), m.inList(k, listHasIt) && m.says(k+1, "it", "her"):
		return leftAtSetting
	case m.inList(k, listGoesToSetting), k < i-1 && m.is(k, cMove, ""):
		return wentToSetting
	}
	return noSettingWord
}
