package slackchat

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"io"
	"net/http"
	"net/url"
	"regexp"
	"slices"
	"strings"
	"time"

	"github.com/slack-go/slack"

	"lazyhand/bot/desk"
)

// Words of audio clips. A clip is kept when it arrives, without words; they
// come later, as an edit of it.

// clipsKept bounds how many clips are waited for at once.
const clipsKept = 200

// later does something that follows from an arrival, after it was
// acknowledged, unless the bot is being stopped.
func (s *Slack) later(do func(ctx context.Context)) {
	s.mu.Lock()
	ctx := s.base
	s.mu.Unlock()
	if ctx == nil || ctx.Err() != nil {
		return
	}
	s.tasks.Go(func() { do(ctx) })
}

// afterwards does what follows from an arrival that is on the disk.
func (s *Slack) afterwards(a arrival) {
	if len(a.messages) > 0 {
		// Where the bot only happens to be, it neither listens nor speaks.
		if m := a.messages[0]; !m.Direct && !m.Mention && !slices.Contains(s.opt.Field, m.Channel) {
			return
		}
	}
	switch {
	case a.voice != "" && len(a.messages) > 0:
		m := a.messages[0]
		s.mu.Lock()
		_, waited := s.clips[a.voice]
		more := !waited && len(s.clips) < clipsKept
		wake := make(chan struct{}, 1)
		if more {
			s.clips[a.voice] = wake
		}
		s.mu.Unlock()
		if more {
			s.later(func(ctx context.Context) { s.hearOut(ctx, a.voice, m, wake) })
		}
	case a.hint:
		m := a.messages[0]
		s.later(func(ctx context.Context) { s.hint(ctx, m, func(w *phrases) string { return w.FileHint }) })
	case a.home != "":
		s.later(func(ctx context.Context) { s.publishHome(ctx, a.home) })
	case a.fileID != "":
		s.mu.Lock()
		wake := s.clips[a.fileID]
		s.mu.Unlock()
		select {
		case wake <- struct{}{}:
		default: // not waited for, or woken already
		}
	}
}

// hearOut waits for the words of a clip and brings them to the desk.
func (s *Slack) hearOut(ctx context.Context, id string, m desk.Message, wake <-chan struct{}) {
	defer func() {
		s.mu.Lock()
		delete(s.clips, id)
		s.mu.Unlock()
	}()
	start := time.Now()
	for _, at := range s.opt.VoiceWaits {
		select {
		case <-ctx.Done():
			return
		case <-wake:
		case <-time.After(at - time.Since(start)):
		}
		text, err := s.transcript(ctx, id)
		if err != nil {
			s.opt.Log.Warn("the words of a clip could not be read", "error", err.Error())
			if is, _ := judge(err); is == refusedForGood {
				break
			}
			continue
		}
		if text == "" {
			continue
		}
		m.Text = strings.TrimSpace(m.Text + "\n" + Escape(text))
		edit := editOf(m, m.TS) // sorts before every edit by hand
		if err := s.patiently(ctx, func() error {
			return s.take(ctx, arrival{verdict: Taken, why: "words of a clip", messages: []desk.Message{edit}})
		}); err != nil && ctx.Err() == nil {
			s.opt.Log.Error("the words of a clip were not kept", "error", err.Error())
		}
		return
	}
	if strings.TrimSpace(m.Text) == "" {
		s.hint(ctx, m, func(w *phrases) string { return w.VoiceHint })
	}
}

// transcript returns the words of a clip, empty while there are none.
func (s *Slack) transcript(ctx context.Context, id string) (string, error) {
	var r struct {
		File file `json:"file"`
	}
	if err := s.call(ctx, "files.info", url.Values{"file": {id}}, &r); err != nil {
		return "", err
	}
	f := r.File
	if f.Transcription.Status != "complete" {
		return "", nil
	}
	if !f.Transcription.Preview.HasMore || f.VTT == "" {
		return f.Transcription.Preview.Content, nil
	}
	text, err := s.fetchVTT(ctx, f.VTT)
	if err != nil || text == "" {
		return f.Transcription.Preview.Content, err
	}
	return text, nil
}

// fetchVTT reads a transcript in WebVTT. The token goes to the platform's own
// hosts only.
func (s *Slack) fetchVTT(ctx context.Context, address string) (string, error) {
	u, err := url.Parse(address)
	if err != nil {
		return "", errors.New("the transcript has no address")
	}
	api, _ := url.Parse(orElse(s.opt.APIURL, slack.APIURL))
	ours := u.Scheme == api.Scheme && u.Host == api.Host
	if !ours && (u.Scheme != "https" || u.Hostname() != "slack.com" && !strings.HasSuffix(u.Hostname(), ".slack.com")) {
		return "", fmt.Errorf("the transcript lies at a host that is not Slack's")
	}
	req, err := http.NewRequestWithContext(ctx, http.MethodGet, address, nil)
	if err != nil {
		return "", err
	}
	req.Header.Set("Authorization", "Bearer "+s.opt.BotToken)
	resp, err := s.http.Do(req)
	if err != nil {
		return "", err
	}
	defer resp.Body.Close()
	if resp.StatusCode != http.StatusOK {
		return "", slack.StatusCodeError{Code: resp.StatusCode, Status: resp.Status}
	}
	return vttText(io.LimitReader(resp.Body, 1<<20)), nil
}

var vttTag = regexp.MustCompile(`<[^>]*>`)

// vttText returns the words of a WebVTT file: the lines of its cues.
// Source: WebVTT, W3C, section 3.
func vttText(r io.Reader) string {
	var out []string
	cue := false
	lines := bufio.NewScanner(r)
	lines.Buffer(nil, 1<<20)
	for lines.Scan() {
		line := strings.TrimSpace(strings.TrimPrefix(lines.Text(), "\ufeff"))
		switch {
		case line == "":
			cue = false
		case strings.Contains(line, "-->"):
			cue = true
		case cue:
			out = append(out, strings.TrimPrefix(strings.TrimSpace(vttTag.ReplaceAllString(line, "")), "- "))
		}
	}
	return unescape(strings.Join(out, " "))
}

// hint tells the author of a message something that only they see. It may be
// lost; nothing that can hurt is said this way.
func (s *Slack) hint(ctx context.Context, m desk.Message, text func(*phrases) string) {
	p, _ := s.person(ctx, m.Author) // the language falls back to the shop's
	opts := []slack.MsgOption{slack.MsgOptionText(Escape(text(s.phrases(p))), false)}
	if m.Thread != "" && m.Thread != m.TS {
		opts = append(opts, slack.MsgOptionTS(m.Thread))
	}
	if _, err := s.api.PostEphemeralContext(ctx, m.Channel, m.Author, opts...); err != nil {
		s.opt.Log.Info("a hint could not be given", "error", err.Error())
	}
}

// phrases are those in a person's language, else the shop's.
func (s *Slack) phrases(p person) *phrases { return phrasesIn(orElse(p.lang, s.opt.Lang)) }
