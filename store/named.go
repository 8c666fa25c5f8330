package store

import (
	"strings"

	"lazyhand/assess"
)

// SitesNamed returns houses that are named by their street alone or by their
// number alone: those on one of the streets (bare names; a street whose name
// only begins so counts too), and those with one of the house numbers.
func (tx *Tx) SitesNamed(streets, numbers []string, limit int) ([]SiteRecord, error) {
	var parts []string
	var args []any
	ids := func(column, from, to string) {
		parts = append(parts, `SELECT id FROM site WHERE `+column+` >= ? AND `+column+` < ?`)
		args = append(args, from, to)
	}
	for _, s := range streets {
		ids("street", s, s+"\x00")      // the very name
		ids("street", s+" ", s+" \xff") // oak: Oak Grove Rd
	}
	for _, n := range numbers {
		n = strings.ToLower(n)
		ids("loose", n+" ", n+"!")
	}
	if len(parts) == 0 {
		return nil, nil
	}
	args = append(args, limit)
	return all(tx, scanSite, sites+`WHERE n.joined IS NULL AND n.id IN (`+strings.Join(parts, ` UNION ALL `)+`) ORDER BY n.id LIMIT ?`, args...)
}

// Around is a house that another one may be.
type Around struct {
	SiteRecord
	Loose, Street string // of its line
}

// SitesAround returns the houses that a slip could have made of s: those with
// its number and street name, at most so many more of its street, and those with
// its number on a street whose name is about as long.
func (tx *Tx) SitesAround(s assess.Site, onStreet int) ([]Around, error) {
	loose := s.Loose()
	number, _, _ := strings.Cut(loose, " ")
	return all(tx, func(scan func(...any) error) (a Around, err error) {
		err = scan(&a.ID, &a.Line, &a.Town, &a.Postcode, &a.Loose, &a.Street)
		a.Named = a.ID
		return a, err
	}, sitesAround, loose, s.Street(), onStreet, number+" ", number+"!")
}

const sitesAround = `SELECT id, line, town, postcode, loose, street FROM site WHERE joined IS NULL AND id IN (
	SELECT id FROM site WHERE loose = ?1
	UNION ALL SELECT id FROM (SELECT id FROM site WHERE street = ?2 LIMIT ?3)
	UNION ALL SELECT id FROM (SELECT id FROM site WHERE loose >= ?4 AND loose < ?5 AND length(loose) BETWEEN length(?1) - 2 AND length(?1) + 2 LIMIT 100))`

// Revised is a message that was put right, edited or taken back, and by what.
type Revised struct {
	Message
	Was  []byte // the frame before
	Now  []byte // the frame after, nil when nothing is left
	What string // corrected, edited, retracted
	By   Message
}

const revisions = `SELECT ` + revisedColumns + `, c.was, c.frame, 'corrected', b.id, b.author, b.at FROM message m JOIN correction c ON c.message = m.id JOIN message b ON b.id = c.by
	WHERE m.site IN ` + groupOf1 + `
	UNION ALL SELECT ` + revisedColumns + `, ifnull(m.frame, ''), CASE WHEN m.state = 'replaced' THEN ifnull((SELECT c.was FROM correction c WHERE c.message = b.id ORDER BY c.by LIMIT 1), ifnull(b.frame, '')) ELSE '' END, CASE m.state WHEN 'replaced' THEN 'edited' ELSE m.state END, b.id, b.author, b.at
	FROM message m JOIN message b ON b.id = m.by WHERE m.site IN ` + groupOf1 + ` AND m.state IN ('replaced', 'retracted')
	ORDER BY 10 DESC, 8 DESC LIMIT ?2`

const revisedColumns = `m.id, m.author, m.at, m.state`

// Revisions returns what was changed of what was said about a house, the newest
// change first.
func (tx *Tx) Revisions(site int64, limit int) ([]Revised, error) {
	return all(tx, func(scan func(...any) error) (Revised, error) {
		var r Revised
		var at, by int64
		var was, now string
		err := scan(&r.ID, &r.Author, &at, &r.State, &was, &now, &r.What, &r.By.ID, &r.By.Author, &by)
		r.At, r.By.At = fromMillis(at), fromMillis(by)
		r.Was = []byte(was)
		if now != "" {
			r.Now = []byte(now)
		}
		return r, err
	}, revisions, site, limit)
}
