package intents

import (
	"bufio"
	"fmt"
	"strings"
)

// address is one street line found in a message.
type address struct {
	from, to int // tokens, the unit and the town among them
	house    int // token of the house number
	line     string
	town     string
	postcode string
	score    float64
	suffixed bool
	quoted   bool
	unitFrom int // a unit typed before the house number; -1 if none
	unitTo   int
}

// gazetteer holds the tables of USPS Publication 28.
type gazetteer struct {
	suffix      map[string]string // "avenue" and "av" -> "Ave"
	standard    map[string]bool   // the standard abbreviations: "ave"
	directional map[string]string // "north" -> "N"
	unit        map[string]string // "apartment" -> "Apt"
}

func newGazetteer() (*gazetteer, error) {
	f, err := lexiconFiles.Open("lexicon/usps.tsv")
	if err != nil {
		return nil, err
	}
	defer f.Close()
	g := &gazetteer{suffix: map[string]string{}, standard: map[string]bool{}, directional: map[string]string{}, unit: map[string]string{}}
	sc := bufio.NewScanner(f)
	sc.Scan() // head line
	for sc.Scan() {
		c := strings.Split(sc.Text(), "\t")
		if len(c) < 4 {
			return nil, fmt.Errorf("lexicon/usps.tsv: %q has too few columns", sc.Text())
		}
		primary, std := strings.ToLower(c[0]), title(c[2])
		switch c[3] {
		case "suffix":
			g.suffix[primary], g.suffix[strings.ToLower(c[2])] = std, std
			g.standard[strings.ToLower(c[2])] = true
			for v := range strings.SplitSeq(c[1], ",") {
				if v = strings.ToLower(strings.TrimSpace(v)); v != "" && !g.standard[v] && g.suffix[v] == "" {
					g.suffix[v] = std // "mdw" is Meadow's own, whatever Meadows claims
				}
			}
		case "directional":
			g.directional[primary], g.directional[strings.ToLower(c[2])] = c[2], c[2]
		case "unit":
			if len(c) > 4 && c[4] == "yes" {
				g.unit[primary], g.unit[strings.ToLower(c[2])] = std, std
			}
		}
	}
	for w, std := range map[string]string{"apto": "Apt", "apmt": "Apt", "appt": "Apt", "apart": "Apt", "depto": "Apt", "departamento": "Apt", "apartamento": "Apt", "unidad": "Unit", "edificio": "Bldg", "lote": "Lot", "suit": "Ste", "un": "Unit", "bld": "Bldg", "espacio": "Spc"} {
		if w != "un" {
			g.unit[w] = std
		}
	}
	for _, w := range []string{"key", "front", "rear", "side", "stop", "slip", "pier", "dept"} {
		delete(g.unit, w) // on site these are other things
	}
	return g, nil
}

