package intents

// factsApart puts a comma where somebody goes on to something else right behind a whole fact, in a message without
// marks: "heater never flushed | prv age unknown", "no tank | rusty water", "swapped the tank | t&p dry",
// "recheck in 6 months | set prv to 60".
func (p *Parser) factsApart(toks []token) []token {
	f := factScan{p: p, toks: toks, thing: -1, end: -1}
	for i := 0; i < len(f.toks); i = f.step(i) {
	}
	return f.toks
}

// factKind is what kind of fact has just been told to its end.
type factKind uint8

const (
	toldState  factKind = iota // how a thing is, or since when: "prv shot", "heater from 2011"
	toldLack                   // that there is none: "no tank"
	toldBuild                  // what it is made for or of: "heater 50 gal gas", "brass drain valve"
	toldDeed                   // what was done: "swapped the tank"
	toldPlan                   // what is to be done: "recheck in 6 months", "needs a prv"
	toldDenied                 // a symptom that is not there: "no leaks"
	toldNumber                 // a tap and its pressure: "laundry 58"
	toldPeak                   // the highest pressure and its tap: "lazy hand 131 rear"
	toldWater                  // what the water or the house has: "rusty water"
)

// factScan goes through a message without marks and knows, at each token, which fact ended right before it.
type factScan struct {
	p    *Parser
	toks []token

	thing      int      // where the name of the last thing ends, -1 for none
	end        int      // where a fact ended, -1 where none did right here
	told       factKind // what kind of fact that was
	heater     bool     // the last thing is a heater
	planned    bool     // a verb of something to be done was told
	datesFirst bool     // "2015 heater 2018 prv"
	peaked     bool     // the highest pressure is told with the number to come
	point      int      // where the name of a tap ends, -1 for none
}

// The classes of words that name a thing, that begin another fact behind one, and that tell how a thing is.
var (
	namesThing   = setOf(cItem, cRelief, cFuel)
	beginsFact   = setOf(cSym, cDid, cFixture)
	tellsHow     = setOf(cCond, cDry, cBlocked)
	leadsToThing = setOf(cDeterminer, cPresent)
	inHouse      = setOf(cFixture, cPipe, cBurner, cState)
	ofTaps       = setOf(cStatic, cFlowing)
	namesTap     = setOf(cPoint, cPlace, cBibb)
	ofObject     = setOf(cDeterminer, cPart, cFuel, cMaterial, cUnit)
)

// step weighs what stands at token i, and returns the next token to weigh.
func (f *factScan) step(i int) int {
	if f.toks[i].kind == number {
		return f.number(i)
	}
	if oneOf(f.toks[i].text, "i", "we") {
		return i + 1 // of what may follow
	}
	node, n := f.p.lex.find(f.toks, i, min(i+5, len(f.toks)))
	if n > 1 && f.heater && f.toks[i-1].kind == word && f.p.has(f.tags(i-1), cUnit, "gal") {
		if alone, _ := f.p.lex.find(f.toks, i, i+1); f.p.lex.kinds(alone).meets(setOf(cFuel)) {
			node, n = alone, 1 // "heater 50 gal gas | gauge creeps"
		}
	}
	if n > 1 && i > 0 && f.toks[i-1].text == "no" && f.tankOnly(i, n) == i+1 {
		node, n = f.p.lex.find(f.toks, i, i+1) // "no tank | heater from 2011"
	}
	kinds := f.p.lex.kinds(node)
	n = max(n, 1)
	if f.end >= 0 && n == 1 && f.leadsOn(i, kinds) {
		return i + 1 // leads to what is named next
	}
	if f.end > 0 && f.begins(i, n, node) {
		f.toks = pauseAt(f.toks, f.end, ",")
		f.planned, f.point, f.thing = false, -1, -1
		i++
	}
	return f.weigh(i, n, node)
}

// leadsOn tells whether the word at i, right behind a fact, belongs to what may follow: "no", "the".
func (f *factScan) leadsOn(i int, kinds classSet) bool {
	return f.toks[i].text == "no" || kinds.meets(leadsToThing) && f.told != toldPlan
}

