package intents

// item is a phrase, a number, a mark or the street line: what rules look at.
type item struct {
	tok, n    int // tokens
	text      string
	tags      []tag
	kinds     classSet // the classes among tags
	keys      key      // the rules that may begin here
	num       *numeral
	unit      string // of a number
	mark      bool
	site      bool
	sent      int
	seg       int
	role      role
	why       string // of a number: what made its role
	point     string // the test point that the phrase names
	weak      bool   // a point only beside a number: "back"
	muted     bool   // of a clause that speaks of no house
	used      bool   // an attribute that found its owner
	value     float64
	ranged    bool // the middle of two
	owner     int  // 1+index of the word of work that a number belongs to
	inherits  int  // the number that this one corrects
	takesOver bool
}

// call makes item i the word w, which means nothing.
func (m *message) call(i int, w string) {
	m.unsay(i)
	m.items[i].text, m.items[i].keys = w, m.p.lex.look(w).keys
	m.keys |= m.items[i].keys
}

// say makes item i the word w of the lexicon.
func (m *message) say(i int, w string) {
	node := m.p.lex.first[m.p.lex.vocab[w]]
	m.means(&m.items[i], node)
	m.kinds |= m.items[i].kinds
	m.keys |= m.items[i].keys
	m.hold(m.items[i].tags)
}

// unsay takes its meaning from item i: it is only a word here.
func (m *message) unsay(i int) { m.items[i].tags, m.items[i].kinds = nil, 0 }
