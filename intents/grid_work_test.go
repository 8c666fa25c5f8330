package intents

import (
	"strings"
	"testing"
)

// What was done, by who did it, verb, part, and the form it is told in: a deed, a noun, a state.
func TestGridOfWork(t *testing.T) {
	frames := []string{"{}", "{} at 12 Elm St"}
	var grids []grid
	done := func(want string, phrases []string) {
		grids = append(grids, grid{phrases, frames[:1], want}, grid{phrases, frames[1:], "12 Elm St | " + want})
	}
	who := oneEach("|i|we|just|went ahead and|had to")
	simple := who[:5]
	for _, part := range []struct{ names, renewed string }{
		{"prv|regulator|pressure reducing valve", "replaced_prv"}, {"expansion tank|exp tank", "replaced_tank"}, {"water heater|heater", "replaced_heater"},
	} {
		names := oneEach(part.names)
		done(part.renewed, product(simple, oneEach("replaced|swapped|swapped out|changed out"), oneEach("the|her old"), names))
		done(part.renewed, product(oneEach("|the"), names, oneEach("replaced|has been swapped|got replaced|swap done|replacement complete")))
		done(part.renewed, product(oneEach("had to|ended up having to"), oneEach("replace|change out"), oneEach("the"), names))
	}
	done("set_prv", product(simple, oneEach("adjusted|turned down|backed off|bumped up|dialed in"), oneEach("the prv|her regulator")))
	done("set_prv >60", product(simple[:4], oneEach("adjusted|turned down|lowered|set|bumped up|reset"), oneEach("the prv to 60|the regulator to 60")))
	done("set_prv >60 <90", product(simple[:4], oneEach("turned down|lowered|reset"), oneEach("the prv from 90 to 60")))
	done("rebuilt_prv", product(simple[:4], oneEach("rebuilt the prv|put a kit in the regulator|cleaned the prv strainer")))
	done("charged_tank >60", product(simple[:4], oneEach("charged|pumped up|aired up|recharged"), oneEach("the tank to 60|the expansion tank to 60")))
	done("charged_tank >60 <30", product(simple[:4], oneEach("charged|pumped up|recharged"), oneEach("the tank from 30 to 60")))
	done("flushed_heater", product(simple, oneEach("flushed|drained and flushed|did a flush on"), oneEach("the heater|the water heater")))
	done("replaced_drain_valve", product(simple, oneEach("replaced|swapped out"), oneEach("the drain valve|the heater drain valve")))
	done("repaired_leak", product(simple, oneEach("fixed|repaired|stopped"), oneEach("the leak|the dripping faucet|the leaking supply line")))
	done("shut_off", product(simple, oneEach("shut off|turned off|closed off"), oneEach("the water|the main|the water at the meter")))
	done("shut_off", product(oneEach("had to|i had to"), oneEach("shut off|turn off|close off"), oneEach("the water|the water at the street|the main")))
	done("installed_tank", product(simple, oneEach("installed|put in|added|hung"), oneEach("an expansion tank|an exp tank")))
	done("installed_tank", product(simple[:4], oneEach("put|stuck"), oneEach("an expansion tank in|a tank in")))
	readGrids(t, grids)
}

// The same work, needed only, not done, done by others, asked about.
func TestGridOfWorkThatWasNotDoneByUs(t *testing.T) {
	var grids []grid
	for _, job := range []struct{ base, past, plan, left string }{
		{"replace the prv", "replaced the prv", "replace_prv", ""},
		{"swap out the regulator", "swapped out the regulator", "replace_prv", ""},
		{"turn down the prv", "turned down the prv", "set_prv", ""},
		{"install an expansion tank", "installed an expansion tank", "install_tank", ""},
		{"replace the expansion tank", "replaced the expansion tank", "replace_tank", "expansion_tank:"},
		{"flush the heater", "flushed the heater", "", ""},
		{"replace the water heater", "replaced the water heater", "", ""},
	} {
		if job.plan != "" {
			grids = append(grids, grid{product(oneEach("need to|have to|we should|somebody needs to|customer wants us to|will|recommend we"), []string{job.base}),
				[]string{"64 kitchen, {}"}, "64 kitchen; plan " + job.plan})
		}
		none := strings.TrimSuffix("64 kitchen; "+job.left, "; ")
		grids = append(grids,
			grid{product(oneEach("did not|didnt|could not|never got to|wasnt able to|no time to|not going to|she did not want me to|owner wont let us|decided not to|no need to"),
				[]string{job.base}), []string{"64 kitchen, {}", "64 kitchen. {}"}, none})
		there := none
		if strings.Contains(job.past, "expansion tank") {
			there = "64 kitchen; expansion_tank:"
		}
		grids = append(grids,
			grid{product(oneEach("the last plumber|last guy|the other company|another plumber|the builder|previous owner|her husband|some handyman"), []string{job.past}),
				[]string{"64 kitchen, {}"}, there},
			grid{product(oneEach("have we ever|has anybody|who"), []string{job.past}), []string{"{} at 12 Elm St?"}, "12 Elm St | ask history"})
	}
	grids = append(grids, grid{oneEach("ran out of time to flush the heater|ran out of time to replace the prv"), []string{"64 kitchen, {}"}, "64 kitchen"})
	readGrids(t, grids)
}

// A pressure before work and one after it, by the words that tell which, the work, the tap and their order.
func TestGridOfBeforeAndAfter(t *testing.T) {
	told := oneEach("was 95, now 60|was 95 now 60|95 before, 60 after|before 95, after 60|found 95, left 60|found it at 95, left it at 60|on arrival 95, as left 60|" +
		"as found 95, as left 60|95 -> 60|95 down to 60|was at 95, now at 60|was 95 and now 60|was reading 95, now reading 60|read 95 before and 60 after|" +
		"60 now, was 95|60 after, 95 before|left at 60, found at 95|95 when i got there, 60 when i left|started at 95, ended at 60|pre 95 post 60|it was 95, its 60 now")
	var grids []grid
	for _, work := range [][2]string{{"replaced the prv", "replaced_prv"}, {"turned down the regulator", "set_prv"}, {"rebuilt the prv", "rebuilt_prv"}, {"prv swap done", "replaced_prv"}} {
		for _, tap := range [][2]string{{"kitchen", "kitchen"}, {"rear bib", "rear_bibb"}, {"after the prv", "after_prv"}} {
			want := "60 " + tap[1] + " after; 95 " + tap[1] + " before; " + work[1]
			grids = append(grids, grid{product([]string{tap[0]}, told), []string{work[0] + ", {}", work[0] + ". {}", "{}. " + work[0]}, want})
		}
	}
	readGrids(t, grids)
}
