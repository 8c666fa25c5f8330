package slackchat

import (
	"encoding/json"
	"slices"
	"strings"

	"lazyhand/bot/desk"
)

// Verdict says what became of a thing that arrived.
type Verdict string

// The verdicts. Refused is for what cannot be read; it is acknowledged all the
// same, since it would be no better the next time.
const (
	Taken   Verdict = "taken"
	Ignored Verdict = "ignored"
	Refused Verdict = "refused"
)

// arrival is what a payload was found to be.
type arrival struct {
	verdict  Verdict
	why      string         // the reason, in the platform's words
	messages []desk.Message // for the desk, in order
	team     string         // of the author, when that is another workspace's
	voice    string         // id of an audio clip whose words are not known yet
	hint     bool           // a file with no words, which starts a thread
	home     string         // person who opened the home tab
	fileID   string         // a file that changed
}

func ignored(why string) arrival { return arrival{verdict: Ignored, why: why} }
func refused(why string) arrival { return arrival{verdict: Refused, why: why} }

// self is who we are on the platform.
type self struct {
	userID, botID, teamID string
}

// readable are the subtypes of messages that people write. All others are the
// platform's own remarks.
var readable = []string{"", "file_share", "thread_broadcast", "me_message"}

// decodeCallback reads what the Events API delivers, over either way.
func decodeCallback(raw []byte, me self) arrival {
	var c callback
	if err := json.Unmarshal(raw, &c); err != nil {
		return refused("malformed payload")
	}
	switch c.Type {
	case "event_callback":
	case "app_rate_limited":
		return ignored("app_rate_limited: the workspace sent more than the app may hear; what is missing is read back")
	case "":
		return refused("payload without a type")
	default:
		return ignored("payload of type " + c.Type)
	}
	var e event
	if err := json.Unmarshal(c.Event, &e); err != nil {
		return refused("malformed event")
	}
	return decodeEvent(e, c, me)
}

func decodeEvent(e event, c callback, me self) arrival {
	switch e.Type {
	case "message", "app_mention":
		return decodeMessage(e, c, me)
	case "app_home_opened":
		if e.Tab != "home" {
			return ignored("app_home_opened of another tab")
		}
		return arrival{verdict: Taken, why: "home tab", home: e.User}
	case "file_change":
		if e.FileID == "" {
			return refused("file_change without a file")
		}
		return arrival{verdict: Taken, why: "a file changed", fileID: e.FileID}
	case "":
		return refused("event without a type")
	}
	return ignored("event of type " + e.Type)
}

// decodeMessage reads a message event.
func decodeMessage(e event, c callback, me self) arrival {
	channel := string(e.Channel)
	if channel == "" {
		return refused("message without a channel")
	}
	direct := e.ChannelType == "im" || e.ChannelType == "" && strings.HasPrefix(channel, "D")
	switch e.Subtype {
	case "message_changed":
		return decodeEdit(e, channel, direct, me)
	case "message_deleted":
		gone := e.DeletedTS
		if gone == "" && e.Previous != nil {
			gone = e.Previous.TS
		}
		if timeOf(gone).IsZero() {
			return refused("message_deleted without a ts")
		}
		old := event{TS: gone}
		if e.Previous != nil {
			old = *e.Previous
			old.TS = gone
		}
		if why := notAPerson(old, me); e.Previous != nil && why != "" {
			return ignored("deletion: " + why)
		}
		return deletion(old, channel, direct)
	}
	a := decodeSaid(e, channel, direct, me)
	if a.verdict == Taken {
		a.team = stranger(e, c, me)
	}
	return a
}

