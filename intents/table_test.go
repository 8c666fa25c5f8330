package intents

import "testing"

// A line of heads over lines of cells says of each cell what its column says.
func TestTables(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"pt          psi   htr\nstreet      118   off\npast prv     74   off\nprv 2011, worn", "118 street idle; 74 after_prv idle; prv: 2011 suspect"},
		{"POINT | PSI | RUNNING\nfront bib | 71 | nothing\nfront bib | 58 | upstairs shower\n---\nno tank", "58 front_bibb flowing; 71 front_bibb static; expansion_tank: none"},
		{"LOC   BAR\nmeter   7.1\nkitchen   3.9\nhtr off", "103 street idle; 56.6 kitchen idle"},
		{"            max    now\nrear bib    133     78\nprv  2005  stuck", "133 rear_bibb peak; 78 rear_bibb; prv: 2005 failed"},
		{"| point | before | after |\n|---|---|---|\n| kitchen | 96 | 58 |\nreplaced prv", "58 kitchen after; 96 kitchen before; replaced_prv"},
		{"12 Elm St\ntap, psi, heater\nkitchen, 62, off\ntub, 61, off", "12 Elm St | 61 bath idle; 62 kitchen idle"},
		{"point\tpsi\trunning\nkitchen\t71\tnothing\nkitchen\t52\tshower", "52 kitchen flowing; 71 kitchen static"},
		{"static flow\nkitchen 66 50", "50 kitchen flowing; 66 kitchen static"},
		{"punto psi boiler\ncocina 61 apagado", "61 kitchen idle"},
		// no tables
		{"now\nkitchen 62", "62 kitchen"},
		{"heater off\nkitchen 62", "62 kitchen idle"},
		{"before\nkitchen 92\nset prv to 60\nafter\nkitchen 60", "60 kitchen after; 92 kitchen before; set_prv >60"},
	})
}

// The numbers of a list end its lines, also where they stand in a row.
func TestNumberedLists(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"1) rear 88 2) heater off 3) no tank", "88 rear_bibb idle; expansion_tank: none"},
		{"Found: (1) prv stuck (2) tank waterlogged. front 92", "92 front_bibb; expansion_tank: failed; prv: failed"},
		{"1. kitchen 61 2. tub 60", "60 bath; 61 kitchen"},
		{"front (1) 92", "92 front_bibb"},
	})
}

// The time that each line of a log begins with says nothing of what it tells, and a head of
// what is to be done stands over the lines below it.
func TestLogsAndHeadsInLinesOfTheirOwn(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"09:12 mtr 108\n09:31 sd HB 48 w/ hose on\n09:40 chk vlv yes, et no", "108 street; 48 side_bibb flowing; check_valve:; expansion_tank: none"},
		{"3:25 as found kitchen 97\n3:35 set the prv down\n3:45 as left kitchen 63", "63 kitchen after; 97 kitchen before; set_prv"},
		{"TO DO\n set regulator down, Thursday", "plan set_prv 3"},
		{"went back for the recheck, rear bib 63", "63 rear_bibb"},
		{"prv is shot I'm changing it tomorrow and there's no tank", "expansion_tank: none; plan replace_prv 1; prv: failed"},
		{"sin agua negra, alivio seco", "no dark_water; no relief_discharge"},
	})
}

// What is told with "then" reaches forward only, and a closing word of all reaches back.
func TestThenAndAll(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"kitchen 68, then I ran the tub and it went to 40", "40 kitchen flowing; 68 kitchen"},
		{"I closed all fixtures. 61 psi at the rear bibb", "61 rear_bibb static"},
		{"replaced the regulator, then the kitchen showed 61 and laundry 60", "60 laundry after; 61 kitchen after; replaced_prv"},
		{"put in a prv. meter 116, kitchen 57, all of that after it went in", "116 street after; 57 kitchen after; installed_prv"},
		{"The kitchen gauge and the laundry gauge both showed 0", "0 kitchen; 0 laundry"},
		{"only the tub runs rusty, 66 at the tub", "66 bath; rusty_water"},
		{"meter 104, tub 57 (sink running)", "104 street; 57 bath flowing"},
		{"the head at the meter is 140 ft", "60.7 street"},
		{"neighbor had 140 at his place last month and 82 front here", "82 front_bibb"},
		{"no check valve at the meter / kitchen 66", "66 kitchen; check_valve: none"},
	})
}

// Numbers of neighbouring clauses stay apart, whatever joins them.
func TestNumbersOfNeighbours(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"front hose tap 84 and 52 m head at the meter", "74 street; 84 front_bibb"},
		{"front 5.1 and rear 5.2 bar", "74 front_bibb; 75.4 rear_bibb"},
		{"74 side spigot, beers at 5 and 77# off the WH drain", "74 side_bibb; 77 heater_drain"},
		{"thermostat at 120 and 64 psi at the tub", "64 bath; heater: 120F"},
		{"front 77 back 76 - 101# K sink", "101 kitchen; 76 rear_bibb; 77 front_bibb"},
		{"38 en la tina y llave del lado, 82", "38 bath; 82 side_bibb"},
		{"46 mca en la llave de atras y la llavecita de drenaje es de plástico", "65.4 rear_bibb; drain_valve: plastic"},
		{"was 74 when we were here in 2022 per the binder, laundry reads 108 today", "108 laundry"},
		{"wanted me to crank it to 90, refused, 62 tub", "62 bath"},
		{"92 at the kitchen - the thermostat stands at 55 C", "92 kitchen; heater: 131F"},
	})
}

// Blank lines behind every line set nothing apart, and who says to be finished before a report
// closes no follow-up.
func TestBlankLinesAndOpenings(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"Reading: 73\n\nWhere: side spigot\n\nHeater: off", "73 side_bibb idle"},
		{"1) lazy hand 122 since yesterday, sitting at 70 now\n2) side bib", "122 side_bibb peak; 70 side_bibb"},
		{"Just finished up. prv is 20 yrs old and stuck, 20 Old Post Rd", "20 Old Post Rd | prv: 2006 failed"},
		{"Just finished up. recheck in 3 wks, 1180 Bluegill Cir", "1180 Bluegill Cir | plan recheck 21"},
		{"just finished 12 Elm St", "12 Elm St | ask done"},
	})
}
