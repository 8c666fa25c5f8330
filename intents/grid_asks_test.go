package intents

import (
	"strings"
	"testing"
)

// grid is a product of wordings and what each says in brief, as inBrief writes it.
type grid struct {
	phrases, frames []string // a frame holds its phrase as {}
	want            string
}

// readGrids reads every message of some grids.
func readGrids(t *testing.T, grids []grid) {
	t.Helper()
	p, err := oneParser()
	if err != nil {
		t.Fatal(err)
	}
	all, wrong := 0, 0
	for _, g := range grids {
		for _, phrase := range g.phrases {
			for _, frame := range g.frames {
				text := strings.ReplaceAll(frame, "{}", phrase)
				all++
				if got := inBrief(p.Parse(text, Context{})); got != g.want {
					if wrong++; wrong <= 20 {
						t.Errorf("%q\n got %s\nwant %s", text, got, g.want)
					}
				}
			}
		}
	}
	if wrong > 20 {
		t.Errorf("%d of %d messages are misread", wrong, all)
	}
}

// oneEach returns the phrases of a text, one a line or parted by bars.
func oneEach(text string) []string {
	var out []string
	for _, line := range strings.Split(text, "\n") {
		for _, p := range strings.Split(line, "|") {
			out = append(out, strings.TrimSpace(p))
		}
	}
	return out
}

// What is asked of one house or of the bot, by verbs, objects, politeness and order.
func TestGridOfQuestions(t *testing.T) {
	house := []string{"{} 12 Elm St", "hey bot {} 12 Elm St?"}
	bare := []string{"{}", "ok {}", "hey bot, {}?"}
	readGrids(t, []grid{
		{product(oneEach("pull up|show me|look up|get me|i need|can i see|could you send me|dig up|check"),
			oneEach("the history for|history on|the notes on|the records for|the file on")), house, "12 Elm St | ask history"},
		{oneEach("what do we have on|whats the history on|any notes on|have we been to|when were we last at|what was the last reading at|" +
			"whats the story on|remind me what we did at|status of|details on|open the file on|search"), house, "12 Elm St | ask history"},
		{product(oneEach("show me|draw|give me|run|could you pull up"),
			oneEach("a graph of|the trend for|the pressure chart for|the readings over time for|a trend line for")), house, "12 Elm St | ask trend"},
		{oneEach("is it trending up|how has it trended|how has it been trending|pressure over the years|graph it|chart this house|how has the pressure changed"),
			bare, "ask trend"},
		{product(oneEach("print|i need|can i get|make me|run|email"),
			oneEach("the customer sheet for|a pdf for|the homeowner report for|the handout for|a printout for")), house, "12 Elm St | ask report"},
		{oneEach("print the report|email him the report|text her the report|she wants a copy of the report|he wants it in writing|" +
			"something to leave with the customer|customer wants something in writing|pdf please"), []string{"{}", "ok {}"}, "ask report"},
		{product(oneEach("|show me|whats|can i get|post"), oneEach("the|last weeks"), oneEach("team summary|crew summary|team totals")), bare, "ask summary"},
		{oneEach("how did the guys do|how is the team doing|hows the crew doing|how was last week|this weeks numbers|last months totals|week to date|" +
			"month in review|what did we do this week|how did we do"), bare, "ask summary"},
		{product(oneEach("whats|what do we have|anything|which houses are|what is"), oneEach("due"), oneEach("|today|this week|tomorrow|on friday")), bare, "ask due"},
		{product(oneEach("give me|show me|list|pull up"), oneEach("the"), oneEach("follow ups|rechecks|reminders|callbacks"),
			oneEach("for today|coming up|due tomorrow|this week")), bare, "ask due"},
		{oneEach("anything for me today|do i have anything this week|what houses need to be rechecked|whats on my list|who do we owe a visit"), bare, "ask due"},
		{oneEach("explain how this works|example of a reading please|how do i look up a house|how do i set a recheck|how do i start|" +
			"how do i take something back|show me the instructions|what is this bot for|whats this bot do|what do i write|how do i log a reading"),
			bare, "ask help"},
		{oneEach("any suggestions|do you think its the prv|you think its the regulator|could it be the tank|is it thermal expansion|" +
			"what do you suggest|what do you recommend|what are you thinking|whats the issue|where should i look|why so high|" +
			"how can i tell if its the tank|should i read the meter|what do we think"), bare, "ask next_check"},
		{oneEach("thoughts|any guess|any suggestions|is the prv shot|is the regulator going bad|why is it so high|what do you suggest|where should i look|whats next"),
			[]string{"92 rear bib, {}", "92 rear bib. {}?"}, "92 rear_bibb; ask next_check"},
		{product(oneEach("what size|how big a|which"), oneEach("expansion tank"), oneEach("for a 50 gal heater at 65 psi|do i need, 50 gal, 65 psi")),
			[]string{"{}", "{}?"}, "ask tank_size 50gal 65psi"},
		{oneEach("calc the expansion tank|sizing for an expansion tank|whats the right tank|which expansion tank|tank size"), bare[:1], "ask tank_size"},
	})
}

