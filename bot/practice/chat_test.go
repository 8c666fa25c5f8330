package practice_test

import (
	"context"
	"encoding/json"
	"net/http"
	"net/url"
	"strings"
	"testing"

	"github.com/slack-go/slack"

	"lazyhand/bot/practice"
)

func TestWhoAmI(t *testing.T) {
	s := open(t, practice.Options{})
	got := must[*slack.AuthTestResponse](t)(s.api.AuthTest())
	a := s.Apps()[0]
	if got.UserID != a.BotUserID || got.BotID != a.BotID || got.TeamID != s.TeamID() {
		t.Errorf("auth.test says %+v, the app is %+v", got, a)
	}
	if scopes := got.Header.Get("X-OAuth-Scopes"); !strings.Contains(scopes, "chat:write") {
		t.Errorf("the scopes header is %q", scopes)
	}
	_, err := slack.New("xoxb-wrong", slack.OptionAPIURL(s.url+"/api/")).AuthTest()
	refused(t, err, "invalid_auth")
	s.Revoke(a.BotToken)
	_, err = s.api.AuthTest()
	refused(t, err, "token_revoked")
}

func TestTokensAndScopes(t *testing.T) {
	reader := practice.MainApp("reader")
	reader.Scopes = []string{"channels:history", "reactions:write"}
	s := open(t, practice.Options{Apps: []practice.AppOptions{reader}})
	_, _, err := s.api.PostMessage(s.Channel("field"), slack.MsgOptionText("hello", false))
	refused(t, err, "missing_scope")
	ask := func(method, token string, form url.Values) map[string]any {
		req, err := http.NewRequest("POST", s.url+"/api/"+method, strings.NewReader(form.Encode()))
		check(t, err)
		req.Header.Set("Content-Type", "application/x-www-form-urlencoded")
		if token != "" {
			req.Header.Set("Authorization", "Bearer "+token)
		}
		resp := must[*http.Response](t)(http.DefaultClient.Do(req))
		defer resp.Body.Close()
		var out map[string]any
		check(t, json.NewDecoder(resp.Body).Decode(&out))
		return out
	}
	a := s.Apps()[0]
	for _, c := range []struct {
		what, method, token string
		form                url.Values
		want                string
	}{
		{"no token", "auth.test", "", nil, "not_authed"},
		{"token in the form", "auth.test", "", url.Values{"token": {a.BotToken}}, ""},
		{"app-level token in the form", "apps.connections.open", "", url.Values{"token": {a.AppToken}}, "not_authed"},
		{"bot token for a socket", "apps.connections.open", a.BotToken, nil, "not_allowed_token_type"},
		{"app-level token for a post", "chat.postMessage", a.AppToken, nil, "not_allowed_token_type"},
		{"no such method", "chat.shout", a.BotToken, nil, "unknown_method"},
		{"scope of the other kind of channel", "conversations.history", a.BotToken, url.Values{"channel": {s.DM("rosa", "")}}, "missing_scope"},
	} {
		got := ask(c.method, c.token, c.form)
		if e, _ := got["error"].(string); e != c.want {
			t.Errorf("%s: %v, want error %q", c.what, got, c.want)
		}
	}
	if got := ask("users.list", a.BotToken, nil); got["needed"] != "users:read" || got["provided"] != "channels:history,reactions:write" {
		t.Errorf("a missing scope is named: %v", got)
	}
}

func TestPostUpdateDelete(t *testing.T) {
	s := open(t, practice.Options{})
	field := s.Channel("field")
	report := must[string](t)(s.Say("rosa", "field", "", "92 rear bibb <idle> & @mainbot https://maps.example.com/?q=1"))
	_, ts, err := s.api.PostMessage(field, slack.MsgOptionText("Too high: 92 psi", false), slack.MsgOptionTS(report),
		slack.MsgOptionMetadata(slack.SlackMetadata{EventType: "reply", EventPayload: map[string]any{"key": "reply:7"}}))
	check(t, err)
	_, _, _, err = s.api.UpdateMessage(field, ts, slack.MsgOptionText("Too high: 92 psi at the rear bibb", false))
	check(t, err)

	msgs, more, _, err := s.api.GetConversationReplies(&slack.GetConversationRepliesParameters{ChannelID: field, Timestamp: report, IncludeAllMetadata: true})
	check(t, err)
	if len(msgs) != 2 || more {
		t.Fatalf("the thread has %d messages, more: %v", len(msgs), more)
	}
	if want := "92 rear bibb &lt;idle&gt; &amp; <@" + s.Apps()[0].BotUserID + "> <https://maps.example.com/?q=1>"; msgs[0].Text != want {
		t.Errorf("a typed text arrives as %q, want %q", msgs[0].Text, want)
	}
	if msgs[0].ReplyCount != 1 || msgs[0].ThreadTimestamp != report || msgs[1].ThreadTimestamp != report {
		t.Errorf("parent %+v, reply %+v", msgs[0].Msg, msgs[1].Msg)
	}
	reply := msgs[1]
	if reply.Text != "Too high: 92 psi at the rear bibb" || reply.Edited == nil || reply.BotID != s.Apps()[0].BotID {
		t.Errorf("after the update: %+v", reply.Msg)
	}
	if reply.Metadata.EventType != "reply" || reply.Metadata.EventPayload["key"] != "reply:7" {
		t.Errorf("metadata survive an update without: %+v", reply.Metadata)
	}
	// Without asking for them, the payload is not shown.
	msgs, _, _, err = s.api.GetConversationReplies(&slack.GetConversationRepliesParameters{ChannelID: field, Timestamp: report})
	check(t, err)
	if len(msgs[1].Metadata.EventPayload) != 0 {
		t.Errorf("metadata that nobody asked for: %+v", msgs[1].Metadata)
	}

	hist := must[*slack.GetConversationHistoryResponse](t)(s.api.GetConversationHistory(&slack.GetConversationHistoryParameters{ChannelID: field}))
	if len(hist.Messages) != 1 {
		t.Errorf("replies are not in the history: %d messages", len(hist.Messages))
	}
	_, _, err = s.api.DeleteMessage(field, report)
	refused(t, err, "cant_delete_message")
	_, _, err = s.api.DeleteMessage(field, ts)
	check(t, err)
	if n := len(s.Thread("field", report)); n != 1 {
		t.Errorf("%d messages after the reply was deleted", n)
	}
	link := must[string](t)(s.api.GetPermalink(&slack.PermalinkParameters{Channel: field, Ts: report}))
	if !strings.HasPrefix(link, s.url+"/archives/"+field+"/p") {
		t.Errorf("permalink %s", link)
	}
}

