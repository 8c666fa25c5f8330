package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"strings"

	"github.com/spf13/cobra"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/bot/paper"
	"lazyhand/config"
	"lazyhand/store"
)

// painterOf draws in the shop's name.
func painterOf(c config.Config) paper.Painter {
	return paper.Painter{Shop: c.Shop.Name, Phone: c.Shop.Phone}
}

func (p *program) plotCommand() *cobra.Command {
	var out, language string
	cmd := &cobra.Command{
		Use:   "plot HOUSE --out FILE.png",
		Short: "Draw a house's readings over time",
		Long: `Plot draws the readings of a house over time as a picture of 1080 by 720 pixels:
what may be believed of each by its shape, the band, work on the regulator, the
trend and when it leaves the band. The picture in words goes to the terminal. It
may run while the bot does.`,
		Example: `  lazyhand plot 123 Elm St --out elm.png
  lazyhand plot 123 Elm St --out elm.png --language es`,
		RunE: func(cmd *cobra.Command, args []string) error {
			return p.ofHouse(cmd.Context(), args, language, out, ".png", func(paint paper.Painter, h desk.House) ([]byte, string, error) {
				pic, err := paint.Plot(h)
				return pic.PNG, pic.Alt, err
			})
		},
	}
	paperFlags(cmd, &out, &language)
	return cmd
}

// paperFlags are the flags of what is drawn.
func paperFlags(cmd *cobra.Command, out, language *string) {
	cmd.Flags().StringVar(out, "out", "", "file to write")
	cmd.Flags().StringVar(language, "language", "", "en or es (default: the shop's)")
}

// languageOf reads a language that a person chose.
func languageOf(chosen string, c config.Config) (assess.Lang, error) {
	if chosen == "" {
		return assess.Lang(c.Shop.Language), nil
	}
	if err := config.OneOf(string(assess.English), string(assess.Spanish))(chosen); err != nil {
		return "", fmt.Errorf("--language: %w", err)
	}
	return assess.Lang(chosen), nil
}

// ofHouse draws something of a house that is on record into a file, and prints
// its words.
func (p *program) ofHouse(ctx context.Context, house []string, language, out, ending string, draw func(paper.Painter, desk.House) (data []byte, words string, err error)) error {
	if len(house) == 0 {
		return errors.New("name the house: number and street, like 123 Elm St")
	}
	if out == "" {
		return fmt.Errorf("say which file to write: --out FILE%s", ending)
	}
	return p.reading(ctx, func(c config.Config, db *store.DB) error {
		lang, err := languageOf(language, c)
		if err != nil {
			return err
		}
		d, err := desk.New(db, deskOptions(c))
		if err != nil {
			return err
		}
		h, err := d.House(ctx, strings.Join(house, " "), assess.DateOf(p.now().In(c.Shop.Zone)), lang)
		if err != nil {
			return err
		}
		data, words, err := draw(painterOf(c), h)
		if err != nil {
			return err
		}
		if err := os.WriteFile(out, data, 0o600); err != nil {
			return fmt.Errorf("cannot write the file: %w", err)
		}
		_, err = fmt.Fprintf(p.out, "%s\n%s\n", out, words)
		return err
	})
}
