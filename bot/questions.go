package main

import (
	"context"
	"encoding/json"
	"fmt"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"lazyhand/assess"
	"lazyhand/config"
	"lazyhand/intents"
	"lazyhand/store"
)

func (p *program) historyCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "history HOUSE",
		Short: "Show all that was said about a house",
		Long: `History shows all that was said about a house, oldest first, also what was
edited, deleted or taken back since. It may run while the bot does.`,
		Example: `  lazyhand history 123 Elm St`,
		RunE: func(cmd *cobra.Command, args []string) error {
			return p.reading(cmd.Context(), func(c config.Config, db *store.DB) error {
				site, err := houseIn(c, args)
				if err != nil {
					return err
				}
				return db.Read(cmd.Context(), func(tx *store.Tx) error {
					house, err := onRecord(tx, site)
					if err != nil {
						return err
					}
					list, err := tx.Story(house.ID)
					if err != nil {
						return err
					}
					fmt.Fprintln(p.out, house.Line)
					return p.show(tx, c, list)
				})
			})
		},
	}
}

// show prints messages, one a line.
func (p *program) show(tx *store.Tx, c config.Config, list []store.Message) error {
	for _, m := range list {
		who, err := tx.Person(m.Author)
		if err != nil {
			return err
		}
		name := who.Name
		if name == "" {
			name = m.Author
		}
		state := ""
		switch m.State {
		case store.Waiting, store.SetAside:
			state = " [not understood]"
		case store.Replaced:
			state = " [edited since]"
		case store.Retracted:
			state = " [taken back]"
		}
		if _, err := fmt.Fprintf(p.out, "%s  %s: %s%s\n", m.At.In(c.Shop.Zone).Format("2006-01-02 15:04"), oneLine(name), oneLine(m.Text), state); err != nil {
			return err
		}
	}
	return nil
}

func (p *program) searchCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "search WORDS",
		Short: "Find messages by their words",
		Long: `Search shows the newest messages that hold all of the words; a word that ends in
* stands for all that begin so. It may run while the bot does.`,
		Example: `  lazyhand search black specks
  lazyhand search 'hammer*'`,
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) == 0 {
				return fmt.Errorf("name the words to look for: see %s --help", cmd.CommandPath())
			}
			return p.reading(cmd.Context(), func(c config.Config, db *store.DB) error {
				return db.Read(cmd.Context(), func(tx *store.Tx) error {
					list, err := tx.Search(strings.Join(args, " "), 50)
					if err != nil {
						return err
					}
					return p.show(tx, c, list)
				})
			})
		},
	}
}

// lists are the questions about all houses, each a list.
var lists = []string{"due", "open", "worst", "unfinished", "set-aside", "street"}

func (p *program) listCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "list due|open|worst|unfinished|set-aside|street NAME",
		Short: "List what is due, open, worst or unfinished, or a street's readings",
		Long: `List shows, for all houses: follow-ups that are due, alerts that are open, the
houses farthest outside the band, visits on which work was done and nothing fair
was read after it, messages that made the bot fail, or all readings on a street.
It may run while the bot does.`,
		Example: `  lazyhand list due
  lazyhand list worst
  lazyhand list street Elm`,
		ValidArgs: lists,
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) == 0 {
				return fmt.Errorf("say which list: %s", strings.Join(lists, ", "))
			}
			return p.reading(cmd.Context(), func(c config.Config, db *store.DB) error {
				return db.Read(cmd.Context(), func(tx *store.Tx) error { return p.list(tx, c, args[0], args[1:]) })
			})
		},
	}
}

// mostLines is how long a list may be.
const mostLines = 200

