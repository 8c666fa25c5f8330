package assess

// wording is a text with its basis. {house}, {pm}, {street}, {bottom}, {top}
// and the like are filled in by the rule in findings.go.
type wording struct{ text, basis string }

// wordTable holds everything that people read, in one language. A new finding,
// cause, check or caution needs its line in each table; a test sees to it.
type wordTable struct {
	findings  map[string]wording
	checks    map[string]string
	followUps map[string]string
	causes    map[Cause]string
	reasons   map[Reason]string
	cautions  map[Caution]string
}

func (l Lang) table() *wordTable {
	if l == Spanish {
		return &spanish
	}
	return &english
}

// Cause says in a few words what a cause means, empty for one it does not know.
func (l Lang) Cause(c Cause) string { return l.table().causes[c] }

// Reason says why a reading is less than fair, empty for a reason it does not
// know.
func (l Lang) Reason(r Reason) string { return l.table().reasons[r] }

// Caution is the warning as one sentence, empty for a code it does not know.
func (l Lang) Caution(c Caution) string { return l.table().cautions[c] }
