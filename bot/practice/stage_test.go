package practice_test

import (
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
	"github.com/slack-go/slack"
	"github.com/slack-go/slack/slackevents"
	"github.com/slack-go/slack/socketmode"

	"lazyhand/bot/practice"
)

// browser starts a headless Chromium of the system with a profile of its own.
func browser(t *testing.T) context.Context {
	t.Helper()
	program := ""
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome"} {
		if p, err := exec.LookPath(name); err == nil {
			program = p
			break
		}
	}
	if program == "" {
		t.Skip("chromium is missing")
	}
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(program), chromedp.NoSandbox, chromedp.DisableGPU,
		chromedp.Flag("disable-quic", true), chromedp.Flag("disable-background-networking", true),
		chromedp.Flag("disable-component-update", true), chromedp.Flag("disable-sync", true),
		chromedp.UserDataDir(t.TempDir()), chromedp.WindowSize(1200, 900))
	ctx, cancel := chromedp.NewExecAllocator(context.Background(), options...)
	t.Cleanup(cancel)
	ctx, cancel = context.WithTimeout(ctx, 100*time.Second)
	t.Cleanup(cancel)
	ctx, cancel = chromedp.NewContext(ctx)
	t.Cleanup(cancel)
	check(t, chromedp.Do(ctx, chromedp.Navigate("about:blank"))) // the browser lives as long as this context
	return ctx
}

// tab opens another tab, in which the page must not meet an error.
func tab(t *testing.T, browser context.Context) context.Context {
	t.Helper()
	ctx, cancel := chromedp.NewContext(browser, chromedp.WithListener(func(ev any) {
		switch e := ev.(type) {
		case *runtime.EventExceptionThrown:
			t.Errorf("the page met an error: %s", asJSON(t, e.ExceptionDetails))
		case *runtime.EventConsoleAPICalled:
			if e.Type == runtime.ConsoleAPICalledTypeError {
				t.Errorf("the page complains: %s", asJSON(t, e.Args))
			}
		}
	}))
	t.Cleanup(cancel)
	return ctx
}

// stage is a workspace with a scripted bot and a browser tab on it.
type stage struct {
	*shop
	t   *testing.T
	tab context.Context
}

func newStage(t *testing.T, browser context.Context) *stage {
	app := practice.MainApp("mainbot")
	app.Commands = []practice.Command{{Name: "/due", Hint: "week"}}
	app.Shortcuts = []practice.Shortcut{{Name: "Report this", CallbackID: "report_this"}}
	s := &stage{t: t, tab: tab(t, browser)}
	begun := time.Now()
	s.shop = open(t, practice.Options{Apps: []practice.AppOptions{app, practice.SecondApp()},
		Now: func() time.Time { return time.Date(2026, 3, 4, 10, 15, 0, 0, time.UTC).Add(time.Since(begun)) }})
	s.listen(t, s.play)
	check(t, chromedp.Do(s.tab, chromedp.Navigate("about:blank")))
	s.run(chromedp.Navigate(s.url+"/?as=rosa"), chromedp.WaitVisible(chromedp.CSS("#write textarea")))
	return s
}

func (s *stage) run(actions ...chromedp.Action[chromedp.Void]) {
	s.t.Helper()
	ctx, cancel := context.WithTimeout(s.tab, 15*time.Second)
	defer cancel()
	if err := chromedp.Do(ctx, actions...); err != nil {
		s.picture("failed")
		s.t.Fatal(err)
	}
}

// read waits until a script gives something that is not empty.
func (s *stage) read(script string) string {
	s.t.Helper()
	for end := time.Now().Add(20 * time.Second); time.Now().Before(end); time.Sleep(30 * time.Millisecond) {
		out, err := chromedp.Run(s.tab, chromedp.Evaluate[string]("String(("+script+") ?? '')"))
		check(s.t, err)
		if out != "" && out != "false" {
			return out
		}
	}
	s.picture("failed")
	s.t.Fatalf("waited in vain for %s", script)
	return ""
}

// see waits for a text in an element.
func (s *stage) see(selector, text string) {
	s.t.Helper()
	s.read(fmt.Sprintf("[...document.querySelectorAll(%q)].some(e => e.innerText.includes(%q))", selector, text))
}

// press clicks the button with that name, in a part of the page.
func (s *stage) press(in, name string) {
	s.t.Helper()
	s.read(fmt.Sprintf(`(() => { const b = [...document.querySelectorAll(%q)].find(e => e.innerText.trim() === %q); if (!b) return ''; b.focus(); b.click(); return 'yes'; })()`, in, name))
}

// resize gives the page a width and height in CSS pixels.
func (s *stage) resize(width, height int64, scale float64) {
	s.t.Helper()
	_, err := chromedp.Call(s.tab, emulation.SetDeviceMetricsOverride, emulation.SetDeviceMetricsOverrideParams{Width: width, Height: height, DeviceScaleFactor: scale})
	check(s.t, err)
}

func (s *stage) theme(name string) {
	s.t.Helper()
	_, err := chromedp.Call(s.tab, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{
		Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: name}}})
	check(s.t, err)
}

