package slackchat_test

import (
	"context"
	"crypto/hmac"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io"
	"net"
	"net/http"
	"net/http/httptest"
	"strconv"
	"strings"
	"testing"
	"time"

	"lazyhand/bot/practice"
	"lazyhand/bot/slackchat"
)

// The example that the platform publishes on
// authentication/verifying-requests-from-slack.
const (
	publishedSecret    = "8f742231b10e8888abcd99yyyzzz85a5"
	publishedTimestamp = "1531420618"
	publishedBody      = "token=xyzz0WbapA4vBCDEFasx0q6G&team_id=T1DC2JH3J&team_domain=testteamnow&channel_id=G8PSS9T3V&channel_name=foobar&user_id=U2CERLKJA&user_name=roadrunner&command=%2Fwebhook-collect&text=&response_url=https%3A%2F%2Fhooks.slack.com%2Fcommands%2FT1DC2JH3J%2F397700885554%2F96rGlfmibIGlgcZRskXaIFfN&trigger_id=398738663015.47445629121.803a0bc887a14d10d2c447fce8b6703c"
	publishedSignature = "v0=a2114d57b48eac39b9ad189dd8316235a7b4a8d21a10bd27519666489c69b503"
)

func TestSignatures(t *testing.T) {
	at := time.Unix(1531420618, 0)
	tests := []struct {
		what                         string
		secret, timestamp, sig, body string
		now                          time.Time
		ok                           bool
	}{
		{"the published example", publishedSecret, publishedTimestamp, publishedSignature, publishedBody, at, true},
		{"five minutes late", publishedSecret, publishedTimestamp, publishedSignature, publishedBody, at.Add(5 * time.Minute), true},
		{"later", publishedSecret, publishedTimestamp, publishedSignature, publishedBody, at.Add(5*time.Minute + time.Second), false},
		{"from the future", publishedSecret, publishedTimestamp, publishedSignature, publishedBody, at.Add(-5*time.Minute - time.Second), false},
		{"another secret", "x", publishedTimestamp, publishedSignature, publishedBody, at, false},
		{"no secret", "", publishedTimestamp, publishedSignature, publishedBody, at, false},
		{"another body", publishedSecret, publishedTimestamp, publishedSignature, publishedBody + "x", at, false},
		{"another timestamp", publishedSecret, "1531420619", publishedSignature, publishedBody, at, false},
		{"no timestamp", publishedSecret, "", publishedSignature, publishedBody, at, false},
		{"no signature", publishedSecret, publishedTimestamp, "", publishedBody, at, false},
	}
	for _, tt := range tests {
		if err := slackchat.Verify(tt.secret, tt.timestamp, tt.sig, []byte(tt.body), tt.now); (err == nil) != tt.ok {
			t.Errorf("%s: %v", tt.what, err)
		}
	}
}

// signed makes a request as the platform signs it.
func signed(secret, kind, body string, at time.Time) *http.Request {
	ts := strconv.FormatInt(at.Unix(), 10)
	mac := hmac.New(sha256.New, []byte(secret))
	fmt.Fprintf(mac, "v0:%s:%s", ts, body)
	r := httptest.NewRequest(http.MethodPost, "/slack", strings.NewReader(body))
	r.Header.Set("Content-Type", kind)
	r.Header.Set("X-Slack-Request-Timestamp", ts)
	r.Header.Set("X-Slack-Signature", "v0="+hex.EncodeToString(mac.Sum(nil)))
	return r
}

// hall is a workspace that delivers by HTTP.
func hall(t *testing.T) *shop {
	l, err := net.Listen("tcp", "127.0.0.1:0")
	must(t, err)
	address := l.Addr().String()
	must(t, l.Close())
	w := open(t, practice.Options{})
	must(t, w.stop())
	w.join(func(o *slackchat.Options) {
		o.AppToken, o.SigningSecret, o.Listen = "", w.app.SigningSecret, address
	})
	w.SetRequestURL(w.app.ID, "http://"+address+"/slack")
	return w
}

