package intents

import (
	"regexp"
	"slices"
	"strings"

	"lazyhand/assess"
)

// Lists of the lexicon that these rules know.
var (
	listBeforeScrew = listOf("before screw")
)

// Behind a pressure that was read, "turned it down" is told of the regulator's screw.

var screwTurned = regexp.MustCompile(`^(?:(?:turned|cranked|brought|bumped|knocked|dialed|dialled|backed|ran|took) (?:it|her|him|the screw) (?:back )?(?:down|up)` +
	`|backed (?:it|her) (?:off|out)|(?:gave|give) (?:it|her) (?:a |an |about |like |another )*(?:half|quarter|full|one|two|couple|few|[1-5])(?: (?:a|of|more))* turns?` +
	`|(?:le|la|lo) (?:baje|subi|di|aprete|afloje))(?: .{0,40})?$`)

// ScrewTurned reads a message that only tells a screw turned as work on the regulator; plain is what
// it means by itself. told is false where it says anything else.
func (p *Parser) ScrewTurned(text string, ctx Context, plain Frame) (f Frame, told bool) {
	for first, rest, ok := strings.Cut(text, " "); ok && p.lex.inList(fold(strings.Trim(first, ",.")), listBeforeScrew); first, rest, ok = strings.Cut(text, " ") {
		text = rest
	}
	words := wholeWords(text)
	pressure := func(w string) bool { return len(w) > 1 && w[0] >= '0' && w[0] <= '9' }
	if len(words) > 10 || slices.ContainsFunc(words, pressure) || !screwTurned.MatchString(strings.Join(words, " ")) || len(plain.Items()) > 0 {
		return plain, false
	}
	g := p.Parse("prv: "+text, ctx)
	set := func(s assess.Statement) bool {
		w, ok := s.(assess.Work)
		return ok && w.Action == assess.SetPRV
	}
	other := func(s assess.Statement) bool {
		_, reading := s.(assess.Reading)
		return !set(s) && !reading
	}
	if !slices.ContainsFunc(g.Statements, set) || slices.ContainsFunc(g.Statements, other) || g.Site != plain.Site {
		return plain, false
	}
	return g, true
}