// begins tells whether another fact begins with the phrase of n tokens at i, right behind one that was told.
func (f *factScan) begins(i, n int, node int32) bool {
	kinds := f.p.lex.kinds(node)
	if f.peakNext(i) {
		return true
	}
	switch f.told {
	case toldNumber:
		return f.water(node) || f.tankAir(i, n, kinds) || f.toDo(i, n, kinds)
	case toldPeak:
		return f.water(node) || f.tankAir(i, n, kinds) || f.tapNext(i)
	case toldWater:
		return kinds.meets(setOf(cItem)) && i+n < len(f.toks) && f.of(i+n).meets(setOf(cState)) // "rusty water | heater idle"
	}
	if f.deed(i, n, node) > 0 || f.needs(i) > 0 || f.told != toldBuild && f.toDo(i, n, kinds) {
		return true
	}
	switch f.told {
	case toldState:
		return kinds.meets(namesThing) || kinds.meets(beginsFact) || kinds.meets(ofTaps)
	case toldLack:
		return kinds.meets(namesThing) || kinds.meets(inHouse) || f.water(node) || f.of(i).meets(setOf(cPipe, cFixture))
	case toldBuild:
		if f.tapNext(i) {
			return !oneOf(f.toks[i].text, "at", "by", "on", "in", "en") // but "bfp at the meter 74"
		}
		return f.heater && (f.water(node) || f.of(i).meets(setOf(cPipe, cFixture)) || f.tankAir(i, n, kinds) ||
			f.p.has(f.p.lex.tags(node), cItem, "gauge"))
	case toldDeed, toldPlan:
		return kinds.meets(setOf(cItem, cRelief)) && (i+n < len(f.toks) || f.lackable(node)) ||
			kinds.meets(setOf(cSym, cFixture, cPipe)) || f.tapNext(i)
	case toldDenied:
		return kinds.meets(setOf(cRelief)) && f.says(i+n) || kinds.meets(setOf(cFixture, cPipe)) ||
			kinds.meets(setOf(cSym)) && n > 1 && f.toks[i-1].text != "no" && !f.listed(i+n)
	}
	return false
}

// says tells whether what stands at i says something of the relief valve named before: but "no tira agua la válvula
// de alivio".
func (f *factScan) says(i int) bool {
	return i < len(f.toks) && (f.p.lex.of(&f.toks[i]).lists.has(listLinks) || f.of(i).meets(setOf(cDischarge, cDry, cBlocked)))
}

// peakNext tells whether the highest pressure is told from i on: "lazy hand 131", "max overnight 128".
func (f *factScan) peakNext(i int) bool {
	k := i
	for k < min(i+5, len(f.toks)) {
		node, n := f.p.lex.find(f.toks, k, min(k+4, len(f.toks)))
		if n == 0 || !f.p.lex.kinds(node).meets(setOf(cPeak)) {
			break
		}
		k += n
	}
	return k > i && f.numberNext(k)
}

// tapNext tells whether a tap and its pressure stand at i: "rear bib 72".
func (f *factScan) tapNext(i int) bool {
	k := i
	for k < min(i+4, len(f.toks)) {
		node, n := f.p.lex.find(f.toks, k, min(k+4, len(f.toks)))
		if n == 0 || !f.p.lex.kinds(node).meets(namesTap) {
			break
		}
		k += n
	}
	return k > i && f.numberNext(k)
}

// lackable tells whether the phrase names what a house may lack, so that to name it is a fact.
func (f *factScan) lackable(node int32) bool {
	item, _ := f.p.value(f.p.lex.tags(node), cItem)
	return oneOf(item, "check_valve", "softener", "recirc", "expansion_tank")
}

// numberNext tells whether a number stands at i: a tap's pressure.
func (f *factScan) numberNext(i int) bool { return i < len(f.toks) && f.toks[i].kind == number }

// listed tells whether a list goes on at i: "no leaks low flow or noise".
func (f *factScan) listed(i int) bool {
	return i < len(f.toks) && oneOf(f.toks[i].text, "or", "nor", "o", "ni")
}

