package intents

import "testing"

// What was found, done or read at a house: who asks, of whom, when it was, behind a reading or before it.
func TestGridOfWhatIsOnRecord(t *testing.T) {
	readGrids(t, []grid{
		{product(oneEach("what did|whatd"),
			oneEach("we|ben|you guys|the last guy"),
			oneEach("find|do|read|put in|leave|write down|end up with"),
			oneEach("at|over at"),
			oneEach("12 Elm St"),
			oneEach("|last time|in march|before|last year|when we were there")),
			[]string{"{}", "{}?"}, "12 Elm St | ask history"},
		{product(oneEach("had|have"),
			oneEach("we"),
			oneEach("swapped|put in|set"),
			oneEach("the reg|a prv|the tank"),
			oneEach("at 12 Elm St"),
			oneEach("|or not|already|before|or was that next door")),
			[]string{"{}", "{}?"}, "12 Elm St | ask history"},
		{product(oneEach("did"),
			oneEach("we"),
			oneEach("swap|put in|set"),
			oneEach("the reg|a prv|the tank"),
			oneEach("at 12 Elm St"),
			oneEach("|or not|already|before|or was that next door")),
			[]string{"{}", "{}?"}, "12 Elm St | ask history"},
		{product(oneEach("do we know|do you know|any record of|anybody know|you know|any idea"),
			oneEach("what tank they got|what size tank they have|what prv they have|how old the prv is|what heater is in|"+
				"what the pressure was|what it read|who put the prv in|when the prv went in"),
			oneEach("at 12 Elm St")),
			[]string{"{}", "{}?"}, "12 Elm St | ask history"},
		{product(oneEach("need to know|i wanna know|tell me|find out|look up"),
			oneEach("what we set the prv to|what it read last time|when we were last there|how old the prv is|"+
				"who was out last|what the last reading was"),
			oneEach(", 12 Elm St|for 12 Elm St|at 12 Elm St")),
			[]string{"{}"}, "12 Elm St | ask history"},
		{product(oneEach("12 Elm St"),
			oneEach("|,"),
			oneEach("been there before|anybody been there|what do we have|what have we got|anything on file|any notes|"+
				"any history|last numbers|what did we get|whats on record|who went last|when was the last visit|"+
				"background"),
			oneEach("|?")),
			[]string{"{}"}, "12 Elm St | ask history"},
		{product(oneEach("whats|tell me|anybody know|fill me in on|catch me up on|bring me up to speed on|"+
			"get me up to speed on|brief me on|clue me in on"),
			oneEach("the backstory on|the background on|the story on|the deal with|what we know about|everything on"),
			oneEach("12 Elm St"),
			oneEach("|before i knock|before i go in|please")),
			[]string{"{}"}, "12 Elm St | ask history"},
		{product(oneEach("was it|is it usually|was it ever|has it always been|has it been|was it always|did it use to be|"+
			"has it ever been"),
			oneEach("this low|this high|that high|like this"),
			oneEach("last yr|last year|last time|before|in the past|back then")),
			[]string{"68 laundry, {}?", "68 laundry. {}"}, "68 laundry; ask history"},
		{product(oneEach("what was she at|what was it|what did we have|what did it read|whatd we get|what did it show|"+
			"what did ben get|how high was it|where was it|what was it reading|what was it sitting at"),
			oneEach("last time|last yr|when ben came|when we were here|before|on the last visit|last visit|back in march")),
			[]string{"68 laundry, {}?", "68 laundry. {}", "{}? 68 laundry"}, "68 laundry; ask history"},
		{product(oneEach("did"),
			oneEach("12 Elm St"),
			oneEach("ever get|get|end up getting|already get"),
			oneEach("that tank|a tank|the new prv|a prv"),
			oneEach("|or not|yet")),
			[]string{"{}", "{}?"}, "12 Elm St | ask history"},
		{product(oneEach("ask her|ask him|have the owner say|call the owner and ask"),
			oneEach("what she paid|where the key is|when shes home")),
			[]string{"{}"}, "ask none"},
		{product(oneEach("what did|whatd"), oneEach("ben|you|the boss"), oneEach("have for lunch|say about my truck|pay for the van")),
			[]string{"{}", "{}?"}, "ask none"},
	})
}

