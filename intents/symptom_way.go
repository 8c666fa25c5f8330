package intents

import "lazyhand/assess"

// symptomSign is a way of telling a symptom: says is the sign that tells it, needs are
// sets of which one each must stand in the same clause with it, bars what must not.
type symptomSign struct {
	name  assess.SymptomName
	says  signSet
	needs []signSet
	bars  signSet
	near  int  // how many items may lie between; 0 any
	after bool // what is needed stands before it
	close bool // what is needed stands in the same clause
}

// symptomSigns are the ways of telling a symptom, the more definite first; each is
// followed by one of the wordings it stands for.
var symptomSigns = []symptomSign{
	// "the cork is still in the relief", "relief has been isolated"
	{name: assess.ReliefBlocked, says: signBlocked, needs: []signSet{signRelief | signOutlet}},
	// "ball valve between the heater and its relief, and it's shut"
	{name: assess.ReliefBlocked, says: signOff, needs: []signSet{signRelief, signValve}},
	// "safety valve lets go at night"
	{name: assess.ReliefDischarge, says: signLetsGo, needs: []signSet{signRelief}, bars: signBlocked},
	// "gas stink in the basement", "could nose gas"
	{name: assess.GasSmell, says: signSmell, needs: []signSet{signGas}, near: 6},
	// "specks of gasket in her glass", "black goo"
	{name: assess.DarkWater, says: signRubber | signDark, needs: []signSet{signBits}, near: 4},
	// "pepper flakes in the shower"
	{name: assess.DarkWater, says: signDarkly, needs: []signSet{signBits}, near: 2},
	// "a slug of brown"
	{name: assess.RustyWater, says: signRust, needs: []signSet{signBits}, near: 4},
	// "tub fills up charcoal"
	{name: assess.DarkWater, says: signDark, needs: []signSet{signWater | signTap}, bars: signRain},
	{name: assess.RustyWater, says: signRust, needs: []signSet{signWater | signTap}, bars: signRain},
	// "looks like ink coming out the spout"
	{name: assess.DarkWater, says: signDarkly, needs: []signSet{signWater | signTap | signTurns, signLike}},
	{name: assess.RustyWater, says: signRustly, needs: []signSet{signWater | signTap | signTurns, signLike}},
	// "a gray tinge"
	{name: assess.DarkWater, says: signDark, needs: []signSet{signTint}, near: 1},
	{name: assess.RustyWater, says: signRust, needs: []signSet{signTint}, near: 1},
	// "ran it five minutes, never went gray"
	{name: assess.DarkWater, says: signDark, needs: []signSet{signTurns}, near: 3, after: true},
	{name: assess.RustyWater, says: signRust, needs: []signSet{signTurns}, near: 3, after: true},
	// "pipes kick when you flip the lever off", "a gunshot when the dishwasher stops"
	{name: assess.Hammer, says: signBang, needs: []signSet{signPipe | signShuts}},
	// "from firehose to drizzle and back"
	{name: assess.Swings, says: signFaint, needs: []signSet{signFirm}, bars: signRelief},
	// "the needle keeps inching north"
	{name: assess.Creep, says: signClimbs, needs: []signSet{signGauge | signShut}},
	// "the needle hunts", "pressure jumps around"
	{
		name: assess.Swings, says: signUnsteady, needs: []signSet{signGauge | signFlow},
		bars: signPipe | signShuts, near: 5, close: true,
	},
	// "can't run the tub and the washer", "flow is pitiful upstairs", "comes out slow at the tub"
	{name: assess.LowFlow, says: signCantRun, needs: []signSet{signTap | signToilet | signOnce}},
	{
		name: assess.LowFlow, says: signPoor, needs: []signSet{signFlow},
		bars: signAir | signDrain, near: 3, close: true,
	},
	{
		name: assess.LowFlow, says: signSlow, needs: []signSet{signWater | signTap | signFlow | signSupply},
		bars: signAir | signDrain | signClimbs, near: 4, close: true,
	},
	// "the water hardly comes out of the kitchen", "third floor gets next to nothing"
	{
		name: assess.LowFlow, says: signBarely, needs: []signSet{signWater | signTap | signFlow | signWhere},
		bars: signAir | signDrain | signRelief | signClimbs, near: 5, close: true,
	},
	// "puddle on the basement floor"
	{name: assess.Leak, says: signWet, needs: []signSet{signSpot}, bars: signRain | signRelief, near: 4, close: true},
	// "flapper's bad, runs on and on"
	{name: assess.Leak, says: signEndless, needs: []signSet{signToilet | signTap}},
	// "plip plip all night"
	{name: assess.Leak, says: signDrips},
	// "taps are bone dry", "supply's gone dead"
	{name: assess.NoWater, says: signGone, needs: []signSet{signWater | signSupply},
		bars: signHot | signDrips | signHeeds, near: 3, after: true},
	// "zilch at every faucet"
	{name: assess.NoWater, says: signNone, needs: []signSet{signWater | signSupply}, bars: signHot, near: 5},
}

// naming are the signs that name things and say nothing of them.
var naming = signDeny | signWater | signTap | signSupply | signPipe | signTurns | signLike | signAfter | signShuts | signWhen | signThing | signHeeds | signOff | signValve | signFlow | signSpot | signDrain | signAir | signRain | signOnce | signWhere

// met tells whether the clause holds what the rule needs beside the sign at seen[k],
// and where the first of it stands (-1 when it needs nothing).
func (r *symptomSign) met(seen []seenSign, k int) (by int, ok bool) {
	x := seen[k]
	for _, y := range seen {
		if y.set&r.bars != 0 {
			return -1, false
		}
	}
	by = -1
	for n, need := range r.needs {
		at := -1
		for j, y := range seen {
			d := x.at - y.at
			if j == k || y.set&need == 0 || r.near > 0 && abs(d) > r.near || r.after && d < 0 && n == 0 {
				continue
			}
			at = j
			break
		}
		if at < 0 {
			return -1, false
		}
		if n == 0 {
			by = at
		}
	}
	return by, true
}
