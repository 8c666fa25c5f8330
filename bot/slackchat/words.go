package slackchat

import "strings"

// phrases are the few words that the platform's own things need: forms, hints
// and signs. What the bot says about water comes from the desk.
type phrases struct {
	Next, Caution              string
	FileHint, VoiceHint, Busy  string
	ByForm                     string
	ReportTitle, CorrectTitle  string
	Send, Cancel, Loading      string
	House, HouseExample        string
	Pressure, Where, Heater    string
	Flow, Note, Text, TextHint string
	NoHouse, NoPressure        string
	Choose                     string
	Points, Heaters, Flows     []said
	HomeReport, HomeUpdated    string
	HomeHow                    string
}

// said is a choice of a form: how it is shown, and the words that it stands
// for in the report.
type said struct{ Label, Words string }

var english = phrases{
	Next: "Next", Caution: "Caution",
	FileHint:  "I keep a file only beside a report. Say in a message what you measured and where, such as: 92 rear bibb, heater idle, 123 Elm St",
	VoiceHint: "I cannot make out the words of that clip. Please type it, such as: 92 rear bibb, heater idle, 123 Elm St",
	Busy:      "Slack is slow just now and nothing was kept. Please try again.",
	ByForm:    "by form", ReportTitle: "Report a reading", CorrectTitle: "Put a report right",
	Send: "Send", Cancel: "Cancel", Loading: "One moment …",
	House: "House", HouseExample: "123 Elm St", Pressure: "Pressure, psi", Where: "Measured at", Heater: "Water heater", Flow: "Water",
	Note: "Anything else seen or done", Text: "What is right",
	TextHint: "Pressure, where it was measured, whether the heater was idle, and the house.",
	NoHouse:  "Please give the house, such as 123 Elm St.", NoPressure: "Please give the pressure as a number of psi, such as 92.",
	Choose: "Choose",
	Points: []said{{"Rear hose bibb", "rear bibb"}, {"Front hose bibb", "front bibb"}, {"Side hose bibb", "side bibb"}, {"Laundry tap", "laundry tap"},
		{"Heater drain", "heater drain"}, {"Kitchen tap", "kitchen tap"}, {"Bath", "bath"}, {"Street side of the regulator", "street side"}, {"Right after the regulator", "after the prv"}, {"Irrigation tap", "irrigation"}},
	Heaters: []said{{"Idle, not heating", "heater idle"}, {"Heating", "heater firing"}},
	Flows:   []said{{"Nothing running", "static"}, {"Water running", "flowing"}},

	HomeReport: "Report a reading", HomeUpdated: "As of",
	HomeHow: "Write what the gauge shows, where, and at which house, in a field channel or here in Messages: 92 rear bibb, heater idle, 123 Elm St. Ask with: history 123 Elm St, due, help.",
}

var spanish = phrases{
	Next: "Siguiente", Caution: "Cuidado",
	FileHint:  "Guardo un archivo solo junto a un reporte. Diga en un mensaje qué midió y dónde, por ejemplo: 92 llave trasera, calentador apagado, 123 Elm St",
	VoiceHint: "No entiendo las palabras de esa grabación. Escríbala, por favor, por ejemplo: 92 llave trasera, calentador apagado, 123 Elm St",
	Busy:      "Slack está lento y no se guardó nada. Inténtelo de nuevo, por favor.",
	ByForm:    "por formulario", ReportTitle: "Reportar una lectura", CorrectTitle: "Corregir un reporte",
	Send: "Enviar", Cancel: "Cancelar", Loading: "Un momento …",
	House: "Casa", HouseExample: "123 Elm St", Pressure: "Presión, psi", Where: "Medida en", Heater: "Calentador de agua", Flow: "Agua",
	Note: "Algo más visto o hecho", Text: "Lo correcto",
	TextHint: "La presión, dónde se midió, si el calentador estaba en reposo, y la casa.",
	NoHouse:  "Indique la casa, por ejemplo 123 Elm St.", NoPressure: "Indique la presión como número de psi, por ejemplo 92.",
	Choose: "Elija",
	Points: []said{{"Llave trasera", "rear bibb"}, {"Llave delantera", "front bibb"}, {"Llave lateral", "side bibb"}, {"Llave de lavandería", "laundry tap"},
		{"Drenaje del calentador", "heater drain"}, {"Llave de cocina", "kitchen tap"}, {"Baño", "bath"}, {"Lado de la calle del regulador", "street side"}, {"Justo después del regulador", "after the prv"}, {"Llave de riego", "irrigation"}},
	Heaters: []said{{"En reposo", "heater idle"}, {"Calentando", "heater firing"}},
	Flows:   []said{{"Nada abierto", "static"}, {"Agua corriendo", "flowing"}},

	HomeReport: "Reportar una lectura", HomeUpdated: "Al",
	HomeHow: "Escriba qué marca el manómetro, dónde y en qué casa, en un canal de campo o aquí en Mensajes: 92 llave trasera, calentador en reposo, 123 Elm St. Pregunte con: history 123 Elm St, due, help.",
}

// phrasesIn returns the phrases of a language code or locale such as "es-MX".
func phrasesIn(lang string) *phrases {
	if strings.HasPrefix(strings.ToLower(lang), "es") {
		return &spanish
	}
	return &english
}
