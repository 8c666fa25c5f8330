package intents

import "strconv"

// Runs of number words that hold more than one number.

// regroup gives the last two groups of a run to the house number when a street
// follows: "sixty six thirty three eighteen kessler drive" is 66 at 3318.
func regroup(toks []token, out []chunk) []chunk {
	n := len(out)
	if n == 1 {
		return cutInTwo(toks, out)
	}
	if n < 2 || out[n-1].decimals > 0 || out[n-1].value < 10 || out[n-1].value > 99 || out[n-2].value < 1000 ||
		out[n-2].value > 9999 || !streetFollows(toks, out[n-1].to) {
		return out
	}
	a, b := &out[n-2], &out[n-1]
	first, k := two(toks, a.from, a.to)
	second, l := two(toks, a.from+k, a.to)
	if k == 0 || l == 0 || a.from+k+l != a.to || first < 20 {
		return out
	}
	b.value += float64(second * 100)
	b.digits, b.from = strconv.Itoa(int(b.value)), a.from+k
	a.value, a.digits, a.to = float64(first), strconv.Itoa(first), a.from+k
	return out
}

// cutInTwo cuts the only number of a message in two when a word of measuring leads to it
// and another word follows: "kitchen sixty six twenty seven hemlock" is 66 at 27.
func cutInTwo(toks []token, out []chunk) []chunk {
	c := out[0]
	if c.value < 2000 || c.value > 9999 || c.decimals > 0 || c.from == 0 || c.to >= len(toks) {
		return out
	}
	if before := &toks[c.from-1]; before.kind != word || leadsToHouse(before.text) || toks[c.to].kind != word {
		return out
	}
	if year(c.value) && !streetFollows(toks, c.to) {
		return out // "tank was put in twenty sixteen customer says ..."
	}
	first, k := two(toks, c.from, c.to)
	second, l := two(toks, c.from+k, c.to)
	if k == 0 || l == 0 || c.from+k+l != c.to || first < 20 || second < 10 {
		return out
	}
	for i := range toks {
		if _, spoken := numberWords[toks[i].text]; (i < c.from || i >= c.to) && (toks[i].kind == number || spoken && !lone(toks[i].text)) {
			return out
		}
	}
	return append(out[:0], chunk{value: float64(first), digits: strconv.Itoa(first), from: c.from, to: c.from + k},
		chunk{value: float64(second), digits: strconv.Itoa(second), from: c.from + k, to: c.to})
}

// leadsToHouse tells whether a house number follows a word rather than a pressure.
func leadsToHouse(s string) bool {
	switch s {
	case "at", "to", "for", "from", "of", "about", "on", "by", "site", "address", "location", "job", "house",
		"number", "this", "is", "its", "im", "de", "del", "en", "el", "la", "casa", "a", "over", "okay", "ok",
		"hey", "so", "uh", "um", "and":
		return true
	}
	return false
}

// streetFollows tells whether a spoken street follows within a few words.
func streetFollows(toks []token, from int) bool {
	for k := from; k < len(toks) && k < from+4 && toks[k].kind == word; k++ {
		switch toks[k].text {
		case "street", "st", "drive", "dr", "road", "rd", "lane", "ln", "avenue", "ave", "court", "ct", "circle",
			"way", "place", "pl", "boulevard", "blvd", "terrace", "trail", "parkway":
			return k > from
		}
	}
	return false
}

// pronoun tells whether the "one" at i is no number: "the front hose bib one eighteen
// and the back one sixty three", where the tap was named before.
func pronoun(toks []token, i int) bool {
	if toks[i].text == "one" && i > 0 && toks[i-1].text == "next" {
		return true // "next one eighty one sixty five arroyo bend"
	}
	if toks[i].text == "one" && i > 0 && i+2 < len(toks) && (toks[i-1].text == "that" || toks[i-1].text == "this") && countable(toks[i+2].text) {
		return true // "push that one two weeks"
	}
	if toks[i].text != "one" || i < 2 {
		return false
	}
	if toks[i-1].text == "last" {
		return true // "scratch that last one seventy one"
	}
	if toks[i-2].text != "the" || i+1 < len(toks) && toks[i+1].text == "oh" {
		return false // "the side one oh two"
	}
	if i > 3 && (toks[i-3].text == "on" || toks[i-3].text == "at" || toks[i-3].text == "in") && tapWord(toks[i-4].text) {
		return false // "the bib on the side one eighteen": there is no other
	}
	switch toks[i-1].text {
	case "back", "front", "rear", "side", "other", "second", "first":
	default:
		return false
	}
	for k := i - 3; k >= 0 && k >= i-9; k-- {
		if tapWord(toks[k].text) {
			return true
		}
	}
	return false
}

// tapWord tells whether a word names a tap that has a front, a rear and sides.
func tapWord(s string) bool {
	switch s {
	case "bib", "bibb", "spigot", "tap", "faucet", "cock":
		return true
	}
	return false
}
