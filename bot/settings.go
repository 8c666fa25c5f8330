package main

import (
	"os"
	"slices"
	"strings"
	"time"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/config"
	"lazyhand/intents"
	"lazyhand/schedule"
)

// settings reads the configuration that the flags and the environment choose.
func (p *program) settings() (config.Config, error) {
	env := os.Environ()
	file, optional, err := config.FileFor(p.configFile, env)
	if err != nil {
		return config.Config{}, err
	}
	flags := p.set
	if p.dbFile != "" {
		flags = append(flags[:len(flags):len(flags)], "record.file="+p.dbFile)
	}
	c, err := config.Load(config.Options{File: file, Optional: optional, Env: env, Flags: flags, Checks: settingChecks()})
	if err == nil && p.fit != nil {
		p.fit(&c)
	}
	return c, err
}

// settingChecks judges what only the other packages know.
func settingChecks() map[string]func(string) error {
	checks := map[string]func(string) error{
		"words": func(means string) error {
			return intents.Word{Says: "a word", Means: means}.Check()
		},
		"alerts.raise":        config.OneOf(assess.FindingCodes()...),
		"pressure.base_rates": config.OneOf(causes()...),
	}
	for _, s := range config.Settings() {
		if s.Kind == config.Cron {
			name := strings.TrimPrefix(s.Key, "jobs.")
			checks[s.Key] = func(line string) error {
				_, err := schedule.New(time.UTC, map[string]string{name: line})
				return err
			}
		}
	}
	return checks
}

// causes returns the causes whose base rates a shop may know better.
func causes() []string {
	all := []assess.Cause{
		assess.CauseSound, assess.CauseSetHigh, assess.CauseSetLow, assess.CausePassing, assess.CauseSeatCreep,
		assess.CauseRestricted, assess.CauseElastomer, assess.CauseNoPRV, assess.CauseExpansion, assess.CauseStreetLow,
		assess.CauseGauge,
	}
	var names []string
	for _, c := range all {
		names = append(names, string(c))
	}
	return names
}

// shopOf returns what the settings say about judging pressure.
func shopOf(c config.Config) assess.Shop {
	shop := assess.Shop{
		BandPSI:      c.Pressure.BandPSI,
		Gauge:        assess.GaugeSpec{Grade: c.Pressure.GaugeGrade, SpanPSI: c.Pressure.GaugeSpanPSI},
		ServiceYears: c.Pressure.ServiceYears,
		TankTopPSI:   c.Pressure.TankTopPSI,
	}
	for cause, rate := range c.Pressure.BaseRates {
		if shop.BaseRates == nil {
			shop.BaseRates = map[assess.Cause]float64{}
		}
		shop.BaseRates[assess.Cause(cause)] = rate
	}
	return shop
}

// wordsOf returns the shop's own words for the parser.
func wordsOf(c config.Config) []intents.Word {
	var words []intents.Word
	for _, w := range c.Words {
		words = append(words, intents.Word(w))
	}
	return words
}

// pureSettings are those of a pure command: the file that --config names, and
// nothing of the user's own, so that the same input has the same output
// everywhere.
func (p *program) pureSettings() (config.Config, error) {
	if p.configFile == "" && len(p.set) == 0 {
		return config.Default(), nil
	}
	return config.Load(config.Options{File: p.configFile, Flags: p.set, Checks: settingChecks()})
}

// deskOptions are the settings as the desk wants them.
func deskOptions(c config.Config) desk.Options {
	opt := desk.Options{
		Zone:     c.Shop.Zone,
		Lang:     assess.Lang(c.Shop.Language),
		Shop:     shopOf(c),
		Words:    wordsOf(c),
		Field:    c.Slack.FieldChannels,
		Dispatch: c.Slack.DispatchChannel,
		Team:     c.Slack.TeamChannel,
		Jobs: map[string]string{
			desk.JobFollowUps: c.Jobs.FollowUps,
			desk.JobSummary:   c.Jobs.WeeklySummary,
			desk.JobSweep:     c.Jobs.NightlySweep,
			desk.JobLife:      c.Jobs.MonthlyLife,
		},
		Calendar: schedule.Calendar{
			Zone:     c.Shop.Zone,
			Days:     c.Shop.WorkingDays,
			Hours:    schedule.Hours(c.Shop.WorkingHours),
			Holidays: c.Shop.Holidays,
			Quiet:    schedule.Hours(c.Shop.QuietHours),
		},
		ClaimWithin: time.Duration(c.Alerts.ClaimMinutes) * time.Minute,
		AtMostADay:  c.FollowUps.AtMostADay,
		KeepWords:   c.Retention.MessageDays,
		KeepVisits:  c.Retention.VisitDays,
		Memory:      c.Dialogue.SiteHolds,
		Alerts: func(f assess.Finding) bool {
			return f.Urgency == assess.Now || f.Urgency == assess.Soon && slices.Contains(c.Alerts.Raise, f.Code)
		},
		Phone:   c.Alerts.DispatcherPhone,
		Painter: painterOf(c),
	}
	if to := c.Alerts.EscalateTo; strings.HasPrefix(to, "C") || strings.HasPrefix(to, "G") {
		opt.EscalateIn = to
	} else {
		opt.EscalateTo = to
	}
	return opt
}

// terminalOptions are the settings for the chat in the terminal: it has
// channels of its own, and whoever sits there is never asleep.
func terminalOptions(c config.Config) desk.Options {
	opt := deskOptions(c)
	opt.Dispatch, opt.Team = terminalDispatch, terminalTeam
	opt.Calendar = schedule.Calendar{Zone: c.Shop.Zone}
	return opt
}
