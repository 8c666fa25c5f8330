package intents

import (
	"strings"
	"testing"
)

// Facts of the heater and of other things in a note's lists: a thermostat told by a bare number, what is nearly
// stuck, shorthand in an inventory.
func TestFactsInANotesLists(t *testing.T) {
	says(t, [][2]string{
		{"Water heater from 2023, 50 gallons, gas, 120.", "heater year 2023 50 gal gas 120 F"},
		{"Heater: gas, 40 gal, 2019, 125", "heater year 2019 40 gal gas 125 F"},
		{"WH 50 gal electric 2020, 120", "heater year 2020 50 gal electric 120 F"},
		{"Heater is a 50 gal gas from 2021, 130, never flushed.", "heater year 2021 50 gal gas 130 F never maintained"},
		{"heater - 40 gal, propane, 2016, 140, fine", "heater year 2016 40 gal propane 140 F good"},
		{"heater is a fifty gallon natural gas that went in in twenty twenty two and she has it at one twenty", "heater year 2022 50 gal gas 120 F"},
		{"40 gal electric heater, 2018, they have it at 140", "heater year 2018 40 gal electric 140 F"},
		{"Her heater is a 50 gallon propane from 2014, she keeps it at 140, way too hot for her.", "heater year 2014 50 gal propane 140 F"},
		{"heater 2015, gas, he runs it at 130", "heater year 2015 gas 130 F"},
		{"the heater's a 2019 electric and they leave it at 125", "heater year 2019 electric 125 F"},
		{"tankless 2020, she has it on 120", "heater year 2020 tankless 120 F"},
		{"water heater is 50 gal gas 2017 kept at 120", "heater year 2017 50 gal gas 120 F"},
		{"I put in an electric fifty gallon heater and I set it for a hundred twenty five", "replaced_heater; heater 50 gal electric 125 F"},
		{"so I got the new water heater in at eleven Saddle Creek Lane it's an electric fifty gallon and I set it for a hundred twenty five", "replaced_heater; heater 50 gal electric 125 F"},
		{"new heater's in, it's a gas forty gallon and I set it to one twenty", "replaced_heater; heater 40 gal gas 120 F"},
		{"new water heater in, it's a propane seventy five gallon, set at 125", "replaced_heater; heater 75 gal propane 125 F"},
		{"regulator is a 2004 and it's probably going", "prv year 2004 suspect"},
		{"prv 2004, starting to go", "prv year 2004 suspect"},
		{"PRV is from 2007 and on its way out", "prv year 2007 suspect"},
		{"plastic drain valve that's corroded shut nearly", "drain_valve plastic suspect"},
		{"It's an 80 gal electric from 2011 with a plastic drain valve that's corroded nearly shut", "heater year 2011 80 gal electric; drain_valve plastic suspect"},
		{"drain valve almost frozen, brass", "drain_valve brass suspect"},
		{"drain valve is about seized, plastic", "drain_valve plastic suspect"},
		{"prv near dead, 2006", "prv year 2006 suspect"},
		{"drain valve corroded shut", "drain_valve failed"},
		{"regulator 2016, getting weak", "prv year 2016 suspect"},
		{"my gauge has a bent needle", "gauge suspect"},
		{"The helper's gauge has a sticky needle.", "gauge suspect"},
		{"WH hp 50 gal 2020, 120F, never serviced", "heater year 2020 50 gal heat_pump 120 F never maintained"},
		{"wh: hp, 65g, 2022", "heater year 2022 65 gal heat_pump"},
		{"soft 2021 good", "softener year 2021 good"},
		{"soft 2019 dead", "softener year 2019 failed"},
		{"bkflow @ mtr ... yes", "check_valve"},
		{"backflow at meter: yes", "check_valve"},
		{"chk vlv @ mtr - yes", "check_valve"},
		{"check valve at the meter: none", "check_valve none"},
		{"PRV - house was built 2005 and it's original, worn", "prv year 2005 suspect"},
		{"prv: original, house built 1998", "prv year 1998"},
		{"the house was built in 2003 and the regulator is original to it", "prv year 2003"},
		{"heater 50 gal gas 2020, kitchen 120", "heater year 2020 50 gal gas; 120 kitchen"},
		{"house was built 2005, prv is worn", "prv suspect"},
		{"heater was never flushed and it's going", "heater suspect never maintained"},
	})
}

