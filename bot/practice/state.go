package practice

import (
	"fmt"
	"net/mail"
	"net/url"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"
)

// Entered is what a person chose or typed: texts, dates, times, numbers and
// the ids of people and channels as they are, options by their value, the
// values of several in order. Empty: nothing.
type Entered []string

// eachElement calls f for the interactive elements of blocks.
func eachElement(blocks any, f func(block, element map[string]any)) {
	list, _ := blocks.([]any)
	for _, b := range list {
		block, ok := b.(map[string]any)
		if !ok || block["type"] == "rich_text" || block["type"] == "context" {
			continue
		}
		if block["type"] == "container" {
			eachElement(block["child_blocks"], f)
			continue
		}
		elements, _ := block["elements"].([]any)
		for _, e := range slices.Concat(elements, []any{block["accessory"], block["element"]}) {
			if el, ok := e.(map[string]any); ok && el["type"] != "image" {
				f(block, el)
			}
		}
	}
}

func text(m map[string]any, field string) string {
	s, _ := m[field].(string)
	return s
}

// stateful are the elements that have a value, and the field that holds it.
var stateful = map[string]string{
	"plain_text_input": "value", "number_input": "value", "email_text_input": "value", "url_text_input": "value",
	"static_select": "selected_option", "external_select": "selected_option", "radio_buttons": "selected_option",
	"multi_static_select": "selected_options", "multi_external_select": "selected_options", "checkboxes": "selected_options",
	"users_select": "selected_user", "multi_users_select": "selected_users",
	"channels_select": "selected_channel", "multi_channels_select": "selected_channels",
	"conversations_select": "selected_conversation", "multi_conversations_select": "selected_conversations",
	"datepicker": "selected_date", "timepicker": "selected_time", "datetimepicker": "selected_date_time",
}

// initialState is the state of blocks before anybody has touched them.
func initialState(blocks any) map[string]map[string]any {
	out := map[string]map[string]any{}
	eachElement(blocks, func(block, e map[string]any) {
		kind := text(e, "type")
		field, ok := stateful[kind]
		if !ok {
			return
		}
		var value any
		for _, name := range []string{"initial_value", "initial_option", "initial_options", "initial_user", "initial_users",
			"initial_channel", "initial_channels", "initial_conversation", "initial_conversations", "initial_date",
			"initial_time", "initial_date_time"} {
			if v, there := e[name]; there {
				value = v
			}
		}
		if value == nil && strings.HasSuffix(field, "s") {
			value = []any{}
		}
		id := text(block, "block_id")
		if out[id] == nil {
			out[id] = map[string]any{}
		}
		out[id][text(e, "action_id")] = map[string]any{"type": kind, field: value}
	})
	return out
}

// enter makes the state of an element out of what was entered. It returns a
// sentence when a person could not enter that.
func enter(e map[string]any, in Entered) (map[string]any, string) {
	kind := text(e, "type")
	field, ok := stateful[kind]
	if !ok {
		return nil, "Nothing can be entered here."
	}
	out := map[string]any{"type": kind}
	options := func(values []string) ([]any, string) {
		chosen := []any{}
		for _, v := range values {
			i := slices.IndexFunc(allOptions(e), func(o map[string]any) bool { return o["value"] == v })
			if i < 0 {
				return nil, fmt.Sprintf("There is no choice %q.", v)
			}
			chosen = append(chosen, allOptions(e)[i])
		}
		return chosen, ""
	}
	switch field {
	case "selected_options":
		chosen, wrong := options(in)
		out[field] = chosen
		return out, wrong
	case "selected_option":
		out[field] = nil
		if len(in) == 0 || in[0] == "" {
			return out, ""
		}
		chosen, wrong := options(in[:1])
		if wrong == "" {
			out[field] = chosen[0]
		}
		return out, wrong
	case "selected_users", "selected_channels", "selected_conversations":
		out[field] = slices.Clone(in)
		return out, ""
	}
	out[field] = nil
	if len(in) == 0 || in[0] == "" {
		return out, ""
	}
	v := in[0]
	out[field] = v
	switch kind {
	case "plain_text_input":
		n := utf8.RuneCountInString(v)
		low, _ := e["min_length"].(float64)
		high, there := e["max_length"].(float64)
		if !there {
			high = float64(limit("input.value"))
		}
		if n < int(low) || n > int(high) {
			return out, fmt.Sprintf("Enter %d to %d characters.", int(low), int(high))
		}
	case "number_input":
		n, err := strconv.ParseFloat(v, 64)
		decimals, _ := e["is_decimal_allowed"].(bool)
		low, errLow := strconv.ParseFloat(text(e, "min_value"), 64)
		high, errHigh := strconv.ParseFloat(text(e, "max_value"), 64)
		switch {
		case err != nil:
			return out, "Enter a number."
		case !decimals && n != float64(int64(n)):
			return out, "Enter a whole number."
		case errLow == nil && n < low:
			return out, "Enter at least " + text(e, "min_value") + "."
		case errHigh == nil && n > high:
			return out, "Enter at most " + text(e, "max_value") + "."
		}
	case "email_text_input":
		if _, err := mail.ParseAddress(v); err != nil {
			return out, "Enter an e-mail address."
		}
	case "url_text_input":
		if u, err := url.Parse(v); err != nil || u.Host == "" {
			return out, "Enter a web address."
		}
	case "datepicker":
		if !dateForm.MatchString(v) {
			return out, "Enter a date."
		}
	case "timepicker":
		if !timeForm.MatchString(v) {
			return out, "Enter a time."
		}
	case "datetimepicker":
		n, err := strconv.ParseInt(v, 10, 64)
		if err != nil {
			return out, "Enter a date and time."
		}
		out[field] = n
	}
	return out, ""
}

// missing reports whether an element's state holds nothing.
func missing(state map[string]any) bool {
	v := state[stateful[text(state, "type")]]
	switch x := v.(type) {
	case nil:
		return true
	case string:
		return x == ""
	case []any:
		return len(x) == 0
	case Entered:
		return len(x) == 0
	}
	return false
}
