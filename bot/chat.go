package main

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"io"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
)

// chat answers one message a line until the input ends.
func chat(ctx context.Context, p *program) error {
	parser, err := intents.New()
	if err != nil {
		return err
	}
	today := assess.DateOf(p.now())
	r := bufio.NewReader(p.in)
	for ctx.Err() == nil {
		text, err := r.ReadString('\n')
		if strings.TrimSpace(text) != "" {
			f := parser.Parse(text, intents.Context{Today: today})
			a := assess.Assess(assess.Input{Today: today, Visits: []assess.Visit{f.Visit(today)}})
			for _, finding := range a.Findings {
				fmt.Fprintln(p.out, finding.Text)
			}
		}
		switch {
		case errors.Is(err, io.EOF):
			return nil
		case err != nil:
			return fmt.Errorf("cannot read the input: %w", err)
		}
	}
	return nil
}
