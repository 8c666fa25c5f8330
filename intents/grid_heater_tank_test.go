package intents

import (
	"strings"
	"testing"
)

// filled returns forms of words with each name put in for "{n}" and each value for "{v}"; a value stands
// with what it is read as, which follows the item.
func filled(forms, names []string, values [][2]string, item string) []said {
	var all []said
	for _, name := range names {
		for _, v := range values {
			for _, form := range forms {
				all = append(all, said{strings.NewReplacer("{n}", name, "{v}", v[0]).Replace(form), item + " " + v[1]})
			}
		}
	}
	return all
}

// TestGridOfFuels reads the heater with its fuel told in each way.
func TestGridOfFuels(t *testing.T) {
	forms := []string{
		"{v} {n}", "{n} is {v}", "{n}: {v}", "{n} - {v}", "{n}, {v}", "{n} ({v})", "it's a {v} {n}", "they have a {v} {n}", "has a {v} {n}",
		"{v} {n} in the garage", "{v} {n} here", "the {n} is {v}", "there's a {v} {n}",
	}
	readPhrases(t, filled(forms, []string{"heater", "water heater", "htr"}, [][2]string{{"gas", "gas"}, {"natural gas", "gas"}, {"nat gas", "gas"}, {"electric", "electric"}, {"propane", "propane"}, {"lp", "propane"}, {"hybrid", "heat_pump"}, {"heat pump", "heat_pump"}, {"tankless", "tankless"}}, "heater"), framedParts)
}

// TestGridOfSizes reads the heater with its size.
func TestGridOfSizes(t *testing.T) {
	forms := []string{
		"{v} {n}", "{n} is {v}", "{n} is a {v}", "{n}: {v}", "{n} {v}", "{n} - {v}", "{n}, {v}", "{n} ({v})", "it's a {v} {n}", "they have a {v} {n}",
		"has a {v} {n}", "{v} {n} in the garage", "the {n} is {v}",
	}
	readPhrases(t, filled(forms, []string{"heater", "water heater", "htr"}, [][2]string{{"50 gal", "50 gal"}, {"40 gallon", "40 gal"}, {"75 gal", "75 gal"}, {"50g", "50 gal"}, {"50-gal", "50 gal"}, {"fifty gallon", "50 gal"}}, "heater"), framedParts)
}

// TestGridOfThermostats reads the heater with its thermostat's setting.
func TestGridOfThermostats(t *testing.T) {
	forms := []string{
		"{n} set to {v}", "{n} set at {v}", "{n} is set to {v}", "{n} is set at {v}", "thermostat at {v}", "thermostat set to {v}", "thermostat is at {v}",
		"{n} thermostat {v}", "{n} thermostat set at {v}", "{n} thermostat is at {v}", "tstat {v}", "tstat at {v}", "setpoint {v}", "{n} setpoint {v}",
		"{n} setpoint is {v}", "{n} set {v}", "{n} dial at {v}", "{n} dial is at {v}", "thermostat on {v}", "{n} at {v} degrees", "{n} at {v}F",
		"{n} set at {v}F", "{n} set to {v} degrees", "thermostat reads {v}", "{n} temp {v}", "{n} temp set to {v}", "{n} temp set at {v}",
		"thermostat: {v}", "{n}: {v} degrees", "temp on the {n} is {v}", "thermostat on the {n} is {v}", "thermostat on the {n} set to {v}",
		"{n} is at {v} degrees", "stat set at {v}", "{n} stat at {v}",
	}
	readPhrases(t, filled(forms, []string{"heater", "water heater", "htr"}, [][2]string{{"120", "120 F"}, {"125", "125 F"}, {"140", "140 F"}}, "heater"), framedParts)
}

