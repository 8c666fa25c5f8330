package intents

import (
	"slices"
	"strings"
	"testing"
)

// said is a phrase of a grid and what it should be read as.
type said struct{ phrase, want string }

// framed is a place in which a phrase of a grid is written, with what stands beside it.
type framed struct{ text, beside, site string }

// framedParts are the messages that a phrase is put into: by itself, behind a reading, before it, and
// between a reading and a house.
var framedParts = []framed{
	{"{}", "", ""},
	{"64 kitchen, {}", "64 kitchen", ""},
	{"{}. 64 kitchen", "64 kitchen", ""},
	{"kitchen 64 - {} - 9 Elm St", "64 kitchen", "9 Elm St"},
}

// readPhrases puts each phrase into one frame, all frames by turns, and compares the whole frame read.
func readPhrases(t *testing.T, phrases []said, frames []framed) {
	t.Helper()
	if len(phrases) > 3000 {
		t.Fatalf("%d phrases are too many for one test", len(phrases))
	}
	p, err := oneParser()
	if err != nil {
		t.Fatal(err)
	}
	for n, c := range phrases {
		in := frames[n%len(frames)]
		text := strings.Replace(in.text, "{}", c.phrase, 1)
		want := slices.DeleteFunc([]string{c.want, in.beside}, func(s string) bool { return s == "" })
		all := strings.Split(strings.Join(want, "; "), "; ")
		slices.Sort(all)
		f := p.Parse(text, Context{})
		if got := inWords(f); got != strings.Join(all, "; ") || f.Site != in.site || len(f.Unclear) > 0 {
			t.Errorf("%q\n got %s at %q, %d unclear\nwant %s at %q", text, got, f.Site, len(f.Unclear), strings.Join(all, "; "), in.site)
		}
	}
}

// The names of what is installed, by item.
var thingNames = map[string][]string{
	"prv":            {"reg", "the reg", "regulator", "prv", "the prv", "pressure regulator", "their prv"},
	"expansion_tank": {"exp tank", "the exp tank", "expansion tank", "thermal tank"},
	"heater":         {"heater", "the heater", "water heater", "htr", "hwh", "their heater"},
	"check_valve":    {"check valve", "the check valve", "backflow preventer"},
	"softener":       {"softener", "the softener", "water softener"},
	"recirc":         {"recirc pump", "the recirc", "circ pump"},
	"drain_valve":    {"drain valve", "the drain valve", "heater drain valve"},
	"gauge":          {"gauge", "my gauge", "test gauge"},
}

// thingsInOrder returns the things in a fixed order.
func thingsInOrder() []string {
	return []string{"prv", "expansion_tank", "heater", "check_valve", "softener", "recirc", "drain_valve", "gauge"}
}

// notOf are words that are never said of a thing, or say something else of it: a gauge that is ok or weak
// tells of the pressure, a pilot went out.
var notOf = map[string][]string{
	"gauge":    {"weak", "rough", "gone", "ok", "okay", "alright", "quit", "has quit", "spotless", "running fine", "worn", "worn out", "corroded", "rusty", "failing", "dead", "stuck", "seized", "holding"},
	"heater":   {"quit", "has quit", "stuck", "seized", "holding"},
	"softener": {"stuck", "seized", "holding"},
	"recirc":   {"stuck", "seized", "holding"},
}

// The words of each condition: behind "is" or "was" or nothing, and those that are verbs.
var (
	conditionWords = map[string][]string{
		"failed": {"bad", "shot", "dead", "toast", "junk", "busted", "broken", "no good", "kaput", "stuck", "seized", "gone", "trash", "garbage", "cooked", "ruined",
			"not working", "failed", "not any good", "useless", "worthless", "scrap", "nfg", "defective", "a goner", "not functioning"},
		"suspect": {"weak", "worn", "worn out", "iffy", "sketchy", "corroded", "crusty", "rusty", "marginal", "tired", "failing", "getting weak", "on its way out",
			"on its last legs", "half shot", "about shot", "past its prime", "not great", "borderline", "rough", "in bad shape", "kinda rusty", "pretty corroded"},
		"good": {"good", "fine", "ok", "okay", "great", "solid", "alright", "in good shape", "like new", "holding", "working fine", "doing its job", "still good",
			"not bad", "decent", "good for now", "not an issue", "not a problem", "spotless", "running fine", "up to snuff"},
	}
	conditionVerbs = map[string][]string{
		"failed":  {"doesn't work", "isn't working", "won't work", "has failed", "died", "gave out", "went bad", "stopped working", "crapped out", "quit", "has quit"},
		"suspect": {"looks worn", "looks rough", "seems weak", "seems iffy", "acts up", "is acting funny", "looks corroded", "looks like it's going", "appears worn", "looks rusty"},
		"good":    {"looks good", "looks fine", "seems good", "seems to be working", "appears to be fine", "works fine", "works like it should", "checks out", "tested good", "has no issues", "acts right"},
	}
)

