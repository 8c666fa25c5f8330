package intents

import (
	"fmt"
	"sort"
	"strings"
	"testing"

	"lazyhand/assess"
)

// inBrief writes a frame on one line, so that a table of messages stays readable:
// "77 Elm | 77 rear_bibb idle; set_prv >60; plan recheck 7".
func inBrief(f Frame) string {
	var all []string
	num := func(v float64) string { return fmt.Sprintf("%g", v) }
	for _, s := range f.Statements {
		var w []string
		add := func(format string, a ...any) { w = append(w, fmt.Sprintf(format, a...)) }
		switch x := s.(type) {
		case assess.Reading:
			add("%s", num(x.PSI))
			for _, v := range []string{string(x.Point), string(x.Heater), string(x.Flow), string(x.When)} {
				if v != "" {
					add("%s", v)
				}
			}
			if x.Peak {
				add("peak")
			}
		case assess.Symptom:
			if x.Absent {
				add("no")
			}
			add("%s", x.Symptom)
		case assess.Equipment:
			add("%s:", x.Item)
			if x.Present != nil && !*x.Present {
				add("none")
			}
			if x.InstalledYear != nil {
				add("%d", *x.InstalledYear)
			}
			if x.AgeUnknown {
				add("age?")
			}
			if x.SizeGal != nil {
				add("%sgal", num(*x.SizeGal))
			}
			if x.Fuel != "" {
				add("%s", x.Fuel)
			}
			if x.SettingPSI != nil {
				add("at %s", num(*x.SettingPSI))
			}
			if x.SetpointF != nil {
				add("%sF", num(float64(*x.SetpointF)))
			}
			if x.Material != "" {
				add("%s", x.Material)
			}
			if x.Condition != "" {
				add("%s", x.Condition)
			}
			if x.MaintainedYear != nil {
				add("served %d", *x.MaintainedYear)
			}
		case assess.Work:
			add("%s", x.Action)
			if x.ToPSI != nil {
				add(">%s", num(*x.ToPSI))
			}
			if x.FromPSI != nil {
				add("<%s", num(*x.FromPSI))
			}
		case assess.Plan:
			add("plan %s", x.Action)
			if x.InDays != nil {
				add("%d", *x.InDays)
			}
		case Ask:
			add("ask %s", x.About)
			if x.InDays != nil {
				add("%d", *x.InDays)
			}
			if x.Value != nil {
				add("%s %s %s", num(*x.Value), x.Unit, x.To)
			}
			if x.SizeGal != nil {
				add("%sgal", num(*x.SizeGal))
			}
			if x.PSI != nil {
				add("%spsi", num(*x.PSI))
			}
		}
		all = append(all, strings.Join(w, " "))
	}
	sort.Strings(all)
	if len(f.Unclear) > 0 {
		all = append(all, "unclear")
	}
	out := strings.Join(all, "; ")
	if f.Site != "" {
		out = f.Site + " | " + out
	}
	return out
}

// readSpanish checks a table of messages against what they say in brief.
func readSpanish(t *testing.T, table []struct{ text, want string }) {
	t.Helper()
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range table {
		if got := inBrief(p.Parse(c.text, Context{})); got != c.want {
			t.Errorf("%q\n got %s\nwant %s", c.text, got, c.want)
		}
	}
}

