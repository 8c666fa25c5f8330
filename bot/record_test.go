package main

import (
	"context"
	"encoding/json"
	"log/slog"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"lazyhand/config"
	"lazyhand/store"
)

// anExport is a list in the shape of the export: three readings at two invented
// houses.
const anExport = `site,town,postcode,date,said_at,who,author,psi,point,heater,flow,peak,when,side,fair,message,also
123 Elm St,,,2024-03-02,2024-03-02T15:00:00Z,=cmd|' /C calc'!A0,U1,92,rear_bibb,idle,static,,,house,yes,1,
123 Elm St,,,2025-03-02,2025-03-02T15:00:00Z,Rosa,U2,96,rear_bibb,idle,static,,,house,yes,2,
9 Oak Ave,,,2025-04-02,2025-04-02T15:00:00Z,Rosa,U2,61,laundry,idle,static,,,house,yes,3,
`

// shopRecord makes a record with the readings of anExport.
func shopRecord(t *testing.T) (dir string) {
	t.Helper()
	dir = home(t)
	list := filepath.Join(dir, "old.csv")
	if err := os.WriteFile(list, []byte(anExport), 0o600); err != nil {
		t.Fatal(err)
	}
	out, errOut, code := lazyhand(t, "", "import", list)
	if code != 0 || !strings.Contains(out, "3 readings taken") {
		t.Fatalf("import: code %d: %s%s", code, out, errOut)
	}
	return dir
}

func TestExportAndImportLoseNothing(t *testing.T) {
	dir := shopRecord(t)
	for _, format := range []string{"csv", "jsonl"} {
		file := filepath.Join(dir, "out."+format)
		if _, errOut, code := lazyhand(t, "", "export", "--format", format, "--out", file); code != 0 {
			t.Fatalf("export: %s", errOut)
		}
		info, err := os.Stat(file)
		if err != nil || info.Mode().Perm() != 0o600 {
			t.Errorf("%s: mode %v, %v", file, info.Mode(), err)
		}
		first, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		copied := filepath.Join(dir, format+".db")
		if _, errOut, code := lazyhand(t, "", "import", file, "--db", copied); code != 0 {
			t.Fatalf("import: %s", errOut)
		}
		again, errOut, code := lazyhand(t, "", "export", "--format", format, "--db", copied)
		if code != 0 || again != string(first) {
			t.Errorf("%s: code %d %s\n%s\nbecame\n%s", format, code, errOut, first, again)
		}
	}
	// A cell that a spreadsheet would run is text.
	out, _, _ := lazyhand(t, "", "export")
	for _, cell := range strings.FieldsFunc(out, func(r rune) bool { return r == ',' || r == '\n' }) {
		if strings.HasPrefix(strings.Trim(cell, `"`), "=") {
			t.Errorf("a formula leaves: %s", cell)
		}
	}
}

func TestAnExportIsNeverTheRecordItself(t *testing.T) {
	dir := shopRecord(t)
	record := filepath.Join(dir, "data", "lazyhand", "lazyhand.db")
	link := filepath.Join(dir, "link.csv")
	if err := os.Link(record, link); err != nil {
		t.Fatal(err)
	}
	before, err := os.ReadFile(record)
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range []string{record, link, record + ".lock", dir, filepath.Join(dir, "no such folder", "x.csv")} {
		if _, errOut, code := lazyhand(t, "", "export", "--out", file); code != 1 || strings.Count(errOut, "\n") != 1 {
			t.Errorf("--out %s: code %d: %s", file, code, errOut)
		}
	}
	if after, err := os.ReadFile(record); err != nil || string(after) != string(before) {
		t.Errorf("the record was touched: %v", err)
	}
	left, err := filepath.Glob(filepath.Join(dir, ".lazyhand-*"))
	if err != nil || len(left) > 0 {
		t.Errorf("left behind: %v %v", left, err)
	}
}

