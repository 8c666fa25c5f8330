package intents

import "testing"

// Two to six pressures of one message, in every order and layout.

func TestTapsThatAreWrittenByALetter(t *testing.T) {
	reads(t, [][2]string{
		{"84 f, 82 r", "front_bibb 84; rear_bibb 82"},
		{"f 84 r 82", "front_bibb 84; rear_bibb 82"},
		{"f:84 r:82 k:80", "front_bibb 84; rear_bibb 82; kitchen 80"},
		{"84f/82r", "front_bibb 84; rear_bibb 82"},
		{"84F 82R", "front_bibb 84; rear_bibb 82"},
		{"f 84\nr 82\nl 81\nk 80", "front_bibb 84; rear_bibb 82; laundry 81; kitchen 80"},
		{"84 s 82 k", "side_bibb 84; kitchen 82"},
		{"heater 50 gal gas 120 f", ""},
		{"water 118 f", ""},
	})
}

func TestOneTapIsReadWithAnotherShutAndRunning(t *testing.T) {
	reads(t, [][2]string{
		{"kitchen 61 shower on, 74 shower off", "kitchen 61 flowing; kitchen 74"},
		{"74 tub off, 61 tub on, kitchen", "kitchen 74; kitchen 61 flowing"},
		{"kitchen shower off 74, shower on 61", "kitchen 74; kitchen 61 flowing"},
		{"front 84 static 61 with two running", "front_bibb 84 static; front_bibb 61 flowing"},
		{"48 kitchen flowing", "kitchen 48 flowing"},
		{"48 laundry wide open", "laundry 48 flowing"},
		{"48 kitchen w/ shower", "kitchen 48 flowing"},
		{"72 kitchen, lost 15 psi with the tub", "kitchen 72"},
		{"66 at laundry once it filled", "laundry 66"},
		{"70 kitchen standing", "kitchen 70 static"},
		{"kitchen 70, at rest", "kitchen 70 static"},
		{"70 kitchen dead end", "kitchen 70 static"},
		{"70 kitchen under no load", "kitchen 70 static"},
		{"gauge at the kitchen says 81 closed up", "kitchen 81 static"},
	})
}

func TestSeveralPressuresShareWhatIsSaidOnce(t *testing.T) {
	reads(t, [][2]string{
		{"kitchen, tub, laundry: 72 each", "kitchen 72; bath 72; laundry 72"},
		{"72 at kitchen, same at tub, 70 at laundry", "kitchen 72; bath 72; laundry 70"},
		{"3 readings off the hose: 70, 72, 71", "bibb 70; bibb 72; bibb 71"},
		{"62 at the hose, heater off", "bibb 62 idle"},
		{"121 in / 66 out of the prv", "street 121; after_prv 66"},
		{"kitchen = 72\nheater = cold", "kitchen 72 idle"},
		{"heater = on, kitchen = 72", "kitchen 72 firing"},
		{"rear bib 88 (64 burner off)", "rear_bibb 88; rear_bibb 64 idle"},
	})
	reads(t, [][2]string{{"88 (64 burner off), 12 Elm St", "88; 64 idle"}})
}

func TestBeforeAndAfterOfSeveralTaps(t *testing.T) {
	reads(t, [][2]string{
		{"before: front 95 rear 94 after: front 60 rear 59, adjusted prv", "front_bibb 95 before; rear_bibb 94 before; front_bibb 60 after; rear_bibb 59 after"},
		{"before front 95 rear 94 after front 60 rear 59, adjusted prv", "front_bibb 95 before; rear_bibb 94 before; front_bibb 60 after; rear_bibb 59 after"},
		{"AF 95 AL 60 kitchen, adjusted reg", "kitchen 95 before; kitchen 60 after"},
		{"turned the reg down, kitchen 66 from 95", "kitchen 66 after; kitchen 95 before"},
		{"kitchen's 66 now, down from 95, turned the reg down", "kitchen 66 after; kitchen 95 before"},
		{"swapped the prv, rear was 104 and is 61", "rear_bibb 104 before; rear_bibb 61 after"},
	})
}

