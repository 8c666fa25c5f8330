package practice_test

import (
	"context"
	"encoding/json"
	"io"
	"net/http"
	"net/http/httptest"
	"strconv"
	"sync"
	"testing"
	"time"

	"github.com/slack-go/slack"

	"lazyhand/bot/practice"
)

// The example is published on docs.slack.dev,
// authentication/verifying-requests-from-slack.
func TestSignatureOfThePublishedExample(t *testing.T) {
	body := "token=xyzz0WbapA4vBCDEFasx0q6G&team_id=T1DC2JH3J&team_domain=testteamnow&channel_id=G8PSS9T3V&channel_name=foobar" +
		"&user_id=U2CERLKJA&user_name=roadrunner&command=%2Fwebhook-collect&text=&response_url=https%3A%2F%2Fhooks.slack.com" +
		"%2Fcommands%2FT1DC2JH3J%2F397700885554%2F96rGlfmibIGlgcZRskXaIFfN&trigger_id=398738663015.47445629121.803a0bc887a14d10d2c447fce8b6703c"
	want := "v0=a2114d57b48eac39b9ad189dd8316235a7b4a8d21a10bd27519666489c69b503"
	if got := practice.Sign("8f742231b10e8888abcd99yyyzzz85a5", 1531420618, []byte(body)); got != want {
		t.Errorf("got %s, want %s", got, want)
	}
}

func TestDeliveryToARequestURL(t *testing.T) {
	s := open(t, practice.Options{})
	a := s.Apps()[0]
	type got struct {
		header http.Header
		body   []byte
	}
	var mu sync.Mutex
	var requests []got
	status := http.StatusOK
	var challenge bool
	bot := httptest.NewServer(http.HandlerFunc(func(rw http.ResponseWriter, r *http.Request) {
		body, _ := io.ReadAll(r.Body)
		mu.Lock()
		defer mu.Unlock()
		// slack-go's own verifier accepts the signature.
		v, err := slack.NewSecretsVerifier(r.Header, a.SigningSecret)
		if err == nil {
			_, _ = v.Write(body)
			err = v.Ensure()
		}
		if err != nil {
			t.Error(err)
		}
		var hello struct{ Type, Challenge string }
		if json.Unmarshal(body, &hello) == nil && hello.Type == "url_verification" {
			challenge = true
			_, _ = io.WriteString(rw, hello.Challenge)
			return
		}
		requests = append(requests, got{r.Header, body})
		rw.WriteHeader(status)
	}))
	defer bot.Close()
	seen := func() int {
		mu.Lock()
		defer mu.Unlock()
		return len(requests)
	}
	s.SetRequestURL("", bot.URL)
	check(t, s.VerifyURL(context.Background(), ""))
	if !challenge {
		t.Error("no challenge came")
	}
	must[string](t)(s.Say("rosa", "field", "", "60 psi"))
	wait(t, "the event", func() bool { return seen() == 1 && s.Deliveries("") == 0 })
	mu.Lock()
	status = http.StatusInternalServerError
	mu.Unlock()
	must[string](t)(s.Say("rosa", "field", "", "61 psi"))
	wait(t, "the event and its first retry", func() bool { return seen() == 3 })
	mu.Lock()
	status = http.StatusOK
	if n := requests[2].header.Get("X-Slack-Retry-Num"); n != "1" || requests[2].header.Get("X-Slack-Retry-Reason") == "" {
		t.Errorf("retry header %q", n)
	}
	at, _ := strconv.ParseInt(requests[0].header.Get("X-Slack-Request-Timestamp"), 10, 64)
	mu.Unlock()
	if d := time.Since(time.Unix(at, 0)); d > time.Minute {
		t.Errorf("signed %v ago", d)
	}
	check(t, s.Advance(2*time.Minute))
	wait(t, "the second retry", func() bool { return seen() == 4 && s.Deliveries("") == 0 })
}
