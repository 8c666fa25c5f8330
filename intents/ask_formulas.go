package intents

// Lists of the lexicon that these formulas know.
var (
	listFWhat        = listOf("asking what or when")
	listFWho         = listOf("asking who did")
	listFDid         = listOf("asking did there")
	listFThen        = listOf("asking back then")
	listFKnow        = listOf("asking wants to know")
	listFWhich       = listOf("asking what to know")
	listFAsked       = listOf("asking asked of house")
	listFStory       = listOf("asking story of")
	listFWasIt       = listOf("asking was it")
	listFThis        = listOf("asking this much")
	listFWhatWas     = listOf("asking what was it")
	listFEver        = listOf("asking ever get")
	listFDidIt       = listOf("asking did it")
	listFKeys        = listOf("asking keys and bills")
	listFDueWho      = listOf("asking due who")
	listFDueThings   = listOf("asking due things")
	listFHaveOn      = listOf("asking have on")
	listFOnFor       = listOf("asking on for me")
	listFAmI         = listOf("asking am i")
	listFBehind      = listOf("asking behind on")
	listFAny         = listOf("asking any left")
	listFFollowUps   = listOf("asking some follow-ups")
	listFLate        = listOf("asking are late")
	listFWhen        = listOf("asking when back")
	listFBackAt      = listOf("asking back at")
	listFIsThere     = listOf("asking is there down")
	listFFollowUp    = listOf("asking a follow-up")
	listFSkip        = listOf("asking skips")
	listFNotTill     = listOf("asking not till")
	listFNotReady    = listOf("asking not ready")
	listFLet         = listOf("asking lets")
	listFWait        = listOf("asking waits")
	listFLeaveTill   = listOf("asking leaves till")
	listFTill        = listOf("asking till then")
	listFGive        = listOf("asking gives time")
	listFIt          = listOf("asking that one")
	listFMore        = listOf("asking more time")
	listFRemind      = listOf("asking remind again")
	listFPush        = listOf("asking pushes")
	listFOut         = listOf("asking pushed out")
	listFPushed      = listOf("asking gets pushed")
	listFNotThat     = listOf("asking asked not that day")
	listFMoveTo      = listOf("asking asked moves to")
	listFCancel      = listOf("asking cancels it")
	listFThe         = listOf("asking which follow-up")
	listFIsOff       = listOf("asking is off")
	listFNoNeed      = listOf("asking no need")
	listFGoBack      = listOf("asking to go back")
	listFAnymore     = listOf("asking anymore")
	listFCaller      = listOf("asking who calls it off")
	listFCalledOff   = listOf("asking called it off")
	listFShow        = listOf("asking shows story")
	listFAbout       = listOf("asking about that one")
	listFOwed        = listOf("asking are owed")
	listFNoRecord    = listOf("asking no matter of record")
	listFPeriod      = listOf("asking days of the crew")
	listFAre         = listOf("asking is or are")
	listFPlansAgain  = listOf("asking plans again")
	listFSetUp       = listOf("asking set up to come")
	listFAsksMore    = listOf("asking asks more")
	listFWhoSheet    = listOf("asking who wants sheet")
	listFWantsSheet  = listOf("asking wants sheet")
	listFBeforeSheet = listOf("asking before sheet")
	listFSheet       = listOf("asking sheet itself")
	listFWantsSum    = listOf("asking wants summary")
	listFSummary     = listOf("asking summary itself")
	listFHasBeen     = listOf("asking has been")
	listFDrifting    = listOf("asking drifting")
	listFOverTime    = listOf("asking over a time")
	listFOrders      = listOf("asking orders chart")
	listFChart       = listOf("asking chart itself")
	listFAgain       = listOf("asking asks again")
	listFFill        = listOf("asking says little")
	listFRightWay    = listOf("asking right way")
	listFTellIt      = listOf("asking to tell it")
	listFLastSent    = listOf("asking last sent")
	listFPullBack    = listOf("asking pulls back")
	listFGotDone     = listOf("asking got done")
	listFDoneWith    = listOf("asking done with")
	listFStopBugging = listOf("asking stops bugging")
	listFItIsDone    = listOf("asking it is done")
	listFPutDown     = listOf("asking put down")
	listFInLast      = listOf("asking in last")
	listFButWas      = listOf("asking but was")
	listFAlready     = listOf("asking already")
	listFSeenTo      = listOf("asking seen to")
	listFTakes       = listOf("asking takes it")
	listFOffList     = listOf("asking off the list")
	listFMistaken    = listOf("asking sent in error")
	listFSets        = listOf("asking sets it")
	listFThatOne     = listOf("asking one to close")
	listFAsDone      = listOf("asking as done")
	listFMustI       = listOf("asking must i")
	listFHowApart    = listOf("asking how apart")
	listFDoYouWant   = listOf("asking do you want")
	listFWritesIt    = listOf("asking writes it down")
	listFWrites      = listOf("asking writes")
	listFPartOfIt    = listOf("asking part of a message")
	listFInOrder     = listOf("asking in what order")
	listFGoes        = listOf("asking goes where")
	listFWhichFirst  = listOf("asking which goes first")
)

