package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listAtTap      = listOf("at tap")
	listPlaceWords = listOf("place words")
	listSameAt     = listOf("same at")
	listMakeThat   = listOf("make that")
	listApiece     = listOf("apiece")
)

// Rows of points and rows of numbers: "front/rear/kitchen 84/66/65", "front, rear:
// 84, 66", and a number that is only called the same.

// inRows pairs a row of points with a row of as many numbers, one by one, when
// nothing but separators stands within the rows.
func (m *message) inRows(evs []event) []event {
	for a := 0; a < len(evs) && len(evs) > 2; { // a point and its number are no row
		b := m.rowEnd(evs, a)
		if b == len(evs) {
			break
		}
		c := m.rowEnd(evs, b)
		names, values := evs[a:b], evs[b:c]
		if evs[a].num {
			names, values = values, names
		}
		points, nums := rowOf(names, values)
		if len(nums) == 1 && !evs[a].num && b-a > 1 && (m.left(nums[0], 4, false, func(k int) bool { return m.is(k, cHint, "all") }) >= 0 || m.inList(nums[0]+1, listApiece) && m.closes(nums[0]+1)) {
			// "front, back and side bibs all 71"
			evs[a].points, evs[a].end = points, evs[b-1].end
			evs = append(evs[:a+1], evs[b:]...)
			a += 2
			continue
		}
		listed := c == len(evs) && len(points) > 1 && evs[a].num && b < c && m.prepared(nums[0]) && m.joins(evs[b].at, evs[c-1].end) &&
			!m.saidToBe(evs[c-1].at)
		if len(nums) == 1 && evs[a].num && c-b > 1 &&
			(listed || m.right(nums[0], 9, false, func(k int) bool { return m.is(k, cHint, "all") }) >= 0) {
			// "70 across the board: tub, kitchen, laundry", "75 at kitchen, tub and laundry"
			evs[b].points, evs[b].end = points, evs[c-1].end
			evs = append(evs[:b+1], evs[c:]...)
			a += 2
			continue
		}
		if len(points) < len(nums) {
			points = m.eachNamed(names, points, len(nums))
		}
		alone := c == len(evs) || evs[c].num == evs[b].num || m.separators(evs[c-1].end, evs[c].at) > 0
		if len(points) < 2 || len(points) != len(nums) || len(values) < 2 || !alone || a > 0 && m.separators(evs[a-1].end, evs[a].at) == 0 {
			a = b
			continue
		}
		row := []event{
			{at: names[0].at, end: names[len(names)-1].end, points: points, pair: -1},
			{at: values[0].at, end: values[len(values)-1].end, num: true, nums: nums, pair: -1},
		}
		if evs[a].num {
			row[0], row[1] = row[1], row[0]
		}
		evs = append(evs[:a], append(row, evs[c:]...)...)
		a += 2
	}
	return evs
}

// eachNamed gives a row of names the point of each, though two stand for one point, when there
// are as many names as numbers: "kitchen/lav/tub 62, 63, 62".
func (m *message) eachNamed(names []event, points []string, n int) []string {
	var each []string
	for k := names[0].at; k <= names[len(names)-1].end; k++ {
		if p := m.items[k].point; p != "" && m.items[k].role != roleTaken {
			each = append(each, p)
		}
	}
	if len(each) != n {
		return points
	}
	return each
}

// prepared tells whether a word of place leads from the number at i to its points.
func (m *message) prepared(i int) bool {
	return m.inList(i+1, listAtTap)
}

// joins tells whether "and" stands between two items, and no pause but commas.
func (m *message) joins(a, b int) bool {
	found := false
	for k := a; k <= b; k++ {
		if t := m.text(k); t == "and" || t == "&" || t == "y" {
			found = true
		} else if m.items[k].mark && t != "," {
			return false
		}
	}
	return found
}

// rowEnd returns where the row of events of one kind that begins at a ends.
func (m *message) rowEnd(evs []event, a int) int {
	b := a + 1
	for b < len(evs) && evs[b].num == evs[a].num && m.onlyMarks(evs[b-1].end, evs[b].at) {
		b++
	}
	return b
}

