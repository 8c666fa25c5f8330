package main

import (
	"context"
	"errors"
	"testing"

	"lazyhand/bot/desk"
	"lazyhand/config"
)

// rota is a platform's groups.
type rota map[string][]string

func (r rota) GroupMembers(_ context.Context, group string) ([]string, error) {
	if m, ok := r[group]; ok {
		return m, nil
	}
	return nil, errors.New("no such group")
}

func TestRolesComeFromPeopleAndGroups(t *testing.T) {
	groups := rota{"S1": {"U1", "U2"}, "S2": {"U3"}}
	full := config.Slack{FieldRole: []string{"S1"}, DispatchRole: []string{"S2", "U4"}, AdminRole: []string{"U5"}}
	tests := []struct {
		what   string
		slack  config.Slack
		groups rota // nil: never asked
		want   map[string]desk.Role
	}{
		{"nobody is named", config.Slack{}, groups, map[string]desk.Role{"U1": desk.Admin, "U9": desk.Admin}},
		{"all are named", full, groups, map[string]desk.Role{"U1": desk.Field, "U2": desk.Field, "U3": desk.Dispatcher, "U4": desk.Dispatcher, "U5": desk.Admin, "U9": desk.Outsider}},
		{"the crew is anybody", config.Slack{AdminRole: []string{"U5"}}, groups, map[string]desk.Role{"U9": desk.Field, "U5": desk.Admin}},
		{"the groups are not known yet", full, nil, map[string]desk.Role{"U1": desk.Field, "U9": desk.Field, "U3": desk.Field, "U4": desk.Dispatcher, "U5": desk.Admin}},
		{"one group is gone", full, rota{"S1": {"U1"}}, map[string]desk.Role{"U1": desk.Field, "U3": desk.Outsider, "U5": desk.Admin}},
	}
	for _, tt := range tests {
		t.Run(tt.what, func(t *testing.T) {
			r := rolesOf(tt.slack)
			if tt.groups != nil {
				_ = r.refresh(t.Context(), tt.groups) // a group that is gone is one of the cases
			}
			for person, want := range tt.want {
				if got := r.of(person); got != want {
					t.Errorf("%s is %v, want %v", person, got, want)
				}
			}
		})
	}
	// What was known of a group outlives a time when it cannot be asked for.
	r := rolesOf(full)
	if err := r.refresh(t.Context(), groups); err != nil {
		t.Fatal(err)
	}
	if err := r.refresh(t.Context(), rota{}); err == nil {
		t.Error("a platform that does not answer is no error")
	}
	if r.of("U3") != desk.Dispatcher {
		t.Error("the dispatchers are forgotten")
	}
}
