package main

import (
	"fmt"
	"net"
	"strconv"
	"time"
)

// notifier tells systemd how the service is, over the socket that it names in
// NOTIFY_SOCKET (sd_notify(3)). Without one it says nothing.
type notifier struct {
	socket string
}

// tell sends states like "READY=1".
func (n notifier) tell(states string) error {
	if n.socket == "" {
		return nil
	}
	conn, err := net.DialUnix("unixgram", nil, &net.UnixAddr{Name: n.socket, Net: "unixgram"})
	if err != nil {
		return fmt.Errorf("cannot tell the service manager: %w", err)
	}
	defer conn.Close()
	if _, err := conn.Write([]byte(states)); err != nil {
		return fmt.Errorf("cannot tell the service manager: %w", err)
	}
	return nil
}

// watchdogEvery returns how often the service manager wants to hear that the
// program is alive: half of WATCHDOG_USEC, or 0 for never
// (sd_watchdog_enabled(3)).
func watchdogEvery(usec string) time.Duration {
	n, err := strconv.ParseInt(usec, 10, 64)
	if err != nil || n <= 0 {
		return 0
	}
	return time.Duration(n) * time.Microsecond / 2
}
