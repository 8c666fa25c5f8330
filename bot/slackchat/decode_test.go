package slackchat

import (
	"encoding/json"
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"lazyhand/bot/desk"
)

var me = self{userID: "UBOT", botID: "BBOT", teamID: "T1"}

// callbackOf wraps an inner event.
func callbackOf(inner string) []byte {
	return []byte(`{"type":"event_callback","team_id":"T1","event_id":"Ev1","event":` + inner + `}`)
}

func TestMessagesByKind(t *testing.T) {
	const said = `"channel":"C1","channel_type":"channel","user":"U1","ts":"1764072000.000100","text":"92 rear, 123 Elm"`
	tests := []struct {
		what, inner string
		verdict     Verdict
		why         string
		key         string // of the last message for the desk
	}{
		{"plain", `{"type":"message",` + said + `}`, Taken, "message", "C1/1764072000.000100"},
		{"a reply shown in the channel", `{"type":"message","subtype":"thread_broadcast","thread_ts":"1764071000.000100",` + said + `}`, Taken, "message", "C1/1764072000.000100"},
		{"me", `{"type":"message","subtype":"me_message",` + said + `}`, Taken, "message", "C1/1764072000.000100"},
		{"somebody joins", `{"type":"message","subtype":"channel_join",` + said + `}`, Ignored, "message of subtype channel_join", ""},
		{"a huddle", `{"type":"message","subtype":"huddle_thread",` + said + `}`, Ignored, "message of subtype huddle_thread", ""},
		{"ours, by user", `{"type":"message","channel":"C1","user":"UBOT","ts":"1764072000.000100","text":"x"}`, Ignored, "our own message", ""},
		{"ours, by bot id", `{"type":"message","channel":"C1","user":"U9","bot_id":"BBOT","ts":"1764072000.000100","text":"x"}`, Ignored, "our own message", ""},
		{"another app", `{"type":"message","channel":"C1","user":"U9","bot_id":"B2","ts":"1764072000.000100","text":"x"}`, Ignored, "message of another app", ""},
		{"the platform's own", `{"type":"message","channel":"C1","user":"USLACKBOT","ts":"1764072000.000100","text":"x"}`, Ignored, "message of the platform", ""},
		{"an edit", `{"type":"message","subtype":"message_changed","channel":"C1","ts":"1764072100.000300","message":{"user":"U1","ts":"1764072000.000100","text":"82 rear","edited":{"ts":"1764072100.000000"}},"previous_message":{"user":"U1","ts":"1764072000.000100","text":"92 rear"}}`, Taken, "edit", "C1/1764072000.000100#edited:1764072100.000000"},
		{"an edit whose message names nobody", `{"type":"message","subtype":"message_changed","channel":"C1","message":{"ts":"1764072000.000100","text":"82 rear","edited":{"ts":"1764072100.000000"}},"previous_message":{"user":"U1","ts":"1764072000.000100","text":"92 rear"}}`, Taken, "edit", "C1/1764072000.000100#edited:1764072100.000000"},
		{"a preview of a link", `{"type":"message","subtype":"message_changed","channel":"C1","message":{"user":"U1","ts":"1764072000.000100","text":"92 rear"},"previous_message":{"user":"U1","ts":"1764072000.000100","text":"92 rear"}}`, Ignored, "message_changed without an edit", ""},
		{"a preview on an edited message", `{"type":"message","subtype":"message_changed","channel":"C1","message":{"user":"U1","ts":"1764072000.000100","text":"92 rear","edited":{"ts":"1764072100.000000"}},"previous_message":{"user":"U1","ts":"1764072000.000100","text":"92 rear","edited":{"ts":"1764072100.000000"}}}`, Ignored, "message_changed with the same text", ""},
		{"our own post changed", `{"type":"message","subtype":"message_changed","channel":"C1","message":{"user":"UBOT","bot_id":"BBOT","ts":"1764072000.000100","text":"b","edited":{"ts":"1764072100.000000"}},"previous_message":{"ts":"1764072000.000100","text":"a"}}`, Ignored, "our own message", ""},
		{"deleted", `{"type":"message","subtype":"message_deleted","channel":"C1","deleted_ts":"1764072000.000100","previous_message":{"user":"U1","ts":"1764072000.000100","text":"92 rear"}}`, Taken, "deletion", "C1/1764072000.000100#deleted"},
		{"our own deleted", `{"type":"message","subtype":"message_deleted","channel":"C1","deleted_ts":"1764072000.000100","previous_message":{"user":"UBOT","bot_id":"BBOT","ts":"1764072000.000100"}}`, Ignored, "deletion: our own message", ""},
		{"deleted with replies", `{"type":"message","subtype":"message_changed","channel":"C1","message":{"subtype":"tombstone","user":"USLACKBOT","ts":"1764072000.000100","text":"gone"},"previous_message":{"user":"U1","ts":"1764072000.000100","text":"92 rear"}}`, Taken, "deletion", "C1/1764072000.000100#deleted"},
		{"no channel", `{"type":"message","user":"U1","ts":"1764072000.000100","text":"x"}`, Refused, "message without a channel", ""},
		{"no ts", `{"type":"message","channel":"C1","user":"U1","text":"x"}`, Refused, "message without a ts", ""},
		{"a ts that is none", `{"type":"message","channel":"C1","user":"U1","ts":"soon","text":"x"}`, Refused, "message without a ts", ""},
		{"an event of the future", `{"type":"some_future_event"}`, Ignored, "event of type some_future_event", ""},
		{"no event", `5`, Refused, "malformed event", ""},
		{"the home tab", `{"type":"app_home_opened","user":"U1","tab":"home"}`, Taken, "home tab", ""},
		{"the messages tab", `{"type":"app_home_opened","user":"U1","tab":"messages"}`, Ignored, "app_home_opened of another tab", ""},
	}
	for _, tt := range tests {
		a := decodeCallback(callbackOf(tt.inner), me)
		key := ""
		if len(a.messages) > 0 {
			key = a.messages[len(a.messages)-1].Key
			if a.messages[0].Author != "U1" || a.messages[0].At.IsZero() {
				t.Errorf("%s: by %q at %v", tt.what, a.messages[0].Author, a.messages[0].At)
			}
		}
		if a.verdict != tt.verdict || a.why != tt.why || key != tt.key {
			t.Errorf("%s: %s (%s) %q, want %s (%s) %q", tt.what, a.verdict, a.why, key, tt.verdict, tt.why, tt.key)
		}
	}
}

