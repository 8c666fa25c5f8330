package practice_test

import (
	"encoding/json"
	"io"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"lazyhand/bot/practice"
)

// Nothing on the page asks another host for anything, and no text is made
// into HTML.
func TestPageAsksNobodyElse(t *testing.T) {
	files, err := filepath.Glob("static/*")
	check(t, err)
	for _, f := range files {
		b, err := os.ReadFile(f)
		check(t, err)
		text := strings.ReplaceAll(string(b), "http://www.w3.org/2000/svg", "")
		for _, word := range []string{"http://", "https://", "innerHTML", "insertAdjacentHTML", "document.write", "eval("} {
			if strings.Contains(text, word) {
				t.Errorf("%s contains %s", f, word)
			}
		}
	}
	s := open(t, practice.Options{})
	resp := must[*http.Response](t)(http.Get(s.url + "/"))
	defer resp.Body.Close()
	if policy := resp.Header.Get("Content-Security-Policy"); !strings.Contains(policy, "default-src 'none'") || strings.Contains(policy, "unsafe") {
		t.Errorf("content security policy %q", policy)
	}
}

// A foreign page that makes the browser send requests here gets nothing done,
// and a foreign name that is made to lead here gets no answer.
func TestForeignPagesCannotAct(t *testing.T) {
	s := open(t, practice.Options{})
	body := `{"do":"say","as":"rosa","channel":"field","text":"not me"}`
	for _, c := range []struct {
		what           string
		header         http.Header
		host           string
		status, posted int
	}{
		{"the page itself", http.Header{"Content-Type": {"application/json"}, "Sec-Fetch-Site": {"same-origin"}}, "", 200, 1},
		{"a foreign page", http.Header{"Content-Type": {"application/json"}, "Sec-Fetch-Site": {"cross-site"}}, "", 403, 1},
		{"a page on another port", http.Header{"Content-Type": {"application/json"}, "Sec-Fetch-Site": {"same-site"}}, "", 403, 1},
		{"a foreign form", http.Header{"Content-Type": {"text/plain"}}, "", 403, 1},
		{"a foreign name", http.Header{"Content-Type": {"application/json"}}, "practice.example.com", 403, 1},
	} {
		req, err := http.NewRequest("POST", s.url+"/page/act", strings.NewReader(body))
		check(t, err)
		req.Header = c.header
		if c.host != "" {
			req.Host = c.host
		}
		resp := must[*http.Response](t)(http.DefaultClient.Do(req))
		resp.Body.Close()
		if resp.StatusCode != c.status || len(s.Messages("field")) != c.posted {
			t.Errorf("%s: status %d, %d messages", c.what, resp.StatusCode, len(s.Messages("field")))
		}
	}
}

// What one person must not see is not in what their page is sent.
func TestPageShowsEachPersonTheirOwn(t *testing.T) {
	s := open(t, practice.Options{Channels: append(practice.DefaultChannels(), practice.ChannelOptions{Name: "owners", Private: true, Members: []string{"owen"}})})
	must[string](t)(s.Say("owen", "owners", "", "the secret of the owners"))
	must[string](t)(s.Say("dee", s.DM("dee", ""), "", "the secret of dee"))
	for _, at := range []string{s.Channel("owners"), s.DM("dee", "")} {
		resp := must[*http.Response](t)(http.Get(s.url + "/page/state?as=rosa&place=" + at))
		b, err := io.ReadAll(resp.Body)
		resp.Body.Close()
		check(t, err)
		if strings.Contains(string(b), "secret") || !json.Valid(b) {
			t.Errorf("rosa is sent %s", b)
		}
	}
}
