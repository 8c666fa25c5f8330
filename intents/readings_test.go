package intents

import (
	"fmt"
	"strings"
	"testing"

	"lazyhand/assess"
)

// told writes the readings of a message in short: "kitchen 57 flowing; street 110".
func told(f Frame) string {
	var out []string
	for _, s := range f.Statements {
		r, ok := s.(assess.Reading)
		if !ok {
			continue
		}
		w := []string{}
		if r.Point != "" {
			w = append(w, string(r.Point))
		}
		w = append(w, fmt.Sprint(r.PSI))
		if r.Heater != "" {
			w = append(w, string(r.Heater))
		}
		if r.Flow != "" {
			w = append(w, string(r.Flow))
		}
		if r.Peak {
			w = append(w, "peak")
		}
		if r.When != "" {
			w = append(w, string(r.When))
		}
		out = append(out, strings.Join(w, " "))
	}
	return strings.Join(out, "; ")
}

func reads(t *testing.T, table [][2]string) {
	t.Helper()
	p, err := New()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range table {
		if got := told(p.Parse(c[0], Context{})); got != c[1] {
			t.Errorf("%q\n got %s\nwant %s", c[0], got, c[1])
		}
	}
}

// Which numbers are pressures, and which are not: ages, prices, ratings, labels,
// temperatures, other people's numbers, gauges' ranges.
func TestNumbersThatAreNoPressure(t *testing.T) {
	reads(t, [][2]string{
		{"prv tag: max inlet 300 psi", ""},
		{"new shower valve says max 690 kPa", ""},
		{"shower valve says max 125 psi on it", ""},
		{"tub faucet says 150 max", ""},
		{"sprinkler valve says 118 max overnight on the needle", "irrigation 118 peak"},
		{"gauge at the sprinkler valve says max 125", "irrigation 125 peak"},
		{"prv says 25-75 on the plate, front 103", "front_bibb 103"},
		{"nameplate on the prv: 400 max inlet, 25 to 75 outlet. 88 rear", "rear_bibb 88"},
		{"sticker on the exp tank says 150 max, tub 66", "bath 66"},
		{"tank label 150 psi max working, laundry 71", "laundry 71"},
		{"T&P is a 150 lb valve, kitchen 70", "kitchen 70"},
		{"150 psi relief on it, kitchen 70", "kitchen 70"},
		{"the relief is rated 150 psi / 210 F. 72 kitchen", "kitchen 72"},
		{"gauge goes to 200, laundry 64", "laundry 64"},
		{"using a 0-200 psi gauge, laundry 64", "laundry 64"},
		{"my 300 psi gauge reads 64 at the laundry", "laundry 64"},
		{"who has the 200 psi gauge, it's not in the cage", ""},
		{"anybody seen the 100 psi gauge", ""},
		{"need a new 160 lb gauge for the van", ""},
		{"neighbor brags he's got 120. rear bib 119", "rear_bibb 119"},
		{"neighbor has 95, rear bib here 119", "rear_bibb 119"},
		{"next door is at 95 she says, rear bib 60", "rear_bibb 60"},
		{"neighbors gauge shows 95, ours 60 at the rear", "rear_bibb 60"},
		{"she measured 45 herself 2 yrs ago, I get 110 today, kitchen", "kitchen 110"},
		{"homeowner got 58 with his own gauge last week. I got 92 at the laundry", "laundry 92"},
		{"he told me 50, I read 92 at the laundry", "laundry 92"},
		{"customer was told 50 by the water dept, front 92", "front_bibb 92"},
		{"water dept says they deliver 110, meter 84", "street 84"},
		{"city says 110 at the main, I have 84 at the meter", "street 84"},
		{"water company quoted her 75 at the meter, I see 128", "street 128"},
		{"old sheet from 2022 says 100. 74 kitchen now", "kitchen 74"},
		{"last report had 100 at the kitchen, today 74", "kitchen 74"},
		{"last ticket shows 88 front. today front is 70", "front_bibb 70"},
		{"my notes say 81 last fall, rear 66 today", "rear_bibb 66"},
		{"file says 90, rear 66", "rear_bibb 66"},
		{"the card on the heater says 55, from 2019. kitchen 77", "kitchen 77"},
		{"the 2021 report had street at 130. 118 today at the street", "street 118"},
		{"gonna drop the prv to 60 tomorrow, it's 88 at the front today", "front_bibb 88"},
		{"will set it to 55 next trip, 88 front", "front_bibb 88"},
		{"want to bring it down to 60, 88 front", "front_bibb 88"},
		{"wants 60 in the shower, he's got 48 at the tub", "bath 48"},
		{"should be 60, is 48 at the tub", "bath 48"},
		{"code is 80 max, rear is 96", "rear_bibb 96"},
		{"anything above 80 is a violation, rear 96", "rear_bibb 96"},
		{"it was 112 in that attic no joke", ""},
		{"hot as hell, 104 out here, rear 66", "rear_bibb 66"},
		{"98 degrees today. rear 66", "rear_bibb 66"},
		{"water is 118 at the tub, pressure 61", "bath 61"},
		{"hot water comes out at 134, 61 psi at the tub", "bath 61"},
		{"kitchen 118 degrees, 61 psi", "kitchen 61"},
		{"gas heater's thermostat is at 140, she did that herself, I said 120", ""},
		{"shop compressor is leaking again, won't hold over 90 psi", ""},
		{"compressor only makes 90 psi", ""},
		{"tires at 35 psi", ""},
		{"tested the gas line at 15 psi, kitchen water 66", "kitchen 66"},
		{"air test held 100 psi for an hour", ""},
		{"pressure tested the new copper at 120 for 15 min, no drop. kitchen 66", "kitchen 66"},
		{"job 88 done, front 66", "front_bibb 66"},
		{"pic 184 front bib gauge, 103 psi", "front_bibb 103"},
		{"photo 3: front bib 103", "front_bibb 103"},
		{"IMG_4471 rear 77", "rear_bibb 77"},
		{"see picture 12, rear 77", "rear_bibb 77"},
		{"it's in slot 61 on the board, rear 77", "rear_bibb 77"},
		{"bill 145, rear 77", "rear_bibb 77"},
		{"35 bux for the washer, 67 at the kitchen", "kitchen 67"},
		{"part was 89, sold it for 140, kitchen 66", "kitchen 66"},
		{"collected 185 cash, kitchen 66", "kitchen 66"},
		{"180 plus tax, kitchen 66", "kitchen 66"},
		{"customer is 85 and lives alone, kitchen 66", "kitchen 66"},
		{"the lady is 85, kitchen 66", "kitchen 66"},
		{"85 yr old lady, kitchen 66", "kitchen 66"},
		{"house from 1962, kitchen 66", "kitchen 66"},
		{"house is 62 years old, kitchen 66", "kitchen 66"},
		{"30 amp breaker 240 volts ok. 68 laundry", "laundry 68"},
		{"took 25 min, 68 laundry", "laundry 68"},
		{"be there in 45, laundry was 68", "laundry 68"},
		{"ran 60 ft of pex, laundry 68", "laundry 68"},
		{"the meter is 80 feet from the house, laundry 68", "laundry 68"},
		{"i-80 is jammed, be late", ""},
		{"hwy 66 closed, running 40 behind", ""},
		{"52 more stickers please", ""},
		{"air in the tank is 50, tub 66", "bath 66"},
		{"tank charge 50, tub 66", "bath 66"},
		{"bladder at 50, tub 66", "bath 66"},
		{"tank precharged 40 from the factory, tub 66", "bath 66"},
		{"prv came set at 50, tub 66", "bath 66"},
		{"prv dial says 50, tub 66", "bath 66"},
		{"drops 20 when the sprinklers start", ""},
		{"lost about 15 lbs with the hose on", ""},
		{"20 pounds lower than last time, front 66", "front_bibb 66"},
		{"off by 5, my gauge. front 66", "front_bibb 66"},
		{"gauge reads 3 high, front 66", "front_bibb 66"},
		{"they lost pressure at 6:30, back at 7, kitchen 64", "kitchen 64"},
		{"64 at 7 am kitchen", "kitchen 64"},
		{"moved here in 98, kitchen 64", "kitchen 64"},
		{"call 555-0188, kitchen 64", "kitchen 64"},
		{"gate 4471 kitchen 64", "kitchen 64"},
		{"serial 88 on the prv, kitchen 64", "kitchen 64"},
		{"2nd visit, kitchen 64", "kitchen 64"},
		{"16 steps down to the cellar, laundry 64", "laundry 64"},
		{"40 gal, 40k btu, laundry 64", "laundry 64"},
		{"3/4 prv, laundry 64", "laundry 64"},
		{"1 1/4 line, meter 94", "street 94"},
		{"turned it with a 9/16, laundry 62", "laundry 62"},
		{"running over there now, eta 15", ""},
		{"tank holds 52 lbs air, laundry 64", "laundry 64"},
		{"prv label says max inlet 300, outlet 25 to 75. washer 83", "laundry 83"},
		{"truck 2 front left is at 22 psi, rear right 30, somebody air it up", ""},
	})
}