// decodeSaid reads a message as it stands, in an event or in the history.
func decodeSaid(e event, channel string, direct bool, me self) arrival {
	if !slices.Contains(readable, e.Subtype) {
		return ignored("message of subtype " + e.Subtype)
	}
	if why := notAPerson(e, me); why != "" {
		return ignored(why)
	}
	if timeOf(e.TS).IsZero() {
		return refused("message without a ts")
	}
	m := baseMessage(e, channel, direct)
	m.Text = typed(e.Text, e.Blocks)
	m.Mention = me.userID != "" && (strings.Contains(m.Text, "<@"+me.userID+">") || strings.Contains(e.Text, "<@"+me.userID+">") || strings.Contains(e.Text, "<@"+me.userID+"|"))
	a := arrival{verdict: Taken, why: "message"}
	for _, f := range e.Files {
		switch {
		case f.voice():
			m.Voice = true
			if f.Transcription.Status == "complete" && !f.Transcription.Preview.HasMore {
				m.Text = strings.TrimSpace(m.Text + "\n" + Escape(f.Transcription.Preview.Content))
			} else {
				a.voice = f.ID
			}
		case f.picture() && f.link() != "":
			m.Links = append(m.Links, f.link())
		}
	}
	a.hint = len(e.Files) > 0 && strings.TrimSpace(m.Text) == "" && a.voice == "" && (e.ThreadTS == "" || e.ThreadTS == e.TS)
	a.messages = []desk.Message{m}
	if e.Edited != nil {
		// Seen in the history, or delivered late: these are its newest words.
		if edit := editOf(m, e.Edited.TS); edit.Key != "" {
			a.messages = append(a.messages, edit)
		}
	}
	return a
}

// decodeEdit reads a message_changed. It also comes for previews of links and
// for replies that landed in a thread: then the words are the same.
func decodeEdit(e event, channel string, direct bool, me self) arrival {
	if e.Message == nil {
		return refused("message_changed without a message")
	}
	now := *e.Message
	if was := e.Previous; was != nil {
		if now.User == "" || now.Subtype == "tombstone" {
			now.User = was.User
		}
		now.TS = orElse(now.TS, was.TS)
	}
	if now.Subtype == "tombstone" {
		return deletion(now, channel, direct) // its thread goes on
	}
	if now.Edited == nil {
		return ignored("message_changed without an edit")
	}
	if e.Previous != nil && e.Previous.Text == now.Text && typed(e.Previous.Text, e.Previous.Blocks) == typed(now.Text, now.Blocks) {
		return ignored("message_changed with the same text")
	}
	a := decodeSaid(now, channel, direct, me)
	if a.verdict != Taken || len(a.messages) < 2 {
		return a
	}
	a.why, a.messages = "edit", a.messages[1:]
	return a
}

// deletion says that a message is gone.
func deletion(e event, channel string, direct bool) arrival {
	m := baseMessage(e, channel, direct)
	m.Kind, m.About = desk.Deleted, m.Key
	m.Key, m.Twin = m.About+"#deleted", ""
	return arrival{verdict: Taken, why: "deletion", messages: []desk.Message{m}}
}

// editOf makes the edit of a message at a ts; empty when that is none.
func editOf(m desk.Message, ts string) desk.Message {
	if timeOf(ts).IsZero() {
		return desk.Message{}
	}
	m.Kind, m.About, m.Twin = desk.Edited, m.Key, ""
	m.Key += "#edited:" + ts
	return m
}

func baseMessage(e event, channel string, direct bool) desk.Message {
	m := desk.Message{Key: channel + "/" + e.TS, Kind: desk.Said, Channel: channel, Direct: direct, TS: e.TS,
		Thread: e.ThreadTS, Author: e.User, At: timeOf(e.TS)}
	if m.Thread == "" {
		m.Thread = e.TS
	}
	if e.ClientMsgID != "" {
		m.Twin = "client:" + e.ClientMsgID
	}
	return m
}

// notAPerson tells why a message is none of a person's.
func notAPerson(e event, me self) string {
	switch {
	case e.User != "" && e.User == me.userID, e.BotID != "" && e.BotID == me.botID:
		return "our own message"
	case e.BotID != "" || e.AppID != "" || e.Subtype == "bot_message":
		return "message of another app"
	case e.User == "USLACKBOT":
		return "message of the platform"
	case e.User == "":
		return "message without an author"
	}
	return ""
}

// stranger returns the workspace of an author who is not of ours.
func stranger(e event, c callback, me self) string {
	home := me.teamID
	if home == "" {
		home = c.TeamID
	}
	for _, team := range []string{e.UserTeam, e.SourceTeam, e.Team} {
		if team != "" && home != "" && team != home {
			return team
		}
	}
	return ""
}