// onlyMarks tells whether nothing but separators and "and" lies between two items.
func (m *message) onlyMarks(a, b int) bool {
	for k := a + 1; k < b; k++ {
		switch {
		case m.says(k, ",", "/", "-", "&", "and", "y", "|", "n", "then", "luego"):
		case m.inList(k, listPlaceWords):
			if m.items[b].num != nil {
				return false
			}
		default:
			if m.items[k].role != roleTaken {
				return false
			}
		}
	}
	return true
}

// rowOf returns the points of one row and the numbers of another.
func rowOf(names, values []event) (points []string, nums []int) {
	if len(names) == 1 && len(values) == 1 {
		return names[0].points, values[0].nums
	}
	for _, e := range names {
		points = append(points, e.points...)
	}
	for _, e := range values {
		nums = append(nums, e.nums...)
	}
	return points, nums
}

// same gives "same" beside a test point the number told before: "front 84, rear
// same", "84 at the front and the same at the rear".
func (m *message) same(i int) {
	it := &m.items[i]
	if it.num != nil || !m.is(i, cSame, "") {
		return
	}
	point := false
	switch {
	case m.inList(i+1, listSameAt):
		for k := i + 2; k <= i+4 && k < len(m.items) && !m.items[k].mark && m.items[k].num == nil; k++ {
			point = point || m.items[k].point != ""
			ownTap := m.inList(k+3, listAtTap) || k+3 < len(m.items) && m.items[k+3].point != ""
			if point && (m.isNum(k+1) || m.isMark(k+1, ",", ":") && m.isNum(k+2) && !ownTap) {
				return // "low in the shower, 52; same at lav, 50"
			}
		}
	default:
		if t := m.text(i + 1); (strings.HasPrefix(t, "at ") || strings.HasPrefix(t, "on ") || strings.HasPrefix(t, "out ")) &&
			m.is(i+1, cPlace, "") {
			point = true // "same at the back"
			break
		}
		if it.text == "ditto" && i+1 < len(m.items) && m.items[i+1].point != "" {
			point = true // "kitchen 71, ditto laundry"
			break
		}
		if i+1 < len(m.items) && !m.items[i+1].mark && m.text(i+1) != "and" && m.text(i+1) != "y" {
			return
		}
		for k := i - 1; k >= 0 && k >= i-3 && !m.items[k].mark && m.items[k].num == nil; k-- {
			point = point || m.items[k].point != ""
		}
	}
	if !point || m.toldBefore(i) || m.is(i, cHint, "too") && m.sentenceMeets(it.sent, setOf(cSym, cCond)) {
		return
	}
	for k := i - 1; k >= 0 && m.items[k].sent >= it.sent-1; k-- {
		if from := &m.items[k]; from.num != nil && from.role == roleReading {
			if m.ownPlace(k, i) {
				return // "90 en la lavadora también"
			}
			it.num, it.value, it.unit = from.num, from.value, from.unit
			m.setRole(i, roleReading, "the same")
			return
		}
	}
}

// ownPlace tells whether the place between the number at k and "too" at i is the number's own.
func (m *message) ownPlace(k, i int) bool {
	points := 0
	for j := k + 1; j < i; j++ {
		if m.items[j].mark || m.says(j, "and", "y") {
			return false
		}
		if m.items[j].point != "" {
			points++
		}
	}
	led := k > 0 && m.items[k-1].point != "" || k > 1 && !m.items[k-1].mark && m.items[k-2].point != ""
	return points == 1 && !led
}

// toldBefore tells whether the test point right before "same" at i had its number in
// an earlier line: "medidor 133 … cocina ahora 60, medidor igual" says that it did
// not change.
func (m *message) toldBefore(i int) bool {
	p := m.items[max(i-1, 0)].point
	if p == "" {
		return false
	}
	for k := 0; k < len(m.items) && m.items[k].sent < m.items[i].sent; k++ {
		if m.items[k].point == p && m.numNear(k) {
			return true
		}
	}
	return false
}

