// Package preview serves a manual on this machine while it is written: it
// builds into memory, rebuilds when a file changes, notifies open pages, and
// shows faults in them. The last good build stays up while there are faults.
package preview

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"mime"
	"net"
	"net/http"
	"path"
	"path/filepath"
	"strings"
	"sync"
	"time"

	"github.com/fsnotify/fsnotify"

	"coursebook/generator/internal/fault"
)

// Build makes the site in memory: file contents by path. It returns nil files
// where there were errors.
type Build func() (files map[string][]byte, faults []fault.Fault)

// Script is what a page in preview loads beside its own script: it waits for
// changes, shows faults, and reloads once the new build is in place.
const Script = `(()=>{"use strict";
const events=new EventSource(new URL("preview-events",document.currentScript.src));
const panel=document.createElement("pre");
panel.setAttribute("role","alert");panel.className="preview-faults";panel.hidden=true;
document.body.prepend(panel);
const reload=async()=>{
const reg=navigator.serviceWorker&&await navigator.serviceWorker.getRegistration();
if(!reg||!navigator.serviceWorker.controller)return location.reload();
navigator.serviceWorker.addEventListener("controllerchange",()=>location.reload());
const accept=w=>w&&w.postMessage({type:"accept"});
reg.addEventListener("updatefound",()=>{
const w=reg.installing;w.addEventListener("statechange",()=>{if(w.state==="installed")accept(w)})});
await reg.update();accept(reg.waiting);
};
events.addEventListener("faults",e=>{panel.textContent=JSON.parse(e.data);panel.hidden=!panel.textContent});
events.addEventListener("built",()=>reload());
})();`

// ScriptPath is where the preview's script lies, from the site's root.
const ScriptPath = "preview.js"

// Server serves one manual.
type Server struct {
	build Build
	log   func(format string, args ...any)

	mu      sync.RWMutex
	files   map[string][]byte
	faults  string
	clients map[chan event]bool
}

type event struct{ name, data string }

// New is a server of what build makes; log gets one line per build.
func New(build Build, log func(format string, args ...any)) *Server {
	return &Server{build: build, log: log, clients: map[chan event]bool{}}
}

// Rebuild builds and notifies the open pages.
func (s *Server) Rebuild() {
	start := time.Now()
	files, faults := s.build()
	shown := "" // warnings are for inspect; here they would drown what matters
	if files == nil {
		var text bytes.Buffer
		fault.Print(&text, faults)
		shown = text.String()
	}
	s.mu.Lock()
	s.faults = shown
	if files != nil {
		s.files = files
	}
	s.mu.Unlock()
	s.log("%sbuilt in %d ms, %s", shown, time.Since(start).Milliseconds(), fault.Count(faults))
	s.tell(faultsEvent(shown))
	if files != nil {
		s.tell(event{"built", "{}"})
	}
}

// faultsEvent is the event with the current faults; none hides its panel.
func faultsEvent(shown string) event {
	data, _ := json.Marshal(shown) // a string always marshals
	return event{"faults", string(data)}
}

func (s *Server) tell(e event) {
	s.mu.RLock()
	defer s.mu.RUnlock()
	for c := range s.clients {
		select {
		case c <- e:
		default: // a page that does not listen any more
		}
	}
}

// ServeHTTP serves the last good build, and the faults where there is none.
func (s *Server) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	name := strings.TrimPrefix(path.Clean(r.URL.Path), "/")
	if name == "preview-events" {
		s.events(w, r)
		return
	}
	s.mu.RLock()
	files, faults := s.files, s.faults
	s.mu.RUnlock()
	if files == nil {
		w.Header().Set("Content-Type", "text/plain; charset=utf-8")
		w.Header().Set("Refresh", "2")
		w.WriteHeader(http.StatusServiceUnavailable)
		fmt.Fprintf(w, "The manual has faults and cannot be shown yet.\n\n%s", faults)
		return
	}
	if name == "" || strings.HasSuffix(r.URL.Path, "/") {
		name = path.Join(name, "index.html")
	}
	data, ok := files[name]
	status := http.StatusOK
	if !ok {
		name, data, status = "404.html", files["404.html"], http.StatusNotFound
	}
	w.Header().Set("Content-Type", contentType(name))
	w.Header().Set("Cache-Control", "no-cache")
	w.WriteHeader(status)
	if r.Method != http.MethodHead {
		w.Write(data)
	}
}

