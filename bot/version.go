package main

import (
	"fmt"
	"runtime"
	"runtime/debug"

	"github.com/spf13/cobra"
)

func (p *program) versionCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "version",
		Short: "Say which build this is",
		Long: `Version says which build this is: its version, the commit it was made from and
the Go release and machine it was made for.

The same source, Go release and C compiler give the same program, byte for byte,
with: go build -trimpath -buildvcs=true -ldflags=-buildid= -o lazyhand ./bot`,
		Example: `  lazyhand version`,
		Args:    noWords,
		RunE: func(*cobra.Command, []string) error {
			b := thisBuild()
			fmt.Fprintf(p.out, "lazyhand %s\ncommit %s\n%s %s/%s\n", b.version, b.commit, runtime.Version(), runtime.GOOS, runtime.GOARCH)
			return nil
		},
	}
}

// build is what the program knows of its own making.
type build struct {
	version string
	commit  string // with its day; "unknown" when built outside a repository
	day     string // of the commit, YYYY-MM-DD, or empty
}

func thisBuild() build {
	b := build{version: "unknown", commit: "unknown"}
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return b
	}
	b.version = info.Main.Version
	if b.version == "" || b.version == "(devel)" {
		b.version = "development"
	}
	settings := map[string]string{}
	for _, s := range info.Settings {
		settings[s.Key] = s.Value
	}
	if rev := settings["vcs.revision"]; rev != "" {
		b.commit = rev[:min(12, len(rev))]
		if t := settings["vcs.time"]; len(t) >= 10 {
			b.day = t[:10]
			b.commit += " of " + b.day
		}
		if settings["vcs.modified"] == "true" {
			b.commit += ", with changes"
		}
	}
	return b
}