func TestWhatAPersonTyped(t *testing.T) {
	rich := func(elements string) string {
		return `[{"type":"rich_text","elements":[` + elements + `]}]`
	}
	tests := []struct{ what, text, blocks, want string }{
		{"no blocks", "92 &lt;rear&gt;", "", "92 &lt;rear&gt;"},
		{"blocks of the future", "92 rear", `[{"type":"future_block","x":1}]`, "92 rear"},
		{"malformed blocks", "92 rear", `[{"type":"input","element":{"type":"static_select","options":5}}]`, "92 rear"},
		{"blocks that are none", "92 rear", `{"type":5}`, "92 rear"},
		{"rich text is preferred", "92 rear ~61~", rich(`{"type":"rich_text_section","elements":[{"type":"text","text":"92 rear"}]}`), "92 rear"},
		{"withdrawn", "x", rich(`{"type":"rich_text_section","elements":[{"type":"text","text":"92 ","style":{"strike":true}},{"type":"text","text":"82 rear"}]}`), "~92~ 82 rear"},
		{"quoted", "x", rich(`{"type":"rich_text_quote","elements":[{"type":"text","text":"it was 95\nat noon"}]},{"type":"rich_text_section","elements":[{"type":"text","text":"now 82"}]}`), "&gt; it was 95\n&gt; at noon\nnow 82"},
		{"a list", "x", rich(`{"type":"rich_text_list","style":"bullet","elements":[{"type":"rich_text_section","elements":[{"type":"text","text":"92 rear"}]},{"type":"rich_text_section","elements":[{"type":"text","text":"61 laundry"}]}]}`), "• 92 rear\n• 61 laundry"},
		{"what looks like a mention", "x", rich(`{"type":"rich_text_section","elements":[{"type":"text","text":"<!here> a & b"}]}`), "&lt;!here&gt; a &amp; b"},
		{"a link with a label", "x", rich(`{"type":"rich_text_section","elements":[{"type":"link","url":"https://maps.example.com/?q=1","text":"123 Elm"}]}`), "<https://maps.example.com/?q=1|123 Elm>"},
		{"references", "x", rich(`{"type":"rich_text_section","elements":[{"type":"user","user_id":"U1"},{"type":"text","text":" "},{"type":"channel","channel_id":"C1"},{"type":"text","text":" "},{"type":"broadcast","range":"here"},{"type":"usergroup","usergroup_id":"S1"},{"type":"emoji","name":"100"}]}`), "<@U1> <#C1> <!here><!subteam^S1>:100:"},
		{"a pasted table", "x", `[{"type":"table","rows":[[{"type":"raw_text","text":"rear"},{"type":"raw_text","text":"92"}],[{"type":"raw_text","text":"laundry"},{"type":"rich_text","elements":[{"type":"rich_text_section","elements":[{"type":"text","text":"61"}]}]}]]}]`, "rear 92\nlaundry 61"},
		{"lines", "x", rich(`{"type":"rich_text_section","elements":[{"type":"text","text":"123 Elm\n"}]},{"type":"rich_text_preformatted","elements":[{"type":"text","text":"92 rear"}]}`), "123 Elm\n92 rear"},
	}
	for _, tt := range tests {
		var list blocks
		if tt.blocks != "" {
			if err := json.Unmarshal([]byte(tt.blocks), &list); err != nil {
				t.Errorf("%s: %v", tt.what, err)
			}
		}
		if got := typed(tt.text, list); got != tt.want {
			t.Errorf("%s: %q, want %q", tt.what, got, tt.want)
		}
	}
}

