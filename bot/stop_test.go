package main

import (
	"bytes"
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
		args []string
		code int
	}{
		{nil, 0}, // the chat ends as it does on Ctrl-D
		{[]string{"parse"}, 1},
		{[]string{"assess"}, 1},
	} {
		cmd := exec.CommandContext(t.Context(), "lazyhand", append(tt.args, "--db", filepath.Join(t.TempDir(), "shop.db"))...)
		var errOut bytes.Buffer
		cmd.Stderr = &errOut
		in, err := cmd.StdinPipe() // never written to, never closed
		if err != nil {
			t.Fatal(err)
		}
		defer in.Close()
		if err := cmd.Start(); err != nil {
			t.Fatal(err)
		}
		time.Sleep(500 * time.Millisecond)
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
