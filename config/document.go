package config

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// Document returns the configuration file with every key at its default and a
// comment that says what it is.
func Document() string {
	var b strings.Builder
	b.WriteString("# Lazyhand's configuration. Every key stands here with its default.\n" +
		"# Variables of the environment go before it (LAZYHAND_SHOP_NAME for shop.name),\n" +
		"# and flags before these (--set shop.name=…). lazyhand check looks it over.\n" +
		"# A running bot takes up changes on SIGHUP; [restart] marks keys that it cannot.\n")
	for _, sec := range sections() {
		b.WriteString("\n")
		comment(&b, "", sec.says)
		for _, s := range Settings() {
			if s.Key == sec.name {
				fmt.Fprintf(&b, "%s: %s\n", s.Key, s.Default)
			}
			name, ok := strings.CutPrefix(s.Key, sec.name+".")
			if !ok {
				continue
			}
			if !strings.Contains(b.String(), "\n"+sec.name+":\n") {
				b.WriteString(sec.name + ":\n")
			}
			says := s.Says
			if s.Restart {
				says += " [restart]"
			}
			comment(&b, "  ", says)
			fmt.Fprintf(&b, "  %s: %s\n", name, s.Default)
		}
	}
	return b.String()
}

func comment(b *strings.Builder, indent, text string) {
	for line := range strings.Lines(text) {
		b.WriteString(strings.TrimRight(indent+"# "+strings.TrimRight(line, "\n"), " ") + "\n")
	}
}

// Write puts the document into a new file that only its owner may read. It
// never replaces one.
func Write(file string) error {
	if err := os.MkdirAll(filepath.Dir(file), 0o700); err != nil {
		return fmt.Errorf("cannot make the folder of the configuration: %w", err)
	}
	f, err := os.OpenFile(file, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o600)
	if errors.Is(err, fs.ErrExist) {
		return fmt.Errorf("%s exists already and is left as it is: name another with --config, or see lazyhand init --print", file)
	}
	if err != nil {
		return fmt.Errorf("cannot write the configuration: %w", err)
	}
	if _, err := f.WriteString(Document()); err != nil {
		return errors.Join(fmt.Errorf("cannot write the configuration: %w", err), f.Close())
	}
	if err := f.Close(); err != nil {
		return fmt.Errorf("cannot write the configuration: %w", err)
	}
	return nil
}