func TestFiles(t *testing.T) {
	message := func(rest string) arrival {
		return decodeCallback(callbackOf(`{"type":"message","subtype":"file_share","channel":"C1","user":"U1","ts":"1764072000.000100",`+rest+`}`), me)
	}
	photo := message(`"text":"92 rear, 123 Elm","files":[{"id":"F1","mimetype":"image/heic","permalink":"https://example.com/p","url_private":"https://example.com/x"},"odd"]`)
	if m := photo.messages[0]; len(m.Links) != 1 || m.Links[0] != "https://example.com/p" || photo.hint {
		t.Errorf("a photo with words: %+v", photo)
	}
	if bare := message(`"text":"","files":[{"id":"F1","mimetype":"image/png","permalink":"https://example.com/p"}]`); !bare.hint || len(bare.messages) != 1 {
		t.Errorf("a photo with no words: %+v", bare)
	}
	if under := message(`"text":"","thread_ts":"1764071000.000100","files":[{"id":"F1","mimetype":"image/png","permalink":"https://example.com/p"}]`); under.hint || len(under.messages[0].Links) != 1 {
		t.Errorf("a photo in a thread belongs to it: %+v", under)
	}
	clip := message(`"text":"","files":[{"id":"F2","subtype":"slack_audio","mimetype":"audio/mp4","transcription":{"status":"processing"}}]`)
	if clip.voice != "F2" || !clip.messages[0].Voice || clip.hint {
		t.Errorf("a clip: %+v", clip)
	}
	heard := message(`"text":"","files":[{"id":"F2","subtype":"slack_audio","mimetype":"video/mp4","transcription":{"status":"complete","preview":{"content":"ninety two rear bib","has_more":false}}}]`)
	if heard.voice != "" || heard.messages[0].Text != "ninety two rear bib" || !heard.messages[0].Voice {
		t.Errorf("a clip with its words: %+v", heard)
	}
	if odd := message(`"text":"92 rear","files":"none"`); odd.verdict != Taken || odd.messages[0].Text != "92 rear" {
		t.Errorf("files that are none: %+v", odd)
	}
}