// TestGridOfAirCharges reads the expansion tank with the air found in it.
func TestGridOfAirCharges(t *testing.T) {
	forms := []string{
		"{n} charge {v}", "{n} precharge {v}", "{n} air {v}", "{n} air at {v}", "{n} air is {v}", "{n} precharge is {v}", "{n} precharge at {v}",
		"{n} charge is {v} psi", "{n} has {v} psi of air", "{n} has {v} lbs of air", "air in the {n} is {v}", "air in the {n} {v}", "{n} air pressure {v}",
		"{n} air pressure is {v}", "{n} at {v} psi", "precharge on the {n} is {v}", "precharge on {n} {v}", "{n} precharge: {v}", "{n} air: {v}",
		"{n} charge: {v}", "{n} air charge {v}", "{n} air charge is {v} psi", "{n} air side {v}", "{n} air checked {v}", "{n} precharge measured {v}",
		"{n} precharge reads {v}", "{n} precharge checked at {v}", "{n} is charged to {v}", "charge on the {n} is {v}", "air side of the {n} is {v}",
		"{n} holding {v} psi of air", "{n} has {v} in it", "{n} schrader reads {v}", "checked the {n} air, {v}",
	}
	readPhrases(t, filled(forms, []string{"exp tank", "expansion tank", "tank"}, [][2]string{{"38", "set 38"}, {"55", "set 55"}, {"60", "set 60"}}, "expansion_tank"), framedParts)
}

// TestGridOfTankSizes reads the expansion tank with its size.
func TestGridOfTankSizes(t *testing.T) {
	forms := []string{
		"{v} {n}", "{n} {v}", "{n} is {v}", "{n} is a {v}", "{n}: {v}", "{n} - {v}", "{n}, {v}", "{n} ({v})", "has a {v} {n}", "there's a {v} {n}",
		"{v} {n} on the cold line", "it's a {v} {n}", "they have a {v} {n}",
	}
	readPhrases(t, filled(forms, []string{"exp tank", "expansion tank", "thermal tank"}, [][2]string{{"2 gal", "2 gal"}, {"2 gallon", "2 gal"}, {"4.4 gal", "4.4 gal"}, {"5 gal", "5 gal"}, {"two gallon", "2 gal"}, {"2.1 gal", "2.1 gal"}}, "expansion_tank"), framedParts)
}

// TestGridOfRegulatorSettings reads what the regulator is set to, with no doer and no change told.
func TestGridOfRegulatorSettings(t *testing.T) {
	forms := []string{
		"{n} set to {v}", "{n} set at {v}", "{n} is set to {v}", "{n} is set at {v}", "{n} set for {v}", "{n} is set for {v}", "{n} setting {v}",
		"{n} setting is {v}", "{n}: set at {v}", "{n} was set at {v}", "{n} setting: {v}", "{n} set @ {v}", "{n} set to {v} psi", "{n} is set at {v} psi",
		"{n} factory set at {v}", "{n} setpoint {v}", "setting on the {n} is {v}",
	}
	readPhrases(t, filled(forms, []string{"prv", "the reg", "regulator"}, [][2]string{{"50", "set 50"}, {"55", "set 55"}, {"60", "set 60"}}, "prv"), framedParts)
}

// TestGridOfDrainMaterials reads what the heater's drain valve is made of.
func TestGridOfDrainMaterials(t *testing.T) {
	forms := []string{
		"{v} {n}", "{n} is {v}", "{n}: {v}", "{n} {v}", "{n} - {v}", "heater has a {v} {n}", "has a {v} {n}", "{n} ({v})", "the {n} is {v}", "{n}, {v}",
		"it has a {v} {n}", "{v} {n} on it", "they have a {v} {n}", "{v} {n} on the heater",
	}
	readPhrases(t, filled(forms, []string{"drain valve", "drain", "heater drain valve", "boiler drain"}, [][2]string{{"plastic", "plastic"}, {"brass", "brass"}, {"pvc", "plastic"}}, "drain_valve"), framedParts)
}

