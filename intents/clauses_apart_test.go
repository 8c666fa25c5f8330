package intents

import "testing"

// What one clause tells of a trouble, a thing or a day stays in it: no reading elsewhere takes
// its point, its flow or its time, no part its age or its condition. The messages are our own.
func TestClausesStayApart(t *testing.T) {
	says(t, [][2]string{
		// the point of a trouble is no test point
		{"laundry box 86, shower won't shut all the way off", "86 laundry; leak"},
		{"por la parte trasera de la casa saqué 69.5, casi no llega agua al baño", "69.5 rear_bibb; low_flow"},
		{"angle stop under the lav is damp, red needle climbed to 150, back hose bib", "150 rear_bibb peak; leak"},
		{"barely any water in the kitchen, left the gauge on the side hb. max 142", "142 side_bibb peak; low_flow"},
		{"The kitchen faucet shrieks. Road sign says 35, I was doing 20. front bib 66", "66 front_bibb; noise"},
		{"drain valve replaced, needle now 75, rear hose bib", "75 rear_bibb after; replaced_drain_valve"},
		// nor is the water that runs with it
		{"kitchen 62, the packing on the sillcock spits when it's open", "62 kitchen; leak"},
		{"84 front, new flapper in, toilet quit running", "84 front_bibb; repaired_leak"},
		{"57 at the side bib. Heater stat is turned to 120", "57 side_bibb; heater 120 F"},
		{"heater is a 2014, tag on the heater says 150, kitchen 92", "92 kitchen; heater year 2014"},
		// a year and an age belong to what they are told of
		{"rear 95, 1995 house, wh holds 50 gallons", "95 rear_bibb; heater 50 gal"},
		{"throttled the prv back to 60, her washing machine is 14 years old. 63 at the tub", "63 bath; set_prv to 60"},
		{"prv is dead, the city put a new meter in last week, 101 on the street side", "101 street; prv failed"},
		{"exp tank is full of water, they tell me it was 70 back in 2019. 103 front now", "103 front_bibb; expansion_tank failed"},
		{"calentador de paso, kid is 7, dad's 41, house is 78 yrs old. Front bibb 77", "77 front_bibb; heater tankless"},
		{"prv is original, house built 1989, 104 after it, heater's dead as a doornail", "104 after_prv; heater failed; prv year 1989"},
		// and so does a condition
		{"swapped the prv, 80 at the rear, all good otherwise", "80 rear_bibb; replaced_prv"},
		{"needs a tank, nothing wrong with the prv", "plan install_tank; prv good"},
		{"gauge is acting up, she wants a tank put in", "gauge suspect; plan install_tank"},
		{"prv's at its last, 127 on the kitchen, bladder's holding", "127 kitchen; expansion_tank good"},
		{"regulator is singing, 118 ahead of it. Pinhole in the copper over the laundry", "118 street; leak; noise"},
		// a denial denies its own clause
		{"el prv está puesto en 60, no hay fugas ni ruidos, 64 en la lavadora", "64 laundry; no leak; no noise; prv set 60"},
		{"prv set at 60, no visible leaks, 64 at the laundry", "64 laundry; no leak; prv set 60"},
		{"hay que reemplazar la reguladora, no hay fugas, 65 enfrente", "65 front_bibb; no leak; plan replace_prv"},
		{"la reguladora no tiene fecha", "prv age unknown"},
		{"noise at the prv: none", "no noise"},
		{"couldn't stop the drip", "leak"},
		{"can't get the drip to stop", "leak"},
		// a pressure is what a gauge showed
		{"5.5 bar en la llave de enfrente, baja cuando usan las dos regaderas", "79.8 front_bibb"},
		{"prv still needs swapping, she pays 110 a month for water", "plan replace_prv"},
		{"prv is a 2014, red needle climbed to 150, rear bib, sits at 72 now", "150 rear_bibb peak; 72 rear_bibb; prv year 2014"},
		{"set the thermostat to 72", "ask none"},
		{"turned the water temp up to 130", "heater 130 F"},
		{"kitchen 74 sorry scratch that last one seventy one", "71 kitchen"},
		{"73 rear, delete that, 78 rear", "78 rear_bibb"},
		{"94 on the laundry gauge, burner&#x27;s on", "94 laundry firing"},
		{"siento olor a gas en la cocina", "gas_smell"},
		{"siento veinte en la cocina", "120 kitchen"},
		{"changed the prv from 90 to 60", "set_prv to 60 from 90"},
		{"hey so i finally found the back bib lol it was under a bush. 85, no recirc", "85 rear_bibb; recirc none"},
		{"recommended an exp tank, PRV unk age set 55", "plan install_tank; prv age unknown set 55"},
		{"she needs a new exp tank", "plan replace_tank"},
		{"come back in a month and check the pressure", "plan recheck in 30"},
		{"friday we're putting in the new regulator", "plan replace_prv in 4"},
	})
}
