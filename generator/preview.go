package main

import (
	"context"
	"fmt"
	"os"
	"os/signal"
	"sync"
	"syscall"

	"coursebook/generator/internal/build"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/preview"
)

// runPreview runs the command preview until it is interrupted, and returns its
// exit status.
func runPreview(s std, args []string) int {
	flags := newManualFlags("preview",
		"Builds the manual, serves it on this machine, and rebuilds it when a file changes.")
	addr := flags.String("addr", "127.0.0.1:8080", "address on this machine")
	o, status, done := flags.open(s, args)
	if done {
		return status
	}
	o.Preview = true
	progress := newProgress(s.err)
	o.Step = progress.step
	o.Module = sync.OnceValues(o.Module) // compiled once: only content and theme are watched
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	log := func(format string, args ...any) { fmt.Fprintf(s.err, format+"\n", args...) }
	server := preview.New(previewBuild(s, o, progress), log)
	err := server.Run(ctx, *addr, flags.folders(), func(url string) {
		fmt.Fprintf(s.out, "The manual is at %s (stop with Ctrl-C)\n", url)
	})
	if err != nil {
		return s.fail("preview", err)
	}
	return fine
}

// previewBuild returns the function that builds the preview. It prints the
// warnings that inspect does not list, and returns nil files if there are errors.
func previewBuild(s std, o build.Options, progress *progress) preview.Build {
	return func() (map[string][]byte, []fault.Fault) {
		var faults fault.List
		progress.begin()
		site := build.Make(o, &faults)
		progress.clear()
		if site == nil {
			return nil, faults.All()
		}
		if listed := build.BuildOnly(faults.All()); len(listed) > 0 {
			fault.Print(s.err, listed)
		}
		files := make(map[string][]byte, len(site.Files))
		for _, f := range site.Files {
			files[f.Path] = f.Data
		}
		return files, faults.All()
	}
}
