package intents

import "testing"

// What one sentence tells of a trouble, of work or of a tap says nothing of what was read elsewhere:
// notes are written sentence by sentence, in any order. The messages are our own.
func TestSentencesStayApart(t *testing.T) {
	says(t, [][2]string{
		// water that was shut or run to look for a trouble
		{"gauge gains a pound a minute with nothing open\n92 rear, 14 Alder St", "92 rear_bibb; creep"},
		{"71 kitchen. closed every tap and watched the needle crawl up", "71 kitchen; creep"},
		{"shut all the faucets quick, pipes never banged. side bib 66", "66 side_bibb; no hammer"},
		{"with two taps on the pressure holds, no surging. 64 at the tub", "64 bath; no swings"},
		{"house has no running water. 0 at the hose bib", "0 bibb; no_water"},
		{"ran the tub, black as ink. front bib 77", "77 front_bibb; dark_water"},
		{"wall thumps when the dishwasher stops filling. 81 laundry", "81 laundry; hammer"},
		{"put a new flapper in, commode quit running. 81 laundry", "81 laundry; repaired_leak"},
		{"everything shut and it creeps. 62 at first, 75 at the end, laundry", "62 laundry static; 75 laundry static; creep"},
		{"stat's cranked to 150 on that heater. 81 laundry", "81 laundry; heater 150 F"},
		{"81 laundry. opened the drain on the heater, flushed till clear, closed up", "81 laundry; flushed_heater"},
		// what is told of the heater's valves and place is no state of its burner
		{"relief on this heater is valved off. 81 laundry", "81 laundry; relief_blocked"},
		{"ball valve between the heater and its relief, and it's shut. 81 laundry", "81 laundry; relief_blocked"},
		{"plastic drain off the heater, brass ball valve on. 81 laundry", "81 laundry; drain_valve brass; replaced_drain_valve"},
		{"big gas heater down there. 81 laundry", "81 laundry"},
		{"t&p trickles while it's heating. 81 laundry", "81 laundry; relief_discharge"},
		{"there's a plug in the relief outlet and the heater is on and the drain reads 106", "106 heater_drain firing; relief_blocked"},
		// times and occasions that are no work
		{"81 laundry, nobody home after 4. swapped the tank", "81 laundry; replaced_tank"},
		{"groan in the pipes after midnight. 81 laundry. swapped the tank", "81 laundry; noise; replaced_tank"},
		{"finally got into the crawl, laundry at 81. swapped the tank", "81 laundry; replaced_tank"},
		{"kitchen's sitting at 90. patched the split in the hose line", "90 kitchen; repaired_leak"},
		{"turned the prv down, kitchen's sitting at 60", "60 kitchen after; set_prv"},
		{"81 laundry, the T&P was weeping when I walked in. swapped the tank", "81 laundry; relief_discharge; replaced_tank"},
		{"thermostat found at 130. 81 laundry. swapped the tank", "81 laundry; heater 130 F; replaced_tank"},
		// an inner part belongs to what its sentence names
		{"prv is starting to act up. stopped the drip at the kitchen faucet with a new cartridge", "prv suspect; repaired_leak"},
		{"prv 2004. bath faucet was dripping, put a new cartridge in, dry now", "prv year 2004; repaired_leak"},
		{"flushed the heater and cleaned the prv strainer", "flushed_heater; rebuilt_prv"},
		{"prv is from 2004. weak as a kitten upstairs", "prv year 2004; low_flow"},
		// the point of a street's suffix ends a sentence where the words do not go on
		{"81 laundry, 3 elm st. house shut tight, gauge inches up", "81 laundry; creep"},
		{"81 laundry, 3 elm st. with the heater off", "81 laundry idle"},
		{"81 laundry at 12 n st. charles ave. heater off", "81 laundry idle"},
	})
}

