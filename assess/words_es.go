package assess

// spanish is what a Spanish-speaking crew reads: the same facts, in the words
// of the trade there.
var spanish = wordTable{
	findings: map[string]wording{
		"gas_smell": {
			"Saque a todos ya: sin tocar interruptores, llamas ni teléfonos adentro; llame a la compañía de gas o al 911 desde afuera y no vuelva a encender.",
			"Seguridad con gas (práctica común); deciden la compañía de gas y un plomero con licencia."},
		"relief_blocked": {
			"Apague el calentador ya y aléjese: la válvula de alivio está tapada o cerrada; el calentador queda apagado hasta que un plomero con licencia arregle la válvula y su descarga abierta.",
			"Una válvula de alivio nunca se tapa ni se cierra (instrucciones del calentador según ANSI Z21.22; práctica común)."},
		"over_relief": {
			"Alto a {psi} psi: cierre el agua, apague el calentador, aleje a la gente de la descarga y llame ya a la central o a un plomero con licencia.",
			"150 psi es la presión de trabajo del calentador y el ajuste de la válvula de alivio (ANSI Z21.22/CSA 4.4, según cita)."},
		"over_relief.discharge": {
			"La válvula de alivio está tirando agua: apague el calentador, aléjese de la descarga caliente, lea ya la presión estática y nunca la tape.",
			"La válvula abre a 150 psi o 210 F, o está dañada; busque la causa (práctica común)."},
		"high": {
			"Alta: {house} ± {pm} psi, arriba de {top}; compare con la calle antes de tocar el tornillo del regulador.",
			"Arriba de {top} psi estáticas hace falta un regulador que funcione (IPC 2018 604.8, IRC P2903.3.1, UPC 608.2, según cita); a 60 psi las llaves abiertas y las fugas constantes gastan {saved} % menos (raíz de la presión)."},
		"high.borderline": {
			"Quizá alta: {house} ± {pm} psi contra {top}; lea otra vez con un manómetro más fino antes de cambiar algo.",
			"El error del manómetro (ASME B40.100) cruza el límite; los códigos actúan arriba de {top} psi."},
		"high.no_prv": {
			"Alta: {house} ± {pm} psi sin regulador; proponga un regulador con filtro y control de expansión; deciden el código local y un plomero con licencia.",
			"Arriba de {top} psi estáticas hace falta un regulador (IPC 2018 604.8, IRC P2903.3.1, según cita)."},
		"high.over_relief": {
			"Alta: {house} ± {pm} psi, pasa todos los límites de la casa; bájela antes de hacer otra cosa.",
			"Arriba de {top} psi estáticas hace falta un regulador que funcione (IPC 2018 604.8, IRC P2903.3.1, UPC 608.2, según cita); decide el código local."},
		"high.follows": {
			"Alta: {house} ± {pm} psi con la calle a {street}; deje el tornillo y revise el regulador mismo.",
			"Arriba de {top} psi estáticas hace falta un regulador que funcione (IPC 2018 604.8, IRC P2903.3.1, UPC 608.2, según cita); decide el código local."},
		"high.set": {
			"Alta: {house} ± {pm} psi con la calle a {street}; baje el regulador con vueltas chicas a 50 o 60 y lea otra vez.",
			"Arriba de {top} psi estáticas hace falta un regulador que funcione (IPC 2018 604.8, UPC 608.2, según cita); a 60 psi las llaves abiertas y las fugas constantes gastan {saved} % menos (raíz de la presión)."},
		"high.failed": {
			"Alta: {house} ± {pm} psi con un regulador que ya no sirve; deje el tornillo, repárelo o cámbielo.",
			"Un tornillo pegado o barrido se rompe, con el agua abierta (práctica común); arriba de {top} psi estáticas hace falta un regulador que funcione (IPC 2018 604.8, UPC 608.2, según cita)."},
		"high.suspect": {
			"Alta: {house} ± {pm} psi con un regulador gastado; deje el tornillo y proponga repararlo o cambiarlo.",
			"No se fuerza el tornillo de un regulador gastado o que gotea (práctica común); arriba de {top} psi estáticas hace falta un regulador que funcione (IPC 2018 604.8, UPC 608.2, según cita)."},
		"low": {
			"Baja: {house} ± {pm} psi, debajo de {bottom}; compare con la calle y con una lectura con agua corriendo antes de girar el tornillo.",
			"{bottom} psi es el mínimo estático de costumbre (IRC P2903.3 anterior, de memoria); un piso arriba quedan unas {upstairs} psi (0.433 psi por pie, IPC 2018 Ap. E)."},
		"low.borderline": {
			"Quizá baja: {house} ± {pm} psi contra {bottom}; lea otra vez con un manómetro más fino antes de cambiar algo.",
			"El error del manómetro (ASME B40.100) cruza el límite."},
		"low.street": {
			"Baja: {house} ± {pm} psi porque la calle está baja, {street}; deje el regulador y pregunte a la compañía de agua.",
			"{bottom} psi es el mínimo estático de costumbre (IRC P2903.3 anterior, de memoria); un piso arriba quedan unas {upstairs} psi (0.433 psi por pie, IPC 2018 Ap. E)."},
		"low.unsound": {
			"Baja: {house} ± {pm} psi, debajo de {bottom}, con un regulador malo; deje el tornillo, compare con la calle y proponga repararlo o cambiarlo.",
			"{bottom} psi es el mínimo estático de costumbre (IRC P2903.3 anterior, de memoria); un piso arriba quedan unas {upstairs} psi (0.433 psi por pie, IPC 2018 Ap. E)."},
		"in_band": {
			"En rango: {house} ± {pm} psi ({bottom} a {top}); deje el ajuste como está.",
			"Estática de {bottom} a {top} psi, ambos incluidos (IPC 2018 604.8 arriba; abajo, la costumbre)."},
		"in_band.plain": {
			"En rango: {house} ± {pm} psi ({bottom} a {top}).",
			"Estática de {bottom} a {top} psi, ambos incluidos (IPC 2018 604.8 arriba; abajo, la costumbre)."},
		"borderline": {
			"Muy justo: {house} ± {pm} psi cruza {limit}; lea otra vez con un manómetro más fino.",
			"El error es un porcentaje de la escala según la zona (ASME B40.100)."},
		"not_house_side": {
			"Solo la calle: esto no dice nada de la casa; lea también una llave de atrás o la de la lavadora.",
			"Todas las lecturas son antes del regulador."},
		"retake": {
			"Lea otra vez del lado de la casa: calentador en reposo, nada abierto; abra una llave un momento, ciérrela y deje asentar la aguja.",
			"Una lectura justa es estática, del lado de la casa, con el calentador en reposo y sin expansión atrapada (práctica común)."},
		"retake.front_bibb": {
			"Lea otra vez en la lavadora o en una llave de atrás: la llave de enfrente muchas veces está antes del regulador.",
			"El punto de prueba decide qué se midió (práctica común)."},
		"retake.heater": {
			"Lea otra vez con el calentador en reposo: abra una llave un momento, ciérrela y deje asentar la aguja.",
			"El calentador sube la presión de toda la casa cerrada (física; práctica común)."},
		"retake.plastic_drain": {
			"Lea otra vez en otra llave: el dren de plástico del calentador puede no volver a cerrar y su lectura es dudosa.",
			"Los drenes de plástico viejos pueden no sellar (práctica común)."},
		"retake.gauge": {
			"Lea otra vez con otro manómetro: el usado está en duda.",
			"El mensaje duda del manómetro."},
		"contradiction.apart": {
			"Las lecturas de la casa no concuerdan, más de 15 psi entre ellas: lea una llave dos veces con el mismo manómetro, calentador en reposo.",
			"La estática es igual en toda la casa salvo la altura, 0.433 psi por pie (IPC 2018 Ap. E, según cita)."},
		"contradiction.symptom": {
			"Dicho de dos maneras: un síntoma está y no está; pregunte cuál.",
			"Dos afirmaciones de la misma visita se excluyen."},
		"contradiction.year": {
			"Revise el año: algo se instaló en un año que aún no llega.",
			"Una instalación no puede ser después de la visita."},
		"contradiction.no_prv_work": {
			"¿Hay regulador? La visita dice que no hay, y también que se trabajó en él.",
			"Dos afirmaciones de la misma visita se excluyen."},
		"contradiction.no_tank_work": {
			"¿Hay tanque de expansión? La visita dice que no hay, y también que se trabajó en él.",
			"Dos afirmaciones de la misma visita se excluyen."},
		"contradiction.no_prv_gap": {
			"Busque un regulador escondido: sin él, la casa a {house} y la calle a {street} psi leerían igual.",
			"La estática es igual de los dos lados si nada la reduce (física)."},
		"contradiction.above_main": {
			"La casa a {house} psi está arriba de la calle a {street}: revise los puntos de prueba, alivie la expansión y lea las dos otra vez.",
			"En reposo un regulador no sube la casa sobre la calle; la expansión atrapada sí (física)."},
		"not_regulating": {
			"El regulador no sostiene: casa {house} y calle {street} psi leen igual; limpie el asiento y el filtro, o cámbielo.",
			"Casa a 5 psi de la calle o menos, las dos arriba de {top} (práctica común); deciden el código local y un plomero con licencia."},
		"seat_creep": {
			"El asiento probablemente pasa: sube en reposo con el calentador apagado; vigile el manómetro 15 minutos y después limpie el asiento o cambie el cartucho.",
			"Cuenta una vez descartado el calentador (práctica común, de memoria)."},
		"seat_creep.peak": {
			"El asiento probablemente pasa: pico en reposo {peak} sobre estática {house} psi; vigile el manómetro con el calentador apagado antes de abrirlo.",
			"Un pico de 15 psi o más sobre la estática con el calentador en reposo (práctica común)."},
		"restricted": {
			"Cae {fall} psi con agua corriendo: limpie primero el filtro del regulador, después revise el asiento y la medida.",
			"Más de 20 psi de estática a corriendo es más de lo que pierde un regulador bien elegido (práctica común)."},
		"restricted.no_prv": {
			"Cae {fall} psi con agua corriendo y sin regulador: busque una válvula a medio cerrar, un filtro tapado o un tubo obstruido.",
			"Más de 20 psi de estática a corriendo (práctica común)."},
		"fall_off": {
			"Cae {fall} psi con agua corriendo: vigílelo y revise el filtro en el próximo servicio.",
			"De 10 a 20 psi es normal con mucho gasto, no con una llave (práctica común)."},
		"expansion_uncontrolled.rise": {
			"Sube {rise} psi con el calentador: revise la carga y el tamaño del tanque de expansión, o ponga uno.",
			"El agua caliente en una casa cerrada necesita lugar (IPC 2018 607.3, IRC P2903.4, según cita); la válvula de alivio no controla la expansión."},
		"expansion_uncontrolled.peak": {
			"Pico de {peak} sobre estática {house} psi sin tanque de expansión que sirva: ponga uno en orden, cargado a la estática, y deje la aguja de máxima toda la noche.",
			"El agua caliente en una casa cerrada necesita lugar (IPC 2018 607.3, IRC P2903.4, según cita); no se sabe si la casa está cerrada."},
		"peak_high": {
			"Pico de {peak} psi, arriba de {top}: antes de darla por buena vea qué la sube, el calentador, el asiento del regulador o la calle de noche.",
			"La presión no debe pasar del tope del rango en ningún momento (IPC 2018 604.8, según cita); un pico de 15 psi o más sobre la estática (práctica común)."},
		"peak_high.no_prv": {
			"Pico de {peak} psi, arriba de {top}, sin regulador: deje la aguja de máxima en la calle toda la noche y ponga un regulador si sube ahí.",
			"La presión no debe pasar del tope del rango en ningún momento (IPC 2018 604.8, según cita); un pico de 15 psi o más sobre la estática (práctica común)."},
		"expansion_uncontrolled.missing": {
			"Sistema cerrado sin tanque de expansión: ponga uno, cargado a la presión estática de la casa.",
			"Control de expansión donde un regulador o un check cierra la casa (IPC 2018 607.3, IRC P2903.4, UPC 608.3, según cita)."},
		"expansion_uncontrolled.missing.sized": {
			"Sistema cerrado sin tanque de expansión: ponga uno de al menos {tank} gal, cargado a {house} psi.",
			"Para quedar en {tanktop} psi con entrada de {inlet} F y ajuste de {setpoint} F (ASHRAE, tanque de diafragma, presiones absolutas; lo no dicho se supone)."},
		"expansion_uncontrolled.missing.lower": {
			"Sistema cerrado sin tanque de expansión: baje la casa a {comfort} psi y ponga uno cargado a eso.",
			"Control de expansión donde un regulador o un check cierra la casa (IPC 2018 607.3, IRC P2903.4, UPC 608.3, según cita)."},
		"expansion_uncontrolled.missing.lower.sized": {
			"Sistema cerrado sin tanque de expansión: baje la casa a {comfort} psi y ponga uno de al menos {tank} gal, cargado a eso.",
			"Para quedar en {tanktop} psi con entrada de {inlet} F y ajuste de {setpoint} F (ASHRAE, tanque de diafragma, presiones absolutas; lo no dicho se supone)."},
		"expansion_uncontrolled.failed": {
			"El tanque de expansión no sirve en un sistema cerrado: cámbielo, cargado a la presión estática de la casa.",
			"Control de expansión donde un regulador o un check cierra la casa (IPC 2018 607.3, IRC P2903.4, UPC 608.3, según cita)."},
		"expansion_uncontrolled.failed.sized": {
			"El tanque de expansión no sirve en un sistema cerrado: cámbielo por uno de al menos {tank} gal, cargado a {house} psi.",
			"Para quedar en {tanktop} psi con entrada de {inlet} F y ajuste de {setpoint} F (ASHRAE, tanque de diafragma, presiones absolutas; lo no dicho se supone)."},
		"expansion_uncontrolled.failed.lower": {
			"El tanque de expansión no sirve en un sistema cerrado: baje la casa a {comfort} psi y ponga uno cargado a eso.",
			"Control de expansión donde un regulador o un check cierra la casa (IPC 2018 607.3, IRC P2903.4, UPC 608.3, según cita)."},
		"expansion_uncontrolled.failed.lower.sized": {
			"El tanque de expansión no sirve en un sistema cerrado: baje la casa a {comfort} psi y ponga uno de al menos {tank} gal, cargado a eso.",
			"Para quedar en {tanktop} psi con entrada de {inlet} F y ajuste de {setpoint} F (ASHRAE, tanque de diafragma, presiones absolutas; lo no dicho se supone)."},
		"tank_charge_off": {
			"La carga del tanque no es la debida: {charge} contra {house} psi de estática; aíslelo, vacíe el lado del agua y ponga el aire a la estática.",
			"Carga de aire igual a la estática, a 5 psi o menos (práctica común); primero las instrucciones y el límite del tanque."},
		"tank_small": {
			"Tanque chico: {size} gal donde {tank} gal mantienen la casa en {tanktop} psi; baje la presión o ponga uno mayor.",
			"Entrada de {inlet} F y ajuste de {setpoint} F, supuestos si no se dijeron (ASHRAE, tanque de diafragma, presiones absolutas)."},
		"tank_small.lower": {
			"Tanque chico para {house} psi: {size} gal; baje la casa a {comfort} psi, ahí bastan {tank} gal.",
			"Entrada de {inlet} F y ajuste de {setpoint} F, supuestos si no se dijeron (ASHRAE, tanque de diafragma, presiones absolutas)."},
		"set_high": {
			"Ajuste demasiado alto, {to} psi: bájelo a entre {bottom} y {top} con vueltas chicas y lea otra vez.",
			"La estática queda en {top} psi o menos (IPC 2018 604.8, UPC 608.2, según cita)."},
		"set_low": {
			"Ajuste demasiado bajo, {to} psi: súbalo a entre {bottom} y {top} con vueltas chicas y lea otra vez.",
			"{bottom} psi es el mínimo de costumbre (de memoria); los reguladores se ajustan a 50 o 60 (práctica común)."},
		"set_high.unsound": {
			"Ajuste demasiado alto, {to} psi, y el regulador está malo: deje el tornillo, repárelo o cámbielo.",
			"La estática queda en {top} psi o menos (IPC 2018 604.8, UPC 608.2, según cita)."},
		"set_low.unsound": {
			"Ajuste demasiado bajo, {to} psi, y el regulador está malo: deje el tornillo, repárelo o cámbielo.",
			"{bottom} psi es el mínimo de costumbre (de memoria); los reguladores se ajustan a 50 o 60 (práctica común)."},
		"street_low": {
			"La calle está baja, {street} psi: pregunte a la compañía de agua y revise las llaves de la banqueta y general antes de tocar el regulador.",
			"Calle debajo de 40 psi; ningún regulador la sube (física)."},
		"street_strong": {
			"La calle está fuerte, {street} psi, y no hay regulador anotado: búsquelo y lea el lado de la casa.",
			"Arriba de {top} psi hace falta un regulador (IPC 2018 604.8, IRC P2903.3.1, según cita); decide el código local."},
		"street_strong.no_prv": {
			"La calle está fuerte, {street} psi, sin regulador; proponga uno con filtro; deciden el código local y un plomero con licencia.",
			"Arriba de {top} psi hace falta un regulador (IPC 2018 604.8, IRC P2903.3.1, según cita); decide el código local."},
		"dark_water": {
			"Partículas negras con regulador: abra el filtro y busque hule negro antes de culpar a la calle.",
			"El hule gastado suelta partículas (práctica común)."},
		"dark_water.old": {
			"Partículas negras con un regulador de {age} años: abra el filtro y busque hule negro; quizá ya toca el juego de reparación.",
			"El hule gastado suelta partículas, más con la edad (práctica común)."},
		"prv_near_age": {
			"El regulador tiene {age} años, cerca del final de su vida útil: pruébelo contra la calle en cada visita.",
			"Vida útil de {near} a {past} años (configurada; práctica común)."},
		"prv_past_age": {
			"El regulador tiene {age} años, ya pasó su vida útil: pruébelo corriendo y en reposo, y dígaselo al cliente.",
			"Vida útil de {near} a {past} años (configurada; práctica común)."},
		"prv_age_unknown": {
			"No se sabe la edad del regulador: lea la fecha en su placa o cuerpo y repórtela.",
			"La edad dice cuánto se puede confiar en un regulador (práctica común)."},
		"drift_up": {
			"Va subiendo unas {slope} psi por año: lea otra vez en la próxima visita.",
			"Pendiente de Theil-Sen y prueba de Mann-Kendall con las lecturas justas desde el último trabajo."},
		"drift_up.crosses": {
			"Va subiendo unas {slope} psi por año y sale del rango hacia el {date}: pruebe el regulador antes.",
			"Pendiente de Theil-Sen y prueba de Mann-Kendall con las lecturas justas desde el último trabajo."},
		"drift_down": {
			"Va bajando unas {slope} psi por año: lea otra vez en la próxima visita.",
			"Pendiente de Theil-Sen y prueba de Mann-Kendall con las lecturas justas desde el último trabajo."},
		"drift_down.crosses": {
			"Va bajando unas {slope} psi por año y sale del rango hacia el {date}: revise el filtro antes.",
			"Pendiente de Theil-Sen y prueba de Mann-Kendall con las lecturas justas desde el último trabajo."},
		"jump": {
			"Saltó de unas {from} a {to} psi entre {after} y {by}: pregunte qué cambió y lea calle y casa juntas.",
			"CUSUM de los residuos de las lecturas justas desde el último trabajo."},
		"high_pressure_signs": {
			"Señales de presión alta: tome una lectura justa de la casa y deje una aguja de arrastre toda la noche.",
			"Goteos, tazas que no paran, golpes y ruido van con presión alta (práctica común)."},
		"high_pressure_signs.high": {
			"Las señales van con la presión alta: bájela primero y después revise otra vez las fugas, el ruido o los golpes.",
			"Goteos, tazas que no paran, golpes y ruido van con presión alta (práctica común)."},
		"hammer": {
			"Golpe de ariete: parar 5 pies/s de golpe suma unas {surge} psi en cobre de 3/4; sujete el tubo, cierre más lento o ponga un amortiguador.",
			"Golpe de Joukowsky con la velocidad de onda de Korteweg (libros de texto)."},
		"street_shift": {
			"La calle pasó de unas {before} a {level} psi en {n} lecturas cercanas: compare con la calle antes de culpar al regulador.",
			"Si sube en muchas casas es la calle, si en una es la válvula (nivel robusto de lecturas recientes de la calle)."},
	},
	checks: map[string]checkWords{
		checkStreet:    {"lea la calle antes del regulador, nada abierto", "muestra si la casa sigue a la calle"},
		checkHouse:     {"lea la lavadora o una llave de atrás: calentador en reposo, nada abierto, expansión aliviada", "todavía no hay una lectura justa de la casa"},
		checkFlow:      {"abra una llave de la casa y lea cuánto cae desde la estática", "una obstrucción solo se ve con agua corriendo"},
		checkCreep:     {"calentador apagado, nada abierto, vigile el manómetro 15 minutos", "un asiento que pasa va subiendo"},
		checkHeat:      {"deje encender el calentador con el manómetro puesto", "la expansión se ve subir, y en reposo no"},
		checkGauge:     {"lea la misma llave con otro manómetro", "confirma el manómetro o muestra que falla"},
		checkRegulator: {"busque el regulador donde entra la calle", "si lo hay o no decide qué causas son posibles"},
		checkTank:      {"revise la carga de aire del tanque de expansión, aislado y vacío del lado del agua", "sin aire el tanque no recibe expansión"},
		checkScrew:     {"gire un poco el tornillo del regulador y regréselo, con una llave goteando", "un regulador que sirve sigue su tornillo"},
		checkStrainer:  {"cierre el agua, abra el filtro del regulador y mire", "basura es obstrucción, hule negro es desgaste"},
	},
	followUps: map[string]string{
		"asked":                  "pedido en el reporte",
		"after_work":             "estática otra vez un día después del trabajo en el regulador",
		"yearly":                 "lectura anual",
		"over_relief":            "la presión o la válvula de alivio piden otra revisión",
		"relief_blocked":         "hay que arreglar la válvula de alivio",
		"gas_smell":              "solo cuando la compañía de gas haya liberado la casa",
		"not_regulating":         "el regulador no sostiene",
		"seat_creep":             "el asiento pasa",
		"set_high":               "ajuste arriba del rango",
		"set_low":                "ajuste debajo del rango",
		"high":                   "casa arriba del rango",
		"low":                    "casa debajo del rango",
		"borderline":             "muy justo, manómetro más fino",
		"restricted":             "limpiar filtro y asiento",
		"dark_water":             "buscar hule en el filtro",
		"street_strong":          "encontrar o poner un regulador",
		"expansion_uncontrolled": "sistema cerrado sin control de expansión",
		"peak_high":              "pico arriba del rango, sin explicar todavía",
		"tank_small":             "tanque menor que el calculado",
		"retake":                 "falta una lectura justa de la casa",
		"not_house_side":         "falta una lectura de la casa",
		"contradiction":          "lecturas o datos no concuerdan",
		"fall_off":               "caída con agua corriendo",
		"tank_charge_off":        "carga del tanque contra estática",
		"street_low":             "calle baja",
		"hammer":                 "golpe de ariete",
		"prv_past_age":           "regulador pasado de su vida útil",
		"drift_up":               "la presión va subiendo",
		"drift_down":             "la presión va bajando",
		"jump":                   "la presión saltó",
	},
}
