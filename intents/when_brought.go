package intents

import "lazyhand/assess"

// Lists of the lexicon that these rules know.
var (
	listBringsTap = listOf("brings a tap")
	listTapSoFar  = listOf("the tap so far")
	listArrives   = listOf("arrives")
	listDeparts   = listOf("departs")
	listLeavesAt  = listOf("leaves a tap at")
)

var bringsOpener = opener{lists: []list{listBringsTap}}

// tapWentTo returns the pressure of a tap that the deed told behind it is said to have brought to the
// number at i: "tub showed 102 so I rebuilt the prv and that brought it to 63"; -1 for none.
func (m *message) tapWentTo(i int) int {
	if !m.says(i-1, "to", "down to", "up to") {
		return -1
	}
	k := i - 2
	for m.inList(k, listTapSoFar) {
		k--
	}
	if !m.inList(k, listBringsTap) || !m.says(k-1, "that", "which", "it") {
		return -1
	}
	p := m.left(k, 24, true, func(j int) bool { return m.numIs(j, roleReading) })
	if p < 0 || !m.pointNear(p) {
		return -1
	}
	for j := range m.verbs {
		if v := &m.verbs[j]; v.done && v.at > p && v.at < k {
			return p
		}
	}
	return -1
}

// wentByDeed places the pressure that a deed brought a tap to after the work, and what the tap had before
// it, and gives both one point.
func (m *message) wentByDeed() {
	if !m.holdsKey(keyBrings) {
		return
	}
	for k := 1; k < len(m.readings); k++ {
		a, b := &m.readings[k-1], &m.readings[k]
		if m.tapWentTo(b.at) != a.at {
			continue
		}
		if b.When = assess.After; len(b.points) == 0 {
			b.points, b.inherit = a.points, true
		}
		if a.When == "" {
			a.When = assess.Before
		}
	}
}

// toldTap tells whether a pressure, or a test point with its pressure, stands right behind item i.
func (m *message) toldTap(i int) bool {
	k := i + 1
	for m.is(k, cDeterminer, "") {
		k++
	}
	if k < len(m.items) && m.items[k].point != "" {
		k++
		for k < len(m.items) && (m.items[k].role == roleTaken || m.inList(k, listTimeApplies)) {
			k++
		}
	}
	return m.numIs(k, roleReading)
}

// visitEnds reads the words of coming and going as times before a pressure: "arrived kitchen 95,
// departed kitchen 60", "which leaves the kitchen at 60".
func (m *message) visitEnds(i int) assess.When {
	switch {
	case m.inList(i, listArrives) && m.toldTap(i):
		return assess.Before
	case m.inList(i, listDeparts) && m.toldTap(i), m.inList(i, listLeavesAt) && !m.isNum(i+1) && m.toldTap(i):
		return assess.After
	}
	return ""
}

// cameIn tells whether "coming in" behind the pressure of a tap tells when it was read, not where: "kitchen
// 118 coming in, kitchen 62 going out".
func (m *message) cameIn(i int) bool {
	return m.is(i, cBefore, "") && m.isNum(i-1) && m.tapOfNumber(i-1)
}

// tapOfNumber tells whether a tap of the house stands right before the number at i.
func (m *message) tapOfNumber(i int) bool {
	k := i - 1
	for k > 0 && m.items[k].role == roleTaken {
		k--
	}
	return k >= 0 && m.items[k].point != "" && m.items[k].point != string(assess.Street)
}
