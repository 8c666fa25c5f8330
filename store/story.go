package store

import (
	"strings"
	"time"

	"lazyhand/assess"
)

// The questions that a shop asks of its record. Each is one query that an index
// answers; a test reads SQLite's plan of every one.

const storyOfSite = `SELECT ` + messageColumns + ` FROM message WHERE site IN ` + groupOf1 + ` ORDER BY at, id`

// Story returns all that was said about a house, oldest first: also what was
// edited, deleted or taken back since, in its state.
func (tx *Tx) Story(site int64) ([]Message, error) { return all(tx, scanMessage, storyOfSite, site) }

// CorrectionsOf returns what people put right in a message, in order.
func (tx *Tx) CorrectionsOf(message int64) ([]Correction, error) {
	return all(tx, scanCorrection, `SELECT message, by, was, frame FROM correction WHERE message = ? ORDER BY by`, message)
}

// Worst is a house whose pressure lies outside the shop's band.
type Worst struct {
	SiteRecord
	PSI     float64
	Outside float64 // psi
}

const worstSites = `SELECT id, line, town, postcode, psi, outside FROM site WHERE outside > 0 AND joined IS NULL ORDER BY outside DESC LIMIT ?`

// WorstSites returns the houses whose pressure lies farthest outside the band.
func (tx *Tx) WorstSites(limit int) ([]Worst, error) {
	return all(tx, func(scan func(...any) error) (w Worst, err error) {
		err = scan(&w.ID, &w.Line, &w.Town, &w.Postcode, &w.PSI, &w.Outside)
		w.Named = w.ID
		return w, err
	}, worstSites, limit)
}

// Unfinished is a visit on which work was done and that left no fair reading
// after it, nor did any visit since.
type Unfinished struct {
	Message int64
	SiteRecord
	Day    assess.Date
	Author string
}

const unfinishedVisits = `SELECT r.message, ifnull(s.joined, s.id), s.id, s.line, s.town, s.postcode, r.day, r.author FROM report r JOIN site s ON s.id = r.site
	WHERE r.unfinished = 1 AND r.day >= ? AND NOT EXISTS (SELECT 1 FROM report l WHERE l.site = r.site AND l.day >= r.day AND (l.day > r.day OR l.at > r.at) AND l.house_psi IS NOT NULL AND l.unfinished = 0)
	ORDER BY r.day LIMIT ?`

// UnfinishedVisits returns the unfinished visits since a day, oldest first.
func (tx *Tx) UnfinishedVisits(since assess.Date, limit int) ([]Unfinished, error) {
	return all(tx, func(scan func(...any) error) (u Unfinished, err error) {
		var day string
		if err = scan(&u.Message, &u.ID, &u.Named, &u.Line, &u.Town, &u.Postcode, &day, &u.Author); err != nil {
			return u, err
		}
		return u, u.Day.UnmarshalText([]byte(day))
	}, unfinishedVisits, since.String(), limit)
}

// OpenQuestions returns what was asked and not answered since a time, newest
// first.
func (tx *Tx) OpenQuestions(since time.Time, limit int) ([]Question, error) {
	return all(tx, scanQuestion, openQuestions, millis(since), limit)
}

const openQuestions = `SELECT id, message, channel, thread, author, at, kind, body FROM question WHERE state = 'open' AND at >= ? ORDER BY at DESC LIMIT ?`

// AtHouse is a reading with the house and the day it belongs to.
type AtHouse struct {
	Line string
	Day  assess.Date
	assess.JudgedReading
}

const readingsOfStreet = `SELECT s.line, r.day, r.psi, r.point, r.side, r.fair FROM site s JOIN reading r ON r.site = s.id
	WHERE s.street = ? AND r.day >= ? ORDER BY s.id, r.day, r.at, r.report, r.n LIMIT ?`

