package intents

import "testing"

// What is wrong, by what has it, the words for it and their order; and what is not wrong.
func TestGridOfSpanishSymptoms(t *testing.T) {
	var grids []grid
	add := func(want string, axes ...[]string) {
		phrases := product(axes...)
		grids = append(grids, grid{phrases, []string{"{}"}, want}, grid{phrases, []string{"cocina 64, {}", "{}, cocina 64"}, "64 kitchen; " + want},
			grid{phrases, []string{"12 Elm St {}"}, "12 Elm St | " + want})
	}
	relief := oneEach("la valvula de alivio|la de alivio")
	add("relief_discharge", relief, oneEach("gotea|tira agua|esta tirando|se abre|se dispara|suelta agua|no deja de tirar|tiro agua anoche|sigue goteando|bota agua"))
	add("relief_discharge", oneEach("gotea|tira agua|esta goteando|se dispara"), relief[:1])
	add("no relief_discharge", relief, oneEach("no gotea|no esta tirando|ya no tira|nunca ha tirado|esta seca|no ha tirado agua|dejo de tirar|no suelta nada"))
	add("relief_blocked", oneEach("le pusieron tapon a|taparon|tienen tapada|le taponearon|cancelaron|alguien tapo|le soldaron|le pusieron una llave a"), relief)
	add("relief_blocked", relief, oneEach("esta tapada|tiene tapon|la tienen tapada|tiene una llave cerrada|esta taponeada|la taponearon|la cancelaron"))
	add("gas_smell", oneEach("huele a gas|se huele gas|hay olor a gas|apesta a gas|huele gas|olor a gas|fuga de gas|hay fuga de gas"), oneEach("|junto al calentador|en la cochera"))
	add("no gas_smell", oneEach("no huele a gas|no hay olor a gas|ya no huele a gas|no hay fuga de gas|sin olor a gas"))
	add("dark_water", oneEach("el agua|el agua de la tina"), oneEach("sale negra|sale gris|sale prieta|viene negra|sale con puntitos negros|sale con pedacitos de hule"))
	add("rusty_water", oneEach("el agua|el agua de la tina"), oneEach("sale amarilla|sale cafe|sale oxidada|viene amarilla|sale anaranjada|sale como te|sale rojiza"))
	add("no dark_water", oneEach("el agua ya no sale negra|no sale negra el agua|ya no sale agua negra|sin agua negra"))
	add("hammer", oneEach("truenan|golpean|brincan|dan golpes"), oneEach("los tubos|las tuberias"))
	add("hammer", oneEach("los tubos|las tuberias"), oneEach("truenan|pegan al cerrar|dan golpes|truenan al cerrar la lavadora|golpetean"))
	add("no hammer", oneEach("ya no truenan los tubos|no hay golpe de ariete|no se oyen golpes|los tubos ya no truenan|la tuberia no golpea"))
	add("noise", oneEach("la reguladora|el boiler"), oneEach("zumba|chilla|silba|hace ruido|vibra|esta zumbando"))
	add("swings", oneEach("la presion"), oneEach("sube y baja|no se mantiene|anda subiendo y bajando|varia mucho|no es estable"))
	add("leak", oneEach("la taza|el inodoro|el excusado|la poceta|el wc"), oneEach("no deja de correr|se queda corriendo|corre todo el dia|se sigue llenando|se esta tirando"))
	add("no leak", oneEach("no hay fugas|sin fugas|no tiene fugas|no encontre fugas|no gotea nada|ya no hay fuga|ninguna fuga|todo seco"))
	for k := range grids {
		grids[k].want = sortedBrief(grids[k].want)
	}
	drips := product(oneEach("gotea|tiene fuga|esta goteando|se esta tirando"), oneEach("el lavabo|la regadera|la manguera de la lavadora|la taza"))
	grids = append(grids, grid{drips, []string{"{}"}, "leak"}, grid{drips, []string{"{}, medidor 88"}, "88 street; leak"},
		grid{product(oneEach("poca presion|sale poca agua|llega poca agua|sale un chorrito|casi no sale agua|muy baja presion"), oneEach("|arriba|en la regadera")),
			[]string{"{}", "la señora dice que {}"}, "low_flow"},
		grid{product(oneEach("la aguja|la presion"), oneEach("va subiendo sola|sube despacito sin abrir nada|sube poco a poco|no para de subir|sube lentamente")), []string{"{}"}, "creep"},
		grid{product(oneEach("no hay agua|no sale agua|no llega agua|se quedaron sin agua|no sale ni gota"), oneEach("|en toda la casa|desde ayer")),
			[]string{"{}"}, "no_water"})
	readGrids(t, grids)
}
