package intents

import "strings"

// spanishVerb tells whether a deed is told by a Spanish verb, which "no" right
// before it denies: "no cambié"; in English "no" never stands there.
func spanishVerb(s string) bool {
	last := s[strings.LastIndexByte(s, ' ')+1:]
	for _, e := range [...]string{"e", "i", "o", "mos", "aron", "ieron", "ado", "ido"} {
		if strings.HasSuffix(last, e) && len(last) > len(e)+1 {
			return true
		}
	}
	return false
}

// clitic tells whether s is a pronoun that stands before a Spanish verb.
func clitic(s string) bool {
	switch s {
	case "le", "les", "la", "lo", "las", "los", "se", "me", "te", "nos", "se le", "se la", "se lo", "he", "hemos":
		return true
	}
	return false
}

// weWill tells whether a deed that may be past or present, "cambiamos", is still to
// come: a day to come stands in its clause, and no other verb that it may belong to.
func (m *message) weWill(at int) bool {
	t := strings.TrimSuffix(strings.TrimSuffix(m.text(at), " en"), " a")
	base := m.ambiguousForm(at) && !pastForm(t) && strings.HasPrefix(t, "put") // "also put in a tank tomorrow"
	if !base && !strings.HasSuffix(t, "amos") && !strings.HasSuffix(t, "emos") && !strings.HasSuffix(t, " dejo") {
		return false
	}
	s := &m.sents[m.items[at].sent]
	free := func(a, b int) bool {
		for k := a + 1; k < b; k++ {
			if t := m.text(k); t == "y" || t == "and" || m.is(k, cWill, "") || m.is(k, cDid, "") || m.is(k, cDo, "") && !m.is(k, cPart, "") {
				return false
			}
		}
		return true
	}
	for k := s.from; k < s.to; k++ {
		if m.items[k].seg != m.items[at].seg {
			continue
		}
		day := false
		for _, w := range m.moments {
			day = day || w.at == k && !m.past(w)
		}
		if it := &m.items[k]; it.num != nil && unitDays(it.unit) > 0 && (m.text(k-1) == "en" || m.text(k-1) == "de" && m.text(k-2) == "dentro") {
			day = true
		}
		if day && free(min(k, at), max(k, at)) {
			return true
		}
	}
	return false
}

// leftAt tells whether the words before the number at i say what a thing was left
// at: "quedó en 62", "quedó set at 62".
func (m *message) leftAt(i int) bool {
	k := i - 1
	switch m.text(k) {
	case "en", "a", "como en", "at":
		k--
	}
	for k >= 1 && k >= i-5 && (m.is(k, cPart, "new") || m.is(k, cItem, "prv") || m.text(k) == "la" || m.text(k) == "el") {
		k-- // "ya quedó la reguladora nueva en 60"
	}
	t := m.text(k)
	if t == "" || t[0] != 'q' && t[0] != 'y' && t[0] != 's' && t[0] != 'l' {
		return false
	}
	for _, w := range [...]string{"quedo", "ya quedo", "se quedo", "quedando", "la deje", "lo deje"} {
		if t == w || len(t) > len(w) && t[:len(w)+1] == w+" " {
			return true
		}
	}
	return false
}

// onePut tells whether the object of the deed at i is "una" or "uno": "no tenía
// reguladora, le puse una".
func (m *message) onePut(i int) bool {
	if beginsWith(m.text(i), "el nuevo", "la nueva") {
		return true
	}
	for _, end := range [...]string{" nueva", " nuevo", " una", " uno"} {
		if strings.HasSuffix(m.text(i), end) {
			return true // "puse una nueva"
		}
	}
	return m.says(i+1, "una", "uno") && (m.stopAt(i+2) || m.is(i+2, cPart, "new") || m.says(i+2, "y", "de"))
}

// needless tells whether what the item at i is needed for is denied: "no necesita
// reguladora", "doesn't need a tank".
func (m *message) needless(i int) bool {
	return m.left(i, 4, false, func(k int) bool {
		return m.is(k, cWill, "") && (m.says(k-1, "no", "doesnt", "dont", "ya no") || clitic(m.text(k-1)) && m.text(k-2) == "no")
	}) >= 0
}

