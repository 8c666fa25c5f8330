package intents

import "strings"

// An English verb of work is written in the lexicon by its base form, with a particle perhaps,
// on a line "verb VALUE: swap out | hang/hung/hung": the forms that tell a deed, name it or say
// that it is to be done grow here: "swapped it out", "swapping out", "to be swapped out". An
// irregular verb gives its past and its participle behind strokes.

// addVerb keeps the forms of verbs of a kind of work.
func (l *lexicon) addVerb(value, body string) error {
	did, base := tag{class: cDid, value: value}, tag{class: cBase, value: value}
	plan, job := planOf(value)
	to := tag{class: cDo, value: plan}
	for _, verb := range strings.Split(body, "|") {
		w := strings.Fields(fold(verb))
		f, rest := inflect(w[0]), w[1:]
		say := func(t tag, forms ...string) {
			alts := [][]string{forms}
			for _, r := range rest {
				alts = append(alts, []string{r})
			}
			l.add(alts, t)
			if len(rest) == 1 && value != "set" { // "swapped it out"; "backed it down" is read by its particle
				l.add([][]string{forms, englishObjects, rest}, t)
			}
		}
		say(did, f.past, f.done)
		say(base, f.base, f.ing)
		say(to, f.base, f.ing)
		if job {
			say(to, f.done) // "needs swapped out"
		}
	}
	return nil
}

// englishObjects are the pronouns that stand between a verb and its particle.
var englishObjects = []string{"it", "that", "her", "him", "them"}

// inflected are the forms of an English verb.
type inflected struct{ base, past, done, ing string }

// inflect returns the forms of a verb, "hang/hung/hung" or a regular one.
func inflect(verb string) inflected {
	parts := strings.Split(verb, "/")
	b := parts[0]
	stem, n := b, len(b)
	switch {
	case strings.HasSuffix(b, "e"):
		stem = b[:n-1]
	case doubles(b):
		stem = b + b[n-1:]
	}
	f := inflected{base: b, past: stem + "ed", ing: stem + "ing"}
	if strings.HasSuffix(b, "y") && !vowel(b[n-2]) {
		f.past = b[:n-1] + "ied"
	}
	f.done = f.past
	if len(parts) == 3 {
		f.past, f.done = parts[1], parts[2]
	}
	return f
}

// doubles tells whether a verb doubles its last letter: "swap", "fit"; not "drain", "fix".
func doubles(b string) bool {
	n := len(b)
	if n < 3 || vowel(b[n-1]) || strings.ContainsRune("wxy", rune(b[n-1])) || !vowel(b[n-2]) || vowel(b[n-3]) {
		return false
	}
	for i := range n - 2 {
		if vowel(b[i]) {
			return false // more than a syllable: "recondition"
		}
	}
	return true
}

func vowel(c byte) bool { return strings.IndexByte("aeiou", c) >= 0 }
