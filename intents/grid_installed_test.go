package intents

import (
	"strings"
	"testing"
)

// The names of what a house may lack, and of what is dated. A form of words is tried with every other
// name, so that each meets each kind of thing.
var (
	lackedNames = map[string][]string{
		"prv":            {"prv", "reg", "pressure regulator"},
		"expansion_tank": {"exp tank", "expansion tank", "xp tank"},
		"check_valve":    {"check valve", "backflow preventer", "dual check"},
		"softener":       {"softener", "water softener"},
		"recirc":         {"recirc pump", "recirc", "circ pump"},
	}
	datedNames = map[string][]string{
		"prv":            {"prv", "reg", "regulator", "pressure regulator"},
		"expansion_tank": {"exp tank", "expansion tank", "thermal tank"},
		"heater":         {"heater", "water heater", "htr"},
		"check_valve":    {"check valve", "backflow preventer"},
		"softener":       {"softener", "water softener"},
		"recirc":         {"recirc pump", "recirc"},
	}
)

// spread returns forms of words with names of things put in for "{n}", or with an article for "{a}", each
// of which means the item and what is given behind it.
func spread(forms []string, names map[string][]string, means string, items ...string) []said {
	var all []said
	for _, item := range items {
		for k, name := range names[item] {
			article := "a "
			if strings.ContainsRune("aeioux", rune(name[0])) {
				article = "an "
			}
			for j, form := range forms {
				if k == 0 || (k+j)%2 == 0 {
					all = append(all, said{strings.NewReplacer("{n}", name, "{a}", article+name).Replace(form), strings.TrimSpace(item + " " + means)})
				}
			}
		}
	}
	return all
}

// TestGridOfWhatIsNotThere reads each thing that a house may lack in each way to say that there is none.
func TestGridOfWhatIsNotThere(t *testing.T) {
	forms := []string{
		"no {n}", "no {n} here", "no {n} on this house", "no {n} that i can see", "no {n} that i could find", "no {n} that i saw", "no {n} anywhere",
		"no {n} in sight", "no {n} present", "no {n} at all", "no {n} found", "there's no {n}", "theres no {n}", "there is no {n}", "there isn't {a}",
		"there is not {a}", "there was no {n}", "there wasn't {a}", "there's no {n} here", "there's no {n} on this one", "doesn't have {a}",
		"doesnt have {a}", "house doesn't have {a}", "house has no {n}", "has no {n}", "they have no {n}", "they don't have {a}", "they dont have {a}",
		"never had {a}", "house never had {a}", "they never had {a}", "{n}: none", "{n} - none", "{n}: no", "{n} none", "{n}? none", "{n}? no",
		"{n}: not present", "{n} not present", "{n} isn't there", "{n} is not there", "{n} isn't installed", "{n} not installed", "{n} is missing",
		"{n} missing", "missing {a}", "missing {n}", "house is missing {a}", "couldn't find {a}", "could not find {a}", "can't find {a}",
		"didn't find {a}", "didn't see {a}", "don't see {a}", "do not see {a}", "not seeing {a}", "no sign of {a}", "without {a}", "house without {a}",
		"lacks {a}", "house lacks {a}", "nobody ever put in {a}", "nobody ever put {a} in", "they never put {a} in", "{a} was never installed",
		"{n} was never installed", "{n} never installed", "not {a} in sight", "there's not {a}", "ain't no {n}", "aint got no {n}", "got no {n}",
		"hasn't got {a}", "{n} nowhere to be found", "looked for {a}, none", "looked for {a} and didn't find one", "looked for {a}, couldn't find one",
		"no {n} as far as i can tell", "no {n} that i know of", "no {n} in the house", "{n} absent", "also no {n}", "still no {n}", "no {n} either",
		"did not have {a}", "didn't have {a}", "{n}: nope", "{n} = none", "{n}: N", "no existing {n}", "house was built without {a}", "no {n} on site",
		"there's no {n} in this house", "this house has no {n}", "this place has no {n}", "this one doesn't have {a}", "this one has no {n}",
		"no {n} on this one", "no {n} in there", "no {n} in the garage", "i don't see {a} anywhere", "i couldn't find {a}", "i did not see {a}",
		"i looked and there's no {n}", "no {n} whatsoever", "never been {a} here", "there never was {a}", "there's never been {a}", "home has no {n}",
		"customer has no {n}", "customer doesn't have {a}", "unit has no {n}", "no {n} yet", "{n}, none", "{n}... none", "{n}: none found",
		"{n}: none installed", "{n}: not installed", "{n}: doesn't have one", "{n}: never had one", "{n}? doesn't have one", "{n}? never had one",
		"{n}? nope", "{n} - no", "{n} - not present", "{n} doesn't exist", "{n} is absent", "{n} was missing", "{n} was not present", "{n} wasn't there",
		"{n} not found", "{n} not there", "no {n}, never had one", "somebody removed the {n}", "the {n} was removed", "{n} has been removed",
	}
	readPhrases(t, spread(forms, lackedNames, "none", "prv", "expansion_tank", "check_valve", "softener", "recirc"), framedParts)
}

