package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"os/signal"
	"syscall"
	"time"

	"lazyhand/config"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	// A second signal ends the program at once, as usual.
	context.AfterFunc(ctx, stop)
	os.Exit(exitCode(run(ctx, os.Args[1:], os.Stdin, os.Stdout, os.Stderr), os.Stderr))
}

// errTold ends the program with code 1 when everything that is wrong has been
// said already.
var errTold = errors.New("told already")

// exitCode tells a person what went wrong, in one line, and returns the
// program's exit code.
func exitCode(err error, errOut io.Writer) int {
	switch {
	case err == nil:
		return 0
	case errors.Is(err, errTold):
	default:
		fmt.Fprintln(errOut, "lazyhand:", err)
	}
	return 1
}

// program is what every command works with: its streams, the clock and the two
// files that the flags choose.
type program struct {
	in     io.Reader
	out    io.Writer
	errOut io.Writer
	now    func() time.Time

	configFile string   // --config; empty is the user's own
	dbFile     string   // --db; empty is the one of the configuration
	set        []string // --set key=value

	fit        func(*config.Config) // changes the settings once they are read; may be nil
	probeSlack slackProbe           // nil: Slack is not asked
	slackURL   string               // of Slack's Web API; empty: Slack itself
}

// run runs the program once. It returns errors in words for the person at the
// terminal and prints none itself.
func run(ctx context.Context, args []string, in io.Reader, out, errOut io.Writer) error {
	p := &program{in: in, out: out, errOut: errOut, now: time.Now}
	p.probeSlack = p.askSlack
	root := p.rootCommand()
	root.SetArgs(args)
	return root.ExecuteContext(ctx)
}
