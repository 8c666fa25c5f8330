// Package assess judges a house's water pressure: what was measured, how far
// it can be trusted, what is probably wrong, what to check next and when to
// come back.
//
// It is the ground floor. Its words (Reading, TestPoint, Equipment, Finding …)
// are the words of every other package, and they mean what the trade means by
// them. It promises to be pure: the same visits and the same day give the same
// assessment. It reads no clock, no file, no network and keeps no state.
//
// Pressures are gauge pressures in psi, volumes US gallons, temperatures
// degrees Fahrenheit, lengths feet and ages years, unless a name says
// otherwise.
package assess
