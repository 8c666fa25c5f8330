package store

import "time"

const people = `SELECT id, name, lang, heard, ifnull(site, 0), site_at FROM person `

func scanPerson(scan func(...any) error) (Person, error) {
	var p Person
	var at int64
	err := scan(&p.ID, &p.Name, &p.Lang, &p.Heard, &p.Site, &at)
	p.SiteAt = fromMillis(at)
	return p, err
}

// People returns all members of the crew that were ever heard, those that
// reported last first.
func (tx *Tx) People() ([]Person, error) {
	return all(tx, scanPerson, people+`ORDER BY site_at DESC, id`)
}

// LastReportIn returns the newest message of a thread that still reports
// something; author limits it to one person's, empty does not.
func (tx *Tx) LastReportIn(channel, thread, author string) (Message, bool, error) {
	return first(tx.messages(`WHERE id = (SELECT r.message FROM message m JOIN report r ON r.message = m.id
		WHERE m.channel = ?1 AND m.thread = ?2 AND (?3 = '' OR m.author = ?3) ORDER BY m.at DESC, m.id DESC LIMIT 1)`, channel, thread, author))
}

// ReportsBy returns a person's newest reports, newest first.
func (tx *Tx) ReportsBy(author string, since time.Time, limit int) ([]Report, error) {
	return all(tx, scanReport, `SELECT r.message, r.site, r.day, r.at, r.author, m.frame FROM report r JOIN message m ON m.id = r.message
		WHERE r.author = ? AND r.at >= ? ORDER BY r.at DESC, r.message DESC LIMIT ?`, author, millis(since), limit)
}

// WordingsOf returns a message and its edits, oldest first.
func (tx *Tx) WordingsOf(id int64) ([]Message, error) {
	return tx.messages(`WHERE id = ?1 OR (about = ?1 AND kind = 'edited') ORDER BY id`, id)
}

// ReportOf returns what a message reported.
func (tx *Tx) ReportOf(message int64) (Report, bool, error) {
	return first(all(tx, scanReport, `SELECT r.message, r.site, r.day, r.at, r.author, m.frame FROM report r JOIN message m ON m.id = r.message WHERE r.message = ?`, message))
}
