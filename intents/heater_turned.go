package intents

import (
	"slices"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listTurnsHeater = listOf("turns heater")
)

// A heater that is turned on or off behind a reading was not so when that was taken; it is for the
// next one: "74 laundry", "prendí el boiler", "76".

// mostOfTurning is how many words tell a heater turned and nothing else.
const mostOfTurning = 7

// tellsTurned tells whether a text tells of a heater that something was done to, or that has just
// turned, rather than of how it was.
func (p *Parser) tellsTurned(text string) bool {
	return slices.ContainsFunc(wholeWords(text), func(w string) bool { return p.lex.inList(w, listTurnsHeater) })
}

// HeaterTurned is the state that a message says a heater to be in from now on, telling nothing else;
// empty for none.
func (p *Parser) HeaterTurned(text string, ctx Context) assess.HeaterState {
	if !p.tellsTurned(text) || len(plainWords(text)) > mostOfTurning {
		return ""
	}
	ctx.Told, ctx.Question = nil, nil
	m := p.read(text, ctx, new(scratch), false)
	for i := range m.items {
		if m.items[i].num != nil || m.items[i].point != "" || m.isMark(i, "?") {
			return ""
		}
	}
	if len(m.frame.Items()) > 0 || len(m.readings) > 0 || len(m.symptoms) > 0 || m.hasAsk(AskDone) {
		return ""
	}
	var room [8]mention
	if all := m.heaterStates(room[:0]); len(all) == 1 {
		return all[0].state
	}
	return ""
}
