package main

import (
	"github.com/spf13/cobra"

	"lazyhand/bot/desk"
	"lazyhand/bot/paper"
)

func (p *program) sheetCommand() *cobra.Command {
	var out, language string
	cmd := &cobra.Command{
		Use:   "sheet HOUSE --out FILE.pdf",
		Short: "Write the customer's sheet of a house",
		Long: `Sheet writes one page for the people who live in a house: what was measured and
where, what it means in plain words, the plot, the ages of regulator and heater,
what was done, what is advised and by when, and what to take care of. The shop's
name and phone come from the configuration. Read it over before you hand it out.
It may run while the bot does.`,
		Example: `  lazyhand sheet 123 Elm St --out elm.pdf
  lazyhand sheet 123 Elm St --out elm.pdf --language es`,
		RunE: func(cmd *cobra.Command, args []string) error {
			return p.ofHouse(cmd.Context(), args, language, out, ".pdf", func(paint paper.Painter, h desk.House) ([]byte, string, error) {
				f, err := paint.Sheet(h)
				return f.Data, f.Title, err
			})
		},
	}
	paperFlags(cmd, &out, &language)
	return cmd
}
