package preview

import (
	"bufio"
	"context"
	"encoding/json"
	"fmt"
	"io"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"
	"time"

	"coursebook/generator/internal/fault"
)

// patience is the limit of every wait. No test depends on a delay.
const patience = 20 * time.Second

func quietly(string, ...any) {}

// site is a build whose result a test changes between rebuilds.
type site struct {
	files  map[string][]byte
	faults []fault.Fault
}

func (s *site) build() (map[string][]byte, []fault.Fault) { return s.files, s.faults }

func whole(text string) map[string][]byte {
	return map[string][]byte{
		"index.html": []byte("<h1>" + text + "</h1>"), "404.html": []byte("missing"),
		"en/index.html": []byte("english"), "en/corner.html": []byte("corner"),
		"assets/a.css": []byte("p{}"), "assets/b.wasmz": {0x1f, 0x8b}, "sw.js": []byte("1"),
		"assets/w.tsv": []byte("k\tv"), "app.webmanifest": []byte("{}"), "assets/p.svg": []byte("<svg/>"),
	}
}

var broken = []fault.Fault{{File: "en/corner.md", Line: 3, Col: 1, Text: "unknown key \"titel\"", Hint: "write title"}}

func get(t *testing.T, h http.Handler, method, path string) *http.Response {
	t.Helper()
	w := httptest.NewRecorder()
	h.ServeHTTP(w, httptest.NewRequest(method, path, nil))
	return w.Result()
}

func body(t *testing.T, r *http.Response) string {
	t.Helper()
	data, err := io.ReadAll(r.Body)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

func TestServes(t *testing.T) {
	s := New((&site{files: whole("home")}).build, quietly)
	s.Rebuild()
	for path, want := range map[string]struct {
		status     int
		kind, body string
	}{
		"/":                        {200, "text/html; charset=utf-8", "<h1>home</h1>"},
		"http://127.0.0.1":         {200, "text/html; charset=utf-8", "<h1>home</h1>"}, // a request without a path
		"/index.html":              {200, "text/html; charset=utf-8", "<h1>home</h1>"},
		"/en/":                     {200, "text/html; charset=utf-8", "english"},
		"/en/corner.html?x=1":      {200, "text/html; charset=utf-8", "corner"},
		"/assets/a.css":            {200, "text/css; charset=utf-8", "p{}"},
		"/assets/b.wasmz":          {200, "application/octet-stream", "\x1f\x8b"},
		"/assets/w.tsv":            {200, "text/plain; charset=utf-8", "k\tv"},
		"/assets/p.svg":            {200, "image/svg+xml", "<svg/>"},
		"/sw.js":                   {200, "text/javascript; charset=utf-8", "1"},
		"/app.webmanifest":         {200, "application/manifest+json", "{}"},
		"/en/none.html":            {404, "text/html; charset=utf-8", "missing"},
		"/en/../../../etc/passwd":  {404, "text/html; charset=utf-8", "missing"},
		"/%2e%2e/%2e%2e/etc/hosts": {404, "text/html; charset=utf-8", "missing"},
	} {
		r := get(t, s, "GET", path)
		if got := body(t, r); r.StatusCode != want.status || got != want.body ||
			r.Header.Get("Content-Type") != want.kind {
			t.Errorf("%s: %d %s %q", path, r.StatusCode, r.Header.Get("Content-Type"), got)
		}
		if r.Header.Get("Cache-Control") != "no-cache" || r.Header.Get("Content-Encoding") != "" {
			t.Errorf("%s: headers %v", path, r.Header)
		}
		head := get(t, s, "HEAD", path)
		if got := body(t, head); head.StatusCode != want.status || got != "" {
			t.Errorf("HEAD %s: %d %q", path, head.StatusCode, got)
		}
	}
}

// Before the first good build a page shows the faults and reloads by itself. After
// it, the last good build is served while there are faults.
func TestLastGoodBuildStays(t *testing.T) {
	var log strings.Builder
	b := &site{faults: broken}
	s := New(b.build, func(format string, args ...any) { fmt.Fprintf(&log, format+"\n", args...) })
	s.Rebuild()
	r := get(t, s, "GET", "/en/corner.html")
	if got := body(t, r); r.StatusCode != 503 || !strings.Contains(got, "en/corner.md:3:1: error: unknown key") ||
		!strings.Contains(got, "hint: write title") ||
		r.Header.Get("Refresh") == "" ||
		!strings.HasPrefix(r.Header.Get("Content-Type"), "text/plain") {
		t.Errorf("%d %v %s", r.StatusCode, r.Header, got)
	}
	if got := log.String(); !strings.Contains(got, "en/corner.md:3:1") || !strings.Contains(got, "1 error") {
		t.Errorf("log: %s", got)
	}
	for _, step := range []struct {
		files  map[string][]byte
		faults []fault.Fault
		want   string
	}{
		{whole("one"), nil, "<h1>one</h1>"},
		{nil, broken, "<h1>one</h1>"},
		{nil, broken, "<h1>one</h1>"},
		{whole("two"), []fault.Fault{{Severity: fault.Warning, Text: "long sentence"}}, "<h1>two</h1>"},
	} {
		b.files, b.faults = step.files, step.faults
		s.Rebuild()
		if got := body(t, get(t, s, "GET", "/")); got != step.want {
			t.Errorf("got %s, want %s", got, step.want)
		}
	}
}

// listener reads the event stream of an open page, in the format of WHATWG HTML,
// section 9.2.6.
type listener struct {
	t     *testing.T
	lines *bufio.Reader
}

func listen(t *testing.T, url string) *listener {
	t.Helper()
	ctx, cancel := context.WithTimeout(context.Background(), patience)
	t.Cleanup(cancel)
	request, err := http.NewRequestWithContext(ctx, "GET", url+"/preview-events", nil)
	if err != nil {
		t.Fatal(err)
	}
	r, err := http.DefaultClient.Do(request)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { r.Body.Close() })
	if r.Header.Get("Content-Type") != "text/event-stream" {
		t.Fatalf("content type %s", r.Header.Get("Content-Type"))
	}
	l := &listener{t, bufio.NewReader(r.Body)}
	if line := l.line(); line != ": ready" || l.line() != "" {
		t.Fatalf("the stream begins with %q", line)
	}
	return l
}

