package practice_test

import (
	"context"
	"errors"
	"strings"
	"testing"
	"time"

	"github.com/slack-go/slack"
	"github.com/slack-go/slack/slackevents"
	"github.com/slack-go/slack/socketmode"

	"lazyhand/bot/practice"
)

func plain(s string) *slack.TextBlockObject {
	return slack.NewTextBlockObject(slack.PlainTextType, s, false, false)
}

func form() slack.ModalViewRequest {
	psi := slack.NewInputBlock("psi", plain("Pressure in psi"), nil, slack.NewNumberInputBlockElement(nil, "value", false))
	where := slack.NewInputBlock("point", plain("Where"), nil, slack.NewRadioButtonsBlockElement("value",
		slack.NewOptionBlockObject("rear", plain("rear bibb"), nil), slack.NewOptionBlockObject("main", plain("main"), nil)))
	note := slack.NewInputBlock("note", plain("Note"), nil, slack.NewPlainTextInputBlockElement(nil, "value")).WithOptional(true)
	return slack.ModalViewRequest{Type: slack.VTModal, Title: plain("Report"), Submit: plain("Save"), Close: plain("Cancel"),
		CallbackID: "report", Blocks: slack.Blocks{BlockSet: []slack.Block{psi, where, note}}}
}

func TestButtonOpensModal(t *testing.T) {
	s := open(t, practice.Options{})
	var answer any
	e := s.listen(t, func(evt socketmode.Event) any {
		call, ok := evt.Data.(slack.InteractionCallback)
		if !ok {
			return nil
		}
		switch call.Type {
		case slack.InteractionTypeBlockActions:
			if _, err := s.api.OpenView(call.TriggerID, form()); err != nil {
				t.Error(err)
			}
		case slack.InteractionTypeViewSubmission:
			return answer
		}
		return nil
	})
	report := must[string](t)(s.Say("rosa", "field", "", "92 psi"))
	button := slack.NewButtonBlockElement("fix", "row-1", plain("Correct"))
	_, ts, err := s.api.PostMessage(s.Channel("field"), slack.MsgOptionTS(report), slack.MsgOptionText("Which house?", false),
		slack.MsgOptionBlocks(slack.NewActionBlock("next", button)))
	check(t, err)
	ctx := context.Background()
	check(t, s.Press(ctx, practice.Press{User: "rosa", Channel: "field", TS: ts, ActionID: "fix"}))
	press := data[slack.InteractionCallback](e)[0]
	if a := press.ActionCallback.BlockActions[0]; a.Value != "row-1" || a.BlockID != "next" || press.User.ID != "U00000001" ||
		press.Container.MessageTs != ts || press.Container.ThreadTs != report || press.Message.Timestamp != ts {
		t.Errorf("the press arrived as %+v", press)
	}
	wait(t, "the modal", func() bool { return len(s.Views("rosa")) == 1 })
	v := s.Views("rosa")[0]
	if v.Title != "Report" || v.CallbackID != "report" {
		t.Errorf("modal %+v", v)
	}
	if _, err := s.api.OpenView(press.TriggerID, form()); err == nil || err.Error() != "exchanged_trigger_id" {
		t.Errorf("a trigger twice: %v", err)
	}

	values := func(psi, point string) map[string]map[string]practice.Entered {
		return map[string]map[string]practice.Entered{"psi": {"value": {psi}}, "point": {"value": {point}}}
	}
	out := must[practice.Outcome](t)(s.Submit(ctx, "rosa", v.ID, map[string]map[string]practice.Entered{"psi": {"value": {"82"}}}))
	if out.Errors["point"] == "" || out.Errors["psi"] != "" {
		t.Errorf("nothing chosen: %+v", out)
	}
	out = must[practice.Outcome](t)(s.Submit(ctx, "rosa", v.ID, values("eighty", "rear")))
	if out.Errors["psi"] != "Enter a number." || out.Open != v.ID {
		t.Errorf("a word for a number: %+v", out)
	}
	answer = map[string]any{"response_action": "errors", "errors": map[string]string{"psi": "No gauge reads that high."}}
	out = must[practice.Outcome](t)(s.Submit(ctx, "rosa", v.ID, values("820", "rear")))
	if out.Errors["psi"] != "No gauge reads that high." || len(s.Views("rosa")) != 1 {
		t.Errorf("the app's own error: %+v", out)
	}
	second := form()
	second.Title = plain("Sure?")
	answer = slack.NewPushViewSubmissionResponse(&second)
	out = must[practice.Outcome](t)(s.Submit(ctx, "rosa", v.ID, values("82", "main")))
	if open := s.Views("rosa"); len(open) != 2 || open[1].Title != "Sure?" || out.Open != open[1].ID {
		t.Errorf("pushed: %+v, open %+v", out, open)
	}
	answer = slack.NewClearViewSubmissionResponse()
	out = must[practice.Outcome](t)(s.Submit(ctx, "rosa", out.Open, values("82", "main")))
	if out.Open != "" || len(s.Views("rosa")) != 0 {
		t.Errorf("cleared: %+v", out)
	}
	all := data[slack.InteractionCallback](e)
	last := all[len(all)-1]
	if got := last.View.State.Values["point"]["value"].SelectedOption.Value; got != "main" || last.View.State.Values["psi"]["value"].Value != "82" {
		t.Errorf("what was entered: %s", asJSON(t, last.View.State))
	}
}

