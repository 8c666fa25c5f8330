package store

import (
	"errors"
	"fmt"
	"slices"
	"strings"

	"lazyhand/assess"
)

// SiteRecord is a house on record.
type SiteRecord struct {
	ID int64
	// Named is the record under which it was named: ID, or one that was joined
	// to it. What is said is filed there, so that the two can part again.
	Named int64
	assess.Site
}

// groupOf1 is a house, the query's first argument, with all that are joined to
// it.
const groupOf1 = `(SELECT id FROM site WHERE id = ?1 UNION ALL SELECT id FROM site WHERE joined = ?1)`

// house1 is the same as a table, for what every message asks: the list of an IN is
// kept aside in a tree of its own, which costs more than the rest.
const house1 = `(SELECT ?1+0 AS house UNION ALL SELECT id FROM site WHERE joined = ?1+0)`

const sites = `SELECT s.id, n.id, s.line, s.town, s.postcode FROM site n JOIN site s ON s.id = ifnull(n.joined, n.id) `

func scanSite(scan func(...any) error) (SiteRecord, error) {
	var s SiteRecord
	err := scan(&s.ID, &s.Named, &s.Line, &s.Town, &s.Postcode)
	return s, err
}

// Site returns the house with that id, or the one it was joined to.
func (tx *Tx) Site(id int64) (SiteRecord, error) {
	s, found, err := first(all(tx, scanSite, sites+`WHERE n.id = ?+0`, id))
	if err == nil && !found {
		err = errors.New("no such house on record")
	}
	return s, err
}

// SitesLike returns the houses that s can be, best first: one with the same
// line stands alone, else all that fit it. A house that was joined to another
// answers to its own name too.
func (tx *Tx) SitesLike(s assess.Site) ([]SiteRecord, error) {
	type like struct {
		SiteRecord
		as assess.Site // its own name
	}
	var forms []any
	for _, f := range s.LooseForms() {
		forms = append(forms, f)
	}
	one := strings.TrimSuffix(strings.Repeat("?||'', ", len(forms)), ", ")
	near, err := all(tx, func(scan func(...any) error) (like, error) {
		var l like
		err := scan(&l.ID, &l.Named, &l.Line, &l.Town, &l.Postcode, &l.as.Line, &l.as.Town, &l.as.Postcode)
		return l, err
	}, `SELECT s.id, n.id, s.line, s.town, s.postcode, n.line, n.town, n.postcode
		FROM site n JOIN site s ON s.id = ifnull(n.joined, n.id) WHERE n.loose IN (`+one+`) ORDER BY n.joined IS NOT NULL, n.id`, forms...)
	if err != nil {
		return nil, err
	}
	var fit []SiteRecord
	seen := map[int64]bool{}
	for _, r := range near {
		if !s.Fits(r.as) {
			continue
		}
		if r.as.Key() == s.Key() && r.as.Town == s.Town && r.as.Postcode == s.Postcode {
			return []SiteRecord{r.SiteRecord}, nil
		}
		if !seen[r.ID] {
			seen[r.ID] = true
			fit = append(fit, r.SiteRecord)
		}
	}
	return fit, nil
}

// UnitsOf returns the units on record of a building that s names without one.
func (tx *Tx) UnitsOf(s assess.Site) ([]SiteRecord, error) {
	list, err := all(tx, scanSite, sites+`WHERE n.joined IS NULL AND n.loose >= ?1 || ' ' AND n.loose < ?1 || '!' ORDER BY n.loose`, s.Loose())
	return slices.DeleteFunc(list, func(r SiteRecord) bool { return !s.Holds(r.Site) }), err
}

// SitesOnStreet returns the houses whose bare street name is street.
func (tx *Tx) SitesOnStreet(street string, limit int) ([]SiteRecord, error) {
	return all(tx, scanSite, sites+`WHERE n.street = ? AND n.joined IS NULL ORDER BY n.id LIMIT ?`, street, limit)
}

// AddSite opens a record for a house; source is the message that first named
// it.
func (tx *Tx) AddSite(s assess.Site, source int64) (SiteRecord, error) {
	id, err := tx.insert(`INSERT INTO site (id, line, key, loose, street, town, postcode, source) VALUES (?, ?, ?, ?, ?, ?, ?, nullif(?, 0))`,
		tx.idBefore("site", source), s.Line, s.Key(), s.Loose(), s.Street(), s.Town, s.Postcode, source)
	if err != nil || !tx.replay {
		return SiteRecord{id, id, s}, err
	}
	// That people joined two records holds from the start, unless they did it in
	// chat: then the message that did it is taken anew.
	for _, q := range []string{
		`UPDATE site SET joined = (SELECT w.joined FROM was_site w JOIN site t ON t.id = w.joined AND t.joined IS NULL WHERE w.id = ?1) WHERE id = ?1 AND ifnull(source, 0) NOT IN (SELECT message FROM was_same)`,
		`UPDATE site SET joined = ?1 WHERE id IN (SELECT id FROM was_site WHERE joined = ?1 AND ifnull(source, 0) NOT IN (SELECT message FROM was_same))`,
	} {
		if _, err := tx.exec(q, id); err != nil {
			return SiteRecord{}, err
		}
	}
	return tx.Site(id)
}

