package practice

import (
	"fmt"
	"strings"
	"unicode/utf8"
)

// blockFields are the fields of the blocks that the workspace knows, besides
// type and block_id, and the surfaces they may stand on: m message, o modal,
// h home.
var blockFields = map[string]struct{ on, fields string }{
	"section":            {"moh", "text fields accessory expand"},
	"header":             {"moh", "text"},
	"divider":            {"moh", ""},
	"context":            {"moh", "elements"},
	"actions":            {"moh", "elements"},
	"image":              {"moh", "alt_text image_url slack_file title"},
	"input":              {"moh", "label element hint optional dispatch_action"},
	"rich_text":          {"moh", "elements"},
	"markdown":           {"m", "text"},
	"table":              {"m", "rows column_settings"},
	"data_table":         {"m", "rows caption page_size row_header_column_index"},
	"data_visualization": {"m", "title chart"},
	"container":          {"m", "title rich_text_title subtitle icon child_blocks width is_collapsible default_collapsed has_header_divider"},
	"alert":              {"o", "text level"},
	"video":              {"moh", "alt_text author_name description provider_icon_url provider_name thumbnail_url title title_url video_url"},
	"file":               {"m", "external_id source"},
}

func (k *checker) block(v any, at string) {
	b, ok := v.(map[string]any)
	kind, _ := b["type"].(string)
	known, isKnown := blockFields[kind]
	if !ok || !isKnown {
		k.bad(at+"/type", "unsupported type: %s", kind)
		return
	}
	letter := map[string]string{"message": "m", "modal": "o", "home": "h"}[k.surface]
	if !strings.Contains(known.on, letter) {
		k.bad(at, "a %s block is not allowed in a %s", kind, k.surface)
	}
	k.known(b, at, kind+" block", "type block_id "+known.fields)
	k.str(b, "block_id", "block_id", at, false)
	if id, _ := b["block_id"].(string); id != "" {
		if k.blocks[id] {
			k.bad(at+"/block_id", "block_id %q is there twice", id)
		}
		k.blocks[id] = true
	}
	switch kind {
	case "section":
		k.textObject(b, "text", "section.text", at, b["fields"] == nil, "plain_text", "mrkdwn")
		for i, f := range k.items(b, "fields", "section.fields", at, false) {
			k.textValue(f, "section.field", fmt.Sprintf("%s/fields/%d", at, i), "plain_text", "mrkdwn")
		}
		if e, there := b["accessory"]; there {
			k.element(e, at+"/accessory", "section")
		}
	case "header":
		k.plain(b, "text", "header.text", at, true)
	case "context":
		for i, e := range k.items(b, "elements", "context.elements", at, true) {
			m, _ := e.(map[string]any)
			if m["type"] == "image" {
				k.known(m, fmt.Sprintf("%s/elements/%d", at, i), "image", "type alt_text image_url slack_file")
				k.image(m, fmt.Sprintf("%s/elements/%d", at, i))
				continue
			}
			k.textValue(e, "", fmt.Sprintf("%s/elements/%d", at, i), "plain_text", "mrkdwn")
		}
	case "actions":
		for i, e := range k.items(b, "elements", "actions.elements", at, true) {
			k.element(e, fmt.Sprintf("%s/elements/%d", at, i), "actions")
		}
	case "image":
		k.image(b, at)
		k.plain(b, "title", "image.title", at, false)
	case "input":
		k.plain(b, "label", "input.label", at, true)
		k.plain(b, "hint", "input.hint", at, false)
		if e, there := b["element"]; there {
			k.element(e, at+"/element", "input")
		} else {
			k.bad(at, "missing required field: element")
		}
	case "rich_text":
		k.richText(b, at)
	case "markdown":
		k.str(b, "text", "markdown.text", at, true)
		s, _ := b["text"].(string)
		k.text += utf8.RuneCountInString(s)
	case "table", "data_table":
		k.tables++
		k.grid(b, kind, at)
	case "data_visualization":
		k.charts++
		k.chart(b, at)
	case "container":
		k.plain(b, "title", "container.title", at, b["rich_text_title"] == nil)
		for i, child := range k.items(b, "child_blocks", "container.children", at, true) {
			k.block(child, fmt.Sprintf("%s/child_blocks/%d", at, i))
		}
	}
}

func (k *checker) image(b map[string]any, at string) {
	k.str(b, "alt_text", "image.alt_text", at, true)
	k.str(b, "image_url", "image.url", at, b["slack_file"] == nil)
}

// richText checks that a rich_text block has the known parts, and counts its
// text.
func (k *checker) richText(b map[string]any, at string) {
	for i, v := range k.items(b, "elements", "", at, true) {
		here := fmt.Sprintf("%s/elements/%d", at, i)
		part, _ := v.(map[string]any)
		switch kind := text(part, "type"); kind {
		case "rich_text_section", "rich_text_quote", "rich_text_preformatted":
			k.known(part, here, kind, partFields[kind])
			k.spans(part, here)
		case "rich_text_list":
			k.known(part, here, kind, "type elements style indent offset border")
			for j, s := range k.items(part, "elements", "", here, true) {
				section, _ := s.(map[string]any)
				k.spans(section, fmt.Sprintf("%s/elements/%d", here, j))
			}
		default:
			k.bad(here+"/type", "unsupported type: %s", kind)
		}
	}
}

var partFields = map[string]string{"rich_text_section": "type elements", "rich_text_quote": "type elements border",
	"rich_text_preformatted": "type elements border language"}

