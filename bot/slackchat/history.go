package slackchat

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net/http"
	"net/url"
	"slices"
	"strconv"
	"strings"
	"time"

	"github.com/slack-go/slack"
)

// How a gap is read back. Nothing comes more than two hours late by itself
// (apis/events-api), so what is older than the newest message on record by
// more than that is on record too, or was never sent.
const (
	overlap      = 2*time.Hour + 10*time.Minute
	threadsOpen  = 14 * 24 * time.Hour // how long a thread counts as open
	threadsRead  = 50                  // read back at most, the newest first
	historyPages = 50
)

// page reads messages of a channel, or of a thread in it, oldest bound
// included. It decodes them leniently, which the library does not.
func (s *Slack) page(ctx context.Context, channel, thread, oldest, cursor string) (list []event, next string, err error) {
	method, form := "conversations.history", url.Values{"channel": {channel}, "oldest": {oldest}, "inclusive": {"true"}, "limit": {"200"}, "include_all_metadata": {"true"}}
	if thread != "" {
		method = "conversations.replies"
		form.Set("ts", thread)
	}
	if cursor != "" {
		form.Set("cursor", cursor)
	}
	if err := s.turn(ctx, method, s.opt.Pace*6/5, 10); err != nil { // tier 3
		return nil, "", err
	}
	var r struct {
		Messages []json.RawMessage `json:"messages"`
		Meta     struct {
			Next string `json:"next_cursor"`
		} `json:"response_metadata"`
	}
	if err := s.call(ctx, method, form, &r); err != nil {
		return nil, "", err
	}
	for _, raw := range r.Messages {
		var e event
		if json.Unmarshal(raw, &e) != nil {
			s.seen(Refused, "malformed message in the history")
			continue
		}
		list = append(list, e)
	}
	return list, r.Meta.Next, nil
}

// call makes a Web API call whose answer is decoded by us. The token goes to
// the API's own host only.
func (s *Slack) call(ctx context.Context, method string, form url.Values, into any) error {
	base := s.opt.APIURL
	if base == "" {
		base = slack.APIURL
	}
	req, err := http.NewRequestWithContext(ctx, http.MethodPost, base+method, strings.NewReader(form.Encode()))
	if err != nil {
		return err
	}
	req.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	req.Header.Set("Authorization", "Bearer "+s.opt.BotToken)
	resp, err := s.http.Do(req)
	if err != nil {
		return fmt.Errorf("%s: %w", method, err)
	}
	defer resp.Body.Close()
	if resp.StatusCode == http.StatusTooManyRequests {
		sec, _ := strconv.Atoi(resp.Header.Get("Retry-After"))
		return &slack.RateLimitedError{RetryAfter: time.Duration(max(sec, 1)) * time.Second}
	}
	if resp.StatusCode != http.StatusOK {
		return slack.StatusCodeError{Code: resp.StatusCode, Status: resp.Status}
	}
	raw, err := io.ReadAll(io.LimitReader(resp.Body, 32<<20))
	if err != nil {
		return fmt.Errorf("%s: %w", method, err)
	}
	var head struct {
		OK     bool
		Error  string
		Needed string
	}
	if err := json.Unmarshal(raw, &head); err != nil {
		return fmt.Errorf("%s: the answer is no JSON", method)
	}
	if !head.OK {
		return slack.SlackErrorResponse{Err: head.Error, Needed: head.Needed}
	}
	return json.Unmarshal(raw, into)
}

// patiently repeats a read that the platform put off, until it is answered.
func (s *Slack) patiently(ctx context.Context, read func() error) error {
	wait := s.opt.FirstDelay
	for range 12 {
		err := read()
		is, no := judge(err)
		switch {
		case err == nil || ctx.Err() != nil || is == refusedForGood:
			return err
		case no != nil && no.After > 0:
			wait = no.After
		}
		if !sleep(ctx, wait) {
			return ctx.Err()
		}
		wait = min(2*wait, s.opt.LongestWait)
	}
	return errors.New("Slack does not answer")
}

