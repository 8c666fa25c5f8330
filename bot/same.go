package main

import (
	"context"
	"fmt"
	"slices"

	"github.com/spf13/cobra"

	"lazyhand/bot/desk"
	"lazyhand/config"
	"lazyhand/store"
)

// mostPairs is how many near-duplicates are listed at once.
const mostPairs = 50

// sameCommand lists houses that may be on record twice, and makes them one or
// two.
func (p *program) sameCommand() *cobra.Command {
	var part bool
	cmd := &cobra.Command{
		Use:   "same [HOUSE HOUSE]",
		Short: "List houses that may be on record twice, join two, or part them again",
		Long: `Same lists records that may be one house: the same number and street name, with
another suffix, direction, town or postcode, and that nobody has called two when
the bot asked. With two houses it makes them one,
under the name of the first; --part with one house undoes it. Nothing is lost
either way: each keeps what was said under its own name.`,
		Example: `  lazyhand same
  lazyhand same "9 Oak Ct" "9 Oak Ave"
  lazyhand same --part "9 Oak Ave"`,
		RunE: func(cmd *cobra.Command, args []string) error {
			switch {
			case part && len(args) == 1:
				return p.part(cmd.Context(), args[0])
			case part:
				return fmt.Errorf("--part wants one house: the one that was joined to another")
			case len(args) == 0:
				return p.nearDuplicates(cmd.Context())
			case len(args) == 2:
				return p.join(cmd.Context(), args[0], args[1])
			}
			return fmt.Errorf("name two houses, each in quotes: see %s --help", cmd.CommandPath())
		},
	}
	cmd.Flags().BoolVar(&part, "part", false, "make a joined house one of its own again")
	return cmd
}

func (p *program) nearDuplicates(ctx context.Context) error {
	return p.reading(ctx, func(_ config.Config, db *store.DB) error {
		return db.Read(ctx, func(tx *store.Tx) error {
			pairs, err := tx.AllNearDuplicates(mostPairs)
			if err != nil {
				return err
			}
			two, err := desk.SaidTwo(tx)
			if err != nil {
				return err
			}
			pairs = slices.DeleteFunc(pairs, func(d store.NearDuplicates) bool {
				return two[[2]int64{min(d.A.ID, d.B.ID), max(d.A.ID, d.B.ID)}]
			})
			if len(pairs) == 0 {
				fmt.Fprintln(p.out, "No house seems to be on record twice.")
			}
			for _, d := range pairs {
				fmt.Fprintf(p.out, "%s  ?  %s\n", fullLine(d.A), fullLine(d.B))
			}
			return nil
		})
	})
}

// fullLine is a house with its town and postcode.
func fullLine(s store.SiteRecord) string {
	line := s.Line
	for _, more := range []string{s.Town, s.Postcode} {
		if more != "" {
			line += ", " + more
		}
	}
	return line
}

// named returns the house on record that words name.
func named(tx *store.Tx, c config.Config, words string) (store.SiteRecord, error) {
	site, err := houseIn(c, []string{words})
	if err != nil {
		return store.SiteRecord{}, err
	}
	return onRecord(tx, site)
}

func (p *program) join(ctx context.Context, stays, goes string) error {
	return p.changing(ctx, func(c config.Config, tx *store.Tx) (string, error) {
		a, err := named(tx, c, stays)
		if err != nil {
			return "", err
		}
		b, err := named(tx, c, goes)
		if err != nil {
			return "", err
		}
		if a.ID == b.ID {
			return "", fmt.Errorf("%s and %s are one house on record already", stays, goes)
		}
		return fmt.Sprintf("%s is now told under %s. Undo: lazyhand same --part %q", fullLine(b), fullLine(a), b.Line), tx.Join(a.ID, b.ID)
	})
}

func (p *program) part(ctx context.Context, house string) error {
	return p.changing(ctx, func(c config.Config, tx *store.Tx) (string, error) {
		s, err := named(tx, c, house)
		if err != nil {
			return "", err
		}
		return fmt.Sprintf("%s is a house of its own again.", house), tx.Part(s.Named)
	})
}

// changing does one change to the record and says what was done.
func (p *program) changing(ctx context.Context, do func(config.Config, *store.Tx) (string, error)) error {
	return p.writing(ctx, func(c config.Config, db *store.DB, _ *desk.Desk) error {
		said := ""
		err := db.Write(ctx, func(tx *store.Tx) (err error) {
			said, err = do(c, tx)
			return err
		})
		if err != nil {
			return err
		}
		fmt.Fprintln(p.out, said)
		return nil
	})
}
