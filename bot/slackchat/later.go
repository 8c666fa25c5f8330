package slackchat

import "context"

// afterwards does what follows from an arrival that is on the disk.
func (s *Slack) afterwards(ctx context.Context, a arrival) {}

func (s *Slack) command(ctx context.Context, c command) (any, error) { return nil, nil }