// ambiguous suffixes are ordinary words as well: alone they make no street.
var ambiguousSuffix = map[string]bool{
	"way": true, "run": true, "runs": true, "pass": true, "park": true, "parks": true, "point": true, "points": true, "spring": true, "springs": true, "bend": true,
	"well": true, "wells": true, "drive": true, "drives": true, "court": true, "view": true, "views": true, "walk": true, "walks": true, "key": true, "keys": true, "mill": true, "mills": true, "lock": true, "locks": true,
	"port": true, "ports": true, "union": true, "unions": true, "hill": true, "hills": true, "fall": true, "falls": true, "garden": true, "gardens": true, "green": true, "greens": true, "lake": true, "lakes": true, "land": true, "light": true, "lights": true,
	"mount": true, "path": true, "paths": true, "pike": true, "rest": true, "row": true, "shore": true, "station": true, "stream": true, "summit": true, "track": true, "tracks": true, "trace": true, "bridge": true, "center": true, "centers": true, "circle": true,
	"club": true, "common": true, "corner": true, "corners": true, "course": true, "field": true, "fields": true, "flat": true, "flats": true, "ford": true, "forest": true, "fork": true, "forks": true, "gateway": true, "island": true, "junction": true,
	"loop": true, "loops": true, "mission": true, "neck": true, "oval": true, "passage": true, "plain": true, "plains": true, "plaza": true, "rapids": true, "rapid": true, "river": true, "route": true, "spur": true, "square": true, "street": true, "tunnel": true, "village": true,
	"bottom": true, "branch": true, "dam": true, "divide": true, "extension": true, "st": false, "crossing": true, "cross": true, "estate": true, "camp": true, "cape": true, "beach": true, "burg": true, "cent": true, "center's": true, "mall": true, "manor": true, "vis": true, "via": true,
	"stravenue": true, "str": false, "lf": true, "div": true, "est": true, "ext": true, "fld": true, "fort": true, "frt": true, "frk": true, "ft": true, "mt": true, "knob": true, "is": true, "pt": true, "pr": true, "rd": false, "in": true, "un": true, "st.": false, "sta": true, "cp": true, "br": true, "btm": true, "rst": true, "ml": true, "ln": false, "ldg": true, "lks": true, "lk": true, "gln": true, "glen": true, "grn": true, "vly": true, "wl": true, "wls": true, "plz": false, "ps": true, "skwy": false, "all": true, "bluff": false, "dale": true, "grove": false, "cliff": true, "haven": true, "heights": false, "hollow": false, "harbor": true, "rad": true, "arc": true, "ramp": true, "ranch": true, "lodge": true, "valley": true, "vista": true, "ville": true, "via.": true, "turn": true, "cir": false, "terrace": false, "landing": true, "shoal": true, "parkway": false, "crest": true, "curve": true, "track.": true,
}

// never a suffix here, whatever the table says: everyday abbreviations of the trade
var noSuffix = map[string]bool{"frt": true, "ft": true, "fr": true, "is": true, "br": true, "in": true, "all": true, "mt": true, "pr": true, "un": true, "ps": true, "str": true, "cp": true, "sta": true, "lf": true, "ml": true, "vis": true, "rst": true, "strm": true, "btm": true, "bot": true, "cent": true, "wl": true, "hbr": true, "rad": true}

var spanishStreet = map[string]bool{"calle": true, "via": true, "avenida": true, "av": true, "ave": true, "camino": true, "paseo": true, "privada": true, "calzada": true, "callejon": true, "cerrada": true, "carretera": true, "boulevard": true, "bulevar": true, "circuito": true, "andador": true, "prolongacion": true, "vereda": true, "rincon": true, "senda": true, "sendero": true, "calz": true, "priv": true, "cda": true, "rua": true, "glorieta": true, "pasaje": true, "ruta": true, "cjon": true, "loma": true, "placita": true}

// title writes a word in title case when it was typed all in one case.
func title(w string) string {
	upper, lower := false, false
	for _, r := range w {
		s := string(r)
		if strings.ToUpper(s) != strings.ToLower(s) {
			if s == strings.ToUpper(s) {
				upper = true
			} else {
				lower = true
			}
		}
	}
	if upper && lower {
		return w
	}
	up := true
	var b strings.Builder
	for _, r := range w {
		if up {
			b.WriteString(strings.ToUpper(string(r)))
		} else {
			b.WriteString(strings.ToLower(string(r)))
		}
		up = r == '-'
		if r >= '0' && r <= '9' {
			up = false
		}
	}
	return b.String()
}

// houseNumber tells whether a number token can be a house number.
func houseNumber(t *token) bool {
	n := t.num
	if n == nil || n.time || n.phone || n.money || n.percent || n.negative || n.apos || n.ordinal {
		return false
	}
	if !n.integer {
		return strings.Contains(n.digits, " ") // 318 1/2
	}
	return n.value >= 1 && len(n.digits) <= 6 && n.digits[0] != '0'
}

// street is how a street's name was read after its house number.
type street struct {
	line     string
	to       int // token after it
	score    float64
	suffixed bool
}

