package desk

import (
	"strings"
	"time"

	"lazyhand/assess"
	"lazyhand/store"
)

// Message is one thing that a person did in chat.
type Message struct {
	Key     string // its name for ever: "<channel>/<ts>", with "#edited:…", in the order of the edits, or "#deleted" for what happened to it later
	Twin    string // another name of the same gesture, may be empty
	Kind    store.MessageKind
	About   string // key of the message that was edited or deleted
	Channel string
	Direct  bool   // said to the bot alone
	TS      string // the platform's name for it in its channel
	Thread  string // TS of the thread's first message; its own, or empty, when it starts one
	Author  string
	Name    string // the author's, when known
	At      time.Time
	Text    string
	Voice   bool     // heard, not typed
	Links   []string // pictures sent with it
	Mention bool     // speaks to the bot by name
	Button  string   // the button that was pressed, see Button; Text may hold what was typed with it
	Value   string
}

// PostKind is what a post does.
type PostKind string

// The kinds of post.
const (
	Say    PostKind = "say"    // a new message
	Change PostKind = "change" // a new wording of an earlier post of ours
	React  PostKind = "react"  // a mark on somebody's message
)

// Mark is a reaction on a person's message. At most one stands at a time: a new
// one takes the place of the last.
type Mark string

// The marks.
const (
	MarkStored   Mark = "stored"
	MarkQuestion Mark = "question"
	MarkSetAside Mark = "set_aside"
	MarkNone     Mark = "none" // takes ours away: nothing of the message stands any more
)

// DirectTo is the channel of a direct message that the bot begins: an at sign
// and the person's id.
func DirectTo(person string) string { return "@" + person }

// Post is something the bot says.
type Post struct {
	Key     string   `json:"-"`
	Kind    PostKind `json:"kind"`
	Channel string   `json:"-"`                // a channel, or DirectTo a person
	Thread  string   `json:"-"`                // ts of the thread it goes into; empty for a new one
	Under   string   `json:"under,omitempty"`  // key of our post whose thread it goes into
	Target  string   `json:"target,omitempty"` // Change: key of our post; React: ts of the message
	Ref     string   `json:"-"`                // the platform's name of Target, found when it is sent
	Mark    Mark     `json:"mark,omitempty"`
	Site    int64    `json:"site,omitempty"` // house that it is about, for what is said in its thread
	Body    Body     `json:"body,omitzero"`
}

// Body is what a post says, part by part, so that each platform can lay it out
// its way. Text is the whole in words.
type Body struct {
	Lead     string      `json:"lead"`               // the decision
	Heard    string      `json:"heard,omitempty"`    // what was understood
	Facts    []string    `json:"facts,omitempty"`    // two or three
	Next     []string    `json:"next,omitempty"`     // what to do
	Cautions []string    `json:"cautions,omitempty"` // what can hurt
	Buttons  []Button    `json:"buttons,omitempty"`
	Lang     assess.Lang `json:"lang,omitempty"`  // of the words; empty: the shop's
	Calls    []string    `json:"calls,omitempty"` // ids of people and groups that it calls by name
	Draw     *Drawing    `json:"draw,omitempty"`  // what to draw when it is sent
	Picture  *Picture    `json:"-"`               // drawn from Draw, for Chat.Post
	Chart    *Chart      `json:"-"`               // the same as numbers, nil where that cannot be
	File     *File       `json:"-"`               // likewise
}

// Button is one step that the reader may take by pressing.
type Button struct {
	Name  string `json:"name"`  // which of the desk's buttons, see the table in press.go
	Label string `json:"label"` // the outcome, in words
	Value string `json:"value"` // what it is about
}

// Text returns all that the body says, a line a part, in the order in which a
// tech needs it.
func (b Body) Text() string {
	lines := []string{b.Lead}
	add := func(prefix string, list ...string) {
		for _, s := range list {
			if s != "" {
				lines = append(lines, prefix+s)
			}
		}
	}
	add("", b.Heard)
	add("- ", b.Facts...)
	add("> ", b.Next...)
	add("! ", b.Cautions...)
	return strings.Join(lines, "\n")
}
