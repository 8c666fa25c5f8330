package config

import (
	"fmt"
	"sort"
	"strings"
)

// Problem is one fault of the settings.
type Problem struct {
	Where string // the file, variable or flag
	Line  int    // of the file, from 1; 0 when it has none
	Key   string
	Says  string
}

// String names the place, the key and the fault.
func (p Problem) String() string {
	var b strings.Builder
	b.WriteString(p.Where)
	if p.Line > 0 {
		fmt.Fprintf(&b, " line %d", p.Line)
	}
	if p.Key != "" {
		b.WriteString(": " + p.Key)
	}
	b.WriteString(": " + p.Says)
	return b.String()
}

// Problems is every fault found; as an error it tells the first and how many
// more there are.
type Problems []Problem

// Error returns one line.
func (p Problems) Error() string {
	switch len(p) {
	case 0:
		return "no problem"
	case 1:
		return p[0].String()
	}
	return fmt.Sprintf("%s (and %d more: lazyhand check lists them)", p[0], len(p)-1)
}

func (p Problems) sorted() Problems {
	sort.SliceStable(p, func(i, j int) bool { return p[i].Line < p[j].Line })
	return p
}
