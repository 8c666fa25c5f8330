package intents

import (
	"strings"
	"testing"
)

// TestGridOfTimeSinceService reads how long ago a heater was flushed or serviced, told as a time without it or since it:
// "hasn't been flushed in 3 years", "been five years since it was flushed".
func TestGridOfTimeSinceService(t *testing.T) {
	forms := []string{
		"{n} hasn't been flushed in {v}", "{n} hasnt been flushed in {v}", "{n} has not been flushed for {v}", "{n} not flushed in {v}", "{n} not flushed for {v}",
		"{n} hasn't seen a flush in {v}", "{n} hasn't had a flush in {v}", "no flush on the {n} in {v}", "nobody has flushed the {n} in {v}",
		"{n} hasn't been serviced in {v}", "{n} hasn't been drained for {v}", "been {v} since the {n} was flushed", "it's been {v} since the {n} was flushed",
		"{n} was flushed {v} ago", "last flush on the {n} was {v} ago", "{n} flushed {v} back", "{n} had a flush {v} ago", "{v} since the {n} was flushed",
		"{v} since last flush on the {n}", "{n} hasn't been flushed in over {v}", "{n} hasn't been flushed in about {v}", "{n} went {v} without a flush",
		"{n} has gone {v} without a flush", "{n}: {v} since last flush", "owner hasn't flushed the {n} in {v}", "customer hasn't flushed {n} in {v}",
		"{n} overdue, {v} since a flush", "{n} flushed maybe {v} ago", "{n} not serviced in {v}", "{n} unflushed for {v}", "{n} hasn't gotten a flush in {v}",
	}
	values := [][2]string{{"3 years", "maintained 2023"}, {"five years", "maintained 2021"}, {"2 yrs", "maintained 2024"}}
	readPhrases(t, filled(forms, []string{"heater", "water heater", "htr"}, values, "heater"), framedParts)
}

// TestGridOfNeverServicedBesideAnAge reads a heater that was never served, though a time is told beside it.
func TestGridOfNeverServicedBesideAnAge(t *testing.T) {
	var all []said
	for _, form := range []string{"{n} never flushed, 12 years old", "{n} is 12 years old and never flushed", "12 year old {n}, never flushed", "{n} is 12 yrs old, hasn't ever been flushed"} {
		for _, name := range []string{"heater", "water heater", "htr"} {
			all = append(all, said{strings.Replace(form, "{n}", name, 1), "heater year 2014 never maintained"})
		}
	}
	readPhrases(t, all, framedParts)
}
