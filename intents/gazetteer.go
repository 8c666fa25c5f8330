package intents

import (
	"bufio"
	"fmt"
	"strings"
)

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
	for w, std := range map[string]string{"apto": "Apt", "unt": "Unit", "aprt": "Apt", "aptmnt": "Apt", "apartmnt": "Apt", "apmnt": "Apt", "dpto": "Apt", "bldng": "Bldg", "ut": "Unit", "apmt": "Apt", "appt": "Apt", "apart": "Apt", "depto": "Apt", "departamento": "Apt", "apartamento": "Apt", "unidad": "Unit", "edificio": "Bldg", "lote": "Lot", "suit": "Ste", "un": "Unit", "bld": "Bldg", "espacio": "Spc"} {
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

// strongSuffix tells whether a word is a street suffix and nothing else.
func strongSuffix(g *gazetteer, w string) bool {
	_, ok := g.suffix[w]
	return ok && !ambiguousSuffix[w] && !noSuffix[w]
}
