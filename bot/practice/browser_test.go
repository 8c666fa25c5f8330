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

// TestPage drives the page in one headless Chromium, a tab for each part.
func TestPage(t *testing.T) {
	b := browser(t)
	t.Run("a tech's conversation with a bot", func(t *testing.T) { conversation(t, b) })
	if testing.Short() {
		return // the rest takes most of the time
	}
	t.Run("by keyboard alone", func(t *testing.T) { keyboard(t, b) })
	t.Run("small, enlarged and dark", func(t *testing.T) { sizes(t, b) })
	t.Run("axe-core finds nothing against WCAG A and AA", func(t *testing.T) { axe(t, b) })
}

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
	for end := time.Now().Add(8 * time.Second); time.Now().Before(end); time.Sleep(30 * time.Millisecond) {
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

func conversation(t *testing.T, b context.Context) {
	s := newStage(t, b)

	// A tech writes; the bot answers under it.
	s.run(chromedp.SendKeys(chromedp.CSS("#write textarea"), "92 psi rear bibb, 12 Alder St <img src=x onerror=alert(1)> & @mainbot\r"))
	s.see(".replies article", "Too high: 92 psi")
	s.see(".reactions", "white check mark: mainbot")
	if n := s.read("String(document.querySelectorAll('#log img').length)"); n != "0" {
		t.Errorf("a typed tag became %s pictures", n)
	}
	s.see(".entry .first .body", "<img src=x onerror=alert(1)> & @mainbot")
	s.picture("answer")

	// Its button opens a form, which says what is wrong and keeps the rest.
	s.press(".replies button", "Correct")
	s.see("dialog[open] h2", "Report")
	s.picture("form")
	s.run(chromedp.SendKeys(chromedp.CSS("dialog input[inputmode]"), "820"), chromedp.Click(chromedp.CSS("dialog input[value=main]")))
	s.press("dialog button", "Save")
	s.see("dialog .wrong", "No gauge reads that high.")
	if kept := s.read("document.querySelector('dialog input[inputmode]').value + String(document.querySelector('dialog input[value=main]').checked)"); kept != "820true" {
		t.Errorf("after the error the form holds %s", kept)
	}
	s.picture("form-wrong")
	s.run(chromedp.SetValue(chromedp.CSS("dialog input[inputmode]"), "82"))
	s.press("dialog button", "Save")
	s.see(".entry .first", "Corrected to 82 psi, main")
	s.read("!document.querySelector('dialog[open]')")

	// A menu, a shortcut, a reply, a command.
	s.run(chromedp.SetValue(chromedp.CSS(".replies select"), "21"))
	s.press(".replies button", "OK")
	s.see(".replies article", "Moved to 21 Alder St")
	s.read(`(() => { const d = document.querySelector('.entry:last-of-type .first details'); d.open = true; return 'yes'; })()`)
	s.press(".entry:last-of-type .first button", "Report this (mainbot)")
	s.see(".replies article", "Reported: 92 psi")
	s.run(chromedp.SendKeys(chromedp.CSS("#write textarea"), "/due week\r"))
	s.see(".entry .first", "Due this week: 12 Alder St")
	s.see(".tag", "only you see this")

	// A chart, with the numbers as a table.
	s.run(chromedp.SendKeys(chromedp.CSS("#write textarea"), "plot 12 Alder St\r"))
	s.see(".chart figcaption", "Idle pressure, 12 Alder St")
	label := s.read("document.querySelector('.chart .wide svg').getAttribute('aria-label')")
	if !strings.Contains(label, "rear bibb goes from 62 to 84") || !strings.Contains(label, "80 max is 80 throughout") {
		t.Errorf("the chart says %q", label)
	}
	if rows := s.read("document.querySelectorAll('.chart table tbody tr').length"); rows != "6" {
		t.Errorf("the table of the chart has %s rows", rows)
	}
	s.picture("chart")

	// Somebody else in another tab edits and deletes; this tab follows.
	ts := must[string](t)(s.Say("beto", "field", "", "61 at the hose bibb"))
	s.see(".entry .first", "61 at the hose bibb")
	s.see("#heard", "Beto Marlowick: 61 at the hose bibb")
	check(t, s.Edit("beto", "field", ts, "62 at the hose bibb"))
	s.see(".entry .first", "62 at the hose bibb")
	check(t, s.Delete("beto", "field", ts))
	s.read("![...document.querySelectorAll('.entry')].some(e => e.innerText.includes('hose bibb'))")

	// The clock and the home tab.
	s.press(".clock button", "Next Monday 7:00")
	s.see("#now", "Mon, 9 Mar 2026")
	if got := s.Now().Format("Mon 15:04"); got != "Mon 07:00" {
		t.Errorf("the workspace's clock says %s", got)
	}
	s.press("nav button", "Home: mainbot")
	s.see(".home h4", "Open follow-ups")
	s.picture("home")

	// Another person sees their own places.
	s.press("nav button", "Direct: mainbot")
	s.see("#place", "Direct messages with mainbot")
	s.run(chromedp.SendKeys(chromedp.CSS("#write textarea"), "60 psi\r"))
	s.see(".replies article", "Too high")
	if m := s.Messages(s.DM("rosa", "")); len(m) != 2 {
		t.Errorf("direct messages: %d", len(m))
	}

	// Faults are switched from the page.
	s.read("(document.getElementById('faults').open = true, 'yes')")
	s.press("#faultpanel button", "Send the next event twice")
	wait(t, "the fault", func() bool { return s.Faults().Duplicate == 1 })
	s.see("#faultpanel .tag", "waiting: 1")
	s.picture("faults")
}

func sizes(t *testing.T, b context.Context) {
	s := newStage(t, b)
	s.run(chromedp.SendKeys(chromedp.CSS("#write textarea"), "92 psi rear bibb, 12 Alder St averyveryverylongwordwithoutanyspacethatmustbebrokensomewhere\r"))
	s.see(".replies article", "Too high: 92 psi")
	s.run(chromedp.SendKeys(chromedp.CSS("#write textarea"), "plot 12 Alder St\r"))
	s.see(".chart figcaption", "Idle pressure")
	s.read("(document.querySelectorAll('details').forEach(d => d.open = true), 'yes')")
	fits := func(what string) {
		t.Helper()
		wide := s.read(`[...document.querySelectorAll('body *')].filter(e => e.getBoundingClientRect().right > document.documentElement.clientWidth + 1 && !e.closest('.wide, .skip, .unseen')).map(e => e.tagName + '#' + e.id + '.' + e.className).slice(0, 5).join(' ') || 'none'`)
		if wide != "none" {
			t.Errorf("%s: too wide are %s", what, wide)
		}
		if over := s.read("String(document.documentElement.scrollWidth - document.documentElement.clientWidth)"); over != "0" {
			s.picture("failed")
			t.Errorf("%s: the page is %s px too wide", what, over)
		}
	}
	for _, c := range []struct {
		what  string
		width int64
		scale float64
		dark  bool
	}{{"phone", 360, 1, false}, {"phone-dark", 360, 1, true}, {"enlarged", 640, 2, false}, {"desk-dark", 1200, 1, true}} {
		theme := "light"
		if c.dark {
			theme = "dark"
		}
		s.resize(c.width, 800, c.scale)
		s.theme(theme)
		fits(c.what)
		s.picture(c.what)
	}
	// A text size of twice the usual, which enlarges text alone.
	s.resize(640, 800, 1)
	s.read("(document.documentElement.style.fontSize = '200%', 'yes')")
	fits("text at 200 %")
	s.picture("text-200")
	s.read("(document.documentElement.style.fontSize = '', 'yes')")
	s.press(".replies button", "Correct")
	s.see("dialog[open] h2", "Report")
	s.resize(360, 640, 1)
	fits("a form on a phone")
	if over := s.read("String(Math.max(0, document.querySelector('dialog').scrollWidth - document.querySelector('dialog').clientWidth))"); over != "0" {
		t.Errorf("the form is %s px too wide", over)
	}
	s.picture("form-phone")
}

func keyboard(t *testing.T, b context.Context) {
	s := newStage(t, b)
	must[string](t)(s.Say("rosa", "field", "", "92 psi"))
	s.see(".replies article", "Too high")
	s.read("(document.activeElement.blur(), 'yes')")
	for _, step := range []struct{ keys, want string }{
		{"\t", "document.activeElement.matches('.skip')"},
		{"\r", "document.activeElement.matches('#write textarea')"},
	} {
		s.run(chromedp.KeyEvent(step.keys))
		s.read(step.want)
	}
	// Tab leads from the box to the answer's button.
	for n := 0; ; n++ {
		there, err := chromedp.Run(s.tab, chromedp.Evaluate[bool]("document.activeElement.innerText === 'Correct'"))
		check(t, err)
		if there {
			break
		}
		if n > 25 {
			t.Fatal("the answer's button cannot be reached with Tab")
		}
		s.run(chromedp.KeyEvent("\t"))
	}
	s.run(chromedp.KeyEvent("\r"))
	s.read("document.activeElement.matches('dialog input')")
	s.run(chromedp.KeyEvent("\u001b")) // Escape
	s.read("!document.querySelector('dialog[open]')")
	wait(t, "the closed form", func() bool { return len(s.Views("rosa")) == 0 })
	s.read("document.activeElement.innerText === 'Correct'") // back where it was opened
}

// axe runs axe-core on the main views, light and dark.
func axe(t *testing.T, b context.Context) {
	script, err := os.ReadFile(filepath.Join(npm(t, "browser"), "node_modules", "axe-core", "axe.min.js"))
	check(t, err)
	s := newStage(t, b)
	clean := func(view string) {
		t.Helper()
		for _, theme := range []string{"light", "dark"} {
			s.theme(theme)
			_, err := chromedp.Run(s.tab, chromedp.Evaluate[bool](string(script)+"; true"))
			check(t, err)
			found, err := chromedp.Run(s.tab, chromedp.Evaluate[string](`axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']})
				.then(r => r.violations.flatMap(v => v.nodes.map(n => v.id + ': ' + n.html + ' ' + n.failureSummary)).join('\n') || 'none of ' + r.passes.length + ' rules')`,
				chromedp.EvalAwaitPromise))
			check(t, err)
			if !strings.HasPrefix(found, "none") {
				t.Errorf("%s, %s:\n%s", view, theme, found)
			}
			t.Logf("%s, %s: %s", view, theme, found)
		}
	}
	s.run(chromedp.SendKeys(chromedp.CSS("#write textarea"), "92 psi rear bibb, 12 Alder St\r"))
	s.see(".replies article", "Too high: 92 psi")
	s.run(chromedp.SendKeys(chromedp.CSS("#write textarea"), "plot 12 Alder St\r"))
	s.see(".chart figcaption", "Idle pressure")
	s.read("(document.querySelectorAll('details').forEach(d => d.open = true), 'yes')")
	s.press(".answer button", "Reply")
	clean("the log")
	s.press(".replies button", "Correct")
	s.see("dialog[open] h2", "Report")
	s.press("dialog button", "Save")
	s.see("dialog .wrong", "This field is needed.")
	clean("a form with errors")
	s.press("dialog button", "Cancel")
	s.press("nav button", "Home: mainbot")
	s.see(".home h4", "Open follow-ups")
	clean("the home tab")
}
