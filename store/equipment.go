package store

import (
	"encoding/json"

	"lazyhand/assess"
)

// Installed is one installed thing's life in a house: a regulator that was
// replaced and the one that took its place are two of them.
type Installed struct {
	Item      assess.Item     `json:"item"`
	Absent    bool            `json:"absent,omitempty"`    // told that the house has none
	Installed string          `json:"installed,omitempty"` // YYYY-MM-DD, or YYYY when no more was told; empty is not known
	Serviced  string          `json:"serviced,omitempty"`
	Ended     string          `json:"ended,omitempty"` // when it was replaced or found gone
	Failed    bool            `json:"failed,omitempty"`
	Facts     json.RawMessage `json:"facts,omitempty"` // the newest told, as an assess.Equipment
}

// KeepEquipment keeps what a house has and had, item by item, oldest first.
func (tx *Tx) KeepEquipment(site int64, list []Installed) error {
	if _, err := tx.exec(`DELETE FROM equipment WHERE site = ?`, site); err != nil {
		return err
	}
	for n, e := range list {
		facts := string(e.Facts)
		if facts == "" {
			facts = "{}"
		}
		if _, err := tx.exec(`INSERT INTO equipment (site, item, n, absent, installed, serviced, ended, failed, facts) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)`,
			site, e.Item, n, e.Absent, e.Installed, e.Serviced, e.Ended, e.Failed, facts); err != nil {
			return err
		}
	}
	return nil
}

const equipmentOfSite = `SELECT item, absent, installed, serviced, ended, failed, facts FROM equipment WHERE site = ? ORDER BY item, n`

// Equipment returns what a house has and had.
func (tx *Tx) Equipment(site int64) ([]Installed, error) {
	return all(tx, func(scan func(...any) error) (e Installed, err error) {
		var facts string
		err = scan(&e.Item, &e.Absent, &e.Installed, &e.Serviced, &e.Ended, &e.Failed, &facts)
		e.Facts = json.RawMessage(facts)
		return e, err
	}, equipmentOfSite, site)
}

const livesOfItem = `SELECT installed, ended, failed FROM equipment WHERE item = ? AND installed > '' AND absent = 0`

// Lives returns how long the shop's items of a kind have served as of a day,
// for the life curve. Years are told to the year only where no day is known.
func (tx *Tx) Lives(item assess.Item, today assess.Date) ([]assess.Life, error) {
	var out []assess.Life
	err := each(tx, func(scan func(...any) error) error {
		var from, to string
		var failed bool
		if err := scan(&from, &to, &failed); err != nil {
			return err
		}
		end := today.String()
		if to != "" {
			end = to
		}
		a, err := told(from)
		if err != nil {
			return nil // not a date that can be counted with
		}
		b, err := told(end)
		if err != nil || b.Before(a) {
			return nil
		}
		out = append(out, assess.Life{Years: float64(b.Sub(a)) / 365.25, Ended: to != ""})
		return nil
	}, livesOfItem, item)
	return out, err
}

// told reads a day or a year; a year stands for its middle.
func told(s string) (assess.Date, error) {
	if len(s) == 4 {
		s += "-07-01"
	}
	return assess.ParseDate(s)
}
