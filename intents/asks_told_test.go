package intents

import "testing"

func TestAQuestionAfterADeedIsNoDeed(t *testing.T) {
	says(t, [][2]string{
		{"did anybody flush the heater at 41 Heron Ct", "ask history"},
		{"did Ben put the tank in at 41 Heron Ct", "ask history"},
		{"has this prv been rebuilt", "ask history"},
		{"was the heater flushed?", "ask history"},
		{"who set the prv at 41 Heron Ct", "ask history"},
		{"quién cambió la reguladora en 41 Heron Ct", "ask history"},
		{"cuándo se cambió la reguladora en 41 Heron Ct", "ask history"},
		{"cuándo le pusieron el tanque a 41 Heron Ct", "ask history"},
		{"¿le pusimos tanque a 41 Heron Ct?", "ask history"},
		{"hace cuánto cambiamos la reguladora en 41 Heron Ct", "ask history"},
		{"did the heater flush at 41 Heron Ct", "flushed_heater"},
		{"have swapped the prv, 60 laundry", "replaced_prv; 60 laundry"},
		{"have Ben change the prv Thursday", "plan replace_prv in 3"},
	})
}

func TestAQuestionAfterAStateIsNoState(t *testing.T) {
	says(t, [][2]string{
		{"could the tank be waterlogged", "ask next_check"},
		{"might the prv be stuck you think?", "ask next_check"},
		{"is it the tank or the valve", "ask next_check"},
		{"is it worth testing the tank", "ask next_check"},
		{"is it a gas heater?", "ask history"},
		{"is the reg drifting at 41 Heron Ct", "ask trend"},
	})
}

func TestANameAloneAsksForWhatItNames(t *testing.T) {
	says(t, [][2]string{
		{"41 Heron Ct report", "ask report"},
		{"report 41 Heron Ct", "ask report"},
		{"can I get the sheet", "ask report"},
		{"log for 41 Heron Ct", "ask history"},
		{"file on 41 Heron Ct?", "ask history"},
		{"digest please", "ask summary"},
		{"menu", "ask help"},
		{"next?", "ask next_check"},
		{"copy that", "ask none"},
		{"report 41 Heron Ct: 72 rear bibb", "72 rear_bibb"},
	})
}

func TestAHouseInSmallLettersIsAskedAfter(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, text := range []string{"12 elm history", "12 oak done", "12 ash recheck friday", "when is 12 Elm due", "which way is 12 Oak headed",
		"how old is 12 Elm heater", "got 12 Elm rechecked, close it", "12 elm sheet", "marca 12 Ash como hecho"} {
		if f := p.Parse(text, Context{}); f.Site != "12 Elm" && f.Site != "12 Oak" && f.Site != "12 Ash" {
			t.Errorf("%q: site %q", text, f.Site)
		}
	}
}

func TestAsksInOtherWords(t *testing.T) {
	says(t, [][2]string{
		{"what am I walking into at 41 Heron Ct", "ask history"},
		{"you got notes for 41 Heron Ct", "ask history"},
		{"grab me the record for 41 Heron Ct", "ask history"},
		{"first time at 41 Heron Ct or have we been", "ask history"},
		{"check the records on 41 Heron Ct", "ask history"},
		{"88 rear bibb, whatd we get last visit", "88 rear_bibb; ask history"},
		{"give me my follow-ups", "ask due"},
		{"what needs rechecked", "ask due"},
		{"who needs a visit next week", "ask due"},
		{"did we set a recheck for 41 Heron Ct", "ask due"},
		{"whens the next visit to 41 Heron Ct", "ask due"},
		{"88 rear bibb, anything due near here?", "88 rear_bibb; ask due"},
		{"rent is due lol", "ask none"},
		{"is the pressure climbing at 41 Heron Ct year to year", "ask trend"},
		{"picture of how 41 Heron Ct has moved", "ask trend"},
		{"78 rear bibb, is that up from before?", "78 rear_bibb; ask trend"},
		{"parked on the plot behind 41 Heron Ct", "ask none"},
		{"95 front bibb, why so high", "95 front_bibb; ask next_check"},
		{"95 front bibb, whats doing that", "95 front_bibb; ask next_check"},
		{"told her the pressure is what's doing it, 101 front bibb", "101 front_bibb"},
		{"help me out with 41 Heron Ct, 62 laundry", "62 laundry; ask next_check"},
		{"no le hallo, 110 enfrente", "110 front_bibb; ask next_check"},
		{"62 laundry, print her a sheet", "62 laundry; ask report"},
		{"62 laundry and she wants a copy", "62 laundry; ask report"},
		{"how busy were we", "ask summary"},
		{"balance de la semana", "ask summary"},
		{"are you a bot", "ask help"},
		{"no entiendo como usar esto", "ask help"},
	})
}

