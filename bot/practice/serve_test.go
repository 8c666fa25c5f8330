package practice_test

import (
	"context"
	"encoding/json"
	"errors"
	"net"
	"net/http"
	"testing"
	"time"

	"github.com/slack-go/slack"

	"lazyhand/bot/practice"
)

// The line of JSON is all that a foreign client is told.
func TestServeUntilTold(t *testing.T) {
	l := must[net.Listener](t)(net.Listen("tcp", "127.0.0.1:0"))
	ctx, cancel := context.WithCancel(context.Background())
	defer cancel()
	lines := make(chan map[string]string, 1)
	done := make(chan error, 1)
	go func() {
		done <- practice.Serve(ctx, l, practice.Options{}, func(w *practice.Workspace) error {
			var line map[string]string
			if err := json.Unmarshal([]byte(asJSON(t, w.Ready())), &line); err != nil {
				return err
			}
			lines <- line
			return nil
		})
	}()
	line := <-lines
	if len(line) != 4 || line["page"] != "http://"+l.Addr().String()+"/" {
		t.Errorf("the line is %v", line)
	}
	api := slack.New(line["bot_token"], slack.OptionAppLevelToken(line["app_token"]), slack.OptionAPIURL(line["api"]))
	if who := must[*slack.AuthTestResponse](t)(api.AuthTest()); who.User != "guestbot" {
		t.Errorf("the tokens are those of %s", who.User)
	}
	_, address, err := api.StartSocketModeContext(ctx)
	check(t, err)
	conn, _, err := dial(address)
	check(t, err)
	defer conn.Close()
	stream := must[*http.Response](t)(http.Get(line["page"] + "page/stream")) // a page is open, too
	defer stream.Body.Close()
	cancel()
	select {
	case err := <-done:
		check(t, err)
	case <-time.After(5 * time.Second):
		t.Fatal("the workspace goes on after it was told to end")
	}
}

func TestServeEndsWhenItsUserCannotBegin(t *testing.T) {
	l := must[net.Listener](t)(net.Listen("tcp", "127.0.0.1:0"))
	cannot := errors.New("the bot cannot begin")
	if err := practice.Serve(context.Background(), l, practice.Options{}, func(*practice.Workspace) error { return cannot }); !errors.Is(err, cannot) {
		t.Errorf("got %v", err)
	}
}
