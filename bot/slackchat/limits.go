package slackchat

// Limit is one of the platform's limits, with where it is written down.
// Lengths count characters.
type Limit struct {
	What   string
	Most   int
	Source string
}

// Limits are the platform's limits that a post, a view or a call must keep.
// Pages are those of docs.slack.dev; "types" is the source of @slack/types
// 3.2.0; "reported" is what users report, not the platform's word.
func Limits() []Limit {
	return []Limit{
		{"message.text", 4000, "reference/methods/chat.postMessage: keep to 4,000, cut over 40,000"},
		{"message.blocks", 50, "reference/block-kit/blocks"},
		{"message.all_block_text", 10_000, "reported: refused near 13,200, once at 11,341"},
		{"view.blocks", 100, "reference/block-kit/blocks"},
		{"block.id", 255, "types; reference/views/modal-views"},
		{"section.text", 3000, "types"},
		{"section.fields", 10, "types"},
		{"section.field", 2000, "types"},
		{"header.text", 150, "types"},
		{"context.elements", 10, "types"},
		{"actions.elements", 25, "types"},
		{"button.text", 75, "types"},
		{"button.value", 2000, "types"},
		{"select.options", 100, "types"},
		{"option.text", 75, "types"},
		{"option.value", 75, "types"},
		{"input.label", 2000, "types"},
		{"input.value", 3000, "types"},
		{"input.placeholder", 150, "types"},
		{"image.alt_text", 2000, "types"},
		{"image.title", 2000, "types"},
		{"modal.title", 24, "reference/views/modal-views"},
		{"modal.submit", 24, "reference/views/modal-views"},
		{"modal.close", 24, "reference/views/modal-views"},
		{"modal.private_metadata", 3000, "reference/views/modal-views"},
		{"view.bytes", 250_000, "reference/methods/views.publish"},
		{"chart.title", 50, "reference/block-kit/blocks/data-visualization-block"},
		{"chart.series", 6, "reference/block-kit/blocks/data-visualization-block"},
		{"chart.name", 20, "reference/block-kit/blocks/data-visualization-block"},
		{"chart.categories", 20, "reference/block-kit/blocks/data-visualization-block"},
		{"chart.axis", 50, "reference/block-kit/blocks/data-visualization-block"},
		{"charts.per_message", 2, "reported"},
		{"ephemeral.text", 4000, "reference/methods/chat.postEphemeral; bytes"},
		{"ack.bytes", 20_479, "socketmode/socketmode.go of slack-go v0.35.0: 20,480 and more are lost"},
		{"manifest.name", 35, "reference/app-manifest"},
		{"manifest.description", 140, "reference/app-manifest"},
		{"manifest.shortcut_name", 24, "reference/app-manifest"},
		{"manifest.shortcut_description", 150, "reference/app-manifest"},
		{"manifest.usage_hint", 1000, "reference/app-manifest"},
	}
}

// limit returns a limit by its name.
func limit(what string) int {
	for _, l := range Limits() {
		if l.What == what {
			return l.Most
		}
	}
	panic("slackchat: no limit named " + what)
}

// cut shortens s to a limit, and shows that it did.
func cut(s, what string) string {
	most, r := limit(what), []rune(s)
	if len(r) <= most {
		return s
	}
	return string(r[:most-1]) + "…"
}