func TestANumberInThePlaceOfAnother(t *testing.T) {
	says(t, [][2]string{
		{"change 92 to 82", "ask correct; 82"},
		{"swap that 92 for an 82", "ask correct; 82"},
		{"update that to 82", "ask correct; 82"},
		{"update the kitchen at 12 Elm St to 66", "ask correct; 66 kitchen"},
		{"update my last one for 12 Elm St, kitchen is 66", "ask correct; 66 kitchen"},
		{"update on 12 Elm St, kitchen 66", "66 kitchen"},
		{"quick update from 12 Elm St: back bib 91", "91 rear_bibb"},
		{"update on 12 Elm St, pipes bang, max needle on the rear bib is at 146, city side 133", "hammer; 146 rear_bibb peak; 133 street"},
		{"replace the 92 with 82 laundry", "ask correct; 82 laundry"},
		{"strike 92 put 82", "ask correct; 82"},
		{"cambia la última a 82", "ask correct; 82"},
		{"that 92 was really 82", "ask correct; 82"},
		{"wasn't 92, was 82", "ask correct; 82"},
		{"no son 92 son 82", "ask correct; 82"},
		{"perdón 82 no 92", "ask correct; 82"},
		{"wrote 92 meant 82", "ask correct; 82"},
		{"got my numbers backwards, 29 should be 92 rear bibb", "ask correct; 92 rear_bibb"},
		{"read it wrong, its 82", "ask correct; 82"},
		{"leí mal, son 82", "ask correct; 82"},
		{"on second look it was 82", "ask correct; 82"},
		{"last reading at 41 Heron Ct should be 82", "ask correct; 82"},
		{"looked again, 82 laundry", "82 laundry"},
	})
}

func TestAReportTakenBackAFollowUpPutOffInOtherWords(t *testing.T) {
	says(t, [][2]string{
		{"clear that reading", "ask undo"},
		{"roll that back", "ask undo"},
		{"rescind my last", "ask undo"},
		{"oops that was for another house", "ask undo"},
		{"posted that twice, pull one", "ask undo"},
		{"no apuntes eso", "ask undo"},
		{"haz de cuenta que no dije nada", "ask undo"},
		{"41 Heron Ct can come off the list", "ask done"},
		{"went by 41 Heron Ct already, mark it", "ask done"},
		{"hold 41 Heron Ct for a week", "ask snooze"},
		{"another week on 41 Heron Ct", "ask snooze"},
		{"41 Heron Ct que espere otra semana", "ask snooze"},
		{"recuérdame después", "ask snooze"},
	})
}

func TestWhatASizeOrAUnitIsAskedFrom(t *testing.T) {
	says(t, [][2]string{
		{"calcúlame el tanque: 50 galones, 65 psi, entra a 60 sale a 120", "ask tank_size"},
		{"do I need the bigger expansion tank for a 75 gal", "ask tank_size"},
		{"run the numbers for an expansion tank on a 50 gal at 65 psi", "ask tank_size"},
		{"exp tank is the bigger kind, 10 gallons", "expansion_tank 10 gal"},
		{"whats 4.2 bar", "ask convert"},
		{"72 in bar?", "ask convert"},
	})
}

