package main

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"lazyhand/assess"
	"lazyhand/config"
	"lazyhand/store"
)

// checked is one thing that was looked at.
type checked struct {
	Name  string       `json:"name"`
	State checkedState `json:"state"`
	Says  string       `json:"says"`
}

type checkedState string

const (
	fine      checkedState = "ok"
	attention checkedState = "attention" // somebody should look at it; no failure
	fault     checkedState = "fault"
	unset     checkedState = "not configured"
)

// Limits of the checks.
const (
	leastDisk  = 200 << 20 // bytes free
	outboxWait = 15 * time.Minute
)

func (p *program) checkCommand() *cobra.Command {
	var asJSON bool
	cmd := &cobra.Command{
		Use:   "check",
		Short: "Look over the configuration, the record and the way to Slack",
		Long: `Check looks over the configuration, the record, the disk, the clock, Slack and
the last backup, and says a line about each. It changes nothing and may run
while the bot does. The exit code is 1 when there is a fault; what is not
configured is said and is none.`,
		Example: `  lazyhand check
  lazyhand check --json
  lazyhand check --config /etc/lazyhand/lazyhand.yaml --db /var/lib/lazyhand/lazyhand.db`,
		Args: noWords,
		RunE: func(cmd *cobra.Command, _ []string) error {
			list := p.check(cmd.Context())
			ok := true
			for _, c := range list {
				ok = ok && c.State != fault
			}
			if asJSON {
				line, err := marshal(map[string]any{"ok": ok, "version": thisBuild().version, "checks": list})
				if err != nil {
					return err
				}
				fmt.Fprintf(p.out, "%s\n", line)
			} else {
				for _, c := range list {
					fmt.Fprintf(p.out, "%-14s  %-13s  %s\n", c.State, c.Name, c.Says)
				}
			}
			if !ok {
				return errTold
			}
			return nil
		},
	}
	cmd.Flags().BoolVar(&asJSON, "json", false, "print one JSON object")
	return cmd
}

// check looks at everything once.
func (p *program) check(ctx context.Context) []checked {
	c, list := p.checkSettings()
	list = append(list, p.checkClock(c))
	file, err := c.RecordFile()
	if err != nil {
		return append(list, checked{"record", fault, err.Error()})
	}
	list = append(list, checkDisk(file))
	status, records := p.checkRecord(ctx, c, file)
	list = append(list, records...)
	list = append(list, p.checkBackup(c, file, status))
	return append(list, p.checkSlack(ctx, c)...)
}

// checkSettings lists every fault of the configuration; the other checks then
// go by the defaults.
func (p *program) checkSettings() (config.Config, []checked) {
	c, err := p.settings()
	var problems config.Problems
	switch {
	case errors.As(err, &problems):
		var list []checked
		for _, problem := range problems {
			list = append(list, checked{"configuration", fault, problem.String()})
		}
		c = config.Default()
		c.Record.File = p.dbFile
		return c, list
	case err != nil:
		c = config.Default()
		c.Record.File = p.dbFile
		return c, []checked{{"configuration", fault, err.Error()}}
	case c.File == "":
		return c, []checked{{"configuration", unset, "no file: the defaults hold (lazyhand init writes one)"}}
	}
	return c, []checked{{"configuration", fine, c.File}}
}

func (p *program) checkClock(c config.Config) checked {
	now := p.now().In(c.Shop.Zone)
	says := fmt.Sprintf("%s in %s", now.Format("2006-01-02 15:04 MST"), c.Shop.Zone)
	if made := thisBuild().day; made != "" && now.UTC().Format(time.DateOnly) < made {
		return checked{"clock", fault, says + ": that is before this program was made (" + made + "); set the machine's clock"}
	}
	if c.Shop.Zone == time.Local {
		says += ", this machine's zone; set shop.time_zone if the shop's is another"
	}
	return checked{"clock", fine, says}
}

// checkDisk looks at the disk that holds, or will hold, the record.
func checkDisk(file string) checked {
	dir := filepath.Dir(file)
	for {
		if _, err := os.Stat(dir); err == nil || dir == filepath.Dir(dir) {
			break
		}
		dir = filepath.Dir(dir)
	}
	free, err := freeBytes(dir)
	switch {
	case errors.Is(err, errors.ErrUnsupported):
		return checked{"disk", unset, "free space is not known on this system"}
	case err != nil:
		return checked{"disk", fault, fmt.Sprintf("%s cannot be looked at: %v", dir, err)}
	case free < leastDisk:
		return checked{"disk", fault, fmt.Sprintf("only %s free at %s: make room", size(int64(free)), dir)}
	}
	return checked{"disk", fine, fmt.Sprintf("%s free at %s", size(int64(free)), dir)}
}

