package intents

import (
	"encoding/json"
	"strings"
	"testing"
)

// Requests in the rarer words of crews, English and Spanish. The messages are our own.
func TestAsksBySynonyms(t *testing.T) {
	says(t, [][2]string{
		{"how is 402 Larkhill Rd doing", "ask history"},
		{"how is 12 elm doing", "ask history"},
		{"how is 92 at the laundry", "92 laundry"},
		{"hows 12 Elm St", "ask history"},
		{"what about 402 Larkhill Rd?", "ask history"},
		{"status of 12 Elm St", "ask history"},
		{"any update on 12 Elm St", "ask history"},
		{"whats up with 14 Elm St", "ask history"},
		{"¿cómo va 12 Elm St?", "ask history"},
		{"how about friday for 12 Elm St", "ask none"},
		{"hows the wife, 12 Elm St", "ask none"},
		{"ok when was the heater flushed at 2041 Tamarack Dr", "ask history"},
		{"does 14 Elm St have a prv", "ask history"},
		{"ok what's the deal with 14 Elm St", "ask history"},
		{"what did we promise", "ask due"},
		{"compare 14 Elm St over the last few years", "ask trend"},
		{"what am I overlooking", "ask next_check"},
		{"Landlord needs documentation for 77 Larkspur Ln", "ask report"},
		{"give me last week in a nutshell", "ask summary"},
		{"my last report should be deleted", "ask undo"},
		{"roll 14 Elm St to next week", "ask snooze"},
		{"what do I write for a replaced prv", "ask help"},
		{"please change my last to 61 laundry", "ask correct; 61 laundry"},
		{"I wrote it wrong, 57 laundry", "ask correct; 57 laundry"},
		{"oye qué tenemos de 14 Elm St", "ask history"},
		{"ponme al tanto de 14 Elm St", "ask history"},
		{"a qué casas tengo que regresar", "ask due"},
		{"qué descarto primero", "ask next_check"},
		{"cuál es tu sospecha", "ask next_check"},
		{"lo último no va", "ask undo"},
		{"quítame 14 Elm St de pendientes", "ask done"},
		{"seguimiento de 14 Elm St cerrado", "ask done"},
		{"mándalo a la próxima semana", "ask snooze"},
		{"cómo meto una lectura", "ask help"},
		{"cómo cerró la semana", "ask summary"},
		{"71 en la cocina, no 17", "71 kitchen"},
	})
}

// The size of a tank, asked behind what is to be quoted, and for so many gallons of water.
func TestASizeIsAskedBehindWhatIsToBeQuoted(t *testing.T) {
	says(t, [][2]string{
		{"need to quote an expansion tank, how big with 50 gal, 80 degree rise and 70 psi", "ask tank_size"},
		{"gotta quote an exp tank for 12 Elm St, what size with a 40 gallon, 60 psi, 90 rise", "ask tank_size"},
		{"need a tank for 12 Elm St, how big for 40 gal 60 psi", "ask tank_size"},
		{"tengo que cotizar un tanque de expansion en 12 Elm St, que tamaño con 50 galones y 70 psi", "ask tank_size"},
		{"need to replace the exp tank at 12 Elm St, 50 gal gas heater, kitchen 62", "heater 50 gal gas; 62 kitchen; plan replace_tank"},
	})
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range [][2]string{
		{"tank size? 80 gallons of water, rise of 75 degrees, 72 psi", `"size_gal":80,"rise_f":75,"psi":72`},
		{"size a tank for me, 40 gal of water warmed by 90 degrees, 60 psi", `"size_gal":40,"rise_f":90,"psi":60`},
		{"cotizar tanque de expansion para 40 galones, 90 grados de aumento, 60 psi, de que tamaño", `"size_gal":40,"rise_f":90,"psi":60`},
	} {
		b, err := json.Marshal(p.Parse(c[0], Context{}))
		if want := `[{"kind":"ask","about":"tank_size",` + c[1] + `}]`; err != nil || !strings.Contains(string(b), want) {
			t.Errorf("%q gave %s, want %s", c[0], b, want)
		}
	}
}

// A follow-up that was seen to, and how a message is written.
func TestWhatWasSeenToLeavesTheList(t *testing.T) {
	says(t, [][2]string{
		{"called the city on that one already, take it off the list", "ask done"},
		{"already emailed the landlord so cross it off the list", "ask done"},
		{"take that one off the list, i went by yesterday", "ask done"},
		{"ya le hablé a la compañía del agua, quítalo de la lista", "ask done"},
		{"take it off the list, posted by mistake", "ask undo"},
		{"put the 6 month one as done", "ask done"},
		{"change the 30 day one to completed", "ask done"},
		{"3 month follow up? complete", "ask done"},
		{"3 month follow up for 12 Elm St", "plan recheck in 90"},
		{"do i type the address before or after the reading", "ask help"},
		{"which goes first, the address or the number", "ask help"},
		{"va primero la dirección o la lectura", "ask help"},
		{"in what order should I go about this", "ask next_check"},
		{"can i get the weekly wrapup for the whole crew, 5 techs", "ask summary"},
	})
}

// By how much water is warmed is its rise, to what it is warmed the heater's setting.
func TestByHowMuchAndToWhatWaterIsWarmed(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		text          string
		rise, setting float64
	}{
		{"customer has a 40 gal heater, water gets warmed 80 degrees, house at 60 psi. which expansion tank do I order for that?", 80, 0},
		{"50 gal gas, 80 degree rise, 58 psi, which expansion tank", 80, 0},
		{"50 gal heater heats it to 130, 50 degree inlet, 58 psi, what size expansion tank", 0, 130},
		{"50 gal, it is warmed up to 130 degrees, 58 psi, what size tank", 0, 130},
	} {
		var rise, setting float64
		for _, s := range p.Parse(c.text, Context{}).Statements {
			a, ok := s.(Ask)
			if ok && a.RiseF != nil {
				rise = *a.RiseF
			}
			if ok && a.SetpointF != nil {
				setting = *a.SetpointF
			}
		}
		if rise != c.rise || setting != c.setting {
			t.Errorf("%q: rise %v, setting %v, want %v and %v", c.text, rise, setting, c.rise, c.setting)
		}
	}
}