// types are the types a plain static server knows; the module is bytes to it.
var types = map[string]string{
	".html": "text/html; charset=utf-8", ".js": "text/javascript; charset=utf-8", ".css": "text/css; charset=utf-8",
	".svg": "image/svg+xml", ".webmanifest": "application/manifest+json", ".txt": "text/plain; charset=utf-8",
	".tsv": "text/plain; charset=utf-8",
}

func contentType(name string) string {
	ext := path.Ext(name)
	if t := types[ext]; t != "" {
		return t
	}
	if t := mime.TypeByExtension(ext); t != "" {
		return t
	}
	return "application/octet-stream"
}

func (s *Server) events(w http.ResponseWriter, r *http.Request) {
	flusher, ok := w.(http.Flusher)
	if !ok {
		http.Error(w, "this connection cannot wait for events", http.StatusNotImplemented)
		return
	}
	c := make(chan event, 8)
	s.mu.Lock()
	s.clients[c] = true
	if s.faults != "" { // a page opened since the faults came up
		c <- faultsEvent(s.faults)
	}
	s.mu.Unlock()
	defer func() {
		s.mu.Lock()
		delete(s.clients, c)
		s.mu.Unlock()
	}()
	w.Header().Set("Content-Type", "text/event-stream")
	w.Header().Set("Cache-Control", "no-store")
	fmt.Fprint(w, ": ready\n\n")
	flusher.Flush()
	for {
		select {
		case <-r.Context().Done():
			return
		case e := <-c:
			fmt.Fprintf(w, "event: %s\ndata: %s\n\n", e.name, e.data)
			flusher.Flush()
		}
	}
}

// Run serves on a loopback address until ctx ends, and rebuilds when a file
// below one of the folders changes. ready is called with the listening address.
func (s *Server) Run(ctx context.Context, addr string, folders []string, ready func(url string)) error {
	if err := loopback(addr); err != nil {
		return err
	}
	l, err := net.Listen("tcp", addr)
	if err != nil {
		return fmt.Errorf("cannot serve on %s: %w; choose another with -addr", addr, err)
	}
	watcher, err := fsnotify.NewWatcher()
	if err != nil {
		return errors.Join(err, l.Close())
	}
	defer watcher.Close()
	for _, f := range folders {
		if err := watchBelow(watcher, f); err != nil {
			return errors.Join(err, l.Close())
		}
	}
	s.Rebuild()
	server := &http.Server{Handler: s, ReadHeaderTimeout: 10 * time.Second}
	go s.follow(ctx, watcher)
	go func() {
		<-ctx.Done()
		server.Close()
	}()
	ready("http://" + l.Addr().String() + "/")
	if err := server.Serve(l); !errors.Is(err, http.ErrServerClosed) {
		return err
	}
	return nil
}

// loopback refuses addresses that others on the network could reach: the
// preview is for the one who writes.
func loopback(addr string) error {
	host, _, err := net.SplitHostPort(addr)
	if err != nil {
		return fmt.Errorf("-addr %s: %w; write it as 127.0.0.1:8080", addr, err)
	}
	if ip := net.ParseIP(host); host == "localhost" || ip != nil && ip.IsLoopback() {
		return nil
	}
	return fmt.Errorf("-addr %s is not on this machine; use 127.0.0.1 or localhost", addr)
}

// watchBelow watches a folder and those below it. Hidden ones are no content,
// and a version control would wake the watcher at every command.
func watchBelow(w *fsnotify.Watcher, folder string) error {
	return filepath.WalkDir(folder, func(name string, d fs.DirEntry, err error) error {
		switch {
		case err != nil || !d.IsDir():
			return err
		case name != folder && hidden(name):
			return fs.SkipDir
		}
		return w.Add(name)
	})
}

func hidden(name string) bool { return strings.HasPrefix(filepath.Base(name), ".") }

// quiet is how long the files must rest before a rebuild: an editor saves in
// several steps.
const quiet = 60 * time.Millisecond

func (s *Server) follow(ctx context.Context, w *fsnotify.Watcher) {
	timer := time.NewTimer(time.Hour)
	timer.Stop()
	for {
		select {
		case <-ctx.Done():
			return
		case e, ok := <-w.Events:
			if !ok {
				return
			}
			if hidden(e.Name) {
				continue
			}
			if e.Has(fsnotify.Create) {
				// a new folder; where it is a file, or gone again, there is nothing to add
				_ = watchBelow(w, e.Name)
			}
			timer.Reset(quiet)
		case err, ok := <-w.Errors:
			if !ok {
				return
			}
			s.log("watching: %v", err)
		case <-timer.C:
			s.Rebuild()
		}
	}
}
