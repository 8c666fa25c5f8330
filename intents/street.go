package intents

import "strings"

// street is how a street's name was read after its house number.
type street struct {
	line     string
	to       int // token after it
	score    float64
	suffixed bool
}

// street reads a street's name at toks[j]; spoken tells that the house number was.
func (p *Parser) street(toks []token, j int, spoken bool) (street, bool) {
	if j >= len(toks) {
		return street{}, false
	}
	if s, ok := p.highway(toks, j); ok {
		return s, true
	}
	w := streetWalk{p: p, toks: toks, from: j, spoken: spoken}
	if t := &toks[j]; t.kind == word && j+1 < len(toks) {
		if d, ok := p.gaz.directional[t.text]; ok {
			k := j + 1
			if toks[k].text == "." {
				k++
			}
			if k < len(toks) && toks[k].text != "side" {
				if s, ok := p.highway(toks, k); ok {
					s.line = d + " " + s.line
					return s, true
				}
				if toks[k].kind != mark {
					w.dir, j = d, k
				}
			}
		}
	}
	w.name = j
	if s, ok := w.suffixed(); ok {
		return s, true
	}
	if t := &toks[j]; t.kind == word && spanishStreet[t.text] && t.text != "ave" && (t.text != "via" || j+1 < len(toks) && toks[j+1].kind == word && !p.stop(toks, j+1)) {
		return p.spanishName(toks, j, w.dir)
	}
	return w.bare()
}

// streetWalk goes along the words after a house number.
type streetWalk struct {
	p      *Parser
	toks   []token
	from   int    // after the house number
	name   int    // after the directional
	dir    string // "N", none
	spoken bool
}

// proper tells whether a token's capital makes it a part of a name.
func (w *streetWalk) proper(k int) bool { return w.toks[k].caps && !allCaps(w.toks) }

// suffix returns the standard abbreviation of the street suffix at k: only after a
// name, and not where the word is a unit or an abbreviation of the trade.
func (w *streetWalk) suffix(k, words int) string {
	t := &w.toks[k]
	std, ok := w.p.gaz.suffix[t.text]
	if !ok || noSuffix[t.text] || words == 0 && w.dir == "" {
		return ""
	}
	if _, unit := w.p.gaz.unit[t.text]; unit && k+1 < len(w.toks) && w.toks[k+1].kind == number {
		return "" // "trailer 4"
	}
	if t.text == "st" && words == 0 {
		n := k + 1
		if n < len(w.toks) && w.toks[n].text == "." {
			n++
		}
		if n < len(w.toks) && w.toks[n].kind == word && w.proper(n) && !w.p.term(w.toks, n) {
			return "" // "N St. Charles Ave"
		}
	}
	if words == 1 && linking(w.toks[k-1].text) || w.toks[k-1].text == "the" && words > 1 && !w.proper(k) {
		return "" // "19 The Green"
	}
	if (t.text == "exp" || t.text == "expr" || t.text == "vst") && k+1 < len(w.toks) && w.toks[k+1].kind == word {
		return "" // "exp tank", "2nd vst arrived"
	}
	return std
}

// cost weighs a word as a part of a street's name: a word that never stands in
// one ends it, a term of the trade or an everyday word makes it less likely.
func (w *streetWalk) cost(k, words int) (float64, bool) {
	t := &w.toks[k]
	proper := w.proper(k)
	if linking(t.text) && (words > 0 || t.text != "and" && t.text != "y") {
		return 0, true
	}
	term := w.p.term(w.toks, k)
	if term && words == 0 && !proper {
		if node, n := w.p.lex.find(w.toks, k, k+1); n > 0 && w.p.kinds[node].has(cUnit) && !w.p.kinds[node].has(cPoint) {
			return 0, false // "100 ft run"
		}
	}
	switch {
	case w.p.lex.never[t.text] && !(proper && !term && k+1 < len(w.toks) && w.toks[k+1].kind == word && w.proper(k+1)):
		return 0, false
	case term && proper:
		return 0.5, true
	case term:
		return 2, true
	case proper:
		return 0, true
	case w.p.stop(w.toks, k) || len(t.text) > 2 && vowelless(t.text):
		return 1, true
	}
	return 0, true
}

// core are the suffixes that no other suffix follows.
func core(std string) bool {
	switch std {
	case "St", "Ave", "Rd", "Dr", "Ln", "Blvd", "Ct", "Cir", "Pl", "Ter", "Pkwy", "Hwy":
		return true
	}
	return false
}

