package intents

import "testing"

// A day that does not suit is no day of a plan (the day is 15 June 2026, a Monday).
func TestADayThatIsDeniedIsNotPlanned(t *testing.T) {
	readSpanish(t, []struct{ text, want string }{
		{"not friday, recheck monday", "plan recheck 7"},
		{"not saturday, make the recheck thursday", "plan recheck 3"},
		{"no friday, recheck monday", "plan recheck 7"},
		{"recheck not friday but monday", "plan recheck 7"},
		{"instead of friday recheck monday", "plan recheck 7"},
		{"not in 2 weeks, recheck in 3 weeks", "plan recheck 21"},
		{"not tomorrow, recheck thursday", "plan recheck 3"},
		{"can't do friday, recheck monday", "plan recheck 7"},
		{"nobody home friday, recheck monday", "plan recheck 7"},
		{"friday won't work, recheck monday", "plan recheck 7"},
		{"el viernes no, revisar el lunes", "plan recheck 7"},
		{"no el viernes, revisar el lunes", "plan recheck 7"},
		{"el viernes no puede, revisar el lunes", "plan recheck 7"},
		{"if not friday, recheck monday", "plan recheck 4"},
		{"recheck friday, not a big deal", "plan recheck 4"},
		{"recheck monday, no leaks", "no leak; plan recheck 7"},
	})
}

// "One" that is yet to come is none of those that are there.
func TestSaysOneThatIsYetToCome(t *testing.T) {
	for text, want := range map[string]bool{
		"putting one in friday": true, "el viernes pongo uno": true, "one goes in Thursday": true,
		"swapped that one": false, "took the old one out": false, "swapped it": false,
	} {
		if got := SaysOne(text); got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}
