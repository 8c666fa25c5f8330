package practice_test

import (
	"fmt"
	"strings"
	"testing"

	"lazyhand/bot/practice"
)

func TestLimitsOfBlocks(t *testing.T) {
	x := func(n int) string { return strings.Repeat("x", n) }
	options := func(n int) string {
		var all []string
		for i := range n {
			all = append(all, fmt.Sprintf(`{"text":{"type":"plain_text","text":"o%d"},"value":"%d"}`, i, i))
		}
		return "[" + strings.Join(all, ",") + "]"
	}
	elements := func(n int) string {
		return "[" + strings.TrimSuffix(strings.Repeat(`{"type":"button","text":{"type":"plain_text","text":"b"}},`, n), ",") + "]"
	}
	chart := func(categories, series, points, name string) string {
		return `{"type":"data_visualization","title":"Static","chart":{"type":"line","axis_config":{"categories":` + categories +
			`},"series":[{"name":"` + name + `","data":` + points + `}` + series + `]}}`
	}
	for _, c := range []struct{ what, fits, not string }{
		{"section text", `{"type":"section","text":{"type":"mrkdwn","text":"` + x(3000) + `"}}`, `{"type":"section","text":{"type":"mrkdwn","text":"` + x(3001) + `"}}`},
		{"characters, not bytes", `{"type":"header","text":{"type":"plain_text","text":"` + strings.Repeat("ñ", 150) + `"}}`, `{"type":"header","text":{"type":"plain_text","text":"` + strings.Repeat("ñ", 151) + `"}}`},
		{"header is plain", `{"type":"header","text":{"type":"plain_text","text":"a"}}`, `{"type":"header","text":{"type":"mrkdwn","text":"a"}}`},
		{"a known type", `{"type":"divider"}`, `{"type":"ruler"}`},
		{"known fields", `{"type":"divider","block_id":"a"}`, `{"type":"divider","colour":"red"}`},
		{"section needs text or fields", `{"type":"section","fields":[{"type":"plain_text","text":"a"}]}`, `{"type":"section"}`},
		{"elements of actions", `{"type":"actions","elements":` + elements(25) + `}`, `{"type":"actions","elements":` + elements(26) + `}`},
		{"button text", `{"type":"actions","elements":[{"type":"button","text":{"type":"plain_text","text":"` + x(75) + `"}}]}`, `{"type":"actions","elements":[{"type":"button","text":{"type":"plain_text","text":"` + x(76) + `"}}]}`},
		{"button style", `{"type":"actions","elements":[{"type":"button","style":"danger","text":{"type":"plain_text","text":"a"}}]}`, `{"type":"actions","elements":[{"type":"button","style":"red","text":{"type":"plain_text","text":"a"}}]}`},
		{"options of a select", `{"type":"actions","elements":[{"type":"static_select","options":` + options(100) + `}]}`, `{"type":"actions","elements":[{"type":"static_select","options":` + options(101) + `}]}`},
		{"options of an overflow menu", `{"type":"actions","elements":[{"type":"overflow","options":` + options(5) + `}]}`, `{"type":"actions","elements":[{"type":"overflow","options":` + options(6) + `}]}`},
		{"radio buttons", `{"type":"actions","elements":[{"type":"radio_buttons","options":` + options(10) + `}]}`, `{"type":"actions","elements":[{"type":"radio_buttons","options":` + options(11) + `}]}`},
		{"initial option", `{"type":"actions","elements":[{"type":"radio_buttons","options":` + options(2) + `,"initial_option":{"text":{"type":"plain_text","text":"o1"},"value":"1"}}]}`, `{"type":"actions","elements":[{"type":"radio_buttons","options":` + options(2) + `,"initial_option":{"text":{"type":"plain_text","text":"o1"},"value":"7"}}]}`},
		{"image", `{"type":"image","image_url":"https://example.com/a.png","alt_text":"a gauge"}`, `{"type":"image","image_url":"https://example.com/a.png"}`},
		{"context elements", `{"type":"context","elements":[` + strings.TrimSuffix(strings.Repeat(`{"type":"mrkdwn","text":"a"},`, 10), ",") + `]}`, `{"type":"context","elements":[` + strings.TrimSuffix(strings.Repeat(`{"type":"mrkdwn","text":"a"},`, 11), ",") + `]}`},
		{"inputs of an input only", `{"type":"input","label":{"type":"plain_text","text":"a"},"element":{"type":"plain_text_input"}}`, `{"type":"actions","elements":[{"type":"plain_text_input"}]}`},
		{"table cells", `{"type":"table","rows":[[{"type":"raw_text","text":"84"}]]}`, `{"type":"table","rows":[[{"type":"raw_number","value":84}]]}`},
		{"data table needs a caption", `{"type":"data_table","caption":"Worst valves","rows":[[{"type":"raw_text","text":"House"}]]}`, `{"type":"data_table","rows":[[{"type":"raw_text","text":"House"}]]}`},
		{"chart: one value for each category", chart(`["May","June"]`, "", `[{"label":"May","value":60},{"label":"June","value":84}]`, "rear"), chart(`["May","June"]`, "", `[{"label":"May","value":60}]`, "rear")},
		{"chart: series are named apart", chart(`["May"]`, `,{"name":"80 max","data":[{"label":"May","value":80}]}`, `[{"label":"May","value":60}]`, "rear"), chart(`["May"]`, `,{"name":"rear","data":[{"label":"May","value":80}]}`, `[{"label":"May","value":60}]`, "rear")},
		{"chart: name", chart(`["May"]`, "", `[{"label":"May","value":60}]`, x(20)), chart(`["May"]`, "", `[{"label":"May","value":60}]`, x(21))},
		{"an alert is for modals", `{"type":"divider"}`, `{"type":"alert","text":{"type":"plain_text","text":"a"}}`},
	} {
		if p := practice.CheckMessage("text", []byte("["+c.fits+"]")); len(p) > 0 {
			t.Errorf("%s: refused what fits: %v", c.what, p)
		}
		if p := practice.CheckMessage("text", []byte("["+c.not+"]")); len(p) == 0 {
			t.Errorf("%s: took what does not fit: %s", c.what, c.not)
		}
	}
	if p := practice.CheckMessage("", []byte(`[{"type":"divider"}]`)); len(p) != 1 {
		t.Errorf("blocks with no text to read aloud: %v", p)
	}
	if p := practice.CheckMessage("a", []byte(`[{"type":"divider","block_id":"x"},{"type":"divider","block_id":"x"}]`)); len(p) != 1 {
		t.Errorf("a block id twice: %v", p)
	}
}

