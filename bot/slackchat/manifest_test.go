package slackchat_test

import (
	"encoding/json"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"lazyhand/bot/practice"
	"lazyhand/bot/slackchat"
)

// schema compiles one of Slack's schemas; see testdata/schema/README.md.
func schema(t *testing.T, name string) *jsonschema.Schema {
	t.Helper()
	c := jsonschema.NewCompiler()
	// Go's patterns know no lookahead; the schema uses one, for domain names
	// that the manifest has none of.
	c.UseRegexpEngine(func(p string) (jsonschema.Regexp, error) {
		re, err := regexp.Compile(strings.ReplaceAll(p, `(?![\.\-])`, ""))
		return pattern{re}, err
	})
	s, err := c.Compile(filepath.Join("..", "..", "testdata", "schema", name+".schema.json"))
	must(t, err)
	return s
}

type pattern struct{ *regexp.Regexp }

// conforms holds JSON to a schema.
func conforms(t *testing.T, s *jsonschema.Schema, what string, raw []byte) {
	t.Helper()
	v, err := jsonschema.UnmarshalJSON(strings.NewReader(string(raw)))
	must(t, err)
	if err := s.Validate(v); err != nil {
		t.Errorf("%s: %v\n%s", what, err, raw)
	}
}

func TestTheManifestIsOneThatSlackTakes(t *testing.T) {
	s := schema(t, "slack-manifest")
	for name, u := range map[string]slackchat.Uses{"socket": {}, "groups": {Groups: true}, "http": {RequestURL: "https://bot.example.com/slack"}} {
		raw, err := slackchat.Manifest(u)
		must(t, err)
		conforms(t, s, name, raw)
		if hasURL := strings.Contains(string(raw), `"request_url"`) || strings.Contains(string(raw), `"url"`); hasURL != (u.RequestURL != "") {
			t.Errorf("%s: an address is there: %v", name, hasURL)
		}
		var m struct {
			Settings struct {
				Socket   bool `json:"socket_mode_enabled"`
				Rotation bool `json:"token_rotation_enabled"`
			}
			OAuth struct {
				Scopes struct{ Bot []string }
			} `json:"oauth_config"`
		}
		must(t, json.Unmarshal(raw, &m))
		if m.Settings.Socket == (u.RequestURL != "") || m.Settings.Rotation || slices.Contains(m.OAuth.Scopes.Bot, "usergroups:read") != u.Groups {
			t.Errorf("%s: %+v", name, m)
		}
	}
	for _, bad := range []string{"http://bot.example.com", "bot.example.com", "https://", "::"} {
		if _, err := slackchat.Manifest(slackchat.Uses{RequestURL: bad}); err == nil {
			t.Errorf("%q was taken", bad)
		}
	}
}

// The bot does all that it does with the scopes and events of its manifest.
func TestTheManifestsScopesAreEnough(t *testing.T) {
	app := practice.MainApp("lazyhand")
	app.Commands = []practice.Command{{Name: slackchat.Command}}
	for _, s := range (slackchat.Uses{}).Scopes() {
		app.Scopes = append(app.Scopes, s.Name)
	}
	app.Events = slackchat.Uses{}.Events()
	s := open(t, practice.Options{Apps: []practice.AppOptions{app}})
	ts := s.say("rosa", "field", "", "92 rear, 123 Elm")
	_, id, err := s.Share("rosa", "field", ts, "", practice.File{Name: "a.m4a", MIME: "audio/mp4", Voice: true, Bytes: []byte("x")})
	must(t, err)
	must(t, s.FinishTranscript(id, "and sixty one at the laundry"))
	must(t, s.Slash(t.Context(), "rosa", "field", "/lazyhand", "due"))
	s.say("rosa", s.DM("rosa", s.app.ID), "", "help")
	ref, err := s.bot.Post(t.Context(), reply("reply:1", ts))
	must(t, err)
	if _, found, err := s.bot.Find(t.Context(), reply("reply:1", ts)); !found || err != nil {
		t.Errorf("found %v %v", found, err)
	}
	_ = ref
	s.until("all is there", func() bool { return len(s.messages()) == 5 })
	for _, c := range s.Calls() {
		if c.Error != "" {
			t.Errorf("%s: %s", c.Method, c.Error)
		}
	}
}

func TestCheckSaysWhatIsMissingAndHowToMendIt(t *testing.T) {
	says := func(s *shop, o slackchat.Options, uses slackchat.Uses, channels map[string]string) string {
		var b strings.Builder
		for _, f := range slackchat.Check(t.Context(), o, uses, channels) {
			sign := "ok "
			if f.Bad {
				sign = "BAD "
			} else if f.Note {
				sign = "note "
			}
			b.WriteString(sign + f.What + ": " + f.Says + "\n")
		}
		return b.String()
	}
	channels := map[string]string{field: "slack.field_channels", dispatch: "slack.dispatch_channel", "C404": "slack.team_channel"}
	s := open(t, practice.Options{})
	s.Remove("dispatch", s.app.Name)
	got := says(s, s.options(), slackchat.Uses{}, channels)
	for _, want := range []string{"ok slack sign-in: @lazyhand in practice", "ok slack scopes", "note slack scopes: not needed:", "ok slack channel: " + field, "BAD slack channel: " + dispatch + " (slack.dispatch_channel): the bot is not in it; write /invite",
		"BAD slack channel: C404 (slack.team_channel): there is no such channel", "ok slack socket mode", "note slack events: ", "message.channels"} {
		if !strings.Contains(got, want) {
			t.Errorf("%q is missing in\n%s", want, got)
		}
	}
	s.DisableLink(s.app.ID)
	if got := says(s, s.options(), slackchat.Uses{}, nil); !strings.Contains(got, "BAD slack socket mode") || !strings.Contains(got, "switch it on") {
		t.Errorf("got\n%s", got)
	}
	s.Revoke(s.app.BotToken)
	if got := says(s, s.options(), slackchat.Uses{}, nil); !strings.Contains(got, "BAD slack sign-in: Slack says token_revoked") {
		t.Errorf("got\n%s", got)
	}
	few := practice.MainApp("lazyhand")
	few.Scopes = []string{"chat:write", "channels:history"}
	s = open(t, practice.Options{Apps: []practice.AppOptions{few}})
	if got := says(s, s.options(), slackchat.Uses{}, channels); !strings.Contains(got, "BAD slack scopes: missing: app_mentions:read (to hear when it is spoken to by name), groups:history") || !strings.Contains(got, "reinstall the app") {
		t.Errorf("got\n%s", got)
	}
	away := s.options()
	away.APIURL = "http://127.0.0.1:1/"
	if got := says(s, away, slackchat.Uses{}, nil); !strings.Contains(got, "BAD slack sign-in: Slack cannot be reached") {
		t.Errorf("got\n%s", got)
	}
}
