// Package preview serves a manual on a loopback address while it is written: it
// builds into memory, rebuilds when a file changes, notifies open pages, and shows
// faults in them. While there are faults it serves the last good build.
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

// Build builds the site and returns the contents of its files by path. files is
// nil where there are errors.
type Build func() (files map[string][]byte, faults []fault.Fault)

// Script is an additional script of each page in preview. It receives events from
// the server, shows faults, and reloads the page after a build.
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

// ScriptPath is the path of Script, from the site's root.
const ScriptPath = "preview.js"

// Server serves one manual.
type Server struct {
	build Build
	log   func(format string, args ...any)

	mu      sync.RWMutex
	files   map[string][]byte
	faults  string // of the last build, printed; empty where it had no errors
	clients map[chan event]bool
}

type event struct{ name, data string }

// New returns a server that calls build. log is called once for each build.
func New(build Build, log func(format string, args ...any)) *Server {
	return &Server{build: build, log: log, clients: map[chan event]bool{}}
}

// Rebuild calls build and notifies the open pages. After a build with errors the
// last good files remain and the pages show the errors.
func (s *Server) Rebuild() {
	start := time.Now()
	files, faults := s.build()
	shown := "" // errors only; inspect lists the warnings
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
	s.send(faultsEvent(shown))
	if files != nil {
		s.send(event{"built", "{}"})
	}
}

// faultsEvent returns the event with the current faults. With an empty text the
// page hides its panel.
func faultsEvent(shown string) event {
	data, _ := json.Marshal(shown) // a string always marshals
	return event{"faults", string(data)}
}

// send sends an event to every open page. It does not wait for a page that does
// not receive.
func (s *Server) send(e event) {
	s.mu.RLock()
	defer s.mu.RUnlock()
	for c := range s.clients {
		select {
		case c <- e:
		default:
		}
	}
}

// ServeHTTP serves the last good build, and its page 404.html for an unknown path.
// Before the first good build it responds 503 with the faults.
func (s *Server) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	// A request with the whole URL, as to a proxy, may have no path.
	name := strings.TrimPrefix(path.Clean("/"+r.URL.Path), "/")
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

// types holds the media types of a static server. The module has none, as on most
// servers.
var types = map[string]string{
	".html": "text/html; charset=utf-8", ".js": "text/javascript; charset=utf-8", ".css": "text/css; charset=utf-8",
	".svg": "image/svg+xml", ".webmanifest": "application/manifest+json", ".txt": "text/plain; charset=utf-8",
	".tsv": "text/plain; charset=utf-8",
}

// contentType returns the media type of a file by its extension;
// application/octet-stream if it is not known.
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

// events sends server-sent events until the page closes the connection. It
// responds 501 if the connection cannot be flushed.
func (s *Server) events(w http.ResponseWriter, r *http.Request) {
	flusher, ok := w.(http.Flusher)
	if !ok {
		http.Error(w, "this connection cannot wait for events", http.StatusNotImplemented)
		return
	}
	c := make(chan event, 8)
	s.mu.Lock()
	s.clients[c] = true
	if s.faults != "" { // for a page opened after the last build
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

// Run serves on a loopback address until ctx is done, and rebuilds when a file
// below one of the folders changes. It calls ready with the URL after the first
// build. It returns an error if addr is no loopback address or is in use, or a
// folder cannot be watched; nil after ctx is done.
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
	go s.rebuildOnChange(ctx, watcher)
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

// loopback returns an error for an address without a port, and for one that other
// machines could reach; otherwise nil.
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

// watchBelow watches a folder and the folders below it, but not hidden ones: they
// hold no content, and version control changes them with every command. It returns
// an error if folder or one below it cannot be read or watched.
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

// hidden reports whether the last element of a path begins with a dot.
func hidden(name string) bool { return strings.HasPrefix(filepath.Base(name), ".") }

// quiet is the time without changes before a rebuild. Editors save a file in
// several steps.
const quiet = 60 * time.Millisecond

// rebuildOnChange calls Rebuild after changes of the watched folders, until ctx is
// done.
func (s *Server) rebuildOnChange(ctx context.Context, w *fsnotify.Watcher) {
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
				// A new folder is watched too. For a file, or a folder that is gone
				// again, the error is ignored.
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
