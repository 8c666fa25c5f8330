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
// The page does everything by three addresses that another program may use,
// too: GET /page/state?as=NAME&place=CHANNEL shows what a person sees there,
// GET /page/stream says when something has changed, and POST /page/act, with
// the content type application/json, does something as a person:
//
//	{"do": "say", "as": "rosa", "channel": "field", "text": "60 psi", "thread_ts": ""}
//	{"do": "press", "as": "rosa", "channel": "field", "ts": "…", "action": "ACTION_ID", "value": []}
//	{"do": "submit", "as": "rosa", "view": "V…", "values": {"BLOCK_ID": {"ACTION_ID": ["82"]}}}
//	{"do": "shortcut", "as": "rosa", "channel": "field", "ts": "…", "name": "CALLBACK_ID"}
//	{"do": "home", "as": "rosa", "app": "A…"}
//	{"do": "refresh", "app": "A…"}    {"do": "advance", "seconds": 3600}    {"do": "monday"}
//
// and edit, delete, react, share, voice, close, faults, drop, warning,
// link_off and link_on. The state has each person's token, with which any
// client of the Web API can play that person.
//
// What it never does: make a request to anywhere but an app's own request
// URL, keep anything after the process ends, or answer to other hosts than
// the one it listens on.
//
// All people in it are invented.
package practice
