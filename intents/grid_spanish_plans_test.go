package intents

import "testing"

// spanishFrames puts each phrase alone, beside a reading before and behind it, and under a house.
func spanishFrames(want string, phrases []string) []grid {
	grids := []grid{
		{phrases, []string{"cocina 64, {}", "{}. cocina 64"}, "64 kitchen; " + want},
		{phrases, []string{"12 Elm St: {}"}, "12 Elm St | " + want},
	}
	return append(grids, grid{phrases, []string{"{}"}, want})
}

// What is to be done, by who has to, the job in each form of its verb, the day and their order; and what
// is not to be done.
func TestGridOfSpanishPlans(t *testing.T) {
	var grids []grid
	add := func(want string, axes ...[]string) { grids = append(grids, spanishFrames(want, product(axes...))...) }
	for _, job := range []struct{ plan, infinitive, present, asked string }{
		{"replace_prv", "cambiar la reguladora|cambiarle la regu|poner reguladora nueva",
			"cambio la reguladora|se le cambia la reguladora|cambiaremos la reguladora|le ponemos otra reguladora|se pone reguladora nueva",
			"le cambiemos la reguladora|le cambien la regu"},
		{"replace_tank", "cambiar el tanque de expansion|cambiarle el tanque",
			"cambiamos el tanque|se cambia el tanque de expansion|cambiaremos el tanque|le ponemos otro tanque", "le cambiemos el tanque|" +
				"cambien el tanque de expansion"},
		{"install_tank", "poner un tanque de expansion|ponerle tanque",
			"le pongo tanque de expansion|se instala el tanque de expansion|se le pone tanque de expansion", "le pongamos tanque de expansion|" +
				"le instalen un tanque de expansion"},
		{"set_prv", "moverle a la reguladora|bajarle a la regu", "ajusto la reguladora|se ajusta la reguladora|le bajo a la reguladora",
			"le bajemos a la reguladora|ajustemos la reguladora"},
		{"recheck", "volver a medir|revisar de nuevo", "checo otra vez|volvemos a checar|se vuelve a medir|le vuelvo a tomar la presion",
			"volvamos a medir|chequemos otra vez|revisen otra vez"},
	} {
		plan := "plan " + job.plan
		add(plan, oneEach("hay que|tenemos que|tengo que|falta|me toca|vamos a|quede de|se necesita|se va a|pendiente de"), oneEach(job.infinitive))
		add(plan+" 1", oneEach("mañana|el martes a las 9"), oneEach("hay que|voy a|regreso a"), oneEach(job.infinitive))
		add(plan+" 4", oneEach("el viernes|este viernes"), oneEach(job.present))
		add(plan+" 4", oneEach(job.present), oneEach("el viernes|el proximo viernes"))
		add(plan+" 14", oneEach("agendame|recuerdame|anotame"), oneEach(job.infinitive), oneEach("en 2 semanas"))
		add(plan, oneEach("el cliente quiere que|la señora pide que|dijo el jefe que|dijo que si que"), oneEach(job.asked))
		put := product(oneEach("pon|agenda|apunta|anota|ponme"), oneEach("12 Elm St para el viernes,|12 Elm St el viernes,"), oneEach(job.infinitive))
		grids = append(grids, grid{put, []string{"{}"}, "12 Elm St | " + plan + " 4"}, grid{put, []string{"cocina 64. {}"}, "12 Elm St |" +
			" 64 kitchen; " + plan + " 4"})
		if job.plan == "recheck" {
			continue
		}
		none := "64 kitchen"
		if job.plan == "replace_tank" {
			none += "; expansion_tank:"
		}
		grids = append(grids, grid{product(oneEach("no se pudo|no pude|no alcance a|no nos dejo|no hay necesidad de|no hace falta|no hay que|"+
			"ya no hay que"), oneEach(job.infinitive)),
			[]string{"cocina 64, {}"}, none})
	}
	grids = append(grids, grid{product(oneEach("fui el lunes y no habia nadie,|estuvimos el viernes,|vine el miercoles y no me abrieron,"),
		oneEach("mañana vuelvo a medir|paso mañana a medir")), []string{"{}"}, "plan recheck 1"})
	readGrids(t, grids)
}
