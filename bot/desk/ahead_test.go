package desk_test

import (
	"bufio"
	"encoding/json"
	"os"
	"path/filepath"
	"reflect"
	"testing"

	"lazyhand/assess"
	"lazyhand/intents"
)

// TestAMessageThatNamesItsHouseIsReadAlike holds the parser to what reading
// ahead builds on: the house that would stand for one not named changes nothing
// about a message that names its own.
func TestAMessageThatNamesItsHouseIsReadAlike(t *testing.T) {
	p, err := intents.New()
	if err != nil {
		t.Fatal(err)
	}
	files, err := filepath.Glob("../../testdata/intents/crew_*.jsonl")
	if err != nil || len(files) == 0 {
		t.Fatal("no messages to read", err)
	}
	named := 0
	for _, file := range files {
		f, err := os.Open(file)
		if err != nil {
			t.Fatal(err)
		}
		defer f.Close()
		for lines := bufio.NewScanner(f); lines.Scan(); {
			var m struct{ Text string }
			if err := json.Unmarshal(lines.Bytes(), &m); err != nil {
				t.Fatal(err)
			}
			today := assess.Date{Year: 2026, Month: 6, Day: 15}
			alone := p.Parse(m.Text, intents.Context{Today: today})
			if alone.Site == "" {
				continue
			}
			named++
			if there := p.Parse(m.Text, intents.Context{Today: today, Site: "77 Quarry Rd"}); !reflect.DeepEqual(alone, there) {
				t.Errorf("%q\nalone:   %+v\nelsewhere: %+v", m.Text, alone, there)
			}
		}
	}
	if named < 100 {
		t.Errorf("only %d messages name a house", named)
	}
}
