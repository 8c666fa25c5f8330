package intents

import (
	"strings"
	"testing"
)

// Whatever verb a crew has for turning a regulator, with its way before or behind the thing, as an
// order of two numbers or with a reading beside it, it is one change of its setting.
func TestARegulatorIsSetByManyVerbs(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	verbs := "tuned regulated throttled notched jacked kicked cut pinched stepped pared twisted wrenched squeezed worked " +
		"reeled ramped upped shifted altered nursed coaxed walked wound eased backed inched"
	frames := [][2]string{
		{"{v} the prv down to 60", "set_prv to 60"},
		{"{v} the reg up to 60, it was at 40", "set_prv to 60 from 40"},
		{"i {v} the prv a bit. rear 60", "60 rear_bibb; set_prv"},
		{"{v} it down to 60 at the prv", "set_prv to 60"},
		{"prv was at 85, {v} it down to 60", "set_prv to 60 from 85"},
		{"{v} the prv down, rear 60", "60 rear_bibb; set_prv"},
	}
	for verb := range strings.FieldsSeq(verbs) {
		for _, f := range frames {
			text := strings.ReplaceAll(f[0], "{v}", verb)
			if got := inWords(p.Parse(text, Context{})); got != f[1] {
				t.Errorf("%q\n got %s\nwant %s", text, got, f[1])
			}
		}
	}
}

// The same in Spanish.
func TestARegulatorIsSetByManySpanishVerbs(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	verbs := "abrí cerré giré apreté solté aflojé moví reduje aumenté modifiqué"
	frames := [][2]string{
		{"{v} la reguladora a 60", "set_prv to 60"},
		{"le {v} al prv, atrás 60", "60 rear_bibb; set_prv"},
		{"{v} un poco la reguladora. atrás 60", "60 rear_bibb; set_prv"},
		{"{v} el prv de 85 a 60", "set_prv to 60 from 85"},
		{"no le {v} a la reguladora, atrás 60", "60 rear_bibb"},
	}
	for verb := range strings.FieldsSeq(verbs) {
		for _, f := range frames {
			text := strings.ReplaceAll(f[0], "{v}", verb)
			if got := inWords(p.Parse(text, Context{})); got != f[1] {
				t.Errorf("%q\n got %s\nwant %s", text, got, f[1])
			}
		}
	}
}

// Changing what a part is set to changes no part.
func TestAChangedSettingIsNoNewPart(t *testing.T) {
	says(t, [][2]string{
		{"changed the setting on the prv from 80 to 60", "set_prv to 60 from 80"},
		{"setting changed from 80 to 60 on the prv", "set_prv to 60 from 80"},
		{"prv setting was changed to 60", "set_prv to 60"},
		{"changed the setting on the regulator, rear 60", "60 rear_bibb; set_prv"},
		{"changed the air in the tank from 40 to 60", "charged_tank to 60 from 40"},
		{"changed the charge on the tank to 60", "charged_tank to 60"},
		{"le cambié la presión a 60", "set_prv to 60"},
		{"changed the regulator, rear 60", "60 rear_bibb; replaced_prv"},
		{"changed the spring in the prv, rear 60", "60 rear_bibb; rebuilt_prv"},
	})
}

// How far the screw went, that it was got so, and a noun for the job tell it as well.
func TestARegulatorIsSetInOtherWords(t *testing.T) {
	says(t, [][2]string{
		{"gave the prv two full turns, rear now 58", "58 rear_bibb after; set_prv"},
		{"ran the prv screw in till i saw 62 at the rear tap", "62 rear_bibb after; set_prv"},
		{"opened the prv up some, now 62 rear", "62 rear_bibb after; set_prv"},
		{"finally got the prv set, 60 rear", "60 rear_bibb; set_prv"},
		{"they got the prv set at 80", "prv set 80"},
		{"prv adjustment today, 80 to 60", "set_prv to 60 from 80"},
		{"prv was set too high so i took it down to 62", "set_prv to 62"},
		{"screwed the prv back together, rear 60", "60 rear_bibb"},
		{"took the prv back off", "ask none"},
	})
}

// A new part of a heater, a tank or a regulator is no new heater, tank or regulator.
func TestANewPartOfAHeaterIsNoNewHeater(t *testing.T) {
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	of := map[string]string{
		"heater":   "thermostat|elements|anode rod|dip tube|gas valve|igniter|thermocouple|flue|blower|drain pan|flex lines|relief valve|breaker",
		"exp tank": "bracket|strap|tee|nipple|shutoff|union",
		"prv":      "union|tailpiece|nipple|box|cover|shutoff",
	}
	frames := []string{"replaced the {p} on the {i}", "replaced the {i} {p}", "{p} replaced on the {i}", "swapped the {i}'s {p}",
		"put a new {p} on the {i}", "installed a new {p} on the {i}", "{i} needed a {p}, swapped it"}
	for item, parts := range of {
		for part := range strings.SplitSeq(parts, "|") {
			for _, f := range frames {
				text := strings.NewReplacer("{p}", part, "{i}", item).Replace(f)
				if got := inWords(p.Parse(text, Context{})); strings.Contains(got, "replaced") || strings.Contains(got, "installed") {
					t.Errorf("%q gives %s", text, got)
				}
			}
		}
	}
	says(t, [][2]string{
		{"replaced the heater, thermostat at 120", "heater 120 F; replaced_heater"},
		{"replaced the heater and the expansion tank, charged 60", "replaced_heater; replaced_tank to 60"},
		{"replaced heater and relief valve, rear 60", "60 rear_bibb; replaced_heater"},
		{"swapped out the heater, new pan and straps", "replaced_heater"},
		{"replaced the anode and flushed the heater", "flushed_heater"},
		{"replaced both elements on the heater, 60 rear", "60 rear_bibb"},
		{"both elements on, 60 rear", "60 rear_bibb firing"},
		{"cambié la resistencia del boiler, 60 atrás", "60 rear_bibb"},
		{"cambié el boiler y la válvula de gas", "replaced_heater"},
		{"relief valve replaced, old one dripped", "relief_discharge"},
		{"new t&p, the old one kept dripping", "relief_discharge"},
		{"new hose bibb out front, old one leaked", "repaired_leak"},
	})
}

