package slackchat

import (
	"bytes"
	"context"
	"slices"
	"unicode/utf8"

	"github.com/slack-go/slack"

	"lazyhand/bot/desk"
)

// chartBlock draws a chart by the platform's own means; nil where it does not
// fit them. There is no line for a threshold and no axis of time: the band is
// two series that stay level, the days are categories.
// Source: reference/block-kit/blocks/data-visualization-block.
func chartBlock(c *desk.Chart) slack.Block {
	if c == nil || len(c.Categories) == 0 || len(c.Categories) > limit("chart.categories") || len(c.Series) == 0 || len(c.Series) > limit("chart.series") {
		return nil
	}
	long := func(s string) bool { n := utf8.RuneCountInString(s); return n == 0 || n > limit("chart.name") }
	if slices.ContainsFunc(c.Categories, long) {
		return nil
	}
	// The same day twice cannot be told apart.
	if sorted := slices.Sorted(slices.Values(c.Categories)); len(slices.Compact(sorted)) != len(c.Categories) {
		return nil
	}
	var series []slack.DataVisualizationDataSeries
	names := map[string]bool{}
	for _, s := range c.Series {
		if long(s.Name) || names[s.Name] || len(s.Values) != len(c.Categories) {
			return nil
		}
		names[s.Name] = true
		var points []slack.DataVisualizationDataPoint
		for i, v := range s.Values {
			points = append(points, slack.NewDataVisualizationDataPoint(c.Categories[i], v))
		}
		series = append(series, slack.NewDataVisualizationDataSeries(s.Name, points...))
	}
	chart := slack.NewDataVisualizationLineChart(slack.NewDataVisualizationAxisConfig(c.Categories...), series...)
	return slack.NewDataVisualizationBlock(cut(c.Title, "chart.title"), chart)
}

// attach sends what cannot stand in a message after it, into its thread: a
// picture that the platform does not draw itself, and papers. The message says
// all in words, so that what is lost here is never a finding.
func (s *Slack) attach(p desk.Post, thread string, drawn bool) {
	var up []slack.UploadFileParameters
	if pic := p.Body.Picture; pic != nil && !drawn && len(pic.PNG) > 0 {
		up = append(up, slack.UploadFileParameters{Filename: pic.Name, Title: cut(p.Body.Lead, "image.title"), AltTxt: cut(pic.Alt, "image.alt_text"), Content: string(pic.PNG), FileSize: len(pic.PNG)})
	}
	if f := p.Body.File; f != nil && len(f.Data) > 0 {
		up = append(up, slack.UploadFileParameters{Filename: f.Name, Title: cut(f.Title, "image.title"), AltTxt: cut(f.Title, "image.alt_text"), Content: string(f.Data), FileSize: len(f.Data)})
	}
	if len(up) == 0 {
		return
	}
	s.later(func(ctx context.Context) {
		for _, u := range up {
			u.Channel, u.ThreadTimestamp = s.where(ctx, p.Channel), thread
			u.Reader, u.Content = bytes.NewReader([]byte(u.Content)), ""
			data := u.Reader.(*bytes.Reader)
			err := s.patiently(ctx, func() error {
				_, _ = data.Seek(0, 0) // cannot fail
				_, err := s.api.UploadFileContext(ctx, u)
				return err
			})
			if err != nil && ctx.Err() == nil {
				s.opt.Log.Warn("a picture or paper could not be sent", "error", err.Error())
			}
		}
	})
}

// calls are the people and groups that a post calls by name.
func calls(ids []string) (text string, elements []slack.RichTextSectionElement) {
	for _, id := range ids {
		switch {
		case id == "":
			continue
		case id[0] == 'S':
			text += "<!subteam^" + Escape(id) + "> "
			elements = append(elements, slack.NewRichTextSectionUserGroupElement(id))
		default:
			text += "<@" + Escape(id) + "> "
			elements = append(elements, slack.NewRichTextSectionUserElement(id, nil))
		}
		elements = append(elements, words(" "))
	}
	return text, elements
}
