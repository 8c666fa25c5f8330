package practice_test

import (
	"bytes"
	"context"
	"strings"
	"testing"

	"github.com/slack-go/slack"
	"github.com/slack-go/slack/slackevents"

	"lazyhand/bot/practice"
)

func TestUploadInThreeSteps(t *testing.T) {
	s := open(t, practice.Options{})
	report := must[string](t)(s.Say("rosa", "field", "", "plot 12 Alder St"))
	png := []byte("\x89PNG\r\n\x1a\n not really")
	sum := must[*slack.FileSummary](t)(s.api.UploadFileContext(context.Background(), slack.UploadFileParameters{
		Reader: bytes.NewReader(png), FileSize: len(png), Filename: "plot.png", Title: "Pressure", Channel: s.Channel("field"),
		ThreadTimestamp: report, InitialComment: "The plot", AltTxt: "Pressure rises from 60 to 84 psi",
	}))
	thread := s.Thread("field", report)
	if len(thread) != 2 || len(thread[1].Files) != 1 || thread[1].Text != "The plot" {
		t.Fatalf("thread %+v", thread)
	}
	f := thread[1].Files[0]
	if f.ID != sum.ID || !bytes.Equal(f.Bytes, png) || f.AltText != "Pressure rises from 60 to 84 psi" || f.Title != "Pressure" {
		t.Errorf("file %+v", f)
	}
	info, _, _, err := s.api.GetFileInfo(f.ID, 0, 0)
	check(t, err)
	var back bytes.Buffer
	check(t, s.api.GetFile(info.URLPrivateDownload, &back))
	if !bytes.Equal(back.Bytes(), png) {
		t.Errorf("downloaded %q", back.Bytes())
	}
	_, err = s.api.GetUploadURLExternalContext(context.Background(), slack.GetUploadURLExternalParameters{FileName: "x.png", FileSize: 0})
	if err == nil {
		t.Error("an empty file was announced")
	}
}

func TestVoiceClipIsReadLater(t *testing.T) {
	s := open(t, practice.Options{})
	e := s.listen(t, nil)
	_, id, err := s.Share("rosa", "field", "", "", practice.File{Name: "clip.m4a", MIME: "audio/mp4", Voice: true})
	check(t, err)
	wait(t, "the clip", func() bool { return len(inner[*slackevents.MessageEvent](e)) == 1 })
	m := inner[*slackevents.MessageEvent](e)[0]
	if m.SubType != "file_share" || m.Text != "" || len(m.Message.Files) != 1 || m.Message.Files[0].Transcription.Status != "processing" {
		t.Fatalf("clip %s", asJSON(t, m))
	}
	said := "ninety two at the rear bibb heater idle one twenty three Elm street and I will come back on Monday"
	check(t, s.FinishTranscript(id, said))
	wait(t, "file_change", func() bool { return len(inner[*slackevents.FileChangeEvent](e)) == 1 })
	f, _, _, err := s.api.GetFileInfo(id, 0, 0)
	check(t, err)
	if f.Transcription.Status != "complete" || f.Transcription.Preview.HasMore == nil || !*f.Transcription.Preview.HasMore || !strings.HasPrefix(said, f.Transcription.Preview.Content) {
		t.Errorf("transcript %+v", f.Transcription)
	}
	var vtt bytes.Buffer
	check(t, s.api.GetFile(f.VTT, &vtt))
	if !strings.HasPrefix(vtt.String(), "WEBVTT") || !strings.Contains(vtt.String(), said) {
		t.Errorf("vtt %q", vtt.String())
	}
}
