package intents

import "testing"

// What a thing costs, counts or measures is no pressure of the tap that stands beside it, and neither is what
// somebody expects, likes or has next door.
func TestNumbersOfEverydayThings(t *testing.T) {
	says(t, [][2]string{
		{"parking on the street was 15", "ask none"},
		{"gfci in the bath reads 118", "ask none"},
		{"14 of 20 bibs done, kitchen 62", "62 kitchen"},
		{"dug 36 down at the meter, 104 at the meter", "104 street"},
		{"snaked the tub 25 feet hit roots at 60", "ask none"},
		{"roots in the line, kitchen 62", "62 kitchen"},
		{"laundry valves 62 each, need two", "ask none"},
		{"kitchen and tub 62 each", "62 kitchen; 62 bath"},
		{"hose bibb 18 parts 90 labor", "ask none"},
		{"kitchen 66 total 140", "66 kitchen"},
		{"kitchen 62, labor was 110", "62 kitchen"},
		{"95 out, front bib 62", "62 front_bibb"},
		{"110 in, 62 out", "110 street; 62 after_prv"},
		{"62 out front, 64 out back", "62 front_bibb; 64 rear_bibb"},
		{"washer needs 20 to 120", "ask none"},
		{"kitchen 62, needs a new faucet", "62 kitchen"},
		{"should see 60 at the tub after", "ask none"},
		{"should be good now, 62 kitchen", "62 kitchen"},
		{"maybe 50 at the kitchen?", "ask none"},
		{"usually see 62 at the kitchen around here", "ask none"},
		{"kitchen 66, usually a good house", "66 kitchen"},
		{"would 90 at the front be an issue", "ask none"},
		{"they're dropping the street to 60 next month", "ask none"},
		{"meter is 30 off the curb", "ask none"},
		{"meter 62 is theirs", "ask none"},
		{"tub is from 62", "ask none"},
		{"she's 81 and the tub is her thing", "ask none"},
		{"he's 74 at the front", "74 front_bibb"},
		{"front at 11, rear at 12", "ask none"},
		{"front at 66, rear at 68", "66 front_bibb; 68 rear_bibb"},
		{"front bib 66 and her blood pressure's 140", "66 front_bibb"},
		{"42 in kitchen cabinets", "ask none"},
		{"62 in kitchen yesterday", "62 kitchen"},
		{"kitchen sink 18 gauge", "ask none"},
		{"kitchen gauge 62", "62 kitchen"},
		{"hot lasts 15 at the shower", "ask none"},
		{"tub cools to 98", "ask none"},
		{"up 12 at the rear from last time", "ask none"},
		{"rear up to 88", "88 rear_bibb"},
		{"used a 24 on the meter nut", "ask none"},
		{"used a new gauge, 66 kitchen", "66 kitchen"},
		{"15 left at the kitchen then lunch", "ask none"},
		{"kitchen 64 zamboggles", "64 kitchen"},
		{"kitchen is at 64 yikes", "64 kitchen"},
		{"kitchen has 12 cabinets", "ask none"},
		{"the bath tub is seventy two and a half address ten oh eight Otter Creek Lane", "72.5 bath"},
		{"full open on the hose, 47 left at the washer box", "47 laundry flowing"},
	})
}

// What the bot has on record of a report is put right by what was read, however either is told.
func TestWhatIsOnRecordIsPutRight(t *testing.T) {
	says(t, [][2]string{
		{"it says 71 laundry under my name, I read 77", "ask correct; 77 laundry"},
		{"i see 71 laundry under my name, i read 77", "ask correct; 77 laundry"},
		{"you have me down for 58 at the tub, i measured 68", "ask correct; 68 bath"},
		{"my report has 70 front bib, should be 76", "ask correct; 76 front_bibb"},
		{"my last shows 62 kitchen, i had 66", "ask correct; 66 kitchen"},
		{"your reply says 62 kitchen, i said 66", "ask correct; 66 kitchen"},
		{"it reads 71 laundry, should be 60", "71 laundry"},
	})
}
