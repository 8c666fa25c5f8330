package intents

import (
	"encoding/json"
	"testing"

	"lazyhand/assess"
)

// Numbers that are no pressure measured stay out of the readings, and orders of a
// few words reach the bot. The messages are our own.
func TestShortOrdersAndNumbersThatAreNoPressure(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct{ text, want string }{
		{"left it on 48 h, rear 66", `[{"kind":"reading","psi":66,"point":"rear_bibb"}]`},
		{"heater on 120, kitchen 60", `[{"kind":"equipment","item":"heater","setpoint_f":120},{"kind":"reading","psi":60,"point":"kitchen"}]`},
		{"turned the heater down from 140 to 120. rear 64", `[{"kind":"equipment","item":"heater","setpoint_f":120},{"kind":"reading","psi":64,"point":"rear_bibb"}]`},
		{"turned the prv down from 140 to 62", `[{"kind":"work","action":"set_prv","to_psi":62,"from_psi":140}]`},
		{"neighbor says \"mine is 85\"", `[{"kind":"ask","about":"none"}]`},
		{"three years ago it was 80 at the rear", `[{"kind":"ask","about":"none"}]`},
		{"was 85 in 2019, rear 70", `[{"kind":"reading","psi":70,"point":"rear_bibb"}]`},
		{"tank size? 50 gal, 120 set, 50 inlet, 70 psi", `[{"kind":"ask","about":"tank_size","size_gal":50,"setpoint_f":120,"inlet_f":50,"psi":70}]`},
		{"3.5 bar = ? psi", `[{"kind":"ask","about":"convert","value":3.5,"unit":"bar","to":"psi"}]`},
		{"how many kpa is 65", `[{"kind":"ask","about":"convert","value":65,"unit":"psi","to":"kpa"}]`},
		{"50 lbs in the tank", `[{"kind":"equipment","item":"expansion_tank","setting_psi":50}]`},
		{"eran 66 no 76", `[{"kind":"ask","about":"correct"},{"kind":"reading","psi":66}]`},
		{"no, 62", `[{"kind":"ask","about":"correct"},{"kind":"reading","psi":62}]`},
		{"62 not 26", `[{"kind":"reading","psi":62},{"kind":"ask","about":"correct"}]`},
		{"mark 12 Alder done", `[{"kind":"ask","about":"done"}]`},
		{"next check 12 Alder", `[{"kind":"ask","about":"next_check"}]`},
		{"push 12 Alder out three more days", `[{"kind":"ask","about":"snooze","in_days":3}]`},
		{"whats on the follow up list", `[{"kind":"ask","about":"due"}]`},
		{"delete what I just entered", `[{"kind":"ask","about":"undo"}]`},
		{"new PRV in, set 58", `[{"kind":"work","action":"replaced_prv","to_psi":58}]`},
		{"need a new prv in", `[{"kind":"plan","action":"replace_prv"}]`},
	} {
		got, err := json.Marshal(p.Parse(c.text, Context{}))
		if err != nil {
			t.Fatal(err)
		}
		var f struct{ Statements json.RawMessage }
		if err := json.Unmarshal(got, &f); err != nil {
			t.Fatal(err)
		}
		if string(f.Statements) != c.want {
			t.Errorf("%q\n got %s\nwant %s", c.text, f.Statements, c.want)
		}
	}
}

// What cannot be decided is asked about, not stored.
func TestAskRatherThanStore(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, text := range []string{"front 92 or 29", "corner of Elm and Oak, front 66"} {
		f := p.Parse(text, Context{Site: "123 Elm St"})
		if len(f.Unclear) != 1 || f.Unclear[0].Ask == "" {
			t.Errorf("%q: unclear is %v, want one question", text, f.Unclear)
		}
		for _, s := range f.Statements {
			if r, ok := s.(assess.Reading); ok {
				t.Errorf("%q stored %v", text, r)
			}
		}
	}
}

// The day of the readings is theirs, not the message's.
func TestReadingsOfYesterday(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	today := assess.Date{Year: 2026, Month: 7, Day: 1}
	for text, want := range map[string]assess.Date{
		"yesterday rear 66 at 12 Alder":                  {Year: 2026, Month: 6, Day: 30},
		"ayer 66 atras":                                  {Year: 2026, Month: 6, Day: 30},
		"front 66, customer says it was off yesterday":   {},
		"front 66 now, leaked since yesterday, no water": {},
	} {
		if f := p.Parse(text, Context{Today: today}); f.Date != want {
			t.Errorf("%q: date %v, want %v", text, f.Date, want)
		}
	}
}
