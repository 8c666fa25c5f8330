package practice

import (
	"fmt"
	"slices"
	"strings"
)

// elementFields are the fields of interactive elements besides type and
// action_id, and where they may stand: s section, a actions, i input.
var elementFields = map[string]struct{ in, fields string }{
	"button":                     {"sa", "text value url style confirm accessibility_label"},
	"workflow_button":            {"sa", "text workflow style accessibility_label"},
	"image":                      {"s", "alt_text image_url slack_file"},
	"overflow":                   {"sa", "options confirm"},
	"static_select":              {"sai", "placeholder options option_groups initial_option confirm focus_on_load"},
	"multi_static_select":        {"si", "placeholder options option_groups initial_options confirm max_selected_items focus_on_load"},
	"external_select":            {"sai", "placeholder initial_option min_query_length confirm focus_on_load"},
	"multi_external_select":      {"si", "placeholder initial_options min_query_length confirm max_selected_items focus_on_load"},
	"users_select":               {"sai", "placeholder initial_user confirm focus_on_load"},
	"multi_users_select":         {"si", "placeholder initial_users confirm max_selected_items focus_on_load"},
	"channels_select":            {"sai", "placeholder initial_channel confirm response_url_enabled focus_on_load"},
	"multi_channels_select":      {"si", "placeholder initial_channels confirm max_selected_items focus_on_load"},
	"conversations_select":       {"sai", "placeholder initial_conversation default_to_current_conversation confirm response_url_enabled filter focus_on_load"},
	"multi_conversations_select": {"si", "placeholder initial_conversations default_to_current_conversation confirm max_selected_items filter focus_on_load"},
	"datepicker":                 {"sai", "placeholder initial_date confirm focus_on_load"},
	"timepicker":                 {"sai", "placeholder initial_time confirm timezone focus_on_load"},
	"datetimepicker":             {"ai", "initial_date_time confirm focus_on_load"},
	"checkboxes":                 {"sai", "options initial_options confirm focus_on_load"},
	"radio_buttons":              {"sai", "options initial_option confirm focus_on_load"},
	"plain_text_input":           {"i", "placeholder initial_value multiline min_length max_length dispatch_action_config focus_on_load"},
	"number_input":               {"i", "placeholder initial_value is_decimal_allowed min_value max_value dispatch_action_config focus_on_load"},
	"email_text_input":           {"i", "placeholder initial_value dispatch_action_config focus_on_load"},
	"url_text_input":             {"i", "placeholder initial_value dispatch_action_config focus_on_load"},
	"rich_text_input":            {"i", "placeholder initial_value dispatch_action_config focus_on_load"},
	"file_input":                 {"i", "filetypes max_files"},
}

