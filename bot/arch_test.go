package main

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// arrow says what a package may know. Entries match a package and what lies
// under it.
type arrow struct {
	ours    []string // packages of this module
	foreign []string // packages of others; "*" is anything not owned below
	never   []string // packages of the standard library
	noClock bool     // time is an argument: no time.Now, Since, Until, After, Tick, Sleep …
}

var (
	worldly = []string{"os", "net", "database/sql", "log", "syscall", "math/rand", "crypto/rand"}
	arrows  = map[string]arrow{
		"assess":            {foreign: []string{"gonum.org/v1/gonum"}, never: worldly, noClock: true},
		"intents":           {ours: []string{"assess"}, foreign: []string{"golang.org/x/text", "github.com/agnivade/levenshtein"}, never: worldly, noClock: true},
		"schedule":          {foreign: []string{"github.com/robfig/cron/v3"}, never: worldly, noClock: true},
		"config":            {foreign: []string{"github.com/spf13/viper", "github.com/spf13/pflag", "go.yaml.in/yaml/v3", "github.com/agnivade/levenshtein"}, never: []string{"net/http", "database/sql"}},
		"store":             {ours: []string{"assess"}, foreign: []string{"github.com/mattn/go-sqlite3", "github.com/gofrs/flock", "golang.org/x/sys"}, never: []string{"net", "log"}, noClock: true},
		"store/storetest":   {never: []string{"net", "log"}, noClock: true}, // older records, for the tests of all who work with one
		"bot/desk":          {ours: []string{"assess", "intents", "store", "schedule"}, foreign: []string{"*"}, never: []string{"net", "os", "log"}, noClock: true},
		"bot/desk/talktest": {ours: []string{"bot/desk", "store", "schedule"}, never: []string{"net", "log"}, noClock: true}, // transcripts, for the tests of every desk.Chat
		"bot/slackchat":     {ours: []string{"bot/desk"}, foreign: []string{"github.com/slack-go/slack", "github.com/gorilla/websocket", "golang.org/x/text"}, never: []string{"database/sql"}},
		"bot/paper":         {ours: []string{"bot/desk", "store", "assess"}, foreign: []string{"gonum.org/v1/plot", "codeberg.org/go-pdf/fpdf", "codeberg.org/go-fonts", "golang.org/x/image"}, never: []string{"os", "net", "database/sql", "log"}, noClock: true},
		"bot/practice":      {foreign: []string{"github.com/gorilla/websocket"}, never: []string{"database/sql"}},
		"bot":               {ours: []string{"*"}, foreign: []string{"*"}, never: []string{"database/sql"}},
	}
	// owners keeps each foreign thing in one place.
	owners = map[string][]string{
		"github.com/spf13/viper":       {"config"},
		"github.com/mattn/go-sqlite3":  {"store"},
		"github.com/robfig/cron":       {"schedule"},
		"github.com/slack-go/slack":    {"bot/slackchat"},
		"github.com/gorilla/websocket": {"bot/slackchat", "bot/practice"},
		"github.com/spf13/cobra":       {"bot"},
		"github.com/prometheus":        {"bot"},
		"gonum.org/v1/gonum":           {"assess"},
		"gonum.org/v1/plot":            {"bot/paper"},
		"codeberg.org/go-pdf":          {"bot/paper"},
		"codeberg.org/go-fonts":        {"bot/paper"},
		"github.com/chromedp":          {},
		"github.com/rogpeppe":          {},
		"pgregory.net/rapid":           {},
		"github.com/santhosh-tekuri":   {},
	}
	clockNames = []string{"Now", "Since", "Until", "After", "AfterFunc", "Tick", "Sleep", "NewTimer", "NewTicker"}
	topLevel   = []string{"bot", "intents", "assess", "store", "schedule", "config", "testdata", "go.mod", "go.sum", "README.md", "DEVELOPERS.md"}
)

// source is one Go file of the project, tests left out: a test may look
// further than the code it tests.
type source struct {
	pkg, file string
	syntax    *ast.File
	imports   []string
}

