package practice

import (
	"encoding/hex"
	"fmt"
	"io"
	"net/http"
	"strings"
	"sync"
	"time"
)

// Workspace is the whole practice workspace. Its methods may be called from
// any goroutine.
type Workspace struct {
	opts Options
	http *http.Client // for request URLs only

	mu        sync.Mutex
	shift     time.Duration // how far the clock was moved forward
	lastTS    int64         // microseconds of the newest ts given out
	serial    int           // for ids that only need to be unique
	url       string
	teamID    string
	pageKey   string // opens files to the page
	users     []*User
	groups    []*Group
	channels  []*channel
	apps      []*app
	tokens    map[string]*actor
	views     map[string]*view    // by id, modals and home tabs
	stacks    map[string][]string // open modals of a user, the last on top
	triggers  map[string]*trigger
	responses map[string]*responseURL
	files     map[string]*File
	faults    Faults
	rates     map[string]*bucket
	deliver   []*delivery // sent or waiting, not acknowledged
	calls     []Call
	watchers  map[chan struct{}]bool
	version   int
	closed    bool

	wake chan struct{}
	done chan struct{}
	wg   sync.WaitGroup
}

// New opens a workspace. Close ends it.
func New(o Options) *Workspace {
	o = o.withDefaults()
	w := &Workspace{
		opts: o, url: strings.TrimSuffix(o.URL, "/"), http: &http.Client{Timeout: 10 * time.Second},
		tokens: map[string]*actor{}, views: map[string]*view{}, stacks: map[string][]string{},
		triggers: map[string]*trigger{}, responses: map[string]*responseURL{}, files: map[string]*File{},
		rates: map[string]*bucket{}, watchers: map[chan struct{}]bool{},
		wake: make(chan struct{}, 1), done: make(chan struct{}),
	}
	w.teamID, w.pageKey = w.newID("T"), w.random(16)
	w.faults.HoldRates = o.HoldRates
	for _, u := range o.Users {
		if u.ID == "" {
			u.ID = w.newID("U")
		}
		if u.Location == nil {
			u.Location = o.Location
		}
		if u.RealName == "" {
			u.RealName = u.Name
		}
		w.users = append(w.users, &u)
		token := "xoxp-" + w.random(16)
		w.tokens[token] = &actor{token: token, user: &u, scopes: userScopes}
	}
	for _, g := range o.Groups {
		if g.ID == "" {
			g.ID = w.newID("S")
		}
		g.Users = w.userIDs(g.Users)
		w.groups = append(w.groups, &g)
	}
	for _, c := range o.Channels {
		w.addChannel(c)
	}
	for _, a := range o.Apps {
		w.addApp(a)
	}
	w.wg.Add(1)
	go w.pump()
	return w
}

// Close ends all sockets and what waits to be delivered. The workspace can
// still be read.
func (w *Workspace) Close() {
	w.mu.Lock()
	if w.closed {
		w.mu.Unlock()
		return
	}
	w.closed = true
	close(w.done)
	var socks []*socket
	for _, a := range w.apps {
		socks = append(socks, a.sockets...)
	}
	w.mu.Unlock()
	for _, s := range socks {
		s.cut()
	}
	w.wg.Wait()
}

// random returns n random bytes in hexadecimal. Caller need not hold mu.
func (w *Workspace) random(n int) string {
	b := make([]byte, n)
	if _, err := io.ReadFull(w.opts.Random, b); err != nil {
		// A finite source ran dry: ids stay unique by the serial number.
		w.serial++
		return fmt.Sprintf("%0*d", 2*n, w.serial)
	}
	return hex.EncodeToString(b)
}

// newID makes an id such as "U0000A001". Caller holds mu or is New.
func (w *Workspace) newID(prefix string) string {
	w.serial++
	return fmt.Sprintf("%s0P%06d", prefix, w.serial)
}

// uuid makes an identifier of the form that the platform uses for envelopes.
func (w *Workspace) uuid() string {
	h := w.random(16)
	return h[:8] + "-" + h[8:12] + "-" + h[12:16] + "-" + h[16:20] + "-" + h[20:]
}

// TeamID is the id of the workspace.
func (w *Workspace) TeamID() string { return w.teamID }

// Users are the people of the workspace, without the bots.
func (w *Workspace) Users() []User {
	w.mu.Lock()
	defer w.mu.Unlock()
	var out []User
	for _, u := range w.users {
		out = append(out, *u)
	}
	return out
}

// user finds a person by id or name. Caller holds mu.
func (w *Workspace) user(ref string) *User {
	ref = strings.TrimPrefix(ref, "@")
	for _, u := range w.users {
		if u.ID == ref || u.Name == ref {
			return u
		}
	}
	return nil
}

func (w *Workspace) userIDs(refs []string) []string {
	var out []string
	for _, r := range refs {
		if u := w.user(r); u != nil {
			out = append(out, u.ID)
		}
	}
	return out
}

// changed tells the pages that something is new. Caller holds mu.
func (w *Workspace) changed() {
	w.version++
	for c := range w.watchers {
		select {
		case c <- struct{}{}:
		default:
		}
	}
}

// watch returns a channel that is signalled on every change, and its end.
func (w *Workspace) watch() (<-chan struct{}, func()) {
	c := make(chan struct{}, 1)
	w.mu.Lock()
	w.watchers[c] = true
	w.mu.Unlock()
	return c, func() {
		w.mu.Lock()
		delete(w.watchers, c)
		w.mu.Unlock()
	}
}

// Wait returns when ok reports true, which is asked again after every change
// in the workspace, or false when the time is over by the real clock. It is
// for tests.
func (w *Workspace) Wait(limit time.Duration, ok func() bool) bool {
	c, end := w.watch()
	defer end()
	timer := time.NewTimer(limit)
	defer timer.Stop()
	for {
		if ok() {
			return true
		}
		select {
		case <-c:
		case <-timer.C:
			return ok()
		}
	}
}
