package slackchat

import (
	"encoding/json"
	"strconv"
	"strings"
	"time"
)

// The shapes of what the platform sends, read leniently: only what is used is
// named, a field of another type than expected is left empty where the rest
// still makes sense, and everything new is passed over.

// envelope is one frame of Socket Mode.
type envelope struct {
	Type         string          `json:"type"`
	ID           string          `json:"envelope_id"`
	Reason       string          `json:"reason"` // of a disconnect
	Payload      json.RawMessage `json:"payload"`
	RetryAttempt int             `json:"retry_attempt"`
	RetryReason  string          `json:"retry_reason"`
}

// callback is what the Events API delivers.
type callback struct {
	Type      string          `json:"type"` // event_callback, url_verification, app_rate_limited
	Challenge string          `json:"challenge"`
	TeamID    string          `json:"team_id"`
	EventID   string          `json:"event_id"`
	Shared    bool            `json:"is_ext_shared_channel"`
	Event     json.RawMessage `json:"event"`
}

// event is an inner event; a message is one too, in the history as well.
type event struct {
	Type        string   `json:"type"`
	Subtype     string   `json:"subtype"`
	Channel     channel  `json:"channel"`
	ChannelType string   `json:"channel_type"`
	User        string   `json:"user"`
	BotID       string   `json:"bot_id"`
	AppID       string   `json:"app_id"`
	Team        string   `json:"team"`
	UserTeam    string   `json:"user_team"`
	SourceTeam  string   `json:"source_team"`
	ClientMsgID string   `json:"client_msg_id"`
	Text        string   `json:"text"`
	Blocks      blocks   `json:"blocks"`
	Files       files    `json:"files"`
	TS          string   `json:"ts"`
	ThreadTS    string   `json:"thread_ts"`
	LatestReply string   `json:"latest_reply"`
	DeletedTS   string   `json:"deleted_ts"`
	Message     *event   `json:"message"`
	Previous    *event   `json:"previous_message"`
	Edited      *edition `json:"edited"`
	Tab         string   `json:"tab"`
	FileID      string   `json:"file_id"`
	Metadata    metadata `json:"metadata"`
}

type edition struct {
	TS string `json:"ts"`
}

// metadata is what a post of ours carries unseen.
type metadata struct {
	EventType string         `json:"event_type"`
	Payload   map[string]any `json:"event_payload"`
}

// channel is a channel's id, which some events give as an object.
type channel string

// UnmarshalJSON takes a string or an object with an id.
func (c *channel) UnmarshalJSON(b []byte) error {
	var s string
	if json.Unmarshal(b, &s) != nil {
		var o struct{ ID string }
		_ = json.Unmarshal(b, &o)
		s = o.ID
	}
	*c = channel(s)
	return nil
}

// blocks are the blocks of a message that can be read; malformed ones are left
// out, the text stands for them.
type blocks []block

// UnmarshalJSON never fails.
func (l *blocks) UnmarshalJSON(b []byte) error {
	var raw []json.RawMessage
	if json.Unmarshal(b, &raw) != nil {
		return nil
	}
	for _, r := range raw {
		var one block
		if json.Unmarshal(r, &one) != nil {
			one = block{Type: "unreadable"}
		}
		*l = append(*l, one)
	}
	return nil
}

// block is a block, or an element of one, of rich text.
type block struct {
	Type     string  `json:"type"`
	Elements []block `json:"elements"`
	Text     wording `json:"text"`
	URL      string  `json:"url"`
	UserID   string  `json:"user_id"`
	Channel  string  `json:"channel_id"`
	Group    string  `json:"usergroup_id"`
	Name     string  `json:"name"`
	Range    string  `json:"range"`
	Fallback string  `json:"fallback"`
	Style    style   `json:"style"`
	Rows     [][]block
}

// wording is a text, or the text of a text object.
type wording string

// UnmarshalJSON never fails.
func (w *wording) UnmarshalJSON(b []byte) error {
	var s string
	if json.Unmarshal(b, &s) != nil {
		var o struct{ Text string }
		_ = json.Unmarshal(b, &o)
		s = o.Text
	}
	*w = wording(s)
	return nil
}

// style of a text element, or of a list ("bullet", "ordered").
type style struct {
	Strike, Code bool
	List         string
}

// UnmarshalJSON never fails.
func (s *style) UnmarshalJSON(b []byte) error {
	if json.Unmarshal(b, &s.List) == nil {
		return nil
	}
	var o struct{ Strike, Code bool }
	_ = json.Unmarshal(b, &o)
	s.Strike, s.Code = o.Strike, o.Code
	return nil
}

// files are the files of a message that can be read.
type files []file

// UnmarshalJSON never fails.
func (l *files) UnmarshalJSON(b []byte) error {
	var raw []json.RawMessage
	if json.Unmarshal(b, &raw) != nil {
		return nil
	}
	for _, r := range raw {
		var one file
		if json.Unmarshal(r, &one) == nil {
			*l = append(*l, one)
		}
	}
	return nil
}

// file is an uploaded file.
type file struct {
	ID            string `json:"id"`
	Subtype       string `json:"subtype"`
	MIME          string `json:"mimetype"`
	Permalink     string `json:"permalink"`
	Private       string `json:"url_private"`
	VTT           string `json:"vtt"`
	Transcription struct {
		Status  string `json:"status"`
		Preview struct {
			Content string `json:"content"`
			HasMore bool   `json:"has_more"`
		} `json:"preview"`
	} `json:"transcription"`
}

// voice tells whether the file is an audio clip that somebody spoke.
func (f file) voice() bool { return f.Subtype == "slack_audio" }

// picture tells whether the file is a picture.
func (f file) picture() bool { return strings.HasPrefix(f.MIME, "image/") }

// link is the address under which a member of the workspace sees the file.
func (f file) link() string {
	if f.Permalink != "" {
		return f.Permalink
	}
	return f.Private
}

// timeOf reads a ts, which is seconds and microseconds; the zero time when it
// is none.
func timeOf(ts string) time.Time {
	sec, frac, _ := strings.Cut(ts, ".")
	s, err := strconv.ParseInt(sec, 10, 64)
	if err != nil || s <= 0 {
		return time.Time{}
	}
	us, err := strconv.ParseInt((frac + "000000")[:6], 10, 64)
	if err != nil {
		us = 0
	}
	return time.Unix(s, us*1000).UTC()
}

// tsOf writes a time as the platform does.
func tsOf(t time.Time) string {
	us := t.UnixMicro()
	return strconv.FormatInt(us/1e6, 10) + "." + strconv.FormatInt(1e6+us%1e6, 10)[1:]
}
