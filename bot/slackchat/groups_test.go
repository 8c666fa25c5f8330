package slackchat_test

import (
	"slices"
	"strings"
	"testing"

	"lazyhand/bot/practice"
)

func TestGroupsAreAskedFor(t *testing.T) {
	s := open(t, practice.Options{})
	members, err := s.bot.GroupMembers(t.Context(), "S00000002")
	if err != nil || !slices.Equal(members, []string{"U00000004", "U00000005"}) {
		t.Errorf("dispatchers are %v, %v", members, err)
	}
	if _, err := s.bot.GroupMembers(t.Context(), "S99999999"); err == nil || !strings.Contains(err.Error(), "S99999999") {
		t.Errorf("a group that there is not: %v", err)
	}
}