func TestRefusalsOfPosts(t *testing.T) {
	private := practice.ChannelOptions{Name: "owners", Private: true, Members: []string{"owen"}, NoApps: true}
	left := practice.ChannelOptions{Name: "yard", NoApps: true}
	s := open(t, practice.Options{Channels: append(practice.DefaultChannels(), private, left)})
	field := s.Channel("field")
	post := func(channel string, o ...slack.MsgOption) error {
		_, _, err := s.api.PostMessage(channel, o...)
		return err
	}
	hi := slack.MsgOptionText("hi", false)
	refused(t, post("C99999999", hi), "channel_not_found")
	refused(t, post(s.Channel("owners"), hi), "channel_not_found")
	refused(t, post(s.Channel("yard"), hi), "not_in_channel")
	refused(t, post(field), "no_text")
	refused(t, post(field, hi, slack.MsgOptionTS("1700000000.000001")), "message_not_found")
	refused(t, post(field, hi, slack.MsgOptionMetadata(slack.SlackMetadata{EventPayload: map[string]any{"a": "b"}})), "invalid_metadata_format")
	long := slack.NewHeaderBlock(slack.NewTextBlockObject(slack.PlainTextType, strings.Repeat("x", 151), false, false))
	refused(t, post(field, hi, slack.MsgOptionBlocks(long)), "invalid_blocks")
	var many []slack.Block
	for range 51 {
		many = append(many, slack.NewDividerBlock())
	}
	refused(t, post(field, hi, slack.MsgOptionBlocks(many...)), "invalid_blocks")
	var wordy []slack.Block
	for range 5 {
		wordy = append(wordy, slack.NewSectionBlock(slack.NewTextBlockObject(slack.PlainTextType, strings.Repeat("x", 2900), false, false), nil, nil))
	}
	refused(t, post(field, hi, slack.MsgOptionBlocks(wordy...)), "msg_blocks_too_long")
	check(t, post(field, slack.MsgOptionText(strings.Repeat("y", 41000), false)))
	msgs := s.Messages("field")
	last := msgs[len(msgs)-1]
	if len(last.Text) != 40000 {
		t.Errorf("a text above 40,000 characters is cut to %d", len(last.Text))
	}
	_, _, _, err := s.api.UpdateMessage(field, last.TS, slack.MsgOptionText(strings.Repeat("y", 4001), false))
	refused(t, err, "msg_too_long")

	check(t, post("U00000001", hi)) // to a person: opens the direct messages
	if dm := s.Messages(s.DM("rosa", "")); len(dm) != 1 || dm[0].Text != "hi" {
		t.Errorf("direct messages: %+v", dm)
	}
	if _, _, _, err := s.api.JoinConversation(s.Channel("yard")); err != nil {
		t.Error(err)
	}
	check(t, post(s.Channel("yard"), hi))
}

func TestEveryTsIsItsOwn(t *testing.T) {
	s := open(t, practice.Options{})
	seen := map[string]bool{}
	last := ""
	for range 200 {
		ts := must[string](t)(s.Say("rosa", "field", "", "60 psi"))
		if seen[ts] || ts <= last {
			t.Fatalf("ts %s after %s", ts, last)
		}
		seen[ts], last = true, ts
	}
	// Read back from the newest known, in pages.
	all := s.Messages("field")
	known := all[120].TS
	var back []string
	p := &slack.GetConversationHistoryParameters{ChannelID: s.Channel("field"), Oldest: known, Limit: 30}
	for {
		h := must[*slack.GetConversationHistoryResponse](t)(s.api.GetConversationHistory(p))
		for _, m := range h.Messages {
			back = append(back, m.Timestamp)
		}
		if !h.HasMore {
			break
		}
		p.Cursor = h.ResponseMetaData.NextCursor
	}
	if len(back) != 79 || back[0] != last || back[78] != all[121].TS {
		t.Errorf("read back %d messages, newest %s, oldest %s", len(back), back[0], back[len(back)-1])
	}
}

