package intents

import "testing"

func TestAQuestionAfterADeedIsNoDeed(t *testing.T) {
	says(t, [][2]string{
		{"did anybody flush the heater at 41 Heron Ct", "ask history"},
		{"did Ben put the tank in at 41 Heron Ct", "ask history"},
		{"has this prv been rebuilt", "ask history"},
		{"was the heater flushed?", "ask history"},
		{"who set the prv at 41 Heron Ct", "ask history"},
		{"quién cambió la reguladora en 41 Heron Ct", "ask history"},
		{"cuándo se cambió la reguladora en 41 Heron Ct", "ask history"},
		{"cuándo le pusieron el tanque a 41 Heron Ct", "ask history"},
		{"¿le pusimos tanque a 41 Heron Ct?", "ask history"},
		{"hace cuánto cambiamos la reguladora en 41 Heron Ct", "ask history"},
		{"did the heater flush at 41 Heron Ct", "flushed_heater"},
		{"have swapped the prv, 60 laundry", "replaced_prv; 60 laundry"},
		{"have Ben change the prv Thursday", "plan replace_prv in 3"},
	})
}

func TestAQuestionAfterAStateIsNoState(t *testing.T) {
	says(t, [][2]string{
		{"could the tank be waterlogged", "ask next_check"},
		{"might the prv be stuck you think?", "ask next_check"},
		{"is it the tank or the valve", "ask next_check"},
		{"is it worth testing the tank", "ask next_check"},
		{"is it a gas heater?", "ask history"},
		{"is the reg drifting at 41 Heron Ct", "ask trend"},
	})
}

func TestANameAloneAsksForWhatItNames(t *testing.T) {
	says(t, [][2]string{
		{"41 Heron Ct report", "ask report"},
		{"report 41 Heron Ct", "ask report"},
		{"can I get the sheet", "ask report"},
		{"log for 41 Heron Ct", "ask history"},
		{"file on 41 Heron Ct?", "ask history"},
		{"digest please", "ask summary"},
		{"menu", "ask help"},
		{"next?", "ask next_check"},
		{"copy that", "ask none"},
		{"report 41 Heron Ct: 72 rear bibb", "72 rear_bibb"},
	})
}

func TestAHouseInSmallLettersIsAskedAfter(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, text := range []string{"12 elm history", "12 oak done", "12 ash recheck friday", "when is 12 Elm due", "which way is 12 Oak headed",
		"how old is 12 Elm heater", "got 12 Elm rechecked, close it", "12 elm sheet", "marca 12 Ash como hecho"} {
		if f := p.Parse(text, Context{}); f.Site != "12 Elm" && f.Site != "12 Oak" && f.Site != "12 Ash" {
			t.Errorf("%q: site %q", text, f.Site)
		}
	}
}

func TestAsksInOtherWords(t *testing.T) {
	says(t, [][2]string{
		{"what am I walking into at 41 Heron Ct", "ask history"},
		{"you got notes for 41 Heron Ct", "ask history"},
		{"grab me the record for 41 Heron Ct", "ask history"},
		{"first time at 41 Heron Ct or have we been", "ask history"},
		{"check the records on 41 Heron Ct", "ask history"},
		{"88 rear bibb, whatd we get last visit", "88 rear_bibb; ask history"},
		{"give me my follow-ups", "ask due"},
		{"what needs rechecked", "ask due"},
		{"who needs a visit next week", "ask due"},
		{"did we set a recheck for 41 Heron Ct", "ask due"},
		{"whens the next visit to 41 Heron Ct", "ask due"},
		{"88 rear bibb, anything due near here?", "88 rear_bibb; ask due"},
		{"rent is due lol", "ask none"},
		{"is the pressure climbing at 41 Heron Ct year to year", "ask trend"},
		{"picture of how 41 Heron Ct has moved", "ask trend"},
		{"78 rear bibb, is that up from before?", "78 rear_bibb; ask trend"},
		{"parked on the plot behind 41 Heron Ct", "ask none"},
		{"95 front bibb, why so high", "95 front_bibb; ask next_check"},
		{"95 front bibb, whats doing that", "95 front_bibb; ask next_check"},
		{"told her the pressure is what's doing it, 101 front bibb", "101 front_bibb"},
		{"help me out with 41 Heron Ct, 62 laundry", "62 laundry; ask next_check"},
		{"no le hallo, 110 enfrente", "110 front_bibb; ask next_check"},
		{"62 laundry, print her a sheet", "62 laundry; ask report"},
		{"62 laundry and she wants a copy", "62 laundry; ask report"},
		{"how busy were we", "ask summary"},
		{"balance de la semana", "ask summary"},
		{"are you a bot", "ask help"},
		{"no entiendo como usar esto", "ask help"},
	})
}