func TestPlansInOtherWords(t *testing.T) {
	says(t, [][2]string{
		{"want eyes on it in 30 days", "plan recheck in 30"},
		{"get another number wednesday", "plan recheck in 2"},
		{"double check it in a week", "plan recheck in 7"},
		{"confirm it holds next week", "plan recheck in 7"},
		{"set prv to 60, coming back next week to make sure it holds", "set_prv to 60; plan recheck in 7"},
		{"en un año lavar el boiler", "plan other in 365"},
		{"neighbor at 14 needs a prv too", "ask none"},
		{"not gonna bother with a recheck", "ask none"},
		{"dont schedule a recheck", "ask none"},
		{"no need to schedule a recheck", "ask none"},
		{"wasnt home, schedule a recheck friday", "plan recheck in 4"},
		{"88 rear bibb now, want to see what it does in a week", "88 rear_bibb; plan recheck in 7"},
		{"get her scheduled for a prv next week", "plan replace_prv in 7"},
		{"need to drop the pressure to 60", "plan set_prv"},
		{"hay que bajarle la presión a 60", "plan set_prv"},
		{"need to take the pressure at the street", "ask none"},
	})
}

func TestFurtherWordingsOfAsks(t *testing.T) {
	says(t, [][2]string{
		{"has anyone read 41 Heron Ct lately", "ask history"},
		{"61 laundry, how does that compare to last time", "61 laundry; ask history"},
		{"61 en la lavadora, cuánto era antes?", "61 laundry; ask history"},
		{"what stops do i have left", "ask due"},
		{"qué visitas tengo mañana", "ask due"},
		{"show me how 41 Heron Ct has behaved", "ask trend"},
		{"where would you hook up next", "ask next_check"},
		{"does that point to the prv", "ask next_check"},
		{"será expansión térmica?", "ask next_check"},
		{"show me this weeks numbers", "ask summary"},
		{"cómo le digo que fue en la llave de atrás", "ask help"},
		{"put 82 instead of 92", "ask correct; 82"},
		{"era 82 en la cocina, no 92", "ask correct; 82 kitchen"},
		{"la lectura buena es 82", "ask correct; 82"},
		{"me fallé, 82 en la lavadora", "ask correct; 82 laundry"},
		{"drove to the wrong one first, the right one is 41 Heron Ct, 82 laundry", "82 laundry"},
		{"the 41 Heron Ct one can be closed", "ask done"},
		{"follow up at 41 Heron Ct, did it this morning", "ask done"},
		{"ya se hizo la visita de 41 Heron Ct", "ask done"},
		{"bring 41 Heron Ct back up in 3 weeks", "ask snooze"},
		{"bump the prv down when i go back fri", "plan set_prv in 4"},
		{"need to get a tank on this house", "plan install_tank"},
		{"whats the right way to tell you the heater was running", "ask help"},
		{"what's the correct way to report a leak", "ask help"},
		{"is there a right way to tell you about a tank", "ask help"},
		{"cual es la forma correcta de decirte que el boiler estaba prendido", "ask help"},
		{"what I just posted, pull it back, that was somebody else's place", "ask undo"},
		{"that last post, pull it", "ask undo"},
		{"got the follow up out of the way, you can stop bugging me about it", "ask done"},
		{"recheck is out of the way", "ask done"},
		{"you can quit reminding me, it's done", "ask done"},
		{"already did the recheck, stop reminding me", "ask done"},
		{"le puse kitchen al ultimo report pero no, the 66 was en la regadera", "66 bath; ask correct"},
		{"I put kitchen in the last report but no, it was the shower", "ask correct"},
		{"can you make a note that the tank at 12 Elm has to be replaced", "plan replace_tank"},
		{"Would you note that the regulator at 12 Elm has to be replaced?", "plan replace_prv"},
		{"75 psi, how high would that push water? in ft", "ask convert"},
		{"how tall a column does 70 psi hold", "ask convert"},
		{"fix my last one please, el medidor marca 119 no 199", "119 street; ask correct"},
		{"trailer spare was at 40 lbs, pump it to 65 before tomorrow", "ask none"},
	})
}

