package intents

import "strings"

// listNumberedWays are the words that highwayKind knows the name of a numbered way to begin with.
var listNumberedWays = listOf("begins a numbered way")

// highway reads "CR 119", "US Hwy 30", "State Highway 16".
func (p *Parser) highway(toks []token, j int) (street, bool) {
	if !p.lex.of(&toks[j]).lists.has(listNumberedWays) {
		return street{}, false
	}
	kind, k := highwayKind(toks, j)
	if kind == "" || k >= len(toks) {
		return street{}, false
	}
	k = pastMark(toks, k, ".")
	k = pastMark(toks, k, "-", "#")
	if k >= len(toks) || toks[k].kind != number || !toks[k].num.integer || len(toks[k].num.digits) > 4 {
		return street{}, false
	}
	s := street{line: kind + " " + toks[k].num.digits, to: k + 1, score: 6, suffixed: true}
	if s.to < len(toks) && toks[s.to].glued && toks[s.to].kind == word && len(toks[s.to].raw) == 1 {
		s.line += strings.ToUpper(toks[s.to].raw)
		s.to++
	}
	if s.to < len(toks) && toks[s.to].kind == word {
		if d := p.lex.of(&toks[s.to]).directional; d != "" &&
			(toks[s.to].caps || len(toks[s.to].text) > 2 || s.to+1 == len(toks) || toks[s.to+1].kind == mark) {
			s.line += " " + d
			s.to++
		}
	}
	return s, true
}

// pastMark steps over one of some marks at token k.
func pastMark(toks []token, k int, marks ...string) int {
	if k < len(toks) && toks[k].kind == mark && oneOf(toks[k].text, marks...) {
		return k + 1
	}
	return k
}

// wayOf returns a numbered road as it is written, by a word for one; "" for no such word.
func wayOf(word string) string {
	switch word {
	case "road", "rd":
		return "Road"
	case "highway", "hwy", "hiway", "highwy", "hway":
		return "Highway"
	case "route", "rte", "rt":
		return "Route"
	}
	return ""
}

// roadOwners are whose a numbered road can be: "Forest Road 12".
var roadOwners = map[string]string{"township": "Township Road", "ranch": "Ranch Road", "forest": "Forest Road", "farm": "Farm Road"}

// wayOrOwner tells whether a word begins the name of a numbered way that stands on its own: "highway", "county".
func wayOrOwner(word string) bool {
	return wayOf(word) != "" || oneOf(word, "state", "us", "county", "co", "cnty", "cr", "sh", "sr")
}

// highwayKind reads the kind of a numbered way, "" for none; next is the token behind it.
func highwayKind(toks []token, j int) (kind string, next int) {
	at := func(k int) string {
		if k < len(toks) && toks[k].kind == word {
			return toks[k].text
		}
		return ""
	}
	way := func() string { return wayOf(at(j + 1)) }
	switch a := at(j); a {
	case "county", "co", "cnty", "cty", "cnt":
		k := pastMark(toks, j+1, ".")
		if w := wayOf(at(k)); w != "" {
			return "County " + w, k + 1
		}
	case "state":
		if w := way(); w != "" {
			return "State " + w, j + 2
		}
	case "st":
		if w := way(); w == "Highway" || w == "Route" {
			return "State " + w, j + 2
		}
	case "us":
		if w := way(); w == "Highway" || w == "Route" {
			return "US " + w, j + 2
		}
		return "US Highway", j + 1
	case "cr":
		return "County Road", j + 1
	case "sh":
		return "State Highway", j + 1
	case "sr":
		return "State Route", j + 1
	case "fm":
		return "FM", j + 1
	case "old":
		if kind, next = highwayKind(toks, j+1); kind != "" && wayOrOwner(at(j+1)) {
			return "Old " + kind, next // "6600 Old Highway 20"
		}
		return "", j
	case "interstate":
		return "Interstate", j + 1
	case "i":
		if j+1 < len(toks) && toks[j+1].text == "-" {
			return "Interstate", j + 1
		}
	default:
		if w := wayOf(a); w == "Highway" || w == "Route" {
			return w, j + 1
		}
		if way() == "Road" && roadOwners[a] != "" {
			return roadOwners[a], j + 2
		}
		if a == "farm" && at(j+1) == "to" && at(j+2) == "market" {
			if wayOf(at(j+3)) == "Road" {
				return "FM", j + 4
			}
			return "FM", j + 3
		}
	}
	return "", j
}