// toMeasure tells whether the coming back at i is for a new reading: "vuelvo en 15
// días a medir".
func (m *message) toMeasure(s, i int) bool {
	for k := i + 1; k < m.sents[s].to && k <= i+8; k++ {
		if t := m.text(k); (t == "a" || t == "para") && (m.is(k+1, cDo, "recheck") || m.says(k+1, "medir", "medirla", "ver", "tomar")) {
			return true
		}
		if m.items[k].mark || m.is(k, cItem, "") {
			return false
		}
	}
	return false
}

// changesOn tells whether the words at i promise to change or put in something on
// the day at w: "el sábado voy y la cambio".
func (m *message) changesOn(i, w int) bool {
	return (m.is(i, cDo, "replace") || m.is(i, cDo, "install")) && !m.is(i, cPart, "") && !m.is(i, cDid, "") && m.items[i].seg == m.items[w].seg
}

// inOrOut reads the two sides of the regulator told as a pair: "entrando 110
// saliendo 62", "entra con 118 y sale con 74", "arriba de la reguladora 120 y abajo 65".
func (m *message) inOrOut(i int) string {
	if t := m.text(i); t == "abajo" && m.numberOf(i) && m.left(i, 6, true, func(k int) bool {
		return m.items[k].point == "street" && strings.HasPrefix(m.text(k), "arriba")
	}) >= 0 {
		return "after_prv"
	}
	in, out := m.is(i, cHint, "enters"), m.is(i, cHint, "leaves")
	if !in && !out || !m.numberOf(i) && !m.isNum(i-1) && !(m.isNum(i-2) && m.is(i-1, cUnit, "")) {
		return ""
	}
	near := func(what string) bool {
		is := func(k int) bool { return m.is(k, cHint, what) }
		return m.left(i, 8, true, is) >= 0 || m.right(i, 8, true, is) >= 0
	}
	switch {
	case in && near("leaves"):
		return "street"
	case out && near("enters"):
		return "after_prv"
	}
	return ""
}

// numberOf tells whether a number is told of the word at i: "entrando 110", "sale con 60".
func (m *message) numberOf(i int) bool {
	if m.isNum(i + 1) {
		return true
	}
	switch m.text(i + 1) {
	case ":", "=", "en", "a", "con", "at":
		return m.isNum(i + 2)
	}
	return false
}

// leadingTime finds the word that puts the reading at hi after or before work where
// such words lead: "antes 95 después 60", "before rear 95 now rear 62". It returns
// -1 where they follow the numbers.
func (m *message) leadingTime(a, lo, hi int) int {
	time := func(k int) bool { return k >= 0 && (m.placesTime(k) || m.is(k, cNow, "")) }
	if !time(a-1) && !(time(a-2) && m.items[a-1].point != "") {
		return -1
	}
	for k := hi - 1; k >= lo && k >= hi-2; k-- {
		if time(k) && (k == hi-1 || m.items[hi-1].point != "") {
			return k
		}
	}
	return -1
}

// placesTime tells whether item i is a word that puts a reading before or after work.
func (m *message) placesTime(i int) bool { return m.is(i, cBefore, "") || m.is(i, cAfter, "") }

// bareCheck tells whether a word for a check may tell one done as well: only a day,
// or a word of planning, makes it one to come.
func bareCheck(t string) bool {
	switch t {
	case "check", "check pressure", "check the pressure", "check back", "check pressures", "revision", "look see", "look-see":
		return true
	}
	for _, w := range [...]string{"checar", "revisar", "medir", "medirla", "para checar", "para revisar", "para medir"} {
		if t == w || t == w+" presion" || t == w+" la presion" || t == w+" lectura" || t == w+" la lectura" {
			return true
		}
	}
	return false
}