// Units, head, ranges and hedges.
func TestUnitsAndRanges(t *testing.T) {
	reads(t, [][2]string{
		{"somewhere btw 74 and 76 on the hose bib", "bibb 75"},
		{"bet 74 and 76 rear", "rear_bibb 75"},
		{"between 74 & 76 rear", "rear_bibb 75"},
		{"rear 74 to 76", "rear_bibb 75"},
		{"rear 74 or 75 maybe", "rear_bibb 74.5"},
		{"rear bounces between 74 and 76", "rear_bibb 75"},
		{"rear 74-76 psi", "rear_bibb 75"},
		{"rear 74–76", "rear_bibb 75"},
		{"rear 74 thru 76", "rear_bibb 75"},
		{"rear roughly 75", "rear_bibb 75"},
		{"rear a hair under 75", "rear_bibb 75"},
		{"rear a touch over 75", "rear_bibb 75"},
		{"rear just shy of 75", "rear_bibb 75"},
		{"rear close to 75", "rear_bibb 75"},
		{"rear 75ish", "rear_bibb 75"},
		{"rear 75 give or take", "rear_bibb 75"},
		{"rear ≈75", "rear_bibb 75"},
		{"rear 75+", "rear_bibb 75"},
		{"rear 75 plus or minus 2", "rear_bibb 75"},
		{"rear 75 +/- 2", "rear_bibb 75"},
		{"5.2 bar front", "front_bibb 75.4"},
		{"front 520 kpa", "front_bibb 75.4"},
		{"front 0.52 MPa", "front_bibb 75.4"},
		{"150 ft of head at the meter", "street 65"},
		{"30 m of head at the front bib", "front_bibb 42.7"},
		{"30 mwc at the front bib", "front_bibb 42.7"},
		{"30 m de columna de agua en la llave de enfrente", "front_bibb 42.7"},
		{"front bib 5,2 bar", "front_bibb 75.4"},
		{"front 60.5", "front_bibb 60.5"},
		{"front 60 1/2", "front_bibb 60.5"},
		{"front sixty and a half", "front_bibb 60.5"},
		{"front one oh four", "front_bibb 104"},
		{"front a hundred four", "front_bibb 104"},
		{"front #66", ""},
		{"front 66 #", "front_bibb 66"},
		{"66lbs front", "front_bibb 66"},
		{"front: 66 pounds per square inch", "front_bibb 66"},
		{"rear 66 PSIG", "rear_bibb 66"},
		{"rear 66p", "rear_bibb 66"},
		{"rear anywhere from 74 to 76", "rear_bibb 75"},
		{"kitchen ranges from 58 to 62", "kitchen 60"},
		{"rear somewhere between 74 and 76", "rear_bibb 75"},
		{"gauge on the laundry is in ft of head and reads 161", "laundry 69.8"},
		{"the one i have is marked in feet, 160 laundry", "laundry 69.4"},
		{"dial is in meters of water, 42 at the kitchen", "kitchen 59.7"},
		{"feet of water on this gauge: 165 rear spigot", "rear_bibb 71.5"},
	})
}

