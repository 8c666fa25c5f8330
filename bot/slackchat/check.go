package slackchat

import (
	"context"
	"errors"
	"fmt"
	"net/http"
	"slices"
	"strings"
	"sync"

	"github.com/slack-go/slack"
)

// Finding is something that Check found out.
type Finding struct {
	What string
	Bad  bool   // it does not work until it is mended
	Note bool   // somebody should look at it
	Says string // what is so, and how to mend it
}

// Check asks the platform whether tokens, scopes and channels are right. It
// posts nothing and opens no connection but asks for one, which shows whether
// Socket Mode is on. channels are ids with the settings that name them.
func Check(ctx context.Context, opt Options, uses Uses, channels map[string]string) []Finding {
	s := New(opt)
	var mu sync.Mutex
	scopes := ""
	api := slack.New(opt.BotToken, slack.OptionHTTPClient(s.http), slack.OptionAPIURL(orElse(opt.APIURL, slack.APIURL)),
		slack.OptionOnResponseHeaders(func(_ string, h http.Header) {
			mu.Lock()
			defer mu.Unlock()
			if v := h.Get("X-OAuth-Scopes"); v != "" {
				scopes = v
			}
		}))
	r, err := api.AuthTestContext(ctx)
	if err != nil {
		return []Finding{{What: "slack sign-in", Bad: true, Says: inWords(err)}}
	}
	s.mu.Lock()
	s.me = self{userID: r.UserID, botID: r.BotID, teamID: r.TeamID}
	s.mu.Unlock()
	out := []Finding{{What: "slack sign-in", Says: fmt.Sprintf("@%s in %s", r.User, r.Team)}}
	mu.Lock()
	have := strings.FieldsFunc(scopes, func(c rune) bool { return c == ',' || c == ' ' })
	mu.Unlock()
	out = append(out, checkScopes(uses, have)...)
	for id, key := range channels {
		out = append(out, s.checkChannel(ctx, id, key))
	}
	slices.SortStableFunc(out[1:], func(a, b Finding) int { return strings.Compare(a.What+a.Says, b.What+b.Says) })
	if opt.Listen == "" {
		out = append(out, s.checkSocket(ctx))
	}
	return append(out, Finding{What: "slack events", Note: true, Says: "Slack tells nobody which events an app asks for: at the app's page Event Subscriptions these must stand: " +
		strings.Join(uses.Events(), ", ") + "; switch Delayed Events on there, so that Slack tries for a day when the bot is away"})
}

// checkScopes names the scopes that are missing and those that are not needed.
func checkScopes(uses Uses, have []string) []Finding {
	if len(have) == 0 {
		return []Finding{{What: "slack scopes", Note: true, Says: "Slack did not say which scopes the token has"}}
	}
	var missing, needless []string
	var needed []string
	for _, s := range uses.Scopes() {
		needed = append(needed, s.Name)
		if !slices.Contains(have, s.Name) {
			missing = append(missing, s.Name+" ("+s.For+")")
		}
	}
	for _, h := range have {
		if !slices.Contains(needed, h) {
			needless = append(needless, h)
		}
	}
	out := []Finding{{What: "slack scopes", Says: "all that are needed"}}
	if len(missing) > 0 {
		out = []Finding{{What: "slack scopes", Bad: true, Says: "missing: " + strings.Join(missing, ", ") + "; add them at the app's page OAuth & Permissions and reinstall the app"}}
	}
	if len(needless) > 0 {
		out = append(out, Finding{What: "slack scopes", Note: true, Says: "not needed: " + strings.Join(needless, ", ")})
	}
	return out
}

// checkChannel tells whether the bot can read a channel, which it can when it
// is in it.
func (s *Slack) checkChannel(ctx context.Context, id, key string) Finding {
	_, _, err := s.page(ctx, id, "", tsOf(s.opt.Now()), "")
	var e slack.SlackErrorResponse
	f := Finding{What: "slack channel", Says: fmt.Sprintf("%s (%s) is there and can be read", id, key)}
	switch {
	case err == nil:
		// A public channel may be read without being in it, but no events come
		// from there, and nothing can be posted.
		if joined, known := s.joined(ctx, id); known && !joined {
			f.Bad, f.Says = true, fmt.Sprintf("%s (%s): the bot is not in it; write /invite @lazyhand there", id, key)
		}
	case errors.As(err, &e) && e.Err == "not_in_channel":
		f.Bad, f.Says = true, fmt.Sprintf("%s (%s): the bot is not in it; write /invite @lazyhand there", id, key)
	case errors.As(err, &e) && e.Err == "channel_not_found":
		f.Bad, f.Says = true, fmt.Sprintf("%s (%s): there is no such channel, or it is private and the bot is not in it; the id stands at the end of the channel's details", id, key)
	default:
		f.Bad, f.Says = true, fmt.Sprintf("%s (%s): %s", id, key, inWords(err))
	}
	return f
}

// joined tells whether the bot is in a channel, where it may ask.
func (s *Slack) joined(ctx context.Context, id string) (in, known bool) {
	c, err := s.api.GetConversationInfoContext(ctx, &slack.GetConversationInfoInput{ChannelID: id})
	if err != nil {
		return false, false // channels:read is not among the least scopes
	}
	return c.IsMember, true
}

func (s *Slack) checkSocket(ctx context.Context) Finding {
	f := Finding{What: "slack socket mode", Says: "switched on, the app-level token is taken"}
	if _, _, err := s.api.StartSocketModeContext(ctx); err != nil {
		f.Bad, f.Says = true, inWords(err)
	}
	return f
}

// inWords is an error for a shop owner.
func inWords(err error) string {
	err = fatal(err)
	var f *Fatal
	if errors.As(err, &f) {
		return f.Error()
	}
	var e slack.SlackErrorResponse
	if errors.As(err, &e) {
		if r, ok := refusals[e.Err]; ok && r.why != "" {
			return r.why
		}
		return "Slack says " + e.Err
	}
	if is, no := judge(err); is == refusedForNow && no != nil {
		return no.Why
	}
	return "Slack does not answer; is there a way to the internet from here?"
}
