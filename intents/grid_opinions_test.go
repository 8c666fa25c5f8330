package intents

import "testing"

// Whether a pressure is as it should be: who thinks so, of what, how much of it, and where the reading stands.
func TestGridOfWhatIsNormal(t *testing.T) {
	readGrids(t, []grid{
		{product(oneEach("is|isnt|aint"),
			oneEach("95|95 psi"),
			oneEach("too high|too much|a lot|high|bad|normal|safe|over code|too high for a house")),
			[]string{"{}", "{}?", "hey bot {}"}, "ask next_check"},
		{product(oneEach("is"), oneEach("45|45 psi"), oneEach("enough|enough for 3 floors|too low|low|fine|ok for a house|any good|acceptable")),
			[]string{"{}", "{}?", "ok so {}"}, "ask next_check"},
		{product(oneEach("is|isnt"),
			oneEach("that|this|it"),
			oneEach("too high|high|normal|ok|safe|a problem|bad|about right|something to worry about")),
			[]string{"95 laundry, {}", "95 laundry {}?", "{}? 95 laundry", "95 laundry. {}"}, "95 laundry; ask next_check"},
		{product(oneEach("thats normal|thats too high|too high|normal|acceptable|in range"), oneEach("|right"), oneEach("?")),
			[]string{"95 laundry, {}", "95 laundry. {}"}, "95 laundry; ask next_check"},
		{oneEach("should i worry|should i be worried|do i need to worry|do i leave it|can i leave it|" +
			"can i leave it like that|is it safe to leave|safe to leave like this|do we leave it alone|" +
			"are we good"),
			[]string{"95 laundry, {}?", "95 laundry. {}?"}, "95 laundry; ask next_check"},
		{product(oneEach("whats|what is|what would be|tell me"),
			oneEach("a normal|the normal|a good|a typical|an ideal|a safe|the right|an acceptable"),
			oneEach("house pressure|static pressure|pressure|pressure range|psi"),
			oneEach("|for a house|in a house|these days")),
			[]string{"{}", "{}?"}, "ask next_check"},
		{oneEach("whats normal|whats normal for a house|whats considered normal|whats too high|what counts as high|" +
			"how high is too high|how low is too low|how much is too much|whats the limit|whats the max|" +
			"whats the max for a house|whats the code limit|what does code say|what does code allow|" +
			"whats the normal range|whats code"),
			[]string{"{}", "{}?", "remind me {}"}, "ask next_check"},
		{product(oneEach("what should"),
			oneEach("a house|the house|it|the pressure|static|house pressure|this place"),
			oneEach("be|be at|run|run at|read|sit at|be running")),
			[]string{"{}", "{}?", "so {}"}, "ask next_check"},
		{product(oneEach("what should"), oneEach("it|the pressure|static|this"), oneEach("be|read|run at|sit at")),
			[]string{"95 laundry, {}", "95 laundry. {}?"}, "95 laundry; ask next_check"},
		{product(oneEach("do you think|you think|would you say|think"),
			oneEach("thats|its|that is|this is"),
			oneEach("too high|high|ok|normal|bad|a problem")),
			[]string{"95 laundry, {}", "95 laundry {}?"}, "95 laundry; ask next_check"},
		{product(oneEach("thats|its|that is"), oneEach("too high|high|bad|normal|ok")),
			[]string{"95 laundry, {}", "{}, 95 laundry"}, "95 laundry"},
		{product(oneEach("he says|she says|customer says|she thinks|he asked if|she wanted to know if"),
			oneEach("95|that"),
			oneEach("is too high|is ok|is normal")),
			[]string{"{}"}, "ask none"},
		{product(oneEach("he asked if|she wanted to know if|owner wonders if|i told her"),
			oneEach("thats|it is|that was"),
			oneEach("too high|ok|normal")),
			[]string{"95 laundry, {}"}, "95 laundry"},
		{product(oneEach("is"), oneEach("the coffee|the traffic|the van|the rent|lunch|45 bucks"), oneEach("too high|ok|any good|normal")),
			[]string{"{}", "{}?"}, "ask none"},
	})
}

// What may be to blame and what to test next, behind a reading or before it.
func TestGridOfWhatToTest(t *testing.T) {
	readGrids(t, []grid{
		{product(oneEach("any idea why|you know why|do you know why|how come|how is it that"), oneEach("its so high|its that low")),
			[]string{"95 laundry, {}", "95 laundry. {}?"}, "95 laundry; ask next_check"},
		{product(oneEach("what|where|which tap|which one"),
			oneEach("do i|should i|would you|do we|should we|shall i"),
			oneEach("check|test|try|read|look at|hook up to|gauge"),
			oneEach("next|first|now|after this|from here")),
			[]string{"95 laundry, {}", "{}? 95 laundry"}, "95 laundry; ask next_check"},
		{product(oneEach("what|where|which tap|which one"),
			oneEach("do i|should i|would you|do we|should we|shall i"),
			oneEach("check|test|try|read|look at|hook up to|gauge"),
			oneEach("next|first|now|after this|from here")),
			[]string{"{}"}, "ask next_check"},
		{product(oneEach("could|can|might|would"),
			oneEach("the prv|the tank|a bad prv|the check valve|expansion|a stuck regulator"),
			oneEach("do this|do that|cause this|be doing this|be the cause|be behind it|explain it")),
			[]string{"95 laundry, {}", "95 laundry. {}?"}, "95 laundry; ask next_check"},
		{product(oneEach("could|can|might|would"),
			oneEach("the prv|the tank|a bad prv|the check valve|expansion|a stuck regulator"),
			oneEach("do this|do that|cause this|be doing this|be the cause|be behind it|explain it")),
			[]string{"{}?"}, "ask next_check"},
		{product(oneEach("do you|would you|did you"), oneEach("blame|suspect|look at|pull|bet on"), oneEach("the prv|the tank|the regulator")),
			[]string{"95 laundry, {}?", "95 laundry. {}?"}, "95 laundry; ask next_check"},
		{product(oneEach("cant|couldnt"), oneEach("be"), oneEach("the prv|the tank|the reg"), oneEach("|can it|could it|right"), oneEach("?")),
			[]string{"95 laundry, {}", "95 laundry & {}"}, "95 laundry; ask next_check"},
		{oneEach("whats your money on|whats your bet|what would you bet on|what do you blame|where would you start|" +
			"what am i missing|what have i missed|what did i miss|what am i not seeing|whats eating it|" +
			"what would you do|what do you do with that|now where|where to now|next move|whats my move|" +
			"whats the move|your call|what now"),
			[]string{"95 laundry, {}", "95 laundry. {}?"}, "95 laundry; ask next_check"},
		{product(oneEach("is it|would it be|you think its"),
			oneEach("worth"),
			oneEach("testing|checking|pulling|changing|looking at"),
			oneEach("the prv|the tank|the strainer|the check valve")),
			[]string{"95 laundry, {}", "{}? 95 laundry"}, "95 laundry; ask next_check"},
		{product(oneEach("do i|should i|do i need to|do i have to|ought i"),
			oneEach("test|check|read|gauge|look at|retest"),
			oneEach("the tank|the meter|the street|the prv|it again")),
			[]string{"95 laundry, {}", "95 laundry. {}?"}, "95 laundry; ask next_check"},
	})
}
