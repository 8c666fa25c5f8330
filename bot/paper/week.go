package paper

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/store"
)

// Week draws the pressures that the visits of a span support against the band,
// for a phone.
func (Painter) Week(s desk.Summary) (desk.Picture, error) {
	wk := weekOf(s)
	data, err := wk.draw(onPhone)
	if err != nil {
		return desk.Picture{}, fmt.Errorf("draw the pressures of %s to %s: %w", s.From, s.To.AddDays(-1), err)
	}
	return desk.Picture{Name: fileName("pressures", s.From.String(), s.To.AddDays(-1).String()) + ".png", Alt: wk.alt(), PNG: data}, nil
}

// week is what the picture of a span shows.
type week struct {
	s     desk.Summary
	w     *words
	shown []store.SpanReport // with a pressure, oldest first
	none  int                // reports without
}

// standings are the places a house can have, by what is drawn first.
var standings = [...]assess.Band{assess.BandIn, assess.BandLow, assess.BandHigh, assess.OverRelief}

func weekOf(s desk.Summary) week {
	s.Band = bandOf(s.Band)
	wk := week{s: s, w: wordsIn(s.Lang)}
	for _, r := range s.Reports {
		if r.HousePSI == nil || r.Day.IsZero() || math.IsNaN(*r.HousePSI) || *r.HousePSI < -1 || *r.HousePSI > mostPSI {
			wk.none++
			continue
		}
		wk.shown = append(wk.shown, r)
	}
	return wk
}

// where places a report by its own pressure and today's band.
func (wk week) where(r store.SpanReport) assess.Band {
	switch psi := *r.HousePSI; {
	case r.Band == assess.OverRelief:
		return assess.OverRelief
	case psi < wk.s.Band[0]:
		return assess.BandLow
	case psi > wk.s.Band[1]:
		return assess.BandHigh
	}
	return assess.BandIn
}

// at returns the reports that stand somewhere.
func (wk week) at(b assess.Band) []store.SpanReport {
	var out []store.SpanReport
	for _, r := range wk.shown {
		if wk.where(r) == b {
			out = append(out, r)
		}
	}
	return out
}

// lines are the words above the picture.
func (wk week) lines() []string {
	w, out := wk.w, []string{fmt.Sprintf(wk.w.WeekTitle, wk.w.longDate(wk.s.From), wk.w.longDate(wk.s.To.AddDays(-1)))}
	if len(wk.shown) == 0 {
		out = append(out, w.WeekEmpty)
	} else {
		out = append(out, fmt.Sprintf(w.WeekCount, len(wk.shown))+" "+
			fmt.Sprintf(w.WeekOut, len(wk.at(assess.BandLow)), len(wk.at(assess.BandHigh))+len(wk.at(assess.OverRelief))))
	}
	if wk.none > 0 {
		out = append(out, fmt.Sprintf(w.WeekNone, wk.none))
	}
	return out
}

func (wk week) glyph(b assess.Band, r vg.Length) draw.GlyphStyle {
	switch b {
	case assess.BandLow:
		return draw.GlyphStyle{Color: ink, Radius: r * 1.3, Shape: filled{3, -math.Pi / 2}}
	case assess.BandHigh:
		return draw.GlyphStyle{Color: ink, Radius: r * 1.3, Shape: filled{3, math.Pi / 2}}
	case assess.OverRelief:
		return draw.GlyphStyle{Color: clay, Radius: r * 1.4, Shape: filled{4, math.Pi / 4}}
	}
	return draw.GlyphStyle{Color: ink, Radius: r, Shape: draw.CircleGlyph{}}
}

// mostNamed is how many houses out of the band a picture names.
const mostNamed = 5

func (wk week) draw(f format) ([]byte, error) {
	last := wk.s.To.AddDays(-1)
	if last.Before(wk.s.From) {
		last = wk.s.From
	}
	lowest, highest := wk.s.Band[0], wk.s.Band[1]
	for _, r := range wk.shown {
		lowest, highest = min(lowest, *r.HousePSI), max(highest, *r.HousePSI)
	}
	a := newAxes(f, wk.w, wk.s.From, last, wk.s.Band, lowest, highest)
	a.Add(plotter(func(c draw.Canvas, _ *plot.Plot) { wk.drawReports(a, c) }))

	img, c := f.canvas()
	c = draw.Crop(c, f.text*0.6, -f.text*0.9, f.text*0.5, -f.text*0.5)
	c = f.heading(c, wk.lines()...)
	var entries []entry
	for _, b := range standings {
		if len(wk.at(b)) > 0 {
			entries = append(entries, entry{wk.w.Standing[b], func(c *draw.Canvas, at vg.Point, _ vg.Length) { c.DrawGlyphNoClip(wk.glyph(b, f.text*0.34), at) }})
		}
	}
	c = f.legend(c, append(entries, a.bandEntry()))
	a.Draw(c)
	return encode(img)
}

