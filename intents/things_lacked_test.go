package intents

import "testing"

func TestAThingThatSomebodyHasNot(t *testing.T) {
	says(t, [][2]string{
		{"The meter has a check valve on it, and an expansion tank they don't have.", "check_valve; expansion_tank none"},
		{"a softener they have, a tank they haven't", "softener; expansion_tank none"},
		{"check valve they've got, recirc pump they do not have", "check_valve; recirc none"},
		{"tomorrow I install the tank they don't have, kitchen 79", "expansion_tank none; plan install_tank in 1; 79 kitchen"},
		{"el lunes le instalo tanque a 8 Ciruelo Ct, no tiene", "expansion_tank none; plan install_tank in 7"},
		{"mañana le pongo tanque a 8 Ciruelo Ct porque no tiene, la casa anda en 79", "expansion_tank none; plan install_tank in 1; 79"},
	})
}

func TestAThingThatIsSoToo(t *testing.T) {
	says(t, [][2]string{
		{"regulator is fine and so is his 2 gallon expansion tank", "prv good; expansion_tank 2 gal good"},
		{"the prv is good and the softener as well", "prv good; softener good"},
		{"la reguladora esta bien y el tanque tambien", "prv good; expansion_tank good"},
	})
}
