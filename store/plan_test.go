package store

import (
	"database/sql/driver"
	"fmt"
	"strings"
	"testing"
	"time"

	"lazyhand/assess"
)

// planner hands statements on and keeps SQLite's plan of each.
type planner struct {
	link
	plans map[string][]string
}

func (p *planner) explain(query string, args []any) error {
	if !strings.HasPrefix(query, "SELECT") && !strings.HasPrefix(query, "UPDATE") && !strings.HasPrefix(query, "DELETE") {
		return nil
	}
	p.plans[query] = nil
	err := p.link.rows("EXPLAIN QUERY PLAN "+query, args, func(row []driver.Value) error {
		p.plans[query] = append(p.plans[query], row[3].(string))
		return nil
	})
	if err != nil {
		return fmt.Errorf("%w in %s", err, query)
	}
	return nil
}

func (p *planner) run(query string, args []any) (int64, int64, error) {
	if err := p.explain(query, args); err != nil {
		return 0, 0, err
	}
	return p.link.run(query, args)
}

func (p *planner) rows(query string, args []any, do func([]driver.Value) error) error {
	if err := p.explain(query, args); err != nil {
		return err
	}
	return p.link.rows(query, args, do)
}

// planned runs do in a transaction that keeps the plans of what it asks, and
// keeps nothing else.
func planned(t *testing.T, db *DB, do func(*Tx, *planner)) {
	t.Helper()
	err := on(t.Context(), db.write, func(w *wire) error {
		if err := w.begin("BEGIN IMMEDIATE"); err != nil {
			return err
		}
		p := &planner{link: w, plans: map[string][]string{}}
		do(&Tx{q: p}, p)
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
}

// byIndex tells whether a line of a plan goes by an index. To walk a partial
// index from its end is to go by it: it holds the answer and nothing else.
func byIndex(line string) bool {
	if !strings.HasPrefix(line, "SCAN ") {
		return true
	}
	for _, partial := range []string{"site_worst", "alert_state", "alert_open", "report_unfinished", "question_open", "site_look", "message_stuck", "outbox_done_dead"} {
		if strings.Contains(line, "INDEX "+partial) {
			return true
		}
	}
	if line == "SCAN outbox" || line == "SCAN owners" {
		return true // what waits, nearly always a handful; the members of the crew
	}
	return strings.Contains(line, "VIRTUAL TABLE INDEX") && !strings.Contains(line, "VIRTUAL TABLE INDEX 0:") ||
		strings.HasPrefix(line, "SCAN CONSTANT ROW") || strings.HasPrefix(line, "SCAN (subquery")
}

// TestEveryQuestionGoesByAnIndex asks all that the bot asks while it works, and
// reads SQLite's plan of every query.
func TestEveryQuestionGoesByAnIndex(t *testing.T) {
	planned(t, fresh(t), func(tx *Tx, p *planner) { askEverything(t, tx, p) })
}

func askEverything(t *testing.T, tx *Tx, p *planner) {
	house := assess.Site{Line: "123 Elm St"}
	now := at("2026-06-15 10:00")
	day := assess.DateOf(now)
	questions := map[string]func() error{
		"a message taken": func() error {
			id, _, err := tx.AddMessage(Message{Key: "field/1", Kind: Said, Channel: "field", TS: "1", Thread: "1", Author: "ana", At: now, Text: "92 rear tap, 123 Elm St"})
			if err != nil {
				return err
			}
			for _, do := range []func() error{
				func() error { _, _, err := tx.MessageByKey("field/1"); return err },
				func() error { _, _, err := tx.Message(id); return err },
				func() error { _, err := tx.WordingBefore(Message{ID: id, About: 1}); return err },
				func() error { _, err := tx.Person("ana"); return err },
				func() error { _, err := tx.ThreadSite("field", "1"); return err },
				func() error { _, _, err := tx.PostByRef("field", "1"); return err },
				func() error { _, _, err := tx.PostByKey("reply:1"); return err },
				func() error { _, _, err := tx.PostByKey("alert:1:1"); return err },
				func() error { _, _, err := tx.NewestAnswer("react:1:"); return err },
				func() error { _, _, err := tx.OpenQuestion("field", "1", "ana", now); return err },
				func() error { return tx.Understood(id, []byte(`{"statements":[]}`)) },
				func() error { _, _, err := tx.LastReportBy("ana", 1<<62); return err },
				func() error { _, _, err := tx.SaidBefore(Message{ID: id, Author: "ana", Channel: "field"}); return err },
				func() error { _, err := tx.SitesLike(house); return err },
				func() error { _, err := tx.UnitsOf(house); return err },
				func() error { _, err := tx.AddSite(house, id); return err },
				func() error { _, err := tx.Site(1); return err },
				func() error { return tx.FillSite(1, house) },
				func() error { return tx.FileUnder(id, 1) },
				func() error { return tx.KeepPerson(Person{ID: "ana", Site: 1, SiteAt: now}) },
				func() error {
					return tx.AddReport(Report{Message: id, Site: 1, Day: day, At: now, Author: "ana"}, Verdict{}, []assess.Reading{{PSI: 92}}, nil)
				},
				func() error { _, err := tx.Reports(1); return err },
				func() error {
					return tx.Judge(Report{Message: id, Site: 1, Day: day, At: now}, Verdict{}, []assess.Reading{{PSI: 66}}, nil)
				},
				func() error { return tx.Stand(1, Standing{}) },
				func() error { return tx.KeepEquipment(1, []Installed{{Item: assess.PRV}}) },
				func() error {
					return tx.KeepFollowUp(FollowUp{Site: 1, Action: assess.Recheck, Due: day, Source: id})
				},
				func() error { _, err := tx.OpenFollowUps(1); return err },
				func() error { _, _, err := tx.FollowUp(1); return err },
				func() error { return tx.EndFollowUp(1, "done", now, id) },
				func() error { return tx.TakeBackFollowUps(id, now) },
				func() error { _, err := tx.KeepSettled(1, assess.Recheck, 1, id, day); return err },
				func() error { return tx.DropQuestionsAbout(id) },
				func() error { _, err := tx.AnsweredAbout(id, NoHouse); return err },
				func() error {
					_, _, err := tx.TakenBackBy(Message{ID: id, Author: "ana", Channel: "field", Thread: "1"})
					return err
				},
				func() error { _, err := tx.ReportsBy("ana", 1<<62, 8); return err },
				func() error { _, _, err := tx.LastReportIn("field", "1", "", 1<<62); return err },
				func() error { _, _, err := tx.OpenAlert(1); return err },
				func() error {
					_, err := tx.RaiseAlert(Alert{Site: 1, Source: id, RaisedAt: now, Urgency: assess.Now}, "ana")
					return err
				},
				func() error {
					return tx.ChangeAlert(Alert{ID: 1, State: "claimed", Source: id}, now, "ana", "claimed", 0)
				},
				func() error { return tx.Correct(id, id, []byte(`{}`)) },
				func() error { _, err := tx.DropReport(id); return err },
				func() error { return tx.Revise(id, Retracted, id) },
			} {
				if err := do(); err != nil {
					return err
				}
			}
			return nil
		},
		"a site's story":  func() error { _, err := tx.Story(1); return err },
		"its equipment":   func() error { _, err := tx.Equipment(1); return err },
		"its corrections": func() error { _, err := tx.CorrectionsOf(1); return err },
		"its last report": func() error { _, _, err := tx.LastReport(1); return err },
		"what is joined":  func() error { _, _, err := tx.Joined(1); return err },
		"near-duplicates": func() error { _, err := tx.NearDuplicates(house); return err },
		"a house by its street or number": func() error {
			_, err := tx.SitesNamed([]string{"elm", "oak"}, []string{"1187"}, 20)
			return err
		},
		"houses a slip away": func() error {
			_, _, err := tx.SitesAround(house, 20, func(string) bool { return true })
			return err
		},
		"what was answered last": func() error {
			if _, _, err := tx.QuestionAbout(1, "same"); err != nil {
				return err
			}
			_, _, err := tx.LastAnswered("field", "1", "ana", "same")
			return err
		},
		"what was put right":  func() error { _, err := tx.Revisions(1, 8); return err },
		"what is due":         func() error { _, err := tx.DueFollowUps(day, 20); return err },
		"open alerts":         func() error { _, err := tx.OpenAlerts(); return err },
		"open questions":      func() error { _, err := tx.OpenQuestions(now, 20); return err },
		"worst sites":         func() error { _, err := tx.WorstSites(20); return err },
		"unfinished visits":   func() error { _, err := tx.UnfinishedVisits(day, 20); return err },
		"a street's readings": func() error { _, err := tx.ReadingsOfStreet("elm", day, 100); return err },
		"the street's level":  func() error { _, err := tx.StreetReadings("elm", day, 1, 50); return err },
		"search":              func() error { _, err := tx.Search("rear ta* elm", 20); return err },
		"lives of regulators": func() error { _, err := tx.Lives(assess.PRV, day); return err },
		"what was put in":     func() error { _, _, err := tx.PutIn(assess.PRV, day.AddDays(-30), day, 20); return err },
		"what was misread":    func() error { _, err := tx.Misread(0, 20); return err },
		"a week's tally":      func() error { _, err := tx.Tally(day.AddDays(-7), day); return err },
		"a week's reports":    func() error { _, err := tx.ReportsBetween(day.AddDays(-7), day, 20); return err },
		"who reported":        func() error { _, err := tx.Authors(day.AddDays(-7), day); return err },
		"what was done":       func() error { _, err := tx.EndedFollowUps("done", now.AddDate(0, 0, -7), now); return err },
		"where the main was read": func() error {
			_, err := tx.StreetsRead(day.AddDays(-7), day, 20)
			return err
		},
		"posts to send": func() error {
			if _, err := tx.ReadyPosts(now); err != nil {
				return err
			}
			_, err := tx.DoubtfulPosts(now.Add(-time.Minute), now)
			return err
		},
		"messages to try again": func() error { _, err := tx.Stuck(Waiting, 20); return err },
		"houses to look at": func() error {
			if _, err := tx.HousesToLook(day, 20); err != nil {
				return err
			}
			_, _, err := tx.HousesAfter(0, 20)
			return err
		},
		"by the clock": func() error { _, err := tx.ByClock(1, assess.Recheck, ""); return err },
	}
	order := append([]string{"a message taken"}, keysOf(questions)...)
	for _, name := range order {
		clear(p.plans)
		if err := questions[name](); err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		for query, plan := range p.plans {
			for _, line := range plan {
				if !byIndex(line) {
					t.Errorf("%s walks a whole table: %s\n%s\n%s", name, line, query, strings.Join(plan, "\n"))
				}
			}
		}
	}
}

func keysOf[V any](m map[string]V) (out []string) {
	for k := range m {
		if k != "a message taken" {
			out = append(out, k)
		}
	}
	return out
}

// TestThePlanCheckCatches keeps the check itself honest.
func TestThePlanCheckCatches(t *testing.T) {
	planned(t, fresh(t), func(tx *Tx, p *planner) {
		if _, err := all(tx, scanID, `SELECT id FROM message WHERE text = ?`, "x"); err != nil {
			t.Fatal(err)
		}
		for _, plan := range p.plans {
			for _, line := range plan {
				if byIndex(line) {
					t.Errorf("%q passes for going by an index", line)
				}
			}
		}
	})
}