func TestReactions(t *testing.T) {
	s := open(t, practice.Options{})
	ts := must[string](t)(s.Say("rosa", "field", "", "60 psi"))
	ref := slack.NewRefToMessage(s.Channel("field"), ts)
	check(t, s.api.AddReaction("white_check_mark", ref))
	refused(t, s.api.AddReaction("white_check_mark", ref), "already_reacted")
	check(t, s.React("dee", "field", ts, "eyes"))
	got := must[slack.ReactedItem](t)(s.api.GetReactions(ref, slack.NewGetReactionsParameters()))
	if len(got.Reactions) != 2 || got.Reactions[1].Name != "eyes" || got.Reactions[1].Users[0] != "U00000004" {
		t.Errorf("reactions %+v", got)
	}
	check(t, s.api.RemoveReaction("white_check_mark", ref))
	refused(t, s.api.RemoveReaction("white_check_mark", ref), "no_reaction")
	refused(t, s.api.AddReaction("eyes", slack.NewRefToMessage(s.Channel("field"), "1.000001")), "message_not_found")
}

func TestPeopleChannelsAndGroups(t *testing.T) {
	s := open(t, practice.Options{})
	users := must[[]slack.User](t)(s.api.GetUsers())
	if len(users) != 7 {
		t.Errorf("%d users, want five people and two bots", len(users))
	}
	u := must[*slack.User](t)(s.api.GetUserInfo("U00000001"))
	if u.Name != "rosa" || u.TZ != "UTC" || u.IsBot {
		t.Errorf("users.info %+v", u)
	}
	chans, _, err := s.api.GetConversations(&slack.GetConversationsParameters{Types: []string{"public_channel", "private_channel"}, Limit: 2})
	check(t, err)
	if len(chans) != 2 || chans[0].Name != "field" || !chans[0].IsMember {
		t.Errorf("conversations.list %+v", chans)
	}
	s.Remove("team", "mainbot")
	mine, _, err := s.api.GetConversationsForUser(&slack.GetConversationsForUserParameters{})
	check(t, err)
	if len(mine) != 2 {
		t.Errorf("users.conversations %+v", mine)
	}
	info := must[*slack.Channel](t)(s.api.GetConversationInfo(&slack.GetConversationInfoInput{ChannelID: s.Channel("team")}))
	if info.Name != "team" {
		t.Errorf("conversations.info %+v", info)
	}
	members, _, err := s.api.GetUsersInConversation(&slack.GetUsersInConversationParameters{ChannelID: s.Channel("dispatch")})
	check(t, err)
	if len(members) != 4 {
		t.Errorf("members of dispatch: %v", members)
	}
	group := must[[]string](t)(s.api.GetUserGroupMembers("S00000002"))
	if strings.Join(group, " ") != "U00000004 U00000005" {
		t.Errorf("dispatchers: %v", group)
	}
	dm, _, _, err := s.api.OpenConversation(&slack.OpenConversationParameters{Users: []string{"U00000002"}})
	check(t, err)
	if dm.ID != s.DM("beto", "") {
		t.Errorf("conversations.open gave %s", dm.ID)
	}
}

func TestAnotherClientCanPlayAPerson(t *testing.T) {
	s := open(t, practice.Options{})
	rosa := slack.New(s.UserToken("rosa"), slack.OptionAPIURL(s.url+"/api/"))
	_, ts, err := rosa.PostMessageContext(context.Background(), s.Channel("field"), slack.MsgOptionText("60 psi", false))
	check(t, err)
	m := s.Thread("field", ts)[0]
	if m.User != "U00000001" || m.AppID != "" {
		t.Errorf("posted by %+v", m)
	}
	_, err = rosa.PublishViewContext(context.Background(), slack.PublishViewContextRequest{UserID: "U00000001", View: slack.HomeTabViewRequest{Type: slack.VTHomeTab}})
	refused(t, err, "not_allowed_token_type")
}

func TestEphemeral(t *testing.T) {
	s := open(t, practice.Options{})
	_, err := s.api.PostEphemeral(s.Channel("field"), "U00000001", slack.MsgOptionText("only you see this", false))
	check(t, err)
	hist := must[*slack.GetConversationHistoryResponse](t)(s.api.GetConversationHistory(&slack.GetConversationHistoryParameters{ChannelID: s.Channel("field")}))
	if len(hist.Messages) != 0 {
		t.Error("an ephemeral message is in the history")
	}
	if m := s.Messages("field"); len(m) != 1 || m[0].Ephemeral != "U00000001" {
		t.Errorf("messages %+v", m)
	}
	_, err = s.api.PostEphemeral(s.Channel("dispatch"), "U00000001", slack.MsgOptionText("x", false))
	refused(t, err, "user_not_in_channel")
}