// water tells whether the phrase is a symptom that the water has, or the whole house, and never a thing by itself:
// "no tank | rusty water", but not "no heater leaks".
func (f *factScan) water(node int32) bool {
	s, ok := f.p.value(f.p.lex.tags(node), cSym)
	return ok && oneOf(s, "dark_water", "rusty_water", "low_flow", "swings", "no_water", "gas_smell")
}

// tankAir tells whether the air of a tank is told at i: "rear 72 | tank air 40".
func (f *factScan) tankAir(i, n int, kinds classSet) bool {
	return kinds.meets(setOf(cItem)) && i+n < len(f.toks) && f.p.has(f.tags(i+n), cPart, "air")
}

// toDo tells whether something to be done at a time to come is told from i on: "recheck in 6 months", "replace prv
// next week".
func (f *factScan) toDo(i, n int, kinds classSet) bool {
	if kinds.meets(setOf(cDid)) || !kinds.meets(setOf(cDo)) {
		return false
	}
	for k := i + n; k < min(i+n+5, len(f.toks)); k++ {
		if f.span(k) > 0 {
			return true
		}
	}
	return false
}

// service tells whether the word at i is a service of a heater: "flushed", "flshd".
func (f *factScan) service(i int) bool {
	return i < len(f.toks) && (f.p.lex.of(&f.toks[i]).lists.has(listServices) || f.p.has(f.tags(i), cDid, "flushed"))
}

// since tells where a service ends that the thing named right before i had in a year gone by, 0 for none: "heater
// flushed last year".
func (f *factScan) since(i int) int {
	toks := f.toks
	if f.thing != i || !f.service(i) {
		return 0
	}
	if node, n := f.p.lex.find(toks, i+1, min(i+4, len(toks))); n > 1 && f.p.lex.kinds(node).meets(setOf(cMemory)) {
		return i + 1 + n // "last year"
	}
	return 0
}

// deed tells where a deed ends that is told from i on, its object with it, 0 for none: "swapped the tank", "set prv
// to 62", "shut the water off", "put one in".
func (f *factScan) deed(i, n int, node int32) int {
	toks, tags := f.toks, f.p.lex.tags(node)
	verb := ""
	for _, t := range tags {
		if t.class == cDid && t.value != "checked" {
			verb = t.value
			break
		}
	}
	if f.putOneIn(i, n, node) {
		return i + n
	}
	if verb == "" || i > 0 && f.noDeedBehind(i-1) {
		return 0
	}
	if verb == "shut" {
		if n > 2 || n > 1 && f.thing != i {
			return i + n
		}
		return 0
	}
	named := f.thing != i // but "heater replaced prv ok"
	for k := i + n; k < min(i+n+6, len(toks)); {
		if toks[k].kind == number {
			k++
			continue
		}
		node, m := f.p.lex.find(toks, k, min(k+5, len(toks)))
		kinds := f.p.lex.kinds(node)
		switch {
		case kinds.meets(setOf(cItem)), verb == "fixed" && kinds.meets(setOf(cSym)):
			end := f.toNumber(f.tankOnly(k, m), verb == "set" || verb == "charged")
			if named || end > k+m {
				return end
			}
			return 0
		case kinds.meets(ofObject):
			named = named || kinds.meets(setOf(cDeterminer))
		default:
			return 0
		}
		k += max(m, 1)
	}
	return 0
}

// tankOnly returns where the name of a thing ends that takes n tokens from i on, and ends the tank's before a heater of
// which something is told: "swapped the tank | heater firing".
func (f *factScan) tankOnly(i, n int) int {
	if n < 2 || f.toks[i].text != "tank" || i+n >= len(f.toks) {
		return i + n
	}
	next := &f.toks[i+n]
	if next.kind == number || next.text == "never" || f.p.lex.of(next).lists.has(listLeadsToDate) || f.service(i+n) ||
		f.of(i+n).meets(setOf(cState, cFuel, cDid)) {
		return i + 1
	}
	return i + n
}

// putOneIn tells whether the phrase tells that somebody put in the thing that was named before: "no prv so I put one
// in".
func (f *factScan) putOneIn(i, n int, node int32) bool {
	return n >= 3 && i > 0 && oneOf(f.toks[i-1].text, "i", "we", "so", "just") && oneOf(f.toks[i+n-2].text, "one", "it") &&
		f.p.has(f.p.lex.tags(node), cDo, "install")
}

