package intents

import "testing"

// Dots between facts are a pause as a comma is: nothing that belongs together falls apart at them.
func TestDotsAreAPause(t *testing.T) {
	says(t, [][2]string{
		{"61 ... kitchen ... heater off", "61 kitchen idle"},
		{"front and side bib ... 66 each", "66 front_bibb; 66 side_bibb"},
		{"was 96 ... turned the reg down ... 58 now ... tub", "96 bath before; 58 bath after; set_prv"},
		{"lazy hand says 131… sitting at 74 … rear bib", "131 rear_bibb peak; 74 rear_bibb"},
		{"prv 2009 ... worn ... 40 gal gas ... 2012 ... 88 laundry", "88 laundry; heater year 2012 40 gal gas; prv year 2009 suspect"},
		{"swapped the ... the ... regulator and set it to 58", "replaced_prv to 58"},
		{"The prv is from 2004 ... The expansion tank is flat ... 77 at the tub", "77 bath; prv year 2004; expansion_tank failed"},
		{"Recirc pump ..... none", "recirc none"},
		{"kitchen shows 71 ...", "71 kitchen"},
	})
	says(t, [][2]string{
		{"tank size for a 40 gal ... 65 psi ... 80 degree rise", "ask tank_size"},
		{"no tank here ... 82 at the laundry ... what size does it take", "82 laundry; expansion_tank none; ask tank_size"},
		{"tank's waterlogged, 82 at the laundry, how big a tank do I bring", "82 laundry; expansion_tank failed; ask tank_size"},
		{"those gauges they sent ... 6 bar is what in psi", "ask convert"},
	})
}
