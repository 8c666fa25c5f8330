package paper

import (
	"bytes"
	"fmt"
	"image/color"
	"math"

	xfont "golang.org/x/image/font"
	"gonum.org/v1/plot"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/text"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgimg"
)

// format is the size of a picture. Lengths are points.
type format struct {
	w, h vg.Length
	dpi  int
	text vg.Length // the size of the smallest type
	head bool      // with the heading; on a sheet the page has it
}

// onPhone is a picture for a chat: 1080 by 720 pixels. A phone shows it about
// 380 points wide, so that its smallest type is about 11 points high there.
var onPhone = format{w: 540, h: 360, dpi: 144, text: 15.5, head: true}

// The colours: ink, slate and clay on white. None says anything alone.
var (
	paperWhite = color.Gray{255}
	ink        = color.RGBA{28, 36, 48, 255}
	slate      = color.RGBA{96, 108, 122, 255}
	pale       = color.RGBA{226, 234, 236, 255}
	rim        = color.RGBA{120, 142, 150, 255}
	clay       = color.RGBA{158, 84, 48, 255}
	clayPale   = color.NRGBA{158, 84, 48, 44}
)

// letters is a style of type.
func letters(size vg.Length, bold bool, c color.Color) text.Style {
	f := font.Font{Typeface: "Liberation", Variant: "Sans", Size: size}
	if bold {
		f.Weight = xfont.WeightBold
	}
	return text.Style{Color: c, Font: f, Handler: plot.DefaultTextHandler}
}

// within shortens a text to a width.
func within(sty text.Style, s string, w vg.Length) string {
	return cut(s, func(s string) bool { return sty.Width(s) <= w })
}

// canvas is a white picture of a format.
func (f format) canvas() (*vgimg.Canvas, draw.Canvas) {
	c := vgimg.NewWith(vgimg.UseWH(f.w, f.h), vgimg.UseDPI(f.dpi), vgimg.UseBackgroundColor(paperWhite))
	return c, draw.New(c)
}

// encode writes a canvas as a PNG.
func encode(c *vgimg.Canvas) ([]byte, error) {
	var b bytes.Buffer
	if _, err := (vgimg.PngCanvas{Canvas: c}).WriteTo(&b); err != nil {
		return nil, fmt.Errorf("write the picture: %w", err)
	}
	return b.Bytes(), nil
}

// heading writes lines at the top of c, the first one large, and returns what
// is left of it.
func (f format) heading(c draw.Canvas, lines ...string) draw.Canvas {
	y := c.Max.Y
	for i, s := range lines {
		if s == "" {
			continue
		}
		sty := letters(f.text, false, ink)
		if i == 0 {
			sty = letters(f.text*1.3, true, ink)
		}
		y -= sty.Font.Size * 1.05
		c.FillText(sty, vg.Point{X: c.Min.X, Y: y}, within(sty, s, c.Max.X-c.Min.X))
		y -= sty.Font.Size * 0.25
	}
	return draw.Crop(c, 0, 0, 0, y-c.Max.Y-f.text*0.2)
}

// entry is one line of a legend: a drawing and what it means.
type entry struct {
	says string
	draw func(c *draw.Canvas, at vg.Point, w vg.Length)
}

// legend writes entries at the foot of c, in as many rows as they need, and
// returns what is left of it.
func (f format) legend(c draw.Canvas, entries []entry) draw.Canvas {
	sty := letters(f.text, false, ink)
	sample, gap, pitch := f.text*1.5, f.text*1.0, f.text*1.35
	type place struct {
		row  int
		x    vg.Length
		says string
	}
	var places []place
	row, x := 0, c.Min.X
	for _, e := range entries {
		says := within(sty, e.says, c.Max.X-c.Min.X-sample-f.text*0.4)
		w := sample + f.text*0.4 + sty.Width(says)
		if x > c.Min.X && x+w > c.Max.X {
			row, x = row+1, c.Min.X
		}
		places = append(places, place{row, x, says})
		x += w + gap
	}
	rows := row + 1
	if len(entries) == 0 {
		rows = 0
	}
	for i, p := range places {
		y := c.Min.Y + pitch*vg.Length(rows-1-p.row) + f.text*0.25
		entries[i].draw(&c, vg.Point{X: p.x + sample/2, Y: y + f.text*0.33}, sample)
		c.FillText(sty, vg.Point{X: p.x + sample + f.text*0.4, Y: y}, p.says)
	}
	return draw.Crop(c, 0, 0, pitch*vg.Length(rows)+f.text*0.3, 0)
}

// glyph is the shape of a kind of reading.
func glyph(k kind, r vg.Length) draw.GlyphStyle {
	switch k {
	case fairHouse:
		return draw.GlyphStyle{Color: ink, Radius: r, Shape: draw.CircleGlyph{}}
	case doubtful:
		return draw.GlyphStyle{Color: ink, Radius: r * 1.25, Shape: diamond{}}
	case street:
		return draw.GlyphStyle{Color: ink, Radius: r * 1.15, Shape: hollow{3, math.Pi / 2}}
	}
	return draw.GlyphStyle{Color: ink, Radius: r, Shape: stroked{draw.CrossGlyph{}}}
}

// diamond is a hollow square on its corner, white within so that lines behind
// do not fill it.
type diamond struct{}

// DrawGlyph draws it.
func (diamond) DrawGlyph(c *draw.Canvas, s draw.GlyphStyle, at vg.Point) {
	hollow{4, math.Pi / 2}.DrawGlyph(c, s, at)
}

// hollow is a regular polygon, white within, with a corner at an angle.
type hollow struct {
	corners int
	angle   float64
}

// DrawGlyph draws it.
func (h hollow) DrawGlyph(c *draw.Canvas, s draw.GlyphStyle, at vg.Point) {
	var pts []vg.Point
	for i := range h.corners + 1 {
		a := h.angle + 2*math.Pi*float64(i%h.corners)/float64(h.corners)
		pts = append(pts, vg.Point{X: at.X + s.Radius*vg.Length(math.Cos(a)), Y: at.Y + s.Radius*vg.Length(math.Sin(a))})
	}
	c.FillPolygon(paperWhite, pts)
	pts = append(pts, pts[1]) // closes the corner
	c.StrokeLines(draw.LineStyle{Color: s.Color, Width: max(1, s.Radius*0.36)}, pts)
}

// filled is a regular polygon with a corner at an angle.
type filled hollow

// DrawGlyph draws it.
func (f filled) DrawGlyph(c *draw.Canvas, s draw.GlyphStyle, at vg.Point) {
	var pts []vg.Point
	for i := range f.corners {
		a := f.angle + 2*math.Pi*float64(i)/float64(f.corners)
		pts = append(pts, vg.Point{X: at.X + s.Radius*vg.Length(math.Cos(a)), Y: at.Y + s.Radius*vg.Length(math.Sin(a))})
	}
	c.FillPolygon(s.Color, pts)
}

// stroked draws a glyph of lines with a stroke that is seen.
type stroked struct{ draw.GlyphDrawer }

// DrawGlyph draws it.
func (g stroked) DrawGlyph(c *draw.Canvas, s draw.GlyphStyle, at vg.Point) {
	r := s.Radius * 0.8
	sty := draw.LineStyle{Color: s.Color, Width: max(1, s.Radius*0.4)}
	c.StrokeLine2(sty, at.X-r, at.Y-r, at.X+r, at.Y+r)
	c.StrokeLine2(sty, at.X-r, at.Y+r, at.X+r, at.Y-r)
}
