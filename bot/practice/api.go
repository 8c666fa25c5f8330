package practice

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net/http"
	"strconv"
	"strings"
	"time"
)

// apiError is a refusal in the platform's words.
type apiError struct {
	code     string
	needed   string   // scope, for missing_scope
	messages []string // response_metadata.messages
}

func (e *apiError) Error() string { return e.code }

func refuse(code string, messages ...string) *apiError {
	return &apiError{code: code, messages: messages}
}

// Call is a Web API call that was made, for tests.
type Call struct {
	Method string
	AppID  string // empty: a person's token, or a bad one
	Error  string // empty: ok
}

// Calls are the latest Web API calls, in the order they were answered.
func (w *Workspace) Calls() []Call {
	w.mu.Lock()
	defer w.mu.Unlock()
	return append([]Call(nil), w.calls...)
}

// call is one request to the Web API.
type call struct {
	w    *Workspace
	who  *actor
	args map[string]any // strings from a form; any JSON from a JSON body
}

// result is the body of an answer, without "ok".
type result map[string]any

// method is a Web API method.
type method struct {
	name  string
	scope string // needed; "a|b": one of them; checked per channel where it depends on it
	level bool   // wants the app-level token
	rate  float64
	do    func(*call) (result, error)
}

// tiers are calls a minute (apis/web-api/rate-limits).
const (
	tier1 = 1
	tier2 = 20
	tier3 = 50
	tier4 = 100
)

// methods of the Web API, by name. The tiers are those of the method pages
// where they name one; where they do not, from memory.
var methods = byName([]method{
	{"api.test", "", false, tier4, func(c *call) (result, error) { return result{"args": c.args}, nil }},
	{"auth.test", "", false, 600, (*call).authTest},
	{"apps.connections.open", "connections:write", true, tier3, (*call).connectionsOpen},
	{"chat.postMessage", "chat:write", false, 300, (*call).postMessage},
	{"chat.postEphemeral", "chat:write", false, tier4, (*call).postEphemeral},
	{"chat.update", "chat:write", false, tier3, (*call).updateMessage},
	{"chat.delete", "chat:write", false, tier3, (*call).deleteMessage},
	{"chat.getPermalink", "", false, 600, (*call).permalink},
	{"conversations.list", "channels:read|groups:read|im:read", false, tier2, (*call).listConversations},
	{"conversations.info", "channels:read|groups:read|im:read", false, tier3, (*call).conversationInfo},
	{"conversations.members", "channels:read|groups:read|im:read", false, tier4, (*call).conversationMembers},
	{"conversations.history", "channels:history|groups:history|im:history", false, tier3, (*call).history},
	{"conversations.replies", "channels:history|groups:history|im:history", false, tier3, (*call).replies},
	{"conversations.open", "im:write|chat:write", false, tier3, (*call).openConversation},
	{"conversations.join", "channels:join", false, tier3, (*call).joinConversation},
	{"reactions.add", "reactions:write", false, tier3, (*call).addReaction},
	{"reactions.remove", "reactions:write", false, tier2, (*call).removeReaction},
	{"reactions.get", "reactions:read", false, tier3, (*call).getReactions},
	{"users.conversations", "channels:read|groups:read|im:read", false, tier3, (*call).myConversations},
	{"team.info", "", false, tier3, (*call).teamInfo},
	{"users.info", "users:read", false, tier4, (*call).userInfo},
	{"users.list", "users:read", false, tier2, (*call).listUsers},
	{"usergroups.list", "usergroups:read", false, tier2, (*call).listGroups},
	{"usergroups.users.list", "usergroups:read", false, tier2, (*call).groupUsers},
	{"bots.info", "users:read", false, tier3, (*call).botInfo},
	{"views.open", "", false, tier4, (*call).openView},
	{"views.push", "", false, tier4, (*call).pushView},
	{"views.update", "", false, tier4, (*call).updateView},
	{"views.publish", "", false, tier4, (*call).publishView},
	{"files.getUploadURLExternal", "files:write", false, tier4, (*call).uploadURL},
	{"files.completeUploadExternal", "files:write", false, tier4, (*call).completeUpload},
	{"files.info", "files:read", false, tier4, (*call).fileInfo},
})

