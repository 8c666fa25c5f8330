package desk

import (
	"fmt"
	"reflect"
	"regexp"
	"slices"
	"testing"

	"lazyhand/assess"
)

var places = regexp.MustCompile(`%[a-z%]`)

// TestWordsAreComplete holds both languages to the same words: none is empty,
// none has other places to fill in, no code is without a word.
func TestWordsAreComplete(t *testing.T) {
	en, es := reflect.ValueOf(english), reflect.ValueOf(spanish)
	for i := range en.NumField() {
		name := en.Type().Field(i).Name
		same(t, name, en.Field(i), es.Field(i))
	}
}

func same(t *testing.T, name string, en, es reflect.Value) {
	t.Helper()
	switch en.Kind() {
	case reflect.String:
		if en.String() == "" || es.String() == "" {
			t.Errorf("%s is empty in a language", name)
		}
		a, b := places.FindAllString(en.String(), -1), places.FindAllString(es.String(), -1)
		if !slices.Equal(a, b) {
			t.Errorf("%s fills in %v in English and %v in Spanish", name, a, b)
		}
	case reflect.Slice:
		if en.Len() == 0 || en.Len() != es.Len() {
			t.Errorf("%s has %d lines in English and %d in Spanish", name, en.Len(), es.Len())
			return
		}
		for i := range en.Len() {
			same(t, fmt.Sprintf("%s %d", name, i), en.Index(i), es.Index(i))
		}
	case reflect.Map:
		if en.Len() == 0 || en.Len() != es.Len() {
			t.Errorf("%s has %d words in English and %d in Spanish", name, en.Len(), es.Len())
		}
		for _, k := range en.MapKeys() {
			if v := es.MapIndex(k); v.IsValid() {
				same(t, fmt.Sprintf("%s %v", name, k), en.MapIndex(k), v)
			} else {
				t.Errorf("%s lacks %v in Spanish", name, k)
			}
		}
	default:
		t.Errorf("%s is a %s: teach this test about it", name, en.Kind())
	}
}

// TestEveryCodeHasItsWord keeps codes from showing up raw in a reply.
func TestEveryCodeHasItsWord(t *testing.T) {
	for _, c := range []assess.Cause{assess.CauseSound, assess.CauseSetHigh, assess.CauseSetLow, assess.CausePassing, assess.CauseSeatCreep, assess.CauseRestricted,
		assess.CauseElastomer, assess.CauseNoPRV, assess.CauseExpansion, assess.CauseStreetLow, assess.CauseGauge} {
		if english.Cause[c] == "" {
			t.Errorf("cause %s has no word", c)
		}
		if c != assess.CauseSound && english.SendFor[string(c)] == "" {
			t.Errorf("cause %s does not say what to send", c)
		}
	}
	for _, c := range []assess.Caution{assess.CautionScald, assess.CautionRelief, assess.CautionGasOff, assess.CautionHotDrain, assess.CautionTank,
		assess.CautionSlowOpen, assess.CautionBonding, assess.CautionPlastic, assess.CautionDiscoloured, assess.CautionBackflow, assess.CautionGasSmell,
		assess.CautionShutoff, assess.CautionSupportTank, assess.CautionSetting, assess.CautionLocalCode} {
		if english.Caution[c] == "" {
			t.Errorf("caution %s has no words", c)
		}
	}
	for _, a := range []assess.Action{assess.SetPRV, assess.ReplacedPRV, assess.InstalledPRV, assess.RebuiltPRV, assess.InstalledTank, assess.ReplacedTank,
		assess.ChargedTank, assess.FlushedHeater, assess.ReplacedHeater, assess.ReplacedDrainValve, assess.RepairedLeak, assess.ShutOff,
		assess.Recheck, assess.ReplacePRV, assess.InstallTank, assess.ReplaceTank, assess.OtherAction} {
		if english.Action[a] == "" {
			t.Errorf("action %s has no words", a)
		}
	}
}