func TestModalsAreThreeDeep(t *testing.T) {
	app := practice.MainApp("mainbot")
	app.Commands = []practice.Command{{Name: "/open"}, {Name: "/push"}}
	s := open(t, practice.Options{Apps: []practice.AppOptions{app}})
	var results []string // filled before each acknowledgement
	s.listen(t, func(evt socketmode.Event) any {
		call, ok := evt.Data.(slack.SlashCommand)
		if !ok {
			return nil
		}
		show := s.api.OpenView
		if call.Command == "/push" {
			show = s.api.PushView
		}
		if _, err := show(call.TriggerID, form()); err != nil {
			results = append(results, err.Error())
		} else {
			results = append(results, "ok")
		}
		return nil
	})
	for _, command := range []string{"/push", "/open", "/push", "/push", "/push"} {
		check(t, s.Slash(context.Background(), "rosa", "field", command, ""))
	}
	if got := strings.Join(results, ", "); got != "view_not_found, ok, ok, ok, push_limit_reached" {
		t.Errorf("got %s", got)
	}
	top := s.Views("rosa")
	check(t, s.CloseView(context.Background(), "rosa", top[1].ID))
	if n := len(s.Views("rosa")); n != 1 {
		t.Errorf("%d modals after the middle one was closed", n)
	}
}

func TestUpdateAndPublishGuardedByHash(t *testing.T) {
	s := open(t, practice.Options{})
	e := s.listen(t, nil)
	check(t, s.OpenHome("dee", "", "home"))
	wait(t, "app_home_opened", func() bool { return len(inner[*slackevents.AppHomeOpenedEvent](e)) == 1 })
	if ev := inner[*slackevents.AppHomeOpenedEvent](e)[0]; ev.Tab != "home" || ev.User != "U00000004" || ev.Channel != s.DM("dee", "") {
		t.Errorf("app_home_opened %+v", ev)
	}
	home := func(line, hash string) (*slack.ViewResponse, error) {
		req := slack.PublishViewContextRequest{UserID: "U00000004", View: slack.HomeTabViewRequest{Type: slack.VTHomeTab,
			Blocks: slack.Blocks{BlockSet: []slack.Block{slack.NewSectionBlock(plain(line), nil, nil)}}}}
		if hash != "" {
			req.Hash = &hash
		}
		return s.api.PublishViewContext(context.Background(), req)
	}
	first := must[*slack.ViewResponse](t)(home("Open alerts: 1", ""))
	second := must[*slack.ViewResponse](t)(home("Open alerts: 2", first.Hash))
	_, err := home("Open alerts: 3", first.Hash)
	refused(t, err, "hash_conflict")
	if second.ID != first.ID {
		t.Error("the home tab has become another view")
	}
	if v, ok := s.Home("", "dee"); !ok || !strings.Contains(string(v.Blocks), "Open alerts: 2") {
		t.Errorf("home %s", v.Blocks)
	}
	if _, ok := s.Home("", "rosa"); ok {
		t.Error("a home tab of dee is shown to rosa")
	}
	var wide []slack.Block
	for range 101 {
		wide = append(wide, slack.NewDividerBlock())
	}
	_, err = s.api.PublishViewContext(context.Background(), slack.PublishViewContextRequest{UserID: "U00000004",
		View: slack.HomeTabViewRequest{Type: slack.VTHomeTab, Blocks: slack.Blocks{BlockSet: wide}}})
	refused(t, err, "invalid_arguments")
}

