package assess

import (
	"regexp"
	"slices"
	"strings"
	"testing"
)

var placeholder = regexp.MustCompile(`\{[a-z]+\}`)

func placeholders(s string) []string {
	p := placeholder.FindAllString(s, -1)
	slices.Sort(p)
	return slices.Compact(p)
}

// Both languages say the same things with the same numbers.
func TestBothLanguagesSayTheSame(t *testing.T) {
	for key, en := range english.findings {
		es, ok := spanish.findings[key]
		if !ok {
			t.Errorf("%s is not said in Spanish", key)
			continue
		}
		if a, b := placeholders(en.text), placeholders(es.text); !slices.Equal(a, b) {
			t.Errorf("%s: text holds %v in English, %v in Spanish", key, a, b)
		}
		if a, b := placeholders(en.basis), placeholders(es.basis); !slices.Equal(a, b) {
			t.Errorf("%s: basis holds %v in English, %v in Spanish", key, a, b)
		}
	}
	for name, keys := range map[string][2][]string{
		"findings":   {keysOf(english.findings), keysOf(spanish.findings)},
		"checks":     {keysOf(english.checks), keysOf(spanish.checks)},
		"follow-ups": {keysOf(english.followUps), keysOf(spanish.followUps)},
	} {
		if !slices.Equal(keys[0], keys[1]) {
			t.Errorf("%s: %v in English, %v in Spanish", name, keys[0], keys[1])
		}
	}
}

func keysOf[V any](m map[string]V) []string {
	var out []string
	for k := range m {
		out = append(out, k)
	}
	slices.Sort(out)
	return out
}

// A finding is one plain sentence and one line of basis.
func TestAFindingIsOneSentence(t *testing.T) {
	for _, table := range []*wordTable{&english, &spanish} {
		for key, w := range table.findings {
			if !strings.HasSuffix(w.text, ".") || strings.Contains(w.text, ". ") || strings.Contains(w.text, "\n") {
				t.Errorf("%s is not one sentence: %q", key, w.text)
			}
			if len([]rune(w.text)) > 190 {
				t.Errorf("%s has %d letters: %q", key, len([]rune(w.text)), w.text)
			}
			if w.basis == "" || strings.Contains(w.basis, "\n") {
				t.Errorf("%s has no basis of one line", key)
			}
		}
	}
}

// Every code has its words, and every wording belongs to a code.
func TestEveryCodeHasWords(t *testing.T) {
	all := FindingCodes()
	for _, code := range all {
		used := false
		for key := range english.findings {
			used = used || key == code || strings.HasPrefix(key, code+".")
		}
		if !used {
			t.Errorf("%s has no words", code)
		}
	}
	for key := range english.findings {
		code, _, _ := strings.Cut(key, ".")
		if !slices.Contains(all, code) {
			t.Errorf("words for %s, which no rule gives", key)
		}
	}
	for i := range tableChecks {
		if _, ok := english.checks[tableChecks[i].code]; !ok {
			t.Errorf("check %s has no words", tableChecks[i].code)
		}
	}
}

// Advice never sends a tech beyond the licence, and the gravest findings say
// what to do now.
func TestSafetyInWords(t *testing.T) {
	for key, must := range map[string][]string{
		"gas_smell":             {"out", "gas utility", "outside"},
		"relief_blocked":        {"Heater off", "licensed plumber"},
		"over_relief":           {"shut the supply", "heater off", "licensed plumber now"},
		"over_relief.discharge": {"never plug"},
		"not_regulating":        {"holding"},
		"high.no_prv":           {"local code"},
	} {
		for _, m := range must {
			if !strings.Contains(english.findings[key].text, m) {
				t.Errorf("%s does not say %q: %q", key, m, english.findings[key].text)
			}
		}
	}
	for _, age := range []string{"prv_near_age", "prv_past_age"} {
		if strings.Contains(english.findings[age].text, "replace") {
			t.Errorf("%s condemns a valve for its age", age)
		}
	}
}

// Numbers are rounded as the gauge deserves, and every gap in a text is filled.
func TestNumbersInWords(t *testing.T) {
	a := seeing(t, "92.4 rear_bibb idle", "106.3 street", "prv 2009", "tank none", "heater 50gal", "+hammer", "+dark_water", "60.5 kitchen flowing")
	for _, f := range a.Findings {
		if strings.ContainsAny(f.Text+f.Basis, "{}") {
			t.Errorf("%s has a gap: %q %q", f.Code, f.Text, f.Basis)
		}
	}
	if high := findingOf(a, "high"); !strings.Contains(high.Text, "92 ± 3 psi") {
		t.Errorf("a grade B gauge deserves whole psi: %q", high.Text)
	}
	fine := Assess(Input{Today: today, Shop: Shop{Gauge: GaugeSpec{Grade: "4A", SpanPSI: 160}}, Visits: []Visit{on(t, "2026-06-15", "92.4 rear_bibb idle")}})
	if high := findingOf(fine, "high"); !strings.Contains(high.Text, "92.4") {
		t.Errorf("a grade 4A gauge deserves tenths: %q", high.Text)
	}
}

func findingOf(a Assessment, code string) Finding {
	for _, f := range a.Findings {
		if f.Code == code {
			return f
		}
	}
	return Finding{}
}
