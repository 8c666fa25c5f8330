package intents

import "testing"

// What one sentence tells of a trouble, of work or of a tap says nothing of what was read elsewhere:
// notes are written sentence by sentence, in any order. The messages are our own.
func TestSentencesStayApart(t *testing.T) {
	says(t, [][2]string{
		// water that was shut or run to look for a trouble
		{"gauge gains a pound a minute with nothing open\n92 rear, 14 Alder St", "92 rear_bibb; creep"},
		{"71 kitchen. closed every tap and watched the needle crawl up", "71 kitchen; creep"},
		{"shut all the faucets quick, pipes never banged. side bib 66", "66 side_bibb; no hammer"},
		{"with two taps on the pressure holds, no surging. 64 at the tub", "64 bath; no swings"},
		{"house has no running water. 0 at the hose bib", "0 bibb; no_water"},
		{"ran the tub, black as ink. front bib 77", "77 front_bibb; dark_water"},
		{"wall thumps when the dishwasher stops filling. 81 laundry", "81 laundry; hammer"},
		{"put a new flapper in, commode quit running. 81 laundry", "81 laundry; repaired_leak"},
		{"everything shut and it creeps. 62 at first, 75 at the end, laundry", "62 laundry static; 75 laundry static; creep"},
		{"stat's cranked to 150 on that heater. 81 laundry", "81 laundry; heater 150 F"},
		{"81 laundry. opened the drain on the heater, flushed till clear, closed up", "81 laundry; flushed_heater"},
		// what is told of the heater's valves and place is no state of its burner
		{"relief on this heater is valved off. 81 laundry", "81 laundry; relief_blocked"},
		{"ball valve between the heater and its relief, and it's shut. 81 laundry", "81 laundry; relief_blocked"},
		{"plastic drain off the heater, brass ball valve on. 81 laundry", "81 laundry; drain_valve brass; replaced_drain_valve"},
		{"big gas heater down there. 81 laundry", "81 laundry"},
		{"t&p trickles while it's heating. 81 laundry", "81 laundry; relief_discharge"},
		{"there's a plug in the relief outlet and the heater is on and the drain reads 106", "106 heater_drain firing; relief_blocked"},
		// times and occasions that are no work
		{"81 laundry, nobody home after 4. swapped the tank", "81 laundry; replaced_tank"},
		{"groan in the pipes after midnight. 81 laundry. swapped the tank", "81 laundry; noise; replaced_tank"},
		{"finally got into the crawl, laundry at 81. swapped the tank", "81 laundry; replaced_tank"},
		{"kitchen's sitting at 90. patched the split in the hose line", "90 kitchen; repaired_leak"},
		{"turned the prv down, kitchen's sitting at 60", "60 kitchen after; set_prv"},
		{"81 laundry, the T&P was weeping when I walked in. swapped the tank", "81 laundry; relief_discharge; replaced_tank"},
		{"thermostat found at 130. 81 laundry. swapped the tank", "81 laundry; heater 130 F; replaced_tank"},
		// an inner part belongs to what its sentence names
		{"prv is starting to act up. stopped the drip at the kitchen faucet with a new cartridge", "prv suspect; repaired_leak"},
		{"prv 2004. bath faucet was dripping, put a new cartridge in, dry now", "prv year 2004; repaired_leak"},
		{"flushed the heater and cleaned the prv strainer", "flushed_heater; rebuilt_prv"},
		{"prv is from 2004. weak as a kitten upstairs", "prv year 2004; low_flow"},
		// the point of a street's suffix ends a sentence where the words do not go on
		{"81 laundry, 3 elm st. house shut tight, gauge inches up", "81 laundry; creep"},
		{"81 laundry, 3 elm st. with the heater off", "81 laundry idle"},
		{"81 laundry at 12 n st. charles ave. heater off", "81 laundry idle"},
	})
}
