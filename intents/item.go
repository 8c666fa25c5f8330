package intents

// item is a phrase, a number, a mark or the street line: what rules look at.
type item struct {
	kinds     classSet // the classes among tags
	text      string
	num       *numeral
	tags      []tag
	values    valueSet // the values among tags
	keys      key      // the rules that may begin here
	lists     *listSet // the lists that the text stands in
	sent      int
	seg       int
	mark      bool
	site      bool
	weak      bool // a point only beside a number: "back"
	muted     bool // of a clause that speaks of no house
	ranged    bool // the middle of two
	takesOver bool
	role      role
	point     string // the test point that the phrase names
	value     float64
	unit      string // of a number
	tok, n    int    // tokens
	why       string // of a number: what made its role
	owner     int    // 1+index of the word of work that a number belongs to
	inherits  int    // the number that this one corrects
}

// call makes item i the word w, which means nothing.
func (m *message) call(i int, w string) {
	m.unsay(i)
	e := m.p.lex.look(w)
	m.items[i].text, m.items[i].keys, m.items[i].lists = w, e.keys, e.lists
	m.keys |= e.keys
	m.open.join(&e.gates)
}

// say makes item i the word w of the lexicon.
func (m *message) say(i int, w string) {
	node := m.p.lex.first[m.p.lex.look(w).id]
	m.means(&m.items[i], node)
	m.kinds |= m.items[i].kinds
	m.keys |= m.items[i].keys
}

// unsay takes its meaning from item i: it is only a word here.
func (m *message) unsay(i int) { m.items[i].tags, m.items[i].kinds = nil, 0 }
