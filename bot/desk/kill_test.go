package desk_test

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"math/rand/v2"
	"net/http"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/store"
)

// The test of kills runs the bot in a process of its own, this test binary
// started again, against a chat platform that the test keeps on loopback. It
// kills that process, with no chance to clean up, at random instants: while it
// takes, commits, posts or starts.
//
// LAZYHAND_KILLS says how often, 60 times when it is not set; 1,000 take some
// five minutes:
//
//	LAZYHAND_KILLS=1000 go test ./bot/desk -run Kills -v -timeout 20m
const (
	killsEnv = "LAZYHAND_KILLS"
	childEnv = "LAZYHAND_KILL_CHILD" // address of the platform; set in the child
	fileEnv  = "LAZYHAND_KILL_FILE"
)

// speed is how much faster than the wall the bot's clock runs, so that the
// grace of a post in doubt passes in 0.15 s.
const speed = 100

// killStart is what the bot's clock shows when the test begins.
var killStart = time.Date(2026, 6, 15, 8, 0, 0, 0, time.UTC)

func TestMain(m *testing.M) {
	if addr := os.Getenv(childEnv); addr != "" {
		if err := killChild(addr, os.Getenv(fileEnv)); err != nil {
			fmt.Fprintln(os.Stderr, err)
			os.Exit(1)
		}
		return
	}
	os.Exit(m.Run())
}

// platform is the chat platform that outlives the bot.
type platform struct {
	t     *testing.T
	began time.Time
	mu    sync.Mutex
	rand  *rand.Rand
	made  int
	// replies that were posted.
	replies int
	queue   []killMessage     // not acknowledged yet
	acked   map[string]int    // key: how often
	posts   map[string]int    // key: how often
	refs    map[string]string // key: the platform's name
	kinds   map[string]desk.PostKind
	lost    int
	quiet   bool // no new messages
	idle    bool // the bot has nothing left to do
	ready   chan struct{}

	contact chan struct{} // the bot is at work
}

type killMessage struct {
	Key, TS, Author, Text string
	At                    time.Time
}

type killPost struct {
	Key, Channel, Thread string
	Kind                 desk.PostKind
	Body                 desk.Body
}

func (p *platform) now() time.Time { return killStart.Add(time.Since(p.began) * speed) }

// next hands out what is not acknowledged, oldest first, and sometimes again
// what is: platforms do that.
func (p *platform) next(w http.ResponseWriter, _ *http.Request) {
	p.mu.Lock()
	defer p.mu.Unlock()
	select {
	case p.contact <- struct{}{}:
	default:
	}
	// People wait for their answers: without that a slow machine heaps up
	// answers that are never sent between two kills.
	for !p.quiet && len(p.queue) < 8 && p.made-p.replies < 16 {
		p.made++
		p.queue = append(p.queue, p.message(p.made))
	}
	list := p.queue
	if len(list) == 0 && p.made > 0 && p.rand.IntN(10) == 0 {
		list = []killMessage{p.message(1 + p.rand.IntN(p.made))} // delivered once more
	}
	json.NewEncoder(w).Encode(struct {
		Now  time.Time
		List []killMessage
	}{p.now(), list})
}

func (p *platform) message(n int) killMessage {
	who := []string{"ana", "ben", "cruz"}[n%3]
	text := fmt.Sprintf("%d rear tap, heater idle, %d Elm St", 45+n*7%60, 100+n%40)
	switch n % 10 {
	case 4:
		text = fmt.Sprintf("history %d Elm St", 100+n%40)
	case 7:
		text = "make it 61"
	case 9:
		text = fmt.Sprintf("%d laundry, %d Oak Ct. recheck in 3 days", 50+n%30, 1+n%25)
	}
	ts := fmt.Sprintf("%d.%06d", killStart.Unix(), n)
	return killMessage{Key: "field/" + ts, TS: ts, Author: who, Text: text, At: killStart.Add(time.Duration(n) * time.Second)}
}

