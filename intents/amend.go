package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listWasOrIs    = listOf("was or is")
	listSlipDenies = listOf("slip denies")
	listSlipWrote  = listOf("slip wrote")
	listSlipMore   = listOf("slip more")
)

// Amendment is what a message puts right in its writer's last report. What is
// empty stands as it was told.
type Amendment struct {
	Of     int                `json:"of"` // index among the report's statements, -1 when several fit
	PSI    *float64           `json:"psi,omitempty"`
	Point  assess.TestPoint   `json:"point,omitempty"`
	Heater assess.HeaterState `json:"heater,omitempty"`
	Flow   assess.Flow        `json:"flow,omitempty"`
	Year   *int               `json:"year,omitempty"`    // of a thing's installation
	Gal    *float64           `json:"gal,omitempty"`     // its size
	InDays *int               `json:"in_days,omitempty"` // of a plan, from the day of the message that amends
}

// Amend puts a statement of a report right.
func (a Amendment) Amend(s assess.Statement) assess.Statement {
	switch s := s.(type) {
	case assess.Reading:
		if a.PSI != nil {
			s.PSI = *a.PSI
		}
		if a.Point != "" {
			s.Point = a.Point
		}
		if a.Heater != "" {
			s.Heater = a.Heater
		}
		if a.Flow != "" {
			s.Flow = a.Flow
		}
		return s
	case assess.Equipment:
		if a.Year != nil {
			s.InstalledYear = a.Year
		}
		if a.Gal != nil {
			s.SizeGal = a.Gal
		}
		return s
	case assess.Plan:
		if a.InDays != nil {
			s.InDays = a.InDays
		}
		return s
	}
	return s
}

// longestAmendment is how many words put a report right at most.
const longestAmendment = 12

// MayAmend tells whether a message is short enough to put an earlier report
// right and holds a word or a sign that could: only then is the report worth
// looking up.
func MayAmend(text string) bool {
	words := strings.FieldsFunc(fold(text), func(r rune) bool { return strings.ContainsRune(" \n\t,.;:!()", r) })
	if len(words) == 0 || len(words) > longestAmendment {
		return false
	}
	if starred(text) {
		return true
	}
	digits := false
	for _, w := range words {
		digits = digits || strings.ContainsAny(w, "0123456789")
		if cueWords[w] {
			return true
		}
	}
	adds := words[0] == "and" || words[0] == "y" || words[0] == "also" || words[0] == "tambien" // "y el boiler estaba prendido"
	return !digits && (len(words) <= 4 || adds)                                                 // "rear", "heater idle"
}

var cueWords = func() map[string]bool {
	out := map[string]bool{}
	for _, w := range strings.Fields(`actually meant mean sorry oops whoops typo correction no nope not should shouldve wrong wait bad make put typed wrote
		instead was were said wasnt isnt fat mistyped misread mal nah sry scratch change fix rather supposed whole throughout entire
		perdon perdona disculpa quise digo mejor era eran equivoque error corrijo correccion puse ponle vez lugar deberia debe debio fue espera`) {
		out[w] = true
	}
	return out
}()

// starred tells whether a text begins or ends with an asterisk, as people mark
// a slip put right: "81*".
func starred(text string) bool {
	t := strings.TrimSpace(text)
	return strings.Count(t, "*") == 1 && (strings.HasPrefix(t, "*") || strings.HasSuffix(t, "*"))
}

// apologises tells whether a text begins with a word of being sorry, which no item holds
// before a comma.
func apologises(text string) bool {
	words := plainWords(text)
	return len(words) > 0 && oneOf(words[0], "sorry", "sry", "oops", "whoops", "perdon", "disculpa", "perdona")
}

// value is one thing that a correction names, as right or as wrong.
type value struct {
	at     int
	num    bool
	psi    float64
	bare   float64 // the number as written
	unit   string
	point  assess.TestPoint
	heater assess.HeaterState
	flow   assess.Flow
	wrong  bool
}

// slip is a short message taken for a correction of the writer's last report.
type slip struct {
	values []value
	cue    bool // words say that something was wrong
	was    bool // words tell of what was: enough beside a test point or a state
	more   bool // it begins with "and", "also": it can only add a state
}

// amend reads a short message as a correction of the writer's own last report:
// "actually 81", "81 not 91", "sorry rear not front", "quise decir atrás". A
// plain new reading is none. Where it can be one of the house as well, it says that it is a
// correction and not of what.
func (m *message) amend() {
	if m.ctx.Told == nil || m.frame.Site != "" || m.frame.Answer != "" || len(m.items) > longestAmendment+6 {
		return
	}
	plans := false
	for _, s := range m.frame.Statements {
		switch s := s.(type) {
		case assess.Reading, assess.Equipment:
		case assess.Plan:
			plans = true
		case Ask:
			if s.About != AskNone && s.About != AskCorrect && s.About != AskUndo {
				return
			}
		default:
			return
		}
	}
	if m.amendPlan() || plans {
		return
	}
	if m.p.tellsTurned(m.raw) && !apologises(m.raw) && !m.hasAsk(AskCorrect) {
		return // the heater was not so before
	}
	s, ok := m.slip()
	if !ok || len(m.frame.Unclear) > 0 && !s.cue {
		return
	}
	if m.houseSlip(s) {
		m.frame.Statements, m.frame.Unclear = []assess.Statement{Ask{About: AskCorrect}}, nil // of what, is to be asked
		return
	}
	if list := s.amendments(m.ctx.Told.Statements); len(list) > 0 {
		m.frame.Amends, m.frame.Unclear = list, nil // nothing is left that belongs to neither
		m.frame.Statements = []assess.Statement{Ask{About: AskCorrect}}
	}
}

