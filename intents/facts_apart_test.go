package intents

import "testing"

func TestATankThatIsDeniedIsNotTheHeaters(t *testing.T) {
	says(t, [][2]string{
		{"no tank, 50 gal electric heater", "expansion_tank none; heater 50 gal electric"},
		{"no tank, 40 gal gas 2015", "expansion_tank none; heater year 2015 40 gal gas"},
		{"no tank 50 gal heater", "expansion_tank none; heater 50 gal"},
		{"tank is flat, 50 gal electric heater", "expansion_tank failed; heater 50 gal electric"},
		{"tank 2019, gas heater", "expansion_tank year 2019; heater gas"},
	})
}

func TestADateIsOfTheThingThatHasNoOther(t *testing.T) {
	says(t, [][2]string{
		{"they moved in in 2019, prv is dated 2015", "prv year 2015"},
		{"she retired in 2019, prv was put in 2015", "prv year 2015"},
		{"tank was put in 6 yrs ago heater 3 yrs ago", "expansion_tank year 2020; heater year 2023"},
		{"2015 heater 2018 prv 2020 tank", "expansion_tank year 2020; heater year 2015; prv year 2018"},
		{"10 year old heater 5 year old prv", "heater year 2016; prv year 2021"},
		{"prv2016 et2016 wh2018", "expansion_tank year 2016; heater year 2018; prv year 2016"},
	})
}

func TestADeedNamedInSpanishWithItsArticle(t *testing.T) {
	says(t, [][2]string{
		{"swap del prv listo, 60 en la cocina", "60 kitchen; replaced_prv"},
		{"cambio de la reguladora terminado", "replaced_prv"},
		{"instalacion del tanque lista", "installed_tank"},
		{"flush del boiler hecho", "flushed_heater"},
		{"cambio del tanque para el viernes", "plan replace_tank in 4"},
	})
}

func TestTheOtherStateOfATapIsOfTheSameTime(t *testing.T) {
	says(t, [][2]string{
		{"put in a 2 gal tank. laundry showed 60 afterwards with the heater firing and 58 with it idle",
			"58 laundry idle after; 60 laundry firing after; installed_tank; expansion_tank 2 gal"},
		{"swapped the prv. kitchen 60 after static, 52 flowing", "52 kitchen flowing after; 60 kitchen static after; replaced_prv"},
	})
}

func TestAnotherFactBeginsWithoutAMark(t *testing.T) {
	says(t, [][2]string{
		{"heater never flushed prv age unknown", "heater never maintained; prv age unknown"},
		{"prv is shot relief valve weeping", "prv failed; relief_discharge"},
		{"relief valve plugged has a softener", "relief_blocked; softener"},
		{"40 gal gas 2015 prv is stuck", "heater year 2015 40 gal gas; prv failed"},
		{"heater never flushed toilet runs", "heater never maintained; leak"},
		{"2015 heater 2018 prv", "heater year 2015; prv year 2018"},
		{"drain valve seized swapped the prv", "drain_valve failed; replaced_prv"},
	})
}

func TestFactsWithoutMarksAreHeardApart(t *testing.T) {
	says(t, [][2]string{
		{"no exp tank rusty water", "expansion_tank none; rusty_water"},
		{"no softener low flow upstairs", "low_flow; softener none"},
		{"no exp tank burner off 64 kit", "64 kitchen idle; expansion_tank none"},
		{"swapped the tank t&p dry", "no relief_discharge; replaced_tank"},
		{"swapped the tank heater 9 yrs old", "heater year 2017; replaced_tank"},
		{"put in a 2 gal tank heater never flushed", "expansion_tank 2 gal; heater never maintained; installed_tank"},
		{"prv 12 yrs old recheck in 6 months", "plan recheck in 180; prv year 2014"},
		{"recheck in 6 months set prv to 60", "plan recheck in 180; set_prv to 60"},
		{"call the owner back in 3 days check valve at meter", "check_valve; plan other in 3"},
		{"kitchen 64 call the owner back in 3 days", "64 kitchen; plan other in 3"},
		{"laundry 58 lazy hand 131 rear", "131 rear_bibb peak; 58 laundry"},
		{"lazy hand 131 rear kitchen 64", "131 rear_bibb peak; 64 kitchen"},
		{"brass drain valve rear bib 72", "72 rear_bibb; drain_valve brass"},
		{"rear bib 72 dark water at the tub", "72 rear_bibb; dark_water"},
		{"rear bib 72 tank air 40", "72 rear_bibb; expansion_tank set 40"},
		{"rusty water heater idle 66 kit", "66 kitchen idle; rusty_water"},
		{"heater 50 gal gas gauge creeps", "creep; heater 50 gal gas"},
		{"no prv here so I put one in heater idle", "installed_prv"},
		{"heater flushed last year replaced the prv", "heater maintained 2025; replaced_prv"},
		{"no tank heater from 2011", "expansion_tank none; heater year 2011"},
		{"htr 2011 nvr flshd lk undr ktchn snk", "heater year 2011 never maintained; leak"},
		{"prv failed coming back in two days to replace it heater is 40 gal", "heater 40 gal; plan replace_prv in 2; prv failed"},
		{"prv failed back friday to swap it heater is 40 gal", "heater 40 gal; plan replace_prv in 4; prv failed"},
		// and what belongs together stays so
		{"no tank heater here", "heater none"},
		{"bfp at meter 74 rear", "74 rear_bibb; check_valve"},
		{"no heater firing 64 kit", "64 kitchen idle"},
		{"tank heater firing 64 kit", "64 kitchen firing"},
		{"new expansion tank goes on in three days", "plan replace_tank in 3"},
		{"no leaks low flow or noise", "no leak; no low_flow; no noise"},
	})
}