func TestAnImportIsAllOrNothing(t *testing.T) {
	dir := shopRecord(t)
	list := filepath.Join(dir, "bad.csv")
	text := strings.ReplaceAll(anExport, "2025-04-02,", "someday,")
	text = strings.ReplaceAll(text, ",96,", ",9600,")
	if err := os.WriteFile(list, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	other := filepath.Join(dir, "other.db")
	out, errOut, code := lazyhand(t, "", "import", list, "--db", other)
	if code != 1 || !strings.Contains(errOut, "line 3: ") || !strings.Contains(errOut, "line 4: ") || out != "" {
		t.Errorf("code %d: %s%s", code, out, errOut)
	}
	if out, _, _ := lazyhand(t, "", "export", "--db", other); strings.Count(out, "\n") > 1 {
		t.Errorf("something was taken:\n%s", out)
	}
	if out, _, code = lazyhand(t, "", "import", list, "--dry-run", "--db", other); code != 1 || !strings.Contains(out, "Nothing was changed") {
		t.Errorf("dry run: code %d: %s", code, out)
	}
	good := filepath.Join(dir, "old.csv")
	if out, _, code = lazyhand(t, "", "import", good, "--dry-run", "--db", other); code != 0 || !strings.Contains(out, "0 cannot be taken") {
		t.Errorf("dry run: code %d: %s", code, out)
	}
	if out, _, code = lazyhand(t, "", "import", good); code != 0 || !strings.Contains(out, "3 were on record already") {
		t.Errorf("a second time: code %d: %s", code, out)
	}
}

func TestBackupsAreMadeKeptAndRestored(t *testing.T) {
	dir := shopRecord(t)
	file := filepath.Join(dir, "copy.db")
	if out, errOut, code := lazyhand(t, "", "backup", file); code != 0 || !strings.Contains(out, file) {
		t.Fatalf("code %d: %s", code, errOut)
	}
	want, _, _ := lazyhand(t, "", "export")
	if got, _, _ := lazyhand(t, "", "export", "--db", file); got != want {
		t.Errorf("the copy holds\n%s", got)
	}
	for _, bad := range []string{filepath.Join(dir, "data", "lazyhand", "lazyhand.db"), "../../x.db", filepath.Join(dir, "old.csv")} {
		if _, errOut, code := lazyhand(t, "", "backup", bad); code != 1 {
			t.Errorf("backup %s: code %d: %s", bad, code, errOut)
		}
	}
	// The folder keeps the newest and leaves other files alone.
	c, err := config.Load(config.Options{Flags: []string{"backup.keep=2", "backup.folder=" + filepath.Join(dir, "copies")}})
	if err != nil {
		t.Fatal(err)
	}
	db, err := store.OpenReader(t.Context(), file)
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	if err := os.MkdirAll(c.Backup.Folder, 0o700); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(c.Backup.Folder, "mine.db"), nil, 0o600); err != nil {
		t.Fatal(err)
	}
	at := time.Date(2026, 6, 15, 3, 45, 0, 0, time.UTC)
	for i := range 4 {
		if _, err := backUp(t.Context(), c, db, at.AddDate(0, 0, i), func(int, int) {}); err != nil {
			t.Fatal(err)
		}
	}
	var names []string
	entries, err := os.ReadDir(c.Backup.Folder)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		names = append(names, e.Name())
	}
	if !slices.Equal(names, []string{"lazyhand-20260617-034500.db", "lazyhand-20260618-034500.db", "mine.db"}) {
		t.Errorf("the folder holds %v", names)
	}
}

