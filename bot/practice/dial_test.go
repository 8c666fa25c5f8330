package practice_test

import (
	"net/http"
	"testing"
	"time"

	"github.com/gorilla/websocket"
)

func dial(address string) (*websocket.Conn, *http.Response, error) {
	return websocket.DefaultDialer.Dial(address, nil)
}

func firstFrame(t *testing.T, address string) string {
	t.Helper()
	conn, _, err := dial(address)
	check(t, err)
	defer conn.Close()
	check(t, conn.SetReadDeadline(time.Now().Add(3*time.Second)))
	_, b, err := conn.ReadMessage()
	check(t, err)
	return string(b)
}
