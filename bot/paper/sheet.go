package paper

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
	"time"

	"codeberg.org/go-fonts/liberation/liberationsansbold"
	"codeberg.org/go-fonts/liberation/liberationsansregular"
	"codeberg.org/go-pdf/fpdf"
	"gonum.org/v1/plot/vg"

	"lazyhand/bot/desk"
)

// A sheet is one Letter page, 8.5 by 11 inches; lengths are points.
const (
	pageW, pageH = 612.0, 792.0
	margin       = 48.0
	textW        = pageW - 2*margin
	columnGap    = 24.0
	columnW      = (textW - columnGap) / 2
	typeSize     = 9.5
	lineH        = 12.5
	headH        = 19.0 // of a block's heading
	blockGap     = 9.0
	itemGap      = 2.0
	mostLines    = 4 // of an item
	plotLeast    = 120.0
	plotMost     = 215.0
)

// Sheet writes the customer's sheet: one page to leave at the house.
func (p Painter) Sheet(h desk.House) (desk.File, error) {
	w := wordsIn(h.Lang)
	data, err := p.sheet(h, w)
	if err != nil {
		return desk.File{}, fmt.Errorf("make the sheet of %s: %w", h.Site.Line, err)
	}
	return desk.File{Name: fileName("sheet", h.Site.Line, h.Today.String()) + ".pdf", Title: w.sheet.Title + ": " + title(h.Site), Data: data}, nil
}

// page is a sheet being written.
type page struct {
	*fpdf.Fpdf
	y float64
}

func (p Painter) sheet(h desk.House, w *words) ([]byte, error) {
	s := &w.sheet
	pg := &page{Fpdf: fpdf.NewCustom(&fpdf.InitType{UnitStr: "pt", SizeStr: "Letter"})}
	pg.SetAutoPageBreak(false, 0)
	pg.SetMargins(margin, margin, margin)
	pg.SetCellMargin(0)
	// The library keeps the bytes it is given; the fonts are everybody's.
	pg.AddUTF8FontFromBytes(family, "", slices.Clone(liberationsansregular.TTF))
	pg.AddUTF8FontFromBytes(family, "B", slices.Clone(liberationsansbold.TTF))
	pg.SetTitle(s.Title+": "+title(h.Site), true)
	if p.Shop != "" {
		pg.SetAuthor(clean(p.Shop), true)
	}
	pg.SetSubject(fmt.Sprintf(s.Subject, title(h.Site), h.Today), true)
	pg.SetCreator("Lazyhand", true)
	pg.SetLang(w.Code)
	made := h.Today.In(time.UTC)
	pg.SetCreationDate(made)
	pg.SetModificationDate(made)
	pg.SetCatalogSort(true)
	pg.AddPage()

	f := sheetFacts{h, w}
	pg.head(p, f)
	pg.verdict(f.verdict())
	rows := [][2]block{{f.readings(), f.meaning()}, {f.parts(), f.done()}, {f.advice(), f.care()}}
	foot := pg.footerHeight(s.Footer)
	room := pageH - margin - foot - pg.y
	pg.fit(rows, room-plotLeast-captionH, w)
	used := 0.0
	for _, r := range rows {
		used += pg.rowHeight(r, w)
	}
	plotH := min(plotMost, room-used-captionH)

	pg.row(rows[0], w)
	if err := pg.plot(h, w, plotH); err != nil {
		return nil, err
	}
	pg.row(rows[1], w)
	pg.row(rows[2], w)
	pg.footer(s.Footer)
	var b bytes.Buffer
	if err := pg.Output(&b); err != nil {
		return nil, err
	}
	return b.Bytes(), nil
}

const family = "body"

func (pg *page) ink(bold bool, size float64) {
	style := ""
	if bold {
		style = "B"
	}
	pg.SetFont(family, style, size)
	pg.SetTextColor(28, 36, 48)
}

// line writes a text that is known to fit, its upper edge at y.
func (pg *page) line(x, y, size float64, s string) { pg.Text(x, y+size*0.82, s) }

