//go:build !unix

package main

import "errors"

// freeBytes is not known on this system.
func freeBytes(string) (uint64, error) { return 0, errors.ErrUnsupported }
