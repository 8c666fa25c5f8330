package main

import (
	"fmt"

	"github.com/spf13/cobra"
)

func (p *program) completionCommand(root *cobra.Command) *cobra.Command {
	return &cobra.Command{
		Use:       "completion bash|zsh|fish|powershell",
		Short:     "Print what makes a shell complete commands",
		Long:      `Completion prints a script that makes a shell complete commands and flags.`,
		ValidArgs: []string{"bash", "zsh", "fish", "powershell"},
		Example: `  lazyhand completion bash > ~/.local/share/bash-completion/completions/lazyhand
  lazyhand completion zsh > "${fpath[1]}/_lazyhand"
  lazyhand completion fish > ~/.config/fish/completions/lazyhand.fish`,
		RunE: func(_ *cobra.Command, args []string) error {
			if len(args) == 1 {
				switch args[0] {
				case "bash":
					return root.GenBashCompletionV2(p.out, true)
				case "zsh":
					return root.GenZshCompletion(p.out)
				case "fish":
					return root.GenFishCompletion(p.out, true)
				case "powershell":
					return root.GenPowerShellCompletionWithDesc(p.out)
				}
			}
			return fmt.Errorf("name one shell: bash, zsh, fish or powershell")
		},
	}
}

// helpCommand is help as a command, for those who do not think of --help.
func (p *program) helpCommand(root *cobra.Command) *cobra.Command {
	return &cobra.Command{
		Use:   "help [command]",
		Short: "Explain a command",
		Long:  "Help explains a command, as its --help does.",
		Example: `  lazyhand help
  lazyhand help parse`,
		RunE: func(_ *cobra.Command, args []string) error {
			cmd, rest, err := root.Find(args)
			if err != nil || len(rest) > 0 {
				return fmt.Errorf("there is no command %q: lazyhand help lists them", args[0])
			}
			return cmd.Help()
		},
	}
}
