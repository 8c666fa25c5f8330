package practice

import (
	"cmp"
	"maps"
	"slices"
)

// Limit is one of the platform's limits.
type Limit struct {
	Name   string // what is limited, such as "section.text"
	Max    int    // characters, unless the name says bytes; or elements of a list
	Source string // page of docs.slack.dev, or a package's source
}

// types320 is the doc comment of the field in @slack/types 3.2.0.
const types320 = "@slack/types 3.2.0"

// limits names every limit that the workspace holds apps to.
var limits = table([]Limit{
	{"message.cut", 40000, "reference/methods/chat.postMessage"},
	{"message.text", 4000, "reference/methods/chat.postMessage (advice, not enforced)"},
	{"message.update", 4000, "reference/methods/chat.update (from memory)"},
	{"message.markdown_text", 12000, "reference/methods/chat.postMessage"},
	{"ephemeral.text", 4000, "reference/methods/chat.postEphemeral (bytes)"},
	{"message.blocks", 50, "reference/block-kit/blocks"},
	{"message.block_text", 13200, "reported: msg_blocks_too_long near this many characters"},
	{"message.charts", 2, "reported: two data_visualization blocks in a message"},
	{"message.tables", 1, "Slack's public skill notes"},
	{"modal.blocks", 100, "reference/block-kit/blocks"},
	{"home.blocks", 100, "reference/block-kit/blocks"},
	{"view.bytes", 250 * 1024, "reference/methods/views.publish (bytes)"},
	{"view.title", 24, "reference/views/modal-views"},
	{"view.submit", 24, "reference/views/modal-views"},
	{"view.close", 24, "reference/views/modal-views"},
	{"view.private_metadata", 3000, "reference/views/modal-views"},
	{"view.external_id", 255, "reference/views/modal-views"},
	{"view.depth", 3, "surfaces/modals"},
	{"callback_id", 255, "reference/views/modal-views"},
	{"block_id", 255, types320},
	{"action_id", 255, types320},
	{"section.text", 3000, types320},
	{"section.fields", 10, types320},
	{"section.field", 2000, types320},
	{"header.text", 150, types320},
	{"context.elements", 10, types320},
	{"actions.elements", 25, types320},
	{"button.text", 75, types320},
	{"button.value", 2000, types320},
	{"button.url", 3000, types320},
	{"accessibility_label", 75, types320},
	{"select.options", 100, types320},
	{"select.option_groups", 100, types320},
	{"option.text", 75, types320},
	{"option.value", 75, types320},
	{"option.description", 75, types320},
	{"option_group.label", 75, types320},
	{"overflow.options", 5, types320},
	{"overflow.url", 3000, types320},
	{"choice.options", 10, types320 + " (checkboxes, radio buttons)"},
	{"confirm.title", 100, types320},
	{"confirm.text", 300, types320},
	{"confirm.button", 30, types320},
	{"image.alt_text", 2000, types320},
	{"image.title", 2000, types320},
	{"image.url", 3000, types320},
	{"input.label", 2000, types320},
	{"input.hint", 2000, types320},
	{"input.value", 3000, types320},
	{"placeholder", 150, types320},
	{"markdown.text", 12000, "Slack's public skill notes"},
	{"table.rows", 100, "Slack's public skill notes"},
	{"table.cells", 20, "Slack's public skill notes"},
	{"data_table.rows", 101, "reference/block-kit/blocks/data-table-block (with the header)"},
	{"data_table.page_size", 100, "reference/block-kit/blocks/data-table-block"},
	{"chart.title", 50, "reference/block-kit/blocks/data-visualization-block"},
	{"chart.series", 6, "reference/block-kit/blocks/data-visualization-block"},
	{"chart.name", 20, "reference/block-kit/blocks/data-visualization-block"},
	{"chart.categories", 20, "reference/block-kit/blocks/data-visualization-block"},
	{"chart.axis", 50, "reference/block-kit/blocks/data-visualization-block"},
	{"container.title", 150, "slack-go v0.35.0 block_container.go"},
	{"container.children", 10, "slack-go v0.35.0 block_container.go"},
	{"reactions.different", 23, "reference/methods/reactions.add (too_many_emoji; the number from memory)"},
	{"response_url.posts", 5, "interactivity/handling-user-interaction"},
	{"response_url.minutes", 30, "interactivity/handling-user-interaction"},
	{"trigger_id.seconds", 3, "interactivity/handling-user-interaction"},
	{"ack.bytes", maxAck, "slack-go v0.35.0 socketmode/socketmode.go"},
	{"sockets", maxSockets, "apis/events-api/using-socket-mode"},
})

func table(all []Limit) map[string]Limit {
	out := map[string]Limit{}
	for _, l := range all {
		out[l.Name] = l
	}
	return out
}

// Limits are the limits that the workspace holds apps to, by name.
func Limits() []Limit {
	return slices.SortedFunc(maps.Values(limits), func(a, b Limit) int { return cmp.Compare(a.Name, b.Name) })
}

// limit is the number of a limit, which must be in the table.
func limit(name string) int {
	l, ok := limits[name]
	if !ok {
		panic("practice: no limit called " + name)
	}
	return l.Max
}
