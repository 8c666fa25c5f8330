package assess

// figureWords holds what people read of figures, in one language.
func (l Lang) figureWords() map[string]wording {
	if l == Spanish {
		return spanishFigures
	}
	return englishFigures
}

var englishFigures = map[string]wording{
	"heating": {
		"Each heating drives the house from {house} to about {final} psi with its {tank} gal tank at {charge} psi of air; the top is {top}.",
		"{heater} gal from {inlet} to {hot} °F by Kell's density, the tank by Boyle's law in absolute pressure."},
	"heating.full": {
		"The {tank} gal tank is full before the {heater} gal heater is done: the relief valve opens at each heating.",
		"{heater} gal from {inlet} to {hot} °F by Kell's density, the tank by Boyle's law in absolute pressure."},
	"heating.no_tank": {
		"Closed and with no working tank, each degree of heating adds up to {rise} psi: the relief valve's 150 is some {degrees} °F away.",
		"Water's expansion and compressibility by IAPWS-IF97 in a thin steel heater; air, plastic pipe and dripping valves soften it."},
	"gauge": {
		"{house} ± {pm} psi reaches across {limit}: a grade {grade} gauge on 0-{span} psi (± {finer}) would settle it.",
		"Gauge error is percent of span by zone of the scale (ASME B40.100, as quoted)."},
	"need": {
		"With water running {flowing} psi is left; a plain shower needs {plain}, one with a mixing valve {mixing} at {gpm} gal a minute.",
		"Flow pressures of IPC 2018 table 604.3."},
	"saving": {
		"At {comfort} psi instead of {house}, leaks and open taps run {low} to {high} % less; toilets, washers and baths fill with the same.",
		"(P1/P0)^N1 with N1 from 0.5 to 1.5 (Water Loss Control, p. 141)."},
	"top_floor": {
		"Two floors up ({feet} ft) stands {less} psi less: {left} psi.",
		"0.433 psi a foot (IPC 2018 App. E, E103.2.2)."},
	"reduction": {
		"The regulator takes {street} down to {house} psi, {ratio} to 1: within what one valve may do.",
		"Inlet to outlet ideally 2 to 1, never over 3 to 1 (common practice)."},
	"reduction.two": {
		"The regulator takes {street} down to {house} psi, {ratio} to 1: plan two valves in a row.",
		"Inlet to outlet ideally 2 to 1, never over 3 to 1 (common practice)."},
	"ratings": {
		"Toilet fill valves are made for up to {fill} psi and faucets for up to {faucet}; the house stands at {house}.",
		"Usual ratings in fixture instructions (common practice)."},
	"surge": {
		"A valve that snaps shut adds about {copper} psi in 3/4 in copper, {pex} in PEX; closed over a second it adds {slow}.",
		"Joukowsky and Korteweg for 5 ft/s; slow closing 2 rho L v/t over {feet} ft."},
	"scald": {
		"Scald risk: {phrase}.",
		"The shortest time in the CPSC leaflet and two trade tables; children about half (common practice)."},
	"street": {
		"The main nearby stands at {level} psi ({low} to {high}).",
		"{n} street-side readings nearby, 90 % interval."},
	"street.shifted": {
		"The main nearby went from {from} to {level} psi ({low} to {high}): look at the street before you blame the valve.",
		"{n} street-side readings nearby since the change, 90 % interval."},
	"life": {
		"Half of the shop's regulators have failed by {half} years ({from} to {to}); one of {age} years fails within a year with {p} % ({low} to {high}).",
		"Weibull fit to the shop's own record ({failed} failures, the others still in service), 90 % intervals."},
	"curve": {
		"Half of the shop's regulators have failed by {value} years ({low} to {high}).",
		"Weibull fit to {n} regulators on record, {failed} of them failed; 90 % intervals."},
	"curve.none": {
		"The shop's record holds {failed} failed regulators of {n}: from {least} on it draws a life curve of its own, until then the configured service life counts.",
		"With fewer the shape is known to no better than a factor of 1.5."},
	"tenth": {
		"A tenth have failed by {value} years ({low} to {high}).",
		"Weibull fit to {n} regulators on record, {failed} of them failed; 90 % intervals."},
	"aging.wear": {
		"They wear out: the risk grows with the years, and replacing at about {value} years comes before three of four failures.",
		"The curve's shape lies above 1 with its whole 90 % interval."},
	"aging.young": {
		"They fail young rather than old: look at water, strainers and fitting before age.",
		"The curve's shape lies below 1 with its whole 90 % interval."},
	"aging.unsure": {
		"Age alone does not yet tell which will fail: replace by findings, not by the calendar.",
		"The interval of the curve's shape holds 1."},
}

