package assess

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

// Each row is one rule of what makes a reading fair: the visit, and what is
// said of its first reading. The rules are common practice.
func TestIsTheReadingFair(t *testing.T) {
	for _, row := range []struct {
		rule  string
		visit []string
		side  Side
		fair  Fair
		why   string
	}{
		{"a static reading at a rear bibb with the heater idle is fair", []string{"62 rear_bibb idle static"}, HouseSide, FairYes, ""},
		{"a side bibb is house side", []string{"62 side_bibb"}, HouseSide, FairYes, ""},
		{"the laundry tap is house side", []string{"62 laundry"}, HouseSide, FairYes, ""},
		{"a kitchen tap is house side", []string{"62 kitchen"}, HouseSide, FairYes, ""},
		{"a bath tap is house side", []string{"62 bath"}, HouseSide, FairYes, ""},
		{"a port after the regulator is house side", []string{"62 after_prv"}, HouseSide, FairYes, ""},
		{"a reading of the main is fair, of the street", []string{"104 street"}, StreetSide, FairYes, ""},
		{"the heater does not lift the main", []string{"104 street firing"}, StreetSide, FairYes, ""},
		{"a front bibb may be ahead of the regulator", []string{"62 front_bibb idle"}, UnsureSide, Doubtful, "front_bibb"},
		{"a bibb without saying which", []string{"62 bibb"}, UnsureSide, Doubtful, "bibb_unspecified"},
		{"an irrigation tap", []string{"62 irrigation"}, UnsureSide, Doubtful, "irrigation"},
		{"no point said", []string{"62"}, UnsureSide, Doubtful, "point_unknown"},
		{"a firing heater makes a reading doubtful", []string{"72 rear_bibb firing"}, HouseSide, Doubtful, "heater_firing"},
		{"at 80 with a firing heater it is still doubtful only", []string{"80 rear_bibb firing"}, HouseSide, Doubtful, "heater_firing"},
		{"above 80 with a firing heater it says nothing", []string{"81 rear_bibb firing"}, HouseSide, FairNo, "heater_firing"},
		{"at the heater with its state unsaid", []string{"62 heater_drain"}, HouseSide, Doubtful, "heater_unknown"},
		{"at the heater with its state said it is fair", []string{"62 heater_drain idle"}, HouseSide, FairYes, ""},
		{"a plastic drain", []string{"62 heater_drain idle", "drain plastic"}, HouseSide, Doubtful, "plastic_drain"},
		{"a plastic drain does not matter elsewhere", []string{"62 laundry idle", "drain plastic"}, HouseSide, FairYes, ""},
		{"the drain of a heater of 10 years", []string{"62 heater_drain idle", "heater 2016"}, HouseSide, Doubtful, "sediment"},
		{"the drain of a heater of 10 years, though flushed", []string{"62 heater_drain idle", "heater 2016 flushed 2025"}, HouseSide, Doubtful, "sediment"},
		{"the drain 4 years after the installation", []string{"62 heater_drain idle", "heater 2022"}, HouseSide, Doubtful, "sediment"},
		{"the drain 3 years after the installation", []string{"62 heater_drain idle", "heater 2023"}, HouseSide, FairYes, ""},
		{"the drain 4 years after the flush", []string{"62 heater_drain idle", "heater flushed 2022"}, HouseSide, Doubtful, "sediment"},
		{"the drain 2 years after the flush of a heater of 7", []string{"62 heater_drain idle", "heater 2019 flushed 2024"}, HouseSide, FairYes, ""},
		{"the drain of a heater of 5 years never flushed", []string{"62 heater_drain idle", "heater 2021 flushed 0"}, HouseSide, Doubtful, "sediment"},
		{"water running is not static", []string{"48 kitchen flowing"}, HouseSide, FairNo, "flowing"},
		{"the highest of a period is not static", []string{"96 rear_bibb peak"}, HouseSide, FairNo, "peak"},
		{"a gauge in doubt", []string{"62 rear_bibb idle", "gauge suspect"}, HouseSide, Doubtful, "gauge_doubted"},
		{"82 on a grade B 0-160 gauge may be 80", []string{"82 rear_bibb idle"}, HouseSide, FairYes, "near_limit"},
		{"83.2 may be 80.0, which is in the band", []string{"83.2 rear_bibb idle"}, HouseSide, FairYes, "near_limit"},
		{"84 cannot be 80", []string{"84 rear_bibb idle"}, HouseSide, FairYes, ""},
		{"80 may be above 80", []string{"80 rear_bibb idle"}, HouseSide, FairYes, "near_limit"},
		{"76.8 reaches 80 and not above it", []string{"76.8 rear_bibb idle"}, HouseSide, FairYes, ""},
		{"38 in the outer quarter may be 40", []string{"38 rear_bibb idle"}, HouseSide, FairYes, "near_limit"},
		{"45 is no doubt in the band", []string{"45 rear_bibb idle"}, HouseSide, FairYes, ""},
		{"reasons add up", []string{"85 front_bibb firing", "gauge suspect"}, UnsureSide, FairNo, "front_bibb heater_firing gauge_doubted"},

		{"a front bibb 15 above the house is on the street", []string{"77 front_bibb", "62 rear_bibb idle"}, StreetSide, FairYes, ""},
		{"14 above settles nothing", []string{"76 front_bibb", "62 rear_bibb idle"}, UnsureSide, Doubtful, "front_bibb"},
		{"within 5 of a house at most 80 it is house side", []string{"67 front_bibb", "62 rear_bibb idle"}, HouseSide, FairYes, ""},
		{"6 above settles nothing", []string{"68 front_bibb", "62 rear_bibb idle"}, UnsureSide, Doubtful, "front_bibb"},
		{"a pair above 80 may be a valve that passes", []string{"92 front_bibb", "91 rear_bibb idle"}, UnsureSide, Doubtful, "front_bibb"},
		{"a pair above 80 but 15 below the main is house side", []string{"92 front_bibb", "91 rear_bibb idle", "107 street"}, HouseSide, FairYes, ""},
		{"a pair above 80 and 14 below the main settles nothing", []string{"92 front_bibb", "91 rear_bibb idle", "106 street"}, UnsureSide, Doubtful, "front_bibb"},
		{"a bibb unsaid is settled in the same way", []string{"104 bibb", "62 rear_bibb idle"}, StreetSide, FairYes, ""},
		{"an irrigation tap too", []string{"62 irrigation", "62 rear_bibb idle"}, HouseSide, FairYes, ""},
		{"an unknown point is never settled", []string{"104", "62 rear_bibb idle"}, UnsureSide, Doubtful, "point_unknown"},
		{"a flowing reading settles nothing", []string{"77 front_bibb", "50 kitchen flowing"}, UnsureSide, Doubtful, "front_bibb"},
		{"a doubted gauge settles nothing", []string{"104 front_bibb", "62 rear_bibb idle", "gauge suspect"}, UnsureSide, Doubtful, "front_bibb gauge_doubted"},
		{"readings before and after work do not pair", []string{"104 front_bibb before", "62 rear_bibb after idle", "did set_prv 62"}, UnsureSide, Doubtful, "front_bibb"},
	} {
		t.Run(row.rule, func(t *testing.T) {
			a := seeing(t, row.visit...)
			r := a.Readings[0]
			got := fmt.Sprintf("%s %s %v", r.Side, r.Fair, r.Reasons)
			want := fmt.Sprintf("%s %s [%s]", row.side, row.fair, row.why)
			if got != want {
				t.Errorf("%s: %s, want %s", strings.Join(row.visit, "; "), got, want)
			}
		})
	}
}

