package intents

import "testing"

// What is asked of the bot in a crew's and an office's own words, and talk that
// wears the trade's words and must give nothing. The messages are our own.
func TestOfficeTalk(t *testing.T) {
	says(t, [][2]string{
		{"my mistake, it was 64", "ask correct; 64"},
		{"made a mistake, house was 64", "ask correct; 64"},
		{"my bad, it was 64", "ask correct; 64"},
		{"made a mistake on the last one, rear is 71", "ask correct; 71 rear_bibb"},
		{"obviously the prv is shot, 120 front", "prv failed; 120 front_bibb"},
		{"just a test, 55 at the kitchen", "55 kitchen"},
		{"the guy at 12 Elm made a mistake and capped the relief valve", "relief_blocked"},
		{"who is on the list this week", "ask due"},
		{"follow up calendar for thursday, who's on it", "ask due"},
		{"that was just a test, get rid of it", "ask undo"},
		{"what goes on the 14 Maple sheet? hand me a sheet for 14 Maple", "ask report"},
		{"draw me the line for 14 Maple", "ask trend"},
		{"tell me what to put the gauge on next", "ask next_check"},
		{"bring us a regulator", "ask none"},
		{"bring me the report on 14 Elm", "ask report"},
		{"guess the tank is shot, front 90", "expansion_tank failed; 90 front_bibb"},
		{"hand me a wrench, front was 82", "82 front_bibb"},
		{"pizza in the truck, front was 82", "82 front_bibb"},
		{"diesel is 4.89, killing us", "ask none"},
		{"1408 Grand, rear tap 77", "77 rear_bibb"},
		{"team shirts came in, 4 XL and 3 L", "ask none"},
	})
}

// What is asked of all houses at once, and of a tank's air; what passes a word on
// between people asks nothing.
func TestOfficeQuestions(t *testing.T) {
	says(t, [][2]string{
		{"what's the worst house right now", "ask worst"},
		{"worst houses", "ask worst"},
		{"which houses are out of the band", "ask worst"},
		{"¿cuál es la peor casa?", "ask worst"},
		{"12 Elm is the worst house this week", "ask none"},
		{"open alerts", "ask alerts"},
		{"any alerts from last night?", "ask alerts"},
		{"hay alertas abiertas?", "ask alerts"},
		{"what did ben read today", "ask log"},
		{"what did we read today", "ask log"},
		{"who read what today", "ask log"},
		{"yesterday's readings", "ask log"},
		{"lecturas de hoy", "ask log"},
		{"what did we all get done this week", "ask summary"},
		{"what did the customer say today", "ask none"},
		{"Readings today, heater off for everything:\nlaundry 63", "63 laundry idle"},
		{"what should the tank be charged to", "ask tank_charge"},
		{"what do I charge the exp tank to at 62 psi?", "ask tank_charge"},
		{"how much air should the expansion tank have", "ask tank_charge"},
		{"a cuanto inflo el tanque", "ask tank_charge"},
		{"what was the tank charged to at 12 Elm", "ask history"},
		{"what pressure is the tank charged to", "ask history"},
		{"What I installed is the expansion tank, precharged to 64", "installed_tank to 64"},
		{"pressure at 40 Drover Ln", "ask history"},
		{"notes on 40 Drover", "ask history"},
		{"tell the 2 o'clock we're running late", "ask none"},
		{"let Mrs Ortiz know we're 20 out", "ask none"},
		{"did carl get back to you", "ask none"},
		{"tell me about 12 Elm", "ask history"},
		{"let 14 Maple wait another week", "ask snooze"},
	})
}

// A house put on a day's list is a visit to come; a reminder on another day puts off the
// one that stands; a day of the past is no plan.
func TestOfficeDays(t *testing.T) {
	says(t, [][2]string{
		{"put 12 Elm on for the 22nd", "plan other in 7"},
		{"book 12 Elm for Tuesday", "plan other in 1"},
		{"get 12 Elm on the books for the 22nd", "plan other in 7"},
		{"pencil in 12 Elm for Thursday morning", "plan other in 3"},
		{"apunta 12 Elm para el 22", "plan other in 7"},
		{"put 12 Elm on for the 22nd?", "ask none"},
		{"put the gauge on 12 Elm friday", "ask none"},
		{"remind me about 9 Poplar in 10 days instead", "ask snooze"},
		{"dale 5 dias mas", "ask snooze"},
		{"past install 5/15", "ask none"},
		{"12 Oak St past install 5/15, 88 laundry", "88 laundry"},
		{"what's due, 92 rear tap heater idle 123 Elm", "92 rear_bibb idle; ask due"},
		{"due north of the church, 62 Steeple Hill Rd, 57 in the shower", "57 bath"},
		{"who has 12 Elm?", "ask history"},
		{"who has the ladder", "ask none"},
	})
}

// What is asked of a house or of all is never stored as a report; an order is no reading.
func TestOfficeAsksStoreNothing(t *testing.T) {
	says(t, [][2]string{
		{"which houses have an old regulator", "ask old_valves"},
		{"any houses with no expansion tank?", "ask which_houses"},
		{"is 77 Hickory ok now", "ask history"},
		{"is 12 Elm still high?", "ask history"},
		{"The house is 47 Chilton Place. 85 at the rear bib", "85 rear_bibb"},
		{"did anybody go to 14 Spruce", "ask history"},
		{"610 Walnut tank?", "ask history"},
		{"prv at 12 Elm?", "ask history"},
		{"cancel the 14 Spruce recheck", "ask cancel"},
		{"cancela el seguimiento de 12 Elm", "ask cancel"},
		{"cancel that", "ask undo"},
		{"you can drop the 2 week follow up, already did it", "ask done"},
		{"convert 4 bar", "ask convert"},
		{"need a 2 gal tank for 610 Walnut", "plan install_tank"},
		{"the 2 gal tank is shot, needs replacing", "expansion_tank 2 gal failed; plan replace_tank"},
		{"drop the pressure at 12 Elm to 60", "plan set_prv"},
		{"lower the pressure at 12 Elm to 60 on friday", "plan set_prv in 4"},
		{"lowered the pressure at 12 Elm to 60", "set_prv to 60"},
		{"pressure dropped to 60 when the shower ran", "60 bath flowing"},
	})
}

// A question whether there is a sign of trouble tells of none, except of gas; a question
// what a number would change is no reading.
func TestOfficeIfAny(t *testing.T) {
	says(t, [][2]string{
		{"any leaks reported?", "ask none"},
		{"¿hay fugas?", "ask none"},
		{"any dark water at 12 Elm?", "ask history"},
		{"any leaks? 84 rear", "84 rear_bibb; leak"},
		{"any gas smell at 12 Elm?", "gas_smell"},
		{"and at 60 psi?", "ask none"},
		{"what was the highest reading today", "ask worst"},
		{"¿quién midió en 800 Cedro?", "ask history"},
		{"¿cómo sigue 31 Maple?", "ask history"},
	})
}

// A follow-up that is called off may be told with its day; one that is moved is none.
func TestAFollowUpCalledOffWithItsDay(t *testing.T) {
	says(t, [][2]string{
		{"call off the recheck tomorrow", "ask cancel"},
		{"scratch the recheck for tomorrow", "ask cancel"},
		{"drop the recheck to 2 weeks", "plan recheck in 14"},
		{"cancel the recheck and book one in 2 weeks", "plan recheck in 14"},
	})
}