// pointSlips puts right a test point that is taken back: "82 at the front. er no
// that was the back one".
func (m *message) pointSlips() {
	for i := 1; i < len(m.items) && m.kinds.has(cNeg); i++ {
		// "side bib not front, 72"
		if m.text(i) != "not" {
			continue
		}
		k, p := i+1, i-1
		if m.is(k, cDeterminer, "") {
			k++
		}
		for p > 0 && (m.items[p].role == roleTaken || m.isMark(p, ",")) {
			p--
		}
		if k < len(m.items) && m.items[k].point != "" && m.items[p].point != "" && !m.isNum(k+1) && m.right(i, 8, false, m.isNum) > 0 {
			m.items[k].point = ""
		}
	}
	if !m.kinds.has(cRetract) && m.shut(placeSlipGate) {
		return
	}
	for i := range m.items {
		if !m.is(i, cRetract, "") && !m.putsPlaceRight(i) {
			continue
		}
		p := -1
		for k := i + 1; k < len(m.items) && k <= i+7 && m.items[k].num == nil; k++ {
			if m.items[k].point != "" {
				p = k
				break
			}
		}
		if p < 0 || m.isNum(p+1) {
			continue
		}
		end := p + 1
		if m.text(end) == "one" {
			end++ // "the rear one"
		}
		later := m.isNum(end+1) && m.items[end].role != roleTaken
		for end < len(m.items) && m.items[end].role == roleTaken {
			end++
		}
		later = later || m.numberStays(end)
		q, num := -1, false
		for k := i - 1; k >= 0 && k >= i-8; k-- {
			if m.items[k].point != "" && q < 0 {
				q = k
			}
			num = num || m.items[k].num != nil && m.items[k].role == roleReading
		}
		if q >= 0 && num && !later || q >= 0 && !num && later && m.isMark(end, ".", ",", "\n", ":", "-") { // "I said rear, I meant side. 74"
			m.items[q].point, m.items[q].weak = m.items[p].point, false
			m.items[p].point = ""
			m.note(q, "point", "put right after "+m.text(i))
		}
	}
}

// numberStays tells whether behind a place that was put right, which the mark at item i ends, only the
// number is said to be right as it was: "it was the side bib. Number stays, 77".
func (m *message) numberStays(i int) bool {
	return i < len(m.items) && m.items[i].mark && m.is(i+1, cAsk, "correct") && m.isMark(i+2, ",", ":", "-") && m.isNum(i+3)
}

var placeSlipGate = gateOf(opener{hints: []string{"reported", "slip"}, lists: []list{listMakeThat}})

// putsPlaceRight tells whether item i leads to the right place after one that was reported: "wrote
// side bib, it's really the rear one", "71 on the side bib, make that the front".
func (m *message) putsPlaceRight(i int) bool {
	if m.inList(i, listMakeThat) {
		return i > 0
	}
	if !m.is(i, cHint, "rightly") && !m.is(i, cHint, "shouldbe") {
		return false
	}
	for k := i - 1; k >= 0 && k >= i-6 && m.items[k].num == nil; k-- {
		if m.is(k, cHint, "reported") || m.is(k, cHint, "slip") {
			return true
		}
	}
	return false
}

// sidesLast drops a hose bibb that is named before its pressure where the side of the house that it is on is
// told behind: "garden tap 102 back of house", "hose bib 88 front 92 rear".
func (m *message) sidesLast(evs []event) []event {
	for k := range evs {
		if evs[k].num || len(evs[k].points) != 1 || evs[k].points[0] != string(assess.Bibb) {
			continue
		}
		next := k + 1
		for next+1 < len(evs) && m.sideBehind(&evs[next], &evs[next+1]) {
			next += 2
		}
		if next > k+1 && (next == len(evs) || !evs[next].num) && m.closes(evs[next-1].end) {
			return slices.Delete(evs, k, k+1)
		}
	}
	return evs
}

// sideBehind tells whether one number is followed by a side of the house, with no more than small words or a
// mark between.
func (m *message) sideBehind(num, side *event) bool {
	if !num.num || len(num.nums) != 1 || side.num || len(side.points) != 1 || !sided(side.points[0]) {
		return false
	}
	for k := num.end + 1; k < side.at; k++ {
		if !m.isMark(k, ",", "(") && !m.is(k, cDeterminer, "") && !m.is(k, cUnit, "") && !m.says(k, "at", "in", "on", "out", "around", "over", "en", "de") {
			return false
		}
	}
	return true
}
