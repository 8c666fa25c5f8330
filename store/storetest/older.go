// Package storetest unpacks the records that released programs wrote, for the
// tests of all who work with one.
package storetest

import (
	"compress/gzip"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"testing"
)

// Older writes the record of a released version to a new file in dir and
// returns its name.
func Older(t testing.TB, version int, dir string) (file string) {
	t.Helper()
	packed, err := os.Open(filepath.Join(root(t), "testdata", "store", fmt.Sprintf("record_%04d.db.gz", version)))
	if err != nil {
		t.Fatalf("every released version keeps a record: %v", err)
	}
	defer packed.Close()
	z, err := gzip.NewReader(packed)
	if err != nil {
		t.Fatal(err)
	}
	file = filepath.Join(dir, "record.db")
	out, err := os.OpenFile(file, os.O_WRONLY|os.O_CREATE|os.O_TRUNC, 0o600)
	if err != nil {
		t.Fatal(err)
	}
	_, err = io.Copy(out, z)
	if err := errors.Join(err, out.Close()); err != nil {
		t.Fatal(err)
	}
	return file
}

// root is the folder of the module: a test runs in that of its package.
func root(t testing.TB) string {
	t.Helper()
	dir := "."
	for range 8 {
		if _, err := os.Stat(filepath.Join(dir, "go.mod")); err == nil {
			return dir
		}
		dir = filepath.Join(dir, "..")
	}
	t.Fatal("this is not within the module")
	return ""
}