func (p *platform) ack(_ http.ResponseWriter, r *http.Request) {
	key, _ := io.ReadAll(r.Body)
	p.mu.Lock()
	defer p.mu.Unlock()
	p.acked[string(key)]++
	for i, m := range p.queue {
		if m.Key == string(key) {
			p.queue = append(p.queue[:i:i], p.queue[i+1:]...)
			break
		}
	}
}

// post takes a post. Now and then its answer is lost.
func (p *platform) post(w http.ResponseWriter, r *http.Request) {
	var k killPost
	if err := json.NewDecoder(r.Body).Decode(&k); err != nil {
		return // cut off on the way: not taken
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	if p.posts[k.Key]++; p.posts[k.Key] == 1 && strings.HasPrefix(k.Key, "reply:") {
		p.replies++
	}
	p.kinds[k.Key] = k.Kind
	p.refs[k.Key] = fmt.Sprintf("%d.9%05d", killStart.Unix(), len(p.refs)+1)
	if p.rand.IntN(50) == 0 {
		p.lost++
		panic(http.ErrAbortHandler)
	}
	fmt.Fprint(w, p.refs[k.Key])
}

func (p *platform) find(w http.ResponseWriter, r *http.Request) {
	p.mu.Lock()
	defer p.mu.Unlock()
	fmt.Fprint(w, p.refs[r.URL.Query().Get("key")])
}

func (p *platform) isIdle(_ http.ResponseWriter, _ *http.Request) {
	p.mu.Lock()
	defer p.mu.Unlock()
	if p.quiet && len(p.queue) == 0 && !p.idle {
		p.idle = true
		close(p.ready)
	}
}

func TestKillsLoseNothingAndDoubleNothing(t *testing.T) {
	kills := 60
	if testing.Short() {
		kills = 15
	}
	if n, err := strconv.Atoi(os.Getenv(killsEnv)); err == nil {
		kills = n
	}
	seed := uint64(time.Now().UnixNano())
	t.Logf("seed %d", seed)
	p := &platform{t: t, began: time.Now(), rand: rand.New(rand.NewPCG(seed, 1)), acked: map[string]int{}, posts: map[string]int{},
		refs: map[string]string{}, kinds: map[string]desk.PostKind{}, ready: make(chan struct{}), contact: make(chan struct{}, 1)}
	mux := http.NewServeMux()
	for path, f := range map[string]http.HandlerFunc{"/next": p.next, "/ack": p.ack, "/post": p.post, "/find": p.find, "/idle": p.isIdle} {
		mux.HandleFunc(path, f)
	}
	server := httptest.NewUnstartedServer(mux)
	server.Config.ErrorLog = nil
	server.Start()
	defer server.Close()
	file := filepath.Join(t.TempDir(), "record.db")
	var complaint bytes.Buffer
	start := func() *exec.Cmd {
		c := exec.Command(os.Args[0])
		c.Env = append(os.Environ(), childEnv+"="+server.URL, fileEnv+"="+file)
		complaint.Reset()
		c.Stderr = &complaint
		if err := c.Start(); err != nil {
			t.Fatal(err)
		}
		return c
	}
	when := rand.New(rand.NewPCG(seed, 2))
	for range kills {
		c := start()
		if when.IntN(8) > 0 { // else it is killed while it starts
			select {
			case <-p.contact:
			case <-time.After(10 * time.Second):
			}
		}
		time.Sleep(time.Duration(when.IntN(120_000)) * time.Microsecond)
		if err := c.Process.Kill(); err != nil {
			t.Fatalf("the bot ended by itself: %v %s", err, complaint.String())
		}
		c.Wait() // killed: that is no news
		select {
		case <-p.contact:
		default:
		}
	}
	p.mu.Lock()
	p.quiet = true
	p.mu.Unlock()
	c := start()
	select {
	case <-p.ready:
	case <-time.After(2 * time.Minute):
		t.Error("the bot does not come to rest")
	}
	c.Process.Kill()
	c.Wait()
	p.verify(file, kills)
}

// verify compares what the platform saw with what is on record.
func (p *platform) verify(file string, kills int) {
	t := p.t
	p.mu.Lock()
	defer p.mu.Unlock()
	db, err := store.Open(t.Context(), file)
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	if faults, err := db.Integrity(t.Context()); err != nil || len(faults) > 0 {
		t.Errorf("the record does not hold together: %v %v", faults, err)
	}
	said := 0
	err = db.Read(t.Context(), func(tx *store.Tx) error {
		for n := 1; n <= p.made; n++ {
			m := p.message(n)
			if p.acked[m.Key] == 0 {
				t.Errorf("message %s was never acknowledged", m.Key)
				continue
			}
			row, found, err := tx.MessageByKey(m.Key) // the key is unique: once at most
			if err != nil {
				return err
			}
			if !found || row.Text != m.Text {
				t.Errorf("message %s was acknowledged and is not on record", m.Key)
				continue
			}
			key := fmt.Sprintf("reply:%d", row.ID)
			post, found, err := tx.PostByKey(key)
			if err != nil {
				return err
			}
			if !found || post.State != "sent" || p.posts[key] != 1 {
				t.Errorf("%q was answered %d times (%s)", m.Text, p.posts[key], post.State)
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	for key, n := range p.posts {
		if p.kinds[key] != desk.Say {
			continue // a mark or a new wording may be repeated
		}
		said++
		if n != 1 {
			t.Errorf("%s was posted %d times", key, n)
		}
	}
	t.Logf("%d kills: %d messages, %d posts, %d answers lost, each once", kills, p.made, said, p.lost)
}

// killChild is the bot, until it is killed.
func killChild(addr, file string) error {
	ctx := context.Background()
	db, err := store.Open(ctx, file)
	if err != nil {
		return err
	}
	d, err := desk.New(db, desk.Options{Field: []string{"field"}, Dispatch: "dispatch", Team: "team",
		Jobs: map[string]string{desk.JobFollowUps: "0 7 * * *", desk.JobSummary: "0 7 * * 1"}})
	if err != nil {
		return err
	}
	chat := &killChat{addr: addr}
	for {
		var next struct {
			Now  time.Time
			List []killMessage
		}
		if err := chat.call("/next", nil, &next); err != nil {
			return err
		}
		var wg sync.WaitGroup
		for _, m := range next.List {
			wg.Go(func() {
				err := d.Take(ctx, desk.Message{Key: m.Key, Channel: "field", TS: m.TS, Author: m.Author, Name: m.Author, At: m.At, Text: m.Text})
				if err == nil {
					err = chat.call("/ack", []byte(m.Key), nil)
				}
				if err != nil {
					fmt.Fprintln(os.Stderr, err)
				}
			})
		}
		wg.Wait()
		if err := d.Tick(ctx, next.Now); err != nil {
			return err
		}
		more, err := d.Send(ctx, next.Now, chat)
		if err != nil {
			return err
		}
		if !more {
			s, err := db.Status(ctx, assess.DateOf(next.Now))
			if err != nil {
				return err
			}
			if s.Ready+s.Sending == 0 {
				if err := chat.call("/idle", nil, nil); err != nil {
					return err
				}
			}
			time.Sleep(2 * time.Millisecond)
		}
	}
}

// killChat is the platform as the bot sees it.
type killChat struct{ addr string }

func (c *killChat) call(path string, body []byte, into any) error {
	r, err := http.Post(c.addr+path, "application/octet-stream", bytes.NewReader(body))
	if err != nil {
		return err
	}
	defer r.Body.Close()
	answer, err := io.ReadAll(r.Body)
	switch into := into.(type) {
	case nil:
		return err
	case *string:
		*into = string(answer)
		return err
	default:
		if err != nil {
			return err
		}
		return json.Unmarshal(answer, into)
	}
}

func (c *killChat) Post(_ context.Context, p desk.Post) (ref string, err error) {
	body, err := json.Marshal(killPost{p.Key, p.Channel, p.Thread, p.Kind, p.Body})
	if err != nil {
		return "", err
	}
	return ref, c.call("/post", body, &ref)
}

func (c *killChat) Find(_ context.Context, p desk.Post) (ref string, found bool, err error) {
	err = c.call("/find?key="+p.Key, nil, &ref)
	return ref, ref != "", err
}
