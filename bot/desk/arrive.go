package desk

import (
	"slices"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// arrivals are words with which people say where they are or go next, right before
// the house.
var arrivals = [...]string{
	"im at", "i am at", "here at", "got to", "arrived at", "arriving at", "heading to", "headed to", "my way to",
	"next stop", "pulling up to", "pulled up to", "on site at", "onsite at", "now at", "off to", "moving on to",
	"over to", "were at", "llegue a", "llegue al", "llegando a", "llegando al", "llegamos a", "llegamos al", "estoy en",
	"estoy aqui en", "toy en", "estamos en", "ando en", "andamos en", "ando aqui en", "ya en", "aqui en", "ahora en",
	"sigo en", "voy a", "voy al", "voy para", "voy pal", "me voy a", "me voy al", "vamos a", "vamos al", "vamonos a",
	"vamonos al", "vamos para", "vamos pal", "rumbo a", "rumbo al", "camino a", "camino al", "sigue", "sigo con",
}

// leavings are those of them with which people go on to another house.
var leavings = [...]string{
	"heading to", "headed to", "my way to", "next stop", "off to", "moving on to", "over to", "next", "next up",
	"voy a", "voy al", "voy para", "voy pal", "me voy a", "me voy al", "vamos a", "vamos al", "vamonos a", "vamonos al",
	"vamos para", "vamos pal", "rumbo a", "rumbo al", "camino a", "camino al", "sigue", "siguiente", "proxima",
}

// leaves tells whether a text says that its writer goes on to a house.
func leaves(text, line string) bool {
	words, house := plainWords(text), plainWords(line)
	at := slices.IndexFunc(words, func(w string) bool { return slices.Contains(house, w) })
	for ; at > 0; at-- {
		if leadsTo(strings.Join(words[:at], " "), leavings[:]) {
			return true
		}
		if !ofHouses[words[at-1]] {
			return false
		}
	}
	return false
}

// leadsTo tells whether words end with one of some phrases.
func leadsTo(words string, phrases []string) bool {
	return slices.ContainsFunc(phrases, func(p string) bool { return strings.HasSuffix(" "+words, " "+p) })
}

// ofHouses are the words that may stand between such a phrase and the house: "llegando a la
// casa de la doña en 18 Birch Ln".
var ofHouses = wordSet("the house place el la los l de del casa dona senora senor sra sr don cliente " +
	"customer customers lady mrs mr ms en at on her his")

// onlyFirst are words that say so at the start of a message only: "at 305 Elm".
var onlyFirst = [...]string{"at", "next", "next up", "en", "al", "siguiente", "proxima", "ahora"}

// putsHouseRight tells whether a message that reports nothing puts the house right that its writer named
// last: on the way there any other one, else one that may be taken for it.
func (t *turn) putsHouseRight(f intents.Frame, c intents.Context, here store.SiteRecord) bool {
	if f.Site == "" || f.Site == here.Line || here.ID == 0 || t.m.Kind != store.Said || len(f.Unclear) > 0 || !t.parser.PutsHouseRight(t.m.Text, c) {
		return false
	}
	onTheWay, err := t.onlyOnTheWay()
	if err != nil || onTheWay || mistaken(f.Site, here.Line) {
		return err == nil
	}
	before, found, err := t.tx.SaidBefore(t.m)
	if err != nil || !found || before.ID != t.m.ID-1 { // somebody spoke since, whom it may answer
		return false
	}
	_, reported, err := t.tx.ReportOf(before.ID)
	return err == nil && reported
}

// mistaken tells whether two street lines may be taken for one another: they share their number and the
// first word of the street, or the street.
func mistaken(a, b string) bool {
	number, street, _ := strings.Cut(a, " ")
	other, road, _ := strings.Cut(b, " ")
	first, _, _ := strings.Cut(street, " ")
	word, _, _ := strings.Cut(road, " ")
	return first == word && (number == other || street == road)
}

// onlyOnTheWay tells whether what the writer said last only told which house they are at or go to, so
// that nothing is on record there yet.
func (t *turn) onlyOnTheWay() (bool, error) {
	m, found, err := t.tx.SaidBefore(t.m)
	if err != nil || !found || m.State != store.Taken || m.Site == 0 || !t.known.SiteAt.Equal(m.At) || t.m.At.Sub(m.At) > t.opt.Memory {
		return false, err
	}
	if _, reported, err := t.tx.ReportOf(m.ID); err != nil || reported {
		return false, err
	}
	put, err := t.tx.Corrections(m.ID)
	return len(put) == 0, err
}

// goesTo takes a house in hand in the place of the one that the writer said to be at or to go to.
func (t *turn) goesTo(f intents.Frame) error {
	found, sure, err := t.resolve(assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}, true)
	if err != nil {
		return err
	}
	if !sure {
		return t.askOneOf(t.m, f.Site, found)
	}
	if err := t.remember(found[0].ID, t.m.At); err != nil {
		return err
	}
	return t.tx.FileUnder(t.m.ID, found[0].Named)
}

// arrives tells whether a message that reports nothing says that its writer is at a
// house or goes there.
func (t *turn) arrives(f intents.Frame) bool {
	return arrives(t.m.Text, f.Site) || t.parser.Arrives(t.m.Text, contextOf(t.day))
}

// arrives tells whether a text that reports nothing says that its writer is at a house
// or goes there, as a street line alone does.
func arrives(text, line string) bool {
	if strings.Contains(text, "?") {
		return false
	}
	words, house := plainWords(text), plainWords(line)
	ofHouse := func(w string) bool { return (len(w) > 2 || w[0] <= '9') && slices.Contains(house, w) }
	at := slices.IndexFunc(words, ofHouse)
	if at < 0 || house[0][0] <= '9' && !slices.Contains(words, house[0]) { // its number is told in words
		said := " " + strings.Join(words, " ") + " "
		return slices.ContainsFunc(arrivals[:], func(a string) bool { return strings.Contains(said, " "+a+" ") })
	}
	if at == 0 && len(words) <= len(house) {
		return true // the house alone
	}
	for ; at > 0; at-- {
		before := strings.Join(words[:at], " ")
		if leadsTo(before, arrivals[:]) || slices.Contains(onlyFirst[:], before) {
			return true
		}
		if !ofHouses[words[at-1]] {
			return false
		}
	}
	return false
}
