package slackchat

import (
	"context"
	"encoding/json"
	"strings"

	"lazyhand/bot/desk"
)

// interaction is a button, a menu, a form or a shortcut.
type interaction struct {
	Type       string `json:"type"`
	TriggerID  string `json:"trigger_id"`
	CallbackID string `json:"callback_id"`
	User       struct {
		ID     string `json:"id"`
		TeamID string `json:"team_id"`
	} `json:"user"`
	Channel   channel `json:"channel"`
	Container struct {
		Type      string  `json:"type"`
		TS        string  `json:"message_ts"`
		ThreadTS  string  `json:"thread_ts"`
		Channel   channel `json:"channel_id"`
		Ephemeral bool    `json:"is_ephemeral"`
	} `json:"container"`
	Message event    `json:"message"`
	View    view     `json:"view"`
	Actions []action `json:"actions"`
}

// action is one thing that was pressed or chosen.
type action struct {
	ID       string  `json:"action_id"`
	Type     string  `json:"type"`
	TS       string  `json:"action_ts"`
	Value    string  `json:"value"`
	Selected *choice `json:"selected_option"`
}

type choice struct {
	Value string `json:"value"`
}

// view is a form or a home tab.
type view struct {
	ID         string `json:"id"`
	Type       string `json:"type"`
	CallbackID string `json:"callback_id"`
	Private    string `json:"private_metadata"`
	State      struct {
		Values map[string]map[string]entry `json:"values"`
	} `json:"state"`
}

// entry is what stands in a field.
type entry struct {
	Value    string  `json:"value"`
	Date     string  `json:"selected_date"`
	Selected *choice `json:"selected_option"`
}

// String is what was entered.
func (e entry) String() string {
	switch {
	case e.Selected != nil:
		return e.Selected.Value
	case e.Date != "":
		return e.Date
	}
	return strings.TrimSpace(e.Value)
}

// interact deals with an interaction and acknowledges it.
func (s *Slack) interact(ctx context.Context, e envelope, l *link) {
	payload, err := s.act(ctx, e.Type, e.Payload)
	if err != nil {
		s.opt.Log.Error("an interaction was not kept", "error", err.Error())
		return // not acknowledged: the platform tells the person that it did not work
	}
	l.ack(e.ID, payload)
}

// act does what an interaction asks for and returns the answer to it. What
// cannot be read is refused by name and acknowledged.
func (s *Slack) act(ctx context.Context, kind string, raw []byte) (answer any, err error) {
	defer func() {
		if p := recover(); p != nil {
			s.seen(Refused, "interaction that made us fail")
			answer, err = nil, nil
		}
	}()
	if kind == "slash_commands" {
		var c command
		if json.Unmarshal(raw, &c) != nil {
			s.seen(Refused, "malformed command")
			return nil, nil
		}
		return s.command(ctx, c)
	}
	var i interaction
	if json.Unmarshal(raw, &i) != nil {
		s.seen(Refused, "malformed interaction")
		return nil, nil
	}
	ctx, cancel := context.WithTimeout(ctx, answerWithin)
	defer cancel()
	if i.User.ID == "" && i.Type != "" {
		s.seen(Refused, "interaction without its author")
		return nil, nil
	}
	switch i.Type {
	case "block_actions":
		return nil, s.pressed(ctx, i)
	case "view_submission":
		return s.submitted(ctx, i)
	case "shortcut", "message_action":
		return nil, s.shortcut(ctx, i)
	case "":
		s.seen(Refused, "interaction without a type")
	default:
		s.seen(Ignored, "interaction of type "+i.Type)
	}
	return nil, nil
}

// shortcut opens the form that a shortcut stands for.
func (s *Slack) shortcut(ctx context.Context, i interaction) error {
	at, text := place{}, ""
	switch i.CallbackID {
	case ShortcutReport:
	case ShortcutMessage:
		at = place{Channel: string(i.Channel), Thread: orElse(i.Message.ThreadTS, i.Message.TS)}
		text = orElse(plain(typed(i.Message.Text, i.Message.Blocks)), " ")
	default:
		s.seen(Ignored, "shortcut of another kind")
		return nil
	}
	p, err := s.person(ctx, i.User.ID)
	if err != nil {
		return err
	}
	s.seen(Taken, "shortcut")
	return s.openReport(ctx, i.TriggerID, p, at, text)
}

// buttonCorrect is the desk's button that wants words typed with it.
const buttonCorrect = "correct"

// pressed brings the desk's own buttons to the desk.
func (s *Slack) pressed(ctx context.Context, i interaction) error {
	ch := string(i.Channel)
	if ch == "" {
		ch = string(i.Container.Channel)
	}
	from := origin{place: place{Channel: ch, Thread: orElse(orElse(i.Container.ThreadTS, i.Message.ThreadTS), i.Container.TS)}, TS: i.Container.TS}
	if ch == "" { // pressed on the home tab: answered in direct messages
		from.Channel = desk.DirectTo(i.User.ID)
	}
	for _, a := range i.Actions {
		if a.ID == actionReport {
			p, err := s.person(ctx, i.User.ID)
			if err != nil {
				return err
			}
			s.seen(Taken, "button of the form")
			return s.openReport(ctx, i.TriggerID, p, place{}, "")
		}
		name, ok := strings.CutPrefix(a.ID, actionPrefix)
		if !ok {
			s.seen(Ignored, "action of another kind")
			continue
		}
		if at := strings.LastIndexByte(name, ':'); at >= 0 {
			name = name[:at]
		}
		value := a.Value
		if a.Selected != nil {
			value = a.Selected.Value
		}
		if name == buttonCorrect {
			p, err := s.person(ctx, i.User.ID)
			if err != nil {
				return err
			}
			s.seen(Taken, "button that opens a form")
			from.Button, from.Value = name, value
			return s.openCorrect(ctx, i.TriggerID, p, from)
		}
		m := desk.Message{Key: from.Channel + "/" + from.TS + "#pressed:" + i.User.ID + ":" + a.TS, Kind: desk.Pressed, Channel: from.Channel,
			Direct: ch == "" || isDirect(ch), TS: from.TS, Thread: from.Thread, Author: i.User.ID, At: s.opt.Now(), Button: name, Value: value}
		if err := s.take(ctx, arrival{verdict: Taken, why: "button", messages: []desk.Message{m}}); err != nil {
			return err
		}
	}
	return nil
}