// TestGridOfWhatIsThere reads each thing that counts when merely named in each way to say that there is
// one. A regulator that is only named is no statement.
func TestGridOfWhatIsThere(t *testing.T) {
	forms := []string{
		"has {a}", "there's {a}", "there is {a}", "{n} present", "{n}: yes", "{n} is there", "they have {a}", "house has {a}", "found {a}",
		"{n} is present", "{n} in place", "house does have {a}", "they do have {a}", "there's {a} here", "there is {a} in the garage", "got {a} here",
		"it has {a}", "has {a} in the garage", "{n} on the cold line", "home has {a}", "there was {a}", "saw {a}", "they've got {a}", "theyve got {a}",
		"{n}? yes", "{n}: present", "also has {a}", "with {a}", "house came with {a}",
	}
	readPhrases(t, spread(forms, lackedNames, "", "expansion_tank", "check_valve", "softener", "recirc"), framedParts)
}

// TestGridOfYears reads each thing with the year that it was put in or built, told in each way.
func TestGridOfYears(t *testing.T) {
	forms := []string{
		"{n} installed in 2014", "{n} was installed in 2014", "{n} installed 2014", "2014 {n}", "{n} from 2014", "{n} is from 2014", "{n} is a 2014",
		"{n}'s a 2014", "{n} 2014", "{n}: 2014", "{n} - 2014", "{n} (2014)", "{n} dated 2014", "{n} is dated 2014", "{n} date code 2014",
		"{n} has a 2014 date code", "{n} stamped 2014", "{n} is stamped 2014", "{n} was put in in 2014", "{n} went in in 2014", "{n} went in 2014",
		"{n} was put in 2014", "{n} in since 2014", "{n} has been in since 2014", "{n} dates to 2014", "{n} dates from 2014", "{n} dates back to 2014",
		"{n} made in 2014", "{n} built in 2014", "{n} manufactured 2014", "{n} manufactured in 2014", "{n} mfg 2014", "{n} mfd 2014", "{n} mfg date 2014",
		"{n} mfg date is 2014", "{n} date 2014", "{n} tag says 2014", "tag on the {n} says 2014", "{n} label says 2014", "sticker on the {n} says 2014",
		"{n} sticker says 2014", "{n} year 2014", "year on the {n} is 2014", "{n} yr 2014", "{n} circa 2014", "{n} around 2014", "{n} about 2014",
		"{n} vintage 2014", "{n} is 2014 vintage", "2014 vintage {n}", "{n} installed '14", "'14 {n}", "{n} '14", "{n} is a '14",
		"{n} installed back in 2014", "{n} last replaced 2014", "{n} last replaced in 2014", "customer says {n} was installed in 2014",
		"{n} goes back to 2014", "{n} install date 2014", "{n} install date is 2014", "date on the {n} is 2014", "date on {n} 2014", "{n} mfg 03/2014",
		"{n} dated 3/14", "{n} installed march 2014", "{n} from march 2014", "{n} was installed in march of 2014", "{n} installed 03/2014",
		"they had the {n} installed in 2014", "owner says the {n} is from 2014", "{n} looks like a 2014", "{n} is a 2014 model", "2014 model {n}",
		"{n} looks to be 2014", "{n} is 2014", "{n} was new in 2014", "{n} new in 2014", "{n} in 2014", "{n} installed sometime in 2014",
		"{n} installed around 2014", "{n} data plate says 2014", "{n} nameplate 2014", "{n} is original to the house, 2014", "original {n} from 2014",
		"{n} probably 2014", "{n} year is 2014", "{n} of 2014", "it has a 2014 {n}", "has a 2014 {n}", "there's a 2014 {n}", "{n} = 2014", "{n}, 2014",
		"{n} date is 2014", "{n} has 2014 on the tag", "{n} reads 2014 on the tag", "{n} date code says 2014", "{n} date code is 2014",
		"{n} installed approx 2014", "{n} installed ~2014", "{n} date stamp 2014", "{n} put in 2014", "{n} has been there since 2014",
		"{n} there since 2014",
	}
	readPhrases(t, spread(forms, datedNames, "year 2014", "prv", "expansion_tank", "heater", "check_valve", "softener", "recirc"), framedParts)
}

