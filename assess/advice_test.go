package assess

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

// Each row: what was read, asked or done, and the cautions that go with it,
// gravest first, three at most. Common practice.
func TestCautionsThatMatter(t *testing.T) {
	for _, row := range []struct {
		what  string
		visit []string
		want  string
	}{
		{"a plain reading needs none", []string{"62 rear_bibb idle"}, ""},
		{"gas", []string{"+gas_smell"}, "gas_smell"},
		{"the drain as test point", []string{"62 heater_drain idle"}, "hot_drain backflow"},
		{"a plastic drain", []string{"62 heater_drain idle", "drain plastic"}, "plastic_drain hot_drain backflow"},
		{"a hot setpoint", []string{"heater 140f"}, "scald"},
		{"dark water", []string{"62 rear_bibb idle", "+dark_water"}, "discoloured_water"},
		{"rusty water", []string{"62 rear_bibb idle", "+rusty_water"}, "discoloured_water"},
		{"a relief valve that discharges", []string{"62 rear_bibb idle", "+relief_discharge"}, "relief_valve"},
		{"a relief valve that is blocked", []string{"+relief_blocked"}, "relief_valve"},
		{"150 psi", []string{"155 rear_bibb idle"}, "relief_valve shutoff"},
		{"a flushed heater", []string{"did flushed_heater"}, "gas_off hot_drain"},
		{"a replaced regulator", []string{"did replaced_prv 60"}, "bonding local_code slow_open"},
		{"a set regulator", []string{"did set_prv 60"}, "setting_range"},
		{"a new tank", []string{"did installed_tank"}, "support_tank pressurised_tank"},
		{"a charged tank", []string{"did charged_tank 60"}, "pressurised_tank"},
		{"water shut off", []string{"did shut_off"}, "slow_open"},
		{"a planned replacement", []string{"plan replace_prv 7"}, "bonding local_code"},
		{"expansion without control", []string{"62 rear_bibb idle", "prv 2020", "tank none"}, "relief_valve local_code"},
	} {
		t.Run(row.what, func(t *testing.T) {
			var got []string
			for _, c := range seeing(t, row.visit...).Cautions {
				got = append(got, string(c))
			}
			if strings.Join(got, " ") != row.want {
				t.Errorf("%v: %v, want %s", row.visit, got, row.want)
			}
			if len(got) > 3 {
				t.Errorf("%d cautions are too many", len(got))
			}
		})
	}
}

// Each row: the visit, and what to come back for.
func TestWhatToComeBackFor(t *testing.T) {
	for _, row := range []struct {
		what  string
		visit []string
		want  string
	}{
		{"nothing wrong: a year", []string{"62 rear_bibb idle"}, "recheck 365"},
		{"nothing read: nothing", []string{"-gas_smell"}, ""},
		{"what a person asked for stands first", []string{"62 rear_bibb idle", "plan recheck 30"}, "recheck 30"},
		{"a plan without a day", []string{"62 rear_bibb idle", "plan replace_prv"}, "replace_prv 30"},
		{"a doubtful reading: a week", []string{"62 front_bibb"}, "recheck 7"},
		{"a setting: the day after", []string{"95 rear_bibb idle before", "61 rear_bibb idle after", "did set_prv 60"}, "recheck 1"},
		{"within the gauge's error: a month", []string{"79 rear_bibb idle"}, "recheck 30"},
		{"a valve that passes: replace it in a week", []string{"104 rear_bibb idle", "105 street", "prv 2008", "+leak"}, "replace_prv 7"},
		{"no tank: fit one", []string{"62 rear_bibb idle", "prv 2020", "tank none"}, "install_tank 14"},
		{"a failed tank: replace it", []string{"62 rear_bibb idle", "prv 2020", "tank failed"}, "replace_tank 14"},
		{"a relief valve that discharges: tomorrow", []string{"62 rear_bibb idle", "+relief_discharge"}, "recheck 1"},
	} {
		t.Run(row.what, func(t *testing.T) {
			var got []string
			a := seeing(t, row.visit...)
			for _, f := range a.FollowUps {
				if f.Why == "" {
					t.Errorf("%s has no reason", f.Action)
				}
				got = append(got, fmt.Sprint(f.Action, " ", f.InDays))
			}
			for _, want := range strings.Split(row.want, "; ") {
				if want != "" && !slices.Contains(got, want) {
					t.Errorf("%v: %v, want %s", row.visit, got, want)
				}
			}
			if row.want == "" && len(got) > 0 {
				t.Errorf("%v: %v, want nothing", row.visit, got)
			}
		})
	}
}