// addresses finds the street lines in toks.
func (p *Parser) addresses(toks []token) []address {
	var out []address
	for i := 0; i < len(toks); i++ {
		t := &toks[i]
		switch {
		case t.kind == number && houseNumber(t):
			if a, ok := p.addressAt(toks, i); ok {
				out = append(out, a)
				i = max(i, a.to-1)
			}
		case t.kind == word && spanishStreet[t.text]:
			if a, ok := p.spanishAddress(toks, i); ok {
				out = append(out, a)
				i = a.to - 1
			}
		}
	}
	return out
}

// term tells whether a token alone is a term of the trade.
func (p *Parser) term(toks []token, k int) bool {
	tags, n := p.lex.match(toks, k, k+1)
	if n == 0 {
		return false
	}
	for _, t := range tags {
		switch p.classes[t.class] {
		case cPoint, cPlace, cBibb, cItem, cState, cCond, cUnit, cSym, cFuel, cMaterial, cDid, cNeg, cPeak, cBefore, cAfter, cNow, cStatic, cFlowing, cOff, cOn, cRelief, cFixture, cPart, cBurner:
			return true
		}
	}
	return false
}

func (p *Parser) addressAt(toks []token, i int) (address, bool) {
	a := address{from: i, house: i, unitFrom: -1}
	num := toks[i].num.digits
	j := i + 1
	if i > 0 && toks[i-1].text == "#" && toks[i-1].kind == mark && toks[i].glued {
		return a, false
	}
	// 123B Elm, 45-12 31st Ave
	if j < len(toks) && toks[j].glued && toks[j].kind == word && len(toks[j].raw) == 1 && (toks[j].raw[0] < 'f' || toks[j].caps) && isLetter(toks[j].raw[0]) {
		num += strings.ToUpper(toks[j].raw)
		j++
	} else if j+1 < len(toks) && toks[j].text == "-" && toks[j].glued && toks[j+1].glued && toks[j+1].kind == number && toks[j+1].num.integer {
		s, ok := p.street(toks, j+2, false)
		if !ok || !s.suffixed || s.score < 4 {
			return a, false
		}
		num += "-" + toks[j+1].num.digits
		j += 2
	}
	if j >= len(toks) || toks[j].quoted != toks[i].quoted {
		return a, false
	}
	if toks[j].glued && j == i+1 {
		return a, false // 62psi, 9080#
	}
	s, ok := p.street(toks, j, toks[i].num.words)
	if !ok {
		return a, false
	}
	a.line, a.to, a.suffixed = num+" "+s.line, s.to, s.suffixed
	a.quoted = toks[i].quoted
	a.score = s.score
	if n := len(toks[i].num.digits); n == 4 && year(toks[i].num.value) && toks[i].num.value < 2035 && !s.suffixed {
		a.score -= 0.5
		if i > 0 {
			switch toks[i-1].text {
			case "a", "an", "from", "in", "since", "del", "de", "dated", "tag", "installed", "is", "new", "old", "year", "ano", "the", "late", "early", "htr", "heater", "wh", "prv", "boiler":
				a.score -= 3
			}
			if p.term(toks, i-1) {
				a.score -= 2
			}
		}
	} else if n >= 4 {
		a.score += 2
	} else if n == 3 {
		a.score++
	}
	if i == 0 || toks[i-1].kind == mark && toks[i-1].text == "\n" {
		a.score++
	}
	if i > 0 {
		switch prev := toks[i-1].text; prev {
		case "at", "for", "of", "site", "addr", "address", "en", "de", "from", "domicilio", "direccion", "location", "loc", "about", "casa", "job", "over", "on", "del", "para", "sitio":
			a.score += 2
		case "to", "a":
			a.score += 0.5
		case ":":
			if i > 1 {
				switch toks[i-2].text {
				case "site", "addr", "address", "location", "loc", "domicilio", "direccion", "job", "casa", "sitio", "where", "house", "property", "service", "customer":
					a.score += 4
				default:
					a.score--
				}
			}
		case "is", "reads", "reading", "shows", "=", "got", "psi", "around", "was", "set", "marca", "lectura", "show":
			a.score--
			if i > 1 && (toks[i-2].text == "this" || toks[i-2].text == "address") {
				a.score += 3
			}
		case ",", ".", "\n", "-", ";", "(":
			a.score += 0.5
		case "unit", "apt", "lot", "code", "truck", "ticket", "job#", "invoice", "route", "highway", "hwy", "road", "phone", "year", "since", "or":
			a.score -= 4
		}
	}
	if a.to >= len(toks) || toks[a.to].kind == mark {
		a.score++
	}
	a.unit(p, toks)
	a.townAfter(p, toks)
	return a, a.score >= 3
}

