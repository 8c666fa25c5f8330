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