func TestTheServiceMakesTheBackupThatIsDue(t *testing.T) {
	dir := home(t)
	db, err := store.Open(t.Context(), filepath.Join(dir, "shop.db"))
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	log := &lockedBuffer{}
	c, err := config.Load(config.Options{Flags: []string{"shop.time_zone=America/Chicago", "jobs.backup=45 3 * * *"}})
	if err != nil {
		t.Fatal(err)
	}
	s := &service{program: &program{}, db: db, log: slog.New(slog.NewJSONHandler(log, nil)), level: &slog.LevelVar{}}
	if err := s.use(c); err != nil {
		t.Fatal(err)
	}
	copies := func() int {
		found, err := filepath.Glob(filepath.Join(dir, "backup", "lazyhand-*.db"))
		if err != nil {
			t.Fatal(err)
		}
		return len(found)
	}
	at := time.Date(2026, 6, 15, 20, 0, 0, 0, time.UTC)
	for _, step := range []struct {
		what string
		wait time.Duration
		want int
	}{
		{"at the first start", 0, 0},
		{"the same evening", time.Hour, 0},
		{"the next morning", 12 * time.Hour, 1},
		{"an hour later", time.Hour, 1},
		{"after three days down", 72 * time.Hour, 2},
	} {
		at = at.Add(step.wait)
		s.backupDue(t.Context(), at)
		if got := copies(); got != step.want {
			t.Errorf("%s: %d copies, want %d\n%s", step.what, got, step.want, log)
		}
	}
	// One that cannot be made is said, and tried again after a while only.
	if err := os.RemoveAll(filepath.Join(dir, "backup")); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(dir, "backup"), nil, 0o600); err != nil {
		t.Fatal(err)
	}
	at = at.Add(24 * time.Hour)
	s.backupDue(t.Context(), at)
	s.backupDue(t.Context(), at.Add(time.Minute))
	if n := strings.Count(log.String(), `"level":"ERROR"`); n != 1 {
		t.Errorf("%d complaints:\n%s", n, log)
	}
	if err := os.Remove(filepath.Join(dir, "backup")); err != nil {
		t.Fatal(err)
	}
	s.backupDue(t.Context(), at.Add(20*time.Minute))
	if got := copies(); got != 1 {
		t.Errorf("%d copies once the folder is right", got)
	}
}

func TestQuestionsAreAnsweredFromTheRecord(t *testing.T) {
	shopRecord(t)
	for _, tt := range []struct{ args, want string }{
		{"search elm", "123 Elm St"},
		{"search oak", "61"},
		{"list street Elm", "2025-03-02  123 Elm St: 96 psi at rear bibb"},
		{"list worst", "123 Elm St: 96 psi, 16 outside the band"},
		{"list due", ""},
		{"list open", ""},
		{"list unfinished", ""},
		{"list set-aside", ""},
	} {
		out, errOut, code := lazyhand(t, "", strings.Fields(tt.args)...)
		if code != 0 || !strings.Contains(out, tt.want) {
			t.Errorf("lazyhand %s: code %d: %s%s, want %q", tt.args, code, out, errOut, tt.want)
		}
	}
	for _, args := range []string{"list", "list everything", "list due now", "list street", "search", "history", "forget", "import", "backup a b"} {
		if _, errOut, code := lazyhand(t, "", strings.Fields(args)...); code != 1 || strings.Count(errOut, "\n") != 1 {
			t.Errorf("lazyhand %s: code %d: %s", args, code, errOut)
		}
	}
}

func TestAHouseIsForgottenOnRequestOnly(t *testing.T) {
	shopRecord(t)
	if out, errOut, code := lazyhand(t, "", "history", "123", "Elm", "St"); code != 0 || strings.Count(out, "\n") != 3 || !strings.Contains(out, "Rosa: ") {
		t.Errorf("history: code %d: %s%s", code, out, errOut)
	}
	if _, errOut, code := lazyhand(t, "", "forget", "123 Elm St"); code != 1 || !strings.Contains(errOut, "--yes") {
		t.Errorf("without a yes: code %d: %s", code, errOut)
	}
	out, errOut, code := lazyhand(t, "", "forget", "--yes", "123", "Elm", "St")
	if code != 0 || !strings.Contains(out, "Removed: 1 houses, 2 messages") {
		t.Fatalf("code %d: %s%s", code, out, errOut)
	}
	if out, _, _ := lazyhand(t, "", "export"); strings.Contains(out, "Elm") || !strings.Contains(out, "Oak") {
		t.Errorf("left on record:\n%s", out)
	}
	if _, errOut, code := lazyhand(t, "", "forget", "--yes", "123 Elm St"); code != 1 || !strings.Contains(errOut, "not on record") {
		t.Errorf("a second time: code %d: %s", code, errOut)
	}
}

