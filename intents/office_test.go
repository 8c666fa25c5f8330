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
