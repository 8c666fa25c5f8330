package intents

import "testing"

// A correction that tells all places anew takes the place of all of them; one that tells one of
// several, that of the one.
func TestReadingsToldAnew(t *testing.T) {
	reads(t, [][2]string{
		{"70 in 120 out, sorry 120 in 70 out", "street 120; after_prv 70"},
		{"rear 62 laundry 58, no wait rear 58 laundry 62", "rear_bibb 58; laundry 62"},
		{"rear 62 laundry 58, sorry rear 58", "laundry 58; rear_bibb 58"},
		{"62 rear 58 laundry, sorry 60 rear", "laundry 58; rear_bibb 60"},
		{"atrás 62 lavadora 58, perdón atrás 60", "laundry 58; rear_bibb 60"},
		{"rear 62 laundry 58, sorry 56", "rear_bibb 62; laundry 56"},
	})
}

// Who ends a visit with a time to come looks at the house again then.
func TestTheNextVisitToldAtTheEnd(t *testing.T) {
	says(t, [][2]string{
		{"62 laundry all good, next year", "62 laundry; plan recheck in 365"},
		{"62 laundry. done, see you next yr", "62 laundry; plan recheck in 365"},
		{"todo bien, nos vemos en un año", "plan recheck in 365"},
		{"no good, in 6 months", "ask none"},
		{"all good, warranty 1 yr", "ask none"},
		{"tank shot, new one in 2 weeks", "expansion_tank failed; plan replace_tank in 14"},
		{"ET shot, new one in a month", "expansion_tank failed; plan replace_tank in 30"},
		{"prv shot, new one in", "replaced_prv"},
		{"put a 2 gal one in charged to 58", "expansion_tank 2 gal; installed_tank to 58"},
		{"they put a 2 gal one in last year", "ask none"},
		{"put a 2 gal one on the truck", "ask none"},
	})
}

// A symptom that is only asked after is none.
func TestWhatIsOnlyAsked(t *testing.T) {
	says(t, [][2]string{
		{"creeping?", "ask next_check"},
		{"is it leaking?", "ask next_check"},
		{"leaks? no", "no leak"},
		{"gas smell?", "gas_smell"},
		{"68 laundry, creep?", "68 laundry; creep"},
		{"what should i charge it to", "ask tank_charge"},
		{"how much air do i put in it", "ask tank_charge"},
		{"cuánto le pongo al tanque", "ask tank_charge"},
		{"what do we charge for a tank", "ask none"},
		{"how much should i charge her for it", "ask none"},
		{"how much air does the compressor need", "ask none"},
	})
}
