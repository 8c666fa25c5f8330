package paper

import (
	"fmt"
	"math"
	"strings"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"lazyhand/assess"
	"lazyhand/bot/desk"
)

// Plot draws a house's readings over time for a phone.
func (Painter) Plot(h desk.House) (desk.Picture, error) {
	data, err := drawPlot(h, onPhone)
	if err != nil {
		return desk.Picture{}, fmt.Errorf("draw the plot of %s: %w", h.Site.Line, err)
	}
	return desk.Picture{Name: fileName("plot", h.Site.Line) + ".png", Alt: plotAlt(h), PNG: data}, nil
}

// most days that a plot looks ahead of its story, as a share of the story and
// at least.
const (
	aheadShare = 1.0
	aheadLeast = 365
)

// housePlot is one drawing of a house.
type housePlot struct {
	*axes
	h     desk.House
	s     story
	trend trend
	has   bool             // the trend
	cross *assess.Crossing // drawn, nil for none or one too far off
	jump  *assess.Jump
}

// drawPlot draws a house's readings as a PNG.
func drawPlot(h desk.House, f format) ([]byte, error) {
	h.Band = bandOf(h.Band)
	w, s := wordsIn(h.Lang), storyOf(h)
	first, last, ok := s.span()
	if !ok {
		first, last = h.Today.AddDays(-30), h.Today
	}
	p := &housePlot{h: h, s: s}
	p.trend, p.has = s.trendOf(h)
	if j, jumped := assess.JumpOf(s.since(h), h.Band, h.Today); jumped && h.Assessment.Drift.State == assess.Jumped {
		p.jump = &j
	}
	if c := h.Assessment.Drift.Crosses; c != nil && p.has {
		ahead := max(aheadLeast, int(aheadShare*float64(last.Sub(first))))
		if c.Date.Sub(last) <= ahead && first.Before(c.Date) {
			p.cross = c
			for _, d := range []assess.Date{c.Date, c.Late} {
				if last.Before(d) && d.Sub(last) <= ahead {
					last = d
				}
			}
		}
	}
	lowest, highest := h.Band[0], h.Band[1]
	for _, v := range s.points {
		lowest, highest = min(lowest, v.psi), max(highest, v.psi)
	}
	p.axes = newAxes(f, w, first, last, h.Band, lowest, highest)
	p.Add(plotter(func(c draw.Canvas, _ *plot.Plot) { p.drawTrend(c) }),
		plotter(func(c draw.Canvas, _ *plot.Plot) { p.drawMarks(c) }),
		plotter(func(c draw.Canvas, _ *plot.Plot) { p.drawPoints(c) }))

	img, c := f.canvas()
	c = draw.Crop(c, f.text*0.6, -f.text*0.9, f.text*0.5, -f.text*0.5)
	if f.head {
		c = f.heading(c, title(h.Site), nowText(h, w), trendText(h, w))
	}
	c = f.legend(c, p.legendEntries())
	if len(s.marks) > 0 {
		c = draw.Crop(c, 0, 0, 0, -f.text*1.25*vg.Length(min(len(s.marks), markRows)))
	}
	p.Draw(c)
	return encode(img)
}

// legendEntries explain what is there, and nothing else.
func (p *housePlot) legendEntries() []entry {
	var out []entry
	for k := range kinds {
		if p.s.count(k) == 0 {
			continue
		}
		out = append(out, entry{p.w.Kind[k], func(c *draw.Canvas, at vg.Point, _ vg.Length) { c.DrawGlyphNoClip(glyph(k, p.f.text*0.34), at) }})
	}
	out = append(out, p.bandEntry())
	if p.has || p.jump != nil {
		says := p.w.TrendLine
		if p.jump != nil {
			says = p.w.JumpLine
		}
		out = append(out, entry{says, func(c *draw.Canvas, at vg.Point, w vg.Length) {
			if p.jump == nil {
				h := p.f.text * 0.4
				c.FillPolygon(clayPale, []vg.Point{{X: at.X - w/2, Y: at.Y - h/2}, {X: at.X + w/2, Y: at.Y - h}, {X: at.X + w/2, Y: at.Y + h}, {X: at.X - w/2, Y: at.Y + h/2}})
			}
			c.StrokeLine2(p.trendLine(), at.X-w/2, at.Y, at.X+w/2, at.Y)
		}})
	}
	if p.cross != nil {
		out = append(out, entry{p.w.CrossMark, func(c *draw.Canvas, at vg.Point, w vg.Length) { p.whisker(c, at.X-w*0.45, at, at.X+w*0.45) }})
	}
	return out
}

func (p *housePlot) trendLine() draw.LineStyle {
	return draw.LineStyle{Color: clay, Width: p.f.text * 0.14}
}

