package intents

import "slices"

// Behind a pressure that was read, a valve of the house that is opened changes the next one.

var (
	opensValve = set("opened", "reopened", "abri", "abrimos", "abro")
	houseValve = set("main", "mains", "curb", "stop", "shutoff", "valve", "meter", "principal", "valvula", "paso", "medidor")
	foundShut  = set("shut", "closed", "throttled", "cerrada", "cerrado")
	notTheMain = set("relief", "tp", "t&p", "tap", "faucet", "bib", "bibb", "tub", "kitchen", "shower", "drain", "hose", "bypass", "tank",
		"not", "couldn", "don", "didn", "won", "cant", "can", "couldnt", "didnt", "should", "never", "no", "grifo", "regadera", "tanque", "alivio")
)

// ValveOpened tells whether a text, with what its writer said right before it, says that a valve of
// the house was opened: "opened the main all the way", "curb stop was half shut" and "opened it".
func ValveOpened(before, text string) bool {
	words := plainWords(text)
	has := func(words []string, s map[string]bool) bool {
		return slices.ContainsFunc(words, func(w string) bool { return s[w] })
	}
	if !has(words, opensValve) || has(words, notTheMain) {
		return false
	}
	if has(words, houseValve) {
		return true
	}
	earlier := plainWords(before)
	return has(earlier, foundShut) && has(earlier, houseValve) && !has(earlier, notTheMain)
}