// A house remembers what an earlier visit settled about its bibbs.
func TestTheSiteRemembersItsFrontBibb(t *testing.T) {
	for _, row := range []struct {
		rule    string
		earlier []string
		now     []string
		side    Side
	}{
		{"settled as street side", []string{"104 front_bibb", "62 rear_bibb idle"}, []string{"100 front_bibb"}, StreetSide},
		{"settled as house side", []string{"61 front_bibb", "62 rear_bibb idle"}, []string{"90 front_bibb"}, HouseSide},
		{"not settled", []string{"70 front_bibb", "62 rear_bibb idle"}, []string{"90 front_bibb"}, UnsureSide},
		{"a gap outlasts a pair that reads alike", []string{"104 front_bibb", "62 rear_bibb idle"}, []string{"70 front_bibb", "70 rear_bibb idle"}, StreetSide},
		{"a gap corrects a pair that read alike", []string{"61 front_bibb", "62 rear_bibb idle"}, []string{"104 front_bibb", "62 rear_bibb idle"}, StreetSide},
		{"a new regulator may stand ahead of it", []string{"61 front_bibb", "62 rear_bibb idle", "did installed_prv"}, []string{"90 front_bibb"}, UnsureSide},
	} {
		t.Run(row.rule, func(t *testing.T) {
			a := Assess(Input{Today: today, Visits: []Visit{on(t, "2025-06-10", row.earlier...), on(t, "2026-06-15", row.now...)}})
			if got := a.Readings[0].Side; got != row.side {
				t.Errorf("side %s, want %s", got, row.side)
			}
		})
	}
}