// toNumber returns where "to 60" ends that may stand at i, or i; "at 60" too of what is set, but "swapped the prv at
// 75 Heater Hill".
func (f *factScan) toNumber(i int, set bool) int {
	if i+1 >= len(f.toks) || f.toks[i+1].kind != number || !oneOf(f.toks[i].text, "to", "a") && !(set && oneOf(f.toks[i].text, "at", "en", "@")) {
		return i
	}
	if i+2 < len(f.toks) && f.p.has(f.tags(i+2), cUnit, "psi") {
		return i + 3
	}
	return i + 2
}

// noDeedBehind tells whether the word at i makes a verb behind it something that was not done, or was by others.
func (f *factScan) noDeedBehind(i int) bool {
	if oneOf(f.toks[i].text, "to", "be", "been", "was", "were", "is", "are", "get", "got", "has", "have", "had", "when", "after", "before",
		"since", "who", "and", "if", "until") {
		return true
	}
	node, n := f.p.lex.find(f.toks, i, i+1)
	return n > 0 && f.p.lex.kinds(node).meets(setOf(cNeg, cWill))
}

// toDoIt returns where "to swap it" ends that may stand at i, behind a day, or i.
func (f *factScan) toDoIt(i int) int {
	if i+2 >= len(f.toks) || !oneOf(f.toks[i].text, "to", "and") {
		return i
	}
	node, n := f.p.lex.find(f.toks, i+1, min(i+4, len(f.toks)))
	if !f.p.lex.kinds(node).meets(setOf(cDo)) {
		return i
	}
	for k := i + n; k <= i+1+n && k < len(f.toks); k++ { // "replace it" is a phrase
		if oneOf(f.toks[k].text, "it", "that", "them") {
			return k + 1
		}
	}
	return i
}

// needs tells where a need of a thing ends that is told from i on, 0 for none: "needs a new prv".
func (f *factScan) needs(i int) int {
	toks := f.toks
	switch toks[i].text {
	case "needs", "need", "necesita", "ocupa":
	default:
		return 0
	}
	for k := i + 1; k < min(i+5, len(toks)) && toks[k].kind == word; {
		node, m := f.p.lex.find(toks, k, min(k+5, len(toks)))
		kinds := f.p.lex.kinds(node)
		switch {
		case kinds.meets(setOf(cItem)):
			return f.tankOnly(k, m)
		case !kinds.meets(ofObject):
			return 0
		}
		k += max(m, 1)
	}
	return 0
}

// number weighs the number at i, the year or the age of the last thing or a tap's pressure, and returns the next token
// to weigh.
func (f *factScan) number(i int) int {
	toks := f.toks
	ours := year(toks[i].num.value)
	f.datesFirst = f.datesFirst || f.thing < 0 && (ours || f.yearsOld(i+1) > 0)
	f.end = -1
	switch {
	case ours && f.thing >= 0 && !f.datesFirst && (f.thing == i || f.p.lex.of(&toks[i-1]).lists.has(listLeadsToDate)):
		f.tell(toldState, i+1)
	case f.thing == i && !f.datesFirst && f.yearsOld(i+1) > 0:
		f.tell(toldState, f.yearsOld(i+1))
		return f.end
	case f.point == i && i > 0:
		f.tell(toldNumber, i+1)
	}
	return i + 1
}

// yearsOld returns where the unit of an age ends that stands at i, 0 for none: "yrs old".
func (f *factScan) yearsOld(i int) int {
	if i >= len(f.toks) {
		return 0
	}
	node, n := f.p.lex.find(f.toks, i, min(i+3, len(f.toks)))
	if !f.p.has(f.p.lex.tags(node), cUnit, "year") {
		return 0
	}
	return i + n
}

// tell notes that a fact has been told up to end.
func (f *factScan) tell(t factKind, end int) { f.told, f.end = t, end }