// ReadingsOfStreet returns all readings at the houses of a street since a day,
// house by house.
func (tx *Tx) ReadingsOfStreet(street string, since assess.Date, limit int) ([]AtHouse, error) {
	return all(tx, func(scan func(...any) error) (a AtHouse, err error) {
		var day string
		if err = scan(&a.Line, &day, &a.PSI, &a.Point, &a.Side, &a.Fair); err != nil {
			return a, err
		}
		return a, a.Day.UnmarshalText([]byte(day))
	}, readingsOfStreet, strings.ToLower(street), since.String(), limit)
}

// Misread is a message that was understood one way and put right by a person.
type Misread struct {
	Message
	Was   []byte // the frame before
	Right []byte // the frame as the person put it
	Line  string // of the house it was filed under, empty for none
}

// Misread returns the messages whose frame a person put right, oldest first.
func (tx *Tx) Misread(after int64, limit int) ([]Misread, error) {
	return all(tx, func(scan func(...any) error) (m Misread, err error) {
		var was, right string
		m.Message, err = scanMessage(func(dest ...any) error { return scan(append(dest, &was, &right, &m.Line)...) })
		m.Was, m.Right = []byte(was), []byte(right)
		return m, err
	}, misread, after, limit)
}

const misread = `SELECT ` + messageColumns + `, c_was, c_frame, ifnull((SELECT line FROM site WHERE id = message.site), '')
	FROM (SELECT message AS c_message, by AS c_by, was AS c_was, frame AS c_frame FROM correction WHERE message > ?) JOIN message ON message.id = c_message
	WHERE blank = 0 ORDER BY c_message, c_by LIMIT ?`

// House is what the walk over all houses needs of one.
type House struct {
	Site   int64
	Series []Measured
	PRV    string // when its regulator was installed, YYYY-MM-DD or YYYY, empty when not known
	Look   assess.Date
}

// Measured is a report's part in a house's series.
type Measured struct {
	Day        assess.Date
	PSI        *float64
	ValveWork  bool
	Unfinished bool
}

const (
	housesDue = `SELECT id FROM site WHERE look <> '' AND look <= ? AND joined IS NULL ORDER BY look, id LIMIT ?`
	houseOf1  = `SELECT day, house_psi, valve_work, unfinished FROM report WHERE site IN ` + groupOf1 + ` ORDER BY day, at`
	prvOf1    = `SELECT installed FROM equipment WHERE site IN ` + groupOf1 + ` AND item = 'prv' AND ended = '' AND absent = 0 ORDER BY n DESC LIMIT 1`
)

// HousesToLook returns houses for which the calendar alone may have changed
// what follows, by a day.
func (tx *Tx) HousesToLook(by assess.Date, limit int) ([]House, error) {
	ids, err := all(tx, scanID, housesDue, by.String(), limit)
	if err != nil {
		return nil, err
	}
	out := make([]House, 0, len(ids))
	for _, id := range ids {
		h, err := tx.house(id)
		if err != nil {
			return nil, err
		}
		out = append(out, h)
	}
	return out, nil
}

func scanID(scan func(...any) error) (id int64, err error) { return id, scan(&id) }

// house gathers one house with all that is joined to it.
func (tx *Tx) house(id int64) (House, error) {
	h := House{Site: id}
	var err error
	if h.Series, err = all(tx, scanMeasured, houseOf1, id); err != nil {
		return h, err
	}
	if _, err = tx.one([]any{&h.PRV}, prvOf1, id); err != nil {
		return h, err
	}
	var look string
	if _, err = tx.one([]any{&look}, `SELECT look FROM site WHERE id = ?`, id); err != nil {
		return h, err
	}
	return h, h.Look.UnmarshalText([]byte(look))
}

func scanMeasured(scan func(...any) error) (m Measured, err error) {
	var day string
	if err = scan(&day, &m.PSI, &m.ValveWork, &m.Unfinished); err != nil {
		return m, err
	}
	return m, m.Day.UnmarshalText([]byte(day))
}