// street reads a street's name at toks[j].
func (p *Parser) street(toks []token, j int, spoken bool) (street, bool) {
	g := p.gaz
	if j >= len(toks) {
		return street{}, false
	}
	if s, ok := p.highway(toks, j); ok {
		return s, true
	}
	start := j
	var parts []string
	dir := ""
	if t := toks[j]; t.kind == word && j+1 < len(toks) {
		if d, ok := g.directional[t.text]; ok {
			k := j + 1
			if toks[k].text == "." {
				k++
			}
			if k < len(toks) && toks[k].text != "side" {
				if s, ok := p.highway(toks, k); ok {
					s.line = d + " " + s.line
					return s, true
				}
				if toks[k].kind == word || toks[k].kind == number {
					dir = d
					j = k
				}
			}
		}
	}
	if t := toks[j]; t.kind == word && spanishStreet[t.text] && t.text != "ave" && t.text != "via" && t.text != "boulevard" || toks[j].text == "via" && j+1 < len(toks) && toks[j+1].kind == word && !p.stop(toks, j+1) {
		return p.spanishName(toks, j, dir)
	}
	// the run of words that may be a name
	end := j
	caps, terms, plain, stops := 0, 0, 0, 0
	best := street{score: -99}
	words := 0
	lastSuffix := -1
	for end < len(toks) && end-j < 6 {
		t := &toks[end]
		if t.quoted != toks[start].quoted {
			break
		}
		if t.kind == mark {
			if t.text == "." && t.glued && end > j && len(toks[end-1].text) <= 4 && end+1 < len(toks) && toks[end+1].kind == word && abbreviated(toks[end-1].text) && lastSuffix != end-1 {
				end++
				continue
			}
			if t.text == "-" && t.glued && end+1 < len(toks) && toks[end+1].glued && toks[end+1].kind == word && end > j {
				end++
				continue
			}
			break
		}
		if t.kind == number {
			if t.num.words && t.caps && !spoken || t.num.ordinal {
				words++
				end++
				continue
			}
			if n, ok := ordinalAt(toks, end); ok {
				words++
				end += n
				continue
			}
			break
		}
		std, isSuffix := g.suffix[t.text]
		if noSuffix[t.text] || t.text == "plz" && lastSuffix == end-1 && words > 0 {
			isSuffix = false
		}
		if _, unit := g.unit[t.text]; unit && isSuffix && end+1 < len(toks) && toks[end+1].kind == number {
			isSuffix = false // "trailer 4"
		}
		if t.text == "st" && words == 0 && dir == "" {
			isSuffix = false // Saint
		}
		if isSuffix && (words > 0 || dir != "") {
			weak := ambiguousSuffix[t.text]
			sc := 5.0
			if weak {
				sc = 3
			}
			if t.caps && !allCaps(toks) {
				sc++
			}
			sc -= 2*float64(terms) + float64(plain) + 4*float64(stops)
			if terms > 0 && caps == words && !weak {
				sc += 1.5 * float64(terms)
			} else if terms > 0 && !weak && words <= 2 {
				sc += 0.5
			}
			if caps == words && caps > 0 {
				sc++
			}
			// "8 way", "66 front st": a direction or a side is not much of a name
			if sc > best.score-0.5 || lastSuffix == end-1 {
				best = street{to: end + 1, score: max(sc, best.score), suffixed: true}
				best.line = std
				lastSuffix = end
			}
		}
		if p.stop(toks, end) && !(isSuffix && words > 0) {
			stops++
			if !linking(t.text) || words > 0 && !(t.text == "of" || t.text == "de" || t.text == "del" || t.text == "la" || t.text == "the" || t.text == "and") {
				if end+1 < len(toks) && toks[end+1].kind == word && (strongSuffix(g, toks[end+1].text) || toks[end+1].text == "street" || toks[end+1].text == "court" || toks[end+1].text == "circle") && !smallVerb(t.text) {
					stops--
					plain++
				} else if words == 0 && end+2 < len(toks) && t.caps && !allCaps(toks) {
					// "22 Long Hollow Rd": a capital makes it a name
					stops--
					plain++
				} else {
					break
				}
			} else {
				stops--
			}
		}
		if !isSuffix && p.term(toks, end) {
			terms++
			if terms > 2 {
				break
			}
		}
		if t.caps {
			caps++
		}
		words++
		end++
		if lastSuffix >= 0 && lastSuffix < end-1 {
			// words after a suffix count only when another suffix follows at once
			if end < len(toks) && toks[end].kind == word {
				if _, ok := g.suffix[toks[end].text]; ok && !noSuffix[toks[end].text] && !ambiguousSuffix[toks[end].text] && !p.term(toks, end-1) && !p.lex.plain[toks[end-1].text] {
					continue
				}
			}
			break
		}
	}
	if best.score > -99 {
		name := p.nameOf(toks, j, lastSuffix)
		if name == "" && dir != "" {
			name, dir = title(toks[start].raw), ""
			if len(name) <= 2 {
				name = strings.ToUpper(name)
			}
		}
		if dir != "" {
			parts = append(parts, dir)
		}
		parts = append(parts, name, best.line)
		// Main St NW
		if best.to < len(toks) && toks[best.to].kind == word {
			if d, ok := g.directional[toks[best.to].text]; ok && (toks[best.to].caps || best.to+1 >= len(toks) || toks[best.to+1].kind == mark) && !(best.to+1 < len(toks) && (toks[best.to+1].text == "side" || toks[best.to+1].text == "bib")) {
				parts = append(parts, d)
				best.to++
			}
		}
		if best.to < len(toks) && toks[best.to].text == "." && toks[best.to].glued && len(toks[best.to-1].raw) <= 4 && best.to+1 < len(toks) && (toks[best.to+1].kind == word && !toks[best.to+1].caps || toks[best.to+1].kind == mark && toks[best.to+1].text != "\n") {
			best.to++ // the point of "Ave." ends no sentence
		}
		best.line = strings.Join(parts, " ")
		return best, true
	}
	// no suffix
	end = j
	words, caps = 0, 0
	for end < len(toks) && words < 3 {
		t := &toks[end]
		if t.kind == number {
			if n, ok := ordinalAt(toks, end); ok && words == 0 {
				end += n
				words++
				continue
			}
			break
		}
		if t.kind != word || p.stop(toks, end) || p.term(toks, end) || vowelless(t.text) && len(t.text) > 2 && !t.caps && !strings.Contains(t.text, "y") || len(t.text) == 1 && words == 0 && dir == "" && !t.caps || t.quoted != toks[start].quoted {
			break
		}
		if p.lex.known(t.text) && !t.caps {
			break
		}
		if t.caps {
			caps++
		}
		words++
		end++
	}
	if words == 0 {
		return street{}, false
	}
	sc := 1.5
	if dir != "" {
		sc += 2
	}
	if caps == words && !allCaps(toks) {
		sc += 1.5
	}
	if end < len(toks) && toks[end].kind == word && !p.term(toks, end) && !p.stop(toks, end) {
		sc -= 2
	}
	if words > 2 {
		sc--
	}
	name := p.nameOf(toks, j, end)
	if dir != "" {
		name = dir + " " + name
	}
	return street{line: name, to: end, score: sc}, true
}

