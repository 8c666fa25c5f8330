package intents

import "strings"

// answer finds which of the possible answers to the bot's open question a short
// message picks: by its words, its place in the list ("the second one"), or by a
// plain yes. It returns "" when the message is no such answer.
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
	}
	if words == 0 || words > 6 {
		return ""
	}
	for i := range m.items {
		it := &m.items[i]
		if it.point != "" {
			if k := picks(q.MightBe, it.point); k >= 0 {
				return q.MightBe[k]
			}
		}
		for _, t := range it.tags {
			if k := picks(q.MightBe, t.value); k >= 0 && t.value != "-" {
				return q.MightBe[k]
			}
		}
	}
	if m.frame.Site != "" {
		for _, o := range q.MightBe {
			if sameHouse(o, m.frame.Site) {
				return o
			}
		}
	}
	said := strings.ToLower(strings.Trim(m.clean.text, " .!?\n"))
	for _, o := range q.MightBe {
		if strings.EqualFold(o, said) {
			return o
		}
	}
	for i := range m.toks {
		n := place(m.toks[i].text)
		if m.toks[i].kind == number && words <= 2 && m.toks[i].num.integer && m.toks[i].num.value >= 1 && m.toks[i].num.value <= 4 {
			n = int(m.toks[i].num.value)
		}
		if n == -1 {
			n = len(q.MightBe)
		}
		if n > 0 && n <= len(q.MightBe) {
			return q.MightBe[n-1]
		}
	}
	if words <= 3 && len(m.toks) > 0 {
		switch m.toks[0].text {
		case "yes", "yep", "yeah", "yup", "correct", "right", "si", "sip", "claro", "ok", "y", "affirmative", "exacto", "simon":
			return q.MightBe[0]
		case "no", "nope", "neither", "ninguno", "ninguna":
			return "no"
		}
	}
	return ""
}

// picks finds the option that a code names.
func picks(options []string, code string) int {
	if code == "" {
		return -1
	}
	for k, o := range options {
		o = strings.ToLower(o)
		if o == code || strings.ReplaceAll(o, " ", "_") == code || strings.HasPrefix(code, o+"_") {
			return k
		}
	}
	return -1
}

// place reads "first", "la segunda", "last" (-1).
func place(w string) int {
	switch w {
	case "first", "1st", "primera", "primero", "former":
		return 1
	case "second", "2nd", "segunda", "segundo":
		return 2
	case "third", "3rd", "tercera", "tercero":
		return 3
	case "last", "latter", "ultima", "ultimo":
		return -1
	}
	return 0
}

// knownSite finds a site on record that the message names without its house
// number ("the elm house"); two that fit are returned both.
func (m *message) knownSite() (found []string, at, n int) {
	for _, line := range m.ctx.Sites {
		f := strings.Fields(fold(line))
		if len(f) < 2 {
			continue
		}
		if _, ok := m.p.gaz.directional[f[1]]; ok && len(f) > 3 {
			f = append(f[:1], f[2:]...)
		}
		name := f[1:]
		if len(name) > 1 {
			if _, ok := m.p.gaz.suffix[name[len(name)-1]]; ok {
				name = name[:len(name)-1]
			}
		}
		for i := 0; i+len(name) <= len(m.toks); i++ {
			if m.namesStreet(i, name) {
				found, at, n = append(found, line), i, len(name)
				break
			}
		}
	}
	return found, at, n
}

// namesStreet tells whether the words at token i are a street's name, told as a place.
func (m *message) namesStreet(i int, name []string) bool {
	for k, w := range name {
		t := &m.toks[i+k]
		if t.kind != word || t.text != w || m.p.lex.plain[w] || len(w) < 3 || m.p.term(m.toks, i+k) {
			return false
		}
	}
	if i == 0 || m.toks[i].caps {
		return true
	}
	switch m.toks[i-1].text {
	case "at", "on", "for", "the", "from", "de", "en", "del", "of", ",", "\n", "to", "about":
		return true
	}
	return i+len(name) == len(m.toks)
}
