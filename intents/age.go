package intents

import (
	"strings"
)

// Lists of the lexicon that these rules know.
var (
	listThisSeason = listOf("this season")
	listGoesOn     = listOf("goes on")
	listTurnsYears = listOf("turns years")
)

// calledAge tells whether the word age leads to a bare number: "heater age 14", "PRV age:
// 9". The number may be any part's, of the house's, never a person's.
func (m *message) calledAge(i int) bool {
	if n := m.items[i].num; m.shut(ageGate) || !n.integer || n.words || m.items[i].value >= 60 {
		return false
	}
	k := i - 1
	for k > 0 && k > i-3 && (m.isMark(k, ":", "=", "-") || m.says(k, "is", "about", "aprox", "approx")) {
		k--
	}
	if m.is(k, cItem, "") && m.says(k-1, "age", "edad", "age of") {
		k-- // "Age PRV: 6"
	}
	return m.says(k, "age", "edad", "age of") && m.itemIn(m.items[i].sent) != "" &&
		m.left(k, 3, false, func(j int) bool { return m.inList(j, listPeople) || m.is(j, cWhose, "person") }) < 0
}

// onlyAge tells whether the number at i is the age of a thing named before it, told beside the age of
// another: "heater's 14 years old and scaled up, softener is only 2".
func (m *message) onlyAge(i int) bool {
	it := &m.items[i]
	if it.unit != "" || !it.num.integer || it.value < 1 || it.value > 35 || !m.says(i-1, "only", "just") || !m.closes(i) {
		return false
	}
	k := i - 2
	for m.inList(k, listLinks) {
		k--
	}
	return m.is(k, cItem, "") && m.left(k, longestSentence, true, func(j int) bool { return m.items[j].role == roleAge }) >= 0
}

// bareAge tells whether a bare number is the years of a thing: "prv is 14 and
// sticking", "heater's 11".
func (m *message) bareAge(i int) bool {
	it := &m.items[i]
	if m.onlyAge(i) {
		return true
	}
	if !it.num.integer || it.num.decimals > 0 || it.value < 3 || it.value > 35 || it.unit != "" {
		return false
	}
	if m.text(i-1) == "age" && m.is(i-2, cItem, "") {
		return true // "heater age 15"
	}
	last := i - 1
	if t := m.text(last); t == "only" || t == "about" || t == "just" || t == "maybe" || t == "around" {
		last-- // "heater's only 3"
	}
	glued := last >= 0 && m.is(last, cItem, "") && strings.Contains(m.toks[m.items[last].tok+m.items[last].n-1].raw, "'") // "heater's 11"
	if t := m.text(i - 1); !glued && t != "is" && t != "s" && t != "about" && t != "only" && t != "maybe" && t != "already" && t != "like" && t != "around" {
		return false
	}
	k := i - 1
	for k > 0 && !m.is(k, cItem, "") {
		if m.items[k].mark || m.items[k].num != nil || i-k > 3 {
			return false
		}
		k--
	}
	glued = glued || m.is(k, cItem, "") && strings.HasSuffix(m.toks[m.items[k].tok+m.items[k].n-1].raw, "'s") // "heater's only 3"
	if !glued && m.text(k+1) != "is" && m.text(k+1) != "s" {
		return false
	}
	switch v, _ := m.val(k, cItem); v {
	case "prv", "softener", "recirc", "check_valve":
	case "heater":
		if it.value >= 20 {
			return false // gallons
		}
	default:
		return false
	}
	switch n := m.text(i + 1); {
	case m.inList(i+1, listGoesOn):
		return true
	default:
		return m.closes(i) && n != "-" && n != "/" || m.is(i+1, cCond, "")
	}
}

// turnsAge tells whether a bare number is the years that a thing turns: "reg turns 15
// this year", "heater's going on 20".
func (m *message) turnsAge(i int) bool {
	it := &m.items[i]
	if it.value < 3 || it.value > 50 || !it.num.integer || it.point != "" {
		return false
	}
	if t := m.text(i - 1); t != "turns" && t != "turned" && t != "turning" && t != "pushing" && !strings.HasSuffix(t, "going on") &&
		!(t == "is" && m.inList(i+1, listThisSeason)) {
		return false
	}
	k := m.left(i, 4, false, func(k int) bool { return m.is(k, cItem, "") })
	return k >= 0 && m.items[k].point == "" &&
		(m.closes(i) || m.inList(i+1, listTurnsYears) || m.text(i+1) == "in" && !m.isNum(i+2))
}