// What was done, in every person and tense that crews use.
func TestSpanishWork(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"cambié la reguladora, atrás 60", "60 rear_bibb; replaced_prv"},
		{"se cambió la reguladora y se dejó en 60", "replaced_prv >60"},
		{"le cambiamos la reguladora a la señora, quedó en 58", "replaced_prv >58"},
		{"hemos cambiado la reguladora", "replaced_prv"},
		{"ya cambiamos la valvula reguladora, la dejamos en 62", "replaced_prv >62"},
		{"reguladora cambiada, quedó en 60", "replaced_prv >60"},
		{"puse reguladora nueva a 60", "replaced_prv >60"},
		{"le puse una reguladora nueva y la dejé en 55", "replaced_prv >55"},
		{"se puso reguladora nueva, quedo en 60 libras", "replaced_prv >60"},
		{"pusimos una reguladora nueva ajustada a 60", "replaced_prv >60"},
		{"no tenía reguladora, le puse una y la dejé en 60", "installed_prv >60"},
		{"instalé reguladora porque no había, quedó a 62", "installed_prv >62"},
		{"bajé la reguladora de 90 a 60", "set_prv >60 <90"},
		{"le bajé a la reguladora a 60", "set_prv >60"},
		{"le bajamos a la reguladora, de 85 a 62", "set_prv >62 <85"},
		{"le subí a la reguladora hasta 55", "set_prv >55"},
		{"ajusté la reguladora a 58", "set_prv >58"},
		{"se ajustó la reguladora a 58 psi", "set_prv >58"},
		{"la reguladora la ajustamos a 58", "set_prv >58"},
		{"la reguladora la dejé en 58", "set_prv >58"},
		{"dejé la reguladora en 58", "set_prv >58"},
		{"regulé la reguladora a 60", "set_prv >60"},
		{"moví la reguladora a 60", "set_prv >60"},
		{"le moví al tornillo de la reguladora hasta 60", "set_prv >60"},
		{"reajusté la reguladora a 60, estaba en 85", "set_prv >60 <85"},
		{"setie la reguladora a 60", "set_prv >60"},
		{"le di media vuelta a la reguladora", "set_prv"},
		{"le apreté a la reguladora a 60", "set_prv >60"},
		{"le aflojé a la reguladora, quedó en 55", "set_prv >55"},
		{"limpié el filtro de la reguladora", "rebuilt_prv"},
		{"le puse kit a la reguladora", "rebuilt_prv"},
		{"reconstruimos la reguladora y la dejamos en 60", "rebuilt_prv >60"},
		{"instalé tanque de expansión cargado a 60", "installed_tank >60"},
		{"le puse tanque de expansión de 2 galones a 60 libras", "expansion_tank: 2gal; installed_tank >60"},
		{"pusimos el tanque de expansion, cargado a 58", "installed_tank >58"},
		{"cambié el tanque de expansión, lo cargué a 60", "replaced_tank >60"},
		{"se cambió el vaso de expansión", "replaced_tank"},
		{"le eché aire al tanque, tenía 30, lo dejé en 60", "charged_tank >60 <30"},
		{"le metí aire al tanque hasta 60", "charged_tank >60"},
		{"inflé el tanque de expansión a 60, traía 20", "charged_tank >60 <20"},
		{"le puse aire al expansion tank, quedó en 58, tenía 20", "charged_tank >58 <20"},
		{"cargamos el tanque a 60 psi", "charged_tank >60"},
		{"lavé el boiler", "flushed_heater"},
		{"le hice el flush al calentador", "flushed_heater"},
		{"se drenó el calentador", "flushed_heater"},
		{"le di una lavada al boiler", "flushed_heater"},
		{"purgué el boiler", "flushed_heater"},
		{"cambié el boiler por uno de 50 galones de gas", "heater: 50gal gas; replaced_heater"},
		{"instalamos calentador nuevo eléctrico de 40 galones", "heater: 40gal electric; replaced_heater"},
		{"se instaló boiler nuevo", "replaced_heater"},
		{"cambié la llave de drenado por una de latón", "drain_valve: brass; replaced_drain_valve"},
		{"le cambié la llave de drenaje al boiler", "replaced_drain_valve"},
		{"arreglé la fuga del lavabo", "repaired_leak"},
		{"reparamos la fuga de la llave de atrás, atrás 60", "60 rear_bibb; repaired_leak"},
		{"quité la fuga de la regadera", "repaired_leak"},
		{"se reparó la fuga en el medidor", "repaired_leak"},
		{"le cambié el empaque a la llave que goteaba", "repaired_leak"},
		{"cambié el sapito de la taza", "repaired_leak"},
		{"cerré el agua en el medidor", "shut_off"},
		{"le cerré al agua y me fui", "shut_off"},
		{"tuve que cerrar el agua", "shut_off"},
		{"dejé cerrada el agua", "shut_off"},
		{"dejé la llave principal cerrada", "shut_off"},
		{"fixie el leak de la hose bib", "repaired_leak"},
		{"chequie la presion, 62 en la cocina", "62 kitchen"},
		{"installie el prv nuevo, set at 60", "replaced_prv >60"},
		{"installé un expansion tank", "installed_tank"},
		{"cambié el regulator, lo puse en 60", "replaced_prv >60"},
		{"el regulator nuevo quedo set at 62, cambie el viejo ahorita", "replaced_prv >62"},
		{"reemplace el prv", "replaced_prv"},
		{"ajuste el prv a 60, estaba en 95", "set_prv >60 <95"},
		{"no cambié la reguladora, atrás 60", "60 rear_bibb"},
		{"todavía no cambiamos la reguladora", "ask none"},
		{"no le moví a la reguladora. enfrente 62", "62 front_bibb"},
		{"le cambiaron la reguladora en 2019", "prv: 2019"},
		{"le instalaron el boiler en el 2015", "heater: 2015"},
		{"la reguladora se cambió hace 3 años", "prv: 2023"},
		{"puse mi manómetro en la lavadora y marcó 66", "66 laundry"},
		{"puse el gauge en la cocina, 62", "62 kitchen"},
	})
}

