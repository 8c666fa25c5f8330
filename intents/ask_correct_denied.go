package intents

import (
	"slices"
	"strconv"
	"strings"
)

// Lists of the lexicon that these rules know.
var (
	listSentBefore        = listOf("sent before")
	listBesideWhatWasSent = listOf("beside what was sent")
	listBeforeDeniedTap   = listOf("before denied tap")
	listBotHolds          = listOf("bot holds")
	listMovesTap          = listOf("moves tap")
	listToNewTap          = listOf("to new tap")
	listPapers            = listOf("papers")
	listPaperSays         = listOf("paper says")
	listItHolds           = listOf("it holds")
	listOfMine            = listOf("of mine")
)

// What is set against what was sent: "kitchen isn't 58, it's 68", "62 not 26", "that was
// the front not the rear".

// notSentGate is that of rules that hang on a denial of what was sent.
var notSentGate = gateOf(opener{lists: []list{listNotWhatWasSent}, words: []string{"no"}})

// contradicts tells whether a sentence sets a pressure against one that was
// reported: "kitchen isn't 58, it's 68", "front 60 not 66 like I said".
func (m *message) contradicts(s int) bool {
	if m.shut(notSentGate) {
		return false
	}
	se := &m.sents[s]
	denied, right, told := 0, 0, false
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		switch {
		case m.is(i, cItem, "") && !m.is(i, cItem, "gauge") || m.is(i, cMemory, "") || m.is(i, cWhose, "other") ||
			m.is(i, cWhose, "person") || it.kinds.has(cRetract) && right > 0:
			return false
		case m.reported(i):
			told = true
		}
		if it.num == nil {
			continue
		}
		switch {
		case it.num.words && !told, it.role != roleNone || it.unit != "" && !pressureUnit(it.unit) || it.num.time || it.num.money ||
			it.value < 15:
			return false
		case m.inList(i-1, listNotWhatWasSent) || m.text(i-1) == "no" && m.isNum(i-2) && m.is(i-3, cHint, "was") ||
			(m.text(i-1) == "a" || m.text(i-1) == "the") && m.inList(i-2, listNotWhatWasSent):
			denied++
		default:
			right++
		}
	}
	return denied == 1 && right == 1 && (told || m.readingLike(s) || m.ofWhatWasSent(s))
}

// ofWhatWasSent tells whether the numbers of a sentence, one of them denied, are of what was
// sent and name no tap: "that reading was 17 not 71", or a slip of the thumb by
// themselves: "it's 62, not 26".
func (m *message) ofWhatWasSent(s int) bool {
	se := &m.sents[s]
	that, first := false, -1
	for i := se.from; i < se.to; i++ {
		it := &m.items[i]
		switch {
		case it.num != nil && first >= 0:
			return (that || sameDigits(m.items[first].value, it.value)) && (m.closes(i) || i+1 < se.to && m.items[i+1].site)
		case it.num != nil:
			first = i
		case it.mark || it.site || first >= 0:
		default:
			for k := it.tok; k < it.tok+it.n; k++ {
				switch {
				case m.p.lex.of(&m.toks[k]).lists.has(listSentBefore):
					that = true
				case m.p.lex.of(&m.toks[k]).lists.has(listBesideWhatWasSent):
				default:
					return false
				}
			}
		}
	}
	return false
}

// sameDigits tells whether two numbers are written with the same digits: 85 and 58.
func sameDigits(a, b float64) bool {
	digits := func(v float64) string {
		d := []byte(strconv.FormatFloat(v, 'f', -1, 64))
		slices.Sort(d)
		return string(d)
	}
	return a != b && digits(a) == digits(b)
}

// deniesTap tells whether a sentence says at which tap a number was read that was sent,
// and at which not: "the 88 at 12 Alder was the front bib not the rear".
func (m *message) deniesTap(s int) bool {
	if m.shut(notSentGate) {
		return false
	}
	se := &m.sents[s]
	num, was, tap := -1, false, false
	for i := se.from; i < se.to; i++ {
		switch it := &m.items[i]; {
		case it.num != nil:
			if !m.inList(i-1, listBeforeDeniedTap) {
				return false
			}
			num = i
		case num < 0:
		case m.inList(i, listLinks) || m.says(i, "was", "era", "fue"):
			was = true
		case was && (it.point != "" || m.is(i, cPlace, "")) && !tap:
			tap = true
		case tap && m.inList(i, listNotWhatWasSent):
			return m.right(i, 3, false, func(k int) bool { return m.items[k].point != "" || m.is(k, cPlace, "") }) >= 0
		}
	}
	return false
}

// retellsTap tells whether a sentence says at which tap its number was reported and at which it was
// read: "I put front but it was the side one, 91 still".
func (m *message) retellsTap(s int) bool {
	if m.shut(reportedGate) {
		return false
	}
	told, was, tap := false, false, ""
	for i := m.sents[s].from; i < m.sents[s].to; i++ {
		switch it := &m.items[i]; {
		case m.is(i, cItem, "") && !m.is(i, cItem, "gauge"):
			return false
		case m.reported(i):
			told = true
		case told && it.point != "" && tap == "":
			tap = it.point
		case tap != "" && m.says(i, "was", "it was", "fue", "era", "its", "is", "it is"):
			was = true
		case was && it.point != "":
			return it.point != tap && !m.isNum(i-1)
		case was && !m.is(i, cDeterminer, "") && !m.says(i, "really", "actually", "at", "en", "la", "el", "del", "la del"):
			return false // "I said the front was weak"
		}
	}
	return false
}

