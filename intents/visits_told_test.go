package intents

import (
	"testing"

	"lazyhand/assess"
)

// A correction that tells all places anew takes the place of all of them; one that tells one of
// several, that of the one.
func TestReadingsToldAnew(t *testing.T) {
	reads(t, [][2]string{
		{"70 in 120 out, sorry 120 in 70 out", "street 120; after_prv 70"},
		{"rear 62 laundry 58, no wait rear 58 laundry 62", "rear_bibb 58; laundry 62"},
		{"rear 62 laundry 58, sorry rear 58", "laundry 58; rear_bibb 58"},
		{"62 rear 58 laundry, sorry 60 rear", "laundry 58; rear_bibb 60"},
		{"atrás 62 lavadora 58, perdón atrás 60", "laundry 58; rear_bibb 60"},
		{"rear 62 laundry 58, sorry 56", "rear_bibb 62; laundry 56"},
	})
}

// Who ends a visit with a time to come looks at the house again then.
func TestTheNextVisitToldAtTheEnd(t *testing.T) {
	says(t, [][2]string{
		{"62 laundry all good, next year", "62 laundry; plan recheck in 365"},
		{"62 laundry. done, see you next yr", "62 laundry; plan recheck in 365"},
		{"todo bien, nos vemos en un año", "plan recheck in 365"},
		{"no good, in 6 months", "ask none"},
		{"all good, warranty 1 yr", "ask none"},
		{"tank shot, new one in 2 weeks", "expansion_tank failed; plan replace_tank in 14"},
		{"ET shot, new one in a month", "expansion_tank failed; plan replace_tank in 30"},
		{"prv shot, new one in", "replaced_prv"},
		{"put a 2 gal one in charged to 58", "expansion_tank 2 gal; installed_tank to 58"},
		{"they put a 2 gal one in last year", "ask none"},
		{"put a 2 gal one on the truck", "ask none"},
	})
}

// A symptom that is only asked after is none.
func TestWhatIsOnlyAsked(t *testing.T) {
	says(t, [][2]string{
		{"creeping?", "ask next_check"},
		{"is it leaking?", "ask next_check"},
		{"leaks? no", "no leak"},
		{"gas smell?", "gas_smell"},
		{"68 laundry, creep?", "68 laundry; creep"},
		{"what should i charge it to", "ask tank_charge"},
		{"how much air do i put in it", "ask tank_charge"},
		{"cuánto le pongo al tanque", "ask tank_charge"},
		{"what do we charge for a tank", "ask none"},
		{"how much should i charge her for it", "ask none"},
		{"how much air does the compressor need", "ask none"},
	})
}

// What all houses lack, and how many things were put in, is asked of the record and says nothing
// of the house in hand.
func TestWhatHousesHave(t *testing.T) {
	says(t, [][2]string{
		{"which houses have no tank", "ask which_houses"},
		{"houses without a tank", "ask which_houses"},
		{"qué casas no tienen tanque", "ask which_houses"},
		{"how many houses have a dead prv", "ask which_houses"},
		{"which houses have a prv older than 15 years", "ask old_valves"},
		{"how many prvs this year", "ask count"},
		{"how many tanks have we put in", "ask count"},
		{"cuántas reguladoras cambiamos este año", "ask count"},
		{"how many prvs are on the truck", "ask none"},
		{"how many tanks in the attic", "ask none"},
		{"whats left here", "ask due"},
		{"whats left in the tank", "ask none"},
	})
}

// A question after a thing of the house in hand is no report of it.
func TestAThingIsOnlyAskedAfter(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range [][2]string{
		{"is there a tank", "ask history"},
		{"does it have a tank", "ask history"},
		{"hay tanque?", "ask history"},
		{"hay tanque", "expansion_tank"},
		{"whats the prv set at", "ask history"},
		{"does the tank need replaced", "ask next_check"},
		{"is there a leak", "ask next_check"},
		{"is there a tank on the truck", "ask none"},
	} {
		if got := inWords(p.Parse(c[0], Context{Site: "15 Fern St"})); got != c[1] {
			t.Errorf("%q: got %s, want %s", c[0], got, c[1])
		}
	}
}

