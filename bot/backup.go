package main

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"time"

	"github.com/spf13/cobra"

	"lazyhand/config"
	"lazyhand/schedule"
	"lazyhand/store"
)

func (p *program) backupCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "backup [FILE]",
		Short: "Copy the record, also while the bot runs",
		Long: `Backup copies the record as it stands now, also while the bot runs, and looks the
copy through before it counts. Without a file it goes into the backup folder, of
which the newest ones are kept (backup.folder, backup.keep). To restore one, stop
the bot and put it in the record's place.`,
		Example: `  lazyhand backup
  lazyhand backup /mnt/usb/lazyhand.db`,
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) > 1 {
				return fmt.Errorf("name one file: see %s --help", cmd.CommandPath())
			}
			return p.reading(cmd.Context(), func(c config.Config, db *store.DB) error {
				step, end := p.progress("pages")
				defer end()
				if len(args) == 1 {
					if err := db.Backup(cmd.Context(), args[0], step); err != nil {
						return err
					}
					fmt.Fprintf(p.out, "Copied the record to %s.\n", args[0])
					return nil
				}
				file, err := backUp(cmd.Context(), c, db, p.now(), step)
				if err != nil {
					return err
				}
				fmt.Fprintf(p.out, "Copied the record to %s.\n", file)
				return nil
			})
		},
	}
}

// backupName is the name of a copy in the backup folder.
var backupName = regexp.MustCompile(`^lazyhand-\d{8}-\d{6}\.db$`)

// backUp makes a copy in the backup folder and removes the oldest ones above
// the number to be kept. Other files there are left alone.
func backUp(ctx context.Context, c config.Config, db *store.DB, now time.Time, step func(done, total int)) (file string, err error) {
	folder := c.BackupFolder(db.Path())
	if err := os.MkdirAll(folder, 0o700); err != nil {
		return "", fmt.Errorf("cannot make the backup folder: %w", err)
	}
	file = filepath.Join(folder, now.UTC().Format("lazyhand-20060102-150405.db"))
	if err := db.Backup(ctx, file, step); err != nil {
		return "", err
	}
	entries, err := os.ReadDir(folder)
	if err != nil {
		return file, fmt.Errorf("cannot look at the backup folder: %w", err)
	}
	var names []string
	for _, e := range entries {
		if e.Type().IsRegular() && backupName.MatchString(e.Name()) {
			names = append(names, e.Name())
		}
	}
	slices.Sort(names) // by time, as they are named
	for len(names) > max(1, c.Backup.Keep) {
		if err := os.Remove(filepath.Join(folder, names[0])); err != nil {
			return file, fmt.Errorf("cannot remove an old backup: %w", err)
		}
		names = names[1:]
	}
	return file, nil
}

// jobBackup is the clockwork job of the copies, by its name in the
// configuration.
const jobBackup = "backup"

// backupRetry is the time from a backup that failed to the next try.
const backupRetry = 10 * time.Minute

// backupDue makes the copy that has come due.
func (s *service) backupDue(ctx context.Context, now time.Time) {
	c := *s.settings.Load()
	if c.Jobs.Backup == "" || now.Before(s.backupAgain) {
		return
	}
	slot, due, err := dueSlot(ctx, s.db, c, now)
	if err == nil && due {
		var file string
		if file, err = backUp(ctx, c, s.db, now, func(int, int) {}); err == nil {
			s.log.Info("backup", "file", file)
			err = s.db.Write(ctx, func(tx *store.Tx) error { return tx.KeepSlot(jobBackup, slot) })
		}
	}
	if err != nil && ctx.Err() == nil {
		s.backupAgain = now.Add(backupRetry)
		s.log.Error("backup", "error", err)
	}
}

// dueSlot returns the slot of the backup that has come due, if one has. Nothing
// was due before the bot first ran.
func dueSlot(ctx context.Context, db *store.DB, c config.Config, now time.Time) (slot time.Time, due bool, err error) {
	plan, err := schedule.New(c.Shop.Zone, map[string]string{jobBackup: c.Jobs.Backup})
	if err != nil {
		return slot, false, err
	}
	var last time.Time
	var known bool
	err = db.Read(ctx, func(tx *store.Tx) (err error) {
		last, known, err = tx.LastSlot(jobBackup)
		return err
	})
	if err == nil && !known {
		return slot, false, db.Write(ctx, func(tx *store.Tx) error { return tx.KeepSlot(jobBackup, now) })
	}
	if err != nil {
		return slot, false, err
	}
	slot, _, due = plan.Due(jobBackup, last, now)
	return slot, due, nil
}
