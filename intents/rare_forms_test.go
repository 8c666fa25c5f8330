package intents

import "testing"

func TestSuffixesWrittenBesideTheTables(t *testing.T) {
	for text, site := range map[string]string{
		"1400 Dalton Blvrd, kitchen 60":       "1400 Dalton Blvd",
		"12 Elm Stret, kitchen 60":            "12 Elm St",
		"rear 70, 61 Maple Str. Apt. 5":       "61 Maple St Apt 5",
		"61 Maple str rear 70":                "61 Maple St",
		"61 Maple Str: 118 front":             "61 Maple",
		"K. sink 68, Unit 3, 1400 Dalton Blv": "1400 Dalton Blvd Unit 3",
	} {
		p, err := New()
		if err != nil {
			t.Fatal(err)
		}
		if got := p.Parse(text, Context{}).Site; got != site {
			t.Errorf("%q\n got site %q, want %q", text, got, site)
		}
	}
}

func TestPointsBehindInitialsEndNoSentence(t *testing.T) {
	says(t, [][2]string{
		{"M. bath 60, K. sink 61", "60 bath; 61 kitchen"},
		{"kit. 66, ldry. 60", "66 kitchen; 60 laundry"},
		{"chk. valve at mtr.", "check_valve"},
		{"tub 62 hose bibb 60 str 118", "62 bath; 60 bibb; 118 street"},
	})
}

func TestWhoClimbsIsNoNeedle(t *testing.T) {
	says(t, [][2]string{
		{"climbed up on the roof. 66 kitchen", "66 kitchen"},
		{"I climbed the stairs, 66 tub", "66 bath"},
		{"climbed under the house, 70 at the test port", "70 after_prv"},
		{"climbed over three fake Christmas trees, washer box 78", "78 laundry"},
		{"needle climbed over 4 hours", "creep"},
		{"climbs over the night", "creep"},
		{"creeps up over 10 min", "creep"},
	})
}

func TestWeakWrittenAsItSounds(t *testing.T) {
	says(t, [][2]string{
		{"customer says its week upstairs", "low_flow"},
		{"shower is week", "low_flow"},
		{"kitchen is real week, tub 44", "low_flow; 44 bath"},
		{"water was off all week", "ask none"},
		{"recheck in a week", "plan recheck in 7"},
		{"toilet upstairs never stops and I heard the hum", "leak; noise"},
	})
}

func TestSoftenerTickedOff(t *testing.T) {
	says(t, [][2]string{
		{"soft OK, recirc none", "softener good; recirc none"},
		{"no soft, no recirc", "softener none; recirc none"},
		{"soft: 2015", "softener year 2015"},
		{"her water is soft", "ask none"},
		{"no soft start on the pump", "ask none"},
	})
}

func TestWhatATapIsGoodFor(t *testing.T) {
	says(t, [][2]string{
		{"kitchen tap good for 62", "62 kitchen"},
		{"rear bibb is good for 71 psi", "71 rear_bibb"},
		{"kitchen tap good for 130 feet of head", "56.4 kitchen"},
		{"tub spout 86 ft water", "37.3 bath"},
		{"laundry valve good for 150", "ask none"},
		{"prv good for 300 psi", "ask none"},
	})
}

func TestThePilotIsNotTheBurner(t *testing.T) {
	says(t, [][2]string{
		{"side spigot 92, pilot's lit but the burner's off", "92 side_bibb idle"},
		{"kitchen 66, pilot on but burner off", "66 kitchen idle"},
		{"piloto prendido pero el quemador apagado, 70 atrás", "70 rear_bibb idle"},
	})
}

func TestAskedInOtherWords(t *testing.T) {
	says(t, [][2]string{
		{"can i type kpa in here or does it have to be psi", "ask help"},
		{"whats the trick for sending you 1 before n 1 after in the same text", "ask help"},
		{"do u need the zip or just house # and street", "ask help"},
		{"that was a test, wipe it", "ask undo"},
		{"wipe it down and call me", "ask none"},
		{"anything on the list to revisit this Friday?", "ask due"},
		{"dicen que la presión les sube y les baja", "swings"},
	})
}

func TestANumberThatIsAffirmed(t *testing.T) {
	says(t, [][2]string{
		{"side bibb 99 no wait 79 it's 79", "79 side_bibb"},
		{"laundry ninety nine no wait seventy nine, it's seventy nine", "79 laundry"},
		{"kitchen 66, yep 66", "66 kitchen"},
		{"kitchen 71 yes 71 psi", "71 kitchen"},
		{"66 front and it's 66 rear", "66 front_bibb; 66 rear_bibb"},
	})
}

func TestThePlaceIsTakenBack(t *testing.T) {
	says(t, [][2]string{
		{"front 77. scratch that, it was the rear", "77 rear_bibb"},
		{"front 77 scratch that rear", "77 rear_bibb"},
		{"front 77. strike that, that was the kitchen", "77 kitchen"},
		{"front 77. scratch that", "77 front_bibb; ask undo"},
		{"front 77. scratch that, kitchen drips", "77 front_bibb; ask undo"},
		{"scratch that, it was the rear", "ask undo"},
	})
}

func TestBackThereIsTheRearTap(t *testing.T) {
	says(t, [][2]string{
		{"max needle on the back spigot said 139, it's 137 back there as I type this", "139 rear_bibb peak; 137 rear_bibb"},
		{"back spigot 120, 20 min back there", "120 rear_bibb"},
		{"kitchen 69 back there", "69 kitchen"},
	})
}

