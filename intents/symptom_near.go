package intents

// What stands near a symptom and says whose it is.

// reliefNear tells whether the relief valve is what the clause of item i is about.
func (m *message) reliefNear(i int) bool {
	if !m.kinds.has(cRelief) {
		return false
	}
	s := &m.sents[m.items[i].sent]
	it := i - 1
	for t := m.text(it); oneOf(t, "been", "has", "still", "always", "just", "constantly", "is", "was"); t = m.text(it) {
		it--
	}
	if t := m.text(it); t == "its" || t == "it" || t == "it is" || t == "theyre" {
		for k := it - 1; k >= s.from; k-- {
			if m.is(k, cRelief, "") {
				return true
			}
		}
	}
	for k := i - 1; k >= s.from && k >= i-12; k-- {
		if m.is(k, cRelief, "") {
			return true
		}
		if m.isMark(k, "(", ")") || m.items[k].num != nil && m.factual(k) {
			continue // "T&P on the 50 gal electric (2013) was dripping"
		}
		if m.items[k].mark && m.text(k) != ":" && m.text(k) != "=" && m.text(k) != "-" {
			if m.text(k) == "," && (m.is(i, cDry, "") && k == i-1 || m.text(i-1) == "not" && k == i-2) {
				continue // "watched the relief for an hour, dry", "relief rated 150, not dripping"
			}
			break
		}
		if m.is(k, cItem, "") && !m.is(k, cItem, "heater") || m.items[k].point != "" || m.measureAt(k) {
			break // "la válvula de alivio es de 150 psi y gotea" tells a rating
		}
	}
	if t := m.text(s.from); oneOf(t, "its", "it", "it is") && m.is(i, cBlocked, "") && i <= s.from+5 && m.items[i].sent > 0 && m.reliefIn(m.items[i].sent-1) {
		return true // "the relief valve dumps at night. It's not capped"
	}
	for k := i + 1; k < s.to && k <= i+5; k++ {
		if m.is(k, cRelief, "") {
			return true
		}
		if m.items[k].mark || m.items[k].num != nil {
			break
		}
		if m.is(i, cBlocked, "") && m.is(k, cDischarge, "") {
			continue // "con una llave cerrada la descarga de la T&P"
		}
		switch m.text(k) {
		case "at", "from", "on", "the", "out of", "de", "la", "out", "of", "en", "by", "coming", "her", "his", "por", "del", "off", "into", "in", "to", "a", "el", "al":
		default:
			return false
		}
	}
	return false
}

// measureAt tells whether item k is a number that may be a measure, not a time.
func (m *message) measureAt(k int) bool {
	it := &m.items[k]
	return it.num != nil && it.role != roleIgnored && it.role != roleDuration && unitDays[it.unit] == 0 && it.unit != "hour" && it.unit != "min"
}

// inVessel tells whether the words at i name a place where water is not wanted:
// "no water in the pan".
func (m *message) inVessel(i int) bool {
	switch m.text(i) {
	case "the", "her", "his", "their", "that":
		i++
	}
	switch m.text(i) {
	case "pan", "drain pan", "tank", "bucket", "crawl", "crawlspace", "basement", "garage", "yard", "floor", "ceiling", "attic", "expansion tank", "bladder":
		return true
	}
	return m.is(i, cItem, "")
}

func (m *message) heatingUp(i int) bool {
	heats := func(k int) bool { return m.is(k, cState, "firing") || m.text(k) == "heats" }
	return m.right(i, 6, true, heats) >= 0 && m.left(i, 8, true, func(k int) bool { return m.is(k, cStatic, "") }) < 0
}

func (m *message) pressureNear(i int) bool {
	for k := max(0, i-8); k < min(len(m.items), i+5); k++ {
		switch m.text(k) {
		case "pressure", "prssr", "presion", "gauge", "needle", "shower", "water", "agua":
			return true
		}
	}
	return false
}

// isItemNear tells whether a piece of equipment stands in the clause of item i.
func (m *message) isItemNear(i int) bool {
	s := &m.sents[m.items[i].sent]
	for k := max(s.from, i-6); k < min(s.to, i+3); k++ {
		if k != i && m.is(k, cItem, "") && m.separators(min(k, i), max(k, i)) == 0 && !(m.items[k].point != "" && m.pointUsed(k)) {
			return true
		}
	}
	return false
}

