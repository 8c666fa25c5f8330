package desk

import (
	"testing"

	"lazyhand/assess"
)

func TestChosenLanguage(t *testing.T) {
	for text, want := range map[string]assess.Lang{"español": assess.Spanish, " Español. ": assess.Spanish, "en español": assess.Spanish, "English": assess.English, "inglés": assess.English} {
		if got, ok := chosenLanguage(text); !ok || got != want {
			t.Errorf("%q chooses %q, %v", text, got, ok)
		}
	}
	for _, text := range []string{"", "the customer speaks Spanish", "12 Spanish Oak Ln"} {
		if got, ok := chosenLanguage(text); ok {
			t.Errorf("%q chooses %q", text, got)
		}
	}
}
