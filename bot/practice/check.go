package practice

import (
	"encoding/json"
	"fmt"
	"regexp"
	"slices"
	"strings"
	"unicode/utf8"
)

// Problem is what the platform would refuse about blocks or a view.
type Problem struct {
	At      string // JSON pointer
	What    string
	TooLong bool // all the text together: msg_blocks_too_long
}

func (p Problem) String() string { return fmt.Sprintf("[ERROR] %s [json-pointer:%s]", p.What, p.At) }

func texts(all []Problem) []string {
	var out []string
	for _, p := range all {
		out = append(out, p.String())
	}
	return out
}

// CheckMessage holds the text and the blocks (a JSON list, or nothing) of a
// message to the platform's limits. Unlike the Web API it also reports a text
// above the advised length, which screen readers and phones are read.
func CheckMessage(text string, blocks []byte) []Problem {
	var out []Problem
	if n := utf8.RuneCountInString(text); n > limit("message.text") {
		out = append(out, Problem{At: "/text", What: fmt.Sprintf("%d characters are more than %d", n, limit("message.text"))})
	}
	if len(blocks) == 0 {
		if text == "" {
			out = append(out, Problem{At: "", What: "neither text nor blocks"})
		}
		return out
	}
	if text == "" {
		out = append(out, Problem{At: "/text", What: "no text to read aloud beside the blocks"})
	}
	var list []any
	if err := json.Unmarshal(blocks, &list); err != nil {
		return append(out, Problem{At: "/blocks", What: "not a list of blocks: " + err.Error()})
	}
	return append(out, checkBlocks(list, "message")...)
}

// CheckView holds a modal or a home tab (JSON) to the platform's limits.
func CheckView(view []byte) []Problem {
	var v map[string]any
	if err := json.Unmarshal(view, &v); err != nil {
		return []Problem{{At: "/view", What: "not a view: " + err.Error()}}
	}
	return checkView(v)
}

// checker collects problems.
type checker struct {
	surface string // message, modal, home
	found   []Problem
	blocks  map[string]bool // block_ids seen
	text    int             // characters in all blocks
	charts  int
	tables  int
}

func (k *checker) bad(at, format string, args ...any) {
	k.found = append(k.found, Problem{At: at, What: fmt.Sprintf(format, args...)})
}

func checkBlocks(list []any, surface string) []Problem {
	k := &checker{surface: surface, blocks: map[string]bool{}}
	k.list(list, "/blocks")
	if surface == "message" {
		if k.text > limit("message.block_text") {
			k.found = slices.Insert(k.found, 0, Problem{At: "/blocks", TooLong: true,
				What: fmt.Sprintf("%d characters in all blocks are more than %d", k.text, limit("message.block_text"))})
		}
		if k.charts > limit("message.charts") {
			k.bad("/blocks", "more than %d charts", limit("message.charts"))
		}
		if k.tables > limit("message.tables") {
			k.bad("/blocks", "more than %d table", limit("message.tables"))
		}
	}
	return k.found
}

func (k *checker) list(list []any, at string) {
	if most := limit(k.surface + ".blocks"); len(list) > most {
		k.bad(at, "no more than %d items allowed, found %d", most, len(list))
	}
	for i, b := range list {
		k.block(b, fmt.Sprintf("%s/%d", at, i))
	}
}

const viewFields = `type title blocks close submit private_metadata callback_id clear_on_close
	notify_on_close external_id submit_disabled`

// flags and numbers are the fields that are not text, wherever they stand.
var (
	flags = strings.Fields(`emoji verbatim optional multiline focus_on_load dispatch_action is_decimal_allowed expand
		response_url_enabled default_to_current_conversation clear_on_close notify_on_close submit_disabled is_collapsible
		default_collapsed has_header_divider bold italic strike code underline highlight client_highlight unlink unsafe`)
	numbers = strings.Fields(`min_length max_length max_selected_items min_query_length page_size row_header_column_index
		initial_date_time indent offset border skin_tone`)
)

