// Command lazyhand is a plumbing service shop's pressure record: crews tell it
// what they measured, in their own words, and it says what that means, what
// to take care of and when to come back.
//
// This package is the wiring and no more: flags, settings, the commands and
// the chat in the terminal. What was said is read by package intents, what it
// means is judged by assess, what is kept is kept by store, when things fall
// due is told by schedule, and desk puts them together. The commands parse and
// assess touch neither record nor clock; every other command says in one line
// what is wrong and what to do when it cannot do its work, and ends with a
// code other than 0.
package main
