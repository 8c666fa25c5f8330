package intents

import "testing"

func TestEveryWayToSayThatNoWaterRuns(t *testing.T) {
	shut := []string{"shut", "closed", "off", "shut off", "turned off"}
	inFrames(t, [][2]string{
		{"64 kitchen, {}", "64 kitchen static"},
		{"{}. kitchen 62, tub 64", "62 kitchen static; 64 bath static"},
	},
		product([]string{"", "all", "all the", "the"}, []string{"taps", "faucets", "fixtures", "spigots"}, []string{"", "are", "were", "all"}, shut),
		product([]string{"every", "each"}, []string{"tap", "faucet", "fixture"}, []string{"", "is", "was"}, shut),
		product([]string{"no", "none of the"}, []string{"taps", "faucets", "fixtures"}, []string{"", "are", "were"}, []string{"open", "running", "on", "going", "flowing", "in use", "being used"}),
		product([]string{"no water", "nothing", "nothing else"}, []string{"", "is", "was"}, []string{"running", "flowing", "on", "going", "in use"}, []string{"", "in the house"}),
		product([]string{"nobody", "no one", "nobody else"}, []string{"", "is", "was"}, []string{"using water", "using any water", "running water", "in the shower"}),
		product([]string{"everything", "it all", "whole house"}, []string{"", "is", "was"}, shut),
		product([]string{"i had", "had", "we had"}, []string{"everything", "all the taps", "every tap"}, []string{"off", "shut", "closed"}),
		product([]string{"shut", "i closed", "we shut"}, []string{"every tap", "all the taps", "all faucets"}),
	)
}

// the taps and machines that take water in a house
var (
	tapsThatRun     = []string{"tub", "shower", "hose", "kitchen faucet", "sink", "garden hose", "a tap", "one faucet", "the upstairs tub", "the shower", "a sprinkler zone"}
	machinesThatRun = []string{"washer", "the washing machine", "dishwasher", "the dishwasher"}
	severalThatRun  = []string{"two taps", "three faucets", "both showers", "the sprinklers"}
)

func TestEveryWayToSayThatWaterRuns(t *testing.T) {
	inFrames(t, [][2]string{
		{"rear bib 48, {}", "48 rear_bibb flowing"},
		{"{}: rear bib 48", "48 rear_bibb flowing"},
		{"9 Elm St rear bib reads 48, {}, heater idle", "48 rear_bibb idle flowing"},
	},
		product([]string{"", "with", "w/"}, tapsThatRun, []string{"running", "on", "going", "wide open", "flowing", "in use"}),
		product([]string{"", "with", "w/"}, machinesThatRun, []string{"running", "on", "going"}),
		product([]string{"", "with", "w/"}, severalThatRun, []string{"running", "on", "going", "open"}),
		product([]string{"while", "when"}, tapsThatRun, []string{"is", "was"}, []string{"running", "on", "open", "flowing"}),
		product([]string{"while", "when"}, machinesThatRun, []string{"is running", "was running", "is filling"}),
		product([]string{"while", "when"}, severalThatRun, []string{"are running", "were running", "were on"}),
	)
}

func TestWaterThatRunsIsToldOfTheLowerPressure(t *testing.T) {
	inFrames(t, [][2]string{
		{"rear bib 66, 48 {}", "48 rear_bibb flowing; 66 rear_bibb"},
		{"rear bib 66, {} it drops to 48", "48 rear_bibb flowing; 66 rear_bibb"},
		{"rear bib 66 {} it drops to 48", "48 rear_bibb flowing; 66 rear_bibb"},
	},
		product([]string{"with", "while"}, tapsThatRun, []string{"running", "wide open", "in use"}),
		product([]string{"with"}, machinesThatRun, []string{"running", "on"}),
		product([]string{"with", "w/"}, severalThatRun, []string{"running", "going", "open"}),
		product([]string{"while", "when"}, tapsThatRun, []string{"is running", "was open"}),
	)
}

func TestRestIsToldAgainstRunningWater(t *testing.T) {
	both := "48 rear_bibb flowing; 66 rear_bibb static"
	inFrames(t, [][2]string{{"rear bib {}", both}, {"9 Elm St rear bib {}", both}, {"rear bib {}. no leaks", both + "; no leak"}},
		product([]string{"at rest 66", "at rest 66 psi", "66 at rest", "66 static", "66 standing", "66 dead", "66 no flow", "66 nothing on"}, []string{"and", ",", "/"},
			[]string{"48 flowing", "48 under flow", "48 with the shower going", "48 with the tub wide open", "with the tub on 48"}))
	fell := "48 rear_bibb flowing; 66 rear_bibb"
	inFrames(t, [][2]string{{"{}", fell}, {"9 Elm St. {}", fell}, {"{}, prv 2011", fell + "; prv year 2011"}},
		product([]string{"rear bib 66,", "rear bib is 66,"}, []string{"flush a toilet and", "run the tub and", "open the hose and", "with the tub on", "with the shower running"},
			[]string{"it's 48", "it drops to 48", "it falls to 48"}),
		product([]string{"opened the tub full", "turned on the shower", "ran the hose"}, []string{"and the", ", the"},
			[]string{"rear bib dropped from 66 to 48", "rear bib went from 66 down to 48", "rear bib fell from 66 to 48"}),
		product([]string{"rear bib 66, 48 when"}, []string{"i", "you", "they"}, []string{"run", "open"}, []string{"the tub", "the shower", "a hose"}))
}

func TestAGaugeThatStoodStillWhileWaterRan(t *testing.T) {
	inFrames(t, [][2]string{{"rear bib 66 and {}", "66 rear_bibb flowing"}, {"9 Elm St rear bib 66, {}", "66 rear_bibb flowing"}},
		product([]string{"it didn't move", "it never budged", "it stayed put", "it held there"}, []string{"when", "while"}, []string{"the tub ran", "the shower ran"}))
}
