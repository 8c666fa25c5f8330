package assess

import (
	"slices"
	"strings"
)

// Site is one house: its street line as people write it, and its town and
// postcode when they were told.
type Site struct {
	Line     string `json:"line"`
	Town     string `json:"town,omitempty"`
	Postcode string `json:"postcode,omitempty"`
}

// Key is the street line in one spelling: lower case, single blanks. Two
// houses with different keys may still be the same one (see Loose).
func (s Site) Key() string { return strings.ToLower(strings.Join(strings.Fields(s.Line), " ")) }

// Loose is the key without the suffix of the street and without its
// directions: "123 elm" for "123 N Elm St". Houses that share it are worth a
// question, or are one house when only one of them gives the suffix.
func (s Site) Loose() string {
	return s.words().loose()
}

// Street is the bare name of the street, "elm" for "123 N Elm St".
func (s Site) Street() string { return strings.Join(s.words().name, " ") }

// LooseForms are the forms of Loose under which the same house may be on record:
// its own, and, where a word can be the suffix of a street or the end of its
// name, that of the other reading. "418 quail hollow" may be Quail Holw, or what
// is left of Quail Hollow Dr.
func (s Site) LooseForms() []string {
	w := s.words()
	forms := []string{w.loose()}
	if whole, ok := w.whole(); ok {
		forms = append(forms, whole.loose())
	}
	if last := len(w.name) - 1; last > 0 && nameEnds[w.name[last]] {
		w.name = w.name[:last]
		forms = append(forms, w.loose())
	}
	return forms
}

// Fits tells whether both lines can be the same house: the same number, name
// and unit, and neither suffix, direction, town nor postcode speaks against it.
func (s Site) Fits(o Site) bool {
	agree := func(x, y string) bool { return x == "" || y == "" || strings.EqualFold(x, y) }
	if !agree(s.Town, o.Town) || !agree(s.Postcode, o.Postcode) {
		return false
	}
	a, b := s.words(), o.words()
	fits := func(a, b siteWords) bool {
		return a.loose() == b.loose() && agree(a.suffix, b.suffix) && agree(a.direction, b.direction)
	}
	if fits(a, b) {
		return true
	}
	wholeA, ok := a.whole()
	if ok && fits(wholeA, b) {
		return true
	}
	wholeB, ok := b.whole()
	return ok && fits(a, wholeB)
}

// Holds tells whether o is a unit of the building that s names without one.
func (s Site) Holds(o Site) bool {
	w := o.words()
	if len(w.unit) == 0 || len(s.words().unit) > 0 {
		return false
	}
	unit := " " + strings.Join(w.unit, " ")
	o.Line = strings.TrimSuffix(o.Key(), unit)
	return s.Fits(o)
}

type siteWords struct {
	number, name, unit []string
	suffix, direction  string
}

func (w siteWords) loose() string {
	return strings.Join(slices.Concat(w.number, w.name, w.unit), " ")
}

// whole reads the suffix as the end of the name, in full, where it can be that:
// Quail Hollow for "Quail Holw".
func (w siteWords) whole() (siteWords, bool) {
	full := suffixes[w.suffix]
	if full == "" || onlySuffixes[w.suffix] {
		return w, false
	}
	w.name, w.suffix = append(slices.Clone(w.name), full), ""
	return w, true
}

// words takes a tidied street line apart. It knows the abbreviations that a
// tidied line ends in, not every spelling: those are the parser's matter.
func (s Site) words() siteWords {
	var w siteWords
	rest := strings.Fields(s.Key())
	for len(rest) > 1 && rest[0][0] >= '0' && rest[0][0] <= '9' {
		w.number, rest = append(w.number, rest[0]), rest[1:]
		if len(rest) == 0 || !strings.Contains(rest[0], "/") {
			break
		}
	}
	for i, word := range rest {
		if i > 0 && unitWords[word] {
			w.unit, rest = rest[i:], rest[:i]
			break
		}
	}
	if n := len(rest); n > 1 && directions[rest[n-1]] {
		w.direction, rest = rest[n-1], rest[:n-1]
	}
	if len(rest) > 1 && directions[rest[0]] {
		w.direction, rest = rest[0], rest[1:]
	}
	if n := len(rest); n > 1 && suffixes[rest[n-1]] != "" {
		w.suffix, rest = rest[n-1], rest[:n-1]
	}
	w.name = rest
	return w
}

