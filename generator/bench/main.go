//go:build unix

// Command bench measures the generator: the build of large invented manuals,
// compared with the Markdown conversion of the same text alone on the same
// machine, and the bytes of the real manual. It prints times and ratios and
// asserts nothing.
package main

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
)

// options are the options of the command line.
type options struct {
	sizes   []int  // pages of each invented manual, rising
	seed    uint64 // of the invented manuals
	rounds  int    // runs of each measurement; the best counts
	keep    bool   // leave the working folder in place
	convert string // internal: only convert this folder; see convertApart
}

func main() {
	o, err := parse(os.Args[1:])
	if err == nil && o.convert != "" {
		err = convertFolder(os.Stdout, o.convert)
	} else if err == nil {
		err = bench(o)
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, "bench:", err)
		os.Exit(1)
	}
}

// parse parses the command line. Sizes that are not rising numbers above 0, and
// fewer than 1 round, are errors.
func parse(args []string) (options, error) {
	var o options
	set := flag.NewFlagSet("bench", flag.ContinueOnError)
	sizes := set.String("pages", "1000,10000", "numbers of pages, rising, with commas between")
	set.Uint64Var(&o.seed, "seed", 1, "seed of the invented manuals")
	set.IntVar(&o.rounds, "rounds", 2, "runs of each measurement; the best counts")
	set.BoolVar(&o.keep, "keep", false, "leave the working folder in place")
	set.StringVar(&o.convert, "convert", "", "only convert the Markdown of this folder, and say what it cost")
	if err := set.Parse(args); err != nil {
		return o, err
	}
	for _, text := range strings.Split(*sizes, ",") {
		n, err := strconv.Atoi(text)
		if err != nil || n < 1 || len(o.sizes) > 0 && n <= o.sizes[len(o.sizes)-1] {
			return o, fmt.Errorf("-pages wants rising numbers above 0 with commas between, not %q", *sizes)
		}
		o.sizes = append(o.sizes, n)
	}
	if o.rounds < 1 {
		return o, fmt.Errorf("-rounds must be 1 or more, not %d", o.rounds)
	}
	return o, nil
}

// bench builds the binary, prints all measurements and returns the first error.
func bench(o options) error {
	dir, err := os.MkdirTemp("", "coursebook-bench-")
	if err != nil {
		return err
	}
	if o.keep {
		fmt.Println("working folder:", dir)
	} else {
		defer os.RemoveAll(dir)
	}
	binary, module, err := makeBinary(dir)
	if err != nil {
		return err
	}
	fmt.Printf("module for the pages, compiled with a warm build cache: %v\n\n", module)
	if err := benchBuilds(o, dir, binary); err != nil {
		return err
	}
	return weighManual(dir, binary)
}

// benchBuilds builds each invented manual, converts the same text alone, and
// prints the cost of both. It returns the first error.
func benchBuilds(o options, dir, binary string) error {
	samples, err := headerLists(filepath.Join("content", "en"))
	if err != nil {
		return err
	}
	var builds, plains []cost
	for _, n := range o.sizes {
		content := filepath.Join(dir, fmt.Sprintf("content-%d", n))
		bytes, err := invent(content, n, o.seed, samples)
		if err != nil {
			return err
		}
		out := filepath.Join(dir, fmt.Sprintf("site-%d", n))
		build, err := best(o.rounds, func() (cost, error) {
			return spend(binary, "build", "-content", content, "-out", out)
		})
		if err != nil {
			return err
		}
		plain, err := best(o.rounds, func() (cost, error) { return convertApart(content) })
		if err != nil {
			return err
		}
		fmt.Printf("%6d pages, %d B of Markdown each\n", n, bytes/n)
		fmt.Printf("       build                     %v  %.2f ms CPU a page, peak memory %d MB\n",
			build, ms(build.cpu)/float64(n), build.peak>>20)
		fmt.Printf("       plain conversion          %v  %.3f ms CPU a page\n", plain, ms(plain.cpu)/float64(n))
		fmt.Printf("       ratio                     %.1f × wall, %.1f × CPU\n\n",
			ratio(build.wall, plain.wall), ratio(build.cpu, plain.cpu))
		builds, plains = append(builds, build), append(plains, plain)
		if !o.keep {
			os.RemoveAll(out)
		}
	}
	growth(o.sizes, builds, plains)
	return nil
}

// growth prints how the cost grows from the first to the last size, and nothing
// for one size.
func growth(sizes []int, builds, plains []cost) {
	last := len(sizes) - 1
	if last == 0 {
		return
	}
	pages := float64(sizes[last] - sizes[0])
	ours := (builds[last].cpu - builds[0].cpu).Seconds() * 1000 / pages
	theirs := (plains[last].cpu - plains[0].cpu).Seconds() * 1000 / pages
	fmt.Printf("%d against %d pages: %.1f × wall, %.1f × CPU (budget 11 ×)\n", sizes[last], sizes[0],
		ratio(builds[last].wall, builds[0].wall), ratio(builds[last].cpu, builds[0].cpu))
	fmt.Printf("marginal CPU a page: %.3f ms, plain conversion %.3f ms: %.1f × (budget 16 ×)\n\n",
		ours, theirs, ours/theirs)
}
