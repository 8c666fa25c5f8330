package intents

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"lazyhand/assess"
)

// amendments finds what of the report the slip puts right.
func (s slip) amendments(told []assess.Statement) []Amendment {
	s.toldWrong(told)
	var right, wrong value
	wrongs := 0
	for _, v := range s.values {
		to := &right
		if v.wrong {
			to = &wrong
			wrongs++
		}
		switch {
		case v.num && to.num || v.point != "" && to.point != "" || v.heater != "" && to.heater != "" && to.heater != v.heater || v.flow != "" && to.flow != "":
			return nil // several of a kind: a report
		case v.num:
			to.num, to.psi, to.bare, to.unit = true, v.psi, v.bare, v.unit
		}
		if v.point != "" {
			to.point = v.point
		}
		if v.heater != "" {
			to.heater = v.heater
		}
		if v.flow != "" {
			to.flow = v.flow
		}
	}
	if len(s.values) == wrongs {
		return nil // what is right is not told
	}
	if a := amendThing(told, right, wrong); a != nil {
		return a
	}
	if right.num && (right.unit != "" && !pressureUnit(right.unit) || right.psi < 5 || right.psi > highestPressure) ||
		wrong.num && wrong.unit != "" && !pressureUnit(wrong.unit) {
		return nil
	}
	if !s.cue && wrongs == 0 && (right.num || !s.was) {
		return completes(told, right)
	}
	return right.instead(told, wrong)
}

// toldWrong takes the first of two pressures for the wrong one where it is what was told:
// "sorry that 138 was 118".
func (s slip) toldWrong(told []assess.Statement) {
	if !s.cue || !s.was || len(s.values) != 2 || !s.values[0].num || !s.values[1].num || s.values[0].wrong || s.values[1].wrong {
		return
	}
	s.values[0].wrong = slices.ContainsFunc(readingsIn(told), func(i int) bool {
		return math.Abs(told[i].(assess.Reading).PSI-s.values[0].psi) < 0.06
	})
}

// readingsIn returns the indices of the readings among a report's statements.
func readingsIn(told []assess.Statement) []int {
	var out []int
	for i, s := range told {
		if _, ok := s.(assess.Reading); ok {
			out = append(out, i)
		}
	}
	return out
}

// instead finds the readings that what is right takes the place of.
func (v value) instead(told []assess.Statement, wrong value) []Amendment {
	fit := readingsIn(told)
	keep := func(test func(assess.Reading) bool) {
		fit = slices.DeleteFunc(slices.Clone(fit), func(i int) bool { return !test(told[i].(assess.Reading)) })
	}
	if wrong.num {
		keep(func(r assess.Reading) bool { return math.Abs(r.PSI-wrong.psi) < 0.06 })
	}
	if wrong.point != "" {
		keep(func(r assess.Reading) bool {
			return r.Point == wrong.point || r.Point == assess.Bibb && strings.HasSuffix(string(wrong.point), "_bibb")
		})
	}
	if wrong.heater != "" {
		keep(func(r assess.Reading) bool { return r.Heater == wrong.heater || r.Heater == "" })
	}
	if wrong.flow != "" {
		keep(func(r assess.Reading) bool { return r.Flow == wrong.flow || r.Flow == "" })
	}
	if len(fit) == 0 {
		return nil
	}
	if len(fit) > 1 && v.point != "" && v.num {
		at := slices.DeleteFunc(slices.Clone(fit), func(i int) bool { return told[i].(assess.Reading).Point != v.point })
		if len(at) == 0 && wrong == (value{}) {
			return nil // a further reading
		}
		if len(at) > 0 {
			fit = at
		}
	}
	if len(fit) > 1 && v.num && !wrong.num {
		if near := slices.DeleteFunc(slices.Clone(fit),
			func(i int) bool { return !oneSlip(told[i].(assess.Reading).PSI, v.psi) }); len(near) == 1 {
			fit = near
		}
	}
	a := Amendment{Of: -1, Point: v.point, Heater: v.heater, Flow: v.flow}
	if v.num {
		a.PSI = &v.psi
	}
	if len(fit) > 1 && (v.num || v.point != "") {
		return []Amendment{a}
	}
	var out []Amendment
	for _, i := range fit { // the heater's state is that of the whole visit
		one := a
		one.Of = i
		if one.Amend(told[i]) != told[i] {
			out = append(out, one)
		}
	}
	return out
}

// completes fills what the only reading of a report left open: "rear" after
// "84, 12 Alder St"; the heater's state that of all of them.
func completes(told []assess.Statement, v value) []Amendment {
	list := readingsIn(told)
	if len(list) > 1 && v == (value{heater: v.heater}) {
		return v.ofAll(told, list)
	}
	if v.num || len(list) != 1 {
		return nil
	}
	r := told[list[0]].(assess.Reading)
	open := v.point == "" || r.Point == "" || r.Point == assess.Bibb && strings.HasSuffix(string(v.point), "_bibb")
	if !open || v.heater != "" && r.Heater != "" || v.flow != "" && r.Flow != "" {
		return nil
	}
	return []Amendment{{Of: list[0], Point: v.point, Heater: v.heater, Flow: v.flow}}
}

// ofAll gives the heater's state to the readings of a report, of which none tells it: it is that of
// the whole visit.
func (v value) ofAll(told []assess.Statement, list []int) (out []Amendment) {
	for _, i := range list {
		if told[i].(assess.Reading).Heater != "" {
			return nil
		}
		out = append(out, Amendment{Of: i, Heater: v.heater})
	}
	return out
}

// amendThing puts the year or the size of a thing right: "2011 not 2012", "40
// gal, not 50".
func amendThing(told []assess.Statement, right, wrong value) []Amendment {
	if !right.num || !wrong.num || right.point != "" || right.heater != "" {
		return nil
	}
	for i, s := range told {
		e, ok := s.(assess.Equipment)
		switch {
		case !ok:
		case e.InstalledYear != nil && float64(*e.InstalledYear) == wrong.bare && year(right.bare):
			y := int(right.bare)
			return []Amendment{{Of: i, Year: &y}}
		case e.SizeGal != nil && *e.SizeGal == wrong.bare && (right.unit == "gal" || wrong.unit == "gal"):
			return []Amendment{{Of: i, Gal: &right.bare}}
		}
	}
	return nil
}

// oneSlip tells whether two pressures are one slip of a finger apart.
func oneSlip(a, b float64) bool {
	return OneSlip(strconv.FormatFloat(a, 'f', -1, 64), strconv.FormatFloat(b, 'f', -1, 64))
}

// OneSlip tells whether two words or numbers are one slip of a finger apart: a
// sign changed, dropped or doubled, or two neighbours swapped.
func OneSlip(x, y string) bool {
	if x == y {
		return false
	}
	if len(x) > len(y) {
		x, y = y, x
	}
	switch len(y) - len(x) {
	case 0:
		var off []int
		for i := range x {
			if x[i] != y[i] {
				off = append(off, i)
			}
		}
		return len(off) == 1 || len(off) == 2 && off[1] == off[0]+1 && x[off[0]] == y[off[1]] && x[off[1]] == y[off[0]]
	case 1:
		for i := range y {
			if y[:i]+y[i+1:] == x {
				return true
			}
		}
	}
	return false
}
