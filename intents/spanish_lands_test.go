package intents

import "testing"

// The islands and Central America have words of their own, and dictate without a pause.
func TestSpanishOfOtherLands(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"Mano, en el 1210 de Guava St la pluma de atrás tiene 84 libras, calentador apagao", "1210 Guava St | 84 rear_bibb idle"},
		{"la llave de paso tá rota y no hay agua en la casa, 55 Flamboyan Ave", "55 Flamboyan Ave | no_water"},
		{"le cambié la válvula de presión, la puse en 60 libras, 302 Caoba Ct", "302 Caoba Ct | replaced_prv >60"},
		{"El tanque del calentador es de 30 galones eléctrico, tiene como 15 años", "heater: 2011 30gal electric"},
		{"hay un salidero en la ducha y la presión anda por 78 en el fregadero. 18 Ceiba Way", "18 Ceiba Way | 78 kitchen; leak"},
		{"la bomba de recirculación no prende, 71 Almendro Rd", "71 Almendro Rd | recirc: failed"},
		{"el agua sale prieta por la pluma de alfrente, 63 psi", "63 front_bibb; dark_water"},
		{"mira borra eso, era 68 no 86", "68; ask correct"},
		{"los tubos suenan duro cuando cierran la lavadora, tiene 92 ahí, 2 Yagrumo", "2 Yagrumo | 92 laundry; hammer"},
		{"vuelvo pasao mañana a chequear eso, 302 Caoba Ct", "302 Caoba Ct | plan recheck 2"},
		{"ese regulador no sirve, se queda pegao. 118 en la pluma del frente. 640 Bambu Ln", "640 Bambu Ln | 118 front_bibb; prv: failed"},
		{"buenas estoy en el trescientos doce de maple street la llave de atras marca noventa y uno el calentador esta apagado y la llave de enfrente marca noventa", "312 Maple St | 90 front_bibb idle; 91 rear_bibb idle"},
		{"no tiene tanque de expansion y la valvula de alivio esta botando agua cuarenta y cinco birch court", "45 Birch Ct | expansion_tank: none; relief_discharge"},
		{"fijese que la señora dice que el chorro de la cocina sale bien poquito apenas cuarenta libras", "40 kitchen; low_flow"},
		{"instale un tanque de expansion de dos galones cargado a sesenta en el ocho diez de hickory lane", "810 Hickory Ln | expansion_tank: 2gal; installed_tank >60"},
		{"el calentador tiene doce años es electrico de cincuenta galones y nunca lo han lavado", "heater: 2014 50gal electric served 0"},
		{"la lavadora tiene sesenta y siete y la cocina sesenta y cinco no hay nada abierto diecinueve treinta de poplar", "1930 Poplar | 65 kitchen static; 67 laundry static"},
		{"Buen día, en 44 Guanabana Rd la presión tá en 95 en la pluma del patio, boiler prendío", "44 Guanabana Rd | 95 bibb firing"},
		{"El calentador tiene un salidero por la válvula de seguridad, 12 Hicaco Ct", "12 Hicaco Ct | relief_discharge"},
		{"no hay tanque de expansión pero sí hay check valve, 81 en el lavamanos", "81 bath; check_valve:; expansion_tank: none"},
		{"se fue el agua en toa la casa, 901 Tamarindo Ave", "901 Tamarindo Ave | no_water"},
		{"le puse la reguladora nueva a doña Iris, a 58 libras, 18 Roble Ct", "18 Roble Ct | replaced_prv >58"},
		{"bendito el agua sale amarilla por la ducha y 64 de presion", "64 bath; rusty_water"},
		{"eso no era, eran 74 libras en la cocina", "74 kitchen; ask correct"},
		{"vaya pues en la lavanderia tiene setenta y uno y en el chorro de enfrente setenta el calentador no esta calentando dos mil cien de spruce drive", "2100 Spruce Dr | 70 front_bibb idle; 71 laundry idle"},
		{"fijate que el tanquecito de expansion ya no sirve hay que cambiarlo ciento noventa cedar lane", "190 Cedar Ln | expansion_tank: failed; plan replace_tank"},
		{"no tiene reguladora la casa y marca ciento treinta en el chorro de atras mil doscientos doce de fir court", "1212 Fir Ct | 130 rear_bibb; prv: none"},
		{"el lunes que viene tengo que ir a cambiar la valvula reguladora a la setecientos uno de hazel", "701 Hazel | plan replace_prv 7"},
		{"la señora tiene ochenta años y dice que el agua no le llega con fuerza al baño", "low_flow"},
		{"apagado el calentador medi ochenta y dos en la lavadora y prendido me dio noventa y nueve", "82 laundry idle; 99 laundry firing"},
		{"serian como cincuenta y cinco libras en la ducha nada mas", "55 bath"},
		{"perdon me equivoque era ochenta y cinco no setenta y cinco", "85; ask correct"},
		{"repita la ultima lectura de mil doscientos doce fir court", "1212 Fir Ct | ask history"},
	})
}