// What stands in one sentence of a note stays in it: its plan, its part, its place, its question. The
// messages are our own.
func TestSentencesOfANoteStayApart(t *testing.T) {
	says(t, [][2]string{
		{"remind me friday to recheck 14 Yucca Ct. flushed the heater", "flushed_heater; plan recheck in 4"},
		{"recuérdame el viernes revisar otra vez 14 Yucca Ct. lavé el calentador", "flushed_heater; plan recheck in 4"},
		{"recheck 14 Yucca Ct. on friday", "plan recheck in 4"},
		{"revisar 14 Yucca Ct. el viernes", "plan recheck in 4"},
		{"rear tap 92 at 14 Yucca Ct. apt b", "92 rear_bibb"},
		{"mañana cambio la reguladora en 4646 Lomita Dr. le puse aire al tanque, quedó en 58", "charged_tank to 58; plan replace_prv in 1"},
		{"106 at the front, 41 Lomas St. the toilet runs all night", "106 front_bibb; leak"},
		{"before: 94 laund. after: 60 laund", "60 laundry after; 94 laundry before"},
		{"94 kit. sink, 60 laund. box", "60 laundry; 94 kitchen"},
		{"flushed the heater and cleaned the prv strainer", "flushed_heater; rebuilt_prv"},
		{"house is at 97 today. cabinet gets wet under the kitchen sink", "97; leak"},
		{"hoy la casa anda en 97. hay un salidero debajo del lavamanos", "97; leak"},
		{"84 psi, 9 Elm Ct, fixed the drip at the lav", "84; repaired_leak"},
		{"31 libras, 9 Elm Ct, le hice shut off a la casa en el curb stop", "31; shut_off"},
		{"llave de purga del calentador reemplazada. 75 libras con la regadera abierta, 15 Lince Ln", "75 flowing; replaced_drain_valve"},
		{"la reguladora está puesta en 60, no le moví. 72 libras nomás, 9 Elm Ct", "72; prv set 60"},
		{"la reguladora es del 2007 y ya no sirve. mañana pongo la nueva. no expansion tank", "expansion_tank none; plan replace_prv in 1; prv year 2007 failed"},
		{"el tanque no sirve. la reguladora estaba ajustada en 90, se la dejé en 60", "expansion_tank failed; set_prv to 60 from 90"},
		{"el tanque no sirve. le moví al prv, quedó set at 62", "expansion_tank failed; set_prv to 62"},
		{"tanque bien, regulé la válvula a 60", "expansion_tank good; set_prv to 60"},
		{"tanque en buen estado, se reguló la presión a 60", "expansion_tank good; set_prv to 60"},
		{"installed a tank, regulator is set to 60", "installed_tank; prv set 60"},
		{"pongo el tanque mañana, no tiene. calentador híbrido", "expansion_tank none; heater heat_pump; plan install_tank in 1"},
		{"toilet runs, fixed the prv", "leak; rebuilt_prv"},
		{"relief valve drips at night, no water in the whole house", "no_water; relief_discharge"},
		{"T&P was dripping, not a drop now", "no relief_discharge"},
		{"boiler de 2013. 82 Reef Rd, brinca la presión", "heater year 2013; swings"},
		{"recheck 9 Elm Ct en dos semanas, el tanque ya esta muerto", "expansion_tank failed; plan recheck in 14"},
		{"got 88 en la llave de atras, el manómetro anda mal", "88 rear_bibb; gauge suspect"},
		{"cambiar el tanque el viernes, ya se ve gastado el regulador", "plan replace_tank in 4; prv suspect"},
		{"el calentador está bien. se rompió la manguera y se inundó el cuarto", "heater good; leak"},
		{"el tanque está bien, la presión está bien floja", "expansion_tank good; low_flow"},
		{"heater is old like 16 years, 40 gal. swapped the prv", "heater year 2010 40 gal; replaced_prv"},
		{"instalé un tanque de 2 galones, el tubito de la T&P está goteando, cubeta llena en un día", "expansion_tank 2 gal; installed_tank; relief_discharge"},
		{"instalé el tanque, llevan dos días sin una gota", "installed_tank; no_water"},
		{"boiler del 2020. 230 Chandlery Rd. quieren que les suba la reguladora, paso el jueves", "heater year 2020; plan set_prv in 3"},
		{"el boiler es del 2019, 515 Chalkline Rd. quién sabe de qué año será la válvula reductora", "heater year 2019; prv age unknown"},
		{"118 atrás, ya se picó el boiler", "118 rear_bibb; heater failed"},
		{"huele a gas, ya salimos todos, tiene un poro el cobre", "gas_smell; leak"},
	})
}

