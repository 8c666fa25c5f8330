package desk

import (
	"slices"

	"lazyhand/assess"
)

// Chart is a house's readings as numbers, for a platform that draws them
// itself: one value of every series for each category.
type Chart struct {
	Title      string
	Categories []string // days, in order
	Series     []Series
}

// Series is one line of a chart, in psi.
type Series struct {
	Name   string
	Values []float64
}

// chartOf makes the chart of a house: the last fair reading of the house side
// of each day, between the lines of the band. It is nil for fewer than two
// days. A longer past is left out; the newest days are there.
func chartOf(h House, w *words) *Chart {
	c := &Chart{Title: siteLine(h.Site)}
	read := Series{Name: w.ChartReading}
	for _, r := range h.Readings {
		if r.Side == assess.StreetSide || r.Fair == assess.FairNo || r.When == assess.Before {
			continue
		}
		day := r.Day.String()
		if n := len(c.Categories); n > 0 && c.Categories[n-1] == day {
			read.Values[n-1] = r.PSI
			continue
		}
		c.Categories, read.Values = append(c.Categories, day), append(read.Values, r.PSI)
	}
	n := len(c.Categories)
	if n < 2 {
		return nil
	}
	if n > daysInChart {
		c.Categories, read.Values = c.Categories[n-daysInChart:], read.Values[n-daysInChart:]
		n = daysInChart
	}
	c.Series = []Series{read,
		{w.ChartTop + " " + number(h.Band[1]), slices.Repeat([]float64{h.Band[1]}, n)},
		{w.ChartBottom + " " + number(h.Band[0]), slices.Repeat([]float64{h.Band[0]}, n)}}
	return c
}

// daysInChart is how many days a chart shows at most.
const daysInChart = 20