// A few words tell that a thing is there, or that it is not, without its name.
func TestToldThatAThingIsThere(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		text        string
		there, told bool
	}{
		{"there isnt one", false, true},
		{"nope, couldn't find one", false, true},
		{"no hay", false, true},
		{"no hay ninguno por ningún lado", false, true},
		{"wait there is one, behind the heater", true, true},
		{"found one out by the street", true, true},
		{"ah espera sí hay, atrás del boiler", true, true},
		{"no hay luz", false, false},
		{"found one on the truck", true, false},
		{"found one leaking", true, false},
		{"is there one?", false, false},
		{"there is one more house today", true, false},
	} {
		if there, told := p.ToldThere(c.text); told != c.told || told && there != c.there {
			t.Errorf("%q: there %v, told %v; want %v, %v", c.text, there, told, c.there, c.told)
		}
	}
}

// What drips is told once.
func TestAFewWordsAboutADrip(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for text, want := range map[string]bool{
		"still dripping": true, "ya no gotea": true, "its dry now": true, "stopped dripping": true, "sigue tirando": true,
		"still dripping at the kitchen": false, "still": false, "dripping from the union": false, "paint is dry": false,
	} {
		if got := p.MayDrip(text); got != want {
			t.Errorf("%q: %v, want %v", text, got, want)
		}
	}
}

// A relief valve that has stopped is dry, and nobody mended a leak; one that has not still runs.
func TestAReliefValveThatStops(t *testing.T) {
	says(t, [][2]string{
		{"T&P stopped", "no relief_discharge"},
		{"T&P stopped dripping", "no relief_discharge"},
		{"T&P finally quit", "no relief_discharge"},
		{"la de alivio ya paró", "no relief_discharge"},
		{"T&P never stopped", "relief_discharge"},
		{"T&P hasnt stopped dripping", "relief_discharge"},
		{"relief valve wont stop dripping", "relief_discharge"},
		{"kitchen drip stopped", "repaired_leak"},
		{"90 en la lavadora también", "90 laundry"},
		{"62 lavadora, atrás también", "62 laundry; 62 rear_bibb"},
		{"rear 62 laundry same", "62 rear_bibb; 62 laundry"},
	})
}

// A heater turned on or off is so from then on; how it was is told of what was read.
func TestAHeaterTurnedBehindAReading(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for text, want := range map[string]assess.HeaterState{
		"prendí el boiler": assess.Firing, "turned the heater off": assess.Idle, "relit the heater": assess.Firing, "heater just kicked on": assess.Firing,
		"heater off now": assess.Idle, "heater was off": "", "heater off": "", "is the heater off now?": "", "turned it off": "", "shut the water off": "",
		"62 laundry, lit the heater": "", "turned the prv down": "",
	} {
		if got := p.HeaterTurned(text, Context{}); got != want {
			t.Errorf("%q: from now on %q, want %q", text, got, want)
		}
	}
	told := Frame{Statements: []assess.Statement{assess.Reading{PSI: 84, Point: assess.Laundry}}}
	for text, amends := range map[string]bool{"heater was off": true, "heater off": true, "had the heater off": true, "turned the heater off": false,
		"prendí el boiler": false, "heater kicked on": false} {
		if f := p.Parse(text, Context{Told: &told}); (len(f.Amends) > 0) != amends {
			t.Errorf("%q puts right %v", text, f.Amends)
		}
	}
}

// How a thing is may only be asked.
func TestHowAThingIsOnlyAsked(t *testing.T) {
	says(t, [][2]string{
		{"prv bad?", "ask next_check"},
		{"is the prv shot", "ask next_check"},
		{"prv good? yes", "prv good"},
		{"tank? dead", "expansion_tank failed"},
		{"strainer is full of sand. cleaned it, back together", "rebuilt_prv"},
		{"el filtro está tapado. lo limpié", "rebuilt_prv"},
		{"kitchen strainer is plugged. cleaned it", "ask none"},
		{"el filtro de agua está tapado. lo limpié", "ask none"},
	})
}