// A second order is joined by more than "and".
func TestAnotherOrderIsJoinedToOne(t *testing.T) {
	says(t, [][2]string{
		{"make the customer sheet for 45 Halyard Way and then show me the follow-ups due", "ask report; ask due"},
		{"print the sheet for 45 Halyard Way, then list what is due tomorrow", "ask report; ask due"},
		{"tell me what's due today, then pull up 45 Halyard Way", "ask due; ask history"},
		{"pull up 45 Halyard Way: past visits, plus what he should test next", "ask history; ask next_check"},
		{"give me the weekly summary and then the list of what is due", "ask summary; ask due"},
		{"what's due this week plus the team summary", "ask due; ask summary"},
		{"mark the recheck at 45 Halyard Way done and then show me the chart", "ask done; ask trend"},
		{"undo my last report and then show me the history for 45 Halyard Way", "ask undo; ask history"},
		{"push the 45 Halyard Way recheck a week and then show me what's due", "ask due; ask snooze"},
		{"convert 4 bar to psi and then tell me what's due today", "ask convert; ask due"},
		{"rear 84 at 45 Halyard Way. what should i test next and then print the sheet", "84 rear_bibb; ask next_check; ask report"},
		{"saca la hoja de 45 Halyard Way y luego dime qué hay pendiente", "ask report; ask due"},
		{"print the sheet and then call the customer", "ask report"},
		{"what's due this week and who's taking it", "ask due"},
	})
}

// A visit that is ordered for a day is no question after those that stand.
func TestAVisitOrderedForADayIsPlanned(t *testing.T) {
	says(t, [][2]string{
		{"Please get a recheck of 71 Halyard Way # 4 on the calendar, June 29 between 9 and 11", "plan recheck in 14"},
		{"get me a recheck of 12 Elm on the books for Friday", "plan recheck in 4"},
		{"please get somebody out to 12 Elm for a recheck next week", "plan recheck in 7"},
		{"send Ben to 12 Elm tomorrow to recheck", "plan recheck in 1"},
		{"look at it again in a month, recheck", "plan recheck in 30"},
		{"gotta get back to the owner in a week about the quote, 12 Elm", "plan other in 7"},
		{"send someone back to 12 Elm in 2 weeks", "plan other in 14"},
		{"tell me who needs a recheck by Friday", "ask due"},
		{"see if there's a recheck for Friday at 12 Elm", "ask due"},
		{"get me the rechecks for tomorrow", "ask due"},
		{"do we have a recheck on the books for Friday", "ask due"},
	})
}

// Who is booked may be called like a word of the trade.
func TestANameThatIsBookedSaysNothingElse(t *testing.T) {
	says(t, [][2]string{
		{"Book Hollis for a recheck at 9 Halyard Way on Friday at 2", "plan recheck in 4"},
		{"Schedule Rusty for a prv swap at 12 Elm Thursday", "plan replace_prv in 3"},
		{"Send Dale to 12 Elm tomorrow to swap the prv", "plan replace_prv in 1"},
		{"Put Drip on 12 Elm for a recheck Friday", "plan recheck in 4"},
		{"please book a recheck with Hollis, 12 Elm, Friday 2 pm", "plan recheck in 4"},
		{"Get Rusty Water at 12 Elm", "rusty_water"},
	})
}

// A number in one unit "in" another asks for it, whatever is told besides.
func TestANumberInAnotherUnitIsConverted(t *testing.T) {
	alone := []string{"{}"}
	readGrids(t, []grid{
		{oneEach("gonna need 700 kPa in psi, the drawings came from overseas"), alone, "ask convert 700 kpa psi"},
		{oneEach("the inspector is asking for 62 psi in bar on his form"), alone, "ask convert 62 psi bar"},
		{oneEach("por favor 5 bar en libras, el plano es de fuera"), alone, "ask convert 5 bar psi"},
		{oneEach("got 4 bar in psi units on the gauge"), alone, "ask none"},
	})
}

