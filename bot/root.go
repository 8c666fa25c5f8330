package main

import (
	"context"
	"errors"
	"fmt"
	"strings"

	"github.com/spf13/cobra"
)

// rootCommand puts the commands together.
func (p *program) rootCommand() *cobra.Command {
	root := &cobra.Command{
		Use:   "lazyhand",
		Short: "Keep a shop's water pressure readings and say what they mean",
		Long: `Lazyhand reads what a plumbing crew writes ("92 rear tap, heater idle,
123 Elm"), keeps it, says what it means and reminds the team of what is due.

With no command it is a chat in the terminal. It also answers piped lines.`,
		Example: `  lazyhand
  echo "92 rear tap, heater idle, 123 Elm" | lazyhand
  lazyhand --db shop.db`,
		SilenceUsage:  true,
		SilenceErrors: true,
		Args:          noWords,
		RunE: func(cmd *cobra.Command, _ []string) error {
			err := chat(cmd.Context(), p)
			if cmd.Context().Err() != nil && errors.Is(err, context.Canceled) {
				return nil // told to stop before it had begun
			}
			return err
		},
	}
	root.SetIn(p.in)
	root.SetOut(p.out)
	root.SetErr(p.errOut)
	root.PersistentFlags().StringVar(&p.configFile, "config", "", "configuration file (default: the user's own, see lazyhand init)")
	root.PersistentFlags().StringVar(&p.dbFile, "db", "", "file of the record (default: in the user's data folder)")
	root.PersistentFlags().StringArrayVar(&p.set, "set", nil, "set one key of the configuration, as shop.language=es")
	root.SetFlagErrorFunc(func(cmd *cobra.Command, err error) error {
		return fmt.Errorf("%w: see %s --help", err, cmd.CommandPath())
	})
	root.CompletionOptions.DisableDefaultCmd = true // ours has examples
	root.SetHelpCommand(p.helpCommand(root))
	root.AddCommand(p.parseCommand(), p.assessCommand(), p.serveCommand(), p.practiceCommand(), p.manifestCommand(), p.initCommand(), p.checkCommand(), p.serviceCommand(),
		p.historyCommand(), p.searchCommand(), p.listCommand(), p.summaryCommand(), p.plotCommand(), p.sheetCommand(), p.exportCommand(), p.importCommand(), p.backupCommand(),
		p.rebuildCommand(), p.forgetCommand(), p.misreadCommand(), p.sameCommand(),
		p.versionCommand(), p.completionCommand(root))
	return root
}

// noWords refuses words after a command, and says which command may have been
// meant.
func noWords(cmd *cobra.Command, args []string) error {
	if len(args) == 0 {
		return nil
	}
	if near := cmd.SuggestionsFor(args[0]); len(near) > 0 {
		return fmt.Errorf("there is no command %q: did you mean %s?", args[0], strings.Join(near, " or "))
	}
	return fmt.Errorf("%q is not understood here: see %s --help", args[0], cmd.CommandPath())
}
