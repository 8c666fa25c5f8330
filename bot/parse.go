package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"

	"github.com/spf13/cobra"

	"lazyhand/assess"
	"lazyhand/intents"
)

// defaultToday is the day that messages count from when neither the line nor
// the flag tells one; a fixed day, so that the same input has the same output.
const defaultToday = "2026-06-15"

func (p *program) parseCommand() *cobra.Command {
	var today string
	var why bool
	cmd := &cobra.Command{
		Use:   "parse",
		Short: "Read messages, print what each one means as JSON",
		Long: `Parse reads one message a line from standard input and prints one frame a
line: the site and what was said about it. A line is plain text, or a JSON
object {"text": …, "context": {"site": …, "today": …}}; when the first line is
JSON, all of them must be.

It reads no record and no clock, and of the configuration only a file that
--config names (for the shop's own words): relative dates count from the line's own
"today", else from --today. A line of bad JSON gives {} and a message with its
number, and the exit code is 1 at the end.`,
		Example: `  echo "92 rear tap, heater idle, 123 Elm" | lazyhand parse
  lazyhand parse --today 2026-03-02 < messages.txt
  echo '{"text":"PRV is 12 yrs old","context":{"today":"2026-03-02"}}' | lazyhand parse`,
		Args: noWords,
		RunE: func(cmd *cobra.Command, _ []string) error {
			day, err := assess.ParseDate(today)
			if err != nil {
				return fmt.Errorf("--today: %w", err)
			}
			settings, err := p.pureSettings()
			if err != nil {
				return err
			}
			parser, err := intents.New(wordsOf(settings)...)
			if err != nil {
				return err
			}
			if why {
				return eachLine(cmd.Context(), p.in, p.out, p.errOut, explainLines(parser, day))
			}
			return eachLine(cmd.Context(), p.in, p.out, p.errOut, parseLines(parser, day))
		},
	}
	cmd.Flags().StringVar(&today, "today", defaultToday, "the day that messages without one were sent")
	cmd.Flags().BoolVar(&why, "why", false, "print below each frame which words gave what, and what lost")
	return cmd
}

// explainLines reads one message after the other, as text, and writes under
// each frame how it came about.
func explainLines(parser *intents.Parser, today assess.Date) func([]byte) ([]byte, error) {
	return func(line []byte) ([]byte, error) {
		var msg struct {
			Text    string          `json:"text"`
			Context intents.Context `json:"context"`
		}
		if json.Unmarshal(line, &msg) != nil {
			msg.Text = string(line)
		}
		if msg.Context.Today.IsZero() {
			msg.Context.Today = today
		}
		frame, whys := parser.Explain(msg.Text, msg.Context)
		out, err := marshal(frame)
		if err != nil {
			return nil, err
		}
		for _, w := range whys {
			out = append(out, "\n  "+w.String()...)
		}
		return out, nil
	}
}

// parseLines returns what reads one line after the other. A line that begins
// with a brace is JSON; in a stream that begins with one every line is, so that
// a torn line is not taken for a message.
func parseLines(parser *intents.Parser, today assess.Date) func([]byte) ([]byte, error) {
	first, allJSON := true, false
	return func(line []byte) ([]byte, error) {
		brace := bytes.HasPrefix(bytes.TrimLeft(line, " \t"), []byte("{"))
		if first {
			first, allJSON = false, brace
		}
		if !brace && !allJSON {
			return marshal(parser.Parse(string(line), intents.Context{Today: today}))
		}
		return parseJSON(parser, line, today)
	}
}

// parseJSON reads one message in JSON.
func parseJSON(parser *intents.Parser, line []byte, today assess.Date) ([]byte, error) {
	var msg struct {
		Text    *string         `json:"text"`
		Context intents.Context `json:"context"`
	}
	if err := json.Unmarshal(line, &msg); err != nil {
		return nil, fmt.Errorf("this is no message in JSON: %w", plainJSON(err))
	}
	if msg.Text == nil {
		return nil, errors.New(`this message has no "text"`)
	}
	if msg.Context.Today.IsZero() {
		msg.Context.Today = today
	}
	return marshal(parser.Parse(*msg.Text, msg.Context))
}

// marshal writes v as JSON on one line and leaves < > & as they are.
func marshal(v any) ([]byte, error) {
	var b bytes.Buffer
	enc := json.NewEncoder(&b)
	enc.SetEscapeHTML(false)
	if err := enc.Encode(v); err != nil {
		return nil, fmt.Errorf("cannot write the result: %w", err)
	}
	return bytes.TrimSuffix(b.Bytes(), []byte("\n")), nil
}

// plainJSON says what is wrong with JSON in fewer words of Go's.
func plainJSON(err error) error {
	var syntax *json.SyntaxError
	var kind *json.UnmarshalTypeError
	switch {
	case err.Error() == "unexpected end of JSON input":
		return errors.New("it ends too early")
	case errors.As(err, &kind) && kind.Field != "":
		return fmt.Errorf("%q must not be a %s", kind.Field, kind.Value)
	case errors.As(err, &kind):
		return fmt.Errorf("expected an object, found a %s", kind.Value)
	case errors.As(err, &syntax) && syntax.Offset > 0:
		return fmt.Errorf("%w (at character %d)", err, syntax.Offset)
	}
	return err
}