// What a sentence names itself goes before what was named in another: a part, its plan, its setting,
// its year; and what is wanting is wanting whatever else the message tells.
func TestSentencesKeepTheirOwnThings(t *testing.T) {
	says(t, [][2]string{
		{"prv is set at 60. wants the relief valve changed, I'm coming back Wednesday for it", "prv set 60; plan other in 2"},
		{"check valve at meter failed. heater electric 30 gal 2011. no exp tank. back in 2 days w/ a new one.", "check_valve failed; heater year 2011 30 gal electric; expansion_tank none; plan other in 2"},
		{"softener is shot, no exp tank, back in 2 days with a new one", "softener failed; expansion_tank none; plan other in 2"},
		{"drain valve leaking. no tank. back tomorrow with a new one", "leak; expansion_tank none; plan other in 1"},
		{"recirc pump stuck, exp tank good. will be back in a week w/ new pump", "expansion_tank good; plan other in 7; recirc failed"},
		{"prv shot, tank good, back friday with a new one", "expansion_tank good; plan replace_prv in 4; prv failed"},
		{"prv good, tank shot, back friday with a new one", "expansion_tank failed; plan replace_tank in 4; prv good"},
		{"Visita terminada\nLecturas al llegar: atrás 42", "42 rear_bibb"},
		{"prv failed. no exp tank. back in 2 days w/ a new one", "prv failed; expansion_tank none; plan replace_prv in 2"},
		{"no leaks at the heater, no exp tank, new one in 2 days", "no leak; expansion_tank none; plan install_tank in 2"},
		{"regulator's in great shape. T&P capped off with a plug, back tomorrow with a new one", "relief_blocked; prv good; plan other in 1"},
		{"exp tank holds 2 gal, from 2015. friday we're putting in the new regulator", "expansion_tank year 2015 2 gal; plan replace_prv in 4"},
		{"remind me wed to drop the spare key at 300 Prior Rd. prv set 55", "prv set 55; plan other in 2"},
		{"la reguladora ya no sirve, mañana pongo la nueva. no le pusieron tanque de expansión", "expansion_tank none; prv failed; plan replace_prv in 1"},
		{"relief outlet wide open, nobody's capped it. expansion tank recommended", "no relief_blocked; plan install_tank"},
		{"le falta instalar el tanque de expansión. la tina se llena de agua gris", "dark_water; plan install_tank"},
		{"never had a prv. put 55 of air in the exp tank, was 31", "prv none; charged_tank to 55 from 31"},
		{"2 gal exp tank. new diaphragm and seat for the regulator, set 60 after", "expansion_tank 2 gal; rebuilt_prv to 60"},
		{"el tanque se cambia el viernes. se reguló la presión a 60", "plan replace_tank in 4; set_prv to 60"},
		{"el viernes cambio el tanque. le moví al prv, quedó set at 62", "plan replace_tank in 4; set_prv to 62"},
		{"prv shot. set 130 on the heater", "heater 130 F; prv failed"},
		{"heater 2009. T&P is stamped 150 psi 210 F and it's dry", "no relief_discharge; heater year 2009"},
		{"heater crapped out. thought it was gas, only a dead skunk", "no gas_smell; heater failed"},
		{"drain valve on the heater got changed. somebody screwed a brass plug in the T&P outlet", "relief_blocked; replaced_drain_valve"},
		{"gas odor near the heater. gauge came with the house, 1999", "gas_smell; gauge year 1999"},
		{"changed the drain valve. this water heater is old old, 2001, 40 gal gas", "heater year 2001 40 gal gas; replaced_drain_valve"},
		{"the prv is from 2006 and is, in my opinion, badly worn. heater is a 2010", "heater year 2010; prv year 2006 suspect"},
		{"heater's never been flushed. got that rusted union loose, installed the tank", "heater never maintained; installed_tank"},
		{"prv set at 55. rusty hot, clear cold", "rusty_water; prv set 55"},
		{"heater looks great. cold line groans after flush", "noise; heater good"},
		{"exp tank: 150 max, bladder burst. kitchen faucet was dripping, put packing in, dry now", "expansion_tank failed; repaired_leak"},
		// wanting
		{"watched it and it didn't climb at all. tank going in friday, there is none yet", "no creep; expansion_tank none; plan install_tank in 4"},
		{"el sábado les instalo vaso de expansión, no tienen. bomba recirculadora en el boiler", "expansion_tank none; recirc; plan install_tank in 5"},
		{"revisé todo y está seco, ni una gota. la válvula de seguridad del boiler tira agua", "relief_discharge; no leak"},
		// no question and no point from another sentence
		{"I'll stop by friday and fix that dripping tub. tank is a 4.4 gal", "leak; expansion_tank 4.4 gal; plan other in 4"},
		{"la casa anda en 97. chilla la llave del lavabo", "97; noise"},
		{"la casa anda en 97. no hay check en el medidor", "97; check_valve none"},
		{"mañana le cambio el regulador, hoy trae 101 enfrente. le cambié la llave de drenaje al boiler", "101 front_bibb; plan replace_prv in 1; replaced_drain_valve"},
		{"apagué el boiler y luego medí: atrás 79. le bajé al regulador a 60", "79 rear_bibb idle; set_prv to 60"},
		// a point behind a noun ends its sentence
		{"no tank no recirc. recommend a flush", "expansion_tank none; recirc none; plan other"},
		{"recirc: Y; sftnr: N. she says bath water looks like tea", "rusty_water; recirc; softener none"},
		{"water's out in the whole hse. relief pipe is dribbling", "relief_discharge; no_water"},
		{"remind me tomorrow to order a rebuild kit. pumped the tank up from 20 to 60", "plan other in 1; charged_tank to 60 from 20"},
	})
}

