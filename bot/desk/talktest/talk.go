// Package talktest runs the transcripts of testdata/talk, which specify the
// bot in the crew's own words. The same files run against the desk alone and
// through a chat platform: a World is either.
//
// A transcript is text. Lines at the margin happen to the bot, indented lines
// are what it says:
//
//	@ 2026-03-01 10:00             the clock shows this, in the shop's zone
//	ana #field: 84 rear, 12 Alder  ana starts a thread in the field channel
//	ana #field/1: make it 82       … or writes into the channel's first thread
//	ana @: history 12 Alder        … or to the bot alone
//	! again                        the last message is delivered once more
//	! edit ana #field/1: …         ana's last message there gets new words
//	! delete ana #field/1          … or is taken away
//	! press ana claim #dispatch/1  ana presses a button of the newest post there
//	! press ana site:2 #field/1    … the second of that name
//	! press ana correct #field/1: … and types something with it
//	! restart                      the bot is stopped hard and started
//	! lose                         the platform takes the next post, its answer is lost
//	! refuse 30s                   the platform refuses the next post for so long
//	! offline, ! online            the platform cannot be reached, and can again
//	# a remark
//
// In what people say \n and \x07 stand for a new line and a control character.
//
// What the bot says is written as "#channel[/thread]: text", a line of a post a line, with
// "~" before a new wording of an earlier post and "(mark)" for a reaction.
// Threads are numbered by channel, in the order in which they start. Run with
// -update to write what the bot says now, then read the change as a reviewer.
package talktest

import (
	"bufio"
	"bytes"
	"context"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/store"
)

var update = flag.Bool("update", false, "rewrite what the bot says in the transcripts")

// World is the bot with its chat platform, as a transcript drives it.
type World interface {
	// Do lets something happen in chat.
	Do(ctx context.Context, m desk.Message) error
	// Rest lets the bot do all that it can do at now, and returns what it said.
	Rest(ctx context.Context, now time.Time) ([]Said, error)
	// Restart stops the bot without warning and starts it again.
	Restart() error
	// Fault switches the platform's next fault on.
	Fault(name string, d time.Duration)
	// Newest returns the newest post of the bot in a thread.
	Newest(channel, thread string) (desk.Post, bool)
}

// Said is one thing that the bot did in chat.
type Said struct {
	Post    desk.Post
	Channel string
	Thread  string // ts of the thread's first message, empty when the post starts one
	TS      string
}

// Zone is the shop's time zone in all transcripts.
const Zone = "America/New_York"

// Run runs every transcript of testdata/talk in a world of its own.
func Run(t *testing.T, dir string, world func(t *testing.T) World) {
	files, err := filepath.Glob(filepath.Join(dir, "*.txt"))
	if err != nil || len(files) == 0 {
		t.Fatalf("no transcripts in %s: %v", dir, err)
	}
	for _, f := range files {
		t.Run(strings.TrimSuffix(filepath.Base(f), ".txt"), func(t *testing.T) {
			want, err := os.ReadFile(f)
			if err != nil {
				t.Fatal(err)
			}
			got := play(t, string(want), world(t))
			if *update {
				if err := os.WriteFile(f, []byte(got), 0o644); err != nil {
					t.Fatal(err)
				}
				return
			}
			if got != string(want) {
				t.Errorf("%s differs (run with -update, then read the change):\n%s", f, diff(string(want), got))
			}
		})
	}
}

// diff shows the first lines that differ.
func diff(want, got string) string {
	w, g := strings.Split(want, "\n"), strings.Split(got, "\n")
	var out []string
	for i := 0; i < max(len(w), len(g)) && len(out) < 40; i++ {
		a, b := at(w, i), at(g, i)
		if a != b {
			out = append(out, fmt.Sprintf("line %d\n want %s\n got  %s", i+1, a, b))
			if len(w) != len(g) && len(out) > 8 {
				break
			}
		}
	}
	return strings.Join(out, "\n")
}

