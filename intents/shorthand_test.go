package intents_test

import (
	"encoding/json"
	"testing"

	"lazyhand/intents"
)

// Terms written short, by ear, with slips of the thumb or without the blank between
// them are read as if they were written out; common words are left as they are. The
// messages are our own.
func TestShorthand(t *testing.T) {
	p := newParser(t)
	for _, c := range []struct{ text, want string }{
		{"frnt bb 66 htr idl", `[{"kind":"reading","psi":66,"point":"front_bibb","heater":"idle"}]`},
		{"rr bb 66, htr frng", `[{"kind":"reading","psi":66,"point":"rear_bibb","heater":"firing"}]`},
		{"sd bb 70 brnr off", `[{"kind":"reading","psi":70,"point":"side_bibb","heater":"idle"}]`},
		{"lndry bx 88 htr idl", `[{"kind":"reading","psi":88,"point":"laundry","heater":"idle"}]`},
		{"ktchn snk 62 tb 61", `[{"kind":"reading","psi":62,"point":"kitchen"},{"kind":"reading","psi":61,"point":"bath"}]`},
		{"mstr bth 60", `[{"kind":"reading","psi":60,"point":"bath"}]`},
		{"shwr 58, lav 57", `[{"kind":"reading","psi":58,"point":"bath"},{"kind":"reading","psi":57,"point":"bath"}]`},
		{"mtr 120 aftr prv 60", `[{"kind":"reading","psi":120,"point":"street"},{"kind":"reading","psi":60,"point":"after_prv"}]`},
		{"strt sd 118 hse sd 61", `[{"kind":"reading","psi":118,"point":"street"},{"kind":"reading","psi":61,"point":"after_prv"}]`},
		{"ht wtr htr idl, 66 kit", `[{"kind":"reading","psi":66,"point":"kitchen","heater":"idle"}]`},
		{"blk wtr at tub", `[{"kind":"symptom","symptom":"dark_water"}]`},
		{"rsty wtr frst thng n mrnng", `[{"kind":"symptom","symptom":"rusty_water"}]`},
		{"wk prssr in shwr", `[{"kind":"symptom","symptom":"low_flow"}]`},
		{"no wtr n hse", `[{"kind":"symptom","symptom":"no_water"}]`},
		{"no blk wtr", `[{"kind":"symptom","symptom":"dark_water","absent":true}]`},
		{"wtr hmr whn wshr shts off", `[{"kind":"symptom","symptom":"hammer"}]`},
		{"rlf vlv drps", `[{"kind":"symptom","symptom":"relief_discharge"}]`},
		{"rlf vlv cppd", `[{"kind":"symptom","symptom":"relief_blocked"}]`},
		{"t&p drpng", `[{"kind":"symptom","symptom":"relief_discharge"}]`},
		{"prv sht", `[{"kind":"equipment","item":"prv","condition":"failed"}]`},
		{"prv stckng", `[{"kind":"equipment","item":"prv","condition":"suspect"}]`},
		{"prv gd", `[{"kind":"equipment","item":"prv","condition":"good"}]`},
		{"prv bd", `[{"kind":"equipment","item":"prv","condition":"failed"}]`},
		{"prv rplcd set 60", `[{"kind":"work","action":"replaced_prv","to_psi":60}]`},
		{"rplcd prv set 60", `[{"kind":"work","action":"replaced_prv","to_psi":60}]`},
		{"rblt prv", `[{"kind":"work","action":"rebuilt_prv"}]`},
		{"instlld exp tnk chrgd 60", `[{"kind":"work","action":"installed_tank","to_psi":60}]`},
		{"rplcd exp tnk", `[{"kind":"work","action":"replaced_tank"}]`},
		{"chrgd tnk frm 41 to 70", `[{"kind":"work","action":"charged_tank","to_psi":70,"from_psi":41}]`},
		{"flshd htr", `[{"kind":"work","action":"flushed_heater"}]`},
		{"rplcd htr 50 gal elc", `[{"kind":"work","action":"replaced_heater"},{"kind":"equipment","item":"heater","size_gal":50,"fuel":"electric"}]`},
		{"rplcd drn vlv brss", `[{"kind":"work","action":"replaced_drain_valve"},{"kind":"equipment","item":"drain_valve","material":"brass"}]`},
		{"rprd lk at tub", `[{"kind":"work","action":"repaired_leak"}]`},
		{"shut wtr off", `[{"kind":"work","action":"shut_off"}]`},
		{"wtr shut off at mtr", `[{"kind":"work","action":"shut_off"}]`},
		{"no exp tnk", `[{"kind":"equipment","item":"expansion_tank","present":false}]`},
		{"no chk vlv", `[{"kind":"equipment","item":"check_valve","present":false}]`},
		{"no sftnr", `[{"kind":"equipment","item":"softener","present":false}]`},
		{"chk vlv at mtr", `[{"kind":"equipment","item":"check_valve"}]`},
		{"sftnr, no rcrc", `[{"kind":"equipment","item":"softener"},{"kind":"equipment","item":"recirc","present":false}]`},
		{"exp tnk wtrlggd", `[{"kind":"equipment","item":"expansion_tank","condition":"failed"}]`},
		{"exp tnk ded", `[{"kind":"equipment","item":"expansion_tank","condition":"failed"}]`},
		{"tnk dead no air", `[{"kind":"equipment","item":"expansion_tank","condition":"failed"}]`},
		{"htr 40 gal gs 2018", `[{"kind":"equipment","item":"heater","installed_year":2018,"size_gal":40,"fuel":"gas"}]`},
		{"htr elc 50g nvr flshd", `[{"kind":"equipment","item":"heater","size_gal":50,"fuel":"electric","maintained_year":0}]`},
		{"htr 50 gal prpn", `[{"kind":"equipment","item":"heater","size_gal":50,"fuel":"propane"}]`},
		{"htr set 120", `[{"kind":"equipment","item":"heater","setpoint_f":120}]`},
		{"prv 12 yrs old", `[{"kind":"equipment","item":"prv","installed_year":2014}]`},
		{"prv age unk", `[{"kind":"equipment","item":"prv","age_unknown":true}]`},
		{"prv ~10 yrs", `[{"kind":"equipment","item":"prv","installed_year":2016}]`},
		{"lzy hnd 133", `[{"kind":"reading","psi":133,"peak":true}]`},
		{"mx 133 ovrnght", `[{"kind":"reading","psi":133,"peak":true}]`},
		{"gge crps up", `[{"kind":"symptom","symptom":"creep"}]`},
		{"gauge creeping nthng on", `[{"kind":"symptom","symptom":"creep"}]`},
		{"prssr up n dwn", `[{"kind":"symptom","symptom":"swings"}]`},
		{"prssr swngs", `[{"kind":"symptom","symptom":"swings"}]`},
		{"whstls", `[{"kind":"symptom","symptom":"noise"}]`},
		{"pipes bng", `[{"kind":"symptom","symptom":"hammer"}]`},
		{"rchk 2 wks", `[{"kind":"plan","action":"recheck","in_days":14}]`},
		{"rchk nxt wk", `[{"kind":"plan","action":"recheck","in_days":7}]`},
		{"rplc prv thrsdy", `[{"kind":"plan","action":"replace_prv","in_days":3}]`},
		{"rplc prv nxt wk", `[{"kind":"plan","action":"replace_prv","in_days":7}]`},
		{"need exp tnk", `[{"kind":"plan","action":"install_tank"}]`},
		{"irrig mnfld 90", `[{"kind":"reading","psi":90,"point":"irrigation"}]`},
		{"hose bb 88", `[{"kind":"reading","psi":88,"point":"bibb"}]`},
		{"bck bb 66", `[{"kind":"reading","psi":66,"point":"rear_bibb"}]`},
		{"frnt hose bb 70 wtr rnnng", `[{"kind":"reading","psi":70,"point":"front_bibb","flow":"flowing"}]`},
		{"66 stat 51 flwng frnt", `[{"kind":"reading","psi":66,"point":"front_bibb","flow":"static"},{"kind":"reading","psi":51,"point":"front_bibb","flow":"flowing"}]`},
		{"heateridle 66 frontbib", `[{"kind":"reading","psi":66,"point":"front_bibb","heater":"idle"}]`},
		{"expansiontank 2 gal", `[{"kind":"equipment","item":"expansion_tank","size_gal":2}]`},
		{"rearbib 66", `[{"kind":"reading","psi":66,"point":"rear_bibb"}]`},
		{"kitchensink 61", `[{"kind":"reading","psi":61,"point":"kitchen"}]`},
		{"no expansiontank", `[{"kind":"equipment","item":"expansion_tank","present":false}]`},
		{"waterheater 40 gal", `[{"kind":"equipment","item":"heater","size_gal":40}]`},
		{"flushedheater", `[{"kind":"work","action":"flushed_heater"}]`},
		{"checkvalve at meter", `[{"kind":"equipment","item":"check_valve"}]`},
		{"drainvalve plastic", `[{"kind":"equipment","item":"drain_valve","material":"plastic"}]`},
		{"front bit 66", `[{"kind":"reading","psi":66,"point":"front_bibb"}]`},
		{"frnt bib 66 heaterr idle", `[{"kind":"reading","psi":66,"point":"front_bibb","heater":"idle"}]`},
		{"kichen 66", `[{"kind":"reading","psi":66,"point":"kitchen"}]`},
		{"kitchn 66", `[{"kind":"reading","psi":66,"point":"kitchen"}]`},
		{"kithcen 66", `[{"kind":"reading","psi":66,"point":"kitchen"}]`},
		{"ktichen 66", `[{"kind":"reading","psi":66,"point":"kitchen"}]`},
		{"laundy 66", `[{"kind":"reading","psi":66,"point":"laundry"}]`},
		{"landry 66", `[{"kind":"reading","psi":66,"point":"laundry"}]`},
		{"lavtory 61", `[{"kind":"reading","psi":61,"point":"bath"}]`},
		{"bathrom 61", `[{"kind":"reading","psi":61,"point":"bath"}]`},
		{"shoewr 58", `[{"kind":"reading","psi":58,"point":"bath"}]`},
		{"sprinkelrs running, front 51", `[{"kind":"reading","psi":51,"point":"front_bibb","flow":"flowing"}]`},
		{"wter hamer", `[{"kind":"symptom","symptom":"hammer"}]`},
		{"presure low", `[{"kind":"symptom","symptom":"low_flow"}]`},
		{"expantion tank", `[{"kind":"equipment","item":"expansion_tank"}]`},
		{"regulater shot", `[{"kind":"equipment","item":"prv","condition":"failed"}]`},
		{"reglator shot", `[{"kind":"equipment","item":"prv","condition":"failed"}]`},
		{"calantador apagado 66 enfrente", `[{"kind":"reading","psi":66,"point":"front_bibb","heater":"idle"}]`},
		{"regadra 66", `[{"kind":"reading","psi":66,"point":"bath"}]`},
		{"lavdora 66", `[{"kind":"reading","psi":66,"point":"laundry"}]`},
		{"cosina 66", `[{"kind":"reading","psi":66,"point":"kitchen"}]`},
		{"medidr 90", `[{"kind":"reading","psi":90,"point":"street"}]`},
		{"valvla de alivio gotea", `[{"kind":"symptom","symptom":"relief_discharge"}]`},
		{"heater idel 66 kit", `[{"kind":"reading","psi":66,"point":"kitchen","heater":"idle"}]`},
		{"heater ilde 66 kit", `[{"kind":"reading","psi":66,"point":"kitchen","heater":"idle"}]`},
		{"no lks", `[{"kind":"symptom","symptom":"leak","absent":true}]`},
		{"ET N", `[{"kind":"equipment","item":"expansion_tank","present":false}]`},
		{"chk vlv @ mtr Y / ET N / softener Y / recirc N", `[{"kind":"equipment","item":"check_valve"},{"kind":"equipment","item":"expansion_tank","present":false},{"kind":"equipment","item":"softener"},{"kind":"equipment","item":"recirc","present":false}]`},
		{"exp tank: n", `[{"kind":"equipment","item":"expansion_tank","present":false}]`},
		{"blk spcks n th tub", `[{"kind":"symptom","symptom":"dark_water"}]`},
		{"blk flks in tub", `[{"kind":"symptom","symptom":"dark_water"}]`},
		{"heaterfiring 66kitchen", `[{"kind":"reading","psi":66,"point":"kitchen","heater":"firing"}]`},
		{"fixd th dripng kichen facet, 35 bux, 67 ther befor", `[{"kind":"work","action":"repaired_leak"},{"kind":"reading","psi":67,"point":"kitchen","when":"before"}]`},
		{"hose bid out front is 91, heater is idol", `[{"kind":"reading","psi":91,"point":"front_bibb","heater":"idle"}]`},
		{"66 psi laundry, Waterside apartments", `[{"kind":"reading","psi":66,"point":"laundry"}]`},
		{"slab is wet, 66 kitchen", `[{"kind":"reading","psi":66,"point":"kitchen"}]`},
		{"tilt on the stand, 66 kitchen", `[{"kind":"reading","psi":66,"point":"kitchen"}]`},
	} {
		got, err := json.Marshal(p.Parse(c.text, intents.Context{}))
		if err != nil {
			t.Fatal(err)
		}
		var f struct{ Statements json.RawMessage }
		if err := json.Unmarshal(got, &f); err != nil {
			t.Fatal(err)
		}
		if string(f.Statements) != c.want {
			t.Errorf("%q\n got %s\nwant %s", c.text, f.Statements, c.want)
		}
	}
}
