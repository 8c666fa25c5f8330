package slackchat_test

import (
	"strings"
	"testing"
	"time"

	"lazyhand/bot/desk"
	"lazyhand/bot/practice"
	"lazyhand/bot/slackchat"
)

func TestTheWordsOfAnAudioClipComeLater(t *testing.T) {
	s := open(t, practice.Options{})
	clip := practice.File{Name: "audio_message.m4a", MIME: "audio/mp4", Voice: true, Bytes: []byte("x")}
	ts, id, err := s.Share("rosa", "field", "", "", clip)
	must(t, err)
	s.until("the clip is kept at once", func() bool { return len(s.messages()) == 1 })
	if m := s.messages()[0]; !m.Voice || m.Text != "" {
		t.Errorf("got %+v", m)
	}
	long := "ninety two at the rear bib heater idle one twenty three Elm and the laundry reads sixty one as well"
	must(t, s.FinishTranscript(id, long))
	s.until("the words are there", func() bool { return len(s.messages()) == 2 })
	m := s.messages()[1]
	if m.Kind != desk.Edited || m.About != field+"/"+ts || m.Text != long || !m.Voice {
		t.Errorf("got %+v", m)
	}
	s.settled()
}

func TestAClipWithoutWordsGetsAHint(t *testing.T) {
	s := open(t, practice.Options{})
	_, _, err := s.Share("rosa", "field", "", "", practice.File{Name: "a.m4a", MIME: "audio/mp4", Voice: true, Bytes: []byte("x")})
	must(t, err)
	s.until("its author is told", func() bool { return s.whispered("rosa", "cannot make out the words") == 1 })
}

func TestAFileWithoutWordsGetsAHintOnce(t *testing.T) {
	s := open(t, practice.Options{})
	photo := practice.File{Name: "gauge.png", MIME: "image/png", Bytes: []byte("x")}
	_, _, err := s.Share("rosa", "field", "", "", photo)
	must(t, err)
	s.until("its author is told", func() bool { return s.whispered("rosa", "such as: 92 rear bibb") == 1 })
	ts, _, err := s.Share("rosa", "field", "", "92 rear, 123 Elm", photo)
	must(t, err)
	s.until("a photo with words is kept with its link", func() bool { return len(s.messages()) == 2 })
	if m := s.messages()[1]; len(m.Links) != 1 || m.Key != field+"/"+ts {
		t.Errorf("got %+v", m)
	}
	s.settled()
	if n := s.whispered("rosa", ""); n != 1 {
		t.Errorf("%d hints", n)
	}
}

func TestFilesInOtherChannelsAreLeftAlone(t *testing.T) {
	s := open(t, practice.Options{})
	for _, f := range []practice.File{{Name: "lunch.png", MIME: "image/png", Bytes: []byte("x")}, {Name: "a.m4a", MIME: "audio/mp4", Voice: true, Bytes: []byte("x")}} {
		_, _, err := s.Share("dee", "dispatch", "", "", f)
		must(t, err)
	}
	s.settled()
	time.Sleep(200 * time.Millisecond) // longer than clips are waited for
	if n := s.calls("files.info") + s.calls("chat.postEphemeral"); n != 0 {
		t.Errorf("%d calls about files in a channel that is not read", n)
	}
}

// whispered counts what only one person sees.
func (s *shop) whispered(user, text string) (n int) {
	id := s.userID(user)
	for _, m := range s.Messages("field") {
		if m.Ephemeral == id && strings.Contains(m.Text, text) {
			n++
		}
	}
	return n
}

func (s *shop) userID(name string) string {
	for _, u := range s.Users() {
		if u.Name == name {
			return u.ID
		}
	}
	return ""
}

