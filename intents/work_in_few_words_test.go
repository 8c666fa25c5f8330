package intents

import "testing"

// Work told in the fewest words keeps the size of what was put in, what it was charged to, and what
// the house reads after it.
func TestWorkInFewWordsKeepsItsFacts(t *testing.T) {
	says(t, [][2]string{
		{"tank out, new 4.4 in charged to 59", "expansion_tank 4.4 gal; replaced_tank to 59"},
		{"put in a new 4.4, charged to 60", "expansion_tank 4.4 gal; replaced_tank to 60"},
		{"new 4.4 tank in, charged to 60", "expansion_tank 4.4 gal; installed_tank to 60"},
		{"tank out and a 4.4 in", "expansion_tank 4.4 gal; replaced_tank"},
		{"put a 2 gal in, charged 70", "expansion_tank 2 gal; installed_tank to 70"},
		{"stuck a 2 gal in, charged 55", "expansion_tank 2 gal; installed_tank to 55"},
		{"threw a 4.5 gal in and charged it to 60", "expansion_tank 4.5 gal; installed_tank to 60"},
		{"le puse aire al tanque, lo dejé en 55", "charged_tank to 55"},
		{"tank waterlogged, replaced and charged to 60", "replaced_tank to 60"},
		{"prv stuck, replaced and set to 60", "replaced_prv to 60"},
		{"heater shot, replaced and set to 120", "heater 120 F; replaced_heater"},
		{"prv sticking, cleaned and set to 60", "prv suspect; set_prv to 60"},
		{"tank low, charged to 60", "charged_tank to 60"},
		{"gave it a new drain valve", "replaced_drain_valve"},
		{"gave it a new prv", "replaced_prv"},
		{"gave the heater a new drain cock, brass", "drain_valve brass; replaced_drain_valve"},
		{"drain valve out and a brass one in", "drain_valve brass; replaced_drain_valve"},
		{"swapped prv tomorrow", "plan replace_prv in 1"},
		{"replaced the tank mañana", "plan replace_tank in 1"},
		{"cambié la reguladora mañana", "plan replace_prv in 1"},
		{"cambié la reguladora esta mañana", "replaced_prv"},
		{"swap prv tomorrow", "plan replace_prv in 1"},
		{"do we need a new prv there", "ask next_check"},
		{"do we need a new prv there?", "ask next_check"},
		{"does she need a new tank", "ask next_check"},
		{"needs a new prv", "plan replace_prv"},
		{"prv'15", "prv year 2015"},
		{"reg'08 tank'12", "expansion_tank year 2012; prv year 2008"},
		{"69psi@lndry,htr idle,prv'15", "69 laundry idle; prv year 2015"},
	})
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, row := range [][2]string{
		{"old reg out and a new one in, 58", "58 after; replaced_prv"},
		{"swapped the reg, 58", "58 after; replaced_prv"},
		{"cambié la reguladora, 60", "60 after; replaced_prv"},
		{"swapped the reg, 350", "replaced_prv"},
		{"swapped the reg, 2 hrs", "replaced_prv"},
	} {
		if got := inWords(p.Parse(row[0], Context{Site: "12 Fern St"})); got != row[1] {
			t.Errorf("%q\n got %s\nwant %s", row[0], got, row[1])
		}
	}
}

// A day that was thought aloud and given up is not the day.
func TestDaysThoughtAloud(t *testing.T) {
	says(t, [][2]string{
		{"come back when, Tuesday? no, Wednesday", "plan other in 2"},
		{"recheck Tuesday? no, Wednesday", "plan recheck in 2"},
		{"recheck Tuesday... no wait, Thursday", "plan recheck in 3"},
		{"hey ponme un recheck for next... no mejor en 2 semanas", "plan recheck in 14"},
		{"recheck in a week? no, two weeks", "plan recheck in 14"},
		{"recheck in 2 weeks... no, in 3 weeks", "plan recheck in 21"},
		{"not saturday, make the recheck thursday", "plan recheck in 3"},
		{"when do I come back, friday? no monday", "ask due"},
	})
}