func TestLimitsOfViews(t *testing.T) {
	modal := func(title, rest string) []byte {
		return []byte(`{"type":"modal","title":{"type":"plain_text","text":"` + title + `"},"blocks":[{"type":"divider"}]` + rest + `}`)
	}
	for _, c := range []struct {
		what      string
		fits, not []byte
	}{
		{"title", modal(strings.Repeat("x", 24), ""), modal(strings.Repeat("x", 25), "")},
		{"private metadata", modal("a", `,"private_metadata":"`+strings.Repeat("x", 3000)+`"`), modal("a", `,"private_metadata":"`+strings.Repeat("x", 3001)+`"`)},
		{"no charts in a home tab", []byte(`{"type":"home","blocks":[{"type":"divider"}]}`), []byte(`{"type":"home","blocks":[{"type":"markdown","text":"a"}]}`)},
		{"a form can be submitted", modal("a", ""), []byte(`{"type":"modal","title":{"type":"plain_text","text":"a"},"blocks":[{"type":"input","label":{"type":"plain_text","text":"a"},"element":{"type":"plain_text_input"}}]}`)},
	} {
		if p := practice.CheckView(c.fits); len(p) > 0 {
			t.Errorf("%s: refused what fits: %v", c.what, p)
		}
		if p := practice.CheckView(c.not); len(p) == 0 {
			t.Errorf("%s: took what does not fit", c.what)
		}
	}
}

func TestEveryLimitNamesItsSource(t *testing.T) {
	for _, l := range practice.Limits() {
		if l.Max <= 0 || l.Source == "" {
			t.Errorf("limit %+v", l)
		}
	}
}

func FuzzCheckNeverFails(f *testing.F) {
	f.Add("hi", []byte(`[{"type":"section","text":{"type":"mrkdwn","text":"a"},"accessory":{"type":"overflow","options":[7]}}]`))
	f.Add("", []byte(`[{"type":"data_visualization","chart":{"type":"line","series":[null]}},null,[]]`))
	f.Fuzz(func(t *testing.T, text string, blocks []byte) {
		practice.CheckMessage(text, blocks)
		practice.CheckView(blocks)
	})
}
