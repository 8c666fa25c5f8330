package config

import (
	"errors"
	"fmt"
	"net"
	"regexp"
	"strconv"
	"strings"
	"time"
)

// Kind is what sort of value a key takes.
type Kind int

// The kinds.
const (
	Text       Kind = iota
	Phone           // at least seven digits
	Zone            // an IANA time zone, or Local
	Language        // en, es
	Weekdays        // list of mon … sun
	HoursKind       // 08:00-17:00
	Days            // list of YYYY-MM-DD
	Band            // two numbers, the lower first
	GaugeGrade      // a grade of ASME B40.100
	PSI             // a number above 0, at most 600
	PSIOrNone       // likewise, or 0
	Rates           // code: share, file only
	Words           // list of {says, means}, file only
	Cron            // a cron line, or nothing
	SecretFile      // a file that holds a secret
	Address         // host:port, or nothing
	Channel         // a channel's id, or nothing
	Channels        // list of channels' ids
	People          // list of people's and groups' ids
	Anyone          // the id of a person, group or channel, or nothing
	Flag            // true, false
	Codes           // list of codes
	Whole           // a whole number from 0
	Duration        // 12h, 30m
	Path            // a file or folder
	LogLevel        // debug, info, warn, error
)

// itemError is an error of one item of a list.
type itemError struct {
	item int
	err  error
}

func (e itemError) Error() string { return e.err.Error() }

var (
	channelID = regexp.MustCompile(`^[CG][A-Z0-9]{2,}$`)
	personID  = regexp.MustCompile(`^[UWS][A-Z0-9]{2,}$`)
	phone     = regexp.MustCompile(`^\+?[0-9][0-9 ()./-]*( *(x|ext\.?) *[0-9]+)?$`)
	weekdays  = []string{"sun", "mon", "tue", "wed", "thu", "fri", "sat"}
)

// parse reads raw, which is a string from the environment or a flag, or a value
// of the file. The result has the type of the field.
func (k Kind) parse(raw any) (any, error) {
	switch k {
	case Weekdays, Days, Channels, People, Codes:
		return k.parseList(raw)
	case Rates:
		return parseRates(raw)
	case Words:
		return parseWords(raw)
	case Band:
		return parseBand(raw)
	case Flag:
		if b, ok := raw.(bool); ok {
			return b, nil
		}
		s := fmt.Sprint(raw)
		b, ok := map[string]bool{"true": true, "yes": true, "on": true, "1": true, "false": false, "no": false, "off": false, "0": false}[strings.ToLower(s)]
		if !ok {
			return nil, fmt.Errorf("%q must be true or false", s)
		}
		return b, nil
	case PSI, PSIOrNone:
		x, err := number(raw)
		if err != nil {
			return nil, err
		}
		if x == 0 && k == PSIOrNone {
			return x, nil
		}
		if x <= 0 || x > 600 {
			return nil, fmt.Errorf("%v must be a pressure in psi above 0 and at most 600", x)
		}
		return x, nil
	case Whole:
		x, err := number(raw)
		if err != nil {
			return nil, err
		}
		if x != float64(int(x)) || x < 0 || x > 100_000 {
			return nil, fmt.Errorf("%v must be a whole number from 0", x)
		}
		return int(x), nil
	}
	s, ok := raw.(string)
	if !ok {
		return nil, fmt.Errorf("%v must be text: put it between double quotes", raw)
	}
	return k.parseText(strings.TrimSpace(s))
}

// parseText reads one value that is text.
func (k Kind) parseText(s string) (any, error) {
	switch k {
	case Phone:
		digits := strings.Count(strings.Map(func(r rune) rune {
			if r >= '0' && r <= '9' {
				return 'd'
			}
			return r
		}, s), "d")
		if s != "" && (!phone.MatchString(s) || digits < 7) {
			return nil, fmt.Errorf("%q is no telephone number: write it like +1 555 010 0100", s)
		}
	case Zone:
		return zone(s)
	case Language:
		return s, OneOf("en", "es")(s)
	case HoursKind:
		return ParseHours(s)
	case GaugeGrade:
		return s, OneOf("4A", "3A", "2A", "1A", "A", "B", "C", "D")(s)
	case LogLevel:
		return s, OneOf("debug", "info", "warn", "error")(s)
	case Address:
		if s == "" {
			return s, nil
		}
		if _, port, err := net.SplitHostPort(s); err != nil || !isPort(port) {
			return nil, fmt.Errorf("%q is no address: write host and port, like 127.0.0.1:8645", s)
		}
	case Channel:
		if s != "" && !channelID.MatchString(s) {
			return nil, fmt.Errorf("%q is no channel id: ids begin with C or G, like C0123456789; copy it from the channel's details", s)
		}
	case Anyone:
		if s != "" && !channelID.MatchString(s) && !personID.MatchString(s) {
			return nil, fmt.Errorf("%q is no id: people's begin with U or W, groups' with S, channels' with C or G", s)
		}
	case Duration:
		d, err := time.ParseDuration(s)
		if err != nil || d < 0 {
			return nil, fmt.Errorf("%q is no length of time: write it like 12h or 30m", s)
		}
		return d, nil
	}
	return s, nil
}