func TestAPersonIsForgotten(t *testing.T) {
	shopRecord(t)
	if out, errOut, code := lazyhand(t, "", "forget", "--yes", "--person", "Rosa"); code != 0 {
		t.Fatalf("code %d: %s%s", code, out, errOut)
	}
	out, _, _ := lazyhand(t, "", "export")
	if strings.Contains(out, "Rosa") || strings.Contains(out, "U2") || !strings.Contains(out, "96") {
		t.Errorf("left on record:\n%s", out)
	}
}

func TestMisreadMessagesLeaveInTheShapeOfTheCorpus(t *testing.T) {
	home(t)
	if _, errOut, code := lazyhand(t, "92 rear tap, heater idle, 4711 Hidden Hollow Ln\nmake it 82\n"); code != 0 {
		t.Fatal(errOut)
	}
	out, errOut, code := lazyhand(t, "", "misread")
	var m struct {
		Text    string
		Context map[string]string
		Frame   json.RawMessage
		Was     json.RawMessage
	}
	if err := json.Unmarshal([]byte(out), &m); code != 0 || err != nil {
		t.Fatalf("code %d, %v: %s%s", code, err, out, errOut)
	}
	if !strings.HasPrefix(m.Text, "92 rear tap") || !strings.Contains(string(m.Frame), "82") || !strings.Contains(string(m.Was), "92") || len(m.Context["today"]) != 10 {
		t.Errorf("%s", out)
	}
	// What it prints can be read again.
	if _, errOut, code := lazyhand(t, out, "parse"); code != 0 {
		t.Error(errOut)
	}
}

func TestARebuildShowsFirstAndChangesThen(t *testing.T) {
	home(t)
	if _, errOut, code := lazyhand(t, report+"\n"); code != 0 {
		t.Fatal(errOut)
	}
	if out, errOut, code := lazyhand(t, "", "rebuild", "--dry-run"); code != 0 || !strings.Contains(out, "Nothing was changed.") {
		t.Errorf("code %d: %s%s", code, out, errOut)
	}
	if out, errOut, code := lazyhand(t, "", "rebuild"); code != 0 || !strings.Contains(out, "0 differences") || !strings.Contains(out, "Done.") {
		t.Errorf("code %d: %s%s", code, out, errOut)
	}
}

func TestWritingCommandsWaitForTheBotToStop(t *testing.T) {
	dir := shopRecord(t)
	db, err := store.Open(context.Background(), filepath.Join(dir, "data", "lazyhand", "lazyhand.db"))
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	for _, args := range [][]string{{"rebuild"}, {"import", filepath.Join(dir, "old.csv")}, {"forget", "--yes", "--person", "Rosa"}} {
		if _, errOut, code := lazyhand(t, "", args...); code != 1 || !strings.Contains(errOut, "stop it first") {
			t.Errorf("lazyhand %v: code %d: %s", args, code, errOut)
		}
	}
	for _, args := range [][]string{{"export"}, {"search", "elm"}, {"backup", filepath.Join(dir, "copy.db")}, {"misread"}} {
		if _, errOut, code := lazyhand(t, "", args...); code != 0 {
			t.Errorf("lazyhand %v: code %d: %s", args, code, errOut)
		}
	}
}

func TestWithoutARecordQuestionsSaySo(t *testing.T) {
	home(t)
	for _, args := range []string{"export", "search elm", "list due", "misread", "backup"} {
		if _, errOut, code := lazyhand(t, "", strings.Fields(args)...); code != 1 || !strings.Contains(errOut, "no record at") || strings.Count(errOut, "\n") != 1 {
			t.Errorf("lazyhand %s: code %d: %s", args, code, errOut)
		}
	}
}

func TestWhatSteersATerminalIsNotPrinted(t *testing.T) {
	if got := oneLine("a\x1b[31m\nb\u009bc\r" + strings.Repeat("x", 300)); strings.ContainsAny(got, "\x1b\n\r\u009b") || len(got) > 210 {
		t.Errorf("%q", got)
	}
}
