package main

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/store"
)

// Places of the chat in the terminal: the person's own line, and the two
// channels that a shop would have.
const (
	terminalChannel  = "@terminal"
	terminalDispatch = "dispatch"
	terminalTeam     = "team"
)

// chat is a conversation with the bot in the terminal, one message a line,
// until the input ends. Piped lines are answered in the same way.
func chat(ctx context.Context, p *program) (err error) {
	settings, err := p.settings()
	if err != nil {
		return err
	}
	path, err := settings.RecordFile()
	if err != nil {
		return err
	}
	_, missing := os.Stat(path)
	db, err := store.Open(ctx, path)
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, db.Close()) }()
	if errors.Is(missing, os.ErrNotExist) {
		fmt.Fprintf(p.errOut, "The record is kept in %s (choose another with --db).\n", path)
	}
	d, err := desk.New(db, terminalOptions(settings))
	if err != nil {
		return err
	}
	t := &terminal{out: p.out}
	if prompts(p.in) {
		t.prompt = "you> "
		fmt.Fprintln(p.out, "Tell me a reading, such as: 92 rear tap, heater idle, 123 Elm    (help, Ctrl-D ends)")
	}
	return t.converse(ctx, d, interruptible(ctx, p.in), p.now)
}

// prompts tells whether a person sits at the input.
func prompts(in io.Reader) bool {
	f, ok := in.(*os.File)
	if !ok {
		return false
	}
	info, err := f.Stat()
	return err == nil && info.Mode()&os.ModeCharDevice != 0
}

// terminal is the terminal as a desk.Chat.
type terminal struct {
	out    io.Writer
	prompt string
	n      int
	aside  []string // said in other channels, shown after the answer
}

// longest is the longest message that the terminal hands on; a longer one is
// cut, and the bot then says what it makes of it.
const longest = 40_000

func (t *terminal) converse(ctx context.Context, d *desk.Desk, in io.Reader, now func() time.Time) error {
	r := bufio.NewReaderSize(in, longest)
	for n := 0; ctx.Err() == nil; n++ {
		if err := t.rest(ctx, d, now()); err != nil {
			if ctx.Err() != nil {
				return nil
			}
			return err
		}
		fmt.Fprint(t.out, t.prompt)
		text, err := line(r)
		if ctx.Err() != nil {
			return nil // told to stop; a torn line is nobody's message
		}
		if strings.TrimSpace(text) != "" {
			at := now()
			ts := fmt.Sprintf("%d.%06d", at.UnixNano(), n)
			m := desk.Message{Key: terminalChannel + "/" + ts, Kind: store.Said, Channel: terminalChannel, Direct: true, TS: ts,
				Author: "you", At: at, Text: text}
			if err := d.Take(ctx, m); err != nil {
				return err
			}
		}
		switch {
		case errors.Is(err, io.EOF):
			return t.rest(ctx, d, now())
		case err != nil:
			return fmt.Errorf("cannot read the input: %w", err)
		}
	}
	return nil
}

// line reads one line; what is longer than longest is passed over.
func line(r *bufio.Reader) (string, error) {
	head, more, err := r.ReadLine()
	text := string(head)
	for more && err == nil {
		_, more, err = r.ReadLine()
	}
	return text, err
}

// rest lets the bot say all that it has to say now.
func (t *terminal) rest(ctx context.Context, d *desk.Desk, now time.Time) error {
	if err := d.Tick(ctx, now); err != nil {
		return err
	}
	for more := true; more; {
		var err error
		if more, err = d.Send(ctx, now, t); err != nil {
			return err
		}
	}
	for _, text := range t.aside {
		if _, err := fmt.Fprintln(t.out, text); err != nil {
			return fmt.Errorf("cannot write the answer: %w", err)
		}
	}
	t.aside = nil
	return nil
}

// Post prints what the bot says; what is meant for another channel carries its
// name.
func (t *terminal) Post(_ context.Context, p desk.Post) (string, error) {
	t.n++
	if p.Kind == desk.React {
		return "", nil
	}
	text := p.Body.Text()
	if p.Channel != terminalChannel {
		t.aside = append(t.aside, "["+p.Channel+"] "+text)
	} else if _, err := fmt.Fprintln(t.out, text); err != nil {
		return "", err
	}
	if f := p.Body.File; f != nil {
		if err := t.keep(*f); err != nil {
			return "", err
		}
	}
	return fmt.Sprintf("printed.%d", t.n), nil
}

// keep writes a paper into the folder that a person at the terminal works in;
// where nobody sits, it says how to have it written.
func (t *terminal) keep(f desk.File) error {
	if t.prompt == "" {
		_, err := fmt.Fprintf(t.out, "(%s: lazyhand sheet HOUSE --out %s)\n", f.Title, f.Name)
		return err
	}
	if err := os.WriteFile(f.Name, f.Data, 0o600); err != nil {
		_, err = fmt.Fprintf(t.out, "(the paper could not be written: %v)\n", err)
		return err
	}
	_, err := fmt.Fprintf(t.out, "(%s)\n", f.Name)
	return err
}

// Find never finds: what was printed for certain is marked at once, and what
// was cut off in between is better printed twice than not at all.
func (t *terminal) Find(context.Context, desk.Post) (string, bool, error) { return "", false, nil }
