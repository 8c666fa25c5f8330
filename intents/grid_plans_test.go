package intents

import (
	"fmt"
	"testing"
)

// What is to be done, by who says it, the job, the time and their order; the day is 15 June 2026,
// a Monday.
func TestGridOfPlans(t *testing.T) {
	days := []struct {
		text string
		days int
	}{
		{"in 3 days", 3}, {"two days from now", 2}, {"in a week", 7}, {"in 2 wks", 14}, {"in a month", 30}, {"in 6 months", 180},
		{"tomorrow", 1}, {"friday", 4}, {"the 22nd", 7}, {"june 22", 7}, {"next week", 7}, {"day after tomorrow", 2}, {"3 weeks from today", 21},
	}
	who := oneEach("|ill|gonna|i need to|have to|gotta|coming back to|planning to|remind me to|id like to|returning to")
	jobs := []struct{ plan, verbs, nouns string }{
		{"recheck", "recheck|check it again|retest", "recheck|f/u|recheck needed"},
		{"replace_prv", "replace the prv|swap out the regulator|put a new prv in", "new prv|prv swap|regulator replacement"},
		{"set_prv", "turn the prv down|adjust the regulator|bump the prv up|set the prv to 60", "prv adjustment"},
		{"install_tank", "put a tank in|install an expansion tank|put in an expansion tank", "tank install|expansion tank install|tank installation"},
		{"replace_tank", "swap the expansion tank|change out the tank", "tank swap|expansion tank replacement"},
		{"other", "flush the heater|replace the water heater", "heater replacement"},
	}
	var grids []grid
	for k, d := range days {
		for j, job := range jobs {
			want := fmt.Sprintf("plan %s %d", job.plan, d.days)
			// each job meets each day and each speaker, not every pair of them each time
			some := []string{who[(k+j)%len(who)], who[(k+2*j+5)%len(who)], who[(2*k+j+8)%len(who)]}
			verbs := product(some, oneEach(job.verbs))
			grids = append(grids,
				grid{verbs, []string{"{} " + d.text, "{}, " + d.text}, want},
				grid{verbs, []string{"{} at 12 Elm St " + d.text}, "12 Elm St | " + want},
				grid{verbs, []string{"64 kitchen, {} " + d.text}, "64 kitchen; " + want},
				grid{oneEach(job.nouns), []string{"{} " + d.text, "{}, " + d.text, d.text + ": {}", d.text + " - {}"}, want},
				grid{oneEach(job.nouns), []string{"64 kitchen. {} " + d.text}, "64 kitchen; " + want})
		}
	}
	readGrids(t, grids)
}