// What is to be done, and when (the day is 15 June 2026, a Monday).
func TestSpanishPlans(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"hay que cambiar la reguladora", "plan replace_prv"},
		{"hay q cambiar la reguladora mañana", "plan replace_prv 1"},
		{"mañana cambio la reguladora", "plan replace_prv 1"},
		{"mañana vengo a cambiar la reguladora", "plan replace_prv 1"},
		{"el jueves le cambio la reguladora", "plan replace_prv 3"},
		{"voy a cambiar la reguladora el viernes", "plan replace_prv 4"},
		{"vamos a cambiarle la reguladora la próxima semana", "plan replace_prv 7"},
		{"le vamos a poner reguladora nueva el martes", "plan replace_prv 1"},
		{"se va a cambiar la reguladora el lunes", "plan replace_prv 7"},
		{"pasado mañana cambiamos la reguladora", "plan replace_prv 2"},
		{"la reguladora no sirve, mañana la cambio", "plan replace_prv 1; prv: failed"},
		{"la reguladora está pegada, la cambiamos el sábado", "plan replace_prv 5; prv: failed"},
		{"tengo que cambiar la reguladora la otra semana", "plan replace_prv 7"},
		{"necesita reguladora nueva", "plan replace_prv"},
		{"ocupa reguladora", "plan replace_prv"},
		{"le urge una reguladora", "plan replace_prv"},
		{"le hace falta reguladora nueva", "plan replace_prv"},
		{"se le recomendó cambiar la reguladora", "plan replace_prv"},
		{"le recomendé reguladora nueva", "plan replace_prv"},
		{"cotizado cambio de reguladora", "plan replace_prv"},
		{"hay que ajustar la reguladora", "plan set_prv"},
		{"hay que bajarle a la reguladora", "plan set_prv"},
		{"mañana le bajo a la reguladora", "plan set_prv 1"},
		{"hay que ponerle tanque de expansión", "plan install_tank"},
		{"hay q poner tanque d expansion, la señora ya dijo q si", "plan install_tank"},
		{"le falta tanque de expansión, se lo pongo el jueves", "plan install_tank 3"},
		{"no tiene tanque de expansión, mañana le pongo uno", "expansion_tank: none; plan install_tank 1"},
		{"no tiene tanque de expansion, le cotice uno", "expansion_tank: none; plan install_tank"},
		{"voy a instalar tanque de expansión en 2 semanas", "plan install_tank 14"},
		{"instalamos el tanque de expansión la próxima semana", "plan install_tank 7"},
		{"el tanque de expansión no sirve, mañana se lo cambio", "expansion_tank: failed; plan replace_tank 1"},
		{"hay que cambiar el tanque de expansión", "plan replace_tank"},
		{"el tanque está muerto, hay que cambiarlo", "expansion_tank: failed; plan replace_tank"},
		{"vuelvo en 15 días a medir", "plan recheck 15"},
		{"regreso en un mes a revisar", "plan recheck 30"},
		{"en 6 meses vuelvo a checar la presión", "plan recheck 180"},
		{"la reviso otra vez en una semana", "plan recheck 7"},
		{"checar en un año", "plan recheck 365"},
		{"revisar en 3 meses", "plan recheck 90"},
		{"recuérdame volver a revisar en 2 semanas", "plan recheck 14"},
		{"recuérdame revisar en medio año", "plan recheck 180"},
		{"ponme un recordatorio para checar el viernes", "plan recheck 4"},
		{"agéndame revisión para dentro de un mes", "plan recheck 30"},
		{"apúntame para checarla en 10 días", "plan recheck 10"},
		{"volvemos a medir el 20 de junio", "plan recheck 5"},
		{"paso otra vez el miércoles a revisar", "plan recheck 2"},
		{"mañana vuelvo", "plan other 1"},
		{"regreso el jueves con la pieza", "plan other 3"},
		{"mañana le hablo al cliente", "plan other 1"},
		{"mañana cambio el boiler", "plan other 1"},
		{"hay que lavar el boiler en un mes", "plan other 30"},
		{"la bomba recirculadora esta muerta, el sabado voy y la cambio", "plan other 5; recirc: failed"},
		{"no hay que cambiar la reguladora", "ask none"},
		{"no necesita reguladora", "ask none"},
		{"no ocupa tanque", "ask none"},
		{"autorizó el cambio de reguladora", "plan replace_prv"},
		{"ya no hay que revisar nada", "ask none"},
		{"la semana que entra cambio la reguladora", "plan replace_prv 7"},
		{"de hoy en ocho cambio la reguladora", "plan replace_prv 7"},
		{"en ocho días reviso otra vez", "plan recheck 8"},
		{"en quince dias regreso a checar", "plan recheck 15"},
		{"dentro de un mes la vuelvo a medir", "plan recheck 30"},
	})
}

