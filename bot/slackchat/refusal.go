package slackchat

import (
	"errors"
	"net"
	"net/http"
	"time"

	"github.com/slack-go/slack"

	"lazyhand/bot/desk"
)

// Waits where the platform does not say how long.
const (
	waitWhenSlow   = 30 * time.Second
	waitWhenAway   = 5 * time.Second
	waitWhenLocked = time.Minute
)

// answer is what became of a call that says something.
type answer int

const (
	inDoubt answer = iota // it may have been said
	refusedForGood
	refusedForNow
	tooLong
	badBlocks
	alreadySo
)

// refusals are the platform's errors that say for certain that nothing was
// said, and what a shop can do.
var refusals = map[string]struct {
	is  answer
	why string
}{
	"not_in_channel":                           {refusedForGood, "the bot is not in that channel; invite it there with /invite"},
	"channel_not_found":                        {refusedForGood, "the channel is not there, or is private and the bot is not in it; check its id in the configuration"},
	"is_archived":                              {refusedForGood, "the channel is archived"},
	"restricted_action":                        {refusedForGood, "the workspace does not let the bot post there"},
	"restricted_action_read_only_channel":      {refusedForGood, "the channel is read only"},
	"restricted_action_thread_only_channel":    {refusedForGood, "the channel takes replies only"},
	"restricted_action_non_threadable_channel": {refusedForGood, "the channel takes no replies"},
	"message_not_found":                        {refusedForGood, "the message that it answers is gone"},
	"thread_not_found":                         {refusedForGood, "the thread that it answers is gone"},
	"cannot_reply_to_message":                  {refusedForGood, "that message takes no replies"},
	"thread_locked":                            {refusedForGood, "the thread is locked"},
	"cant_update_message":                      {refusedForGood, "the message cannot be changed"},
	"edit_window_closed":                       {refusedForGood, "the message can no longer be changed"},
	"no_permission":                            {refusedForGood, "the workspace does not allow it"},
	"user_not_found":                           {refusedForGood, "that person is not in the workspace"},
	"too_many_emoji":                           {refusedForGood, "the message has too many reactions"},
	"too_many_reactions":                       {refusedForGood, "the message has too many reactions"},
	"invalid_name":                             {refusedForGood, "the workspace lacks that emoji"},
	"no_text":                                  {refusedForGood, "there was nothing to say"},
	"missing_scope":                            {refusedForGood, "a scope is missing; lazyhand check names it"},
	"ratelimited":                              {refusedForNow, "Slack asks to wait"},
	"rate_limited":                             {refusedForNow, "Slack asks to wait"},
	"message_limit_exceeded":                   {refusedForNow, "Slack asks to wait"},
	"msg_too_long":                             {tooLong, "the message is too long"},
	"msg_blocks_too_long":                      {tooLong, "the message is too long"},
	"invalid_blocks":                           {badBlocks, "Slack does not take the layout"},
	"invalid_blocks_format":                    {badBlocks, "Slack does not take the layout"},
	"already_reacted":                          {alreadySo, ""},
	"no_reaction":                              {alreadySo, ""},
}

// judge says what an error means for what was to be said.
func judge(err error) (answer, *desk.Refusal) {
	var slow *slack.RateLimitedError
	var status slack.StatusCodeError
	var no slack.SlackErrorResponse
	var op *net.OpError
	var fatal *Fatal
	switch {
	case err == nil:
		return alreadySo, nil
	case errors.As(err, &slow):
		return refusedForNow, &desk.Refusal{Why: "Slack asks to wait", After: max(slow.RetryAfter, time.Second)}
	case errors.As(err, &status) && status.Code == http.StatusTooManyRequests:
		return refusedForNow, &desk.Refusal{Why: "Slack asks to wait", After: waitWhenSlow}
	case errors.As(err, &no):
		if r, ok := refusals[no.Err]; ok {
			switch r.is {
			case refusedForGood:
				why := r.why
				if no.Needed != "" {
					why = "the bot lacks the scope " + no.Needed
				}
				return r.is, &desk.Refusal{Why: why, Final: true}
			case refusedForNow:
				return r.is, &desk.Refusal{Why: r.why, After: waitWhenSlow}
			}
			return r.is, &desk.Refusal{Why: r.why, Final: true}
		}
		if mend(no.Err) != "" {
			return refusedForNow, &desk.Refusal{Why: "Slack does not know the token: " + mend(no.Err), After: waitWhenLocked}
		}
		return inDoubt, nil // internal_error, fatal_error, and whatever is new
	case errors.As(err, &fatal):
		return refusedForNow, &desk.Refusal{Why: fatal.Error(), After: waitWhenLocked}
	case errors.As(err, &op) && op.Op == "dial":
		return refusedForNow, &desk.Refusal{Why: "Slack cannot be reached", After: waitWhenAway}
	}
	return inDoubt, nil
}
