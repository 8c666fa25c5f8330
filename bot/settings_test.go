package main

import (
	"slices"
	"testing"

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
	c, err := config.Load(config.Options{Flags: []string{"pressure.band_psi=45,75", "pressure.gauge_grade=1A", "pressure.gauge_span_psi=200", "pressure.service_years=8,12", "shop.language=es", "dialogue.site_holds=2h"}})
	if err != nil {
		t.Fatal(err)
	}
	o := deskOptions(c)
	if o.Shop.BandPSI != [2]float64{45, 75} || o.Shop.Gauge != (assess.GaugeSpec{Grade: "1A", SpanPSI: 200}) || o.Shop.ServiceYears != [2]float64{8, 12} ||
		o.Lang != assess.Spanish || o.Memory.Hours() != 2 {
		t.Errorf("%+v", o)
	}
}
