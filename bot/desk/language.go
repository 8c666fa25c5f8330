package desk

import (
	"strings"

	"lazyhand/assess"
	"lazyhand/store"
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

// tooShort is how few words do not tell by themselves in which language somebody
// writes.
const tooShort = 4

// heard is the language in which a message is written; one of few words tells
// nothing, and what was heard before stands.
func (d *Desk) heard(before assess.Lang, text string) assess.Lang {
	switch {
	case d.parser.Language(text) == assess.Spanish:
		return assess.Spanish
	case len(strings.Fields(text)) <= tooShort:
		return before
	}
	return ""
}

// language is that in which a person is told something: their choice, else the
// one in which they write, else the shop's.
func (d *Desk) language(p store.Person) assess.Lang {
	for _, l := range []assess.Lang{p.Lang, p.Heard} {
		if l != "" {
			return l
		}
	}
	return d.opt.Lang
}
