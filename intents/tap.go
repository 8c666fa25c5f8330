package intents

import (
	"regexp"
	"strings"

	"lazyhand/assess"
)

// tapAgain is how the test point of an earlier message is named again.
var tapAgain = regexp.MustCompile(`(?i)(?:\b(?:at|on|from|off|en|de|del) )?(?:\b(?:the|that|la|el|esa|ese) )?\b(?:same|misma|mismo|mesma) ` +
	`(?:(?:tap|bibb?|hose bibb?|faucet|spigot|llave|pila|toma|manguera|grifo|chorro)|` +
	`(spot|place|point|lugar|punto|lado))\b( (?:de|del|as|in|on|at|en)\b)?`)

// TapAgain tells whether a text names the test point of an earlier message again, and
// whether it calls it a tap, which the street side has none: "same tap", "64 misma llave".
func TapAgain(text string) (again, tap bool) {
	low := strings.ToLower(text)
	if !strings.Contains(low, "same ") && !strings.Contains(low, "mism") && !strings.Contains(low, "mesma ") {
		return false, false
	}
	at := tapAgain.FindStringSubmatchIndex(text)
	return at != nil && at[4] < 0, at != nil && at[2] < 0
}

// tapWords name a test point where it stands for "same tap", in English and Spanish.
var tapWords = map[assess.TestPoint][2]string{
	assess.FrontBibb:   {"front bibb", "llave de enfrente"},
	assess.RearBibb:    {"rear bibb", "llave de atrás"},
	assess.SideBibb:    {"side bibb", "llave del costado"},
	assess.Bibb:        {"hose bibb", "llave de manguera"},
	assess.Laundry:     {"laundry", "lavadora"},
	assess.HeaterDrain: {"heater drain", "drenaje del calentador"},
	assess.Kitchen:     {"kitchen", "cocina"},
	assess.Bath:        {"tub", "tina"},
	assess.Street:      {"meter", "medidor"},
	assess.AfterPRV:    {"after the PRV", "después de la reguladora"},
	assess.Irrigation:  {"irrigation", "riego"},
}

// nameTap writes out the test point that "same tap" stands for.
func nameTap(text string, tap assess.TestPoint) string {
	again, _ := TapAgain(text)
	words, known := tapWords[tap]
	if !again || !known {
		return text
	}
	at := tapAgain.FindStringIndex(text)
	w := words[1]
	if strings.Contains(strings.ToLower(text[at[0]:at[1]]), "same ") {
		w = words[0]
	}
	return text[:at[0]] + w + text[at[1]:]
}
