package intents

import "testing"

// The customer's sheet: who wants it, for whom, in what words, beside a reading or for a house.
func TestGridOfWhatIsWantedOnPaper(t *testing.T) {
	readGrids(t, []grid{
		{product(oneEach("she|he|the owner|landlord|the tenant|insurance|the realtor|hoa"),
			oneEach("needs|wants|is asking for|asked for|would like"),
			oneEach("something to hand out|something in writing|something on paper|it in writing|the customer copy|"+
				"a handout|something to give the landlord")),
			[]string{"64 kitchen, {}", "64 kitchen. {}", "64 kitchen and {}"}, "64 kitchen; ask report"},
		{product(oneEach("she|he|landlord|insurance|hoa"),
			oneEach("needs|wants|is asking for|asked for"),
			oneEach("something in writing|something on paper|it in writing|the customer copy|a handout|"+
				"something to give the landlord")),
			[]string{"{}, 12 Elm St", "{} for 12 Elm St"}, "12 Elm St | ask report"},
		{product(oneEach("send over|print off|run off|email me|make me|could you run off|can you print out|please print|get me|text her"),
			oneEach("the customer's copy|the customers sheet|the page for the owner|the owners copy|"+
				"one of those customer sheets|a handout|the customer sheet")),
			[]string{"{}, 12 Elm St", "12 Elm St, {}", "{} for 12 Elm St"}, "12 Elm St | ask report"},
		{product(oneEach("send over|print off|run off|could you run off|can you print out|please print"),
			oneEach("the customer's copy|the customers sheet|the page for the owner|the owners copy|a handout")),
			[]string{"64 kitchen and {}", "64 kitchen, {}", "64 kitchen. {}"}, "64 kitchen; ask report"},
		{product(oneEach("write|type|draw"), oneEach("it|this|that"), oneEach("up for"), oneEach("her|him|the owner|the landlord|them"), oneEach("|please")),
			[]string{"{}"}, "ask report"},
		{product(oneEach("write|type|draw"), oneEach("it|this|that"), oneEach("up for"), oneEach("her|him|the owner|the landlord|them"), oneEach("|please")),
			[]string{"64 kitchen, {}"}, "64 kitchen; ask report"},
	})
}

// The crew's numbers, and a pressure over time.
func TestGridOfTheWeekAndTheCourse(t *testing.T) {
	readGrids(t, []grid{
		{product(oneEach("boss wants|boss is asking for|office needs|show me|give me|can i get|let me see|whats|send me|post|read me"),
			oneEach("the|our|this weeks|the weekly"),
			oneEach("numbers|totals|tally")),
			[]string{"{}", "{} please", "ok {}"}, "ask summary"},
		{product(oneEach("sum up|add up|total up"), oneEach("the week|the month|our week")),
			[]string{"{}", "{} for me", "can you {}"}, "ask summary"},
		{product(oneEach("has it been|is it|has the pressure been|is the pressure"),
			oneEach("creeping up|climbing|going up|drifting|rising|getting worse|going down"),
			oneEach("since we started|over the years|over time|year over year|every visit|each year")),
			[]string{"{}", "{}?"}, "ask trend"},
		{product(oneEach("has it been|is it|has the pressure been|is the pressure"),
			oneEach("creeping up|climbing|going up|drifting|rising|getting worse|going down"),
			oneEach("since we started|over the years|over time|year over year|every visit|each year")),
			[]string{"74 laundry, {}?", "74 laundry. {}"}, "74 laundry; ask trend"},
		{product(oneEach("put|add|throw|stick"), oneEach("that|it|this|this one"), oneEach("on the chart|on the graph|on the plot")),
			[]string{"74 laundry, {}", "74 laundry. {}", "74 laundry and {}"}, "74 laundry; ask trend"},
		{product(oneEach("wanna see|i want to see|let me see|show me|can i see"),
			oneEach("the ups and downs|a line chart|the graph|the chart|a line graph"),
			oneEach("at|for"),
			oneEach("12 Elm St")),
			[]string{"{}", "{} please"}, "12 Elm St | ask trend"},
	})
}

