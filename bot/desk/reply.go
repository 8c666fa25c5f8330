package desk

import (
	"fmt"
	"slices"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// urgencyRank orders urgencies, gravest first.
var urgencyRank = map[assess.Urgency]int{assess.Now: 0, assess.Soon: 1, assess.Watch: 2, assess.Note: 3}

// verdictBody is the answer to a report: the decision, what was understood,
// what follows, what can hurt. The gravest finding leads: where people can be
// hurt its words say what to do about it. Work on the regulator that nobody has
// read after leads else: what was found before it decides nothing any more.
func (t *turn) verdictBody(m store.Message, site store.SiteRecord, f intents.Frame, a assess.Assessment, visit assess.Visit, remembered bool) Body {
	w := t.words()
	line := siteLine(site.Site)
	b := Body{Lead: fmt.Sprintf(w.Recorded, line)}
	said, unread := standsNow(visit, a, w)
	if unread && a.HousePSI != nil {
		b.Facts = append(b.Facts, fmt.Sprintf(w.AsFound, *a.HousePSI))
	}
	for i, f := range said {
		switch {
		case i == 0:
			b.Lead = line + ": " + f.Text
		case i <= atMostFacts:
			b.Facts = append(b.Facts, f.Text)
		}
	}
	if urgentNow(said) && t.opt.Phone != "" {
		b.Next = append(b.Next, fmt.Sprintf(w.CallDispatch, t.opt.Phone))
	}
	b.Heard = t.heard(f.Visit(t.dayOf(m)))
	if f.SameTap {
		b.Heard += " " + w.SameTap
	}
	if remembered {
		b.Heard = strings.TrimSpace(b.Heard + " " + fmt.Sprintf(w.Remembered, line))
		b.Buttons = append(b.Buttons, Button{"elsewhere", w.Elsewhere, fmt.Sprint(m.ID)})
	}
	b.Facts = append(b.Facts, likely(a, visit, w)...)
	if a.NextCheck != nil && !unread {
		b.Next = append(b.Next, w.NextCheck+a.NextCheck.Check)
	}
	b.Cautions = cautionTexts(a.Cautions, w)
	id := fmt.Sprint(m.ID)
	if unread || readAgain(a) {
		b.Buttons = append(b.Buttons, Button{"again", w.ReadAgain, id})
	} else if len(a.Readings) > 0 {
		b.Buttons = append(b.Buttons, Button{"recheck", w.BookRecheck, id})
	}
	b.Buttons = append(b.Buttons, Button{"correct", w.PutRight, id}, Button{"undo", w.TakeBack, id})
	return b
}

// standsNow are the findings of how a house stands, gravest first. Where nobody
// has read what work on the regulator left, unread, what was found before it is
// left out, and the reading to be made leads, unless something is to be done at
// once.
func standsNow(visit assess.Visit, a assess.Assessment, w *words) (said []assess.Finding, unread bool) {
	said = gravestFirst(a.Findings)
	if !unreadWork(visit, a) || urgentNow(said) {
		return said, false
	}
	said = slices.DeleteFunc(said, func(f assess.Finding) bool { return asFound[f.Code] })
	confirm := assess.Finding{Urgency: assess.Soon, Text: sentence(w.ConfirmWork) + "."}
	return slices.Insert(said, 0, confirm), true
}

// unreadWork tells whether nobody has read what work on the regulator left.
func unreadWork(visit assess.Visit, a assess.Assessment) bool {
	return valveWork(visit.Work) && unfinished(visit, a.Readings)
}

// asFound are the findings of a pressure that work on the regulator has changed.
var asFound = map[string]bool{"in_band": true, "low": true, "high": true, "borderline": true, "contradiction": true, "not_house_side": true, "retake": true,
	"not_regulating": true, "seat_creep": true, "peak_high": true, "restricted": true, "fall_off": true}

// urgentNow tells whether the gravest finding wants something done at once.
func urgentNow(said []assess.Finding) bool { return len(said) > 0 && said[0].Urgency == assess.Now }

// plannedBody is the answer to a message that only plans: what is to be done and
// when. What is known of the house stands where it was told.
func (t *turn) plannedBody(m store.Message, site store.SiteRecord, f intents.Frame, remembered bool) Body {
	w := t.words()
	line := siteLine(site.Site)
	b := Body{Lead: fmt.Sprintf(w.Planned, line, visitText(f.Visit(t.dayOf(m)), w))}
	if remembered {
		b.Heard = fmt.Sprintf(w.Remembered, line)
		b.Buttons = append(b.Buttons, Button{"elsewhere", w.Elsewhere, fmt.Sprint(m.ID)})
	}
	b.Buttons = append(b.Buttons, Button{"correct", w.PutRight, fmt.Sprint(m.ID)}, Button{"undo", w.TakeBack, fmt.Sprint(m.ID)})
	return b
}

// readAgain tells whether the likely next step is to read once more on this
// visit: nothing fair was read, or what was read does not decide.
func readAgain(a assess.Assessment) bool {
	for _, f := range a.Findings {
		switch f.Code {
		case "retake", "borderline", "contradiction", "not_house_side":
			return true
		}
	}
	return false
}

// atMostFacts is how many findings a reply tells beside the first.
const atMostFacts = 3

// heard repeats in one line what was understood.
func (t *turn) heard(v assess.Visit) string {
	text := visitText(v, t.words())
	if text == "" {
		return ""
	}
	return t.words().Heard + text + "."
}

// gravestFirst orders findings by urgency, within one as the assessment gives
// them.
func gravestFirst(list []assess.Finding) []assess.Finding {
	list = slices.Clone(list)
	slices.SortStableFunc(list, func(a, b assess.Finding) int { return urgencyRank[a.Urgency] - urgencyRank[b.Urgency] })
	return list
}

// findings returns the texts of the findings of at least an urgency, gravest
// first.
func findings(a assess.Assessment, least assess.Urgency) []string {
	return texts(gravestFirst(a.Findings), least)
}

func texts(list []assess.Finding, least assess.Urgency) (out []string) {
	for _, f := range list {
		if urgencyRank[f.Urgency] <= urgencyRank[least] {
			out = append(out, f.Text)
		}
	}
	return out
}

// tenth is a probability in percent, to the nearest ten: more would only look
// exact.
func tenth(p float64) int { return 10 * int(p*10+0.5) }

// likely names the cause that leads, when it is worth naming: after work on the
// regulator, that of what was found.
func likely(a assess.Assessment, visit assess.Visit, w *words) []string {
	if len(a.Causes) == 0 || a.Causes[0].P < 0.4 || a.Causes[0].Cause == assess.CauseSound {
		return nil
	}
	c, says := a.Causes[0], w.Likely
	switch {
	case valveWork(visit.Work):
		says = w.LikelyFound
	case a.Band == assess.BandIn && slices.ContainsFunc(visit.Readings, func(r assess.Reading) bool { return r.When == assess.After }):
		return nil // what it was before, a valve found half shut has explained
	}
	return []string{fmt.Sprintf(says, w.Cause[c.Cause], tenth(c.P))}
}

// cautionTexts returns what can hurt, in words.
func cautionTexts(list []assess.Caution, w *words) []string {
	var out []string
	for _, c := range list {
		out = append(out, w.Caution[c])
	}
	return out
}

// visitText repeats what a visit holds in one line.
func visitText(v assess.Visit, w *words) string {
	var parts []string
	for _, r := range v.Readings {
		parts = append(parts, readingText(r, w))
	}
	for _, s := range v.Symptoms {
		switch {
		case s.Absent && s.Symptom == assess.NoWater:
			parts = append(parts, w.WaterIsOn)
		case s.Absent && s.Symptom == assess.ReliefDischarge:
			parts = append(parts, w.ReliefIsDry)
		case s.Absent:
			parts = append(parts, fmt.Sprintf(w.NoSymptom, w.Symptom[s.Symptom]))
		default:
			parts = append(parts, w.Symptom[s.Symptom])
		}
	}
	for _, e := range v.Equipment {
		parts = append(parts, equipmentText(e, w))
	}
	for _, d := range v.Work {
		parts = append(parts, workText(d, w))
	}
	for _, p := range v.Plans {
		s := w.Action[p.Action]
		switch {
		case p.InDays == nil:
		case *p.InDays < 0 || *p.InDays > farthest:
			s += ". " + w.TooFar
		default:
			s += " " + dayText(v.Date.AddDays(*p.InDays), w)
		}
		parts = append(parts, s)
	}
	return strings.Join(parts, "; ")
}

// workText is a piece of work in words, with the setting it left and, when told,
// the one it found.
func workText(d assess.Work, w *words) string {
	s := w.Action[d.Action]
	if d.Action == assess.SetPRV {
		s = w.DidSet
	}
	switch {
	case d.ToPSI != nil && d.FromPSI != nil:
		s += " (" + fmt.Sprintf(w.FromTo, number(*d.FromPSI), number(*d.ToPSI)) + ")"
	case d.ToPSI != nil:
		s += fmt.Sprintf(" (%s %s)", number(*d.ToPSI), w.Psi)
	}
	return s
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
	return strings.TrimSpace(parts[0] + " " + strings.Join(parts[1:], ", "))
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
		parts = append(parts, number(*e.SizeGal)+" "+w.Gal)
	}
	if e.Fuel != "" {
		parts = append(parts, w.Fuel[e.Fuel])
	}
	if e.SettingPSI != nil {
		parts = append(parts, number(*e.SettingPSI)+" "+w.Psi)
	}
	if e.SetpointF != nil {
		parts = append(parts, number(*e.SetpointF)+" °F")
	}
	for _, s := range []string{w.Material[e.Material], w.Condition[e.Condition]} {
		if s != "" {
			parts = append(parts, s)
		}
	}
	if e.AgeUnknown {
		parts = append(parts, w.AgeUnknown)
	}
	if y := e.MaintainedYear; y != nil {
		if *y == 0 {
			parts = append(parts, w.NeverServiced)
		} else {
			parts = append(parts, fmt.Sprintf(w.Serviced, *y))
		}
	}
	return strings.Join(parts, " ")
}

// driftText is a trend in words.
func driftText(d assess.Drift, w *words) string {
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
		s += "; " + fmt.Sprintf(w.DriftCrosses, d.Crosses.Date, d.Crosses.Early, d.Crosses.Late)
	}
	return s
}

// dayText is a day with its weekday, as people name it.
func dayText(d assess.Date, w *words) string {
	return w.Weekday[d.In(time.UTC).Weekday()] + " " + d.String()
}

// sentence begins words with a capital.
func sentence(s string) string {
	first, n := utf8.DecodeRuneInString(s)
	return string(unicode.ToUpper(first)) + s[n:]
}
