// Package intents reads what a tech wrote and says what they meant: a message
// in, a Frame out.
//
// It promises never to guess a number: every pressure in a Frame stands in the
// message, and what could not be decided is left out and named in
// Frame.Unclear. It is pure; it knows no chat platform, no record and no clock
// (the day is given in Context).
package intents
