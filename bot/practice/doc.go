// Package practice is a small workspace on the local machine that speaks the
// part of Slack's protocol that a chat bot uses, for people who have no
// workspace to try a bot in and for tests.
//
// It holds people, channels, messages, views and files in memory and serves
// three things from one handler: the Web API at /api/, Socket Mode at /socket
// and a web page at / where a person can take the part of any crew member.
// It knows the platform and no bot: any client of the Web API and Socket Mode
// can join with the tokens of one of its apps.
//
// What it promises: every message has its own ts; an event is delivered at
// least once, on any one open socket, and again at once, after one minute and
// after five minutes of the workspace's clock while nobody acknowledges it;
// what an app sends is held to the platform's documented limits (see Limits)
// and refused with the platform's own error names. The workspace's clock can
// be moved forward, and faults can be switched on: calls refused, answers
// lost, sockets dropped, events doubled, delayed and out of order.
//
// What it never does: make a request to anywhere but an app's own request
// URL, keep anything after the process ends, or answer to other hosts than
// the one it listens on.
//
// All people in it are invented.
package practice
