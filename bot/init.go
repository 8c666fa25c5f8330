package main

import (
	"fmt"
	"io"
	"os"

	"github.com/spf13/cobra"

	"lazyhand/config"
)

func (p *program) initCommand() *cobra.Command {
	var show bool
	cmd := &cobra.Command{
		Use:   "init",
		Short: "Write a configuration file to fill in",
		Long: `Init writes the configuration file with every key at its default and a comment
that says what it is. It never replaces a file.`,
		Example: `  lazyhand init
  lazyhand init --config shop.yaml
  lazyhand init --print`,
		Args: noWords,
		RunE: func(*cobra.Command, []string) error {
			if show {
				_, err := io.WriteString(p.out, config.Document())
				return err
			}
			file, _, err := config.FileFor(p.configFile, os.Environ())
			if err != nil {
				return err
			}
			if err := config.Write(file); err != nil {
				return err
			}
			fmt.Fprintf(p.out, "Wrote %s. Fill in what is yours, then look it over with: lazyhand check\n", file)
			return nil
		},
	}
	cmd.Flags().BoolVar(&show, "print", false, "print it instead")
	return cmd
}
