package intents

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listNo  = listOf("no")
	listYes = listOf("yes")
)

// AnyNumber stands for the answers to a question that wants a pressure.
const AnyNumber = "slip"

// longestAnswer is how many words an answer to a question has at most; what is
// longer is a message of its own.
const longestAnswer = 8

// answer finds which of the possible answers to the bot's open question a short
// message picks: by its words, its place in the list ("the second one"), or by a
// plain yes; a question for a number takes a number. It returns "" when the
// message is no such answer, as is one that reports something of its own.
func (m *message) answer() string {
	q := m.ctx.Question
	if q == nil || len(q.MightBe) == 0 {
		return ""
	}
	words := 0
	for i := range m.items {
		if !m.items[i].mark {
			words++
		}
		if m.items[i].mark && m.items[i].text == "?" {
			return ""
		}
	}
	if words == 0 || words > longestAnswer {
		return ""
	}
	if q.MightBe[0] == AnyNumber {
		return m.numberAnswered()
	}
	if !m.onlyAnswers(q.MightBe) {
		return ""
	}
	if m.frame.Site != "" {
		return theHouse(q.MightBe, assess.Site{Line: m.frame.Site, Town: m.frame.Town, Postcode: m.frame.Postcode})
	}
	if q.MightBe[0] == itIsPressure {
		if tap := m.tapAnswered(); tap != "" {
			return q.Span + " " + tap
		}
	}
	said := strings.ToLower(strings.Trim(m.clean.text, " .!\n"))
	for _, o := range q.MightBe {
		if strings.EqualFold(o, said) {
			return o
		}
	}
	return m.picked(q.MightBe)
}

// theHouse is the one option that can be the house named, "" for none or several.
func theHouse(options []string, named assess.Site) string {
	fit := ""
	for _, o := range options {
		line, town, _ := strings.Cut(o, ", ")
		s := assess.Site{Line: line}
		if !s.Fits(assess.Site{Line: named.Line}) || named.Town != "" && !strings.HasPrefix(strings.ToLower(town), strings.ToLower(named.Town)) {
			continue
		}
		if fit != "" {
			return ""
		}
		fit = o
	}
	return fit
}

// The answers to whether a number is a pressure and at which tap.
const (
	itIsPressure = "pressure"
	otherNumber  = "other number"
)

// tapAnswered is the tap that an answer names and nothing else: "rear tap", "yes, at the tub".
func (m *message) tapAnswered() string {
	var tap []string
	point := ""
	for i := range m.items {
		switch it := &m.items[i]; {
		case it.point != "" && point != "" && it.point != point:
			return "" // "front is ahead of the reg" tells of two places
		case m.is(i, cSame, ""):
			return "" // "same at the kitchen" is another reading
		case it.point != "" || m.is(i, cPlace, "") || m.is(i, cPoint, "") || m.is(i, cBibb, ""):
			tap, point = append(tap, it.text), cmp.Or(it.point, point)
		case !it.mark && !m.fillsAnswer(i) && !it.lists.has(listYes) && it.text != itIsPressure && it.text != optionInSpanish[itIsPressure]:
			return ""
		}
	}
	return strings.Join(tap, " ")
}

// fillsAnswer tells whether item i says nothing in an answer.
func (m *message) fillsAnswer(i int) bool {
	return m.inList(i, listAnswerFillers) || m.inList(i, listFillers)
}

// numberAnswered is the one pressure that an answer gives, in psi.
func (m *message) numberAnswered() string {
	if m.frame.Site != "" {
		return ""
	}
	at := -1
	for i := range m.items {
		it := &m.items[i]
		switch {
		case it.num != nil && (at >= 0 || it.unit != "" && !pressureUnit(it.unit) || it.num.time || it.num.phone || it.num.money):
			return ""
		case it.num != nil:
			at = i
		case !it.mark && !m.fillsAnswer(i) && it.point == "" && !it.lists.has(listYes) && it.text != "no":
			return ""
		}
	}
	if at < 0 || m.items[at].value <= 0 || toPSI(m.items[at].value, m.items[at].unit) > 300 {
		return ""
	}
	return strconv.FormatFloat(toPSI(m.items[at].value, m.items[at].unit), 'f', -1, 64)
}

// onlyAnswers tells whether a message reports nothing beside its answer: a
// reading is one only when its number is what was asked.
func (m *message) onlyAnswers(options []string) bool {
	for _, s := range m.frame.Statements {
		switch s := s.(type) {
		case Ask:
			if s.About != AskNone && s.About != AskCorrect {
				return false
			}
		case assess.Reading:
			n := strconv.FormatFloat(s.PSI, 'f', -1, 64)
			if !slices.ContainsFunc(options, func(o string) bool { return slices.Contains(m.p.optionWords(o), n) }) &&
				!(s.PSI >= 1 && s.PSI <= float64(len(options)) && s.Point == "") {
				return false
			}
		default:
			return false
		}
	}
	return true
}

// optionWords are the words by which an option can be picked.
func (p *Parser) optionWords(o string) []string {
	f := strings.Fields(strings.NewReplacer("_", " ", ",", " ", ".", " ", ";", " ").Replace(fold(o)) + " " + optionInSpanish[o])
	for i, w := range f {
		if std, ok := p.gaz.suffix[w]; ok && i > 0 {
			f[i] = strings.ToLower(std)
		}
	}
	return f
}

