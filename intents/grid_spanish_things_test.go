package intents

import (
	"slices"
	"strings"
	"testing"
)

// How a thing is, whether the house has one, and how old it is, by its names, the words for it and their order.
func TestGridOfSpanishThings(t *testing.T) {
	var grids []grid
	add := func(want string, axes ...[]string) {
		phrases := product(axes...)
		grids = append(grids, grid{phrases, []string{"{}"}, want}, grid{phrases, []string{"cocina 64, {}", "{}, cocina 64"}, "64 kitchen; " + want},
			grid{phrases, []string{"12 Elm St {}"}, "12 Elm St | " + want})
	}
	prv, tank, heater := oneEach("la reguladora|la regu"), oneEach("el tanque de expansion|el tanque"), oneEach("el boiler|el calentador")
	add("prv: failed", prv, oneEach("no sirve|esta pegada|no jala|esta descompuesta|ya trono|no regula|se pego|esta trabada|ya no funciona|"+
		"no detiene|no esta regulando|ya no responde"))
	add("prv: failed", oneEach("no sirve|ya no sirve|no jala|esta pegada|ya no regula"), prv)
	add("prv: failed", oneEach("reguladora|regu"), oneEach("muerta|pegada|tronada|trabada|que no sirve|sin funcionar"))
	add("prv: suspect", prv, oneEach("ya esta cansada|esta gastada|anda fallando|falla a ratos|tiene sarro|ya anda mal|se ve mal|ya casi no sirve|"+
		"empieza a fallar|ya va de salida"))
	add("prv: good", prv, oneEach("esta bien|jala bien|esta en buen estado|trabaja bien|se ve bien|anda bien|quedo bien|todavia sirve|sigue buena"))
	add("expansion_tank: failed", tank, oneEach("no sirve|esta ponchado|no tiene aire|esta lleno de agua|sin aire|tiene la vejiga rota|se poncho|"+
		"no aguanta aire|perdio el aire|"+
		"no le quedaba aire|le salio agua por la valvula|trae agua adentro|se le acabo el aire|esta ahogado"))
	add("expansion_tank: good", tank, oneEach("esta bien|en buen estado|jala bien|si sirve|trae buen aire"))
	add("heater: failed", heater, oneEach("no sirve|ya no prende|no jala|se descompuso|ya no calienta|no quiere prender"))
	add("heater: suspect", heater, oneEach("esta oxidado|tiene mucho sarro|esta corroido|anda fallando|lleno de sarro"))
	for name, item := range map[string]string{
		"tanque de expansion": "expansion_tank", "valvula check": "check_valve", "suavizador": "softener", "bomba de recirculacion": "recirc", "reguladora": "prv",
	} {
		add(item+": none", oneEach("no hay|no tiene|sin|no trae|no lleva|no le pusieron|no existe|no encontre|no cuenta con|aqui no hay|"+
			"nunca le pusieron|nunca tuvo|no se le ve|carece de"), []string{name})
		add(item+": none", []string{name}, oneEach("no hay|no tiene|no trae|no existe|: no hay"))
	}
	add("check_valve: none; expansion_tank: none", oneEach("no hay tanque ni check|sin tanque de expansion ni check|"+
		"no trae check ni tanque de expansion|no tiene ni tanque de expansion ni check"))
	for name, item := range map[string]string{"el boiler": "heater", "el tanque de expansion": "expansion_tank", "la reguladora": "prv"} {
		add(item+": 2014", []string{name}, oneEach("es del 2014|año 2014|modelo 2014|tiene fecha de 2014|la etiqueta dice 2014|de 12 años|"+
			"tiene como 12 años|ya tiene 12 años|con 12 años de uso|es de hace 12 años"))
		add(item+": age?", oneEach("no se sabe de que año es|no se de que año es|quien sabe que edad tenga|nadie sabe que edad tiene|"+
			"ni idea de cuando es|el dueño no sabe de que año es"), []string{name})
		add(item+": age?", []string{name}, oneEach("no tiene fecha|no trae fecha|sin fecha|no se sabe la edad|no se le ve la fecha|"+
			"quien sabe de cuando es|la etiqueta no se lee"))
	}
	add("heater: 40gal gas", oneEach("boiler de gas de 40 galones|boiler de 40 galones de gas|el boiler es de gas de 40|boiler 40 galones gas|"+
		"tiene boiler de gas, 40 galones"))
	add("heater: served 0", oneEach("el boiler|al boiler"), oneEach("nunca lo han lavado|nunca le han dado servicio|jamas lo han drenado|"+
		"no le han dado servicio nunca|jamas le han sacado el sarro"))
	add("heater: served 2024", oneEach("el boiler|al boiler"), oneEach("lo lavaron en 2024|le dieron servicio en 2024|ultimo servicio 2024|"+
		"lo purgaron hace 2 años"))
	grids = append(grids, grid{product(oneEach("el manometro|mi manometro"), oneEach("esta fallando|no es confiable|no me da confianza|"+
		"esta chueco|marca raro|anda loco|no le tengo confianza")),
		[]string{"cocina 64, {}", "{}, cocina 64"}, "64 kitchen; gauge: suspect"})
	for k := range grids {
		grids[k].want = sortedBrief(grids[k].want)
	}
	readGrids(t, grids)
}

// sortedBrief sorts the statements of a brief.
func sortedBrief(want string) string {
	site, told, named := strings.Cut(want, " | ")
	if !named {
		site, told = "", want
	}
	facts := strings.Split(told, "; ")
	slices.Sort(facts)
	if named {
		site += " | "
	}
	return site + strings.Join(facts, "; ")
}
