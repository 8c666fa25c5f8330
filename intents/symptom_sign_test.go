package intents

import "testing"

// Symptoms told in words that no phrase foresees, and talk that only sounds like them.
// The messages are our own.
func TestSignsOfSymptoms(t *testing.T) {
	says(t, [][2]string{
		// colours and what they are likened to
		{"looks like ink coming out the tub spout", "dark_water"},
		{"water looks like somebody dumped soot in it", "dark_water"},
		{"tub fills up charcoal colored", "dark_water"},
		{"specks of gasket in her drinking glass", "dark_water"},
		{"kitchen faucet spat out a bunch of black goo then ran ok", "dark_water"},
		{"ran every tap 5 minutes, never went gray", "no dark_water"},
		{"tea brown out of the hot side", "rusty_water"},
		{"reddish-brown slug for 10 sec each morning", "rusty_water"},
		{"this whole house runs brown", "rusty_water"},
		{"discolored water again, browny orange", "rusty_water"},
		{"not a trace of orange at any tap", "no rusty_water"},
		{"neighbors all got brown water today, hers isn't", "no rusty_water"},
		{"big brown mutt followed me to the back spigot", "ask none"},
		{"the black faucet is on the left", "ask none"},
		{"fill your coffee pots", "ask none"},
		// banging
		{"pipes kick when you flip the kitchen lever off", "hammer"},
		{"a gunshot in the basement when the dishwasher stops filling", "hammer"},
		{"no knock at all when the washing machine closes", "no hammer"},
		{"the thump she hears is the dryer, not the pipes", "no hammer"},
		{"someone bang on the back door when you get here", "ask none"},
		// pressure
		{"shower goes from firehose to drizzle and back", "swings"},
		{"everything's closed and the needle keeps inching north", "creep"},
		{"not one tap open and the gauge kept on gaining", "creep"},
		{"gauge flat as a pancake, no climb", "no creep"},
		{"creeping along the interstate", "ask none"},
		{"battery on the tablet is weak", "ask none"},
		// no water
		{"taps are bone dry", "no_water"},
		{"house has run dry", "no_water"},
		{"zilch at every faucet", "no_water"},
		{"water just quit on them mid shower", "no_water"},
		{"nobody is out of water there", "no no_water"},
		{"it isn't a no-water call after all", "no no_water"},
		{"all taps working, no outage", "no no_water"},
		{"office cooler is out of water", "ask none"},
		// leaks and the relief valve
		{"shower head goes plip plip plip all night", "leak"},
		{"flapper bad in both johns, they run on and on", "leak"},
		{"hose bib won't shut all the way, bit of a dribble left", "leak"},
		{"hum in the wall every time the toilet fills", "noise"},
		{"takes 20 min to fill the tub she says", "low_flow"},
		{"house is out of water", "no_water"},
		{"exp tank's full of water, thunks like a log when u rap it", "expansion_tank failed"},
		{"a foghorn whenever a toilet refills", "noise"},
		{"safety valve on the tank heater lets go around 2 am", "relief_discharge"},
		{"felt the end of the relief pipe, not a drop", "no relief_discharge"},
		{"previous owner corked the relief valve", "relief_blocked"},
		{"TPR isolated, somebody valved it off", "relief_blocked"},
		{"no way for that relief to dump, outlet is plugged solid", "relief_blocked"},
		{"told her to ring us if the relief ever starts dripping", "ask none"},
		{"ball valve between the heater and its relief, and it's shut", "relief_blocked"},
		{"relief valve stays shut", "ask none"},
		{"she says gray tinge no rust", "dark_water; no rusty_water"},
		{"house is dead quiet", "ask none"},
		{"checked all the fixtures, dry", "ask none"},
		{"nothing out of any tap", "no_water"},
		{"the pressure drifts upward over half an hour", "creep"},
		{"needle crept 10 psi in half an hour", "creep"},
		// gas
		{"gas stink in the basement", "gas_smell"},
		{"I could nose gas the second I walked in", "gas_smell"},
		{"can't smell any gas", "no gas_smell"},
		{"smelled no gas", "no gas_smell"},
	})
}

