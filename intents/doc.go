// Package intents reads what a tech wrote and says what they meant: a message
// in, a Frame out.
//
// It promises never to guess a number: every pressure in a Frame stands in the
// message, and what could not be decided is left out and named in
// Frame.Unclear. It is pure; it knows no chat platform, no record and no clock
// (the day is given in Context).
//
// # How a message is read
//
// Each step is a file of the name in brackets; Explain shows what each decided.
//
//   - What chat and dictation did to the text is undone (undo, token, dictation,
//     texting), and spoken numbers become numbers (number). Lists, tables and logs are put
//     as lines that each tell their own (numbered, table, lined).
//   - Words are looked up (lexicon, trie, spelling, joined): a phrase has one or more classes
//     ("point", "did", "state"; class), also when it is written short or wrong.
//     The phrases are data, in the folder lexicon; regular Spanish verbs grow their forms
//     (conjugate), and words that one rule knows by their letters are lists (list). A thing
//     named only at the end of what is told of it takes the place of its pronoun (named_last).
//   - Street lines are found and the house is chosen (address and its parts,
//     street, highway, site, site_denied, named), so that their numbers are nothing else.
//   - A sentence that tells and asks is parted (ask_split). What is asked of the bot
//     is known before its numbers are read (ask, cue, convert, tank_size, correct,
//     terse), and so are the days told (date).
//   - Every number gets one role (number_role, with a table of rules for how it is
//     written, number_written, and one for bare numbers, number_bare): a pressure, an
//     age, a size, a setting, … or none. Each room knows one role (pressure, setting, charge,
//     change, change_told, age, heater_dial), and five keep out what is somebody
//     else's or no pressure of water (foreign, foreign_kind, foreign_talk, hot_tap, memory).
//     What is told of two regulators or heaters and differs is asked about (two_of).
//   - Pressures are paired with test points by least cost (pair, rows, series,
//     across), and get the state of the heater, the flow and the time (heater, heater_state,
//     flow, peak, when). A number borrows a neighbour's test point only where the words
//     beside it lead to a pressure (led).
//   - Work, plans, equipment and symptoms are gathered (verb, object, deed, work;
//     plan; equipment, owner, condition, absent; symptom); deed_told and plan_told
//     read those told without a verb of work. The heads of a note's parts say what
//     stands under them (heads).
//   - What reaches across clauses is settled (settle); numbers that nothing makes
//     a pressure of this house are taken back and asked about (placeless).
//
// What keeps it quick: a message is looked over once for what there is to put right (glance),
// a word is looked up once (entry), a message works on the room of the last one (room), rules
// pass over messages that hold none of their words (gate), and a word carries a bit for every
// rule that it may open (key). What rules ask of an item in
// common is in look.
package intents
