// Package slackchat is Slack as the desk's chat platform: it brings what
// people do there to the desk, and says there what the desk has to say.
//
// It promises: an envelope is acknowledged only when the desk has it on the
// disk, or when it is nothing for the desk; whatever arrives is taken, ignored
// or refused, each with its reason, and never a panic; after a gap the
// configured channels, open threads and direct messages are read back; every
// post carries its whole text for those who hear it read, and its key in the
// message's metadata, by which it is found again when the answer was lost;
// what people typed is said back as plain words that can neither mention nor
// link; the platform's limits (see Limits) are kept.
//
// It never decides what a message means, keeps nothing on the disk, and shows
// no token, text or address in a log. It knows the platform and the desk, not
// how messages are parsed, judged or stored.
//
// Names of methods, fields, limits and errors are the platform's own, from
// docs.slack.dev.
package slackchat
