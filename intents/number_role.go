package intents

// role is what a number means.
type role uint8

const (
	roleNone    role = iota
	roleTaken        // belongs to a neighbour
	roleReading      // a pressure measured
	roleYear
	roleAge      // years since it was installed
	roleAgo      // years ago
	roleSize     // gallons
	roleTemp     // a thermostat's setting
	roleSetting  // what a regulator is set to
	roleCharge   // what a tank's air is
	roleTo       // of a work: set to
	roleFrom     // of a work: set before
	roleDuration // of a plan or a snooze
	roleDate
	roleAsked // belongs to a question
	roleIgnored
)

var roleNames = [...]string{
	roleReading: "reading", roleYear: "year", roleAge: "age", roleAgo: "years ago", roleSize: "size", roleTemp: "setpoint",
	roleSetting: "setting",
	roleCharge:  "air charge", roleTo: "set to", roleFrom: "set from", roleDuration: "time", roleDate: "date", roleAsked: "question",
	roleIgnored: "no report",
}

// setRole gives the number at item i a role, and keeps why.
func (m *message) setRole(i int, r role, why string) {
	m.items[i].role, m.items[i].why = r, why
	m.roles |= 1 << r
	m.note(i, roleNames[r], why)
}

// gave tells whether any number was given a role, which it may have lost again.
func (m *message) gave(r role) bool { return m.roles>>r&1 != 0 }

// numbers decides what each number means.
func (m *message) numbers() {
	m.shareUnits()
	m.ranges()
	m.declare()
	for i := range m.items {
		if m.items[i].kinds.has(cSame) {
			m.same(i)
		}
		it := &m.items[i]
		if it.num == nil || it.role != roleNone {
			continue
		}
		r, why := m.roleOf(i)
		if (r == roleTo || r == roleSetting) && it.unit == "" && it.value < leastPSI && it.value > 0 {
			it.owner, r, why = 0, roleIgnored, "too small for a setting in psi"
		}
		m.setRole(i, r, why)
		m.noteSecond(i, r)
	}
	m.fromBefore()
	m.corrections()
	m.twoSettings()
}

// ordinal tells whether number item i is one in a row: "80th".
func (m *message) ordinal(i int) bool {
	_, ok := ordinalAt(m.toks, m.items[i].tok)
	return ok
}

func year(v float64) bool { return v >= 1950 && v <= 2049 && v == float64(int(v)) }

// roleRule gives the number at i a role, and says why; roleNone leaves it to the rules
// after it.
type roleRule func(m *message, i int) (role, string)

// numberRule tells for one reason that a number is no pressure measured in the house.
type numberRule struct {
	tells func(m *message, i int) bool
	why   string
	gate  gate // what it cannot do without
}

// numberRules are such rules, asked in turn.
type numberRules struct {
	rules []numberRule
	ruleIndex
}

// numberRulesOf makes a table of such rules.
func numberRulesOf(rules []numberRule) *numberRules {
	return &numberRules{rules, byGate(len(rules), func(k int) gate { return rules[k].gate })}
}

// reason returns why the number at i is no pressure by the first rule that tells, "" for none.
func (m *message) reason(t *numberRules, i int) string {
	for open := t.open(m.open[:]...); open != 0; {
		if r := &t.rules[open.next()]; r.tells(m, i) {
			return r.why
		}
	}
	return ""
}

// partRule tells whether a number is one of a part: what it is set to, or the air in a tank.
type partRule struct {
	reads  func(m *message, i int) (role, string, bool)
	gate   gate // what it cannot do without
	ofDeed bool // it reads what some work told of came to
}

// partRules are such rules, asked in turn.
type partRules struct {
	rules []partRule
	ruleIndex
}

// partRulesOf makes a table of such rules.
func partRulesOf(rules []partRule) *partRules {
	return &partRules{rules, byGate(len(rules), func(k int) gate { return rules[k].gate })}
}

// partRole returns what the number at i is by the first rule that reads it.
func (m *message) partRole(t *partRules, i int) (role, string, bool) {
	for open := t.open(m.open[:]...); open != 0; {
		r := &t.rules[open.next()]
		if r.ofDeed && len(m.verbs) == 0 {
			continue
		}
		if role, why, ok := r.reads(m, i); ok {
			return role, why, true
		}
	}
	return roleNone, "", false
}

// roleRules are asked in turn: by the way the number is written, by its unit, by words
// that make it vague or somebody else's, and last what a number without a unit may be.
var roleRules = [...]roleRule{
	(*message).noQuantityRole,
	(*message).bracketRole,
	(*message).listedRole,
	(*message).unitRole,
	(*message).clockOrCountRole,
	(*message).vagueRole,
	(*message).noneRole,
	(*message).bareRole,
}

// bareRules are the rules of roleRules for a number without a unit.
var bareRules = [...]roleRule{
	(*message).bareAgeRole,
	(*message).dateRole,
	(*message).bareYearRole,
	(*message).nameRole,
}

// roleOf decides one number by its unit, by what stands before and after it,
// and by what the sentence is about.
func (m *message) roleOf(i int) (role, string) {
	for _, rule := range roleRules {
		if r, why := rule(m, i); r != roleNone {
			return r, why
		}
	}
	return m.pressureRole(i)
}

// bareRole reads a number that has no unit: "heater 08", "code 4412".
func (m *message) bareRole(i int) (role, string) {
	if m.items[i].unit == "" && m.moneyTalk(i) {
		return roleIgnored, "money"
	}
	if m.items[i].num.apos {
		return roleYear, "apostrophe"
	}
	if m.items[i].unit != "" {
		return roleNone, ""
	}
	for _, rule := range bareRules {
		if r, why := rule(m, i); r != roleNone {
			return r, why
		}
	}
	return roleNone, ""
}

// has tells whether any item of the message has a tag.
func (m *message) has(c class, value string) bool {
	if !m.kinds.has(c) {
		return false
	}
	for k := range m.items {
		if m.items[k].kinds.has(c) && m.is(k, c, value) {
			return true
		}
	}
	return false
}
