package desk

import (
	"encoding/json"
	"fmt"
	"slices"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// ofAlert is the body of a question about an alert, or about a follow-up.
type ofAlert struct {
	ID  int64  `json:"id"`
	Who string `json:"who,omitempty"` // who goes, when that was said
}

// longestReason is how many words a reason that was asked for has at most.
const longestReason = 12

// answerDispatch takes the day, the person or the reason that was asked for: in
// the question's context a word is enough.
func (t *turn) answerDispatch(q store.Question, f intents.Frame) (bool, error) {
	said := plainWords(t.m.Text)
	if len(said) == 0 || len(said) > longestReason || f.Site != "" || len(reports(f)) > 0 && q.Kind == askReason {
		return false, nil
	}
	var b ofAlert
	if err := json.Unmarshal(q.Body, &b); err != nil {
		return false, fmt.Errorf("read the open question: %w", err)
	}
	crew, err := t.tx.People()
	if err != nil {
		return false, err
	}
	who := ""
	if len(said) <= 4 {
		who = named(said, crew)
	}
	var step func() error
	switch q.Kind {
	case askHand:
		fu, found, err := t.tx.FollowUp(b.ID)
		if err != nil || !found || fu.State != "open" || who == "" {
			return false, err
		}
		step = func() error { return t.hand([]store.FollowUp{fu}, who) }
	default:
		a, found, err := t.tx.Alert(b.ID)
		if err != nil || !found || !a.Open() {
			return false, err
		}
		switch day, part, dayTold := t.dayTold(said); {
		case q.Kind == askVisitDay && dayTold && len(said) <= 6:
			if who == "" {
				who = b.Who
			}
			step = func() error { return t.book(a, booking{Day: day, Part: part, Who: who}) }
		case q.Kind == askVisitor && who != "":
			step = func() error { return t.book(a, booking{Who: who}) }
		case q.Kind == askReason:
			if reason := t.reasonTold(said); reason != "" {
				step = func() error { return t.closeAlert(a, reason) }
			}
		}
	}
	if step == nil {
		return false, nil
	}
	if err := t.tx.EndQuestion(q.ID, "answered"); err != nil {
		return true, err
	}
	return true, step()
}

// dayTold is the day that words name, counted from today.
func (t *turn) dayTold(said []string) (assess.Date, string, bool) {
	if iso := isoDay.FindString(t.m.Text); iso != "" {
		if d, err := assess.ParseDate(iso); err == nil {
			return d, "", true
		}
	}
	return readDay(said, t.day)
}

// reasonTold is the reason that words give for closing an alert: one of those
// offered by its place in the list, or their own; "" when they call it off.
func (t *turn) reasonTold(said []string) string {
	reasons := t.shopWords().Reasons
	if len(said) <= 3 {
		for _, w := range said {
			if slices.Contains([]string{"no", "nevermind", "nvm", "wait", "espera", "olvidalo"}, w) {
				return ""
			}
		}
		if f := t.parser.Parse(t.m.Text, intents.Context{Question: &intents.Unclear{MightBe: reasons}}); f.Answer != "" && f.Answer != "no" {
			return f.Answer
		}
	}
	return shorten(t.m.Text, 120)
}
