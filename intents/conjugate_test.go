package intents

import "testing"

// A verb of work is understood in every form of it, a deed in its noun, and what only
// looks like a deed is none.
func TestDeedsInOtherForms(t *testing.T) {
	says(t, [][2]string{
		{"se le cambió el boiler", "replaced_heater"},
		{"sustituí la reguladora", "replaced_prv"},
		{"ya quedó cambiada la reguladora", "replaced_prv"},
		{"tuve que drenar el boiler", "flushed_heater"},
		{"le saqué el lodo al calentador", "flushed_heater"},
		{"le inyecté aire al tanque de expansión", "charged_tank"},
		{"se recargó el tanque de expansión", "charged_tank"},
		{"le cambié el cartucho a la reguladora", "rebuilt_prv"},
		{"le puse otro tanque de expansión, el viejo no servía", "replaced_tank"},
		{"le puse una abrazadera a la fuga", "repaired_leak"},
		{"corté el suministro", "shut_off"},
		{"reguladora ajustada", "set_prv"},
		{"reguladora ajustada a 60", "prv set 60"},
		{"completed the prv replacement", "replaced_prv"},
		{"did a prv adjustment", "set_prv"},
		{"ended up putting a new prv in", "replaced_prv"},
		{"switched the prv out for a new one, set to 60", "replaced_prv to 60"},
		{"r and r the prv", "replaced_prv"},
		{"swapped the cartridge in the prv", "rebuilt_prv"},
		{"an expansion tank was added above the heater", "installed_tank"},
		{"strapped an expansion tank to the wall", "installed_tank"},
		{"gave the heater an expansion tank", "installed_tank"},
		{"adjusted the precharge on the expansion tank", "charged_tank"},
		{"rinsed out the heater", "flushed_heater"},
		{"drained the tank on the water heater", "flushed_heater"},
		{"heater got a new drain valve", "replaced_drain_valve"},
		{"did the drain valve swap on the heater", "replaced_drain_valve"},
		{"put a clamp on the leak", "repaired_leak"},
		{"leak repair complete", "repaired_leak"},
		{"closed the angle stop at the meter", "shut_off"},
		{"somebody swapped the prv before us", "ask none"},
		{"the prv was replaced by another outfit", "ask none"},
		{"front bib 71, no prv before, put one in", "71 front_bibb; installed_prv"},
	})
}
