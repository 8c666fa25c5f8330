package desk

import (
	"cmp"
	"encoding/json"
	"fmt"
	"slices"

	"lazyhand/assess"
	"lazyhand/store"
)

// replacing says which work puts a new item in.
var replacing = map[assess.Action][]assess.Item{
	assess.ReplacedPRV: {assess.PRV}, assess.InstalledPRV: {assess.PRV},
	assess.ReplacedTank: {assess.ExpansionTank}, assess.InstalledTank: {assess.ExpansionTank},
	assess.ReplacedHeater:     {assess.Heater, assess.DrainValve}, // a new heater brings its drain valve
	assess.ReplacedDrainValve: {assess.DrainValve},
}

// servicing says which work is a service of an item.
var servicing = map[assess.Action]assess.Item{
	assess.RebuiltPRV: assess.PRV, assess.SetPRV: assess.PRV, assess.ChargedTank: assess.ExpansionTank, assess.FlushedHeater: assess.Heater,
}

// livesOf tells the life of each thing in a house from its visits, oldest
// first: what was told of it, when it was serviced, when another took its
// place.
func livesOf(visits []assess.Visit) []store.Installed {
	all := map[assess.Item][]*life{}
	current := func(i assess.Item) *life {
		list := all[i]
		if len(list) == 0 || list[len(list)-1].Ended != "" || list[len(list)-1].Absent {
			all[i] = append(list, &life{Installed: store.Installed{Item: i}})
		}
		return all[i][len(all[i])-1]
	}
	for _, v := range visits {
		day := v.Date.String()
		fresh := map[assess.Item]bool{}
		for _, w := range v.Work {
			for _, i := range replacing[w.Action] {
				fresh[i] = true
			}
		}
		var later []assess.Equipment // about what the visit put in
		for _, e := range v.Equipment {
			if fresh[e.Item] && !ofTheOld(e, v.Date.Year) {
				later = append(later, e)
				continue
			}
			tellOf(all, current, e, day)
		}
		for _, w := range v.Work {
			for _, i := range replacing[w.Action] {
				if w.Action != assess.InstalledPRV && w.Action != assess.InstalledTank {
					current(i)
				}
				if n := len(all[i]); n > 0 && all[i][n-1].Ended == "" {
					all[i][n-1].Ended = day
				}
				all[i] = append(all[i], &life{Installed: store.Installed{Item: i, Installed: day}})
			}
			if i, ok := servicing[w.Action]; ok {
				current(i).Serviced = day
			}
		}
		for _, e := range later {
			tellOf(all, current, e, day)
		}
	}
	var out []store.Installed
	for _, list := range all {
		for _, l := range list {
			if raw, err := json.Marshal(l.told); err == nil && l.told != (assess.Equipment{}) {
				l.Facts = raw
			}
			out = append(out, l.Installed)
		}
	}
	slices.SortStableFunc(out, func(a, b store.Installed) int { return cmp.Compare(a.Item, b.Item) })
	return out
}

// life is an installed thing while its visits are being read.
type life struct {
	store.Installed
	told assess.Equipment
}

// ofTheOld tells whether a fact of a visit that put a new item in can only be
// about the old one.
func ofTheOld(e assess.Equipment, year int) bool {
	return e.Absent() || e.Condition == assess.Failed || e.Condition == assess.Suspect || e.InstalledYear != nil && *e.InstalledYear < year
}

// tellOf takes over what a visit says about a thing that stays.
func tellOf(all map[assess.Item][]*life, current func(assess.Item) *life, e assess.Equipment, day string) {
	if e.Absent() {
		list := all[e.Item]
		if n := len(list); n > 0 && list[n-1].Ended == "" {
			if list[n-1].Absent {
				return
			}
			list[n-1].Ended = day // it was there, and is gone
		}
		all[e.Item] = append(list, &life{Installed: store.Installed{Item: e.Item, Absent: true}})
		return
	}
	if list := all[e.Item]; len(list) > 0 && list[len(list)-1].Absent && list[len(list)-1].Ended == "" {
		list[len(list)-1].Ended = day // there was none, now there is one
	}
	l := current(e.Item)
	if e.InstalledYear != nil && (len(l.Installed.Installed) != len(day) || l.Installed.Installed[:4] != fmt.Sprint(*e.InstalledYear)) {
		l.Installed.Installed = fmt.Sprint(*e.InstalledYear)
	}
	if e.AgeUnknown {
		l.Installed.Installed = ""
	}
	if e.MaintainedYear != nil && *e.MaintainedYear > 0 {
		l.Serviced = fmt.Sprint(*e.MaintainedYear)
	}
	was := l.told
	if softer(e.Condition, was.Condition) {
		e.Condition = ""
	}
	if e.Condition != "" {
		l.Failed = e.Condition == assess.Failed
	}
	l.told = e
	keep(&l.told.SizeGal, was.SizeGal)
	keep(&l.told.SettingPSI, was.SettingPSI)
	keep(&l.told.SetpointF, was.SetpointF)
	if e.Fuel == "" {
		l.told.Fuel = was.Fuel
	}
	if e.Material == "" {
		l.told.Material = was.Material
	}
	if e.Condition == "" {
		l.told.Condition = was.Condition
	}
}

func keep[T any](now **T, was *T) {
	if *now == nil {
		*now = was
	}
}
