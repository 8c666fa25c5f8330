package store

import (
	"strconv"
	"strings"
	"time"

	"lazyhand/assess"
)

// Person is one member of the crew.
type Person struct {
	ID     string
	Name   string
	Lang   assess.Lang // chosen; empty: none
	Heard  assess.Lang // in which they last wrote, when that was plain
	Site   int64       // last reported on, 0 for none
	SiteAt time.Time
	told   string // see Tells
}

// tellings is how many of a person's newest reports are known by their numbers.
const tellings = 16

// Tells notes that a message of the person reports something.
func (p *Person) Tells(message int64) {
	list := []string{strconv.FormatInt(message, 10)}
	for id := range strings.SplitSeq(strings.Trim(p.told, "[]"), ",") {
		if id != "" && id != list[0] && len(list) < tellings {
			list = append(list, id)
		}
	}
	p.told = "[" + strings.Join(list, ",") + "]"
}

const people = `SELECT id, name, lang, heard, ifnull(site, 0), site_at, told FROM person `

func scanPerson(scan func(...any) error) (Person, error) {
	var p Person
	var at int64
	err := scan(&p.ID, &p.Name, &p.Lang, &p.Heard, &p.Site, &at, &p.told)
	p.SiteAt = fromMillis(at)
	return p, err
}

// Person returns what is kept of a member of the crew; of one never seen, only
// the id.
func (tx *Tx) Person(id string) (Person, error) {
	p, found, err := first(all(tx, scanPerson, people+`WHERE id = ?`, id))
	if !found {
		p = Person{ID: id, SiteAt: fromMillis(0), told: "[]"}
	}
	return p, err
}

// KeepPerson keeps what is known of a member of the crew.
func (tx *Tx) KeepPerson(p Person) error {
	if p.told == "" {
		p.told = "[]"
	}
	return tx.put(`INSERT INTO person (id, name, lang, heard, site, site_at, told) VALUES (?, ?, ?, ?, nullif(?, 0), ?, ?)
		ON CONFLICT (id) DO UPDATE SET name = excluded.name, lang = excluded.lang, heard = excluded.heard, site = excluded.site, site_at = excluded.site_at, told = excluded.told`,
		p.ID, p.Name, p.Lang, p.Heard, p.Site, millis(p.SiteAt), p.told)
}

// KeepTelling notes that a message of a person reports something, when the
// person is on record.
func (tx *Tx) KeepTelling(id string, message int64) error {
	p, err := tx.Person(id)
	if err != nil {
		return err
	}
	p.Tells(message)
	_, err = tx.exec(`UPDATE person SET told = ? WHERE id = ?`, p.told, id)
	return err
}

// People returns all members of the crew that were ever heard, those that
// reported last first.
func (tx *Tx) People() ([]Person, error) {
	return all(tx, scanPerson, people+`ORDER BY site_at DESC, id`)
}

// LastReportIn returns the newest message of a thread that still reports
// something, of those said before one; author limits it to one person's, empty does not.
func (tx *Tx) LastReportIn(channel, thread, author string, before int64) (Message, bool, error) {
	return first(tx.messages(`WHERE id = (SELECT r.message FROM message m JOIN report r ON r.site = m.site AND r.message = m.id
		WHERE m.id IN `+thread12+` AND (?3 = '' OR m.author = ?3) AND `+place+` < ?4 ORDER BY m.at DESC, m.id DESC LIMIT 1)`, channel, thread, author, before))
}

// ReportsBy returns a person's newest reports of those said before one, newest first; a
// few, of those that are known as theirs.
func (tx *Tx) ReportsBy(author string, before int64, limit int) ([]Report, error) {
	return all(tx, scanReport, `SELECT `+reportColumns+`, m.frame FROM message m JOIN report r ON r.site = m.site AND r.message = m.id
		WHERE m.id IN `+toldBy1+` AND r.author = ?1 AND `+place+` < ?2 ORDER BY r.at DESC, r.message DESC LIMIT ?3`, author, before, limit)
}

// WordingsOf returns a message and its edits, oldest first.
func (tx *Tx) WordingsOf(id int64) ([]Message, error) {
	return tx.messages(`WHERE id = ?1 OR (about = ?1 AND kind = 'edited') ORDER BY id`, id)
}

// ReportOf returns what a message reported.
func (tx *Tx) ReportOf(message int64) (Report, bool, error) {
	return first(all(tx, scanReport, `SELECT `+reportColumns+`, m.frame FROM message m JOIN report r ON r.site = m.site AND r.message = m.id WHERE m.id = ?`, message))
}
