package desk

import (
	"slices"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// short reads the two or three words that people answer our own posts with, and
// that mean something only because we asked: "done" under a reminder, "done 12
// Alder", "next check 12 Alder", "ponle 66". f is what the parser made of them.
func (t *turn) short(f intents.Frame, root store.Post) intents.Frame {
	said := plainWords(t.m.Text)
	about := intents.About("")
	switch first := at(said, 0); {
	case slices.Contains([]string{"done", "listo", "lista", "hecho", "hecha"}, first):
		about = intents.AskDone
	case first == "next" && slices.Contains([]string{"check", "test"}, at(said, 1)):
		about = intents.AskNextCheck
	case slices.Contains([]string{"ponle", "ponlo"}, first) && readsOnly(f):
		f.Statements = append([]assess.Statement{intents.Ask{About: intents.AskCorrect}}, f.Statements...)
		return f
	}
	ours, _ := siteOfPost(root)                                                                       // a post that cannot be read is about no house
	if about == "" || !isChatter(f) || f.Site == "" && (ours == 0 || len(said) > 3) || t.arrives(f) { // "done, off to 88 Cedar"
		return f
	}
	f.Statements = []assess.Statement{intents.Ask{About: about}}
	return f
}

// readsOnly tells whether a frame holds readings and nothing else.
func readsOnly(f intents.Frame) bool {
	for _, s := range f.Statements {
		if _, ok := s.(assess.Reading); !ok {
			return false
		}
	}
	return len(f.Statements) > 0
}
