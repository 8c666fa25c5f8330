package intents

import "strings"

// Lists of the lexicon that these rules know.
var (
	listWouldBe          = listOf("would be")
	listSupposing        = listOf("supposing")
	listHoldOn           = listOf("hold on")
	listShows            = listOf("shows")
	listToShown          = listOf("to shown")
	listDeniedVerbGoes   = listOf("denied verb goes")
	listInCondition      = listOf("in condition")
	listReaches          = listOf("reaches")
	listGoesAbove        = listOf("goes above")
	listIsReally         = listOf("is really")
	listGuesses          = listOf("guesses")
	listMight            = listOf("might")
	listAsHighAs         = listOf("as high as")
	listAsksOfReading    = listOf("asks of reading")
	listDoubtsReading    = listOf("doubts reading")
	listOpensDoubt       = listOf("opens doubt")
	listWritesReading    = listOf("writes reading")
	listBesideOtherHouse = listOf("beside other house")
	listAgo              = listOf("ago")
	listFeasts           = listOf("feasts")
)

// Words that make a number no pressure that was measured, although a test point stands beside it
// or a gauge is in hand: it is denied, supposed, wished for or asked about, it is the end of a
// gauge's face, of a month gone by, or the neighbour's. What would make it a pressure says
// nothing against them.

// doubts tell that a number was not measured on this visit.
var doubts = numberRulesOf([]numberRule{
	{(*message).notShown, "denied", onlyWithClass(cNeg)},
	{(*message).supposes, "supposed, not measured", gateOf(opener{words: []string{"say"}, lists: []list{listSupposing, listMight, listGuesses}})},
	{(*message).wouldBe, "what somebody wants", onlyWithList(listWouldBe)},
	{(*message).askedAbout, "asked about", onlyWithList(listDoubtsReading, listOpensDoubt, listAsksOfReading)},
	{(*message).ofFace, "a gauge's range", gaugeGate},
	{(*message).inMonthPast, "from memory", gateOf(opener{words: wordsOf(months)})},
	{(*message).readAgo, "from memory", onlyWithList(listAgo, listFeasts)},
	{(*message).leftByInstall, "what it was installed at", onlyWith(cDid, "installed", "replaced")},
	{(*message).besideOther, othersNumber, onlyWith(cWhose, "other")},
	{(*message).ofHydrant, othersNumber, onlyWithClass(cWhose, cSkip)},
	{(*message).answersQuoted, "says yes to a quoted line", alwaysOpen},
	{(*message).mayBeMinutes, "may be minutes to wait", onlyWithList(listHoldOn)},
	{(*message).sideOrNextDoor, "at the side, or next door", onlyWithWords("al lado")},
	{(*message).isAnother, "is said to be another number", onlyWithList(listIsReally, listLinks)},
	{(*message).oneOfTwo, "one of two numbers", alwaysOpen},
	{(*message).behindSerial, "may go on a number that is a name", gateOf(nounWords)},
})

// notMeasured tells why the number at i was not measured on this visit, "" when nothing says so.
func (m *message) notMeasured(i int) string { return m.reason(doubts, i) }

// readAgo tells whether the clause of the number at i tells a pressure of months or years gone by: "two years
// ago it read 88", "it was 88 before Christmas". What the tech read days ago is put down late.
func (m *message) readAgo(i int) bool {
	from, to := m.clauseStart(i), m.clauseEnd(i)
	gone := false
	for k := from; k < to; k++ {
		switch {
		case m.meets(k, setOf(cDid, cNow)) || m.noGauge(k) || m.says(k, "i", "we", "ive", "weve"):
			return false
		case m.inList(k, listAgo):
			gone = gone || m.countsMonths(k-1) || m.text(k) == "hace" && m.countsMonths(k+1)
		case m.inList(k, listFeasts) && k > i:
			gone = gone || m.says(k-1, "before", "b4", "until", "till") && m.pastVerb(i)
		}
	}
	return gone
}

