package desk

import (
	"fmt"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// urgencyRank orders urgencies, gravest first.
var urgencyRank = map[assess.Urgency]int{assess.Now: 0, assess.Soon: 1, assess.Watch: 2, assess.Note: 3}

// verdictBody is the answer to a report: the decision, what was understood,
// what follows, what can hurt.
func (t *turn) verdictBody(site store.SiteRecord, f intents.Frame, a assess.Assessment, remembered bool) Body {
	w := t.words()
	line := siteLine(site.Site)
	b := Body{Lead: fmt.Sprintf(w.Recorded, line)}
	said := t.findings(a, assess.Note)
	if len(said) > 0 {
		b.Lead = line + ": " + said[0]
		b.Facts = said[1:min(len(said), 4)]
	}
	if heard := t.visitText(f.Visit(t.day)); heard != "" {
		b.Heard = w.Heard + heard + "."
	}
	if remembered {
		b.Heard = strings.TrimSpace(b.Heard + " " + fmt.Sprintf(w.Remembered, line))
	}
	b.Facts = append(b.Facts, t.likely(a)...)
	if len(a.Findings) > 0 && a.Findings[0].Urgency == assess.Now && t.opt.Phone != "" {
		b.Next = append(b.Next, fmt.Sprintf(w.CallDispatch, t.opt.Phone))
	}
	if a.NextCheck != nil {
		b.Next = append(b.Next, w.NextCheck+a.NextCheck.Check)
	}
	b.Cautions = t.cautions(a)
	return b
}

// findings returns the texts of the findings of at least an urgency, gravest
// first, in the order the assessment gives them.
func (t *turn) findings(a assess.Assessment, least assess.Urgency) []string {
	var out []string
	for rank := 0; rank <= urgencyRank[least]; rank++ {
		for _, f := range a.Findings {
			if urgencyRank[f.Urgency] == rank {
				out = append(out, f.Text)
			}
		}
	}
	return out
}

// likely names the cause that leads, when it is worth naming.
func (t *turn) likely(a assess.Assessment) []string {
	if len(a.Causes) == 0 || a.Causes[0].P < 0.4 || a.Causes[0].Cause == assess.CauseSound {
		return nil
	}
	c := a.Causes[0]
	return []string{fmt.Sprintf("%s%s (%d %%)", t.words().Likely, t.words().Cause[c.Cause], int(c.P*100+0.5))}
}

// cautions returns what can hurt, in words.
func (t *turn) cautions(a assess.Assessment) []string {
	var out []string
	for _, c := range a.Cautions {
		out = append(out, t.words().Caution[c])
	}
	return out
}

// visitText repeats what a visit holds in one line.
func (t *turn) visitText(v assess.Visit) string {
	w := t.words()
	var parts []string
	for _, r := range v.Readings {
		parts = append(parts, readingText(r, w))
	}
	for _, s := range v.Symptoms {
		if s.Absent {
			parts = append(parts, fmt.Sprintf(w.NoSymptom, w.Symptom[s.Symptom]))
		} else {
			parts = append(parts, w.Symptom[s.Symptom])
		}
	}
	for _, e := range v.Equipment {
		parts = append(parts, equipmentText(e, w))
	}
	for _, d := range v.Work {
		s := w.Action[d.Action]
		if d.ToPSI != nil {
			s += fmt.Sprintf(" (%s %s)", number(*d.ToPSI), w.Psi)
		}
		parts = append(parts, s)
	}
	for _, p := range v.Plans {
		s := w.Action[p.Action]
		if p.InDays != nil {
			s += " " + v.Date.AddDays(*p.InDays).String()
		}
		parts = append(parts, s)
	}
	return strings.Join(parts, "; ")
}

// readingText is a reading in words.
func readingText(r assess.Reading, w *words) string {
	parts := []string{number(r.PSI) + " " + w.Psi}
	if r.Peak {
		parts[0] = w.Peak + " " + parts[0]
	}
	for _, s := range []string{w.Point[r.Point], w.Flow[r.Flow], w.Heater[r.Heater]} {
		if s != "" {
			parts = append(parts, s)
		}
	}
	switch r.When {
	case assess.Before:
		parts = append(parts, w.Before)
	case assess.After:
		parts = append(parts, w.After)
	}
	return parts[0] + " " + strings.Join(parts[1:], ", ")
}

// equipmentText is a fact about equipment in words.
func equipmentText(e assess.Equipment, w *words) string {
	if e.Absent() {
		return fmt.Sprintf(w.Absent, w.Item[e.Item])
	}
	parts := []string{w.Item[e.Item]}
	if e.InstalledYear != nil {
		parts = append(parts, fmt.Sprint(*e.InstalledYear))
	}
	if e.SizeGal != nil {
		parts = append(parts, number(*e.SizeGal)+" gal")
	}
	if e.Fuel != "" {
		parts = append(parts, string(e.Fuel))
	}
	if e.SettingPSI != nil {
		parts = append(parts, number(*e.SettingPSI)+" "+w.Psi)
	}
	if e.SetpointF != nil {
		parts = append(parts, number(*e.SetpointF)+" °F")
	}
	for _, s := range []string{string(e.Material), string(e.Condition)} {
		if s != "" {
			parts = append(parts, s)
		}
	}
	return strings.Join(parts, " ")
}

// driftText is a trend in words.
func (t *turn) driftText(d assess.Drift) string {
	w := t.words()
	s := w.TooFew
	switch d.State {
	case assess.Steady:
		s = w.DriftSteady
	case assess.Jumped:
		s = w.DriftJumped
	case assess.Rising, assess.Falling:
		if d.PSIPerYear != nil && d.Low != nil && d.High != nil {
			s = fmt.Sprintf(w.DriftMoves, number(*d.PSIPerYear), number(*d.Low), number(*d.High))
		}
	}
	if d.Crosses != nil {
		s += "; " + fmt.Sprintf(w.DriftCrosses, d.Crosses.Date)
	}
	return s
}