// short shortens a text to a width in the font that is set.
func (pg *page) short(s string, w float64) string {
	return cut(clean(s), func(s string) bool { return pg.GetStringWidth(s) <= w })
}

// wrap breaks a text into lines of a width in the font that is set, at most so
// many; the last line shows that there was more.
func (pg *page) wrap(s string, w float64, most int) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(clean(s)) {
		for line == "" && pg.GetStringWidth(word) > w { // longer than a line
			r := []rune(word)
			n := 1
			for n < len(r)-1 && pg.GetStringWidth(string(r[:n+1])) <= w {
				n++
			}
			lines, word = append(lines, string(r[:n])), string(r[n:])
		}
		switch {
		case line == "":
			line = word
		case pg.GetStringWidth(line+" "+word) <= w:
			line += " " + word
		default:
			lines, line = append(lines, line), ""
			if pg.GetStringWidth(word) > w {
				word = pg.short(word, w)
			}
			line = word
		}
	}
	if line != "" {
		lines = append(lines, line)
	}
	if len(lines) > most {
		last := lines[most-1] + " " + lines[most]
		lines = append(lines[:most-1:most-1], cut(last+"…", func(s string) bool { return pg.GetStringWidth(s) <= w }))
	}
	return lines
}

// head writes whose sheet it is, and of which house.
func (pg *page) head(p Painter, f sheetFacts) {
	s := &f.w.sheet
	pg.y = margin
	if p.Shop != "" || p.Phone != "" {
		pg.ink(true, 12)
		phone := ""
		if p.Phone != "" {
			phone = pg.short(fmt.Sprintf(s.Phone, p.Phone), textW*0.4)
		}
		pw := pg.GetStringWidth(phone)
		pg.line(pageW-margin-pw, pg.y, 12, phone)
		pg.line(margin, pg.y, 12, pg.short(p.Shop, textW-pw-columnGap))
		pg.y += 17
		pg.SetDrawColor(120, 142, 150)
		pg.SetLineWidth(0.8)
		pg.Line(margin, pg.y, pageW-margin, pg.y)
		pg.y += 10
	}
	pg.ink(true, 18)
	pg.line(margin, pg.y, 18, s.Title)
	pg.y += 24
	pg.ink(true, 12)
	where := title(f.h.Site)
	if z := f.h.Site.Postcode; z != "" && !strings.Contains(where, z) {
		where += " " + z
	}
	pg.line(margin, pg.y, 12, pg.short(where, textW))
	pg.y += 16
	pg.ink(false, typeSize)
	when := fmt.Sprintf(s.Made, f.w.longDate(f.h.Today))
	if v, ok := f.visit(); ok {
		when = fmt.Sprintf(s.Visit, f.w.longDate(v.Date)) + "  ·  " + when
	}
	pg.line(margin, pg.y, typeSize, pg.short(when, textW))
	pg.y += lineH + 7
}

// verdict writes what must be known first, in a shaded field.
func (pg *page) verdict(items []string) {
	const size, pitch, pad = 11.0, 14.5, 8.0
	pg.ink(true, size)
	var lines []string
	most := 6 / len(items[:min(len(items), 3)])
	for _, s := range items[:min(len(items), 3)] {
		lines = append(lines, pg.wrap(s, textW-2*pad, max(2, most))...)
	}
	h := float64(len(lines))*pitch + 2*pad - (pitch - size)
	pg.SetFillColor(226, 234, 236)
	pg.Rect(margin, pg.y, textW, h, "F")
	for i, s := range lines {
		pg.line(margin+pad, pg.y+pad+float64(i)*pitch, size, s)
	}
	pg.y += h + blockGap
}

// lines are a block's items as they are written, each in its lines.
func (pg *page) lines(b block, w *words) [][]string {
	pg.ink(false, typeSize)
	var out [][]string
	for _, s := range b.items {
		out = append(out, pg.wrap(s, columnW-bulletW, mostLines))
	}
	if b.left > 0 {
		out = append(out, []string{fmt.Sprintf(w.AndMore, b.left)})
	}
	return out
}

