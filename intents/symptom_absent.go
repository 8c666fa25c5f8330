package intents

import (
	"strings"

	"lazyhand/assess"
)

// absent tells whether the symptom at item i is denied.
func (m *message) absent(i int, name assess.SymptomName) bool {
	if m.is(i, cDry, "") && name == assess.ReliefDischarge {
		return !m.negRight(i - 1)
	}
	if m.is(i, cHint, "denies") {
		return !m.negRight(i - 1)
	}
	s := &m.sents[m.items[i].sent]
	if name == assess.NoWater && m.deniedAfterAll(i) || name == assess.ReliefDischarge && m.is(i, cSym, "no_water") {
		return true
	}
	if v, ok := m.val(i, cSym); ok && (v == "no_water" || m.text(i) == "no pressure" || m.text(i) == "not enough pressure") {
		return false
	}
	// "leaks: none", "hammer - no", "creep? no"
	for k := i + 1; k < s.to && k <= i+3; k++ {
		switch m.text(k) {
		case ":", "=", "-", "?", "at all", "is":
			continue
		case "none", "no", "nope", "negative", "nada", "ninguno", "ninguna", "neg", "absent":
			if m.text(k) == "no" && k+1 < s.to && !m.items[k+1].mark {
				break
			}
			if k == i+1 && !m.says(k, "neg", "none", "ninguna", "ninguno", "nada", "nope", "negative") {
				break
			}
			return true
		}
		break
	}
	if i+1 == s.to-1 && m.text(i+1) == "?" && m.sents[m.items[i].sent].question && m.items[i].sent+1 < len(m.sents) {
		n := m.sents[m.items[i].sent+1]
		if n.from < len(m.items) && (m.text(n.from) == "no" || m.text(n.from) == "none" || m.text(n.from) == "nope") {
			return true
		}
	}
	if m.toilet(i) {
		return m.left(i, 6, false, func(k int) bool { return m.text(k) == "none" || m.text(k) == "neither" }) >= 0
	}
	if m.contradicted(i) {
		return true
	}
	for k := i - 1; k >= s.from && m.items[k].seg == m.items[i].seg; k-- {
		if t := m.text(k); t == "yes" || t == "yep" {
			return false // "no drip, no banging, yes the kitchen faucet leaks"
		}
	}
	if t := m.text(i + 1); t == "free" || t == "-" && m.text(i+2) == "ve" || m.isNum(i+1) && m.items[i+1].value == 0 && m.items[i+1].unit == "" {
		return true // "leak free", "hammer -ve", "leaks 0"
	}
	if ended(m.text(i+1)) || be(m.text(i+1)) && ended(m.text(i+2)) || m.text(i+1) == "has" && ended(m.text(i+2)) || m.text(i-1) == "se quito el" || m.text(i-2) == "quito" {
		// told of another visit's complaint; one that ended by work of this visit stays
		worked := false
		for _, v := range m.verbs {
			worked = worked || v.done
		}
		if !worked {
			return true
		}
	}
	if s.header >= 0 && s.header < i {
		for k := s.from; k < s.header; k++ {
			if m.is(k, cNeg, "") && m.text(s.header-1) != "no" {
				return true // "didn't find any: rust, leaks, hammer"
			}
		}
	}
	if m.isNum(i-1) && m.items[i-1].value == 0 {
		return true
	}
	// words of denial before, over a list
	for k := i - 1; k >= s.from && k >= i-10; k-- {
		t := m.text(k)
		switch t {
		case "no", "not", "never", "without", "w/o", "isnt", "arent", "wasnt", "doesnt", "didnt", "hasnt", "dont",
			"nor", "neither", "sin", "ni", "nada de", "nada de agua", "no sign of", "no signs of", "free of",
			"zero", "none", "ningun", "ninguna", "negative for", "havent", "aint", "nothing", "cant", "werent",
			"nobody", "nadie", "tampoco", "nunca", "cero", "no more":
			if t == "no" && m.text(k+1) == "," || t == "nothing" && m.text(k+1) == "but" {
				return false
			}
			if m.right(k, 2, true, func(j int) bool { return m.is(j, cBase, "fixed") && j < i }) >= 0 {
				return false // "couldn't fix the leak"
			}
			if t == "zero" && m.isNum(k) {
				return false
			}
			return true
		case "but", "pero", "except", "although", "though", "just", "only", "solo", "nomas":
			return false // "no black water but the kitchen leaks"
		case ",", "and", "y":
			// a list goes on only when it is closed by "or", "nor", "ni"
			if m.listEnds(k, i) {
				continue
			}
			return false
		case "or", "o", "/", "any", "visible", "hear", "see", "heard", "seen", "found", "find", "signs", "sign",
			"of", "a", "the", "at", "all", "more", "anymore", "noticeable", "hay", "se", "ve", "tiene", "oye",
			"oyen", "de", "el", "la", "los", "las", "ya", "audible", "other", "obvious", "major", "active", "real",
			"feel", "that", "rusty", "dark", "water", "ninguna fuga", "con", "un", "una", "escucha", "seeing",
			"hearing", "is", "was":
			continue
		}
		if m.is(k+1, cBase, "fixed") && k+1 < i {
			return false // "couldn't fix the leak"
		}
		if deniesSymptom(t) || m.is(k, cLacks, "") || m.is(k, cNeg, "") && strings.Contains(t, " ") {
			return true
		}
		if m.is(k, cSym, "") || m.is(k, cColor, "") || m.is(k, cWater, "") || m.is(k, cPipe, "") || m.is(k, cRelief, "") || m.is(k, cDischarge, "") {
			continue
		}
		if m.items[k].mark || m.items[k].num != nil || m.is(k, cItem, "") || m.items[k].point != "" {
			return false
		}
		if i-k > 3 {
			return false
		}
	}
	return false
}

