package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"github.com/schollz/progressbar/v3"
	"github.com/spf13/cobra"
	"golang.org/x/term"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/config"
	"lazyhand/intents"
	"lazyhand/store"
)

// reading runs do on the record, which another process may be writing to.
func (p *program) reading(ctx context.Context, do func(config.Config, *store.DB) error) error {
	c, err := p.settings()
	if err != nil {
		return err
	}
	file, err := c.RecordFile()
	if err != nil {
		return err
	}
	db, err := store.OpenReader(ctx, file)
	if errors.Is(err, store.ErrOlder) {
		db, err = updated(ctx, file)
	}
	if errors.Is(err, os.ErrNotExist) {
		return fmt.Errorf("there is no record at %s yet: choose another with --db, or tell lazyhand a first reading", file)
	}
	if err != nil {
		return err
	}
	return errors.Join(do(c, db), db.Close())
}

// updated brings a record of an older version up to date and opens it for
// reading.
func updated(ctx context.Context, file string) (*store.DB, error) {
	db, err := store.Open(ctx, file)
	if err != nil {
		return nil, err
	}
	if err := db.Close(); err != nil {
		return nil, err
	}
	return store.OpenReader(ctx, file)
}

// writing runs do on the record and a desk on it; no other process may be
// writing.
func (p *program) writing(ctx context.Context, do func(config.Config, *store.DB, *desk.Desk) error) error {
	c, err := p.settings()
	if err != nil {
		return err
	}
	file, err := c.RecordFile()
	if err != nil {
		return err
	}
	db, err := store.Open(ctx, file)
	if errors.Is(err, store.ErrLocked) {
		return fmt.Errorf("%w: stop it first, or ask it in chat", err)
	}
	if err != nil {
		return err
	}
	opt := deskOptions(c)
	if !c.Slack.Configured() { // the record is the terminal chat's
		opt = terminalOptions(c)
	}
	d, err := desk.New(db, opt)
	if err == nil {
		err = do(c, db, d)
	}
	return errors.Join(err, db.Close())
}

// houseIn reads the words of a command as one house.
func houseIn(c config.Config, words []string) (assess.Site, error) {
	text := strings.Join(words, " ")
	parser, err := intents.New(wordsOf(c)...)
	if err != nil {
		return assess.Site{}, err
	}
	f := parser.Parse(text, intents.Context{})
	if f.Site == "" {
		return assess.Site{}, fmt.Errorf("there is no house in %q: write number and street, like 123 Elm St", text)
	}
	return assess.Site{Line: f.Site, Town: f.Town, Postcode: f.Postcode}, nil
}

// onRecord returns the one house on record that site can be.
func onRecord(tx *store.Tx, site assess.Site) (store.SiteRecord, error) {
	like, err := tx.SitesLike(site)
	if err != nil {
		return store.SiteRecord{}, err
	}
	switch len(like) {
	case 0:
		return store.SiteRecord{}, fmt.Errorf("%s is not on record", site.Line)
	case 1:
		return like[0], nil
	}
	var names []string
	for _, s := range like {
		names = append(names, strings.Join(slices.DeleteFunc([]string{s.Line, s.Town, s.Postcode}, func(s string) bool { return s == "" }), ", "))
	}
	return store.SiteRecord{}, fmt.Errorf("%s may be one of %d houses: %s", site.Line, len(like), strings.Join(names, "; "))
}

// progress shows how far a long command is, to a person at the terminal.
func (p *program) progress(what string) (step func(done, total int), end func()) {
	f, ok := p.errOut.(*os.File)
	if !ok || !term.IsTerminal(int(f.Fd())) {
		return func(int, int) {}, func() {}
	}
	var bar *progressbar.ProgressBar
	return func(done, total int) {
			if bar == nil {
				bar = progressbar.NewOptions(max(total, -1), progressbar.OptionSetWriter(f), progressbar.OptionSetDescription(what),
					progressbar.OptionShowCount(), progressbar.OptionThrottle(100*time.Millisecond), progressbar.OptionClearOnFinish())
			}
			bar.Set(done) // a bar that cannot be drawn is no fault of the work
		}, func() {
			if bar != nil {
				bar.Finish()
			}
		}
}

