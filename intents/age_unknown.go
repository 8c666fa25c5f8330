package intents

import "strings"

// An age that nobody knows or can read.

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

// ageUnknown reads "nobody knows how old", "age unknown", "no se sabe de qué año es".
func (m *message) ageUnknown(i int) bool {
	if m.is(i, cHint, "undated") {
		return true // "PRV: no date code"
	}
	t := m.text(i)
	if m.is(i, cAge, "") || t == "when" || t == "cuando" {
		near := 7
		if t == "when" || t == "cuando" {
			near = 2
		}
		unknown := func(k int) bool { return m.is(k, cUnknown, "") }
		if m.left(i, near, true, unknown) >= 0 ||
			near > 2 && m.right(i, 8, true, func(k int) bool { return unknown(k) && m.items[k].seg == m.items[i].seg }) >= 0 {
			return !m.sents[m.items[i].sent].question && (near > 2 || !m.closes(i))
		}
	}
	if m.is(i, cUnknown, "") && (i+1 >= len(m.items) || m.items[i+1].mark) && strings.HasSuffix(t, "knows") {
		return true // "no tag, nobody knows"
	}
	switch t {
	case "nobody", "nadie", "who":
		return (m.text(i+1) == "knows" || m.text(i+1) == "sabe") && (i+2 >= len(m.items) || m.items[i+2].mark)
	case "cuando":
		return m.left(i, 4, false, func(k int) bool { t := m.text(k); return t == "sabe" || t == "sabemos" || t == "saben" }) >= 0
	case "old":
		// how old
		if m.text(i-1) == "how" || m.text(i-1) == "whats" {
			return m.left(i, 7, true, func(k int) bool {
				switch m.text(k) {
				case "know", "knows", "no", "nobody", "idea", "clue", "cant", "dont", "unsure", "unknown", "not", "couldnt", "tell", "say", "knew":
					return true
				}
				return false
			}) >= 0 || m.right(i, 5, true, func(k int) bool {
				switch m.text(k) {
				case "unknown", "nobody", "no", "dont", "unk", "idea":
					return true
				}
				return false
			}) >= 0
		}
	case "etiqueta", "placa", "fecha de", "label":
		return m.unreadable(i)
	case "age", "edad", "date", "year", "fecha", "vintage", "ano", "tag", "anos":
		if m.unreadable(i) {
			return true
		}
		if r := m.right(i, 3, true, func(k int) bool {
			switch m.text(k) {
			case "not":
				return m.text(k+1) == "known" || m.text(k+1) == "legible" || m.text(k+1) == "readable"
			case "unknown", "unk", "unreadable", "illegible", "desconocida", "unknwn", "?", "unclear", "gone", "missing", "not known", "worn off":
				return true
			}
			return false
		}); r >= 0 && (t == "age" || t == "edad" || m.text(r) != "gone") {
			return !(m.text(r) == "?" && m.sents[m.items[i].sent].asking)
		}
		if m.left(i, 6, true, func(k int) bool {
			switch m.text(k) {
			case "no", "no se", "unk", "unknown", "cant", "couldnt", "nobody", "dont", "not", "sabe", "nadie", "se", "idea", "sin",
				"no trae", "no tiene":
				return true
			}
			return false
		}) >= 0 {
			switch t {
			case "age", "edad":
				return true
			case "date", "tag", "fecha":
				return m.text(i+1) != "yet" && m.text(i+1) != "set" && m.left(i, 4, true, func(k int) bool {
					t := m.text(k)
					return oneOf(t, "no", "no trae", "no tiene") && k >= i-2 && m.text(k+1) != "wait" || oneOf(t, "read", "cant", "couldnt") ||
						t == "find" && m.is(k-1, cNeg, "")
				}) >= 0
			case "ano", "anos", "year", "vintage":
				return m.left(i, 6, true, func(k int) bool {
					t := m.text(k)
					return t == "no se" || t == "se" && m.text(k-1) == "no" || oneOf(t, "sabe", "sabemos", "know", "knows", "idea", "saben", "sabia")
				}) >= 0
			}
		}
	}
	return false
}