func at(list []string, i int) string {
	if i < len(list) {
		return list[i]
	}
	return "(nothing)"
}

// stage is a transcript being played.
type stage struct {
	t       *testing.T
	w       World
	zone    *time.Location
	now     time.Time
	n       int64
	threads map[string][]string // channel to the ts of its threads
	last    desk.Message
	mine    map[string]desk.Message // last message by author and thread
	said    map[string]string       // thread by the message's channel and ts
}

func play(t *testing.T, script string, w World) string {
	zone, err := time.LoadLocation(Zone)
	if err != nil {
		t.Fatal(err)
	}
	s := &stage{t: t, w: w, zone: zone, now: time.Date(2026, 6, 15, 8, 0, 0, 0, zone),
		threads: map[string][]string{}, mine: map[string]desk.Message{}, said: map[string]string{}}
	var out bytes.Buffer
	r := bufio.NewScanner(strings.NewReader(script))
	for r.Scan() {
		line := r.Text()
		if strings.HasPrefix(line, "\t") {
			continue // written anew
		}
		fmt.Fprintln(&out, line)
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		if err := s.happen(line); err != nil {
			t.Fatalf("%q: %v", line, err)
		}
		said, err := s.w.Rest(t.Context(), s.now)
		if err != nil {
			fmt.Fprintf(&out, "\t(error: %v)\n", err)
		}
		for _, x := range said {
			out.WriteString(s.line(x))
		}
	}
	return out.String()
}

// line writes what the bot said.
func (s *stage) line(x Said) string {
	where := s.place(x)
	if x.Post.Kind == desk.React {
		return fmt.Sprintf("\t%s: (%s)\n", where, x.Post.Mark)
	}
	sign := ""
	if x.Post.Kind == desk.Change {
		sign = "~"
	}
	text := x.Post.Body.Text()
	b := x.Post.Body
	for _, who := range b.Calls {
		text += fmt.Sprintf("\n(calls %s)", who)
	}
	if b.Picture != nil {
		text += fmt.Sprintf("\n(picture: %s)", b.Picture.Alt)
	}
	if b.File != nil {
		text += fmt.Sprintf("\n(paper: %s)", b.File.Title)
	}
	for _, b := range b.Buttons {
		text += fmt.Sprintf("\n[%s]", b.Label)
	}
	return "\t" + where + ": " + sign + strings.ReplaceAll(text, "\n", "\n\t\t") + "\n"
}

// place names a post's thread; a post that starts one gets the next number.
func (s *stage) place(x Said) string {
	name := "#" + x.Channel
	if strings.HasPrefix(x.Channel, "@") {
		name = x.Channel
	}
	root := x.Thread
	if x.Post.Kind != desk.Say {
		root = s.said[x.Channel+x.TS]
	} else if root == "" {
		s.threads[x.Channel] = append(s.threads[x.Channel], x.TS)
		s.said[x.Channel+x.TS] = x.TS
		return name
	} else {
		s.said[x.Channel+x.TS] = root
	}
	for i, ts := range s.threads[x.Channel] {
		if ts == root {
			return fmt.Sprintf("%s/%d", name, i+1)
		}
	}
	return name + "/?"
}

// happen does what a line at the margin says.
func (s *stage) happen(line string) error {
	if when, ok := strings.CutPrefix(line, "@ "); ok {
		t, err := time.ParseInLocation("2006-01-02 15:04", strings.TrimSpace(when), s.zone)
		s.now = t
		return err
	}
	if verb, ok := strings.CutPrefix(line, "! "); ok {
		return s.verb(verb)
	}
	who, rest, ok := strings.Cut(line, " ")
	where, text, ok2 := strings.Cut(rest, ": ")
	if !ok || !ok2 {
		return fmt.Errorf("not understood")
	}
	m, err := s.message(who, where)
	if err != nil {
		return err
	}
	m.Text = unescape(text)
	return s.do(m)
}