func TestAFeeIsNoChargeOfTheTank(t *testing.T) {
	says(t, [][2]string{
		{"there's an expansion tank of 3 gallons. Charged 85 dollars, she owes 40 from April", "expansion_tank 3 gal"},
		{"tank good, charged 40 to the card", "expansion_tank good"},
		{"expansion tank is a 2 gallon. Charged a hundred dollars", "expansion_tank 2 gal"},
		{"exp tank 2 gal, charged 60", "expansion_tank 2 gal; charged_tank to 60"},
	})
}

func TestTheDayOfAPlanIsNoMarkOfThePart(t *testing.T) {
	says(t, [][2]string{
		{"prv from 2008, worn. quoted a new one, no date", "prv year 2008 suspect; plan replace_prv"},
		{"I promised them a new regulator, no date", "plan replace_prv"},
		{"prv 2011 needs replacing, no date given", "prv year 2011; plan replace_prv"},
		{"regulator is corroded, no date", "prv age unknown suspect"},
	})
}

func TestASmallPartAndTheTapIsGoodAgain(t *testing.T) {
	says(t, [][2]string{
		{"hose bib out back was leaking, new stem n packing, good now. 65 cash", "repaired_leak"},
		{"hose bib out back was leaking, new washer, fine now", "repaired_leak"},
		{"kitchen faucet was dripping, new cartridge, good now", "repaired_leak"},
		{"shower drip - new cartridge - ok now", "repaired_leak"},
		{"hose bib out back was leaking. new washer, good now", "repaired_leak"},
		{"hose bib out back was leaking. new washer. dry", "repaired_leak"},
		{"hose bib was leaking, new washer", "leak"},
		{"hose bib leaking, new stem n packing wont help", "leak"},
		// another thing is dry or good
		{"hose bib out back was leaking. new washer. T&P dry", "leak; no relief_discharge"},
		{"hose bib was leaking, new stem, prv is good now", "leak; prv good"},
		{"tub drips. quoted new cartridge. heater good", "heater good; leak; plan other"},
		{"patched the slab leak, 2 couplings, 1400 total", "repaired_leak"},
	})
}

func TestNotToBeForgotten(t *testing.T) {
	says(t, [][2]string{
		{"tmrw drop gate key bk @ 83 Roadrunner Ln dont let me 4get", "plan other in 1"},
		{"plz dont forget recheck tmrw 12 Elm St", "plan recheck in 1"},
		{"dont 4get prv swap friday 12 Elm St", "plan replace_prv in 4"},
		{"take the spare washer to 12 Elm St monday, dont forget", "plan other in 7"},
		{"dont let me forget tues bring the long ladder to 12 Elm St", "plan other in 1"},
		{"dont forget you owe me lunch", "ask none"},
		{"dont forget 66 kitchen at 12 Elm St", "66 kitchen"},
	})
}

func TestWordsWrittenWithAFigure(t *testing.T) {
	says(t, [][2]string{
		{"recheck 2morrow", "plan recheck in 1"},
		{"gonna swap prv 2moro", "plan replace_prv in 1"},
		{"swapped prv 2day", "replaced_prv"},
		{"rear 66 2day", "66 rear_bibb"},
		{"recheck in 2days", "plan recheck in 2"},
		{"2gal tank", "expansion_tank 2 gal"},
	})
}

func TestToiletsThatDoNotRun(t *testing.T) {
	says(t, [][2]string{
		{"RELIEF DRY, TOILETS NOT RUNNING, 71 SIDE BIB", "71 side_bibb; no leak; no relief_discharge"},
		{"toilet not running now", "no leak"},
		{"toilets aren't running", "no leak"},
		{"60 kitchen, sprinklers not running", "60 kitchen static"},
		{"water not running, kitchen 62", "62 kitchen static"},
		{"heater not running 62 kitchen", "62 kitchen idle"},
	})
}
