package intents

// message is one message on its way to a frame.
type message struct {
	p       *Parser
	scratch *scratch
	ctx     Context
	raw     string
	clean   clean
	toks    []token
	items   []item
	kinds   classSet // the classes of all items
	keys    key      // the keys of all items
	roles   uint32   // the roles that numbers were given, one bit each
	allKeys key      // of every item, besides its own
	open    gateSet  // the gates that what it holds opens
	held    askSet   // the lists of questions that its words stand in

	heard               bool   // the next are known
	mayOpine            bool   // it holds what no question for an opinion can do without
	mayAsk, mayAskFirst bool   // what no formula, no sure one can do without
	mayCue, mayCueFirst bool   // what no recipe of cues, no sure one can do without
	cues                cueSet // what its words may lend to its clauses
	flats               bool   // a word of it may name a flat
	sents               []sentence
	sites               []address
	site                *address
	frame               Frame
	notes               []note
	explain             bool

	moments   []moment
	verbs     []verb
	readings  []reading
	equipment equipmentSet
	work      []workDone
	plans     []planned
	asks      []asked
	reports   int8 // whether any pressure is reported: 0 not looked yet, 1 no, 2 yes
	symptoms  []symptomSeen
	sections  []section
	foundLeft bool // the note has heads of how things were found and left
}

// understand runs the rules, room by room.
func (m *message) understand() {
	if m.site != nil {
		m.frame.Site, m.frame.Town, m.frame.Postcode = m.site.line, m.site.town, m.site.postcode
	}
	if m.twoHouses() {
		m.frame.Site, m.frame.Town, m.frame.Postcode = "", "", ""
		m.frame.Statements = nil
		return
	}
	if m.corner() {
		return
	}
	m.fromRecord()
	m.houseAgain()
	m.hands()
	m.oldTakenOut()
	m.crewBooked()
	m.reliefWeeps()
	m.places()
	m.pointedBack()
	m.dates()
	m.ask()
	m.asides()
	m.terse()
	m.findSections()
	m.findVerbs()
	m.numbers()
	m.findReadings()
	m.findWork()
	m.findPlans()
	m.findEquipment()
	m.newUnsaid()
	m.findSymptoms()
	m.statesOfReadings()
	m.settle()
	m.earlierDay()
	m.collect()
	m.frame.Answer = m.answer()
	m.amend()
}
