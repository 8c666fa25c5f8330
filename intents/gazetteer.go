package intents

import (
	"bufio"
	"fmt"
	"strings"
)

// Lists of the lexicon that these rules know.
var (
	listAmbiguousSuffixes = listOf("ambiguous suffixes")
	listNoSuffixes        = listOf("no suffixes")
)

// gazetteer holds the tables of USPS Publication 28.
type gazetteer struct {
	suffix      map[string]string // "avenue" and "av" -> "Ave"
	standard    map[string]bool   // the standard abbreviations: "ave"
	directional map[string]string // "north" -> "N"
	unit        map[string]string // "apartment" -> "Apt"
}

// newGazetteer reads the tables.
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
	for std, words := range writtenUnits {
		for w := range words {
			g.unit[w] = std
		}
	}
	for _, w := range []string{"key", "front", "rear", "side", "stop", "slip", "pier", "dept"} {
		delete(g.unit, w) // on site these are other things
	}
	return g, nil
}

// enter gives the words of the tables to the lexicon.
func (g *gazetteer) enter(l *lexicon) {
	for w, std := range g.suffix {
		l.entry(w).suffix = std
	}
	for w, std := range g.unit {
		l.entry(w).unit = std
	}
	for w, std := range g.directional {
		l.entry(w).directional = std
	}
}

// enterWritten takes over what people write for suffixes beside the tables, once the lexicon is read.
func (g *gazetteer) enterWritten(l *lexicon) {
	for w, std := range l.suffixes {
		g.suffix[w], l.entry(w).suffix = std, std
	}
}

// writtenUnits are what people write, in Spanish and by slips too, for the units of the table.
var writtenUnits = map[string]phraseSet{
	"Apt":  phrases("apto | aprt | aptmnt | apartmnt | apmnt | dpto | apmt | appt | apart | depto | depa | departamento | apartamento"),
	"Unit": phrases("unt | ut | un | unidad"),
	"Bldg": phrases("bldng | edificio | bld"),
	"Lot":  phrases("lote"),
	"Ste":  phrases("suit"),
	"Spc":  phrases("espacio"),
}

// strongSuffix tells whether a word is a street suffix and nothing else.
func (p *Parser) strongSuffix(w string) bool {
	_, ok := p.gaz.suffix[w]
	return ok && !p.lex.inList(w, listAmbiguousSuffixes) && !p.lex.inList(w, listNoSuffixes)
}