// picture keeps a screenshot when LAZYHAND_PICTURES names a folder.
func (s *stage) picture(name string) {
	folder := os.Getenv("LAZYHAND_PICTURES")
	if folder == "" {
		return
	}
	png, err := chromedp.Run(s.tab, chromedp.FullScreenshot(100))
	if err != nil {
		s.t.Logf("no picture: %v", err)
		return
	}
	if err := os.WriteFile(filepath.Join(folder, name+".png"), png, 0o644); err != nil {
		s.t.Log(err)
	}
}

// play is a tiny bot: it answers readings, opens a form, shows a home tab.
func (s *stage) play(evt socketmode.Event) any {
	mr := func(text string) *slack.TextBlockObject {
		return slack.NewTextBlockObject(slack.MarkdownType, text, false, true)
	}
	post := func(channel, thread, text string, blocks ...slack.Block) {
		if _, _, err := s.api.PostMessage(channel, slack.MsgOptionText(text, false), slack.MsgOptionTS(thread), slack.MsgOptionBlocks(blocks...)); err != nil {
			s.t.Error(err)
		}
	}
	switch d := evt.Data.(type) {
	case slackevents.EventsAPIEvent:
		switch ev := d.InnerEvent.Data.(type) {
		case *slackevents.MessageEvent:
			if ev.BotID != "" || ev.SubType != "" || ev.ThreadTimeStamp != "" {
				return nil
			}
			switch {
			case strings.Contains(ev.Text, "plot"):
				post(ev.Channel, ev.TimeStamp, "Pressure at 12 Alder St: from 62 to 84 psi in six months", plot())
			case strings.Contains(ev.Text, "psi"):
				check(s.t, s.api.AddReaction("white_check_mark", slack.NewRefToMessage(ev.Channel, ev.TimeStamp)))
				choice := slack.NewOptionsSelectBlockElement(slack.OptTypeStatic, plain("Another house"), "house",
					slack.NewOptionBlockObject("12", plain("12 Alder St"), nil), slack.NewOptionBlockObject("21", plain("21 Alder St"), nil))
				fix := slack.NewButtonBlockElement("fix", ev.TimeStamp, plain("Correct"))
				fix.Style = slack.StylePrimary
				post(ev.Channel, ev.TimeStamp, "Too high: 92 psi at the rear bibb, 12 Alder St",
					slack.NewSectionBlock(mr("*Too high: 92 psi* at the rear bibb, 12 Alder St\nIdle, heater off. The limit is 80 psi."), nil, nil),
					slack.NewContextBlock("", mr("Valve: _second reading above 80 in 30 days_. You wrote: "+ev.Text)),
					slack.NewActionBlock("next", fix, slack.NewButtonBlockElement("again", "1", plain("Read again")), choice))
			}
		case *slackevents.AppHomeOpenedEvent:
			_, err := s.api.PublishViewContext(context.Background(), slack.PublishViewContextRequest{UserID: ev.User, View: slack.HomeTabViewRequest{Type: slack.VTHomeTab,
				Blocks: slack.Blocks{BlockSet: []slack.Block{slack.NewHeaderBlock(plain("Open follow-ups")),
					slack.NewSectionBlock(mr("*12 Alder St*\nRecheck the rear bibb, due Monday 9 March"), nil, slack.NewAccessory(slack.NewButtonBlockElement("done", "1", plain("Done")))),
					slack.NewDividerBlock(), slack.NewContextBlock("", mr("All houses are invented."))}}}})
			if err != nil {
				s.t.Error(err)
			}
		}
	case slack.InteractionCallback:
		switch d.Type {
		case slack.InteractionTypeBlockActions:
			switch d.ActionCallback.BlockActions[0].ActionID {
			case "fix":
				if _, err := s.api.OpenView(d.TriggerID, form()); err != nil {
					s.t.Error(err)
				}
			case "house":
				post(d.Channel.ID, d.Container.ThreadTs, "Moved to "+d.ActionCallback.BlockActions[0].SelectedOption.Text.Text)
			}
		case slack.InteractionTypeViewSubmission:
			psi := d.View.State.Values["psi"]["value"].Value
			if psi == "820" {
				return slack.NewErrorsViewSubmissionResponse(map[string]string{"psi": "No gauge reads that high."})
			}
			post(s.Channel("field"), "", "Corrected to "+psi+" psi, "+d.View.State.Values["point"]["value"].SelectedOption.Text.Text)
		case slack.InteractionTypeMessageAction:
			post(d.Channel.ID, d.Message.Timestamp, "Reported: "+d.Message.Text)
		}
	case slack.SlashCommand:
		return map[string]any{"text": "Due this week: 12 Alder St"}
	}
	return nil
}

// plot is a chart with two constant lines for the limits.
func plot() slack.Block {
	months := []string{"Sep", "Oct", "Nov", "Dec", "Jan", "Feb"}
	line := func(name string, values ...float64) slack.DataVisualizationDataSeries {
		var points []slack.DataVisualizationDataPoint
		for i, m := range months {
			points = append(points, slack.NewDataVisualizationDataPoint(m, values[min(i, len(values)-1)]))
		}
		return slack.NewDataVisualizationDataSeries(name, points...)
	}
	return slack.NewDataVisualizationBlock("Idle pressure, 12 Alder St", slack.NewDataVisualizationLineChart(
		slack.NewDataVisualizationAxisConfig(months...).WithXLabel("Month").WithYLabel("psi"),
		line("rear bibb", 62, 66, 70, 75, 79, 84), line("80 max", 80), line("40 min", 40)))
}