// Facts of what is installed in less usual words. The messages are our own; the day is
// 15 June 2026.
func TestFactsInOtherWords(t *testing.T) {
	says(t, [][2]string{
		{"prv is 7 y/o", "prv year 2019"},
		{"a decade old, that prv", "prv year 2016"},
		{"exp tank: half a dozen yrs old", "expansion_tank year 2020"},
		{"reg turns 15 this year", "prv year 2011"},
		{"heater just had its 20th birthday", "heater year 2006"},
		{"the regulator went in when they built the place, 1997", "prv year 1997"},
		{"regulator is as old as the house and house is 2012", "prv year 2012"},
		{"reg age ??, owner clueless", "prv age unknown"},
		{"nobody remembers when the expansion tank was hung", "expansion_tank age unknown"},
		{"prv sits at 58 on its dial", "prv set 58"},
		{"The regulator has a setting of 4 bar.", "prv set 58"},
		{"prv setpoint 350 kPa per the knob", "prv set 50.8"},
		{"softener serviced 2024, running great", "softener good maintained 2024"},
		{"nobody ever serviced that regulator", "prv never maintained"},
		{"never flushed, 2011", "heater year 2011 never maintained"},
		{"They never put an expansion tank in", "expansion_tank none"},
		{"where the exp tank ought to be there's a plug, so none", "expansion_tank none"},
		{"no gauge on this house", "gauge none"},
		{"house gauge by the reg bit the dust", "gauge failed"},
		{"heater's drain cock is brass and in good order", "drain_valve brass good"},
		{"gas-fired forty in the closet, nine years on it", "heater year 2017 40 gal gas"},
		{"Regulator .......... 2016, good, set at 58", "prv year 2016 set 58 good"},
		{"looked for an expansion tank and there isn't one", "expansion_tank none"},
		{"next door has a regulator. this place don't", "prv none"},
		{"tank in there aint got no air", "expansion_tank failed"},
		{"tank n reg both 2016. both fine", "expansion_tank year 2016 good; prv year 2016 good"},
		{"reg 06, wh 15", "prv year 2006; heater year 2015"},
		{"PRV has 98 stamped on it", "prv year 1998"},
		{"no idea on the age of the reg or the heater", "prv age unknown; heater age unknown"},
		{"exchanged the regulator. It is set to 55 psi.", "replaced_prv to 55"},
		{"PRV was not adjusted. It is set to 75.", "prv set 75"},
		{"not the regulator, it's fine", "prv good"},
		{"et is 2 gallon, 2018, holding 55", "expansion_tank year 2018 2 gal set 55"},
		{"they keep the heater at 120", "heater 120 F"},
		{"heater original, house was built in 05", "heater year 2005"},
		{"replaced the drain valve. The new one is brass.", "replaced_drain_valve; drain_valve brass"},
		{"this place don't have a regulator", "prv none"},
		{"flushed the heater, lots of scale came out", "flushed_heater"},
		// what is told of something else is no fact of what was named before
		{"softener there. says he measured 55 three years ago", "softener"},
		{"drain valve is plastic. old sheet from 2022 says 100", "drain_valve plastic"},
		{"drain valve is plastic. the sprinklers are weak", "drain_valve plastic; low_flow"},
		{"heater from 2018. cant get a number that holds", "heater year 2018"},
		{"check valve at the meter. it's only rusty out of the hot side", "check_valve; rusty_water"},
		{"gauge won't zero", "gauge suspect"},
		{"tank pressure 48", "expansion_tank set 48"},
		{"prv set around 70", "prv set 70"},
		{"reg installed sometime in the 90s", "ask none"},
		{"bladder's busted", "expansion_tank failed"},
		{"fixin to hang em a tank on wednesday they never had one", "plan install_tank in 2; expansion_tank none"},
		{"heat pump water heater sixty six gallon put in twenty two", "heater year 2022 66 gal heat_pump"},
		{"prv 2008, tag setting 65", "prv year 2008 set 65"},
		{"63 lndry 64 kit no htr firing", "63 laundry idle; 64 kitchen idle"},
		{"prv 8 yrs, exp tank 8 yrs, both look fine", "prv year 2018 good; expansion_tank year 2018 good"},
		{"Recirculation pump . none", "recirc none"},
		{"no check at mtr", "check_valve none"},
		{"builder skipped the expansion tank", "expansion_tank none"},
		{"regulator's shot for 120 Elm St", "prv failed"},
		{"exp tank is a 2021, 2 gal, good", "expansion_tank year 2021 2 gal good"},
	})
}

func TestAReliefCappedInTheSentenceBehindIt(t *testing.T) {
	says(t, [][2]string{
		{"T&P is fine. somebody threaded a plug in the end of its pipe", "relief_blocked"},
		{"heater relief: last guy threaded a plug into its drain", "relief_blocked"},
		{"relief valve is rated 150. there is a cap on it", "relief_blocked"},
		{"the t&p is on the side. someone plugged it", "relief_blocked"},
		{"relief dumps in the pan. no cap on it", "relief_discharge; no relief_blocked"},
		{"la valvula de alivio es de 150. alguien le puso un tapon", "relief_blocked"},
		{"T&P good. tank has a cap on it", "expansion_tank"},
	})
}

func TestAGaugeThatDidNotClimb(t *testing.T) {
	says(t, [][2]string{
		{"every tap shut: 57, watched it ten minutes, it did not climb", "57 static; no creep"},
		{"tub 60 and did not rise in ten minutes", "60 bath; no creep"},
		{"kitchen 57, it would not climb", "57 kitchen; no creep"},
		{"laundry 57, the needle did not go up", "57 laundry; no creep"},
	})
}
