package intents

import "slices"

// scratch is the room that one message after the other is worked on, so that a
// parser does not ask for new memory for each. Nothing of it outlives Parse: a
// frame holds copies.
type scratch struct {
	msg    message
	out    []byte
	from   []int32
	toks   []token
	items  []item
	nums   []numeral
	sents  []sentence
	words  []int32
	inSite []int
	sites  []address
	events []event
	points []string // test points of events and readings
	at     []int    // numbers of events
	said   []toldAt
	named  []mentionOf
	attrs  []attribute
	spelt  map[string][]int32 // words that are in no phrase, and what they may stand for
}

// reset empties the message, which keeps its room.
func (d *scratch) reset() {
	m := &d.msg
	clear(m.equipment)
	*m = message{
		moments: m.moments[:0], verbs: m.verbs[:0], readings: m.readings[:0], work: m.work[:0], plans: m.plans[:0],
		asks: m.asks[:0], symptoms: m.symptoms[:0], equipment: m.equipment[:0],
	}
}

// numeral returns room for one number.
func (d *scratch) numeral() *numeral {
	if len(d.nums) == cap(d.nums) {
		d.nums = make([]numeral, 0, 2*cap(d.nums)+8) // tokens keep hold of the old ones
	}
	d.nums = append(d.nums, numeral{})
	return &d.nums[len(d.nums)-1]
}

// point returns a list of one test point; what is appended to it goes elsewhere.
func (d *scratch) point(p string) []string {
	d.points = append(d.points, p)
	return slices.Clip(d.points[len(d.points)-1:])
}

// number returns a list of one number's item, likewise.
func (d *scratch) number(i int) []int {
	d.at = append(d.at, i)
	return slices.Clip(d.at[len(d.at)-1:])
}

// mostSpelt is how many words in no phrase are kept with what they may stand for.
// People write the same slips and the same names again and again.
const mostSpelt = 2000

// candidates finds the words of the lexicon that w may stand for, as the lexicon does,
// and keeps what it found for the next time.
func (d *scratch) candidates(l *lexicon, w string) []int32 {
	ids, ok := d.spelt[w]
	if !ok {
		ids = slices.Clip(l.candidates(w, nil))
		if d.spelt == nil || len(d.spelt) >= mostSpelt {
			d.spelt = make(map[string][]int32)
		}
		d.spelt[string([]byte(w))] = ids // a copy: w is a part of the message
	}
	return ids
}

// clear forgets the message, keeping the room; what stands there is written over by the next one.
func (d *scratch) clear() {
	d.nums, d.points, d.at, d.said = d.nums[:0], d.points[:0], d.at[:0], d.said[:0]
	d.reset()
}