// What is due: who has it on, what is late, when somebody is back at a house.
func TestGridOfWhatIsDue(t *testing.T) {
	readGrids(t, []grid{
		{product(oneEach("who|which houses|what all"),
			oneEach("do i have|am i seeing|do i see|am i supposed to see|do i owe a visit|are on for me|do we have|"+
				"have i got|are we seeing|do i need to hit"),
			oneEach("today|tomorrow|this week|next week")),
			[]string{"{}", "{}?", "ok bot {}"}, "ask due"},
		{product(oneEach("whats|anything|whos"),
			oneEach("on for me|on my schedule|on the board|up for me|lined up|on the calendar|scheduled|booked|"+
				"on the books|coming up|on tap"),
			oneEach("today|tomorrow|friday|this week|next week")),
			[]string{"{}", "{}?"}, "ask due"},
		{product(oneEach("am i|are we|is anybody"),
			oneEach("behind on|late on|missing|overdue on|forgetting|past due on"),
			oneEach("anything|any rechecks|any follow ups")),
			[]string{"{}", "{}?"}, "ask due"},
		{product(oneEach("any"),
			oneEach("rechecks|callbacks|follow ups|returns|visits|reminders"),
			oneEach("ive forgotten|i forgot|im forgetting|i missed|were late on|we missed|still open|hanging|outstanding|"+
				"left|to do|for me|today|this wk|past due|overdue")),
			[]string{"{}", "{}?"}, "ask due"},
		{product(oneEach("which ones|which houses|which rechecks|who|which customers|what houses"),
			oneEach("are late|are overdue|are past due|is late|need a recheck|need a visit|are waiting on us|"+
				"are we late on|are still open|need to be seen|should i hit next|do i still owe")),
			[]string{"{}", "{}?"}, "ask due"},
		{product(oneEach("when|what day"),
			oneEach("am i back at|are we back at|am i due at|are we due at|is somebody due at|am i supposed to be at|"+
				"are we supposed to be back at"),
			oneEach("12 Elm St")),
			[]string{"{}", "{}?"}, "12 Elm St | ask due"},
		{product(oneEach("are we|am i|is anybody|is someone"),
			oneEach("supposed to go back to|going back to|due back at|due at|supposed to recheck|scheduled for|"+
				"booked for|expected at"),
			oneEach("12 Elm St"),
			oneEach("|at some point|soon|this week|anytime soon")),
			[]string{"{}", "{}?"}, "12 Elm St | ask due"},
		{product(oneEach("is there|do we have|did anybody put|did we set"),
			oneEach("already|"),
			oneEach("a recheck|a follow up|a callback"),
			oneEach("down|set|booked|scheduled|on the list|on the books"),
			oneEach("for this one|here")),
			[]string{"88 rear bib, {}", "88 rear bib. {}?"}, "88 rear_bibb; ask due"},
		{product(oneEach("got an hour free|im done early|done early|got time to kill|finished up early|free till 3"),
			oneEach(","),
			oneEach("whats due around here|anything due nearby|anything due close by|any rechecks near here")),
			[]string{"{}", "{}?"}, "ask due"},
	})
}

