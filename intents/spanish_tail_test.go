package intents

import "testing"

// Wordings of Spanish that are rare one by one and common together.
func TestSpanishTail(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		// where
		{"llave de manguera de la fachada 95 lbs", "95 front_bibb"},
		{"en el contador de agua hay 124 lbs", "124 street"},
		{"drenaje del tanque de agua caliente, 105 libras calentando", "105 heater_drain firing"},
		{"saliendito de la reguladora 59 con la manguera corriendo", "59 after_prv flowing"},
		{"calle 5 de mayo 120, cocina 71", "Calle 5 De Mayo 120 | 71 kitchen"},
		// states
		{"sin que corra agua en ningún lado 66 atrás", "66 rear_bibb static"},
		{"enfrente 63 con todo apretado", "63 front_bibb static"},
		{"agua fría 60 en la cocina con el boiler prendido", "60 kitchen firing"},
		// before and after
		{"97 en la cocina antes de mover el tornillo de la reguladora, después de moverlo 61 en la cocina", "61 kitchen after; 97 kitchen before; set_prv"},
		{"traía 98 la de enfrente, cambié la reguladora y quedó en 58, enfrente 59", "59 front_bibb; 98 front_bibb before; replaced_prv >58"},
		{"entrada: atrás 112\ntrabajo: reguladora nueva a 60\nsalida: atrás 61", "112 rear_bibb before; 61 rear_bibb after; replaced_prv >60"},
		// put right
		{"eran 75 no 57 en la cocina", "75 kitchen; ask correct"},
		{"enfrente 92, no, 82", "82 front_bibb"},
		// symptoms
		{"parece tinta lo que sale del fregadero los primeros minutos", "dark_water"},
		{"la llave de la cocina llora toda la noche", "leak"},
		{"revisé debajo de todo y está seco, ni una gota", "no leak"},
		{"cerré rápido varias llaves y no golpea nada", "no hammer"},
		{"a ratos fuerte a ratos flojita, la presión anda loca", "swings"},
		{"estable, la presión no sube ni baja", "no swings"},
		{"amanecieron secas las llaves", "no_water"},
		{"la descarga de la de alivio tiene una llave de paso cerrada", "relief_blocked"},
		{"la de alivio está libre, nadie la ha tapado", "no relief_blocked"},
		{"la válvula de alivio abre a 150 según la placa", "ask none"},
		// facts
		{"reguladora del 2018 y trabaja como reloj", "prv: 2018 good"},
		{"bóiler eléctrico de 50, lo pusieron en dos mil diecinueve", "heater: 2019 50gal electric"},
		{"tienen un calentador instantáneo, sin tanque, del 2020", "heater: 2020 tankless"},
		{"a ese calentador jamás le han sacado el sedimento", "heater: served 0"},
		{"tanque de expansión de 2 galones, 2024, al cien", "expansion_tank: 2024 2gal good"},
		{"tanque de expansión de 18 litros precargado a 3 bar", "expansion_tank: 4.8gal at 43.5"},
		{"no tienen recirculadora ni ablandador", "recirc: none; softener: none"},
		{"ya llegaron los tanques de expansión al almacén, pasen por ellos", "ask none"},
		// deeds
		{"cambio de reguladora hecho, calibrada en 60", "replaced_prv >60"},
		{"con la bomba de bici le puse 55 de aire al tanque de expansión", "charged_tank >55"},
		{"le cambié las tripas a la reguladora, kit completo", "rebuilt_prv"},
		{"dejé cortada el agua desde el medidor", "shut_off"},
		{"nada más les abrí la llave de paso, estaban sin agua", "no_water"},
		// plans
		{"mañana le bajo a la reguladora a 60", "plan set_prv 1"},
		{"en dos semanas les lavo el boiler", "plan other 14"},
		{"no hay tanque de expansión\ntanque el miércoles", "expansion_tank: none; plan install_tank 2"},
		{"dentro de un año toca volver a medir aquí", "plan recheck 365"},
	})
}