func sources(t *testing.T) []source {
	t.Helper()
	root := os.DirFS("..")
	var out []source
	err := fs.WalkDir(root, ".", func(name string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case d.IsDir() && name != "." && (strings.HasPrefix(d.Name(), ".") || d.Name() == "testdata" || d.Name() == "node_modules"):
			return fs.SkipDir
		case d.IsDir() || !strings.HasSuffix(name, ".go") || strings.HasSuffix(name, "_test.go"):
			return nil
		}
		f, err := parser.ParseFile(token.NewFileSet(), filepath.Join("..", name), nil, parser.ParseComments|parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		s := source{pkg: path.Dir(name), file: name, syntax: f}
		for _, imp := range f.Imports {
			p, err := strconv.Unquote(imp.Path.Value)
			if err != nil {
				return err
			}
			s.imports = append(s.imports, p)
		}
		out = append(out, s)
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

func under(list []string, p string) bool {
	return slices.ContainsFunc(list, func(e string) bool { return p == e || strings.HasPrefix(p, e+"/") })
}

// broken names the rule that an import of package pkg breaks, or nothing.
func broken(pkg, imp string) string {
	a, ok := arrows[pkg]
	if !ok {
		return "the package is not in the table of arrows: a new one needs its row and its reason"
	}
	if p, ok := strings.CutPrefix(imp, "lazyhand/"); ok {
		if slices.Contains(a.ours, "*") || slices.Contains(a.ours, p) {
			return ""
		}
		return "dependencies point one way"
	}
	first, _, _ := strings.Cut(imp, "/")
	if !strings.Contains(first, ".") {
		if under(a.never, imp) {
			return "this package knows nothing of it"
		}
		return ""
	}
	for thing, homes := range owners {
		if (imp == thing || strings.HasPrefix(imp, thing+"/")) && !slices.Contains(homes, pkg) {
			return fmt.Sprintf("only %v may see %s", homes, thing)
		}
	}
	if slices.Contains(a.foreign, "*") || under(a.foreign, imp) {
		return ""
	}
	return "it is not among the libraries of this package"
}

func TestDependenciesFollowTheArrows(t *testing.T) {
	for _, s := range sources(t) {
		for _, imp := range s.imports {
			if why := broken(s.pkg, imp); why != "" {
				t.Errorf("%s imports %s: %s", s.file, imp, why)
			}
		}
	}
}

func TestTimeIsAnArgument(t *testing.T) {
	for _, s := range sources(t) {
		if !arrows[s.pkg].noClock {
			continue
		}
		ast.Inspect(s.syntax, func(n ast.Node) bool {
			if sel, ok := n.(*ast.SelectorExpr); ok {
				if x, ok := sel.X.(*ast.Ident); ok && x.Name == "time" && slices.Contains(clockNames, sel.Sel.Name) {
					t.Errorf("%s uses time.%s: here time is an argument", s.file, sel.Sel.Name)
				}
			}
			return true
		})
	}
}

// TestTheTableCatches keeps the table itself honest.
func TestTheTableCatches(t *testing.T) {
	for _, tt := range []struct {
		pkg, imp string
		ok       bool
	}{
		{"assess", "math", true},
		{"assess", "gonum.org/v1/gonum/stat", true},
		{"assess", "os", false},
		{"assess", "net/http", false},
		{"assess", "lazyhand/intents", false},
		{"intents", "lazyhand/assess", true},
		{"intents", "lazyhand/store", false},
		{"store", "log/slog", false},
		{"config", "lazyhand/assess", false},
		{"bot/desk", "github.com/slack-go/slack", false},
		{"bot/desk", "github.com/spf13/viper", false},
		{"bot/slackchat", "lazyhand/store", false},
		{"bot/practice", "lazyhand/bot/desk", false},
		{"bot", "github.com/spf13/viper", false},
		{"bot", "lazyhand/store", true},
		{"helpers", "fmt", false},
	} {
		if got := broken(tt.pkg, tt.imp) == ""; got != tt.ok {
			t.Errorf("%s importing %s: allowed %v, want %v", tt.pkg, tt.imp, got, tt.ok)
		}
	}
}

func TestEachPackageHasOneComment(t *testing.T) {
	where := map[string][]string{}
	for _, s := range sources(t) {
		if _, ok := where[s.pkg]; !ok {
			where[s.pkg] = nil
		}
		if s.syntax.Doc != nil {
			where[s.pkg] = append(where[s.pkg], s.file)
		}
	}
	for pkg, files := range where {
		if len(files) != 1 {
			t.Errorf("package %s has %d package comments, want one: %v", pkg, len(files), files)
		}
	}
}

func TestTheTopLevelIsFixed(t *testing.T) {
	entries, err := os.ReadDir("..")
	if err != nil {
		t.Fatal(err)
	}
	ignored := []string{"lazyhand", "node_modules"} // what .gitignore names
	for _, e := range entries {
		if !strings.HasPrefix(e.Name(), ".") && !slices.Contains(topLevel, e.Name()) && !slices.Contains(ignored, e.Name()) &&
			path.Ext(e.Name()) != ".db" && !strings.Contains(e.Name(), ".db-") && path.Ext(e.Name()) != ".lock" {
			t.Errorf("%s stands at the top level, where only %v belong", e.Name(), topLevel)
		}
	}
}
