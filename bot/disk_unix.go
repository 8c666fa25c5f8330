//go:build unix

package main

import "syscall"

// freeBytes returns how much an ordinary user may still write to the disk that
// holds dir.
func freeBytes(dir string) (uint64, error) {
	var s syscall.Statfs_t
	if err := syscall.Statfs(dir, &s); err != nil {
		return 0, err
	}
	return uint64(s.Bavail) * uint64(s.Bsize), nil
}