// Each row: the visit, and the test that tells most next, by its code; empty
// for none.
func TestTheTestThatTellsMost(t *testing.T) {
	for _, row := range []struct {
		what  string
		visit []string
		want  string
	}{
		{"nothing read yet: read the house", []string{"+leak"}, checkHouse},
		{"the main is strong: read the house", []string{"110 street", "prv 2020"}, checkHouse},
		{"the house is high: read the main", []string{"95 rear_bibb idle", "prv 2020"}, checkStreet},
		{"weak flow at a good static: read it flowing", []string{"62 rear_bibb idle", "104 street", "prv 2012", "+low_flow"}, checkFlow},
		{"in the band and nothing wrong: nothing", []string{"60 rear_bibb idle static", "104 street", "52 rear_bibb idle flowing", "62 rear_bibb peak idle", "prv 2022", "tank 4.4gal good",
			"63 rear_bibb firing", "-dark_water", "-creep", "-low_flow", "-leak", "-relief_discharge", "-hammer", "-noise", "-swings"}, ""},
		{"a smell of gas: out, and no test", []string{"95 rear_bibb idle", "+gas_smell"}, ""},
		{"150 psi: stop, and no test", []string{"155 rear_bibb idle"}, ""},
		{"put right: nothing", []string{"95 rear_bibb before", "60 rear_bibb after", "did replaced_prv 60"}, ""},
	} {
		t.Run(row.what, func(t *testing.T) {
			got := ""
			if n := seeing(t, row.visit...).NextCheck; n != nil {
				got = n.Check
			}
			if want := english.checks[row.want].do; got != want {
				t.Errorf("%v: %q, want %q", row.visit, got, want)
			}
		})
	}
	if n := seeing(t, "104 rear_bibb idle", "106 street", "prv 2009", "+leak").NextCheck; n != nil && n.Check == english.checks[checkScrew].do {
		t.Error("the finding says to leave the screw alone, the check to turn it")
	}
	for _, bad := range []string{"+relief_discharge", "+relief_blocked"} {
		if n := seeing(t, "62 rear_bibb idle", "104 street", "prv 2012", bad).NextCheck; n != nil && n.Check == english.checks[checkHeat].do {
			t.Errorf("%s: the heater must not be fired", bad)
		}
	}
}

// A regulator that was told to have failed, to be worn or to weep: nobody is told to turn its screw,
// whatever was read beside it and in whichever order it was told.
func TestTheScrewOfAnUnsoundRegulatorIsLeftAlone(t *testing.T) {
	turns := []string{"small turns", "turn the regulator", "touching the regulator's screw", "turning the screw", "turn it down",
		"vueltas chicas", "gire un poco", "antes de tocar el tornillo", "antes de girar el tornillo"}
	for _, told := range [][]string{{"prv failed"}, {"prv suspect"}, {"prv failed", "prv suspect"}, {"prv suspect", "prv failed"}} {
		for _, read := range [][]string{
			{"88 laundry idle"}, {"88 laundry idle", "120 street"}, {"30 laundry idle"}, {"30 laundry idle", "90 street"},
			{"95 rear_bibb idle", "prv 2008"}, {"did set_prv 88", "88 laundry idle after", "120 street"}, {"did set_prv 30"},
		} {
			for _, lines := range [][]string{slices.Concat(told, read), slices.Concat(read, told)} {
				visit := on(t, today.String(), lines...)
				for _, lang := range []Lang{English, Spanish} {
					a := Assess(Input{Today: today, Visits: []Visit{visit}, Lang: lang})
					said := fmt.Sprint(a.Findings, a.NextCheck)
					if a.NextCheck != nil {
						said += a.NextCheck.Check
					}
					for _, word := range turns {
						if strings.Contains(said, word) {
							t.Errorf("%v: %q is said of a screw that must not be turned: %s", lines, word, said)
						}
					}
					for _, f := range a.FollowUps {
						if f.Action == SetPRV {
							t.Errorf("%v: comes back to turn the screw", lines)
						}
					}
				}
			}
		}
	}
}

// What is told later of the same visit does not soften a regulator that has failed; a new one is sound.
func TestARegulatorStaysFailedUntilItIsReplaced(t *testing.T) {
	leads := func(lines ...string) string { return seeing(t, lines...).Findings[0].Text }
	for _, row := range []struct {
		what  string
		visit []string
		want  string
	}{
		{"frozen screw, then a weeping bonnet", []string{"prv failed", "prv suspect", "88 laundry idle", "120 street"}, "told to have failed"},
		{"only weeping", []string{"prv suspect", "88 laundry idle", "120 street"}, "worn regulator"},
		{"a sound one is turned down", []string{"prv good", "88 laundry idle", "120 street"}, "small turns"},
		{"a new one set too high", []string{"prv failed", "did replaced_prv 88", "88 laundry idle after", "120 street"}, "small turns"},
	} {
		if got := leads(row.visit...); !strings.Contains(got, row.want) {
			t.Errorf("%s: %q, want %q in it", row.what, got, row.want)
		}
	}
}