// countsMonths tells whether item k is a number of months or years, or names such a time: "2 years", "years".
func (m *message) countsMonths(k int) bool {
	u, ok := m.val(k, cUnit)
	if m.isNum(k) {
		u, ok = m.items[k].unit, true
	}
	return ok && (u == "month" || u == "year")
}

// leftByInstall tells whether the number at i is what a part was set to when it was put in, years before:
// "installed in '14 at 60, kitchen 72 now".
func (m *message) leftByInstall(i int) bool {
	if !m.says(i-1, "at", "@") || !m.numIs(i-2, roleYear) || !m.closes(i) {
		return false
	}
	return m.left(i-2, 4, true, func(k int) bool { return m.isAny(k, cDid, "installed", "replaced") || m.is(k, cHint, "wentin") }) >= 0
}

// longestHalt is how many minutes somebody asks another to wait for at most.
const longestHalt = 30

// mayBeMinutes tells whether a small number is all that a message says behind a word of halting:
// "hang on, 20" is minutes or what the gauge in hand fell to, and asks.
func (m *message) mayBeMinutes(i int) bool {
	if it := &m.items[i]; !m.gaugeInHand() || it.value > longestHalt || it.unit != "" || !it.num.integer || i != len(m.items)-1 {
		return false
	}
	k := i - 1
	for m.isMark(k, ",") || m.says(k, "me", "for", "in", "like", "about") {
		k--
	}
	if k < 0 || k != m.sents[m.items[i].sent].from || !m.inList(k, listHoldOn) {
		return false
	}
	m.askPlace(i)
	return true
}

// notShown tells whether a denied verb of showing leads to the number at i: "not reading 74", "never
// got to 60", "no marca 80". With "below" or "de" between, it tells a bound.
func (m *message) notShown(i int) bool {
	k := i - 1
	for m.inList(k, listToShown) || m.is(k, cHint, "hedge") {
		k--
	}
	if !m.inList(k, listShows) {
		return false
	}
	for k--; m.inList(k, listDeniedVerbGoes); k-- {
	}
	return m.is(k, cNeg, "") && m.items[k].seg == m.items[i].seg && !(m.says(k, "never", "nunca") && m.says(k+1, "saw", "see", "seen", "vi")) // which marvels
}

// supposes tells whether the number at i stands in what somebody only thinks of: "if I see 100 again",
// "might hit 90 at the front". "If I open the tub it drops to 50" tells what was seen.
func (m *message) supposes(i int) bool {
	for k := i - 1; k >= m.clauseStart(i) && k >= i-7; k-- {
		switch {
		case m.inList(k, listSupposing) && (m.text(k) != "si" || k+1 < i && m.inList(k+1, listGoesAbove)):
			return true
		case !m.items[i].ranged && (m.inList(k, listGuesses) || m.inList(k, listMight) && m.says(k+1, "be", "have")):
			m.askGuess(i)
			return true
		case m.text(k) == "say" && k == m.clauseStart(i) && m.says(k+1, "its", "it is", "you have", "you got"):
			return true // "say it's 100 at the street"
		case m.inList(k, listMight):
			return m.mayCome(k+1, i)
		case m.inList(k, listReaches), m.inList(k, listAsHighAs), m.is(k, cHint, "hedge"):
		case !m.inList(k, listInCondition) && m.items[k].point == "" && m.items[k].role != roleTaken:
			return false
		}
	}
	return false
}

// askGuess asks whether the number at i, which its writer seems to guess at, was measured: "I bet it's
// 100 at the street".
func (m *message) askGuess(i int) {
	if m.pointNear(i) || m.gaugeInHand() {
		m.askPlace(i)
	}
}

