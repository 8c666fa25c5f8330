package desk_test

import (
	"bytes"
	"context"
	"encoding/csv"
	"errors"
	"fmt"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/store"
)

var importDay = time.Date(2026, 6, 15, 12, 0, 0, 0, time.UTC)

func (s *shop) imports(list string, dry bool) (desk.ImportReport, error) {
	return s.desk.Import(context.Background(), strings.NewReader(list), desk.ImportOptions{DryRun: dry, Now: importDay})
}

// export is the whole record without the numbers of its messages.
func (s *shop) export(format string) string {
	s.t.Helper()
	var out bytes.Buffer
	if err := s.db.Export(context.Background(), &out, format, nil); err != nil {
		s.t.Fatal(err)
	}
	if format == "jsonl" {
		return regexp.MustCompile(`"message":\d+`).ReplaceAllString(out.String(), `"message":0`)
	}
	rows, err := csv.NewReader(&out).ReadAll()
	if err != nil {
		s.t.Fatal(err)
	}
	number := map[string]int{}
	for _, r := range rows[1:] {
		m := &r[15]
		if number[*m] == 0 {
			number[*m] = len(number) + 1
		}
		*m = fmt.Sprint(number[*m])
	}
	var again strings.Builder
	w := csv.NewWriter(&again)
	if err := w.WriteAll(rows); err != nil {
		s.t.Fatal(err)
	}
	return again.String()
}

func TestAnOldListIsImported(t *testing.T) {
	s := newShop(t, quickDir(t), desk.Options{})
	defer s.db.Close()
	list := "Address,City,Visit Date,Tech,Pressure,Where,Notes\n" +
		"123 Elm Street,Springfield,6/3/2019,Ana,92,rear hose bib,\"PRV 2006, dark water\"\n" +
		"123 elm st,Springfield,2021-05-04,Ben,95 psi,laundry,\n" +
		",,,,,,\n" +
		"12 Alder St,,5/1/2020,Ana,4.2 bar,,\n"
	shown, err := s.imports(list, true)
	if err != nil || len(shown.Refused) > 0 || shown.Rows != 3 {
		t.Fatalf("shown: %+v %v", shown, err)
	}
	if strings.Contains(s.derived(), "house") {
		t.Error("a dry run left something on record")
	}
	done, err := s.imports(list, false)
	if err != nil || done.Kept != 3 {
		t.Fatalf("%+v %v", done, err)
	}
	got := s.derived()
	for _, want := range []string{
		`house 1 is 1 "123 Elm St" "Springfield"`, `house 2 is 2 "12 Alder St"`, "{PSI:92 Point:rear_bibb", "{PSI:95 Point:laundry", "{PSI:60.9 Point:",
		`equipment prv false "2006"`, "on 2019-06-03 by Ana",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("%q is not on record:\n%s", want, got)
		}
	}
	if strings.Contains(got, "house 3") || strings.Contains(got, "follow-up") || strings.Contains(got, "alert") {
		t.Errorf("an old list opened a second house, a follow-up or an alert:\n%s", got)
	}
	again, err := s.imports(list, false)
	if err != nil || again.Known != 3 || again.Kept != 0 || s.derived() != got {
		t.Errorf("the same list once more: %+v %v", again, err)
	}
	if _, changes := s.rebuild(false); len(changes) > 0 || s.derived() != got {
		t.Errorf("a rebuild does not keep imported rows: %+v", changes)
	}
}