func (p *program) list(tx *store.Tx, c config.Config, which string, more []string) error {
	today := assess.DateOf(p.now().In(c.Shop.Zone))
	line := func(format string, args ...any) { fmt.Fprintf(p.out, format+"\n", args...) }
	if len(more) > 0 && which != "street" {
		return fmt.Errorf("%q is not understood: see lazyhand list --help", strings.Join(more, " "))
	}
	switch which {
	case "due":
		list, err := tx.DueFollowUps(today, mostLines)
		for _, f := range list {
			line("%s  %s: %s (%s)", f.Due, f.Line, strings.ReplaceAll(string(f.Action), "_", " "), oneLine(f.Why))
		}
		return err
	case "open":
		list, err := tx.OpenAlerts()
		for _, a := range list {
			house, err := tx.Site(a.Site)
			if err != nil {
				return err
			}
			line("%s  %s: %s, %s (%s)", a.RaisedAt.In(c.Shop.Zone).Format("2006-01-02 15:04"), house.Line, a.Urgency, a.State, a.Codes)
		}
		return err
	case "worst":
		list, err := tx.WorstSites(mostLines)
		for _, w := range list {
			line("%s: %g psi, %g outside the band", w.Line, w.PSI, w.Outside)
		}
		return err
	case "unfinished":
		list, err := tx.UnfinishedVisits(today.AddDays(-365), mostLines)
		for _, u := range list {
			line("%s  %s: work was done, and nothing fair was read after it", u.Day, u.Line)
		}
		return err
	case "set-aside":
		list, err := tx.Stuck(store.SetAside, mostLines)
		for _, m := range list {
			line("%s  %s: %s (%s)", m.At.In(c.Shop.Zone).Format("2006-01-02 15:04"), oneLine(m.Author), oneLine(m.Text), oneLine(m.Error))
		}
		return err
	case "street":
		if len(more) == 0 {
			return fmt.Errorf("name the street, like: lazyhand list street Elm")
		}
		street := assess.Site{Line: "1 " + strings.Join(more, " ")}.Street()
		list, err := tx.ReadingsOfStreet(street, today.AddDays(-10*365), mostLines)
		for _, r := range list {
			line("%s  %s: %g psi at %s, %s side, fair: %s", r.Day, r.Line, r.PSI, strings.ReplaceAll(string(r.Point), "_", " "), r.Side, r.Fair)
		}
		return err
	}
	return config.OneOf(lists...)(which)
}

func (p *program) misreadCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "misread",
		Short: "Print the messages that people had to put right",
		Long: `Misread prints each message that a person put right, as JSON: its text and
context, the frame as it should have been read, and as it was. The next version's
parser is tested on them. They hold addresses: treat them as the shop's own.`,
		Example: `  lazyhand misread > misread.jsonl`,
		Args:    noWords,
		RunE: func(cmd *cobra.Command, _ []string) error {
			return p.reading(cmd.Context(), func(c config.Config, db *store.DB) error { return p.misread(cmd.Context(), c, db) })
		},
	}
}

func (p *program) misread(ctx context.Context, c config.Config, db *store.DB) error {
	const some = 500
	for after := int64(0); ; {
		var list []store.Misread
		err := db.Read(ctx, func(tx *store.Tx) (err error) {
			list, err = tx.Misread(after, some)
			return err
		})
		if err != nil {
			return err
		}
		for _, m := range list {
			after = m.ID
			context := map[string]string{"today": m.At.In(c.Shop.Zone).Format(time.DateOnly)}
			var frame intents.Frame
			if err := json.Unmarshal(m.Right, &frame); err == nil && frame.Site == "" && m.Line != "" {
				context["site"] = m.Line // the thread's, which the message leaves out
			}
			line, err := marshal(struct {
				Text    string            `json:"text"`
				Context map[string]string `json:"context"`
				Frame   json.RawMessage   `json:"frame"`
				Was     json.RawMessage   `json:"was"`
			}{m.Text, context, m.Right, m.Was})
			if err != nil {
				return err
			}
			if _, err := fmt.Fprintf(p.out, "%s\n", line); err != nil {
				return err
			}
		}
		if len(list) < some {
			return nil
		}
	}
}
