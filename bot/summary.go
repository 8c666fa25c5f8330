package main

import (
	"context"
	"errors"
	"fmt"
	"os"

	"github.com/spf13/cobra"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/config"
	"lazyhand/store"
)

func (p *program) summaryCommand() *cobra.Command {
	var from, to, out, language string
	cmd := &cobra.Command{
		Use:   "summary --from DATE --to DATE",
		Short: "Sum up what was reported in a span of days",
		Long: `Summary tells what the bot tells the team on the configured morning, for any span
of days, both included: houses and readings, alerts raised and settled, regulators
that drift or are past their age, follow-ups kept and missed, streets whose supply
changed, and the houses to see first. With --out it also draws the pressures
against the band. Without dates it is the last seven days. It may run while the
bot does.`,
		Example: `  lazyhand summary --from 2026-06-01 --to 2026-06-30
  lazyhand summary --out week.png --language es`,
		Args: noWords,
		RunE: func(cmd *cobra.Command, _ []string) error {
			return p.reading(cmd.Context(), func(c config.Config, db *store.DB) error {
				today := assess.DateOf(p.now().In(c.Shop.Zone))
				first, last, err := spanOf(from, to, today)
				if err != nil {
					return err
				}
				lang, err := languageOf(language, c)
				if err != nil {
					return err
				}
				c.Shop.Language = string(lang)
				return p.summary(cmd.Context(), c, db, first, last, out)
			})
		},
	}
	cmd.Flags().StringVar(&from, "from", "", "first day, as 2026-06-01")
	cmd.Flags().StringVar(&to, "to", "", "last day, as 2026-06-30 (default: today)")
	paperFlags(cmd, &out, &language)
	cmd.Flags().Lookup("out").Usage = "file for the picture, a PNG; empty: none"
	return cmd
}

// spanOf reads a span of days, both included; its end is today and its length
// a week where a person does not say.
func spanOf(from, to string, today assess.Date) (first, last assess.Date, err error) {
	last = today
	if to != "" {
		if last, err = assess.ParseDate(to); err != nil {
			return first, last, fmt.Errorf("--to: %w", err)
		}
	}
	first = last.AddDays(-6)
	if from != "" {
		if first, err = assess.ParseDate(from); err != nil {
			return first, last, fmt.Errorf("--from: %w", err)
		}
	}
	if last.Before(first) {
		return first, last, errors.New("the last day lies before the first: change --from and --to")
	}
	return first, last, nil
}

func (p *program) summary(ctx context.Context, c config.Config, db *store.DB, first, last assess.Date, out string) error {
	d, err := desk.New(db, deskOptions(c))
	if err != nil {
		return err
	}
	s, err := d.Summary(ctx, first, last.AddDays(1))
	if err != nil {
		return err
	}
	if _, err := fmt.Fprintln(p.out, s.Body().Text()); err != nil {
		return err
	}
	if out == "" {
		return nil
	}
	pic, err := painterOf(c).Week(s)
	if err != nil {
		return err
	}
	if err := os.WriteFile(out, pic.PNG, 0o600); err != nil {
		return fmt.Errorf("cannot write the file: %w", err)
	}
	_, err = fmt.Fprintf(p.out, "%s\n%s\n", out, pic.Alt)
	return err
}
