package intents

import "strconv"

// Runs of number words that hold more than one number.

// regroup gives the last two groups of a run to the house number when a street
// follows: "sixty six thirty three eighteen kessler drive" is 66 at 3318.
func regroup(toks []token, out []chunk) []chunk {
	n := len(out)
	if n < 2 || out[n-1].decimals > 0 || out[n-1].value < 10 || out[n-1].value > 99 || out[n-2].value < 1000 || out[n-2].value > 9999 || !streetFollows(toks, out[n-1].to) {
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

// streetFollows tells whether a spoken street follows within a few words.
func streetFollows(toks []token, from int) bool {
	for k := from; k < len(toks) && k < from+4 && toks[k].kind == word; k++ {
		switch toks[k].text {
		case "street", "st", "drive", "dr", "road", "rd", "lane", "ln", "avenue", "ave", "court", "ct", "circle", "way", "place", "pl", "boulevard", "blvd", "terrace", "trail", "parkway":
			return k > from
		}
	}
	return false
}

// pronoun tells whether the "one" at i is no number: "the front hose bib one eighteen
// and the back one sixty three", where the tap was named before.
func pronoun(toks []token, i int) bool {
	if toks[i].text != "one" || i < 2 || toks[i-2].text != "the" {
		return false
	}
	switch toks[i-1].text {
	case "back", "front", "rear", "side", "other", "second", "first":
	default:
		return false
	}
	for k := i - 3; k >= 0 && k >= i-9; k-- {
		switch toks[k].text {
		case "bib", "bibb", "spigot", "tap", "faucet", "cock":
			return true
		}
	}
	return false
}
