package main

import (
	"slices"
	"testing"
	"time"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/config"
)

func TestTheDefaultsPassEveryCheck(t *testing.T) {
	home(t)
	if _, err := config.Load(config.Options{Checks: settingChecks()}); err != nil {
		t.Error(err)
	}
}

func TestByDefaultTheSettingsAlertAsTheDeskDoes(t *testing.T) {
	alerts := deskOptions(config.Default()).Alerts
	for _, code := range assess.FindingCodes() {
		for _, u := range []assess.Urgency{assess.Now, assess.Soon, assess.Watch, assess.Note} {
			f := assess.Finding{Code: code, Urgency: u}
			if u == assess.Soon && slices.Contains(neverSoon, code) {
				continue // the desk's default names what it leaves out, the settings what they take in
			}
			if got, want := alerts(f), desk.RaisesAlert(f); got != want {
				t.Errorf("%s of urgency %s: alert %v, the desk's own default %v", code, u, got, want)
			}
		}
	}
}

// neverSoon are findings that an assessment never gives the urgency "soon".
var neverSoon = []string{"gas_smell", "relief_blocked", "over_relief", "in_band", "borderline", "not_house_side", "retake", "contradiction",
	"fall_off", "tank_charge_off", "tank_small", "prv_near_age", "prv_age_unknown", "high_pressure_signs", "hammer", "street_shift"}

func TestTheSettingsReachTheAssessment(t *testing.T) {
	c, err := config.Load(config.Options{Flags: []string{"pressure.band_psi=45,75", "pressure.gauge_grade=1A", "pressure.gauge_span_psi=200", "pressure.service_years=8,12", "shop.language=es", "dialogue.site_holds=2h",
		"shop.working_days=mon,sat", "shop.working_hours=07:00-15:30", "shop.holidays=2026-12-25", "shop.quiet_hours=21:00-05:00", "alerts.claim_minutes=20",
		"alerts.escalate_to=C0000000009", "follow_ups.at_most_a_day=3", "retention.message_days=400", "retention.visit_days=4000", "alerts.dispatcher_phone=+1 555 010 0100"}})
	if err != nil {
		t.Fatal(err)
	}
	o := deskOptions(c)
	if o.Shop.BandPSI != [2]float64{45, 75} || o.Shop.Gauge != (assess.GaugeSpec{Grade: "1A", SpanPSI: 200}) || o.Shop.ServiceYears != [2]float64{8, 12} ||
		o.Lang != assess.Spanish || o.Memory.Hours() != 2 || o.ClaimWithin.Minutes() != 20 || o.EscalateIn != "C0000000009" || o.EscalateTo != "" ||
		o.AtMostADay != 3 || o.KeepWords != 400 || o.KeepVisits != 4000 || o.Phone == "" {
		t.Errorf("%+v", o)
	}
	saturday := time.Date(2026, 6, 20, 15, 0, 0, 0, c.Shop.Zone)
	if k := o.Calendar; !k.Working(saturday) || k.Working(saturday.Add(time.Hour)) || k.Working(saturday.AddDate(0, 0, -1)) || !k.IsQuiet(saturday.Add(7*time.Hour)) ||
		k.Workday(time.Date(2026, 12, 25, 12, 0, 0, 0, c.Shop.Zone)) {
		t.Errorf("%+v", k)
	}
	for _, job := range []string{desk.JobFollowUps, desk.JobSummary, desk.JobSweep, desk.JobLife} {
		if o.Jobs[job] == "" {
			t.Errorf("job %s is not planned", job)
		}
	}
}
