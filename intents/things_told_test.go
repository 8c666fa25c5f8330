package intents

import "testing"

// What is seen, heard and smelled, and what is installed, in the words and orders of crews.

func TestWhatLeaksInOtherWords(t *testing.T) {
	says(t, [][2]string{
		{"rear bib vacuum breaker pisses water, 88 rear bib", "leak; 88 rear_bibb"},
		{"hose washer shot on the front bib, sprays all over. 66 front", "leak; 66 front_bibb"},
		{"checked all fixtures for drips none found. 59 kitchen", "no leak; 59 kitchen"},
		{"el escusado se queda corriendo, 64 atras", "leak; 64 rear_bibb"},
		{"una gota en el lavabo, 70 en la cocina", "leak; 70 kitchen"},
		{"le sale agua por la union del regulador, 88 enfrente", "leak; 88 front_bibb"},
		{"prv ok, flapper wont seat", "leak; prv good"},
		{"relief drips when the heater runs, flapper wont seat. 80 front", "leak; relief_discharge; 80 front_bibb"},
	})
}

func TestTheReliefAndItsPipe(t *testing.T) {
	says(t, [][2]string{
		{"there's a ball valve on the t&p discharge line. 70 front", "relief_blocked; 70 front_bibb"},
		{"no shutoff on the relief line, 70 front", "no relief_blocked; 70 front_bibb"},
		{"no t&p on the heater at all, plugged hole. 70 front", "relief_blocked; 70 front_bibb"},
		{"puddle under the relief pipe. 84 laundry", "relief_discharge; 84 laundry"},
		{"no relief discharge no leaks. 64 front", "no relief_discharge; no leak; 64 front_bibb"},
		{"t&p quit weeping since the tank went in, 58 laundry", "no relief_discharge; expansion_tank; 58 laundry"},
		{"lifted the relief, it reseated. 61 laundry", "61 laundry"},
		{"replaced the t&p, old one dripped. 64 laundry", "relief_discharge; 64 laundry"},
	})
}

func TestGasThatLeaksAtAPartOfItsLine(t *testing.T) {
	says(t, [][2]string{
		{"gas valve on the heater leaks", "gas_smell"},
		{"gas flex behind the dryer is leaking, 64 front", "gas_smell; 64 front_bibb"},
		{"gas control valve is leaking", "gas_smell"},
		{"gas 50 gal heater leaks at the top", "heater 50 gal gas; leak"},
	})
}

func TestColoursOfTheWaterAndOfThings(t *testing.T) {
	says(t, [][2]string{
		{"rusty hose bib but water is clean. 72 front", "no dark_water; 72 front_bibb"},
		{"water ran red a min then cleared. 66 front", "rusty_water; 66 front_bibb"},
		{"ran black maybe 10 seconds", "dark_water"},
		{"sale amarillenta la caliente, 66 lavadora", "rusty_water; 66 laundry"},
		{"agua limpia, 60 cocina", "no dark_water; 60 kitchen"},
	})
}

func TestLittleWaterAndNone(t *testing.T) {
	says(t, [][2]string{
		{"customer wants more pressure. 47 rear", "low_flow; 47 rear_bibb"},
		{"pressure's crap on 2nd floor. 48 rear", "low_flow; 48 rear_bibb"},
		{"half the pressure they used to have, 40 front", "low_flow; 40 front_bibb"},
		{"gauge is off, reads 5 with no pressure. 66 laundry", "gauge suspect; 66 laundry"},
		{"water's out on the whole street", "no_water"},
		{"no hay agua caliente, 62 cocina", "62 kitchen"},
		{"no hay agua caliente ni fria", "no_water"},
	})
}

func TestFactsInAList(t *testing.T) {
	says(t, [][2]string{
		{"TANK - Thermal exp 2 gal, 62 psi, good", "expansion_tank 2 gal set 62 good"},
		{"Exp tank: 2 gal, 2019, 60 psi, ok. 61 laundry", "expansion_tank year 2019 2 gal set 60 good; 61 laundry"},
		{"exp tank 4.4 gal, good, house 62 psi", "expansion_tank 4.4 gal good; 62"},
		{"exp tank 2 gal, 60 psi static", "expansion_tank 2 gal; 60 static"},
		{"kitchen 60 psi static", "60 kitchen static"},
		{"PRV - set 58 - '17 - ok", "prv year 2017 set 58 good"},
		{"Age PRV: 6", "prv year 2020"},
		{"cant read the tag on the reg. 70 front", "prv age unknown; 70 front_bibb"},
		{"cant read the sticker on the heater, 62 kitchen", "heater age unknown; 62 kitchen"},
		{"rebuilt the prv in 2021", "prv maintained 2021"},
		{"prv 2001, rebuilt 3 yrs ago", "prv year 2001 maintained 2023"},
		{"reg is letting street pressure by, 92 rear", "prv failed; 92 rear_bibb"},
	})
}