// Which test point goes with which number.
// A dictating machine writes digits as words, one by one.
func TestDigitsOneByOne(t *testing.T) {
	reads(t, [][2]string{
		{"side spigot seven zero psi", "side_bibb 70"},
		{"kitchen six five psi", "kitchen 65"},
		{"one oh eight out front and the back is fifty nine", "front_bibb 108; rear_bibb 59"},
		{"108 out front and 59 out back", "front_bibb 108; rear_bibb 59"},
	})
}

func TestPairing(t *testing.T) {
	reads(t, [][2]string{
		{"K 57#", "kitchen 57"},
		{"64# K", "kitchen 64"},
		{"T&P plugged w/ a cap!! K 79#", "kitchen 79"},
		{"HB frt 84#", "front_bibb 84"},
		{"F/R 84/66", "front_bibb 84; rear_bibb 66"},
		{"frt 84, rr 66, ldry 65", "front_bibb 84; rear_bibb 66; laundry 65"},
		{"softnr on site, K 58, lndry 58", "kitchen 58; laundry 58"},
		{"front 84 rear 66 kit 65", "front_bibb 84; rear_bibb 66; kitchen 65"},
		{"84 front 66 rear 65 kit", "front_bibb 84; rear_bibb 66; kitchen 65"},
		{"84 front, 66 rear, and 65 at the kitchen sink", "front_bibb 84; rear_bibb 66; kitchen 65"},
		{"front and rear both 84", "front_bibb 84; rear_bibb 84"},
		{"both front and rear at 84", "front_bibb 84; rear_bibb 84"},
		{"front & rear 84 & 66", "front_bibb 84; rear_bibb 66"},
		{"front, rear: 84, 66", "front_bibb 84; rear_bibb 66"},
		{"front/rear/kitchen 84/66/65", "front_bibb 84; rear_bibb 66; kitchen 65"},
		{"84 at the front and the same at the rear", "front_bibb 84; rear_bibb 84"},
		{"front 84, rear same", "front_bibb 84; rear_bibb 84"},
		{"front 84 rear ditto", "front_bibb 84; rear_bibb 84"},
		{"front 84, same in the kitchen", "front_bibb 84; kitchen 84"},
		{"front 84. same at the laundry", "front_bibb 84; laundry 84"},
		{"ktchn 55 n rr bb 57", "kitchen 55; rear_bibb 57"},
		{"kitchen 66 and tub 65 before", "kitchen 66; bath 65"},
		{"50 psi at the drain of the 50 gal", "heater_drain 50"},
		{"50 psi at the drain on the heater", "heater_drain 50"},
		{"50 on the wh drain", "heater_drain 50"},
		{"hose thread at the bottom of the heater, 50", "heater_drain 50"},
		{"fixed the leaky hose bib w a new washer. 83 there with nothing on", "bibb 83 static"},
		{"checked the laundry, 83 there", "laundry 83"},
		{"gauge is on the laundry tap. 83", "laundry 83"},
		{"Hung on rear bib\nlazy hand 157\nright now 80", "rear_bibb 157 peak; rear_bibb 80"},
		{"gauge on the rear bib:\nat 1:00 it said 62\nat 1:10 it said 70\nat 1:20 it said 81", "rear_bibb 62; rear_bibb 70; rear_bibb 81"},
		{"side bib test\nmin 0: 62\nmin 10: 70\nmin 20: 83", "side_bibb 62; side_bibb 70; side_bibb 83"},
		{"rear bib\n0 min 62\n10 min 70\n20 min 83", "rear_bibb 62; rear_bibb 70; rear_bibb 83"},
		{"rear bib 9:00 62, 9:10 70, 9:20 83", "rear_bibb 62; rear_bibb 70; rear_bibb 83"},
		{"rear bib: 62 at first, 70 after 10 min, 83 after 20", "rear_bibb 62; rear_bibb 70; rear_bibb 83"},
		{"meter 131, past the prv 66", "street 131; after_prv 66"},
		{"131 in, 66 out", "street 131; after_prv 66"},
		{"inlet 131 outlet 66", "street 131; after_prv 66"},
		{"before prv 131 after prv 66", "street 131; after_prv 66"},
		{"131 going in and 66 coming out of the prv", "street 131; after_prv 66"},
		{"131 upstream, 66 down", "street 131; after_prv 66"},
		{"medidor 115\ndesp d la reguladora 115", "street 115; after_prv 115"},
		{"la reguladora esta pegada, 117 despues de ella", "after_prv 117"},
		{"prv is shot, 117 after it", "after_prv 117"},
		{"hose bibb by the gate 85", "bibb 85"},
		{"sprinkler manifold 87, hose bibb by the gate 85", "irrigation 87; bibb 85"},
		{"powder room lav 60", "bath 60"},
		{"upstairs shower 48, downstairs tub 52", "bath 48; bath 52"},
		{"82 at the front. er no that was the back one. front i didnt do", "rear_bibb 82"},
		{"88 laundry - sorry that was the kitchen", "kitchen 88"},
		{"Kitchen sink is at 61 and the laundry sink is at 62", "kitchen 61; laundry 62"},
		{"readings: kitchen - 61, laundry - 62, front - 63", "kitchen 61; laundry 62; front_bibb 63"},
		{"kitchen=61 laundry=62", "kitchen 61; laundry 62"},
		{"kitchen (61) laundry (62)", "kitchen 61; laundry 62"},
		{"61 (kitchen), 62 (laundry)", "kitchen 61; laundry 62"},
		{"• kitchen: 61\n• laundry: 62", "kitchen 61; laundry 62"},
		{"1) kitchen 61 2) laundry 62", "kitchen 61; laundry 62"},
		{"61 kit / 62 ldy", "kitchen 61; laundry 62"},
		{"kitchen reading came in at 61", "kitchen 61"},
		{"I'm showing 61 over at the kitchen", "kitchen 61"},
		{"put a gauge on the kitchen and it says 61", "kitchen 61"},
	})
}

