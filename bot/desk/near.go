package desk

import (
	"slices"
	"strconv"
	"strings"

	"lazyhand/assess"
	"lazyhand/intents"
	"lazyhand/store"
)

// nearest finds the house on record that a newly named one may be: the same
// number and street with another suffix or direction, the name a letter off or
// sounding alike, the number a digit off. Houses in different towns are two, and
// so are neighbours: numbers that differ in a digit behind the first.
func (t *turn) nearest(site store.SiteRecord) (store.SiteRecord, bool, error) {
	if site.Named != site.ID { // people joined it, and it has just been read anew
		s, err := t.tx.Site(site.ID)
		return s, err == nil, err
	}
	own := store.Around{SiteRecord: site, Loose: site.Loose(), Street: site.Street()}
	around, many, err := t.tx.SitesAround(site.Site, fewOnStreet+2, func(street string) bool { return street != own.Street && nearNames(street, own.Street) })
	if err != nil {
		return store.SiteRecord{}, false, err
	}
	onStreet := 0
	for _, o := range around {
		if o.Street == own.Street {
			onStreet++
		}
	}
	best, rank := store.SiteRecord{}, 0
	for _, o := range around {
		if o.ID == site.ID {
			continue
		}
		r := nearness(o, own)
		if r == byNumber && (many || onStreet > fewOnStreet) {
			continue
		}
		if r > 0 && (rank == 0 || r < rank) {
			best, rank = o.SiteRecord, r
		}
	}
	return best, rank > 0, nil
}

// How two street lines may be one house, likeliest first.
const (
	byStreetLine = iota + 1 // another suffix or direction
	byName                  // a letter off
	byNumber                // a digit off
)

// fewOnStreet is up to how many houses of a street on record a number that is a
// digit off is worth a question (judgement): where the crew knows more of them,
// nearly every number has such a neighbour.
const fewOnStreet = 12

// nearness tells how two street lines may be one house, likeliest first; 0 for
// two houses.
func nearness(a, b store.Around) int {
	if a.Town != "" && b.Town != "" && !strings.EqualFold(a.Town, b.Town) || a.Postcode != "" && b.Postcode != "" && a.Postcode != b.Postcode {
		return 0
	}
	if a.Loose == b.Loose {
		return byStreetLine
	}
	x, y := a.Street, b.Street
	na, _, _ := strings.Cut(a.Key(), " ")
	nb, _, _ := strings.Cut(b.Key(), " ")
	switch {
	case na == nb && x != y && nearNames(x, y) && (assess.Site{Line: strings.Replace(b.Key(), y, x, 1)}).Fits(assess.Site{Line: a.Line}):
		return byName
	case na != nb && x == y && nearNumbers(na, nb) && (assess.Site{Line: na + strings.TrimPrefix(b.Key(), nb)}).Fits(assess.Site{Line: a.Line}):
		return byNumber
	}
	return 0
}

// nearNames tells whether one street's name may be a slip for the other: a
// letter off, or alike in sound. Numbered streets are neighbours.
func nearNames(x, y string) bool {
	if strings.ContainsAny(x+y, "0123456789") || max(len(x), len(y)) < 4 {
		return false
	}
	return intents.OneSlip(x, y) || sound(x) == sound(y)
}

// alike are spellings of one sound.
var alike = strings.NewReplacer("ph", "f", "ck", "k", "sch", "sk", "gh", "", "wr", "r", "kn", "n", "ce", "se", "ci", "si", "cy", "sy", "c", "k", "q", "k", "x", "ks", "z", "s", "w", "", "h", "")

// sound is a name as it is heard: letters that sound alike are one, doubled
// ones too; vowels that follow each other are the first of them, and after the
// first of a name a vowel is a vowel.
func sound(name string) string {
	s := alike.Replace(name)
	s = strings.TrimRight(s, "e") // silent
	var out strings.Builder
	last, vowels := rune(0), 0
	for _, r := range s {
		if strings.ContainsRune("aeiouy", r) {
			if strings.ContainsRune("aeiouy", last) {
				continue
			}
			last = r
			if vowels++; vowels > 1 {
				r = 'a'
			}
			out.WriteRune(r)
			continue
		}
		if r != last {
			out.WriteRune(r)
		}
		last = r
	}
	return out.String()
}

// nearNumbers tells whether one house number may be a slip for the other: a
// digit dropped or doubled, two swapped, or the first one changed.
func nearNumbers(a, b string) bool {
	if max(len(a), len(b)) < 3 || !intents.OneSlip(a, b) {
		return false
	}
	_, err := strconv.Atoi(a + b)
	return err == nil && (len(a) != len(b) || a[1:] == b[1:] || sameDigits(a, b))
}

// sameDigits tells whether two numbers are made of the same digits.
func sameDigits(a, b string) bool {
	x, y := []byte(a), []byte(b)
	slices.Sort(x)
	slices.Sort(y)
	return string(x) == string(y)
}
