package intents

import "slices"

// A table is a line that names columns over lines of as many cells: "point | psi | running"
// over "front bib | 58 | upstairs shower". tabled writes into each cell what its column says
// of it, "front bib 58, with upstairs shower running", and leaves the heads out.

// head is what a word says as the head of a column.
type head uint8

const (
	noHead     head = iota
	headName        // the column of the test points
	headPSI         // of pressures in psi
	headBar         // of pressures in bar
	headKPa         // of pressures in kPa
	headHeater      // of the heater's state
	headFlow        // of what was running
	headOther       // of temperatures, prices, counts: left out
	headMax         // the others name what each number below them is
	headNow
	headBefore
	headAfter
	headStatic
	headFlowing
	headIdle
	headFiring
	headSmall // adds nothing: "heater state"
)

// headNames are the heads as the lexicon names them, and what is written before or, of a
// unit, behind each number below them.
var headNames = map[string]head{
	"name": headName, "psi": headPSI, "bar": headBar, "kpa": headKPa, "heater": headHeater, "flow": headFlow, "other": headOther, "max": headMax, "now": headNow,
	"before": headBefore, "after": headAfter, "static": headStatic, "flowing": headFlowing, "idle": headIdle, "firing": headFiring,
	"small": headSmall,
}

var headWords = [...]string{headBar: "bar", headKPa: "kpa", headMax: "max", headNow: "now", headBefore: "before", headAfter: "after",
	headStatic: "static", headFlowing: "flowing", headIdle: "idle", headFiring: "firing", headSmall: ""}

// tabled rewrites the tables of a message.
func (p *Parser) tabled(toks []token) []token {
	for from := 0; from < len(toks); {
		to := lineEnd(toks, from)
		heads := p.tableHeads(toks[from:to])
		if len(heads) < 2 || to >= len(toks) {
			from = to + 1
			continue
		}
		rows, end := 0, to+1
		var out []token
		for end < len(toks) {
			rowTo := lineEnd(toks, end)
			if rule(toks[end:rowTo]) {
				end = rowTo + 1
				continue
			}
			row, ok := rowOfTable(toks[end:rowTo], heads)
			if !ok {
				break
			}
			out = append(out, row...)
			if rowTo < len(toks) {
				out = append(out, toks[rowTo])
			}
			rows, end = rows+1, rowTo+1
		}
		if rows == 0 {
			from = to + 1
			continue
		}
		end = min(end, len(toks))
		toks = slices.Replace(toks, from, end, out...)
		from += len(out)
	}
	return toks
}

// lineEnd returns the token that ends the line at from, or the number of tokens.
func lineEnd(toks []token, from int) int {
	for from < len(toks) && (toks[from].kind != mark || toks[from].text != "\n") {
		from++
	}
	return from
}

// rule tells whether a line is only drawn: "-----", "|---|---|".
func rule(line []token) bool {
	for k := range line {
		if line[k].kind != mark {
			return false
		}
	}
	return true
}

// tableHeads reads a line that holds nothing but heads of columns, one of which says more
// than the place and psi.
func (p *Parser) tableHeads(line []token) (heads []head) {
	if len(line) > 14 {
		return nil
	}
	telling := false
	for i := range line {
		t := &line[i]
		if t.kind == mark && oneOf(t.text, "|", "/", ",", "-") {
			continue
		}
		h := p.lex.of(t).column
		switch {
		case t.kind != word || h == noHead:
			return nil
		case len(heads) > 0 && i > 0 && line[i-1].kind == word && heads[len(heads)-1] == headHeater && (h == headIdle || h == headFiring):
			heads[len(heads)-1], telling = h, true // "| tap | htr idle | htr firing |"
			continue
		case h == headSmall, len(heads) > 0 && heads[len(heads)-1] == headMax && h == headPSI:
			continue
		}
		telling = telling || h >= headBar || h == headOther
		heads = append(heads, h)
	}
	if !telling || len(heads) == 1 && heads[0] > headKPa {
		return nil
	}
	if heads[0] != headName {
		heads = slices.Insert(heads, 0, headName)
	}
	return heads
}

// rowOfTable rewrites one line below the heads; it fails where the line has other cells.
func rowOfTable(line []token, heads []head) (out []token, ok bool) {
	cells := cellsOf(line)
	if len(cells) != len(heads) {
		if cells = singles(line); len(cells) != len(heads) {
			return nil, false
		}
	}
	for k, h := range heads {
		cell := cells[k]
		if h == headFlow && len(cell) == 1 && cell[0].kind == number {
			h = headFlowing // "static flow" over "66 50"
		}
		value := h != headName && h != headHeater && h != headFlow && h != headOther
		if value && len(cell) > 0 && cell[0].kind != mark && !slices.ContainsFunc(cell, func(t token) bool { return t.kind == number }) {
			return nil, false
		}
		say := func(text string, k kind) {
			at := line[0].span.from
			if len(cell) > 0 {
				at = cell[0].span.from
			}
			out = append(out, token{kind: k, text: text, raw: text, span: span{at, at}})
		}
		empty := len(cell) == 0 || cell[0].kind == mark
		switch {
		case h == headFlow && (empty || oneOf(cell[0].text, "nothing", "none", "no", "nada", "off", "n")):
			say(",", mark)
			say("nothing", word)
			say("running", word)
		case empty, h == headOther:
		case h == headHeater:
			say(",", mark)
			say("burner", word) // the heater is no subject of the lines below
			out = append(out, cell...)
		case h == headFlow:
			say(",", mark)
			say("with", word)
			out = append(out, cell...)
			say("running", word)
		case h == headBar || h == headKPa:
			out = append(out, cell...)
			say(headWords[h], word)
		case value && h != headPSI:
			if k > 1 {
				say(",", mark)
			}
			say(headWords[h], word)
			out = append(out, cell...)
		default:
			out = append(out, cell...)
		}
	}
	return out, true
}

// cellsOf cuts a line at bars, and where two blanks stand.
func cellsOf(line []token) (cells [][]token) {
	from := 0
	for i := range line {
		switch {
		case line[i].kind == mark && line[i].text == "|":
			if i > 0 {
				cells = append(cells, line[from:i])
			}
			from = i + 1
		case i > from && line[i].span.from-line[i-1].span.to >= 2:
			cells, from = append(cells, line[from:i]), i
		}
	}
	if from < len(line) {
		cells = append(cells, line[from:])
	}
	return cells
}

// singles takes the words before the first number for one cell, and each token after for one.
func singles(line []token) (cells [][]token) {
	first := 0
	for first < len(line) && line[first].kind != number {
		first++
	}
	if first == 0 || first == len(line) {
		return nil
	}
	cells = append(cells, line[:first])
	if line[first-1].text == "," {
		cells[0] = line[:first-1]
	}
	for i := first; i < len(line); i++ {
		if line[i].text != "," {
			cells = append(cells, line[i:i+1])
		}
	}
	return cells
}
