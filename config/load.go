package config

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"time"

	"github.com/spf13/viper"
)

// Options says where settings come from.
type Options struct {
	File     string   // read when it is not empty
	Optional bool     // no fault when File does not exist
	Env      []string // KEY=value, as os.Environ gives them
	Flags    []string // key=value, above the environment
	// Checks judge the text of a key further than its kind does, each item of a
	// list by itself: a cron line, a code, a word's meaning.
	Checks map[string]func(string) error
}

const (
	envPrefix  = "LAZYHAND_"
	envFile    = envPrefix + "CONFIG" // read by FileFor
	maxFile    = 1 << 20              // bytes
	maxSecret  = 4 << 10              // bytes
	secretTail = "_file"
)

// FileFor returns the configuration file to read: the flag's, else the one of
// LAZYHAND_CONFIG, else the user's own, which need not exist.
func FileFor(flag string, env []string) (file string, optional bool, err error) {
	if flag != "" {
		return flag, false, nil
	}
	for _, e := range env {
		if v, ok := strings.CutPrefix(e, envFile+"="); ok && v != "" {
			return v, false, nil
		}
	}
	file, err = DefaultFile()
	return file, true, err
}

// EnvName returns the variable of the environment that sets key.
func EnvName(key string) string {
	return envPrefix + strings.ToUpper(strings.ReplaceAll(key, ".", "_"))
}

// Default returns the settings of somebody who sets nothing.
func Default() Config {
	c, err := Load(Options{})
	if err != nil {
		panic("config: the defaults are not valid: " + err.Error()) // a test keeps them so
	}
	return c
}

// Load reads and checks the settings. Its error is a Problems when people can
// mend it; then nothing of the settings is used.
func Load(opt Options) (Config, error) {
	l := loader{opt: opt, v: viper.New(), from: map[string]string{}}
	if err := l.readFile(); err != nil {
		return Config{}, err
	}
	l.readEnv()
	l.readFlags()
	c := l.fill()
	if len(l.problems) > 0 {
		return Config{}, l.problems.sorted()
	}
	c.File = l.file
	return c, nil
}

// loader is one reading of the settings.
type loader struct {
	opt      Options
	v        *viper.Viper
	file     string         // the file that was read
	lines    map[string]int // of the file, by key and by key[item]
	from     map[string]string
	secrets  map[string]string // given by the environment, by key without _file
	problems Problems
}

func (l *loader) problem(where string, line int, key string, err error) {
	l.problems = append(l.problems, Problem{where, line, key, err.Error()})
}

func (l *loader) readFile() error {
	if l.opt.File == "" {
		return nil
	}
	f, err := os.Open(l.opt.File)
	if errors.Is(err, fs.ErrNotExist) {
		if l.opt.Optional {
			return nil
		}
		return fmt.Errorf("there is no configuration file %s: lazyhand init --config %s writes one", l.opt.File, l.opt.File)
	}
	if err != nil {
		return fmt.Errorf("cannot read the configuration: %w", err)
	}
	defer f.Close()
	text, err := readAtMost(f, maxFile)
	if err != nil {
		return fmt.Errorf("cannot read the configuration %s: %w", l.opt.File, err)
	}
	l.file = l.opt.File
	lines, problems := look(l.file, text)
	l.lines = lines
	if l.problems = problems; len(problems) > 0 {
		return nil // what cannot be looked through is not read
	}
	l.v.SetConfigType("yaml")
	if err := l.v.ReadConfig(bytes.NewReader(text)); err != nil {
		return fmt.Errorf("cannot read the configuration %s: %w", l.file, err)
	}
	return nil
}

// readEnv binds each key to its variable, and names variables that set
// nothing.
func (l *loader) readEnv() {
	known := map[string]string{}
	l.secrets = map[string]string{}
	for _, s := range Settings() {
		known[EnvName(s.Key)] = s.Key
	}
	for _, e := range l.opt.Env {
		name, value, _ := strings.Cut(e, "=")
		if !strings.HasPrefix(name, envPrefix) || name == envFile || value == "" {
			continue
		}
		if key, ok := known[name]; ok {
			l.v.Set(key, value)
			l.from[key] = name
			continue
		}
		if key, ok := known[name+strings.ToUpper(secretTail)]; ok {
			l.secrets[key] = value
			continue
		}
		err := errors.New("this variable sets nothing")
		key := strings.ToLower(strings.Replace(strings.TrimPrefix(name, envPrefix), "_", ".", 1))
		if near := nearestKey(key); near != "" {
			err = fmt.Errorf("this variable sets nothing: did you mean %s?", EnvName(near))
		}
		l.problem(name, 0, "", err)
	}
}

