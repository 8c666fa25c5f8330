package practice_test

import (
	"bytes"
	"context"
	"image"
	"image/color"
	"image/png"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/slack-go/slack"
)

// TestPage drives the page in one headless Chromium, a tab for each part.
func TestPage(t *testing.T) {
	t.Parallel()
	b := browser(t)
	t.Run("a tech's conversation with a bot", func(t *testing.T) { conversation(t, b) })
	if testing.Short() {
		return // the rest takes most of the time
	}
	t.Run("every block is drawn", func(t *testing.T) { gallery(t, b) })
	t.Run("text is never read as HTML", func(t *testing.T) { texts(t, b) })
	t.Run("by keyboard alone", func(t *testing.T) { keyboard(t, b) })
	t.Run("small, enlarged and dark", func(t *testing.T) { sizes(t, b) })
	t.Run("axe-core finds nothing against WCAG A and AA", func(t *testing.T) { axe(t, b) })
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

// gallery shows one of each block and element, a picture of the workspace's
// own, and goes where a link leads.
func gallery(t *testing.T, b context.Context) {
	s := newStage(t, b)
	for _, block := range specimens {
		var blocks slack.Blocks
		check(t, blocks.UnmarshalJSON([]byte("["+block+"]")))
		_, _, err := s.api.PostMessage(s.Channel("team"), slack.MsgOptionText("specimen", false), slack.MsgOptionBlocks(blocks.BlockSet...))
		check(t, err)
	}
	pie := slack.NewDataVisualizationBlock("Findings", slack.NewDataVisualizationPieChart(slack.NewDataVisualizationSegment("too high", 3), slack.NewDataVisualizationSegment("fine", 9)))
	bars := slack.NewDataVisualizationBlock("Readings", slack.NewDataVisualizationBarChart(slack.NewDataVisualizationAxisConfig("Jan", "Feb"),
		slack.NewDataVisualizationDataSeries("rear", slack.NewDataVisualizationDataPoint("Jan", 4), slack.NewDataVisualizationDataPoint("Feb", 7)),
		slack.NewDataVisualizationDataSeries("main", slack.NewDataVisualizationDataPoint("Jan", 2), slack.NewDataVisualizationDataPoint("Feb", 3))))
	_, last, err := s.api.PostMessage(s.Channel("team"), slack.MsgOptionText("charts", false), slack.MsgOptionBlocks(pie, bars))
	check(t, err)
	dot := image.NewGray(image.Rect(0, 0, 240, 120))
	for x := range 240 {
		dot.SetGray(x, x/2, color.Gray{Y: 255})
	}
	var file bytes.Buffer
	check(t, png.Encode(&file, dot))
	_, err = s.api.UploadFileContext(context.Background(), slack.UploadFileParameters{Reader: &file, FileSize: file.Len(), Filename: "plot.png",
		Title: "Drift", Channel: s.Channel("team"), AltTxt: "The pressure rises"})
	check(t, err)
	s.press("nav button", "#team new")
	s.read("document.querySelectorAll('.entry').length === " + strconv.Itoa(len(specimens)+2))
	if undrawn := s.read("[...document.querySelectorAll('.context')].map(e => e.innerText).filter(x => x.includes('does not draw')).join(' ') || 'none'"); undrawn != "none" {
		t.Errorf("not drawn: %s", undrawn)
	}
	s.read("(() => { const i = document.querySelector('.entry img[alt=\"The pressure rises\"]'); return i && i.naturalWidth === 240; })()")
	s.picture("gallery")

	// A permanent link leads to its message, even far down.
	for range 50 {
		must[string](t)(s.Say("rosa", "team", "", "60 psi"))
	}
	link := must[string](t)(s.api.GetPermalink(&slack.PermalinkParameters{Channel: s.Channel("team"), Ts: last}))
	s.run(chromedp.Navigate(link))
	s.read("document.activeElement.innerText.includes('Findings')")
	s.run(chromedp.Navigate("about:blank"), chromedp.Navigate(s.url+"/#home:"+s.Apps()[0].ID))
	s.see(".home h4", "Open follow-ups")
	if who := s.read("document.getElementById('who').value"); who != "U00000001" {
		t.Errorf("after the link the tab belongs to %s", who)
	}
}

// texts puts texts in the platform's form through the page's own code.
func texts(t *testing.T, b context.Context) {
	s := newStage(t, b)
	for _, c := range []struct{ text, want string }{
		{"*Too high: 92 psi*, was ~62~ _now_ `84`", "<strong>Too high: 92 psi</strong>, was <s>62</s> <em>now</em> <code>84</code>"},
		{"snake_case_name and 2*3*4 and a~b~c", "snake_case_name and 2*3*4 and a~b~c"},
		{"&lt;script&gt;alert(1)&lt;/script&gt; &amp;amp;", "&lt;script&gt;alert(1)&lt;/script&gt; &amp;amp;"},
		{"<script>alert(1)</script>", "scriptalert(1)/script"}, // unknown references are their text
		{"<https://example.com/?a=1&amp;b=2|<b>map</b>>", `&lt;https://example.com/?a=1&amp;b=2|bmap/b&gt;`},
		{"<javascript:alert(1)|press me>", "press me"},
		{"<@U00000001> <#C00000001|field> <!here> <@U404|x>", `<span class="mention">@Rosa Quillfeather</span> <span class="mention">#field</span> <span class="mention">@here</span> <span class="mention">@x</span>`},
		{"<!date^1772619300^{date_short} {time}|4 March 10:15>", `<span class="date">4 March 10:15</span>`},
		{"&gt; quoted\nanswer", "<blockquote>quoted</blockquote>answer"},
		{"one\ntwo", "one<br>two"},
		{":eyes: :no_such_thing:", `<span role="img" aria-label="eyes">👀</span> :no_such_thing:`},
		{"<https://example.com|12 Alder St>", `<a href="https://example.com" rel="noopener noreferrer" target="_blank">12 Alder St</a>`},
	} {
		got, err := chromedp.Run(s.tab, chromedp.Evaluate[string](`import('/mrkdwn.js').then(m => { const d = document.createElement('div'); d.append(...m.mrkdwn(`+asJSON(t, c.text)+`, {U00000001: 'Rosa Quillfeather'}).flat(9)); return d.innerHTML; })`, chromedp.EvalAwaitPromise))
		check(t, err)
		if got != c.want {
			t.Errorf("%q became\n%s, want\n%s", c.text, got, c.want)
		}
	}
}

// axe runs axe-core on the main views, light and dark.
func axe(t *testing.T, b context.Context) {
	script, err := os.ReadFile(filepath.Join(npm(t, "browser"), "node_modules", "axe-core", "axe.min.js"))
	check(t, err)
	s := newStage(t, b)
	_, err = chromedp.Run(s.tab, chromedp.Evaluate[bool](string(script)+"; true"))
	check(t, err)
	clean := func(view string) {
		t.Helper()
		for _, theme := range []string{"light", "dark"} {
			s.theme(theme)
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
	for _, block := range specimens {
		var blocks slack.Blocks
		check(t, blocks.UnmarshalJSON([]byte("["+block+"]")))
		_, _, err := s.api.PostMessage(s.Channel("team"), slack.MsgOptionText("specimen", false), slack.MsgOptionBlocks(blocks.BlockSet...))
		check(t, err)
	}
	s.press("nav button", "#team new")
	s.read("document.querySelectorAll('.entry').length === " + strconv.Itoa(len(specimens)))
	clean("one of each block")
}
