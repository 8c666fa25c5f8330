package intents

import "testing"

// Readings before and after work by coming and going, the highest of a time, and\nnumbers that are put right or only said again.
func TestHighestEarlierAndRightedReadings(t *testing.T) {
	reads(t, [][2]string{
		{"108 rear when I rolled up, 59 rear after I dialed the reg down", "rear_bibb 108 before; rear_bibb 59 after"},
		{"cranked the regulator down, took the kitchen from 94 to 58", "kitchen 94 before; kitchen 58 after"},
		{"71 at the side tap ahead of the swap, put the new reg in, 60 there afterwards", "side_bibb 71 before; side_bibb 60 after"},
		{"pre-flush 70, post-flush 69, kitchen, heater's flushed", "kitchen 70 before; kitchen 69 after"},
		{"before I put a wrench on anything: 97 side spigot", "side_bibb 97 before"},
		{"showed up to 99 on the front bib. replaced the prv. front reads 58 now.", "front_bibb 99 before; front_bibb 58 after"},
		{"on arrival I recorded 104 at the kitchen. I replaced the regulator. Leaving, it was 61 at the same tap.", "kitchen 104 before; kitchen 61 after"},
		{"eighty eight before I did anything at the sill cock in front then I turned the regulator down and got sixty two", "front_bibb 88 before; front_bibb 62 after"},
		{"replaced the prv, front 60, had 118", "front_bibb 60; front_bibb 118 before"},
		{"when we got there 104 kitchen, swapped the prv, when we pulled out 60 kitchen", "kitchen 104 before; kitchen 60 after"},
		{"new prv in. Now kitchen 60, front bib 61.", "kitchen 60 after; front_bibb 61 after"},
		{"rebuilt the prv. pre 104 kitchen post 60 kitchen", "kitchen 104 before; kitchen 60 after"},
		{"laundry 99 prior to the new tank, 70 with the new tank on. swapped the tank today", "laundry 99 before; laundry 70 after"},
		{"memory hand 141 / live 77, side spigot", "side_bibb 141 peak; side_bibb 77"},
		{"follower needle 132, back spigot", "rear_bibb 132 peak"},
		{"crest of 116 around 3 am, kitchen, 74 as I type", "kitchen 116 peak; kitchen 74"},
		{"gauge lived on her laundry tap all weekend and the most it saw was 129", "laundry 129 peak"},
		{"overnight gauge on the back faucet\nhigh 139\nright now 74", "rear_bibb 139 peak; rear_bibb 74"},
		{"kitchen 70, tell-tale hand 118", "kitchen 70; kitchen 118 peak"},
		{"highest it read was 118 at the laundry", "laundry 118 peak"},
		{"worst it got was 131, laundry", "laundry 131 peak"},
		{"drag pointer says 128, live pointer 70, rear", "rear_bibb 128 peak; rear_bibb 70"},
		{"most it ever hit was 140 at the side bib", "side_bibb 140 peak"},
		{"that 58 I just logged was a mistake, should be 85, back spigot", "rear_bibb 85"},
		{"92 heater firing at the washer... sorry, heater NOT firing, 92", "laundry 92 idle"},
		{"got six seven, that's sixty seven, on the tub", "bath 67"},
		{"front was 90, no wait, 80. 80 front.", "front_bibb 80"},
		{"front is 98, no sorry, 89 front", "front_bibb 89"},
		{"front 98 no sorry 89", "front_bibb 89"},
		{"rear bib not front, 72", "rear_bibb 72"},
		{"side bib, not the rear one, 72", "side_bibb 72"},
		{"threw a gauge on out front. 93.", "front_bibb 93"},
		{"I measured at the kitchen sink first. The gauge settled at 71 psi. The water heater had not come on.", "kitchen 71 idle"},
		{"screwed onto the water heater drain, 82, unit quiet", "heater_drain 82 idle"},
		{"guest bath was 58 psi. I took it with nobody using water. The owner will call us.", "bath 58 static"},
		{"meter pit 101, muddy as all get out", "street 101"},
		{"one hunnerd and twelve at the meter and one hunnerd and ten past the regulator", "street 112; after_prv 110"},
		{"0 at the kitchen tap, dead dry. Meter has 88 tho", "kitchen 0; street 88"},
		{"the number is 83 back hose bib", "rear_bibb 83"},
		{"finally found the back bib lol it was under a bush. 85.", "rear_bibb 85"},
		{"77 side bib on it", "side_bibb 77"},
		{"street 114, after PRV 66\ntub 65, all of it with nothing running", "street 114 static; after_prv 66 static; bath 65 static"},
		{"70S/52F kitchen", "kitchen 70 static; kitchen 52 flowing"},
		{"AF: st 121#, lndry 91#\nrblt PRV w/ kit\nAL: lndry 62#", "street 121 before; laundry 91 before; laundry 62 after"},
		{"ST 74\nHB SIDE 73\nK 71", "street 74; side_bibb 73; kitchen 71"},
		{"city runs 90 psi on the east side", ""},
		{"shot a 94 on the back nine", ""},
		{"water heater never kicked on, 71 laundry", "laundry 71 idle"},
		{"pressure at the drip system valve box, 64 psi, all zones closed", "irrigation 64 static"},
		{"DV on the heater reads 76#, burner on", "heater_drain 76 firing"},
	})
}

