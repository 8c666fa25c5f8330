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
//
// # The way of a visit
//
// Assess walks the visits once. The record (record.go) keeps what they tell of
// the equipment, as found and as left; fairness.go judges each reading, band.go
// what a visit's fair readings support. Of the last visit it then asks for the
// causes: memory.go weighs the past, evidence.go the readings, integrate.go
// adds up all street levels and settings of levels.go, and diagnose.go joins
// them with the tables of causes.go by Bayes' rule. The rules of findings.go
// say what follows; nextcheck.go, cautions.go and followups.go what to do.
//
// # To add
//
// A finding is a row in findings.go and a wording in words_en.go and
// words_es.go. A check is a row in nextcheck.go and its words. A cause is a
// constant and a column in causes.go, an integral in diagnose.go, and a fault in
// the simulated houses of simulate_test.go, which say how well it is told from
// the others. Tests fail for what is forgotten.
package assess
