//go:build unix

package main

import (
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strings"
)

// The words of the invented manual. Nothing in it is advice.
var (
	verbs = strings.Fields("check measure set move mark read hold lift fill clear back tie count wash lay turn level " +
		"stack carry write")
	things = strings.Fields("wall brace hose form corner string bar buck sill plank screw block shim gauge truck " +
		"bucket ticket ladder sheet board")
	places = strings.Fields("gate bench stair trench window door end top foot side")
	sizes  = []string{"2 ft", "8 in.", "1/2 in.", "300 mm", "70 °F", "150 lb/ft³", "600 psf", "4 ft/h", "10 yd³",
		"90 min"}
	stages = []string{"before", "morning", "placing", "after"}
)

const inventedManual = `title: {en: Invented manual for measuring}
subtitle: {en: Nothing in it is advice}
revised: 2026-01-01
languages:
  - {code: en, name: English, decimal: point}
stages:
  - {id: before, title: {en: Before}, hint: {en: The days before}}
  - {id: morning, title: {en: Morning}, hint: {en: The same day}}
  - {id: placing, title: {en: Placing}, hint: {en: The work}}
  - {id: after, title: {en: After}, hint: {en: The rest}}
roles:
  - {id: hand, title: {en: Hand}}
`

// invent writes a manual of n procedures to dir and returns the size of its
// Markdown in bytes. samples are lists for the headers of pages; see headerLists.
// The same n, seed and samples give the same manual. A file that cannot be written
// is an error.
func invent(dir string, n int, seed uint64, samples []string) (int, error) {
	if err := os.MkdirAll(filepath.Join(dir, "en"), 0o755); err != nil {
		return 0, err
	}
	files := map[string]string{
		"manual.yaml": inventedManual,
		"en/index.md": "---\ntitle: Start\nsummary: Invented.\nkind: home\nrevised: 2026-01-01\n---\n" +
			"This manual is invented.\n",
		"en/blow-out.md": "---\ntitle: A form opens\nsummary: Stop.\nstage: after\nsources: [common practice]\n" +
			"revised: 2026-01-01\n---\n1. **Stop.** Everybody stops.\n",
	}
	total := 0
	for i := range n {
		text := inventPage(rand.New(rand.NewPCG(seed, uint64(i))), i, n, samples)
		files[fmt.Sprintf("en/page-%05d.md", i)] = text
		total += len(text)
	}
	for name, text := range files {
		if err := os.WriteFile(filepath.Join(dir, filepath.FromSlash(name)), []byte(text), 0o644); err != nil {
			return 0, err
		}
	}
	return total, nil
}

// inventPage returns a typical procedure of about 5 kB: header, caution, steps with
// a hold point, checks, a table and notes. Every tenth page has a calculator.
func inventPage(r *rand.Rand, i, n int, samples []string) string {
	var b strings.Builder
	fmt.Fprintf(&b,
		"---\ntitle: %s %d\nsummary: %s\nstage: %s\norder: %d\nroles: [hand]\nwhen: On the day\ntime: About %d min\n",
		inventTitle(r), i, sentence(r), stages[i%len(stages)], i, 5+r.IntN(50))
	fmt.Fprintf(&b, "%snext: [page-%05d]\nrevised: 2026-01-01\n---\n", pick(r, samples), (i+1)%n)
	fmt.Fprintf(&b, "%s\n\n> **WARNING** %s\n\n## Steps\n\n", paragraph(r, 3), paragraph(r, 2))
	for k := range 12 {
		if k == 8 {
			fmt.Fprintf(&b, "%d. **Hold point** %s\n", k+1, paragraph(r, 2))
			continue
		}
		fmt.Fprintf(&b, "%d. **%s.** %s See [the next page](page-%05d.md#steps).\n", k+1, inventTitle(r),
			paragraph(r, 2), r.IntN(n))
	}
	if i%10 == 0 {
		b.WriteString("\n```calculator\nid: wall-volume\n```\n")
	}
	b.WriteString("\n## Check\n\n")
	for range 8 {
		fmt.Fprintf(&b, "- [ ] %s\n", sentence(r))
	}
	b.WriteString("\n## Numbers\n\n| Part | Size |\n|---|---|\n")
	for range 6 {
		fmt.Fprintf(&b, "| %s | %s |\n", pick(r, things), pick(r, sizes))
	}
	b.WriteString("\n## What goes wrong\n\n")
	for b.Len() < 4900 {
		fmt.Fprintf(&b, "- **%s** – %s\n", inventTitle(r), paragraph(r, 2))
	}
	return b.String()
}

// headerLists reads the lists of gear, sources and words from the headers of the
// pages in dir. It returns one text for each page that has all three, and an error
// if none has. Parsing these lists takes most of the time of a header, so that
// invented headers contain real ones.
func headerLists(dir string) ([]string, error) {
	names, err := filepath.Glob(filepath.Join(dir, "*.md"))
	if err != nil {
		return nil, err
	}
	var samples []string
	for _, name := range names {
		page, err := os.ReadFile(name)
		if err != nil {
			return nil, err
		}
		header, _, _ := strings.Cut(strings.TrimPrefix(string(page), "---\n"), "\n---\n")
		lists, found, inside := "", 0, false
		for line := range strings.Lines(header + "\n") {
			if key, _, ok := strings.Cut(line, ":"); ok && line[0] != ' ' {
				if inside = key == "gear" || key == "sources" || key == "words"; inside {
					found++
				}
			}
			if inside {
				lists += line
			}
		}
		if found == 3 {
			samples = append(samples, lists)
		}
	}
	if len(samples) == 0 {
		return nil, fmt.Errorf("%s has no page with gear, sources and words", dir)
	}
	return samples, nil
}

func pick(r *rand.Rand, list []string) string { return list[r.IntN(len(list))] }

// inventTitle returns a random title of a verb and a thing.
func inventTitle(r *rand.Rand) string {
	verb := pick(r, verbs)
	return strings.ToUpper(verb[:1]) + verb[1:] + " the " + pick(r, things)
}

// sentence returns a random sentence with an amount.
func sentence(r *rand.Rand) string {
	return fmt.Sprintf("%s at the %s, %s from the %s.", inventTitle(r), pick(r, places), pick(r, sizes),
		pick(r, things))
}

// paragraph returns n random sentences.
func paragraph(r *rand.Rand, n int) string {
	list := make([]string, n)
	for i := range list {
		list[i] = sentence(r)
	}
	return strings.Join(list, " ")
}