var spanishFigures = map[string]wording{
	"heating": {
		"Cada calentamiento lleva la casa de {house} a unas {final} psi con su tanque de {tank} gal a {charge} psi de aire; el tope es {top}.",
		"{heater} gal de {inlet} a {hot} °F con la densidad de Kell, el tanque con la ley de Boyle en presión absoluta."},
	"heating.full": {
		"El tanque de {tank} gal se llena antes de que termine el calentador de {heater} gal: la válvula de alivio abre en cada calentamiento.",
		"{heater} gal de {inlet} a {hot} °F con la densidad de Kell, el tanque con la ley de Boyle en presión absoluta."},
	"heating.no_tank": {
		"Sistema cerrado sin tanque que funcione: cada grado sube hasta {rise} psi; las 150 de la válvula de alivio quedan a unos {degrees} °F.",
		"Dilatación y compresibilidad del agua según IAPWS-IF97 en un calentador de acero delgado; el aire, el tubo de plástico y los goteos lo suavizan."},
	"gauge": {
		"{house} ± {pm} psi abarca las {limit}: un manómetro de grado {grade} de 0-{span} psi (± {finer}) lo aclararía.",
		"El error del manómetro es un porcentaje del alcance por zona de la escala (ASME B40.100, citado)."},
	"need": {
		"Con el agua corriendo quedan {flowing} psi; una regadera simple pide {plain}, una con válvula mezcladora {mixing} a {gpm} gal por minuto.",
		"Presiones de flujo de la tabla 604.3 del IPC 2018."},
	"saving": {
		"A {comfort} psi en vez de {house}, las fugas y llaves abiertas gastan de {low} a {high} % menos; inodoros, lavadoras y tinas se llenan con lo mismo.",
		"(P1/P0)^N1 con N1 de 0.5 a 1.5 (Water Loss Control, p. 141)."},
	"top_floor": {
		"Dos pisos arriba ({feet} pies) hay {less} psi menos: {left} psi.",
		"0.433 psi por pie (IPC 2018, apéndice E, E103.2.2)."},
	"reduction": {
		"El regulador baja de {street} a {house} psi, {ratio} a 1: una sola válvula puede con eso.",
		"Entrada a salida idealmente 2 a 1, nunca más de 3 a 1 (práctica común)."},
	"reduction.two": {
		"El regulador baja de {street} a {house} psi, {ratio} a 1: conviene poner dos válvulas en serie.",
		"Entrada a salida idealmente 2 a 1, nunca más de 3 a 1 (práctica común)."},
	"ratings": {
		"Las válvulas de llenado de inodoro aguantan hasta {fill} psi y las llaves hasta {faucet}; la casa está a {house}.",
		"Límites usuales en las instrucciones de los muebles (práctica común)."},
	"surge": {
		"Una válvula que cierra de golpe suma unas {copper} psi en cobre de 3/4 y {pex} en PEX; cerrando en un segundo suma {slow}.",
		"Joukowsky y Korteweg con 5 pies/s; cierre lento 2 rho L v/t en {feet} pies."},
	"scald": {
		"Riesgo de quemadura: {phrase}.",
		"El tiempo más corto del folleto de la CPSC y de dos tablas del oficio; niños, la mitad (práctica común)."},
	"street": {
		"La red cercana está a {level} psi ({low} a {high}).",
		"{n} lecturas de la calle cercanas, intervalo del 90 %."},
	"street.shifted": {
		"La red cercana pasó de {from} a {level} psi ({low} a {high}): mire la calle antes de culpar a la válvula.",
		"{n} lecturas de la calle cercanas desde el cambio, intervalo del 90 %."},
	"life": {
		"La mitad de los reguladores del taller ha fallado a los {half} años ({from} a {to}); uno de {age} años falla en un año con {p} % ({low} a {high}).",
		"Ajuste de Weibull al registro propio ({failed} fallas, los demás siguen en servicio), intervalos del 90 %."},
	"curve": {
		"La mitad de los reguladores del taller ha fallado a los {value} años ({low} a {high}).",
		"Ajuste de Weibull a {n} reguladores registrados, {failed} de ellos con falla; intervalos del 90 %."},
	"curve.none": {
		"El registro del taller tiene {failed} reguladores con falla de {n}: desde {least} traza su propia curva de vida, hasta entonces vale la vida útil configurada.",
		"Con menos, la forma no se conoce mejor que a un factor de 1.5."},
	"tenth": {
		"La décima parte ha fallado a los {value} años ({low} a {high}).",
		"Ajuste de Weibull a {n} reguladores registrados, {failed} de ellos con falla; intervalos del 90 %."},
	"aging.wear": {
		"Se gastan: el riesgo crece con los años, y cambiarlos hacia los {value} años se adelanta a tres de cada cuatro fallas.",
		"La forma de la curva queda sobre 1 con todo su intervalo del 90 %."},
	"aging.young": {
		"Fallan jóvenes más que viejos: revise el agua, los filtros y la instalación antes que la edad.",
		"La forma de la curva queda bajo 1 con todo su intervalo del 90 %."},
	"aging.unsure": {
		"La edad sola aún no dice cuál fallará: cambie por hallazgos, no por calendario.",
		"El intervalo de la forma de la curva contiene el 1."},
}