// What is told without a mark is read as with a comma, whatever fact stands before and behind.
func TestEveryFactWithoutAMarkIsReadAsWithAComma(t *testing.T) {
	p, err := oneParser()
	if err != nil {
		t.Fatal(err)
	}
	first := []string{
		"heater never flushed", "heater flushed last year", "heater from 2011", "heater 9 yrs old", "heater 50 gal gas", "prv set to 60", "prv is shot",
		"prv age unknown", "exp tank waterlogged", "no exp tank", "no check valve", "no softener", "brass drain valve", "recirc pump",
		"swapped the tank", "replaced the prv", "put in a 2 gal tank", "swapped the drain valve", "set prv to 62", "shut the water off",
		"no prv here so I put one in", "needs a tank", "needs a new prv", "recheck in 6 months", "recheck in a week", "replace prv next week",
		"call the owner back in 3 days", "no leaks", "no hammer", "lazy hand 131 rear",
	}
	behind := []string{
		"t&p dripping", "t&p dry", "relief valve is capped", "toilet runs", "pipes bang", "low flow upstairs", "water is black in the morning",
		"smells gas", "shut the water off", "set prv to 62", "swapped the tank", "recheck in 6 months", "replace prv next week", "needs a new prv",
		"exp tank good", "no check valve", "heater firing", "lazy hand 128 side bib", "kitchen 64", "heater never flushed",
	}
	for _, a := range first {
		for _, b := range behind {
			got, want := inWords(p.Parse(a+" "+b, Context{})), inWords(p.Parse(a+", "+b, Context{}))
			if got != want {
				t.Errorf("%q\n got %s\nwant %s", a+" "+b, got, want)
			}
		}
	}
}

func TestThingsNamedBesideACallOrAnOrder(t *testing.T) {
	says(t, [][2]string{
		{"recirc pump, call owner tomorrow", "plan other in 1; recirc"},
		{"call the city in 3 days, check valve at meter", "check_valve; plan other in 3"},
		{"quote on a softener, due friday", "plan other in 4"},
		{"want a softener, send quote tomorrow", "plan other in 1"},
	})
}

func TestWhatSomebodyPays(t *testing.T) {
	says(t, [][2]string{
		{"64 kitchen idle, 12 Elm. put a new fill valve in the toilet and it quit, 85 for the lady", "64 kitchen idle; repaired_leak"},
		{"64 kitchen. 66 for the customer's tub", "64 kitchen; 66 bath"},
		{"64 kitchen, 12 Elm, 25 parts, $60 labor", "64 kitchen"},
		{"tank air is 20, should match the house at 62", "expansion_tank set 20"},
		{"64 kit no heater on", "64 kitchen idle"},
	})
}

func TestWhatIsSoIsNoQuestion(t *testing.T) {
	says(t, [][2]string{
		{"PRV looks good, what's bad is the expansion tank, waterlogged, 2 gal from 2009", "expansion_tank year 2009 2 gal failed; prv good"},
		{"what's the tank for a 50 gal", "ask tank_size"},
		{"could you set me a reminder to recheck 12 Elm in a month?", "plan recheck in 30"},
		{"There is not expansion tank", "expansion_tank none"},
		{"there is not enough pressure upstairs", "low_flow"},
	})
}

