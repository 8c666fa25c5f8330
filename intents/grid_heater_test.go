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