// Pressures: points, heater, water running or not, highest, before and after.
func TestSpanishReadings(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"atrás 77", "77 rear_bibb"},
		{"la de atras trae 77", "77 rear_bibb"},
		{"enfrente 92 atras 91", "91 rear_bibb; 92 front_bibb"},
		{"92 enfrente y 91 atrás", "91 rear_bibb; 92 front_bibb"},
		{"en la cocina me dio 64", "64 kitchen"},
		{"marcó 64 en la cocina", "64 kitchen"},
		{"saqué 64 en la cocina", "64 kitchen"},
		{"agarré 64 en el lavabo", "64 bath"},
		{"la regadera tiene 60 libras", "60 bath"},
		{"la lavadora anda en 70", "70 laundry"},
		{"llave de la manguera 80 psi", "80 bibb"},
		{"llave de jardín 81", "81 bibb"},
		{"la llave d la cochera da 81", "81 bibb"},
		{"lavadero 66", "66 laundry"},
		{"fregadero 61 libras", "61 kitchen"},
		{"en la tarja 61", "61 kitchen"},
		{"lavamanos 59, tina 60", "59 bath; 60 bath"},
		{"dren del boiler 66", "66 heater_drain"},
		{"en el drenado del boiler marca 66", "66 heater_drain"},
		{"en el riego 90", "90 irrigation"},
		{"medidor 110", "110 street"},
		{"del lado de la calle 120", "120 street"},
		{"antes de la reguladora 115, después 60", "115 street; 60 after_prv"},
		{"desp d la reguladora 115", "115 after_prv"},
		{"medidor 115\ndesp d la reguladora 114", "114 after_prv; 115 street"},
		{"117 después de ella. la reguladora no sirve", "117 after_prv; prv: failed"},
		{"entrando 110 saliendo 62", "110 street; 62 after_prv"},
		{"entrada 110, salida 62", "110 street; 62 after_prv"},
		{"arriba de la reguladora 120 y abajo 65", "120 street; 65 after_prv"},
		{"77 con el boiler prendido", "77 firing"},
		{"77 con el boiler apagado", "77 idle"},
		{"boiler calentando, atrás 88", "88 rear_bibb firing"},
		{"el boiler no estaba prendido, atrás 60", "60 rear_bibb idle"},
		{"atrás 60, el calentador estaba apagado", "60 rear_bibb idle"},
		{"atrás 60 sin prender el boiler", "60 rear_bibb idle"},
		{"apagado el boiler 62, prendido 91", "62 idle; 91 firing"},
		{"62 apagado y 91 prendido el boiler en la lavadora", "62 laundry idle; 91 laundry firing"},
		{"atrás 70 con el piloto apagado", "70 rear_bibb idle"},
		{"el quemador prendido, cocina 80", "80 kitchen firing"},
		{"boiler jalando, 80 en la tina", "80 bath firing"},
		{"boiler trabajando cocina 80", "80 kitchen firing"},
		{"todo cerrado 66 atrás", "66 rear_bibb static"},
		{"66 atrás con todo cerrado", "66 rear_bibb static"},
		{"66 atrás, nada abierto", "66 rear_bibb static"},
		{"66 atrás sin nada corriendo", "66 rear_bibb static"},
		{"sin usar agua, atrás 66", "66 rear_bibb static"},
		{"atrás 66 estática", "66 rear_bibb static"},
		{"48 en la cocina con la regadera abierta", "48 kitchen flowing"},
		{"cocina 48 con el riego prendido", "48 kitchen flowing"},
		{"cocina: 48 con el riego andando, 67 sin nada abierto", "48 kitchen flowing; 67 kitchen static"},
		{"con dos llaves abiertas baja a 40 atrás", "40 rear_bibb flowing"},
		{"atrás 40 con la tina llenando", "40 rear_bibb flowing"},
		{"la aguja floja llegó a 140 en la lavadora", "140 laundry peak"},
		{"máxima de 140 en la noche, ahorita 72, lavadora", "140 laundry peak; 72 laundry"},
		{"anoche subió a 130 en la de atrás", "130 rear_bibb peak"},
		{"pico de 125 enfrente", "125 front_bibb peak"},
		{"lo más alto fue 138 en la lavadora", "138 laundry peak"},
		{"al llegar atrás 95, le bajé a la reguladora, al terminar 60", "60 rear_bibb after; 95 rear_bibb before; set_prv"},
		{"antes 95 después 60 atrás, ajusté la reguladora", "60 rear_bibb after; 95 rear_bibb before; set_prv"},
		{"tenía 95 atrás, ajusté la reguladora y ahora tiene 60", "60 rear_bibb after; 95 rear_bibb before; set_prv"},
		{"noventa y dos atrás", "92 rear_bibb"},
		{"ciento diez en el medidor", "110 street"},
		{"ciento veinte libras enfrente", "120 front_bibb"},
		{"setenta y cinco en la cosina", "75 kitchen"},
		{"sesenta y dos y medio en el lavabo", "62.5 bath"},
		{"4 bares en la cocina", "58 kitchen"},
		{"cuatro punto dos bar atrás", "60.9 rear_bibb"},
		{"4.5 bar en la llave de atrás", "65.3 rear_bibb"},
		{"30 m de columna de agua en la llave de enfrente", "42.7 front_bibb"},
		{"450 kPa en el medidor", "65.3 street"},
		{"como 70 en la cocina", "70 kitchen"},
		{"unas 70 libras atrás", "70 rear_bibb"},
		{"casi 70 atrás", "70 rear_bibb"},
		{"entre 60 y 62 atrás", "61 rear_bibb"},
		{"68 o 70 en la regadera", "69 bath"},
		{"tres bares y medio en la cocina", "50.8 kitchen"},
		{"ciento y cinco en el medidor", "105 street"},
		{"noventaidós en la cocina", "92 kitchen"},
		{"ochenta y ocho atrás", "88 rear_bibb"},
		{"cocina 0, no hay agua", "0 kitchen; no_water"},
		{"la señora tiene 82 años, atrás 66", "66 rear_bibb"},
		{"llegué a las 8, atrás 66", "66 rear_bibb"},
		{"código 4455, atrás 66", "66 rear_bibb"},
		{"cobré 120 por el trabajo", "ask none"},
		{"son 85 pesos", "ask none"},
		{"la reguladora dice 25-75 en la placa pero enfrente da 103", "103 front_bibb"},
		{"dice el cliente que antes marcaba 80", "ask none"},
		{"quiere 70 en la casa", "ask none"},
		{"debe andar en 60, atrás trae 90", "90 rear_bibb"},
		{"92 digo 82 atrás", "82 rear_bibb"},
		{"92 perdón 82 atrás", "82 rear_bibb"},
	})
}

