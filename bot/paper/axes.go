package paper

import (
	"fmt"
	"math"
	"strconv"
	"time"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"lazyhand/assess"
)

// axes is a bare plot: days across, psi upwards, the band behind. Its x is days
// since the first day.
type axes struct {
	*plot.Plot
	f     format
	w     *words
	first assess.Date
	last  assess.Date
	band  [2]float64
}

// newAxes makes axes that hold the days and pressures given, and the band.
func newAxes(f format, w *words, first, last assess.Date, band [2]float64, lowest, highest float64) *axes {
	a := &axes{Plot: plot.New(), f: f, w: w, first: first, last: last, band: band}
	days := float64(last.Sub(first))
	pad := max(0.5, days*0.04)
	a.X.Min, a.X.Max = -pad, days+pad
	a.Y.Min = math.Max(0, math.Min(band[0]-15, lowest-8))
	a.Y.Max = math.Max(band[1]+15, highest+10)
	if lowest < 0 {
		a.Y.Min = lowest - 5
	}
	a.X.Tick.Marker = plot.ConstantTicks(dayTicks(w, first, last))
	a.Y.Tick.Marker = plot.ConstantTicks(psiTicks(a.Y.Min, a.Y.Max, band))
	for _, x := range []*plot.Axis{&a.X, &a.Y} {
		x.LineStyle = draw.LineStyle{Color: slate, Width: 0.8}
		x.Tick.LineStyle = x.LineStyle
		x.Tick.Length = f.text * 0.3
		x.Padding = 0
		l := letters(f.text, false, ink)
		l.XAlign, l.YAlign = x.Tick.Label.XAlign, x.Tick.Label.YAlign
		x.Tick.Label = l
	}
	a.Y.Label.Text = w.Psi
	l := letters(f.text, false, slate)
	l.XAlign, l.YAlign, l.Rotation = a.Y.Label.TextStyle.XAlign, a.Y.Label.TextStyle.YAlign, a.Y.Label.TextStyle.Rotation
	a.Y.Label.TextStyle = l
	a.BackgroundColor = paperWhite
	a.Add(plotter(func(c draw.Canvas, p *plot.Plot) { a.drawBand(c) }))
	return a
}

// plotter is a function that draws on the axes.
type plotter func(c draw.Canvas, p *plot.Plot)

// Plot draws.
func (f plotter) Plot(c draw.Canvas, p *plot.Plot) { f(c, p) }

// x is a day's place.
func (a *axes) x(d assess.Date) float64 { return float64(d.Sub(a.first)) }

// drawBand shades the band and draws its limits.
func (a *axes) drawBand(c draw.Canvas) {
	_, y := a.Transforms(&c)
	low, high := y(a.band[0]), y(a.band[1])
	c.FillPolygon(pale, []vg.Point{{X: c.Min.X, Y: low}, {X: c.Max.X, Y: low}, {X: c.Max.X, Y: high}, {X: c.Min.X, Y: high}})
	for _, l := range []vg.Length{low, high} {
		c.StrokeLine2(draw.LineStyle{Color: rim, Width: 1.1}, c.Min.X, l, c.Max.X, l)
	}
}

// bandEntry explains the band.
func (a *axes) bandEntry() entry {
	return entry{fmt.Sprintf(a.w.BandIs, number(a.band[0]), number(a.band[1])), func(c *draw.Canvas, at vg.Point, w vg.Length) {
		h := a.f.text * 0.4
		c.FillPolygon(pale, []vg.Point{{X: at.X - w/2, Y: at.Y - h}, {X: at.X + w/2, Y: at.Y - h}, {X: at.X + w/2, Y: at.Y + h}, {X: at.X - w/2, Y: at.Y + h}})
		for _, y := range []vg.Length{at.Y - h, at.Y + h} {
			c.StrokeLine2(draw.LineStyle{Color: rim, Width: 1.1}, at.X-w/2, y, at.X+w/2, y)
		}
	}}
}

// psiTicks stand at both limits of the band and at round pressures that do not
// crowd them.
func psiTicks(low, high float64, band [2]float64) []plot.Tick {
	ticks := []plot.Tick{{Value: band[0], Label: number(band[0])}, {Value: band[1], Label: number(band[1])}}
	step := 20.0
	for (high-low)/step > 8 {
		step *= 2.5
	}
	for v := math.Ceil(low/step) * step; v <= high; v += step {
		if math.Abs(v-band[0]) >= step*0.6 && math.Abs(v-band[1]) >= step*0.6 {
			ticks = append(ticks, plot.Tick{Value: v, Label: number(v)})
		}
	}
	return ticks
}

// mostDayTicks is how many days a phone has room for.
const mostDayTicks = 5

// dayTicks stand at the first days of months or years, or at single days in a
// short span.
func dayTicks(w *words, first, last assess.Date) []plot.Tick {
	days := last.Sub(first)
	var ticks []plot.Tick
	add := func(d assess.Date, label string) {
		ticks = append(ticks, plot.Tick{Value: float64(d.Sub(first)), Label: label})
	}
	for _, step := range []int{1, 2, 4, 7, 14} {
		if days/step < mostDayTicks {
			for d := first; !last.Before(d); d = d.AddDays(step) {
				add(d, w.dayMonth(d))
			}
			return ticks
		}
	}
	months := func(d assess.Date) int { return d.Year*12 + int(d.Month) - 1 }
	for _, step := range []int{1, 2, 3, 6, 12, 24, 60, 120, 240, 600, 1200} {
		from := months(first)
		if first.Day > 1 {
			from++
		}
		from = (from + step - 1) / step * step
		if (months(last)-from)/step >= mostDayTicks {
			continue
		}
		for m := from; m <= months(last); m += step {
			d := assess.Date{Year: m / 12, Month: time.Month(m%12 + 1), Day: 1}
			if step >= 12 {
				add(d, strconv.Itoa(d.Year))
			} else {
				add(d, w.monthYear(d))
			}
		}
		return ticks
	}
	return ticks
}