// suffixed reads a name that ends with a suffix: "Copper King Rd".
func (w *streetWalk) suffixed() (street, bool) {
	toks, g := w.toks, w.p.gaz
	best := street{score: -99}
	last, words, caps, cost := -1, 0, 0, 0.0
walk:
	for k := w.name; k < len(toks) && k-w.name < 7; k++ {
		t := &toks[k]
		switch {
		case t.quoted != toks[w.from].quoted:
			break walk
		case t.kind == mark:
			// "St. Charles Ave", "Front-Royal Rd"
			if k > w.name && t.glued && k+1 < len(toks) && toks[k+1].kind == word && last != k-1 &&
				(t.text == "-" && toks[k+1].glued || t.text == "." && len(toks[k-1].text) <= 4 && abbreviated(toks[k-1].text)) {
				continue
			}
			break walk
		case t.kind == number:
			if last == k-1 && last >= 0 {
				break walk
			}
			if n, ok := ordinalAt(toks, k); ok {
				k += n - 1
			} else if !(t.num.words && t.caps && !w.spoken || t.num.ordinal) {
				break walk
			}
			words++
			continue
		}
		if last == k-1 && last >= 0 && w.p.lex.never[t.text] {
			break // "9 Sorrel Way plz"
		}
		if std := w.suffix(k, words); std != "" {
			weak := ambiguousSuffix[t.text]
			sc := 5 - cost
			if weak {
				sc -= 2
			}
			if w.proper(k) {
				sc++
			}
			if caps == words && caps > 0 {
				sc++
			}
			if last == k-1 && last >= 0 || sc > best.score-0.5 || core(std) && w.proper(k) && w.proper(k-1) {
				best = street{line: std, to: k + 1, score: max(sc, best.score), suffixed: true}
				last = k
				if core(std) && (k+1 >= len(toks) || !strongSuffix(g, toks[k+1].text) || w.p.term(toks, k+1)) {
					break
				}
				words++
				continue
			}
		}
		if last >= 0 && last < k {
			// a name goes on after a suffix only when another one follows: "Mill Creek Valley Rd"
			if k+1 >= len(toks) || !strongSuffix(g, toks[k+1].text) && !(w.proper(k) && w.proper(k+1) && core(g.suffix[toks[k+1].text])) || (w.p.term(toks, k) || w.p.stop(toks, k)) && !(w.proper(k) && w.proper(k+1)) {
				break
			}
		}
		c, ok := w.cost(k, words)
		if cost += c; !ok || cost > 4 {
			break
		}
		if t.caps {
			caps++
		}
		words++
	}
	if last < 0 {
		return street{}, false
	}
	w.finish(&best, last)
	return best, true
}

// finish writes the line of a street that ends with the suffix at last, with a
// directional after it: "Main St NW".
func (w *streetWalk) finish(s *street, last int) {
	toks := w.toks
	name, dir := w.p.nameOf(toks, w.name, last), w.dir
	if name == "" && dir != "" {
		name, dir = title(toks[w.from].raw), "" // "12 North Ave"
		if len(name) <= 2 {
			name = strings.ToUpper(name)
		}
	}
	parts := make([]string, 0, 4)
	if dir != "" {
		parts = append(parts, dir)
	}
	parts = append(parts, name, s.line)
	after := func(k int) *token {
		if s.to+k < len(toks) {
			return &toks[s.to+k]
		}
		return &token{kind: mark, text: "\n"}
	}
	if t := after(0); t.kind == word {
		if d, ok := w.p.gaz.directional[t.text]; ok && (t.caps || after(1).kind == mark) && after(1).text != "side" && after(1).text != "bib" {
			parts = append(parts, d)
			s.to++
		}
	}
	if t := after(0); t.text == "." && t.glued && len(toks[s.to-1].raw) <= 4 && s.to+1 < len(toks) {
		if n := after(1); n.kind == word && !n.caps || n.kind == mark && n.text != "\n" {
			s.to++ // the point of "Ave." ends no sentence
		}
	}
	s.line = strings.Join(parts, " ")
}

// bare reads a name without a suffix: "12 Alder". A capital, or the end of the
// clause after it, makes it a name; a plural, or the number 1, makes it
// a count: "6 flats", "1 message".
func (w *streetWalk) bare() (street, bool) {
	toks := w.toks
	end, words, caps := w.name, 0, 0
	for end < len(toks) && words < 3 {
		t := &toks[end]
		if t.quoted != toks[w.from].quoted {
			break
		}
		if t.kind == number {
			if n, ok := ordinalAt(toks, end); ok && words == 0 {
				end += n
				words++
				continue
			}
			break
		}
		if t.kind != word || !w.bareWord(end, words, caps > 0) {
			break
		}
		if w.proper(end) {
			caps++
		}
		words++
		end++
	}
	if words == 0 {
		return street{}, false
	}
	sc := 1.5
	if w.dir != "" {
		sc += 2
	}
	closed := end >= len(toks) || toks[end].kind == mark
	if !closed && w.p.gaz.unit[toks[end].text] != "" && !w.p.gaz.plainUnit(toks, end) {
		closed = true // "66 Rio Frio Apt 9"
	}
	if !closed && end+2 < len(toks) && toks[end].text == "f" && toks[end+1].text == "/" {
		closed = true // "406 saltgrass f/u 1 mo"
	}
	switch last := toks[end-1].text; {
	case caps == words:
		sc += 1.5
	case w.dir == "" && (words == 1 && plural(last) || toks[w.from-1].num != nil && toks[w.from-1].num.value == 1):
		sc -= 2
	case end >= len(toks) || toks[end].text == "\n":
		sc += 0.5
	}
	if !closed && toks[end].kind == word && !w.p.term(toks, end) && !w.p.stop(toks, end) && (w.p.gaz.unit[toks[end].text] == "" || w.p.gaz.plainUnit(toks, end)) {
		sc -= 2
	}
	if words > 2 {
		sc--
	}
	name := w.p.nameOf(toks, w.name, end)
	if end < len(toks) && toks[end].kind == word && words == 1 {
		name = strings.TrimSuffix(name, "'s") // "12 Alder's front bib"
	}
	if w.dir != "" {
		name = w.dir + " " + name
	}
	return street{line: name, to: end, score: sc}, true
}

