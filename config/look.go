package config

import (
	"errors"
	"fmt"
	"io"
	"os"
	"regexp"
	"strconv"
	"strings"

	"go.yaml.in/yaml/v3"
)

// look goes through the text of a file by its lines, before anything is read
// from it, and returns the line of each key and item.
func look(file string, text []byte) (lines map[string]int, problems Problems) {
	lines = map[string]int{}
	var doc yaml.Node
	if err := yaml.Unmarshal(text, &doc); err != nil {
		return lines, Problems{yamlProblem(file, err)}
	}
	if len(doc.Content) == 0 {
		return lines, nil // empty, or comments only
	}
	root := doc.Content[0]
	if root.Kind != yaml.MappingNode {
		if root.Tag == "!!null" {
			return lines, nil
		}
		return lines, Problems{{file, root.Line, "", "a configuration is lines of \"key: value\": lazyhand init writes one to start from"}}
	}
	w := walker{file: file, lines: lines}
	w.mapping("", root)
	return lines, w.problems
}

type walker struct {
	file     string
	lines    map[string]int
	problems Problems
}

func (w *walker) problem(line int, key, says string) {
	w.problems = append(w.problems, Problem{w.file, line, key, says})
}

// mapping goes through the keys of one level.
func (w *walker) mapping(prefix string, n *yaml.Node) {
	for i := 0; i+1 < len(n.Content); i += 2 {
		name, value := n.Content[i], n.Content[i+1]
		key := prefix + name.Value
		if first, twice := w.lines[key]; twice {
			w.problem(name.Line, key, fmt.Sprintf("it stands there twice, first in line %d", first))
			continue
		}
		switch {
		case prefix == "" && isKey(key) && strings.Contains(key, "."):
			sec, leaf, _ := strings.Cut(key, ".")
			w.problem(name.Line, key, fmt.Sprintf("write it as %s, set in below %s:", leaf, sec))
		case isKey(key):
			w.lines[key] = name.Line
			for j, item := range value.Content {
				if value.Kind == yaml.SequenceNode {
					w.lines[fmt.Sprintf("%s[%d]", key, j)] = item.Line
				}
			}
		case isSection(key) && prefix == "":
			w.lines[key] = name.Line
			if value.Kind == yaml.MappingNode {
				w.mapping(key+".", value)
			} else if value.Tag != "!!null" {
				w.problem(name.Line, key, "it holds keys of its own, set in below it")
			}
		case isKey(key + secretTail):
			w.problem(name.Line, key, fmt.Sprintf("a secret never stands in this file: put it into a file of its own and name that as %s%s, or set %s", name.Value, secretTail, EnvName(key)))
		default:
			w.problem(name.Line, key, unknownKey(key).Error())
		}
	}
}

func isSection(name string) bool {
	for _, s := range sections() {
		if s.name == name {
			return true
		}
	}
	return false
}

func unknownKey(key string) error {
	if near := nearestKey(key); near != "" {
		return fmt.Errorf("there is no such key: did you mean %s?", near)
	}
	return errors.New("there is no such key: lazyhand init --print shows all of them")
}

var yamlLine = regexp.MustCompile(`^yaml: (?:line (\d+): )?(.*)`)

// yamlProblem says in which line the file is no YAML.
func yamlProblem(file string, err error) Problem {
	p := Problem{Where: file, Says: err.Error()}
	if m := yamlLine.FindStringSubmatch(strings.ReplaceAll(err.Error(), "\n", " ")); m != nil {
		p.Line, _ = strconv.Atoi(m[1])
		p.Says = "this is not written as YAML: " + m[2]
	}
	return p
}

// readAtMost reads a file that has no business being longer.
func readAtMost(f *os.File, limit int64) ([]byte, error) {
	text, err := io.ReadAll(io.LimitReader(f, limit+1))
	if err == nil && int64(len(text)) > limit {
		err = fmt.Errorf("it is longer than %d bytes", limit)
	}
	return text, err
}