// TestGridOfConditions reads every thing with every word of its condition: "reg is shot", "the
// softener looks fine", "their heater stopped working".
func TestGridOfConditions(t *testing.T) {
	var all []said
	for _, item := range thingsInOrder() {
		for _, cond := range []string{"failed", "suspect", "good"} {
			want, n := item+" "+cond, 0
			add := func(name, verb, word string) {
				if n++; n%2 > 0 && !slices.Contains(notOf[item], word) && !slices.Contains(notOf[item], strings.TrimPrefix(word, "looks ")) && !slices.Contains(notOf[item], strings.TrimPrefix(word, "seems ")) {
					all = append(all, said{strings.TrimSpace(name + " " + verb + word), want})
				}
			}
			for _, name := range thingNames[item] {
				for k, word := range conditionWords[cond] {
					add(name, []string{"", "is ", "was "}[(n+k)%3], word)
				}
				for _, word := range conditionVerbs[cond] {
					add(name, "", word)
				}
			}
		}
	}
	readPhrases(t, all, framedParts)
}

// TestGridOfConditionsBesideTheirThing reads the condition told before the thing, ticked off behind it,
// or with the place between: "found a bad reg", "reg: bad", "the heater on this house is shot".
func TestGridOfConditionsBesideTheirThing(t *testing.T) {
	conds := [][2]string{{"bad", "failed"}, {"shot", "failed"}, {"dead", "failed"}, {"failing", "suspect"}, {"worn out", "suspect"}, {"rusty", "suspect"}, {"weak", "suspect"}, {"iffy", "suspect"}, {"good", "good"}, {"decent", "good"}}
	orders := []string{"{n}: {w}", "{n} - {w}", "{n} = {w}", "{n}, {w}", "{n} ({w})", "{w} {n}", "{a} {w} {n}", "{w} {n} here", "got {a} {w} {n}", "found {a} {w} {n}",
		"it's {a} {w} {n}", "{w} {n} in the garage", "house has {a} {w} {n}", "they have {a} {w} {n}", "the {n} in there is {w}", "the {n} in the garage is {w}", "{n} here is {w}",
		"{n} down there is {w}", "the {n} on this house is {w}", "existing {n} is {w}", "{n} is also {w}"}
	var all []said
	for _, item := range thingsInOrder() {
		for k, name := range thingNames[item] {
			if strings.Contains(name, "the") || strings.Contains(name, "my") {
				continue
			}
			for j, c := range conds {
				for o, order := range orders {
					if (k+j+o)%5 > 0 || item == "gauge" && (slices.Contains(notOf[item], c[0]) || strings.Contains(order, " is ")) {
						continue
					}
					a := "a"
					if c[0] == "iffy" {
						a = "an"
					}
					all = append(all, said{strings.NewReplacer("{n}", name, "{w}", c[0], "{a}", a).Replace(order), item + " " + c[1]})
				}
			}
		}
	}
	readPhrases(t, all, framedParts)
}

// TestGridOfConditionsGuessedAt reads a bad condition that is only guessed at, which is suspect, and a
// good one, which stays good.
func TestGridOfConditionsGuessedAt(t *testing.T) {
	guesses := []string{"{n} might be {w}", "{n} may be {w}", "{n} could be {w}", "{n} is probably {w}", "{n} probably {w}", "{n} is likely {w}", "{n} maybe {w}", "{n} is possibly {w}",
		"i think {n} is {w}", "{n} is {w} i think"}
	words := []string{"bad", "shot", "dead", "toast", "failed", "busted", "no good", "worn", "failing", "on its way out"}
	var all []said
	for _, item := range thingsInOrder() {
		for k, name := range thingNames[item] {
			for j, guess := range guesses {
				for o, word := range words {
					if (k+j+o)%4 == 0 && !(item == "gauge" && slices.Contains(notOf[item], word)) {
						all = append(all, said{strings.NewReplacer("{n}", name, "{w}", word).Replace(guess), item + " suspect"})
					}
				}
			}
			all = append(all, said{name + " is probably fine", item + " good"})
		}
	}
	readPhrases(t, all, framedParts)
}