// bareWord tells whether the word at k can be a part of a name that has no suffix.
func (w *streetWalk) bareWord(k, words int, proper bool) bool {
	p, t := w.p, &w.toks[k]
	if p.lex.never[t.text] {
		return false
	}
	if words == 0 && t.text == "the" && w.proper(k) && k+1 < len(w.toks) && w.toks[k+1].kind == word && w.proper(k+1) && !p.term(w.toks, k+1) && !p.stop(w.toks, k+1) {
		return true // "40 The Strand"
	}
	if words == 0 && saint(t.text) && k+1 < len(w.toks) && w.toks[k+1].kind == word && w.toks[k+1].text != "side" {
		return true // "1440 st marys"
	}
	if t.text == "main" && words == 0 && w.proper(k) && (k+1 >= len(w.toks) || w.toks[k+1].kind == mark) {
		return true // "12 Main"
	}
	if p.term(w.toks, k) {
		// "66 Rio Frio Apt 9", where "66 Alder Kitchen" is a test point
		return w.proper(k) && words > 0 && k+2 < len(w.toks) && p.gaz.unit[w.toks[k+1].text] != "" && !p.gaz.plainUnit(w.toks, k+1)
	}
	if initialed(w.toks, k) {
		return false
	}
	if _, unit := p.gaz.unit[t.text]; unit && words > 0 && !p.gaz.plainUnit(w.toks, k) {
		return false // "66 Rio Frio Apt 9"
	}
	if w.proper(k) {
		// "5 Heron Gate from 92"; "12 Alder Gate 4410" is a gate's code
		return !p.stop(w.toks, k) || words > 0 && !(k+1 < len(w.toks) && (w.toks[k+1].kind == number || w.toks[k+1].text == ":" && k+2 < len(w.toks) && w.toks[k+2].kind == number))
	}
	if proper && !linking(t.text) {
		return false // "3310 Rio Seco please"
	}
	meaning := func() bool {
		node, _ := p.lex.find(w.toks, k, k+1)
		return !p.kinds[node].within(classSet{}.with(cWill).with(cWord))
	}
	if p.stop(w.toks, k) {
		return words > 0 && (k+1 >= len(w.toks) || w.toks[k+1].text == "\n") && !linking(t.text) && len(t.text) > 3 && !meaning()
	}
	if vowelless(t.text) && len(t.text) > 2 && !strings.Contains(t.text, "y") || len(t.text) == 1 && words == 0 && w.dir == "" {
		return false
	}
	if _, unit := p.gaz.unit[t.text]; unit && !p.gaz.plainUnit(w.toks, k) {
		return false // "605 Coral apto 9"
	}
	if p.lex.known(t.text) || p.lex.right[t.text] {
		// "14 heron gate": a common word may end a name
		return words > 0 && !meaning() && (k+1 >= len(w.toks) || w.toks[k+1].kind == mark)
	}
	if len(t.text) > 6 && strings.HasSuffix(t.text, "ly") {
		return false // "set at 50 supposedly"
	}
	var room [8]int32
	term, _ := p.joined(t.text)
	return term == 0 && len(p.lex.candidates(t.text, room[:0])) == 0 // "66 frontbib", "67 befor"
}

// initialed tells whether the letter at k is the initial of a test point between two
// pressures: "F 84 R 66".
func initialed(toks []token, k int) bool {
	return len(toks[k].text) == 1 && k+1 < len(toks) && toks[k+1].kind == number && toks[k-1].kind == number && toks[k-1].num.value <= highestPressure
}

// saint tells whether a short word begins a name: "St Marys", "Mt Baker".
func saint(s string) bool {
	return s == "st" || s == "mt" || s == "saint" || s == "santa" || s == "san"
}

// plural tells whether a word looks like things counted.
func plural(s string) bool {
	n := len(s)
	return n > 3 && s[n-1] == 's' && s[n-2] != 's' && s[n-2] != 'u' && s[n-2] != 'i'
}
