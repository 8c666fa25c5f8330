package main

import (
	"encoding/json"
	"fmt"

	"github.com/spf13/cobra"

	"lazyhand/assess"
	"lazyhand/intents"
)

func (p *program) assessCommand() *cobra.Command {
	var today, lang string
	var figures bool
	cmd := &cobra.Command{
		Use:   "assess",
		Short: "Judge houses from their visits, as JSON",
		Long: `Assess reads one house a line from standard input, a JSON object
{"id": …, "today": …, "visits": [{"date": …, "frame": …}]}, and prints one
assessment a line in the same order. The last visit is judged, those before it
are the history. Optional keys: "shop" (band_psi, gauge, service_years), "lives"
(the shop's own valve lives) and "neighbours" (street pressures nearby).

With --figures each house also gets "figures": what heating does to the
pressure, what a lower one saves, what is left two floors up, what a hammering
valve adds, where the street stands, what the shop's record says of the age.

It reads no record and no clock, and of the configuration only a file that
--config names. A line of bad JSON gives {} and a message with
its number, and the exit code is 1 at the end.`,
		Example: `  lazyhand assess < houses.jsonl
  lazyhand assess --today 2026-06-15 --lang es < houses.jsonl
  echo '{"id":"a1","today":"2026-06-15","visits":[{"date":"2026-06-15","frame":{"site":"123 Elm St","statements":[{"kind":"reading","psi":92,"point":"laundry","heater":"idle"}]}}]}' | lazyhand assess`,
		Args: noWords,
		RunE: func(cmd *cobra.Command, _ []string) error {
			day, err := assess.ParseDate(today)
			if err != nil {
				return fmt.Errorf("--today: %w", err)
			}
			if l := assess.Lang(lang); l != assess.English && l != assess.Spanish {
				return fmt.Errorf("--lang %q is not spoken here: use en or es", lang)
			}
			settings, err := p.pureSettings()
			if err != nil {
				return err
			}
			base := assess.Input{Today: day, Shop: shopOf(settings), Lang: assess.Lang(lang)}
			return eachLine(cmd.Context(), p.in, p.out, p.errOut, func(line []byte) ([]byte, error) {
				return assessLine(line, base, figures)
			})
		},
	}
	cmd.Flags().BoolVar(&figures, "figures", false, "add the figures that explain the house")
	cmd.Flags().StringVar(&today, "today", defaultToday, "the day of houses that come without one")
	cmd.Flags().StringVar(&lang, "lang", string(assess.English), "language of the sentences: en or es")
	return cmd
}

// houseJSON is one house as the assess command takes it.
type houseJSON struct {
	ID     json.RawMessage `json:"id"`
	Today  assess.Date     `json:"today"`
	Visits []struct {
		Date  assess.Date   `json:"date"`
		Frame intents.Frame `json:"frame"`
	} `json:"visits"`
	Shop       assess.Shop        `json:"shop"`
	Lives      []lifeJSON         `json:"lives"`
	Neighbours []assess.Neighbour `json:"neighbours"`
}

type lifeJSON struct {
	Years float64 `json:"years"`
	Ended bool    `json:"ended"`
}

// assessLine judges one house, with its figures when they are asked for; what
// its line does not say is as in base.
func assessLine(line []byte, base assess.Input, figures bool) ([]byte, error) {
	house := houseJSON{Today: base.Today}
	if err := json.Unmarshal(line, &house); err != nil {
		return nil, fmt.Errorf("this is no house in JSON: %w", plainJSON(err))
	}
	in := base
	in.Shop, in.Neighbours = shopOver(house.Shop, base.Shop), house.Neighbours
	if !house.Today.IsZero() {
		in.Today = house.Today
	}
	if b := in.Shop.BandPSI; b != [2]float64{} && !(0 < b[0] && b[0] < b[1]) {
		return nil, fmt.Errorf(`"shop.band_psi" must be two pressures, the lower first, not %v`, b)
	}
	for i, v := range house.Visits {
		if v.Date.IsZero() {
			return nil, fmt.Errorf(`visit %d has no "date"`, i+1)
		}
		in.Visits = append(in.Visits, v.Frame.Visit(v.Date))
	}
	for _, l := range house.Lives {
		in.Lives = append(in.Lives, assess.Life(l))
	}
	out := struct {
		ID json.RawMessage `json:"id"`
		assess.Assessment
		Figures []assess.Figure `json:"figures,omitempty"`
	}{ID: house.ID, Assessment: assess.Assess(in)}
	if figures {
		out.Figures = assess.Figures(in, out.Assessment)
	}
	return marshal(out)
}

// shopOver returns shop with what it leaves open taken from base.
func shopOver(shop, base assess.Shop) assess.Shop {
	if shop.BandPSI == [2]float64{} {
		shop.BandPSI = base.BandPSI
	}
	if shop.Gauge.Grade == "" {
		shop.Gauge.Grade = base.Gauge.Grade
	}
	if shop.Gauge.SpanPSI == 0 {
		shop.Gauge.SpanPSI = base.Gauge.SpanPSI
	}
	if shop.ServiceYears == [2]float64{} {
		shop.ServiceYears = base.ServiceYears
	}
	if shop.TankTopPSI == 0 {
		shop.TankTopPSI = base.TankTopPSI
	}
	if shop.BaseRates == nil {
		shop.BaseRates = base.BaseRates
	}
	return shop
}