// What is installed, and in what shape.
func TestSpanishEquipment(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"boiler de gas de 40 galones del 2011", "heater: 2011 40gal gas"},
		{"calentador eléctrico de 50 gal año 2014", "heater: 2014 50gal electric"},
		{"el boiler tiene 12 años", "heater: 2014"},
		{"boiler como de 10 años", "heater: 2016"},
		{"el boiler es de propano", "heater: propane"},
		{"boiler de paso", "heater: tankless"},
		{"no se sabe de qué año es el boiler", "heater: age?"},
		{"no sé qué edad tiene la reguladora", "prv: age?"},
		{"reguladora: no se sabe el año", "prv: age?"},
		{"la reguladora es del 2009", "prv: 2009"},
		{"la reguladora tiene 15 años y está oxidada", "prv: 2011 suspect"},
		{"no tiene reguladora", "prv: none"},
		{"no hay reguladora", "prv: none"},
		{"sin reguladora", "prv: none"},
		{"no trae reguladora", "prv: none"},
		{"no le encontré reguladora", "prv: none"},
		{"no tiene tanque de expansión", "expansion_tank: none"},
		{"tanque de expansión no hay", "expansion_tank: none"},
		{"tanque de expansion: no", "expansion_tank: none"},
		{"no tiene vaso de expansión", "expansion_tank: none"},
		{"tiene tanque de expansión de 2 galones", "expansion_tank: 2gal"},
		{"el tanque de expansión está lleno de agua", "expansion_tank: failed"},
		{"el tanque ya no sirve", "expansion_tank: failed"},
		{"el tanque no tiene aire", "expansion_tank: failed"},
		{"el tanque está ponchado", "expansion_tank: failed"},
		{"el tanque tiene 40 de aire", "expansion_tank: at 40"},
		{"aire del tanque en 55", "expansion_tank: at 55"},
		{"el tanque de expansión está bien", "expansion_tank: good"},
		{"la reguladora está bien", "prv: good"},
		{"la reguladora jala bien", "prv: good"},
		{"la reguladora ya tronó", "prv: failed"},
		{"la reguladora no jala", "prv: failed"},
		{"la reguladora no funciona", "prv: failed"},
		{"la reguladora anda fallando", "prv: suspect"},
		{"la reguladora tiene mucho sarro", "prv: suspect"},
		{"la reguladora ya está gastada", "prv: suspect"},
		{"la reguladora ta en 65 segun el tornillo, no he medido nada", "prv: at 65"},
		{"reguladora puesta en 55", "prv: at 55"},
		{"reguladora calibrada a 55", "prv: at 55"},
		{"termostato en 120", "heater: 120F"},
		{"boiler puesto a 60 grados C", "heater: 140F"},
		{"el boiler está a 140 grados", "heater: 140F"},
		{"nunca han lavado el boiler", "heater: served 0"},
		{"nunca lo an lavado, boiler de gas", "heater: gas served 0"},
		{"el boiler nunca se ha lavado", "heater: served 0"},
		{"último lavado del boiler en 2022", "heater: served 2022"},
		{"lavaron el boiler en 2023", "heater: served 2023"},
		{"llave de drenado de plástico", "drain_valve: plastic"},
		{"la llave d drenado es de plastico", "drain_valve: plastic"},
		{"llave drenado: laton", "drain_valve: brass"},
		{"tiene suavizador", "softener:"},
		{"no tiene suavizador", "softener: none"},
		{"hay check en el medidor", "check_valve:"},
		{"no hay check en el medidor", "check_valve: none"},
		{"válvula check en el medidor: sí", "check_valve:"},
		{"bomba recirculadora: no", "recirc: none"},
		{"mi manómetro anda mal, atrás 66", "66 rear_bibb; gauge: suspect"},
		{"boiler en buen estado", "heater: good"},
		{"el boiler tira agua por abajo", "leak"},
	})
}

