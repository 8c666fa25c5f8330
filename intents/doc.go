// Package intents reads what a tech wrote and says what they meant: a message
// in, a Frame out.
//
// It promises never to guess a number: every pressure in a Frame stands in the
// message, and what could not be decided is left out and named in
// Frame.Unclear. It is pure; it knows no chat platform, no record and no clock
// (the day is given in Context).
//
// # Where to find a rule
//
// Files are named here in the order in which a message passes them. Files that
// begin with the same word share a subject. Explain shows which rule decided what.
//
// The way through:
//
//	parse                          Parser, and the reading of one message
//	message                        understand: the order of the steps below
//	build                          from text to items and sentences
//	frame                          Frame, its values and its Context
//	why                            Why, and Explain
//
// The text is put right:
//
//	tap                            "same tap" is written out
//	undo undo_rune                 what chat and typography did to it
//	token token_digits token_word  words, numbers and marks
//	glance                         what a message holds that the next ones mend
//	spelling_swapped               two letters typed in the other order
//	halting day_decided ellipsis   "the, um, regulator"; a day thought aloud; dots for a comma
//	vowels                         "nthng" for "nothing"
//	texting                        "2" for "two", "q" for "que"
//	dictation pause                spoken marks, and pauses that have none
//	facts_apart                    where one fact ends and another begins, in a message without marks
//	counting                       "half a dozen", "a decade old"
//	number number_value            spoken numbers
//	number_group number_fraction   "twelve oh eight", "58 and a half"
//	opening                        greetings and thanks
//	numbered table lined           lists, tables, logs
//	setting_row                    a setting told in lines of its own
//	named_last                     "it's at 62, the prv i mean"
//
// Words are looked up:
//
//	lexicon trie entry entry_table class
//	                               the phrases of folder lexicon and what they mean
//	conjugate conjugate_english    the forms of verbs
//	spelling spelling_joined       slips of the keyboard, blanks left out
//	list phrases                   words that one rule knows by their letters, in lexicon/lists_*.txt
//	lang                           which language is written
//	item sentence                  what rules look at
//	look look_sentence             what rules ask of an item, of a sentence
//	topic noun                     what words are about, strange nouns
//	section                        the heads of a note and what is under them
//
// The house:
//
//	address address_parts          street lines
//	address_spanish address_unit address_weight
//	street street_bare             the name after a house number
//	street_highway gazetteer       "CR 119"; tables of USPS Publication 28
//	site site_again site_denied    which line is meant, corrected, denied
//	named                          houses named without their number
//	arrival                        "at 12 Elm now"
//
// What is asked of the bot:
//
//	ask ask_split ask_phrase ask_phrase_past
//	cue ask_cue ask_due            what single words lend to a question
//	ask_help ask_house ask_office ask_houses
//	                               help, one house, all houses
//	ask_opinion                    what to think of a pressure, what may be to blame
//	ask_formula ask_formulas       orders of words in which something is asked
//	ask_may                        whether a message can ask so at all
//	ask_convert ask_tank_size ask_tank_number
//	                               sums
//	ask_correct ask_correct_phrase ask_correct_denied
//	ask_terse ask_snooze
//	                               orders about what was sent last
//
// Days:
//
//	date date_day date_weekday     what a day is called
//	date_span date_earlier date_visit
//
// Every number gets one role:
//
//	number_role                    the order of the rules
//	taken_back taken_back_fact     "92, no wait 82"; settings, years and sizes likewise
//	taken_back_told                what was reported before
//	aside                          talk of the shop, tyres, prices
//	number_written number_bare     by how it is written; without a unit
//	number_temp number_year        degrees; ages and times
//	unit length money              units, inches and feet, sums of money
//	range series                   "60/62", "at 9 58, at 10 60"
//	built_for                      what a part bears, and can be set to
//	pressure reading_led           pressures, and what leads to them
//	setting setting_word setting_deed
//	change change_told change_on change_was charge
//	                               what regulators and tanks were set to
//	heater_dial heater_size        thermostats, gallons
//	age age_same age_unknown       how old a thing is
//	year year_house                the year of a thing, of the house
//	foreign foreign_kind foreign_thing foreign_talk foreign_hot_tap foreign_memory
//	foreign_difference doubt
//	                               numbers that tell nothing of this house's water
//	two_of                         two regulators or heaters that differ
//
// Readings:
//
//	place place_side place_word place_runs
//	                               test points, and taps that only run
//	pair pair_cost pair_rows pair_across
//	                               which number belongs to which point
//	quoted                         a line quoted to put it right
//	reading peak                   pressures with all that is told of them
//	heater heater_state heater_turned
//	                               whether the heater rested
//	flow flow_word flow_spread flow_reach flow_talk
//	                               whether water ran
//	when when_word when_reach when_brought
//	                               before or after work
//	when_rows                      rows of pressures before and after, their taps told once
//	tap_in_hand                    what a gauge shows that was moved on
//	shown                          whether a bare number is what a gauge shows
//	valve_opened                   a valve of the house opened between two readings
//
// Work, plans, things and symptoms:
//
//	verb verb_object verb_done verb_state
//	                               verbs of work: what to, whether done
//	deed deed_by deed_told deed_new_part deed_rebuild deed_renewal deed_shut deed_went_in
//	                               work told in other ways
//	deed_new_unsaid                a new part that may be in or only wanted
//	object object_second           what a deed was done to
//	work                           statements of work
//	plan plan_action plan_order plan_object plan_told plan_will
//	plan_need plan_denied plan_visit plan_again plan_past
//	                               what is to be done, and when
//	equipment equipment_give equipment_part
//	equipment_then equipment_condition equipment_sense equipment_guess equipment_screw equipment_service
//	equipment_absent equipment_absent_item
//	                               what is installed, what is not
//	owner owner_near owner_unnamed owner_other owner_elsewhere
//	                               which thing an attribute is told of
//	symptom symptom_read symptom_word symptom_way
//	symptom_sign symptom_sign_word
//	symptom_leak symptom_near symptom_absent symptom_gone
//	                               what is wrong
//
// The frame is settled:
//
//	settle                         what reaches across clauses
//	placeless                      numbers that nothing makes a pressure
//	unclear                        what is left out, and the question about it
//
// Beside messages:
//
//	amend amend_slip amend_plan amend_house    what a message puts right in the last report
//	put_right                      a message of a few words that does nothing else
//	dialogue                       answers to a question of the bot
//	goes_on goes_on_screw ahead_of_prv goes_on_sign goes_on_there
//	                               messages that go on from the last one
//
// What keeps it quick:
//
//	room                           a message works on the room of the last one
//	gate                           rules pass over messages without their words
//	rule_index                     the rules of a table that a message opens
//	key                            a word carries a bit for every rule that it opens
package intents
