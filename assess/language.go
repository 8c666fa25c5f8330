package assess

// wording is a text with its basis. {house}, {pm}, {street}, {bottom}, {top}
// and the like are filled in by the rule in findings.go.
type wording struct{ text, basis string }

// checkWords say what to do, and why.
type checkWords struct{ do, why string }

// wordTable holds everything of an assessment that people read, in one
// language. A new finding, check or follow-up needs its line in each table; a
// test sees to it.
type wordTable struct {
	findings  map[string]wording
	checks    map[string]checkWords
	followUps map[string]string
}

func (l Lang) table() *wordTable {
	if l == Spanish {
		return &spanish
	}
	return &english
}