func TestTheHeaterStandsOrRunsInOtherWords(t *testing.T) {
	reads(t, [][2]string{
		{"84 rear bib no call for heat", "rear_bibb 84 idle"},
		{"84 rear bib, heater standing by", "rear_bibb 84 idle"},
		{"84 rear bib, tank satisfied", "rear_bibb 84 idle"},
		{"112 laundry, flames on", "laundry 112 firing"},
		{"112 laundry 20 min into a burn", "laundry 112 firing"},
		{"112 laundry, heater pulling amps", "laundry 112 firing"},
		{"tankless running, 66 lav", "bath 66 firing"},
		{"pilot lit fine, 68 at the rear bibb", "rear_bibb 68"},
	})
}

func TestNumbersBesideAPressureThatAreNone(t *testing.T) {
	reads(t, [][2]string{
		{"72 kitchen, climbs 20 overnight", "kitchen 72"},
		{"kitchen 58 back in the van now", "kitchen 58"},
		{"kitchen was 58 back in march", ""},
	})
}

func TestTheGaugeHasAUnitOfItsOwn(t *testing.T) {
	reads(t, [][2]string{
		{"gauge is in ft of water, reads 165", "71.5"},
		{"gauge's in feet, 165 at the kitchen", "kitchen 71.5"},
		{"kitchen gauge is in bar, 4.2", "kitchen 60.9"},
		{"gauge is kPa: kitchen 480, tub 470", "kitchen 69.6; bath 68.2"},
	})
}

func TestTheTwoHandsOfAGauge(t *testing.T) {
	reads(t, [][2]string{
		{"red 128 black 72 laundry box", "laundry 128 peak; laundry 72"},
		{"black needle at 72 red at 128, laundry", "laundry 72; laundry 128 peak"},
		{"red: 128, black: 72, laundry", "laundry 128 peak; laundry 72"},
		{"aguja roja 128, negra 72, lavadora", "laundry 128 peak; laundry 72"},
		{"roja 128 negra 72 cocina", "kitchen 128 peak; kitchen 72"},
	})
	says(t, [][2]string{
		{"red 128 black 72 laundry box", "128 laundry peak; 72 laundry"},
		{"water is black, 72 kitchen", "72 kitchen; dark_water"},
	})
}

func TestReadingsToldInSpanishWords(t *testing.T) {
	reads(t, [][2]string{
		{"cocina de 95 a 60, le bajé a la reguladora", "kitchen 95 before; kitchen 60 after"},
		{"72 en la llave de atrás, sin gas el boiler", "rear_bibb 72 idle"},
		{"96 lavadora mientras calentaba el boiler", "laundry 96 firing"},
		{"51 cocina, se están bañando", "kitchen 51 flowing"},
	})
}

func TestATapIsOnlyWhereTheGaugeWasPut(t *testing.T) {
	says(t, [][2]string{
		{"no bib out back so I hooked up at the heater drain, 81", "81 heater_drain"},
		{"put it on the heater drain, 81", "81 heater_drain"},
		{"put on a new drain valve, 81 laundry", "replaced_drain_valve; 81 laundry"},
		{"got the gauge on the washer box and its sitting at 88 with the heater off", "88 laundry idle"},
		{"hot 66 cold 68 at the laundry box", "66 laundry; 68 laundry"},
	})
}

func TestWhatTheHeaterDidBetweenTwoReadings(t *testing.T) {
	reads(t, [][2]string{
		{"laundry 121 heater firing. Shut it off and it came back to 90.", "laundry 121 firing; laundry 90 idle"},
		{"laundry 121 burner on, killed it, back to 90", "laundry 121 firing; laundry 90 idle"},
		{"laundry 88. Shut it off and it came back to 90.", "laundry 88; laundry 90"},
	})
	says(t, [][2]string{
		{"gauge on the laundry hit 128, relief started to weep", "128 laundry; relief_discharge"},
		{"prv starting to weep, 96 laundry", "prv suspect; 96 laundry"},
	})
}

func TestStatesThatAreToldInTurn(t *testing.T) {
	reads(t, [][2]string{
		{"static: curb 105 psi flowing: washer box 80 psi", "street 105 static; laundry 80 flowing"},
		{"nothing on: meter (111) w/ tub running: hose bib (115)", "street 111 static; bibb 115 flowing"},
		{"heater off, 72 kitchen, heater on, 96 kitchen", "kitchen 72 idle; kitchen 96 firing"},
		{"heater drain was 119 / static - kit was 48 / hose running", "heater_drain 119 static; kitchen 48 flowing"},
		{"front bib: 55 (no flow) rear bib: 90 (hose running)", "front_bibb 55 static; rear_bibb 90 flowing"},
		{"68 kitchen, then I ran the tub, 40", "kitchen 68; kitchen 40 flowing"},
	})
}

