package intents

import (
	"slices"
	"strings"
	"testing"
)

// signFrames are the messages that a symptom is told in: by itself, or in a sentence beside a reading.
var signFrames = []framed{
	{"{}", "", ""},
	{"{}. 64 kitchen", "64 kitchen", ""},
	{"64 kitchen. {}", "64 kitchen", ""},
}

// signsNamed are the names that a symptom goes by, in the order of the list.
var signsNamed = []struct {
	symptom string
	names   []string
}{
	{"hammer", []string{"hammer", "water hammer", "banging", "pipe banging", "knocking in the pipes", "banging pipes"}},
	{"leak", []string{"leaks", "dripping", "leaking", "drips", "a leak"}},
	{"dark_water", []string{"black water", "dark water", "black specks", "discoloration", "black flakes"}},
	{"rusty_water", []string{"rusty water", "rust in the water", "brown water", "orange water"}},
	{"noise", []string{"humming", "whistling", "vibration", "a hum", "moaning"}},
	{"low_flow", []string{"low flow", "weak flow", "low pressure", "poor pressure"}},
	{"swings", []string{"pressure swings", "surging", "pressure fluctuations", "swings"}},
	{"creep", []string{"creep", "pressure creep"}},
	{"gas_smell", []string{"gas smell", "gas odor", "smell of gas"}},
}

// namedSigns returns each name of each symptom in each form of words. Who lives in a house says nothing of a
// needle, and what is told with "lots of" or "has" is a thing.
func namedSigns(forms []string, before string, denied bool) []said {
	var all []said
	for _, s := range signsNamed {
		for _, name := range s.names {
			for _, form := range forms {
				switch {
				case s.symptom == "creep" && (strings.Contains(form, "customer") || strings.Contains(form, "complain") || strings.Contains(form, "tenant") || strings.Contains(form, "she ")),
					strings.HasPrefix(name, "a ") && (denied || slices.Contains([]string{"some {x}", "lots of {x}", "intermittent {x}", "occasional {x}"}, form)),
					!denied && slices.Contains([]string{"leaking", "surging", "dripping"}, name) && slices.Contains([]string{"house has {x}", "they have {x}", "lots of {x}", "{x} present", "has {x}", "customer has {x}", "there's {x}", "there is {x}"}, form):
					continue
				}
				all = append(all, said{strings.Replace(form, "{x}", name, 1), before + s.symptom})
			}
		}
	}
	return all
}

// TestGridOfSymptomsNamed reads each symptom by each of its names, as customers, crews and offices tell it.
func TestGridOfSymptomsNamed(t *testing.T) {
	forms := []string{
		"{x}", "customer has {x}", "customer complains of {x}", "customer reports {x}", "customer says {x}", "there's {x}", "there is {x}", "some {x}",
		"complaint of {x}", "still {x}", "{x} noted", "{x}: yes", "{x} present", "house has {x}", "they have {x}", "getting {x}", "she gets {x}",
		"lots of {x}", "has {x}", "complaint is {x}", "{x} per customer", "{x} reported", "intermittent {x}", "occasional {x}", "{x} at times",
		"{x} at night", "{x} sometimes", "also {x}", "{x} throughout the house", "tenant complains about {x}",
	}
	readPhrases(t, namedSigns(forms, "", false), signFrames)
}

// TestGridOfSymptomsDenied reads that a symptom is not there, in each way to say so.
func TestGridOfSymptomsDenied(t *testing.T) {
	forms := []string{
		"no {x}", "no sign of {x}", "no signs of {x}", "no {x} noted", "no {x} observed", "no {x} here", "no {x} today", "no {x} at all", "no {x} found",
		"there's no {x}", "there is no {x}", "no evidence of {x}", "customer denies {x}", "customer denies any {x}", "customer says no {x}",
		"she reports no {x}", "no {x} anywhere", "{x}: none", "{x}: no", "{x} - none", "no {x} present", "no visible {x}", "didn't notice any {x}",
		"not noticing any {x}", "no more {x}", "no {x} reported", "no {x} per customer", "there isn't any {x}", "there was no {x}",
		"no {x} that i could tell", "no complaints of {x}", "no complaint of {x}", "never any {x}", "didn't find any {x}", "no indication of {x}",
		"no {x} whatsoever", "no {x} in the house", "also no {x}", "no {x} so far", "checked for {x}, none", "looked for {x}, none",
		"hasn't noticed any {x}", "no {x} since",
	}
	readPhrases(t, namedSigns(forms, "no ", true), signFrames)
}