func TestHoursWithALetter(t *testing.T) {
	reads(t, [][2]string{
		{"WM box o/n MAX 149#, 7a 68#, no ET", "laundry 149 peak; laundry 68"},
		{"kitchen overnight high 138, 6a 66", "kitchen 138 peak; kitchen 66"},
		{"laundry 7p 118, 7a 68", "laundry 118; laundry 68"},
		{"k sink 9a 71, noon 73, 3p 75", "kitchen 71; kitchen 73; kitchen 75"},
		{"rear 5p 102#", "rear_bibb 102"},
		{"rr bib 82 4p 85 6p", "rear_bibb 82; rear_bibb 85"},
		{"unit 3a kitchen 58", "kitchen 58"},
		{"hi 127# since 4 pm, 71# live, lzy hnd on K faucet", "kitchen 127 peak; kitchen 71"},
		{"high 131 at 3a laundry, 70 at 8a", "laundry 131 peak; laundry 70"},
		{"hi 131 since noon, laundry 70 now", "laundry 131 peak; laundry 70"},
		{"it's been high since noon, kitchen 92", "kitchen 92"},
		{"high 66 at the kitchen", "kitchen 66"},
	})
}

func TestAfterBehindANumberAndWorkBeforeIt(t *testing.T) {
	reads(t, [][2]string{
		{"rear bibb one twenty two before I turned the regulator down sixty five after", "rear_bibb 122 before; rear_bibb 65 after"},
		{"kitchen 44 before I flushed the heater 46 after", "kitchen 44 before; kitchen 46 after"},
		{"set the prv to fifty five and the kitchen came in at fifty six after", "kitchen 56 after"},
		{"kitchen came in at 95, set the prv down, 60 after", "kitchen 95 before; kitchen 60 after"},
	})
}

func TestHeadsAboveReadings(t *testing.T) {
	reads(t, [][2]string{
		{"side bib, nothing open for any of these\n8:00 heater idle 64\n8:20 heater firing 89", "side_bibb 64 idle static; side_bibb 89 firing static"},
		{"kitchen tap, heater off for each of these\n8:00 64\n8:20 71", "kitchen 64 idle; kitchen 71 idle"},
		{"came in: front 98, kitchen 97\nturned the reg down a turn and a half\nleft at: front 64", "front_bibb 98 before; kitchen 97 before; front_bibb 64 after"},
		{"came in: front 98, kitchen 97", "front_bibb 98; kitchen 97"},
		{"tub cracked open: test port after the reg 50", "after_prv 50 flowing"},
		{"gate valve cracked open, kitchen 50", "kitchen 50"},
	})
}
