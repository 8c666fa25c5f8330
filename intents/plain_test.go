package intents

import "testing"

// What stands beside a number in a plain message.
func TestPlainReadings(t *testing.T) {
	says(t, [][2]string{
		{"front spigot at 89, back at 90", "89 front_bibb; 90 rear_bibb"},
		{"got it done, I'll be back at 9", "ask none"},
		{"59 psi in the shower on the second floor", "59 bath"},
		{"got 88 at the rear spigot on 2217 Kingfisher", "88 rear_bibb"},
		{"88 at the meter on Kingfisher", "88 street"},
		{"88 at the shower on 14 Elm", "88 bath"},
		{"61 kitchen faucet on 9 Oak, tub on", "61 kitchen flowing"},
		{"44 lav with the kitchen faucet on", "44 bath flowing"},
		{"64 at the K tap", "64 kitchen"},
		{"front 71 rear 72. next one in six months", "71 front_bibb; 72 rear_bibb; plan recheck in 180"},
		{"bib wont stop dripping, 83 on it, back tomorrow w/ a stem kit", "leak; 83 bibb; plan other in 1"},
		{"tested the tank, solid full", "expansion_tank failed"},
		{"I replaced the heater's plastic drain valve with a brass one", "replaced_drain_valve; drain_valve brass"},
		{"no more banging since I set the prv at 60. kitchen now 61", "no hammer; set_prv to 60; 61 kitchen after"},
		{"PRV unk age, DS 82#, US 119#", "prv age unknown; 82 after_prv; 119 street"},
		{"call us, 82 kitchen", "82 kitchen"},
		{"new 50 gal gas heater hung today, old one was a 40 from '99", "replaced_heater; heater 50 gal gas"},
		{"was 82 two summers ago according to the old ticket, 97 today at the front bib", "97 front_bibb"},
		{"the kitchen faucet whistles. There I read 81 psi", "noise; 81 kitchen"},
		{"water coming through the kitchen ceiling", "leak"},
		{"tower's 140 ft above us so whats that in psi", "ask convert"},
		{"71 psi off the front spigot", "71 front_bibb"},
		{"71 psi off on this gauge", "ask none"},
		{"prv set at 65 and 14 yrs old", "prv year 2012 set 65"},
		{"mtr 118 prv st 65 14 yrs", "118 street; prv year 2012 set 65"},
		{"took 68 at the heater drain, drain valve's brass", "68 heater_drain; drain_valve brass"},
		{"heater serviced last year 60 kitchen", "heater maintained 2025; 60 kitchen"},
		{"that reading was 17 not 71", "ask correct; 17"},
		{"my last was 62 not 26", "ask correct; 62"},
		{"that was wrong, 12 Elm was 78", "ask correct; 78"},
		{"the 88 at 12 Alder was the front bib not the rear", "ask correct; 88 front_bibb"},
		{"it was 62 not 80 like she said", "ask none"},
		{"i did 43 hours not 34", "ask none"},
		{"kit 66\nlav 65\nwm 66, all static", "66 kitchen static; 65 bath static; 66 laundry static"},
		{"44 rear bib, shower on upstairs", "44 rear_bibb flowing"},
		{"3.6 bar @ K, zero flow", "52.2 kitchen static"},
		{"city pressure here is 142, house is getting 60", "142 street; 60 after_prv"},
		{"House shows 83 at the washer, street 120", "83 laundry; 120 street"},
		{"rr bb n sd bb bth 88 nthng rnnng", "88 rear_bibb static; 88 side_bibb static"},
		{"64 irrig vlv box, nbdy runnin watr", "64 irrigation static"},
		{"drip line riser 45 psi", "45 irrigation"},
		{"HS 60#, CS 118#", "60 after_prv; 118 street"},
		{"front bib 91 with the heater on", "91 front_bibb firing"},
		{"front 72 apagado", "72 front_bibb idle"},
		{"se oyen golpes cuando se apaga la lavadora. 91 en la lavadora", "hammer; 91 laundry"},
		{"Truck 3 just phoned in 98 at the rear bib, heater off", "98 rear_bibb idle"},
		{"truck 2 front left is at 22 psi, rear right 30, somebody air it up", "ask none"},
		{"lady turned 90 yesterday, front bib 66", "66 front_bibb"},
		{"old heater out new 40 gal propane in. 66 at the kitchen now", "replaced_heater; heater 40 gal propane; 66 kitchen after"},
		{"back bib 1 oh 2 heater cold", "102 rear_bibb idle"},
		{"found 98 at the back, cranked it, left 62", "set_prv; 98 rear_bibb before; 62 rear_bibb after"},
		{"the 84 on Elm was a typo, should be 48 front", "ask correct; 48 front_bibb"},
		{"kitchen 85, owner said it should be 60", "85 kitchen"},
		{"me equivoque, son 76 no 67 atras", "ask correct; 76 rear_bibb"},
		{"puse el gauge en el drenaje del boiler, 66", "66 heater_drain"},
		{"the old gauge said 70, mine says 64 at the bib", "64 bibb"},
		{"gauge sticks at 40 when you bleed it", "gauge suspect"},
		{"If I've got 120 ft of head at the tank up the hill how many psi is that", "ask convert"},
	})
}

