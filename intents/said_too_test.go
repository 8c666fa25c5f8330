package intents

import "testing"

func TestWhatIsDeniedOfAListBehindAVerb(t *testing.T) {
	says(t, [][2]string{
		{"customer no longer has any knocking or rusty water", "no hammer; no rusty_water"},
		{"they no longer hear any banging or humming", "no hammer; no noise"},
		{"doesn't have any knocking or rusty water", "no hammer; no rusty_water"},
		{"customer no longer has any knocking and the water is rusty", "no hammer; rusty_water"},
		{"heater 2013 never flushed, rusty water", "heater year 2013 never maintained; rusty_water"},
		{"heater never flushed rusty water", "heater never maintained; rusty_water"},
		{"heater never flushed, no rusty water", "heater never maintained; no rusty_water"},
		{"golpeteo ya no hay", "no hammer"},
		{"fugas no hay, 60 cocina", "no leak; 60 kitchen"},
		{"golpes ya no se oyen", "no hammer"},
		{"ruido hay de noche", "noise"},
	})
}

func TestNeverOnceHadItDone(t *testing.T) {
	says(t, [][2]string{
		{"never once had the heater flushed. 66 tub", "66 bath; heater never maintained"},
		{"hasn't ever had the heater flushed, 66 tub", "66 bath; heater never maintained"},
		{"had the heater flushed today, 66 tub", "flushed_heater; 66 bath"},
	})
}

func TestAnAgeSaidOfItAndSaidAgain(t *testing.T) {
	says(t, [][2]string{
		{"I rebuilt the regulator. It is a 2012 and it is in good condition.", "rebuilt_prv; prv year 2012 good"},
		{"flushed the heater. it is a 2012", "flushed_heater; heater year 2012"},
		{"charged the tank to 60. it is a 2015", "charged_tank to 60; expansion_tank year 2015"},
		{"air in the expansion tank is 20 where it should have 64, and the thing is a 2015", "expansion_tank year 2015 set 20"},
		{"replaced the prv. it was a 2002", "replaced_prv"},
		{"heater 12 yrs old, corroded on top. prv 12 too", "heater year 2014 suspect; prv year 2014"},
		{"heater 12 yrs old, prv also 12", "heater year 2014; prv year 2014"},
		{"heater 12 yrs old, prv 12 as well", "heater year 2014; prv year 2014"},
		{"heater 12 yrs old, prv 10", "heater year 2014"},
		{"heater 12 yrs old, laundry 60 too", "heater year 2014; 60 laundry"},
		{"prv set 60, tank 60 too", "expansion_tank set 60; prv set 60"},
	})
}

func TestWhatAHouseLacksInShort(t *testing.T) {
	says(t, [][2]string{
		{"no xp tk", "expansion_tank none"},
		{"chk vlv n mtr no tnk", "check_valve; expansion_tank none"},
		{"mtr no 4471, 60 ktchn", "60 kitchen"},
		{"60 front, 🚫 exp tank", "60 front_bibb; expansion_tank none"},
		{"exp tank 🚫, 60 front", "expansion_tank none; 60 front_bibb"},
		{":no_entry_sign: softener, 60 front", "softener none; 60 front_bibb"},
		{"60 front 🚫", "60 front_bibb"},
		{"no hay tanque y tampoco hay check en el medidor", "check_valve none; expansion_tank none"},
		{"60 cocina, tampoco suavizador", "60 kitchen; softener none"},
		{"la reguladora tampoco sirve", "prv failed"},
		{"ET chrg chkd 45#", "expansion_tank set 45"},
		{"ET chrgd 45#", "charged_tank to 45"},
	})
}

func TestAnotherOfItsKindWentIn(t *testing.T) {
	says(t, [][2]string{
		{"plastic drain valve snapped in my hand so a brass one went in instead", "replaced_drain_valve; drain_valve brass"},
		{"drain valve leaked so a brass one went in", "replaced_drain_valve; drain_valve brass"},
		{"electric heater died so a gas one went in, 50 gal", "replaced_heater; heater 50 gal gas"},
		{"drain valve is plastic, a brass one went in last year", "drain_valve year 2025 brass"},
		{"drain valve is plastic, a brass one goes in Friday", "drain_valve plastic; plan other in 4"},
		{"old tank heater out, heat pump heater in, 65 gal", "replaced_heater; heater 65 gal heat_pump"},
		{"tank heater out, tankless in", "replaced_heater; heater tankless"},
		{"heater out, 60 laundry", "60 laundry idle"},
	})
}
