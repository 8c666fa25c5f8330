package desk

import (
	"strings"

	"lazyhand/assess"
)

// chosenLanguage reads a message that does nothing but choose a language.
func chosenLanguage(text string) (assess.Lang, bool) {
	switch strings.Trim(strings.ToLower(strings.Join(strings.Fields(text), " ")), ".!¡") {
	case "español", "espanol", "en español", "en espanol", "spanish", "in spanish":
		return assess.Spanish, true
	case "english", "in english", "inglés", "ingles", "en inglés", "en ingles":
		return assess.English, true
	}
	return "", false
}

// choose keeps the language that a person chose.
func (t *turn) choose(l assess.Lang) error {
	t.person.Lang, t.lang = l, l
	if err := t.tx.KeepPerson(t.person); err != nil {
		return err
	}
	return t.say(Body{Lead: t.words().LanguageChosen})
}

// languageOf tells the language in which somebody writes who has not chosen
// one: the shop's, unless the message is plainly in the other.
func languageOf(text string, shop assess.Lang) assess.Lang {
	spanish, english := 0, 0
	for _, w := range strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return strings.ContainsRune(" \t\n.,;:!?¿¡()", r) }) {
		switch {
		case spanishWords[w] || strings.ContainsAny(w, "ñáéíóú"):
			spanish++
		case englishWords[w]:
			english++
		}
	}
	switch {
	case spanish >= 2 && spanish > 2*english:
		return assess.Spanish
	case english >= 2 && english > 2*spanish:
		return assess.English
	}
	return shop
}

// Everyday words that only one of the languages has.
var (
	spanishWords = wordSet(`el la los las un una de del al en con sin por para que qué es está y no hay mi lo le se
		llave atras atrás enfrente calentador prendido apagado lavadora medidor casa agua presión presion tanque reguladora válvula valvula
		historial pendiente pendientes revisar borra ponle listo hoy mañana semanas días cambié puse quedó marca marcó lectura`)
	englishWords = wordSet(`the a an of in with without at for is was and no not it my to from now
		rear back front heater idle firing off laundry meter house water pressure tank regulator valve bibb tap kitchen
		history due recheck scratch make done today tomorrow weeks days replaced set reading street`)
)

func wordSet(words string) map[string]bool {
	out := map[string]bool{}
	for _, w := range strings.Fields(words) {
		out[w] = true
	}
	return out
}
