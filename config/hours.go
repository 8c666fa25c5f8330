package config

import (
	"fmt"
	"strings"
	"time"
)

// Hours is a stretch of the day on the wall clock, From included, To not, as
// minutes since midnight. When To is the smaller it reaches over midnight; when
// both are equal it is empty.
type Hours struct {
	From, To int
}

// ParseHours reads "08:00-17:00"; nothing, or "none", is the empty Hours.
func ParseHours(s string) (Hours, error) {
	if s == "" || s == "none" {
		return Hours{}, nil
	}
	from, to, ok := strings.Cut(s, "-")
	if !ok {
		return Hours{}, fmt.Errorf("%q is no stretch of the day: write it like 08:00-17:00", s)
	}
	var h Hours
	for _, part := range []struct {
		text string
		into *int
	}{{from, &h.From}, {to, &h.To}} {
		text := strings.TrimSpace(part.text)
		if text == "24:00" {
			*part.into = 24 * 60
			continue
		}
		t, err := time.Parse("15:04", text)
		if err != nil {
			return Hours{}, fmt.Errorf("%q is no time of day: write it like 08:00-17:00", text)
		}
		*part.into = t.Hour()*60 + t.Minute()
	}
	return h, nil
}

// Holds tells whether the wall clock of t lies in the hours.
func (h Hours) Holds(t time.Time) bool {
	m := t.Hour()*60 + t.Minute()
	if h.From <= h.To {
		return h.From <= m && m < h.To
	}
	return m >= h.From || m < h.To
}

// String writes the hours as ParseHours reads them.
func (h Hours) String() string {
	if h.From == h.To {
		return "none"
	}
	return fmt.Sprintf("%02d:%02d-%02d:%02d", h.From/60, h.From%60, h.To/60, h.To%60)
}
