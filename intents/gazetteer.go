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

// writtenUnits are what people write, in Spanish and by slips too, for the units of the table.
var writtenUnits = map[string]phraseSet{
	"Apt":  phrases("apto | aprt | aptmnt | apartmnt | apmnt | dpto | apmt | appt | apart | depto | departamento | apartamento"),
	"Unit": phrases("unt | ut | unidad"),
	"Bldg": phrases("bldng | edificio | bld"),
	"Lot":  phrases("lote"),
	"Ste":  phrases("suit"),
	"Spc":  phrases("espacio"),
}

// ambiguousSuffix are suffixes that are ordinary words as well: alone they make no street.
var ambiguousSuffix = phrases(`way | run | runs | pass | park | parks | point | points | spring | springs | bend
	| well | wells | drive | drives | court | view | views | walk | walks | key | keys | mill | mills | lock | locks
	| port | ports | union | unions | hill | hills | fall | falls | garden | gardens | green | greens | lake | lakes
	| land | light | lights | mount | path | paths | pike | rest | row | shore | station | stream | summit | track
	| tracks | trace | bridge | center | centers | circle | club | common | corner | corners | course | field
	| fields | flat | flats | ford | forest | fork | forks | gateway | island | junction | loop | loops | mission
	| neck | oval | passage | plain | plains | plaza | rapids | rapid | river | route | spur | square | street
	| tunnel | village | bottom | branch | dam | divide | extension | crossing | cross | estate | camp | cape
	| beach | burg | cent | center's | mall | manor | vis | via | stravenue | lf | div | est | ext | fld | fort
	| frt | frk | ft | mt | knob | is | pt | pr | in | un | sta | cp | br | btm | rst | ml | ldg | lks | lk | gln
	| glen | grn | vly | wl | wls | ps | all | dale | cliff | haven | harbor | rad | arc | ramp | ranch | lodge
	| hollow | valley | vista | ville | via. | turn | landing | shoal | crest | curve | track.`)

// noSuffix are never a suffix here, whatever the table says: everyday abbreviations of the trade.
var noSuffix = phrases(`frt | ft | fr | is | br | in | all | mt | pr | un | ps | str | cp | sta | lf | ml | vis
	| rst | strm | btm | bot | cent | wl | rad`)

// strongSuffix tells whether a word is a street suffix and nothing else.
func strongSuffix(g *gazetteer, w string) bool {
	_, ok := g.suffix[w]
	return ok && !ambiguousSuffix[w] && !noSuffix[w]
}