func TestSlashCommand(t *testing.T) {
	app := practice.MainApp("mainbot")
	app.Commands = []practice.Command{{Name: "/lazyhand"}}
	s := open(t, practice.Options{Apps: []practice.AppOptions{app, practice.SecondApp()}})
	ctx := context.Background()
	var say any
	e := s.listen(t, func(evt socketmode.Event) any {
		if _, ok := evt.Data.(slack.SlashCommand); ok {
			return say
		}
		return nil
	})
	say = map[string]any{"text": "Nothing is due."}
	check(t, s.Slash(ctx, "rosa", "field", "/lazyhand", "due"))
	if c := data[slack.SlashCommand](e)[0]; c.Command != "/lazyhand" || c.Text != "due" || c.UserID != "U00000001" || c.ChannelName != "field" {
		t.Errorf("command %+v", c)
	}
	if m := s.Messages("field"); len(m) != 1 || m[0].Ephemeral != "U00000001" || m[0].Text != "Nothing is due." {
		t.Errorf("answer %+v", m)
	}
	// Later answers go to the response address: five at most, for 30 minutes.
	address := data[slack.SlashCommand](e)[0].ResponseURL
	for n := range 5 {
		err := slack.PostWebhook(address, &slack.WebhookMessage{Text: "more", ResponseType: "in_channel"})
		if (err == nil) != (n < 4) {
			t.Errorf("answer %d: %v", n+2, err)
		}
	}
	say = nil
	check(t, s.Slash(ctx, "rosa", "field", "/lazyhand", "due"))
	check(t, s.Advance(31*time.Minute))
	if slack.PostWebhook(data[slack.SlashCommand](e)[1].ResponseURL, &slack.WebhookMessage{Text: "late"}) == nil {
		t.Error("a response address worked after 31 minutes")
	}
}

func TestShortcutCarriesTheMessage(t *testing.T) {
	app := practice.MainApp("mainbot")
	app.Shortcuts = []practice.Shortcut{{Name: "Report this", CallbackID: "report_this"}}
	s := open(t, practice.Options{Apps: []practice.AppOptions{app}})
	e := s.listen(t, nil)
	ts := must[string](t)(s.Say("beto", "field", "", "84 at the rear"))
	check(t, s.Shortcut(context.Background(), "rosa", "field", ts, "report_this"))
	got := data[slack.InteractionCallback](e)[0]
	if got.Type != slack.InteractionTypeMessageAction || got.CallbackID != "report_this" || got.Message.Text != "84 at the rear" ||
		got.Message.User != "U00000002" || got.User.ID != "U00000001" || got.TriggerID == "" {
		t.Errorf("shortcut %+v", got)
	}
	err := s.Shortcut(context.Background(), "rosa", "field", ts, "nobody_has_this")
	if !errors.Is(err, practice.ErrNotThere) {
		t.Errorf("an unknown shortcut: %v", err)
	}
}

func TestNobodyAnswers(t *testing.T) {
	s := open(t, practice.Options{AckWithin: 50 * time.Millisecond})
	err := s.Slash(context.Background(), "rosa", "field", "/due", "")
	if !errors.Is(err, practice.ErrNoAnswer) {
		t.Errorf("with no app on a socket: %v", err)
	}
}

// An app that is installed from a manifest may do what the manifest says, and
// offers its commands and shortcuts.
func TestInstalledFromAManifest(t *testing.T) {
	manifest := `{"display_information":{"name":"Gauge"},"features":{"app_home":{"home_tab_enabled":false},"bot_user":{"display_name":"gauge"},
		"shortcuts":[{"name":"Report this","type":"message","callback_id":"this"},{"name":"Report a reading","type":"global","callback_id":"any"}],
		"slash_commands":[{"command":"/gauge","usage_hint":"due","should_escape":true}]},
		"oauth_config":{"scopes":{"bot":["chat:write","commands","channels:history"]}},
		"settings":{"event_subscriptions":{"bot_events":["message.channels"]},"interactivity":{"is_enabled":true}}}`
	app, err := practice.FromManifest([]byte(manifest))
	check(t, err)
	s := open(t, practice.Options{Apps: []practice.AppOptions{app, practice.SecondApp()}})
	e := s.listen(t, nil)
	ctx := context.Background()
	check(t, s.GlobalShortcut(ctx, "rosa", "any"))
	check(t, s.Slash(ctx, "rosa", "field", "/gauge", "ask @dee about 12 Elm & Oak"))
	if got := data[slack.InteractionCallback](e)[0]; got.Type != slack.InteractionTypeShortcut || got.CallbackID != "any" || got.TriggerID == "" {
		t.Errorf("global shortcut %+v", got)
	}
	if got := data[slack.SlashCommand](e)[0].Text; got != "ask <@U00000004> about 12 Elm &amp; Oak" {
		t.Errorf("command text %q", got)
	}
	refused(t, s.api.AddReaction("eyes", slack.NewRefToMessage(s.Channel("field"), "1.000001")), "missing_scope")
	_, err = s.api.PublishViewContext(ctx, slack.PublishViewContextRequest{UserID: "U00000001", View: slack.HomeTabViewRequest{Type: slack.VTHomeTab}})
	refused(t, err, "not_enabled")
	if err := s.Shortcut(ctx, "rosa", "field", "1.000001", "any"); !errors.Is(err, practice.ErrNotThere) {
		t.Errorf("a global shortcut on a message: %v", err)
	}
	for _, bad := range []string{"", "{}", strings.Replace(manifest, `"is_enabled":true`, `"is_enabled":false`, 1)} {
		if _, err := practice.FromManifest([]byte(bad)); err == nil {
			t.Errorf("took the manifest %s", bad)
		}
	}
}