// mayCome tells whether items from..i say that something may come to the number at i: "get as high as".
func (m *message) mayCome(from, i int) bool {
	if m.inList(from, listReaches) {
		return true
	}
	return m.says(from, "get", "be") && m.says(from+1, "as", "as high as", "as much as", "up to")
}

// wouldBe tells whether the words behind the number at i make it a wish: "60 would be nice".
func (m *message) wouldBe(i int) bool {
	k := i + 1
	if m.is(k, cUnit, "") {
		k++
	}
	return m.inList(k, listWouldBe) && !m.says(k+1, "have", "not")
}

// askedAbout tells whether the clause of the number at i asks whether that is right: "is 74 ok at the
// rear?", "was that 58 or 85". "Rear 74, is that ok?" tells it first.
func (m *message) askedAbout(i int) bool {
	s := &m.sents[m.items[i].sent]
	first := m.clauseStart(i)
	for first < i && (m.items[first].mark || m.inList(first, listFillers)) {
		first++
	}
	if first == i {
		return false
	}
	if m.inList(first, listDoubtsReading) || m.inList(first, listOpensDoubt) && m.doubtsInTwo(first) {
		return true
	}
	return s.question && m.inList(first, listAsksOfReading) && !m.asksToWrite(first, i)
}

// asksToWrite tells whether a clause that begins at item first asks for the number at i to be written down: "would you
// enter 94 psi at 12 Elm?", but not "would you put in a prv at 94?".
func (m *message) asksToWrite(first, i int) bool {
	if m.text(first+1) != "you" && m.text(first+1) != "u" {
		return false
	}
	k := first + 2
	for m.says(k, "please", "pls", "plz", "also", "just", "go ahead and") {
		k++
	}
	return m.inList(k, listWritesReading) && m.right(k, i-k, true, func(j int) bool { return m.is(j, cItem, "") && !m.is(j, cItem, "gauge") }) < 0
}

// doubtsInTwo tells whether item i doubts a reading together with the one or two words behind it.
func (m *message) doubtsInTwo(i int) bool {
	pair := m.text(i) + " " + m.text(i+1)
	return m.p.lex.inList(pair, listDoubtsReading) || m.p.lex.inList(pair+" "+m.text(i+2), listDoubtsReading)
}

// ofFace tells whether the number at i is the end of a gauge's face: "manómetro de 200", "gauge is a
// 300 lb one", "a 100 psi gauge for a 200 psi gauge".
func (m *message) ofFace(i int) bool {
	switch m.items[i].value {
	case 30, 60, 100, 150, 160, 200, 300, 400:
	default:
		return false
	}
	gauge := func(k int) bool { return m.is(k, cItem, "gauge") }
	switch {
	case m.says(i-1, "de", "of") && gauge(i-2), gauge(i+1) && m.items[i].unit == "psi" && !m.pointAt(i-1):
		return true
	case m.says(i-1, "llega a", "llega hasta", "goes to", "reaches") && gauge(i-2) && !m.pointInClause(i):
		m.askPlace(i)
		return true
	case m.says(i-1, "a", "un"):
		return m.inList(i-2, listLinks) && m.left(i, 5, false, gauge) >= 0 && !m.pointInClause(i)
	}
	return false
}

// inMonthPast tells whether a month stands beside the number at i with no day: "72 in march", "en
// marzo daba 72".
func (m *message) inMonthPast(i int) bool {
	month := func(k int) bool {
		return m.says(k-1, "in", "back in", "en", "last") && m.monthAt(k) > 0 && m.monthAt(k) != m.ctx.Today.Month && !(m.isNum(k+1) && k+1 != i)
	}
	if month(i + 2) {
		return true
	}
	from := m.clauseStart(i)
	return m.pastVerb(i) && m.left(i, i-from, false, month) >= 0
}

