package config

import (
	"fmt"
	"strings"
	"time"

	"github.com/agnivade/levenshtein"
)

// OneOf returns a check that takes the given values only, and suggests the
// nearest one.
func OneOf(values ...string) func(string) error {
	return func(s string) error {
		for _, v := range values {
			if s == v {
				return nil
			}
		}
		if near := nearest(s, values); near != "" {
			return fmt.Errorf("%q is not known: did you mean %s?", s, near)
		}
		return fmt.Errorf("%q is not known: it must be one of %s", s, strings.Join(values, ", "))
	}
}

// nearest returns the value that s is likely a slip of, or nothing.
func nearest(s string, values []string) string {
	best, bestAt := "", max(1, len(s)/3)+1
	plain := func(s string) string {
		return strings.NewReplacer("_", "", "-", "", " ", "").Replace(strings.ToLower(s))
	}
	for _, v := range values {
		d := levenshtein.ComputeDistance(plain(s), plain(v))
		if len(s) >= 2 && len(v) >= 2 && (strings.HasPrefix(plain(s), plain(v)) || len(s) > 2 && strings.HasPrefix(plain(v), plain(s))) {
			d = min(d, 1) // "english" for "en"
		}
		if d < bestAt {
			best, bestAt = v, d
		}
	}
	return best
}

// nearestKey returns the key that was likely meant by one that there is not:
// a slip of the pen, or the right name in the wrong section.
func nearestKey(key string) string {
	var keys, leaves []string
	for _, s := range Settings() {
		keys = append(keys, s.Key)
		leaves = append(leaves, s.Key[strings.LastIndexByte(s.Key, '.')+1:])
	}
	section, leaf, ok := strings.Cut(key, ".")
	if ok { // first within the section
		var near []string
		for _, k := range keys {
			if strings.HasPrefix(k, section+".") {
				near = append(near, k[len(section)+1:])
			}
		}
		if n := nearest(leaf, near); n != "" {
			return section + "." + n
		}
	} else {
		leaf = key
		var names []string
		for _, s := range sections() {
			names = append(names, s.name)
		}
		if n := nearest(key, names); n != "" {
			return n
		}
	}
	if n := nearest(leaf, leaves); n != "" {
		for i, l := range leaves {
			if l == n {
				return keys[i]
			}
		}
	}
	return nearest(key, keys)
}

// zones are those a shop is likely to be in: the suggestions for a slip. (From
// the IANA time zone database.)
var zones = []string{
	"America/New_York", "America/Chicago", "America/Denver", "America/Phoenix", "America/Los_Angeles",
	"America/Anchorage", "Pacific/Honolulu", "America/Detroit", "America/Boise", "America/Puerto_Rico",
	"America/Indiana/Indianapolis", "America/Kentucky/Louisville", "America/Toronto", "America/Winnipeg",
	"America/Edmonton", "America/Vancouver", "America/Halifax", "America/St_Johns", "America/Mexico_City",
	"America/Tijuana", "America/Monterrey", "Europe/London", "Europe/Madrid", "UTC",
}

// zone reads a time zone's name. Shops say "Eastern"; the zone database has
// cities.
func zone(s string) (*time.Location, error) {
	if s == "" {
		return nil, fmt.Errorf("a time zone is needed, like America/Chicago, or Local for this machine's")
	}
	if loc, err := time.LoadLocation(s); err == nil {
		return loc, nil
	}
	custom := map[string]string{
		"eastern": "America/New_York", "est": "America/New_York", "edt": "America/New_York", "et": "America/New_York",
		"central": "America/Chicago", "cst": "America/Chicago", "cdt": "America/Chicago", "ct": "America/Chicago",
		"mountain": "America/Denver", "mst": "America/Denver", "mdt": "America/Denver", "mt": "America/Denver",
		"arizona": "America/Phoenix", "pacific": "America/Los_Angeles", "pst": "America/Los_Angeles",
		"pdt": "America/Los_Angeles", "pt": "America/Los_Angeles", "hawaii": "Pacific/Honolulu", "alaska": "America/Anchorage",
	}
	word, _, _ := strings.Cut(strings.ToLower(strings.TrimPrefix(s, "US/")), " ")
	near := custom[word]
	if near == "" {
		near = nearest(s, zones)
	}
	if near == "" {
		for _, z := range zones { // a city without its continent
			if strings.HasSuffix(strings.ToLower(z), "/"+strings.ReplaceAll(strings.ToLower(s), " ", "_")) {
				near = z
			}
		}
	}
	if near == "" {
		near = "a name of the IANA list, like America/Chicago"
	}
	return nil, fmt.Errorf("%q is no time zone: did you mean %s?", s, near)
}
