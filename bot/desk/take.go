package desk

import (
	"context"
	"encoding/json"
	"fmt"
	"strings"
	"time"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// triesBeforeSetAside is how often a message that makes us fail is tried.
const triesBeforeSetAside = 5

// turn is one message being dealt with inside one transaction.
type turn struct {
	*Desk
	tx     *store.Tx
	m      store.Message
	direct bool
	button string
	value  string
	typed  string // what was typed with a button
	person store.Person
	known  store.Person // as the record has it
	role   Role
	lang   assess.Lang
	day    assess.Date
	reply  string // key of the reply

	fresh    bool            // it has only just arrived: nothing is said or marked under its name yet
	quiet    bool            // nothing is said: the message was dealt with before
	ahead    *intents.Frame  // what it means when nothing is known beside its words, nil for not read yet
	unkept   json.RawMessage // its frame, to be kept together with its house
	reopened int64           // the alert that a withdrawn report had settled
	left     []int64         // the houses that lost a report by it

	which     *among             // the houses that the message may name
	earlier   []assess.Statement // what was told before and asked about, now filed with it
	amended   store.Message      // the report that its frame puts right
	righting  bool               // the reply says what was put right
	unsays    bool               // the report that was put right told more than what is planned
	replanned bool               // nothing but the day of what is planned was put right
	changed   string             // what that is
	unsaid    bool               // the reply is another report's
	alongside []string           // what moved to another house with the report that was put right
	opened    *store.SiteRecord  // the house that it put on record
}

// Take takes one message. A message that was taken before, under its key or
// its twin, changes nothing. What makes the bot fail is kept, answered with an
// apology and set aside; a fault of the disk is returned, and nothing is kept.
func (d *Desk) Take(ctx context.Context, m Message) error {
	if !d.listens(m) {
		return nil
	}
	ahead := d.readAhead(m)
	return d.store.Write(ctx, func(tx *store.Tx) error {
		row := store.Message{Key: m.Key, Twin: m.Twin, Kind: m.Kind, Channel: m.Channel, TS: m.TS, Thread: m.Thread,
			Author: m.Author, At: m.At, Text: m.Text, Voice: m.Voice, Links: m.Links}
		if row.Kind == "" {
			row.Kind = store.Said
		}
		if row.Thread == "" {
			row.Thread = m.TS
		}
		if row.Kind == store.Pressed {
			row.Text = strings.TrimSpace(m.Button + " " + m.Value + "\n" + m.Text)
		}
		var about store.Message
		if m.About != "" {
			found := false
			var err error
			if about, found, err = tx.MessageByKey(m.About); err != nil {
				return err
			}
			if !found && row.Kind != store.Pressed {
				// It came before what it is about: kept under the name of that,
				// so that what comes late changes nothing.
				row.Key, row.About = m.About, 0
				if row.Kind == store.Deleted {
					row.Kind, row.State = store.Said, store.Retracted
					return keepGone(tx, row)
				}
				row.Kind = store.Said
			}
			if found && row.Kind == store.Edited {
				late, err := comesLate(tx, about, row)
				if err != nil || late || about.Text == row.Text {
					return err // gone or said anew meanwhile, or nothing new
				}
			}
			if about.ID != 0 {
				row.About = about.ID
				if about.About != 0 {
					row.About = about.About // the first wording, whatever was edited since
				}
			}
		}
		id, fresh, err := tx.AddMessage(row)
		if err != nil || !fresh {
			return err
		}
		row.ID, row.State = id, store.Taken
		return d.handle(tx, row, about, m, ahead)
	})
}

// comesLate tells whether an edit comes after what happened to its message later: a newer
// edit, or its deletion. Who took a report back in words may well word it anew.
func comesLate(tx *store.Tx, about, edit store.Message) (bool, error) {
	if about.State != store.Retracted {
		return about.Kind == store.Edited && about.Key > edit.Key, nil
	}
	by, found, err := tx.Message(about.By)
	return !found || by.Kind == store.Deleted || moment(edit) < moment(by), err
}

// moment is when something was done, as the platform counts it.
func moment(m store.Message) string {
	if _, at, edited := strings.Cut(m.Key, "#edited:"); edited {
		return at
	}
	if m.Kind == store.Pressed {
		return m.Key[strings.LastIndexByte(m.Key, ':')+1:]
	}
	return m.TS
}

// readAhead reads a message before its turn in the record has come, so that
// many are read at once. What it means may depend on what is on record; then it
// is read again, see frame; so is a message that makes the parser fail.
func (d *Desk) readAhead(m Message) (ahead *intents.Frame) {
	if m.Kind != "" && m.Kind != store.Said {
		return nil
	}
	defer func() {
		if recover() != nil {
			ahead = nil
		}
	}()
	f := d.parser.Parse(m.Text, intents.Context{Today: assess.DateOf(m.At.In(d.opt.Zone))})
	return &f
}

// keepGone keeps a message that was deleted before it arrived: only its name,
// so that it is not taken later.
func keepGone(tx *store.Tx, row store.Message) error {
	row.Text, row.Links = "", nil
	id, fresh, err := tx.AddMessage(row)
	if err != nil || !fresh {
		return err
	}
	return tx.Mark(id, store.Retracted, "")
}

// listens tells whether a message is the bot's to read: what is said to it, in
// the field channels, and in the threads of what it posted itself.
func (d *Desk) listens(m Message) bool {
	inThread := m.Thread != "" && m.Thread != m.TS
	return m.Direct || m.Mention || m.Kind == store.Pressed || d.field[m.Channel] ||
		inThread && m.Channel != "" && (m.Channel == d.opt.Dispatch || m.Channel == d.opt.Team)
}

// handle works a message out in a savepoint, so that a message that makes us
// fail is kept all the same.
func (d *Desk) handle(tx *store.Tx, row, about store.Message, m Message, ahead *intents.Frame) error {
	t, err := d.turn(tx, row)
	if err != nil {
		return err
	}
	t.direct, t.ahead = m.Direct, ahead
	t.fresh = m.Key != "" && row.Kind == store.Said
	if m.Name != "" {
		t.person.Name = m.Name
	} else if t.person.Name == "" {
		t.person.Name = row.Author
	}
	if t.role > Outsider && t.person != t.known {
		if err := tx.KeepPerson(t.person); err != nil {
			return err
		}
	}
	err = tx.Savepoint(func() error { return t.work(about) })
	if err == nil || store.IsFault(err) {
		return err
	}
	return t.failed(err)
}

// turn begins to deal with a message.
func (d *Desk) turn(tx *store.Tx, row store.Message) (*turn, error) {
	t := &turn{Desk: d, tx: tx, m: row, role: d.opt.Role(row.Author), day: assess.DateOf(row.At.In(d.opt.Zone)), reply: replyKey(row.ID)}
	if row.Kind == store.Pressed {
		var first string
		first, t.typed, _ = strings.Cut(row.Text, "\n")
		t.button, t.value, _ = strings.Cut(first, " ")
	}
	var err error
	if t.known, err = tx.Person(row.Author); err != nil {
		return nil, err
	}
	t.person = t.known
	if row.Kind == store.Said || row.Kind == store.Edited {
		t.person.Heard = d.heard(t.person.Heard, row.Text)
	}
	t.lang = d.language(t.person)
	return t, nil
}

// replyKey names the reply to a message.
func replyKey(message int64) string { return fmt.Sprintf("reply:%d", message) }

// failed notes a message that made us fail; after the last try it is set aside
// and its author told.
func (t *turn) failed(why error) error {
	if t.m.Tries+1 < triesBeforeSetAside {
		return t.tx.Mark(t.m.ID, store.Waiting, why.Error())
	}
	if err := t.tx.Mark(t.m.ID, store.SetAside, why.Error()); err != nil {
		return err
	}
	if err := t.mark(t.m, MarkSetAside); err != nil {
		return err
	}
	return t.say(Body{Lead: t.words().Apology})
}

// work does what the message asks for.
func (t *turn) work(about store.Message) error {
	if t.role == Outsider {
		if t.direct || t.m.Kind == store.Pressed {
			return t.say(Body{Lead: t.words().NotCrew})
		}
		return nil
	}
	switch t.m.Kind {
	case store.Deleted:
		return t.retract(about)
	case store.Edited:
		return t.edited(about)
	case store.Pressed:
		return t.pressed()
	}
	return t.read()
}

// read finds out what was said and acts on it.
func (t *turn) read() error {
	if lang, ok := chosenLanguage(t.m.Text); ok {
		return t.choose(lang)
	}
	post, ours, err := t.root()
	if err != nil {
		return err
	}
	if ours {
		if done, err := t.heardUnder(post); done || err != nil {
			return err
		}
	}
	question, q, err := t.openQuestion()
	if err != nil {
		return err
	}
	site, remembered := store.SiteRecord{}, false
	if q != nil || t.ahead == nil || t.ahead.Site == "" || len(reports(*t.ahead)) == 0 { // else it names its own house
		if site, remembered, err = t.site(); err != nil {
			return err
		}
	}
	frame, err := t.understand(site, q)
	if err != nil {
		return err
	}
	frame = t.short(frame, post)
	if t.unkept, err = frame.MarshalJSON(); err != nil {
		return err
	}
	t.m.Frame = t.unkept
	if q != nil {
		if err := t.file(t.m, 0); err != nil {
			return err
		}
		if done, err := t.answer(question, frame); done || err != nil {
			return err
		}
	}
	if done, err := t.answersAnew(frame); err != nil {
		return err
	} else if done {
		return t.file(t.m, 0)
	}
	if done, err := t.handOver(frame, site); err != nil {
		return err
	} else if done {
		return t.file(t.m, 0)
	}
	if done, err := t.orders(frame); done || err != nil {
		return err
	}
	if done, err := t.askSameTwo(frame); done || err != nil {
		return err
	}
	if done, err := t.houses(frame, site); done || err != nil {
		return err
	}
	if isChatter(frame) {
		return t.chatter(frame)
	}
	return t.act(t.m, frame, site, remembered)
}

// chatter says nothing. Who says where they are has that house in hand from then
// on: "just got to 2210 Windrow Dr".
func (t *turn) chatter(f intents.Frame) error {
	if f.Site == "" || len(f.Unclear) > 0 || t.m.Kind != store.Said || !t.arrives(f) {
		if err := t.file(t.m, 0); err != nil {
			return err
		}
		return t.silence()
	}
	found, sure, err := t.resolve(assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}, true)
	if err != nil {
		return err
	}
	about := int64(0)
	if sure {
		about = found[0].Named
		if err := t.remember(found[0].ID, t.m.At); err != nil {
			return err
		}
	}
	return t.file(t.m, about)
}

