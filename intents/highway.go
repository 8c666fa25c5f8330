package intents

import "strings"

// highway reads "CR 119", "US Hwy 30", "State Highway 16".
func (p *Parser) highway(toks []token, j int) (street, bool) {
	w := func(k int) string {
		if k < len(toks) && toks[k].kind == word {
			return toks[k].text
		}
		return ""
	}
	isRoad := func(s string) bool { return s == "road" || s == "rd" }
	isHighway := func(s string) bool {
		return s == "highway" || s == "hwy" || s == "hiway" || s == "highwy" || s == "hway"
	}
	isRoute := func(s string) bool { return s == "route" || s == "rte" || s == "rt" }
	kind, k := "", j
	dot := func() {
		if k < len(toks) && toks[k].kind == mark && toks[k].text == "." {
			k++
		}
	}
	switch a := w(j); {
	case (a == "county" || a == "co" || a == "cnty" || a == "cty" || a == "cnt") && j+1 < len(toks):
		k = j + 1
		dot()
		switch b := w(k); {
		case isRoad(b):
			kind = "County Road"
		case isHighway(b):
			kind = "County Highway"
		case isRoute(b):
			kind = "County Route"
		}
		k++
	case a == "cr":
		kind, k = "County Road", j+1
	case a == "state" || a == "st" && (isHighway(w(j+1)) || isRoute(w(j+1))):
		switch b := w(j + 1); {
		case isRoad(b):
			kind = "State Road"
		case isHighway(b):
			kind = "State Highway"
		case isRoute(b):
			kind = "State Route"
		}
		k = j + 2
	case a == "sh":
		kind, k = "State Highway", j+1
	case a == "sr":
		kind, k = "State Route", j+1
	case a == "us":
		k = j + 1
		kind = "US Highway"
		if isHighway(w(k)) {
			k++
		} else if isRoute(w(k)) {
			kind = "US Route"
			k++
		}
	case a == "fm":
		kind, k = "FM", j+1
	case isHighway(a):
		kind, k = "Highway", j+1
	case isRoute(a):
		kind, k = "Route", j+1
	case a == "interstate" || a == "i" && k+1 < len(toks) && toks[k+1].text == "-":
		kind, k = "Interstate", j+1
	case a == "township" && isRoad(w(j+1)):
		kind, k = "Township Road", j+2
	case a == "ranch" && isRoad(w(j+1)):
		kind, k = "Ranch Road", j+2
	case a == "forest" && isRoad(w(j+1)):
		kind, k = "Forest Road", j+2
	case a == "farm" && w(j+1) == "road":
		kind, k = "Farm Road", j+2
	case a == "farm" && w(j+1) == "to" && w(j+2) == "market":
		kind, k = "FM", j+3
		if isRoad(w(k)) {
			k++
		}
	}
	if kind == "" || k >= len(toks) {
		return street{}, false
	}
	dot()
	if k < len(toks) && toks[k].kind == mark && (toks[k].text == "-" || toks[k].text == "#") {
		k++
	}
	if k >= len(toks) || toks[k].kind != number || !toks[k].num.integer || len(toks[k].num.digits) > 4 {
		return street{}, false
	}
	s := street{line: kind + " " + toks[k].num.digits, to: k + 1, score: 6, suffixed: true}
	if s.to < len(toks) && toks[s.to].glued && toks[s.to].kind == word && len(toks[s.to].raw) == 1 {
		s.line += strings.ToUpper(toks[s.to].raw)
		s.to++
	}
	if s.to < len(toks) && toks[s.to].kind == word {
		if d, ok := p.gaz.directional[toks[s.to].text]; ok && (toks[s.to].caps || len(toks[s.to].text) > 2) {
			s.line += " " + d
			s.to++
		}
	}
	return s, true
}