func TestALineThatOnlyNamesTheTap(t *testing.T) {
	says(t, [][2]string{
		{"640 Cantle Ct test port past the PRV, elements off, not a drop running\nstart: 62\nafter 5 min: 74", "62 after_prv idle static; 74 after_prv idle static"},
		{"640 Cantle Ct, laundry, nothing running\nstart: 62\nafter 5 min: 74", "62 laundry static; 74 laundry static"},
	})
}

func TestAnAgeThatIsReckoned(t *testing.T) {
	says(t, [][2]string{
		{"prv 20 yrs old htr half that, 91 rear", "prv year 2006; heater year 2016; 91 rear_bibb"},
		{"heater 12 yrs old, prv twice that", "heater year 2014; prv year 2002"},
		{"heater is half as old as the prv, prv 2006", "heater year 2016; prv year 2006"},
		{"heater 12 yrs old, prv more than twice that", "heater year 2014"},
		{"kitchen 80, tub half that", "80 kitchen"},
	})
}

func TestTheHouseNumberIsToldAsOne(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for text, site := range map[string]string{
		"tub 71. house number also 71. Garnet St":                 "71 Garnet St",
		"71 at the tub and 71 is the house number too, Garnet St": "71 Garnet St",
		"the address is 88 on Elm St, kitchen 61":                 "88 Elm St",
		"house # 88, Elm St, kitchen 61":                          "88 Elm St",
		"Garnet St, house number 412. tub 71":                     "412 Garnet St",
		"at this address 71 kitchen":                              "",
	} {
		if got := p.Parse(text, Context{}).Site; got != site {
			t.Errorf("%q\n got site %q, want %q", text, got, site)
		}
	}
	says(t, [][2]string{
		{"house no. 88, street is Elm, kitchen 61", "61 kitchen"},
		{"kitchen 66, house number 71", "66 kitchen"},
		{"71 is the house number, kitchen 60", "60 kitchen"},
		{"kitchen faucet is fifty nine the address is forty two oh seven sandpiper avenue", "59 kitchen"},
		{"at this address 71 kitchen", "71 kitchen"},
		{"same address, 71 now at the tub", "71 bath"},
	})
}

func TestJobsThatAndJoins(t *testing.T) {
	says(t, [][2]string{
		{"I propose to install an expansion tank and to replace the regulator at 1700 Pelham Ave in three weeks", "plan install_tank in 21; plan replace_prv in 21"},
		{"next week we will install an expansion tank and replace the regulator", "plan install_tank in 7; plan replace_prv in 7"},
		{"need to replace the prv and recheck in 2 weeks", "plan replace_prv; plan recheck in 14"},
		{"going back in 2 wks to change the check", "plan other in 14"},
		{"going back in 2 weeks to check", "plan recheck in 14"},
	})
}

func TestWhatWasReadAfterATurn(t *testing.T) {
	says(t, [][2]string{
		{"was shooting for 60, best that old prv would give me was 68 at the kitchen after I backed it off", "68 kitchen after; set_prv"},
		{"after I backed it off the kitchen was 68", "set_prv; 68 kitchen after"},
		{"kitchen 68 after I turned it off", "68 kitchen"},
		{"hs sd 60 ftr i st th prv", "60 after_prv after; set_prv"},
		{"old exp tnak out new oen in at 58# air", "replaced_tank to 58"},
	})
}

func TestAThingThereIsNoneOfBesideATrouble(t *testing.T) {
	says(t, [][2]string{
		{"no sftnr shwr wk", "softener none; low_flow"},
		{"no tank shower is weak", "expansion_tank none; low_flow"},
		{"la reguladora no sirve, la edad tampoco se sabe", "prv age unknown failed"},
		{"which follow-ups were meant for last week", "ask due"},
		{"who on the crew still has a follow-up open that was meant for last week", "ask due"},
	})
}

func TestAirThatWasAdded(t *testing.T) {
	says(t, [][2]string{
		{"added 5 psi to the tank", "charged_tank"},
		{"put 5 psi in the tank, it was at 45, house is at 58", "charged_tank; 58"},
		{"exp tank 38, put 20 lbs in it", "charged_tank"},
		{"put 60 in the tank", "charged_tank to 60"},
		{"added 6 psi of air to the tank, kitchen 60", "charged_tank; 60 kitchen"},
		{"added 2 shutoffs to the tank", "ask none"},
		{"added a 2 gal tank", "installed_tank; expansion_tank 2 gal"},
	})
}

func TestWhatANumberShouldHaveBeen(t *testing.T) {
	says(t, [][2]string{
		{"my bad the 84 at 19 Tamarind should be 48", "ask correct; 48"},
		{"the 84 at the kitchen should've been 48", "ask correct; 48 kitchen"},
		{"84 should have been 48, kitchen", "ask correct; 48 kitchen"},
	})
}

func TestTheInletOfAHeaterIsNotTheStreet(t *testing.T) {
	says(t, [][2]string{
		{"gauge at the water heater inlet 77", "77"},
		{"cold inlet of the heater 77", "ask none"},
		{"reg inlet 120 outlet 62", "120 street; 62 after_prv"},
		{"mainline pressure 126", "126 street"},
		{"1st floor powder 61, 2nd floor hall bath 54", "61 bath; 54 bath"},
	})
}
