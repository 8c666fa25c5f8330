package config

import (
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"log/slog"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"
	"time"
)

var update = flag.Bool("update", false, "rewrite the example file in testdata")

// file writes a configuration and returns its name.
func file(t *testing.T, text string) string {
	t.Helper()
	name := filepath.Join(t.TempDir(), "lazyhand.yaml")
	if err := os.WriteFile(name, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	return name
}

func TestTheWrittenFileSaysTheDefaults(t *testing.T) {
	got, err := Load(Options{File: file(t, Document())})
	if err != nil {
		t.Fatal(err)
	}
	got.File = ""
	if want := Default(); !reflect.DeepEqual(got, want) {
		t.Errorf("the file gives\n%+v\nthe defaults are\n%+v", got, want)
	}
	example := filepath.Join("..", "testdata", "config", "lazyhand.yaml")
	if *update {
		if err := os.WriteFile(example, []byte(Document()), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	kept, err := os.ReadFile(example)
	if err != nil {
		t.Fatal(err)
	}
	if string(kept) != Document() {
		t.Errorf("%s is not what init writes: go test ./config -update, and read the difference", example)
	}
}

func TestEveryKeySaysWhatItIsAndFillsAFieldOfItsOwn(t *testing.T) {
	seen := map[any]string{}
	var c Config
	for _, s := range Settings() {
		if s.Says == "" && s.Key != "words" {
			t.Errorf("%s says nothing", s.Key)
		}
		section, _, _ := strings.Cut(s.Key, ".")
		if !isSection(section) {
			t.Errorf("%s has no section", s.Key)
		}
		p := s.field(&c)
		if other := seen[p]; other != "" {
			t.Errorf("%s and %s fill one field", s.Key, other)
		}
		seen[p] = s.Key
	}
	// Every leaf of Config is filled by some key.
	var leaves func(v reflect.Value, path string)
	leaves = func(v reflect.Value, path string) {
		for i := range v.NumField() {
			f, name := v.Field(i), path+v.Type().Field(i).Name
			if !v.Type().Field(i).IsExported() || name == "File" {
				continue
			}
			if f.Kind() == reflect.Struct && f.Type() != reflect.TypeFor[Hours]() && f.Type() != reflect.TypeFor[Secret]() {
				leaves(f, name+".")
				continue
			}
			if seen[f.Addr().Interface()] == "" {
				t.Errorf("no key fills %s", name)
			}
		}
	}
	leaves(reflect.ValueOf(&c).Elem(), "")
}

func TestDefaultsAreThoseOfTheTrade(t *testing.T) {
	c := Default()
	// 80 psi: Uniform Plumbing Code 608.2 and International Plumbing Code 604.8
	// ask for a regulator above it. 40 psi and 10 to 15 years: common practice.
	if c.Pressure.BandPSI != [2]float64{40, 80} || c.Pressure.ServiceYears != [2]float64{10, 15} || c.Pressure.TankTopPSI != 0 {
		t.Errorf("%+v", c.Pressure)
	}
	if c.Shop.Zone == nil || c.Slack.Configured() || !strings.HasPrefix(c.Health.Listen, "127.0.0.1:") {
		t.Errorf("%+v", c)
	}
}

func TestFlagsGoBeforeTheEnvironmentBeforeTheFile(t *testing.T) {
	name := file(t, "shop:\n  name: File\n  phone: \"+1 555 010 0100\"\n  language: es\npressure: {band_psi: [45, 75]}\n")
	c, err := Load(Options{
		File:  name,
		Env:   []string{"HOME=/x", "LAZYHAND_SHOP_NAME=Environment", "LAZYHAND_SHOP_PHONE=555 010 0199", "LAZYHAND_SLACK_FIELD_CHANNELS=C0000000001, C0000000002", "LAZYHAND_SHOP_QUIET_HOURS=none"},
		Flags: []string{"shop.name=Flag", "alerts.claim_minutes=20"},
	})
	if err != nil {
		t.Fatal(err)
	}
	if c.Shop.Name != "Flag" || c.Shop.Phone != "555 010 0199" || c.Shop.Language != "es" || c.Pressure.BandPSI != [2]float64{45, 75} ||
		c.Alerts.ClaimMinutes != 20 || !slices.Equal(c.Slack.FieldChannels, []string{"C0000000001", "C0000000002"}) || c.Shop.QuietHours != (Hours{}) {
		t.Errorf("%+v", c)
	}
}

func TestAFaultIsNamedWithItsLineAndASuggestion(t *testing.T) {
	cron := func(s string) error {
		if len(strings.Fields(s)) != 5 {
			return errors.New("a cron line has five parts")
		}
		return nil
	}
	tests := []struct{ what, text, want string }{
		{"a slip in a key", "shop:\n  name: x\n  timezone: UTC\n", "line 3: shop.timezone: there is no such key: did you mean shop.time_zone?"},
		{"a key of another section", "shop:\n  band_psi: [40, 80]\n", "line 2: shop.band_psi: there is no such key: did you mean pressure.band_psi?"},
		{"a slip in a section", "# a comment\nslak:\n  guests: true\n", "line 2: slak: there is no such key: did you mean slack?"},
		{"a key with no section", "time_zone: UTC\n", "line 1: time_zone: there is no such key: did you mean shop.time_zone?"},
		{"a key nobody knows", "shop:\n  zzzzzz: 1\n", "line 2: shop.zzzzzz: there is no such key: lazyhand init --print"},
		{"a dotted key", "shop.name: x\n", "line 1: shop.name: write it as name"},
		{"a capital", "Shop:\n  name: x\n", "line 1: Shop: there is no such key: did you mean shop?"},
		{"a key twice", "shop:\n  name: a\n  name: b\n", "line 3"},
		{"a channel's name", "slack:\n  field_channels:\n    - C0000000001\n    - \"#field\"\n", `line 4: slack.field_channels: "#field" is no channel id`},
		{"a channel's name for dispatch", "slack:\n  dispatch_channel: dispatch\n", `line 2: slack.dispatch_channel: "dispatch" is no channel id`},
		{"a person's name", "slack:\n  role_admin: [Sam]\n", `line 2: slack.role_admin: "Sam" is no id of a person`},
		{"a zone of everyday speech", "shop:\n  time_zone: Eastern\n", `line 2: shop.time_zone: "Eastern" is no time zone: did you mean America/New_York?`},
		{"a zone with a blank", "shop:\n  time_zone: America/Los Angeles\n", "did you mean America/Los_Angeles?"},
		{"a city", "shop:\n  time_zone: phoenix\n", "did you mean America/Phoenix?"},
		{"a language's name", "shop:\n  language: spanish\n", `line 2: shop.language: "spanish" is not known`},
		{"a language's name nearby", "shop:\n  language: english\n", `did you mean en?`},
		{"a cron line", "jobs:\n  follow_ups: \"0 7 * *\"\n", "line 2: jobs.follow_ups: a cron line has five parts"},
		{"a band upside down", "pressure:\n  band_psi: [80, 40]\n", "line 2: pressure.band_psi: it must be two numbers above 0, the lower first"},
		{"a band of one", "pressure:\n  band_psi: 80\n", "line 2: pressure.band_psi"},
		{"no number", "pressure:\n  tank_top_psi: high\n", `line 2: pressure.tank_top_psi: "high" must be a number`},
		{"half a minute", "alerts:\n  claim_minutes: 1.5\n", "line 2: alerts.claim_minutes: 1.5 must be a whole number"},
		{"a grade of no standard", "pressure:\n  gauge_grade: E\n", `line 2: pressure.gauge_grade: "E" is not known`},
		{"a day that is none", "shop:\n  holidays: [2026-12-25, 2026-02-30]\n", `line 2: shop.holidays: "2026-02-30" is no day`},
		{"hours", "shop:\n  working_hours: 8 to 5\n", "line 2: shop.working_hours"},
		{"a weekday", "shop:\n  working_days: [mon, thurs]\n", "did you mean thu?"},
		{"a telephone without quotes", "shop:\n  phone: 5550100\n", "put it between double quotes"},
		{"a share above one", "pressure:\n  base_rates: {passing: 20}\n", "line 2: pressure.base_rates: passing: 20 must lie between 0 and 1"},
		{"a word of three parts", "words:\n  - {says: garage tap, means: side_bibb}\n  - {says: x}\n", "line 3: words: a word is written like"},
		{"a token in the file", "slack:\n  bot_token: xoxb-1\n", "line 2: slack.bot_token: a secret never stands in this file"},
		{"a secret's file that is not there", "slack:\n  bot_token_file: nowhere\n", "line 2: slack.bot_token_file: cannot read the secret"},
		{"no YAML", "shop:\n  name: [\n", "this is not written as YAML"},
		{"a list", "- a\n- b\n", "a configuration is lines of"},
		{"a value for a section", "shop: x\n", "line 1: shop: it holds keys of its own"},
		{"binary", "\x00\x01\x02", "YAML"},
	}
	for _, tt := range tests {
		t.Run(tt.what, func(t *testing.T) {
			name := file(t, tt.text)
			_, err := Load(Options{File: name, Checks: map[string]func(string) error{"jobs.follow_ups": cron}})
			if err == nil || !strings.Contains(err.Error(), tt.want) || strings.Contains(err.Error(), "\n") {
				t.Fatalf("got %v\nwant one line with %s", err, tt.want)
			}
			if strings.Contains(err.Error(), "xoxb-1") {
				t.Errorf("the error shows the secret: %v", err)
			}
		})
	}
}

func TestFaultsOfTheEnvironmentAndFlagsAreNamed(t *testing.T) {
	tests := []struct {
		env, flag, want string
	}{
		{"LAZYHAND_SHOP_TIMEZONE=UTC", "", "LAZYHAND_SHOP_TIMEZONE: this variable sets nothing: did you mean LAZYHAND_SHOP_TIME_ZONE?"},
		{"LAZYHAND_SHOP_LANGUAGE=xx", "", "LAZYHAND_SHOP_LANGUAGE: shop.language"},
		{"LAZYHAND_WORDS=a", "", "they stand in the file only"},
		{"", "shop.language=xx", "--set shop.language: shop.language"},
		{"", "shop.nam=x", "did you mean shop.name?"},
		{"", "shop.name", "key=value"},
		{"", "slack.bot_token=xoxb-1", "never from a flag"},
	}
	for _, tt := range tests {
		opt := Options{}
		if tt.env != "" {
			opt.Env = []string{tt.env}
		}
		if tt.flag != "" {
			opt.Flags = []string{tt.flag}
		}
		_, err := Load(opt)
		if err == nil || !strings.Contains(err.Error(), tt.want) || strings.Contains(err.Error(), "xoxb-1") {
			t.Errorf("%s%s: got %v\nwant %s", tt.env, tt.flag, err, tt.want)
		}
	}
}

func TestAllFaultsAreListed(t *testing.T) {
	_, err := Load(Options{File: file(t, "shop:\n  language: xx\n  time_zone: yy\npressure:\n  gauge_grade: Z\n")})
	var problems Problems
	if !errors.As(err, &problems) || len(problems) != 3 || problems[0].Line != 2 || problems[2].Line != 5 {
		t.Errorf("got %v", err)
	}
}

func TestAFileThatIsMissing(t *testing.T) {
	missing := filepath.Join(t.TempDir(), "no.yaml")
	if _, err := Load(Options{File: missing, Optional: true}); err != nil {
		t.Errorf("the user's own file need not exist: %v", err)
	}
	if _, err := Load(Options{File: missing}); err == nil || !strings.Contains(err.Error(), "lazyhand init") {
		t.Errorf("a named file must exist: %v", err)
	}
	for _, empty := range []string{"", "# nothing yet\n", "shop:\n", "---\n"} {
		if _, err := Load(Options{File: file(t, empty)}); err != nil {
			t.Errorf("%q: %v", empty, err)
		}
	}
}

func TestSecretsComeFromFilesOrTheEnvironmentAndNeverPrint(t *testing.T) {
	dir := t.TempDir()
	if err := os.WriteFile(filepath.Join(dir, "bot"), []byte("xoxb-hidden-1\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	name := filepath.Join(dir, "lazyhand.yaml")
	if err := os.WriteFile(name, []byte("slack:\n  bot_token_file: bot\n  app_token_file: nowhere\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	c, err := Load(Options{File: name, Env: []string{"LAZYHAND_SLACK_APP_TOKEN=xapp-hidden-2"}})
	if err != nil {
		t.Fatal(err)
	}
	if c.Slack.BotToken.Reveal() != "xoxb-hidden-1" || c.Slack.AppToken.Reveal() != "xapp-hidden-2" {
		t.Errorf("got %q and %q", c.Slack.BotToken.Reveal(), c.Slack.AppToken.Reveal())
	}
	var logged strings.Builder
	slog.New(slog.NewJSONHandler(&logged, nil)).Info("x", "config", c, "slack", c.Slack, "token", c.Slack.BotToken)
	slog.New(slog.NewTextHandler(&logged, nil)).Info("x", "config", c, "token", c.Slack.BotToken)
	js, err := json.Marshal(c)
	if err != nil {
		t.Fatal(err)
	}
	for how, text := range map[string]string{
		"json": string(js), "v": fmt.Sprintf("%v", c), "+v": fmt.Sprintf("%+v", c), "#v": fmt.Sprintf("%#v", c.Slack), "log": logged.String(),
	} {
		if strings.Contains(text, "hidden") {
			t.Errorf("%s shows a secret: %s", how, text)
		}
	}
	for what, text := range map[string]string{"empty": "", "two lines": "a\nb\n", "long": strings.Repeat("x", 10_000)} {
		if err := os.WriteFile(filepath.Join(dir, "bot"), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
		if _, err := Load(Options{File: name, Env: []string{"LAZYHAND_SLACK_APP_TOKEN=x"}}); err == nil {
			t.Errorf("a secret's file that is %s was taken", what)
		}
	}
}

func TestChangesSayWhatNeedsARestart(t *testing.T) {
	before, err := Load(Options{Flags: []string{"shop.time_zone=America/Chicago"}})
	if err != nil {
		t.Fatal(err)
	}
	after, err := Load(Options{Flags: []string{"shop.time_zone=America/Chicago", "alerts.claim_minutes=5", "slack.listen=:8080", "shop.name=x"}})
	if err != nil {
		t.Fatal(err)
	}
	safe, restart := Changes(before, after)
	if !slices.Equal(safe, []string{"alerts.claim_minutes", "shop.name"}) || !slices.Equal(restart, []string{"slack.listen"}) {
		t.Errorf("safe %v, restart %v", safe, restart)
	}
	kept := KeepRestart(before, after)
	if kept.Alerts.ClaimMinutes != 5 || kept.Slack.Listen != "" {
		t.Errorf("kept %+v", kept)
	}
	if safe, restart = Changes(kept, after); len(safe) > 0 || !slices.Equal(restart, []string{"slack.listen"}) {
		t.Errorf("what needs a restart is still to be told: safe %v, restart %v", safe, restart)
	}
	if safe, restart = Changes(after, after); len(safe)+len(restart) > 0 {
		t.Errorf("nothing changed, but %v %v", safe, restart)
	}
}

func TestHoursReachOverMidnight(t *testing.T) {
	at := func(s string) time.Time {
		v, err := time.Parse("15:04", s)
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	tests := []struct {
		hours, in, out string
	}{
		{"08:00-17:00", "08:00 12:30 16:59", "07:59 17:00 00:00"},
		{"20:00-06:30", "20:00 23:59 00:00 06:29", "06:30 12:00 19:59"},
		{"00:00-24:00", "00:00 12:00 23:59", ""},
		{"none", "", "00:00 12:00"},
	}
	for _, tt := range tests {
		h, err := ParseHours(tt.hours)
		if err != nil {
			t.Fatal(err)
		}
		if h.String() != tt.hours {
			t.Errorf("%s prints as %s", tt.hours, h)
		}
		for _, s := range strings.Fields(tt.in) {
			if !h.Holds(at(s)) {
				t.Errorf("%s does not hold %s", tt.hours, s)
			}
		}
		for _, s := range strings.Fields(tt.out) {
			if h.Holds(at(s)) {
				t.Errorf("%s holds %s", tt.hours, s)
			}
		}
	}
	for _, bad := range []string{"8-17", "08:00", "25:00-26:00", "08:00-17:00-18:00"} {
		if _, err := ParseHours(bad); err == nil {
			t.Errorf("%q was taken", bad)
		}
	}
}

func TestTheWrittenFileIsPrivateAndNeverReplacesOne(t *testing.T) {
	name := filepath.Join(t.TempDir(), "new", "lazyhand.yaml")
	if err := Write(name); err != nil {
		t.Fatal(err)
	}
	info, err := os.Stat(name)
	if err != nil || info.Mode().Perm() != 0o600 {
		t.Errorf("mode %v, %v", info.Mode(), err)
	}
	if err := Write(name); err == nil || !strings.Contains(err.Error(), "exists already") {
		t.Errorf("a second time: %v", err)
	}
}

func TestPlacesFollowTheUsersFolders(t *testing.T) {
	data := t.TempDir()
	t.Setenv("XDG_DATA_HOME", data)
	got, err := Config{}.RecordFile()
	if err != nil || got != filepath.Join(data, "lazyhand", "lazyhand.db") {
		t.Errorf("%s, %v", got, err)
	}
	if got := (Config{}).BackupFolder("/srv/shop.db"); got != "/srv/backup" {
		t.Error(got)
	}
	if f, optional, err := FileFor("", []string{"LAZYHAND_CONFIG=/etc/l.yaml"}); f != "/etc/l.yaml" || optional || err != nil {
		t.Errorf("%s %v %v", f, optional, err)
	}
	if f, _, _ := FileFor("mine.yaml", []string{"LAZYHAND_CONFIG=/etc/l.yaml"}); f != "mine.yaml" {
		t.Errorf("the flag goes before the environment, got %s", f)
	}
}

// FuzzLoad: whatever stands in the file, it is taken whole or refused in one
// line.
func FuzzLoad(f *testing.F) {
	f.Add(Document())
	f.Add("shop:\n  name: x\n  timezone: UTC\n")
	f.Add("words:\n  - {says: a, means: b}\npressure: {base_rates: {passing: 0.2}}\n")
	f.Add("a: &a [*a]\n")
	dir := f.TempDir()
	f.Fuzz(func(t *testing.T, text string) {
		name := filepath.Join(dir, fmt.Sprintf("%x.yaml", len(text)))
		if err := os.WriteFile(name, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
		c, err := Load(Options{File: name})
		if err != nil {
			if strings.Contains(err.Error(), "\n") {
				t.Errorf("more than a line: %q", err)
			}
			return
		}
		if c.Shop.Zone == nil || !(c.Pressure.BandPSI[0] < c.Pressure.BandPSI[1]) {
			t.Errorf("taken, but not valid: %+v", c)
		}
	})
}
