package intents

import "testing"

// What whole notes and tangled messages say: settings in lines of their own, what
// somebody else had set, numbers put right, and numbers that are no pressure of the
// house. The messages are our own.
func TestNotesAndTangledMessages(t *testing.T) {
	says(t, [][2]string{
	})
}