func (p *program) exportCommand() *cobra.Command {
	var format, out string
	cmd := &cobra.Command{
		Use:   "export",
		Short: "Write every reading to a spreadsheet's file",
		Long: `Export writes every reading on record, a row each: house, day, who, pressure,
where, heater, how fair. csv opens in a spreadsheet; jsonl loses nothing either
and comes back by import. It may run while the bot does.`,
		Example: `  lazyhand export --out readings.csv
  lazyhand export --format jsonl > readings.jsonl`,
		Args: noWords,
		RunE: func(cmd *cobra.Command, _ []string) error {
			if format != "csv" && format != "jsonl" {
				return fmt.Errorf("--format %q is not known: say csv or jsonl", format)
			}
			return p.reading(cmd.Context(), func(_ config.Config, db *store.DB) error {
				step, end := p.progress("readings")
				defer end()
				rows := 0
				write := func(w io.Writer) error {
					return db.Export(cmd.Context(), w, format, func(n int) { rows = n; step(n, -1) })
				}
				if out == "" {
					return write(p.out)
				}
				if err := writeFile(out, db.Path(), write); err != nil {
					return err
				}
				fmt.Fprintf(p.errOut, "Wrote %d rows to %s.\n", rows, out)
				return nil
			})
		},
	}
	cmd.Flags().StringVar(&format, "format", "csv", "csv or jsonl")
	cmd.Flags().StringVar(&out, "out", "", "file to write; standard output when not given")
	return cmd
}

// writeFile writes a file that only its owner may read. It appears whole or
// not at all, and is never the record.
func writeFile(file, record string, write func(io.Writer) error) (err error) {
	for _, tail := range []string{"", "-wal", "-shm", ".lock"} {
		if a, err := os.Stat(file); err == nil {
			if b, err := os.Stat(record + tail); err == nil && os.SameFile(a, b) {
				return fmt.Errorf("%s belongs to the record itself: choose another file", file)
			}
			if !a.Mode().IsRegular() {
				return fmt.Errorf("%s is no ordinary file: choose another", file)
			}
		}
	}
	part, err := os.CreateTemp(filepath.Dir(file), ".lazyhand-*")
	if err != nil {
		return fmt.Errorf("cannot write %s: %w", file, err)
	}
	defer func() {
		if err != nil {
			os.Remove(part.Name()) // what is left of a failed file
		}
	}()
	if err := write(part); err != nil {
		return errors.Join(err, part.Close())
	}
	if err := errors.Join(part.Sync(), part.Close()); err != nil {
		return fmt.Errorf("cannot write %s: %w", file, err)
	}
	if err := os.Rename(part.Name(), file); err != nil {
		return fmt.Errorf("cannot write %s: %w", file, err)
	}
	return nil
}

func (p *program) importCommand() *cobra.Command {
	var dry bool
	var columns []string
	cmd := &cobra.Command{
		Use:   "import FILE",
		Short: "Take over a shop's older list of houses, days and pressures",
		Long: `Import takes over a list as CSV or JSON lines: an export, or a spreadsheet of the
shop's own. Columns are known by their headings (address, date, psi, where …);
--column names others. It is all or nothing: when a row cannot be taken, each such
row is named with its reason and none is taken. Rows taken before change nothing.
Nobody is alerted. The bot must not be running.`,
		Example: `  lazyhand import readings.csv --dry-run
  lazyhand import old.csv --column site=Property --column psi="Static (psi)"
  lazyhand import readings.jsonl`,
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) != 1 {
				return fmt.Errorf("name the one file to import: see %s --help", cmd.CommandPath())
			}
			names := map[string]string{}
			for _, c := range columns {
				key, heading, ok := strings.Cut(c, "=")
				if !ok {
					return fmt.Errorf("--column %q: write it as key=heading, like site=Property", c)
				}
				names[key] = heading
			}
			f, err := os.Open(args[0])
			if err != nil {
				return fmt.Errorf("cannot read the list: %w", err)
			}
			defer f.Close()
			return p.writing(cmd.Context(), func(_ config.Config, _ *store.DB, d *desk.Desk) error {
				step, end := p.progress("rows")
				report, err := d.Import(cmd.Context(), f, desk.ImportOptions{DryRun: dry, Columns: names, Now: p.now(), Progress: func(n int) { step(n, -1) }})
				end()
				for _, r := range report.Refused {
					fmt.Fprintln(p.errOut, r)
				}
				if err != nil {
					return err
				}
				if dry {
					fmt.Fprintf(p.out, "%d rows: %d cannot be taken, %d are on record already. Nothing was changed.\n", report.Rows, len(report.Refused), report.Known)
					if len(report.Refused) > 0 {
						return errTold
					}
					return nil
				}
				fmt.Fprintf(p.out, "%d rows: %d readings taken, %d were on record already.\n", report.Rows, report.Kept, report.Known)
				return nil
			})
		},
	}
	cmd.Flags().BoolVar(&dry, "dry-run", false, "only say what would happen")
	cmd.Flags().StringArrayVar(&columns, "column", nil, "key=heading: which column of the list is what")
	return cmd
}