// silence is the answer to chatter. A message that said something before it was
// edited loses its mark.
func (t *turn) silence() error {
	if t.m.Kind != store.Edited {
		return nil
	}
	if err := t.mark(t.m, MarkNone); err != nil {
		return err
	}
	return t.reword(Body{Lead: t.words().NothingLeft})
}

// frame reads the message with what is known beside its words. Where it names
// its own house, the house that would stand for one not named is none of its
// matter, and what was read ahead stands.
func (t *turn) frame(c intents.Context) intents.Frame {
	asks := c.Spanish && t.ahead != nil && len(t.ahead.Unclear) > 0 // in a language that may be the other one
	if t.ahead != nil && !asks && c.Question == nil && c.Told == nil && c.Again == "" && len(c.Sites) == 0 && (t.ahead.Site != "" || c.Site == "") {
		return *t.ahead
	}
	return t.parser.Parse(t.m.Text, c)
}

// file keeps the house that a message is about, 0 for none, and with it the
// frame of this one, when that is not kept yet.
func (t *turn) file(m store.Message, site int64) error {
	frame := t.unkept
	if frame == nil || m.ID != t.m.ID {
		if site == 0 {
			return nil
		}
		return t.tx.FileUnder(m.ID, site)
	}
	t.unkept = nil
	if site == 0 {
		return t.tx.Understood(m.ID, frame)
	}
	return t.tx.UnderstoodAbout(m.ID, frame, site)
}

