package intents

import (
	"strings"
	"testing"
)

// Every house must be found in every place of a message, whatever its name may mean besides; the address is
// typed, the street line as USPS Publication 28 abbreviates it.
func TestEveryHouseInEveryPlaceOfAMessage(t *testing.T) {
	houses := [][2]string{
		{"12 elm", "12 Elm"}, {"12 Elm St", "12 Elm St"}, {"12 elm street", "12 Elm St"},
		{"4417 W Marsh Ave", "4417 W Marsh Ave"}, {"4417 west marsh ave", "4417 W Marsh Ave"}, {"4417 Marsh Ave W", "4417 Marsh Ave W"},
		{"88 Laundry Ln", "88 Laundry Ln"}, {"88 laundry lane", "88 Laundry Ln"}, {"60 Kitchen Rd", "60 Kitchen Rd"},
		{"75 Heater Hill", "75 Heater Hl"}, {"9 Front St", "9 Front St"}, {"31 Back Bay Rd", "31 Back Bay Rd"},
		{"7 Main St", "7 Main St"}, {"72 Main", "72 Main"}, {"220 Water St", "220 Water St"},
		{"3 Meter Ct", "3 Meter Ct"}, {"140 Pressure Point Dr", "140 Pressure Point Dr"}, {"55 5th Ave", "55 5th Ave"},
		{"55 fifth ave", "55 Fifth Ave"}, {"101 3rd St N", "101 3rd St N"}, {"1208 N 16th", "1208 N 16th"},
		{"1420 County Road 9", "1420 County Road 9"}, {"1420 cr 9", "1420 County Road 9"}, {"77 Hwy 20", "77 Highway 20"},
		{"318 1/2 Oak", "318 1/2 Oak"}, {"12B Elm St", "12B Elm St"}, {"12 Elm St Apt 4", "12 Elm St Apt 4"},
		{"12 elm st #4", "12 Elm St # 4"}, {"apt 4, 12 Elm St", "12 Elm St Apt 4"}, {"12 Elm unit b", "12 Elm Unit B"},
		{"66 Old Mill Rd", "66 Old Mill Rd"}, {"400 Avenue C", "400 Avenue C"}, {"5 Saint Anne Ct", "5 Saint Anne Ct"},
		{"5 St Anne Ct", "5 St Anne Ct"}, {"18 Mt Hope Ter", "18 Mt Hope Ter"}, {"1000 Lake View Blvd", "1000 Lake View Blvd"},
		{"92 Plover", "92 Plover"}, {"104 Rear Alley", "104 Rear Aly"}, {"61 Idle Hour Way", "61 Idle Hour Way"},
		{"2210 Cold Spring Cir", "2210 Cold Spring Cir"}, {"58 Static Ct", "58 Static Ct"}, {"37 Tank Farm Rd", "37 Tank Farm Rd"},
		{"815 Valve St", "815 Valve St"}, {"26 One Mile Rd", "26 One Mile Rd"}, {"70 Firing Range Rd", "70 Firing Range Rd"},
		{"44 Two Rivers Pkwy", "44 Two Rivers Pkwy"}, {"3 Bath Pl", "3 Bath Pl"}, {"19 June Dr", "19 June Dr"},
		{"19 May St", "19 May St"}, {"1 Sunday Dr", "1 Sunday Dr"}, {"21 Spring", "21 Spring"},
		{"21 fall creek", "21 Fall Crk"}, {"21 Summer St", "21 Summer St"}, {"90 Park", "90 Park"},
		{"14 court st", "14 Court St"}, {"14 Hill", "14 Hill"}, {"63 Bar Harbor Rd", "63 Bar Harbor Rd"},
		{"27 Gate 5 Rd", "27 Gate 5 Rd"},
	}
	const kitchen, idle = "64 kitchen", "64 kitchen idle"
	frames := [][2]string{
		{"{}. kitchen 64", kitchen}, {"kitchen 64, {}", kitchen}, {"kitchen 64 at {}", kitchen}, {"{} kitchen 64", kitchen},
		{"{}: kitchen 64", kitchen}, {"{} - kitchen 64", kitchen}, {"64 kitchen {}", kitchen}, {"{}\nkitchen 64\nheater off", idle},
		{"im at {} and got 64 at the kitchen", kitchen}, {"got 64 in the kitchen over at {}", kitchen}, {"Site: {}\nkitchen 64", kitchen},
		{"64 kitchen, heater idle, {}", idle}, {"{} kitchen 64 psi heater off", idle}, {"{} / kitchen 64 / burner off", idle},
		{"just left {}. kitchen 64", kitchen}, {"put down 64 kitchen for {}", kitchen}, {"{} prv replaced, kitchen 64 after", "64 kitchen after; replaced_prv"},
		{"swapped the prv at {}", "replaced_prv"}, {"{} no exp tank", "expansion_tank none"}, {"tank dead at {}", "expansion_tank failed"},
		{"history {}", "ask history"}, {"what do we know about {}", "ask history"}, {"scratch the last one for {}", "ask undo"},
		{"recheck {} in 2 weeks", "plan recheck in 14"}, {"{} recheck in 2 weeks", "plan recheck in 14"},
		{"{}: dark water", "dark_water"}, {"gas smell at {}", "gas_smell"}, {"customer at {} says water is brown", "rusty_water"},
	}
	p, err := oneParser()
	if err != nil {
		t.Fatal(err)
	}
	for _, house := range houses {
		for _, frame := range frames {
			text := strings.Replace(frame[0], "{}", house[0], 1)
			f := p.Parse(text, Context{})
			if got := inWords(f); f.Site != house[1] || got != frame[1] {
				t.Errorf("%q\n got %s: %s\nwant %s: %s", text, f.Site, got, house[1], frame[1])
			}
		}
	}
}

// A number beside the word main alone is a pressure of the main where no other number stands at the tap
// behind it.
func TestAPressureOfTheMainIsNoHouse(t *testing.T) {
	says(t, [][2]string{
		{"kitchen 62 main 110", "62 kitchen; 110 street"},
		{"110 main, 62 kitchen", "110 street; 62 kitchen"},
		{"kitchen 62 Main 110", "62 kitchen; 110 street"},
		{"110 on the main, kitchen 62", "110 street; 62 kitchen"},
	})
}
