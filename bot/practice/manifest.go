package practice

import (
	"encoding/json"
	"errors"
	"fmt"
)

// FromManifest is the app that an app manifest (JSON) describes, with no more
// than the scopes, events, commands and shortcuts that it asks for: what the
// manifest has forgotten is missing here, too.
// Source: reference/app-manifest.
func FromManifest(manifest []byte) (AppOptions, error) {
	var m struct {
		Display struct {
			Name string `json:"name"`
		} `json:"display_information"`
		Features struct {
			Home struct {
				Home bool `json:"home_tab_enabled"`
			} `json:"app_home"`
			Bot struct {
				Name string `json:"display_name"`
			} `json:"bot_user"`
			Shortcuts []struct {
				Name       string `json:"name"`
				Type       string `json:"type"`
				CallbackID string `json:"callback_id"`
			} `json:"shortcuts"`
			Commands []struct {
				Command     string `json:"command"`
				Description string `json:"description"`
				Hint        string `json:"usage_hint"`
				Escape      bool   `json:"should_escape"`
			} `json:"slash_commands"`
		} `json:"features"`
		OAuth struct {
			Scopes struct {
				Bot []string `json:"bot"`
			} `json:"scopes"`
		} `json:"oauth_config"`
		Settings struct {
			Events struct {
				Bot []string `json:"bot_events"`
			} `json:"event_subscriptions"`
			Interactivity struct {
				Enabled bool `json:"is_enabled"`
			} `json:"interactivity"`
		} `json:"settings"`
	}
	if err := json.Unmarshal(manifest, &m); err != nil {
		return AppOptions{}, fmt.Errorf("the manifest cannot be read: %w", err)
	}
	if m.Features.Bot.Name == "" {
		return AppOptions{}, errors.New("the manifest names no bot user")
	}
	if len(m.Features.Shortcuts) > 0 && !m.Settings.Interactivity.Enabled {
		return AppOptions{}, errors.New("the manifest has shortcuts, but interactivity is not enabled")
	}
	app := AppOptions{Name: m.Features.Bot.Name, NoHome: !m.Features.Home.Home,
		Scopes: append([]string{}, m.OAuth.Scopes.Bot...), Events: append([]string{}, m.Settings.Events.Bot...)}
	for _, s := range m.Features.Shortcuts {
		app.Shortcuts = append(app.Shortcuts, Shortcut{Name: s.Name, CallbackID: s.CallbackID, Global: s.Type == "global"})
	}
	for _, c := range m.Features.Commands {
		app.Commands = append(app.Commands, Command{Name: c.Command, Hint: c.Hint, About: c.Description, Escape: c.Escape})
	}
	return app, nil
}