// linking words may stand inside a street's name.
func linking(s string) bool {
	switch s {
	case "of", "de", "del", "la", "las", "los", "el", "the", "and", "y":
		return true
	}
	return false
}

func abbreviated(s string) bool {
	switch s {
	case "st", "mt", "n", "s", "e", "w", "ne", "nw", "se", "sw", "ave", "rd", "dr", "ln", "ct", "blvd", "pl", "ft", "ter", "cir", "hwy", "pkwy", "trl", "co", "av", "us":
		return true
	}
	return false
}

// stop tells whether a token is a word that is no name.
func (p *Parser) stop(toks []token, k int) bool { return p.lex.plain[toks[k].text] }

// known tells whether the lexicon has the word.
func (l *lexicon) known(w string) bool { _, ok := l.vocab[w]; return ok }

// allCaps tells whether the message shouts: capitals then say nothing.
func allCaps(toks []token) bool {
	up, low := 0, 0
	for i := range toks {
		if t := &toks[i]; t.kind == word && len(t.raw) > 3 {
			if t.raw == strings.ToUpper(t.raw) {
				up++
			} else {
				low++
			}
			if up+low > 8 {
				break
			}
		}
	}
	return up > low
}

// nameOf writes toks[from:to] as a street's name.
func (p *Parser) nameOf(toks []token, from, to int) string {
	var b strings.Builder
	for k := from; k < to; k++ {
		t := toks[k]
		if t.kind == mark {
			if t.text == "-" {
				b.WriteString("-")
			}
			continue
		}
		if b.Len() > 0 && !(t.glued && (toks[k-1].kind == number || toks[k-1].text == "-")) {
			b.WriteByte(' ')
		}
		switch {
		case t.kind == number && t.num.words:
			b.WriteString(title(t.raw))
		case t.kind == word && t.glued && k > from && toks[k-1].kind == number:
			b.WriteString(strings.ToLower(t.raw))
		case t.kind == number:
			b.WriteString(t.raw)
		default:
			b.WriteString(title(t.raw))
		}
	}
	return b.String()
}

