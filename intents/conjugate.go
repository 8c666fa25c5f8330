package intents

import "strings"

// A Spanish verb of work is written in the lexicon by its infinitive alone, on a line
// "verbo VALUE: cambiar | sustituir"; the forms that tell a deed, or name it, grow here:
// "cambié", "se le cambió", "ya quedó cambiada", "tuve que cambiarla".

// addVerbo keeps the forms of regular verbs of a kind of work.
func (l *lexicon) addVerbo(value, body string) error {
	did, base := tag{class: cDid, value: value}, tag{class: cBase, value: value}
	plan, _ := planOf(value)
	to := tag{class: cDo, value: plan}
	for _, inf := range strings.Split(body, "|") {
		f := conjugate(fold(strings.TrimSpace(inf)))
		l.add([][]string{spanishClitics, {f.i, f.we}}, did)
		l.add([][]string{{"he", "hemos", "se+ha", "se+le+ha"}, f.done[:1]}, did)
		l.add([][]string{{"se", "se+le", "se+les"}, {f.it}}, did)
		l.add([][]string{{"fue", "quedo", "quedaron", "ya+quedo", "ya+esta"}, f.done}, did)
		l.add([][]string{f.done}, did)
		l.add([][]string{spanishClitics, {f.now}}, to) // "el viernes le coloco el tanque"
		for _, end := range spanishEnds {
			for _, t := range [...]tag{base, to} {
				l.add([][]string{{f.inf + end}}, t)
			}
		}
	}
	return nil
}

// planOf returns what a kind of work is called as something to do, and whether that is a job of
// its own.
func planOf(work string) (plan string, job bool) {
	switch work {
	case "replaced":
		return "replace", true
	case "installed":
		return "install", true
	case "set":
		return "set", true
	}
	return "other", false
}

// Pronouns before a verb, "_" for none, and those that grow on its infinitive.
var (
	spanishClitics = []string{"_", "le", "les"} // "la" and "lo" are words of their own: what they stand for is looked for
	spanishEnds    = [...]string{"", "la", "lo", "le", "les", "las", "los"}
)

// forms are those of a verb that tell what was done.
type forms struct {
	inf, i, we, it string
	now            string   // what the writer does: of a day to come
	done           []string // the participle of one thing, told as masculine and as feminine
}

// conjugate returns the forms of a regular verb, without accents.
func conjugate(inf string) forms {
	stem := inf[:len(inf)-2]
	if strings.HasSuffix(inf, "ar") {
		soft := stem
		switch stem[len(stem)-1] {
		case 'c':
			soft = stem[:len(stem)-1] + "qu" // trocar, troqué
		case 'g':
			soft = stem + "u" // purgar, purgué
		case 'z':
			soft = stem[:len(stem)-1] + "c" // empezar, empecé
		}
		return forms{inf, soft + "e", stem + "amos", stem + "o", stem + "o", []string{stem + "ado", stem + "ada"}}
	}
	it, now := stem+"io", stem+"o"
	if strings.HasSuffix(inf, "uir") && !strings.HasSuffix(inf, "guir") {
		it, now = stem+"yo", stem+"yo" // sustituir, sustituyó
	}
	return forms{inf, stem + "i", stem + "imos", it, now, []string{stem + "ido", stem + "ida"}}
}
