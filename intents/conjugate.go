package intents

import "strings"

// A Spanish verb of work is written in the lexicon by its infinitive alone, on a line
// "verbo VALUE: cambiar | sustituir"; the forms that tell a deed, or name it, grow here:
// "cambié", "se le cambió", "ya quedó cambiada", "tuve que cambiarla".

// addVerbo keeps the forms of regular verbs of a kind of work.
func (l *lexicon) addVerbo(value, body string) error {
	did, base := tag{class: cDid, value: value}, tag{class: cBase, value: value}
	plan, job := planOf(value)
	to := tag{class: cDo, value: plan}
	for _, inf := range strings.Split(body, "|") {
		f := conjugate(fold(strings.TrimSpace(inf)))
		l.add([][]string{spanishClitics, {f.i, f.we}}, did)
		l.add([][]string{{"he", "hemos", "se+ha", "se+le+ha"}, f.done[:1]}, did)
		l.add([][]string{{"se", "se+le", "se+les"}, {f.it}}, did)
		l.add([][]string{spanishCrew, spanishClitics, {f.it}}, did) // "mi compañero cambió la reguladora"
		l.add([][]string{{"fue", "quedo", "quedaron", "ya+quedo", "ya+esta"}, f.done}, did)
		l.add([][]string{f.done}, did)
		if job {
			l.add([][]string{spanishEarlier, f.done[:1]}, tag{class: cWord}) // "la otra compañía le había cambiado el tanque"
		}
		l.add([][]string{spanishClitics, {f.now}}, to) // "el viernes le coloco el tanque"
		l.add([][]string{spanishIsDone, {f.isDone, f.inf + "a"}}, to)
		l.add([][]string{spanishToCome, {f.inf + "e", f.inf + "emos", f.inf + "an"}}, to)
		l.add([][]string{spanishToCome, f.beDone}, to)
		for _, t := range [...]tag{to, {class: cWill}} {
			l.add([][]string{{"que"}, spanishToCome, f.beDone}, t) // "dijo que le cambien la reguladora"
		}
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
	spanishIsDone  = []string{"se", "se+le", "se+les"}
	spanishCrew    = []string{"mi+companero", "mi+ayudante", "mi+chalan", "mi+compa", "mi+pareja", "el+ayudante", "el+chalan"}
	spanishEarlier = []string{"habia", "habian", "le+habia", "le+habian", "les+habian", "se+habia", "se+le+habia", "la+habian", "lo+habian"}
	spanishToCome  = []string{"_", "le", "les", "se", "se+le", "se+les"}
	spanishEnds    = [...]string{"", "la", "lo", "le", "les", "las", "los"}
)

// forms are those of a verb that tell what was done.
type forms struct {
	inf, i, we, it string
	now            string   // what the writer does: of a day to come
	isDone         string   // what is done: "se cambia"
	beDone         []string // what is asked for: "que cambien"
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
		return forms{inf, soft + "e", stem + "amos", stem + "o", stem + "o", stem + "a",
			[]string{soft + "en", soft + "emos"}, []string{stem + "ado", stem + "ada"}}
	}
	it, now, isDone := stem+"io", stem+"o", stem+"e"
	if strings.HasSuffix(inf, "uir") && !strings.HasSuffix(inf, "guir") {
		it, now, isDone = stem+"yo", stem+"yo", stem+"ye" // sustituir, sustituyó
	}
	ask := now[:len(now)-1] // sustituya
	return forms{inf, stem + "i", stem + "imos", it, now, isDone, []string{ask + "an", ask + "amos"}, []string{stem + "ido", stem + "ida"}}
}
