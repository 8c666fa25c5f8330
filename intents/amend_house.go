package intents

import (
	"slices"
	"strconv"
	"strings"

	"lazyhand/assess"
)

// houseSlip tells whether what a slip takes back is, or may be, the number of the house that was
// reported on: "sorry 18 was 16" behind "18 Kent: 64 laundry". Which of the two it is of only its
// writer knows.
func (m *message) houseSlip(s slip) bool {
	number, _, _ := strings.Cut(houseTold(m.ctx), " ")
	if number == "" || !s.cue {
		return false
	}
	var numbers []value
	for _, v := range s.values {
		if v.point != "" || v.unit != "" {
			return false // it says of what it is
		}
		if v.num {
			numbers = append(numbers, v)
		}
	}
	switch text := func(v value) string { return strconv.FormatFloat(v.bare, 'f', -1, 64) }; len(numbers) {
	case 1:
		near := func(i int) bool { return oneSlip(m.ctx.Told.Statements[i].(assess.Reading).PSI, numbers[0].bare) }
		return !numbers[0].wrong && OneSlip(text(numbers[0]), number) && !slices.ContainsFunc(readingsIn(m.ctx.Told.Statements), near)
	case 2:
		was := slices.IndexFunc(numbers, func(v value) bool { return v.wrong })
		return text(numbers[max(was, 0)]) == number && text(numbers[1-max(was, 0)]) != number
	}
	return false
}

// houseTold is the street line of the house that the writer's last report is about.
func houseTold(c Context) string {
	if c.Told != nil && c.Told.Site != "" {
		return c.Told.Site
	}
	return c.Site
}

// HousePutRight is the street line that a text puts in the place of line, of the same street, where
// it does nothing else: "sorry, 16 Kent" or "house number is 16" behind "18 Kent St". What the text
// names itself is named; the line is empty for none.
func HousePutRight(text, named, line string) string {
	number, street, _ := strings.Cut(named, " ")
	old, full, _ := strings.Cut(line, " ")
	if full == "" || named != "" && full != street && !strings.HasPrefix(full, street+" ") && !strings.HasPrefix(street, full+" ") {
		return ""
	}
	if len(full) > len(street) {
		street = full
	}
	ours, cue := strings.Fields(fold(named+" "+line)), false
	for _, w := range plainWords(text) {
		switch {
		case slices.Contains(ours, w):
		case named == "" && numbersHouse(w) && number == "":
			number = w
		case named == "" && oneOf(w, "house", "address", "casa", "direccion"), named != "" && houseSlipCues[w]:
			cue = true
		case !houseSlipFiller[w] && !houseSlipCues[w]:
			return ""
		}
	}
	if !cue || number == "" || number == old {
		return ""
	}
	return number + " " + street
}

// numbersHouse tells whether a word can be the number of a house.
func numbersHouse(w string) bool {
	return w != "" && len(w) < 6 && strings.Trim(w, "0123456789") == "" && w[0] != '0'
}

// houseSlipCues are words that say that a house was the wrong one, houseSlipFiller those that may
// stand beside them.
var (
	houseSlipCues   = set(strings.Fields("sorry sry oops whoops no nope nah not typo meant mean should wrong perdon disculpa perdona digo quise equivoque")...)
	houseSlipFiller = set(strings.Fields("its it is thats that was i be make to the house number address casa numero es era la el decir me a")...)
)