// ordinalAt measures "5th", "42nd" at i.
func ordinalAt(toks []token, i int) (int, bool) {
	if toks[i].kind == number && toks[i].num.integer && i+1 < len(toks) && toks[i+1].glued {
		switch toks[i+1].text {
		case "st", "nd", "rd", "th":
			return 2, true
		}
	}
	return 0, false
}

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
	case (a == "county" || a == "co" || a == "cnty") && j+1 < len(toks):
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

// spanishName reads "Calle Luna", "Avenida del Sol" after a house number: no
// suffix follows.
func (p *Parser) spanishName(toks []token, j int, dir string) (street, bool) {
	end := j + 1
	words := 0
	for end < len(toks) && words < 3 {
		t := &toks[end]
		if t.kind != word || t.quoted != toks[j].quoted {
			break
		}
		if linking(t.text) && end+1 < len(toks) && toks[end+1].kind == word {
			end++
			continue
		}
		if p.stop(toks, end) || p.term(toks, end) && !t.caps || words > 0 && p.lex.known(t.text) {
			break
		}
		words++
		end++
	}
	if words == 0 {
		return street{}, false
	}
	line := p.nameOf(toks, j, end)
	if dir != "" {
		line = dir + " " + line
	}
	return street{line: line, to: end, score: 5, suffixed: true}, true
}

