package intents

import (
	"slices"
	"strings"

	"lazyhand/assess"
)

// itemOf is the thing that work or a plan is done to.
var itemOf = map[assess.Action]assess.Item{
	assess.SetPRV: assess.PRV, assess.ReplacedPRV: assess.PRV, assess.InstalledPRV: assess.PRV, assess.RebuiltPRV: assess.PRV,
	assess.ReplacePRV:    assess.PRV,
	assess.InstalledTank: assess.ExpansionTank, assess.ReplacedTank: assess.ExpansionTank, assess.ChargedTank: assess.ExpansionTank,
	assess.InstallTank: assess.ExpansionTank, assess.ReplaceTank: assess.ExpansionTank,
	assess.FlushedHeater: assess.Heater, assess.ReplacedHeater: assess.Heater, assess.ReplacedDrainValve: assess.DrainValve,
}

// itemIn is the thing that a statement is about, empty for none.
func itemIn(s assess.Statement) assess.Item {
	switch s := s.(type) {
	case assess.Equipment:
		return s.Item
	case assess.Work:
		return itemOf[s.Action]
	case assess.Plan:
		return itemOf[s.Action]
	}
	return ""
}

// Items are the things that a report speaks of, each once.
func (f Frame) Items() (list []assess.Item) {
	for _, s := range f.Statements {
		if i := itemIn(s); i != "" && !slices.Contains(list, i) {
			list = append(list, i)
		}
	}
	return list
}

// nouns name a thing before a message that goes on about it.
var nouns = map[assess.Item]string{assess.PRV: "regulator", assess.ExpansionTank: "expansion tank", assess.Heater: "heater",
	assess.DrainValve: "drain valve", assess.Gauge: "gauge"}

// stands tells whether a word may stand for a thing named before.
func stands(w string) bool {
	return oneOf(w, "it", "its", "that", "one", "ones", "la", "lo", "le", "este", "esta", "ese", "esa")
}

// SaysOne tells whether a text speaks of one that is yet to come, rather than of that which is there:
// "putting one in friday", "el viernes pongo uno", and not "swapped that one", "the old one".
func SaysOne(text string) bool {
	words := plainWords(text)
	at := slices.IndexFunc(words, func(w string) bool { return w == "one" || w == "uno" })
	return at >= 0 && (at == 0 || !oneOf(words[at-1], "that", "this", "the", "old", "new", "other", "bad", "ese", "este", "el", "no", "good", "which", "another"))
}

// MayGoOn tells whether a text holds a word that may stand for a thing which the
// report before it named, or begins with what is said of one that is not named again:
// "swapped it", "ya la cambié", "cambiarla", "tiene como 15 años".
func MayGoOn(text string) bool {
	words := plainWords(text)
	return slices.ContainsFunc(words, func(w string) bool {
		return stands(w) || w == "uno" || len(w) > 6 && (strings.HasSuffix(w, "rla") || strings.HasSuffix(w, "rlo"))
	}) || beginsWithFact(words)
}

// beginsWithFact tells whether a message begins with a verb that needs no subject, or with
// the age of a thing.
func beginsWithFact(words []string) bool {
	for i, w := range words {
		switch w {
		case "ya", "no", "pero", "y", "pues", "creo", "que", "tambien", "and", "but", "so", "like", "also", "como", "about", "casi",
			"de", "probably":
			continue
		case "es", "era", "ta", "tiene", "tenia", "trae", "lleva", "anda", "sirve", "jala", "funciona", "se", "looks", "from", "dated", "del":
			return true
		}
		return i+1 < len(words) && w[0] <= '9' && oneOf(words[i+1], "years", "yrs", "yr", "year", "anos")
	}
	return false
}

// plainWords returns the words of a text, folded and without marks.
func plainWords(text string) []string {
	return strings.FieldsFunc(fold(text), func(r rune) bool { return strings.ContainsRune(" \n\t,.;:!?()'’", r) })
}

// Meant are those of some things that the pronoun of a text can stand for, or that what
// it says can be said of: "la cambié", "con la nueva" and "ta vieja" are said of no tank.
func (p *Parser) Meant(text string, items []assess.Item) []assess.Item {
	words := plainWords(text)
	for i, w := range words {
		pronoun := w
		switch {
		case len(w) > 6 && (strings.HasSuffix(w, "rla") || strings.HasSuffix(w, "rlo")):
			pronoun = w[len(w)-2:]
		case saidOfThing(w):
			pronoun = "l" + w[len(w)-1:]
		case i+1 == len(words) || !p.tellsDeed(words[i+1]):
			continue
		}
		switch pronoun {
		case "la":
			return slices.DeleteFunc(slices.Clone(items), func(i assess.Item) bool { return i != assess.PRV && i != assess.DrainValve })
		case "lo":
			return slices.DeleteFunc(slices.Clone(items), func(i assess.Item) bool { return i == assess.DrainValve })
		}
	}
	return items
}

