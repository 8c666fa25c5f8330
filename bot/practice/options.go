package practice

import (
	"crypto/rand"
	"io"
	"time"
)

// Options says what a workspace holds when it starts. The zero value is a
// workspace with an invented crew, the channels field, dispatch and team, the
// main app and a second, empty one.
type Options struct {
	// Name of the workspace. Default "practice".
	Name string
	// URL is the address under which the handler is reached, such as
	// "http://127.0.0.1:4080", without a slash at the end. Empty: taken from
	// the first request.
	URL string
	// Users who are people. Default: DefaultCrew.
	Users []User
	// Groups are user groups. Default: DefaultGroups.
	Groups []Group
	// Channels. Default: field, dispatch and team, with everybody in them.
	Channels []ChannelOptions
	// Apps that are installed. Default: MainApp and SecondApp. The first is
	// the one that the page shows a home tab and direct messages for when it
	// opens.
	Apps []AppOptions
	// Location is the wall clock that the page shows and that "next Monday
	// 7:00" is counted on. Default time.UTC.
	Location *time.Location
	// Now is the clock under the workspace's own; see Workspace.Now. Default
	// time.Now.
	Now func() time.Time
	// Moved is called after the workspace's clock was moved forward, with the
	// new time, so that what falls due can be done at once. It runs on the
	// mover's goroutine and may use the workspace.
	Moved func(now time.Time)
	// Random feeds tokens and ids. Default crypto/rand.
	Random io.Reader
	// AckWithin is how long a payload waits for its acknowledgement, by Now.
	// Default 3 seconds, which is the platform's (apis/events-api).
	AckWithin time.Duration
	// RetryAfter are the pauses before each delivery again, on the
	// workspace's clock. Default: at once, 1 minute, 5 minutes (apis/events-api).
	RetryAfter []time.Duration
	// PingEvery is the pause between pings on a socket. Default 10 seconds.
	PingEvery time.Duration
	// HoldRates makes the Web API refuse calls above the platform's rates.
	// It can be switched while running, see Faults.
	HoldRates bool
	// Panel is shown on the page as the workspace's purpose, one sentence.
	Panel string
}

// User is a person in the workspace.
type User struct {
	ID       string         // "U…"; empty: made up
	Name     string         // short name, lower case, one word
	RealName string         // as shown
	Title    string         // what they do
	Location *time.Location // default: the workspace's
	Guest    bool           // a multi-channel guest (is_restricted)
	Stranger bool           // a member of another organisation in a shared channel
	Admin    bool           // a workspace administrator
}

// Group is a user group, mentioned as <!subteam^ID>.
type Group struct {
	ID     string   // "S…"; empty: made up
	Handle string   // lower case, one word
	Name   string   // as shown
	Users  []string // names or ids of the members
}

// ChannelOptions is a channel to begin with.
type ChannelOptions struct {
	ID      string   // "C…"; empty: made up
	Name    string   // without "#"
	Topic   string   // what it is for, shown on the page
	Private bool     // a private channel (channel_type "group")
	Shared  bool     // shared with another organisation (is_ext_shared)
	Members []string // names or ids of people; nil: all who are not guests
	NoApps  bool     // no app is a member to begin with
}

// AppOptions is an installed app.
type AppOptions struct {
	ID       string // "A…"; empty: made up
	Name     string // of its bot user, lower case, one word
	BotToken string // "xoxb-…"; empty: made up
	AppToken string // "xapp-…"; empty: made up
	// Scopes of the bot token; nil: all that the workspace knows.
	Scopes []string
	// Events the app has asked for, such as "message.channels"; nil: all.
	Events []string
	// Commands are the slash commands the app owns, with the slash. An app
	// with AnyCommand takes those that nobody owns.
	Commands   []Command
	AnyCommand bool
	// Shortcuts of messages, and global ones.
	Shortcuts []Shortcut
	// SigningSecret signs what is sent to RequestURL; empty: made up.
	SigningSecret string
	// RequestURL, when set, receives events, interactions and commands by
	// HTTP instead of a socket.
	RequestURL string
	// NoHome switches the home tab off (views.publish answers not_enabled).
	NoHome bool
}

