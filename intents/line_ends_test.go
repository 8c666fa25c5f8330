package intents

import "testing"

func TestALineThatEndsWithAFullStopIsOneSentence(t *testing.T) {
	says(t, [][2]string{
		{"When I came the kitchen had 95.\nI turned the regulator down to 60.\nThen the kitchen had 61, nothing open.", "95 kitchen before; set_prv to 60; 61 kitchen static after"},
		{"64 psi.\nFront.", "64 front_bibb"},
		{"The relief valve is dripping.\nIt's capped too.", "relief_discharge; relief_blocked"},
		{"Came back to finish it.\nBefore: kitchen 98, kitchen 121\nReplaced PRV\nAfter: kitchen 60", "98 kitchen before; 121 kitchen before; replaced_prv; 60 kitchen after"},
		{"Went back to finish it\nBefore: kitchen 98, kitchen 121\nReplaced PRV\nAfter: kitchen 60", "98 kitchen before; 121 kitchen before; replaced_prv; 60 kitchen after"},
	})
}
