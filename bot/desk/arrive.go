package desk

import (
	"slices"
	"strings"

	"lazyhand/intents"
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
