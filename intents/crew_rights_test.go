package intents

import "testing"

func TestTheRightNumberOfACorrectionIsKept(t *testing.T) {
	says(t, [][2]string{
		{"Please correct what I sent last: kitchen 62, not 26", "62 kitchen; ask correct"},
		{"fix the last thing I sent: laundry 58 not 85", "58 laundry; ask correct"},
		{"corrige lo que puse: regadera 71, no 17", "71 bath; ask correct"},
		{"me equivoque, la cocina trae 67, no 76", "67 kitchen; ask correct"},
		{"cambia lo que puse: cocina 64", "64 kitchen; ask correct"},
	})
}

func TestTheHeatersStateOfACorrection(t *testing.T) {
	says(t, [][2]string{
		{"last entry needs fixing, heater was idle, I wrote firing. kitchen 77 is right", "77 kitchen idle; ask correct"},
		{"fix my last, I'd typed idle but the heater was firing. rear 88 stands", "88 rear_bibb firing; ask correct"},
		{"correct my last: I marked it idle, heater was firing. 88 rear", "88 rear_bibb firing; ask correct"},
	})
}

func TestAReportThatNeedsAFixIsNoJob(t *testing.T) {
	says(t, [][2]string{
		{"Last report needs a fix, tub was 66", "66 bath; ask correct"},
		{"last reading needs to be fixed, tub was 66 not 88", "66 bath; ask correct"},
		{"tub faucet needs to be fixed Friday, kitchen 66", "66 kitchen; plan other in 4"},
	})
}

func TestAHouseNumberThatHappensToBeThePressure(t *testing.T) {
	says(t, [][2]string{
		{"94 at the front and it's house 94 too, 94 Oak Ct", "94 front_bibb"},
		{"tub 77 (house is 77 also) 77 Fir Ct", "77 bath"},
		{"50 lbs in the tank but the house is 72 at the kitchen. 72 Mason", "expansion_tank set 50; 72 kitchen"},
	})
}

func TestWhatAFollowUpIsFor(t *testing.T) {
	says(t, [][2]string{
		{"f/u Mon: order 3/4 unions for 12 Hatch St", "plan other in 7"},
		{"follow up Friday: pick up a prv for 12 Elm Ct", "plan other in 4"},
		{"f/u Fri: recheck 12 Elm Ct", "plan recheck in 4"},
		{"parts order 4410 lands Tuesday, use dock 2", "ask none"},
		{"that prv reminder can go, handled it Friday", "ask done"},
	})
}

// What was sent by mistake is told with the slip that made it, on whichever side of the right number.
func TestASlipToldWithWhatWasSent(t *testing.T) {
	says(t, [][2]string{
		{"Correction on that last report, rear bib is 114, I misheard him and put 141", "114 rear_bibb; ask correct"},
		{"rear bib is 114, I misheard him and put 141", "114 rear_bibb; ask correct"},
		{"I misheard him and put 141, rear bib is 114", "114 rear_bibb; ask correct"},
		{"Correction on that last report, rear bib is 114, I misread it and sent 141", "114 rear_bibb; ask correct"},
		{"Correction on that last report, rear bib is 114, he said it fast and I put in 141", "114 rear_bibb; ask correct"},
		{"Correction: tub 66, I fat fingered it and put 99", "66 bath; ask correct"},
		{"Correction on the last one, the tub is 58. I heard him wrong and put 85.", "58 bath; ask correct"},
		{"correction to my last: meter 121, I must have heard 112", "121 street; ask correct"},
		{"corrección, la de atrás es 114, le entendí mal y puse 141", "114 rear_bibb; ask correct"},
		{"I put the gauge on the rear bib and it said 114", "114 rear_bibb"},
		{"correction, kitchen 63, I pumped the tank and put 60 in it", "63 kitchen; ask correct; charged_tank to 60"},
	})
}

// What was sent last is off, or a thumb slipped, and the right number follows.
func TestWhatWasSentIsOff(t *testing.T) {
	says(t, [][2]string{
		{"the one I just sent is off, thumb slipped. side spigot is 84 and the heater was idle", "84 side_bibb idle; ask correct"},
		{"that one I sent is off, kitchen 66", "66 kitchen; ask correct"},
		{"my last is off by ten, tub is 62", "62 bath; ask correct"},
		{"my last report's off, it's 66 at the kitchen", "66 kitchen; ask correct"},
		{"thumb slipped, kitchen is 66", "66 kitchen; ask correct"},
		{"the one I just hung is off, kitchen 66", "66 kitchen"},
		{"I sent the pic. heater is off. kitchen 66", "66 kitchen idle"},
		{"the gauge is off by 10, kitchen 66", "66 kitchen; gauge suspect"},
	})
}

// A follow-up is marked off, or done with a new one to come.
func TestAFollowUpIsMarkedOff(t *testing.T) {
	says(t, [][2]string{
		{"Mark off the tank visit at 12 Elm, he did it yesterday. And put in a recheck in 30 days", "ask done; plan recheck in 30"},
		{"scratch off the recheck at 12 Elm", "ask done"},
		{"12 Elm - done. new recheck in a year", "ask done; plan recheck in 365"},
		{"12 Elm - done. kitchen 66", "66 kitchen"},
		{"Done at 12 Elm. Recheck in a year", "plan recheck in 365"},
	})
}
