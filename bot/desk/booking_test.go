package desk

import (
	"testing"

	"lazyhand/assess"
	"lazyhand/store"
)

// monday is the day on which the words below are said.
var monday = assess.Date{Year: 2026, Month: 6, Day: 15}

var crew = []store.Person{{ID: "U01", Name: "Ana Ejemplo"}, {ID: "U02", Name: "Ben"}, {ID: "U03", Name: "Tomás"}}

func TestReadBooking(t *testing.T) {
	for text, want := range map[string]booking{
		"send Ana Thursday morning":          {day("2026-06-18"), "morning", "U01", ""},
		"send someone Thursday morning":      {day("2026-06-18"), "morning", "", ""},
		"booked for the 19th with Ben":       {day("2026-06-19"), "", "U02", ""},
		"Ben goes tomorrow afternoon":        {day("2026-06-16"), "afternoon", "U02", ""},
		"visit monday":                       {day("2026-06-22"), "", "", ""}, // the next one, not today
		"book it for 6/19":                   {day("2026-06-19"), "", "", ""},
		"book it for June 3":                 {day("2027-06-03"), "", "", ""}, // June 3 is past
		"move it to the 3rd of july":         {day("2026-07-03"), "", "", ""},
		"schedule 2026-07-01 with <@U02>":    {day("2026-07-01"), "", "U02", ""},
		"book Ben":                           {assess.Date{}, "", "U02", ""},
		"book it for Friday with Carla":      {day("2026-06-19"), "", "", "Carla"},
		"send Ana today":                     {day("2026-06-15"), "", "U01", ""},
		"manda a Ana el jueves en la mañana": {day("2026-06-18"), "morning", "U01", ""},
		"apartado para el 19 con Ben":        {day("2026-06-19"), "", "U02", ""},
		"Tomás va mañana por la tarde":       {day("2026-06-16"), "afternoon", "U03", ""},
		"va Tomas pasado mañana":             {day("2026-06-17"), "", "U03", ""},
		"agenda el 3 de julio con Ana":       {day("2026-07-03"), "", "U01", ""},
		"cita el miércoles con Beto":         {day("2026-06-17"), "", "", "Beto"},
		"book feb 29":                        {day("2028-02-29"), "", "", ""},
	} {
		if got, ok := readBooking(text, monday, crew); !ok || got != want {
			t.Errorf("%q is read as %+v, %v; want %+v", text, got, ok, want)
		}
	}
}

// What only sounds like it books nothing.
func TestNoBooking(t *testing.T) {
	for _, text := range []string{
		"customer is away until Thursday", "called them on Monday, no answer", "don't send Ana Thursday", "no mandes a nadie el jueves",
		"who goes?", "19 psi at the kitchen", "", "Ana was there", "the valve is from the 90s",
	} {
		if got, ok := readBooking(text, monday, crew); ok {
			t.Errorf("%q books %+v", text, got)
		}
	}
}

func TestNobodyIsGuessed(t *testing.T) {
	two := append([]store.Person{{ID: "U09", Name: "Ana Otra"}}, crew...)
	if b, _ := readBooking("send Ana Thursday", monday, two); b.Who != "" {
		t.Errorf("of two Anas, %s is sent", b.Who)
	}
}

func TestClaimsAndEnds(t *testing.T) {
	for _, text := range []string{"mine", "Mine!", "I'll take it", "I’ll take it, thanks", "on it", "la tomo", "Yo la tomo.", "me encargo"} {
		if !saysClaim(text) {
			t.Errorf("%q takes no alert", text)
		}
	}
	for _, text := range []string{"not mine", "is this mine?", "who takes it", "mine shaft on Elm", "taking it apart tomorrow"} {
		if saysClaim(text) {
			t.Errorf("%q takes an alert", text)
		}
	}
	for text, want := range map[string]string{
		"closed: customer declined": "customer declined", "Close it, not our matter.": "not our matter", "close": "", "closed because they moved": "they moved",
		"cerrada: el cliente no quiso": "el cliente no quiso", "ciérrala": "",
		"is handled": "handled", "has been taken care of by the city": "taken care of by the city", "ya quedó atendida": "atendida", "resolved.": "resolved",
	} {
		if got, ok := saysClosed(text); !ok || got != want {
			t.Errorf("%q ends with reason %q, %v; want %q", text, got, ok, want)
		}
	}
	for _, text := range []string{"close the valve first", "closed the main", "they closed at noon", "cierra la llave", "sorted the parts", "isnt handled",
		"is it handled?", "handled the cat at the door", "not resolved"} {
		if _, ok := saysClosed(text); ok {
			t.Errorf("%q ends an alert", text)
		}
	}
}

func day(s string) assess.Date {
	d, err := assess.ParseDate(s)
	if err != nil {
		panic(err)
	}
	return d
}

func FuzzReadBooking(f *testing.F) {
	f.Add("send Ana Thursday morning")
	f.Add("6/31 0/0 99/99 32nd 0th")
	f.Add("mañana la mañana de del 19 de")
	f.Fuzz(func(t *testing.T, text string) {
		if b, ok := readBooking(text, monday, crew); ok && !b.Day.IsZero() && b.Day.Before(monday) && isoDay.FindString(text) == "" {
			t.Errorf("%q books the past, %s", text, b.Day)
		}
		saysClosed(text)
		saysClaim(text)
	})
}
