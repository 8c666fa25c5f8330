package intents

import "testing"

func TestEveryHandThatStaysAtTheHighestPressure(t *testing.T) {
	hands := []string{"lazy hand", "max needle", "peak hand", "red needle", "telltale", "max pointer", "drag hand", "follower hand", "the lazy hand", "high hand"}
	inFrames(t, [][2]string{
		{"rear bib {}, now 72", "128 rear_bibb peak; 72 rear_bibb"},
		{"rear bib 72, {}", "128 rear_bibb peak; 72 rear_bibb"},
		{"{} on the rear bib, current 72", "128 rear_bibb peak; 72 rear_bibb"},
	},
		product(hands, []string{"", "at", "shows", "was at", "reads", "got to", "went to", "hit", "is on", "sitting at", "climbed to", "up at", "stopped at", "topped out at"}, []string{"128"}),
		product([]string{"peak", "peaked at", "maxed out at", "high of", "peak of", "topped out at", "spiked to", "overnight high", "overnight max", "the max was", "the high was", "highest was", "worst was", "hit a high of"}, []string{"128"}),
	)
}