// spanFields are the fields of a part of a line, the needed one first.
var spanFields = map[string]string{"text": "text style", "link": "url text unsafe style", "user": "user_id style",
	"channel": "channel_id style", "emoji": "name unicode url skin_tone style", "broadcast": "range style", "usergroup": "usergroup_id style",
	"date": "timestamp format url fallback style", "color": "value style", "team": "team_id style"}

func (k *checker) spans(part map[string]any, at string) {
	list, ok := part["elements"].([]any)
	if !ok {
		k.bad(at, "missing required field: elements")
	}
	for i, v := range list {
		here := fmt.Sprintf("%s/elements/%d", at, i)
		span, _ := v.(map[string]any)
		fields := strings.Fields(spanFields[text(span, "type")])
		if len(fields) == 0 {
			k.bad(here+"/type", "unsupported type: %s", text(span, "type"))
			continue
		}
		if fields[0] == "timestamp" {
			if _, isNumber := span["timestamp"].(float64); !isNumber {
				k.bad(here, "missing required field: timestamp")
			}
		} else {
			k.str(span, fields[0], "", here, true)
		}
		k.known(span, here, text(span, "type"), "type "+strings.Join(fields, " "))
		if style, there := span["style"]; there {
			m, isMap := style.(map[string]any)
			if !isMap {
				k.bad(here+"/style", "must be an object")
			}
			k.known(m, here+"/style", "style", "bold italic strike code underline highlight client_highlight unlink")
		}
		k.text += utf8.RuneCountInString(text(span, "text"))
	}
}

// grid checks the rows of a table.
func (k *checker) grid(b map[string]any, kind, at string) {
	if kind == "data_table" {
		k.str(b, "caption", "", at, true)
		if n, ok := b["page_size"].(float64); ok && (n < 1 || int(n) > limit("data_table.page_size")) {
			k.bad(at+"/page_size", "must be 1 to %d", limit("data_table.page_size"))
		}
	}
	for i, r := range k.items(b, "rows", kind+".rows", at, true) {
		here := fmt.Sprintf("%s/rows/%d", at, i)
		row, ok := r.([]any)
		if !ok || len(row) == 0 || len(row) > limit("table.cells") {
			k.bad(here, "must be a list of 1 to %d cells", limit("table.cells"))
		}
		for j, c := range row {
			cell, _ := c.(map[string]any)
			there := fmt.Sprintf("%s/%d", here, j)
			switch cell["type"] {
			case "raw_text":
				k.known(cell, there, "cell", "type text")
				k.str(cell, "text", "", there, true)
				s, _ := cell["text"].(string)
				k.text += utf8.RuneCountInString(s)
			case "raw_number":
				if kind == "table" {
					k.bad(there, "raw_number is not allowed in a table")
				}
			case "rich_text":
				k.richText(cell, there)
			default:
				k.bad(there+"/type", "unsupported type: %v", cell["type"])
			}
		}
	}
}

// chart checks a data_visualization block.
func (k *checker) chart(b map[string]any, at string) {
	if _, isText := b["title"].(string); isText {
		k.str(b, "title", "chart.title", at, true)
	} else {
		k.plain(b, "title", "chart.title", at, true)
	}
	chart, _ := b["chart"].(map[string]any)
	at += "/chart"
	switch chart["type"] {
	case "pie":
		for i, s := range k.items(chart, "segments", "chart.series", at, true) {
			seg, _ := s.(map[string]any)
			here := fmt.Sprintf("%s/segments/%d", at, i)
			k.str(seg, "label", "chart.name", here, true)
			if v, ok := seg["value"].(float64); !ok || v <= 0 {
				k.bad(here+"/value", "must be more than 0")
			}
		}
		return
	case "line", "bar", "area":
	default:
		k.bad(at+"/type", "unsupported type: %v", chart["type"])
		return
	}
	axis, _ := chart["axis_config"].(map[string]any)
	k.str(axis, "x_label", "chart.axis", at+"/axis_config", false)
	k.str(axis, "y_label", "chart.axis", at+"/axis_config", false)
	categories := k.items(axis, "categories", "chart.categories", at+"/axis_config", true)
	known := map[string]bool{}
	for i, c := range categories {
		s, _ := c.(string)
		if s == "" || utf8.RuneCountInString(s) > limit("chart.name") || known[s] {
			k.bad(fmt.Sprintf("%s/axis_config/categories/%d", at, i), "must be its own text of 1 to %d characters", limit("chart.name"))
		}
		known[s] = true
	}
	names := map[string]bool{}
	for i, s := range k.items(chart, "series", "chart.series", at, true) {
		series, _ := s.(map[string]any)
		here := fmt.Sprintf("%s/series/%d", at, i)
		k.str(series, "name", "chart.name", here, true)
		name, _ := series["name"].(string)
		if names[name] {
			k.bad(here+"/name", "series %q is there twice", name)
		}
		names[name] = true
		points := k.items(series, "data", "chart.categories", here, true)
		labels := map[string]bool{}
		for j, p := range points {
			point, _ := p.(map[string]any)
			labels[text(point, "label")] = true
			if _, ok := point["value"].(float64); !ok {
				k.bad(fmt.Sprintf("%s/data/%d/value", here, j), "must be a number")
			}
		}
		for c := range known {
			if !labels[c] {
				k.bad(here+"/data", "no value for %s", c)
			}
		}
		if len(points) != len(categories) {
			k.bad(here+"/data", "needs one value for each of the %d categories, has %d", len(categories), len(points))
		}
	}
}
