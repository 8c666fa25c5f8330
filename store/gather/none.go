//go:build !cgo || !unix

package gather

// Name returns no name: here SQLite writes as it always does.
func Name() string { return "" }