func TestPeopleOfOtherWorkspacesAreKnown(t *testing.T) {
	for _, tt := range []struct{ fields, want string }{
		{`"team":"T1"`, ""},
		{`"team":"T2"`, "T2"},
		{`"user_team":"T2","team":"T1"`, "T2"},
		{`"source_team":"T3"`, "T3"},
		{`"text":"x"`, ""},
	} {
		a := decodeCallback(callbackOf(`{"type":"message","channel":"C1","user":"U1","ts":"1764072000.000100",`+tt.fields+`}`), me)
		if a.team != tt.want {
			t.Errorf("%s: %q, want %q", tt.fields, a.team, tt.want)
		}
	}
}

func TestATSIsTextAndATime(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		us := rapid.Int64Range(1, 4e15).Draw(t, "us")
		ts := fmt.Sprintf("%d.%06d", us/1e6, us%1e6)
		if us >= 1e6 {
			if at := timeOf(ts); at.UnixMicro() != us || tsOf(at) != ts {
				t.Fatalf("%s is %v, again %s", ts, at, tsOf(at))
			}
		}
	})
	for _, bad := range []string{"", "x", "-1.000000", "0.000000"} {
		if !timeOf(bad).IsZero() {
			t.Errorf("%q is a time", bad)
		}
	}
}

// Whatever arrives gets a verdict with a reason, and no message without a key,
// an author and a time.
func FuzzDecode(f *testing.F) {
	f.Add(callbackOf(`{"type":"message","channel":"C1","user":"U1","ts":"1764072000.000100","text":"92 rear","blocks":[{"type":"rich_text","elements":[{"type":"rich_text_list","elements":[{"elements":[{"type":"text","text":"x","style":{"strike":true}}]}]}]}]}`))
	f.Add(callbackOf(`{"type":"message","subtype":"message_changed","channel":{"id":"C1"},"message":{"user":"U1","ts":"1.1","text":"b","edited":{"ts":"2.2"}},"previous_message":{"text":"a"}}`))
	f.Add([]byte(`{"type":"event_callback","event":{"type":"message","subtype":"message_deleted","channel":"D1","deleted_ts":"1.000001"}}`))
	f.Add([]byte(`[]`))
	f.Fuzz(func(t *testing.T, raw []byte) {
		a := decodeCallback(raw, me)
		if a.verdict == "" || a.why == "" {
			t.Fatalf("no verdict: %+v", a)
		}
		if (a.verdict != Taken) && len(a.messages) > 0 {
			t.Fatalf("%s, but messages: %+v", a.verdict, a.messages)
		}
		for _, m := range a.messages {
			if m.Key == "" || m.Channel == "" || m.At.IsZero() || m.Kind == desk.Said && m.Author == "" {
				t.Fatalf("half a message: %+v", m)
			}
		}
	})
}

func BenchmarkDecode(b *testing.B) {
	raw := callbackOf(`{"type":"message","channel":"C1","channel_type":"channel","user":"U1","ts":"1764072000.000100","client_msg_id":"1","text":"92 rear bibb, heater idle, 123 Elm","blocks":[{"type":"rich_text","block_id":"b1","elements":[{"type":"rich_text_section","elements":[{"type":"text","text":"92 rear bibb, heater idle, 123 Elm"}]}]}]}`)
	b.ReportAllocs()
	for b.Loop() {
		decodeCallback(raw, me)
	}
}