// TestGridOfSymptomsInSentences reads symptoms told in sentences of their own, present and denied.
func TestGridOfSymptomsInSentences(t *testing.T) {
	var all []said
	for _, s := range []struct {
		symptom      string
		told, denied []string
	}{
		{"hammer",
			[]string{
				"pipes bang when the washer stops", "pipes knock when a tap closes", "customer says pipes bang when the toilet fills", "pipes hammer",
				"lines bang when she shuts the tap", "pipes banging at night", "pipes thump when the dishwasher shuts off", "hear a bang when the valve closes",
				"customer hears banging in the walls", "plumbing bangs", "there's a bang when the washer shuts off",
				"she says the pipes bang when the shower shuts off",
			},
			[]string{
				"pipes don't bang", "pipes dont bang", "pipes aren't banging", "nothing bangs", "no bang when the washer stops", "pipes do not bang",
				"no bang when i shut the tap", "pipes don't knock", "doesn't bang", "pipes don't hammer", "didn't hear any banging", "no banging heard",
				"no knock when the tap closes", "pipes never bang",
			}},
		{"leak",
			[]string{
				"faucet drips", "toilet keeps running", "hose bibb drips", "drip at the kitchen faucet", "prv is leaking", "leak under the sink",
				"water leaking at the meter", "hose bibb leaks", "shower head drips", "toilet runs", "leak at the union",
			},
			[]string{
				"nothing leaks", "nothing leaking", "no drips anywhere", "faucet doesn't drip", "nothing is leaking", "nothing dripping",
				"everything is dry, no leaks", "didn't see any leaks", "faucet isn't dripping", "no leaks seen", "not leaking", "doesn't leak",
			}},
		{"relief_discharge",
			[]string{
				"t&p drips", "t&p is dripping", "relief valve is dripping", "relief valve dumping", "tpr leaking", "t&p discharging",
				"relief valve drips when the heater fires", "t&p weeping", "relief valve leaks", "t&p valve is leaking", "tpr drips at night",
			},
			[]string{
				"t&p dry", "relief valve is dry", "t&p isn't dripping", "no drip at the t&p", "relief not dripping", "t&p not leaking",
				"relief valve doesn't drip", "no discharge from the t&p", "no drip from the relief valve", "tpr is dry", "t&p is not discharging",
				"relief valve isn't leaking", "t&p bone dry",
			}},
		{"noise",
			[]string{
				"reg hums", "reg whistles", "prv is humming", "prv whistles", "pipes vibrate", "hear a hum at the prv", "regulator is making noise",
				"pipes whistle", "humming noise at the prv", "prv buzzes",
			},
			[]string{
				"reg doesn't hum", "reg isn't humming", "prv doesn't whistle", "no hum", "no whistle", "didn't hear any humming", "pipes don't vibrate",
				"reg isn't making noise", "not humming", "no noise from the prv", "reg doesn't make any noise",
			}},
		{"dark_water",
			[]string{
				"water is black", "water comes out black", "water looks dark", "water turns black", "black stuff in the water", "black specks in the water",
				"water comes out gray", "water is dark",
			},
			[]string{
				"water isn't black", "water is not dark", "water isn't dark", "water doesn't look dark", "water not discolored", "no black specks in the water",
				"water isn't gray",
			}},
		{"rusty_water",
			[]string{
				"water is rusty", "water comes out rusty", "water looks rusty", "water is brown", "rusty water at the tub", "water comes out orange",
				"hot water is rusty", "rust in the hot water",
			},
			[]string{
				"water isn't rusty", "water is not rusty", "water isn't brown", "no rust in the water", "water doesn't look rusty", "hot water isn't rusty",
				"water not rusty",
			}},
		{"swings",
			[]string{
				"pressure goes up and down", "pressure is all over the place", "pressure surges", "pressure fluctuates", "pressure jumps around",
				"pressure is up and down", "pressure swings",
			},
			[]string{
				"pressure doesn't fluctuate", "pressure isn't fluctuating", "pressure doesn't swing", "pressure not fluctuating", "pressure doesn't surge",
			}},
		{"creep",
			[]string{
				"gauge climbs with nothing running", "gauge keeps climbing with everything off", "needle creeps up with everything shut", "pressure creeps up",
				"it creeps", "gauge creeps", "pressure creeping up", "needle creeps",
			},
			[]string{
				"gauge doesn't creep", "doesn't creep", "gauge isn't creeping", "needle doesn't creep", "needle doesn't climb", "no creeping", "not creeping",
				"pressure doesn't creep", "gauge doesn't climb", "isn't creeping",
			}},
		{"low_flow",
			[]string{
				"shower is weak", "weak shower", "customer says pressure is weak", "shower has no pressure", "barely a trickle upstairs",
				"weak pressure upstairs", "kitchen is just a trickle", "pressure is low per customer", "flow is weak",
			},
			[]string{
				"shower isn't weak", "flow isn't weak", "pressure isn't weak", "flow is not weak", "shower pressure isn't weak",
			}},
		{"gas_smell",
			[]string{
				"smells like gas", "i smell gas", "smell gas by the heater", "gas smell in the basement", "customer smells gas", "there's a gas smell",
			},
			[]string{
				"doesn't smell like gas", "don't smell gas", "no gas smell at the heater", "i don't smell gas", "didn't smell any gas", "can't smell any gas",
				"no smell of gas",
			}},
		{"no_water",
			[]string{
				"no water", "no water in the house", "no water at all", "water is out", "house has no water", "they have no water", "nothing comes out",
			},
			[]string{}},
		{"relief_blocked",
			[]string{
				"t&p is capped", "relief valve is plugged", "t&p line capped off", "someone capped the t&p", "relief line is plugged", "t&p is valved off",
				"tpr capped", "the t&p has a plug in it",
			},
			[]string{
				"t&p isn't capped", "relief is not plugged", "t&p not capped",
			}},
	} {
		for _, frame := range signFrames {
			for _, told := range s.told {
				all = append(all, said{strings.Replace(frame.text, "{}", told, 1), strings.TrimPrefix(frame.beside+"; "+s.symptom, "; ")})
			}
			for _, denied := range s.denied {
				all = append(all, said{strings.Replace(frame.text, "{}", denied, 1), strings.TrimPrefix(frame.beside+"; no "+s.symptom, "; ")})
			}
		}
	}
	readPhrases(t, all, framedParts[:1])
}