func TestTheSameMessagesByHTTP(t *testing.T) {
	s := hall(t)
	must(t, s.VerifyURL(t.Context(), s.app.ID))
	s.mu.Lock()
	s.fail = 1
	s.mu.Unlock()
	ts := s.say("rosa", "field", "", "92 rear, 123 Elm")
	s.until("it came again and was kept", func() bool { return len(s.messages()) == 1 })
	must(t, s.Edit("rosa", "field", ts, "82 rear, 123 Elm"))
	must(t, s.Slash(t.Context(), "rosa", "field", "/lazyhand", "history 123 Elm"))
	s.until("edit and command are there", func() bool { return len(s.messages()) == 3 })
	s.settled()
}

func TestRequestsThatAreNotTakenAsSlacks(t *testing.T) {
	at := time.Unix(1_800_000_000, 0)
	s := slackchat.New(slackchat.Options{SigningSecret: "secret", Now: func() time.Time { return at }, APIURL: "http://127.0.0.1:0/"})
	h := s.Handler()
	do := func(r *http.Request) *httptest.ResponseRecorder {
		w := httptest.NewRecorder()
		h.ServeHTTP(w, r)
		return w
	}
	get := httptest.NewRequest(http.MethodGet, "/slack", nil)
	forged := signed("other", "application/json", `{}`, at)
	replayed := signed("secret", "application/json", `{}`, at.Add(-6*time.Minute))
	long := signed("secret", "application/json", `{"a":"`+strings.Repeat("x", 2<<20)+`"}`, at)
	tests := []struct {
		what string
		r    *http.Request
		want int
	}{
		{"a visit by a browser", get, http.StatusMethodNotAllowed},
		{"forged", forged, http.StatusUnauthorized},
		{"replayed", replayed, http.StatusUnauthorized},
		{"too long", long, http.StatusRequestEntityTooLarge},
		{"no JSON: acknowledged, it would be no better the next time", signed("secret", "application/json", `{`, at), http.StatusOK},
		{"an empty body", signed("secret", "application/json", ``, at), http.StatusOK},
		{"a form that is none", signed("secret", "application/x-www-form-urlencoded", `%%%`, at), http.StatusOK},
		{"an event of the future", signed("secret", "application/json", `{"type":"event_callback","event":{"type":"new"}}`, at), http.StatusOK},
	}
	for _, tt := range tests {
		if w := do(tt.r); w.Code != tt.want {
			t.Errorf("%s: %d %s, want %d", tt.what, w.Code, w.Body, tt.want)
		}
	}
	w := do(signed("secret", "application/json", `{"type":"url_verification","challenge":"<b>abc</b>"}`, at))
	if w.Body.String() != "<b>abc</b>" || !strings.HasPrefix(w.Header().Get("Content-Type"), "text/plain") {
		t.Errorf("the challenge is answered with %q as %s", w.Body, w.Header().Get("Content-Type"))
	}
}

func TestASlowBodyIsCutOff(t *testing.T) {
	if testing.Short() {
		t.Skip("takes five seconds")
	}
	s := hall(t)
	_, says := s.bot.Connected()
	address := says[strings.LastIndex(says, " ")+1:]
	c, err := net.Dial("tcp", address)
	must(t, err)
	defer c.Close()
	_, err = io.WriteString(c, "POST /slack HTTP/1.1\r\nHost: x\r\nContent-Length: 1000\r\n\r\n{")
	must(t, err)
	start := time.Now()
	must(t, c.SetReadDeadline(start.Add(20*time.Second)))
	b, err := io.ReadAll(c)
	if errors.Is(err, context.DeadlineExceeded) || time.Since(start) > 12*time.Second || !strings.Contains(string(b), "413") {
		t.Errorf("after %v: %q %v", time.Since(start), b, err)
	}
}
