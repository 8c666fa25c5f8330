package intents

// tongue is the language that a small word tells.
type tongue uint8

const (
	tellsEnglish tongue = iota + 1
	tellsSpanish
)

// smallWords are words that tell the one language or the other.
var smallWords = map[tongue][]string{
	tellsEnglish: {
		"the", "is", "at", "and", "with", "for", "it", "was", "of", "on", "to", "what", "my", "that", "this",
		"heater", "kitchen", "front", "rear", "street", "how", "in", "you", "now", "off", "back", "bib",
		"gauge", "water", "tank",
	},
	tellsSpanish: {
		"el", "la", "los", "las", "de", "del", "en", "que", "y", "con", "por", "para", "esta", "es", "un", "una",
		"se", "ya", "le", "lo", "al", "su", "mi", "como", "libras", "cocina", "atras", "enfrente", "boiler",
		"calentador", "agua", "reguladora", "llave", "lavadora", "regadera", "medidor", "presion", "apagado",
		"prendido", "casa", "hay", "nada", "tanque", "cuanto", "muy", "pero", "senora", "ahorita", "oye", "jefe",
		"manana", "ayuda", "borra", "quita", "marca", "tiene", "sin", "dice", "hoy", "ke", "xq", "pa", "puse",
		"cambie", "deje", "llegar", "gotea", "tina", "lavabo", "alivio", "fuga", "libra", "mande", "pendiente",
		"porfa", "cuando", "donde", "esa", "ese", "eso", "fue", "era", "voy", "quedo",
	},
}