// What the bot has on record is called wrong, or set against the paper.
func TestWhatTheBotHoldsIsPutRight(t *testing.T) {
	says(t, [][2]string{
		{"you've got 112 front for 16 Halyard Way under my name, that's wrong, make it 102 front", "ask correct; 102 front_bibb"},
		{"you have me down for 112 front at 16 Halyard Way, that's wrong, it's 102", "ask correct; 102 front_bibb"},
		{"you got 88 kitchen at 12 Elm from me, should be 68", "ask correct; 68 kitchen"},
		{"you show 95 rear at 12 Elm, wrong, it was 59", "ask correct; 59 rear_bibb"},
		{"the record has 112 front for 16 Halyard Way, make that 102", "ask correct; 102 front_bibb"},
		{"the sheet says 68 kitchen, should be 86", "ask correct; 86 kitchen"},
		{"you wrote down 96 at the rear, I told you 69", "ask correct; 69 rear_bibb"},
		{"anotaste 58 en la tina, eran 85", "ask correct; 85 bath"},
		{"I typed 68 for the kitchen and the paper says 86. Kitchen is 86.", "ask correct; 86 kitchen"},
		{"I entered 68 at the kitchen, paper says 86", "ask correct; 86 kitchen"},
		{"the 68 I typed for the kitchen is wrong. Kitchen is 86.", "ask correct; 86 kitchen"},
		{"puse 58 en la cocina y la libreta dice 85", "ask correct; 85 kitchen"},
		{"you have 92 at the kitchen, 61 at the tub", "92 kitchen; 61 bath"},
		{"you've got 112 front, so the prv is off", "112 front_bibb"},
		{"I put in a prv, gauge says 62 at the kitchen", "installed_prv; 62 kitchen"},
		{"I put the gauge on the tub, it says 62", "62 bath"},
	})
}

// Who is asked to write a number down is told it.
func TestANumberToBeWrittenDownIsAReading(t *testing.T) {
	says(t, [][2]string{
		{"Would you enter 94 psi at 8 Halyard Way? It is the rear spigot, and the elements were on.", "94 rear_bibb firing"},
		{"would you put down 66 laundry for 12 Elm?", "66 laundry"},
		{"will you mark 66 at the laundry, 12 Elm?", "66 laundry"},
		{"would you please record 58 at the tub?", "58 bath"},
		{"would you believe 140 at the kitchen?", "ask none"},
		{"would you put in a prv at 84 rear?", "plan replace_prv"},
		{"would you put 60 on the prv?", "ask none"},
	})
}

// A number that was sent is given another tap.
func TestANumberSentIsGivenAnotherTap(t *testing.T) {
	says(t, [][2]string{
		{"Wrong tap on my last report, the 72 belongs to the laundry, not the kitchen", "ask correct; 72 laundry"},
		{"the 70 I sent belongs to the washer box, change it", "ask correct; 70 laundry"},
		{"that 61 I logged was at the tub", "ask correct; 61 bath"},
		{"the 72 should be under laundry, not kitchen", "ask correct; 72 laundry"},
		{"put that 72 under laundry instead of kitchen", "ask correct; 72 laundry"},
		{"move that 72 to the laundry", "ask correct; 72 laundry"},
		{"el 72 que mandé es de la lavadora, no de la cocina", "ask correct; 72 laundry"},
		{"the 72 belongs to the neighbor", "ask none"},
		{"the 40 belongs at 12 Elm, it's a 40 gal heater", "heater 40 gal"},
		{"the 134 I just got at the kitchen", "134 kitchen"},
	})
}

// What may stand in one message is asked of the bot.
func TestWhatAMessageMayHoldIsAsked(t *testing.T) {
	says(t, [][2]string{
		{"can i put 3 taps in one post or do you want em separate", "ask help"},
		{"can 1 msg have 3 taps in it", "ask help"},
		{"can I put two houses in one message", "ask help"},
		{"can i put the meter and the laundry in same msg or do u need 2", "ask help"},
		{"can I put the heater and prv in the same message as the reading", "ask help"},
		{"is it ok to send the front and rear in the same text", "ask help"},
		{"do you want each reading in its own message", "ask help"},
		{"should i send the taps separate or together", "ask help"},
		{"puedo mandar dos lecturas en un mensaje", "ask help"},
		{"could someone post the addresses for tomorrow", "ask none"},
		{"can you get me the message from the owner", "ask none"},
	})
}