// drawTrend draws the trend's line, what it may be besides, and when it leaves
// the band.
func (p *housePlot) drawTrend(c draw.Canvas) {
	x, y := p.Transforms(&c)
	if j := p.jump; j != nil {
		series := p.s.since(p.h)
		for _, l := range []struct {
			from, to assess.Date
			psi      float64
		}{{series[0].Date, j.After, j.From}, {j.By, series[len(series)-1].Date, j.To}} {
			// A level of one day is still to be seen.
			c.StrokeLines(p.trendLine(), c.ClipLinesXY([]vg.Point{{X: x(p.x(l.from)) - p.f.text*0.6, Y: y(l.psi)}, {X: x(p.x(l.to)) + p.f.text*0.6, Y: y(l.psi)}})...)
		}
		return
	}
	if !p.has {
		return
	}
	t := p.trend
	end := t.to
	if p.h.Assessment.Drift.State != assess.Steady && end.Before(p.last) {
		end = p.last
	}
	at := func(d assess.Date, slope float64) vg.Point {
		return vg.Point{X: x(p.x(d)), Y: y(t.level + slope*float64(d.Sub(t.at)))}
	}
	for _, side := range []assess.Date{t.from, end} {
		fan := []vg.Point{at(t.at, t.slope), at(side, t.low), at(side, t.high)}
		if fan = c.ClipPolygonXY(fan); len(fan) > 2 {
			c.FillPolygon(clayPale, fan)
		}
	}
	c.StrokeLines(p.trendLine(), c.ClipLinesXY([]vg.Point{at(t.from, t.slope), at(t.to, t.slope)})...)
	if t.to.Before(end) {
		ahead := p.trendLine()
		ahead.Dashes = []vg.Length{p.f.text * 0.45, p.f.text * 0.3}
		c.StrokeLines(ahead, c.ClipLinesXY([]vg.Point{at(t.to, t.slope), at(end, t.slope)})...)
	}
	if p.cross != nil {
		l := y(limitOf(p.h))
		clamp := func(d assess.Date) vg.Length { return min(max(x(p.x(d)), c.Min.X), c.Max.X) }
		p.whisker(&c, clamp(p.cross.Early), vg.Point{X: x(p.x(p.cross.Date)), Y: l}, clamp(p.cross.Late))
	}
}

// whisker draws a day on the band's limit with the days between which it lies.
func (p *housePlot) whisker(c *draw.Canvas, early vg.Length, at vg.Point, late vg.Length) {
	sty := draw.LineStyle{Color: clay, Width: p.f.text * 0.14}
	h := p.f.text * 0.3
	c.StrokeLine2(sty, early, at.Y, late, at.Y)
	c.StrokeLine2(sty, early, at.Y-h, early, at.Y+h)
	c.StrokeLine2(sty, late, at.Y-h, late, at.Y+h)
	c.DrawGlyphNoClip(draw.GlyphStyle{Color: clay, Radius: p.f.text * 0.36, Shape: hollow{4, math.Pi / 4}}, at)
}

// drawPoints draws the readings, those that count on top, and writes the last
// of them.
func (p *housePlot) drawPoints(c draw.Canvas) {
	x, y := p.Transforms(&c)
	r := p.f.text * 0.36
	if len(p.s.points) > 60 {
		r *= 0.7
	}
	last := -1
	for _, k := range []kind{notFair, street, doubtful, fairHouse} {
		for i, v := range p.s.points {
			if v.kind != k {
				continue
			}
			c.DrawGlyph(glyph(k, r), vg.Point{X: x(p.x(v.day)), Y: y(v.psi)})
			if k == fairHouse {
				last = i
			}
		}
	}
	if last < 0 {
		last = len(p.s.points) - 1
	}
	if last < 0 {
		sty := letters(p.f.text*1.2, true, slate)
		sty.XAlign, sty.YAlign = draw.XCenter, draw.YCenter
		c.FillText(sty, vg.Point{X: c.Center().X, Y: y((p.band[0] + p.band[1]) / 2)}, p.w.NoReadings)
		return
	}
	v := p.s.points[last]
	sty := letters(p.f.text*1.05, true, ink)
	says := number(v.psi)
	at := vg.Point{X: x(p.x(v.day)) - sty.Width(says)/2, Y: y(v.psi) + r*1.8}
	at.X = min(max(at.X, c.Min.X), c.Max.X-sty.Width(says))
	for _, o := range p.s.points { // make way for what lies above it
		if o != v && o.day.Sub(v.day) > -8 && o.day.Sub(v.day) < 8 && o.psi > v.psi && y(o.psi) < at.Y+sty.Font.Size {
			at.Y = y(v.psi) - r*1.8 - sty.Font.Size*0.75
			break
		}
	}
	c.FillText(sty, at, says)
}

// markRows is how many rows of words stand above the axes.
const markRows = 2