// TestGridOfAges reads each thing with its age told in each way; the day is in 2026. A bare number is an
// age of what holds no pressure and is told in no gallons: "exp tank is 12" is its air.
func TestGridOfAges(t *testing.T) {
	forms := []string{
		"{n} is 12 years old", "{n} 12 years old", "{n} 12 yrs old", "{n} 12 yr old", "12 yr old {n}", "12 year old {n}", "12-year-old {n}",
		"{n} is 12 yrs", "{n} 12 yrs", "{n} 12 years", "{n} about 12 years old", "{n} is about 12 years old", "{n} is about a dozen years old",
		"{n} is twelve years old", "{n} is roughly 12 years old", "{n} is 12 or so years old", "{n} age 12", "{n} age: 12", "{n} age is 12", "{n}: 12 yrs",
		"{n} installed 12 years ago", "{n} was put in 12 years ago", "{n} went in 12 years ago", "{n} close to 12 years old", "{n} has 12 years on it",
		"{n} 12yo", "12yo {n}", "{n} is 12 yo", "{n} been in 12 years", "{n} has been in there 12 years", "{n} has been there for 12 years",
		"{n} in service 12 years", "{n} in service for 12 years", "{n} is a 12 year old", "{n} is a dozen years old", "12 years on the {n}",
		"{n} ~12 yrs old", "{n} approx 12 yrs old", "{n} (12 yrs)", "{n} - 12 yrs old", "{n}, 12 yrs old", "{n} around 12 years old",
		"has a 12 year old {n}", "there's a 12 yr old {n}", "{n} is like 12 years old", "{n} must be 12 years old", "{n} is easily 12 years old",
		"{n} is a good 12 years old", "customer says {n} is 12 years old", "owner says the {n} is 12 years old", "{n} looks 12 years old",
		"{n} is at least 12 years old", "{n} is some 12 years old", "{n} is nearly 12 years old", "{n} is almost 12 years old",
		"{n} replaced 12 years ago", "{n} was replaced 12 years ago", "{n} was changed 12 years ago", "{n} put in 12 years back", "{n} 12 y/o",
		"age of the {n} is 12 years", "{n} age 12 yrs", "{n} age: 12 years", "{n} is 12 years of age", "{n} has been in service 12 years",
		"{n} in place 12 years", "{n} is 12 years old now", "{n} is already 12 years old", "{n} has been in for 12 years",
		"they put the {n} in 12 years ago", "they installed the {n} 12 years ago", "{n} is 12 yrs old per the tag", "{n} 12 yrs old per customer",
		"{n} installed about 12 years ago", "{n} installed a dozen years ago", "{n} installed twelve years ago",
	}
	readPhrases(t, spread(forms, datedNames, "year 2014", "prv", "expansion_tank", "heater", "check_valve", "softener", "recirc"), framedParts)
	bare := []string{"{n} is 12", "{n} is around 12", "{n} is about 12"}
	readPhrases(t, spread(bare, datedNames, "year 2014", "prv", "heater", "check_valve", "softener", "recirc"), framedParts[:3])
}

// TestGridOfUnknownAges reads each thing with each way to say that nobody knows how old it is.
func TestGridOfUnknownAges(t *testing.T) {
	forms := []string{
		"{n} age unknown", "age of {n} unknown", "age of the {n} is unknown", "no idea how old the {n} is", "don't know how old the {n} is", "{n} age unk",
		"{n} unknown age", "unknown age {n}", "unknown age on {n}", "{n}: age unknown", "can't tell how old the {n} is", "no date on the {n}",
		"{n} has no date", "no date on {n}", "{n} no date", "{n} not dated", "{n} undated", "{n} date worn off", "{n} tag missing",
		"can't read the date on the {n}", "date on the {n} is unreadable", "{n} date illegible", "{n} date not legible", "{n} of unknown age",
		"not sure how old the {n} is", "nobody knows how old the {n} is", "{n}, not sure of the age", "couldn't find a date on the {n}",
		"{n} year unknown", "{n} install date unknown", "who knows how old the {n} is", "hard to say how old the {n} is",
		"customer doesn't know how old the {n} is", "owner not sure when the {n} was installed", "don't know when the {n} went in",
		"no clue how old the {n} is", "no telling how old the {n} is", "{n} age is unknown", "{n} age not known", "age on the {n} is unknown",
		"i don't know how old the {n} is", "no one knows how old the {n} is", "couldn't tell how old the {n} is", "no way to tell how old the {n} is",
		"no date code on the {n}", "{n} has no date code", "{n} has no date on it", "{n} with no date", "no install date on the {n}",
		"{n} date is worn off", "{n} date rubbed off", "{n} date unreadable", "could not read the date on the {n}", "can't make out the date on the {n}",
		"{n} age?? no idea", "{n} age - unknown", "{n} age: unknown", "{n} age: ?", "{n} age: unk", "{n} year: unknown", "{n} year unk",
		"not sure when the {n} was put in", "nobody knows when the {n} went in", "{n} could be any age", "{n} is of unknown age", "{n} is an unknown age",
		"owner has no idea how old the {n} is", "tenant doesn't know the age of the {n}", "customer unsure of {n} age", "{n}, age unknown",
		"{n} (age unknown)", "{n} - unknown age", "unk age {n}", "{n} unk age", "didn't see a date on the {n}", "no visible date on the {n}",
		"there's no date on the {n}", "the {n} isn't dated", "date on {n} worn off",
	}
	readPhrases(t, spread(forms, datedNames, "age unknown", "prv", "expansion_tank", "heater", "check_valve", "softener", "recirc"), framedParts)
}
