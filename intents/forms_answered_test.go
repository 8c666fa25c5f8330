package intents

import "testing"

func TestSymptomsThatAreAnsweredAsInAForm(t *testing.T) {
	says(t, [][2]string{
		{"a) hammer no b) leaks no c) dark water no d) relief dry e) 66 front",
			"no hammer; no leak; no dark_water; no relief_discharge; 66 front_bibb"},
		{"1) hammer no 2) leaks yes 3) dark water no", "no hammer; leak; no dark_water"},
		{"hammer no, leaks no, dark water no", "no hammer; no leak; no dark_water"},
		{"hammer no leaks no dark water no", "no hammer; no leak; no dark_water"},
		{"88 front, leaks no, 71 rear", "88 front_bibb; no leak; 71 rear_bibb"},
		{"hammer yes, leaks no", "hammer; no leak"},
		{"nothing comes out upstairs but a dribble", "low_flow"},
		{"no water upstairs, kitchen just a dribble", "no_water; low_flow"},
	})
}

func TestWhatIsWrittenOnADoorIsOfTheHouse(t *testing.T) {
	says(t, [][2]string{
		{"Her note on the door: \"toilet won't shut up\". Front spigot 98.", "leak; 98 front_bibb"},
		{"Voicemail on my phone: pipes bang when the washer stops", "hammer"},
		{"smells like rotten eggs by the heater, like gas", "gas_smell"},
		{"It pounds like a drum when the washer stops", "hammer"},
		{"lost 5 pounds when the washer stops", "ask none"},
		{"orange bath every morning, tub 58", "rusty_water; 58 bath"},
		{"gauge 9 yrs old, wouldn't bet on it, 76 rear", "gauge year 2017 suspect; 76 rear_bibb"},
	})
}

func TestWhoAsksHimselfAndSettlesIt(t *testing.T) {
	says(t, [][2]string{
		{"prv tag says 2011? 2013. ok 2013.", "prv year 2013"},
		{"heater 2009? no 2012", "heater year 2012"},
		{"wrote side bib, it's really the rear one. 81", "81 rear_bibb"},
		{"put side bib, should be the rear one. 81", "81 rear_bibb"},
		{"do I come back in 2 weeks, nah make it a month, recheck 92 Bellow Ct", "plan recheck in 30"},
		{"do I come back in 2 weeks?", "ask due"},
	})
}

func TestShorthandOfOneCrew(t *testing.T) {
	says(t, [][2]string{
		{"TPRV drpg, 121 @ WM box", "relief_discharge; 121 laundry"},
		{"PK 127 o/n @ k, 62 @ k rt nw", "127 kitchen peak; 62 kitchen"},
		{"instaled expnasion tnak, 2 gal, chargd 60", "expansion_tank 2 gal; installed_tank to 60"},
		{"pvr is orignal and the hosue is 1988", "prv year 1988"},
		{"swaped drian valve for a bras one", "drain_valve brass; replaced_drain_valve"},
		{"wh 2005 gass 40 galon", "heater year 2005 40 gal gas"},
	})
}
