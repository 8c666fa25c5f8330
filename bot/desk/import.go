package desk

import (
	"bufio"
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/csv"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// Refused is a row that cannot be imported.
type Refused struct {
	Line int    // in the file, the first is 1
	Why  string // what is wrong and what would be right
}

// String is the refusal in one line.
func (r Refused) String() string { return fmt.Sprintf("line %d: %s", r.Line, r.Why) }

// ImportReport says what an import did, or would do.
type ImportReport struct {
	Rows    int // in the file, without its heading
	Known   int // on record already: the same rows came before
	Kept    int // readings filed; 0 in a dry run
	Refused []Refused
}

// ErrRefused means that an import was not made because rows were refused; the
// report lists them.
var ErrRefused = errors.New("some rows cannot be taken, so none was")

// ImportOptions say how to read a shop's list.
type ImportOptions struct {
	DryRun bool
	// Columns names the list's columns where their headings do not: "site" to
	// "Property", say. The keys are those of the export.
	Columns  map[string]string
	Now      time.Time // a reading after it is refused
	Progress func(rows int)
}

// headings are the headings by which a column is known, lower case. The first
// of each is the export's.
var headings = map[string][]string{
	"site":     {"site", "address", "house", "street", "street address", "location", "property", "direccion", "dirección", "casa", "domicilio"},
	"town":     {"town", "city", "ciudad"},
	"postcode": {"postcode", "zip", "zip code", "zipcode", "postal code", "codigo postal", "código postal"},
	"date":     {"date", "day", "visit", "visit date", "fecha"},
	"said_at":  {"said_at"},
	"who":      {"who", "tech", "technician", "plumber", "name", "by", "tecnico", "técnico", "plomero"},
	"author":   {"author"},
	"psi":      {"psi", "pressure", "reading", "static", "static pressure", "pressure (psi)", "presion", "presión", "lectura"},
	"point":    {"point", "where", "test point", "tap", "at", "punto", "llave"},
	"heater":   {"heater", "heater state", "calentador"},
	"flow":     {"flow", "flujo"},
	"peak":     {"peak", "maxima", "máxima"},
	"when":     {"when", "before/after"},
	"message":  {"message"},
	"also":     {"also"},
	"notes":    {"notes", "note", "remarks", "comment", "comments", "notas"},
	// What the export adds and an import works out anew.
	"side": {"side"}, "fair": {"fair"},
}

const (
	mostCell = 4000    // bytes of a cell
	mostRows = 1 << 20 // of a list
	mostPSI  = 300     // what a service plumber's gauge shows at most
)

// Import takes a shop's older list of readings, as CSV or JSON lines, in the
// shape of the export or of the shop's own making. Each row, or each message of
// an export, becomes a message of kind "imported", so that a rebuild keeps it;
// nobody is alerted and nothing falls due by it. It is all or nothing: a row
// that cannot be taken is named with its reason, and then none is. Rows that
// were imported before change nothing.
func (d *Desk) Import(ctx context.Context, r io.Reader, opt ImportOptions) (ImportReport, error) {
	var out ImportReport
	rows, err := d.readRows(r, opt, &out)
	if err != nil {
		return out, err
	}
	if len(out.Refused) > 0 && !opt.DryRun {
		return out, fmt.Errorf("%d of %d rows: %w", len(out.Refused), out.Rows, ErrRefused)
	}
	done := 0
	err = d.store.Write(ctx, func(tx *store.Tx) error {
		done, out.Kept, out.Known = 0, 0, 0
		for _, g := range rows {
			if err := ctx.Err(); err != nil {
				return err
			}
			fresh, err := d.importGroup(tx, g)
			if err != nil {
				return fmt.Errorf("line %d: %w", g.line, err)
			}
			if !fresh {
				out.Known += g.rows
			} else {
				out.Kept += g.readings
			}
			if done += g.rows; opt.Progress != nil && done%500 < g.rows {
				opt.Progress(done)
			}
		}
		if opt.DryRun {
			return errShown
		}
		return nil
	})
	if opt.Progress != nil && err == nil {
		opt.Progress(done)
	}
	if errors.Is(err, errShown) {
		out.Kept, err = 0, nil
	}
	if err != nil {
		out.Kept, out.Known = 0, 0
		return out, fmt.Errorf("import (nothing was taken): %w", err)
	}
	if out.Kept > 0 {
		if err := d.store.IndexWords(ctx); err != nil {
			return out, fmt.Errorf("all was taken, but the search is not up to date yet: %w", err)
		}
	}
	return out, nil
}

// group is one message to be: a row of a list, or the rows of one message of an
// export.
type group struct {
	line, rows, readings int
	key, text            string
	author, name         string
	at                   time.Time
	frame                intents.Frame
	message              string // of the export
}

// readRows reads the whole list, so that it is known to be right before
// anything is taken.
func (d *Desk) readRows(r io.Reader, opt ImportOptions, out *ImportReport) ([]group, error) {
	buf := bufio.NewReader(r)
	if bom, err := buf.Peek(3); err == nil && bytes.Equal(bom, []byte("\xef\xbb\xbf")) {
		if _, err := buf.Discard(3); err != nil {
			return nil, err
		}
	}
	next, err := rowsOf(buf, opt.Columns)
	if err != nil {
		return nil, err
	}
	var list []group
	for {
		line, cells, err := next()
		if errors.Is(err, io.EOF) {
			name(list)
			return list, nil
		}
		var bad *badRow
		if err != nil && !errors.As(err, &bad) {
			return nil, fmt.Errorf("read the list: %w", err)
		}
		if out.Rows++; out.Rows > mostRows {
			return nil, fmt.Errorf("the list has more than %d rows: import it in parts", mostRows)
		}
		var g group
		if err == nil {
			g, err = d.row(cells, opt.Now)
		}
		if err != nil {
			if len(out.Refused) < 10_000 {
				out.Refused = append(out.Refused, Refused{line, err.Error()})
			}
			continue
		}
		g.line, g.rows = line, 1
		if n := len(list); n > 0 && g.message != "" && list[n-1].message == g.message && list[n-1].frame.Site == g.frame.Site &&
			list[n-1].frame.Date == g.frame.Date && list[n-1].author == g.author {
			last := &list[n-1]
			last.rows++
			last.readings += g.readings
			last.text += "\n" + g.text
			last.frame.Statements = append(last.frame.Statements, g.frame.Statements...)
			continue
		}
		list = append(list, g)
	}
}

// name names each group after what it says and which of its equals it is.
func name(list []group) {
	seen := map[string]int{}
	for i := range list {
		g := &list[i]
		sum := sha256.Sum256([]byte(g.author + "\n" + g.at.UTC().Format(time.RFC3339) + "\n" + g.text))
		k := hex.EncodeToString(sum[:12])
		seen[k]++
		g.key = fmt.Sprintf("import/%s.%d", k, seen[k])
	}
}

// badRow is a row that the file's own form spoils.
type badRow struct{ why string }

func (b *badRow) Error() string { return b.why }

// rowsOf reads the list's form by its first character and its headings.
func rowsOf(buf *bufio.Reader, named map[string]string) (func() (int, map[string]string, error), error) {
	for {
		c, err := buf.Peek(1)
		if err != nil {
			return nil, errors.New("the list is empty")
		}
		if c[0] == ' ' || c[0] == '\n' || c[0] == '\r' || c[0] == '\t' {
			if _, err := buf.Discard(1); err != nil {
				return nil, err
			}
			continue
		}
		if c[0] == '{' {
			return jsonRows(buf), nil
		}
		break
	}
	c := csv.NewReader(buf)
	c.FieldsPerRecord, c.ReuseRecord = -1, true
	if head, err := buf.Peek(4096); err == nil || len(head) > 0 {
		first, _, _ := bytes.Cut(head, []byte("\n"))
		if bytes.Count(first, []byte(";")) > bytes.Count(first, []byte(",")) {
			c.Comma = ';' // as spreadsheets write where the comma is the decimal mark
		} else if bytes.Count(first, []byte("\t")) > bytes.Count(first, []byte(",")) {
			c.Comma = '\t'
		}
	}
	first, err := c.Read()
	if err != nil {
		return nil, fmt.Errorf("read the headings of the list: %w", err)
	}
	at, err := columnsOf(first, named)
	if err != nil {
		return nil, err
	}
	return func() (int, map[string]string, error) {
		for {
			rec, err := c.Read()
			var form *csv.ParseError
			if errors.As(err, &form) {
				return form.StartLine, nil, &badRow{"the row's quotes do not close or stand in the middle of a cell"}
			}
			if err != nil {
				return 0, nil, err
			}
			line, _ := c.FieldPos(0)
			cells := map[string]string{}
			empty := true
			for name, i := range at {
				if i < len(rec) {
					cells[name] = store.Uncell(strings.TrimSpace(rec[i]))
					empty = empty && cells[name] == ""
				}
			}
			if !empty {
				return line, cells, nil
			}
		}
	}, nil
}

// columnsOf finds the columns by their headings.
func columnsOf(first []string, named map[string]string) (map[string]int, error) {
	at := map[string]int{}
	find := func(heading string) int {
		return slices.IndexFunc(first, func(h string) bool {
			return strings.EqualFold(strings.TrimSpace(strings.ReplaceAll(h, "_", " ")), strings.ReplaceAll(heading, "_", " "))
		})
	}
	for name, heading := range named {
		if _, ok := headings[name]; !ok {
			return nil, fmt.Errorf("there is no column %q to map to: the columns are site, town, postcode, date, who, psi, point, heater, flow, peak, when, notes", name)
		}
		i := find(heading)
		if i < 0 {
			return nil, fmt.Errorf("the list has no column headed %q: it has %s", heading, strings.Join(first, ", "))
		}
		at[name] = i
	}
	for name, list := range headings {
		for _, h := range list {
			if _, ok := at[name]; !ok {
				if i := find(h); i >= 0 {
					at[name] = i
				}
			}
		}
	}
	for _, need := range []string{"site", "date", "psi"} {
		if _, ok := at[need]; !ok {
			return nil, fmt.Errorf("the list has no column for %s: head it %q, or map it; it has %s", need, need, strings.Join(first, ", "))
		}
	}
	return at, nil
}

func jsonRows(buf *bufio.Reader) func() (int, map[string]string, error) {
	n := 0
	return func() (int, map[string]string, error) {
		for {
			line, err := buf.ReadBytes('\n')
			if len(line) == 0 && err != nil {
				return n, nil, err
			}
			n++
			if len(bytes.TrimSpace(line)) == 0 {
				continue
			}
			var raw map[string]json.RawMessage
			if err := json.Unmarshal(line, &raw); err != nil {
				return n, nil, &badRow{"this is no JSON object"}
			}
			cells := map[string]string{}
			for k, v := range raw {
				var s string
				switch {
				case string(v) == "null":
				case json.Unmarshal(v, &s) == nil:
					cells[k] = s
				case k == "peak":
					cells[k] = map[string]string{"true": "yes"}[string(v)]
				default:
					cells[k] = string(v)
				}
			}
			return n, cells, nil
		}
	}
}

// row reads one row. Nothing is guessed: what cannot be read is refused.
func (d *Desk) row(cells map[string]string, now time.Time) (group, error) {
	g := group{message: cells["message"], name: cells["who"]}
	for name, c := range cells {
		if len(c) > mostCell {
			return g, fmt.Errorf("the %s is longer than %d characters", name, mostCell)
		}
		if !printable(c) {
			return g, fmt.Errorf("the %s holds characters that are no text", name)
		}
	}
	_, ours := cells["message"]
	if err := d.rowSite(&g, cells, ours); err != nil {
		return g, err
	}
	var err error
	if g.frame.Date, err = rowDate(cells["date"]); err != nil {
		return g, err
	}
	g.at = g.frame.Date.In(d.opt.Zone).Add(12 * time.Hour)
	if s := cells["said_at"]; s != "" {
		if g.at, err = time.Parse(time.RFC3339, s); err != nil {
			return g, fmt.Errorf("said_at %q is no time: write it as 2026-06-15T10:00:00Z", s)
		}
	}
	if today := assess.DateOf(now.In(d.opt.Zone)); !now.IsZero() && today.Before(g.frame.Date) {
		return g, fmt.Errorf("the day %s has not come yet", g.frame.Date)
	}
	if g.frame.Date.Year < 1900 {
		return g, fmt.Errorf("the day %s cannot be right", g.frame.Date)
	}
	if g.author = cells["author"]; g.author == "" {
		g.author = cells["who"]
	}
	if g.author == "" {
		g.author = "import"
	}
	also, err := rowAlso(cells["also"])
	if err != nil {
		return g, err
	}
	if notes := cells["notes"]; notes != "" {
		f := d.parser.Parse(notes, intents.Context{Today: g.frame.Date})
		for _, s := range reports(f) {
			if _, reading := s.(assess.Reading); !reading {
				also = append(also, s)
			}
		}
	}
	reading, told, err := d.rowReading(cells, ours)
	if err != nil {
		return g, err
	}
	if told {
		g.readings = 1
		g.frame.Statements = append(g.frame.Statements, reading)
	}
	g.frame.Statements = append(g.frame.Statements, also...)
	if len(g.frame.Statements) == 0 {
		return g, errors.New("there is no pressure in the row")
	}
	g.text = rowText(cells)
	return g, nil
}

// rowText is the row as it is kept and searched for.
func rowText(cells map[string]string) string {
	var parts []string
	for _, name := range []string{"date", "site", "town", "postcode", "who", "psi", "point", "heater", "flow", "peak", "when", "notes", "also"} {
		if cells[name] != "" {
			parts = append(parts, cells[name])
		}
	}
	return strings.Join(parts, " | ")
}

func printable(s string) bool {
	return !strings.ContainsFunc(s, func(r rune) bool { return r == '\uFFFD' || r < ' ' && r != '\t' && r != '\n' && r != '\r' || r == 0x7f })
}

// rowSite reads the house. An export's is taken as it stands, another's by the
// parser, so that "123 Elm Street" is the house that the crew calls "123 Elm".
func (d *Desk) rowSite(g *group, cells map[string]string, ours bool) error {
	line := cells["site"]
	if line == "" {
		return errors.New("there is no house in the row")
	}
	g.frame.Site, g.frame.Town, g.frame.Postcode = line, cells["town"], cells["postcode"]
	if ours {
		return nil
	}
	f := d.parser.Parse(line, intents.Context{})
	if f.Site == "" || len(f.Unclear) > 0 || len(reports(f)) > 0 {
		return fmt.Errorf("%q is no house that can be read: write number and street", quoteCell(line))
	}
	g.frame.Site = f.Site
	if g.frame.Town == "" {
		g.frame.Town = f.Town
	}
	if g.frame.Postcode == "" {
		g.frame.Postcode = f.Postcode
	}
	return nil
}

func quoteCell(s string) string {
	if r := []rune(s); len(r) > 60 {
		return string(r[:59]) + "…"
	}
	return s
}

// dateForms are the ways in which a date may be written. A shop of the trade's
// home writes the month first.
var dateForms = []string{time.DateOnly, "1/2/2006", "01/02/2006", "1/2/06", "2006/01/02", "Jan 2, 2006", "2 Jan 2006", time.RFC3339, "2006-01-02 15:04:05"}

func rowDate(s string) (assess.Date, error) {
	for _, form := range dateForms {
		if t, err := time.Parse(form, s); err == nil {
			return assess.DateOf(t), nil
		}
	}
	if s == "" {
		return assess.Date{}, errors.New("there is no date in the row")
	}
	return assess.Date{}, fmt.Errorf("%q is no date: write it as 2026-06-15 or 6/15/2026", quoteCell(s))
}

func rowAlso(s string) ([]assess.Statement, error) {
	if s == "" {
		return nil, nil
	}
	var f intents.Frame
	if err := json.Unmarshal([]byte(`{"statements":`+s+`}`), &f); err != nil {
		return nil, fmt.Errorf("what else was told cannot be read: %w", err)
	}
	return reports(f), nil
}

// rowReading reads the pressure and what is told with it; told is false when
// the row, one of an export, holds none.
func (d *Desk) rowReading(cells map[string]string, ours bool) (r assess.Reading, told bool, err error) {
	s := strings.ToLower(strings.TrimSpace(cells["psi"]))
	if s == "" {
		if ours || cells["notes"] != "" {
			return r, false, nil
		}
		return r, false, errors.New("there is no pressure in the row")
	}
	unit := assess.UnitPSI
	for tail, u := range map[string]assess.PressureUnit{"psi": assess.UnitPSI, "psig": assess.UnitPSI, "#": assess.UnitPSI, "lbs": assess.UnitPSI, "bar": assess.UnitBar, "kpa": assess.UnitKPa} {
		if head, ok := strings.CutSuffix(s, tail); ok {
			s, unit = strings.TrimSpace(head), u
			break
		}
	}
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		return r, false, fmt.Errorf("%q is no pressure: write a number of psi", quoteCell(cells["psi"]))
	}
	if unit != assess.UnitPSI {
		v, _ = assess.Convert(v, unit, assess.UnitPSI)
	}
	if !(v >= 0 && v <= mostPSI) {
		return r, false, fmt.Errorf("%q cannot be a water pressure: 0 to %d psi can", quoteCell(cells["psi"]), mostPSI)
	}
	r.PSI = math.Round(v*10) / 10
	if ours {
		r.Point, r.Heater, r.Flow = assess.TestPoint(cells["point"]), assess.HeaterState(cells["heater"]), assess.Flow(cells["flow"])
		r.Peak, r.When = cells["peak"] == "yes", assess.When(cells["when"])
		return r, true, known(r)
	}
	told = true
	words := strings.TrimSpace(cells["point"])
	if h := strings.TrimSpace(cells["heater"]); h != "" {
		words += ", heater " + h
	}
	if f := strings.TrimSpace(cells["flow"]); f != "" {
		words += ", " + f
	}
	if words == "" {
		return r, true, nil
	}
	f := d.parser.Parse(strconv.FormatFloat(r.PSI, 'f', -1, 64)+" psi "+words, intents.Context{})
	got := reports(f)
	if len(got) != 1 || len(f.Unclear) > 0 {
		return r, false, fmt.Errorf("%q is no place or state of a reading that can be read: say, for example, rear bibb", quoteCell(words))
	}
	read, ok := got[0].(assess.Reading)
	lost := read.Point == "" && cells["point"] != "" || read.Heater == "" && cells["heater"] != "" || read.Flow == "" && cells["flow"] != ""
	if !ok || lost || read.PSI != r.PSI {
		return r, false, fmt.Errorf("%q is no place or state of a reading that can be read: say, for example, rear bibb", quoteCell(words))
	}
	read.Peak = read.Peak || cells["peak"] == "yes"
	return read, true, nil
}

