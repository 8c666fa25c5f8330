package paper

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"lazyhand/assess"
	"lazyhand/bot/desk"
)

// block is one part of a sheet: a heading and its items, of which the last may
// be left out, and counted, where room is short.
type block struct {
	head  string
	items []string
	least int // items that stay
	left  int // left out so far
}

// sheetFacts is what a sheet tells, in the words of its reader.
type sheetFacts struct {
	h desk.House
	w *words
}

// verdict is what the reader must know first: what cannot wait, then where the
// pressure stands.
func (f sheetFacts) verdict() []string {
	var out []string
	a, w := f.h.Assessment, f.w
	for _, v := range a.Findings {
		if v.Urgency == assess.Now && f.finding(v) != "" {
			out = append(out, w.sheet.Urgent+f.finding(v))
		}
	}
	b := bandOf(f.h.Band)
	switch {
	case a.HousePSI == nil || math.IsNaN(*a.HousePSI) || w.sheet.Verdict[a.Band] == "" || a.Band == assess.BandNone:
		out = append(out, w.sheet.Verdict[assess.BandNone])
	default:
		out = append(out, fmt.Sprintf(w.sheet.Verdict[a.Band], number(*a.HousePSI), number(b[0]), number(b[1])))
	}
	return out
}

// finding is a finding in the reader's words; one that has none yet keeps the
// crew's.
func (f sheetFacts) finding(v assess.Finding) string {
	if s, ok := f.w.sheet.Finding[v.Code]; ok {
		return s
	}
	return clean(v.Text)
}

// visit is the last visit.
func (f sheetFacts) visit() (assess.Visit, bool) {
	if n := len(f.h.Visits); n > 0 {
		return f.h.Visits[n-1], true
	}
	return assess.Visit{}, false
}

// readings tells what was measured on the last visit, and what may be believed
// of it.
func (f sheetFacts) readings() block {
	s := &f.w.sheet
	b := block{head: s.HeadRead, least: 1}
	v, _ := f.visit()
	judged := f.h.Assessment.Readings
	gauge := 0.0
	for i, r := range v.Readings {
		where := s.Point[r.Point]
		if where == "" {
			where = s.NoPoint
		}
		says := []string{fmt.Sprintf(s.ReadAt, number(r.PSI), where)}
		switch r.When {
		case assess.Before:
			says = append(says, s.BeforeWork)
		case assess.After:
			says = append(says, s.AfterWork)
		}
		switch r.Heater {
		case assess.Idle:
			says = append(says, s.HeaterIdle)
		case assess.Firing:
			says = append(says, s.HeaterFiring)
		}
		line := strings.Join(says, ", ")
		if i < len(judged) {
			line += ": " + f.judged(judged[i], r)
			gauge = max(gauge, judged[i].PlusMinus)
		}
		b.items = append(b.items, line)
	}
	if b.items == nil {
		b.items = []string{s.NothingRead}
	} else if gauge > 0 && !math.IsInf(gauge, 0) {
		b.items = append(b.items, fmt.Sprintf(s.Gauge, number(gauge)))
	}
	return b
}

// judged says what a reading is worth, and why where it is worth less.
func (f sheetFacts) judged(j assess.JudgedReading, r assess.Reading) string {
	s := &f.w.sheet
	says := s.CountsLittle
	switch {
	case j.Fair == assess.FairYes && j.Side == assess.StreetSide:
		says = s.CountsStreet
	case j.Fair == assess.FairYes:
		says = s.Counts
	case j.Fair == assess.FairNo:
		says = s.CountsNot
	}
	var why []string
	for _, reason := range j.Reasons {
		if reason == assess.ReasonHeaterFiring && r.Heater == assess.Firing || reason == assess.ReasonPointUnknown && r.Point == "" {
			continue // told already
		}
		if t := s.Reason[reason]; t != "" && !slices.Contains(why, t) {
			why = append(why, t)
		}
	}
	if why != nil {
		says += " (" + strings.Join(why, "; ") + ")"
	}
	return says
}

// meaning tells what follows, gravest first, without what the verdict has said.
func (f sheetFacts) meaning() block {
	b := block{head: f.w.sheet.HeadMeans, least: 2}
	for _, v := range f.h.Assessment.Findings {
		says := f.finding(v)
		told := v.Code == "drift_up" || v.Code == "drift_down"
		if v.Urgency == assess.Now || says == "" || told && f.trend() != "" || slices.Contains(b.items, says) {
			continue
		}
		b.items = append(b.items, says)
	}
	if t := f.trend(); t != "" {
		b.items = append(b.items, t)
	}
	switch {
	case b.items != nil:
	case f.h.Assessment.HousePSI == nil:
		b.items = []string{f.w.sheet.TooLittle}
	default:
		b.items = []string{f.w.sheet.AllWell}
	}
	return b
}

// trend says where the pressure is going, empty when it stays.
func (f sheetFacts) trend() string {
	d, s := f.h.Assessment.Drift, &f.w.sheet
	moves, to := s.Rises, bandOf(f.h.Band)[1]
	switch {
	case d.PSIPerYear == nil || d.State != assess.Rising && d.State != assess.Falling:
		return ""
	case d.State == assess.Falling:
		moves, to = s.Falls, bandOf(f.h.Band)[0]
	}
	says := fmt.Sprintf(moves, number(math.Abs(*d.PSIPerYear)))
	switch c := d.Crosses; {
	case c == nil:
	case c.Date.Before(f.h.Today):
		says += fmt.Sprintf(s.Passed, number(to))
	default:
		says += fmt.Sprintf(s.Passes, number(to), f.w.monthYear(c.Date))
	}
	return says + "."
}