func byName(all []method) map[string]method {
	out := map[string]method{}
	for _, m := range all {
		out[m.name] = m
	}
	return out
}

// serveAPI answers /api/METHOD.
func (w *Workspace) serveAPI(rw http.ResponseWriter, r *http.Request) {
	name := strings.TrimPrefix(r.URL.Path, "/api/")
	m, known := methods[name]
	args, token, err := readArgs(r)
	w.mu.Lock()
	if w.url == "" {
		w.url = "http://" + r.Host
	}
	fault := w.callFault(name)
	w.mu.Unlock()
	if fault.slow > 0 {
		time.Sleep(fault.slow)
	}
	switch {
	case fault.cutBefore:
		w.note(Call{Method: name, Error: "connection cut before"})
		panic(http.ErrAbortHandler)
	case fault.status == http.StatusTooManyRequests:
		w.note(Call{Method: name, Error: "ratelimited"})
		tooMany(rw, fault.after)
		return
	case fault.status != 0:
		w.note(Call{Method: name, Error: http.StatusText(fault.status)})
		http.Error(rw, "the workspace is out of order", fault.status)
		return
	}
	if err != nil {
		writeAnswer(rw, nil, err)
		return
	}
	w.mu.Lock()
	who, out, err := w.handle(m, known, name, token, r.Header.Get("Authorization") != "", args)
	noted := Call{Method: name}
	if who != nil && who.app != nil {
		noted.AppID = who.app.ID
	}
	if err != nil {
		noted.Error = err.Error()
	}
	w.noted(noted)
	w.mu.Unlock()
	if fault.cutAfter {
		panic(http.ErrAbortHandler) // the client sees the connection end without an answer
	}
	var slow *rateError
	if errors.As(err, &slow) {
		tooMany(rw, slow.after)
		return
	}
	if who != nil {
		rw.Header().Set("X-OAuth-Scopes", strings.Join(who.scopes, ","))
		if m.scope != "" {
			rw.Header().Set("X-Accepted-OAuth-Scopes", strings.ReplaceAll(m.scope, "|", ","))
		}
	}
	var refused *apiError
	if errors.As(err, &refused) && refused.needed != "" && who != nil {
		writeJSON(rw, result{"ok": false, "error": refused.code, "needed": refused.needed, "provided": strings.Join(who.scopes, ",")})
		return
	}
	writeAnswer(rw, out, err)
}

// rateError is a call above the platform's rates.
type rateError struct{ after time.Duration }

func (e *rateError) Error() string { return "ratelimited" }

// handle checks the token and the scope and carries the call out. Caller
// holds mu.
func (w *Workspace) handle(m method, known bool, name, token string, header bool, args map[string]any) (*actor, result, error) {
	if !known {
		return nil, nil, refuse("unknown_method")
	}
	if token == "" || (m.level && !header) {
		return nil, nil, refuse("not_authed")
	}
	who := w.tokens[token]
	switch {
	case who == nil:
		return nil, nil, refuse("invalid_auth")
	case who.revoked:
		return who, nil, refuse("token_revoked")
	case m.level != who.level && name != "auth.test" && name != "api.test":
		return who, nil, refuse("not_allowed_token_type")
	case !who.has(m.scope):
		return who, nil, &apiError{code: "missing_scope", needed: strings.Split(m.scope, "|")[0]}
	}
	c := &call{w: w, who: who, args: args}
	if w.faults.HoldRates {
		after := w.take(token+" "+name, m.rate, max(m.rate, 5))
		if after == 0 && name == "chat.postMessage" {
			// One a second in each channel, with short bursts.
			after = w.take(token+" post "+c.str("channel"), 60, 5)
		}
		if after > 0 {
			return who, nil, &rateError{after}
		}
	}
	out, err := m.do(c)
	return who, out, err
}

// callFault is what the switched-on faults do to one call.
type callFault struct {
	status              int
	after, slow         time.Duration
	cutBefore, cutAfter bool
}