// The heater's state told by its element, as a geyser, over a list, or turned between two readings.
func TestTheHeaterInANote(t *testing.T) {
	reads(t, [][2]string{
		{"720 kPa on kitchen tap and 715 kPa on laundry tap, heating element not on", "kitchen 104.4 idle; laundry 103.7 idle"},
		{"kitchen 70, laundry 71, heating elements off", "kitchen 70 idle; laundry 71 idle"},
		{"kitchen 70, element still not on", "kitchen 70 idle"},
		{"kitchen 70, heating element was not on at any time", "kitchen 70 idle"},
		{"kitchen 70, both heating elements on", "kitchen 70 firing"},
		{"kitchen 90, the heating element is on", "kitchen 90 firing"},
		{"rear tap is 510 kpa and front tap is 515 kpa, both no water running, geyser is off", "rear_bibb 74 idle static; front_bibb 74.7 idle static"},
		{"kitchen 70, geyser off", "kitchen 70 idle"},
		{"kitchen 70, geyser was not on", "kitchen 70 idle"},
		{"geyser on, kitchen 88", "kitchen 88 firing"},
		{"nothin running, elec heater off: 63 break room kitchen, 62 exam room lav, 63 lndry box", "kitchen 63 idle static; bath 62 idle static; laundry 63 idle static"},
		{"gas heater off: kitchen 63, lav 62", "kitchen 63 idle; bath 62 idle"},
		{"electric heater off, all taps shut: kitchen 63, lav 62", "kitchen 63 idle static; bath 62 idle static"},
		{"elec wh on: kitchen 83, lav 82", "kitchen 83 firing; bath 82 firing"},
		{"propane heater off for both, kitchen 63, lav 62", "kitchen 63 idle; bath 62 idle"},
		{"kitchen 63, lav 62, tankless not heating", "kitchen 63 idle; bath 62 idle"},
		{"kitchen 63, heat pump off", "kitchen 63 idle"},
		{"kitchen 63, element was cold", "kitchen 63 idle"},
		{"kitchen 63, burner was never lit", "kitchen 63 idle"},
		{"kitchen 63, the pilot was out the whole time", "kitchen 63 idle"},
		{"kitchen 63, breaker's been off a week so the heater was cold", "kitchen 63 idle"},
		{"tub 88 lav 87 kitchen 88 and the heater was cold bc the breaker's been off a week", "bath 88 idle; bath 87 idle; kitchen 88 idle"},
		{"front bib 66\nrear bib 66\nlaundry 65\n(pilot out for all three, nothing running)", "front_bibb 66 idle static; rear_bibb 66 idle static; laundry 65 idle static"},
		{"A: kitchen 63\nB: tub 63\nheater idle and no taps open for A and B\nC: kitchen again with the burner lit, 97", "kitchen 63 idle static; bath 63 idle static; kitchen 97 firing"},
		{"kitchen 63, tub 62, heater idle for both. Then I lit it and the kitchen went to 91.", "kitchen 63 idle; bath 62 idle; kitchen 91 firing"},
		{"spot one the port after the regulator sixty five, spot two the laundry sixty four, nothing was running for either and the burner was off for either, then I turned the heater up so it fired and the laundry went to ninety one", "after_prv 65 idle static; laundry 64 idle static; laundry 91 firing"},
		{"laundry 64, kitchen 63, burner off for both, then I turned the heater up and it fired and the laundry went to 91", "laundry 64 idle; kitchen 63 idle; laundry 91 firing"},
		{"kitchen 64 heater off, cranked the stat so the burner lit, 88", "kitchen 64 idle; kitchen 88 firing"},
	})
}