// TestGridOfLastService reads the year in which the heater was flushed or served last.
func TestGridOfLastService(t *testing.T) {
	forms := []string{
		"{n} last flushed {v}", "{n} last flushed in {v}", "{n} was last flushed in {v}", "{n} flushed in {v}", "{n} was flushed in {v}",
		"{n} last serviced {v}", "{n} last serviced in {v}", "{n} serviced in {v}", "{n} was serviced in {v}", "{n} last flush {v}",
		"{n} last flush was {v}", "{n} last flush: {v}", "{n}: last flushed {v}", "{n} hasn't been flushed since {v}", "{n} not flushed since {v}",
		"no flush on the {n} since {v}", "last flush on the {n} was {v}", "last time the {n} was flushed was {v}", "customer flushed the {n} in {v}",
		"owner had the {n} flushed in {v}", "{n} last service {v}", "{n} last service was {v}", "{n} last drained in {v}", "{n} flushed back in {v}",
		"{n} hasn't been serviced since {v}", "last service on the {n} was {v}", "{n} was last serviced in {v}",
	}
	readPhrases(t, filled(forms, []string{"heater", "water heater", "htr"}, [][2]string{{"2019", "maintained 2019"}, {"2021", "maintained 2021"}}, "heater"), framedParts)
}

// TestGridOfNeverServiced reads a heater that was never served.
func TestGridOfNeverServiced(t *testing.T) {
	forms := []string{
		"{n} never flushed", "{n} has never been flushed", "{n} never been flushed", "never flushed the {n}", "owner never flushed the {n}",
		"{n} was never flushed", "{n} never serviced", "{n} has never been serviced", "nobody ever flushed the {n}", "{n}: never flushed",
		"{n}, never flushed", "owner has never flushed the {n}", "{n} hasn't ever been flushed", "{n} last flush: never", "{n} has never had a flush",
		"{n} never drained", "no one has ever flushed the {n}", "they've never flushed the {n}", "{n} never had maintenance",
		"{n} has not been flushed ever", "the {n} has never once been flushed", "{n} never flushed per owner",
	}
	readPhrases(t, filled(forms, []string{"heater", "water heater", "htr"}, [][2]string{{"", "never maintained"}}, "heater"), framedParts)
}

// TestGridOfServiceLongAgo reads a heater served so many years ago; the day is in 2026.
func TestGridOfServiceLongAgo(t *testing.T) {
	forms := []string{
		"{n} last flushed {v} ago", "{n} flushed {v} ago", "{n} was flushed {v} ago", "last flush on the {n} was {v} ago", "{n} last serviced {v} ago",
		"{n} last flush {v} ago", "{n} was last flushed {v} ago", "{n} was serviced {v} ago",
	}
	readPhrases(t, filled(forms, []string{"heater", "water heater", "htr"}, [][2]string{{"3 years", "maintained 2023"}, {"3 yrs", "maintained 2023"}, {"three years", "maintained 2023"}}, "heater"), framedParts)
}

// TestGridOfSizesAndFuels reads the heater with its size and its fuel.
func TestGridOfSizesAndFuels(t *testing.T) {
	forms := []string{
		"{s} {f} {n}", "{f} {n}, {s}", "{n} is a {s} {f}", "{n}: {s} {f}", "{n}: {f}, {s}", "{n} {s} {f}", "{n} - {f} - {s}", "{n}, {s}, {f}",
		"{s} {n}, {f}", "has a {s} {f} {n}", "{f} {s} {n}", "{n} is {s}, {f}", "{n} is {f}, {s}", "{n} ({s} {f})",
	}
	var all []said
	for _, size := range [][2]string{{"50 gal", "50 gal"}, {"40 gallon", "40 gal"}, {"75 gal", "75 gal"}} {
		for _, fuel := range [][2]string{{"gas", "gas"}, {"natural gas", "gas"}, {"nat gas", "gas"}, {"electric", "electric"}, {"propane", "propane"}, {"lp", "propane"}, {"hybrid", "heat_pump"}, {"heat pump", "heat_pump"}} {
			for _, form := range forms {
				form = strings.NewReplacer("{s}", size[0], "{f}", fuel[0]).Replace(form)
				all = append(all, filled([]string{form}, []string{"heater", "water heater"}, [][2]string{{"", size[1] + " " + fuel[1]}}, "heater")...)
			}
		}
	}
	readPhrases(t, all, framedParts)
}
