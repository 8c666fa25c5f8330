package intents

import "testing"

func TestEveryListHasItsWords(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for x, name := range listNames {
		if name == "" || len(p.lex.lists[x]) == 0 {
			t.Errorf("list %d, %q, has no words in the lexicon", x, name)
		}
	}
}

func TestAnUnknownListIsRefused(t *testing.T) {
	if err := newLexicon().line("list nosuch: a | b", nil); err == nil {
		t.Error("a list that no rule asks for was read")
	}
}
