package intents

import "slices"

// Lines of a note that lean on what stands before them.

// clocked leaves out the time that each line of a log begins with: "09:12 mtr 108", "Tue 8:10
// am max 119". A time before a number stays, as in "6:30 66", and so does a lone one.
func (p *Parser) clocked(toks []token) []token {
	var at []span
	for from := 0; from < len(toks); from = lineEnd(toks, from) + 1 {
		to := from
		if toks[to].kind == word && weekdays[toks[to].text] > 0 {
			to++
		}
		if to >= len(toks) || toks[to].kind != number || !toks[to].num.time {
			continue
		}
		to++
		if to < len(toks) && oneOf(toks[to].text, "am", "pm", "a", "p") {
			to++
		}
		if to < len(toks) && toks[to].kind == mark && oneOf(toks[to].text, "-", ":", ",") {
			to++
		}
		if to < len(toks) && toks[to].kind == word {
			at = append(at, span{from, to})
		}
	}
	if len(at) < 2 {
		return toks
	}
	for _, s := range slices.Backward(at) {
		toks = slices.Delete(toks, s.from, s.to)
	}
	return toks
}

// planHeads puts a head of what is to be done, which stands in a line of its own, before each
// line below it: "TO DO / set the regulator down, Thursday". A line of a word or two is the
// next head.
func (p *Parser) planHeads(toks []token) []token {
	for from := 0; from < len(toks); {
		to := lineEnd(toks, from)
		n := to - from
		if n < 1 || n > 3 || to+1 >= len(toks) || toks[from].kind != word || !p.lex.inList(headText(toks[from:to]), listPlanHeads) {
			from = to + 1
			continue
		}
		head := slices.Clone(toks[from:to])
		colon := token{kind: mark, text: ":", raw: ":", span: toks[to].span, glued: true}
		toks[to] = colon
		next := lineEnd(toks, to+1)
		for lines := 1; lines < 5 && next+1 < len(toks); lines++ {
			end := lineEnd(toks, next+1)
			if end-next-1 < 3 || slices.ContainsFunc(toks[next+1:end], func(t token) bool { return t.text == ":" }) {
				break
			}
			add := append(slices.Clone(head), colon)
			toks = slices.Insert(toks, next+1, add...)
			next = lineEnd(toks, next+1)
		}
		from = next + 1
	}
	return toks
}

// headText returns the words of a head as the lexicon spells them, "" where a number or a mark
// stands among them.
func headText(line []token) (s string) {
	for k := range line {
		if line[k].kind != word {
			return ""
		}
		if k > 0 {
			s += " "
		}
		s += line[k].text
	}
	return s
}

// spaced leaves out the blank lines of a note that has one behind every line: they set nothing
// apart.
func spaced(toks []token) []token {
	if len(toks) == 0 {
		return toks
	}
	broken := func(i int) bool { return i >= 0 && i < len(toks) && toks[i].kind == mark && toks[i].text == "\n" }
	double := false
	for i := range toks {
		if broken(i) && !broken(i-1) {
			if !broken(i + 1) {
				return toks
			}
			double = true
		}
	}
	if !double {
		return toks
	}
	kept := toks[:1]
	for i := 1; i < len(toks); i++ {
		if t := toks[i]; !broken(i) || kept[len(kept)-1].text != "\n" || kept[len(kept)-1].kind != mark {
			kept = append(kept, t)
		}
	}
	return kept
}
