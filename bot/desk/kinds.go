package desk

import "lazyhand/store"

// MessageKind says what somebody did in chat. It is the store's, under a name
// that a chat platform may use.
type MessageKind = store.MessageKind

// The kinds of message.
const (
	Said    = store.Said
	Edited  = store.Edited
	Deleted = store.Deleted
	Pressed = store.Pressed // a button, a form or a command
)