// Command is a slash command.
type Command struct {
	Name  string `json:"name"`  // with the slash
	Hint  string `json:"hint"`  // what may follow it
	About string `json:"about"` // what it does
	// Escape turns names in its text into references (should_escape).
	Escape bool `json:"escape"`
}

// Shortcut is an entry of a message's menu or, when it is global, one that can
// be chosen anywhere.
type Shortcut struct {
	Name       string `json:"name"`
	CallbackID string `json:"callback_id"`
	Global     bool   `json:"global"`
}

// DefaultCrew is an invented crew: two techs, an apprentice, a dispatcher and
// the owner. No such people exist.
func DefaultCrew() []User {
	return []User{
		{ID: "U00000001", Name: "rosa", RealName: "Rosa Quillfeather", Title: "tech (invented)"},
		{ID: "U00000002", Name: "beto", RealName: "Beto Marlowick", Title: "tech (invented)"},
		{ID: "U00000003", Name: "pim", RealName: "Pim Undergale", Title: "apprentice (invented)"},
		{ID: "U00000004", Name: "dee", RealName: "Dee Hartwhistle", Title: "dispatcher (invented)"},
		{ID: "U00000005", Name: "owen", RealName: "Owen Pipersgate", Title: "owner (invented)", Admin: true},
	}
}

// DefaultGroups are the user groups of the invented crew.
func DefaultGroups() []Group {
	return []Group{
		{ID: "S00000001", Handle: "techs", Name: "Techs", Users: []string{"rosa", "beto", "pim"}},
		{ID: "S00000002", Handle: "dispatchers", Name: "Dispatchers", Users: []string{"dee", "owen"}},
	}
}

// DefaultChannels are field, dispatch and team.
func DefaultChannels() []ChannelOptions {
	return []ChannelOptions{
		{ID: "C00000001", Name: "field", Topic: "Readings from the houses"},
		{ID: "C00000002", Name: "dispatch", Topic: "Alerts and what is due", Members: []string{"dee", "owen"}},
		{ID: "C00000003", Name: "team", Topic: "Summaries for everybody"},
	}
}

// MainApp is the app that the workspace is opened for.
func MainApp(name string) AppOptions {
	return AppOptions{ID: "A00000001", Name: name}
}

// SecondApp is an empty app for whoever wants to join with a client of their
// own: it may do everything, has asked for every event and takes the slash
// commands that nobody else owns.
func SecondApp() AppOptions {
	return AppOptions{ID: "A00000002", Name: "guestbot", AnyCommand: true,
		Shortcuts: []Shortcut{{Name: "Send to the second app", CallbackID: "second_app"}}}
}

func (o Options) withDefaults() Options {
	if o.Name == "" {
		o.Name = "practice"
	}
	if o.Users == nil {
		o.Users = DefaultCrew()
		if o.Groups == nil {
			o.Groups = DefaultGroups()
		}
		if o.Channels == nil {
			o.Channels = DefaultChannels()
		}
	}
	if o.Channels == nil {
		o.Channels = DefaultChannels()
		for i := range o.Channels {
			o.Channels[i].Members = nil
		}
	}
	if o.Apps == nil {
		o.Apps = []AppOptions{MainApp("mainbot"), SecondApp()}
	}
	if o.Location == nil {
		o.Location = time.UTC
	}
	if o.Now == nil {
		o.Now = time.Now
	}
	if o.Random == nil {
		o.Random = rand.Reader
	}
	if o.AckWithin <= 0 {
		o.AckWithin = 3 * time.Second
	}
	if o.RetryAfter == nil {
		o.RetryAfter = []time.Duration{0, time.Minute, 5 * time.Minute}
	}
	if o.PingEvery <= 0 {
		o.PingEvery = 10 * time.Second
	}
	return o
}
