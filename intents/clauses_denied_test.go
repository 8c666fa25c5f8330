package intents

import "testing"

// A denial ends where "and" begins a clause with a subject and a verb of its own, and a span of time
// behind a number is the time of a part only when it is told so.
func TestDenialsEndWithTheirClause(t *testing.T) {
	says(t, [][2]string{
		{"the relief valve can't open and its outlet is soldered shut", "relief_blocked"},
		{"t&p won't lift and the pipe is capped", "relief_blocked"},
		{"they couldn't flush and the water is out", "no_water"},
		{"they couldn't flush or wash and water's out completely", "no_water"},
		{"the shower doesn't run and there is no water", "no_water"},
		{"she doesn't hear hammer or creep", "no creep; no hammer"},
		{"heater - 40 gal - dialed to 125 - two yrs old", "heater year 2024 40 gal 125 F"},
		{"heater set to 130 - three yrs old", "heater year 2023 130 F"},
		{"prv is 12 - 14 yrs old", "prv year 2013"},
	})
}

// "ok" at either end of a message says nothing of the part beside it.
func TestOkAtEitherEndIsNoCondition(t *testing.T) {
	says(t, [][2]string{
		{"flush the heater next week ok?", "plan other in 7"},
		{"66 tub, heater idle ok?", "66 bath idle"},
		{"66 tub, prv from 2004, ok?", "66 bath; prv year 2004"},
		{"ok prv is from 2019", "prv year 2019"},
		{"ok water softener from 2012 and 59 at the kitchen", "59 kitchen; softener year 2012"},
		{"prv ok, 59 at the kitchen", "59 kitchen; prv good"},
		{"prv ok?", "ask next_check"},
	})
}
