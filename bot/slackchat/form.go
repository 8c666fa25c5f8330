package slackchat

import (
	"context"
	"encoding/json"
	"strconv"
	"strings"

	"github.com/slack-go/slack"

	"lazyhand/bot/desk"
)

// Names of the bot's forms and shortcuts, as the manifest and the platform
// know them.
const (
	formReport  = "report_form"  // a reading by fields
	formCorrect = "correct_form" // the right wording of a report
	formText    = "text_form"    // somebody's message, to be sent as a report

	ShortcutReport  = "report_reading"      // global: opens the form
	ShortcutMessage = "report_this_message" // of a message
	actionReport    = "open_report_form"    // button of the home tab
)

// Fields of the forms; each is a block with one element of the same name.
const (
	fieldHouse    = "house"
	fieldPressure = "pressure"
	fieldPoint    = "point"
	fieldHeater   = "heater"
	fieldFlow     = "flow"
	fieldNote     = "note"
	fieldText     = "text"
)

// origin is what a form remembers about where it was opened.
type origin struct {
	place
	Button string `json:"button,omitempty"`
	Value  string `json:"value,omitempty"`
	TS     string `json:"ts,omitempty"`
}

func (o origin) String() string {
	b, err := json.Marshal(o)
	if err != nil || len(b) > limit("modal.private_metadata") {
		return "{}"
	}
	return string(b)
}

func originOf(private string) origin {
	var o origin
	_ = json.Unmarshal([]byte(private), &o) // a form without an origin goes to its author
	return o
}

func modal(callback, title string, w *phrases, from origin, blocks ...slack.Block) slack.ModalViewRequest {
	return slack.ModalViewRequest{Type: slack.VTModal, CallbackID: callback, PrivateMetadata: from.String(),
		Title: plainText(title, "modal.title"), Submit: plainText(w.Send, "modal.submit"), Close: plainText(w.Cancel, "modal.close"),
		Blocks: slack.Blocks{BlockSet: blocks}}
}

func input(name, label string, optional bool, e slack.BlockElement) *slack.InputBlock {
	b := slack.NewInputBlock(name, plainText(label, "input.label"), nil, e)
	b.Optional = optional
	return b
}

func choices(name string, w *phrases, list []said) slack.BlockElement {
	var opts []*slack.OptionBlockObject
	for i, c := range list {
		opts = append(opts, slack.NewOptionBlockObject(strconv.Itoa(i), plainText(c.Label, "option.text"), nil))
	}
	return slack.NewOptionsSelectBlockElement(slack.OptTypeStatic, plainText(w.Choose, "input.placeholder"), name, opts...)
}

// reportForm asks for a reading field by field.
func reportForm(w *phrases, from origin) slack.ModalViewRequest {
	house := slack.NewPlainTextInputBlockElement(plainText(w.HouseExample, "input.placeholder"), fieldHouse)
	house.MaxLength = 200
	psi := slack.NewNumberInputBlockElement(nil, fieldPressure, true)
	psi.MinValue, psi.MaxValue = "0", "400"
	note := slack.NewPlainTextInputBlockElement(nil, fieldNote)
	note.Multiline, note.MaxLength = true, 1000
	return modal(formReport, w.ReportTitle, w, from,
		input(fieldHouse, w.House, false, house),
		input(fieldPressure, w.Pressure, false, psi),
		input(fieldPoint, w.Where, false, choices(fieldPoint, w, w.Points)),
		input(fieldHeater, w.Heater, true, choices(fieldHeater, w, w.Heaters)),
		input(fieldFlow, w.Flow, true, choices(fieldFlow, w, w.Flows)),
		input(fieldNote, w.Note, true, note))
}

// textForm asks for words, with some to begin with.
func textForm(callback, title string, w *phrases, from origin, text string) slack.ModalViewRequest {
	e := slack.NewPlainTextInputBlockElement(nil, fieldText)
	e.Multiline, e.InitialValue, e.MaxLength = true, cut(text, "input.value"), limit("input.value")
	b := input(fieldText, w.Text, false, e)
	b.Hint = plainText(w.TextHint, "input.label")
	return modal(callback, title, w, from, b)
}

// loadingForm stands while what is in it is fetched.
func loadingForm(callback, title string, w *phrases, from origin) slack.ModalViewRequest {
	v := modal(callback, title, w, from, slack.NewSectionBlock(plainText(w.Loading, "section.text"), nil, nil))
	v.Submit = nil
	return v
}

