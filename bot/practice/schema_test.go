package practice_test

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"

	"lazyhand/bot/practice"
)

// schema compiles one of the schemas made from Slack's own types; see
// testdata/schema/README.md.
func schema(t *testing.T, name string) *jsonschema.Schema {
	t.Helper()
	s, err := jsonschema.NewCompiler().Compile(filepath.Join("..", "..", "testdata", "schema", name+".schema.json"))
	check(t, err)
	return s
}

func instance(t *testing.T, text string) any {
	t.Helper()
	v, err := jsonschema.UnmarshalJSON(strings.NewReader(text))
	check(t, err)
	return v
}

// specimens hold one of each block and element that a bot of ours may send.
var specimens = []string{
	`{"type":"section","text":{"type":"mrkdwn","text":"*84 psi* is too high","verbatim":true},"fields":[{"type":"plain_text","text":"rear bibb"}],
	  "accessory":{"type":"overflow","action_id":"more","options":[{"text":{"type":"plain_text","text":"Not this house"},"value":"1"}]}}`,
	`{"type":"header","text":{"type":"plain_text","text":"12 Alder St","emoji":true}}`,
	`{"type":"divider","block_id":"line"}`,
	`{"type":"context","elements":[{"type":"mrkdwn","text":"invented"},{"type":"image","image_url":"https://example.com/a.png","alt_text":"a gauge"}]}`,
	`{"type":"image","image_url":"https://example.com/a.png","alt_text":"pressure by month","title":{"type":"plain_text","text":"Pressure"}}`,
	`{"type":"actions","elements":[
	  {"type":"button","action_id":"a","text":{"type":"plain_text","text":"Correct"},"value":"1","style":"primary",
	   "confirm":{"title":{"type":"plain_text","text":"Sure?"},"text":{"type":"mrkdwn","text":"It is kept."},"confirm":{"type":"plain_text","text":"Yes"},"deny":{"type":"plain_text","text":"No"}}},
	  {"type":"static_select","action_id":"b","placeholder":{"type":"plain_text","text":"Which?"},"option_groups":[{"label":{"type":"plain_text","text":"Street"},"options":[{"text":{"type":"plain_text","text":"12"},"value":"12"}]}]},
	  {"type":"datepicker","action_id":"c","initial_date":"2026-11-25"},
	  {"type":"users_select","action_id":"d"},
	  {"type":"checkboxes","action_id":"e","options":[{"text":{"type":"mrkdwn","text":"Idle"},"value":"idle","description":{"type":"plain_text","text":"no water runs"}}]}]}`,
	`{"type":"input","block_id":"psi","label":{"type":"plain_text","text":"Pressure"},"hint":{"type":"plain_text","text":"psi"},"optional":true,
	  "element":{"type":"number_input","action_id":"v","is_decimal_allowed":true,"min_value":"0","max_value":"300"}}`,
	`{"type":"input","label":{"type":"plain_text","text":"Note"},"element":{"type":"plain_text_input","action_id":"v","multiline":true,"max_length":500}}`,
	`{"type":"input","label":{"type":"plain_text","text":"Where"},"element":{"type":"radio_buttons","action_id":"v","options":[{"text":{"type":"plain_text","text":"rear bibb"},"value":"rear"}],
	  "initial_option":{"text":{"type":"plain_text","text":"rear bibb"},"value":"rear"}}}`,
	`{"type":"rich_text","elements":[{"type":"rich_text_section","elements":[{"type":"text","text":"84","style":{"bold":true}},{"type":"user","user_id":"U1"}]}]}`,
	`{"type":"markdown","text":"**84 psi**"}`,
	`{"type":"table","rows":[[{"type":"raw_text","text":"House"},{"type":"raw_text","text":"psi"}]]}`,
	`{"type":"data_table","caption":"Worst valves","rows":[[{"type":"raw_text","text":"House"}],[{"type":"raw_text","text":"12 Alder St"}]]}`,
}

func TestSpecimensFitSlacksOwnTypes(t *testing.T) {
	s := schema(t, "message-blocks")
	for _, b := range specimens {
		if err := s.Validate(instance(t, "["+b+"]")); err != nil {
			t.Errorf("%s: %v", b, err)
		}
		if p := practice.CheckMessage("text", []byte("["+b+"]")); len(p) > 0 {
			t.Errorf("%s: %v", b, p)
		}
	}
}

