package compiling

import (
	"bytes"
	"slices"
	"strings"
	"testing"
)

func sectionsOf(t *testing.T, module []byte) []section {
	t.Helper()
	list, err := readSections(module)
	if err != nil {
		t.Fatal(err)
	}
	return list
}

// Nothing but the bodies of the listed functions and the list of names is
// changed, and what is put in place of a body is one of the two stubs.
func TestOnlyListedFunctionsGo(t *testing.T) {
	raw := compiled(t)
	short, stubs, err := unused(raw)
	if err != nil {
		t.Fatal(err)
	}
	before, after := sectionsOf(t, raw), sectionsOf(t, short)
	before = slices.DeleteFunc(before, section.isNames)
	if len(before) != len(after) {
		t.Fatalf("%d sections became %d", len(before), len(after))
	}
	for i := range before {
		if before[i].id != after[i].id || before[i].id != codeSection && !bytes.Equal(before[i].body, after[i].body) {
			t.Errorf("section %d has changed", before[i].id)
		}
	}
	names, err := readNames(sectionsOf(t, raw))
	if err != nil {
		t.Fatal(err)
	}
	was, is := bodies(t, before), bodies(t, after)
	for i, name := range names {
		switch {
		case !stubs[i]:
			if !bytes.Equal(was[i], is[i]) {
				t.Errorf("%s has changed", name)
			}
		case !strings.HasPrefix(name, "runtime."):
			t.Errorf("%s is none of the runtime's", name)
		case !bytes.Equal(is[i], stopStub) && !bytes.Equal(is[i], returnStub):
			t.Errorf("%s became %x", name, is[i])
		}
	}
}

func bodies(t *testing.T, sections []section) (list [][]byte) {
	t.Helper()
	for _, s := range sections {
		if s.id != codeSection {
			continue
		}
		r := &leb{data: s.body}
		for range r.unsigned() {
			size := r.unsigned()
			list = append(list, s.body[r.pos:r.pos+size])
			r.pos += size
		}
	}
	return list
}

// Every name on the lists stands for a function of this Go release, so that
// the lists do not outlive what they speak of.
func TestListsSpeakOfFunctions(t *testing.T) {
	names, err := readNames(sectionsOf(t, compiled(t)))
	if err != nil {
		t.Fatal(err)
	}
	for _, head := range lastWords {
		if !slices.ContainsFunc(names, func(n string) bool { return strings.HasPrefix(n, "runtime."+head) }) {
			t.Errorf("no function begins with %s", head)
		}
	}
	for _, name := range slices.Concat(checks, inUse) {
		if !slices.Contains(names, name) {
			t.Errorf("there is no function %s", name)
		}
	}
}

// A module without names, or cut short anywhere, is refused and not guessed at.
func TestUnusedRefuses(t *testing.T) {
	short, _, err := unused(compiled(t))
	if err != nil {
		t.Fatal(err)
	}
	if _, _, err := unused(short); err == nil {
		t.Error("a module without names was taken")
	}
	const head = "\x00asm\x01\x00\x00\x00"
	for _, module := range []string{"", head, head + "\x0a", head + "\x0a\x7f", head + "\x0a\x02\x01\x00", head + "\x00\x05\x04name", head + "\x00\x06\x04name\x01"} {
		if _, _, err := unused([]byte(module)); err == nil {
			t.Errorf("%q was taken", module)
		}
	}
}
