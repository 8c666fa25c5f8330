package intents_test

import (
	"encoding/json"
	"fmt"
	"math"
	"math/rand/v2"
	"reflect"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"

	"lazyhand/assess"
	"lazyhand/intents"
)

var digits = regexp.MustCompile(`\d+(?:[.,]\d+)?|\.\d+`)

// stop finds a point that ends a word, no decimal one: "rear bibb.92", "laundry..92".
var stop = regexp.MustCompile(`([\pL.])\.(\d)`)

// struck finds a digit struck in place of a letter, as in "n1nety".
var struck = regexp.MustCompile(`(?i)[a-z][013][a-z]`)

// nought finds the letter o struck for a nought, as in "6o".
var nought = regexp.MustCompile(`(\d)[oO]`)

// unstruck writes the letters in place of such digits.
func unstruck(text string) string {
	return struck.ReplaceAllStringFunc(text, func(s string) string {
		return s[:1] + strings.NewReplacer("0", "o", "1", "i", "3", "e").Replace(s[1:2]) + s[2:]
	})
}

// wordy finds a number written in words, or with a fraction.
var wordy = regexp.MustCompile(`(?i)zero|cero|sero|\boh\b|one|two|three|four|five|six|seven|eight|nine|ten\b|eleven|twelve|teen|ty\b|ty-|ty\d|hundred|half|buck|uno|dos|tres|cuatro|cinco|seis|siete|ocho|nueve|diez|once|doce|trece|catorce|quince|dieci|veint|treinta|enta|cien|mil\b|medi[oa]|1/2|[¼½¾]|point|punto|thousand|ought`)

// told tells whether a pressure stands in a text: as it is, converted from
// another unit, or as the middle of two numbers.
func told(text string, psi float64) bool {
	var values []float64
	for _, d := range digits.FindAllString(strings.ReplaceAll(text, ",", ""), -1) {
		v, _ := strconv.ParseFloat(d, 64)
		values = append(values, v)
	}
	for _, d := range digits.FindAllString(strings.ReplaceAll(text, ",", "."), -1) {
		v, _ := strconv.ParseFloat(d, 64)
		values = append(values, v)
	}
	for _, d := range digits.FindAllString(strings.ReplaceAll(stop.ReplaceAllString(strings.ReplaceAll(text, "*", ""), "$1 $2"), ",", " "), -1) {
		v, _ := strconv.ParseFloat(d, 64)
		values = append(values, v)
	}
	for _, f := range []float64{1, 14.5038, 0.145038, 0.433528, 1.42233, 145.038, 14.2233} {
		for i, a := range values {
			for _, b := range values[i:] {
				if math.Abs((a+b)/2*f-psi) < 0.06+psi*2e-5 {
					return true
				}
			}
		}
	}
	return false
}

// Whatever comes in: no panic, and no pressure that the text does not hold.
func FuzzParse(f *testing.F) {
	for _, l := range readCorpus(f, "../testdata/intents/dev.jsonl") {
		f.Add(l.Text)
	}
	for _, s := range hostile {
		f.Add(s)
	}
	p := newParser(f)
	f.Fuzz(func(t *testing.T, text string) {
		if len(text) > 400 {
			text = text[:400]
		}
		// A message that is read for ever would only stop the search, not fail it.
		watch := time.AfterFunc(10*time.Second, func() { panic(fmt.Sprintf("%q is read for ever", text)) })
		frame := p.Parse(text, intents.Context{})
		watch.Stop()
		if _, err := json.Marshal(frame); err != nil {
			t.Fatal(err)
		}
		if wordy.MatchString(text) || wordy.MatchString(unstruck(text)) {
			return
		}
		for _, s := range frame.Statements {
			if r, ok := s.(assess.Reading); ok && !told(text, r.PSI) && !told(strings.Map(plainDigit, text), r.PSI) && !told(nought.ReplaceAllString(text, "${1}0"), r.PSI) {
				t.Errorf("%q: %v psi does not stand in it", text, r.PSI)
			}
		}
	})
}

// plainDigit turns digits of other scripts and widths into plain ones.
func plainDigit(r rune) rune {
	if r >= '０' && r <= '９' {
		return r - '０' + '0'
	}
	return r
}

var hostile = []string{
	"", " ", "\n\n\n", "🔧🔧🔧", ":wrench: :100:", "\x00\x01\x02", "\xff\xfe\xfd", "'; DROP TABLE sites; --", "92 rear, 1 *Elm* St'; DROP TABLE readings; --",
	"<!channel> <@U1|x> <http://a|b", strings.Repeat("9", 400), strings.Repeat("(", 300), "1/2 1/2 1/2", "-5", "900 psi", "5th", "' 9", "~~", "~92", "#", "<", "&lt;", "a\u0301 92",
}

// Bad input makes no reading.
func TestBadInputIsNotStored(t *testing.T) {
	p := newParser(t)
	long := strings.Repeat("92 rear ", 5000)
	for _, text := range append([]string{long, strings.Repeat("a", 40000), strings.Repeat("\n", 40000)}, hostile...) {
		f := p.Parse(text, intents.Context{})
		if strings.HasPrefix(text, "92 rear, 1") || text == "~92" || text == "a\u0301 92" {
			continue // these hold a reading
		}
		for _, s := range f.Statements {
			if r, ok := s.(assess.Reading); ok {
				t.Errorf("%.40q: reading of %v", text, r.PSI)
				break
			}
		}
	}
}