// checkRecord looks at the record itself, and at what waits in it.
func (p *program) checkRecord(ctx context.Context, c config.Config, file string) (store.Status, []checked) {
	db, err := store.OpenReader(ctx, file)
	if errors.Is(err, fs.ErrNotExist) {
		return store.Status{}, []checked{{"record", unset, file + " is not there yet: the first message makes it"}}
	}
	if errors.Is(err, store.ErrOlder) {
		return store.Status{}, []checked{{"record", attention, err.Error()}}
	}
	if err != nil {
		return store.Status{}, []checked{{"record", fault, err.Error()}}
	}
	defer db.Close() // only read
	now := p.now()
	s, err := db.Status(ctx, assess.DateOf(now.In(c.Shop.Zone)))
	if err != nil {
		return s, []checked{{"record", fault, err.Error()}}
	}
	var list []checked
	faults, err := db.Integrity(ctx)
	says := fmt.Sprintf("%s, %s, version %d", file, size(s.Bytes), s.Version)
	switch {
	case err != nil:
		list = append(list, checked{"record", fault, err.Error()})
	case len(faults) > 0:
		list = append(list, checked{"record", fault, fmt.Sprintf("%s is damaged (%s): restore the last backup in its place", file, faults[0])})
	default:
		list = append(list, checked{"record", fine, says})
	}
	if info, err := os.Stat(file); err == nil && info.Mode().Perm()&0o077 != 0 {
		list = append(list, checked{"record", attention, fmt.Sprintf("others on this machine can read it: chmod 600 %s", file)})
	}
	outbox := checked{"outbox", fine, fmt.Sprintf("%d waiting, %d under way, %d given up", s.Ready, s.Sending, s.Dead)}
	if waited := now.Sub(s.OldestOpen); !s.OldestOpen.IsZero() && waited > outboxWait {
		outbox.State = fault
		outbox.Says += fmt.Sprintf(", the oldest for %s: is the bot running and connected?", waited.Round(time.Minute))
	} else if s.Dead > 0 {
		outbox.State = attention
	}
	list = append(list, outbox)
	set := checked{"messages", fine, fmt.Sprintf("%d set aside, %d to be tried again", s.Messages[store.SetAside], s.Messages[store.Waiting])}
	if s.Messages[store.SetAside] > 0 {
		set.State = attention
		set.Says += ": kept, but this version fails on them; lazyhand list set-aside shows them"
	}
	return s, append(list, set)
}

// checkBackup looks at the age of the newest copy of the record.
func (p *program) checkBackup(c config.Config, file string, s store.Status) checked {
	folder := c.BackupFolder(file)
	newest, err := newestBackup(folder)
	now := p.now()
	switch {
	case err != nil && !errors.Is(err, fs.ErrNotExist):
		return checked{"backup", fault, fmt.Sprintf("%s cannot be looked at: %v", folder, err)}
	case newest.IsZero() && c.Jobs.Backup == "":
		return checked{"backup", unset, "jobs.backup is off, and there is no copy in " + folder}
	case newest.IsZero() && !s.First.IsZero() && now.Sub(s.First) > c.Backup.StaleAfter:
		return checked{"backup", fault, fmt.Sprintf("there is none in %s: lazyhand backup makes one", folder)}
	case newest.IsZero():
		return checked{"backup", unset, "none yet in " + folder}
	case now.Sub(newest) > c.Backup.StaleAfter:
		return checked{"backup", fault, fmt.Sprintf("the last is %s old (%s): lazyhand backup makes one", now.Sub(newest).Round(time.Hour), folder)}
	}
	return checked{"backup", fine, fmt.Sprintf("the last is %s old, in %s", now.Sub(newest).Round(time.Minute), folder)}
}

// newestBackup returns when the newest copy in folder was made.
func newestBackup(folder string) (newest time.Time, err error) {
	entries, err := os.ReadDir(folder)
	for _, e := range entries {
		if info, err := e.Info(); err == nil && strings.HasSuffix(e.Name(), ".db") && info.Mode().IsRegular() && info.ModTime().After(newest) {
			newest = info.ModTime()
		}
	}
	return newest, err
}

// slackProbe asks Slack whether the tokens, scopes and channels are right.
type slackProbe func(context.Context, config.Slack) []checked

// checkSlack looks at what Slack needs, and asks Slack itself.
func (p *program) checkSlack(ctx context.Context, c config.Config) []checked {
	if !c.Slack.Configured() {
		return []checked{{"slack", unset, "the bot answers in the terminal only"}}
	}
	missing := missingOfSlack(c.Slack)
	if len(missing) > 0 {
		return []checked{{"slack", fault, "missing: " + strings.Join(missing, ", ")}}
	}
	list := []checked{}
	if c.Slack.DispatchChannel == "" {
		list = append(list, checked{"slack", attention, "no slack.dispatch_channel: alerts are posted nowhere"})
	}
	if c.Slack.TeamChannel == "" {
		list = append(list, checked{"slack", attention, "no slack.team_channel: follow-ups and summaries are posted nowhere"})
	}
	if p.probeSlack == nil {
		return append(list, checked{"slack", fine, "tokens are set; not tried"})
	}
	ctx, cancel := context.WithTimeout(ctx, 20*time.Second)
	defer cancel()
	return append(list, p.probeSlack(ctx, c.Slack)...)
}

// missingOfSlack names the keys without which the bot cannot join Slack.
func missingOfSlack(s config.Slack) []string {
	var missing []string
	need := func(ok bool, key string) {
		if !ok {
			missing = append(missing, key+" (or "+strings.TrimSuffix(config.EnvName(key), "_FILE")+")")
		}
	}
	need(s.BotToken.Set(), "slack.bot_token_file")
	if s.Listen == "" {
		need(s.AppToken.Set(), "slack.app_token_file")
	} else {
		need(s.SigningSecret.Set(), "slack.signing_secret_file")
	}
	return missing
}

// size writes a number of bytes for people.
func size(n int64) string {
	units := []string{"B", "KB", "MB", "GB", "TB"}
	x, u := float64(n), 0
	for x >= 1000 && u < len(units)-1 {
		x, u = x/1000, u+1
	}
	if u == 0 || x >= 100 {
		return fmt.Sprintf("%.0f %s", x, units[u])
	}
	return fmt.Sprintf("%.1f %s", x, units[u])
}