func TestRefusedRowsAreNamedAndNothingIsTaken(t *testing.T) {
	s := newShop(t, quickDir(t), desk.Options{})
	defer s.db.Close()
	list := "site,date,psi,point\n" +
		"123 Elm St,2020-01-02,92,laundry\n" + // right
		"123 Elm St,2020-13-02,92,laundry\n" +
		"123 Elm St,2020-01-02,900,laundry\n" +
		"123 Elm St,2020-01-02,-5,laundry\n" +
		"123 Elm St,2020-01-02,,laundry\n" +
		"somewhere,2020-01-02,92,laundry\n" +
		"123 Elm St,2031-01-02,92,laundry\n" +
		"123 Elm St,2020-01-02,92,qwxyz\n" +
		"123 Elm St,2020-01-02,NaN,laundry\n"
	r, err := s.imports(list, false)
	if !errors.Is(err, desk.ErrRefused) {
		t.Errorf("%v, want ErrRefused", err)
	}
	if s.derived() != "worst []\n" {
		t.Errorf("something was taken:\n%s", s.derived())
	}
	var lines []int
	for _, x := range r.Refused {
		lines = append(lines, x.Line)
		if len(x.Why) < 10 {
			t.Errorf("%v does not say why", x)
		}
	}
	if fmt.Sprint(lines) != "[3 4 5 6 7 8 9 10]" {
		t.Errorf("refused lines %v: %v", lines, r.Refused)
	}
	for _, list := range []string{"", "\n\n", "address,psi\n1 Elm St,60\n", "a,b,c\n1,2,3\n"} {
		if _, err := s.imports(list, false); err == nil {
			t.Errorf("%q was imported", list)
		}
	}
}

// TestARoundTripLosesNothing exports a shop's days and imports them into an
// empty record, in both forms.
func TestARoundTripLosesNothing(t *testing.T) {
	s := newShop(t, quickDir(t), desk.Options{})
	defer s.db.Close()
	for _, text := range []string{
		"92 rear tap, heater idle, 115 at the meter, 123 Elm St, Springfield", "61 laundry, heater idle, 9 Oak Ct", "PRV 2006, dark water, 123 Elm St",
		"replaced the PRV at 12 Alder St, before 95 laundry, after 60 laundry, heater idle", "140 peak overnight at the rear bibb, 9 Oak Ct",
		"no expansion tank, 50 gal gas heater, 12 Alder St", "48 kitchen running, 70 kitchen static, 9 Oak Ct",
	} {
		s.says("=ana", text)
	}
	for _, format := range []string{"csv", "jsonl"} {
		t.Run(format, func(t *testing.T) {
			first := s.export(format)
			if format == "csv" && !strings.Contains(first, "'=ana") {
				t.Errorf("a cell would be taken for a formula:\n%s", first)
			}
			o := newShop(t, filepath.Join(quickDir(t), format), desk.Options{})
			defer o.db.Close()
			var whole bytes.Buffer
			if err := s.db.Export(context.Background(), &whole, format, nil); err != nil {
				t.Fatal(err)
			}
			r, err := o.imports(whole.String(), false)
			if err != nil {
				t.Fatalf("%v %+v", err, r.Refused)
			}
			if second := o.export(format); second != first {
				t.Errorf("out:\n%s\nin and out again:\n%s", first, second)
			}
		})
	}
}

func TestARowOfAnyTextGoesRound(t *testing.T) {
	checks(t, 40)
	dir := quickDir(t)
	n := 0
	rapid.Check(t, func(r *rapid.T) {
		n++
		s := newShop(r, filepath.Join(dir, fmt.Sprint(n)), desk.Options{})
		defer s.db.Close()
		odd := rapid.StringMatching(`[=+@'\-",;a-z0-9 ñ\n]{0,12}`)
		var list strings.Builder
		w := csv.NewWriter(&list)
		rows := [][]string{{"site", "town", "date", "who", "psi", "point", "heater", "flow", "peak", "when", "message", "also"}}
		for i := range rapid.IntRange(1, 6).Draw(r, "rows") {
			line := strings.TrimSpace(odd.Draw(r, "line"))
			rows = append(rows, []string{store.Cell(strings.TrimSpace(line + "x " + fmt.Sprint(i))), store.Cell(strings.TrimSpace(odd.Draw(r, "town"))),
				rapid.SampledFrom([]string{"2020-01-02", "2021-03-04"}).Draw(r, "day"), store.Cell(strings.TrimSpace("w" + odd.Draw(r, "who"))),
				fmt.Sprint(rapid.IntRange(0, 300).Draw(r, "psi")), rapid.SampledFrom([]string{"", "laundry", "street"}).Draw(r, "point"),
				rapid.SampledFrom([]string{"", "idle", "firing"}).Draw(r, "heater"), "", rapid.SampledFrom([]string{"", "yes"}).Draw(r, "peak"), "", fmt.Sprint(i), ""})
		}
		if err := w.WriteAll(rows); err != nil {
			r.Fatal(err)
		}
		if rep, err := s.imports(list.String(), false); err != nil {
			r.Fatalf("%v %v", err, rep.Refused)
		}
		var whole bytes.Buffer
		if err := s.db.Export(context.Background(), &whole, "csv", nil); err != nil {
			r.Fatal(err)
		}
		o := newShop(r, filepath.Join(dir, fmt.Sprint(n, "b")), desk.Options{})
		defer o.db.Close()
		if rep, err := o.imports(whole.String(), false); err != nil {
			r.Fatalf("%v %v\n%s", err, rep.Refused, whole.String())
		}
		if a, b := s.export("csv"), o.export("csv"); a != b {
			r.Fatalf("out:\n%s\nin and out again:\n%s", a, b)
		}
	})
}