func (w *Workspace) callFault(name string) (out callFault) {
	f := &w.faults
	if f.Method != "" && f.Method != name {
		return out
	}
	out.slow = f.Slow
	switch {
	case f.RateLimit != 0:
		f.RateLimit = less(f.RateLimit)
		out.status, out.after = http.StatusTooManyRequests, max(time.Second, f.RetryAfter)
	case f.ServerError != 0:
		f.ServerError = less(f.ServerError)
		out.status = http.StatusServiceUnavailable
	case f.LostCall != 0:
		f.LostCall = less(f.LostCall)
		out.cutBefore = true
	case f.LostAnswer != 0:
		f.LostAnswer = less(f.LostAnswer)
		out.cutAfter = true
	}
	return out
}

func (w *Workspace) note(c Call) {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.noted(c)
}

// noted keeps a call, of the last ten thousand or so. Caller holds mu.
func (w *Workspace) noted(c Call) {
	const most = 10000
	if len(w.calls) >= 2*most {
		w.calls = append([]Call(nil), w.calls[most:]...)
	}
	w.calls = append(w.calls, c)
}

func tooMany(rw http.ResponseWriter, after time.Duration) {
	rw.Header().Set("Retry-After", strconv.Itoa(int((after+time.Second-1)/time.Second)))
	rw.Header().Set("Content-Type", "application/json; charset=utf-8")
	rw.WriteHeader(http.StatusTooManyRequests)
	_, _ = io.WriteString(rw, `{"ok":false,"error":"ratelimited"}`)
}

func writeAnswer(rw http.ResponseWriter, out result, err error) {
	if err != nil {
		body := result{"ok": false, "error": err.Error()}
		var refused *apiError
		if errors.As(err, &refused) && len(refused.messages) > 0 {
			body["response_metadata"] = map[string]any{"messages": refused.messages}
		}
		writeJSON(rw, body)
		return
	}
	if out == nil {
		out = result{}
	}
	out["ok"] = true
	writeJSON(rw, out)
}

func writeJSON(rw http.ResponseWriter, v any) {
	rw.Header().Set("Content-Type", "application/json; charset=utf-8")
	rw.Header().Set("Cache-Control", "no-store")
	_ = json.NewEncoder(rw).Encode(v) // the client may be gone; there is nobody to tell
}

// readArgs reads the arguments of a call from a form, the query or a JSON
// body, and the token from the header or the arguments.
func readArgs(r *http.Request) (map[string]any, string, error) {
	args := map[string]any{}
	r.Body = http.MaxBytesReader(nil, r.Body, 20<<20)
	if strings.HasPrefix(r.Header.Get("Content-Type"), "application/json") {
		if err := json.NewDecoder(r.Body).Decode(&args); err != nil && !errors.Is(err, io.EOF) {
			return nil, "", refuse("invalid_json", err.Error())
		}
	} else {
		if err := r.ParseMultipartForm(10 << 20); err != nil && !errors.Is(err, http.ErrNotMultipart) {
			return nil, "", refuse("invalid_form_data", err.Error())
		}
		for k, v := range r.Form {
			args[k] = v[0]
		}
	}
	token, isBearer := strings.CutPrefix(r.Header.Get("Authorization"), "Bearer ")
	if !isBearer {
		token, _ = args["token"].(string)
	}
	delete(args, "token")
	return args, strings.TrimSpace(token), nil
}

// str is a text argument.
func (c *call) str(name string) string {
	switch v := c.args[name].(type) {
	case string:
		return v
	case nil:
		return ""
	case float64, bool:
		return fmt.Sprint(v)
	}
	return ""
}

func (c *call) is(name string) bool {
	s := c.str(name)
	return s == "true" || s == "1"
}

// number is a whole number between low and high.
func (c *call) number(name string, otherwise, low, high int) int {
	n, err := strconv.Atoi(c.str(name))
	if err != nil || n < low {
		return otherwise
	}
	return min(n, high)
}

// value is an argument of JSON, which a form carries as text. It is nil when
// missing.
func (c *call) value(name, code string) (any, error) {
	v := c.args[name]
	if s, ok := v.(string); ok {
		if strings.TrimSpace(s) == "" {
			return nil, nil
		}
		if err := json.Unmarshal([]byte(s), &v); err != nil {
			return nil, refuse(code, "not JSON: "+err.Error())
		}
	}
	return v, nil
}