// saidOfThing tells whether a Spanish word says of a thing how it is, and by its end of
// which gender that is: "vieja", "nuevo".
func saidOfThing(w string) bool {
	n := len(w) - 1
	return n > 3 && (w[n] == 'a' || w[n] == 'o') &&
		oneOf(w[:n], "nuev", "viej", "oxidad", "gastad", "pegad", "picad", "trabad", "tapad", "rot", "muert", "danad", "quebrad",
			"descompuest", "podrid", "atorad")
}

// tellsDeed tells whether a word alone tells work, done or to be done.
func (p *Parser) tellsDeed(word string) bool {
	id, ok := p.lex.id(word)
	return ok && p.lex.kinds(p.lex.first[id]).meets(setOf(cDid, cDo, cBase))
}

// saysOfIt tells whether a frame says of its thing what s says: the same is done to it or
// planned, or facts are told of it.
func saysOfIt(f Frame, s assess.Statement) bool {
	return slices.ContainsFunc(f.Statements, func(o assess.Statement) bool {
		switch s := s.(type) {
		case assess.Work:
			o, ok := o.(assess.Work)
			return ok && o.Action == s.Action && (o.ToPSI != nil || s.ToPSI == nil)
		case assess.Plan:
			o, ok := o.(assess.Plan)
			return ok && o.Action == s.Action
		}
		return itemIn(o) == itemIn(s)
	})
}

// GoesOn reads a message that names no thing and goes on about one which the report
// before it spoke of: "swapped it, 60 now at the laundry". plain is what the message
// means by itself. It is told, true, only when what is so said of the thing is more than
// that, and no reading changes.
func (p *Parser) GoesOn(text string, ctx Context, item assess.Item, plain Frame) (Frame, bool) {
	noun := nouns[item]
	others := func(i assess.Item) bool { return i != item }
	if noun == "" || slices.ContainsFunc(plain.Items(), others) ||
		slices.ContainsFunc(plain.Asks(), func(a Ask) bool { return a.About != AskNone && a.About != AskCorrect }) {
		return plain, false
	}
	f := p.Parse(noun+". "+text, ctx)
	more := false
	f.Statements = slices.DeleteFunc(f.Statements, func(s assess.Statement) bool {
		e, ok := s.(assess.Equipment)
		bare := ok && (e == assess.Equipment{Item: item} || e.Absent() && item != assess.ExpansionTank) // what was told of is there
		more = more || !bare && itemIn(s) == item && !saysOfIt(plain, s)
		return bare
	})
	if !more || f.Site != plain.Site || f.Answer != plain.Answer || len(f.Amends) > 0 {
		return plain, false
	}
	in := func(list []assess.Statement, r assess.Reading) bool {
		return slices.ContainsFunc(list, func(s assess.Statement) bool {
			o, ok := s.(assess.Reading)
			return ok && o.PSI == r.PSI && o.Point == r.Point
		})
	}
	for _, s := range f.Statements {
		if r, ok := s.(assess.Reading); ok && !in(plain.Statements, r) {
			return plain, false
		}
		if i := itemIn(s); i != "" && i != item {
			return plain, false
		}
	}
	for _, s := range plain.Statements {
		if r, ok := s.(assess.Reading); ok && r.Point != "" && !in(f.Statements, r) {
			return plain, false
		}
	}
	return f, true
}

// CleanedStrainer reads "cleaned it" as told of the regulator's strainer, which the message that its
// writer sent before it names: "strainer is plugged solid". plain is what it means by itself.
func (p *Parser) CleanedStrainer(before, text string, ctx Context, plain Frame) (f Frame, told bool) {
	named := func(w string) bool { return p.lex.inList(w, listStrainers) }
	if len(plain.Items()) > 0 || !MayGoOn(text) || !slices.ContainsFunc(plainWords(before), named) || len(plainWords(before)) > longestAmendment {
		return plain, false
	}
	g := p.Parse(before+". "+text, ctx)
	for _, s := range g.Statements {
		if w, ok := s.(assess.Work); ok && w.Action == assess.RebuiltPRV {
			plain.Statements = slices.DeleteFunc(plain.Statements, func(s assess.Statement) bool { _, ask := s.(Ask); return ask })
			plain.Statements = append(plain.Statements, w)
			return plain, true
		}
	}
	return plain, false
}
