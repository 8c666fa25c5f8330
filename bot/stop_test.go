package main

import (
	"bytes"
	"fmt"
	"os/exec"
	"path/filepath"
	"syscall"
	"testing"
	"time"
)

// TestASignalStopsEveryCommandThatWaits runs the program itself: it waits for
// input that never comes and is told to stop.
func TestASignalStopsEveryCommandThatWaits(t *testing.T) {
	home(t)
	for _, tt := range []struct {
		args  []string
		first string // a line that is answered, so that the program is known to wait
		code  int
	}{
		{nil, "help", 0}, // the chat ends as it does on Ctrl-D
		{[]string{"parse"}, "lunch?", 1},
		{[]string{"assess"}, `{"id":1,"visits":[]}`, 1},
	} {
		cmd := exec.CommandContext(t.Context(), "lazyhand", append(tt.args, "--db", filepath.Join(t.TempDir(), "shop.db"))...)
		var errOut bytes.Buffer
		cmd.Stderr = &errOut
		in, err := cmd.StdinPipe() // never closed
		if err != nil {
			t.Fatal(err)
		}
		defer in.Close()
		out, err := cmd.StdoutPipe()
		if err != nil {
			t.Fatal(err)
		}
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		if _, err := fmt.Fprintln(in, tt.first); err != nil {
			t.Fatal(err)
		}
		if n, err := out.Read(make([]byte, 1)); n == 0 {
			t.Fatalf("lazyhand %v answers nothing: %v", tt.args, err)
		}
		start := time.Now()
		if err := cmd.Process.Signal(syscall.SIGTERM); err != nil {
			t.Fatal(err)
		}
		watch := time.AfterFunc(10*time.Second, func() { cmd.Process.Kill() })
		cmd.Wait() // its code is looked at below
		watch.Stop()
		if took := time.Since(start); took > 9*time.Second || cmd.ProcessState.ExitCode() != tt.code {
			t.Errorf("lazyhand %v: code %d after %v: %s", tt.args, cmd.ProcessState.ExitCode(), took, errOut.String())
		}
	}
}
