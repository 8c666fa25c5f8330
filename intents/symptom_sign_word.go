package intents

import (
	"fmt"
	"strings"
)

// signSet is what a word, or a pair of words, may say of a symptom: "ink" is dark,
// "spout" is where water comes out. Signs that meet in a clause tell a symptom in
// words that no phrase of the lexicon foresees: "looks like ink coming out the spout".
// Each is a bit of the set.
type signSet uint64

// Signs of words; the lines "sign NAME: …" of the lexicon list the words.
const (
	signWater    signSet = 1 << iota // water itself
	signTap                          // where water comes out or is caught: tub, spout, bucket
	signSupply                       // what a house gets its water by: taps, supply, house
	signPipe                         // pipes, and what they run in: copper, wall
	signGauge                        // what shows a pressure: needle, dial
	signRelief                       // the relief valve and its pipe
	signToilet                       // what runs on: john, flapper
	signGas                          // gas
	signSmell                        // stink, whiff
	signDark                         // ink, soot, grey
	signRust                         // tea, orange, rust
	signBits                         // specks, flakes, goo
	signRubber                       // what a hose sheds: rubber, gasket
	signTurns                        // leads to a colour: runs, went, looks
	signLike                         // likens: like, color, "as dark as"
	signTint                         // tinge, cast: of a colour before it
	signDarkly                       // what dark water is likened to: ink, soot
	signRustly                       // what rusty water is likened to: tea, whiskey
	signAfter                        // may follow a colour that is of no thing: out, at, again
	signBang                         // thump, kick, gunshot
	signShuts                        // what makes a bang: closes, flush
	signDrips                        // plip, drip
	signEndless                      // runs on, "won't shut"
	signLetsGo                       // of a relief valve: pops, "lets go"
	signBlocked                      // of a relief valve: corked, isolated
	signValve                        // a valve that does not belong on a relief pipe
	signOff                          // shut, closed
	signFirm                         // blast, firehose
	signFaint                        // drizzle, weak
	signClimbs                       // inching, gaining
	signShut                         // nothing runs: "tap open" with "not one"
	signGone                         // of the supply: dry, quit
	signNone                         // zilch, squat
	signHot                          // only the hot water
	signHeeds                        // asks to be told or to look: "call us if", "see if"
	signWhen                         // only says when: whenever, after
	signThing                        // a noun that is no equipment: tag, elevator
	signDeny                         // not, never, none
	signPoor                         // of a flow: poor, pitiful, "fallen off"
	signFlow                         // what a house wants enough of: pressure, stream
	signSlow                         // slowly
	signDrain                        // drains and traps: what is slow there is no supply
	signAir                          // the air of a tank, whose pressure is none of the water's
	signCantRun                      // "can't run": two things at a time
	signOnce                         // "at once"
	signUnsteady                     // of a pressure: jumps, wavers
	signWet                          // puddle, soaked
	signSpot                         // what should be dry: floor, ceiling
	signRain                         // what else makes wet: rain, mop
	signOutlet                       // the pipe of a relief valve where nothing else says so
	signBarely                       // of water: "hardly comes", "next to nothing"
	signWhere                        // rooms that want water: kitchen, upstairs
)

var signNames = map[string]signSet{
	"water": signWater, "tap": signTap, "supply": signSupply, "pipe": signPipe, "gauge": signGauge, "relief": signRelief,
	"toilet": signToilet, "gas": signGas, "smell": signSmell, "dark": signDark, "rust": signRust, "bits": signBits,
	"rubber": signRubber, "turns": signTurns, "bang": signBang, "shuts": signShuts, "drips": signDrips,
	"endless": signEndless, "letsgo": signLetsGo, "blocked": signBlocked, "valve": signValve, "off": signOff, "firm": signFirm,
	"faint":  signFaint,
	"climbs": signClimbs, "shut": signShut, "gone": signGone, "none": signNone, "hot": signHot, "heeds": signHeeds,
	"thing": signThing, "deny": signDeny,
	"like": signLike, "tint": signTint, "darkly": signDarkly, "rustly": signRustly, "after": signAfter, "when": signWhen,
	"poor": signPoor, "flow": signFlow, "slow": signSlow, "drain": signDrain, "air": signAir, "cantrun": signCantRun, "once": signOnce,
	"unsteady": signUnsteady, "wet": signWet, "spot": signSpot, "rain": signRain, "outlet": signOutlet, "barely": signBarely,
	"where": signWhere,
}

func (s signSet) has(x signSet) bool { return s&x != 0 }

// addSigns keeps a word or a pair of words of a sign line.
func (l *lexicon) addSigns(name, body string) error {
	s, ok := signNames[name]
	if !ok {
		return fmt.Errorf("the lexicon has a sign %q that the parser does not know", name)
	}
	for _, phrase := range strings.Split(body, "|") {
		w := strings.Fields(fold(phrase))
		if len(w) != 1 && len(w) != 2 {
			return fmt.Errorf("the sign %q is not one word or two", phrase)
		}
		if e := l.entry(w[0]); len(w) == 1 {
			e.sign.alone |= s
		} else {
			e.sign.pair(l.entry(w[1]), s)
		}
	}
	return nil
}
