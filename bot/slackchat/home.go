package slackchat

import "context"

// publishHome shows a person their home tab.
func (s *Slack) publishHome(ctx context.Context, userID string) {}
