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
	{name: assess.ReliefBlocked, says: signs(signBlocked), needs: []signSet{signs(signRelief, signOutlet)}},
	// "ball valve between the heater and its relief, and it's shut"
	{name: assess.ReliefBlocked, says: signs(signOff), needs: []signSet{signs(signRelief), signs(signValve)}},
	// "safety valve lets go at night"
	{name: assess.ReliefDischarge, says: signs(signLetsGo), needs: []signSet{signs(signRelief)}, bars: signs(signBlocked)},
	// "gas stink in the basement", "could nose gas"
	{name: assess.GasSmell, says: signs(signSmell), needs: []signSet{signs(signGas)}, near: 6},
	// "specks of gasket in her glass", "black goo"
	{name: assess.DarkWater, says: signs(signRubber, signDark), needs: []signSet{signs(signBits)}, near: 4},
	// "pepper flakes in the shower"
	{name: assess.DarkWater, says: signs(signDarkly), needs: []signSet{signs(signBits)}, near: 2},
	// "a slug of brown"
	{name: assess.RustyWater, says: signs(signRust), needs: []signSet{signs(signBits)}, near: 4},
	// "tub fills up charcoal"
	{name: assess.DarkWater, says: signs(signDark), needs: []signSet{signs(signWater, signTap)}, bars: signs(signRain)},
	{name: assess.RustyWater, says: signs(signRust), needs: []signSet{signs(signWater, signTap)}, bars: signs(signRain)},
	// "looks like ink coming out the spout"
	{name: assess.DarkWater, says: signs(signDarkly), needs: []signSet{signs(signWater, signTap, signTurns), signs(signLike)}},
	{name: assess.RustyWater, says: signs(signRustly), needs: []signSet{signs(signWater, signTap, signTurns), signs(signLike)}},
	// "a gray tinge"
	{name: assess.DarkWater, says: signs(signDark), needs: []signSet{signs(signTint)}, near: 1},
	{name: assess.RustyWater, says: signs(signRust), needs: []signSet{signs(signTint)}, near: 1},
	// "ran it five minutes, never went gray"
	{name: assess.DarkWater, says: signs(signDark), needs: []signSet{signs(signTurns)}, near: 3, after: true},
	{name: assess.RustyWater, says: signs(signRust), needs: []signSet{signs(signTurns)}, near: 3, after: true},
	// "pipes kick when you flip the lever off", "a gunshot when the dishwasher stops"
	{name: assess.Hammer, says: signs(signBang), needs: []signSet{signs(signPipe, signShuts)}},
	// "from firehose to drizzle and back"
	{name: assess.Swings, says: signs(signFaint), needs: []signSet{signs(signFirm)}, bars: signs(signRelief)},
	// "the needle keeps inching north"
	{name: assess.Creep, says: signs(signClimbs), needs: []signSet{signs(signGauge, signShut)}},
	// "the needle hunts", "pressure jumps around"
	{
		name: assess.Swings, says: signs(signUnsteady), needs: []signSet{signs(signGauge, signFlow)},
		bars: signs(signPipe, signShuts), near: 5, close: true,
	},
	// "can't run the tub and the washer", "flow is pitiful upstairs", "comes out slow at the tub"
	{name: assess.LowFlow, says: signs(signCantRun), needs: []signSet{signs(signTap, signToilet, signOnce)}},
	{
		name: assess.LowFlow, says: signs(signPoor), needs: []signSet{signs(signFlow)},
		bars: signs(signAir, signDrain), near: 3, close: true,
	},
	{
		name: assess.LowFlow, says: signs(signSlow), needs: []signSet{signs(signWater, signTap, signFlow, signSupply)},
		bars: signs(signAir, signDrain, signClimbs), near: 4, close: true,
	},
	// "the water hardly comes out of the kitchen", "third floor gets next to nothing"
	{
		name: assess.LowFlow, says: signs(signBarely), needs: []signSet{signs(signWater, signTap, signFlow, signWhere)},
		bars: signs(signAir, signDrain, signRelief, signClimbs), near: 5, close: true,
	},
	// "puddle on the basement floor"
	{name: assess.Leak, says: signs(signWet), needs: []signSet{signs(signSpot)}, bars: signs(signRain, signRelief), near: 4, close: true},
	// "flapper's bad, runs on and on"
	{name: assess.Leak, says: signs(signEndless), needs: []signSet{signs(signToilet, signTap)}},
	// "plip plip all night"
	{name: assess.Leak, says: signs(signDrips)},
	// "taps are bone dry", "supply's gone dead"
	{name: assess.NoWater, says: signs(signGone), needs: []signSet{signs(signWater, signSupply)},
		bars: signs(signHot, signDrips, signHeeds), near: 3, after: true},
	// "zilch at every faucet"
	{name: assess.NoWater, says: signs(signNone), needs: []signSet{signs(signWater, signSupply)}, bars: signs(signHot), near: 5},
}

// naming are the signs that name things and say nothing of them.
var naming = signs(signDeny, signWater, signTap, signSupply, signPipe, signTurns, signLike, signAfter, signShuts, signWhen,
	signThing, signHeeds, signOff, signValve, signFlow, signSpot, signDrain, signAir, signRain, signOnce, signWhere)

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
