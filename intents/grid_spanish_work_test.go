package intents

import (
	"strings"
	"testing"
)

// What was done, by who did it, the form of its verb, the part, and what it was set to.
func TestGridOfSpanishWork(t *testing.T) {
	var grids []grid
	add := func(want string, axes ...[]string) { grids = append(grids, spanishFrames(want, product(axes...))...) }
	for _, part := range []struct{ work, names, kind, end string }{
		{"replaced_prv", "la reguladora|el prv", "reguladora", "a"},
		{"replaced_tank", "el tanque|el tanque de expansion", "tanque de expansion", "o"},
		{"replaced_heater", "el boiler|el calenton", "boiler", "o"},
	} {
		names := oneEach(part.names)
		add(part.work, oneEach("cambie|le cambiamos|se cambio|se le cambio|reemplace|acabo de cambiar|tuve que cambiar|terminamos de cambiar|"+
			"hubo que cambiarle|"+
			"logramos cambiar|alcance a cambiar|mi compañero cambio|mi ayudante y yo cambiamos"), names)
		add(part.work, names, oneEach(strings.ReplaceAll("quedo cambiad%|fue cambiad%|se cambio|l% cambie|cambiad%|ya esta cambiad%", "%", part.end)))
		add(part.work, oneEach("puse|le pusimos|se puso|instale|tuve que poner"), oneEach("otr"+part.end+" "+part.kind))
		add(part.work, oneEach("cambio de|hice cambio de|se hizo el cambio de"), []string{part.kind}, oneEach("hecho|listo|terminado"))
	}
	prv, tank := oneEach("la reguladora|la regu"), oneEach("el tanque|el tanque de expansion")
	add("set_prv", oneEach("ajuste|le baje a|le subi a|movi|calibre|le di vuelta a|se le bajo a|tuve que ajustar"), prv)
	add("set_prv >60", oneEach("ajuste|baje|subi|deje|bajamos|se ajusto|acabo de ajustar"), prv, oneEach("a 60|en 60 psi|a 60 libras"))
	add("set_prv >60", oneEach("le baje|se le bajo|le movi"), prv[:1], oneEach("a 60|y la deje en 60|y quedo en 60|para dejarla en 60"))
	add("set_prv >60 <90", oneEach("ajuste|baje|se bajo"), prv, oneEach("de 90 a 60|que estaba en 90 a 60|que tenia 90 a 60"))
	add("set_prv >60 <90", oneEach("la reguladora estaba en 90|la reguladora la tenian en 90|la regu andaba puesta en 90|la reguladora venia en 90"),
		oneEach("la baje a 60|se la baje a 60|y la deje en 60|la puse en 60"))
	add("replaced_prv >60", oneEach("cambie la reguladora|le puse reguladora nueva|reguladora cambiada"), oneEach("y la deje en 60|y quedo en 60|"+
		"a 60|, la deje en 60"))
	add("rebuilt_prv", oneEach("le cambie el kit a|reconstrui|le cambie el diafragma a|le limpie la malla a|repare"), prv)
	add("charged_tank >60", oneEach("infle|cargue|se inflo|le puse aire a|le eche aire a|tuve que inflar"), tank, oneEach("a 60|hasta 60"))
	add("charged_tank >60 <30", oneEach("infle|cargue|le eche aire a"), tank, oneEach("de 30 a 60|de 30 hasta 60"))
	add("charged_tank >60 <30", oneEach("el tanque tenia 30|el tanque estaba en 30|encontre el tanque con 30"),
		oneEach("lo subi a 60|y lo infle a 60|lo deje en 60|le eche hasta 60"))
	add("flushed_heater", oneEach("lave|drene|le hice flush a|le saque el sarro a|se lavo|acabo de drenar"), oneEach("el boiler|el calentador"))
	add("replaced_drain_valve", oneEach("cambie|se cambio|tuve que cambiar"), oneEach("la llave de drenado|la valvula de drenar|"+
		"la llave de drenaje del calentador"))
	add("repaired_leak", oneEach("repare|se reparo|quite|tape|acabo de arreglar|ya quedo"), oneEach("la fuga|la fuga del lavabo|la gotera"))
	add("shut_off", oneEach("cerre|le cerre|se cerro|tuve que cerrar"), oneEach("el agua|la llave principal|la llave de paso|el paso del agua"))
	add("installed_tank", oneEach("instale|le puse|se instalo|agregue|colocamos|tuve que poner"), oneEach("un tanque de expansion|"+
		"tanque de expansion"))
	readGrids(t, grids)
}

// The same work not done, or done by others.
func TestGridOfSpanishWorkThatWasNotOurs(t *testing.T) {
	var grids []grid
	for part, want := range map[string]string{"la reguladora": "", "el prv": "", "el tanque de expansion": "; expansion_tank:", "el boiler": ""} {
		grids = append(grids, grid{product(oneEach("no cambie|no se cambio|todavia no cambio|no le cambie|no pude cambiar|el plomero anterior cambio|"+
			"otra compañia cambio|"+
			"el dueño cambio|los de antes cambiaron|su esposo cambio|otro plomero les cambio|la otra compañia le habia cambiado"), []string{part}),
			[]string{"cocina 64, {}", "{}. cocina 64"}, "64 kitchen" + want})
	}
	readGrids(t, grids)
}
