package intents_test

import (
	"testing"

	"lazyhand/assess"
	"lazyhand/intents"
)

// A number that no test point claims is kept only when something makes it the
// pressure of the house; otherwise it is asked about, or is talk.
func TestNumbersWithoutATestPoint(t *testing.T) {
	p := newParser(t)
	here := intents.Context{Site: "123 Elm St"}
	for _, c := range []struct {
		text  string
		ctx   intents.Context
		psi   []float64
		asked int
	}{
		{"92, 123 Elm St", intents.Context{}, []float64{92}, 0},
		{"72 psi", here, []float64{72}, 0},
		{"house is at 72, tank has 50 in it", here, []float64{72}, 0},
		{"system 72", here, []float64{72}, 0},
		{"68 with everything off", here, []float64{68}, 0},
		{"gauge crept to 75, nothing on", intents.Context{}, []float64{75}, 0},
		{"make it 82", here, []float64{82}, 0},
		{"la casa trae 84", here, []float64{84}, 0},
		{"who has the 200 psi gauge", intents.Context{}, nil, 0},
		{"1 1/2 in meter, 3/4 in prv, 66 downstream", here, []float64{66}, 0},
		{"somebody screwed a 3/4 plug in, 2 showers upstairs", here, nil, 0},
		{"1 psi at the front bib", here, []float64{1}, 0},
		{"need 80 psi test plugs", intents.Context{}, nil, 0},
		{"72 at the sink", here, nil, 1},
		{"checked 4 houses on Clay today all 60ish", intents.Context{}, nil, 0},
		{"72 at the sink", intents.Context{}, nil, 0},
	} {
		f := p.Parse(c.text, c.ctx)
		var got []float64
		for _, r := range f.Visit(assess.Date{}).Readings {
			got = append(got, r.PSI)
		}
		if len(got) != len(c.psi) || len(got) > 0 && got[0] != c.psi[0] {
			t.Errorf("%q: read %v, want %v", c.text, got, c.psi)
		}
		if len(f.Unclear) != c.asked {
			t.Errorf("%q: asked %v, want %d questions", c.text, f.Unclear, c.asked)
		}
	}
}