func TestADialIsNoGauge(t *testing.T) {
	says(t, [][2]string{
		{"dial's on 140, 62 laundry", "heater 140 F; 62 laundry"},
		{"heater thermostat on hot, 62 laundry", "62 laundry"},
		{"stat set to hot, 62 laundry", "62 laundry"},
		{"flames on, 92 laundry", "92 laundry firing"},
	})
}

func TestTheOldOneIsThatOfTheNewOneToCome(t *testing.T) {
	says(t, [][2]string{
		{"old ones stuck, new reg going in friday", "prv failed; plan replace_prv in 4"},
		{"the old one's waterlogged, new tank going in monday", "expansion_tank failed; plan replace_tank in 7"},
		{"old one's dead. new prv goes in tomorrow", "prv failed; plan replace_prv in 1"},
	})
}

func TestWhatIsNotThereOrNotHere(t *testing.T) {
	says(t, [][2]string{
		{"not sure if its leaking, 64 kitchen", "64 kitchen"},
		{"if it leaks again call me, 64 rear", "64 rear_bibb"},
		{"the neighbors toilet runs, 64 rear", "64 rear_bibb"},
		{"pipes used to hammer before the new prv. 62 laundry", "62 laundry"},
		{"used to bang, still does. 62 laundry", "hammer; 62 laundry"},
		{"toilet whistles when it fills, 60 laundry", "noise; 60 laundry"},
		{"heater sounds like a coffee pot. 60 laundry", "noise; 60 laundry"},
		{"sewer gas smell in the bath, 60 laundry", "60 laundry"},
		{"66 rear, doesnt climb", "no creep; 66 rear_bibb"},
	})
}

func TestWaterThatTheCityShut(t *testing.T) {
	says(t, [][2]string{
		{"water's off at the street, city working", "no_water"},
		{"water is off, city main break", "no_water"},
		{"shut the water off, called the city", "shut_off"},
	})
}

func TestAgesAndLabelsOfParts(t *testing.T) {
	says(t, [][2]string{
		{"prv no tag 62 kitchen", "prv age unknown; 62 kitchen"},
		{"cant read the tag on the heater 62 kitchen", "heater age unknown; 62 kitchen"},
		{"prv tag gone 62 kitchen", "62 kitchen"},
		{"tag says 75 kitchen", "ask none"},
		{"prv unk yr 62 kitchen", "prv age unknown; 62 kitchen"},
		{"prv is 6 months old", "prv year 2025"},
		{"18 month old heater, 62 kitchen", "heater year 2024; 62 kitchen"},
		{"has a prv but its froze, 110 kitchen", "prv failed; 110 kitchen"},
		{"exp tank was removed, capped off, 92 kitchen", "expansion_tank none; 92 kitchen"},
		{"tank's rusted at the nipple, 62 kitchen", "expansion_tank suspect; 62 kitchen"},
		{"prv is hunting, 62 kitchen", "swings; 62 kitchen"},
	})
}

func TestStIsSetOnlyOfAPart(t *testing.T) {
	says(t, [][2]string{
		{"elm st 123, kitchen 66", "66 kitchen"},
		{"kitchen st 66", "66 kitchen static"},
		{"front bib st 88, kitchen 66", "88 front_bibb static; 66 kitchen"},
		{"swpd prv. st 58", "replaced_prv to 58"},
		{"frnt bb 104, st prv to 58", "104 front_bibb; set_prv to 58"},
	})
}

func TestThingsToldInSpanish(t *testing.T) {
	says(t, [][2]string{
		{"la te y pe gotea, 92 lavadora", "relief_discharge; 92 laundry"},
		{"charquito en el piso del cuarto de lavado, 66 lavadora", "leak; 66 laundry"},
		{"ya quedo la fuga, 64 atras", "repaired_leak; 64 rear_bibb"},
		{"le cambie el empaque a la llave y ya no gotea, 64 atras", "repaired_leak; 64 rear_bibb"},
		{"se sube la aguja con todo cerrado, 66 lavadora", "creep; 66 laundry static"},
		{"no sube la presion arriba, 40 cocina", "40 kitchen"},
		{"el regulador ya no ajusta, 95 atras", "prv failed; 95 rear_bibb"},
	})
}
