package intents

// A change told in lines of its own, under a line that names what was set: "PRV adj",
// "from 95", "to 58".

// joinRows makes such lines one with their head, so that they are read as what a person
// would say in one breath.
func (m *message) joinRows() {
	if !m.kinds.has(cItem) && !m.kinds.has(cPart) || !m.kinds.has(cHint) {
		return
	}
	line, joined := 0, false // where the line begins, and whether it is a head with rows
	for n := 0; n < len(m.items); n++ {
		if !m.items[n].mark || m.text(n) != "\n" {
			continue
		}
		if row := m.settingRow(n + 1); row > 0 && (joined || m.settingHead(line, n)) {
			joined = true
			m.call(n, ",")
			if m.isMark(n-1, ":") {
				m.call(n-1, ",")
			}
			continue
		}
		line, joined = n+1, false
	}
}

// settingRow tells how long a line at item i is that only says what something was set or
// found at: "from 50", "as left: 62"; 0 if it is none.
func (m *message) settingRow(i int) int {
	k := i
	for m.isMark(k, "-", "•", "*") {
		k++
	}
	if t := m.text(k); !m.is(k, cHint, "settingrow") && t != "de" && t != "a" && t != "en" {
		return 0
	}
	k++
	for m.isMark(k, ":", "=", "-") || m.text(k) == "at" || m.text(k) == "to" {
		k++
	}
	if !m.isNum(k) || m.items[k].unit != "" && !pressureUnit(m.items[k].unit) {
		return 0
	}
	if k++; m.isMark(k, ".", ",") {
		k++
	}
	if k < len(m.items) && !m.isMark(k, "\n") {
		return 0
	}
	return k - i
}

// settingHead tells whether the items from to to name a regulator, a tank or its air and
// neither a number nor a test point.
func (m *message) settingHead(from, to int) bool {
	part := false
	for k := from; k < to; k++ {
		it := &m.items[k]
		if v, ok := m.val(k, cItem); ok {
			if v != "prv" && v != "expansion_tank" && v != "tank" || part && m.isMark(k-1, ",", "/") {
				return false
			}
			part = true
		}
		part = part || m.is(k, cPart, "air")
		if it.num != nil || m.is(k, cPoint, "") || m.is(k, cBibb, "") || m.is(k, cNeg, "") {
			return false
		}
	}
	return part && to-from <= 10
}
