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
// its number and street name, those of its street, and those with its number on
// a street whose name is about as long and is alike. many tells that the street
// has at least so many houses on record; then they are left out.
func (tx *Tx) SitesAround(s assess.Site, onStreet int, alike func(street string) bool) (list []Around, many bool, err error) {
	loose := s.Loose()
	number, _, _ := strings.Cut(loose, " ")
	var onIt int
	if _, err := tx.one([]any{&onIt}, sitesOnIt, s.Street(), onStreet); err != nil {
		return nil, false, err
	}
	many = onIt >= onStreet
	if many {
		onIt = 0
	}
	// Of the streets only the names are read, all at once: nearly none is alike.
	var names *string
	if _, err := tx.one([]any{&names}, streetsWithNumber, number+" ", number+"!", len(loose)); err != nil {
		return nil, false, err
	}
	ids := []any{loose, s.Street(), onIt}
	if names != nil {
		for line := range strings.SplitSeq(*names, "\n") {
			id, rest, _ := strings.Cut(line, " ")
			if anyPrefix(strings.TrimPrefix(rest, number+" "), alike) {
				ids = append(ids, id)
			}
		}
	}
	list, err = all(tx, func(scan func(...any) error) (a Around, err error) {
		err = scan(&a.ID, &a.Line, &a.Town, &a.Postcode, &a.Loose, &a.Street)
		a.Named = a.ID
		return a, err
	}, sitesAround+strings.Repeat(` UNION ALL SELECT ?+0`, len(ids)-3)+`)`, ids...)
	return list, many, err
}

const (
	sitesOnIt         = `SELECT count(*) FROM (SELECT 1 FROM site WHERE street = ?||'' LIMIT ?+0)`
	streetsWithNumber = `SELECT group_concat(id || ' ' || loose, char(10)) FROM (SELECT id, loose FROM site
	WHERE loose >= ?||'' AND loose < ?||'' AND length(loose) BETWEEN ?3 - 2 AND ?3 + 2 LIMIT 100)`
	sitesAround = `SELECT id, line, town, postcode, loose, street FROM site WHERE joined IS NULL AND id IN (
	SELECT id FROM site WHERE loose = ?||'' UNION ALL SELECT id FROM (SELECT id FROM site WHERE street = ?||'' LIMIT ?+0)`
)

// anyPrefix tells whether a name, or what it is without its last words, is alike:
// the number of a unit may stand behind it.
func anyPrefix(name string, alike func(string) bool) bool {
	for name != "" {
		if alike(name) {
			return true
		}
		name = name[:max(0, strings.LastIndexByte(name, ' '))]
	}
	return false
}

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
