package desk

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"time"

	"lazyhand/assess"
	"lazyhand/store"
)

// booking is when a visit is to be and who goes; what was not said is empty.
type booking struct {
	Day  assess.Date
	Part string // morning, afternoon
	Who  string // id
	// Nobody is a name that was said and that nobody on record has.
	Nobody string
}

// readBooking reads words such as "send Ana Thursday morning" or "apartado para
// el 19 con Ben", said in an alert's thread. It needs a word of sending or a
// name of the crew beside the day, so that a customer's absence is no booking.
func readBooking(text string, today assess.Date, crew []store.Person) (booking, bool) {
	words := plainWords(text)
	for i, w := range words {
		if w == "not" || w == "dont" || w == "no" && i+1 < len(words) && bookingVerbs[words[i+1]] {
			return booking{}, false
		}
	}
	b := booking{Who: named(words, crew)}
	if b.Who == "" {
		b.Nobody = unknownName(words)
	}
	var dayWords bool
	b.Day, b.Part, dayWords = readDay(words, today)
	if iso := isoDay.FindString(text); iso != "" {
		if d, err := assess.ParseDate(iso); err == nil {
			b.Day, dayWords = d, true
		}
	}
	verb := slices.ContainsFunc(words, func(w string) bool { return bookingVerbs[w] })
	switch {
	case dayWords && (verb || b.Who != ""):
		return b, true
	case b.Who != "" && verb:
		return b, true
	}
	return booking{}, false
}

var (
	isoDay       = regexp.MustCompile(`\b\d{4}-\d{2}-\d{2}\b`)
	bookingVerbs = wordSet(`send book booked booking schedule scheduled visit goes move moved
		manda mandar mande manden envia enviar aparta apartar apartado apartada agenda agendado agendada programa programado programada
		va ira cita visita mueve muevela pasala`)
)

// unknownName is the word after "with" or "con" that is no word of time: the
// name of somebody who has not been heard here yet.
func unknownName(words []string) string {
	for i, w := range words {
		next := at(words, i+1)
		if (w == "with" || w == "con") && next != "" && !someone[next] && next[0] > '9' {
			return strings.ToUpper(next[:1]) + next[1:]
		}
	}
	return ""
}

var someone = wordSet("the a an his her their someone somebody anyone customer owner el la un una alguien su cliente dueno duena")

// plainWords takes a text apart into words in lower case, without accents and
// signs.
func plainWords(text string) []string {
	return strings.FieldsFunc(plain.Replace(strings.ToLower(text)), func(r rune) bool {
		return !(r >= 'a' && r <= 'z' || r >= '0' && r <= '9' || r == '/' || r == '_')
	})
}

var plain = strings.NewReplacer("'", "", "’", "", "á", "a", "é", "e", "í", "i", "ó", "o", "ú", "u", "ü", "u", "ñ", "n")

// named finds a member of the crew: by id, or by a name of one word or the
// first of several, when only one has it.
func named(words []string, crew []store.Person) string {
	found := ""
	for _, p := range crew {
		name := plainWords(p.Name)
		id := strings.ToLower(p.ID)
		if slices.Contains(words, id) || len(name) > 0 && slices.Contains(words, name[0]) {
			if found != "" {
				return "" // two fit: nobody is guessed
			}
			found = p.ID
		}
	}
	return found
}

var weekdays = map[string]time.Weekday{
	"sunday": 0, "sun": 0, "domingo": 0,
	"monday": 1, "mon": 1, "lunes": 1,
	"tuesday": 2, "tue": 2, "tues": 2, "martes": 2,
	"wednesday": 3, "wed": 3, "miercoles": 3,
	"thursday": 4, "thu": 4, "thur": 4, "thurs": 4, "jueves": 4,
	"friday": 5, "fri": 5, "viernes": 5,
	"saturday": 6, "sat": 6, "sabado": 6,
}

var months = map[string]time.Month{
	"january": 1, "jan": 1, "enero": 1, "february": 2, "feb": 2, "febrero": 2, "march": 3, "mar": 3, "marzo": 3,
	"april": 4, "apr": 4, "abril": 4, "may": 5, "mayo": 5, "june": 6, "jun": 6, "junio": 6, "july": 7, "jul": 7, "julio": 7,
	"august": 8, "aug": 8, "agosto": 8, "september": 9, "sep": 9, "sept": 9, "septiembre": 9, "october": 10, "oct": 10, "octubre": 10,
	"november": 11, "nov": 11, "noviembre": 11, "december": 12, "dec": 12, "diciembre": 12,
}

