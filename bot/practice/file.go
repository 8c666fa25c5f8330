package practice

import (
	"bytes"
	"cmp"
	"fmt"
	"io"
	"mime"
	"net/http"
	"path"
	"strconv"
	"strings"
	"time"
)

// File is an uploaded file.
type File struct {
	ID, Name, Title, MIME, User, AltText string
	Bytes                                []byte
	// Voice marks an audio clip; Transcript is what was said, as far as it is
	// known, and Ready that it is complete.
	Voice      bool
	Transcript string
	Ready      bool

	created  int64
	length   int
	complete bool
	channels []string
}

func (f *File) wire(w *Workspace) map[string]any {
	ext := strings.TrimPrefix(path.Ext(f.Name), ".")
	out := map[string]any{"id": f.ID, "created": f.created, "timestamp": f.created, "name": f.Name, "title": f.Title,
		"mimetype": f.MIME, "filetype": ext, "pretty_type": strings.ToUpper(ext), "user": f.User, "size": len(f.Bytes),
		"mode": "hosted", "is_external": false, "is_public": true, "public_url_shared": false, "file_access": "visible",
		"url_private":          w.url + "/files/" + f.ID + "/" + f.Name,
		"url_private_download": w.url + "/files/" + f.ID + "/" + f.Name,
		"permalink":            w.url + "/files/" + f.ID + "/" + f.Name, "channels": f.channels}
	if f.AltText != "" {
		out["alt_txt"] = f.AltText
	}
	if f.Voice {
		status := map[string]any{"status": "processing"}
		if f.Ready {
			preview, more := f.Transcript, false
			if r := []rune(preview); len(r) > 60 {
				preview, more = string(r[:60]), true
			}
			status = map[string]any{"status": "complete", "locale": "en-US", "preview": map[string]any{"content": preview, "has_more": more}}
			out["vtt"] = w.url + "/files/" + f.ID + "/transcript.vtt"
		}
		out["subtype"], out["transcription"], out["duration_ms"] = "slack_audio", status, 4000
		out["is_transcription_region_supported"] = true
	}
	return out
}

// Share posts a file with a text, as a person.
func (w *Workspace) Share(user, channel, threadTS, text string, f File) (ts, fileID string, err error) {
	w.mu.Lock()
	defer w.mu.Unlock()
	u, c := w.user(user), w.channel(channel)
	if u == nil || c == nil {
		return "", "", notThere("person or channel", user+" "+channel)
	}
	f.ID, f.User, f.created, f.complete, f.channels = w.newID("F"), u.ID, w.now().Unix(), true, []string{c.ID}
	if f.Name == "" {
		f.Name = "file"
	}
	if f.MIME == "" {
		f.MIME = mime.TypeByExtension(path.Ext(f.Name))
	}
	if f.Title == "" {
		f.Title = f.Name
	}
	w.files[f.ID] = &f
	ts, err = w.post(Post{User: user, Channel: channel, ThreadTS: threadTS, Text: w.typed(text), Files: []*File{&f}})
	return ts, f.ID, err
}

// FinishTranscript completes the transcript of a voice clip and raises
// file_change.
func (w *Workspace) FinishTranscript(fileID, text string) error {
	w.mu.Lock()
	defer w.mu.Unlock()
	f := w.files[fileID]
	if f == nil {
		return notThere("file", fileID)
	}
	f.Transcript, f.Ready = text, true
	for _, id := range f.channels {
		if c := w.channel(id); c != nil {
			w.emitIn(c, "file_change", map[string]any{"type": "file_change", "file_id": f.ID, "file": map[string]any{"id": f.ID}, "event_ts": w.ts()})
		}
	}
	w.changed()
	return nil
}

func (c *call) uploadURL() (result, error) {
	n, err := strconv.Atoi(c.str("length"))
	name := path.Base(strings.ReplaceAll(c.str("filename"), "\\", "/"))
	if err != nil || n <= 0 || c.str("filename") == "" {
		return nil, refuse("invalid_arguments", "[ERROR] filename and length are needed")
	}
	f := &File{ID: c.w.newID("F"), Name: name, Title: name, User: c.who.id(), AltText: cmp.Or(c.str("alt_text"), c.str("alt_txt")), // slack-go says alt_txt
		MIME: mime.TypeByExtension(path.Ext(name)), created: c.w.now().Unix(), length: n}
	c.w.files[f.ID] = f
	return result{"upload_url": c.w.url + "/upload/" + f.ID + "/" + c.w.random(12), "file_id": f.ID}, nil
}