// heldNumber returns the pressure that sentence s begins by saying the bot has on record, -1 for none: "you've got 112
// front for 16 Bollard St …", "your log says 71 laundry".
func (m *message) heldNumber(s int) int {
	se := &m.sents[s]
	if se.numbers == 0 || se.question {
		return -1
	}
	first := se.from
	for first < se.to && m.items[first].mark {
		first++
	}
	if first >= se.to || m.items[first].num != nil {
		return -1
	}
	if e := m.entryOf(first); !e.mayStart && !e.lists.has(listBotHolds) && !e.leads.has(listBotHolds) {
		return -1
	}
	p := m.phraseFrom(first, se.to)
	if !p.take(listBotHolds) && !(m.ofMine(s) && p.take(listItHolds)) {
		return -1
	}
	for i := first; i < min(se.to, first+8); i++ {
		switch it := &m.items[i]; {
		case it.tok+it.n <= p.at: // of the phrase
		case it.mark, it.kinds.has(cItem) && !m.is(i, cItem, "gauge"):
			return -1
		case it.num != nil && m.mayBePressure(i):
			return i
		case it.num != nil:
			return -1
		}
	}
	return -1
}

// mineGate is that of what the writer sent.
var mineGate = onlyWithList(listOfMine)

// ofMine tells whether sentence s speaks of what the writer sent: "under my name", "for my visit".
func (m *message) ofMine(s int) bool {
	if m.shut(mineGate) {
		return false
	}
	for i := m.sents[s].from + 1; i < m.sents[s].to; i++ {
		if m.inList(i, listOfMine) && m.says(i-1, "my", "mi") {
			return true
		}
	}
	return false
}

// mayBePressure tells whether the number at i may be a pressure by its unit and its size.
func (m *message) mayBePressure(i int) bool {
	it := &m.items[i]
	return it.value >= 15 && (it.unit == "" || pressureUnit(it.unit)) && !it.num.time && !it.num.money && (it.role == roleNone || it.role == roleReading)
}

// rightsHeld tells whether sentence s says what the bot has on record and what is right: "you've got 112 front for
// 16 Bollard St, that's wrong, make it 102".
func (m *message) rightsHeld(s int) bool {
	held := m.heldNumber(s)
	if held < 0 {
		return false
	}
	wrong := false
	for i := held + 1; i < m.sents[s].to; i++ {
		switch it := &m.items[i]; {
		case m.is(i, cHint, "wrong"), m.is(i, cRetract, ""):
			wrong = true
		case it.num != nil:
			return m.mayBePressure(i) && (wrong || m.ledRightly(i)) && m.putRightLast(held, i)
		}
	}
	return wrong
}

// putRightLast makes the number at i the right one of the last report in the place of that at wrong, where no other
// follows in its sentence; it is always true.
func (m *message) putRightLast(wrong, i int) bool {
	if m.nextNum(i) < 0 {
		m.setRole(i, roleReading, putRightAlone)
		if !m.points(i) {
			m.items[i].inherits, m.items[i].takesOver = wrong, true
		}
	}
	return true
}

// ledRightly tells whether words before the number at i say that it is what was read: "it's 67", "the paper says 67",
// "I had 67".
func (m *message) ledRightly(i int) bool {
	return m.left(i, 4, false, func(k int) bool {
		return m.is(k, cHint, "rightly") || m.inList(k, listPaperSays) && m.inList(k-1, listPapers) || m.reported(k) || m.is(k, cHint, "found") ||
			m.says(k, "i had", "we had") ||
			(m.inList(k, listShows) || m.text(k) == "had") && m.says(k-1, "i", "we", "gauge", "mine")
	}) >= 0
}

// movesTap tells whether a sentence gives another tap to the number that was sent: "the 70 I sent belongs to the
// washer box", "that 72 should be under laundry", "put that 72 under laundry instead of kitchen".
func (m *message) movesTap(s int) bool {
	se := &m.sents[s]
	n := m.nextNum(se.from)
	if m.isNum(se.from) || n < 1 || n > se.from+4 || se.numbers != 1 || !m.mayBePressure(n) || !m.p.lex.inList(lastWord(m.text(n-1)), listBeforeDeniedTap) && m.text(n-1) != "last" {
		return false
	}
	verb, _, _ := strings.Cut(m.text(m.firstOf(s)), " ")
	moved := m.p.lex.inList(verb, listChangesNumber) || verb == "move" || verb == "put"
	for i := n + 1; i < se.to; i++ {
		switch it := &m.items[i]; {
		case it.point != "":
			if moved && (m.closes(i) || m.inList(i+1, listNotWhatWasSent) || m.is(i+1, cHint, "insteadof") || m.meets(i+1, pointClasses) && m.closes(i+1)) {
				m.setRole(n, roleReading, putRightAlone)
				return true
			}
			return false
		case m.inList(i, listMovesTap), m.reported(i), m.text(i) == "i" && m.is(i+1, cHint, "reported"):
			moved = true
		case !m.inList(i, listToNewTap) && !m.inList(i, listLinks) && !m.is(i, cDeterminer, "") && !m.is(i, cHint, "reported"):
			return false
		}
	}
	return false
}