func isPort(s string) bool {
	n, err := strconv.ParseUint(s, 10, 16)
	return err == nil && n < 65536
}

func number(raw any) (float64, error) {
	switch x := raw.(type) {
	case int:
		return float64(x), nil
	case float64:
		return x, nil
	case string:
		if f, err := strconv.ParseFloat(strings.TrimSpace(x), 64); err == nil {
			return f, nil
		}
	}
	return 0, fmt.Errorf("%v must be a number", quoted(raw))
}

func quoted(raw any) any {
	if s, ok := raw.(string); ok {
		return strconv.Quote(s)
	}
	return raw
}

// list returns the items of raw; a string from the environment or a flag holds
// them between commas.
func list(raw any) ([]any, error) {
	switch x := raw.(type) {
	case []any:
		return x, nil
	case nil:
		return nil, nil
	case string:
		var out []any
		for part := range strings.SplitSeq(strings.Trim(strings.TrimSpace(x), "[]"), ",") {
			if part = strings.TrimSpace(part); part != "" {
				out = append(out, part)
			}
		}
		return out, nil
	}
	return nil, fmt.Errorf("%v must be a list: write it like [a, b]", raw)
}

func (k Kind) parseList(raw any) (any, error) {
	items, err := list(raw)
	if err != nil {
		return nil, err
	}
	texts, days := []string{}, []time.Weekday{}
	for i, item := range items {
		s, ok := item.(string)
		if t, isTime := item.(time.Time); isTime { // a day without quotes
			s, ok = t.Format(time.DateOnly), true
		}
		if !ok {
			return nil, itemError{i, fmt.Errorf("%v must be text: put it between double quotes", item)}
		}
		s = strings.TrimSpace(s)
		var bad error
		switch k {
		case Weekdays:
			if bad = OneOf(weekdays...)(strings.ToLower(s)); bad == nil {
				for d, name := range weekdays {
					if name == strings.ToLower(s) {
						days = append(days, time.Weekday(d))
					}
				}
			}
		case Days:
			if _, err := time.Parse(time.DateOnly, s); err != nil {
				bad = fmt.Errorf("%q is no day: write it like 2026-12-25", s)
			}
		case Channels:
			if s == "" {
				bad = errors.New("a channel id is empty")
			} else {
				_, bad = Channel.parseText(s)
			}
		case People:
			if !personID.MatchString(s) {
				bad = fmt.Errorf("%q is no id of a person or group: people's begin with U or W, groups' with S, like U0123456789", s)
			}
		}
		if bad != nil {
			return nil, itemError{i, bad}
		}
		texts = append(texts, s)
	}
	if k == Weekdays {
		return days, nil
	}
	return texts, nil
}

func parseBand(raw any) (any, error) {
	items, err := list(raw)
	if err != nil || len(items) != 2 {
		return nil, errors.New("it must be two numbers, the lower first, like [40, 80]")
	}
	var band [2]float64
	for i, item := range items {
		if band[i], err = number(item); err != nil {
			return nil, err
		}
	}
	if !(0 < band[0] && band[0] < band[1] && band[1] <= 600) {
		return nil, fmt.Errorf("it must be two numbers above 0, the lower first, not [%v, %v]", band[0], band[1])
	}
	return band, nil
}

func parseRates(raw any) (any, error) {
	m, ok := raw.(map[string]any)
	if !ok {
		return nil, errors.New("it stands in the file only, and must be pairs like {passing: 0.2}")
	}
	rates := map[string]float64{}
	for code, value := range m {
		x, err := number(value)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", code, err)
		}
		if !(0 < x && x < 1) {
			return nil, fmt.Errorf("%s: %v must lie between 0 and 1", code, x)
		}
		rates[code] = x
	}
	return rates, nil
}

func parseWords(raw any) (any, error) {
	items, ok := raw.([]any)
	if !ok {
		return nil, errors.New("they stand in the file only, each like {says: garage tap, means: side_bibb}")
	}
	words := []Word{}
	for i, item := range items {
		m, ok := item.(map[string]any)
		says, okSays := m["says"].(string)
		means, okMeans := m["means"].(string)
		if !ok || !okSays || !okMeans || len(m) != 2 || strings.TrimSpace(says) == "" || means == "" {
			return nil, itemError{i, errors.New("a word is written like {says: garage tap, means: side_bibb}")}
		}
		words = append(words, Word{strings.TrimSpace(says), means})
	}
	return words, nil
}