// weigh notes what the phrase of n tokens at i says, and returns the next token to weigh.
func (f *factScan) weigh(i, n int, node int32) int {
	toks := f.toks
	kinds := f.p.lex.kinds(node)
	if kinds.meets(setOf(cDo)) {
		f.planned = true
	}
	if kinds.meets(namesTap) {
		f.point = i + n
	}
	if end := f.deed(i, n, node); end > 0 {
		f.tell(toldDeed, end)
		f.thing = -1
		return end
	}
	if end := f.needs(i); end > 0 {
		f.tell(toldPlan, end)
		f.planned, f.thing = true, -1
		return end
	}
	if end := f.span(i + n - 1); end > 0 && f.planned { // behind "back in" too
		f.tell(toldPlan, f.toDoIt(end))
		return f.end
	}
	if end := f.since(i); end > 0 {
		f.tell(toldState, end)
		return end
	}
	if end := f.toNumber(i+n, true); f.thing == i && end > i+n && f.p.has(f.p.lex.tags(node), cDid, "set") {
		f.tell(toldState, end) // "prv set to 60"
		return end
	}
	if n > 1 && f.water(node) && (i == 0 || toks[i-1].text != "no") {
		f.tell(toldWater, i+n)
		return i + n
	}
	if kinds.meets(namesTap) && f.peaked && i > 0 && toks[i-1].kind == number {
		f.peaked = false
		f.tell(toldPeak, i+n)
		return i + n
	}
	f.peaked = kinds.meets(setOf(cPeak))
	switch {
	case kinds.meets(namesThing):
		f.name(i, n, node)
	case i > 0 && toks[i-1].text == "no" && kinds.meets(setOf(cSym)):
		f.tell(toldDenied, i+n)
	case toks[i].text == "never" && f.service(i+1):
		n = 2
		f.tell(toldState, i+n)
	case f.thing < 0:
		f.end = -1
	case kinds.meets(setOf(cUnknown)), kinds.meets(tellsHow) && (f.thing == i || f.p.lex.of(&toks[i-1]).lists.has(listLinks)):
		f.tell(toldState, i+n)
	default:
		f.end = -1
	}
	return i + n
}

// name notes the thing that is named at i.
func (f *factScan) name(i, n int, node int32) {
	kinds := f.p.lex.kinds(node)
	k := i
	if k > 1 && oneOf(f.toks[k-1].text, "exp", "xp", "expn", "expan", "expansion") {
		k-- // "no exp tnk"
	}
	lacks := f.toks[i].text == "no" || k > 0 && f.toks[k-1].text == "no"
	build := i > 0 && f.toks[i-1].kind == word && f.of(i-1).meets(setOf(cMaterial, cFuel)) || kinds.meets(setOf(cFuel)) && f.heater && f.thing > 0
	f.heater = kinds.meets(setOf(cFuel)) && f.heater || f.p.has(f.p.lex.tags(node), cItem, "heater")
	f.thing, f.end = i+n, -1
	switch {
	case lacks && !f.heater: // but "no heater firing"
		f.tell(toldLack, f.thing)
	case build, f.lackable(node):
		f.tell(toldBuild, f.thing)
	}
}

// tags and of return the tags and classes of the phrase at i.
func (f *factScan) tags(i int) []tag {
	tags, _ := f.p.lex.match(f.toks, i, min(i+5, len(f.toks)))
	return tags
}

func (f *factScan) of(i int) classSet {
	node, _ := f.p.lex.find(f.toks, i, i+1)
	return f.p.lex.kinds(node)
}

// span tells where a time from now on ends that is told from i on, 0 for none: "in 6 months", "in a week", "next
// week".
func (f *factScan) span(i int) int {
	toks := f.toks
	days := func(k int) bool {
		if k >= len(toks) {
			return false
		}
		unit, _ := f.p.value(f.tags(k), cUnit)
		return unitDays(unit) > 0
	}
	switch e := f.p.lex.of(&toks[i]); {
	case e.lists.has(listNext) && days(i+1):
		return i + 2
	case e.lists.has(listTomorrow):
		return i + 1
	case e.keys&keyDay != 0 && isWeekday(toks[i].text):
		return i + 1
	case oneOf(toks[i].text, "in", "en") && i+1 < len(toks) && (toks[i+1].kind == number || f.p.lex.of(&toks[i+1]).lists.has(listOne)) && days(i+2):
		return i + 3
	}
	return 0
}