// What breaks off, and words in any order, are read like other messages: no rule may look
// for what stands before the first word or behind the last.
func TestAnyPieceOfAMessageIsRead(t *testing.T) {
	p, chance := newParser(t), rand.New(rand.NewPCG(1, 2))
	var words []string
	read := func(text string) {
		defer func() {
			if fault := recover(); fault != nil {
				t.Errorf("%q: %v", text, fault)
			}
		}()
		p.Parse(text, intents.Context{})
	}
	for _, file := range corpusFiles(t) {
		for _, l := range readCorpus(t, file) {
			told := strings.Fields(l.Text)
			words = append(words, told...)
			cut := chance.IntN(len(told) + 1)
			read(strings.Join(told[:cut], " "))
			read(strings.Join(told[cut:], " "))
		}
	}
	read("after 60")
	for range 50_000 {
		var text []string
		for range 1 + chance.IntN(6) {
			text = append(text, words[chance.IntN(len(words))])
		}
		read(strings.Join(text, " "))
	}
}

// Impossible values are asked about.
func TestImpossibleValuesAreAskedAbout(t *testing.T) {
	p := newParser(t)
	for _, text := range []string{"900 psi at the rear bibb", "rear bibb -5"} {
		f := p.Parse(text, intents.Context{})
		if len(f.Unclear) == 0 || f.Unclear[0].Ask == "" {
			t.Errorf("%q: nothing asked, %v", text, f.Statements)
		}
	}
}

func TestTwoHousesAreAskedApart(t *testing.T) {
	f := newParser(t).Parse("92 rear at 12 Oak St and 84 rear at 90 Pine Rd", intents.Context{})
	if f.Site != "" || len(f.Statements) != 0 || len(f.Unclear) != 1 {
		t.Errorf("got %+v", f)
	}
}

// The record helps a street without a number: one that fits is it, two make a question.
func TestSitesOnRecord(t *testing.T) {
	p := newParser(t)
	one := intents.Context{Sites: []string{"123 Elm St", "9 Oak Ave"}}
	if f := p.Parse("92 rear at elm", one); f.Site != "123 Elm St" {
		t.Errorf("site %q", f.Site)
	}
	two := intents.Context{Sites: []string{"123 Elm St", "40 Elm Ct"}}
	if f := p.Parse("92 rear at elm", two); f.Site != "" || len(f.Unclear) == 0 {
		t.Errorf("site %q, unclear %v", f.Site, f.Unclear)
	}
}

// Short answers pick one of the bot's options.
func TestAnswersToTheBotsQuestion(t *testing.T) {
	p := newParser(t)
	q := &intents.Unclear{Span: "bibb", MightBe: []string{"front_bibb", "rear_bibb"}, Ask: "Front or rear?"}
	for text, want := range map[string]string{
		"rear": "rear_bibb", "the second one": "rear_bibb", "first": "front_bibb", "yes": "front_bibb", "la de atrás": "rear_bibb", "2": "rear_bibb", "no": "no",
		"lunch at 12?": "",
	} {
		if got := p.Parse(text, intents.Context{Question: q}).Answer; got != want {
			t.Errorf("%q: answer %q, want %q", text, got, want)
		}
	}
}

func TestShopWords(t *testing.T) {
	p, err := intents.New(intents.Word{Says: "the goose", Means: "rear_bibb"}, intents.Word{Says: "bubbler", Means: "heater"})
	if err != nil {
		t.Fatal(err)
	}
	f := p.Parse("88 at the goose, bubbler off", intents.Context{})
	want := assess.Reading{PSI: 88, Point: assess.RearBibb, Heater: assess.Idle}
	if len(f.Statements) != 1 || f.Statements[0] != assess.Statement(want) {
		t.Errorf("got %v", f.Statements)
	}
	for _, w := range []intents.Word{{Says: "goose", Means: "gander"}, {Says: "", Means: "heater"}, {Says: "bib 2", Means: "rear_bibb"}} {
		if _, err := intents.New(w); err == nil {
			t.Errorf("%+v was taken", w)
		}
	}
}

// Explain names the words that gave the site and the reading, and what a number would have
// been without the rule that decided.
func TestExplain(t *testing.T) {
	_, why := newParser(t).Explain("gate code 4410, 92 rear tap, 40 gal heater idle, 123 Elm", intents.Context{})
	text := ""
	for _, w := range why {
		text += w.String() + "\n"
	}
	for _, want := range []string{`"123 Elm" gave site 123 Elm`, `"92" gave reading`, `"4410" lost as a pressure`, `"40" gave size`, `"40" lost as reading`} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is missing in\n%s", want, text)
		}
	}
}

// To be told why changes nothing.
func TestExplainReadsAsParseDoes(t *testing.T) {
	p := newParser(t)
	all := readCorpus(t, "../testdata/intents/dev.jsonl")
	all = append(all, labelled{Text: "The regulator dates from 2011 and is set to 65 psi."}, labelled{Text: "expansion of the warehouse, 2,400 sq ft more"})
	for _, l := range all {
		f, _ := p.Explain(l.Text, l.Context)
		if want := p.Parse(l.Text, l.Context); !reflect.DeepEqual(f, want) {
			t.Errorf("%q is %+v when explained, %+v otherwise", l.Text, f, want)
		}
	}
}

func TestLanguage(t *testing.T) {
	p := newParser(t)
	if got := p.Language("82 libras en la llave de atrás, boiler apagado"); got != assess.Spanish {
		t.Errorf("got %q", got)
	}
	if got := p.Language("92 rear tap, heater idle"); got != assess.English {
		t.Errorf("got %q", got)
	}
}