// A follow-up that is put off: which, by what verb, until when, and why.
func TestGridOfWhatWaits(t *testing.T) {
	readGrids(t, []grid{
		{product(oneEach("skip|hold|hold off on|leave|leave alone|forget about|pass on"),
			oneEach("12 Elm St"),
			oneEach("this week|for a week|till next week|until next week")),
			[]string{"{}", "lets {}", "ok {}, thanks"}, "12 Elm St | ask snooze 7"},
		{product(oneEach("not till|not until|not before|nothing till|cant do it till|cant get in till|no good till|"+
			"wont be ready till|they said not till"),
			oneEach("friday|the 19th|june 19"),
			oneEach("at 12 Elm St")),
			[]string{"{}", "{}, owner is away"}, "12 Elm St | ask snooze 4"},
		{product(oneEach("12 Elm St"),
			oneEach("isnt ready|not ready|wasnt ready|aint ready|nobody home|no one was home|they're away|owner is away|"+
				"owner away|tenant wont let us in|locked up"),
			oneEach(","),
			oneEach("2 more weeks|2 more wks|try again in 2 weeks|give it 2 weeks|make it 2 weeks|push it 2 weeks|"+
				"in 2 weeks then|call it 2 weeks")),
			[]string{"{}"}, "12 Elm St | ask snooze 14"},
		{product(oneEach("can|could|let|lets let"),
			oneEach("12 Elm St"),
			oneEach("wait|sit|hold|slide"),
			oneEach("a month|another month|one more month|for a month|till next month")),
			[]string{"{}", "{} please"}, "12 Elm St | ask snooze 30"},
		{product(oneEach("leave it|let it sit|let it ride|leave that one|let that one sit|park it|sit on it|hold it|keep it|stick it"),
			oneEach("till|til|until"),
			oneEach("the 29th|june 29")),
			[]string{"{}", "{} please"}, "ask snooze 14"},
		{product(oneEach("give|allow"), oneEach("12 Elm St"), oneEach("ten more days|10 more days|another ten days|an extra 10 days")),
			[]string{"{}", "{} please"}, "12 Elm St | ask snooze 10"},
		{product(oneEach("give|allow"), oneEach("it|that recheck"), oneEach("ten more days|10 more days|another ten days|an extra 10 days")),
			[]string{"{}", "{} please"}, "ask snooze 10"},
		{product(oneEach("remind me|ask me|ping me|bug me|nudge me"),
			oneEach("again|about this again|about that one again|about it again"),
			oneEach("in ten days|in 10 days|10 days from now|ten days out")),
			[]string{"{}", "not now, {}", "busy, {}"}, "ask snooze 10"},
		{product(oneEach("push|move|bump|slide|shift|shove|kick|mv"),
			oneEach("the recheck|that recheck|the follow up|the visit|the callback"),
			oneEach("out|back"),
			oneEach("a week|one week|1 wk|another week|by a week|7 days")),
			[]string{"{}", "{} please", "can you {}"}, "ask snooze 7"},
		{product(oneEach("the recheck|that recheck|the follow up|the callback"),
			oneEach("can wait|needs to wait|should wait|has to wait|gets pushed|got pushed|needs pushed|can slide|goes back"),
			oneEach("a week|another week|one more week")),
			[]string{"{}", "{}, she is away"}, "ask snooze 7"},
	})
}

// A follow-up that is called off: as an order, as what somebody did, as no more needed.
func TestGridOfWhatIsCalledOff(t *testing.T) {
	readGrids(t, []grid{
		{product(oneEach("cancel|call off|scrap|drop|kill|nix|scratch|forget|delete|remove"),
			oneEach("the recheck|the follow up|that recheck|the callback|the return visit"),
			oneEach("at 12 Elm St|for 12 Elm St|on 12 Elm St")),
			[]string{"{}", "{}, they moved", "{}, she sold the place", "please {}"}, "12 Elm St | ask cancel"},
		{product(oneEach("12 Elm St"),
			oneEach("recheck|follow up|callback"),
			oneEach("is off|is cancelled|is canceled|got cancelled|was called off|isnt needed anymore|not needed anymore|"+
				"no longer needed|can be cancelled|called off|cancelled"),
			oneEach("|, she sold the place|, they moved")),
			[]string{"{}"}, "12 Elm St | ask cancel"},
		{product(oneEach("the"),
			oneEach("recheck|follow up|callback|return visit"),
			oneEach("at 12 Elm St"),
			oneEach("is off|is cancelled|got canceled|was called off|isnt needed anymore|no longer needed|"+
				"can be cancelled|is not happening|wont be needed")),
			[]string{"{}", "{}, she sold the place"}, "12 Elm St | ask cancel"},
		{product(oneEach("dont|do not|no longer|we dont|i dont|we no longer|wont"),
			oneEach("need to go back to|need to go to|have to go back to|need to revisit|need to recheck"),
			oneEach("12 Elm St"),
			oneEach("anymore|any more|after all")),
			[]string{"{}", "{}, they moved"}, "12 Elm St | ask cancel"},
		{product(oneEach("no need to|no reason to|no point to"),
			oneEach("go back to|recheck|revisit|return to"),
			oneEach("12 Elm St"),
			oneEach("anymore|any more|after all|now")),
			[]string{"{}", "{}, they moved"}, "12 Elm St | ask cancel"},
		{product(oneEach("she|he|customer|owner|the lady"),
			oneEach("called it off|cancelled the recheck|canceled the recheck|called off the recheck|"+
				"doesnt want the recheck|backed out of the recheck|said no to the recheck|doesnt want us back|"+
				"cancelled on us"),
			oneEach("at 12 Elm St|, 12 Elm St")),
			[]string{"{}", "{}, no recheck"}, "12 Elm St | ask cancel"},
		{product(oneEach("recheck"), oneEach("12 Elm St"), oneEach("in a week|in 7 days|next week"), oneEach("|, she cancelled last time|, she wasnt home")),
			[]string{"{}"}, "12 Elm St | plan recheck 7"},
	})
}
