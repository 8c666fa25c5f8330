package intents

import "testing"

// The ways to give the last report its right number, tap or house: who or what was wrong, how it is
// put right, and what was sent, where it is named.
func TestEveryCorrectionOfTheLastReport(t *testing.T) {
	const right = "66; ask correct"
	ought := []string{"should be", "should read", "should say", "should have been", "shouldve been", "should have said", "was really",
		"is actually", "was supposed to be"}
	sent := []string{"that last one", "my last one", "the last one", "last one", "my last", "my last reading", "that reading", "the number"}
	sentBefore := []string{"i typed 96", "i put 96", "i sent 96", "i entered 96", "i wrote 96", "i said 96", "i gave 96", "i logged 96", "i posted 96", "i reported 96"}
	inFrames(t, [][2]string{{"{}", right}, {"sorry, {}", right}},
		product(sent, ought, []string{"66", "66 not 96", "66, not 96"}),
		product([]string{"the 96", "that 96", "the 96 i sent"}, []string{"should be", "should have been", "should read", "was", "was really", "is really", "was supposed to be"}, []string{"66"}),
		product(sentBefore, []string{", it was", " it was", " but it was", " and it was", ", should be", ", meant", " instead of", " when it was", ", make it", " where it should be"}, []string{"66"}),
		product([]string{"change", "fix", "correct", "edit", "update", "switch"},
			[]string{"96 to", "the 96 to", "my 96 to", "my last to", "that to", "the last one to", "my last from 96 to", "that from 96 to"}, []string{"66"}),
		[]string{"66 not 96", "66, not 96", "not 96, 66", "66 instead of 96", "its 66 not 96", "meant 66", "i meant to send 66", "should be 66", "misread the gauge, 66",
			"typo, 66", "fat fingered it, 66", "wrong number, should be 66", "scratch that, 66", "my bad, its 66", "no wait 66", "edit: 66", "make the last one 66"},
	)
	inFrames(t, [][2]string{{"{}", "ask correct"}},
		product([]string{"that last one", "my last one", "the last one", "my last reading"}, []string{"was", "was at", "should be", "should have been", "was really", "was supposed to be", "should say", "was from"},
			[]string{"the front, not the rear", "front, not rear", "the kitchen, not the laundry", "the rear bib", "the laundry"}),
		product([]string{"it was", "that was", "that should be", "sorry,", "correction,", "typo,"}, []string{"front not rear", "the front, not the rear", "the kitchen, not the laundry"}),
		[]string{"wrong tap, it was the rear", "wrong bib, it was the front", "i put front but it was the rear", "i said rear, it was the front", "change my last to the rear bib", "change that to rear",
			"heater was firing on that last one", "my last one was with the burner off"},
	)
	inFrames(t, [][2]string{{"{}", "ask correct"}},
		product([]string{"that last one", "my last one", "last one", "my last"},
			[]string{"was for", "belongs to", "goes under", "goes with", "should be", "should have been", "was meant for", "was supposed to be", "was really"}, []string{"14 Elm", "14 Elm St"}),
		[]string{"change that to 14 Elm St", "change my last to 14 Elm St"},
	)
}

// What only speaks of the last house, or tells a pressure or a state, puts nothing right.
func TestTalkOfTheLastOneIsNoCorrection(t *testing.T) {
	says(t, [][2]string{
		{"last stop was 14 Elm St", "ask none"},
		{"my last one is 14 Elm St", "ask none"},
		{"last reading at 14 Elm", "ask history"},
		{"my last report for 14 Elm", "ask report"},
		{"that last one was a good one", "ask none"},
		{"last one was 66 kitchen heater off", "66 kitchen idle"},
		{"call it 80 on the front spigot", "80 front_bibb"},
		{"not 5 bar, scratch that, 5.5 bar at the meter, 212 Chalk Cliff Ter", "79.8 street"},
		{"scratch that 66", "ask undo"},
		{"heater was off", "ask none"},
	})
}