// spanishAddress reads a Spanish street line, its number last: "Calle 8 #1420".
func (p *Parser) spanishAddress(toks []token, i int) (address, bool) {
	a := address{from: i, unitFrom: -1, score: 5, suffixed: true, quoted: toks[i].quoted}
	k, words := i+1, 0
	if k < len(toks) && toks[k].text == "." {
		k++
	}
	name := k
	for k < len(toks) && words < 4 {
		t := &toks[k]
		if t.kind == number && words == 0 && t.num.integer && len(t.num.digits) <= 3 && k+1 < len(toks) && (toks[k+1].kind == number || toks[k+1].text == "#" || toks[k+1].text == "numero" || toks[k+1].text == "num" || toks[k+1].text == "no") {
			words++
			k++
			break
		}
		if t.kind != word {
			break
		}
		if words > 0 && (t.text == "numero" || t.text == "num" || t.text == "no" || t.text == "nro") {
			break
		}
		if !linking(t.text) && (p.stop(toks, k) || p.term(toks, k) && !t.caps) {
			return a, false
		}
		words++
		k++
	}
	if words == 0 || k >= len(toks) {
		return a, false
	}
	nameEnd := k
	sep := " "
	if toks[k].kind == mark && toks[k].text == "," && k+1 < len(toks) && toks[k+1].text == "#" {
		k++
	}
	switch {
	case toks[k].kind == mark && toks[k].text == "#":
		sep = " #"
		k++
	case toks[k].kind == word && (toks[k].text == "numero" || toks[k].text == "num" || toks[k].text == "no" || toks[k].text == "nro"):
		k++
		if k < len(toks) && toks[k].text == "." {
			k++
		}
	}
	if k >= len(toks) || toks[k].kind != number || !houseNumber(&toks[k]) {
		return a, false
	}
	if k+1 < len(toks) && toks[k+1].kind == word {
		if tags, n := p.lex.match(toks, k+1, k+2); n > 0 && p.has(tags, cUnit, "psi") {
			return a, false
		}
	}
	a.house = k
	typ := title(toks[i].raw)
	if toks[i].text == "av" || toks[i].text == "ave" {
		typ = title(toks[i].raw)
		if i+1 < name {
			typ += "."
			typ = strings.TrimSuffix(typ, ".")
		}
	}
	a.line = typ + " " + p.nameOf(toks, name, nameEnd) + sep + toks[k].num.digits
	a.to = k + 1
	if a.to < len(toks) && toks[a.to].glued && toks[a.to].kind == word && len(toks[a.to].raw) == 1 {
		a.line += strings.ToUpper(toks[a.to].raw)
		a.to++
	}
	a.unit(p, toks)
	a.townAfter(p, toks)
	return a, true
}

// unitID reads a unit's number or letter at k.
func unitID(toks []token, k int) (string, int) {
	if k >= len(toks) {
		return "", 0
	}
	t := toks[k]
	switch {
	case t.kind == number && t.num.integer && len(t.num.digits) <= 5:
		id := t.num.digits
		if k+1 < len(toks) && toks[k+1].glued && toks[k+1].kind == word && len(toks[k+1].raw) == 1 {
			return id + strings.ToUpper(toks[k+1].raw), 2
		}
		if k+2 < len(toks) && toks[k+1].text == "-" && toks[k+1].glued && toks[k+2].glued && toks[k+2].kind == word && len(toks[k+2].raw) == 1 {
			return id + "-" + strings.ToUpper(toks[k+2].raw), 3
		}
		return id, 1
	case t.kind == word && len(t.raw) == 1 && isLetter(t.raw[0]):
		if k+1 < len(toks) && toks[k+1].glued && toks[k+1].kind == number && toks[k+1].num.integer {
			return strings.ToUpper(t.raw) + toks[k+1].num.digits, 2
		}
		if k+2 < len(toks) && toks[k+1].text == "-" && toks[k+1].glued && toks[k+2].glued && toks[k+2].kind == number {
			return strings.ToUpper(t.raw) + "-" + toks[k+2].num.digits, 3
		}
		return strings.ToUpper(t.raw), 1
	}
	return "", 0
}

