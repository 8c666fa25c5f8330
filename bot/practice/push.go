package practice

import (
	"bytes"
	"context"
	"crypto/hmac"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"io"
	"net/http"
	"net/url"
	"strconv"
)

// Sign is the signature v0 of a request body
// (authentication/verifying-requests-from-slack).
func Sign(secret string, timestamp int64, body []byte) string {
	mac := hmac.New(sha256.New, []byte(secret))
	fmt.Fprintf(mac, "v0:%d:", timestamp)
	mac.Write(body)
	return "v0=" + hex.EncodeToString(mac.Sum(nil))
}

// sendHTTP posts a delivery to the app's request URL on a goroutine of its
// own. Caller holds mu.
func (w *Workspace) sendHTTP(d *delivery) {
	body, kind := w.httpBody(d)
	header := http.Header{"Content-Type": {kind}}
	if d.attempt > 0 {
		header.Set("X-Slack-Retry-Num", strconv.Itoa(d.attempt))
		header.Set("X-Slack-Retry-Reason", "http_timeout")
	}
	address, secret := d.app.RequestURL, d.app.SigningSecret
	now := w.now().Unix()
	ctx, cancel := context.WithTimeout(context.Background(), w.opts.AckWithin)
	attempt := d.attempt
	w.wg.Add(1)
	go func() {
		defer w.wg.Done()
		defer cancel()
		status, noRetry, answered := w.postSigned(ctx, address, secret, now, header, body)
		w.mu.Lock()
		defer w.mu.Unlock()
		if d.attempt != attempt || !d.sent {
			return // it counts as lost already
		}
		switch {
		case status >= 200 && status < 300:
			w.settle(d, answer{payload: answered})
		case noRetry:
			w.settle(d, answer{err: ErrNoAnswer})
		default:
			d.lost, d.ackBy = w.opts.Now(), w.now() // not acknowledged: the next attempt, if any
			w.poke()
		}
	}()
}

// httpBody is the form that a payload has over HTTP.
func (w *Workspace) httpBody(d *delivery) ([]byte, string) {
	b, err := json.Marshal(d.payload)
	if err != nil {
		panic("practice: payload is not JSON: " + err.Error())
	}
	const form = "application/x-www-form-urlencoded"
	switch d.kind {
	case "interactive":
		return []byte(url.Values{"payload": {string(b)}}.Encode()), form
	case "slash_commands":
		v := url.Values{}
		for key, value := range d.payload {
			v.Set(key, fmt.Sprint(value))
		}
		return []byte(v.Encode()), form
	}
	return b, "application/json"
}

func (w *Workspace) postSigned(ctx context.Context, address, secret string, at int64, header http.Header, body []byte) (status int, noRetry bool, answered json.RawMessage) {
	req, err := http.NewRequestWithContext(ctx, http.MethodPost, address, bytes.NewReader(body))
	if err != nil {
		return 0, false, nil
	}
	req.Header = header
	req.Header.Set("X-Slack-Request-Timestamp", strconv.FormatInt(at, 10))
	req.Header.Set("X-Slack-Signature", Sign(secret, at, body))
	resp, err := w.http.Do(req)
	if err != nil {
		return 0, false, nil
	}
	defer resp.Body.Close()
	b, err := io.ReadAll(io.LimitReader(resp.Body, 1<<20))
	if err != nil {
		return 0, false, nil
	}
	if json.Valid(b) {
		answered = b
	} else if len(b) > 0 {
		answered, _ = json.Marshal(string(b)) // a plain line is the text of the answer
	}
	return resp.StatusCode, resp.Header.Get("X-Slack-No-Retry") == "1", answered
}

// VerifyURL asks the app's request URL for the challenge, as the platform
// does when the address is entered.
func (w *Workspace) VerifyURL(ctx context.Context, appID string) error {
	w.mu.Lock()
	a := w.app(appID)
	if a == nil || a.RequestURL == "" {
		w.mu.Unlock()
		return notThere("request URL of the app", appID)
	}
	challenge := w.random(16)
	address, secret, now := a.RequestURL, a.SigningSecret, w.now().Unix()
	w.mu.Unlock()
	body, _ := json.Marshal(map[string]any{"type": "url_verification", "token": "practice", "challenge": challenge})
	status, _, got := w.postSigned(ctx, address, secret, now, http.Header{"Content-Type": {"application/json"}}, body)
	var as struct{ Challenge string }
	var line string
	if json.Unmarshal(got, &as) != nil {
		_ = json.Unmarshal(got, &line)
	}
	if status != http.StatusOK || (as.Challenge != challenge && line != challenge) {
		return fmt.Errorf("the request URL did not return the challenge (status %d)", status)
	}
	return nil
}
