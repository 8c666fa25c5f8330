package intents

import "testing"

// A part changed in two words: the old one taken out, the new one put in.
func TestPartsChangedInTwoWords(t *testing.T) {
	says(t, [][2]string{
		{"the air in the tank was 20, took it up to 70", "charged_tank to 70 from 20"},
		{"reg was at 95, took it down to 60, 61 kitchen now", "set_prv to 60 from 95; 61 kitchen after"},
		{"gauge read 70, took it down and left", "70"},
		{"The old pressure reducing valve was removed and a new one fitted, adjusted to 4.2 bar.", "replaced_prv to 60.9"},
		{"had to cut the old regulator out, union was froze. New one soldered in and set for 65", "replaced_prv to 65"},
		{"yanked that 1996 regulator and put a fresh one in at 62", "replaced_prv to 62"},
		{"We removed the old water heater and fitted a tankless one.", "replaced_heater; heater tankless"},
		{"Her old heater is history, 50 gallon propane in its place, 4100 Highway 27", "replaced_heater; heater 50 gal propane"},
		{"plastic drain cock on the heater snapped, screwed a brass one in", "replaced_drain_valve; drain_valve brass"},
	})
}

// Work told by its noun, parts that went in, and what is only planned.
func TestWorkAndPlansSideBySide(t *testing.T) {
	says(t, [][2]string{
		{"got a new prv installed, set 60", "replaced_prv to 60"},
		{"fresh pressure regulator in the old one's spot at 2051 Bancroft St, dialed to 59", "replaced_prv to 59"},
		{"first PRV this place has ever had went in today", "installed_prv"},
		{"prv swap finished at 500 Tillman Pkwy, washer box now at 62", "replaced_prv; 62 laundry after"},
		{"xt added 4.5 gal chgd 58", "installed_tank to 58; expansion_tank 4.5 gal"},
		{"pumped the exp tank from 25 to 60 for now, swapping it for a new one in 20 days", "charged_tank to 60 from 25; plan replace_tank in 20"},
		{"new 50 gal gas water heater in, old one's on the truck", "replaced_heater; heater 50 gal gas"},
		{"heater changeout at 210 Wetherby Ct, 40 gal electric went in", "replaced_heater; heater 40 gal electric"},
		{"old water heater out, new 50 gal gas in", "replaced_heater; heater 50 gal gas"},
		{"new drain cock on the heater, old one snapped off in my hand.", "replaced_drain_valve"},
		{"new reg is in, set 60, old one went in the scrap bucket", "replaced_prv to 60"},
		{"screwed the regulator in a little, 51 at the laundry going out", "set_prv; 51 laundry after"},
		{"verify pressure again tmrw, reg was just set to 60 by me", "set_prv to 60; plan recheck in 1"},
		{"adj prv 6/18, 640 Bolton Rd", "plan set_prv in 3"},
		{"rebuild that prv thursday", "plan other in 3"},
		{"94 walking in, 60 walking out, all I did was turn the reg", "set_prv; 94 before; 60 after"},
		{"the new regulators came in, 12 of them on the shelf", "ask none"},
		{"set prv to 60 recheck in 2 weeks", "set_prv to 60; plan recheck in 14"},
		{"set prv to 60 thursday", "plan set_prv in 3"},
	})
}

// The air of tanks, found and left, and the first part of its kind in a house.
func TestAirOfTanksAndFirstParts(t *testing.T) {
	says(t, [][2]string{
		{"gave 5214 Winslow a tank, first one, set the air at 60", "installed_tank to 60"},
		{"bladder was busted in the expansion tank so a new one went up with 60# of air", "replaced_tank to 60"},
		{"exp tank precharge brought up from 40, it's 63 now", "charged_tank to 63 from 40"},
		{"Pre-charge in the expansion tank corrected, 3 bar to 4 bar", "charged_tank to 58 from 43.5"},
		{"xt swap, 60 in the new one", "replaced_tank to 60"},
		{"rplcd xp tnk 2g 65# 16 salter st", "replaced_tank to 65; expansion_tank 2 gal"},
		{"topped off the expansion tank air, 62, 915 Harkness Pl", "charged_tank to 62"},
		{"they never had a tank, they've got one now, precharged to 65, 1811 Benning Rd", "installed_tank to 65"},
		{"house got its very first regulator from me today, 58 at the tub now", "installed_prv; 58 bath after"},
		{"this house had no regulator since it was built, it has one now. 112 down to 60 at the back", "installed_prv; 112 rear_bibb before; 60 rear_bibb after"},
		{"put air in the exp tank, 58 now.", "charged_tank to 58"},
		{"I recharged the expansion tank to 66 psi; I had found it at 41.", "charged_tank to 66 from 41"},
		{"let a little air out of the exp tank, 70 down to 58", "charged_tank to 58 from 70"},
		{"unscrewed that dead expansion tank and spun a fresh one on. sixty pounds in it", "replaced_tank to 60"},
		{"charged tank, kitchen 66 now", "charged_tank; 66 kitchen after"},
		{"tank charged to 60, 66 static now in the laundry", "charged_tank to 60; 66 laundry static after"},
	})
}

// Settings found and left, insides and sediment, water shut, both parts set alike.
func TestSettingsBeforeAndAfterWork(t *testing.T) {
	says(t, [][2]string{
		{"took prv up to 62, was set at 51, cust wanted more", "set_prv to 62 from 51"},
		{"turned the prv down to 58, front was 92 before that", "set_prv to 58; 92 front_bibb before"},
		{"prv cut from 85 to sixty and then the back bib settled out at sixty two", "set_prv to 60 from 85; 62 rear_bibb after"},
		{"ran vinegar thru the water heater for 45 min, done", "flushed_heater"},
		{"blew the crud out of her hot water tank", "flushed_heater"},
		{"INSTALLED PRV AND EXP TANK, BOTH AT 60", "installed_prv to 60; installed_tank to 60"},
		{"I fitted new internals to the existing regulator.", "rebuilt_prv"},
		{"someone needs to go turn that reg down at 18 Elk Ridge Ct, no rush", "plan set_prv"},
		{"new reg on order for 1805 Kimball St, install set for the 30th", "plan replace_prv in 15"},
		{"Water to the property has been turned off and the valve tagged.", "shut_off"},
		{"cut the water at the curb, house is off till monday.", "shut_off"},
		{"exp tank is full of water, new one tomorrow", "plan replace_tank in 1; expansion_tank failed"},
	})
}

// The new one's setting, what the deed was done to, and how long it was turned.
func TestSettingsOfTheNewOne(t *testing.T) {
	says(t, [][2]string{
		{"prv's been sticking so i swapped it, 60 on the new one", "replaced_prv to 60"},
		{"backed the prv off till the kitchen read 58", "set_prv; 58 kitchen after"},
		{"cranked the reg up, it's on 64", "set_prv to 64"},
		{"prv strainer was plugged, cleaned it out", "rebuilt_prv"},
		{"pulled the screen out of the prv and rinsed it", "rebuilt_prv"},
		{"swing by and reread the gauge in ten days", "plan recheck in 10"},
		{"parts are in, doing the reg tomorrow", "plan replace_prv in 1"},
		{"the new reg's going in Tuesday", "plan replace_prv in 1"},
		{"tank had 20 in it, brought it up to 60", "charged_tank to 60 from 20"},
		{"bled the tank down from 90 to 60", "charged_tank to 60 from 90"},
		{"recheck set for the 30th", "plan recheck in 15"},
	})
}
