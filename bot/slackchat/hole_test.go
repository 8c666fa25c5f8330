package slackchat_test

import (
	"io"
	"net"
	"net/http"
	"net/http/httptest"
	"net/http/httputil"
	"net/url"
	"strings"
	"sync"
	"testing"
)

// hole is a proxy that can go silent: connections stay open and nothing goes
// through, as behind a router that has forgotten them.
type hole struct {
	url string
	mu  sync.Mutex
	off bool
}

func newHole(t *testing.T, target string) *hole {
	h := &hole{}
	tcp, err := net.Listen("tcp", "127.0.0.1:0")
	must(t, err)
	go func() {
		for {
			in, err := tcp.Accept()
			if err != nil {
				return
			}
			out, err := net.Dial("tcp", target)
			if err != nil {
				in.Close()
				continue
			}
			go h.pipe(in, out)
			go h.pipe(out, in)
		}
	}()
	// The Web API goes round the silent line; the address that it gives for
	// the socket leads through it.
	api := httputil.NewSingleHostReverseProxy(&url.URL{Scheme: "http", Host: target})
	api.ModifyResponse = func(r *http.Response) error {
		if !strings.HasSuffix(r.Request.URL.Path, "apps.connections.open") {
			return nil
		}
		b, err := io.ReadAll(r.Body)
		if err != nil {
			return err
		}
		s := strings.ReplaceAll(string(b), target, tcp.Addr().String())
		r.Body = io.NopCloser(strings.NewReader(s))
		r.ContentLength = int64(len(s))
		r.Header.Set("Content-Length", "")
		r.Header.Del("Content-Length")
		return nil
	}
	server := httptest.NewServer(api)
	h.url = server.URL
	t.Cleanup(func() {
		tcp.Close()
		server.Close()
	})
	return h
}

func (h *hole) swallow(on bool) {
	h.mu.Lock()
	defer h.mu.Unlock()
	h.off = on
}

func (h *hole) pipe(from, to net.Conn) {
	defer from.Close()
	defer to.Close()
	b := make([]byte, 32<<10)
	for {
		n, err := from.Read(b)
		if err != nil {
			return
		}
		h.mu.Lock()
		off := h.off
		h.mu.Unlock()
		if off {
			continue
		}
		if _, err := to.Write(b[:n]); err != nil {
			return
		}
	}
}
