package intents

import "testing"

// Requests in the rarer words of crews, English and Spanish. The messages are our own.
func TestAsksBySynonyms(t *testing.T) {
	says(t, [][2]string{
		{"how is 402 Larkhill Rd doing", "ask history"},
		{"how is 12 elm doing", "ask history"},
		{"how is 92 at the laundry", "92 laundry"},
		{"hows 12 Elm St", "ask history"},
		{"what about 402 Larkhill Rd?", "ask history"},
		{"status of 12 Elm St", "ask history"},
		{"any update on 12 Elm St", "ask history"},
		{"whats up with 14 Elm St", "ask history"},
		{"¿cómo va 12 Elm St?", "ask history"},
		{"how about friday for 12 Elm St", "ask none"},
		{"hows the wife, 12 Elm St", "ask none"},
		{"ok when was the heater flushed at 2041 Tamarack Dr", "ask history"},
		{"does 14 Elm St have a prv", "ask history"},
		{"ok what's the deal with 14 Elm St", "ask history"},
		{"what did we promise", "ask due"},
		{"compare 14 Elm St over the last few years", "ask trend"},
		{"what am I overlooking", "ask next_check"},
		{"Landlord needs documentation for 77 Larkspur Ln", "ask report"},
		{"give me last week in a nutshell", "ask summary"},
		{"my last report should be deleted", "ask undo"},
		{"roll 14 Elm St to next week", "ask snooze"},
		{"what do I write for a replaced prv", "ask help"},
		{"please change my last to 61 laundry", "ask correct; 61 laundry"},
		{"I wrote it wrong, 57 laundry", "ask correct; 57 laundry"},
		{"oye qué tenemos de 14 Elm St", "ask history"},
		{"ponme al tanto de 14 Elm St", "ask history"},
		{"a qué casas tengo que regresar", "ask due"},
		{"qué descarto primero", "ask next_check"},
		{"cuál es tu sospecha", "ask next_check"},
		{"lo último no va", "ask undo"},
		{"quítame 14 Elm St de pendientes", "ask done"},
		{"seguimiento de 14 Elm St cerrado", "ask done"},
		{"mándalo a la próxima semana", "ask snooze"},
		{"cómo meto una lectura", "ask help"},
		{"cómo cerró la semana", "ask summary"},
		{"71 en la cocina, no 17", "71 kitchen"},
	})
}
