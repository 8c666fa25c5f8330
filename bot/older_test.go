package main

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"lazyhand/store/storetest"
)

// TestCommandsOnOlderRecords: `check` tells that a record is older and leaves it
// as it is; a command that reads brings it up to date first.
func TestCommandsOnOlderRecords(t *testing.T) {
	for version := 1; version <= 5; version++ {
		t.Run(fmt.Sprint(version), func(t *testing.T) { onOlder(t, version) })
	}
}

func onOlder(t *testing.T, version int) {
	file := storetest.Older(t, version, home(t))
	body, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	out, errOut, _ := lazyhand(t, "", "check", "--db", file)
	if !strings.Contains(out, "older version") || strings.Contains(out, "damaged") {
		t.Errorf("check: %s%s", out, errOut)
	}
	if now, err := os.ReadFile(file); err != nil || string(now) != string(body) {
		t.Errorf("check has changed the record: %v", err)
	}
	out, errOut, code := lazyhand(t, "", "export", "--db", file)
	if code != 0 || !strings.Contains(out, "18 Birch Ln") || strings.Count(out, "\n") != map[int]int{1: 15, 2: 15, 3: 17, 4: 23, 5: 28}[version] {
		t.Errorf("export: code %d: %s%s", code, out, errOut)
	}
	out, errOut, _ = lazyhand(t, "", "check", "--db", file)
	if !strings.Contains(out, ", version ") || strings.Contains(out, "damaged") {
		t.Errorf("check afterwards: %s%s", out, errOut)
	}
}
