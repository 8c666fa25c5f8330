package intents

// sentence is a range of items; line tells lines apart.
type sentence struct {
	from, to    int
	line        int
	question    bool
	asking      bool // holds a question or an instruction to the bot
	asksConvert bool
	asksDue     bool // wants the follow-ups that are due
	asksSize    bool // wants the size of a tank
	remembers   bool // told from memory as a whole
	askAt       int  // 1+item of a question about the cause: numbers after it in its clause are its own
	tells       bool // reports something beside its question
	closes      bool // says that a follow-up is done
	snoozes     bool // puts a follow-up off
	aside       bool // speaks of no house
	header      int  // item index of a colon after a first word, -1 if none
	numbers     int  // how many numbers it has
	cued        bool
	cues        cueSet // of all its words, once cued
}

// longestSentence is how many items a sentence may have. Nobody dictates one as
// long; rules compare what stands in one sentence with each other, and their time
// must grow with the message, not with its square.
const longestSentence = 120

// anewWords begin another clause.
var anewWords = opener{words: []string{"but", "then", "while", "because", "pero", "porque", "mientras", "although", "though", "so"}}

// cut finds sentences and segments.
func (m *message) cut() {
	m.sents = m.scratch.sents[:0]
	line, seg := 0, 0
	start := 0
	close := func(end int, q bool) {
		if end > start {
			m.sents = append(m.sents, sentence{from: start, to: end, line: line, question: q, header: -1})
		}
	}
	for i := range m.items {
		it := &m.items[i]
		if i-start >= longestSentence {
			close(i, false)
			start = i
			seg++
		}
		it.sent, it.seg = len(m.sents), seg
		if !it.mark {
			if m.said(i, keyAnew) {
				seg++
				it.seg = seg
			}
			continue
		}
		switch it.text {
		case "\n", ".", "!", "?", ";", "...":
			if it.text == "?" && m.text(i-1) == "=" {
				continue // "3.5 bar = ? psi"
			}
			close(i+1, it.text == "?")
			start = i + 1
			seg++
			if it.text == "\n" {
				line++
			}
		case ",", "/", "(", ")", "|":
			seg++
		case "-":
			if t := m.toks[it.tok]; !t.glued || it.tok+1 < len(m.toks) && !m.toks[it.tok+1].glued {
				seg++
			}
		}
	}
	close(len(m.items), false)
	m.scratch.sents = m.sents
	m.splitQuestions()
	for k := range m.sents {
		s := &m.sents[k]
		words := 0
		for i := s.from; i < s.to; i++ {
			it := &m.items[i]
			if it.sent = k; !it.mark {
				if words++; it.num != nil {
					s.numbers++
				}
			} else if s.header < 0 && words > 0 && words <= 6 && it.text == ":" {
				s.header = i
			}
		}
	}
}