func (l *listener) line() string {
	l.t.Helper()
	line, err := l.lines.ReadString('\n')
	if err != nil {
		l.t.Fatalf("the stream ended: %v", err)
	}
	return strings.TrimSuffix(line, "\n")
}

// next returns the name and the data of the next event. A JSON string is decoded.
func (l *listener) next() (name, data string) {
	l.t.Helper()
	name = strings.TrimPrefix(l.line(), "event: ")
	data = strings.TrimPrefix(l.line(), "data: ")
	if blank := l.line(); blank != "" {
		l.t.Fatalf("an event goes on with %q", blank)
	}
	var text string
	if json.Unmarshal([]byte(data), &text) == nil {
		data = text
	}
	return name, data
}

func (l *listener) want(name, part string) {
	l.t.Helper()
	if n, d := l.next(); n != name || !strings.Contains(d, part) || part == "" && d != "" {
		l.t.Errorf("event %s %q, want %s with %q", n, d, name, part)
	}
}

func TestEvents(t *testing.T) {
	b := &site{files: whole("one")}
	s := New(b.build, quietly)
	s.Rebuild()
	server := httptest.NewServer(s)
	t.Cleanup(server.Close) // once the pages are closed
	first := listen(t, server.URL)
	b.files, b.faults = nil, broken
	s.Rebuild()
	first.want("faults", "en/corner.md:3:1: error: unknown key \"titel\"\n")
	late := listen(t, server.URL) // a page opened while there are faults is notified too
	late.want("faults", "hint: write title")
	b.files, b.faults = whole("two"), nil
	s.Rebuild()
	for _, l := range []*listener{first, late} {
		l.want("faults", "")
		l.want("built", "{}")
	}
}

// A closed page is removed from the clients. A page that does not receive does not
// block the server.
func TestPagesThatDoNotReceive(t *testing.T) {
	s := New((&site{files: whole("one")}).build, quietly)
	ctx, leave := context.WithCancel(context.Background())
	done := make(chan struct{})
	go func() {
		s.events(httptest.NewRecorder(), httptest.NewRequestWithContext(ctx, "GET", "/preview-events", nil))
		close(done)
	}()
	deaf := make(chan event, 1)
	s.mu.Lock()
	s.clients[deaf] = true
	s.mu.Unlock()
	for range 20 {
		s.Rebuild()
	}
	leave()
	<-done
	s.mu.Lock()
	defer s.mu.Unlock()
	if len(s.clients) != 1 || !s.clients[deaf] {
		t.Errorf("%d pages are left", len(s.clients))
	}
}