// What a visit's fair readings say of house and main.
func TestWhatTheVisitSupports(t *testing.T) {
	for _, row := range []struct {
		rule          string
		visit         []string
		house, street float64 // 0 for none
		band          Band
	}{
		{"nothing read, nothing supported", nil, 0, 0, BandNone},
		{"one fair reading", []string{"62 rear_bibb idle"}, 62, 0, BandIn},
		{"the median of three", []string{"62 rear_bibb", "66 laundry", "63 kitchen"}, 63, 0, BandIn},
		{"the middle of two", []string{"62 rear_bibb", "66 laundry"}, 64, 0, BandIn},
		{"the latest after work", []string{"95 rear_bibb before", "70 rear_bibb after", "62 laundry after", "did set_prv"}, 62, 0, BandIn},
		{"without a word on time, the one at the new setting is after work", []string{"95 rear_bibb", "61 rear_bibb", "did set_prv 60"}, 61, 0, BandIn},
		{"15 apart is still their median", []string{"60 rear_bibb", "75 laundry"}, 67.5, 0, BandIn},
		{"more than 15 apart supports nothing", []string{"60 rear_bibb", "76 laundry"}, 0, 0, BandNone},
		{"doubtful readings never give one", []string{"62 heater_drain", "62 rear_bibb firing", "62 front_bibb"}, 0, 0, BandNone},
		{"the main gives the street only", []string{"104 street"}, 0, 104, BandNone},
		{"a settled front bibb gives the street", []string{"104 front_bibb", "62 rear_bibb"}, 62, 104, BandIn},
		{"40 is in the band", []string{"40 rear_bibb"}, 40, 0, BandIn},
		{"39.9 is low", []string{"39.9 rear_bibb"}, 39.9, 0, BandLow},
		{"80 is in the band", []string{"80 rear_bibb"}, 80, 0, BandIn},
		{"80.1 is high", []string{"80.1 rear_bibb"}, 80.1, 0, BandHigh},
		{"149.9 is high", []string{"149.9 rear_bibb"}, 149.9, 0, BandHigh},
		{"150 is over the relief valve", []string{"150 rear_bibb"}, 150, 0, OverRelief},
	} {
		t.Run(row.rule, func(t *testing.T) {
			a := seeing(t, row.visit...)
			house, street := 0.0, 0.0
			if a.HousePSI != nil {
				house = *a.HousePSI
			}
			if a.StreetPSI != nil {
				street = *a.StreetPSI
			}
			if house != row.house || street != row.street || a.Band != row.band {
				t.Errorf("house %v street %v %s, want %v %v %s", house, street, a.Band, row.house, row.street, row.band)
			}
		})
	}
}

// The gauge's own error goes with every reading (ASME B40.100, as quoted:
// grade B is 3-2-3 % of span).
func TestPlusMinusOfReadings(t *testing.T) {
	a := seeing(t, "39 rear_bibb", "40 laundry", "62 kitchen", "120 street", "121 street", "170 street")
	var got []float64
	for _, r := range a.Readings {
		got = append(got, r.PlusMinus)
	}
	if want := []float64{4.8, 3.2, 3.2, 3.2, 4.8, 6}; !slices.EqualFunc(got, want, func(a, b float64) bool { return a-b < 1e-9 && b-a < 1e-9 }) {
		t.Errorf("plus minus %v, want %v", got, want)
	}
}
