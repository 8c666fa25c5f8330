package intents

// Lists of the lexicon that these rules know.
var (
	listGuessesCondition = listOf("guesses condition")
	listToGuessed        = listOf("to guessed")
	listToPredicate      = listOf("to predicate")
	listNearly           = listOf("nearly")
)

// guessGate is that of the words of a guess.
var guessGate = onlyWithList(listGuessesCondition)

// guessedBad tells whether the condition at item i is only guessed at: "might be shot", "probably
// dead", "i think the reg is bad", "bad i think".
func (m *message) guessedBad(i int) bool {
	if m.shut(guessGate) {
		return false
	}
	if m.says(i+1, "i", "id") && m.says(i+2, "think", "bet", "guess", "say") || m.inList(i+1, listGuessesCondition) && m.closes(i+1) {
		return true
	}
	first := m.clauseStart(i)
	for k := i - 1; k >= first; k-- {
		switch {
		case m.inList(k, listGuessesCondition):
			return !m.is(k-1, cNeg, "")
		case m.inList(k, listToGuessed), m.is(k, cDeterminer, ""), m.is(k, cHint, "possessive"), m.is(k, cItem, "") && m.items[k].seg == m.items[i].seg:
		default:
			return false
		}
	}
	return false
}

// nearlySo tells whether the condition at item i is nearly reached: "almost frozen", "corroded shut nearly".
func (m *message) nearlySo(i int) bool {
	return m.inList(i-1, listNearly) && !m.is(i-2, cNeg, "") || m.inList(i+1, listNearly) && m.closes(i+1)
}

// ofThing tells whether the word at item i is the condition of a thing right beside it, whatever
// else it may be said of: "reg is kinda rusty", "exp tank - weak", "a rusty heater".
func (m *message) ofThing(i int) bool {
	if !m.is(i, cCond, "") || m.meets(i+1, setOf(cWater)) {
		return false
	}
	thing := func(k int) bool {
		return (m.is(k, cItem, "") || m.heaterStands(k)) && m.items[k].sent == m.items[i].sent && !(m.items[k].point != "" && m.pointUsed(k)) && !m.meets(k+1, setOf(cWater))
	}
	if thing(i+1) && !m.inList(i-1, listLinks) && !m.waterNear(i) {
		return true
	}
	k := i - 1
	for m.inList(k, listLinks) || m.is(k, cHint, "appears") || m.inList(k, listHowMuch) || m.inList(k, listToPredicate) || m.is(k, cHint, "perhaps") {
		k--
	}
	for m.says(k, "here", "here is", "there", "there is", "this", "on", "in", "the") || m.is(k, cHint, "building") {
		k-- // "heater down there is rusty", "the heater on this house"
	}
	return thing(k)
}
