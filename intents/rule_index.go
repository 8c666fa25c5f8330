package intents

import "math/bits"

// ruleIndex finds, in a table of rules that are asked in turn, those that some gates or keys open: a message opens
// few, and the others are not even looked at.
type ruleIndex struct {
	always uint64            // the rules that need nothing, one bit each
	any    gateSet           // the gates or keys that open any of the others
	by     [mostGates]uint64 // by gate or key: the rules that it opens
}

// ruleSet is a set of rules of one table, one bit each in their order.
type ruleSet uint64

// next takes the first rule out of the set.
func (s *ruleSet) next() int {
	k := bits.TrailingZeros64(uint64(*s))
	*s &= *s - 1
	return k
}

// byGate indexes n rules by their gates.
func byGate(n int, gateOf func(k int) gate) (x ruleIndex) {
	for k := range n {
		if g := gateOf(k); g == alwaysOpen {
			x.add(k)
		} else {
			x.add(k, int(g))
		}
	}
	return x
}

// byKey indexes n rules by their keys; those without one may begin anywhere.
func byKey(n int, keysOf func(k int) key) (x ruleIndex) {
	for k := range n {
		var opens []int
		for keys := uint64(keysOf(k)); keys != 0; keys &= keys - 1 {
			opens = append(opens, bits.TrailingZeros64(keys))
		}
		x.add(k, opens...)
	}
	return x
}

// add adds rule k, which any of some gates or keys open.
func (x *ruleIndex) add(k int, opens ...int) {
	if k > 63 {
		panic("there is no room for another rule in the table: widen ruleSet")
	}
	if len(opens) == 0 {
		x.always |= 1 << k
	}
	for _, o := range opens {
		x.any.add(gate(o))
		x.by[o] |= 1 << k
	}
}

// open returns the rules that a set opens: gates, or keys in its first word.
func (x *ruleIndex) open(set ...uint64) ruleSet {
	rules := x.always
	for w, opens := range set {
		for opens &= x.any[w]; opens != 0; opens &= opens - 1 {
			rules |= x.by[w<<6+bits.TrailingZeros64(opens)]
		}
	}
	return ruleSet(rules)
}
