package intents

import (
	"strings"
	"testing"
)

// TestDeedsInEveryForm tells jobs with verbs in all their forms: whatever the form, it is the
// same deed, and one that was not done, or is to be done, is none. The frames and the verbs
// are our own.
func TestDeedsInEveryForm(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	jobs := []struct{ verbs, thing, does, plans string }{
		{"replace/replaced/replaced/replacing|swap out/swapped out/swapped out/swapping out|exchange/exchanged/exchanged/exchanging|renew/renewed/renewed/renewing", "the prv", "replaced_prv", "replace_prv"},
		{"switch out/switched out/switched out/switching out|change out/changed out/changed out/changing out", "the expansion tank", "replaced_tank", "replace_tank"},
		{"flush/flushed/flushed/flushing|purge/purged/purged/purging|descale/descaled/descaled/descaling|flush out/flushed out/flushed out/flushing out", "the water heater", "flushed_heater", "other"},
		{"adjust/adjusted/adjusted/adjusting|turn down/turned down/turned down/turning down|lower/lowered/lowered/lowering|recalibrate/recalibrated/recalibrated/recalibrating|knock down/knocked down/knocked down/knocking down", "the prv", "set_prv", "set_prv"},
		{"rebuild/rebuilt/rebuilt/rebuilding|overhaul/overhauled/overhauled/overhauling", "the prv", "rebuilt_prv", "other"},
		{"fix/fixed/fixed/fixing|mend/mended/mended/mending|patch/patched/patched/patching", "the leak", "repaired_leak", ""},
	}
	told := []string{"{past} {thing}", "i {past} {thing}", "we {past} {thing}", "just {past} {thing}", "went ahead and {past} {thing}",
		"had to {base} {thing}", "ended up {ing} {thing}", "managed to {base} {thing}", "finished {ing} {thing}", "i've {done} {thing}"}
	ahead := []string{"i'll {base} {thing} friday", "coming back friday to {base} {thing}", "remind me to {base} {thing} friday",
		"scheduled to {base} {thing} friday", "plan is to {base} {thing} friday", "we have to {base} {thing} on friday"}
	denied := []string{"didn't {base} {thing}", "couldn't {base} {thing}", "never {past} {thing}", "last guy {past} {thing}"}
	for _, job := range jobs {
		for verb := range strings.SplitSeq(job.verbs, "|") {
			f := strings.Split(verb, "/")
			fill := strings.NewReplacer("{base}", f[0], "{past}", f[1], "{done}", f[2], "{ing}", f[3], "{thing}", job.thing)
			for _, frame := range told {
				if text := fill.Replace(frame); inWords(p.Parse(text, Context{})) != job.does {
					t.Errorf("%q gives %s", text, inWords(p.Parse(text, Context{})))
				}
			}
			for _, frame := range ahead {
				text := fill.Replace(frame)
				if got := inWords(p.Parse(text, Context{})); job.plans != "" && got != "plan "+job.plans+" in 4" {
					t.Errorf("%q gives %s, want plan %s in 4", text, got, job.plans)
				}
			}
			for _, frame := range denied {
				if text := fill.Replace(frame); strings.Contains(inWords(p.Parse(text, Context{})), job.does) && job.does != job.plans {
					t.Errorf("%q gives %s", text, inWords(p.Parse(text, Context{})))
				}
			}
		}
	}
}

// TestRechecksInEveryForm tells the same recheck in many words, on many days.
func TestRechecksInEveryForm(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	days := map[string]string{
		"in two weeks": "14", "in a month": "30", "next month": "30", "in half a year": "180", "tomorrow": "1", "friday": "4", "within a week": "7", "on the 22nd": "7",
	}
	frames := []string{"recheck pressure {day}", "come back {day} to recheck", "remind me to recheck {day}", "need to recheck {day}",
		"look at it again {day}", "coming back {day} to test pressure", "customer wants it rechecked {day}", "follow-up visit {day}",
		"come back {day} and check the pressure", "gauge it again {day}", "another look {day}", "put me down to recheck {day}"}
	for day, n := range days {
		for _, frame := range frames {
			text := strings.ReplaceAll(frame, "{day}", day)
			if got := inWords(p.Parse(text, Context{})); got != "plan recheck in "+n {
				t.Errorf("%q gives %s, want plan recheck in %s", text, got, n)
			}
		}
	}
}

// A new regulator that a pressure is told to be after was put in; what is told beside a deed makes no other of it.
func TestDeedsToldBesideTheirPressures(t *testing.T) {
	says(t, [][2]string{
		{"FRONT DOWN TO 58 AFTER NEW PRV WAS 119", "58 front_bibb after; replaced_prv; 119 front_bibb before"},
		{"58 front after new prv, 119 before", "58 front_bibb after; replaced_prv; 119 front_bibb before"},
		{"62 kitchen, new prv after lunch", "62 kitchen"},
		{"will be 60 after new prv, kitchen 95 now", "plan replace_prv; 95 kitchen"},
		{"flushed the heater, past the prv 63", "flushed_heater; 63 after_prv"},
		{"flushed grit out of the regulator, kitchen 63", "rebuilt_prv; 63 kitchen"},
		{"set the prv to 60, first time this year", "set_prv to 60"},
		{"set the prv to 60, first one here", "installed_prv to 60"},
		{"will flush the heater this month", "ask none"},
		{"flushed the heater this month", "heater maintained 2026"},
		{"heater put in in 2015 with the last service in 2022", "heater year 2015 maintained 2022"},
		{"exp tank came precharged at 40", "expansion_tank"},
		{"precharged the exp tank to 60", "charged_tank to 60"},
	})
}
