//go:build cgo && unix

// Package gather writes SQLite's write-ahead log in one go.
//
// For every page that a commit changes SQLite writes twice to the log, some
// forty small writes for one message, which together cost more than to wait for
// the disk. Through this package's file system they are gathered in memory and
// reach the file as one write when SQLite syncs the log, reads it, asks its
// size or cuts it, or when they are too many.
//
// It holds nothing back that anybody may rely on: with `synchronous = FULL`
// SQLite syncs the log in every commit before it tells others of it, and
// nobody else reads what lies behind the last commit. With any other setting it
// must not be used. A write that fails is told by the call that let it out,
// which is one of the same transaction. Only the log is treated so; the record
// itself, its index of the log and everything else go the machine's own way.
package gather

// int gather_register(const char *name);
// #include <stdlib.h>
import "C"

import "sync"

// Name registers the file system with SQLite and returns the name by which a
// connection asks for it, empty where there is none.
var Name = sync.OnceValue(func() string {
	const name = "gather"
	if C.gather_register(C.CString(name)) != 0 { // SQLite keeps the name
		return ""
	}
	return name
})
