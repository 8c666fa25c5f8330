package config

import "log/slog"

// Secret is a token or key. It never prints itself: every way of writing it
// out gives dots. (The value hangs on a pointer because package fmt prints what
// stands in unexported fields without asking their methods.)
type Secret struct{ value *string }

// NewSecret keeps value from being printed.
func NewSecret(value string) Secret { return Secret{&value} }

// Reveal returns the secret itself, for the one call that needs it.
func (s Secret) Reveal() string {
	if s.value == nil {
		return ""
	}
	return *s.value
}

// Set tells whether there is one.
func (s Secret) Set() bool { return s.Reveal() != "" }

// String returns dots, or nothing when there is no secret.
func (s Secret) String() string {
	if !s.Set() {
		return ""
	}
	return "••••"
}

// GoString returns what String does, so that %#v tells no more.
func (s Secret) GoString() string { return s.String() }

// MarshalText writes what String returns.
func (s Secret) MarshalText() ([]byte, error) { return []byte(s.String()), nil }

// LogValue logs what String returns.
func (s Secret) LogValue() slog.Value { return slog.StringValue(s.String()) }