// formulas are tried in turn at the beginning of a clause.
var formulas = inTheirPlaces([]formula{
	// "what did ben find over at 12 Elm", "whatd we get last time"
	{about: AskHistory, first: true, steps: []step{one(listFWhat), gap(3), one(listFDid), gap(7), anyMark, house}, bars: listFNoRecord},
	// "did we swap the reg at 12 Elm"
	{about: AskHistory, first: true, steps: []step{one(listFDidIt), one(listFWho), gap(7), anyMark, house}, bars: listFSetUp},
	// "do we know what tank they got at 12 Elm"
	{about: AskHistory, first: true, steps: []step{one(listFKnow), one(listFWhich), gap(8), anyMark, house}, bars: listFKeys},
	// "12 Elm, been there before"
	{about: AskHistory, steps: []step{house, anyMark, one(listFAsked), some(listFFill), theEnd}},
	// "catch me up on the story of 12 Elm"
	{about: AskHistory, steps: []step{some(listFShow), one(listFStory), some(listFFill), house}, bars: listFKeys},
	// "was it this low last year"
	{about: AskHistory, first: true, steps: []step{one(listFWasIt), gap(3), one(listFThis), gap(2), one(listFThen)}},
	// "what was she at when ben came"
	{about: AskHistory, first: true, steps: []step{one(listFWhatWas), gap(4), one(listFThen)}, bars: listFKeys},
	// "did 12 Elm ever get that tank"
	{about: AskHistory, first: true, steps: []step{one(listFDidIt), house, gap(1), one(listFEver)}},

	// "who am i seeing friday", "what all is on for me today"
	{about: AskDue, first: true, steps: []step{one(listFDueWho), some(listFDueThings), one(listFHaveOn), gap(4), one(listFPeriod)}, time: anyTime, bars: listFKeys},
	{about: AskDue, first: true, steps: []step{one(listFDueWho), some(listFDueThings), some(listFAre), one(listFOnFor), gap(3), one(listFPeriod)}, time: anyTime, bars: listFKeys},
	// "am i behind on anything"
	{about: AskDue, first: true, steps: []step{one(listFAmI), one(listFBehind), one(listFAny)}, time: anyTime},
	// "any callbacks ive forgotten"
	{about: AskDue, first: true, steps: []step{one(listFAny), one(listFFollowUps), one(listFLate)}, time: anyTime},
	// "which ones are late"
	{about: AskDue, first: true, steps: []step{one(listFDueWho), some(listFDueThings), one(listFOwed)}, time: anyTime, bars: listFKeys},
	// "when am i back at 12 Elm"
	{about: AskDue, first: true, steps: []step{one(listFWhen), one(listFAmI), gap(2), one(listFBackAt), gap(1), house}, time: anyTime},
	{about: AskDue, first: true, steps: []step{one(listFAmI), gap(1), one(listFBackAt), gap(1), house}, time: anyTime},
	// "is there already a recheck down for this one"
	{about: AskDue, first: true, steps: []step{one(listFIsThere), gap(3), one(listFFollowUp), gap(1), one(listFOnFor)}, time: anyTime},

	// "she needs something to hand the landlord", "could you run off the customers copy"
	{about: AskReport, steps: []step{some(listFWhoSheet), one(listFWantsSheet), some(listFBeforeSheet), one(listFSheet)}, time: anyTime},
	// "boss wants the totals", "sum up the week"
	{about: AskSummary, first: true, steps: []step{one(listFWantsSum), some(listFThe), one(listFSummary), some(listFFill), theEnd}},
	// "has it been creeping up since we started"
	{about: AskTrend, first: true, steps: []step{one(listFHasBeen), some(listFDrifting), one(listFOverTime)}},
	// "put that on the chart"
	{about: AskTrend, first: true, steps: []step{one(listFOrders), gap(2), one(listFChart)}, bars: listFAsksMore},

	// "skip 12 Elm this week"
	{about: AskSnooze, first: true, steps: []step{one(listFSkip), gap(1), house, gap(2), one(listFPeriod)}, time: anyTime},
	// "skip 12 Elm till friday"
	{about: AskSnooze, first: true, steps: []step{one(listFSkip), gap(1), house, one(listFTill)}, time: timed},
	// "not till august on 12 Elm"
	{about: AskSnooze, first: true, steps: []step{one(listFNotTill), gap(4), house}, time: timed},
	// "12 Elm isnt ready, 2 more wks"
	{about: AskSnooze, first: true, steps: []step{house, one(listFNotReady)}, time: timed, bars: listFPlansAgain},
	// "owner away, can 12 Elm wait a month"
	{about: AskSnooze, first: true, steps: []step{one(listFLet), house, one(listFWait), gap(3), one(listFPeriod)}, time: anyTime},
	// "leave it til the 29th"
	{about: AskSnooze, first: true, steps: []step{one(listFLeaveTill), some(listFIt), one(listFTill)}, time: timed},
	// "give 12 Elm ten more days"
	{about: AskSnooze, first: true, steps: []step{one(listFGive), house, gap(2), one(listFMore)}, time: timed},
	{about: AskSnooze, first: true, steps: []step{one(listFGive), one(listFIt), gap(2), one(listFMore)}, time: timed},
	// "ask me about it again in ten days"
	{about: AskSnooze, first: true, steps: []step{one(listFRemind), some(listFAbout), one(listFAgain)}, time: timed},
	// "shove that recheck out a week"
	{about: AskSnooze, first: true, steps: []step{one(listFPush), some(listFThe), one(listFFollowUp), one(listFOut)}, time: timed},
	// "the recheck can wait a week"
	{about: AskSnooze, first: true, steps: []step{some(listFThe), one(listFFollowUp), one(listFPushed)}, time: timed},
	// "not tmrw, mv to +3 wks"
	{about: AskSnooze, first: true, steps: []step{one(listFNotThat), gap(1), anyMark, one(listFMoveTo)}, time: timed},

	// "whats the right way to tell you the heater was running"
	{about: AskHelp, first: true, steps: []step{one(listFRightWay), gap(1), one(listFTellIt)}, time: anyTime},
	// "what i just posted, pull it back"
	{about: AskUndo, first: true, steps: []step{one(listFLastSent), gap(1), anyMark, one(listFPullBack)}, time: anyTime},
	// "I put kitchen on the last report but no, it was the shower"
	{about: AskCorrect, first: true, steps: []step{one(listFPutDown), gap(3), one(listFInLast), gap(4), anyMark, one(listFButWas)}, time: anyTime},
	{about: AskCorrect, first: true, steps: []step{one(listFInLast), one(listFPutDown), gap(4), anyMark, one(listFButWas)}, time: anyTime},

	// "the recheck is out of the way", "got the follow up behind me"
	{about: AskDone, first: true, steps: []step{some(listFThe), one(listFFollowUp), one(listFDoneWith)}, time: anyTime},
	{about: AskDone, first: true, steps: []step{some(listFThe), one(listFFollowUp), gap(1), house, one(listFDoneWith)}, time: anyTime},
	{about: AskDone, first: true, steps: []step{one(listFGotDone), some(listFThe), one(listFFollowUp), one(listFDoneWith)}, time: anyTime},
	// "did the recheck, you can stop nagging"
	{about: AskDone, first: true, steps: []step{one(listFGotDone), some(listFThe), one(listFFollowUp), gap(2), anyMark, one(listFStopBugging)}, time: anyTime},
	// "you can quit bugging me about it, it's done"
	{about: AskDone, first: true, steps: []step{one(listFStopBugging), gap(4), anyMark, one(listFItIsDone)}, time: anyTime},
	// "already phoned the city about this one so take it off the list", "take it off my list, i went by yesterday"
	{about: AskDone, first: true, steps: []step{some(listFAlready), one(listFSeenTo), gap(9), anyMark, gap(2), one(listFOffList)}, time: anyTime, bars: listFMistaken},
	{about: AskDone, first: true, steps: []step{one(listFTakes), gap(3), one(listFOffList), anyMark, some(listFAlready), one(listFSeenTo)}, time: anyTime, bars: listFMistaken},
	// "set the 6 month one to complete"
	{about: AskDone, first: true, steps: []step{one(listFSets), gap(4), one(listFThatOne), one(listFAsDone)}, time: anyTime},

	// "do i put the address first or the numbers"
	{about: AskHelp, first: true, steps: []step{one(listFMustI), some(listFWritesIt), some(listFWrites), one(listFPartOfIt), some(listFGoes), one(listFInOrder)}},
	// "do i gotta type psi every time", "can i put three taps on one line"
	{about: AskHelp, first: true, steps: []step{one(listFMustI), gap(1), one(listFWritesIt), gap(2), one(listFPartOfIt), gap(3), one(listFHowApart)}},
	{about: AskHelp, first: true, steps: []step{one(listFDoYouWant), gap(2), one(listFPartOfIt), gap(1), one(listFHowApart)}},
	// "what order do i write it in", "which goes first, the address or the number"
	{about: AskHelp, first: true, steps: []step{one(listFWhichFirst), gap(3), one(listFWritesIt)}},
	{about: AskHelp, first: true, steps: []step{one(listFWhichFirst), anyMark, gap(1), one(listFPartOfIt)}},

	// "call off the recheck", "please drop the 12 Elm follow up"
	{about: AskCancel, first: true, steps: []step{one(listFCancel), some(listFThe), one(listFFollowUp)}},
	{about: AskCancel, first: true, steps: []step{one(listFCancel), some(listFThe), one(listFFollowUp), gap(1), one(listFPeriod)}, time: anyTime},
	{about: AskCancel, first: true, steps: []step{one(listFCancel), some(listFThe), house, one(listFFollowUp)}},
	// "12 Elm recheck is off"
	{about: AskCancel, first: true, steps: []step{house, one(listFFollowUp), one(listFIsOff)}},
	{about: AskCancel, first: true, steps: []step{some(listFThe), one(listFFollowUp), gap(1), house, one(listFIsOff)}},
	{about: AskCancel, first: true, steps: []step{some(listFThe), one(listFFollowUp), one(listFIsOff)}},
	// "dont need to go back to 12 Elm anymore"
	{about: AskCancel, first: true, steps: []step{some(listFWho), one(listFNoNeed), one(listFGoBack), gap(1), house, one(listFAnymore)}},
	// "she called it off at 12 Elm", "doesnt want us back"
	{about: AskCancel, first: true, steps: []step{some(listFThe), one(listFCaller), one(listFCalledOff)}},
})