// Whatever Slack's own types refuse, the workspace refuses: each specimen is
// damaged at every place, and no damage may pass here that the schema sees.
func TestRefusesWhatSlacksOwnTypesRefuse(t *testing.T) {
	s := schema(t, "message-blocks")
	seen, missed := 0, 0
	for _, b := range specimens {
		damage(instance(t, b), func(how string, damaged any) {
			j := asJSON(t, []any{damaged})
			if s.Validate(instance(t, j)) == nil {
				return
			}
			seen++
			if len(practice.CheckMessage("text", []byte(j))) == 0 {
				missed++
				t.Errorf("%s passes: %s", how, j)
			}
		})
	}
	if seen < 300 {
		t.Errorf("only %d damaged blocks were tried", seen)
	}
	t.Logf("%d damaged blocks, %d not refused", seen, missed)
}

// damage calls f with copies of v that lack a field, have a field of the
// wrong type or a field too many, at every place.
func damage(v any, f func(how string, damaged any)) {
	again := func(v any) any {
		var out any
		b, _ := json.Marshal(v)
		_ = json.Unmarshal(b, &out)
		return out
	}
	var walk func(at []any)
	find := func(root any, at []any) any {
		for _, step := range at {
			switch k := step.(type) {
			case string:
				root = root.(map[string]any)[k]
			case int:
				root = root.([]any)[k]
			}
		}
		return root
	}
	walk = func(at []any) {
		switch here := find(v, at).(type) {
		case map[string]any:
			for k := range here {
				lacking := again(v)
				delete(find(lacking, at).(map[string]any), k)
				f(fmt.Sprint(at, " without ", k), lacking)
				wrong := again(v)
				find(wrong, at).(map[string]any)[k] = []any{true}
				f(fmt.Sprint(at, " with a wrong ", k), wrong)
				walk(append(append([]any{}, at...), k))
			}
			more := again(v)
			find(more, at).(map[string]any)["shade"] = "x"
			f(fmt.Sprint(at, " with a field too many"), more)
		case []any:
			for i := range here {
				walk(append(append([]any{}, at...), i))
			}
		}
	}
	walk(nil)
}

func TestViewsFitSlacksOwnTypes(t *testing.T) {
	blocks := strings.Join(specimens[:10], ",")
	home := `{"type":"home","callback_id":"home","private_metadata":"1","blocks":[` + blocks + `]}`
	modal := `{"type":"modal","title":{"type":"plain_text","text":"Report"},"submit":{"type":"plain_text","text":"Save"},
		"close":{"type":"plain_text","text":"Cancel"},"callback_id":"report","notify_on_close":true,"blocks":[` + blocks + `]}`
	for name, view := range map[string]string{"home-view": home, "modal-view": modal} {
		if err := schema(t, name).Validate(instance(t, view)); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if p := practice.CheckView([]byte(view)); len(p) > 0 {
			t.Errorf("%s: %v", name, p)
		}
	}
}

// What the workspace itself makes of typed text is what Slack's types say.
func TestRichTextFitsSlacksOwnTypes(t *testing.T) {
	s := open(t, practice.Options{})
	v := schema(t, "message-blocks")
	for _, text := range []string{"92 rear bibb", "*bold* _it_ ~92~ `code` @rosa #field @here @techs :eyes:", "a\nb\n\nc", "• one\n• two\nthree",
		"> quoted\nanswer", "5 < 6 & 7 > 6", "https://maps.example.com/?q=1|2 and a@example.com"} {
		ts := must[string](t)(s.Say("rosa", "field", "", text))
		m := s.Thread("field", ts)[0]
		if err := v.Validate(instance(t, string(m.Blocks))); err != nil {
			t.Errorf("%q: %v\n%s", text, err, m.Blocks)
		}
	}
	ts := must[string](t)(s.PostRaw(practice.Post{User: "rosa", Channel: "field", Text: "&gt; quoted\nanswer <https://a.example|b> &lt;!here&gt;"}))
	if b := string(s.Thread("field", ts)[0].Blocks); !strings.Contains(b, "rich_text_quote") || !strings.Contains(b, `"text":"b"`) || strings.Contains(b, "broadcast") {
		t.Errorf("raw text became %s", b)
	}
}

// The samples are optional: they belong to others and stand beside the
// project. Those named official were written by Slack.
func TestSampleBlocksOfOthersPass(t *testing.T) {
	files, _ := filepath.Glob(filepath.Join("..", "..", "..", "shared", "slack-samples", "interactive", "*.json"))
	if len(files) == 0 {
		t.Skip("no samples in ../shared/slack-samples")
	}
	n := 0
	for _, f := range files {
		b, err := os.ReadFile(f)
		check(t, err)
		var payload struct {
			Message struct{ Blocks json.RawMessage }
		}
		check(t, json.Unmarshal(b, &payload))
		if len(payload.Message.Blocks) == 0 {
			continue
		}
		n++
		if p := practice.CheckMessage("text", payload.Message.Blocks); len(p) > 0 {
			t.Errorf("%s: %v", filepath.Base(f), p)
		}
	}
	t.Logf("%d messages with blocks", n)
}
