package main

import (
	"bytes"
	"path/filepath"
	"strings"
	"testing"
)

func TestTwoRecordsOfOneHouseAreJoinedAndParted(t *testing.T) {
	db := filepath.Join(t.TempDir(), "shop.db")
	tell := func(in string, args ...string) string {
		t.Helper()
		var out, errOut bytes.Buffer
		if err := run(t.Context(), append([]string{"--db", db}, args...), strings.NewReader(in), &out, &errOut); err != nil {
			return "error: " + err.Error()
		}
		return out.String()
	}
	tell("61 laundry, heater idle, 9 Oak Ct\n70 rear bibb, heater idle, 9 Oak Ave\n")
	for _, step := range []struct {
		args []string
		want string
	}{
		{[]string{"same"}, "9 Oak Ct  ?  9 Oak Ave"},
		{[]string{"same", "9 Oak Ct", "9 Oak Ave"}, "9 Oak Ave is now told under 9 Oak Ct"},
		{[]string{"same", "9 Oak Ct", "9 Oak Ave"}, "error: 9 Oak Ct and 9 Oak Ave are one house on record already"},
		{[]string{"same"}, "No house seems to be on record twice"},
		{[]string{"rebuild"}, ""},
		{[]string{"same"}, "No house seems to be on record twice"},
		{[]string{"same", "--part", "9 Oak Ave"}, "9 Oak Ave is a house of its own again"},
		{[]string{"same", "--part", "9 Oak Ave"}, "error: this house is joined to no other"},
		{[]string{"same"}, "9 Oak Ct  ?  9 Oak Ave"},
		{[]string{"same", "9 Oak Ct"}, "error: name two houses"},
		{[]string{"same", "9 Oak Ct", "1 Elm St"}, "error: 1 Elm St is not on record"},
	} {
		if got := tell("", step.args...); !strings.Contains(got, step.want) {
			t.Errorf("%v says %q, want %q", step.args, got, step.want)
		}
	}
	// The chat asked about the two when the second was named: "no" settles it.
	tell("61 laundry, heater idle, 12 Elm Ct\n70 rear bibb, heater idle, 12 Elm Ave\nno\n")
	if got := tell("", "same"); strings.Contains(got, "Elm") || !strings.Contains(got, "Oak") {
		t.Errorf("after a no the list is %q", got)
	}
}