// A follow-up is given more time, put off for a customer, or said to be seen to on a day gone by.
func TestAFollowUpGetsMoreTime(t *testing.T) {
	alone := []string{"{}", "{} please"}
	readGrids(t, []grid{
		{oneEach("1 more month on that recheck|that recheck, one more month|another month on the recheck"), alone, "ask snooze 30"},
		{oneEach("2 more weeks on that follow-up|another two weeks on the callback|put her off 2 weeks"), alone, "ask snooze 14"},
		{oneEach("one more week on the recheck|another week on that reminder|put her off a week|put him off until monday"), alone, "ask snooze 7"},
		{oneEach("3 more weeks on 12 Elm St|3 more weeks for the 12 Elm St follow up"), alone, "12 Elm St | ask snooze 21"},
		{oneEach("put her off til after the holiday"), alone, "ask snooze"},
		{oneEach("one more recheck in 2 weeks"), alone, "plan recheck 14"},
		{oneEach("one more week then recheck"), alone, "plan recheck 7"},
		{oneEach("took care of it Friday|already handled that on Tuesday|handled it yesterday"), []string{"{}"}, "ask done"},
		{oneEach("that price put her off"), []string{"{}"}, "ask none"},
		{oneEach("took care of the leak Friday"), []string{"{}"}, "repaired_leak"},
	})
}

// Who is away comes back to no house, and what is said of the odds asks nothing.
func TestTalkOfTheCrewsDays(t *testing.T) {
	says(t, [][2]string{
		{"hey all I'm out sick tomorrow, back Thurs", "ask none"},
		{"I'm off tomorrow, back Monday", "ask none"},
		{"call off the meeting tomorrow", "ask none"},
		{"owner out sick tomorrow, recheck Thursday at 12 Elm", "plan recheck in 3"},
		{"12 Elm, 62 kitchen. I'm off tomorrow so recheck Thursday", "62 kitchen; plan recheck in 3"},
		{"I'm out at 12 Elm, 62 kitchen", "62 kitchen"},
		{"kitchen 100, what are the odds", "100 kitchen"},
		{"what are the odds it's the prv", "ask next_check"},
		{"boss wants to see how the whole team did this month", "ask summary"},
		{"Recheck 5 Halyard Way this Wednesday ok? needle at the laundry box creeps up", "plan recheck in 2; creep"},
		{"Swap the prv at 12 Elm Friday, ok? 92 rear", "plan replace_prv in 4; 92 rear_bibb"},
		{"return tmrw w/ a new check", "plan other in 1"},
		{"back Friday with a new check for 12 Elm", "plan other in 4"},
		{"check again Friday at 12 Elm", "plan recheck in 4"},
		{"nd t cll ownr bck n 3 dys abt th prmt 608 s linden", "plan other in 3"},
	})
}

// The size of a pipe takes no unit from the pressures told beside it.
func TestAPipesSizeIsNoPressureInBar(t *testing.T) {
	says(t, [][2]string{
		{"4 bar at the kitchen. put in a ball valve, 3/4, 20 min", "58 kitchen"},
		{"4.5 bar kitchen, 4 1/2 laundry", "65.3 kitchen; 65.3 laundry"},
		{"medio bar en la cocina", "7.3 kitchen"},
	})
}

func TestAConversionBehindAReport(t *testing.T) {
	says(t, [][2]string{
		{"88 psi at the side spigot whats that in bar", "88 side_bibb; ask convert"},
		{"kitchen tap reads 5.5 bar whats that in psi", "79.8 kitchen; ask convert"},
		{"kitchen tap reads 5.5 bar, whats that in psi", "79.8 kitchen; ask convert"},
		{"sprinkler timer box says max 6 bar what is that in psi", "ask convert"},
		{"new sprinkler box says max 690 kPa whats that in psi", "ask convert"},
		{"new irrigation valve says 10 bar max, whats that in psi", "ask convert"},
		{"washer hose says max 1000 kPa, whats that in psi", "ask convert"},
		// the unit is told before the question
		{"this guys gauge is all in bar lol. whats 5.5 in psi", "ask convert"},
		{"gauge reads bar only. 4.2 in psi?", "ask convert"},
		{"her papers are in bar. need 3.5 in psi", "ask convert"},
		{"all in bar here. how much is 6 in psi", "ask convert"},
		{"all in bar here. kitchen 4.2", "60.9 kitchen"},
	})
}