// The size of a tank: the heater by its gallons alone or not, the pressure, a tank that is at hand.
func TestGridOfTanksToSize(t *testing.T) {
	readGrids(t, []grid{
		{product(oneEach("on a 50 how big a tank|how big a tank on a 50|what tank on a 50|what size tank for a 50|"+
			"tank size for a 50|what tank goes with a 50|need tank size for a 50"),
			oneEach("|, what size|?")),
			[]string{"{}"}, "ask tank_size 50gal"},
		{product(oneEach("on a 50|for a 50|with a 50|on a 50 gal|50 gal|50 gal gas|heaters a 50|heater is 50 gal|a 50 gal heater"),
			oneEach("at 65 psi|, 65 psi|, house at 65|, static 65|w/ house at 65|and 65 psi"),
			oneEach("what tank|, what tank|, how big a tank|, tank size|, what size tank do i need|, which expansion tank")),
			[]string{"{}", "{}?"}, "ask tank_size 50gal 65psi"},
		{product(oneEach("how big a tank|what size tank|tank size|whats the right size tank|what size expansion tank do i need"),
			oneEach("on a 50|for a 50|with a 50|for a 50 gal|for a 50 gal gas|on a 50 gal elec"),
			oneEach("at 65 psi|, 65 psi|with house at 65|and house pressure 65|at 65|, static 65")),
			[]string{"{}", "{}?"}, "ask tank_size 50gal 65psi"},
		{product(oneEach("tank size for it|what size tank|how big a tank"), oneEach("?|."),
			oneEach("heater is 50 gal|50 gal heater|heater holds 50"), oneEach(",|and"),
			oneEach("house is at 65|house sits at 65|they run 65|house has 65|the house is set at 65")),
			[]string{"{}"}, "ask tank_size 50gal 65psi"},
		{product(oneEach("heater 50 gal|50 gal|heaters 50 gal|50 gallon"),
			oneEach("cold 45 hot 125|cold 45, hot 125|in 45 out 125|inlet 45 set 125|water in at 45, set at 125"),
			oneEach("psi 60|, 60 psi|, house 60|, static 60"),
			oneEach("what tank|, what tank|, tank size|, how big a tank")),
			[]string{"{}", "{}?"}, "ask tank_size 50gal 60psi"},
		{product(oneEach("does|will|would|can"),
			oneEach("a 2 gal|a 2 gal tank|a 2.1 gal tank|the 2 gal tank|a 4.4 gal"),
			oneEach("cover|do for|work on|handle"),
			oneEach("a 40 gal at 62 psi|a 40 gal heater, 62 psi|a 40 gal, house 62")),
			[]string{"{}", "{}?"}, "ask tank_size 40gal 62psi"},
		{product(oneEach("i got|ive got|i have|theres"),
			oneEach("a 2 gal|a 4.4|a 2 gal tank"),
			oneEach("on the truck|on me|in the van"),
			oneEach(","),
			oneEach("is it enough for|is that enough for|big enough for|will it do for|does that work for"),
			oneEach("a 40 gal at 62 psi")),
			[]string{"{}", "{}?"}, "ask tank_size 40gal 62psi"},
		{oneEach("what tank do i grab|what tank do i need|which tank do i bring|what size tank do i need|" +
			"how big a tank|what size tank|whats the tank size"),
			[]string{"62 laundry, heater's a 50 gal gas, {}"}, "62 laundry; ask tank_size; heater: 50gal gas"},
		{product(oneEach("50 gal heater|heater 50 gal"), oneEach(","), oneEach("exp tank is a 2 gal|expansion tank 2 gal")),
			[]string{"{}"}, "expansion_tank: 2gal; heater: 50gal"},
	})
}

// A visit again, by who comes, how it is called and when.
func TestGridOfVisitsAgain(t *testing.T) {
	readGrids(t, []grid{
		{product(oneEach("lets say|say|figure|ill|ill|we'll|well|gonna|going to|i'll|plan to|want to"),
			oneEach("come by again|swing by again|come look again|stop by again|go by again|take another look|"+
				"look at it again|come see it again|check on it again|come back and read it"),
			oneEach("in 2 wks|in two weeks|on june 29|the 29th")),
			[]string{"{}"}, "plan recheck 14"},
		{product(oneEach("lets say|say|figure|ill|ill|we'll|well|gonna|going to|i'll|plan to|want to"),
			oneEach("come by again|swing by again|come look again|stop by again|go by again|take another look|"+
				"look at it again|come see it again|check on it again|come back and read it"),
			oneEach("in 2 wks|in two weeks|on june 29|the 29th")),
			[]string{"74 laundry, {}"}, "74 laundry; plan recheck 14"},
		{product(oneEach("someone|somebody|one of us|ben|we"),
			oneEach("has to|needs to|should|gotta|has gotta|ought to"),
			oneEach("come back and read it|come read it again|go by and recheck|check it again|come back out and gauge it"),
			oneEach("in 2 wks|in two weeks|on june 29")),
			[]string{"{}"}, "plan recheck 14"},
		{product(oneEach("someone|somebody|one of us|ben|we"),
			oneEach("has to|needs to|should|gotta|has gotta|ought to"),
			oneEach("come back and read it|come read it again|go by and recheck|check it again|come back out and gauge it"),
			oneEach("in 2 wks|in two weeks|on june 29")),
			[]string{"74 laundry, {}"}, "74 laundry; plan recheck 14"},
	})
}
