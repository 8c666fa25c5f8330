package main

import (
	"context"
	"maps"
	"slices"
	"sync/atomic"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/config"
)

// grouped is a platform that knows who is in a user group.
type grouped interface {
	GroupMembers(ctx context.Context, group string) ([]string, error)
}

// roles tells who may do what, from people's ids and from the groups they are
// in. It asks nobody while a message is dealt with: who is in a group is kept
// from the last time it was asked for.
type roles struct {
	field, dispatch, admin []string
	members                atomic.Pointer[map[string][]string] // by group
}

// rolesOf are the roles that the settings give.
func rolesOf(s config.Slack) *roles {
	return &roles{field: s.FieldRole, dispatch: s.DispatchRole, admin: s.AdminRole}
}

// configured tells whether the settings name anybody; if not, everybody may do
// all.
func (r *roles) configured() bool { return len(r.field)+len(r.dispatch)+len(r.admin) > 0 }

// of returns a person's role. While it is not known who is in a group that the
// field role names, everybody counts as crew, so that no report is lost; the
// other rights need to be known.
func (r *roles) of(person string) desk.Role {
	if !r.configured() {
		return desk.Admin
	}
	known := map[string][]string{}
	if m := r.members.Load(); m != nil {
		known = *m
	}
	in := func(list []string) (yes, sure bool) {
		sure = true
		for _, id := range list {
			switch members, ok := known[id]; {
			case id == person, slices.Contains(members, person):
				return true, true
			case isGroup(id) && !ok:
				sure = false
			}
		}
		return false, sure
	}
	if yes, _ := in(r.admin); yes {
		return desk.Admin
	}
	if yes, _ := in(r.dispatch); yes {
		return desk.Dispatcher
	}
	if yes, sure := in(r.field); yes || !sure || len(r.field) == 0 {
		return desk.Field
	}
	return desk.Outsider
}

// groups returns the groups that the roles name.
func (r *roles) groups() []string {
	var list []string
	for _, id := range slices.Concat(r.field, r.dispatch, r.admin) {
		if isGroup(id) && !slices.Contains(list, id) {
			list = append(list, id)
		}
	}
	return list
}

// refresh asks who is in the groups. A group that cannot be asked for stays as
// it was.
func (r *roles) refresh(ctx context.Context, chat grouped) error {
	next := map[string][]string{}
	if m := r.members.Load(); m != nil {
		maps.Copy(next, *m)
	}
	var failed error
	for _, g := range r.groups() {
		members, err := chat.GroupMembers(ctx, g)
		if err != nil {
			failed = err
			continue
		}
		next[g] = members
	}
	r.members.Store(&next)
	return failed
}

// Times between two looks at the groups.
const (
	groupsEvery = 10 * time.Minute
	groupsRetry = time.Minute
)

// groupsLoop keeps what is known of the groups fresh.
func (s *service) groupsLoop(ctx context.Context) {
	chat, ok := s.chat.(grouped)
	for {
		wait := groupsEvery
		if r := s.roles.Load(); ok && len(r.groups()) > 0 {
			if err := r.refresh(ctx, chat); err != nil && ctx.Err() == nil {
				s.log.Warn("who is in the groups of the roles is not known", "error", err)
				wait = groupsRetry
			}
		}
		select {
		case <-ctx.Done():
			return
		case <-s.regroup:
		case <-time.After(wait):
		}
	}
}