func (s *Slack) openReport(ctx context.Context, trigger string, p person, at place, text string) error {
	w := s.phrases(p)
	v := reportForm(w, origin{place: at})
	if text != "" {
		v = textForm(formText, w.ReportTitle, w, origin{place: at}, text)
	}
	_, err := s.api.OpenViewContext(ctx, trigger, v)
	return err
}

// openCorrect asks for the right wording of a report. The platform gives three
// seconds to open a form, so an empty one is opened first.
func (s *Slack) openCorrect(ctx context.Context, trigger string, p person, from origin) error {
	w := s.phrases(p)
	r, err := s.api.OpenViewContext(ctx, trigger, loadingForm(formCorrect, w.CorrectTitle, w, from))
	if err != nil {
		return err
	}
	s.later(func(ctx context.Context) {
		text := ""
		if from.Thread != "" {
			page, _, err := s.page(ctx, from.Channel, from.Thread, "0", "")
			if err == nil && len(page) > 0 && notAPerson(page[0], s.self()) == "" {
				text = plain(typed(page[0].Text, page[0].Blocks))
			}
		}
		if _, err := s.api.UpdateViewContext(ctx, textForm(formCorrect, w.CorrectTitle, w, from, text), "", "", r.View.ID); err != nil {
			s.opt.Log.Warn("a form could not be filled", "error", err.Error())
		}
	})
	return nil
}

// submitted deals with a form that was sent, and returns what is wrong in it.
func (s *Slack) submitted(ctx context.Context, i interaction) (answer any, err error) {
	p, err := s.person(ctx, i.User.ID)
	if err != nil {
		return nil, err
	}
	w, from := s.phrases(p), originOf(i.View.Private)
	get := func(field string) string { return i.View.State.Values[field][field].String() }
	wrong := map[string]string{}
	switch i.View.CallbackID {
	case formReport:
		text := reportText(w, get, wrong)
		if len(wrong) > 0 {
			break
		}
		at := from.place
		if at.Channel == "" && len(s.opt.Field) > 0 {
			at.Channel = s.opt.Field[0]
		}
		return nil, s.speakFor(ctx, "form:"+i.View.ID, at, i.User.ID, p, w.ByForm, text)
	case formText, formCorrect:
		text := get(fieldText)
		if text == "" {
			wrong[fieldText] = w.TextHint
			break
		}
		if i.View.CallbackID == formText {
			return nil, s.speakFor(ctx, "form:"+i.View.ID, from.place, i.User.ID, p, w.ByForm, Escape(text))
		}
		m := desk.Message{Key: "form:" + i.View.ID, Kind: desk.Pressed, Channel: from.Channel, Direct: isDirect(from.Channel), TS: from.TS,
			Thread: from.Thread, Author: i.User.ID, At: s.opt.Now(), Button: from.Button, Value: from.Value, Text: Escape(text)}
		return nil, s.take(ctx, arrival{verdict: Taken, why: "form", messages: []desk.Message{m}})
	default:
		s.seen(Ignored, "form of another kind")
		return nil, nil
	}
	return map[string]any{"response_action": "errors", "errors": wrong}, nil
}

// reportText writes the fields of the form as a tech would write them, and
// notes what is wrong.
func reportText(w *phrases, get func(string) string, wrong map[string]string) string {
	psi, err := strconv.ParseFloat(get(fieldPressure), 64)
	if err != nil || psi < 0 || psi > 1000 {
		wrong[fieldPressure] = w.NoPressure
	}
	house := strings.Join(strings.Fields(get(fieldHouse)), " ")
	if house == "" {
		wrong[fieldHouse] = w.NoHouse
	}
	choice := func(field string, list []said) string {
		n, err := strconv.Atoi(get(field))
		if err != nil || n < 0 || n >= len(list) {
			return ""
		}
		return list[n].Words
	}
	parts := []string{strings.TrimSpace(strconv.FormatFloat(psi, 'f', -1, 64) + " psi " + choice(fieldPoint, w.Points))}
	for _, s := range []string{choice(fieldHeater, w.Heaters), choice(fieldFlow, w.Flows), house} {
		if s != "" {
			parts = append(parts, s)
		}
	}
	text := strings.Join(parts, ", ")
	if note := get(fieldNote); note != "" {
		text += ". " + note
	}
	return Escape(text)
}