// known checks that an object has no other fields than those, and that flags
// and numbers are such.
func (k *checker) known(m map[string]any, at, what, fields string) {
	allowed := strings.Fields(fields)
	for f, v := range m {
		_, isFlag := v.(bool)
		_, isNumber := v.(float64)
		switch {
		case !slices.Contains(allowed, f):
			k.bad(at+"/"+f, "unknown field in a %s", what)
		case slices.Contains(flags, f) && !isFlag:
			k.bad(at+"/"+f, "must be true or false")
		case slices.Contains(numbers, f) && !isNumber:
			k.bad(at+"/"+f, "must be a number")
		}
	}
}

func checkView(v map[string]any) []Problem {
	k := &checker{blocks: map[string]bool{}}
	k.surface, _ = v["type"].(string)
	if k.surface != "modal" && k.surface != "home" {
		k.bad("/view/type", "must be modal or home")
		return k.found
	}
	k.known(v, "/view", "view", viewFields)
	list, ok := v["blocks"].([]any)
	if !ok {
		k.bad("/view/blocks", "missing required field: blocks")
	}
	k.list(list, "/view/blocks")
	inputs := slices.ContainsFunc(list, func(b any) bool {
		m, _ := b.(map[string]any)
		return m["type"] == "input"
	})
	if k.surface == "modal" {
		k.plain(v, "title", "view.title", "/view", true)
		k.plain(v, "submit", "view.submit", "/view", inputs)
		k.plain(v, "close", "view.close", "/view", false)
	}
	k.str(v, "private_metadata", "view.private_metadata", "/view", false)
	k.str(v, "callback_id", "callback_id", "/view", false)
	k.str(v, "external_id", "view.external_id", "/view", false)
	if b, err := json.Marshal(v); err != nil || len(b) > limit("view.bytes") {
		k.bad("/view", "more than %d bytes", limit("view.bytes"))
	}
	return k.found
}

// str checks a string field.
func (k *checker) str(m map[string]any, field, name, at string, required bool) {
	v, there := m[field]
	s, ok := v.(string)
	switch n := utf8.RuneCountInString(s); {
	case !there && !required:
	case !there:
		k.bad(at, "missing required field: %s", field)
	case !ok:
		k.bad(at+"/"+field, "must be a string")
	case required && s == "":
		k.bad(at+"/"+field, "must be more than 0 characters")
	case name != "" && n > limit(name):
		k.bad(at+"/"+field, "must be less than %d characters, has %d", limit(name)+1, n)
	}
}

// plain checks a plain_text object in a field.
func (k *checker) plain(m map[string]any, field, name, at string, required bool) {
	k.textObject(m, field, name, at, required, "plain_text")
}

// textObject checks a text object of one of the kinds.
func (k *checker) textObject(m map[string]any, field, name, at string, required bool, kinds ...string) {
	v, there := m[field]
	if !there {
		if required {
			k.bad(at, "missing required field: %s", field)
		}
		return
	}
	k.textValue(v, name, at+"/"+field, kinds...)
}

func (k *checker) textValue(v any, name, at string, kinds ...string) {
	t, ok := v.(map[string]any)
	kind, _ := t["type"].(string)
	if !ok || !slices.Contains(kinds, kind) {
		k.bad(at, "must be a text object of type %s", strings.Join(kinds, " or "))
		return
	}
	own := "emoji"
	if kind == "mrkdwn" {
		own = "verbatim"
	}
	k.known(t, at, kind, "type text "+own)
	k.str(t, "text", name, at, true)
	s, _ := t["text"].(string)
	k.text += utf8.RuneCountInString(s)
}

// items checks a list field and returns it.
func (k *checker) items(m map[string]any, field, name, at string, required bool) []any {
	v, there := m[field]
	list, ok := v.([]any)
	switch {
	case !there && !required:
	case !there:
		k.bad(at, "missing required field: %s", field)
	case !ok:
		k.bad(at+"/"+field, "must be a list")
	case len(list) == 0:
		k.bad(at+"/"+field, "must have at least 1 item")
	case name != "" && len(list) > limit(name):
		k.bad(at+"/"+field, "no more than %d items allowed, found %d", limit(name), len(list))
	}
	return list
}

var dateForm = regexp.MustCompile(`^\d{4}-\d\d-\d\d$`)
var timeForm = regexp.MustCompile(`^\d\d:\d\d$`)
