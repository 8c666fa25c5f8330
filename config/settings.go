package config

// Setting is one key of the configuration.
type Setting struct {
	Key     string // with its section: "shop.name"
	Default string // as it stands in the file
	Kind    Kind
	Says    string // what it is, for the person who fills it in
	Restart bool   // a running bot cannot take it up

	field func(*Config) any // where its value goes
}

// Secret tells whether the key names the file of a secret, which the
// environment may hold itself under the key without _file.
func (s Setting) Secret() bool { return s.Kind == SecretFile }

// section introduces a group of keys in the file.
type section struct{ name, says string }

func sections() []section {
	return []section{
		{"shop", "The shop and its working time."},
		{"pressure", "How pressure is judged. Local code decides: change these to what it says."},
		{"words", "The shop's own words: what people type, and the code it stands for. Example:\n  - {says: garage tap, means: side_bibb}"},
		{"jobs", "When things are done, as cron lines on the shop's wall clock:\nminute hour day-of-month month day-of-week. Empty switches one off."},
		{"slack", "Slack. Ids, not names: open a channel's or person's details to copy them.\nTokens never stand here: each comes from its own file, named here, or from the\nenvironment (LAZYHAND_SLACK_APP_TOKEN, LAZYHAND_SLACK_BOT_TOKEN,\nLAZYHAND_SLACK_SIGNING_SECRET)."},
		{"alerts", "What dispatch is told at once."},
		{"follow_ups", "Follow-ups that are due."},
		{"dialogue", "How the bot holds a talk."},
		{"retention", "How long what people wrote is kept. 0 keeps it for good."},
		{"health", "Where the program answers about its own state: /healthz /readyz /metrics."},
		{"backup", "Copies of the record."},
		{"record", "The shop's record, one file."},
		{"log", "What the program says about its own running."},
	}
}

