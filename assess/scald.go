package assess

import (
	"fmt"
	"math"
)

// ScaldTable names a table of how long hot water takes to burn an adult's skin.
// The tables disagree and are kept apart.
type ScaldTable string

// The tables.
const (
	// CPSCLeaflet is the US Consumer Product Safety Commission's leaflet on
	// tap-water scalds, as quoted.
	CPSCLeaflet ScaldTable = "CPSC leaflet"
	// ScaldTable1 is used in the trade and attributed to Moritz and Henriques,
	// Am. J. Pathol. 23 (1947) 695 (paper not read); common practice.
	ScaldTable1 ScaldTable = "trade table 1"
	// ScaldTable2 is a second table used in the trade; common practice.
	ScaldTable2 ScaldTable = "trade table 2"
)

// childScaldShare: a child's skin burns in about half the time. Common practice.
const childScaldShare = 0.5

// scaldRow is a temperature in °F with the seconds to a second- and a
// third-degree burn; 0 where the table does not say.
type scaldRow struct{ f, second, third float64 }

var (
	cpscLeaflet = [...]scaldRow{{120, 0, 300}, {130, 0, 30}, {140, 0, 6}, {150, 0, 2}}
	scaldTable1 = [...]scaldRow{{120, 0, 300}, {124, 0, 180}, {127, 0, 60}, {133, 0, 15}, {140, 0, 5}, {148, 0, 2}, {155, 0, 1}}
	scaldTable2 = [...]scaldRow{
		{113, 7200, 10800}, {116.6, 1200, 2700}, {118.4, 900, 1200}, {120, 480, 600}, {124, 120, 252}, {131, 17, 30}, {140, 3, 5},
	}
)

func (t ScaldTable) rows() []scaldRow {
	switch t {
	case CPSCLeaflet:
		return cpscLeaflet[:]
	case ScaldTable1:
		return scaldTable1[:]
	case ScaldTable2:
		return scaldTable2[:]
	}
	return nil
}

// ScaldSeconds is how long water of the temperature takes to burn an adult's
// skin to the second and the third degree, in seconds; 0 where the table does
// not say. Between rows the logarithm of the time is read along a straight
// line, above the last row the last row counts. It is false below the first
// row, of which the table says nothing: not that such water is safe.
func ScaldSeconds(table ScaldTable, waterF float64) (second, third float64, ok bool) {
	rows := table.rows()
	if len(rows) == 0 || !finite(waterF) || waterF < rows[0].f {
		return 0, 0, false
	}
	for i := len(rows) - 1; i >= 0; i-- {
		if r := rows[i]; waterF >= r.f {
			if waterF == r.f || i == len(rows)-1 {
				return r.second, r.third, true
			}
			n := rows[i+1]
			share := (waterF - r.f) / (n.f - r.f)
			between := func(a, b float64) float64 {
				if a <= 0 || b <= 0 {
					return 0
				}
				return math.Exp(math.Log(a) + share*(math.Log(b)-math.Log(a)))
			}
			return between(r.second, n.second), between(r.third, n.third), true
		}
	}
	return 0, 0, false
}

// QuickestScald is the shortest time to a third-degree burn that any table
// gives an adult, and half of it for a child, in seconds: what a caution
// should say.
func QuickestScald(waterF float64) (adult, child float64, ok bool) {
	for _, t := range []ScaldTable{CPSCLeaflet, ScaldTable1, ScaldTable2} {
		if _, third, known := ScaldSeconds(t, waterF); known && (!ok || third < adult) {
			adult, ok = third, true
		}
	}
	return adult, adult * childScaldShare, ok
}

// ScaldPhrase says in a few words how fast water of the temperature burns, for
// a caution; empty where no table says anything.
func ScaldPhrase(waterF float64, lang Lang) string {
	adult, child, ok := QuickestScald(waterF)
	if !ok {
		return ""
	}
	if lang == Spanish {
		return fmt.Sprintf("el agua a %.0f °F quema la piel de un adulto en unos %s, la de un niño en unos %s",
			waterF, duration(adult, lang), duration(child, lang))
	}
	return fmt.Sprintf("water at %.0f °F burns an adult's skin in about %s, a child's in about %s",
		waterF, duration(adult, lang), duration(child, lang))
}

// duration writes seconds as people say them, rounded down so that the caution
// errs to the safe side.
func duration(seconds float64, lang Lang) string {
	n, one, many := math.Floor(seconds), "second", "seconds"
	if lang == Spanish {
		one, many = "segundo", "segundos"
	}
	if seconds >= 120 {
		n, one, many = math.Floor(seconds/60), "minute", "minutes"
		if lang == Spanish {
			one, many = "minuto", "minutos"
		}
	}
	if n < 1 {
		n = 1
	}
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%.0f %s", n, many)
}
