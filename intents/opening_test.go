package intents

import (
	"encoding/json"
	"testing"
)

// A greeting or a preface changes nothing of what follows.
func TestAGreetingChangesNothing(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	openings := []string{"hey ", "Hi bot, ", "Morning! ", "Buenas, ", "ok so ", "Alright, ", "Update: ", "FYI ", "Good morning, ", "hey team - ", "Quick one: "}
	messages := []string{
		"92 rear tap, heater idle, 123 Elm St",
		"2019 Vista Del Sol, heater 2019, rear 79",
		"cambié la reguladora en 640 Juniper Row, la dejé en 60",
		"tank for a 50 gal, 60 degree rise, 70 psi. how big?",
		"lavé el boiler hoy, salió mucha arena",
		"Next visit: Saturday\nReason: replace exp tank\nAddress: 250 Corduroy Rd",
		"make that 81",
		"put off 4 Heron Ct by a week",
	}
	for _, m := range messages {
		want := whole(p.Parse(m, Context{}))
		for _, o := range openings {
			if got := whole(p.Parse(o+m, Context{})); got != want {
				t.Errorf("%q\n  gives %s\n  alone %s", o+m, got, want)
			}
		}
	}
	for _, alone := range []string{"hey", "Morning!", "ok", "hola bot"} {
		if f := p.Parse(alone, Context{}); len(f.Statements) != 1 {
			t.Errorf("%q gives %s", alone, whole(f))
		}
	}
}

// whole writes down all of a frame that counts.
func whole(f Frame) string {
	f.Unclear = nil
	b, err := json.Marshal(f)
	if err != nil {
		return err.Error()
	}
	return string(b)
}