// The heater's state, told once or changing in the message.
func TestHeaterState(t *testing.T) {
	reads(t, [][2]string{
		{"laundry 88 idle, 101 firing", "laundry 88 idle; laundry 101 firing"},
		{"laundry 93 idle, laundry 108 firing", "laundry 93 idle; laundry 108 firing"},
		{"lndry bx 88 htr idl lndry bx 101 htr frng", "laundry 88 idle; laundry 101 firing"},
		{"htr frng 91 lndry, htr idl 70 lndry", "laundry 91 firing; laundry 70 idle"},
		{"wh idle 70, wh firing 91, laundry", "laundry 70 idle; laundry 91 firing"},
		{"87 w/ the heater going then 64 once it quit. laundry tap", "laundry 87 firing; laundry 64 idle"},
		{"70 before the burner lit, 91 after, laundry", "laundry 70 idle; laundry 91 firing"},
		{"laundry 70 with the heater resting, climbed to 91 when it fired", "laundry 70 idle; laundry 91 firing"},
		{"laundry was 70, heater kicked on, went to 91", "laundry 70 idle; laundry 91 firing"},
		{"94 off the back spigot, burner going", "rear_bibb 94 firing"},
		{"off the back bib 94, heater on", "rear_bibb 94 firing"},
		{"got 94 off the rear with the heater running", "rear_bibb 94 firing"},
		{"frnt bb 104 htr idl", "front_bibb 104 idle"},
		{"88 frnt bb htr idl", "front_bibb 88 idle"},
		{"lndry 71 aftrwrds, brnr still off", "laundry 71 idle"},
		{"heater idle... wait no it's firing, I heard it light. 77 kitchen", "kitchen 77 firing"},
		{"heater cranking away right now, 99 laundry", "laundry 99 firing"},
		{"heater's roaring, 99 laundry", "laundry 99 firing"},
		{"99 laundry while the heater was recovering", "laundry 99 firing"},
		{"99 laundry, wh in recovery", "laundry 99 firing"},
		{"99 laundry mid-burn", "laundry 99 firing"},
		{"99 laundry, both elements pulling", "laundry 99 firing"},
		{"99 laundry with WH burning", "laundry 99 firing"},
		{"99 laundry, pilot only", "laundry 99 idle"},
		{"99 laundry, heater valved off", "laundry 99 idle"},
		{"99 laundry, breaker off to heater", "laundry 99 idle"},
		{"99 laundry. heater was not doing anything", "laundry 99 idle"},
		{"99 laundry, heater at temp", "laundry 99 idle"},
		{"99 laundry. heater sat idle the whole time", "laundry 99 idle"},
		{"99 laundry, didn't look at the heater", "laundry 99"},
		{"99 laundry, couldn't tell if the heater was firing", "laundry 99"},
		{"99 laundry, heater is in the garage", "laundry 99"},
		{"tenant had closed the valve on the heater, I opened it. 70 at the tub", "bath 70"},
		{"40 gal electric heater on a 30 amp breaker, 68 laundry", "laundry 68"},
		{"turned on the water, 68 laundry, heater 40 gal", "laundry 68"},
		{"heater on the second floor, 68 laundry", "laundry 68"},
		{"burner on: laundry 95\nburner off: laundry 70", "laundry 95 firing; laundry 70 idle"},
		{"firing\nlaundry 95\nkitchen 94\nidle\nlaundry 70\nkitchen 69", "laundry 95 firing; kitchen 94 firing; laundry 70 idle; kitchen 69 idle"},
		{"the 80 was with it idle, the 95 firing, laundry", "laundry 80 idle; laundry 95 firing"},
		{"laundry 80, heater idle. fired it up and laundry went to 95", "laundry 80 idle; laundry 95 firing"},
		{"ran hot water till the heater lit, 95 at the laundry", "laundry 95 firing"},
		{"heater off for the season. 66 front", "front_bibb 66 idle"},
		{"heater's been off all week, 66 front", "front_bibb 66 idle"},
		{"66 front, no fire in the heater", "front_bibb 66 idle"},
		{"66 front, tank heater heating", "front_bibb 66 firing"},
		{"kitchen 55. heater is a 50 gal. I will flush it on July 1.", "kitchen 55"},
		{"laundry 66, gas cock to the heater shut all visit", "laundry 66 idle"},
		{"gas shut to the heater. curb side 104", "street 104 idle"},
		{"heater breaker pulled, kitchen 60", "kitchen 60 idle"},
	})
}