func (t *turn) understood(f intents.Frame) error {
	raw, err := f.MarshalJSON()
	if err != nil {
		return err
	}
	t.m.Frame = raw
	return t.tx.Understood(t.m.ID, raw)
}

// isChatter tells whether a frame holds nothing for the bot.
func isChatter(f intents.Frame) bool {
	for _, s := range f.Statements {
		if a, ok := s.(intents.Ask); !ok || a.About != intents.AskNone {
			return false
		}
	}
	return len(f.Unclear) == 0
}

// root returns our own post that began the message's thread, if it is one.
func (t *turn) root() (post store.Post, ours bool, err error) {
	if t.m.Thread == t.m.TS {
		return post, false, nil // it began a thread of its own
	}
	return t.tx.PostByRef(t.m.Channel, t.m.Thread)
}

// place is the number of the message in the order in which it was first said: an edit
// says what it says where its message stands.
func (t *turn) place() int64 {
	if t.m.Kind == store.Edited && t.m.About != 0 {
		return t.m.About
	}
	return t.m.ID
}

// site returns the house that stands for one not named: that of our own post
// whose thread this is, the thread's, else the one the person last reported
// on, while that is fresh.
func (t *turn) site() (s store.SiteRecord, remembered bool, err error) {
	root, _, err := t.root()
	if err != nil {
		return s, false, err
	}
	id, err := siteOfPost(root)
	if err != nil {
		return s, false, err
	}
	if id == 0 {
		if id, err = t.tx.ThreadSite(t.m.Channel, t.m.Thread); err != nil {
			return s, false, err
		}
	}
	if id == 0 && t.person.Site != 0 && t.m.At.Sub(t.person.SiteAt) < t.opt.Memory && !t.m.At.Before(t.person.SiteAt.Add(-time.Minute)) {
		id, remembered = t.person.Site, true
	}
	if id == 0 {
		return s, false, nil
	}
	s, err = t.tx.Site(id)
	return s, remembered, err
}

// siteOfPost returns the house that a post of ours is about, 0 for none.
func siteOfPost(row store.Post) (int64, error) {
	if len(row.Body) == 0 {
		return 0, nil
	}
	var p Post
	if err := json.Unmarshal(row.Body, &p); err != nil {
		return 0, fmt.Errorf("read post %s: %w", row.Key, err)
	}
	return p.Site, nil
}
