// Package store keeps what the field said: one SQLite file that a shop can
// trust for decades.
//
// It promises that a message whose Write returned nil is on the disk, that the
// same message is kept once however often it arrives, and that a post to the
// team exists exactly if the rows it speaks of do. What people said (message,
// correction) is the truth; everything else can be derived from it again.
//
// Every row is named after its cause, so that a repeated step finds its row
// already there. The keys it owns: "<channel>/<ts>" of a message, and those of
// the outbox, which its callers name ("reply:<message>", "alert:<alert>:<change>",
// "remind:…", "summary:…").
//
// Times are Unix milliseconds, days are YYYY-MM-DD. It reads no clock: times
// are given to it. Only this package sees SQL.
package store