// readDay finds a day, counted from today, and its part. The next such day is
// meant; a day without month or year is never in the past.
func readDay(words []string, today assess.Date) (day assess.Date, part string, found bool) {
	set := func(d assess.Date) {
		if !found {
			day, found = d, true
		}
	}
	for i, w := range words {
		before, after := at(words, i-1), at(words, i+1)
		switch w {
		case "today", "hoy":
			set(today)
		case "tomorrow":
			set(today.AddDays(1))
		case "morning", "am":
			part = "morning"
		case "afternoon", "pm", "tarde":
			part = "afternoon"
		case "manana":
			switch before {
			case "la":
				part = "morning"
			case "pasado":
				set(today.AddDays(2))
			default:
				set(today.AddDays(1))
			}
		}
		if wd, ok := weekdays[w]; ok {
			set(nextWeekday(today, wd))
		}
		if m, d, ok := strings.Cut(w, "/"); ok {
			month, err1 := strconv.Atoi(m)
			dom, err2 := strconv.Atoi(d)
			if err1 == nil && err2 == nil {
				if date, ok := nextDate(today, time.Month(month), dom); ok {
					set(date)
				}
			}
		}
		dom, ordinal := dayOfMonth(w)
		if dom == 0 {
			continue
		}
		if m, ok := months[before]; ok {
			if date, ok := nextDate(today, m, dom); ok {
				set(date)
			}
			continue
		}
		if m, ok := months[monthAfter(words, i)]; ok {
			if date, ok := nextDate(today, m, dom); ok {
				set(date)
			}
			continue
		}
		if ordinal || (before == "el" || before == "dia") && after != "psi" {
			if date, ok := nextDayOfMonth(today, dom); ok {
				set(date)
			}
		}
	}
	return day, part, found
}

// monthAfter is the month's word after a day's number: "19 june", "19 de junio",
// "19th of june".
func monthAfter(words []string, i int) string {
	if w := at(words, i+1); w != "de" && w != "of" {
		return w
	}
	return at(words, i+2)
}

func at(words []string, i int) string {
	if i < 0 || i >= len(words) {
		return ""
	}
	return words[i]
}

// dayOfMonth reads "19" or "19th".
func dayOfMonth(w string) (day int, ordinal bool) {
	digits := strings.TrimRight(w, "abcdefghijklmnopqrstuvwxyz")
	switch w[len(digits):] {
	case "":
	case "st", "nd", "rd", "th":
		ordinal = true
	default:
		return 0, false
	}
	n, err := strconv.Atoi(digits)
	if err != nil || n < 1 || n > 31 {
		return 0, false
	}
	return n, ordinal
}

func nextWeekday(today assess.Date, wd time.Weekday) assess.Date {
	d := today.AddDays(1)
	for d.In(time.UTC).Weekday() != wd {
		d = d.AddDays(1)
	}
	return d
}

// nextDate is the next such day of a month; false when there is none within
// eight years.
func nextDate(today assess.Date, m time.Month, dom int) (assess.Date, bool) {
	for year := today.Year; year <= today.Year+8; year++ {
		d := assess.DateOf(time.Date(year, m, dom, 0, 0, 0, 0, time.UTC))
		if d.Month == m && d.Day == dom && !d.Before(today) {
			return d, true
		}
	}
	return assess.Date{}, false
}

func nextDayOfMonth(today assess.Date, dom int) (assess.Date, bool) {
	for i := range 70 {
		if d := today.AddDays(i); d.Day == dom {
			return d, true
		}
	}
	return assess.Date{}, false
}

// saysClaim tells whether words take an alert: "mine", "I'll take it", "la
// tomo".
func saysClaim(text string) bool {
	s := strings.Join(plainWords(text), " ")
	for _, p := range []string{"mine", "is mine", "ill take", "ill get", "im taking", "i got", "ive got", "its mine", "this is mine", "ill take it", "i will take it", "ill take this one", "i take it", "taking it", "i got it", "i got this",
		"ive got it", "ive got this", "im on it", "on it", "claimed", "claim", "ill handle it", "ill handle", "ill do",
		"mia", "es mia", "tomo", "yo tomo", "la tomo", "yo la tomo", "lo tomo", "yo lo tomo", "yo me encargo", "me encargo", "yo la agarro", "la agarro"} {
		if s == p || strings.HasPrefix(s, p+" thanks") || strings.HasPrefix(s, p+" gracias") {
			return true
		}
	}
	return false
}

var closing = regexp.MustCompile(`(?i)^\s*(?:closed|close it|close|closing|cerrada|cerrado|ci[ée]rrala|ci[ée]rralo|cerrar|cierra)\s*(?:$|[:;,.\-–—]+\s*(.*)$|(?:because|porque)\s+(.*)$)`)

// handled are words by which an alert is over, which are its reason too: "is handled", "ya quedó
// resuelta, la clienta cambió la válvula".
var handled = regexp.MustCompile(`(?i)^\s*(?:(?:it|that|this|the alert|la alerta|alert|alerta)(?:'?s)? )?(?:is |was |has been |all |been |already |ya |est[áa] |qued[óo] |fue )*` +
	`((?:handled|taken care of|resolved|dealt with|sorted(?: out)?|atendid[ao]|resuelt[ao]|arreglad[ao])(?:(?:\s*[:;,.\-–—]+|\s+(?:by|with|because|since|today|yesterday|por|con|porque|hoy|ayer)\b)[^?]*)?)$`)

// saysClosed reads words that close an alert, and the reason they give:
// "closed: customer declined". "Closed the valve" is none.
func saysClosed(text string) (reason string, ok bool) {
	text = strings.Join(strings.Fields(text), " ")
	if m := handled.FindStringSubmatch(text); m != nil {
		return shorten(strings.TrimRight(m[1], "."), 120), true
	}
	m := closing.FindStringSubmatch(text)
	if m == nil {
		return "", false
	}
	return shorten(strings.TrimRight(m[1]+m[2], "."), 120), true
}

func wordSet(words string) map[string]bool {
	out := map[string]bool{}
	for _, w := range strings.Fields(words) {
		out[w] = true
	}
	return out
}