// catchUp signs in again, which also wakes a platform that has gone silent,
// and reads back what was missed. It is told to nobody when it fails: the next
// connection tries again.
func (s *Slack) catchUp(ctx context.Context) {
	err := s.patiently(ctx, func() error { return s.hello(ctx) })
	if err == nil {
		err = s.readBack(ctx)
	}
	if err != nil && ctx.Err() == nil {
		s.opt.Log.Error("what was missed could not be read back", "error", err.Error())
	}
}

// readBack reads the field channels, direct messages and open threads from the
// last message known, and brings what is there to the desk, which knows what
// it has already.
func (s *Slack) readBack(ctx context.Context) error {
	s.gap.Lock()
	defer s.gap.Unlock()
	now := s.opt.Now()
	if s.opt.Heard == nil {
		return nil
	}
	channels, threads, err := s.opt.Heard(ctx, now.Add(-threadsOpen))
	if err != nil {
		return err
	}
	var errs []error
	grown := map[string]bool{} // threads with replies after what is known
	for _, h := range channels {
		if !slices.Contains(s.opt.Field, h.Channel) && !isDirect(h.Channel) {
			continue
		}
		oldest := tsOf(h.At.Add(-overlap))
		if err := s.readChannel(ctx, h.Channel, oldest, grown); err != nil {
			errs = append(errs, fmt.Errorf("channel %s: %w", h.Channel, err))
		}
	}
	read := 0
	for _, h := range threads {
		if name := h.Channel + "/" + h.Thread; !grown[name] && read < threadsRead {
			grown[name] = true
			read++
		}
	}
	for name := range grown {
		channel, thread, _ := strings.Cut(name, "/")
		oldest := thread
		for _, h := range threads {
			if h.Channel == channel && h.Thread == thread {
				oldest = tsOf(h.At.Add(-overlap))
			}
		}
		err := s.readThread(ctx, channel, thread, oldest)
		if is, _ := judge(err); err != nil && is != refusedForGood { // the thread may be gone
			errs = append(errs, fmt.Errorf("thread in %s: %w", channel, err))
		}
	}
	return errors.Join(errs...)
}

// readChannel reads a channel's messages and notes the threads that have
// replies.
func (s *Slack) readChannel(ctx context.Context, channel, oldest string, grown map[string]bool) error {
	return s.readPages(ctx, channel, "", oldest, func(e event) {
		if e.LatestReply > oldest {
			grown[channel+"/"+e.TS] = true
		}
	})
}

func (s *Slack) readThread(ctx context.Context, channel, thread, oldest string) error {
	return s.readPages(ctx, channel, thread, oldest, func(event) {})
}

// readPages reads all pages, then brings them to the desk in order of time.
func (s *Slack) readPages(ctx context.Context, channel, thread, oldest string, note func(event)) error {
	var all []event
	cursor := ""
	for range historyPages {
		var list []event
		var next string
		err := s.patiently(ctx, func() (err error) {
			list, next, err = s.page(ctx, channel, thread, oldest, cursor)
			return err
		})
		if err != nil {
			return err
		}
		all = append(all, list...)
		if cursor = next; cursor == "" {
			break
		}
	}
	slices.SortFunc(all, func(a, b event) int { return strings.Compare(a.TS, b.TS) })
	for _, e := range all {
		note(e)
		if e.Subtype == "tombstone" { // deleted, but its thread goes on
			if err := s.patiently(ctx, func() error { return s.take(ctx, deletion(e, channel, isDirect(channel))) }); err != nil {
				return err
			}
			continue
		}
		a := decodeSaid(e, channel, isDirect(channel), s.self())
		if a.verdict == Taken {
			a.team = stranger(e, callback{}, s.self())
		}
		a.hint = false // late hints help nobody
		if err := s.patiently(ctx, func() error { return s.deal(ctx, a) }); err != nil {
			return err
		}
	}
	return nil
}