func (p *program) rebuildCommand() *cobra.Command {
	var dry bool
	cmd := &cobra.Command{
		Use:   "rebuild",
		Short: "Read every message anew with this version",
		Long: `Rebuild reads every message on record anew with this version's parser and
judgement, and puts what follows in the place of what followed before. What a
person put right stands. It is all or nothing and says nothing to the team. With
--dry-run it shows each difference and keeps none. The bot must not be running.`,
		Example: `  lazyhand rebuild --dry-run
  lazyhand rebuild`,
		Args: noWords,
		RunE: func(cmd *cobra.Command, _ []string) error {
			return p.writing(cmd.Context(), func(_ config.Config, _ *store.DB, d *desk.Desk) error {
				step, end := p.progress("messages")
				done, err := d.Rebuild(cmd.Context(), dry, step, func(c store.Change) error {
					if !dry {
						return nil
					}
					_, err := fmt.Fprintf(p.out, "%s, message %d (%s): %s\n  was: %s\n  now: %s\n", c.What, c.Message, c.At.Format(time.DateOnly), oneLine(c.Text), c.Was, c.Now)
					return err
				})
				end()
				if err != nil {
					return err
				}
				said := "Nothing was changed."
				if !dry {
					said = "Done."
				}
				fmt.Fprintf(p.out, "%d messages, %d differences, %d put right by people and left so, %d that this version cannot read. %s\n", done.Messages, done.Changes, done.Kept, done.Failed, said)
				return nil
			})
		},
	}
	cmd.Flags().BoolVar(&dry, "dry-run", false, "only show the differences")
	return cmd
}

// oneLine writes a message on one line of the terminal, without what could
// steer it.
func oneLine(text string) string {
	text = strings.Map(func(r rune) rune {
		if r < ' ' || r == 0x7f || r >= 0x80 && r < 0xa0 {
			return ' '
		}
		return r
	}, text)
	if r := []rune(text); len(r) > 200 {
		text = string(r[:199]) + "…"
	}
	return strings.Join(strings.Fields(text), " ")
}

func (p *program) forgetCommand() *cobra.Command {
	var person string
	var yes bool
	cmd := &cobra.Command{
		Use:   "forget HOUSE | --person NAME",
		Short: "Remove a house or a person from the record for good",
		Long: `Forget removes a house with all that was said about it, or a person's name and
words (what they measured stays with the houses, under nobody's name), from the
record, its search and every later backup. It cannot be undone; that something
was removed is noted, without saying what. Backups made before still hold it:
remove them, or let them age away. The bot must not be running.`,
		Example: `  lazyhand forget --yes 123 Elm St
  lazyhand forget --yes --person U0123456789`,
		RunE: func(cmd *cobra.Command, args []string) error {
			if (len(args) > 0) == (person != "") {
				return fmt.Errorf("name one house, or a person with --person: see %s --help", cmd.CommandPath())
			}
			if !yes {
				return errors.New("this cannot be undone: add --yes when you mean it")
			}
			return p.writing(cmd.Context(), func(c config.Config, db *store.DB, d *desk.Desk) error {
				var gone store.Forgotten
				var err error
				if person != "" {
					gone, err = db.ForgetPerson(cmd.Context(), person, p.now())
				} else {
					var site assess.Site
					if site, err = houseIn(c, args); err == nil {
						gone, err = db.ForgetHouse(cmd.Context(), site, p.now(), d.Names)
					}
				}
				if err != nil {
					return err
				}
				fmt.Fprintf(p.out, "Removed: %d houses, %d messages, %d posts of ours. Backups in %s made before now still hold them.\n",
					gone.Houses, gone.Messages, gone.Posts, c.BackupFolder(db.Path()))
				return nil
			})
		},
	}
	cmd.Flags().StringVar(&person, "person", "", "id or name of the person to forget")
	cmd.Flags().BoolVar(&yes, "yes", false, "mean it")
	return cmd
}