// pairs makes a map of blank-separated words, each key before its value.
func pairs(words string) map[string]string {
	out, list := map[string]string{}, strings.Fields(words)
	for i := 0; i+1 < len(list); i += 2 {
		out[list[i]] = list[i+1]
	}
	return out
}

// fullOf is the set of a map's values but those of some keys.
func fullOf(m map[string]string, but map[string]bool) map[string]bool {
	out := map[string]bool{}
	for short, full := range m {
		if !but[short] {
			out[full] = true
		}
	}
	return out
}

// set makes a set of blank-separated words.
func set(words string) map[string]bool {
	out := map[string]bool{}
	for _, w := range strings.Fields(words) {
		out[w] = true
	}
	return out
}

var (
	directions = set("n s e w ne nw se sw")
	// Unit designators of USPS Publication 28, as a tidied line writes them.
	unitWords = set("# apt unit ste bldg fl rm lot spc trlr dept hngr key pier slip stop bsmt frnt lbby lowr ofc ph rear side uppr")
	// Suffixes of USPS Publication 28, appendix C1, each as a tidied line writes
	// it and in full.
	suffixes = pairs(`aly alley anx anex arc arcade ave avenue bch beach bg burg bgs burgs blf bluff blfs bluffs blvd boulevard bnd bend br branch brg bridge brk brook brks
		brooks btm bottom byp bypass byu bayou cir circle cirs circles clb club clf cliff clfs cliffs cmn common cmns commons cor corner cors corners cp
		camp cpe cape cres crescent crk creek crse course crst crest cswy causeway ct court ctr center ctrs centers cts courts curv curve cv cove cvs coves
		cyn canyon dl dale dm dam dr drive drs drives dv divide est estate ests estates expy expressway ext extension exts extensions fall fall fld field
		flds fields fls falls flt flat flts flats frd ford frds fords frg forge frgs forges frk fork frks forks frst forest fry ferry ft fort fwy freeway
		gdn garden gdns gardens gln glen glns glens grn green grns greens grv grove grvs groves gtwy gateway hbr harbor hbrs harbors hl hill hls hills holw
		hollow hts heights hvn haven hwy highway inlt inlet is island isle isle iss islands jct junction jcts junctions knl knoll knls knolls ky key kys
		keys land land lck lock lcks locks ldg lodge lf loaf lgt light lgts lights lk lake lks lakes ln lane lndg landing loop loop mall mall mdw meadow
		mdws meadows mews mews ml mill mls mills mnr manor mnrs manors msn mission mt mount mtn mountain mtns mountains mtwy motorway nck neck opas overpass
		orch orchard oval oval park park pass pass path path pike pike pkwy parkways pl place pln plain plns plains plz plaza pne pine pnes pines pr
		prairie prt port prts ports psge passage pt point pts points radl radial ramp ramp rd road rdg ridge rdgs ridges rds roads riv river rnch ranch row
		row rpd rapid rpds rapids rst rest rte route rue rue run run shl shoal shls shoals shr shore shrs shores skwy skyway smt summit spg spring spgs
		springs spur spur sq square sqs squares st street sta station stra stravenue strm stream sts streets ter terrace tpke turnpike trak track trce
		trace trfy trafficway trl trail trlr trailer trwy throughway tunl tunnel un union uns unions upas underpass via viaduct vis vista vl ville vlg
		village vlgs villages vly valley vlys valleys vw view vws views walk walk wall wall way way ways ways wl well wls wells xing crossing xrd crossroad
		xrds crossroads`)
	// Suffixes that hardly ever are a part of a name.
	onlySuffixes = set("st ave rd dr ln ct blvd cir hwy pkwy way")
	nameEnds     = fullOf(suffixes, onlySuffixes)
)