// What is seen and heard, and what is not.
func TestSpanishSymptoms(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"gotea la llave de la cocina", "leak"},
		{"hay una fuga en el baño", "leak"},
		{"la taza no deja de correr", "leak"},
		{"la taza se queda corriendo", "leak"},
		{"el excusado no para", "leak"},
		{"se está tirando el agua del calentador", "leak"},
		{"no hay fugas", "no leak"},
		{"sin fugas, atrás 60", "60 rear_bibb; no leak"},
		{"no vi ninguna fuga", "no leak"},
		{"no gotea nada", "no leak"},
		{"sin fugas ni golpes", "no hammer; no leak"},
		{"la válvula de alivio gotea", "relief_discharge"},
		{"la T&P tira agua", "relief_discharge"},
		{"la valvula de alivio le moja el piso", "relief_discharge"},
		{"la de alivio está tirando", "relief_discharge"},
		{"la válvula de alivio está seca", "no relief_discharge"},
		{"la válvula de alivio no gotea", "no relief_discharge"},
		{"la válvula de alivio tiene un tapón", "relief_blocked"},
		{"le taparon la T&P", "relief_blocked"},
		{"la T&P está tapada", "relief_blocked"},
		{"truenan los tubos", "hammer"},
		{"le truena la tubería cada que cierra la llave", "hammer"},
		{"golpetea cuando cierra la lavadora", "hammer"},
		{"se oye un golpe al cerrar la llave", "hammer"},
		{"hay golpe de ariete", "hammer"},
		{"zumba la reguladora", "noise"},
		{"chifla la tubería en la noche", "noise"},
		{"hace ruido la reguladora", "noise"},
		{"no hace ruido", "no noise"},
		{"poca presión en la regadera", "low_flow"},
		{"dice que no tiene presión arriba", "low_flow"},
		{"sale un chorrito", "low_flow"},
		{"sale muy poquita agua", "low_flow"},
		{"la presión está muy baja", "low_flow"},
		{"la presión sube y baja", "swings"},
		{"la presion le sube y baja cuando el vecino riega", "swings"},
		{"la aguja sube sola", "creep"},
		{"va subiendo poco a poco con todo cerrado", "creep"},
		{"no hay agua en la casa", "no_water"},
		{"no habia agua", "no_water"},
		{"no sale agua", "no_water"},
		{"se quedaron sin agua", "no_water"},
		{"huele a gas", "gas_smell"},
		{"no huele a gas", "no gas_smell"},
		{"agua negra en la tina", "dark_water"},
		{"agua color óxido", "rusty_water"},
		{"sale agua café", "rusty_water"},
		{"el agua sale con pedacitos negros", "dark_water"},
		{"el agua sale clara", "ask none"},
		{"fui a echar café", "ask none"},
	})
}