// namesToilet tells whether a phrase of leaking names the toilet itself: then the
// relief valve before it has no part in it.
func namesToilet(t string) bool {
	return strings.Contains(t, "taza") || strings.Contains(t, "excusado") || strings.Contains(t, "inodoro") || strings.Contains(t, "toilet")
}

// unreadable tells whether the plate or date at i cannot be read: "la etiqueta no se
// lee", "el año ya no se ve", "placa borrada".
func (m *message) unreadable(i int) bool {
	return m.right(i, 6, true, func(k int) bool {
		if m.is(k, cHint, "unreadable") {
			return true
		}
		switch m.text(k) {
		case "borrada", "borrado", "ilegible":
			return true
		case "lee", "ve", "alcanza", "distingue", "nota", "veia", "leia":
			return m.text(k-1) == "no se" || m.text(k-1) == "se" && m.text(k-2) == "no"
		}
		return false
	}) >= 0
}

// fromBefore reads the setting that a regulator had before it was changed: "la
// reguladora estaba en 95, la bajé a 60", "prv was at 95, lowered it to 60".
func (m *message) fromBefore() {
	for i := range m.items {
		if m.items[i].num == nil || m.items[i].role != roleTo || m.items[i].owner == 0 {
			continue
		}
		at := m.items[i].owner - 1
		p := m.prevNum(at)
		if p < 0 || m.items[p].role != roleReading && m.items[p].role != roleSetting || m.points(p) || m.pointInClause(p) || m.items[p].value == m.items[i].value {
			continue
		}
		if m.text(p-1) == "de" && p+1 == at {
			m.setRole(p, roleFrom, "the setting before") // "de 90 bajé la reguladora a 60"
			m.items[p].owner = at + 1
			continue
		}
		if topic, k := m.topicBefore(p); topic != "prv" || p-k > 5 || m.items[k].seg != m.items[p].seg {
			continue
		}
		set := false
		for _, v := range m.verbs {
			set = set || v.at == at && v.what == "set" && v.done
		}
		if !set {
			continue
		}
		k := p - 1
		for m.text(k) == "en" || m.text(k) == "at" || m.text(k) == "set" || m.text(k) == "a" || m.text(k) == "como" {
			k--
		}
		switch m.text(k) {
		case "was", "estaba", "tenia", "traia", "andaba", "was at", "estaba en", "was set at", "had been", "puesta", "was set":
			m.setRole(p, roleFrom, "the setting before")
			m.items[p].owner = at + 1
		}
	}
}

var putNewWords = opener{words: []string{"quedo", "ya quedo", "quedo instalada", "quedo puesta", "ya esta"}}

// nameNew reads "ya quedó la reguladora nueva": it was put in on this visit.
func (m *message) nameNew(i int) bool {
	if !m.said(i, keyPutNew) {
		return false
	}
	for k := i + 1; k <= i+3 && k < len(m.items); k++ {
		if m.is(k, cItem, "prv") || m.is(k, cItem, "expansion_tank") {
			return m.is(k+1, cPart, "new")
		}
	}
	return false
}

// unwanted tells whether the item at i is one that somebody does not want: "no quiere
// tanque", "doesn't want a softener".
func (m *message) unwanted(i int) bool {
	if m.is(i-1, cPart, "new") && m.left(i, 4, false, m.turnsOffer) >= 0 {
		return true // "turned down the new tank"
	}
	return m.left(i, 3, false, func(k int) bool {
		switch m.text(k) {
		case "quiere", "quieren", "quiso", "quisieron", "ocupa", "ocupan", "necesita", "want", "wanted", "need", "needs", "declined":
			return m.text(k) == "declined" || m.is(k-1, cNeg, "") || clitic(m.text(k-1)) && m.is(k-2, cNeg, "")
		}
		return false
	}) >= 0
}

// toldFirst tells whether the item at i is told before the question of its sentence
// and in a clause of its own: "no exp tank, que checo next?".
func (m *message) toldFirst(i int) bool {
	at := m.sents[m.items[i].sent].askAt - 1
	return at > i && m.items[at].seg != m.items[i].seg && m.itemAbsent(i)
}