func TestWordsOfTimeAroundTheWork(t *testing.T) {
	says(t, [][2]string{
		{"When I come: 88 kitchen. I turned down the prv to 60. After this kitchen 62", "62 kitchen after; 88 kitchen before; set_prv to 60"},
		{"set the prv to 60. after it kitchen 61", "61 kitchen; set_prv to 60"},
		{"prv is sticking. before it 118, after it 64", "118 street; 64 after_prv; prv suspect"},
	})
}

func TestATankOfItsOwnSize(t *testing.T) {
	says(t, [][2]string{
		{"heater is 40 gal gas, tank 2019", "expansion_tank year 2019; heater 40 gal gas"},
		{"2 gal tank, heat pump water heater", "expansion_tank 2 gal; heater heat_pump"},
		{"50 gal electric heater 2 gal tank", "expansion_tank 2 gal; heater 50 gal electric"},
	})
}

func TestSeizedOrWeepingTogetherWithOtherThings(t *testing.T) {
	says(t, [][2]string{
		{"t&p dripping, drain valve seized", "drain_valve failed; relief_discharge"},
		{"tank charged to 60, relief valve weeping", "charged_tank to 60; relief_discharge"},
		{"relief valve is not dripping and there are no leaks", "no leak; no relief_discharge"},
		{"t&p dry and no leaks", "no leak; no relief_discharge"},
		{"t&p dripping and no leaks", "no leak; relief_discharge"},
		{"banging when the shower shuts: none", "no hammer"},
		{"no pressure problem found, 65 kitchen", "65 kitchen"},
		{"two toilets that keep running, 66 kitchen", "66 kitchen; leak"},
		{"replaced a supply line on the powder room toilet, it had been spraying", "repaired_leak"},
		{"relief valve has a rust trail and drips", "relief_discharge"},
		{"bang on it and it's full top to bottom", "ask none"},
		{"66 kitchen, ignore the noise it's my truck", "66 kitchen"},
	})
}

func TestWaterThatRunsIsToldFirst(t *testing.T) {
	says(t, [][2]string{
		{"with the tub running kitchen 57 and laundry 58", "57 kitchen flowing; 58 laundry flowing"},
		{"with nothing running kitchen 57, laundry 58", "57 kitchen static; 58 laundry static"},
		{"with the tub running kitchen 57, 66 shut", "57 kitchen flowing; 66 kitchen static"},
		{"rear 72 static, 55 dynamic (3 sprinkler heads on)", "55 rear_bibb flowing; 72 rear_bibb static"},
		{"two guys on site, laundry 104", "104 laundry"},
		{"kitchen went down 25 when I opened the tub, left 48 at the side bib", "48 side_bibb flowing"},
	})
}

func TestDialsOfHeaters(t *testing.T) {
	says(t, [][2]string{
		{"120 degrees on the heater dial, 66 kitchen", "66 kitchen; heater 120 F"},
		{"thermostat on the 52 gal electric is at 140", "heater 52 gal electric 140 F"},
		{"the dial on the 50 gal is at 120", "heater 50 gal 120 F"},
	})
}

func TestRemindersAndDaysOfOthers(t *testing.T) {
	says(t, [][2]string{
		{"set me a reminder in 10 days to replace the prv", "plan replace_prv in 10"},
		{"set a reminder to replace the prv in 10 days", "plan replace_prv in 10"},
		{"check at 12 Elm, the sale is on the 30th. kitchen 61", "61 kitchen"},
		{"I'll put a tank in on June 24 and recheck in 45 days", "plan install_tank in 9; plan recheck in 45"},
		{"had to clean the prv strainer, 62 kitchen", "62 kitchen; rebuilt_prv"},
		{"kitchen read 118 before I shut the house off at the main", "118 kitchen before; shut_off"},
	})
}