func TestGuestsAndStrangersAreReadOnlyAsConfigured(t *testing.T) {
	crew := append(practice.DefaultCrew(), practice.User{Name: "gus", Guest: true}, practice.User{Name: "stu", Stranger: true})
	all := practice.DefaultChannels()
	all[0].Members = []string{"rosa", "gus", "stu"}
	for _, read := range []bool{false, true} {
		s := open(t, practice.Options{Users: crew, Channels: all}, func(o *slackchat.Options) { o.Guests, o.Shared = read, read })
		for _, who := range []string{"gus", "stu", "rosa"} {
			s.say(who, "field", "", "92 rear, 123 Elm")
		}
		s.settled()
		want := 1
		if read {
			want = 3
		}
		if got := s.messages(); len(got) != want {
			t.Errorf("read %v: got %+v", read, got)
		}
	}
}

// A gap is read back: what was said while the bot was away, in channels, in
// threads and in direct messages, edits included.
func TestAGapIsReadBack(t *testing.T) {
	s := open(t, practice.Options{RetryAfter: []time.Duration{}})
	first := s.say("rosa", "field", "", "92 rear, 123 Elm")
	dm := s.DM("beto", s.app.ID)
	s.say("beto", dm, "", "61 laundry, 9 Oak")
	s.until("both are kept", func() bool { return len(s.messages()) == 2 })
	must(t, s.stop())
	s.mu.Lock()
	for _, m := range s.taken {
		s.heard = append(s.heard, desk.Heard{Channel: m.Channel, Thread: m.Thread, TS: m.TS, At: m.At})
	}
	s.mu.Unlock()

	must(t, s.Advance(26*time.Hour))
	s.say("beto", "field", "", "70 front, 8 Ash")
	s.say("rosa", "field", first, "make it 90")
	late := s.say("rosa", "field", "", "88 rear, 5 Fir")
	s.say("rosa", "field", late, "and 60 at the laundry")
	must(t, s.Edit("rosa", "field", late, "86 rear, 5 Fir"))
	s.say("beto", dm, "", "62 laundry, 9 Oak")
	s.say("dee", "dispatch", "", "lunch?")
	time.Sleep(400 * time.Millisecond) // nobody acknowledges: they are lost
	_, err := s.bot.Post(t.Context(), desk.Post{Key: "reply:1", Kind: desk.Say, Channel: field, Thread: first, Body: desk.Body{Lead: "kept"}})
	must(t, err)
	must(t, s.Delete("rosa", "field", first))
	must(t, s.Advance(3*time.Hour))

	s.join()
	s.until("all that was said is there", func() bool { return len(s.messages()) >= 9 })
	var texts []string
	for _, m := range s.messages()[2:] {
		texts = append(texts, string(m.Kind)+" "+m.Text)
	}
	all := strings.Join(texts, "\n")
	for _, want := range []string{"said 70 front, 8 Ash", "said make it 90", "said 86 rear, 5 Fir", "edited 86 rear, 5 Fir", "said and 60 at the laundry", "said 62 laundry, 9 Oak", "deleted "} {
		if !strings.Contains(all, want) {
			t.Errorf("%q is missing in\n%s", want, all)
		}
	}
	if strings.Index(all, "70 front") > strings.Index(all, "86 rear") {
		t.Errorf("not in the order of time:\n%s", all)
	}
}

func TestReadingBackWaitsAsToldWhenItIsTooFast(t *testing.T) {
	s := open(t, practice.Options{RetryAfter: []time.Duration{}})
	s.say("rosa", "field", "", "92 rear, 123 Elm")
	s.until("it is kept", func() bool { return len(s.messages()) == 1 })
	m := s.messages()[0]
	must(t, s.stop())
	s.heard = []desk.Heard{{Channel: m.Channel, Thread: m.Thread, TS: m.TS, At: m.At}}
	s.say("beto", "field", "", "70 front, 8 Ash")
	time.Sleep(400 * time.Millisecond)
	s.SetFaults(practice.Faults{Method: "conversations.history", RateLimit: 1, RetryAfter: time.Second})
	s.join()
	s.until("it is there after all", func() bool { return len(s.messages()) == 2 })
}