// What is to be done, at the end of a note.
func TestPlansAtTheEndOfANote(t *testing.T) {
	says(t, [][2]string{
		{"prv set to 75. He says leave it till fall, so I come back June 30 and set it to 60.", "prv set 75; plan set_prv in 15"},
		{"I come back Friday and set the prv to 60", "plan set_prv in 4"},
		{"I'm back Friday and turn the regulator down", "plan set_prv in 4"},
		{"Regulator's drifting, 2016, getting weak. Don't wait a year, recheck in 90 days.", "prv year 2016 suspect; plan recheck in 90"},
		{"don't let it go a year, recheck in 60 days", "plan recheck in 60"},
		{"don't wait till next year, come back in 3 months for a recheck", "plan recheck in 90"},
		{"here's what I found at 12 Elm St. Kitchen 88. Heater 2007.", "88 kitchen; heater year 2007"},
		{"what did we find at 12 Elm St", "ask history"},
		{"tank install el 20 a las 9", "plan install_tank in 5"},
		{"cambio de reguladora el 22 a las 10", "plan replace_prv in 7"},
		{"PRV swap el 19 a las 8:30", "plan replace_prv in 4"},
		{"tank goes in the 20th at 9", "plan install_tank in 5"},
		{"60 kitchen. he wants both done.", "60 kitchen"},
		{"PRV good, tank shot. quoted both.", "prv good; expansion_tank failed"},
	})
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range [][2]string{
		{"PRV is 15 years old and corroded, I'd say change it, going back a week from today for that.", "prv year 2011 suspect; plan replace_prv in 7"},
		{"PRV's from 2006 and sticking, should be replaced, I'm back Friday for that.", "prv year 2006 suspect; plan replace_prv in 4"},
		{"exp tank is waterlogged and needs swapping, coming back in 10 days for it", "expansion_tank failed; plan replace_tank in 10"},
		{"regulator is shot, I'd change it, back in two weeks to do that", "prv failed; plan replace_prv in 14"},
		{"Tank is shot. They want it done, I'll be back Wednesday for that.", "expansion_tank failed; plan replace_tank in 2"},
		{"Expansion tank 2013, shot, new one needed.", "expansion_tank year 2013 failed; plan replace_tank"},
		{"PRV 2004, dead, new one needed.", "prv year 2004 failed; plan replace_prv"},
		{"Expansion tank 2013, shot, needs a new one.", "expansion_tank year 2013 failed; plan replace_tank"},
		{"exp tank 7 yrs, air 30, so charge is low\nNo date yet: needs a new tank", "expansion_tank year 2019 set 30; plan replace_tank"},
		{"PRV is a 2009 and worn. Tank is a 2009 and the bladder's shot. Quoted both, PRV and tank.", "prv year 2009 suspect; plan replace_prv; expansion_tank year 2009 failed; plan replace_tank"},
		{"PRV worn, tank shot. Quoted both.", "prv suspect; expansion_tank failed; plan replace_prv; plan replace_tank"},
		{"PRV failed, tank failed. I priced both for him, he's thinking about it.", "prv failed; expansion_tank failed; plan replace_prv; plan replace_tank"},
		{"gave her a price on a new prv and a new tank", "plan replace_prv; plan replace_tank"},
		{"quoted new regulator $450 and new expansion tank $220", "plan replace_prv; plan replace_tank"},
		{"No expansion tank. Quoted one at $250.", "expansion_tank none; plan install_tank"},
		{"its the tub valve it drips, not fixed, need a cartridge. remind me in 2 days cartridge", "leak; plan other in 2"},
		{"PRV failed. Expansion tank present, 2 gal, 2008, shot. I quoted the regulator at $480 and the tank at $260, waiting for a yes.", "plan replace_prv; plan replace_tank"},
		{"PRV failed. Expansion tank shot. I priced the tank at 220 and the prv at 450.", "plan replace_prv; plan replace_tank"},
	} {
		got := "; " + inWords(p.Parse(c[0], Context{})) + "; "
		for want := range strings.SplitSeq(c[1], "; ") {
			if !strings.Contains(got, "; "+want+"; ") {
				t.Errorf("%q\n got %s\nwant %s", c[0], got, want)
			}
		}
	}
}

// What a note says that it found, found none of, and turned a regulator from and to.
func TestWhatANoteFound(t *testing.T) {
	says(t, [][2]string{
		{"T&P's dry and I found no leaks. 64 kitchen", "64 kitchen; no relief_discharge; no leak"},
		{"64 kitchen. I found no leaks.", "64 kitchen; no leak"},
		{"64 kitchen. T&P is dry and there are no leaks.", "64 kitchen; no relief_discharge; no leak"},
		{"64 kitchen. T&P dry and I saw no drips.", "64 kitchen; no relief_discharge; no leak"},
		{"T&P is dry and we heard no hammer. 64 kitchen", "64 kitchen; no relief_discharge; no hammer"},
		{"64 kitchen. No leaks other than the hall toilet which runs.", "64 kitchen; leak"},
		{"64 kitchen, no leaks but the kitchen faucet drips", "64 kitchen; leak"},
		{"what i found tonight at 512 w sycamore apt C, neighbor below called. tub 88 lav 87.", "88 bath; 87 bath"},
		{"what we found at 12 Elm St: kitchen 88", "88 kitchen"},
		{"what did we find at 12 Elm St", "ask history"},
		{"what i found at 12 Elm St last time?", "ask history"},
		{"what we found at 12 Elm", "ask history"},
		{"kitchen 77. I offered to bring the regulator down but the builder says \"leave it till closing\", so I come back June 30 and set it to 60.", "77 kitchen; plan set_prv in 15"},
		{"I lowered the regulator, it was 95 and is 62.", "set_prv to 62 from 95"},
		{"Then I have lowered the regulator, it was 6.5 bar and is 4.5 bar.", "set_prv to 65.3 from 94.3"},
		{"turned down the prv, it was 90, now it's 60", "set_prv to 60 from 90"},
		{"Adjusted the PRV, was 85 and is now 60.", "set_prv to 60 from 85"},
		{"backed off the reg, it was 100 psi and is 65 psi now", "set_prv to 65 from 100"},
		{"swapped the prv, rear was 104 and is 61", "104 rear_bibb before; 61 rear_bibb after; replaced_prv"},
		{"kitchen was 95 now 62 after I cranked the prv down", "62 kitchen after; 95 kitchen before; set_prv"},
		{"lowered the regulator, kitchen was 95 and is 62", "62 kitchen after; 95 kitchen before; set_prv"},
	})
}
