package intents

import "testing"

// The skeletons of visit notes: two taps before the work and after it, in lines, rows, pairs and sentences;
// readings over time at one tap; a gauge left overnight.

func TestSkeletonsOfNotesWithTwoTapsBeforeAndAfter(t *testing.T) {
	both := "101 kitchen before; 57 kitchen after; 62 rear_bibb after; 98 rear_bibb before; replaced_prv"
	inFrames(t, [][2]string{{"{}", both}, {"9 Elm St\n{}", both}},
		product([]string{"swapped the prv.", "new prv in."}, []string{"before that", "before", "as found"}, []string{"rear was 98 and kitchen was 101."},
			[]string{"after,", "after that", "as left"}, []string{"rear was 62 and kitchen was 57."}),
		product([]string{"rear 98/62, kitchen 101/57", "rear bib 98/62 / kitchen 101/57"}, []string{"(before/after)", "before/after"}, []string{", swapped the prv", ". new prv in."}),
		product([]string{"as found", "before", "on arrival", "initial"}, []string{"rear/kitchen 98/101,", "rear 98, kitchen 101,", "rear 98 and kitchen 101,"},
			[]string{"as left", "after", "on leaving", "final"}, []string{"62/57,", "62 and 57,"}, []string{"swapped the prv", "prv replaced"}),
		product([]string{"as found: 98/101 (rear/kit)."}, []string{"as left: 62/57.", "after: 62/57."}, []string{"swapped the prv.", "prv replaced"}),
		product([]string{"98 rear and 101 kitchen before, 62 and 57 after"}, []string{", swapped the prv", ". new prv in."}),
		product([]string{"started with 98 at the rear and 101 at the kitchen,"}, []string{"swapped the prv,", "new prv in,"},
			[]string{"ended with 62 at the rear and 57 at the kitchen", "ended up with 62 at the rear and 57 at the kitchen"}))
	inFrames(t, [][2]string{{"{}", both}, {"9 Elm St\n{}", both}}, []string{
		"found:\n- rear 98\n- kitchen 101\nwork:\n- swapped the prv\nleft:\n- rear 62\n- kitchen 57",
		"Started: rear 98, kitchen 101\nswapped the prv\nFinished: rear 62, kitchen 57",
		"before:\n* rear 98\n* kitchen 101\ndid:\n* swapped the prv\nafter:\n* rear 62\n* kitchen 57",
		"found: rear 98, kitchen 101\nwork: swapped the prv\nleft: rear 62, kitchen 57",
	})
}

func TestReadingsOverTimeAtOneTap(t *testing.T) {
	inFrames(t, [][2]string{{"{}", "67 kitchen; 74 kitchen; 83 kitchen"}, {"9 Elm St. {}", "67 kitchen; 74 kitchen; 83 kitchen"}},
		product([]string{"kitchen"}, []string{"at 9 67, at 10 74, at 11 83", "67 at 9:00, 74 at 9:20, 83 at 9:40", "mon 67, tue 74, wed 83", "0 min 67, 10 min 74, 20 min 83"}, []string{"", "."}),
		[]string{"mon kitchen 67, tue 74, wed 83", "9:00 kitchen 67, 9:20 74, 9:40 83"})
	inFrames(t, [][2]string{{"{}", "128 kitchen peak; 72 kitchen"}, {"9 Elm St. {}", "128 kitchen peak; 72 kitchen"}},
		product([]string{"lazy hand on the kitchen overnight.", "left the gauge on the kitchen overnight."}, []string{"high 128,", "max 128,"}, []string{"72 this morning", "now 72", "72 now"}),
		product([]string{"kitchen", "the kitchen"}, []string{"hit", "reached", "got to"}, []string{"128, now 72", "128, 72 now"}))
}

func TestNumbersBesideReadingsThatAreNone(t *testing.T) {
	inFrames(t, [][2]string{{"kitchen 62. {}", "62 kitchen"}, {"{}. 62 at the kitchen", "62 kitchen"}, {"kitchen 62, {}", "62 kitchen"}},
		product([]string{"water bill", "electric bill", "her bill"}, []string{"was", "is", "came to", "ran"}, []string{"140", "140 this month"}),
		product([]string{"code says", "limit is"}, []string{"80 max"}),
		product([]string{"our sheet from", "the old ticket from"}, []string{"2 yrs ago", "2023", "last year"}, []string{"has 64", "says 64"}))
	inFrames(t, [][2]string{{"{}. kitchen 62", "62 kitchen"}, {"kitchen 62. {}", "62 kitchen"}},
		product([]string{"probably", "prob", "prolly", "presumably"}, []string{"60 at the tub", "around 60 at the tub", "60 tub"}))
}

func TestUnitsNamedByALetterAreNoTaps(t *testing.T) {
	inFrames(t, [][2]string{{"{}", "62 kitchen; 64 kitchen"}},
		product([]string{"kitchen A 62", "unit A kitchen 62"}, []string{",", "and"}, []string{"kitchen B 64", "unit B kitchen 64"}))
	inFrames(t, [][2]string{{"{}", "133 front_bibb peak"}},
		product([]string{"front bib", "gauge on the front bib"}, []string{"had been up to 133", "has been up to 133", "had gotten to 133", "had been to 133"}))
}
