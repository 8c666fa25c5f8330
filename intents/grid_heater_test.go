package intents

import "testing"

var (
	heatersNamed = []string{"heater", "water heater", "wh", "htr", "the heater", "hot water heater"}
	burnersNamed = []string{"burner", "the burner", "main burner"}
	elementsPut  = []string{"elements", "the elements", "both elements"}
)

func TestEveryWayToSayThatTheHeaterIsIdle(t *testing.T) {
	inFrames(t, [][2]string{
		{"64 kitchen, {}", "64 kitchen idle"},
		{"9 Elm St kitchen 64 ({})", "64 kitchen idle"},
	},
		product(heatersNamed, []string{"", "is", "was"}, []string{"idle", "off", "cold", "not running", "not firing", "not on", "not heating", "shut off", "turned off",
			"at rest", "quiet", "satisfied", "in standby", "on pilot", "on vacation", "in vacation mode", "unplugged", "dead cold", "sitting idle", "unlit", "doing nothing", "not going"}),
		product(heatersNamed, []string{"isn't", "wasnt", "is not", "ain't"}, []string{"running", "firing", "on", "heating", "lit", "going", "burning", "in use"}),
		product(heatersNamed, []string{"hasn't", "hasnt", "has not"}, []string{"fired", "run", "kicked on", "come on", "been on", "been running"}, []string{"", "all day"}),
		product(heatersNamed, []string{"didn't", "didnt", "did not"}, []string{"fire", "run", "kick on", "come on"}),
		product(burnersNamed, []string{"", "is", "was"}, []string{"off", "out", "not firing", "not lit", "not on", "not running", "shut off"}),
		product(elementsPut, []string{"", "are", "were"}, []string{"off", "not on", "cold", "not running", "shut off"}),
	)
}

func TestEveryWayToSayThatTheHeaterFires(t *testing.T) {
	inFrames(t, [][2]string{
		{"64 kitchen, {}", "64 kitchen firing"},
		{"9 Elm St kitchen 64 ({})", "64 kitchen firing"},
	},
		product(heatersNamed, []string{"", "is", "was"}, []string{"firing", "on", "running", "lit", "going", "heating", "burning", "in recovery", "recovering", "cooking", "heating up", "calling"}),
		product(heatersNamed, []string{"", "just"}, []string{"kicked on", "came on", "fired up", "started up", "fired"}),
		product(burnersNamed, []string{"", "is", "was"}, []string{"on", "lit", "firing", "running"}),
		product(elementsPut, []string{"", "are", "were"}, []string{"on", "running", "hot"}),
		product(heatersNamed, []string{"isn't off", "was not off"}), []string{"burner isn't off"},
	)
}

func TestTheHeaterIsIdleForOnePressureAndFiresForTheNext(t *testing.T) {
	inFrames(t, [][2]string{
		{"kitchen 58 heater off, 71 {}", "58 kitchen idle; 71 kitchen firing"},
	},
		product(heatersNamed, []string{"", "is"}, []string{"firing", "on", "running", "heating", "recovering", "heating up"}),
		product(burnersNamed, []string{"", "is"}, []string{"on", "lit", "firing"}),
		product(elementsPut, []string{"", "are"}, []string{"on", "hot"}),
	)
}

func TestAHeaterThatRanOrStoppedMeanwhile(t *testing.T) {
	idleThenFired := "65 kitchen idle; 90 kitchen firing"
	inFrames(t, [][2]string{{"kitchen 65 heater off, {}", idleThenFired}, {"kitchen 65 burner off. {}", idleThenFired}},
		product([]string{"90"}, []string{"after", "once"}, []string{"the heater", "the burner", "the water heater"}, []string{"ran", "fired", "kicked on", "came on"}),
		product([]string{"let"}, []string{"it", "the heater", "the burner"}, []string{"fire", "cycle"}, []string{"", "a while"}, []string{", 90", ", then 90"}))
	inFrames(t, [][2]string{{"kitchen 90 {}", "65 kitchen idle; 90 kitchen firing"}},
		product([]string{"while firing, 65", "with the burner on, 65"}, []string{"after", "once"}, []string{"it shut off", "it shut down", "it cycled off", "it kicked off"}))
	inFrames(t, [][2]string{{"kitchen 65, tub 64. {}", "64 bath idle static; 65 kitchen idle static"}, {"{}. kitchen 65, tub 64", "64 bath idle static; 65 kitchen idle static"}},
		product([]string{"everything off", "all off"}, []string{"incl", "including", "even"}, []string{"the heater", "the water heater", "heater"}))
}
