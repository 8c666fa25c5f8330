package intents_test

import (
	"encoding/json"
	"testing"

	"lazyhand/assess"
	"lazyhand/intents"
)

// What is said of "it" is said of the thing that the report before spoke of.
func TestAMessageGoesOnAboutTheThingNamedBefore(t *testing.T) {
	p := newParser(t)
	for _, tt := range []struct {
		item assess.Item
		text string
		want string // the statements, empty: it goes on about nothing
	}{
		{assess.PRV, "swapped it, 60 now at the laundry", `[{"action":"replaced_prv"},{"psi":60,"point":"laundry","when":"after"}]`},
		{assess.PRV, "cut it out, new one in, set it to 55", `[{"action":"replaced_prv","to_psi":55}]`},
		{assess.PRV, "nvm its in the crawl, 1994, corroded. after it 117", `[{"item":"prv","installed_year":1994,"condition":"suspect"},{"psi":117,"point":"after_prv"}]`},
		{assess.PRV, "it's from 2009", `[{"item":"prv","installed_year":2009}]`},
		{assess.PRV, "ya la cambie, quedo en 60 en la lavadora", `[{"action":"replaced_prv"},{"psi":60,"point":"laundry","when":"after"}]`},
		{assess.PRV, "le dije que la cambiamos el lunes", `[{"action":"replace_prv","in_days":7}]`},
		{assess.PRV, "ta bien vieja, como de 15 años", `[{"item":"prv","installed_year":2011}]`},
		{assess.PRV, "tiene como 15 años", `[{"item":"prv","installed_year":2011}]`},
		{assess.PRV, "es del 2009", `[{"item":"prv","installed_year":2009}]`},
		{assess.PRV, "pero ya no sirve", `[{"item":"prv","condition":"failed"}]`},
		{assess.PRV, "20 yrs old", `[{"item":"prv","installed_year":2006}]`},
		{assess.PRV, "no le muevo, está bien oxidada", `[{"item":"prv","condition":"suspect"}]`},
		{assess.PRV, "es de gas", ``},
		{assess.PRV, "vuelvo mañana con la nueva", `[{"action":"replace_prv","in_days":1}]`},
		{assess.PRV, "back tomorrow with the new one", `[{"action":"replace_prv","in_days":1}]`},
		{assess.PRV, "back tomorrow with a new gauge, this one sticks", ``},
		{assess.ExpansionTank, "it's dead", `[{"item":"expansion_tank","condition":"failed"}]`},
		{assess.ExpansionTank, "swapped it for a 4.5 gal, 72 in it", `[{"action":"replaced_tank","to_psi":72},{"item":"expansion_tank","size_gal":4.5}]`},
		{assess.Heater, "flushed it", ``}, // it says so by itself
		{assess.PRV, "62 at the laundry", ``},
		{assess.ExpansionTank, "62 at the laundry, that was it", ``},
		{assess.PRV, "it was raining", ``},
		{assess.PRV, "there isnt one btw", ``},
		{assess.ExpansionTank, "there isnt one btw", `[{"item":"expansion_tank","present":false}]`},
		{assess.PRV, "swapped the tank, it was shot", ``},
		{assess.PRV, "how old is it", ``},
		{assess.PRV, "it's 62 at the kitchen", ``},
		{assess.PRV, "la lavadora 62", ``},
		{assess.Softener, "swapped it", ``},
	} {
		c := intents.Context{Today: assess.Date{Year: 2026, Month: 6, Day: 15}}
		plain := p.Parse(tt.text, c)
		f, ok := p.GoesOn(tt.text, c, tt.item, plain)
		if got, err := json.Marshal(f.Statements); err != nil || ok != (tt.want != "") || ok && string(got) != tt.want {
			t.Errorf("%q after %s: %s %v (%v), want %s", tt.text, tt.item, got, ok, err, tt.want)
		}
		if ok && !intents.MayGoOn(tt.text) {
			t.Errorf("%q is not looked at", tt.text)
		}
	}
}

// Where another thing is named to which the words belong, nothing goes on.
func TestWhatIsSaidOfAnotherThingDoesNotGoOn(t *testing.T) {
	for _, text := range []string{"mi troca es del 2005", "pipes are 40 years old", "customer is 90", "62 en lavadora"} {
		if intents.MayGoOn(text) {
			t.Errorf("%q is looked at", text)
		}
	}
}

// A Spanish pronoun tells some things apart: "la cambié" is said of no tank.
func TestWhatAPronounCanMean(t *testing.T) {
	p := newParser(t)
	both := []assess.Item{assess.ExpansionTank, assess.PRV}
	for text, want := range map[string]int{"ya la cambie": 1, "hay que cambiarla": 1, "ya lo cambie": 2, "swapped it": 2, "62 en la lavadora": 2,
		"vuelvo mañana con la nueva": 1, "traigo el nuevo": 2, "ta bien vieja": 1, "está oxidado": 2} {
		if got := p.Meant(text, both); len(got) != want {
			t.Errorf("%q can mean %v", text, got)
		}
	}
}

// Behind a pressure "turned it down" is told of the regulator's screw, and of nothing that the
// message itself names.
func TestAScrewTurnedIsTheRegulators(t *testing.T) {
	p := newParser(t)
	for text, want := range map[string]string{
		"turned it down":              `[{"action":"set_prv"}]`,
		"ok gave it half a turn more": `[{"action":"set_prv"}]`,
		"backed it off a hair":        `[{"action":"set_prv"}]`,
		"le bajé tantito":             `[{"action":"set_prv"}]`,
		"turned it off":               ``,
		"she turned it down":          ``,
		"turned the heater down":      ``,
		"turned down the radio":       ``,
		"gave it to her":              ``,
		"le bajé al boiler":           ``,
		"it turned cold":              ``,
	} {
		c := intents.Context{Site: "12 Alder St"}
		f, ok := p.ScrewTurned(text, c, p.Parse(text, c))
		if got, err := json.Marshal(f.Statements); err != nil || ok != (want != "") || ok && string(got) != want {
			t.Errorf("%q: %s %v (%v), want %s", text, got, ok, err, want)
		}
	}
}