// serveUpload takes the bytes, raw or as the first part of a form.
func (w *Workspace) serveUpload(rw http.ResponseWriter, r *http.Request) {
	w.mu.Lock()
	f := w.files[r.PathValue("id")]
	open := f != nil && !f.complete
	w.mu.Unlock()
	if !open {
		http.Error(rw, "no upload was announced here", http.StatusNotFound)
		return
	}
	var body io.Reader = http.MaxBytesReader(rw, r.Body, 20<<20)
	if strings.HasPrefix(r.Header.Get("Content-Type"), "multipart/form-data") {
		r.Body = io.NopCloser(body)
		// Clients differ in what they call the part.
		parts, err := r.MultipartReader()
		if err == nil {
			body, err = parts.NextPart()
		}
		if err != nil {
			http.Error(rw, "the form has no file", http.StatusBadRequest)
			return
		}
	}
	b, err := io.ReadAll(body)
	w.mu.Lock()
	defer w.mu.Unlock()
	if err != nil || len(b) != f.length {
		http.Error(rw, fmt.Sprintf("%d bytes were announced, %d came", f.length, len(b)), http.StatusBadRequest)
		return
	}
	f.Bytes = b
	fmt.Fprintf(rw, "OK - %d", len(b))
}

func (c *call) completeUpload() (result, error) {
	v, err := c.value("files", "invalid_arguments")
	if err != nil {
		return nil, err
	}
	list, _ := v.([]any)
	if len(list) == 0 {
		return nil, refuse("invalid_arguments", "[ERROR] missing required field: files")
	}
	var files []*File
	var wires []any
	for _, x := range list {
		one, _ := x.(map[string]any)
		f := c.w.files[text(one, "id")]
		if f == nil || f.Bytes == nil || f.User != c.who.id() {
			return nil, refuse("file_not_found")
		}
		if t := text(one, "title"); t != "" {
			f.Title = t
		}
		files = append(files, f)
	}
	if c.str("channel_id") != "" {
		ch, err := c.member("channel_id")
		if err != nil {
			return nil, err
		}
		m := &message{User: c.who.id(), app: c.who.app, Text: c.str("initial_comment"), Files: files, Subtype: "file_share"}
		if t := c.str("thread_ts"); t != "" {
			if ch.find(t) == nil {
				return nil, refuse("thread_not_found")
			}
			m.ThreadTS = t
		}
		if m.Text != "" {
			m.Blocks = c.w.named(richText(m.Text))
		}
		for _, f := range files {
			f.channels = append(f.channels, ch.ID)
		}
		c.w.add(ch, m)
	}
	for _, f := range files {
		f.complete = true
		wires = append(wires, f.wire(c.w))
	}
	return result{"files": wires}, nil
}

func (c *call) fileInfo() (result, error) {
	f := c.w.files[c.str("file")]
	if f == nil {
		return nil, refuse("file_not_found")
	}
	return result{"file": f.wire(c.w), "comments": []any{}, "response_metadata": map[string]any{"next_cursor": ""}}, nil
}

// serveFile gives a file's bytes to holders of a token with files:read and to
// the page, and a voice clip's transcript as WebVTT.
func (w *Workspace) serveFile(rw http.ResponseWriter, r *http.Request) {
	token, _ := strings.CutPrefix(r.Header.Get("Authorization"), "Bearer ")
	w.mu.Lock()
	who := w.tokens[token]
	f := w.files[r.PathValue("id")]
	allowed := (who != nil && who.has("files:read")) || r.FormValue("key") == w.pageKey
	var data []byte
	kind := "application/octet-stream"
	if f != nil {
		data = f.Bytes
		if strings.HasPrefix(f.MIME, "image/") && f.MIME != "image/svg+xml" {
			kind = f.MIME // nothing that could run is given its own type
		}
		if r.PathValue("name") == "transcript.vtt" {
			data, kind = []byte("WEBVTT\n\n00:00:00.000 --> 00:00:04.000\n"+f.Transcript+"\n"), "text/vtt; charset=utf-8"
		}
	}
	w.mu.Unlock()
	switch {
	case !allowed:
		http.Error(rw, "a token with files:read is needed", http.StatusForbidden)
	case f == nil:
		http.NotFound(rw, r)
	default:
		rw.Header().Set("Content-Type", kind)
		rw.Header().Set("X-Content-Type-Options", "nosniff")
		http.ServeContent(rw, r, "", time.Time{}, bytes.NewReader(data))
	}
}
