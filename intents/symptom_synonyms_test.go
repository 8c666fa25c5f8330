package intents

import "testing"

// Symptoms told by words that only together say what is wrong: what is poor of a flow, wet
// of a floor, unsteady of a needle. The messages are our own.
func TestSymptomsBySynonyms(t *testing.T) {
	says(t, [][2]string{
		{"pepper flakes coming out of the shower", "dark_water"},
		{"sooty looking water at the kitchen", "dark_water"},
		{"lady says it looks like someone dumped ashes in the tub", "dark_water"},
		{"first few gallons are brown", "rusty_water"},
		{"he said it poured out like root beer", "rusty_water"},
		{"washer hose bulging and wet at the crimp", "leak"},
		{"crawlspace is wet under the bath", "leak"},
		{"toilets aren't running", "no leak"},
		{"relief valve's been crying", "relief_discharge"},
		{"safety valve let loose twice this week", "relief_discharge"},
		{"that relief valve will not stop dripping", "relief_discharge"},
		{"nothing out of the relief", "no relief_discharge"},
		{"copper smacks the joist when the faucet closes", "hammer"},
		{"hissing sound at the prv", "noise"},
		{"can't run two things at once", "low_flow"},
		{"flow is terrible", "low_flow"},
		{"pressure has dropped off lately", "low_flow"},
		{"water comes out slow", "low_flow"},
		{"not much coming out of the tub", "low_flow"},
		{"kitchen sink is slow to drain", "ask none"},
		{"gauge hunts back and forth", "swings"},
		{"can't keep a steady pressure", "swings"},
		{"pressure spikes then falls off", "swings"},
		{"she turned the tap and nothing came out", "no_water"},
		{"lost water an hour ago", "no_water"},
		{"nothing at the taps", "no_water"},
		{"gas is leaking somewhere", "gas_smell"},
		{"bubbles on the gas union", "gas_smell"},
		{"no gas leaks", "no gas_smell"},
		{"the discharge pipe is capped", "relief_blocked"},
		{"relief has a valve on it and it's shut", "relief_blocked"},
		{"relief valve is rusted shut", "relief_blocked"},
		{"the weak link is dispatch", "ask none"},
		{"boss is knocking on wood", "ask none"},
	})
}

func TestSpanishSymptomsBySynonyms(t *testing.T) {
	says(t, [][2]string{
		{"agua color ceniza", "dark_water"},
		{"los aireadores llenos de cosas negras", "dark_water"},
		{"sale medio café la primera vez", "rusty_water"},
		{"la de seguridad del boiler gotea", "relief_discharge"},
		{"la válvula de alivio no deja de tirar", "relief_discharge"},
		{"se sacude la tubería cuando cierra de golpe", "hammer"},
		{"sale muy despacio el agua", "low_flow"},
		{"perdió presión la casa", "low_flow"},
		{"la presión no es pareja", "swings"},
		{"la regadera sale a jalones", "swings"},
		{"va para arriba la aguja sin usar nada", "creep"},
		{"la conexión del gas tiene fuga", "gas_smell"},
		{"sellaron la válvula de alivio", "relief_blocked"},
	})
}

// A denial reaches a symptom through the words of pressure, pipe and relief that stand with it.
func TestSymptomsDeniedThroughTheirWords(t *testing.T) {
	says(t, [][2]string{
		{"no pressure creep", "no creep"},
		{"no pressure fluctuations noted", "no swings"},
		{"checked for t&p leak: nothing", "no relief_discharge"},
		{"dripping t&p: none", "no relief_discharge"},
		{"banging pipes: no", "no hammer"},
		{"leaks absent", "no leak"},
		{"T&P's dry", "no relief_discharge"},
		{"the t&p's been leaking for months", "relief_discharge"},
		{"t&p won't reseat, keeps dripping", "relief_discharge"},
		{"history of hammer", "hammer"},
		{"no había agua negra", "no dark_water"},
		{"no se queja de golpes", "no hammer"},
		{"no se ven fugas", "no leak"},
		{"no sé si hay golpes", "hammer"},
		{"golpes en la tubería: no", "no hammer"},
		{"reporte de agua negra", "dark_water"},
	})
}

// What only sounds like a symptom or its words is none.
func TestWordsOfSymptomsWithoutAny(t *testing.T) {
	says(t, [][2]string{
		{"it's been a slow day", "ask none"},
		{"their dog is jumpy", "ask none"},
		{"the wall by the heater is painted brown", "ask none"},
		{"kitchen floor is wet from mopping", "ask none"},
		{"no room to swing a wrench", "ask none"},
		{"la casa está vacía", "ask none"},
		{"huele a comida en la cocina", "ask none"},
	})
}
