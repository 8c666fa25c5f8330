package intents

import "testing"

func TestWhatAHeaterStandsAt(t *testing.T) {
	says(t, [][2]string{
		{"gas heater down there is at 130", "heater gas 130 F"},
		{"the heater in the attic is on 125, gas", "heater gas 125 F"},
		{"wh 50 gal elec at 120", "heater 50 gal electric 120 F"},
		{"water heater's up at 140", "heater 140 F"},
		{"heater in the garage, 120 at the rear bib", "120 rear_bibb"},
		{"heater drain at 120", "120 heater_drain"},
	})
}

func TestAHeaterThatWasOffAllTheTime(t *testing.T) {
	says(t, [][2]string{
		{"The heater is gas, 150 litres, from 2017, and was off during the whole visit. laundry 60", "heater year 2017 39.6 gal gas; 60 laundry idle"},
		{"heater is a 50 gal electric and stayed off throughout. tub 80", "heater 50 gal electric; 80 bath idle"},
		{"The heater is a 2017 gas, set at 120, and was running the whole time. kitchen 90", "heater year 2017 gas 120 F; 90 kitchen firing"},
		{"heater set at 140, way too hot. kitchen 59", "heater 140 F; 59 kitchen"},
	})
}