// Questions and orders to the bot.
func TestSpanishAsks(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"qué hay de 12 Alder St?", "12 Alder St | ask history"},
		{"ke hay de 12 Alder St? ya habiamos ido antes?", "12 Alder St | ask history"},
		{"qué sabemos de 12 Alder St", "12 Alder St | ask history"},
		{"qué se sabe de Calle Luna #77? el dueño me está hablando", "Calle Luna #77 | ask history"},
		{"qué tenemos en 12 Alder St?", "12 Alder St | ask history"},
		{"historial de 12 Alder St", "12 Alder St | ask history"},
		{"pásame el historial de 12 Alder St", "12 Alder St | ask history"},
		{"cuánto tenía 12 Alder St la última vez?", "12 Alder St | ask history"},
		{"cuándo fuimos a 12 Alder St?", "12 Alder St | ask history"},
		{"ya hemos ido a 12 Alder St?", "12 Alder St | ask history"},
		{"qué le hicimos a 12 Alder St?", "12 Alder St | ask history"},
		{"qué toca hoy?", "ask due"},
		{"qué hay pendiente esta semana?", "ask due"},
		{"qué pendientes tengo?", "ask due"},
		{"pendientes", "ask due"},
		{"qué me toca mañana", "ask due"},
		{"cuáles están vencidos?", "ask due"},
		{"gráfica de 12 Alder St", "12 Alder St | ask trend"},
		{"mándame la gráfica de 12 Alder St", "12 Alder St | ask trend"},
		{"enséñame la tendencia de 12 Alder St", "12 Alder St | ask trend"},
		{"de qué tamaño el tanque para boiler de 50 galones a 70 psi?", "ask tank_size 50gal 70psi"},
		{"qué tanque necesito para 40 galones?", "ask tank_size 40gal"},
		{"qué sigue?", "ask next_check"},
		{"qué reviso ahora?", "ask next_check"},
		{"qué podrá ser?", "ask next_check"},
		{"qué checo después?", "ask next_check"},
		{"cuántos psi son 4 bar?", "ask convert 4 bar psi"},
		{"cuánto es 4 bar en psi", "ask convert 4 bar psi"},
		{"pásame 4.2 bar a libras", "ask convert 4.2 bar psi"},
		{"la hoja del cliente de 12 Alder St", "12 Alder St | ask report"},
		{"mándame el reporte para el cliente de 12 Alder St", "12 Alder St | ask report"},
		{"hazme la hoja para la señora de 12 Alder St", "12 Alder St | ask report"},
		{"resumen de la semana", "ask summary"},
		{"cómo nos fue esta semana?", "ask summary"},
		{"cuántas casas hicimos esta semana", "ask summary"},
		{"borra eso", "ask undo"},
		{"borra mi último reporte", "ask undo"},
		{"quita lo último que mandé", "ask undo"},
		{"bórralo, era otra casa", "ask undo"},
		{"elimina mi última lectura", "ask undo"},
		{"cancela lo que mandé", "ask undo"},
		{"scratch mi ultimo reading, era la casa de al lado", "ask undo"},
		{"ese era de otra casa, quítalo", "ask undo"},
		{"no, era 82", "82; ask correct"},
		{"perdón, era 68 no 86", "68; ask correct"},
		{"me equivoqué, eran 72", "72; ask correct"},
		{"corrige, son 72 atrás", "72 rear_bibb; ask correct"},
		{"está mal, era 72 en la cocina", "72 kitchen; ask correct"},
		{"quise decir 72", "72; ask correct"},
		{"puse mal, eran 72", "72; ask correct"},
		{"cámbialo a 72", "72; ask correct"},
		{"ya quedó el seguimiento de 12 Alder St", "12 Alder St | ask done"},
		{"marca como hecho el pendiente de 12 Alder St", "12 Alder St | ask done"},
		{"ya hice la revisión de 12 Alder St", "12 Alder St | ask done"},
		{"listo el recheck de 12 Alder St", "12 Alder St | ask done"},
		{"pospón 12 Alder St una semana", "12 Alder St | ask snooze 7"},
		{"pasame el pendiente de 12 Alder St pa dentro de 10 dias", "12 Alder St | ask snooze 10"},
		{"mueve el de 12 Alder St para el viernes", "12 Alder St | ask snooze 4"},
		{"recórrelo 3 días", "ask snooze 3"},
		{"déjalo para la próxima semana", "ask snooze 7"},
		{"recuérdamelo mañana", "ask snooze 1"},
		{"ahorita no, en 2 semanas", "ask snooze 14"},
		{"ayuda", "ask help"},
		{"cómo te mando una lectura?", "ask help"},
		{"qué puedes hacer?", "ask help"},
		{"cómo se usa esto?", "ask help"},
		{"vamos a comer a las 12?", "ask none"},
		{"ya voy para allá", "ask none"},
		{"gracias jefe", "ask none"},
		{"quién tiene la llave stilson?", "ask none"},
		{"nos vemos mañana", "ask none"},
		{"ok", "ask none"},
		{"mañana no trabajo", "ask none"},
		{"se me quedó la escalera en el taller", "ask none"},
		{"alguien tiene teflón?", "ask none"},
	})
}

