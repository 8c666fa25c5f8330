package intents_test

import (
	"encoding/json"
	"reflect"
	"testing"

	"lazyhand/assess"
	"lazyhand/intents"
)

// TestAStatementsKindMayStandAnywhere reads frames that other programs wrote.
func TestAStatementsKindMayStandAnywhere(t *testing.T) {
	want := intents.Frame{Site: "123 Elm St", Statements: []assess.Statement{assess.Reading{PSI: 92, Point: assess.RearBibb}}}
	for _, text := range []string{
		`{"site":"123 Elm St","statements":[{"kind":"reading","psi":92,"point":"rear_bibb"}]}`,
		`{"statements":[{"psi":92,"point":"rear_bibb","kind":"reading"}],"site":"123 Elm St"}`,
		`{"site":"123 Elm St","statements":[ { "kind" : "reading", "psi":92, "point":"rear_bibb" } ]}`,
		`{"site":"123 Elm St","statements":[{"kind":"read\u0069ng","psi":92,"point":"rear_bibb"}]}`,
	} {
		var f intents.Frame
		if err := json.Unmarshal([]byte(text), &f); err != nil {
			t.Errorf("%s: %v", text, err)
		} else if !reflect.DeepEqual(f, want) {
			t.Errorf("%s\ngives %+v", text, f)
		}
	}
	for _, text := range []string{`{"statements":[{"kind":"song"}]}`, `{"statements":[{"psi":92}]}`, `{"statements":[{"kind":"reading"`} {
		if err := json.Unmarshal([]byte(text), new(intents.Frame)); err == nil {
			t.Errorf("%s is taken", text)
		}
	}
}
