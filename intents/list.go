package intents

import (
	"fmt"
	"strings"
)

// A list is words and phrases that one rule knows by their letters, as the lexicon spells
// them. It stands in the lexicon, "list ended: gone | quit", and gives its words no
// meaning; what means the same to many rules is a class.
type list uint8

const (
	listWeak         list = iota // "low", "poor": of water
	listRises                    // "climbs": of a needle
	listNoWaterOf                // "no water hammer": not of the supply
	listDial                     // "tstat": what a heater is set by
	listWarmBehind               // "out here": what is warm, told after them
	listWarmBefore               // "water", "attic": what is warm, told before the degrees
	listNone                     // "leaks: none"
	listDenial                   // "no", "without": before what is denied
	listDenies                   // "customer denies": with a verb
	listDenialGoes               // what stands between a denial and what it denies: "no sign of a"
	listEnded                    // "the banging quit"
	listStops                    // "won't stop dripping": what is denied is the end of it
	listOfGas                    // "gas line": no fuel of a heater
	listBut                      // "no black water but the kitchen leaks"
	listToRelief                 // "out of the": between what drips and the relief
	listVessel                   // "the pan": where no water is wanted
	listOfPressure               // "needle": what swings or is low
	listCleans                   // "cleared": no rebuilding unless of a PRV
	listFlushedOther             // "flushed the mains"
	listShutHere                 // "shut off at the curb"
	listPronoun                  // "la cambié": before a verb
	listHadNone                  // "there was none": of a part
	listWeakCond                 // "good", "off": conditions of what stands close by only
	listSaidOf                   // "is", "dated": lead from a thing to its fact
	listGaugeShows               // "slow": of what a gauge shows, no doubt about the gauge
	listRefersBack               // "it", "tag": of the thing told before
	listItsA                     // "it's a": of the thing told before, where a year follows
	listThisOne                  // "ours is fine"
	listPays                     // "charged the customer"
	listBeforeSet                // "prv is still at factory pressure, set 55": between a part and "set"
	listKeeps                    // "they have it set at 75"
	listSomebody                 // who has it so
	listTomorrow                 // as it is written
	listOpensDay                 // "next", "half a": begin a day or a span
	listOne                      // "a", "another": before a unit of time
	listYearlyJob                // "yearly check": the visit itself
	listBeforeDay                // "on the 19th"
	listBeforeDate               // "on 6/18"
	listTankDay                  // "tank day": hardly a tank
	listThisHouse                // "this place don't"
	listHouseSystem              // "no gauge on this house"
	listOfPart                   // "no regulator setting": what is denied of a thing
	listLacks                    // "without": before a thing that there is none of
	listNegates                  // "doesn't have a"
	listPutIn                    // "never put one in"
	listToLacked                 // between a denial and the thing: "no thermal expansion tank"
	listHaveOne                  // between "not" and the thing: "haven't seen a"
	listToAbsent                 // between a thing and its denial: "tank at the meter: none"
	listNoneThere                // "exp tank none"
	listAnswersNone              // "prv? never had one"
	listAfterIn                  // "new reg in today"
	listOpen                     // "wide open": of a tap
	listShut                     // "turned off": of taps
	listSlipDenies               // "91, not 81"
	listSlipWrote                // "I put 81"
	listSlipShould               // "should be 91"
	listSlipSorry                // "oops", "make it"
	listSlipMore                 // "and": more than a correction
	listSinceThen                // "house 1998", "since 2009": before a year of something else
	listBeforeClock              // "arrived 7 50"
	listHowIs                    // "how's 12 Elm"
	listAfterHouse               // "doing", "these days": beside a house that is asked after
	listMoneyHead                // "labor": heads a sum
	listMoney                    // "paid": before a sum
	lists                        // how many there are
)

var listNames = [lists]string{
	listWeak: "weak", listRises: "rises", listNoWaterOf: "nowaterof", listNone: "none", listDenial: "denial",
	listDial:       "dial",
	listWarmBehind: "warmbehind",
	listWarmBefore: "warmbefore",
	listDenies:     "denies", listDenialGoes: "denialgoes", listEnded: "ended", listBut: "but", listToRelief: "torelief",
	listStops: "stops", listOfGas: "ofgas",
	listVessel: "vessel", listOfPressure: "ofpressure", listCleans: "cleans", listFlushedOther: "flushedother",
	listShutHere: "shuthere", listPronoun: "pronoun", listHadNone: "hadnone", listWeakCond: "weakcond",
	listSaidOf: "saidof", listGaugeShows: "gaugeshows", listRefersBack: "refersback", listItsA: "itsa",
	listThisOne: "thisone", listPays: "pays", listBeforeSet: "beforeset", listKeeps: "keeps", listSomebody: "somebody",
	listTomorrow: "tomorrow", listOpensDay: "opensday", listOne: "one", listYearlyJob: "yearlyjob",
	listBeforeDay: "beforeday", listBeforeDate: "beforedate", listTankDay: "tankday", listThisHouse: "thishouse",
	listHouseSystem: "housesystem", listOfPart: "ofpart", listLacks: "lacks", listNegates: "negates", listPutIn: "putin",
	listToLacked: "tolacked", listHaveOne: "haveone", listToAbsent: "toabsent", listNoneThere: "nonethere",
	listAnswersNone: "answersnone", listAfterIn: "afterin",
	listOpen: "open", listShut: "shut",
	listSlipDenies: "slipdenies", listSlipWrote: "slipwrote", listSlipShould: "slipshould", listSlipSorry: "slipsorry",
	listSlipMore: "slipmore", listSinceThen: "sincethen", listBeforeClock: "beforeclock",
	listHowIs: "howis", listAfterHouse: "afterhouse", listMoneyHead: "moneyhead", listMoney: "money",
}

// addList keeps the words of a list line.
func (l *lexicon) addList(name, body string) error {
	for x, n := range listNames {
		if n != name {
			continue
		}
		if l.lists[x] == nil {
			l.lists[x] = phraseSet{}
		}
		for phrase := range strings.SplitSeq(body, "|") {
			l.lists[x][fold(strings.TrimSpace(phrase))] = true
		}
		return nil
	}
	return fmt.Errorf("there is no list %q", name)
}

// listSet is a set of lists, one bit each.
type listSet uint64

// There is one bit for every list; a 65th list does not compile.
const _ = uint(64 - lists)

func (s listSet) has(x list) bool { return s>>x&1 != 0 }

// inList tells whether item i reads as one of a list.
func (m *message) inList(i int, x list) bool {
	return i >= 0 && i < len(m.items) && m.items[i].lists.has(x)
}