// unit reads a unit after the street line, or before the house number.
func (a *address) unit(p *Parser, toks []token) {
	for range 2 {
		k := a.to
		if k < len(toks) && toks[k].kind == mark && (toks[k].text == "," || toks[k].text == "-" && !toks[k].glued || toks[k].text == "(") {
			k++
		}
		if k < len(toks) && toks[k].kind == mark && toks[k].text == "#" {
			id, n := unitID(toks, k+1)
			if n == 0 || k+1+n < len(toks) && toks[k+1+n].glued && toks[k+1+n].text == "#" {
				return
			}
			a.line += " # " + id
			a.to = k + 1 + n
			a.score++
			return
		}
		if k >= len(toks) || toks[k].kind != word {
			break
		}
		std, ok := p.gaz.unit[toks[k].text]
		if !ok {
			break
		}
		m := k + 1
		if m < len(toks) && toks[m].kind == mark && (toks[m].text == "#" || toks[m].text == ".") {
			m++
		}
		id, n := unitID(toks, m)
		if n == 0 {
			break
		}
		a.line += " " + std + " " + id
		a.to = m + n
		a.score++
		if a.to < len(toks) && toks[a.to].text == ")" {
			a.to++
		}
	}
	// "unit B at 1410 Sutter", "apartment 12, 300 Beacon Square"
	k := a.from - 1
	if k >= 0 && (toks[k].text == "," || toks[k].text == "at" || toks[k].text == "of" || toks[k].text == "en" || toks[k].text == "de" || toks[k].text == "in" || toks[k].text == "-" || toks[k].text == "on") {
		k--
	}
	if k >= 1 && k < a.from-1 && toks[k].kind == number && toks[k-1].kind == mark && toks[k-1].text == "#" && toks[k].num.integer && len(toks[k].num.digits) <= 4 {
		a.line += " # " + toks[k].num.digits
		a.unitFrom, a.unitTo, a.from = k-1, k+1, k-1
		return
	}
	for n := 1; n <= 3 && k-n >= 0; n++ {
		at := k - n
		if at < 0 || toks[at].kind != word {
			continue
		}
		std, ok := p.gaz.unit[toks[at].text]
		if !ok {
			continue
		}
		m := at + 1
		if toks[m].text == "#" {
			m++
		}
		if id, got := unitID(toks, m); got > 0 && m+got == k+1 {
			a.line += " " + std + " " + id
			a.unitFrom, a.unitTo = at, k+1
			a.from = at
			return
		}
	}
}

// townAfter reads ", Marlow", ", Marlow, TX 75001" after the street line.
func (a *address) townAfter(p *Parser, toks []token) {
	k := a.to
	if k >= len(toks) {
		return
	}
	if toks[k].kind == mark && toks[k].text == "," {
		k++
	} else if toks[k].text == "in" {
		k++
	} else if !(toks[k].kind == number && len(toks[k].num.digits) == 5) {
		return
	}
	from := k
	for k < len(toks) && k-from < 3 && toks[k].kind == word && toks[k].caps && !toks[k].glued && !p.term(toks, k) && !p.stop(toks, k) && !p.lex.known(toks[k].text) {
		k++
	}
	if k > from && (k >= len(toks) || toks[k].kind == mark || toks[k].kind == number && len(toks[k].num.digits) == 5) && !allCaps(toks) {
		last := k
		if last-from > 1 && states[toks[last-1].text] {
			last--
		}
		a.town = p.nameOf(toks, from, last)
		a.to = k
	}
	// ", TX 75001" or "75001"
	k = a.to
	if k < len(toks) && toks[k].text == "," {
		k++
	}
	if k < len(toks) && toks[k].kind == word && states[toks[k].text] && toks[k].raw == strings.ToUpper(toks[k].raw) {
		k++
		if a.town != "" {
			a.to = k
		}
	}
	if k < len(toks) && toks[k].kind == number && toks[k].num.integer && len(toks[k].num.digits) == 5 && (k == a.to || k > from) {
		a.postcode = toks[k].num.digits
		a.to = k + 1
	}
}

var states = func() map[string]bool {
	m := map[string]bool{}
	for s := range strings.FieldsSeq("al ak az ar ca co ct de fl ga hi id il in ia ks ky la me md ma mi mn ms mo mt ne nv nh nj nm ny nc nd oh ok or pa ri sc sd tn tx ut vt va wa wv wi wy dc") {
		m[s] = true
	}
	return m
}()

// strongSuffix tells whether a word is a street suffix and nothing else.
func strongSuffix(g *gazetteer, w string) bool {
	_, ok := g.suffix[w]
	return ok && !ambiguousSuffix[w] && !noSuffix[w]
}

// smallVerb are words that never stand inside a street's name.
func smallVerb(s string) bool {
	switch s {
	case "is", "was", "at", "in", "on", "to", "for", "with", "from", "and", "or", "are", "en", "con", "has", "had", "this", "that", "it", "its", "i", "we", "you", "he", "she", "they", "by", "off", "psi", "now", "after", "before", "not", "no", "but":
		return true
	}
	return false
}