// Notes of a visit as crews close them: what is still to be done, what was tried, what came in.
func TestVisitsAsCrewsCloseThem(t *testing.T) {
	says(t, [][2]string{
		{"no exp tank. gonna hang a 2 gal tank on friday and set it to 70", "expansion_tank none; plan install_tank in 4"},
		{"57 psi at the tub. its drain valve is plastic and would not open", "57 bath; drain_valve plastic"},
		{"There is an expansion tank, about five years old, charged to 55 psi.", "expansion_tank year 2021 set 55"},
		{"swapped the wh. new 50 gal gas w brass drain. set 120. 62 laundry", "62 laundry; drain_valve brass; heater 50 gal gas 120 F; replaced_heater"},
		{"relief valve lifts fine and reseats. 66 laundry", "66 laundry"},
		{"toilet runs all night, put a new flapper in. hose bib in back drips", "leak; repaired_leak"},
		{"relief line isn't capped, no plug, it runs to the floor drain. T and P spits at night", "no relief_blocked; relief_discharge"},
		{"call him before you go, 70 side tap. put air in the exp tank, 60", "70 side_bibb; charged_tank to 60"},
		{"meter 95, after PRV 65. PRV last rebuilt 2022", "65 after_prv; 95 street; prv maintained 2022"},
		{"low flow in shower, 52 static / 20 flowing\n- same at lav, 50", "20 bath flowing; 50 bath; 52 bath static; low_flow"},
		{"80 kitchen. exp tank full of water, replaced w/ 2 gal @ 60\nRetest: kitchen 62", "62 kitchen; 80 kitchen; expansion_tank 2 gal; replaced_tank to 60"},
		{"PRV - set 65. 2015. kitchen 66", "66 kitchen; prv year 2015 set 65"},
		{"Loc: laundry\n60\nExp: yes 2gal 40psi -> 60", "60 laundry; expansion_tank 2 gal; charged_tank to 60 from 40"},
		{"callback at 519 Seed House Rd\nlast visit wrote 78 in the kitchen\ntoday kitchen 64", "64 kitchen"},
	})
}
