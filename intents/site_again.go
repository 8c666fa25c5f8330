package intents

import "strings"

// A street line that is put right within the message: "at 1208 X Rd, sorry 1280 X Rd",
// "1208 X Rd, no wait 1280".

// takenBackSites voids a street line that the words behind it take back for the next one.
func (m *message) takenBackSites() {
	for k := range m.sites {
		a := &m.sites[k]
		for j := range m.sites {
			b := &m.sites[j]
			if j == k || b.from < a.to || b.quoted || a.quoted {
				continue
			}
			if b.from <= a.to+6 && m.retractTokens(a.to, b.from) ||
				sameStreet(a.line, b.line) && m.retractBefore(a.to, b.from) ||
				(sameStreet(a.line, b.line) || sameStreet(a.line, withoutLast(b.line))) && m.saysNo(a.to, b.from) {
				a.void = true
			}
		}
	}
}

// withoutLast returns a street line without its last word: "1202 Dovecote" of "1202 Dovecote Ln".
func withoutLast(line string) string { return line[:max(strings.LastIndexByte(line, ' '), 0)] }

// saysNo tells whether the tokens between two houses of a street say no to the first: "92 Burro
// Ave, no it's 29 Burro Ave".
func (m *message) saysNo(from, to int) bool {
	no := false
	for k := from; k < to; k++ {
		t := &m.toks[k]
		if t.kind != mark && !oneOf(t.text, "no", "nope", "its", "it", "is", "es", "era", "digo") {
			return false
		}
		no = no || t.text == "no" || t.text == "nope"
	}
	return no
}

// retractBefore tells whether a word of taking back stands right before token to, behind from:
// "24 Pine 66 rear scratch 24, meant 22 Pine".
func (m *message) retractBefore(from, to int) bool {
	for k := to - 1; k > from && k >= to-3; k-- {
		if node, n := m.p.lex.find(m.toks, k, to); n > 0 && k+n == to &&
			(m.p.has(m.p.lex.tags(node), cRetract, "") || m.p.has(m.p.lex.tags(node), cHint, "takesback")) {
			return true
		}
	}
	return false
}

// retractTokens tells whether the tokens from to to only take back what stands before.
func (m *message) retractTokens(from, to int) bool {
	found := false
	for i := from; i < to; {
		t := &m.toks[i]
		if t.kind == mark {
			if t.text == "?" || t.text == "\n" {
				return false
			}
			i++
			continue
		}
		if t.kind != word {
			return false
		}
		node, n := m.p.lex.find(m.toks, i, to)
		switch {
		case n > 0 && m.p.has(m.p.lex.tags(node), cRetract, ""):
			found = true
		case oneOf(t.text, "no", "it", "its", "thats", "at", "is", "that", "i"):
			n = 1
		default:
			return false
		}
		i += max(n, 1)
	}
	return found
}

// houseAgain puts the house number right that is said again alone: "1208 Alder Rd, no wait
// 1280, kitchen 66".
func (m *message) houseAgain() {
	if m.site == nil || !m.kinds.has(cRetract) {
		return
	}
	for i := range m.items {
		if !m.items[i].site || m.items[i].tok != m.site.from {
			continue
		}
		k := i + 1
		for k < len(m.items) && k <= i+4 &&
			(m.items[k].mark && !m.isMark(k, "\n", "?") || m.is(k, cRetract, "") || m.text(k) == "no" || m.text(k) == "its") {
			k++
		}
		if !m.isNum(k) || k < i+2 || !m.closes(k) || !m.is(k-1, cRetract, "") && !m.is(k-2, cRetract, "") {
			return
		}
		if m.items[k].unit != "" || !m.items[k].num.integer || m.nextNum(k) < 0 && m.site.from > 0 {
			return
		}
		house, street, ok := strings.Cut(m.site.line, " ")
		if !ok || house == m.items[k].num.digits || abs(len(house)-len(m.items[k].num.digits)) > 1 || len(house) < 3 {
			return
		}
		m.site.line = m.items[k].num.digits + " " + street
		m.frame.Site = m.site.line
		m.setRole(k, roleIgnored, "the house number put right")
		return
	}
}

// onSameStreet tells whether the number at i has the name of the chosen house's street
// behind it: "that was 22 Pine not 24 Pine". A term of the trade is no name there: "72
// Rear St, 72 rear".
func (m *message) onSameStreet(i int) bool {
	if m.site == nil || i+1 >= len(m.items) || m.items[i].unit != "" {
		return false
	}
	first, behind := m.site.from+1, m.items[i+1].tok
	return first < m.site.to && behind != first && m.toks[first].kind == word && len(m.toks[first].text) > 2 &&
		m.toks[behind].text == m.toks[first].text && !m.p.term(m.toks, behind)
}
