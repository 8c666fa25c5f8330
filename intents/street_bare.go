package intents

import (
	"strings"

	"github.com/agnivade/levenshtein"
)

// Lists of the lexicon that these rules know.
var (
	listNoMoreOfStreet = listOf("no more of street")
	listEverydayStreet = listOf("everyday street")
)

// Streets whose names have no suffix: "12 Alder".

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
		if !w.p.lex.of(t).lists.has(listLinking) || words == 0 {
			words++
		}
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
	if !closed && w.p.lex.of(&toks[end]).unit != "" && !w.p.gaz.plainUnit(toks, end) {
		closed = true // "66 Rio Frio Apt 9"
	}
	if !closed && toks[end].text == "f/u" {
		closed = true // "406 saltgrass f/u 1 mo"
	}
	switch last := toks[end-1].text; {
	case caps == words:
		sc += 1.5
	case w.dir == "" && (words == 1 && (plural(last) || w.p.lex.inList(last, listPeople)) && !w.tall() || toks[w.from-1].num != nil && toks[w.from-1].num.value == 1):
		sc -= 2
	default:
		sc += w.strange(end)
	}
	if !closed && w.unknownAfter(end) {
		sc -= 2
	}
	if words > 2 {
		sc--
	}
	if w.dir == "" && caps < words && w.measured() {
		sc -= 2
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

// unknownAfter tells whether a word that nobody knows follows a bare name, which may well be
// more of it.
func (w *streetWalk) unknownAfter(end int) bool {
	t := &w.toks[end]
	if t.kind != word || w.p.lex.known(t.text) || w.p.stop(w.toks, end) || w.p.term(w.toks, end) {
		return false
	}
	if len(t.text) > 2 && vowelless(t.text) && !strings.Contains(t.text, "y") && (w.p.lex.of(t).suffix == "" || w.beginsTap(end)) && (w.tall() || len(w.toks[w.name].text) > 3) {
		return false // "407 bristol lwn sprnklr": a word written short, no more of the name
	}
	return w.p.lex.of(t).unit == "" || w.p.gaz.plainUnit(w.toks, end)
}

// strange weighs a name in small letters: the end of a line after it speaks for it, and
// so do words that nothing else knows, "31 larkspur"; a common word, "812 otter", speaks
// against it.
func (w *streetWalk) strange(end int) (score float64) {
	if end >= len(w.toks) || w.toks[end].text == "\n" {
		score += 0.5
	}
	unknown := w.toks[w.name].text == "main" || w.everydayName(w.name) // "72 main kitchen 64", "250 hope kitchen 63"
	for k := w.name; k < end; k++ {
		t := &w.toks[k]
		unknown = unknown || k == w.name && t.kind == word && len(t.text) > 2 && !w.p.lex.known(t.text) && !w.p.lex.common(t.text)
		switch {
		case k > w.name:
		case w.p.lex.of(t).heads:
			score++
		case w.p.lex.of(t).right && !w.everydayName(k):
			score -= 1.5
		}
	}
	if unknown && (w.pointNumber(end) || w.toldOf(end)) {
		score += 0.5 // "27 hemlock front 66", "27 hemlock needs a prv"
	}
	if unknown && w.from > 1 && w.toks[w.from-2].text != "\n" {
		score += 0.5 // "66 parejo" begins a message as well
	}
	return score
}

// toldOf tells whether the word at k may tell something of the house named before it:
// it is known, and neither a small word that goes with a number nor a test point.
func (w *streetWalk) toldOf(k int) bool {
	if k >= len(w.toks) || w.toks[k].kind != word {
		return false
	}
	switch t := w.toks[k].text; {
	case w.p.lex.of(&w.toks[k]).lists.has(listNoMoreOfStreet):
		return false
	default:
		node, _ := w.p.lex.find(w.toks, k, k+1)
		return w.p.lex.known(t) && !w.p.lex.kinds(node).meets(ofNumbers)
	}
}

// pointNumber tells whether a test point with a number of its own stands at k.
func (w *streetWalk) pointNumber(k int) bool {
	node, n := w.p.lex.find(w.toks, k, min(k+4, len(w.toks)))
	if n == 0 || !w.p.lex.kinds(node).meets(setOf(cPoint, cPlace, cBibb)) {
		return false
	}
	for j := k + n; j < min(k+n+3, len(w.toks)) && w.toks[j].kind != mark; j++ {
		if w.toks[j].kind == number {
			return true
		}
	}
	return false
}

// measured tells whether a test point that has no other number leads to this one, which
// then is its pressure: "kitchen 66 amigo", where "66 rear 27 hemlock" has two.
func (w *streetWalk) measured() bool {
	k := w.from - 2
	n := w.toks[w.from-1].num
	if k < 0 || w.toks[k].kind != word || w.tall() || n != nil && n.value < leastPSI || !w.p.placedAt(w.toks, k) {
		return false
	}
	for k >= 0 && w.toks[k].kind == word && (w.p.term(w.toks, k) || w.p.lex.of(&w.toks[k]).lists.has(listLinking)) {
		k--
	}
	return k < 0 || w.toks[k].kind != number
}

// tall tells whether the house number is higher than any pressure and no year.
func (w *streetWalk) tall() bool {
	n := w.toks[w.from-1].num
	return n != nil && n.value > highestPressure && !(len(n.digits) == 4 && year(n.value))
}

// toward tells whether a letter of the compass stands between a house number and the name: "212 n
// depot", where "118 n falling" goes on. A number of one or two digits has a name behind it that nobody
// uses at work: "19 w aster".
func (w *streetWalk) toward() bool {
	n, name := w.toks[w.from-1].num, &w.toks[w.name] // no number behind the letter of "1A S Elm"
	return w.dir != "" && n != nil && (len(n.digits) > 2 || !w.p.lex.known(name.text) && !plural(name.text)) && !w.measured() &&
		len(name.text) > 3 && !strings.HasSuffix(name.text, "ing")
}

// suffixAlone tells whether the word at k, right after the house number, is a suffix that is the whole name
// of a street, which something leads to or the line begins with: "at 12 ridge", "2 ridge, laundry 67".
func (w *streetWalk) suffixAlone(k int) bool {
	if k != w.name || !w.p.strongSuffix(w.toks[k].text) || w.p.lex.of(&w.toks[k]).lists.has(listRooms) {
		return false
	}
	i := w.from - 1
	return i <= 0 || w.toks[i-1].kind == mark || w.p.lex.of(&w.toks[i-1]).lists.has(listLeadsToHouse) || oneOf(w.toks[i-1].text, "its", "thats")
}

// bareWord tells whether the word at k can be a part of a name that has no suffix.
func (w *streetWalk) bareWord(k, words int, proper bool) bool {
	p, t := w.p, &w.toks[k]
	if p.lex.of(t).never {
		return false
	}
	if words == 0 && !t.caps && !p.lex.of(t).heads && t.text != "main" && !saint(t.text) && p.term(w.toks, k) {
		return false // "92 rear tap": so begin most words behind a number that is no house's
	}
	if words > 0 && p.lex.of(t).lists.has(listLinking) && p.lex.of(&w.toks[w.name]).heads && k+1 < len(w.toks) && w.toks[k+1].kind == word {
		return true // "2019 vista del sol"
	}
	if words == 0 && t.text == "the" && w.proper(k) && k+1 < len(w.toks) && w.toks[k+1].kind == word && w.proper(k+1) &&
		!p.term(w.toks, k+1) && !p.stop(w.toks, k+1) {
		return true // "40 The Strand"
	}
	if words == 0 && saint(t.text) && k+1 < len(w.toks) && w.toks[k+1].kind == word && w.toks[k+1].text != "side" {
		return true // "1440 st marys"
	}
	if words == 0 && w.proper(k) && w.inCapitals(k) {
		return true // "58 Lower Parade"
	}
	if t.text == "main" && words == 0 && w.houseOnMain(k) {
		return true
	}
	if words == 1 && len(t.text) == 1 && oneOf(w.toks[k-1].text, "ave", "avenue") && !initialed(w.toks, k) {
		return true // "1600 Ave K kitchen"
	}
	ends := k+1 >= len(w.toks) || w.toks[k+1].kind == mark || p.lex.of(&w.toks[k+1]).never || p.lex.of(&w.toks[k+1]).unit != ""
	if words == 0 && p.lex.of(t).heads && k+1 < len(w.toks) && w.toks[k+1].kind == word && !p.lex.of(&w.toks[k+1]).never {
		return true // "2019 vista del sol"
	}
	if p.lex.of(t).unit != "" && words > 0 && !p.gaz.plainUnit(w.toks, k) {
		return false // "66 Rio Frio Apt 9"
	}
	if node, _ := p.lex.find(w.toks, k, k+1); words > 0 && p.lex.of(&w.toks[k-1]).heads && !p.lex.kinds(node).meets(placed) {
		return true // "3310 rio seco porfavor"
	}
	if p.term(w.toks, k) {
		// "66 Rio Frio Apt 9", where "66 Alder Kitchen" is a test point
		return w.proper(k) && words > 0 && k+2 < len(w.toks) && p.lex.of(&w.toks[k+1]).unit != "" && !p.gaz.plainUnit(w.toks, k+1)
	}
	if initialed(w.toks, k) {
		return false
	}
	if w.proper(k) {
		// "5 Heron Gate from 92"; "12 Alder Gate 4410" is a gate's code
		return !p.stop(w.toks, k) || words > 0 &&
			!(k+1 < len(w.toks) && (w.toks[k+1].kind == number || w.toks[k+1].text == ":" && k+2 < len(w.toks) && w.toks[k+2].kind == number))
	}
	if words > 0 && strings.HasSuffix(t.text, "ing") {
		return false // "hows 31 larkspur looking"
	}
	if proper && !p.lex.of(t).lists.has(listLinking) {
		return false // "3310 Rio Seco please"
	}
	meaning := func() bool {
		node, _ := p.lex.find(w.toks, k, k+1)
		return p.lex.kinds(node).meets(terms) || p.lex.kinds(node).meets(requests)
	}
	if words == 0 && w.everydayName(k) {
		return true
	}
	if p.stop(w.toks, k) {
		return words > 0 && (k+1 >= len(w.toks) || w.toks[k+1].text == "\n" || p.lex.of(&w.toks[k+1]).never) && !p.lex.of(t).lists.has(listLinking) &&
			len(t.text) > 3 && !meaning()
	}
	if vowelless(t.text) && len(t.text) > 2 && !strings.Contains(t.text, "y") || len(t.text) == 1 && words == 0 && w.dir == "" {
		return false
	}
	if p.lex.of(t).unit != "" && !p.gaz.plainUnit(w.toks, k) {
		return false // "605 Coral apto 9"
	}
	if p.lex.known(t.text) || p.lex.of(t).right {
		// "14 heron gate", "812 otter", "212 n depot": a common word may end a name
		return (words > 0 || w.tall() && p.lex.of(t).right || w.toward() || w.suffixAlone(k)) && !meaning() &&
			(ends || words == 0 && w.dir != "" && (w.toldOf(k+1) || w.pointNumber(k+1)))
	}
	if len(t.text) > 6 && strings.HasSuffix(t.text, "ly") {
		return false // "set at 50 supposedly"
	}
	if words == 0 && len(t.text) < 3 && w.dir == "" {
		return false // "seventy fi-- seventy six"
	}
	if words == 0 && !w.tall() && core(p.lex.of(t).suffix) {
		return false // "the 2 lane road"
	}
	term, _ := p.joined(t.text)
	return term == 0 && (words == 0 && w.tall() || !p.slipOfTerm(t.text)) // "66 frontbib", "67 befor"
}

// everydayName tells whether the word at k is one of every day that many streets are named after, and stands
// as a name does: at the end of its clause, before a tap with its pressure, or behind a long number before
// what is told of the house: "kitchen 63, 12 hope", "250 hope kitchen 63", "250 pecan has no tank".
func (w *streetWalk) everydayName(k int) bool {
	if w.behindTap(k) {
		return true
	}
	if !w.p.lex.of(&w.toks[k]).lists.has(listEverydayStreet) {
		return false
	}
	n := w.toks[w.from-1].num
	return k+1 >= len(w.toks) || w.toks[k+1].kind == mark || w.pointNumber(k+1) ||
		n != nil && len(n.digits) > 2 && w.toldOf(k+1)
}

// behindTap tells whether the word at k, which nobody uses at work, ends a line behind a tap that has a
// pressure of its own, or behind a comma after such a pressure, or heads a line: "58-62 kitchen 44 levee",
// "66 kitchen, 44 levee", "44 levee: 120 in".
func (w *streetWalk) behindTap(k int) bool {
	t, before := &w.toks[k], w.from-2
	if k != w.name || !w.p.lex.of(t).right || w.p.lex.known(t.text) || len(t.text) < 4 || plural(t.text) {
		return false
	}
	if before < 0 {
		return k+1 < len(w.toks) && w.toks[k+1].text == ":"
	}
	if k+1 < len(w.toks) && !oneOf(w.toks[k+1].text, "\n", ".") {
		return false
	}
	if w.toks[before].text == "," {
		return before > 1 && (w.toks[before-1].kind == number || w.toks[before-2].kind == number)
	}
	return w.toks[before].kind == word && w.p.placedAt(w.toks, before) && !w.measured()
}

// inCapitals tells whether words with capitals, up to three, fill the clause from k on,
// and that the last of them means nothing else, though the first one may: "58 Lower
// Parade", "640 Old Quarry Steps".
func (w *streetWalk) inCapitals(k int) bool {
	end := k
	for end < len(w.toks) && w.toks[end].kind == word && w.proper(end) {
		end++
	}
	if end < k+2 || end > k+3 || end < len(w.toks) && w.toks[end].kind != mark {
		return false
	}
	return !w.p.term(w.toks, end-1) && !w.p.stop(w.toks, end-1) && !w.p.lex.of(&w.toks[end-1]).never
}

// requests are the classes of what is asked or planned.
var requests = setOf(cAsk, cDo, cQuestion, cPresent, cAbsent, cTarget)

// placed are the classes of words that a pressure is told of, never a street's name.
var placed = setOf(cPoint, cPlace, cBibb, cItem, cState, cUnit, cNow, cBefore, cAfter)

// ofNumbers are the classes of words that tell something of a number before them.
var ofNumbers = setOf(cPoint, cPlace, cBibb, cFuel, cMaterial, cUnit, cBefore, cAfter, cNow, cPeak, cStatic, cFlowing)

// slipOfTerm tells whether a word may be a term of the trade written wrong.
func (p *Parser) slipOfTerm(w string) bool {
	var room [8]int32
	for _, id := range p.lex.candidates(w, room[:0]) {
		if p.lex.kinds(p.lex.first[id]).meets(terms) && levenshtein.ComputeDistance(w, p.lex.words[id]) < 3 {
			return true
		}
	}
	return false
}

// houseOnMain tells whether the house number before the "main" at k is no pressure of the water
// main: the name has a capital, another pressure follows, or the number is too large or has a
// letter of the compass behind it: "12 Main", "72 main kitchen 64", "1201 w main".
func (w *streetWalk) houseOnMain(k int) bool {
	n := w.toks[w.from-1].num
	switch {
	case w.proper(k) && (k+1 >= len(w.toks) || w.toks[k+1].kind == mark):
		return true
	case w.proper(k), w.pointNumber(k + 1):
		return !w.measured()
	}
	return n != nil && n.integer && len(n.digits) >= 3 && (w.dir != "" || n.value > highestPressure)
}

// initialed tells whether the letter at k is the initial of a test point between two
// pressures: "F 84 R 66".
func initialed(toks []token, k int) bool {
	return len(toks[k].text) == 1 && k+1 < len(toks) && toks[k+1].kind == number && toks[k-1].kind == number &&
		toks[k-1].num.value <= highestPressure
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
