package intents

import "lazyhand/assess"

// language guesses the language of the message from its small words; one that
// mixes both counts as what it has more of.
func (m *message) language() assess.Lang {
	if speaksSpanish(m.toks) {
		return assess.Spanish
	}
	return assess.English
}

// smallWords counts a word for one language or the other.
func smallWords(w string) (en, es int) {
	switch w {
	case "the", "is", "at", "and", "with", "for", "it", "was", "of", "on", "to", "what", "my", "that", "this",
		"heater", "kitchen", "front", "rear", "no", "street", "how", "in", "you", "now", "off", "back", "bib",
		"psi", "gauge", "water", "tank":
		if w == "no" || w == "psi" {
			return 0, 0
		}
		return 1, 0
	case "el", "la", "los", "las", "de", "del", "en", "que", "y", "con", "por", "para", "esta", "es", "un", "una",
		"se", "ya", "le", "lo", "al", "su", "mi", "como", "libras", "cocina", "atras", "enfrente", "boiler",
		"calentador", "agua", "reguladora", "llave", "lavadora", "regadera", "medidor", "presion", "apagado",
		"prendido", "casa", "hay", "nada", "tanque", "cuanto", "muy", "pero", "senora", "ahorita", "oye", "jefe",
		"manana", "ayuda", "borra", "quita", "marca", "tiene", "sin", "dice", "hoy", "ke", "xq", "pa", "puse",
		"cambie", "deje", "llegar", "gotea", "tina", "lavabo", "alivio", "fuga", "libra", "mande", "pendiente",
		"porfa", "cuando", "donde", "esa", "ese", "eso", "fue", "era", "voy", "quedo":
		return 0, 1
	}
	return 0, 0
}
