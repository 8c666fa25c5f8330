package slackchat

import (
	"context"
	"errors"
	"fmt"
	"time"

	"github.com/slack-go/slack"
)

// person is what is known of a member.
type person struct {
	name  string
	guest bool
	lang  string    // as the person has set it, empty when not known
	until time.Time // when to ask again
}

// peopleKept bounds how many people are remembered.
const peopleKept = 5000

// person looks a member up, and remembers for a day. Where the app may not
// ask, nothing is known and the person counts as a member.
func (s *Slack) person(ctx context.Context, id string) (person, error) {
	if id == "" {
		return person{}, nil
	}
	now := s.opt.Now()
	s.mu.Lock()
	p, ok := s.people[id]
	s.mu.Unlock()
	if ok && now.Before(p.until) {
		return p, nil
	}
	short, cancel := context.WithTimeout(ctx, 2*time.Second) // an envelope waits for us
	defer cancel()
	u, err := s.api.GetUserInfoContext(short, id, slack.GetUserInfoOptionIncludeLocale(true))
	var no slack.SlackErrorResponse
	switch {
	case err == nil:
		p = person{name: u.Profile.DisplayName, guest: u.IsRestricted || u.IsUltraRestricted, lang: u.Locale, until: now.Add(24 * time.Hour)}
		for _, n := range []string{u.RealName, u.Name} {
			if p.name == "" {
				p.name = n
			}
		}
	case errors.As(err, &no): // missing_scope, user_not_found …
		p = person{until: now.Add(time.Hour)}
	case ok || s.opt.Guests:
		return p, nil // an old answer, or none is needed
	default:
		return p, fmt.Errorf("ask Slack who wrote: %w", err)
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	if len(s.people) >= peopleKept {
		clear(s.people)
	}
	s.people[id] = p
	return p, nil
}
