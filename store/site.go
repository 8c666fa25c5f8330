package store

import (
	"errors"

	"lazyhand/assess"
)

// SiteRecord is a house on record.
type SiteRecord struct {
	ID int64
	assess.Site
}

const siteColumns = `id, line, town, postcode`

func scanSite(scan func(...any) error) (SiteRecord, error) {
	var s SiteRecord
	err := scan(&s.ID, &s.Line, &s.Town, &s.Postcode)
	return s, err
}

// Site returns the house with that id, or the one it was joined to.
func (tx *Tx) Site(id int64) (SiteRecord, error) {
	s, found, err := first(all(tx, scanSite, `SELECT `+siteColumns+` FROM site WHERE id = (SELECT ifnull(joined, id) FROM site WHERE id = ?)`, id))
	if err == nil && !found {
		err = errors.New("no such house on record")
	}
	return s, err
}

// SitesLike returns the houses that s can be, best first: one with the same
// line stands alone, else all that fit it.
func (tx *Tx) SitesLike(s assess.Site) ([]SiteRecord, error) {
	near, err := all(tx, scanSite, `SELECT `+siteColumns+` FROM site WHERE loose = ? AND joined IS NULL ORDER BY id`, s.Loose())
	if err != nil {
		return nil, err
	}
	var fit []SiteRecord
	for _, r := range near {
		if !s.Fits(r.Site) {
			continue
		}
		if r.Key() == s.Key() && r.Town == s.Town && r.Postcode == s.Postcode {
			return []SiteRecord{r}, nil
		}
		fit = append(fit, r)
	}
	return fit, nil
}

// SitesOnStreet returns the houses whose bare street name is street.
func (tx *Tx) SitesOnStreet(street string, limit int) ([]SiteRecord, error) {
	return all(tx, scanSite, `SELECT `+siteColumns+` FROM site WHERE street = ? AND joined IS NULL ORDER BY id LIMIT ?`, street, limit)
}

// AddSite opens a record for a house.
func (tx *Tx) AddSite(s assess.Site) (SiteRecord, error) {
	id, err := tx.insert(`INSERT INTO site (line, key, loose, street, town, postcode) VALUES (?, ?, ?, ?, ?, ?)`,
		s.Line, s.Key(), s.Loose(), s.Street(), s.Town, s.Postcode)
	return SiteRecord{id, s}, err
}

// FillSite takes over what a fuller spelling of the same house tells: the
// suffix, the town, the postcode.
func (tx *Tx) FillSite(id int64, s assess.Site) error {
	_, err := tx.exec(`UPDATE site SET line = ?, key = ?, town = ?, postcode = ? WHERE id = ?`, s.Line, s.Key(), s.Town, s.Postcode, id)
	return err
}

// FileUnder notes the house that a message is about.
func (tx *Tx) FileUnder(message, site int64) error {
	_, err := tx.exec(`UPDATE message SET site = ? WHERE id = ?`, site, message)
	return err
}
