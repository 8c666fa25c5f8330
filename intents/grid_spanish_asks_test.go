package intents

import "testing"

// What is asked of one house, by who is asked, the verb and what is wanted; and of the bot, in its words.
func TestGridOfSpanishQuestions(t *testing.T) {
	house := []string{"{} 12 Elm St", "oye {} 12 Elm St?", "{} 12 elm st porfa"}
	bare := []string{"{}", "oye bot {}", "{}?"}
	readGrids(t, []grid{
		{product(oneEach("pasame|dame|quiero ver|necesito|me pasas|me puedes pasar|puedes darme|busca|ocupo|a ver"),
			oneEach("el historial de|los datos de|las lecturas de|lo ultimo de|lo que hay de|las visitas de|lo que tenemos de|"+
				"los reportes de")), house, "12 Elm St | ask history"},
		{oneEach("que hay de|que tenemos de|hay algo de|ya hemos ido a|cuando fuimos a|que le hicimos a|que se le hizo a|quien fue a|" +
			"cuanto marcaba la ultima vez|" +
			"que presion traia|que lecturas hay de|cuantas veces hemos ido a|que paso en|que encontramos en|en cuanto la dejamos en|" +
			"a cuanto dejamos la reguladora en|" +
			"que edad tiene el boiler de|cuantos años tiene el boiler de|cuando se cambio la reguladora en|" +
			"quien le cambio la reguladora a"), house, "12 Elm St | ask history"},
		{product(oneEach("mandame|enseñame|hazme|me pasas|necesito"), oneEach("la grafica de|la tendencia de|la curva de|"+
			"el historico de presion de")), house, "12 Elm St | ask trend"},
		{oneEach("como ha cambiado la presion en|como va la presion en|ha subido la presion en|como ha estado la presion en|" +
			"se ha mantenido la presion en"), house, "12 Elm St | ask trend"},
		{product(oneEach("mandame|hazme|imprimeme|necesito|me haces|mandale al cliente|mandale a la señora"),
			oneEach("la hoja del cliente de|el reporte para el cliente de|el pdf de|la hoja para la señora de|el comprobante de")), house, "12 Elm St |" +
			" ask report"},
		{oneEach("mandale su hoja al dueño de|mandale al cliente su reporte de|algo para dejarle al cliente de|la señora quiere un papel de|" +
			"reporte por escrito para|hoja del cliente"),
			house, "12 Elm St | ask report"},
		{product(oneEach("que|cuales"), oneEach("pendientes tengo|pendientes hay|seguimientos hay|casas tocan|revisiones tengo|"+
			"casas me faltan"), oneEach("|hoy|esta semana|mañana")), bare, "ask due"},
		{oneEach("que me toca hoy|que sigue pendiente|que tengo para mañana|hay algo vencido|hay alguna casa atrasada|" +
			"que casas hay que volver a medir|a quien le debemos visita|" +
			"a quien hay que hablarle esta semana|lista de pendientes|dame los pendientes|pasame lo de mañana|tengo algo para hoy|" +
			"cuales casas tengo el miercoles|que visitas quedaron pendientes"),
			bare, "ask due"},
		{product(oneEach("resumen|dame el resumen|quiero el resumen|pasame el resumen"), oneEach("de la semana|del mes|del equipo|de los muchachos|"+
			"de hoy")), bare, "ask summary"},
		{oneEach("como nos fue esta semana|como les fue a los muchachos|cuantas casas hicimos|que hizo el equipo esta semana|numeros del mes|" +
			"como cerro la semana|reporte semanal"),
			bare, "ask summary"},
		{oneEach("que sigue|que le checo ahora|que mas le checo|que hago ahora|que podra ser|que crees que sea|por donde empiezo|que me recomiendas|" +
			"sera la reguladora|" +
			"crees que sea la reguladora|porque sube tanto|que le pasa|cual es el problema|como se si es el tanque|alguna idea|" +
			"que hariamos"), []string{"{}", "{}?"}, "ask next_check"},
		{oneEach("como reporto una lectura|como te uso|que puedes hacer|como borro un reporte|ayuda|que comandos hay|dame un ejemplo|" +
			"como le hago para borrar|no se como usarte|que haces"),
			[]string{"{}", "oye {}?"}, "ask help"},
	})
}

// Orders about what was sent, and about a follow-up that is done or put off.
func TestGridOfSpanishOrders(t *testing.T) {
	grids := []grid{
		{product(oneEach("borra|borrame|quita|elimina|cancela|puedes borrar|hay que borrar"),
			oneEach("eso|lo ultimo|mi ultimo reporte|la ultima lectura|lo que mande|lo que acabo de mandar|"+
				"ese reporte")), []string{"{}", "{} porfa", "{}, era otra casa"}, "ask undo"},
		{oneEach("ese reporte no va|esa lectura no va|era de otra casa|me equivoque de casa|no era esa casa|no lo guardes|olvida lo que mande|" +
			"era prueba|eso no era|deshaz lo ultimo"),
			[]string{"{}", "perdon {}"}, "ask undo"},
		{product(oneEach("ya quedo|ya esta|marca como hecho|ya se hizo|ya cumpli|dalo por hecho|palomea|quita de la lista|ya se atendio"),
			oneEach("el seguimiento de|el pendiente de|la revision de|lo de|la visita de")), []string{"{} 12 Elm St"}, "12 Elm St | ask done"},
	}
	for when, days := range map[string]string{
		"para el viernes": "4", "una semana": "7", "para la otra semana": "7", "hasta el lunes": "7", "un mes": "30", "para mañana": "1",
	} {
		grids = append(grids,
			grid{product(oneEach("pasa|mueve|recorre|aplaza|pospon|dejame"), oneEach("12 Elm St|el de 12 Elm St|el seguimiento de 12 Elm St|"+
				"lo de 12 Elm St"), []string{when}),
				[]string{"{}"}, "12 Elm St | ask snooze " + days},
			grid{product(oneEach("posponlo|dejalo|muevelo|recorrelo|pasalo|aplazalo|dejamelo|"+
				"mejor pasalo"), []string{when}), []string{"{}"}, "ask snooze " + days})
	}
	readGrids(t, grids)
}
