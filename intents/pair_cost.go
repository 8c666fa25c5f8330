package intents

import "lazyhand/assess"

// relates tells whether a place by the regulator at b describes the point at a:
// "the front bib, which is ahead of the prv".
func (m *message) relates(a, b int) bool {
	if p := m.items[b].point; p != string(assess.Street) && p != string(assess.AfterPRV) {
		return false
	}
	which := false
	for k := a + 1; k < b; k++ {
		switch m.text(k) {
		case "which", "thats", "that", "esta", "va", "queda":
			which = true
		case ",", "is", "(", "one", "the":
		default:
			return false
		}
	}
	return which
}

// joined tells whether only "and", "&" or "/" lies between two items.
func (m *message) joined(a, b int) bool {
	if b-a > 3 || b-a < 2 {
		return false
	}
	found := false
	for k := a + 1; k < b; k++ {
		switch m.text(k) {
		case "and", "y", "/", "n", "e", "plus", "=":
			found = true
		case "the", "la", "el", "both", "at", "en", "a", "an", "un", "una":
		default:
			if m.items[k].role == roleTaken {
				continue
			}
			return false
		}
	}
	return found
}

// qualifies tells whether a point at b is joined to one at a by a preposition.
func (m *message) qualifies(a, b int) bool {
	for k := a + 1; k < b; k++ {
		switch m.text(k) {
		case "of", "in", "on", "at", "by", "near", "the", "de", "del", "en", "la", "el", "off", "upstairs", "downstairs":
		default:
			return false
		}
	}
	return true
}

// pair matches points and numbers of a sentence at the least cost; only
// neighbours in the order told can go together.
func (m *message) pair(s int) {
	evs := m.events(s)
	if len(evs) == 0 {
		return
	}
	const alone, spare = 3.0, 1.5
	n := len(evs)
	best := make([]float64, n+1)
	take := make([]bool, n+1) // evs[i-2] and evs[i-1] go together
	for i := 1; i <= n; i++ {
		c := spare
		if evs[i-1].num {
			c = alone
		}
		best[i] = best[i-1] + c
		if i >= 2 && evs[i-1].num != evs[i-2].num {
			if c := best[i-2] + m.cost(&evs[i-2], &evs[i-1]); c < best[i] {
				best[i], take[i] = c, true
			}
		}
	}
	for i := n; i > 0; {
		if take[i] {
			evs[i-1].pair, evs[i-2].pair = i-2, i-1
			i -= 2
		} else {
			i--
		}
	}
	for k := range evs {
		e := &evs[k]
		if !e.num {
			continue
		}
		var pts []string
		ptFrom, ptTo := e.at, e.end
		if e.pair >= 0 {
			p := &evs[e.pair]
			pts = p.points
			ptFrom, ptTo = min(ptFrom, p.at), max(ptTo, p.end)
		}
		for j, i := range e.nums {
			if m.repeats(i, pts) {
				continue
			}
			r := reading{at: i, sent: s, from: ptFrom, to: ptTo + 1}
			r.PSI = toPSI(m.items[i].value, m.items[i].unit)
			switch {
			case len(pts) > 1 && len(e.nums) == len(pts):
				r.points = pts[j : j+1]
			default:
				r.points = pts
			}
			m.readings = append(m.readings, r)
		}
	}
	// numbers left without a point share that of a neighbour in the sentence
	first := len(m.readings)
	for first > 0 && m.readings[first-1].sent == s {
		first--
	}
	rs := m.readings[first:]
	var spares []event
	for _, e := range evs {
		if !e.num && e.pair < 0 && !m.items[e.at].weak {
			spares = append(spares, e)
		}
	}
	for k := range rs {
		if len(rs[k].points) > 0 && !rs[k].inherit {
			// "118 at six and 74 at two, both at the laundry"
			if p := m.bothAt(evs, rs[k].at); p != "" && k == len(rs)-1 {
				for j := range k {
					if len(rs[j].points) == 0 {
						rs[j].points, rs[j].inherit = []string{p}, true
					}
				}
			}
		}
		if len(rs[k].points) > 0 {
			continue
		}
		if m.items[rs[k].at].unit == "" && !m.ledTo(rs[k].at) {
			continue
		}
		switch {
		case len(spares) == 1 && spares[0].at < rs[k].at && k == 0 && !m.items[spares[0].at].site:
			rs[k].points, rs[k].inherit = spares[0].points[:1], true
		case k > 0 && len(rs[k-1].points) > 0 && m.sameGauge(rs[k-1].at, rs[k].at):
			rs[k].points, rs[k].inherit = rs[k-1].points[len(rs[k-1].points)-1:], true
		}
	}
	for k := len(rs) - 2; k >= 0; k-- {
		if len(rs[k].points) == 0 && len(rs[k+1].points) == 1 && (m.items[rs[k].at].unit != "" || m.ledTo(rs[k].at)) && m.sameGauge(rs[k].at, rs[k+1].at) {
			rs[k].points, rs[k].inherit = rs[k+1].points, true
		}
	}
}

// cost says how badly two neighbouring events go together.
func (m *message) cost(a, b *event) float64 {
	c := 0.1
	if b.num {
		c = 0
	}
	for k := a.end + 1; k < b.at; k++ {
		it := &m.items[k]
		t := m.text(k)
		switch {
		case it.mark:
			switch t {
			case ",":
				c += 1.2
			case "/", "-", "(", ")":
				c += 1.4
			case ":", "=":
				if b.num {
					c -= 0.4
				} else {
					c += 1.5
				}
			}
		case t == "and" || t == "y" || t == "but" || t == "then" || t == "pero" || t == "while":
			c += 2
		case oneOf(t, "at", "on", "en", "in", "from", "off", "n", "out of", "@", "del", "de", "for"):
			if !b.num {
				c -= 0.4
			}
		case oneOf(t, "is", "was", "reads", "read", "shows", "marca", "showed", "has", "es", "got", "gave", "had", "at", "reading", "rds", "registers", "da"):
			if b.num {
				c -= 0.4
			} else {
				c += 0.4
			}
		case m.is(k, cNow, "") || m.is(k, cAfter, "") || m.is(k, cBefore, ""):
			c += 0.2
		default:
			c += 0.15
		}
	}
	if a.num && c > 1 {
		// "69, street is 124": the point leads to a number of its own
		switch m.text(b.end + 1) {
		case "is", "was", "reads", "at", ":", "has", "shows", "=", "es", "marca", "a":
			c += 1.5
		}
	}
	if !a.num && m.items[a.at].weak || !b.num && m.items[b.at].weak {
		if b.at-a.end > 4 {
			c += 2
		}
	}
	return c
}

// measuring are the classes that tell one measuring from another.
var measuring = setOf(cNow, cAfter, cBefore, cStatic, cFlowing, cState, cPeak, cOn, cOff)