// Facts told of the thing that the sentence named, in clauses that name nothing.
func TestFactsOfTheSubject(t *testing.T) {
	says(t, [][2]string{
		{"The water heater has a capacity of 50 gallons, it is electric, and it was installed nine years ago.", "heater year 2017 50 gal electric"},
		{"The regulator was installed in 2016, is set to 62 psi and appears to be in good condition.", "prv year 2016 set 62 good"},
		{"The age of the pressure regulator at 906 Fisherman's Bend is not known. It is heavily corroded.", "prv age unknown suspect"},
		{"drain valve on her heater is plastic and all crusty, heater's a 50 gal from 2008", "drain_valve plastic suspect; heater year 2008 50 gal"},
		{"The expansion tank, which is waterlogged, is from 2010.", "expansion_tank year 2010 failed"},
		{"tap right after the reg = 88, thats not good lol", "88 after_prv"},
		{"prv is a 2001 that's stuck wide open", "prv year 2001 failed"},
		{"nothing wrong with that regulator, born 2021 per the tag", "prv year 2021 good"},
		{"the reducing valve was put in the year they built the place, 1998", "prv year 1998"},
		{"la casa es del 98 y la reguladora es la original, 88 enfrente", "prv year 1998; 88 front_bibb"},
		{"they never put in an expansion tank", "expansion_tank none"},
		{"got about a bucket of sand out of the heater, flushed it clean", "flushed_heater"},
		{"Heater: tankless, 2019\nLast descale: 2024", "heater year 2019 tankless maintained 2024"},
		{"My first boss back in 1998 made us flush them every year. This one has never been flushed, 50 gal gas, 2009", "heater year 2009 50 gal gas never maintained"},
		{"new prv at 90 Pulley St, wasn't one there ever. set at 55", "installed_prv to 55"},
		{"new prv needed, there isn't one", "prv none"},
		{"they quoted her $680 for a prv in 2021, she said no. 99 at the rear bib today", "99 rear_bibb"},
		{"tstat at 140 on the water heater, 131 degrees at the faucet, kitchen 67 psi", "67 kitchen; heater 140 F"},
		{"I wouldn't trust this gauge", "gauge suspect"},
	})
}

// Water and its colour in words that liken it.
func TestTintedWater(t *testing.T) {
	says(t, [][2]string{
		{"she gets a grayish tint out of every tap", "dark_water"},
		{"came out looking like ink for a min", "dark_water"},
		{"bathwater has an orange cast to it", "rusty_water"},
		{"no h2o at 7 Culvert St", "no_water"},
		{"turned on the faucet and got air and then nothing at all", "no_water"},
		{"no lks no rst 64 ktchn", "no leak; no rusty_water; 64 kitchen"},
		{"rst prv to 60", "set_prv to 60"},
		{"shwr upstrs is wk, 45 at bth lav", "low_flow; 45 bath"},
	})
}

// How something is asked of the bot is no question about a house.
func TestHowToAsk(t *testing.T) {
	says(t, [][2]string{
		{"How do I ask you for a graph?", "ask help"},
		{"what do I type if I want to see somebody else's follow-ups", "ask help"},
		{"I would like to know how I should enter two readings in one message.", "ask help"},
		{"what kinda stuff do u understand", "ask help"},
		{"tell me the most likely culprit at 604 Yerba Ln", "ask next_check"},
		{"whts du tody", "ask due"},
		{"exp tank size? 40 gal 65 psi", "ask tank_size"},
		{"tank for a 50 gal, 60 degree rise, 70 psi. how big?", "ask tank_size"},
	})
}

// A part put in where there was none, and deeds of other people.
func TestFirstOfItsKind(t *testing.T) {
	says(t, [][2]string{
		{"hung a new 4.5 gal expansion tank, there wasn't one before", "installed_tank; expansion_tank 4.5 gal"},
		{"installed a new expansion tank, none there before", "installed_tank"},
		{"put in a new prv, wasn't one before", "installed_prv"},
		{"hung a new tank, no tank before", "installed_tank"},
		{"new exp tank installed, charged to 60. had no tank", "installed_tank to 60"},
		{"hung a new 4.5 gal expansion tank", "replaced_tank; expansion_tank 4.5 gal"},
		{"put in a new prv set 60. softener none", "replaced_prv to 60; softener none"},
		{"prv dialed at 70 by the last guy", "prv set 70"},
		{"no record of it ever being flushed", "heater never maintained"},
		{"the customer wants to know if her regulator is bad", "ask none"},
		{"exp tank above the heater, 2 gallon, installed 2020, air at 58", "expansion_tank year 2020 2 gal set 58"},
		{"tank feels full when I knock on it", "expansion_tank failed"},
		{"pressed the schrader and water squirted out", "expansion_tank failed"},
		{"hung a new expansion tank over the heater, first one this house ever had", "installed_tank"},
		{"put a new exp tank above the heater, first one here", "installed_tank"},
		{"they had no tank so I gave em one, 2 gal, 55 in it", "installed_tank to 55; expansion_tank 2 gal"},
		{"there was no prv so I gave em one, set to 60", "installed_prv to 60"},
	})
}