// optionInSpanish are the words by which those options are picked in Spanish that are told
// apart by English ones.
var optionInSpanish = map[string]string{itIsPressure: "presion", otherNumber: "otro numero", "temperature": "temperatura"}

// A choice counts how often the words of an answer name each of the options.
type choice struct {
	words [][]string // of each option
	score []int
}

// give counts a word, and tells whether any option has it.
func (c *choice) give(w string) (hit bool) {
	for k, words := range c.words {
		if w != "" && slices.Contains(words, w) {
			c.score[k]++
			hit = true
		}
	}
	return hit
}

// best returns the option that was named most, -1 for none, and whether another was as often.
func (c *choice) best() (best int, tied bool) {
	best = -1
	for k, s := range c.score {
		switch {
		case s == 0:
		case best < 0 || s > c.score[best]:
			best, tied = k, false
		case s == c.score[best]:
			tied = true
		}
	}
	return best, tied
}

// gives counts all that item i says for the options: its words, its place and its meanings.
func (m *message) gives(c *choice, i int) (hit bool) {
	it := &m.items[i]
	for w := range strings.FieldsSeq(it.text) {
		if std, ok := m.p.gaz.suffix[w]; ok {
			w = strings.ToLower(std)
		}
		hit = c.give(w) || hit
	}
	for w := range strings.SplitSeq(it.point, "_") {
		hit = c.give(w) || hit
	}
	for _, t := range it.tags {
		if t.value != "-" && t.value != it.point {
			hit = c.give(t.value) || hit
		}
	}
	switch {
	case m.is(i, cOn, ""):
		hit = c.give(string(assess.Firing)) || hit
	case m.is(i, cOff, ""):
		hit = c.give(string(assess.Idle)) || hit
	}
	return hit
}

// picked finds the option that the words of a message pick. Every word must
// belong to the answer, and one option must fit best.
func (m *message) picked(options []string) string {
	c := choice{score: make([]int, len(options))}
	for _, o := range options {
		c.words = append(c.words, m.p.optionWords(o))
	}
	place, yes, no := 0, false, false
	for i := range m.items {
		it := &m.items[i]
		if it.mark || it.role == roleTaken && it.point == "" {
			continue
		}
		hit := m.gives(&c, i)
		n := 0
		if it.num != nil && it.unit == "" && it.num.integer && it.value >= 1 && it.value <= float64(len(options)) {
			n = int(it.value)
			if hit && c.score[n-1] == 0 {
				return "" // a house's number, and another's place in the list
			}
		} else {
			n = placeOf(it.text, len(options))
		}
		switch {
		case hit:
		case n > 0 && len(options) > 1:
			place = n
		case m.fillsAnswer(i):
		case it.lists.has(listYes):
			yes = true
		case it.lists.has(listNo):
			no = true
		default:
			return ""
		}
	}
	best, tied := c.best()
	switch {
	case place > 0 && place <= len(options) && (best < 0 || tied):
		return options[place-1]
	case best >= 0 && !tied && !no:
		return options[best]
	case best == 0 && options[0] == itIsPressure && len(options) == 2:
		return options[1] // "no es presión"
	case best >= 0:
		return ""
	case yes && !no:
		return options[0]
	case no && asksNewPart(options):
		return options[1]
	case no:
		return "no"
	}
	return ""
}

// placeOf reads "first", "la segunda", "last" as a place in a list of n, 0 for
// none.
func placeOf(w string, n int) int {
	switch w {
	case "first", "1st", "primera", "primero", "former", "first one", "the first":
		return 1
	case "second", "2nd", "segunda", "segundo", "second one", "the second":
		return 2
	case "third", "3rd", "tercera", "tercero":
		return 3
	case "fourth", "4th", "cuarta", "cuarto":
		return 4
	case "last", "latter", "ultima", "ultimo", "last one":
		return n
	}
	return 0
}

// Answered reads a message anew with the answer to a question in place of the
// words that were asked about. It is false when those words are not found.
func (p *Parser) Answered(text string, ctx Context, q Unclear, answer string) (Frame, bool) {
	at := findWords(text, q.Span)
	if at < 0 {
		return Frame{}, false
	}
	if answer == itIsPressure {
		answer = q.Span + " house pressure" // else it would be asked about again
	}
	after := text[at+len(q.Span):]
	if len(q.MightBe) > 0 && isHouse(answer) && strings.HasPrefix(after, " ") && len(after) > 1 && isDigit(after[1]) {
		after = "," + after // "9 Elm Ct, 66 rear"
	}
	ctx.Question, ctx.Sites, ctx.Told = nil, nil, nil
	return p.Parse(text[:at]+strings.ReplaceAll(answer, "_", " ")+after, ctx), true
}

// isHouse tells whether an answer is a street line: a number and a name.
func isHouse(s string) bool {
	number, name, ok := strings.Cut(s, " ")
	return ok && number != "" && isDigit(number[0]) && name != "" && !isDigit(name[0])
}

// findWords finds words in a text, whole and whatever their case; -1 for not.
func findWords(text, words string) int {
	low, want := strings.ToLower(text), strings.ToLower(words)
	if want == "" || len(low) != len(text) || len(want) != len(words) {
		return strings.Index(text, words)
	}
	for from := 0; ; {
		i := strings.Index(low[from:], want)
		if i < 0 {
			return -1
		}
		i += from
		if !(wordByte(low, i-1) && wordByte(low, i)) && !(wordByte(low, i+len(want)-1) && wordByte(low, i+len(want))) {
			return i
		}
		from = i + 1
	}
}
