package intents

import "testing"

func TestATankThatIsDeniedIsNotTheHeaters(t *testing.T) {
	says(t, [][2]string{
		{"no tank, 50 gal electric heater", "expansion_tank none; heater 50 gal electric"},
		{"no tank, 40 gal gas 2015", "expansion_tank none; heater year 2015 40 gal gas"},
		{"no tank 50 gal heater", "expansion_tank none; heater 50 gal"},
		{"tank is flat, 50 gal electric heater", "expansion_tank failed; heater 50 gal electric"},
		{"tank 2019, gas heater", "expansion_tank year 2019; heater gas"},
	})
}

func TestADateIsOfTheThingThatHasNoOther(t *testing.T) {
	says(t, [][2]string{
		{"they moved in in 2019, prv is dated 2015", "prv year 2015"},
		{"she retired in 2019, prv was put in 2015", "prv year 2015"},
		{"tank was put in 6 yrs ago heater 3 yrs ago", "expansion_tank year 2020; heater year 2023"},
		{"2015 heater 2018 prv 2020 tank", "expansion_tank year 2020; heater year 2015; prv year 2018"},
		{"10 year old heater 5 year old prv", "heater year 2016; prv year 2021"},
		{"prv2016 et2016 wh2018", "expansion_tank year 2016; heater year 2018; prv year 2016"},
	})
}

func TestADeedNamedInSpanishWithItsArticle(t *testing.T) {
	says(t, [][2]string{
		{"swap del prv listo, 60 en la cocina", "60 kitchen; replaced_prv"},
		{"cambio de la reguladora terminado", "replaced_prv"},
		{"instalacion del tanque lista", "installed_tank"},
		{"flush del boiler hecho", "flushed_heater"},
		{"cambio del tanque para el viernes", "plan replace_tank in 4"},
	})
}

func TestTheOtherStateOfATapIsOfTheSameTime(t *testing.T) {
	says(t, [][2]string{
		{"put in a 2 gal tank. laundry showed 60 afterwards with the heater firing and 58 with it idle",
			"58 laundry idle after; 60 laundry firing after; installed_tank; expansion_tank 2 gal"},
		{"swapped the prv. kitchen 60 after static, 52 flowing", "52 kitchen flowing after; 60 kitchen static after; replaced_prv"},
	})
}