func TestOneGaugeIsNamedOnceForTwoStates(t *testing.T) {
	reads(t, [][2]string{
		{"firing: 108; idle: 57, kitchen", "kitchen 108 firing; kitchen 57 idle"},
		{"102, heater off; 131, burner on, all at the washer box", "laundry 102 idle; laundry 131 firing"},
		{"76 two taps open; 88 no flow at the kitchen", "kitchen 76 flowing; kitchen 88 static"},
		{"78/static/idle/back spigot", "rear_bibb 78 idle static"},
		{"96 curb flowing", "street 96 flowing"},
		{"back spigot was 78 til the washer kicked on then 66", "rear_bibb 78; rear_bibb 66"},
	})
}

func TestPointsAndNumbersInTurn(t *testing.T) {
	reads(t, [][2]string{
		{"front bib - 73 hose bib - 51 lav - 53 house side - 89", "front_bibb 73; bibb 51; bath 53; after_prv 89"},
		{"48 on the washer box, 101 past the reg, 113 on the kit", "laundry 48; after_prv 101; kitchen 113"},
	})
}

func TestPlainOnAndOffAgainstAStateThatIsNamed(t *testing.T) {
	reads(t, [][2]string{
		{"lavadora, apagado 53, boiler calentando 88", "laundry 53 idle; laundry 88 firing"},
		{"tina: 63 (calentador frío), luego 118 (prendido)", "bath 63 idle; bath 118 firing"},
		{"cocina calentador frío: 61 / prendido: 91", "kitchen 61 idle; kitchen 91 firing"},
		{"lavadora 119, prendido, 73, calentador frío", "laundry 119 firing; laundry 73 idle"},
		{"85 (boiler prendido) y 68 (apagado) en llave del costado", "side_bibb 85 firing; side_bibb 68 idle"},
		{"laundry - 56 / w/ tub running | street side - 104 / all shut", "laundry 56 flowing; street 104 static"},
	})
}

func TestHighestAndPresentBesideEachOther(t *testing.T) {
	reads(t, [][2]string{
		{"overnight high: 138 this morning: 86, front bib", "front_bibb 138 peak; front_bibb 86"},
		{"overnight high 105. this morning 49, meter", "street 105 peak; street 49"},
		{"rear bib, hi: 137, now: 48", "rear_bibb 137 peak; rear_bibb 48"},
		{"washer box: 134 hi, 77 now", "laundry 134 peak; laundry 77"},
	})
}

func TestTimesOfTwoTapsInShorthand(t *testing.T) {
	reads(t, [][2]string{
		{"laundry 139 (b4) and 62 (aftr), new reg in", "laundry 139 before; laundry 62 after"},
		{"swapped the prv\nb4: kitchen 121, washer box 113\naftr: kitchen 51, washer box 68",
			"kitchen 121 before; laundry 113 before; kitchen 51 after; laundry 68 after"},
		{"set prv, AF street side 100 and lav 123, AL street side 51 and lav 72", "street 100 before; bath 123 before; street 51 after; bath 72 after"},
		{"laundry had 104 / now 63. set prv", "laundry 104 before; laundry 63 after"},
		{"master shower: 139 (found) and 75 (left), new reg in", "bath 139 before; bath 75 after"},
	})
}

func TestAMessageThatEndsInALinkIsRead(t *testing.T) {
	reads(t, [][2]string{{"72 kitchen 118 heater drain is", "kitchen 72; heater_drain 118"}})
}

// A letter stands for a tap in a row of taps, two flows told with a stroke are of two pressures told so, and where a
// pressure was read may be told behind it.
func TestPressuresAndTheirTapsInARow(t *testing.T) {
	says(t, [][2]string{
		{"72 fr, 71 bk, 70 k", "72 front_bibb; 71 rear_bibb; 70 kitchen"},
		{"72 front, 71 back, 70 k for the heater", "72 front_bibb; 71 rear_bibb"},
		{"60/52 static/flowing", "60 static; 52 flowing"},
		{"10 mins on the tub. 60, 62, 66", "60 bath; 62 bath; 66 bath"},
		{"45 min on the kitchen faucet. 115", "ask none"},
		{"Kindly enter 58 psi for 12 Elm St. It was read at the kitchen sink while the heater was heating", "58 kitchen firing"},
		{"58 psi. The tub was slow with the hose on", "low_flow"},
	})
}