// What the house lacked and has now was put in; what was bad and is "replaced" in a clause of its own was
// replaced; a new part beside pressures of before and after went in.
func TestAPartThatIsThereNowWasPutIn(t *testing.T) {
	says(t, [][2]string{
		{"house never had a regulator, does now, set the new one to 55", "installed_prv to 55"},
		{"no prv when i got here, there is now. 60 rear", "60 rear_bibb; installed_prv"},
		{"la casa no tenía regulador y ahora sí, 60 atrás", "60 rear_bibb; installed_prv"},
		{"no prv here, there is now 62 at the rear", "62 rear_bibb; prv none"},
		{"prv is shot, replaced", "replaced_prv"},
		{"tank waterlogged, replaced", "replaced_tank"},
		{"reguladora mala, cambiada", "replaced_prv"},
		{"prv failed, not replaced", "prv failed"},
		{"prv is shot, replaced in 2019", "prv year 2019 failed"},
		{"before: rear 95, after: rear 61. new reg", "61 rear_bibb after; 95 rear_bibb before; replaced_prv"},
		{"12 Elm, new prv, 62 now at the kitchen", "62 kitchen after; replaced_prv"},
		{"kitchen 62 now, new prv", "62 kitchen after; replaced_prv"},
		{"new 3/4 prv went in, set 62", "replaced_prv to 62"},
		{"prv is new as of today, 60 rear", "60 rear_bibb; replaced_prv"},
		{"new brass drain valve on the heater", "drain_valve brass; replaced_drain_valve"},
	})
}

// A new part that stands by its name alone may be in, or be what the house needs: the message asks.
func TestANewPartByItsNameAloneIsAskedAbout(t *testing.T) {
	p, err := oneParser()
	if err != nil {
		t.Fatal(err)
	}
	for _, text := range []string{"12 Elm new prv", "new prv at 12 Elm", "12 Elm got a new regulator", "kitchen 62. New heater", "12 Elm reguladora nueva", "calentador nuevo en 12 Elm"} {
		f := p.Parse(text, Context{})
		if len(f.Unclear) != 1 || len(f.Unclear[0].MightBe) != 2 {
			t.Errorf("%q asks %v", text, f.Unclear)
			continue
		}
		for k, want := range []string{"replaced_", "plan "} {
			g, ok := p.Answered(text, Context{}, f.Unclear[0], f.Unclear[0].MightBe[k])
			if got := inWords(g); !ok || !strings.Contains(got, want) {
				t.Errorf("%q answered %q gives %q, want %s", text, f.Unclear[0].MightBe[k], got, want)
			}
		}
	}
	for _, text := range []string{"new prv Friday at 12 Elm", "new prv is in at 12 Elm", "does 12 Elm need a new prv?", "new heater, 50 gal gas", "set the new prv to 60", "prv is new"} {
		if f := p.Parse(text, Context{}); len(f.Unclear) > 0 {
			t.Errorf("%q asks %q", text, f.Unclear[0].Ask)
		}
	}
}

// Water that the city shut, a leak that the customer mended, is no work of the visit; air put
// in is no tank put in, a peak is no charge, what is cleaned out of a regulator is no heater's.
func TestWorkOfOthersAndOfOtherParts(t *testing.T) {
	says(t, [][2]string{
		{"water's off, city is working on the main", "no_water"},
		{"tenant had already fixed the drip, rear 60", "60 rear_bibb"},
		{"shut the water off, city valve is seized so used the ball valve", "shut_off"},
		{"water off at meter, customer notified", "shut_off"},
		{"kitchen faucet dripped, customer fixed it last week, rear 60", "60 rear_bibb"},
		{"met the customer, fixed the leak", "repaired_leak"},
		{"le metí 60 libras al tanque", "charged_tank to 60"},
		{"charged the tank too, to 58", "charged_tank to 58"},
		{"exp tank added. peak was 132, now 74", "132 peak; 74; installed_tank"},
		{"flushed grit out of the regulator, front 62", "62 front_bibb; rebuilt_prv"},
		{"prv screen was plugged solid, cleaned it out, 62 front", "62 front_bibb; rebuilt_prv"},
		{"rebuild kit for the prv on order, 95 rear", "95 rear_bibb"},
		{"took the prv apart, cleaned the seat, back together at 60", "rebuilt_prv"},
	})
}
