package intents

import (
	"regexp"
	"strings"
)

// Taps that are counted beside a number run, they are not where it was read: "60 one shower, 51 two
// showers going", "61 one hose, 52 both".

const (
	countedTap  = `(?:shower|hose|tub|bath|faucet|sink|tap|spigot|bibb?|sprinkler|regadera|ducha|manguera|llave|grifo|tina)`
	countedRuns = `(?: (?:running|going|on|open|opened|flowing|abiertas?|abiertos?|prendidas?))?`
)

// countedTaps is a number with one tap and one with two, in this order.
var countedTaps = regexp.MustCompile(`(?i)\b(\d{2,3}(?:\.\d+)?(?: ?psi| libras)?) (?:with |w/ ?|con )?(one|1|una|un) ` + countedTap + countedRuns +
	`([,;/ ]+(?:and |then |y |luego )?)(\d{2,3}(?:\.\d+)?(?: ?psi| libras)?) (?:with |w/ ?|con )?(?:both|two|2|dos|ambas|ambos)(?: ` + countedTap + `s)?` + countedRuns +
	`(\s*(?:$|[,.;\n]))`)

// runCounted tells of counted taps in a text that they run.
func runCounted(text string) string {
	if !strings.Contains(text, " both") && !strings.Contains(text, " two") && !strings.Contains(text, " 2 ") && !strings.Contains(text, " dos") && !strings.Contains(text, " amb") {
		return text
	}
	at := countedTaps.FindStringSubmatch(text)
	if at == nil {
		return text
	}
	one, two := "with one tap running", "with two taps running"
	if strings.HasPrefix(strings.ToLower(at[2]), "un") {
		one, two = "con una llave abierta", "con dos llaves abiertas"
	}
	return strings.Replace(text, at[0], at[1]+" "+one+at[3]+at[4]+" "+two+at[5], 1)
}