// ended tells whether a word says that something is over: "the banging quit".
func ended(t string) bool {
	switch t {
	case "gone", "quit", "stopped", "went away", "cleared up", "disappeared", "vanished", "is gone", "went", "paro", "desaparecio":
		return true
	}
	return false
}

// deniesSymptom tells whether a phrase denies what follows it: "never had any hammer",
// "customer denies hammer".
func deniesSymptom(t string) bool {
	switch t {
	case "couldnt", "denies", "denied", "never had", "no complaints", "no complaint", "no longer", "didnt see",
		"couldnt find", "didnt find", "didnt hear", "no reports", "dont hear", "doesnt hear", "not getting":
		return true
	}
	return false
}

// listEnds tells whether the list that holds items k..i is joined by "or" or "nor".
func (m *message) listEnds(k, i int) bool {
	s := &m.sents[m.items[i].sent]
	for j := k - 1; j < s.to && j <= i+8; j++ {
		if j < 0 {
			continue
		}
		switch m.text(j) {
		case "or", "nor", "ni", "o":
			return true
		}
		if m.items[j].mark && m.text(j) != "," {
			return false
		}
		if m.items[j].num != nil || j > i && (m.is(j, cNeg, "")) {
			return false
		}
	}
	return false
}

// deniedAfterAll tells whether a lack of water is denied: "nobody is out of water",
// "it isn't a no-water call".
func (m *message) deniedAfterAll(i int) bool {
	return m.left(i, 5, false, func(k int) bool {
		if m.items[k].seg != m.items[i].seg || m.meets(k, otherDenials) || m.says(k, "no", "only") {
			return false
		}
		return m.signsOf(k).has(signDeny)
	}) >= 0
}

// otherDenials are the classes of words that deny something of their own.
var otherDenials = setOf(cSym, cLacks, cAbsent)

// contradicted tells whether the sentence ends by denying what it told of others:
// "neighbors all got brown water, hers isn't".
func (m *message) contradicted(i int) bool {
	k := m.sents[m.items[i].sent].to - 1
	for k > i && m.items[k].mark {
		k--
	}
	if k <= i || m.items[k].seg == m.items[i].seg {
		return false
	}
	switch m.text(k) {
	case "isnt", "doesnt", "didnt", "hasnt", "arent":
		return true
	}
	return m.is(k, cHint, "nothere")
}