func TestAskedBesidesOrForAnother(t *testing.T) {
	says(t, [][2]string{
		{"pull up 12 Elm and plot it", "ask history; ask trend"},
		{"past visits at 12 Elm, the chart, and the customer sheet", "ask history; ask report; ask trend"},
		{"can i send 2 readings in one text", "ask help"},
		{"do i gotta type psi to you every time or just the number", "ask help"},
		{"do you need the heater state each time or just once", "ask help"},
		{"should i put each tap on its own line", "ask help"},
		{"can i put 2 houses in one message or separate", "ask help"},
		{"do i gotta put 3 taps on the new line out back", "ask none"},
		{"do i have to bring the address to the shop every time", "ask none"},
		{"do i charge the tank every time", "ask none"},
		{"Readings at 7 Plover Hollow\n1. hose tap 99\n2. bathroom sink 64", "99 bibb; 64 bath"},
		{"Readings on 12 Elm St. front 71, rear 72", "71 front_bibb; 72 rear_bibb"},
		{"Lecturas de 12 Elm St\ncocina 66\ntina 64", "66 kitchen; 64 bath"},
		{"Readings at 7 Plover Hollow", "ask history"},
		{"Readings for 12 Elm St? kitchen is 66 today", "ask history; 66 kitchen"},
		{"12 Elm St recheck is completed. Put another one on for 90 days from now.", "ask done; plan recheck in 90"},
		{"12 Elm St recheck is done, put another on for 90 days", "ask done; plan recheck in 90"},
		{"old tank was dead, put another one in for them", "replaced_tank"},
		{"past visits and pressure graph, 90 Cannon Branch Rd", "ask history; ask trend"},
		{"pressure graph and past visits, 90 Cannon Branch Rd", "ask history; ask trend"},
		{"previous readings plus the trend for 12 Elm St", "ask history; ask trend"},
		{"past visits and the customer sheet, 90 Cannon Branch Rd", "ask history; ask report"},
		{"visitas anteriores y la gráfica de 12 Elm St", "ask history; ask trend"},
		{"graph of the past readings at 12 Elm St", "ask trend"},
		{"past readings as a graph, 12 Elm St", "ask trend"},
		{"tech says 115 at the meter and wants to know what to test next", "115 street; ask next_check"},
		{"how many meters is 64 psi", "ask convert"},
		{"do i text the address first or the number", "ask help"},
		{"how do I look up an old house in here?", "ask help"},
		{"wrong, 74 rear", "74 rear_bibb; ask correct"},
		{"my last message should say 66", "66; ask correct"},
	})
}

func TestWhatWasAimedForOrSaidIsNoPressure(t *testing.T) {
	says(t, [][2]string{
		{"It was the tub, 47. aimed for 60 on the prv, changed my mind and set it to 65", "47 bath; set_prv to 65"},
		{"Shut water off at curb. heater thermostat is at 140, she did that herself, I said 120", "shut_off; heater 140 F"},
		{"rear 88. shower runs 118 on the thermometer", "88 rear_bibb"},
		{"unas 72 libras más o menos en el lavabo con el boiler prendido", "72 bath firing"},
		{"new tank on, charged 62. house built in 1978 and the prv is original", "installed_tank to 62; prv year 1978"},
		{"PRV from 2014, 55 on the dial", "prv year 2014 set 55"},
	})
}

func TestWhatIsQuotedIsPutRight(t *testing.T) {
	says(t, [][2]string{
		{"> kitchen 28\nno no, 82 at the kitchen, mine was backwards", "82 kitchen; ask correct"},
		{"> laundry 90 heater idle\nfix mine, laundry 90 but heater firing", "90 laundry firing; ask correct"},
		{"> kitchen 28\nthanks, kitchen 66 here", "66 kitchen"},
	})
}

func TestTheChartIsAskedForBesides(t *testing.T) {
	says(t, [][2]string{
		{"pull whatever we have on 830 Gannet Cove and plot it too", "ask history; ask trend"},
		{"Before I call her back: past visits at 66 Gull Harbor, the chart, and the customer sheet", "ask history; ask report; ask trend"},
		{"show me how 16 Halyard Ln has been going, a chart would be good", "ask trend"},
		{"350 kpa on this sticker, what do i tell the lady in psi", "ask convert"},
	})
}

// Neither do they run together in a clause of a message with marks that begins by saying what there is not.
func TestFactsThatRunTogetherBehindAMark(t *testing.T) {
	says(t, [][2]string{
		{"kitchen 64. no tank heater 2011", "64 kitchen; expansion_tank none; heater year 2011"},
		{"strt 119 lndry 78 no tnk htr 2011 nvr flshd 3300 madrone dr. recheck in a month", "119 street; 78 laundry; expansion_tank none; heater year 2011 never maintained; plan recheck in 30"},
		{"street 119 no tank heater 2011 never flushed. kitchen 64", "119 street; 64 kitchen; expansion_tank none; heater year 2011 never maintained"},
		{"kitchen 64. no tank no softener heater 2011", "64 kitchen; expansion_tank none; heater year 2011; softener none"},
		{"64 kit. no hammer rusty water", "64 kitchen; no hammer; rusty_water"},
		{"no dark water low flow at the tub. 58 kitchen", "no dark_water; low_flow; 58 kitchen"},
		{"64 kit. no rusty water", "64 kitchen; no rusty_water"},
		{"kitchen 64. no leaks or hammer", "64 kitchen; no leak; no hammer"},
	})
}