// Conversions, by verbs, units and order.
func TestGridOfConversions(t *testing.T) {
	asked := func(from, to string) []string {
		var out []string
		for _, f := range oneEach("N in U|N to U|convert N to U|how many U is N|how many U in N|how much is N in U|N is how many U|N = ? U|turn N into U|" +
			"what would N be in U|N, how many U|give me N in U|N is what in U|U for N|how many U does N make|N as U|calculate N in U") {
			out = append(out, strings.NewReplacer("N", from, "U", to).Replace(f))
		}
		return out
	}
	frames := []string{"{}", "{} please", "bot {}?"}
	readGrids(t, []grid{
		{asked("350 kpa", "psi"), frames, "ask convert 350 kpa psi"},
		{asked("4.5 bar", "psi"), frames, "ask convert 4.5 bar psi"},
		{asked("60 psi", "bar"), frames, "ask convert 60 psi bar"},
		{asked("80 psi", "kilopascals"), frames, "ask convert 80 psi kpa"},
		{asked("150 feet of head", "psi"), frames, "ask convert 150 ft psi"},
		{oneEach("how much is 6 bar|how much pressure is 6 bar"), []string{"{}", "{}?", "hey {}"}, "ask convert 6 bar psi"},
	})
}

// What takes back or puts right the last report.
func TestGridOfTakingBack(t *testing.T) {
	readGrids(t, []grid{
		{product(oneEach("undo|delete|remove|scratch|disregard|take back|drop|throw out|pull"), oneEach("my last report|that entry|that last reading")),
			[]string{"{}", "{} please", "bot {}", "{}, sorry"}, "ask undo"},
		{oneEach("remove it|wrong channel|throw out that|that was a test|wrong house|i sent that by mistake"), []string{"{}", "{} please"}, "ask undo"},
		{oneEach("actually 67|oops 67|oops its 67|sorry 67|sorry its 67|my mistake, 67|wait 67|no wait 67|typo, 67|misread, 67|misread it, 67|" +
			"transposed it, 67|fat fingered it, 67|its really 67|its actually 67|update that to 67|edit that to 67|" +
			"let me correct that, 67|make that 67|i wrote 76, meant 67|i said 76 meant 67|the 76 should be 67|that 76 should be 67|change the 76 to 67|" +
			"change 76 to 67|the 76 was 67|67 not 76|not 76 but 67|last reading should be 67|entered it wrong, its 67"),
			[]string{"{}", "ok {}", "{} psi"}, "67; ask correct"},
	})
}

// What closes a follow-up, and what puts it off.
func TestGridOfFollowUpsDoneAndPutOff(t *testing.T) {
	things := oneEach("the recheck|that follow up|the callback|the f/u|that reminder|the 2 week recheck")
	readGrids(t, []grid{
		{product(oneEach("close|close out|check off|cross off|i did|just did|we did|just finished|already did|done with|took care of|go ahead and close"), things),
			[]string{"{}", "ok {}", "{}, thanks"}, "ask done"},
		{product(things, oneEach("is done|is complete|got done|has been done|can be closed|is taken care of|can come off the list")),
			[]string{"{}", "ok {}", "{}, thanks"}, "ask done"},
		{oneEach("that one is done|that ones done|that one is taken care of|this one is finished|did that one|done with that one|took care of that one|" +
			"close it|close it out|close that out|you can close it|go ahead and close that|check that off|cross that one off|take it off my list|take that off the list|mark it done|mark that one done"),
			[]string{"{}", "ok {}", "hey bot, {}"}, "ask done"},
		{oneEach("mark 12 Elm St done|12 Elm St is done|12 Elm St is taken care of|cross 12 Elm St off the list|did the recheck at 12 Elm St|12 Elm St recheck done"),
			[]string{"{}", "ok {}", "{} thanks"}, "12 Elm St | ask done"},
		{product(oneEach("push it|push that one|move the recheck|bump it|snooze that|delay the recheck|put it off|hold it|slide it|later.|later,|not today,|not now,"),
			oneEach("ten days|another 10 days|10 days")), []string{"{}", "ok {}"}, "ask snooze 10"},
		{product(oneEach("push it|push that one|push that|bump that one|kick it|snooze it|postpone it|shove it|later.|not today,"), oneEach("two weeks|2 wks|a couple weeks")),
			[]string{"{}"}, "ask snooze 14"},
		{product(oneEach("push it|bump it|snooze|postpone the follow up|push the recheck"), oneEach("a few days|3 days")), []string{"{}"}, "ask snooze 3"},
	})
}

// The same words said of other things ask nothing of the bot.
func TestGridOfWordsThatAskNothing(t *testing.T) {
	readGrids(t, []grid{
		{product(oneEach("bring up|push|move|hold|drop off|load|close up"), oneEach("the ladder|the hose cart|the van doors|that old box")), []string{"{}", "ok {}"}, "ask none"},
		{oneEach("show up at 8 tomorrow|delay at the supply house|help Ben load the truck|all done|done for the day|done|took care of lunch|" +
			"how much is 20 ft of pex|how much is the kit|make it 2 coffees|make that three coffees|meant to call you|i meant the other truck|undo the strap|" +
			"remove it carefully|throw out that old box|close the van doors|any ideas for lunch|any thoughts on where to eat|what are you thinking for lunch|" +
			"why is the van still here|sorry 20 min late|wait 30 min|not today|later|see you later|hold it right there|that one is mine"),
			[]string{"{}", "ok {}", "{} lol"}, "ask none"},
	})
}