func (m *message) fixtureNear(i int) bool {
	s := &m.sents[m.items[i].sent]
	for k := max(s.from, i-4); k < min(s.to, i+3); k++ {
		if k != i && (m.is(k, cPoint, "bath") || m.is(k, cPoint, "kitchen") || m.is(k, cFixture, "")) && m.text(k) != "valve" {
			return true
		}
	}
	return false
}

// waterNear tells whether water is what the colour at item i is of.
func (m *message) waterNear(i int) bool {
	s := &m.sents[m.items[i].sent]
	for k := i + 1; k < s.to && k <= i+2; k++ {
		if m.is(k, cWater, "") {
			return true
		}
	}
	for k := i - 1; k >= s.from && k >= i-7; k-- {
		if m.is(k, cWater, "") {
			return true
		}
		if m.items[k].mark && m.text(k) != "," && m.text(k) != ":" {
			break
		}
		if m.items[k].num != nil {
			break
		}
	}
	return false
}

// lookedFor tells whether a symptom is only what is to be looked for: "check for creep
// again in two weeks".
func (m *message) lookedFor(i int) bool {
	if m.text(i-1) == "for" || m.text(i-1) == "por" {
		return m.is(i-2, cHint, "looksfor") || m.text(i-2) == "out" && m.text(i-3) == "eye"
	}
	return m.is(i+1, cHint, "lookout") // "leak check: dry"
}

// cleared tells whether what was looked for at item i was not there.
func (m *message) cleared(i int) bool {
	return m.right(i, 7, true, func(k int) bool { return m.is(k, cHint, "cleared") || m.is(k, cHint, "denies") || m.is(k, cDry, "") }) >= 0
}

// ofSomethingElse tells whether what drips or hums at item i is no part of a
// house: "the truck is leaking oil".
func (m *message) ofSomethingElse(i int) bool {
	s := &m.sents[m.items[i].sent]
	for k := i - 1; k >= s.from && k >= i-6; k-- {
		it := &m.items[k]
		if it.point != "" || it.kinds.has(cItem) || it.kinds.has(cPipe) || it.kinds.has(cStatic) || it.num != nil && it.role == roleReading {
			return false
		}
		for j := it.tok; j < it.tok+it.n && !it.mark && !it.site; j++ {
			if m.wordCues(j).has(cueForeign) {
				return true
			}
		}
	}
	if i+1 >= s.to {
		return false
	}
	reach := i + 5
	switch m.toks[m.items[i+1].tok].text {
	case "on", "along", "at", "down":
	case "in":
		reach = i + 3 // "no leaks in my roof"
	default:
		reach = i + 1 // "leaky pen"
	}
	for k := i + 1; k < s.to && k <= reach && !m.items[k].mark; k++ {
		it := &m.items[k]
		if it.num != nil || it.site || it.kinds.has(cItem) || it.kinds.has(cPipe) {
			break
		}
		for j := it.tok; j < it.tok+it.n; j++ {
			if m.wordCues(j).has(cueForeign) {
				return true // "bang on the door", "creeping along the interstate"
			}
		}
	}
	return false
}

func (m *message) negRight(k int) bool {
	switch m.text(k) {
	case "not", "isnt", "no", "wasnt":
		return true
	}
	return false
}

// denied2 tells whether "no" stands right before item i in a list of symptoms.
func (m *message) denied2(i int) bool {
	t := m.text(i - 1)
	if t != "no" && t != "sin" && t != "zero" && t != "or" {
		return false
	}
	if next := i + 1; next < len(m.items) && !m.items[next].mark && m.text(next) != "no" && m.text(next) != "or" && m.text(next) != "and" {
		return false
	}
	return true
}

func (m *message) pipeNear(i int) bool {
	for k := max(0, i-5); k < min(len(m.items), i+6); k++ {
		if m.is(k, cPipe, "") && m.items[k].sent == m.items[i].sent {
			return true
		}
	}
	return false
}

// reliefIn tells whether sentence s names the relief valve.
func (m *message) reliefIn(s int) bool {
	for k := m.sents[s].from; k < m.sents[s].to; k++ {
		if m.is(k, cRelief, "") {
			return true
		}
	}
	return false
}
