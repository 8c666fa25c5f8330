package intents

import "testing"

// What the short last lines of a note say of the lines above them.
func TestClosingLinesOfVisitNotes(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"Exp tank: also new, charged 68", "replaced_tank >68"},
		{"New tank too, charged to 76, there was none.", "installed_tank >76"},
		{"Drain valve brass, stuck\nNever flushed since 2012 install", "drain_valve: brass failed; heater: 2012 served 0"},
		{"flushed the heater\nkitchen 63 both before and after", "63 kitchen after; 63 kitchen before; flushed_heater"},
		{"manifold 39 zone 2 running", "39 irrigation flowing"},
		{"Kitchen: 75\nBreaker: off", "75 kitchen idle"},
		{"heater in vac mode, kitchen 70", "70 kitchen idle"},
		{"Kitchen 61\n0 charge", "61 kitchen"},
		{"kitchen 69\nshut everything 20 min, no creep", "69 kitchen; no creep"},
		{"All makes sense: before 128 front, 129 meter. Turned the prv down", "128 front_bibb before; 129 street before; set_prv"},
		{"Cambié el calentador viejo por uno eléctrico de 50 galones, ajustado a 120 grados", "heater: 50gal electric 120F; replaced_heater"},
		{"Arreglé la fuga de la llave de atrás\nahora 72 en esa llave", "72 rear_bibb after; repaired_leak"},
		{"closed the house valve", "shut_off"},
		{"Ruido: no hay golpes", "no hammer"},
	})
}

func TestJobsThatAreToHappenToThings(t *testing.T) {
	says(t, [][2]string{
		{"Thursday I go back, the regulator gets replaced and a tank goes in.", "plan install_tank in 3; plan replace_prv in 3"},
		{"friday the regulator gets swapped and a tank goes in", "plan install_tank in 4; plan replace_prv in 4"},
		{"friday a tank goes in and the regulator gets replaced", "plan install_tank in 4; plan replace_prv in 4"},
		{"regulator gets replaced friday and a tank goes in", "plan install_tank in 4; plan replace_prv in 4"},
		{"friday the regulator gets swapped and the heater flushed", "flushed_heater; plan replace_prv in 4"},
		// what people want was done by nobody
		{"Expansion tank is a 2015, getting weak, they want it changed in two weeks.", "expansion_tank year 2015 suspect; plan replace_tank in 14"},
		{"prv is weak. They want it swapped friday", "plan replace_prv in 4; prv suspect"},
		{"they changed the prv in 2015", "prv year 2015"},
		{"Set a recheck for one year.", "plan recheck in 365"},
		{"recheck for 1 yr", "plan recheck in 365"},
		{"set a recheck for two years", "plan recheck in 730"},
		{"ran the heater for one year", "ask none"},
	})
}

func TestThePartIsInAndNoWaterRuns(t *testing.T) {
	reads(t, [][2]string{
		{"Swapped the heater. Washer box before 78. Heat pump in and everything shut: washer box 77, kitchen 76.",
			"laundry 78 before; laundry 77 static after; kitchen 76 static after"},
		{"Swapped the heater. Washer box before 78. New heater full and nothing drawing: washer box 77.", "laundry 78 before; laundry 77 static after"},
		{"Swapped the prv. Kitchen before 98. New one in and nothing open, kitchen 60.", "kitchen 98 before; kitchen 60 static after"},
		// no part is said to be in
		{"Swapped the prv. Kitchen before 98. Nothing open: kitchen 60.", "kitchen 98 before; kitchen 60 static"},
	})
}

func TestAPressureAnHourLater(t *testing.T) {
	reads(t, [][2]string{
		{"rear spigot nothing open: 58 at first, 71 half an hour later. so yes it creeps", "rear_bibb 58 static; rear_bibb 71 static"},
		{"rear spigot: 58, 71 an hour later", "rear_bibb 58; rear_bibb 71"},
		{"rear spigot 58 at first then 71 half an hour later", "rear_bibb 58; rear_bibb 71"},
		{"laundry 60 right away, 74 half hour later", "laundry 60; laundry 74"},
		{"kitchen 66, lunch was 40 an hour later", "kitchen 66"},
	})
}
