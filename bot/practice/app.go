package practice

import (
	"slices"
	"strings"
)

// app is an installed app with its bot user.
type app struct {
	AppOptions
	userID  string // of the bot user
	botID   string
	sockets []*socket
	next    int             // the socket whose turn it is
	off     bool            // Socket Mode switched off
	opened  map[string]bool // people who opened the home tab
	homes   map[string]string
	tickets map[string]bool // unused socket addresses
	joined  bool            // a client has been on a socket
	held    *delivery       // the one that out-of-order delivery holds back
}

// actor is whoever a token speaks for.
type actor struct {
	token   string
	app     *app  // bot and app-level tokens
	user    *User // user tokens
	level   bool  // app-level token
	scopes  []string
	revoked bool
}

// botScopes are the scopes that the workspace knows for bot tokens.
var botScopes = []string{
	"app_mentions:read", "channels:history", "channels:join", "channels:read", "chat:write", "commands",
	"files:read", "files:write", "groups:history", "groups:read", "im:history", "im:read", "im:write",
	"mpim:history", "mpim:read", "reactions:read", "reactions:write", "usergroups:read", "users:read",
}

// userScopes are what the token of a crew member may do, for clients that
// play a person.
var userScopes = []string{
	"channels:history", "channels:read", "chat:write", "groups:history", "groups:read", "im:history",
	"im:read", "im:write", "reactions:read", "reactions:write", "users:read",
}

func (w *Workspace) addApp(o AppOptions) {
	a := &app{AppOptions: o, opened: map[string]bool{}, homes: map[string]string{}, tickets: map[string]bool{}}
	if a.ID == "" {
		a.ID = w.newID("A")
	}
	if a.BotToken == "" {
		a.BotToken = "xoxb-" + w.random(16)
	}
	if a.AppToken == "" {
		a.AppToken = "xapp-1-" + a.ID + "-" + w.random(16)
	}
	if a.SigningSecret == "" {
		a.SigningSecret = w.random(16)
	}
	if a.Scopes == nil {
		a.Scopes = botScopes
	}
	a.userID, a.botID = w.newID("U"), w.newID("B")
	w.apps = append(w.apps, a)
	w.tokens[a.BotToken] = &actor{token: a.BotToken, app: a, scopes: a.Scopes}
	w.tokens[a.AppToken] = &actor{token: a.AppToken, app: a, level: true, scopes: []string{"connections:write"}}
	for _, c := range w.channels {
		if !c.NoApps && !c.im {
			c.members = append(c.members, a.userID)
		}
	}
}

// App is what a client needs to join as one of the apps.
type App struct {
	ID, Name, BotToken, AppToken, SigningSecret string
	BotUserID, BotID                            string
	Sockets                                     int // open now
}

// Apps are the installed apps, in the order of the options.
func (w *Workspace) Apps() []App {
	w.mu.Lock()
	defer w.mu.Unlock()
	var out []App
	for _, a := range w.apps {
		out = append(out, App{ID: a.ID, Name: a.Name, BotToken: a.BotToken, AppToken: a.AppToken,
			SigningSecret: a.SigningSecret, BotUserID: a.userID, BotID: a.botID, Sockets: len(a.sockets)})
	}
	return out
}

// UserToken is the token with which a client speaks as that person.
func (w *Workspace) UserToken(user string) string {
	w.mu.Lock()
	defer w.mu.Unlock()
	if u := w.user(user); u != nil {
		return w.userToken(u)
	}
	return ""
}

func (w *Workspace) userToken(u *User) string {
	for t, a := range w.tokens {
		if a.user == u {
			return t
		}
	}
	return ""
}

// Revoke makes a token answer token_revoked from now on.
func (w *Workspace) Revoke(token string) {
	w.mu.Lock()
	defer w.mu.Unlock()
	if a := w.tokens[token]; a != nil {
		a.revoked = true
	}
}

// SetRequestURL makes an app receive by HTTP at that address; empty: by
// Socket Mode again.
func (w *Workspace) SetRequestURL(appID, address string) {
	w.mu.Lock()
	defer w.mu.Unlock()
	if a := w.app(appID); a != nil {
		a.RequestURL = address
	}
}

// app finds an app by its id, name, bot user or bot id; empty: the first.
// Caller holds mu.
func (w *Workspace) app(ref string) *app {
	for _, a := range w.apps {
		if ref == "" || a.ID == ref || a.Name == ref || a.userID == ref || a.botID == ref {
			return a
		}
	}
	return nil
}

// ownerOf finds the app that takes a slash command. Caller holds mu.
func (w *Workspace) ownerOf(command string) *app {
	for _, a := range w.apps {
		if slices.ContainsFunc(a.Commands, func(c Command) bool { return c.Name == command }) {
			return a
		}
	}
	for _, a := range w.apps {
		if a.AnyCommand {
			return a
		}
	}
	return nil
}

// wants reports whether the app has asked for an event and may have it.
func (a *app) wants(event string) bool {
	if a.Events != nil && !slices.Contains(a.Events, event) {
		return false
	}
	need := map[string]string{
		"app_mention": "app_mentions:read", "message.channels": "channels:history", "message.groups": "groups:history",
		"message.im": "im:history", "reaction_added": "reactions:read", "reaction_removed": "reactions:read",
		"file_change": "files:read", "file_shared": "files:read",
		"member_joined_channel": "channels:read",
	}[event]
	return need == "" || slices.Contains(a.Scopes, need)
}

// id is the user id that the actor posts as.
func (a *actor) id() string {
	if a.user != nil {
		return a.user.ID
	}
	return a.app.userID
}

func (a *actor) has(scope string) bool {
	for _, s := range strings.Split(scope, "|") {
		if slices.Contains(a.scopes, s) {
			return true
		}
	}
	return scope == ""
}
