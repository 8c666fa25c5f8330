package assess

import (
	"bufio"
	"bytes"
	"encoding/json"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"testing"
)

var update = flag.Bool("update", false, "write the golden assessments anew; then read them as a reviewer")

// goldenHouse is one invented house as a line of testdata/assess/houses.jsonl.
type goldenHouse struct {
	ID     string `json:"id"`
	Says   string `json:"says"` // what the case shows
	Today  Date   `json:"today"`
	Visits []struct {
		Date  Date `json:"date"`
		Frame struct {
			Statements []json.RawMessage `json:"statements"`
		} `json:"frame"`
	} `json:"visits"`
	Shop       Shop        `json:"shop"`
	Neighbours []Neighbour `json:"neighbours"`
}

func (h *goldenHouse) input() (Input, error) {
	in := Input{Today: h.Today, Shop: h.Shop, Neighbours: h.Neighbours}
	for _, v := range h.Visits {
		visit := Visit{Date: v.Date}
		for _, raw := range v.Frame.Statements {
			s, err := statementOf(raw)
			if err != nil {
				return in, err
			}
			visit.Add(s)
		}
		in.Visits = append(in.Visits, visit)
	}
	return in, nil
}

func statementOf(raw json.RawMessage) (Statement, error) {
	var head struct{ Kind string }
	if err := json.Unmarshal(raw, &head); err != nil {
		return nil, err
	}
	switch head.Kind {
	case "reading":
		return decodeAs[Reading](raw)
	case "symptom":
		return decodeAs[Symptom](raw)
	case "equipment":
		return decodeAs[Equipment](raw)
	case "work":
		return decodeAs[Work](raw)
	case "plan":
		return decodeAs[Plan](raw)
	}
	return nil, fmt.Errorf("no statement is of kind %q", head.Kind)
}

func decodeAs[S Statement](raw json.RawMessage) (Statement, error) {
	var s S
	return s, json.Unmarshal(raw, &s)
}

// Whole assessments of invented houses, in both languages, as a reader sees
// them. Run with -update to write them anew.
func TestGoldenHouses(t *testing.T) {
	dir := filepath.Join("..", "testdata", "assess")
	text, err := os.ReadFile(filepath.Join(dir, "houses.jsonl"))
	if err != nil {
		t.Fatal(err)
	}
	for _, lang := range []Lang{English, Spanish} {
		var out bytes.Buffer
		lines := bufio.NewScanner(bytes.NewReader(text))
		for lines.Scan() {
			var h goldenHouse
			if err := json.Unmarshal(lines.Bytes(), &h); err != nil {
				t.Fatal(err)
			}
			in, err := h.input()
			if err != nil {
				t.Fatalf("%s: %v", h.ID, err)
			}
			in.Lang = lang
			a := Assess(in)
			for i := range a.Causes { // enough to read, not so much that rounding matters
				a.Causes[i].P = float64(int(a.Causes[i].P*100+0.5)) / 100
			}
			b, err := json.MarshalIndent(struct {
				ID   string `json:"id"`
				Says string `json:"says"`
				Assessment
			}{h.ID, h.Says, a}, "", " ")
			if err != nil {
				t.Fatalf("%s: %v", h.ID, err)
			}
			out.Write(b)
			out.WriteByte('\n')
		}
		golden := filepath.Join(dir, "houses."+string(lang)+".golden")
		if *update {
			if err := os.WriteFile(golden, out.Bytes(), 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		want, err := os.ReadFile(golden)
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(out.Bytes(), want) {
			t.Errorf("%s: %s", golden, firstDifference(string(want), out.String()))
		}
	}
}

// firstDifference shows the first line that differs.
func firstDifference(want, got string) string {
	w, g := bufio.NewScanner(bytes.NewReader([]byte(want))), bufio.NewScanner(bytes.NewReader([]byte(got)))
	for n := 1; ; n++ {
		a, b := w.Scan(), g.Scan()
		if !a && !b {
			return "no line differs"
		}
		if w.Text() != g.Text() || a != b {
			return fmt.Sprintf("line %d is %q, want %q", n, g.Text(), w.Text())
		}
	}
}