// drawReports draws one shape a report, those of a day side by side, and names
// the houses that lie farthest out.
func (wk week) drawReports(a *axes, c draw.Canvas) {
	x, y := a.Transforms(&c)
	f := a.f
	r := f.text * 0.36
	if len(wk.shown) > 60 {
		r *= 0.7
	}
	daily := map[assess.Date]int{}
	for _, v := range wk.shown {
		daily[v.Day]++
	}
	width := (x(1) - x(0)) * 0.7
	seen := map[assess.Date]int{}
	var places []vg.Point
	for _, v := range wk.shown {
		i, n := seen[v.Day], daily[v.Day]
		seen[v.Day]++
		step := min(r*2.4, width/vg.Length(n))
		at := vg.Point{X: x(a.x(v.Day)) + step*(vg.Length(i)-vg.Length(n-1)/2), Y: y(*v.HousePSI)}
		at.X = min(max(at.X, c.Min.X), c.Max.X)
		c.DrawGlyph(wk.glyph(wk.where(v), r), at)
		places = append(places, at)
	}
	out := make([]int, 0, len(wk.shown))
	for i, v := range wk.shown {
		if wk.where(v) != assess.BandIn {
			out = append(out, i)
		}
	}
	slices.SortStableFunc(out, func(i, j int) int { return -cmpOutside(wk, i, j) })
	sty := letters(f.text*0.9, false, ink)
	var taken []vg.Rectangle
	for _, p := range places {
		taken = append(taken, vg.Rectangle{Min: vg.Point{X: p.X - r, Y: p.Y - r}, Max: vg.Point{X: p.X + r, Y: p.Y + r}})
	}
	named := 0
	for _, i := range out {
		if named == mostNamed {
			break
		}
		v, p := wk.shown[i], places[i]
		says := within(sty, clean(v.Line)+" "+number(*v.HousePSI), (c.Max.X-c.Min.X)*0.5)
		w, h := sty.Width(says), sty.Font.Size
		for _, at := range []vg.Point{{X: p.X + r*1.8, Y: p.Y - h*0.35}, {X: p.X - r*1.8 - w, Y: p.Y - h*0.35}, {X: p.X - w/2, Y: p.Y + r*1.8}, {X: p.X - w/2, Y: p.Y - r*1.8 - h*0.8}} {
			box := vg.Rectangle{Min: at, Max: vg.Point{X: at.X + w, Y: at.Y + h*0.8}}
			if box.Min.X < c.Min.X || box.Max.X > c.Max.X || box.Min.Y < c.Min.Y || box.Max.Y > c.Max.Y ||
				slices.ContainsFunc(taken, func(o vg.Rectangle) bool {
					return box.Min.X < o.Max.X && o.Min.X < box.Max.X && box.Min.Y < o.Max.Y && o.Min.Y < box.Max.Y
				}) {
				continue
			}
			c.FillText(sty, at, says)
			taken = append(taken, box)
			named++
			break
		}
	}
}

// cmpOutside compares how far two reports lie outside the band.
func cmpOutside(wk week, i, j int) int {
	far := func(i int) float64 {
		psi := *wk.shown[i].HousePSI
		return max(wk.s.Band[0]-psi, psi-wk.s.Band[1])
	}
	switch {
	case far(i) < far(j):
		return -1
	case far(i) > far(j):
		return 1
	}
	return 0
}

// alt is the picture in words.
func (wk week) alt() string {
	w := wk.w
	parts := []string{}
	for _, l := range wk.lines() {
		parts = append(parts, strings.TrimSuffix(l, ".")+".")
	}
	parts = append(parts, fmt.Sprintf(w.AltBand, number(wk.s.Band[0]), number(wk.s.Band[1]))+".")
	for _, b := range standings {
		list := wk.at(b)
		if len(list) == 0 {
			continue
		}
		if b == assess.BandIn {
			var psi []float64
			for _, r := range list {
				psi = append(psi, *r.HousePSI)
			}
			parts = append(parts, fmt.Sprintf(w.AltStanding, w.Standing[b], fmt.Sprintf("%d (%s–%s %s)", len(list), number(slices.Min(psi)), number(slices.Max(psi)), w.Psi)))
			continue
		}
		var names []string
		for _, r := range list[:min(len(list), mostNumbers)] {
			names = append(names, clean(r.Line)+" "+number(*r.HousePSI))
		}
		if more := len(list) - len(names); more > 0 {
			names = append(names, fmt.Sprintf(w.AndMore, more))
		}
		parts = append(parts, fmt.Sprintf(w.AltStanding, w.Standing[b], strings.Join(names, ", ")))
	}
	return strings.Join(parts, " ")
}