// unescape reads \n and \x00 in a line as a new line and a control character.
func unescape(text string) string {
	if s, err := strconv.Unquote(`"` + strings.ReplaceAll(text, `"`, `\"`) + `"`); err == nil {
		return s
	}
	return text
}

// message makes an empty message of a person at a place.
func (s *stage) message(who, where string) (desk.Message, error) {
	s.n++
	m := desk.Message{Author: who, Name: who, At: s.now, Kind: store.Said, TS: fmt.Sprintf("%d.%06d", s.now.Unix(), 500_000+s.n)} // a platform counts its own from 0
	if where == "@" {
		m.Channel, m.Direct, m.Thread = "@"+who, true, m.TS
		s.threads[m.Channel] = append(s.threads[m.Channel], m.TS)
	} else {
		channel, thread, in := strings.Cut(strings.TrimPrefix(where, "#"), "/")
		m.Channel = channel
		if in {
			i := 0
			if _, err := fmt.Sscan(thread, &i); err != nil || i < 1 || i > len(s.threads[channel]) {
				return m, fmt.Errorf("no thread %s in %s yet", thread, channel)
			}
			m.Thread = s.threads[channel][i-1]
		} else {
			m.Thread = m.TS
			s.threads[channel] = append(s.threads[channel], m.TS)
		}
	}
	m.Key = m.Channel + "/" + m.TS
	return m, nil
}

func (s *stage) do(m desk.Message) error {
	s.last = m
	if m.Kind == store.Said {
		s.mine[m.Author+" "+m.Channel+" "+m.Thread] = m
		s.said[m.Channel+m.TS] = m.Thread
	}
	return s.w.Do(s.t.Context(), m)
}

// verb does a line that begins with an exclamation mark.
func (s *stage) verb(line string) error {
	verb, rest, _ := strings.Cut(line, " ")
	switch verb {
	case "again":
		return s.w.Do(s.t.Context(), s.last)
	case "restart":
		return s.w.Restart()
	case "lose", "offline", "online":
		s.w.Fault(verb, 0)
		return nil
	case "refuse":
		d, err := time.ParseDuration(rest)
		s.w.Fault(verb, d)
		return err
	case "edit", "delete":
		head, text, _ := strings.Cut(rest, ": ")
		who, where, _ := strings.Cut(head, " ")
		at, err := s.message(who, where)
		if err != nil {
			return err
		}
		old, ok := s.mine[who+" "+at.Channel+" "+at.Thread]
		if !ok {
			return fmt.Errorf("%s said nothing there", who)
		}
		m := old
		m.About, m.At, m.Text = old.Key, s.now, text
		m.Kind, m.Key = store.Edited, old.Key+"#edited:"+at.TS
		if verb == "delete" {
			m.Kind, m.Key, m.Text = store.Deleted, old.Key+"#deleted", ""
		}
		return s.do(m)
	case "press":
		head, typed, _ := strings.Cut(rest, ": ")
		f := strings.Fields(head)
		if len(f) != 3 {
			return fmt.Errorf("press wants: who, button, place")
		}
		m, err := s.message(f[0], f[2])
		if err != nil {
			return err
		}
		p, ok := s.w.Newest(m.Channel, m.Thread)
		if !ok {
			return fmt.Errorf("nothing to press there")
		}
		name, which, _ := strings.Cut(f[1], ":")
		nth := 1
		if which != "" {
			if _, err := fmt.Sscan(which, &nth); err != nil {
				return err
			}
		}
		for _, b := range p.Body.Buttons {
			if b.Name != name {
				continue
			}
			if nth--; nth == 0 {
				m.Kind, m.Button, m.Value, m.Key, m.Text = store.Pressed, b.Name, b.Value, m.Key+"#pressed", typed
				return s.do(m)
			}
		}
		return fmt.Errorf("no button %s on %q", f[1], p.Body.Lead)
	}
	return fmt.Errorf("verb %q is not known", verb)
}