func (l *loader) readFlags() {
	for _, f := range l.opt.Flags {
		key, value, ok := strings.Cut(f, "=")
		where := "--set " + key
		if !ok {
			l.problem(where, 0, "", errors.New("write it as key=value, for example --set shop.language=es"))
			continue
		}
		if !isKey(key) {
			if strings.Contains(key, "token") || strings.Contains(key, "secret") {
				l.problem(where, 0, "", errors.New("secrets come from the environment or from a file, never from a flag"))
				continue
			}
			l.problem(where, 0, "", unknownKey(key))
			continue
		}
		l.v.Set(key, value)
		l.from[key] = where
	}
}

func isKey(key string) bool {
	for _, s := range Settings() {
		if s.Key == key {
			return true
		}
	}
	return false
}

// fill turns every key into its field.
func (l *loader) fill() Config {
	c := Config{values: map[string]any{}}
	for _, s := range Settings() {
		where, line := l.file, l.lines[s.Key]
		raw := l.v.Get(s.Key)
		if l.from[s.Key] != "" {
			where, line = l.from[s.Key], 0
		}
		if raw == nil || l.from[s.Key] == "" && line == 0 {
			raw, where = defaultValue(s), "the default"
		}
		value, err := s.Kind.parse(raw)
		if err == nil {
			err = l.check(s.Key, value)
		}
		if err == nil && s.Secret() {
			value, err = l.secret(s.Key, value.(string))
		}
		if err != nil {
			var item itemError
			if errors.As(err, &item) && line > 0 {
				if n := l.lines[fmt.Sprintf("%s[%d]", s.Key, item.item)]; n > 0 {
					line = n
				}
			}
			l.problem(where, line, s.Key, err)
			continue
		}
		c.values[s.Key] = value
		if loc, ok := value.(*time.Location); ok {
			c.values[s.Key] = loc.String() // two readings of one zone need not be equal inside
		}
		reflect.ValueOf(s.field(&c)).Elem().Set(reflect.ValueOf(value))
	}
	return c
}

// check runs the caller's own check over a value.
func (l *loader) check(key string, value any) error {
	check := l.opt.Checks[key]
	if check == nil {
		return nil
	}
	switch value := value.(type) {
	case string:
		if value == "" {
			return nil
		}
		return check(value)
	case []string:
		for i, s := range value {
			if err := check(s); err != nil {
				return itemError{i, err}
			}
		}
	case []Word:
		for i, w := range value {
			if err := check(w.Means); err != nil {
				return itemError{i, fmt.Errorf("the meaning of %q: %w", w.Says, err)}
			}
		}
	case map[string]float64:
		for code := range value {
			if err := check(code); err != nil {
				return err
			}
		}
	}
	return nil
}

// secret returns the secret that the environment holds, else the one in the
// file that the key names. A relative name counts from the configuration's
// folder when it stands there.
func (l *loader) secret(key, file string) (Secret, error) {
	if v := l.secrets[key]; v != "" {
		return NewSecret(strings.TrimSpace(v)), nil
	}
	if file == "" {
		return Secret{}, nil
	}
	if l.from[key] == "" && !filepath.IsAbs(file) {
		file = filepath.Join(filepath.Dir(l.file), file)
	}
	f, err := os.Open(file)
	if err != nil {
		return Secret{}, fmt.Errorf("cannot read the secret: %w", err)
	}
	defer f.Close()
	text, err := readAtMost(f, maxSecret)
	if err != nil {
		return Secret{}, fmt.Errorf("cannot read the secret in %s: %w", file, err)
	}
	s := strings.TrimSpace(string(text))
	if s == "" || strings.ContainsAny(s, "\r\n \t\x00") {
		return Secret{}, fmt.Errorf("%s must hold the secret on one line and nothing else", file)
	}
	return NewSecret(s), nil
}

// defaultValue returns the default as a value of the file.
func defaultValue(s Setting) any {
	v := viper.New()
	v.SetConfigType("yaml")
	if err := v.ReadConfig(strings.NewReader("it: " + s.Default)); err != nil {
		return err
	}
	return v.Get("it")
}