// Street lines as Spanish speakers write them.
func TestSpanishSites(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"en el 4 de Heron Bayou Ln atrás 66", "4 Heron Bayou Ln | 66 rear_bibb"},
		{"ya termine en el 390 de Lomita Trace, atras 62", "390 Lomita Trce | 62 rear_bibb"},
		{"en el 22 d Alder St cocina 61", "22 Alder St | 61 kitchen"},
		{"estoy en 310 Bonito Ln, atrás 70", "310 Bonito Ln | 70 rear_bibb"},
		{"estoy en la 310 Bonito Ln, atrás 70", "310 Bonito Ln | 70 rear_bibb"},
		{"ando en el 310 Bonito Ln y atrás trae 70", "310 Bonito Ln | 70 rear_bibb"},
		{"310 Bonito Ln: atrás 70", "310 Bonito Ln | 70 rear_bibb"},
		{"la casa del 310 Bonito Ln, atrás 70", "310 Bonito Ln | 70 rear_bibb"},
		{"Calle Luna #77, atrás 70", "Calle Luna #77 | 70 rear_bibb"},
		{"Calle Marina #22 la llave del costado marca 65", "Calle Marina #22 | 65 side_bibb"},
		{"Buenas, en Calle Marina #22 la llave del costado marca 4.5 bar", "Calle Marina #22 | 65.3 side_bibb"},
		{"Calle 8 #1420, cocina 61", "Calle 8 #1420 | 61 kitchen"},
		{"calle luna numero 77 atras 70", "Calle Luna 77 | 70 rear_bibb"},
		{"Avenida del Sol 1450, cocina 61", "Avenida Del Sol 1450 | 61 kitchen"},
		{"Paseo Real 220 apto 3, cocina 61", "Paseo Real 220 Apt 3 | 61 kitchen"},
		{"605 Coral apto 9, 81 en el lavabo", "605 Coral Apt 9 | 81 bath"},
		{"apto 6, 1900 Gable St, 70 en el lavabo", "1900 Gable St Apt 6 | 70 bath"},
		{"1900 Gable St unidad B, 70 en el lavabo", "1900 Gable St Unit B | 70 bath"},
		{"1900 Gable St depto 4, 70 en el lavabo", "1900 Gable St Apt 4 | 70 bath"},
		{"Vista Grande 1105\nenfrente 66", "Vista Grande 1105 | 66 front_bibb"},
		{"en Vista Grande 1105, enfrente 66", "Vista Grande 1105 | 66 front_bibb"},
		{"14 Sendero Way, atrás 66", "14 Sendero Way | 66 rear_bibb"},
		{"9 Camino Real, atrás 66", "9 Camino Real | 66 rear_bibb"},
		{"dirección: 88 Palo Verde Ct\natrás 66", "88 Palo Verde Ct | 66 rear_bibb"},
		{"Domicilio: Calle Sauce 45. Atrás 66", "Calle Sauce 45 | 66 rear_bibb"},
		{"con la señora del 26 Pomelo Ct, atrás 66", "26 Pomelo Ct | 66 rear_bibb"},
		{"el 4 de julio no trabajamos", "ask none"},
		{"compré 4 de los grandes", "ask none"},
		{"Cocina 66", "66 kitchen"},
		{"La Lavadora 66", "66 laundry"},
	})
}