// parts tells the ages of what is installed.
func (f sheetFacts) parts() block {
	s := &f.w.sheet
	b := block{head: s.HeadParts, least: 3}
	life := s.Life[f.h.Assessment.Valve.Life]
	if f.h.Valve.Absent() {
		life = ""
	}
	b.items = []string{f.part(s.Valve, f.h.Valve, s.SetAt, life), f.part(s.Heater, f.h.Heater, "", "")}
	if f.h.Tank.Item != "" {
		b.items = append(b.items, f.part(s.Tank, f.h.Tank, s.AirAt, ""))
	}
	return b
}

func (f sheetFacts) part(name string, e assess.Equipment, setting, life string) string {
	s := &f.w.sheet
	var says []string
	switch {
	case e.Absent():
		return name + ": " + s.Absent
	case e.InstalledYear != nil:
		says = append(says, fmt.Sprintf(s.Installed, *e.InstalledYear, f.w.years(f.h.Today.Year-*e.InstalledYear)))
	default:
		says = append(says, s.AgeUnknown)
	}
	if e.SizeGal != nil {
		says = append(says, fmt.Sprintf(s.Gallons, number(*e.SizeGal)))
	}
	if t := s.Fuel[e.Fuel]; t != "" {
		says = append(says, t)
	}
	if e.SettingPSI != nil && setting != "" {
		says = append(says, fmt.Sprintf(setting, number(*e.SettingPSI)))
	}
	if life != "" {
		says = append(says, life)
	}
	return name + ": " + strings.Join(says, ", ")
}

// done tells what was done, the newest first.
func (f sheetFacts) done() block {
	s := &f.w.sheet
	b := block{head: s.HeadDone, least: 1}
	for i := len(f.h.Visits) - 1; i >= 0; i-- {
		v := f.h.Visits[i]
		var all []string
		for _, work := range v.Work {
			says := s.Work[work.Action]
			if says == "" {
				continue
			}
			if work.ToPSI != nil {
				says += ", " + fmt.Sprintf(f.w.SetTo, number(*work.ToPSI)) + " psi"
			}
			if work.FromPSI != nil {
				says += " (" + fmt.Sprintf(s.SetFrom, number(*work.FromPSI)) + ")"
			}
			all = append(all, says)
		}
		if all != nil {
			b.items = append(b.items, fmt.Sprintf(s.DoneOn, f.w.longDate(v.Date), strings.Join(all, "; ")))
		}
	}
	if b.items == nil {
		b.items = []string{s.NothingDone}
	}
	return b
}

// advice tells what is to be done and by when: what is on the list for the
// house, or what the assessment asks for.
func (f sheetFacts) advice() block {
	s := &f.w.sheet
	b := block{head: s.HeadAdvice, least: 2}
	if a := f.h.Alert; a != nil && !a.Booked.IsZero() && !a.Booked.Before(f.h.Today) {
		b.items = append(b.items, fmt.Sprintf(s.Booked, f.w.longDate(a.Booked)))
	}
	add := func(action assess.Action, due assess.Date) {
		what := s.Advice[action]
		if what == "" {
			what = s.Advice[assess.OtherAction]
		}
		e := f.h.Assessment.Expansion
		house := f.h.Assessment.HousePSI
		if gal := e.MinTankGal; gal != nil && (action == assess.InstallTank || action == assess.ReplaceTank) &&
			!(house != nil && assess.LowerFirst(*house, bandOf(f.h.Band)[1])) { // else its size is that of a house brought down
			what += ", " + fmt.Sprintf(s.TankAtLeast, number(math.Ceil(*gal*10)/10))
		}
		form := s.By
		if due.Before(f.h.Today) {
			form = s.AtOnce
		}
		b.items = append(b.items, fmt.Sprintf(form, what, f.w.longDate(due)))
	}
	for _, u := range f.h.FollowUps {
		add(u.Action, u.Due)
	}
	if len(f.h.FollowUps) == 0 {
		day := f.h.Today
		if v, ok := f.visit(); ok && !v.Date.IsZero() {
			day = v.Date
		}
		for _, u := range f.h.Assessment.FollowUps {
			add(u.Action, day.AddDays(u.InDays))
		}
	}
	if b.items == nil {
		b.items = []string{s.NothingToDo}
	}
	return b
}

// mostCare is how many cautions are read; ten are not.
const mostCare = 4

// care tells what to keep in mind: what goes with this house, then what is
// always good to know.
func (f sheetFacts) care() block {
	s := &f.w.sheet
	b := block{head: s.HeadCare, least: 3}
	for _, c := range slices.Concat(f.h.Assessment.Cautions, s.CloseCaution) {
		if t := s.Caution[c]; t != "" && !slices.Contains(b.items, t) && len(b.items) < mostCare {
			b.items = append(b.items, t)
		}
	}
	return b
}
