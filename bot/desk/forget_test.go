package desk_test

import (
	"context"
	"strings"
	"testing"

	"lazyhand/assess"
	"lazyhand/bot/desk"
	"lazyhand/store"
)

// A house that is forgotten is gone from messages that spell its number out too.
func TestAForgottenHouseIsFoundInWords(t *testing.T) {
	s := newShop(t, quickDir(t), desk.Options{})
	s.says("ana", "66 laundry, heater idle, 123 Elm St")
	s.says("ben", "running late to one twenty three elm street")
	s.says("ben", "running late to one twenty five elm street")
	s.says("ben", "then lunch")
	if _, err := s.db.ForgetHouse(context.Background(), assess.Site{Line: "123 Elm St"}, s.now, s.desk.Names); err != nil {
		t.Fatal(err)
	}
	for id := int64(1); id <= 4; id++ {
		m, found, err := s.message(id)
		if err != nil {
			t.Fatal(err)
		}
		if named := found && strings.Contains(m, "twenty three"); named || found && id == 2 && m != "" {
			t.Errorf("message %d still says %q", id, m)
		}
		if id > 2 && m == "" {
			t.Errorf("message %d is gone", id)
		}
	}
}

// message returns the words of a message.
func (s *shop) message(id int64) (text string, found bool, err error) {
	err = s.db.Read(context.Background(), func(tx *store.Tx) error {
		m, there, err := tx.Message(id)
		text, found = m.Text, there
		return err
	})
	return text, found, err
}
