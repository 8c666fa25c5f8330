package slackchat

import (
	"context"
	"fmt"
	"time"
)

// GroupMembers returns the ids of the people in a user group.
func (s *Slack) GroupMembers(ctx context.Context, group string) ([]string, error) {
	short, cancel := context.WithTimeout(ctx, 10*time.Second)
	defer cancel()
	members, err := s.api.GetUserGroupMembersContext(short, group)
	if err != nil {
		return nil, fmt.Errorf("ask Slack who is in group %s: %w", group, err)
	}
	return members, nil
}