// slip sorts a message's words into what is right and what was wrong; ok is
// false when a word belongs to neither.
func (m *message) slip() (s slip, ok bool) {
	s.cue = starred(m.raw) || apologises(m.raw) || m.hasAsk(AskCorrect)
	deny, words := false, 0
	for i := range m.items {
		it := &m.items[i]
		if it.mark {
			if it.text == "?" {
				return s, false
			}
			continue
		}
		words++
		v, found, ok := m.slipValue(i)
		switch {
		case !ok:
			return s, false
		case found:
			v.wrong, deny = deny, false
			s.values = append(s.values, v)
		case it.role == roleTaken:
		default:
			if deny, ok = m.slipWord(i, &s, deny); !ok {
				return s, false
			}
		}
	}
	if s.more && slices.ContainsFunc(s.values, func(v value) bool { return v.num || v.point != "" }) {
		return s, false
	}
	return s, len(s.values) > 0 && words <= longestAmendment
}

// slipValue reads what a correction may be about: a number, a test point, a state of the
// heater or of the water. With a number that is no pressure it is none, ok is false.
func (m *message) slipValue(i int) (v value, found, ok bool) {
	it := &m.items[i]
	switch {
	case it.num != nil:
		if it.num.time || it.num.phone || it.num.money || it.num.percent || it.num.negative {
			return v, false, false
		}
		return value{at: i, num: true, psi: toPSI(it.value, it.unit), bare: it.value, unit: it.unit}, true, true
	case it.point != "":
		return value{at: i, point: assess.TestPoint(it.point)}, true, true
	case it.role == roleTaken:
		return v, false, true
	case m.is(i, cState, "idle") || m.is(i, cState, "firing"):
		state, _ := m.val(i, cState)
		return value{at: i, heater: assess.HeaterState(state)}, true, true
	case m.is(i, cOn, "") && m.has(cItem, "heater"):
		return value{at: i, heater: assess.Firing}, true, true
	case m.is(i, cOff, "") && m.has(cItem, "heater"):
		return value{at: i, heater: assess.Idle}, true, true
	case m.is(i, cStatic, ""):
		return value{at: i, flow: assess.Static}, true, true
	case m.is(i, cFlowing, ""):
		return value{at: i, flow: assess.Flowing}, true, true
	}
	return v, false, true
}

// slipWord reads any other word of a correction: denies tells that what follows is what was
// wrong. ok is false when it says something else.
func (m *message) slipWord(i int, s *slip, deny bool) (denies, ok bool) {
	t := m.text(i)
	switch {
	case m.inList(i, listSlipDenies):
		s.cue = true
		return true, true
	case m.says(i, "no", "nope", "nah"):
		s.cue = true
		return len(s.values) > 0, true // "atrás, no enfrente"; at the start it only says that something is wrong
	case m.inList(i, listSlipWrote):
		s.cue = true
		return m.valueAfter(i, 2), true
	case m.inList(i, listSlipShould):
		for k := range s.values {
			s.values[k].wrong = true
		}
		s.cue = s.cue || t != "to" && t != "por"
	case m.inList(i, listSlipSorry), m.inList(i, listNumberSent), m.is(i, cAsk, "correct") && !m.inList(i, listWasOrIs), m.inList(i, listChangesNumber) && m.valueAfter(i, 6):
		s.cue = true
	case m.inList(i, listWasOrIs):
		if n := len(s.values); n > 0 && (t == "era" || t == "eran") {
			s.values[n-1].wrong = s.values[n-1].wrong || s.cue
		}
		s.was = true
	case m.inList(i, listSlipMore) && len(s.values) == 0 && !s.cue && !s.was && i == 0:
		s.more = true // "y el boiler estaba prendido"
	case t == "meant for" || m.inList(i, listSlipMore):
		return deny, false
	case m.is(i, cItem, "heater") || m.is(i, cItem, "prv") || m.is(i, cItem, "gauge") || m.is(i, cUnit, "") || m.fillsAnswer(i) ||
		m.inList(i, listSlipFillers) || m.inList(i, listBesideRight):
	default:
		return deny, false
	}
	return deny, true
}

// valueAfter tells whether something that can be wrong follows within n items.
func (m *message) valueAfter(i, n int) bool {
	for k := i + 1; k < len(m.items) && k <= i+n; k++ {
		if m.items[k].num != nil || m.items[k].point != "" {
			return true
		}
	}
	return false
}
