package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"lazyhand/bot/slackchat"
	"lazyhand/config"
)

func (p *program) manifestCommand() *cobra.Command {
	var address string
	cmd := &cobra.Command{
		Use:   "manifest",
		Short: "Print the Slack app's manifest",
		Long: `Manifest prints what to paste at api.slack.com/apps, Create New App, From a
manifest. It asks for the least scopes that the configuration needs; lazyhand
check says later whether the app has them.

With --url the app sends requests to that address instead of waiting for a
socket; slack.listen is then where the bot listens behind it.`,
		Example: `  lazyhand manifest
  lazyhand manifest --url https://bot.example.com/slack`,
		Args: noWords,
		RunE: func(*cobra.Command, []string) error {
			c, err := p.settings()
			if err != nil {
				return err
			}
			uses := slackUses(c.Slack)
			uses.RequestURL = address
			raw, err := slackchat.Manifest(uses)
			if err != nil {
				return err
			}
			_, err = fmt.Fprintf(p.out, "%s\n", raw)
			return err
		},
	}
	cmd.Flags().StringVar(&address, "url", "", "https address at which Slack reaches the bot (default: Socket Mode)")
	return cmd
}

// slackUses tells what of Slack the settings make use of.
func slackUses(s config.Slack) slackchat.Uses {
	return slackchat.Uses{Groups: len(slackGroups(s)) > 0}
}

// isGroup tells whether an id is that of a user group.
func isGroup(id string) bool { return strings.HasPrefix(id, "S") }