// FuzzImport: whatever a file holds, it is taken whole or refused with a
// reason, and the record stays sound.
func FuzzImport(f *testing.F) {
	for _, s := range []string{"site,date,psi\n123 Elm St,2020-01-02,92\n", "{\"site\":\"1 Elm St\",\"date\":\"2020-01-02\",\"psi\":60}\n", "site;date;psi\n1 Elm St;2020-01-02;60\n",
		"site,date,psi\n\"1 Elm", "site,date,psi,message,also\nx,2020-01-02,5,1,\"[{\"\"kind\"\":\"\"reading\"\"}]\"\n", "\xef\xbb\xbfsite,date,psi\n", "{}\n{\"site\":[]}\n"} {
		f.Add(s)
	}
	s := newShop(f, f.TempDir(), desk.Options{})
	f.Fuzz(func(t *testing.T, list string) {
		r, err := s.imports(list, true)
		if err == nil && len(r.Refused) == 0 && r.Rows > 0 {
			if done, err := s.imports(list, false); err != nil {
				t.Fatalf("shown as right, then %v %v", err, done.Refused)
			}
		}
		var out bytes.Buffer
		if err := s.db.Export(context.Background(), &out, "csv", nil); err != nil {
			t.Fatal(err)
		}
	})
}

func TestJoiningAndPartingIsReversible(t *testing.T) {
	s := newShop(t, quickDir(t), desk.Options{})
	defer s.db.Close()
	s.says("ana", "61 laundry, heater idle, 9 Oak Ct")
	s.says("ben", "70 rear bibb, heater idle, 9 Oak Ave")
	before := s.derived()
	ctx := context.Background()
	err := s.db.Write(ctx, func(tx *store.Tx) error {
		pairs, err := tx.NearDuplicates(assess.Site{Line: "9 Oak Ct"})
		if err != nil {
			return err
		}
		if len(pairs) != 1 || pairs[0].A.Line != "9 Oak Ct" || pairs[0].B.Line != "9 Oak Ave" {
			t.Errorf("offered for joining: %+v", pairs)
		}
		return tx.Join(1, 2)
	})
	if err != nil {
		t.Fatal(err)
	}
	s.says("ana", "72 rear bibb, heater idle, 9 Oak Ave")
	joined := s.derived()
	if _, changes := s.rebuild(false); len(changes) > 0 || s.derived() != joined {
		t.Errorf("a rebuild parts what people joined: %+v\n%s", changes, s.derived())
	}
	if !strings.Contains(joined, `house 2 is 1 "9 Oak Ct"`) || strings.Count(joined, "  report of") != 3 {
		t.Errorf("the two are not one:\n%s", joined)
	}
	if err := s.db.Write(ctx, func(tx *store.Tx) error { return tx.Part(2) }); err != nil {
		t.Fatal(err)
	}
	parted := s.derived()
	if !strings.Contains(parted, `house 2 is 2 "9 Oak Ave"`) || !strings.Contains(parted, "report of 3 at 2") {
		t.Errorf("what was said of 9 Oak Ave meanwhile is not filed there:\n%s\nbefore:\n%s", parted, before)
	}
}
