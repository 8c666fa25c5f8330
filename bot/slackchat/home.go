package slackchat

import (
	"context"
	"errors"

	"github.com/slack-go/slack"

	"lazyhand/bot/desk"
)

// publishHome shows a person their home tab.
func (s *Slack) publishHome(ctx context.Context, userID string) {
	if s.opt.Home == nil || userID == "" {
		return
	}
	p, err := s.person(ctx, userID)
	if err != nil || p.guest && !s.opt.Guests {
		return
	}
	now := s.opt.Now()
	h, err := s.opt.Home(ctx, userID, now)
	if err != nil {
		s.opt.Log.Error("a home tab could not be gathered", "error", err.Error())
		return
	}
	v := homeView(h, phrasesIn(string(h.Lang)), tsOf(now))
	err = s.patiently(ctx, func() error {
		_, err := s.api.PublishViewContext(ctx, slack.PublishViewContextRequest{UserID: userID, View: v})
		var no slack.SlackErrorResponse
		if errors.As(err, &no) && no.Err != "internal_error" {
			s.opt.Log.Info("a home tab was not taken", "error", no.Err)
			return nil // not_enabled and the like: no waiting helps
		}
		return err
	})
	if err != nil && ctx.Err() == nil {
		s.opt.Log.Warn("a home tab could not be shown", "error", err.Error())
	}
}

// homeView lays a home page out: how to report, then a list for each section.
func homeView(h desk.Home, w *phrases, ts string) slack.HomeTabViewRequest {
	out := []slack.Block{
		rich(section(words(w.HomeHow))),
		slack.NewActionBlock("", slack.NewButtonBlockElement(actionReport, "report", plainText(w.HomeReport, "button.text"))),
	}
	for _, s := range []desk.Section{h.Alerts, h.FollowUps, h.Reports, h.Due, h.Worst} {
		if s.Title == "" {
			continue // not for this person
		}
		out = append(out, slack.NewHeaderBlock(plainText(s.Title, "header.text")))
		if len(s.Lines) == 0 {
			out = append(out, slack.NewContextBlock("", plainText(orElse(s.Empty, "–"), "section.text")))
			continue
		}
		var lines []string
		for _, l := range s.Lines {
			lines = append(lines, cut(l, "section.field"))
		}
		out = append(out, rich(list(lines)))
	}
	if at := timeOf(ts); !at.IsZero() {
		// The reader's own clock; the fallback is for programs that cannot.
		fallback := at.Format("2006-01-02 15:04 UTC")
		date := slack.NewRichTextSectionDateElement(at.Unix(), "{date_short_pretty} {time}", nil, &fallback)
		out = append(out, rich(section(words(w.HomeUpdated+" "), date)))
	}
	return slack.HomeTabViewRequest{Type: slack.VTHomeTab, Blocks: slack.Blocks{BlockSet: out}}
}