const bulletW = 10.0

func (pg *page) height(b block, w *words) float64 {
	h := headH
	for _, item := range pg.lines(b, w) {
		h += float64(len(item))*lineH + itemGap
	}
	return h
}

func (pg *page) rowHeight(r [2]block, w *words) float64 {
	return max(pg.height(r[0], w), pg.height(r[1], w)) + blockGap
}

// mostItems is more than a page has room for.
const mostItems = 14

// fit leaves items out, always of the block that makes its row highest, until
// the rows fit. A block keeps its least: those always fit.
func (pg *page) fit(rows [][2]block, room float64, w *words) {
	for i := range rows {
		for j := range rows[i] {
			if b := &rows[i][j]; len(b.items) > mostItems {
				b.left += len(b.items) - mostItems
				b.items = b.items[:mostItems]
			}
		}
	}
	for {
		total := 0.0
		for _, r := range rows {
			total += pg.rowHeight(r, w)
		}
		if total <= room {
			return
		}
		var worst *block
		tall := 0.0
		for i := range rows {
			for j := range rows[i] {
				b := &rows[i][j]
				if h := pg.height(*b, w); len(b.items) > b.least && h > tall && h >= pg.rowHeight(rows[i], w)-blockGap-0.01 {
					worst, tall = b, h
				}
			}
		}
		for i := range rows { // all rows are held up by what stays: cut into that
			for j := range rows[i] {
				b := &rows[i][j]
				if worst == nil && len(b.items) > 1 {
					worst = b
				}
			}
		}
		if worst == nil {
			return
		}
		worst.items = worst.items[:len(worst.items)-1]
		worst.left++
	}
}

// row writes two blocks side by side.
func (pg *page) row(r [2]block, w *words) {
	for i, b := range r {
		x, y := margin+float64(i)*(columnW+columnGap), pg.y
		pg.ink(true, 10.5)
		pg.line(x, y, 10.5, pg.short(b.head, columnW))
		pg.SetDrawColor(120, 142, 150)
		pg.SetLineWidth(0.5)
		pg.Line(x, y+13.5, x+columnW, y+13.5)
		y += headH
		lines := pg.lines(b, w)
		for j, item := range lines {
			if j < len(b.items) {
				pg.line(x, y, typeSize, "•")
			}
			for _, s := range item {
				pg.line(x+bulletW, y, typeSize, s)
				y += lineH
			}
			y += itemGap
		}
	}
	pg.y += pg.rowHeight(r, w)
}

const captionH = 16.0

// plot puts the plot of the house across the page.
func (pg *page) plot(h desk.House, w *words, height float64) error {
	data, err := drawPlot(h, format{w: textW, h: vg.Length(height), dpi: 200, text: 9})
	if err != nil {
		return err
	}
	pg.ink(false, 8.5)
	pg.line(margin, pg.y, 8.5, pg.short(w.sheet.Caption, textW))
	pg.y += captionH - 4
	opt := fpdf.ImageOptions{ImageType: "PNG"}
	pg.RegisterImageOptionsReader("plot", opt, bytes.NewReader(data))
	pg.ImageOptions("plot", margin, pg.y, textW, height, false, opt, 0, "")
	pg.y += height + 4
	return pg.Error()
}

func (pg *page) footerHeight(s string) float64 {
	pg.ink(true, 9)
	return float64(len(pg.wrap(s, textW, 3)))*12 + 8
}

// footer writes who decides, at the foot of the page.
func (pg *page) footer(s string) {
	y := pageH - margin - pg.footerHeight(s)
	pg.SetDrawColor(120, 142, 150)
	pg.SetLineWidth(0.8)
	pg.Line(margin, y, pageW-margin, y)
	pg.ink(true, 9)
	for i, l := range pg.wrap(s, textW, 3) {
		pg.line(margin, y+7+float64(i)*12, 9, l)
	}
}