// FillSite takes over what a fuller spelling of the same house tells: the
// suffix or the rest of the street's name, the town, the postcode.
func (tx *Tx) FillSite(id int64, s assess.Site) error {
	_, err := tx.exec(`UPDATE site SET line = ?, key = ?, loose = ?, street = ?, town = ?, postcode = ? WHERE id = ?`, s.Line, s.Key(), s.Loose(), s.Street(), s.Town, s.Postcode, id)
	return err
}

// FileUnder notes the house that a message is about.
func (tx *Tx) FileUnder(message, site int64) error {
	_, err := tx.exec(`UPDATE message SET site = ? WHERE id = ?`, site, message)
	return err
}

// FileUnderNone notes that a message is about no house that is known.
func (tx *Tx) FileUnderNone(message int64) error {
	_, err := tx.exec(`UPDATE message SET site = NULL WHERE id = ? AND site IS NOT NULL`, message)
	return err
}

// Join makes two records of one house one: what was said of either is told of
// both, under the name of the one that stays. Part undoes it.
func (tx *Tx) Join(stays, goes int64) error {
	a, err := tx.Site(stays)
	if err != nil {
		return err
	}
	b, err := tx.Site(goes)
	if err != nil {
		return err
	}
	if a.ID == b.ID {
		return nil // they are one already
	}
	// What was joined to the one that goes comes along.
	_, err = tx.exec(`UPDATE site SET joined = ?1 WHERE id = ?2 OR joined = ?2`, a.ID, b.ID)
	return err
}

// Part makes a record that was joined to another one of its own again, with
// all that was filed under its name.
func (tx *Tx) Part(site int64) error {
	n, err := tx.exec(`UPDATE site SET joined = NULL WHERE id = ? AND joined IS NOT NULL`, site)
	if err == nil && n == 0 {
		err = fmt.Errorf("this house is joined to no other")
	}
	return err
}

// Joined returns the records that are joined to a house.
func (tx *Tx) Joined(site int64) ([]assess.Site, []int64, error) {
	var ids []int64
	list, err := all(tx, func(scan func(...any) error) (s assess.Site, err error) {
		var id int64
		err = scan(&id, &s.Line, &s.Town, &s.Postcode)
		ids = append(ids, id)
		return s, err
	}, `SELECT id, line, town, postcode FROM site WHERE joined = ? ORDER BY id`, site)
	return list, ids, err
}

// NearDuplicates are records that may be one house: the same number and street
// name, with another suffix, direction, town or postcode.
type NearDuplicates struct{ A, B SiteRecord }

const nearDuplicates = `SELECT a.id, a.line, a.town, a.postcode, b.id, b.line, b.town, b.postcode
	FROM site a JOIN site b ON b.loose = a.loose AND b.id > a.id AND b.joined IS NULL
	WHERE a.loose = ? AND a.joined IS NULL ORDER BY a.id, b.id LIMIT 20`

// NearDuplicates returns the pairs among the houses that share the number and
// street name of s.
func (tx *Tx) NearDuplicates(s assess.Site) ([]NearDuplicates, error) {
	return all(tx, scanNear, nearDuplicates, s.Loose())
}

// AllNearDuplicates returns pairs over the whole record, by street line.
func (tx *Tx) AllNearDuplicates(limit int) ([]NearDuplicates, error) {
	return all(tx, scanNear, `SELECT a.id, a.line, a.town, a.postcode, b.id, b.line, b.town, b.postcode
		FROM site a JOIN site b ON b.loose = a.loose AND b.id > a.id AND b.joined IS NULL
		WHERE a.joined IS NULL ORDER BY a.loose, a.id, b.id LIMIT ?`, limit)
}

func scanNear(scan func(...any) error) (d NearDuplicates, err error) {
	err = scan(&d.A.ID, &d.A.Line, &d.A.Town, &d.A.Postcode, &d.B.ID, &d.B.Line, &d.B.Town, &d.B.Postcode)
	d.A.Named, d.B.Named = d.A.ID, d.B.ID
	return d, err
}

// Standing is what the newest judged report says of a house, for the lists of
// worst houses, of those to look at again and of what is to be expected. PSI is
// nil when unknown. The zero Standing is that of a house of which nothing is
// reported.
type Standing struct {
	PSI     *float64
	Outside float64     // psi by which it lies outside the shop's band, 0 within
	Look    assess.Date // day from which the calendar alone may change what follows; zero: never
	Outlook *Outlook    // nil: nothing is expected
}

// Stand keeps a house's standing.
func (tx *Tx) Stand(site int64, s Standing) error {
	if s.Outlook == nil {
		_, err := tx.exec(`UPDATE site SET psi = ?, outside = ?, look = ?, `+expectsNothing+` WHERE id = ?`, s.PSI, s.Outside, s.Look.String(), site)
		return err
	}
	o := s.Outlook
	return tx.put(`UPDATE site SET psi = ?, outside = ?, look = ?, visited = ?, drift = ?, slope = ?, crosses = nullif(?, ''), rank = ?, finding = ? WHERE id = ?`,
		s.PSI, s.Outside, s.Look.String(), o.Day.String(), o.Drift, o.Slope, o.Crosses.String(), o.Rank, o.Finding, site)
}
