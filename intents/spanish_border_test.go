package intents

import "testing"

// Young crews of the border text, and mix the languages within a sentence.
func TestSpanishBorder(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"ey wey en la 880 sagebrush la back hose bib marca 91 con el heater off", "880 Sagebrush | 91 rear_bibb idle"},
		{"acabo de bajar el prv de 95 a 62 q mas checo?", "ask next_check; set_prv >62 <95"},
		{"kitchen 57 laundry 58 nada running, 330 cholla st", "330 Cholla St | 57 kitchen static; 58 laundry static"},
		{"no hay check ni exp tank aki, front 104", "104 front_bibb; check_valve: none; expansion_tank: none"},
		{"haha no mames q calor hace hoy 108 en la truck", "ask none"},
		{"te mando la pic al rato, toy en 7 eleven", "ask none"},
		{"borra lo q mande orita plis", "ask undo"},
		{"cuanto es 400 kpa en psi", "ask convert 400 kpa psi"},
		{"que tank ocupo pa un heater de 75 gal a 80 psi", "ask tank_size 75gal 80psi"},
		{"ahi te va 2318 buckeye, frente 76 atras 75 calenta off", "2318 Buckeye | 75 rear_bibb idle; 76 front_bibb idle"},
		{"no mames 150 en el bib de atras!!! 19 Sable Run", "19 Sable Run | 150 rear_bibb"},
		{"hice flush al heater y salio puro lodo, 1901 Teak St", "1901 Teak St | flushed_heater"},
		{"ya cambie el prv, 61 after, antes 105, en el bib de enfrente. 3300 Comet Ln", "3300 Comet Ln | 105 front_bibb before; 61 front_bibb after; replaced_prv"},
		{"k presion traia la ultima vez 2318 buckeye", "2318 Buckeye | ask history"},
		{"x favor pon recordatorio pa 3 semanas checar 3300 comet ln", "3300 Comet Ln | plan recheck 21"},
		{"sigue goteando el t&p d la 41 Norte Dr", "41 Norte Dr | relief_discharge"},
		{"simon ya quedo jaja", "ask none"},
		{"alguien tiene el drill?", "ask none"},
		{"heater de 50 gal electrico 2018 todo ok", "heater: 2018 50gal electric good"},
		{"gauge nuevo, ahora si marca 72 en el front, 8 Zenith", "8 Zenith | 72 front_bibb"},
		{"manana a primera hora cambio el prv en 8 Zenith", "8 Zenith | plan replace_prv 1"},
		{"the customer dice que el agua sale brown en la tub, kitchen 66", "66 kitchen; rusty_water"},
		{"just finished en 1840 Lantana Dr, cambié el prv, rear bib 60 after, heater idle", "1840 Lantana Dr | 60 rear_bibb idle after; replaced_prv"},
		{"no exp tank en esta casa y el T&P is dripping", "expansion_tank: none; relief_discharge"},
		{"side bib 95 con el sprinkler on, 112 sin nada", "112 side_bibb static; 95 side_bibb flowing"},
		{"can you check que hay de 1840 Lantana Dr", "1840 Lantana Dr | ask history"},
		{"remind me en dos semanas de checar el tank en 1840 Lantana Dr", "1840 Lantana Dr | plan recheck 14"},
		{"el gauge is broken, la needle no regresa a cero", "gauge: failed"},
		{"front 71 rear 71 laundry 70, todo static, boiler off, 900 Pintail", "900 Pintail | 70 laundry idle static; 71 front_bibb idle static; 71 rear_bibb idle static"},
		{"scratch el último, era wrong house", "ask undo"},
		{"que size de expansion tank for 80 gal heater at 70 psi?", "ask tank_size 80gal 70psi"},
		{"done con el follow up de 900 Pintail", "900 Pintail | ask done"},
		{"move it pa next week, 900 Pintail", "900 Pintail | ask snooze 7"},
		{"meter 120, house side 68, prv is from 2009 y ya se ve feo", "120 street; 68 after_prv; prv: 2009 suspect"},
		{"flushié el heater y le cambié la drain valve por brass", "drain_valve: brass; flushed_heater; replaced_drain_valve"},
		{"the lady no tiene agua desde ayer, 5 Cormorant Ct", "5 Cormorant Ct | no_water"},
	})
}
