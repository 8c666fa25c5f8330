package store

import (
	"bufio"
	"context"
	"encoding/csv"
	"encoding/json"
	"fmt"
	"io"
	"strconv"
	"strings"
	"time"

	"lazyhand/assess"
)

// Row is one reading as it leaves the record for a spreadsheet. A report with
// no reading is a row too, with PSI nil.
type Row struct {
	Site     string             `json:"site"`
	Town     string             `json:"town,omitempty"`
	Postcode string             `json:"postcode,omitempty"`
	Date     assess.Date        `json:"date"`
	SaidAt   time.Time          `json:"said_at"`
	Who      string             `json:"who"`              // name when known
	Author   string             `json:"author,omitempty"` // the platform's name for who
	PSI      *float64           `json:"psi"`
	Point    assess.TestPoint   `json:"point,omitempty"`
	Heater   assess.HeaterState `json:"heater,omitempty"`
	Flow     assess.Flow        `json:"flow,omitempty"`
	Peak     bool               `json:"peak,omitempty"`
	When     assess.When        `json:"when,omitempty"`
	Side     assess.Side        `json:"side,omitempty"`
	Fair     assess.Fair        `json:"fair,omitempty"`
	Message  int64              `json:"message"`        // rows of one message belong together
	Also     json.RawMessage    `json:"also,omitempty"` // what else the message told, on its first row: a list of statements
}

// Columns are the columns of the CSV form, in order.
var columns = []string{"site", "town", "postcode", "date", "said_at", "who", "author", "psi", "point", "heater", "flow", "peak", "when", "side", "fair", "message", "also"}

const exportRows = `SELECT ifnull(t.line, s.line), ifnull(t.town, s.town), ifnull(t.postcode, s.postcode), r.day, r.at, ifnull(nullif(p.name, ''), r.author), r.author,
	CAST(d.value ->> 0 AS REAL), ifnull(d.value ->> 1, ''), ifnull(d.value ->> 2, ''), ifnull(d.value ->> 3, ''), ifnull(d.value ->> 4, 0), ifnull(d.value ->> 5, ''), ifnull(d.value ->> 6, ''), ifnull(d.value ->> 7, ''), r.message, m.frame, ifnull(d.key, 0)
	FROM report r JOIN site s ON s.id = r.site LEFT JOIN site t ON t.id = s.joined JOIN message m ON m.id = r.message LEFT JOIN person p ON p.id = r.author
	LEFT JOIN json_each(r.readings) d
	ORDER BY r.message, d.key`

// Export writes every reading on record, in the order of the reports, as "csv"
// or "jsonl". Cells of the CSV that a spreadsheet would take for a formula are
// written as text, see Cell. progress, which may be nil, hears how many rows
// are out.
func (db *DB) Export(ctx context.Context, w io.Writer, format string, progress func(rows int)) error {
	buf := bufio.NewWriter(w)
	var put func(Row) error
	switch format {
	case "csv":
		c := csv.NewWriter(buf)
		if err := c.Write(columns); err != nil {
			return err
		}
		put = func(r Row) error {
			if err := c.Write(r.cells()); err != nil {
				return err
			}
			c.Flush()
			return c.Error()
		}
	case "jsonl":
		e := json.NewEncoder(buf)
		e.SetEscapeHTML(false)
		put = func(r Row) error { return e.Encode(r) }
	default:
		return fmt.Errorf("the format %q is not known: say csv or jsonl", format)
	}
	n := 0
	err := db.Read(ctx, func(tx *Tx) error {
		return each(tx, func(scan func(...any) error) error {
			r, err := scanRow(scan)
			if err != nil {
				return err
			}
			if err := put(r); err != nil {
				return fmt.Errorf("write the export: %w", err)
			}
			if n++; progress != nil && n%1000 == 0 {
				progress(n)
			}
			return nil
		}, exportRows)
	})
	if err != nil {
		return err
	}
	if progress != nil {
		progress(n)
	}
	if err := buf.Flush(); err != nil {
		return fmt.Errorf("write the export: %w", err)
	}
	return nil
}

func scanRow(scan func(...any) error) (Row, error) {
	var r Row
	var day string
	var at int64
	var frame *string
	var n int
	err := scan(&r.Site, &r.Town, &r.Postcode, &day, &at, &r.Who, &r.Author, &r.PSI, &r.Point, &r.Heater, &r.Flow, &r.Peak, &r.When, &r.Side, &r.Fair, &r.Message, &frame, &n)
	if err != nil {
		return r, err
	}
	r.SaidAt = fromMillis(at)
	if n == 0 && frame != nil {
		if r.Also, err = besides(*frame); err != nil {
			return r, fmt.Errorf("read the frame of message %d: %w", r.Message, err)
		}
	}
	return r, r.Date.UnmarshalText([]byte(day))
}

// besides returns a frame's statements other than readings and questions, nil
// when there are none.
func besides(frame string) (json.RawMessage, error) {
	var f struct {
		Statements []json.RawMessage `json:"statements"`
	}
	if err := json.Unmarshal([]byte(frame), &f); err != nil {
		return nil, err
	}
	var rest []json.RawMessage
	for _, s := range f.Statements {
		var k struct {
			Kind string `json:"kind"`
		}
		if err := json.Unmarshal(s, &k); err != nil {
			return nil, err
		}
		if k.Kind != "reading" && k.Kind != "ask" {
			rest = append(rest, s)
		}
	}
	if rest == nil {
		return nil, nil
	}
	return json.Marshal(rest)
}

func (r Row) cells() []string {
	psi, peak := "", ""
	if r.PSI != nil {
		psi = strconv.FormatFloat(*r.PSI, 'f', -1, 64)
	}
	if r.Peak {
		peak = "yes"
	}
	out := []string{r.Site, r.Town, r.Postcode, r.Date.String(), r.SaidAt.Format("2006-01-02T15:04:05.000Z07:00"), r.Who, r.Author, psi,
		string(r.Point), string(r.Heater), string(r.Flow), peak, string(r.When), string(r.Side), string(r.Fair), strconv.FormatInt(r.Message, 10), string(r.Also)}
	for i := range out {
		out[i] = Cell(out[i])
	}
	return out
}

// risky are the characters at which a spreadsheet begins to calculate: those
// that the Open Worldwide Application Security Project's page on CSV injection
// names, with their full-width forms.
const risky = "=+-@\t\r\n＝＋－＠"

// Cell makes a text harmless for a spreadsheet: one that would be taken for a
// formula gets an apostrophe before it, and so does one that begins with an
// apostrophe, so that Uncell gives back exactly what was there.
func Cell(s string) string {
	if s != "" && (strings.HasPrefix(s, "'") || strings.ContainsRune(risky, []rune(s)[0])) {
		return "'" + s
	}
	return s
}

// Uncell undoes Cell. Other texts are left as they are.
func Uncell(s string) string {
	rest, ok := strings.CutPrefix(s, "'")
	if ok && rest != "" && (strings.HasPrefix(rest, "'") || strings.ContainsRune(risky, []rune(rest)[0])) {
		return rest
	}
	return s
}