// What ran while a pressure was read, and which numbers it covers.
func TestFlow(t *testing.T) {
	reads(t, [][2]string{
		{"K 57# w/ tub running", "kitchen 57 flowing"},
		{"evrythng shut: mtr 92, frnt 60", "street 92 static; front_bibb 60 static"},
		{"ktchn 49 w shwr rnnng, ktchn 71 al off", "kitchen 49 flowing; kitchen 71 static"},
		{"frt 84# stat / 66# w/ rr HB open", "front_bibb 84 static; front_bibb 66 flowing"},
		{"ktchn 55 n rr bb 57 both w nthng rnnng", "kitchen 55 static; rear_bibb 57 static"},
		{"front 70 static, fell to 44 with the hose wide open", "front_bibb 70 static; front_bibb 44 flowing"},
		{"front 70, 44 with a hose going", "front_bibb 70; front_bibb 44 flowing"},
		{"front went from 70 to 44 when I opened the tub", "front_bibb 70; front_bibb 44 flowing"},
		{"ran the tub like you showed me and side spigot went to 60", "side_bibb 60 flowing"},
		{"kitchen 38 with the irrigation on, 67 with nothing open", "kitchen 38 flowing; kitchen 67 static"},
		{"cocina: 48 con el riego andando, 67 sin nada abierto", "kitchen 48 flowing; kitchen 67 static"},
		{"la llave de atras me dio 54 con el riego del cliente prendido y 79 con todo cerrado", "rear_bibb 54 flowing; rear_bibb 79 static"},
		{"with the sprinklers going 44 front", "front_bibb 44 flowing"},
		{"44 front during a shower", "front_bibb 44 flowing"},
		{"44 front while she showered", "front_bibb 44 flowing"},
		{"44 front with the dishwasher filling", "front_bibb 44 flowing"},
		{"44 front, 2 taps open", "front_bibb 44 flowing"},
		{"44 front, one tub and one shower open", "front_bibb 44 flowing"},
		{"70 front. no water running in the house.", "front_bibb 70 static"},
		{"70 front 69 rear, nobody using anything", "front_bibb 70 static; rear_bibb 69 static"},
		{"70 front 69 rear nobody running water", "front_bibb 70 static; rear_bibb 69 static"},
		{"164 at the meter and 83 at the laundry tap, nothing running for either one", "street 164 static; laundry 83 static"},
		{"all fixtures shut. 70 front, 69 rear", "front_bibb 70 static; rear_bibb 69 static"},
		{"house all closed up, 70 front", "front_bibb 70 static"},
		{"no draw: 70 front", "front_bibb 70 static"},
		{"70 front, zero demand", "front_bibb 70 static"},
		{"70 front, house dead quiet", "front_bibb 70 static"},
		{"70 front, everybody out of the house nothing on", "front_bibb 70 static"},
		{"nothing on: front 70, rear 69. tub on: front 50, rear 48", "front_bibb 70 static; rear_bibb 69 static; front_bibb 50 flowing; rear_bibb 48 flowing"},
		{"static front 70 rear 69\nflowing front 50 rear 48", "front_bibb 70 static; rear_bibb 69 static; front_bibb 50 flowing; rear_bibb 48 flowing"},
		{"front 70 static 50 residual", "front_bibb 70 static; front_bibb 50 flowing"},
		{"static/residual at the front 70/50", "front_bibb 70 static; front_bibb 50 flowing"},
		{"front 70/50 static/flowing", "front_bibb 70 static; front_bibb 50 flowing"},
		{"no leaks, found the meter valve half shut and opened it, kitchen 61", "kitchen 61"},
		{"irrigation manifold 106. kitchen 60 and lav 60, nothing was running for the two inside", "irrigation 106; kitchen 60 static; bath 60 static"},
		{"toilet is running, 70 front", "front_bibb 70"},
		{"truck is running rough. front 70", "front_bibb 70"},
		{"running late, front 70", "front_bibb 70"},
		{"no more knocking. Front 61, kitchen 60", "front_bibb 61; kitchen 60"},
		{"shut the water off at the curb. front 119", "front_bibb 119"},
		{"washer hose is dripping, front 119", "front_bibb 119"},
		{"held nothing at all so I took it off. rear bib 61", "rear_bibb 61"},
		{"everything in the house off, rear 61", "rear_bibb 61 static"},
		{"meter 98. kitchen 49 with the tub running. kitchen 58 once all of it was closed", "street 98; kitchen 49 flowing; kitchen 58 static"},
		{"laundry 70 nothing running.. sorry the tub WAS running", "laundry 70 flowing"},
		{"kitchen 58 static, sorry hose was on", "kitchen 58 flowing"},
	})
}