// drawMarks draws upright lines where the regulator was worked on, with the
// words above, the newest first. Words that find no room are left out: the
// picture's own words have them.
func (p *housePlot) drawMarks(c draw.Canvas) {
	x, _ := p.Transforms(&c)
	sty := letters(p.f.text*0.95, false, ink)
	line := draw.LineStyle{Color: slate, Width: p.f.text * 0.1, Dashes: []vg.Length{p.f.text * 0.2, p.f.text * 0.2}}
	type label struct{ from, to, at vg.Length }
	var rows [markRows][]label
	gap := p.f.text * 0.4
	leftmost, rightmost := c.Min.X-p.f.text*1.5, c.Max.X+p.f.text*0.4
	for i := len(p.s.marks) - 1; i >= 0; i-- {
		m := p.s.marks[i]
		at := x(p.x(m.day))
		says := within(sty, p.w.marked(m), (rightmost-leftmost)*0.6)
		w := sty.Width(says)
		from := min(max(at-w/2, leftmost), rightmost-w)
		l := label{from, from + w, at}
		row := -1
	rows:
		for r := range rows {
			for _, o := range rows[r] {
				if l.from < o.to+gap && o.from < l.to+gap {
					continue rows
				}
			}
			for lower := range r { // the line must not strike through words
				for _, o := range rows[lower] {
					if at > o.from-gap/2 && at < o.to+gap/2 {
						continue rows
					}
				}
			}
			for upper := r + 1; upper < markRows; upper++ {
				for _, o := range rows[upper] {
					if o.at > l.from-gap/2 && o.at < l.to+gap/2 {
						continue rows
					}
				}
			}
			row = r
			break
		}
		top := c.Max.Y
		if row >= 0 {
			rows[row] = append(rows[row], l)
			top += p.f.text * (0.2 + 1.25*vg.Length(row))
			c.FillText(sty, vg.Point{X: from, Y: top + p.f.text*0.2}, says)
		}
		c.StrokeLine2(line, at, c.Min.Y, at, top)
	}
}

// nowText is a house's pressure in a line.
func nowText(h desk.House, w *words) string {
	a := h.Assessment
	if len(h.Readings) == 0 {
		return ""
	}
	if a.HousePSI == nil || math.IsNaN(*a.HousePSI) {
		return w.Band[assess.BandNone]
	}
	return fmt.Sprintf(w.Now, number(*a.HousePSI), w.Band[a.Band])
}

// trendText is a house's trend in a line, empty when too little is known.
func trendText(h desk.House, w *words) string {
	d := h.Assessment.Drift
	switch {
	case d.State == assess.Jumped:
		return w.Jumped
	case d.PSIPerYear == nil || d.Low == nil || d.High == nil:
		return ""
	case d.State == assess.Steady:
		return w.Steady
	case d.State != assess.Rising && d.State != assess.Falling:
		return ""
	}
	moves, low, high := w.Rises, *d.Low, *d.High
	if d.State == assess.Falling {
		moves, low, high = w.Falls, -*d.High, -*d.Low
	}
	text := fmt.Sprintf(moves, number(math.Abs(*d.PSIPerYear)), number(low), number(high))
	if c := d.Crosses; c != nil {
		text += "; " + crossText(h, w)
	}
	return text
}

// crossText says when a trend leaves the band.
func crossText(h desk.House, w *words) string {
	c := h.Assessment.Drift.Crosses
	when := w.Leaves
	if c.Date.Before(h.Today) {
		when = w.Left
	}
	return fmt.Sprintf(when, w.monthYear(c.Date))
}

// mostNumbers is how many readings of a kind the words of a picture list.
const mostNumbers = 12

// plotAlt is the plot in words, for who cannot see it.
func plotAlt(h desk.House) string {
	h.Band = bandOf(h.Band)
	w, s := wordsIn(h.Lang), storyOf(h)
	parts := []string{title(h.Site) + "."}
	add := func(format string, args ...any) {
		parts = append(parts, strings.TrimSuffix(fmt.Sprintf(format, args...), ".")+".")
	}
	add(w.AltBand, number(h.Band[0]), number(h.Band[1]))
	first, last, ok := s.span()
	if !ok {
		add("%s", w.NoReadings)
		return strings.Join(parts, " ")
	}
	if t := nowText(h, w); t != "" {
		add("%s", t)
	}
	if t := trendText(h, w); t != "" {
		add("%s", t)
	}
	if c := h.Assessment.Drift.Crosses; c != nil {
		add(w.AltCross, w.longDate(c.Date), w.longDate(c.Early), w.longDate(c.Late))
	}
	add(w.AltSpan, len(s.points), w.longDate(first), w.longDate(last))
	for k := range kinds {
		var all []string
		for _, p := range s.points {
			if p.kind == k {
				all = append(all, number(p.psi))
			}
		}
		if all == nil {
			continue
		}
		list := strings.Join(all[max(0, len(all)-mostNumbers):], ", ")
		if more := len(all) - mostNumbers; more > 0 {
			list = fmt.Sprintf(w.AltNewest, list, more)
		}
		add("%s: %s", w.KindLong[k], list)
	}
	marks := s.marks
	if more := len(marks) - mostNumbers; more > 0 {
		add(w.AltMoreWork, more)
		marks = marks[more:]
	}
	for _, m := range marks {
		add("%s: %s", w.longDate(m.day), w.marked(m))
	}
	return strings.Join(parts, " ")
}