// TestGridOfSymptomsInSpanish reads symptoms told and denied in Spanish.
func TestGridOfSymptomsInSpanish(t *testing.T) {
	var all []said
	for _, s := range []struct {
		symptom      string
		told, denied []string
	}{
		{"hammer",
			[]string{
				"golpes en la tubería", "golpe de ariete", "la tubería golpea", "golpean los tubos cuando se cierra la llave",
				"truenan los tubos cuando para la lavadora", "se oyen golpes en los tubos", "los tubos golpean",
			},
			[]string{
				"no hay golpes", "sin golpes", "no golpea", "no hay golpe de ariete", "nada de golpes", "no se oyen golpes", "los tubos no golpean",
				"sin golpe de ariete", "no truenan los tubos",
			}},
		{"leak",
			[]string{
				"hay fuga", "hay una fuga", "gotea la llave", "fuga en el lavabo", "la taza no deja de correr", "la llave gotea", "tiene fuga",
				"hay goteo en la cocina", "gotea el fregadero",
			},
			[]string{
				"no hay fugas", "sin fugas", "no hay fuga", "no gotea", "nada de fugas", "no se ven fugas", "no tiene fugas", "no hay goteo", "ninguna fuga",
				"no se ve ninguna fuga", "no hay ninguna fuga", "sin fuga", "sin goteras",
			}},
		{"dark_water",
			[]string{
				"agua negra", "el agua sale negra", "agua oscura", "sale agua negra", "el agua sale oscura",
			},
			[]string{
				"no hay agua negra", "el agua no sale negra", "sin agua negra", "nada de agua negra", "el agua no sale oscura",
			}},
		{"rusty_water",
			[]string{
				"agua oxidada", "agua color óxido", "el agua sale oxidada", "agua con óxido", "el agua sale café", "sale agua café",
			},
			[]string{
				"no hay agua oxidada", "el agua no sale oxidada", "sin óxido en el agua", "el agua no sale café",
			}},
		{"noise",
			[]string{
				"zumba la reguladora", "la reguladora zumba", "hay zumbido", "chifla la reguladora", "la reguladora chifla", "vibran los tubos",
			},
			[]string{
				"no zumba", "sin zumbido", "no hay zumbido", "no hay ruido", "sin ruidos", "no chifla", "no se oye zumbido", "la reguladora no zumba",
				"no vibra",
			}},
		{"low_flow",
			[]string{
				"sale un chorrito", "poca presión", "poca agua", "sale poquita agua", "poco flujo", "la regadera sale floja", "baja presión",
			},
			[]string{
				"no hay poca presión",
			}},
		{"swings",
			[]string{
				"la presión sube y baja", "sube y baja la presión", "la presión brinca",
			},
			[]string{
				"la presión no sube y baja", "no sube y baja",
			}},
		{"creep",
			[]string{
				"la aguja sube sola", "sube sola la presión", "la presión sube sola", "va subiendo solo",
			},
			[]string{
				"no sube solo", "no sube sola", "la aguja no sube", "la presión no sube sola",
			}},
		{"gas_smell",
			[]string{
				"huele a gas", "olor a gas", "hay olor a gas",
			},
			[]string{
				"no huele a gas", "sin olor a gas", "no hay olor a gas", "nada de olor a gas",
			}},
		{"relief_discharge",
			[]string{
				"la válvula de alivio gotea", "gotea la t&p", "la t&p gotea", "tira agua la válvula de alivio", "la válvula de alivio tira agua",
			},
			[]string{
				"la t&p no gotea", "la válvula de alivio está seca", "no gotea la t&p", "la válvula de alivio no gotea", "la t&p está seca",
			}},
		{"no_water",
			[]string{
				"no hay agua", "sin agua", "no sale agua", "no sale nada de agua",
			},
			[]string{}},
	} {
		for _, frame := range []framed{{"{}", "", ""}, {"64 cocina, {}", "64 kitchen", ""}, {"{}. 64 en la cocina", "64 kitchen", ""}} {
			for _, told := range s.told {
				all = append(all, said{strings.Replace(frame.text, "{}", told, 1), strings.TrimPrefix(frame.beside+"; "+s.symptom, "; ")})
			}
			for _, denied := range s.denied {
				all = append(all, said{strings.Replace(frame.text, "{}", denied, 1), strings.TrimPrefix(frame.beside+"; no "+s.symptom, "; ")})
			}
		}
	}
	readPhrases(t, all, framedParts[:1])
}