// Peak, before and after, series.
func TestPeakAndWhen(t *testing.T) {
	reads(t, [][2]string{
		{"needle hit 126 overnite, settled at 69 this am, laundry", "laundry 126 peak; laundry 69"},
		{"overnight high on the laundry gauge was one forty six, this morning it's at seventy", "laundry 146 peak; laundry 70"},
		{"lazy hand 146, now 70, laundry", "laundry 146 peak; laundry 70"},
		{"el lazy hand pego en 141 overnite, right now 72, gauge en la lavadora", "laundry 141 peak; laundry 72"},
		{"red hand on the laundry gauge sat at 141", "laundry 141 peak"},
		{"got up to 141 overnight at the laundry", "laundry 141 peak"},
		{"left the gauge on the laundry overnight, max 141 this morning 70", "laundry 141 peak; laundry 70"},
		{"spiked to 141 at the laundry, back to 70", "laundry 141 peak; laundry 70"},
		{"high 141 low 62 over 24 hrs, laundry", "laundry 141 peak; laundry 62"},
		{"most it got to was 141, laundry", "laundry 141 peak"},
		{"the max hand is parked at 141, laundry", "laundry 141 peak"},
		{"relief valve dripped all night. laundry 96", "laundry 96"},
		{"la valvula de alivio gotea toda la noche, lavadora 96", "laundry 96"},
		{"cranked the prv down, front bib was 101 now 63", "front_bibb 101 before; front_bibb 63 after"},
		{"cranked the prv from 100 down to 62, front bib was 101 now 63", "front_bibb 101 before; front_bibb 63 after"},
		{"replaced prv. before: front 101, kitchen 100. after: front 60, kitchen 60", "front_bibb 101 before; kitchen 100 before; front_bibb 60 after; kitchen 60 after"},
		{"new prv in. 101 -> 60 front", "front_bibb 101 before; front_bibb 60 after"},
		{"new prv in. front 101 to 60", "front_bibb 101 before; front_bibb 60 after"},
		{"replaced prv, front went 101 to 60", "front_bibb 101 before; front_bibb 60 after"},
		{"kitchen was 38, found the meter valve half shut and opened it, kitchen is 61 now", "kitchen 38 before; kitchen 61 after"},
		{"put in new prv and set to 60. Front spigot now 61, kitchen now 60", "front_bibb 61 after; kitchen 60 after"},
		{"swapped the heater. kitchen 66 and tub 65 before I started, kitchen 66 and tub 65 again when I finished", "kitchen 66 before; bath 65 before; kitchen 66 after; bath 65 after"},
		{"flushed htr, laundry 71 afterwards", "laundry 71 after"},
		{"fixed the dripping kitchen faucet, 67 there before", "kitchen 67 before"},
		{"As found: 31 shower, 33 kitchen. Rebuilt the prv. As left the shower was at 57 and the kitchen at 58", "bath 31 before; kitchen 33 before; bath 57 after; kitchen 58 after"},
		{"after all that the laundry was 66. installed an exp tank", "laundry 66 after"},
		{"front 92, no wait 82", "front_bibb 82"},
		{"front 92 sorry 82", "front_bibb 82"},
		{"front 92 I mean 82", "front_bibb 82"},
		{"front is 92, correction, 82", "front_bibb 82"},
		{"front was 92, not 82", "front_bibb 92"},
		{"not 92, 82 at the front", "front_bibb 82"},
		{"front 82 (not 92)", "front_bibb 82"},
		{"that 79 I put in for Tino is wrong, it's 97, rear bib", "rear_bibb 97"},
		{"I told you kitchen sixty one and laundry sixty two and that's wrong it's kitchen fifty one and laundry fifty two", "kitchen 51; laundry 52"},
		{"rear 90. looked again, it's 80. 80 is right", "rear_bibb 80"},
		{"seventeen not seventy at the kitchen", "kitchen 17"},
		{"I had 86 in the shower to begin with, tweaked the prv, finished up with 58 in the shower", "bath 86 before; bath 58 after"},
		{"following the regulator rebuild, laundry 57", "laundry 57 after"},
		{"ahead of any work the tub was at 119. put in a new prv. tub reads 63 since", "bath 119 before; bath 63 after"},
		{"turned the regulator down, and the tub reads 63 since", "bath 63 after"},
		{"swapped the exp tank. before that: laundry 88. since then: laundry 64", "laundry 88 before; laundry 64 after"},
		{"put in a new tank. prior to that: rear 90. since: rear 65", "rear_bibb 90 before; rear_bibb 65 after"},
		{"ktchn 60 rr bb 61 aftr i ws dn", "kitchen 60 after; rear_bibb 61 after"},
		{"kitchen 60, rear 61 when i finished", "kitchen 60 after; rear_bibb 61 after"},
		{"When I arrived the shower had 6 bar.\nI have changed the regulator.\nThen the shower had 3.9 bar.", "bath 87 before; bath 56.6 after"},
		{"Went back to finish this one.\nBefore: kitchen 98, kitchen 121\nReplaced PRV\nAfter: kitchen 60", "kitchen 98 before; kitchen 121 before; kitchen 60 after"},
		{"swapped the heater. washer box 74 before. everything back together: washer box 74, shower 72", "laundry 74 before; laundry 74 after; bath 72 after"},
		{"swapped the prv. rear 99 on arrival. with the new one running: rear 60", "rear_bibb 99 before; rear_bibb 60 after"},
		{"cambie la reguladora. luego la cocina tenia 60", "kitchen 60 after"},
	})
}
