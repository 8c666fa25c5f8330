package intents

import "testing"

// besideKitchen puts the words of a state behind a pressure, before it, behind its house, and before
// another fact.
func besideKitchen(state string, axes ...[]string) []grid {
	phrases := product(axes...)
	return []grid{
		{phrases, []string{"cocina 64, {}", "{}, cocina 64"}, "64 kitchen " + state},
		{phrases, []string{"12 Elm St cocina 64 {}"}, "12 Elm St | 64 kitchen " + state},
		{phrases, []string{"64 en la cocina, {}. no hay tanque de expansion"}, "64 kitchen " + state + "; expansion_tank: none"},
	}
}

// Whether the heater fired, by its names, its states, their tense and order, and what a burner shows.
func TestGridOfSpanishHeaterStates(t *testing.T) {
	var grids []grid
	add := func(state string, axes ...[]string) { grids = append(grids, besideKitchen(state, axes...)...) }
	heaters := oneEach("el boiler|el calentador")
	add("idle", oneEach("el|"), oneEach("boiler|calentador|calenton"), oneEach("apagado|en reposo|frio|sin prender|estaba apagado|"+
		"no estaba prendido|parado|"+
		"no estaba calentando|no calentaba|descansando|no estaba jalando|apagado desde ayer|llevaba rato apagado"))
	add("idle", oneEach("con el|con su"), oneEach("boiler|calentador"), oneEach("apagado|frio|sin prender|en piloto|desconectado"))
	add("idle", oneEach("sin que estuviera prendido|sin que prendiera|sin que estuviera jalando|sin que calentara|antes de que prendiera|"+
		"mientras no estaba prendido"), heaters)
	add("idle", oneEach("apague|tenia apagado|estaba apagado|deje apagado|apagamos|habian apagado|desconecte"), heaters)
	add("idle", oneEach("quemador apagado|piloto apagado|solo el piloto|nomas el piloto prendido|solo con el piloto|resistencias apagadas|"+
		"breaker del boiler abajo|"+
		"gas del boiler cerrado|nada calentando|el boiler en vacaciones|boiler en piloto nomas|el quemador no estaba prendido|no habia lumbre"))
	add("firing", oneEach("el|"), oneEach("boiler|calentador|calenton"), oneEach("prendido|encendido|calentando|trabajando|jalando|quemando|"+
		"estaba prendido|recuperando|"+
		"estaba jalando|en marcha|con lumbre|andaba calentando|acababa de prender|apenas prendio|recien prendido|no estaba apagado"))
	add("firing", oneEach("con el"), oneEach("boiler|calentador"), oneEach("prendido|calentando|jalando|a todo|funcionando"))
	add("firing", oneEach("prendi|tenia prendido|estaba prendido|estaba calentando|se prendio|acababa de prender|mientras calentaba|"+
		"cuando prendio|no estaba apagado"), heaters)
	add("firing", oneEach("quemador prendido|flama prendida|lumbre prendida|resistencias prendidas|con la flama prendida|la flama estaba prendida"))
	readGrids(t, grids)
}

// Whether water ran, by who used it, what was open and how it is told; two pressures told apart by it; and
// what nobody looked at.
func TestGridOfSpanishFlow(t *testing.T) {
	var grids []grid
	add := func(state string, axes ...[]string) { grids = append(grids, besideKitchen(state, axes...)...) }
	add("static", oneEach("todo|con todo|estaba todo|tenian todo|deje todo"), oneEach("cerrado|apagado"))
	add("static", oneEach("sin|sin tener"), oneEach("nada abierto|nada corriendo|nada prendido|ninguna llave abierta|agua corriendo"))
	add("static", oneEach("nadie|no habia nadie|sin nadie"), oneEach("usando agua|usando el agua|gastando agua|bañandose|con el agua abierta"))
	add("static", oneEach("no habia nada|no hay nada|nada|no tenian nada|no estaba nada"), oneEach("abierto|corriendo|prendido|andando"))
	add("static", oneEach("todas las llaves|llaves|las llaves todas"), oneEach("cerradas|bien cerradas|estaban cerradas"))
	add("static", oneEach("nadie abrio nada|nadie uso agua|no corria agua|no corria nada|no se estaba usando agua|el agua quieta|estatica|"+
		"no habia llaves abiertas|"+
		"sin consumo|sin que corra nada|sin que nadie use agua|no abri nada|no abrieron nada|con las llaves cerradas|ni una llave abierta|"+
		"ninguna llave corriendo"))
	add("flowing", oneEach("con la|con|la|"), oneEach("regadera|ducha|tina|manguera|lavadora"), oneEach("abierta|corriendo|prendida"))
	add("flowing", oneEach("con la"), oneEach("regadera|ducha|tina|manguera|lavadora"), oneEach("andando|llenando|a todo|a todo lo que da"))
	add("flowing", oneEach("dos llaves abiertas|con dos llaves abiertas|alguien bañandose|alguien se estaba bañando|estaban regando|"+
		"mientras regaban|con el riego prendido|"+
		"corriendo agua|con flujo|dinamica|residual|estaba corriendo agua|usando agua|estaban usando agua|estaban lavando|mientras lavaban|"+
		"con la llave abierta|con todo abierto"))
	running := product(oneEach("mientras corria la|estaba corriendo la|abri la|abriendo la|prendiendo la|tenian corriendo la|"+
		"estaba abierta la"), oneEach("regadera|manguera"))
	grids = append(grids, grid{running, []string{"cocina 64, {}", "{}, cocina 64"}, "64 kitchen flowing"},
		grid{oneEach("64 cerrado, 50 abierto|64 con todo cerrado y 50 con la regadera abierta|64 sin nada abierto, con la regadera 50|" +
			"64 estatica, 50 dinamica|" +
			"con todo cerrado 64, abriendo la regadera 50|con todo cerrado 64 y con la regadera abierta baja a 50|con la regadera abierta 50, cerrada 64|" +
			"cerrado 64, abierto 50|marca 64 todo cerrado, abro la regadera y baja a 50|sin nadie usando agua 64; con la regadera 50|" +
			"con la lavadora andando 50, sin nada 64"),
			[]string{"12 Elm St cocina {}"}, "12 Elm St | 50 kitchen flowing; 64 kitchen static"},
		grid{oneEach("no me fije si el boiler estaba prendido|no se si habia agua corriendo|quien sabe si el boiler estaba prendido|" +
			"no revise si habia llaves abiertas|" +
			"no se si el calentador estaba apagado"), []string{"cocina 64, {}", "{}, cocina 64"}, "64 kitchen"})
	readGrids(t, grids)
}
