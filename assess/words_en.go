package assess

// english is what an English-speaking crew reads.
var english = wordTable{
	findings: map[string]wording{
		"gas_smell": {
			"Get everyone out now: no switches, flames or phones inside, call the gas utility or 911 from outside, and do not relight.",
			"Gas safety (common practice); the gas utility and a licensed plumber decide."},
		"relief_blocked": {
			"Heater off now and keep clear: the relief valve is capped, plugged or shut off; leave the heater off until a licensed plumber has put the valve and its open discharge pipe right.",
			"A relief valve is never capped, plugged or valved off (heater instructions citing ANSI Z21.22; common practice)."},
		"over_relief": {
			"Stop at {psi} psi: shut the supply, turn the heater off, keep people clear of the relief discharge, and call dispatch or a licensed plumber now.",
			"150 psi is the usual heater working pressure and relief setting (ANSI Z21.22/CSA 4.4, as quoted)."},
		"over_relief.discharge": {
			"Relief valve is discharging: heater off, keep clear of the hot discharge, read the static pressure now, and never plug or cap the valve.",
			"A relief valve opens at 150 psi or 210 F, or has failed; find the cause (common practice)."},
		"high": {
			"High at {house} ± {pm} psi, over {top}: compare with the main before touching the regulator's screw.",
			"Static above {top} psi calls for a working regulator (IPC 2018 604.8, IRC P2903.3.1, UPC 608.2, as quoted); at 60 psi open taps and steady leaks run {saved} % less (square root of pressure)."},
		"high.borderline": {
			"Maybe high at {house} ± {pm} psi against {top}: read it again with a finer gauge before you change anything.",
			"Gauge error by ASME B40.100 reaches across the limit; codes act above {top} psi."},
		"high.no_prv": {
			"High at {house} ± {pm} psi with no regulator: plan a regulator with strainer and expansion control; local code and a licensed plumber decide.",
			"Static above {top} psi calls for a regulator (IPC 2018 604.8, IRC P2903.3.1, as quoted)."},
		"high.over_relief": {
			"High at {house} ± {pm} psi, past every limit of the house: bring it down before anything else is done.",
			"Static above {top} psi calls for a working regulator (IPC 2018 604.8, IRC P2903.3.1, UPC 608.2, as quoted); local code decides."},
		"high.follows": {
			"High at {house} ± {pm} psi with the main at {street}: leave the screw alone and look at the regulator itself.",
			"Static above {top} psi calls for a working regulator (IPC 2018 604.8, IRC P2903.3.1, UPC 608.2, as quoted); local code decides."},
		"high.set": {
			"High at {house} ± {pm} psi with the main at {street}: turn the regulator down by small turns to 50 to 60, and read again.",
			"Static above {top} psi calls for a working regulator (IPC 2018 604.8, UPC 608.2, as quoted); at 60 psi open taps and steady leaks run {saved} % less (square root of pressure)."},
		"high.failed": {
			"High at {house} ± {pm} psi with a regulator told to have failed: leave its screw alone, rebuild or replace it.",
			"A screw that is frozen or stripped breaks, with the water on (common practice); static above {top} psi calls for a working regulator (IPC 2018 604.8, UPC 608.2, as quoted)."},
		"high.suspect": {
			"High at {house} ± {pm} psi with a worn regulator: leave its screw alone, and plan to rebuild or replace it.",
			"The screw of a worn or weeping regulator is not forced (common practice); static above {top} psi calls for a working regulator (IPC 2018 604.8, UPC 608.2, as quoted)."},
		"low": {
			"Low at {house} ± {pm} psi, under {bottom}: compare with the main and with a flowing reading before turning the screw.",
			"{bottom} psi is the customary least static pressure (older IRC P2903.3, from memory); one floor up about {upstairs} psi is left (0.433 psi a foot, IPC 2018 App. E)."},
		"low.borderline": {
			"Maybe low at {house} ± {pm} psi against {bottom}: read it again with a finer gauge before you change anything.",
			"Gauge error by ASME B40.100 reaches across the limit."},
		"low.street": {
			"Low at {house} ± {pm} psi because the main is low at {street}: leave the regulator alone, ask the utility.",
			"{bottom} psi is the customary least static pressure (older IRC P2903.3, from memory); one floor up about {upstairs} psi is left (0.433 psi a foot, IPC 2018 App. E)."},
		"low.unsound": {
			"Low at {house} ± {pm} psi, under {bottom}, with a bad regulator: leave its screw alone, compare with the main, and plan to rebuild or replace it.",
			"{bottom} psi is the customary least static pressure (older IRC P2903.3, from memory); one floor up about {upstairs} psi is left (0.433 psi a foot, IPC 2018 App. E)."},
		"in_band": {
			"In band at {house} ± {pm} psi ({bottom} to {top}): leave the setting as it is.",
			"Static of {bottom} to {top} psi, both included (IPC 2018 604.8 for the top; the bottom is custom)."},
		"in_band.plain": {
			"In band at {house} ± {pm} psi ({bottom} to {top}).",
			"Static of {bottom} to {top} psi, both included (IPC 2018 604.8 for the top; the bottom is custom)."},
		"borderline": {
			"Too close to call: {house} ± {pm} psi reaches across {limit}; read again with a finer gauge.",
			"Gauge error is percent of span by zone of the scale (ASME B40.100)."},
		"not_house_side": {
			"Main only: this says nothing of the house; read a rear bibb or the laundry tap too.",
			"Every reading is ahead of the regulator."},
		"retake": {
			"Read it again on the house side: heater idle, nothing running, open a tap a moment, close it, let the needle settle.",
			"A fair reading is static, house side, heater idle, expansion bled off (common practice)."},
		"retake.front_bibb": {
			"Read it again at the laundry tap or a rear bibb: a front bibb is often ahead of the regulator.",
			"The test point decides what was measured (common practice)."},
		"retake.heater": {
			"Read it again with the heater idle: open a tap a moment, close it, let the needle settle.",
			"Heating lifts the whole closed house side (physics; common practice)."},
		"retake.plastic_drain": {
			"Read it again at another tap: a plastic heater drain may not close again, and the reading there is doubtful.",
			"Old plastic drain valves may not reseal (common practice)."},
		"retake.gauge": {
			"Read it again with another gauge: the one used is in doubt.",
			"The message doubts the gauge."},
		"contradiction.apart": {
			"House readings do not agree, more than 15 psi apart: read one tap twice with the same gauge, heater idle.",
			"Static is the same all over the house but for height, 0.433 psi a foot (IPC 2018 App. E, as quoted)."},
		"contradiction.symptom": {
			"Told both ways: one symptom is said to be there and not to be there; ask which.",
			"Two statements of the same visit exclude each other."},
		"contradiction.year": {
			"Check the year: something is said to be installed in a year that has not come yet.",
			"An installation cannot lie after the visit."},
		"contradiction.no_prv_work": {
			"Is there a regulator? The visit says there is none, and also that it was worked on.",
			"Two statements of the same visit exclude each other."},
		"contradiction.no_tank_work": {
			"Is there an expansion tank? The visit says there is none, and also that it was worked on.",
			"Two statements of the same visit exclude each other."},
		"contradiction.no_prv_gap": {
			"Look for a hidden regulator: with none, house {house} and main {street} psi would read alike.",
			"Static is the same on both sides where nothing reduces it (physics)."},
		"contradiction.above_main": {
			"House above main, {house} against {street} psi: check the test points, bleed off expansion, read both again.",
			"At rest a regulator cannot lift the house above the main; trapped expansion can (physics)."},
		"not_regulating": {
			"Regulator is not holding: house {house} and main {street} psi read alike; clean the seat and strainer, else replace it.",
			"House within 5 psi of the main, both above {top} (common practice); local code and a licensed plumber decide."},
		"seat_creep": {
			"Seat is likely leaking by: it climbs at rest with the heater off; watch the gauge 15 minutes to be sure, then clean the seat or renew the cartridge.",
			"Creep counts once the heater is ruled out (common practice, from memory)."},
		"seat_creep.peak": {
			"Seat is likely leaking by: idle peak {peak} over static {house} psi; watch the gauge at rest with the heater off before you open it.",
			"A peak 15 psi or more above static with the heater idle (common practice)."},
		"restricted": {
			"Falls {fall} psi under flow: clean the regulator's strainer first, then look at its seat and size.",
			"Over 20 psi from static to flowing is more than a sized regulator loses (common practice)."},
		"restricted.no_prv": {
			"Falls {fall} psi under flow with no regulator: look for a half-closed valve, a clogged filter or a choked pipe.",
			"Over 20 psi from static to flowing (common practice)."},
		"fall_off": {
			"Falls {fall} psi under flow: watch it, and look at the strainer at the next service.",
			"10 to 20 psi of fall-off is usual at peak flow, not at one tap (common practice)."},
		"expansion_uncontrolled.rise": {
			"Climbs {rise} psi with the heater: check the expansion tank's charge and size, or fit one.",
			"Heated water in a closed house needs room (IPC 2018 607.3, IRC P2903.4, as quoted); a relief valve is no expansion control."},
		"expansion_uncontrolled.peak": {
			"Peaked at {peak} over static {house} psi with no working expansion tank: put one in order, charged to static, and leave the lazy hand on overnight.",
			"Heated water in a closed house needs room (IPC 2018 607.3, IRC P2903.4, as quoted); whether the house is closed is not known."},
		"peak_high": {
			"Peaked at {peak} psi, over {top}: find what lifts it before you call it fine, the heater, the regulator's seat or the main at night.",
			"Pressure may not exceed the band's top at any time (IPC 2018 604.8, as quoted); a peak 15 psi or more above static (common practice)."},
		"peak_high.no_prv": {
			"Peaked at {peak} psi, over {top}, with no regulator: leave the lazy hand on the main overnight, and fit a regulator if it climbs there.",
			"Pressure may not exceed the band's top at any time (IPC 2018 604.8, as quoted); a peak 15 psi or more above static (common practice)."},
		"expansion_uncontrolled.missing": {
			"No expansion tank on a closed system: fit one, charged to the house's static pressure.",
			"Expansion control where a regulator or check closes the house (IPC 2018 607.3, IRC P2903.4, UPC 608.3, as quoted)."},
		"expansion_uncontrolled.missing.sized": {
			"No expansion tank on a closed system: fit at least {tank} gal, charged to {house} psi.",
			"Sized to stay at {tanktop} psi with {inlet} F in and {setpoint} F set (ASHRAE diaphragm tank, absolute pressures; unsaid temperatures are assumed)."},
		"expansion_uncontrolled.missing.lower": {
			"No expansion tank on a closed system: bring the house down to {comfort} psi, then fit one charged to that.",
			"Expansion control where a regulator or check closes the house (IPC 2018 607.3, IRC P2903.4, UPC 608.3, as quoted)."},
		"expansion_uncontrolled.missing.lower.sized": {
			"No expansion tank on a closed system: bring the house down to {comfort} psi, then fit at least {tank} gal, charged to that.",
			"Sized to stay at {tanktop} psi with {inlet} F in and {setpoint} F set (ASHRAE diaphragm tank, absolute pressures; unsaid temperatures are assumed)."},
		"expansion_uncontrolled.failed": {
			"Expansion tank has failed on a closed system: replace it, charged to the house's static pressure.",
			"Expansion control where a regulator or check closes the house (IPC 2018 607.3, IRC P2903.4, UPC 608.3, as quoted)."},
		"expansion_uncontrolled.failed.sized": {
			"Expansion tank has failed on a closed system: replace it with at least {tank} gal, charged to {house} psi.",
			"Sized to stay at {tanktop} psi with {inlet} F in and {setpoint} F set (ASHRAE diaphragm tank, absolute pressures; unsaid temperatures are assumed)."},
		"expansion_uncontrolled.failed.lower": {
			"Expansion tank has failed on a closed system: bring the house down to {comfort} psi, then fit one charged to that.",
			"Expansion control where a regulator or check closes the house (IPC 2018 607.3, IRC P2903.4, UPC 608.3, as quoted)."},
		"expansion_uncontrolled.failed.lower.sized": {
			"Expansion tank has failed on a closed system: bring the house down to {comfort} psi, then fit at least {tank} gal, charged to that.",
			"Sized to stay at {tanktop} psi with {inlet} F in and {setpoint} F set (ASHRAE diaphragm tank, absolute pressures; unsaid temperatures are assumed)."},
		"tank_charge_off": {
			"Tank charge is off: {charge} against {house} psi static; isolate, drain the water side, set the air to static.",
			"Air charge equals house static, within 5 psi (common practice); the tank's own instructions and rating come first."},
		"tank_small": {
			"Tank is small: {size} gal where {tank} gal keeps the house at {tanktop} psi; lower the pressure or go up a size.",
			"{inlet} F in and {setpoint} F set, where not told assumed (ASHRAE diaphragm tank, absolute pressures)."},
		"tank_small.lower": {
			"Tank is small for {house} psi: {size} gal; bring the house down to {comfort} psi, where {tank} gal is enough.",
			"{inlet} F in and {setpoint} F set, where not told assumed (ASHRAE diaphragm tank, absolute pressures)."},
		"set_high": {
			"Set too high at {to} psi: turn it down into {bottom} to {top}, by small turns, and read again.",
			"Static stays at {top} psi or less (IPC 2018 604.8, UPC 608.2, as quoted)."},
		"set_low": {
			"Set too low at {to} psi: bring it up into {bottom} to {top}, by small turns, and read again.",
			"{bottom} psi is the customary least static pressure (from memory); regulators are set 50 to 60 (common practice)."},
		"set_high.unsound": {
			"Set too high at {to} psi, and the regulator is told to be bad: leave its screw alone, rebuild or replace it.",
			"Static stays at {top} psi or less (IPC 2018 604.8, UPC 608.2, as quoted)."},
		"set_low.unsound": {
			"Set too low at {to} psi, and the regulator is told to be bad: leave its screw alone, rebuild or replace it.",
			"{bottom} psi is the customary least static pressure (from memory); regulators are set 50 to 60 (common practice)."},
		"street_low": {
			"Main is low at {street} psi: ask the utility and check the curb and main valves before touching the regulator.",
			"Main below 40 psi; no regulator can raise it (physics)."},
		"street_strong": {
			"Main is strong at {street} psi and no regulator is on record: look for one, and read the house side.",
			"Above {top} psi a regulator is called for (IPC 2018 604.8, IRC P2903.3.1, as quoted); local code decides."},
		"street_strong.no_prv": {
			"Main is strong at {street} psi with no regulator: plan one with a strainer; local code and a licensed plumber decide.",
			"Above {top} psi a regulator is called for (IPC 2018 604.8, IRC P2903.3.1, as quoted); local code decides."},
		"dark_water": {
			"Dark specks with a regulator: open the strainer and look for black rubber before blaming the main.",
			"Worn elastomers shed specks (common practice)."},
		"dark_water.old": {
			"Dark specks with a regulator of {age} years: open the strainer and look for black rubber; a rebuild is likely due.",
			"Worn elastomers shed specks, more so with age (common practice)."},
		"prv_near_age": {
			"Regulator is {age} years old, near the end of its service life: test it against the main each visit.",
			"Service life {near} to {past} years (configured; common practice)."},
		"prv_past_age": {
			"Regulator is {age} years old, past its service life: test it under flow and at rest, and tell the customer.",
			"Service life {near} to {past} years (configured; common practice)."},
		"prv_age_unknown": {
			"Regulator's age is unknown: read the date on its tag or body and report it.",
			"Age decides how far a regulator is trusted (common practice)."},
		"drift_up": {
			"Drifting up about {slope} psi a year: read again at the next visit.",
			"Theil-Sen slope and Mann-Kendall test over the fair readings since the last work."},
		"drift_up.crosses": {
			"Drifting up about {slope} psi a year, over the band around {date}: plan a regulator test before then.",
			"Theil-Sen slope and Mann-Kendall test over the fair readings since the last work."},
		"drift_down": {
			"Drifting down about {slope} psi a year: read again at the next visit.",
			"Theil-Sen slope and Mann-Kendall test over the fair readings since the last work."},
		"drift_down.crosses": {
			"Drifting down about {slope} psi a year, under the band around {date}: look at the strainer before then.",
			"Theil-Sen slope and Mann-Kendall test over the fair readings since the last work."},
		"jump": {
			"Jumped from about {from} to {to} psi between {after} and {by}: ask what changed, and read main and house together.",
			"CUSUM on the residuals of the fair readings since the last work."},
		"high_pressure_signs": {
			"Signs of high pressure: take a fair house-side reading and leave a lazy hand overnight.",
			"Drips, running fill valves, hammer and noise go with high pressure (common practice)."},
		"high_pressure_signs.high": {
			"Signs fit the high pressure: bring it down first, then look at the leaks, the noise or the hammer again.",
			"Drips, running fill valves, hammer and noise go with high pressure (common practice)."},
		"hammer": {
			"Hammer: stopping 5 ft/s at once adds about {surge} psi in 3/4 in copper; secure the pipe, slow the valve, or fit an arrester.",
			"Joukowsky's surge with Korteweg's wave speed (textbook)."},
		"street_shift": {
			"Street has moved from about {before} to {level} psi at {n} readings nearby: compare with the main before you blame the regulator.",
			"A rise on many houses is the street's, on one the valve's (robust level of recent street readings nearby)."},
	},
	checks: map[string]checkWords{
		checkStreet:    {"read the main ahead of the regulator, nothing running", "it shows whether the house follows the main"},
		checkHouse:     {"read the laundry or a rear bibb: heater idle, nothing running, bled off", "no fair house reading is there yet"},
		checkFlow:      {"open one house tap and read the fall from static", "a restriction shows only under flow"},
		checkCreep:     {"heater off, nothing running, watch the gauge for 15 minutes", "a leaking seat climbs"},
		checkHeat:      {"let the heater fire with the gauge on", "expansion shows as a climb, and an idle heater does not"},
		checkGauge:     {"read the same tap with another gauge", "it clears the gauge or shows it wrong"},
		checkRegulator: {"look for the regulator where the main comes in", "whether there is one decides which causes are possible"},
		checkTank:      {"check the expansion tank's air charge, isolated and its water side drained", "a tank without air cannot take expansion"},
		checkScrew:     {"turn the regulator's screw a little and back, one tap trickling", "a working regulator follows its screw"},
		checkStrainer:  {"shut the water, open the regulator's strainer and look", "debris means a restriction, black rubber worn elastomers"},
	},
	followUps: map[string]string{
		"asked":                  "asked for in the report",
		"after_work":             "static again a day after work on the regulator",
		"yearly":                 "yearly reading",
		"over_relief":            "pressure or relief valve needs a second look",
		"relief_blocked":         "relief valve must be put right",
		"gas_smell":              "only after the gas utility has cleared the house",
		"not_regulating":         "regulator does not hold",
		"seat_creep":             "seat leaks by",
		"set_high":               "setting above the band",
		"set_low":                "setting below the band",
		"high":                   "house above the band",
		"low":                    "house below the band",
		"borderline":             "too close to the limit, finer gauge",
		"restricted":             "clean strainer and seat",
		"dark_water":             "look for rubber in the strainer",
		"street_strong":          "find or fit a regulator",
		"expansion_uncontrolled": "closed system without expansion control",
		"peak_high":              "peak over the band, not explained yet",
		"tank_small":             "tank smaller than computed",
		"retake":                 "no fair house reading yet",
		"not_house_side":         "no house reading yet",
		"contradiction":          "readings or facts do not agree",
		"fall_off":               "fall-off under flow",
		"tank_charge_off":        "tank charge against static",
		"street_low":             "low main",
		"hammer":                 "hammer",
		"prv_past_age":           "regulator past its service life",
		"drift_up":               "pressure drifting up",
		"drift_down":             "pressure drifting down",
		"jump":                   "pressure jumped",
	},
}