// HousesAfter returns the houses after one, in the order of their numbers, read
// in three passes over the indexes, not house by house. Last is the number to
// go on from; 0 when there are no more.
func (tx *Tx) HousesAfter(site int64, limit int) (list []House, last int64, err error) {
	at := map[int64]int{}
	err = each(tx, func(scan func(...any) error) error {
		var h House
		var look string
		var joined bool
		if err := scan(&h.Site, &look, &joined); err != nil {
			return err
		}
		last = h.Site
		if joined {
			return nil // comes with the house it is joined to
		}
		at[h.Site] = len(list)
		list = append(list, h)
		return list[len(list)-1].Look.UnmarshalText([]byte(look))
	}, housesAfter, site, limit)
	if err != nil || last == 0 {
		return nil, 0, err
	}
	err = each(tx, func(scan func(...any) error) error {
		var id int64
		m, err := scanMeasured(func(dest ...any) error { return scan(append([]any{&id}, dest...)...) })
		if i, ok := at[id]; ok && err == nil {
			list[i].Series = append(list[i].Series, m)
		}
		return err
	}, seriesAfter, site, last)
	if err != nil {
		return nil, 0, err
	}
	err = each(tx, func(scan func(...any) error) error {
		var id int64
		var installed string
		err := scan(&id, &installed)
		if i, ok := at[id]; ok {
			list[i].PRV = installed
		}
		return err
	}, prvsAfter, site, last)
	if err != nil {
		return nil, 0, err
	}
	joined, err := all(tx, scanID, joinedAfter, site, last)
	for _, id := range joined {
		if i, ok := at[id]; ok && err == nil {
			list[i], err = tx.house(id)
		}
	}
	return list, last, err
}

const (
	housesAfter = `SELECT id, look, joined IS NOT NULL FROM site WHERE id > ? ORDER BY id LIMIT ?`
	seriesAfter = `SELECT site, day, house_psi, valve_work, unfinished FROM report WHERE site > ? AND site <= ? ORDER BY site, day, at`
	prvsAfter   = `SELECT site, installed FROM equipment WHERE site > ? AND site <= ? AND item = 'prv' AND ended = '' AND absent = 0`
	joinedAfter = `SELECT DISTINCT joined FROM site WHERE joined > ? AND joined <= ?`
)

// LookAt notes the day on which the calendar alone may next change what follows
// for a house.
func (tx *Tx) LookAt(site int64, day assess.Date) error {
	_, err := tx.exec(`UPDATE site SET look = ? WHERE id = ?`, day.String(), site)
	return err
}

// LastReport returns the newest report about a house.
func (tx *Tx) LastReport(site int64) (Report, bool, error) {
	return first(all(tx, scanReport, lastReport, site))
}

const lastReport = `SELECT ` + reportColumns + `, NULL FROM report r WHERE r.site IN ` + groupOf1 + ` ORDER BY r.day DESC, r.at DESC LIMIT 1`

// ByClock tells whether the calendar has opened a follow-up for an action after
// that message, with those words.
func (tx *Tx) ByClock(opened int64, action assess.Action, why string) (bool, error) {
	var one int
	return tx.one([]any{&one}, `SELECT 1 FROM follow_up WHERE opened = ? AND action = ? AND clock = 1 AND why = ? LIMIT 1`, opened, action, why)
}

// Walked returns how far a walk over all houses has come; done is true when it
// went to the end. A walk on another basis, or none, begins at 0.
func (tx *Tx) Walked(job, basis string) (site int64, done bool, err error) {
	_, err = tx.one([]any{&site, &done}, `SELECT site, done FROM walk WHERE job = ? AND basis = ?`, job, basis)
	return site, done, err
}

// KeepWalk notes how far a walk has come.
func (tx *Tx) KeepWalk(job, basis string, site int64, done bool) error {
	_, err := tx.exec(`INSERT INTO walk (job, basis, site, done) VALUES (?, ?, ?, ?)
		ON CONFLICT (job) DO UPDATE SET basis = excluded.basis, site = excluded.site, done = excluded.done`, job, basis, site, done)
	return err
}
