package desk

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// Questions after what houses have: one house, all of them.

// whichHouses answers which of the houses visited in the last year lack a thing, or where it has
// failed.
func (t *turn) whichHouses(of assess.Equipment) error {
	list, err := t.tx.ReportsBetween(t.day.AddDays(-yearAhead), t.day.AddDays(1), reportsRead)
	if err != nil {
		return err
	}
	w := t.words()
	var lines []string
	seen := map[int64]bool{}
	for _, r := range slices.Backward(list) {
		if seen[r.Site] {
			continue
		}
		seen[r.Site] = true
		things, err := t.tx.Equipment(r.Site)
		if err != nil {
			return err
		}
		if slices.ContainsFunc(things, func(i store.Installed) bool { return fits(i, of) }) {
			lines = append(lines, fmt.Sprintf("%s  %s", r.Day, r.Line))
		}
	}
	return t.say(Body{Lead: fmt.Sprintf(w.HousesWith, equipmentText(of, w), len(lines)), Facts: shortened(lines, w)})
}

// fits tells whether a thing of a house is missing, or has failed, as asked.
func fits(i store.Installed, of assess.Equipment) bool {
	if i.Item != of.Item || i.Ended != "" {
		return false
	}
	if of.Absent() {
		return i.Absent
	}
	var told assess.Equipment
	failed := i.Failed || json.Unmarshal(i.Facts, &told) == nil && (told.Condition == assess.Failed || told.Condition == assess.Suspect)
	return !i.Absent && failed
}

// putIn answers how many things of a kind were put in, this year unless another span is named.
func (t *turn) putIn(item assess.Item) error {
	said := plainWords(t.m.Text)
	if who, err := t.whoSaid(said); err != nil || who != "" {
		if err == nil {
			err = t.log()
		}
		return err
	}
	from, to := t.spanSaid(said)
	if from == t.day {
		from = assess.Date{Year: t.day.Year, Month: 1, Day: 1}
	}
	list, n, err := t.tx.PutIn(item, from, to, atMostLines)
	if err != nil {
		return err
	}
	w := t.words()
	lines := make([]string, len(list))
	for i, x := range list {
		lines[i] = x.Day + "  " + x.Line
	}
	if more := n - len(list); more > 0 {
		lines = append(lines, fmt.Sprintf(w.AndMore, more))
	}
	return t.say(Body{Lead: fmt.Sprintf(w.ThingsPutIn, w.Item[item], from, n), Facts: lines})
}

// ofThisHouse tells whether a question after what is due is one of the house in hand: "what's left
// here", "qué falta aquí", "what's open at 15 Fern".
func (t *turn) ofThisHouse(named bool) bool {
	said := plainWords(t.m.Text)
	has := func(list ...string) bool {
		return slices.ContainsFunc(said, func(w string) bool { return slices.Contains(list, w) })
	}
	return named || has("here", "aqui", "left") && !has("today", "week", "month", "list", "us", "hoy", "semana", "mes") ||
		strings.Contains(strings.Join(said, " "), "this house") || strings.Contains(strings.Join(said, " "), "esta casa")
}

// leftHere answers what is open at a house: what is planned, its alert, the next check.
func (t *turn) leftHere(site store.SiteRecord) error {
	w := t.words()
	h, err := t.house(t.tx, site, t.day, t.lang)
	if err != nil {
		return err
	}
	line := siteLine(site.Site)
	if len(h.Visits) == 0 {
		return t.say(Body{Lead: fmt.Sprintf(w.NotOnRecord, line)})
	}
	var open []string
	for _, f := range h.FollowUps {
		open = append(open, fmt.Sprintf("%s  %s (%s). %s", f.Due, w.Action[f.Action], t.who(f.Owner), f.Why))
	}
	if h.Alert != nil {
		open = append(open, sentence(t.stateIn(*h.Alert, w))+".")
	}
	b := Body{Lead: fmt.Sprintf(w.LeftHere, line, len(open)), Facts: open, Next: findings(h.Assessment, assess.Watch)}
	if len(open) == 0 {
		b.Lead = fmt.Sprintf(w.NothingOpen, line)
	}
	if n := h.Assessment.NextCheck; n != nil {
		b.Next = append(b.Next, w.NextCheck+n.Check)
	}
	return t.say(b)
}

// askedBefore is the house that the writer has just asked about, where a question goes on about it: by
// "there", "their", or since no house is in hand.
func (t *turn) askedBefore(f intents.Frame, here store.SiteRecord) (s store.SiteRecord, found bool, err error) {
	if len(f.Asks()) == 0 || len(reports(f)) > 0 || isChatter(f) {
		return s, false, nil
	}
	if here.ID != 0 && !slices.ContainsFunc(plainWords(t.m.Text), func(w string) bool { return ofAsked[w] }) {
		return s, false, nil
	}
	before, found, err := t.tx.SaidBefore(t.m)
	if err != nil || !found || before.State != store.Taken || before.Site == 0 || before.Frame == nil || t.m.At.Sub(before.At) > t.opt.Memory {
		return s, false, err
	}
	var asked intents.Frame
	if err := json.Unmarshal(before.Frame, &asked); err != nil {
		return s, false, fmt.Errorf("read the frame of message %d: %w", before.ID, err)
	}
	if len(reports(asked)) > 0 || isChatter(asked) {
		return s, false, nil
	}
	s, err = t.tx.Site(before.Site)
	return s, err == nil && s.ID != here.ID, err
}

var ofAsked = wordSet("there their theirs they them that those ahi alli alla su sus ellos ellas esa ese")

// thingAsked tells of the one thing that a question about a house names, empty where it names none
// or asks for all.
func (t *turn) thingAsked(h House) string {
	said, w := plainWords(t.m.Text), t.words()
	if !asksFirst[at(said, 0)] && at(said, 0) != "hay" && at(said, 0) != "any" && !strings.HasPrefix(at(said, 0), "t") {
		return ""
	}
	var asked assess.Item
	for _, word := range said {
		if i := thingCalled[word]; i != "" && asked != "" && i != asked {
			return ""
		} else if i != "" {
			asked = i
		}
	}
	for _, e := range []assess.Equipment{h.Valve, h.Heater, h.Tank} {
		if asked != "" && e.Item == asked {
			return installedPart(e, h.Today, w)
		}
	}
	if asked == "" {
		return ""
	}
	return w.Item[asked] + " " + w.NotKnown
}

// thingCalled are the things that a question is likely to be after, by what they are called.
var thingCalled = map[string]assess.Item{"prv": assess.PRV, "reg": assess.PRV, "regulator": assess.PRV, "regulador": assess.PRV, "reguladora": assess.PRV,
	"tank": assess.ExpansionTank, "tanque": assess.ExpansionTank, "heater": assess.Heater, "boiler": assess.Heater, "calentador": assess.Heater, "calenton": assess.Heater}
