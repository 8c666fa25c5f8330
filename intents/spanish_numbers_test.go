package intents

import "testing"

// Ages, sums, hours, telephones, ratings and other houses' numbers are no pressures
// of the house.
func TestSpanishOtherNumbers(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"la señora de 84 años dice que la regadera pega, 62 en el lavabo, 19 Tern Ct", "19 Tern Ct | 62 bath"},
		{"cobré 95 dólares por la visita a 620 Sage Hen Rd, presión 71 en la tarja", "620 Sage Hen Rd | 71 kitchen"},
		{"llego en 45 minutos a 620 Sage Hen Rd", "620 Sage Hen Rd | ask none"},
		{"son las 10:45 y apenas voy entrando a 31 Kestrel Ct, atrás 88", "31 Kestrel Ct | 88 rear_bibb"},
		{"el agua del boiler sale a 118 grados, presión 64 en la tina", "64 bath"},
		{"hoy estamos a 104 grados y la llave de afuera trae 79 libras, 4 Mesa Grande Rd", "4 Mesa Grande Rd | 79 bibb"},
		{"tel 214 555 0162, casa 1907 Goldenrod Way, lavadora 77", "1907 Goldenrod Way | 77 laundry"},
		{"la ciudad dice que manda 85 pero yo mido 112 en el medidor. 66 Harbor Vw", "66 Harbor Vw | 112 street"},
		{"el vecino tiene 60 y aquí 98 enfrente", "98 front_bibb"},
		{"la placa de la reguladora dice max 300, está sana", "prv: good"},
		{"el manómetro es de 0 a 200 y marca 73 en la cocina", "73 kitchen"},
		{"la válvula de alivio es de 150 psi y gotea", "relief_discharge"},
		{"el reporte viejo decía 95, hoy 68 en la misma llave de atrás", "68 rear_bibb"},
		{"quedamos en 285 pesos, la reguladora la cambio el martes en 8 Elm Fork Ln", "8 Elm Fork Ln | plan replace_prv 1"},
		{"faltan 3 llaves de 1/2 y 2 codos de 3/4", "ask none"},
		{"traigan 40 pies de pex y 2 tanques de 2 galones", "ask none"},
		{"la llave del lockbox es 4471, 212 Fescue Dr, cocina 58", "212 Fescue Dr | 58 kitchen"},
		{"la tubería aguantó 100 libras de aire en la prueba", "ask none"},
		{"perdió 20 libras en la noche", "ask none"},
		{"debería andar en 60 y trae 84 en la lavadora", "84 laundry"},
		{"el ticket 5580 es de 2301 Basalt Ct y el 5581 es de 14 Agate Ln", "unclear"},
		{"mi radio trae 92 de volumen jaja", "ask none"},
		{"el marcador va 78 a 75", "ask none"},
		{"tengo 62 años y me duele la espalda", "ask none"},
		{"ando en la i-35 con un accidente, llego en 60 min", "ask none"},
	})
}

// Words spelt by their sound and numbers half in words.
func TestSpanishSlips(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"setentaicuatro en la kosina y setentaicinco en la labadora", "74 kitchen; 75 laundry"},
		{"enfrente noventa y 2 atras ochenta i ocho, 417 elmwood", "417 Elmwood | 88 rear_bibb; 92 front_bibb"},
		{"sincuenta y nuebe en el fregadero", "59 kitchen"},
		{"ciento dies en el medidor", "110 street"},
		{"boyler apagdo, atras 73", "73 rear_bibb idle"},
		{"reguldora bieja y oxidada del 2003", "prv: 2003 suspect"},
		{"tanqe de expancion sin aire", "expansion_tank: failed"},
		{"la balbula de alibio esta tirando agua", "relief_discharge"},
		{"medi 66 en el labamanos con la regadera habierta", "66 bath flowing"},
		{"presion estatica sesenta y dos libras en el bano de la recamara", "62 bath static"},
		{"fijense ke el boiler ba prendido y marca ochenta i tres en la labadora", "83 laundry firing"},
	})
}
