package assess

import "strings"

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
	words := s.words()
	return strings.Join(append(words.number, append(words.name, words.unit...)...), " ")
}

// Street is the bare name of the street, "elm" for "123 N Elm St".
func (s Site) Street() string { return strings.Join(s.words().name, " ") }

// Fits tells whether both lines can be the same house: the same number, name
// and unit, and neither suffix, direction, town nor postcode speaks against it.
func (s Site) Fits(o Site) bool {
	a, b := s.words(), o.words()
	agree := func(x, y string) bool { return x == "" || y == "" || strings.EqualFold(x, y) }
	return s.Loose() == o.Loose() && agree(a.suffix, b.suffix) && agree(a.direction, b.direction) &&
		agree(s.Town, o.Town) && agree(s.Postcode, o.Postcode)
}

type siteWords struct {
	number, name, unit []string
	suffix, direction  string
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
	if n := len(rest); n > 1 && tidySuffixes[rest[n-1]] {
		w.suffix, rest = rest[n-1], rest[:n-1]
	}
	w.name = rest
	return w
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
	// Suffix abbreviations of USPS Publication 28, appendix C1.
	tidySuffixes = set(`aly anx arc ave byu bch bnd blf blfs btm blvd br brg brk brks bg bgs byp cp cyn cpe cswy ctr ctrs cir cirs
		clf clfs clb cmn cmns cor cors crse ct cts cv cvs crk cres crst xing xrd xrds curv dl dm dv dr drs est ests expy ext exts
		fall fls fry fld flds flt flts frd frds frst frg frgs frk frks ft fwy gdn gdns gtwy gln glns grn grns grv grvs hbr hbrs hvn
		hts hwy hl hls holw inlt is iss isle jct jcts ky kys knl knls lk lks land lndg ln lgt lgts lf lck lcks ldg loop mall mnr mnrs
		mdw mdws mews ml mls msn mtwy mt mtn mtns nck orch oval opas park pkwy pass psge path pike pne pnes pl pln plns plz pt pts
		prt prts pr radl ramp rnch rpd rpds rst rdg rdgs riv rd rds rte row rue run shl shls shr shrs skwy spg spgs spur sq sqs sta
		stra strm st sts smt ter trwy trce trak trfy trl trlr tunl tpke upas un uns vly vlys via vw vws vlg vlgs vl vis walk wall
		way ways wl wls`)
)
