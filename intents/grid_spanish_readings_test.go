package intents

import "testing"

// A pressure at each test point, by its names, the words that lead to the number and their order; beside a
// second tap; and beside a tap that nobody measured.
func TestGridOfSpanishReadings(t *testing.T) {
	var grids []grid
	for point, names := range map[string]string{
		"rear_bibb": "la de atras|la llave de atras|la pluma de atras", "front_bibb": "la de enfrente|la llave del frente|la pluma del frente",
		"bibb": "la de afuera|la llave de afuera|la llave de la manguera|la pluma del patio", "side_bibb": "la del costado|la llave de un lado",
		"laundry": "la lavadora|la llave de la lavadora|la lavanderia", "kitchen": "la cocina|el fregadero|la tarja",
		"bath": "el baño|la regadera|el lavabo|la ducha|el baño de visitas", "heater_drain": "la llave de drenado del boiler|" +
			"la llave de drenar del calentador",
		"street": "el medidor|el contador", "after_prv": "la salida de la reguladora", "irrigation": "el riego",
	} {
		taps := oneEach(names)
		grids = append(grids, spanishReadings("64 "+point, product(oneEach("64 en|marca 64 en|me dio 64 en|medi 64 en|tengo 64 libras en|"+
			"hay 64 psi en|me marco 64 libras en"), taps))...)
		grids = append(grids, spanishReadings("64 "+point, product(taps, oneEach("64|marca 64|me dio 64|esta en 64|tiene 64 libras|anda en 64|"+
			"da 64 psi|a 64|tenia 64|: 64")))...)
		if point != "rear_bibb" {
			want := "64 " + point + "; 72 rear_bibb"
			grids = append(grids, grid{product(taps, oneEach("64 y atras 72|64, la de atras 72|en 64 y la de atras en 72|"+
				"marca 64 y la llave de atras 72")), []string{"{}"}, want})
		}
	}
	unmeasured := oneEach("no pude medir la cocina|no se pudo medir la cocina|no medi la cocina|la cocina no la medi|no alcance a medir el baño")
	grids = append(grids,
		grid{unmeasured, []string{"{}, la de afuera 81", "{}. la de afuera 81", "{} pero en la de afuera 81"}, "81 bibb"},
		grid{oneEach("105 en la calle y 60 en la cocina|105 libras en la calle pero 60 en la cocina|la calle trae 105 y la cocina 60|la cocina trae 60 y la calle 105"),
			[]string{"{}"}, "105 street; 60 kitchen"},
		grid{unmeasured, []string{"{}, la de atras 81", "{} pero atras trae 81"}, "81 rear_bibb"},
		grid{product(oneEach("no pude medir|no medi|falto medir|no hay donde medir en"), oneEach("la de atras|la lavadora|"+
			"el baño")), []string{"{}, cocina 64", "cocina 64, {}"}, "64 kitchen"},
		grid{oneEach("como 64|como unas 64 libras|casi 64|mas o menos 64|cerca de 64"), []string{"cocina {}", "{} en la cocina"}, "64 kitchen"},
		grid{oneEach("llego a 132 anoche, ahorita 64|pego en 132 en la madrugada, ahorita 64|64, la aguja roja en 132|64, maximo 132|64, pico de 132|" +
			"132 maximo, 64 ahorita|" +
			"64, la aguja se quedo en 132|64, lo mas alto fue 132|64, en la noche pego hasta 132|64, la roja marca 132|64 con aguja roja en 132"),
			[]string{"cocina {}"}, "132 kitchen peak; 64 kitchen"},
		grid{oneEach("95 antes, cambie la reguladora, 60 despues|al llegar 95, cambie la reguladora, al irme 60|" +
			"estaba en 95, cambie la reguladora y ahora 60|" +
			"tenia 95, le cambie la reguladora y ya trae 60|llegue y tenia 95, cambie la regu, me fui con 60|venia en 95, cambie la reguladora, ahora 60|" +
			"andaba en 95, cambie la reguladora, ya anda en 60"), []string{"cocina {}"}, "60 kitchen after; 95 kitchen before; replaced_prv"})
	readGrids(t, grids)
}

// spanishReadings puts each pressure alone, behind its house, and before another fact.
func spanishReadings(want string, phrases []string) []grid {
	return []grid{
		{phrases, []string{"{}"}, want}, {phrases, []string{"12 Elm St {}"}, "12 Elm St | " + want},
		{phrases, []string{"{}, no hay tanque de expansion"}, want + "; expansion_tank: none"},
	}
}