// besideOther tells whether somebody else's house stands right beside the number at i: "next door 68",
// "71 at the neighbor's".
func (m *message) besideOther(i int) bool {
	if k := i - 1; m.is(k, cWhose, "other") && !strings.Contains(m.text(k), "gauge") && !m.pointInClause(i) {
		return true
	}
	k := i + 1
	for m.inList(k, listBesideOtherHouse) || m.inList(k, listLinks) || m.is(k, cDeterminer, "") {
		k++
	}
	if !m.is(k, cWhose, "other") || !m.closes(k) || strings.Contains(m.text(k), "gauge") {
		return false
	}
	if m.is(i-1, cDeterminer, "") || m.text(i-1) == "ese" {
		m.disown(i)
	}
	return true
}

// disown voids what was told before of the number at i, which turned out to be no pressure of this
// house: "rear 71, sorry the 71 was the neighbor's".
func (m *message) disown(i int) {
	for k := range m.items[:i] {
		if m.numIs(k, roleReading) && m.items[k].value == m.items[i].value {
			m.setRole(k, roleIgnored, othersNumber)
		}
	}
}

// ofHydrant tells whether the number at i was measured at a hydrant of the city's.
func (m *message) ofHydrant(i int) bool {
	k := m.left(i, 6, false, func(k int) bool {
		return strings.HasPrefix(m.text(k), "hydrant") && m.meets(k, setOf(cWhose, cSkip))
	})
	return k >= 0 && m.items[k].seg == m.items[i].seg && !m.meets(k, pointClasses) && !m.taken(k) && !m.is(k-1, cPlace, "")
}

// answersQuoted tells whether the number at i only says yes to a quoted line: "> should I aim for
// 60?", "yes 60".
func (m *message) answersQuoted(i int) bool {
	if len(m.clean.quoted) == 0 || !m.closes(i) || m.items[i].unit != "" || !m.is(i-1, cPresent, "") || m.firstOf(m.items[i].sent) < i-1 {
		return false
	}
	m.askPlace(i)
	return true
}

// sideOrNextDoor asks of the number at i behind a Spanish "al lado" with no tap named: "atrás 81, al
// lado 83".
func (m *message) sideOrNextDoor(i int) bool {
	if m.text(i-1) != "al lado" || m.is(i-2, cBibb, "") || m.clauseStart(i) != i-1 {
		return false
	}
	m.askPlace(i)
	return true
}

// behindSerial asks of the number at i right behind one that is a name, which it may go on: "serial
// 4471 84".
func (m *message) behindSerial(i int) bool {
	if !m.numIs(i-1, roleIgnored) || m.items[i].unit != "" || len(m.items[i-1].num.digits) < 3 || !m.nounBefore(i-2) || m.points(i) {
		return false
	}
	m.askPlace(i)
	return true
}

// isAnother asks of the number at i that is said to be another one: "my kitchen 83 is a 63".
func (m *message) isAnother(i int) bool {
	k := i + 1
	really := m.inList(k, listIsReally)
	if m.items[i].unit != "" || !really && !m.inList(k, listLinks) {
		return false
	}
	for k++; m.says(k, "really", "actually", "a"); k++ {
	}
	if k == i+2 && !really || !m.isNum(k) || m.items[k].unit != "" || !m.closes(k) || m.items[k].value < 15 || m.items[k].value > 200 {
		return false
	}
	m.setRole(k, roleIgnored, "one of two numbers")
	m.askWhich(i, k)
	return true
}

// oneOfTwo asks of two numbers in a row of which a gauge shows one, or that are the ends between which
// its needle swings: "gauge reads 61 62".
func (m *message) oneOfTwo(i int) bool {
	k := i + 1
	if !m.isNum(k) || m.isNum(k+1) || m.items[i].unit != "" || m.items[k].unit != "" || abs(int(m.items[k].value-m.items[i].value)) > 9 ||
		!m.ledByShowing(i) || m.pointInClause(i) || !m.closes(k) {
		return false
	}
	m.setRole(k, roleIgnored, "one of two numbers")
	m.askWhich(i, k)
	return true
}
