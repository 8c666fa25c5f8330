package desk

import (
	"testing"

	"lazyhand/assess"
	"lazyhand/store"
)

// Common practice: what people slip in an address. A neighbour is no slip.
func TestWhichHousesMayBeOne(t *testing.T) {
	for _, tt := range []struct {
		a, b string
		near bool
	}{
		{"123 Elm St", "123 Elm Ave", true},
		{"123 N Elm St", "123 S Elm St", true},
		{"77 Maple Dr", "77 Mapel Dr", true},
		{"77 Maple Dr", "77 Mape Dr", true},
		{"4010 Reed Ln", "4010 Read Ln", true},
		{"18 Cedar Rd", "18 Seder Rd", true},
		{"4010 Reed Ln", "4100 Reed Ln", true},
		{"123 Elm St", "1123 Elm St", true},
		{"123 Elm St", "923 Elm St", true},
		{"123 Elm St", "125 Elm St", false},
		{"110 Elm St", "120 Elm St", false},
		{"132 Elm St", "123 Elm St", true},
		{"12 Alder St", "14 Alder St", false},
		{"12 Alder St", "22 Alder St", false},
		{"12 5th St", "12 6th St", false},
		{"12 Oak Ct", "12 Elm Ct", false},
		{"77 Maple Dr", "77 Mapel Ct", false},
		{"77 Maple Dr Apt 1", "77 Maple Dr Apt 2", false},
		{"9 Main St", "9 Moon St", false},
	} {
		if got := nearness(around(assess.Site{Line: tt.a}), around(assess.Site{Line: tt.b})) > 0; got != tt.near {
			t.Errorf("%s and %s may be one house: %v, want %v", tt.a, tt.b, got, tt.near)
		}
	}
	if nearness(around(assess.Site{Line: "123 Elm St", Town: "Ashford"}), around(assess.Site{Line: "123 Elm Ave", Town: "Bly"})) > 0 {
		t.Error("houses of two towns are two")
	}
}

func around(s assess.Site) store.Around {
	return store.Around{SiteRecord: store.SiteRecord{Site: s}, Loose: s.Loose(), Street: s.Street()}
}
