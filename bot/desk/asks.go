package desk

import (
	"fmt"
	"math"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// ask answers the i-th question of a message; site is the house it is about,
// without an id when no house on record is meant.
func (t *turn) ask(i int, a intents.Ask, site store.SiteRecord) error {
	if i > 0 {
		t.reply = fmt.Sprintf("reply:%d:%d", t.m.ID, i)
	}
	w := t.words()
	switch a.About {
	case intents.AskNone, intents.AskCorrect:
		return nil
	case intents.AskHelp:
		return t.say(Body{Lead: w.HelpLead, Facts: w.Help})
	case intents.AskUndo:
		return t.undo()
	case intents.AskConvert:
		return t.convert(a)
	case intents.AskTankSize:
		return t.tankSize(a, site)
	case intents.AskDue:
		return t.due()
	case intents.AskSummary:
		b, err := t.summary(t.tx, t.lang, t.day.AddDays(-7), t.day)
		if err != nil {
			return err
		}
		return t.say(b)
	}
	if site.Line == "" {
		return t.say(Body{Lead: w.WhichHouse})
	}
	if site.ID == 0 {
		return t.say(Body{Lead: fmt.Sprintf(w.NotOnRecord, siteLine(site.Site))})
	}
	switch a.About {
	case intents.AskDone:
		return t.done(site)
	case intents.AskSnooze:
		return t.snooze(site, a)
	}
	return t.story(a, site)
}

// story answers from a house's visits.
func (t *turn) story(a intents.Ask, site store.SiteRecord) error {
	w := t.words()
	in, err := t.input(site)
	if err != nil {
		return err
	}
	if len(in.Visits) == 0 {
		return t.say(Body{Lead: fmt.Sprintf(w.NotOnRecord, siteLine(site.Site))})
	}
	judged := assess.Assess(in)
	switch a.About {
	case intents.AskNextCheck:
		b := Body{Lead: fmt.Sprintf(w.NothingToCheck, siteLine(site.Site)), Facts: t.likely(judged), Cautions: t.cautions(judged)}
		if n := judged.NextCheck; n != nil {
			b.Lead = fmt.Sprintf("%s: %s", siteLine(site.Site), n.Check)
			b.Next = []string{n.Why}
		}
		return t.say(b)
	case intents.AskTrend:
		return t.say(Body{Lead: fmt.Sprintf("%s: %s", siteLine(site.Site), t.driftText(judged.Drift)), Facts: t.series(in.Visits)})
	}
	return t.say(Body{Lead: fmt.Sprintf(w.History, siteLine(site.Site), len(in.Visits)), Facts: t.series(in.Visits), Next: t.findings(judged, assess.Watch)})
}

// series lists the newest visits, a line each.
func (t *turn) series(visits []assess.Visit) []string {
	var out []string
	for i := len(visits) - 1; i >= 0 && len(out) < 8; i-- {
		if s := t.visitText(visits[i]); s != "" {
			out = append(out, visits[i].Date.String()+"  "+s)
		}
	}
	return out
}

// convert answers a conversion by the factors of assess.
func (t *turn) convert(a intents.Ask) error {
	if a.Value == nil {
		return t.say(Body{Lead: t.words().HelpLead, Facts: t.words().Help})
	}
	to := a.To
	if to == "" {
		to = "psi"
	}
	v, ok := assess.Convert(*a.Value, units[a.Unit], units[to])
	if !ok {
		return t.say(Body{Lead: t.words().HelpLead, Facts: t.words().Help})
	}
	return t.say(Body{Lead: fmt.Sprintf("%s %s = %s %s", number(*a.Value), a.Unit, number(v), to)})
}

// units are the codes of intents.Ask as units of pressure.
var units = map[string]assess.PressureUnit{"psi": assess.UnitPSI, "bar": assess.UnitBar, "kpa": assess.UnitKPa,
	"ft": assess.UnitFootOfWater, "m": assess.UnitMetreOfWater}

// number writes a number with as many places as a gauge deserves.
func number(v float64) string {
	places := 1
	if math.Abs(v) < 10 {
		places = 2
	}
	s := fmt.Sprintf("%.*f", places, v)
	return strings.TrimSuffix(strings.TrimRight(s, "0"), ".")
}

// tankSize answers what expansion tank a heater needs.
func (t *turn) tankSize(a intents.Ask, site store.SiteRecord) error {
	w := t.words()
	size, psi, inlet, set := a.SizeGal, a.PSI, assess.AssumedInletF, assess.AssumedSetpointF
	if site.ID != 0 && (size == nil || psi == nil) {
		in, err := t.input(site)
		if err != nil {
			return err
		}
		if psi == nil && len(in.Visits) > 0 {
			psi = assess.Assess(in).HousePSI
		}
		for _, v := range in.Visits {
			for _, e := range v.Equipment {
				if e.Item == assess.Heater && e.SizeGal != nil && a.SizeGal == nil {
					size = e.SizeGal
				}
			}
		}
	}
	if a.InletF != nil {
		inlet = *a.InletF
	}
	if a.SetpointF != nil {
		set = *a.SetpointF
	} else if a.RiseF != nil {
		set = inlet + *a.RiseF
	}
	if size == nil || psi == nil {
		return t.say(Body{Lead: w.TankNeeds})
	}
	top := t.opt.Shop.BandPSI[1]
	if top == 0 {
		top = 80
	}
	gal, ok := assess.TankGal(assess.ExpandedGal(*size, inlet, set), *psi, top)
	if !ok {
		return t.say(Body{Lead: fmt.Sprintf(w.TankTooHigh, number(*psi), number(top))})
	}
	return t.say(Body{
		Lead:     fmt.Sprintf(w.TankSize, number(gal), number(*size), number(top)),
		Facts:    []string{fmt.Sprintf(w.TankBasis, number(inlet), number(set), number(*psi), number(*psi))},
		Cautions: []string{w.Caution[assess.CautionTank], w.Caution[assess.CautionLocalCode]},
	})
}
