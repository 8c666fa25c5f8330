package intents

import (
	"strings"

	"lazyhand/assess"
)

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

// spanishVerb tells whether a deed is told by a Spanish verb, which "no" right
// before it denies: "no cambié"; in English "no" never stands there.
func spanishVerb(s string) bool {
	last := lastWord(s)
	for _, e := range [...]string{"e", "i", "o", "mos", "aron", "ieron", "ado", "ido"} {
		if strings.HasSuffix(last, e) && len(last) > len(e)+1 {
			return true
		}
	}
	return false
}

// languages counts the small words of the two languages.
func (l *lexicon) languages(toks []token) (es, en int) {
	for i := range toks {
		if t := &toks[i]; t.kind == word {
			switch l.of(t).tells {
			case tellsSpanish:
				es++
			case tellsEnglish:
				en++
			}
		}
	}
	return es, en
}

// speaksSpanish tells whether more of a message's small words are Spanish than English.
func (l *lexicon) speaksSpanish(toks []token) bool {
	es, en := l.languages(toks)
	return es > en
}

// spanish guesses the message's language from its small words.
func (m *message) spanish() bool {
	es, en := m.p.lex.languages(m.toks)
	return es > en || es == en && m.ctx.Spanish
}

// Language guesses the language that the writer of text would like to be
// answered in.
func (p *Parser) Language(text string) assess.Lang {
	d := p.scratches.Get().(*scratch)
	spanish := p.lex.speaksSpanish(p.lex.tokenize(undo(text, d), d))
	d.clear()
	p.scratches.Put(d)
	if spanish {
		return assess.Spanish
	}
	return assess.English
}