// Settings returns every key, in the order of the file.
func Settings() []Setting {
	return []Setting{
		{"shop.name", `""`, Text, "Name on the customer's sheet.", false, func(c *Config) any { return &c.Shop.Name }},
		{"shop.phone", `""`, Phone, "Telephone on the customer's sheet.", false, func(c *Config) any { return &c.Shop.Phone }},
		{"shop.time_zone", "Local", Zone, "Time zone, like America/Chicago. Local is this machine's.", true, func(c *Config) any { return &c.Shop.Zone }},
		{"shop.language", "en", Language, "Language of what the bot posts by itself: en or es. It answers people in theirs.", false, func(c *Config) any { return &c.Shop.Language }},
		{"shop.working_days", "[mon, tue, wed, thu, fri]", Weekdays, "Days on which follow-ups are put before the team.", false, func(c *Config) any { return &c.Shop.WorkingDays }},
		{"shop.working_hours", `"08:00-17:00"`, HoursKind, "Working hours.", false, func(c *Config) any { return &c.Shop.WorkingHours }},
		{"shop.holidays", "[]", Days, "Days off, as [2026-11-26, 2026-12-25].", false, func(c *Config) any { return &c.Shop.Holidays }},
		{"shop.quiet_hours", `"20:00-06:30"`, HoursKind, "Nothing but an emergency is posted in these hours. none switches them off.", false, func(c *Config) any { return &c.Shop.QuietHours }},

		{"pressure.band_psi", "[40, 80]", Band, "Static house pressure that is right, psi, both limits included.\nModel plumbing codes ask for a regulator above 80.", false, func(c *Config) any { return &c.Pressure.BandPSI }},
		{"pressure.gauge_grade", "B", GaugeGrade, "Accuracy grade of the crew's test gauges by ASME B40.100: 4A 3A 2A 1A A B C D.", false, func(c *Config) any { return &c.Pressure.GaugeGrade }},
		{"pressure.gauge_span_psi", "160", PSI, "Full scale of the test gauges, psi.", false, func(c *Config) any { return &c.Pressure.GaugeSpanPSI }},
		{"pressure.service_years", "[10, 15]", Band, "A regulator is near the end of its service life from the first, past it from the\nsecond, in years. Used until the shop's own records tell better.", false, func(c *Config) any { return &c.Pressure.ServiceYears }},
		{"pressure.tank_top_psi", "0", PSIOrNone, "Highest pressure an expansion tank must hold the house to, psi; 0: the band's top.", false, func(c *Config) any { return &c.Pressure.TankTopPSI }},
		{"pressure.base_rates", "{}", Rates, "How common each cause is in the shop's area, between 0 and 1, where it differs\nfrom the built-in table: {passing: 0.2, no_prv: 0.1}.", false, func(c *Config) any { return &c.Pressure.BaseRates }},

		{"words", "[]", Words, "", false, func(c *Config) any { return &c.Words }},

		{"jobs.follow_ups", `"0 7 * * 1-5"`, Cron, "Follow-ups that are due.", false, func(c *Config) any { return &c.Jobs.FollowUps }},
		{"jobs.weekly_summary", `"0 16 * * 5"`, Cron, "The team's summary of the week.", false, func(c *Config) any { return &c.Jobs.WeeklySummary }},
		{"jobs.monthly_life", `"0 8 1 * *"`, Cron, "How long the shop's regulators last, fitted anew.", false, func(c *Config) any { return &c.Jobs.MonthlyLife }},
		{"jobs.nightly_sweep", `"15 3 * * *"`, Cron, "Retention, and a look for what was left undone.", false, func(c *Config) any { return &c.Jobs.NightlySweep }},
		{"jobs.backup", `"45 3 * * *"`, Cron, "A copy of the record.", false, func(c *Config) any { return &c.Jobs.Backup }},

		{"slack.app_token_file", `""`, SecretFile, "File with the app-level token (xapp-…).", true, func(c *Config) any { return &c.Slack.AppToken }},
		{"slack.bot_token_file", `""`, SecretFile, "File with the bot token (xoxb-…).", true, func(c *Config) any { return &c.Slack.BotToken }},
		{"slack.signing_secret_file", `""`, SecretFile, "File with the signing secret; needed for requests over HTTP only.", true, func(c *Config) any { return &c.Slack.SigningSecret }},
		{"slack.listen", `""`, Address, "Address for Slack's requests over HTTP, like 127.0.0.1:8080 behind a proxy.\nEmpty: the bot connects by itself (Socket Mode).", true, func(c *Config) any { return &c.Slack.Listen }},
		{"slack.field_channels", "[]", Channels, "Channels in which the crew reports.", false, func(c *Config) any { return &c.Slack.FieldChannels }},
		{"slack.dispatch_channel", `""`, Channel, "Channel in which dispatch gets its alerts.", false, func(c *Config) any { return &c.Slack.DispatchChannel }},
		{"slack.team_channel", `""`, Channel, "Channel for summaries and follow-ups.", false, func(c *Config) any { return &c.Slack.TeamChannel }},
		{"slack.role_field", "[]", People, "Who may report: people (U…) and groups (S…). Empty: everybody in the field channels.", false, func(c *Config) any { return &c.Slack.FieldRole }},
		{"slack.role_dispatch", "[]", People, "Who may take alerts and move follow-ups.", false, func(c *Config) any { return &c.Slack.DispatchRole }},
		{"slack.role_admin", "[]", People, "Who may forget houses and people.", false, func(c *Config) any { return &c.Slack.AdminRole }},
		{"slack.shared_channels", "false", Flag, "Read messages of other workspaces in channels shared with them.", false, func(c *Config) any { return &c.Slack.SharedChannels }},
		{"slack.guests", "false", Flag, "Read messages of guests.", false, func(c *Config) any { return &c.Slack.Guests }},

		{"alerts.raise", "[low, high, not_regulating, seat_creep, restricted, set_low, set_high, dark_water, drift_up, drift_down, jump, street_low, street_strong]", Codes, "Findings of urgency \"soon\" that are told to dispatch at once; those of urgency\n\"now\" always are. A valve's age and a missing tank wait for the summary.", false, func(c *Config) any { return &c.Alerts.Raise }},
		{"alerts.claim_minutes", "15", Whole, "Minutes until an urgent alert that nobody took is told again.", false, func(c *Config) any { return &c.Alerts.ClaimMinutes }},
		{"alerts.escalate_to", `""`, Anyone, "Who is told then: a person (U…), group (S…) or channel (C…).", false, func(c *Config) any { return &c.Alerts.EscalateTo }},
		{"alerts.dispatcher_phone", `""`, Phone, "Telephone of the dispatcher, shown with urgent answers.", false, func(c *Config) any { return &c.Alerts.DispatcherPhone }},

		{"follow_ups.at_most_a_day", "10", Whole, "How many are put before the team in a day; the rest waits for the next.", false, func(c *Config) any { return &c.FollowUps.AtMostADay }},

		{"dialogue.site_holds", "12h", Duration, "How long a message without an address is taken to be about the thread's house.", false, func(c *Config) any { return &c.Dialogue.SiteHolds }},

		{"retention.message_days", "0", Whole, "Days until the words of a message are erased; what was measured stays.", false, func(c *Config) any { return &c.Retention.MessageDays }},
		{"retention.visit_days", "0", Whole, "Days until a visit is erased with everything told on it.", false, func(c *Config) any { return &c.Retention.VisitDays }},

		{"health.listen", "127.0.0.1:8645", Address, "Keep it on a loopback address unless something guards it. Empty: nowhere.", true, func(c *Config) any { return &c.Health.Listen }},

		{"backup.folder", `""`, Path, "Folder for copies of the record. Empty: a folder backup beside it.", false, func(c *Config) any { return &c.Backup.Folder }},
		{"backup.stale_after", "36h", Duration, "The check command complains when the last copy is older.", false, func(c *Config) any { return &c.Backup.StaleAfter }},
		{"backup.keep", "14", Whole, "Copies kept; the oldest goes first.", false, func(c *Config) any { return &c.Backup.Keep }},

		{"record.file", `""`, Path, "File of the record. Empty: in the user's data folder.", true, func(c *Config) any { return &c.Record.File }},

		{"log.level", "info", LogLevel, "debug, info, warn or error. What people write stands in none of them.", false, func(c *Config) any { return &c.Log.Level }},
	}
}