// element checks an interactive element in a section, actions or input block.
func (k *checker) element(v any, at, in string) {
	e, _ := v.(map[string]any)
	kind, _ := e["type"].(string)
	known, ok := elementFields[kind]
	if !ok || !strings.Contains(known.in, in[:1]) {
		k.bad(at+"/type", "unsupported type in %s: %s", in, kind)
		return
	}
	k.known(e, at, kind, "type action_id "+known.fields)
	k.str(e, "action_id", "action_id", at, false)
	k.plain(e, "placeholder", "placeholder", at, false)
	if c, there := e["confirm"]; there {
		k.confirm(c, at+"/confirm")
	}
	switch kind {
	case "button":
		k.plain(e, "text", "button.text", at, true)
		k.str(e, "value", "button.value", at, false)
		k.str(e, "url", "button.url", at, false)
		k.str(e, "accessibility_label", "accessibility_label", at, false)
		if s, there := e["style"]; there && s != "primary" && s != "danger" {
			k.bad(at+"/style", "must be primary or danger")
		}
	case "image":
		k.image(e, at)
	case "overflow":
		k.options(e, "overflow.options", at, "plain_text")
	case "static_select", "multi_static_select":
		if _, grouped := e["option_groups"]; grouped {
			k.groups(e, at)
		} else {
			k.options(e, "select.options", at, "plain_text")
		}
	case "checkboxes", "radio_buttons":
		k.options(e, "choice.options", at, "plain_text", "mrkdwn")
	case "datepicker":
		if _, there := e["initial_date"]; there && !dateForm.MatchString(text(e, "initial_date")) {
			k.bad(at+"/initial_date", "must be YYYY-MM-DD")
		}
	case "timepicker":
		if _, there := e["initial_time"]; there && !timeForm.MatchString(text(e, "initial_time")) {
			k.bad(at+"/initial_time", "must be HH:mm")
		}
	case "plain_text_input", "email_text_input", "url_text_input":
		k.str(e, "initial_value", "input.value", at, false)
		for _, f := range []string{"min_length", "max_length"} {
			if n, there := e[f].(float64); there && (n < 0 || int(n) > limit("input.value")) {
				k.bad(at+"/"+f, "must be at most %d", limit("input.value"))
			}
		}
	case "number_input":
		if _, isBool := e["is_decimal_allowed"].(bool); !isBool {
			k.bad(at, "missing required field: is_decimal_allowed")
		}
		for _, f := range []string{"initial_value", "min_value", "max_value"} {
			k.str(e, f, "input.value", at, false)
		}
	}
	initial, _ := e["initial_option"].(map[string]any)
	if _, one := e["initial_option"]; one && kind != "external_select" {
		k.option(initial, at+"/initial_option", false, "plain_text", "mrkdwn")
	}
	if initial != nil && kind != "external_select" && !slices.Contains(optionValues(e), text(initial, "value")) {
		k.bad(at+"/initial_option", "is not among the options")
	}
}

func (k *checker) confirm(v any, at string) {
	c, _ := v.(map[string]any)
	k.known(c, at, "confirm dialogue", "title text confirm deny style")
	k.plain(c, "title", "confirm.title", at, true)
	k.textObject(c, "text", "confirm.text", at, true, "plain_text", "mrkdwn")
	k.plain(c, "confirm", "confirm.button", at, true)
	k.plain(c, "deny", "confirm.button", at, true)
}

func (k *checker) options(e map[string]any, most, at string, kinds ...string) {
	for i, v := range k.items(e, "options", most, at, true) {
		o, _ := v.(map[string]any)
		k.option(o, fmt.Sprintf("%s/options/%d", at, i), e["type"] == "overflow", kinds...)
	}
}

func (k *checker) option(o map[string]any, at string, mayLink bool, kinds ...string) {
	k.known(o, at, "option", "text value description url")
	k.textObject(o, "text", "option.text", at, true, kinds...)
	k.textObject(o, "description", "option.description", at, false, kinds...)
	k.str(o, "value", "option.value", at, !mayLink || o["url"] == nil)
	k.str(o, "url", "overflow.url", at, false)
}

func (k *checker) groups(e map[string]any, at string) {
	for i, v := range k.items(e, "option_groups", "select.option_groups", at, true) {
		g, _ := v.(map[string]any)
		here := fmt.Sprintf("%s/option_groups/%d", at, i)
		k.known(g, here, "option group", "label options")
		k.plain(g, "label", "option_group.label", here, true)
		k.options(g, "select.options", here, "plain_text")
	}
}

// allOptions are the options of an element, out of their groups.
func allOptions(e map[string]any) []map[string]any {
	var out []map[string]any
	collect := func(list any) {
		items, _ := list.([]any)
		for _, v := range items {
			if o, ok := v.(map[string]any); ok {
				out = append(out, o)
			}
		}
	}
	collect(e["options"])
	groups, _ := e["option_groups"].([]any)
	for _, g := range groups {
		if m, ok := g.(map[string]any); ok {
			collect(m["options"])
		}
	}
	return out
}

func optionValues(e map[string]any) []string {
	var out []string
	for _, o := range allOptions(e) {
		out = append(out, text(o, "value"))
	}
	return out
}