// known refuses codes that this version does not know.
func known(r assess.Reading) error {
	w := wordsIn(assess.English)
	_, point := w.Point[r.Point]
	_, heater := w.Heater[r.Heater]
	_, flow := w.Flow[r.Flow]
	switch {
	case r.Point != "" && !point:
		return fmt.Errorf("the point %q is not known", quoteCell(string(r.Point)))
	case r.Heater != "" && !heater:
		return fmt.Errorf("the heater's state %q is not known", quoteCell(string(r.Heater)))
	case r.Flow != "" && !flow:
		return fmt.Errorf("the flow %q is not known", quoteCell(string(r.Flow)))
	case r.When != "" && r.When != assess.Before && r.When != assess.After:
		return fmt.Errorf("%q is neither before nor after", quoteCell(string(r.When)))
	}
	return nil
}

// importGroup keeps one message of an import and files what it says; fresh is
// false when it was imported before.
func (d *Desk) importGroup(tx *store.Tx, g group) (fresh bool, err error) {
	raw, err := json.Marshal(g.frame)
	if err != nil {
		return false, err
	}
	ts := strings.TrimPrefix(g.key, "import/")
	m := store.Message{Key: g.key, Kind: store.Imported, Channel: "import", TS: ts, Thread: ts, Author: g.author, At: g.at, Text: g.text, State: store.Taken, Frame: raw}
	if m.ID, fresh, err = tx.AddMessage(m); err != nil || !fresh {
		return fresh, err
	}
	if err := tx.Understood(m.ID, raw); err != nil {
		return fresh, err
	}
	t, err := d.turn(tx, m)
	if err != nil {
		return fresh, err
	}
	t.quiet = true
	if t.person.Name == "" && g.name != "" && g.name != g.author {
		t.person.Name = g.name
		if err := tx.KeepPerson(t.person); err != nil {
			return fresh, err
		}
	}
	return true, t.frameStands()
}
