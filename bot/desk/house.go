package desk

import (
	"context"
	"fmt"
	"slices"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// House is all that is known of a house on a day: the one source for what the
// chat, the command line, pictures and papers tell of it.
type House struct {
	ID         int64
	Site       assess.Site
	Today      assess.Date
	Lang       assess.Lang // of the texts in it
	Band       [2]float64  // psi, static, both limits included
	Visits     []assess.Visit
	By         [][]string          // who reported on each visit
	Readings   []store.SiteReading // every reading with what may be believed of it, oldest first
	Assessment assess.Assessment
	Figures    []assess.Figure  // worked out to explain it
	Valve      assess.Equipment // what is known of the regulator that serves now
	Heater     assess.Equipment
	Tank       assess.Equipment
	FollowUps  []store.FollowUp // open ones, soonest first
	Alert      *store.Alert     // the open one, nil for none
}

// lastVisit is the newest visit, empty when there was none.
func (h House) lastVisit() (v assess.Visit) {
	if n := len(h.Visits); n > 0 {
		v = h.Visits[n-1]
	}
	return v
}

// NoHouse says that a house is not on record.
type NoHouse struct{ Query string }

// Error says so.
func (e *NoHouse) Error() string {
	return fmt.Sprintf("no house on record is %q; write number and street as the reports do", e.Query)
}

// ManyHouses says that several houses on record fit.
type ManyHouses struct {
	Query string
	Lines []string
}

// Error lists them.
func (e *ManyHouses) Error() string {
	return fmt.Sprintf("%q can be %s; say which", e.Query, strings.Join(e.Lines, " or "))
}

// House returns what is known of the house that query names, as of a day; lang
// is the language of its texts, empty for the shop's. The error is a *NoHouse
// or *ManyHouses when query does not name one house.
func (d *Desk) House(ctx context.Context, query string, today assess.Date, lang assess.Lang) (House, error) {
	var h House
	if err := d.gather(ctx, today); err != nil {
		return h, err
	}
	err := d.store.Read(ctx, func(tx *store.Tx) error {
		found, err := tx.SitesLike(d.named(query, today))
		switch {
		case err != nil:
			return err
		case len(found) == 0:
			return &NoHouse{query}
		case len(found) > 1:
			e := &ManyHouses{Query: query}
			for _, s := range found {
				e.Lines = append(e.Lines, siteLine(s.Site))
			}
			return e
		}
		h, err = d.house(tx, found[0], today, lang)
		return err
	})
	return h, err
}

// named reads a house's line as the parser does.
func (d *Desk) named(query string, today assess.Date) assess.Site {
	f := d.parser.Parse(query, contextOf(today))
	if f.Site == "" {
		return assess.Site{Line: strings.TrimSpace(query)}
	}
	return assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}
}

// Names are the houses that a text names, their numbers in digits or in words.
func (d *Desk) Names(text string) []assess.Site {
	f := d.parser.Parse(text, intents.Context{})
	var out []assess.Site
	if f.Site != "" {
		out = append(out, assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode})
	}
	for _, u := range f.Unclear { // two houses in one message
		for _, line := range u.MightBe {
			out = append(out, assess.Site{Line: line})
		}
	}
	return out
}

// house gathers what is known of a house.
func (d *Desk) house(tx *store.Tx, site store.SiteRecord, today assess.Date, lang assess.Lang) (House, error) {
	if lang == "" {
		lang = d.opt.Lang
	}
	h := House{ID: site.ID, Site: site.Site, Today: today, Lang: lang, Band: d.band()}
	in, reports, err := d.input(tx, site, today, lang, nil)
	if err != nil {
		return h, err
	}
	h.By = make([][]string, len(in.Visits))
	for _, planned := range []bool{false, true} {
		for _, r := range reports {
			by := &h.By[r.visit]
			if r.plans == planned && !slices.Contains(*by, r.Author) && (!planned || !wasThere(in.Visits[r.visit])) {
				*by = append(*by, r.Author)
			}
		}
	}
	h.Visits, h.Assessment = in.Visits, assess.Assess(in)
	h.Figures = assess.Figures(in, h.Assessment)
	for _, v := range in.Visits {
		for _, e := range v.Equipment {
			switch e.Item {
			case assess.PRV:
				h.Valve = learn(h.Valve, e)
			case assess.Heater:
				h.Heater = learn(h.Heater, e)
			case assess.ExpansionTank:
				h.Tank = learn(h.Tank, e)
			}
		}
		for _, w := range v.Work {
			year := v.Date.Year
			switch w.Action {
			case assess.ReplacedPRV, assess.InstalledPRV:
				h.Valve = assess.Equipment{Item: assess.PRV, InstalledYear: &year, SettingPSI: w.ToPSI}
			case assess.SetPRV:
				if w.ToPSI != nil {
					h.Valve.Item, h.Valve.SettingPSI = assess.PRV, w.ToPSI
				}
			case assess.ReplacedHeater:
				h.Heater = assess.Equipment{Item: assess.Heater, InstalledYear: &year}
			case assess.InstalledTank, assess.ReplacedTank:
				h.Tank = assess.Equipment{Item: assess.ExpansionTank, InstalledYear: &year, SettingPSI: w.ToPSI}
			}
		}
		// What the same visit tells of a part it has just put in is of the new part.
		for _, e := range v.Equipment {
			putIn := slices.ContainsFunc(v.Work, func(w assess.Work) bool { return slices.Contains(replacing[w.Action], e.Item) })
			switch {
			case !putIn || ofTheOld(e, v.Date.Year):
			case e.Item == assess.Heater:
				h.Heater = learn(h.Heater, e)
			case e.Item == assess.ExpansionTank:
				h.Tank = learn(h.Tank, e)
			}
		}
	}
	if h.Readings, err = tx.ReadingsOf(site.ID); err != nil {
		return h, err
	}
	if h.FollowUps, err = tx.OpenFollowUps(site.ID); err != nil {
		return h, err
	}
	a, open, err := tx.OpenAlert(site.ID)
	if open {
		h.Alert = &a
	}
	return h, err
}

// wasThere tells whether a visit tells more than what is to be done.
func wasThere(v assess.Visit) bool {
	return len(v.Readings)+len(v.Symptoms)+len(v.Equipment)+len(v.Work) > 0
}

// softer tells whether a condition says less than the one known: what has failed and is told to weep as
// well has failed all the same.
func softer(said, known assess.Condition) bool {
	return said == assess.Suspect && known == assess.Failed
}

// learn adds to what is known of a piece of equipment what is said of it now.
func learn(known, said assess.Equipment) assess.Equipment {
	known.Item = said.Item
	known.Present = said.Present
	if said.InstalledYear != nil {
		known.InstalledYear, known.AgeUnknown = said.InstalledYear, false
	}
	known.AgeUnknown = known.AgeUnknown || said.AgeUnknown
	for _, p := range []struct{ to, from **float64 }{{&known.SizeGal, &said.SizeGal}, {&known.SettingPSI, &said.SettingPSI}, {&known.SetpointF, &said.SetpointF}} {
		if *p.from != nil {
			*p.to = *p.from
		}
	}
	if said.Fuel != "" {
		known.Fuel = said.Fuel
	}
	if said.Material != "" {
		known.Material = said.Material
	}
	if said.Condition != "" && !softer(said.Condition, known.Condition) {
		known.Condition = said.Condition
	}
	if said.MaintainedYear != nil {
		known.MaintainedYear = said.MaintainedYear
	}
	return known
}
