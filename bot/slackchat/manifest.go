package slackchat

import (
	"encoding/json"
	"fmt"
	"net/url"
	"unicode/utf8"
)

// Uses say what of the platform a shop makes use of; each costs a scope.
type Uses struct {
	Groups     bool   // roles are given by user groups
	RequestURL string // requests over HTTP come here; empty: Socket Mode
}

// Scope is a permission of the bot token, and what it is for.
type Scope struct {
	Name, For string
}

// Scopes are the least permissions that the bot needs.
func (u Uses) Scopes() []Scope {
	list := []Scope{
		{"app_mentions:read", "to hear when it is spoken to by name"},
		{"channels:history", "to read the public channels it was invited to"},
		{"groups:history", "to read the private channels it was invited to"},
		{"im:history", "to read direct messages to it"},
		{"chat:write", "to answer"},
		{"commands", "for /lazyhand and the shortcuts"},
		{"reactions:write", "to mark a report as stored, asked about or set aside"},
		{"users:read", "to know names, and guests from members"},
		{"files:read", "to read the words of audio clips"},
		{"files:write", "to post plots and papers"},
	}
	if u.Groups {
		list = append(list, Scope{"usergroups:read", "to know who is in the groups that the roles name"})
	}
	return list
}

// Events are the events that the bot asks for.
func (Uses) Events() []string {
	return []string{"app_home_opened", "app_mention", "file_change", "message.channels", "message.groups", "message.im"}
}

// manifest is an app manifest, in the order in which it is printed.
// Source: reference/app-manifest.
type manifest struct {
	Metadata struct {
		Major int `json:"major_version"`
		Minor int `json:"minor_version"`
	} `json:"_metadata"`
	Display struct {
		Name        string `json:"name"`
		Description string `json:"description"`
		Long        string `json:"long_description"`
		Background  string `json:"background_color"`
	} `json:"display_information"`
	Features struct {
		Home struct {
			Home     bool `json:"home_tab_enabled"`
			Messages bool `json:"messages_tab_enabled"`
			ReadOnly bool `json:"messages_tab_read_only_enabled"`
		} `json:"app_home"`
		Bot struct {
			Name   string `json:"display_name"`
			Online bool   `json:"always_online"`
		} `json:"bot_user"`
		Shortcuts []manifestShortcut `json:"shortcuts"`
		Commands  []manifestCommand  `json:"slash_commands"`
	} `json:"features"`
	OAuth struct {
		Scopes struct {
			Bot []string `json:"bot"`
		} `json:"scopes"`
	} `json:"oauth_config"`
	Settings struct {
		Events struct {
			URL string   `json:"request_url,omitempty"`
			Bot []string `json:"bot_events"`
		} `json:"event_subscriptions"`
		Interactivity struct {
			Enabled bool   `json:"is_enabled"`
			URL     string `json:"request_url,omitempty"`
		} `json:"interactivity"`
		OrgDeploy     bool `json:"org_deploy_enabled"`
		SocketMode    bool `json:"socket_mode_enabled"`
		TokenRotation bool `json:"token_rotation_enabled"`
	} `json:"settings"`
}

type manifestShortcut struct {
	Name        string `json:"name"`
	Type        string `json:"type"`
	CallbackID  string `json:"callback_id"`
	Description string `json:"description"`
}

type manifestCommand struct {
	Command     string `json:"command"`
	URL         string `json:"url,omitempty"`
	Description string `json:"description"`
	Hint        string `json:"usage_hint"`
	Escape      bool   `json:"should_escape"`
}

// Command is the bot's slash command.
const Command = "/lazyhand"

// Manifest returns the app manifest as JSON, to be pasted where an app is
// made. It fails on a request URL that the platform would not take.
func Manifest(u Uses) ([]byte, error) {
	var m manifest
	m.Metadata.Major, m.Metadata.Minor = 2, 1
	m.Display.Name = "Lazyhand"
	m.Display.Description = "Keeps the water pressure readings that a plumbing crew writes, and says what they mean."
	m.Display.Long = "Write what the gauge shows and where, such as: 92 rear bibb, heater idle, 123 Elm St. Lazyhand keeps it with the house, says whether it is in the band, " +
		"what is the likely cause and what to do next, tells dispatch what cannot wait and reminds the team of what is due. " +
		"It decides nothing: local code and the licensed plumber do."
	m.Display.Background = "#31443f"
	m.Features.Home.Home, m.Features.Home.Messages = true, true
	m.Features.Bot.Name, m.Features.Bot.Online = "lazyhand", true
	m.Features.Shortcuts = []manifestShortcut{
		{"Report this", "message", ShortcutMessage, "Send this message as a report of readings"},
		{"Report a reading", "global", ShortcutReport, "Enter a reading field by field"},
	}
	m.Features.Commands = []manifestCommand{{Command, u.RequestURL, "Report a reading or ask about a house", "92 rear bibb, heater idle, 123 Elm St | history 123 Elm St | due | form | help", true}}
	for _, s := range u.Scopes() {
		m.OAuth.Scopes.Bot = append(m.OAuth.Scopes.Bot, s.Name)
	}
	m.Settings.Events.Bot = u.Events()
	m.Settings.Interactivity.Enabled = true
	m.Settings.SocketMode = u.RequestURL == ""
	if u.RequestURL != "" {
		if a, err := url.Parse(u.RequestURL); err != nil || a.Scheme != "https" || a.Host == "" {
			return nil, fmt.Errorf("%q is no address that Slack can reach: it must begin with https://", u.RequestURL)
		}
		m.Settings.Events.URL, m.Settings.Interactivity.URL = u.RequestURL, u.RequestURL
	}
	for what, s := range map[string]string{"manifest.name": m.Display.Name, "manifest.description": m.Display.Description, "manifest.usage_hint": m.Features.Commands[0].Hint} {
		if utf8.RuneCountInString(s) > limit(what) {
			return nil, fmt.Errorf("%s is longer than Slack allows", what)
		}
	}
	return json.MarshalIndent(m, "", "  ")
}
