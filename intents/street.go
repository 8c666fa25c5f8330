package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listBeginsTap   = listOf("begins tap")
	listGardenTap   = listOf("garden tap")
	listAbbreviated = listOf("abbreviated")
	listBehindPoint = listOf("behind point")
)

// street is how a street's name was read after its house number.
type street struct {
	line     string
	to       int // token after it
	score    float64
	suffixed bool
}

// street reads a street's name at toks[j]; spoken tells that the house number was.
func (p *Parser) street(toks []token, j int, spoken bool) (street, bool) {
	if j >= len(toks) || toks[j].kind == mark {
		return street{}, false
	}
	switch toks[j].text {
	case "and", "but", "y", "pero":
		return street{}, false // "put in 2019 and works well"
	}
	if s, ok := p.highway(toks, j); ok {
		return s, true
	}
	w := streetWalk{p: p, toks: toks, from: j, spoken: spoken}
	if t := &toks[j]; t.kind == word && j+1 < len(toks) {
		if d := w.p.lex.of(t).directional; d != "" {
			k := j + 1
			if toks[k].text == "." && !(len(t.text) == 2 && !t.caps && k+1 < len(toks) && toks[k+1].caps) {
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
	if t := &toks[j]; t.kind == word && p.lex.of(t).calle && t.text != "ave" &&
		(t.text != "via" || j+1 < len(toks) && toks[j+1].kind == word && !p.stop(toks, j+1)) {
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

// runsOn tells whether the sentence of a street goes on at token k, behind the point of "Ave.": with
// another mark, a unit, or a small word that begins none in small letters: "12 Elm Ave. on Friday".
func (w *streetWalk) runsOn(k int) bool {
	t := &w.toks[k]
	if t.kind != word {
		return t.kind == mark && t.text != "\n"
	}
	if t.caps {
		return false
	}
	e := w.p.lex.of(t)
	article := oneOf(t.text, "el", "la", "this") && k+1 < len(w.toks) && w.p.lex.of(&w.toks[k+1]).keys&keyDay != 0
	return e.unit != "" || article || e.lists.has(listBehindPoint)
}

// suffix returns the standard abbreviation of the street suffix at k: only after a
// name, and not where the word is a unit or an abbreviation of the trade.
func (w *streetWalk) suffix(k, words int) string {
	t := &w.toks[k]
	std := w.p.lex.of(t).suffix
	if std == "" || w.p.lex.of(t).lists.has(listNoSuffixes) && !w.strEnds(k) || words == 0 && w.dir == "" {
		return ""
	}
	if w.p.lex.of(t).unit != "" && k+1 < len(w.toks) && w.toks[k+1].kind == number {
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
	if words == 1 && w.p.lex.of(&w.toks[k-1]).lists.has(listLinking) || w.toks[k-1].text == "the" && words > 1 && !w.proper(k) {
		return "" // "19 The Green"
	}
	if words > 0 && !w.proper(k) && w.p.lex.of(t).lists.has(listBeginsTap) && w.beginsTap(k) {
		return "" // "407 bristol garden tap 55"
	}
	if (t.text == "exp" || t.text == "expr" || t.text == "vst") && k+1 < len(w.toks) && w.toks[k+1].kind == word {
		return "" // "exp tank", "2nd vst arrived"
	}
	return std
}

// beginsTap tells whether the word at k is the first of several that name a test point.
func (w *streetWalk) beginsTap(k int) bool {
	if w.p.lex.of(&w.toks[k]).suffix == "Gdn" {
		return k+1 < len(w.toks) && w.p.lex.of(&w.toks[k+1]).lists.has(listGardenTap) // "grdn tp"
	}
	node, n := w.p.lex.find(w.toks, k, min(k+4, len(w.toks)))
	return n > 1 && w.p.lex.kinds(node).meets(setOf(cPoint, cBibb))
}

// strEnds tells whether "str" at k ends a street's name: behind a word that is no term of the
// trade, and no number follows it: "61 Maple Str., rear 77" where "hose 60 str 118" has the
// street's pressure.
func (w *streetWalk) strEnds(k int) bool {
	if w.toks[k].text != "str" || w.toks[k-1].kind != word || w.p.term(w.toks, k-1) {
		return false
	}
	if k++; k < len(w.toks) && w.toks[k].text == "." {
		k++
	}
	if k+1 < len(w.toks) && w.toks[k].text == "#" {
		id, _ := unitID(w.toks, k+1)
		return id != "" && len(id) < 3 // "41 Oak Str #B", but "Oak str #118"
	}
	return k >= len(w.toks) || w.toks[k].kind == word || w.toks[k].kind == mark && !oneOf(w.toks[k].text, ":", "=", "#", "@")
}

// cost weighs a word as a part of a street's name: a word that never stands in
// one ends it, a term of the trade or an everyday word makes it less likely.
func (w *streetWalk) cost(k, words int) (float64, bool) {
	t := &w.toks[k]
	proper := w.proper(k)
	if w.p.lex.of(t).lists.has(listLinking) && (words > 0 || t.text != "and" && t.text != "y") {
		return 0, true
	}
	term := w.p.term(w.toks, k)
	if term && !proper {
		node, _ := w.p.lex.find(w.toks, k, k+1)
		switch kinds := w.p.lex.kinds(node); {
		case words == 0 && kinds.has(cUnit) && !kinds.has(cPoint) && !w.unitNames(k):
			return 0, false // "100 ft run"
		case t.text == "main" || kinds.has(cDeterminer) || words == 0 && kinds.has(cUnit) && !kinds.has(cPoint):
			return 0.5, true // "15 old mill ford", "50 mile creek rd"
		}
	}
	switch {
	case w.p.lex.of(t).never && !(proper && !term && k+1 < len(w.toks) && w.toks[k+1].kind == word && w.proper(k+1)):
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

// unitNames tells whether the unit at k, right after the house number, is the first
// word of a street's name: "50 mile creek rd", "62 dollar st". It is one thing, written
// out, and a plain suffix follows.
func (w *streetWalk) unitNames(k int) bool {
	t := w.toks[k].text
	if len(t) < 4 && !(t == "bar" && w.toks[w.from-1].num != nil && w.toks[w.from-1].num.value > 20) || strings.HasSuffix(t, "s") {
		return false
	}
	if k+1 < len(w.toks) && w.toks[k+1].kind == number && w.endsAt(k+2) {
		return true // "1212 mile 9 rd"
	}
	for j := k + 1; j < len(w.toks) && j <= k+3 && w.toks[j].kind == word; j++ {
		s := w.toks[j].text
		if core(w.p.gaz.suffix[s]) && !w.p.lex.inList(s, listAmbiguousSuffixes) || j > k+1 && s == "way" {
			return true
		}
		if w.p.lex.look(s).never || w.p.term(w.toks, j) {
			return false
		}
	}
	return false
}

// core are the suffixes that no other suffix follows.
func core(std string) bool {
	switch std {
	case "St", "Ave", "Rd", "Dr", "Ln", "Blvd", "Ct", "Cir", "Pl", "Ter", "Pkwy", "Hwy":
		return true
	}
	return false
}

// longestName is how many tokens the name of a street has at most, its suffix among them.
const longestName = 7

// suffixAhead tells whether any word that may end the name is a suffix; the first may only behind a directional.
func (w *streetWalk) suffixAhead() bool {
	k := w.name
	if w.dir == "" {
		k++
	}
	for ; k < len(w.toks) && k < w.name+longestName; k++ {
		t := &w.toks[k]
		if t.kind == mark && !(t.glued && (t.text == "-" || t.text == ".")) {
			return false // a name goes on behind no other
		}
		if w.p.lex.of(t).suffix != "" {
			return true
		}
	}
	return false
}

// suffixed reads a name that ends with a suffix: "Copper King Rd".
func (w *streetWalk) suffixed() (street, bool) {
	if !w.suffixAhead() {
		return street{}, false
	}
	toks := w.toks
	best := street{score: -99}
	last, words, caps, cost := -1, 0, 0, 0.0
walk:
	for k := w.name; k < len(toks) && k-w.name < longestName; k++ {
		t := &toks[k]
		switch {
		case t.quoted != toks[w.from].quoted:
			break walk
		case t.kind == mark:
			// "St. Charles Ave", "Front-Royal Rd"
			if k > w.name && t.glued && k+1 < len(toks) && toks[k+1].kind == word && last != k-1 &&
				(t.text == "-" && toks[k+1].glued || t.text == "." && len(toks[k-1].text) <= 4 && w.p.lex.of(&toks[k-1]).lists.has(listAbbreviated)) {
				continue
			}
			break walk
		case t.kind == number:
			if last == k-1 && last >= 0 {
				break walk
			}
			if n, ok := ordinalAt(toks, k); ok {
				k += n - 1
			} else if words == 1 && w.numbered(k) {
				// "1212 Mile 9 Rd"
			} else if !(t.num.words && !w.spoken && (t.caps || w.opens() || words == 0 && w.endsAt(k+1)) || t.num.ordinal) {
				break walk
			}
			words++
			continue
		}
		if last == k-1 && last >= 0 && w.p.lex.of(t).never {
			break // "9 Sorrel Way plz"
		}
		if std := w.suffix(k, words); std != "" {
			weak := w.p.lex.of(t).lists.has(listAmbiguousSuffixes)
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
				if core(std) && (k+1 >= len(toks) || !w.p.strongSuffix(toks[k+1].text) || w.p.term(toks, k+1)) {
					break
				}
				words++
				continue
			}
		}
		if last >= 0 && last < k {
			// a name goes on after a suffix only when another one follows: "Mill Creek Valley Rd"
			if k+1 >= len(toks) || !w.goesOn(k) {
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
	if s := toks[last].text; core(best.line) && !w.p.lex.of(&toks[last]).lists.has(listAmbiguousSuffixes) && s != "st" && w.p.gaz.standard[s] {
		best.score = max(best.score, 3) // "20 old post rd"
	}
	w.finish(&best, last)
	return best, true
}

// goesOn tells whether a street's name goes on with the word at k, as one more suffix
// follows: "Mill Creek Valley Rd". Everyday words do so with capitals only.
func (w *streetWalk) goesOn(k int) bool {
	next := w.toks[k+1].text
	if w.proper(k) && w.proper(k+1) {
		return w.p.strongSuffix(next) || core(w.p.gaz.suffix[next])
	}
	return w.p.strongSuffix(next) && !w.p.term(w.toks, k) && !w.p.stop(w.toks, k)
}

// fixture tells whether the word at k is one that a side of the house is told of: "east
// bib", "south wall".
func (w *streetWalk) fixture(k int) bool {
	if k >= len(w.toks) {
		return false
	}
	node, _ := w.p.lex.find(w.toks, k, k+1)
	return w.p.lex.kinds(node).meets(setOf(cBibb, cFixture, cPipe)) || w.p.lex.of(&w.toks[k]).plain
}

// endsAt tells whether the plain suffix of a street stands at k: "71 quince st".
func (w *streetWalk) endsAt(k int) bool {
	return k < len(w.toks) && w.toks[k].kind == word && core(w.p.lex.of(&w.toks[k]).suffix) && !w.p.lex.of(&w.toks[k]).lists.has(listAmbiguousSuffixes)
}

// numbered tells whether the number at k tells one of many roads of a name apart: "Lateral 5 Rd".
func (w *streetWalk) numbered(k int) bool {
	n := w.toks[k].num
	return n.integer && !n.words && len(n.digits) <= 3 && !w.toks[k].glued && w.endsAt(k+1) &&
		(w.proper(k-1) || !w.p.term(w.toks, k-1) || w.toks[k-1].text == "mile")
}

// opens tells whether the house number opens its clause, or a small word leads to it:
// a number in words right after it is then of the name, "60 sixty oaks ln".
func (w *streetWalk) opens() bool {
	k := w.from - 2
	return k < 0 || w.toks[k].kind == mark || w.toks[k].kind == word && !w.p.term(w.toks, k) || w.p.lex.of(&w.toks[k]).lists.has(listLinking)
}

// quarter tells whether the small letter at k is the quarter of the town of a street that has a number
// for its name, its suffix at last: "501 2nd ave n kitchen 66".
func (w *streetWalk) quarter(k, last int) bool {
	if len(w.toks[k].text) > 2 || last-2 < w.name || k+1 >= len(w.toks) || w.toks[k+1].kind != word {
		return false
	}
	node, n := w.p.lex.find(w.toks, k+1, k+2)
	_, numbered := ordinalAt(w.toks, last-2)
	return numbered && n > 0 && w.p.lex.kinds(node).meets(tapClasses)
}

// finish writes the line of a street that ends with the suffix at last, with a
// directional after it: "Main St NW".
func (w *streetWalk) finish(s *street, last int) {
	toks := w.toks
	name, dir := w.p.nameOf(toks, w.name, last), w.dir
	switch {
	case name != "" || dir == "":
	case !core(s.line) && !w.p.gaz.standard[toks[last].text]:
		name, s.line = title(toks[last].raw), "" // "130 N Ridge": the whole name is no suffix
	default:
		name, dir = title(toks[w.from].raw), "" // "12 North Ave"
		if len(name) <= 2 {
			name = strings.ToUpper(name)
		}
	}
	parts := make([]string, 0, 4)
	if dir != "" {
		parts = append(parts, dir)
	}
	if parts = append(parts, name); s.line != "" {
		parts = append(parts, s.line)
	}
	after := func(k int) *token {
		if s.to+k < len(toks) {
			return &toks[s.to+k]
		}
		return &token{kind: mark, text: "\n"}
	}
	if t := after(0); t.kind == word {
		if d := w.p.lex.of(t).directional; d != "" &&
			(t.caps && !(t.raw == "Se" && after(1).kind == word) || after(1).kind == mark || len(t.text) > 3 && !w.fixture(s.to+1) || w.quarter(s.to, last)) &&
			after(1).text != "side" && after(1).text != "bib" {
			parts = append(parts, d)
			s.to++
		}
	}
	if t := after(0); t.text == "." && t.glued && w.p.lex.of(&toks[s.to-1]).lists.has(listAbbreviated) && s.to+1 < len(toks) && w.runsOn(s.to+1) {
		s.to++ // the point of "Ave." ends no sentence where the words go on from it
	}
	s.line = strings.Join(parts, " ")
}
