package compiling

import (
	"bytes"
	"slices"
	"strings"
)

// unused replaces the functions that a page never needs with a stub, and drops
// the list of names that tells them apart: what prints why a program died,
// traces or measures it, and what checks the compiler's own work at the start.
// The runtime of Go carries them into every program. About a sixth of the code
// goes, which a phone would have to fetch and compile.
//
// stubs marks them in the order of the code section.
//
// Where a function is wanted after all, the module stops, as it does at any
// slip, and the page starts it again. A function of a newer Go release that
// is not listed stays; nothing is guessed.
func unused(module []byte) (short []byte, stubs []bool, err error) {
	sections, err := readSections(module)
	if err != nil {
		return nil, nil, err
	}
	names, err := readNames(sections)
	if err != nil {
		return nil, nil, err
	}
	stubs = make([]bool, len(names))
	out := bytes.Clone(module[:8])
	for _, s := range sections {
		switch {
		case s.id == codeSection:
			body, err := stubbed(s.body, names, stubs)
			if err != nil {
				return nil, nil, err
			}
			out = appendSection(out, s.id, body)
		case !s.isNames():
			out = appendSection(out, s.id, s.body)
		}
	}
	return out, stubs, nil
}

// stopStub stops the module: no locals, unreachable, end. returnStub returns
// to the caller as compiled Go does: it takes the return address off the
// stack, whose pointer is global 0, and answers 0, which means "go on".
var (
	stopStub   = []byte{0x00, 0x00, 0x0b}
	returnStub = []byte{0x00, 0x23, 0x00, 0x41, 0x08, 0x6a, 0x24, 0x00, 0x41, 0x00, 0x0b}
)

// stubbed writes the code section with stubs for what is not needed, and
// marks them.
func stubbed(body []byte, names []string, stubs []bool) ([]byte, error) {
	r := &leb{data: body}
	count := r.unsigned()
	if count != len(names) {
		return nil, errLayout
	}
	out := appendUnsigned(nil, count)
	for i, name := range names {
		size := r.unsigned()
		if r.err != nil || size < 0 || r.pos+size > len(body) {
			return nil, errLayout
		}
		code := body[r.pos : r.pos+size]
		r.pos += size
		switch {
		case returns(name):
			code, stubs[i] = returnStub, true
		case stops(name):
			code, stubs[i] = stopStub, true
		}
		out = append(appendUnsigned(out, len(code)), code...)
	}
	return out, r.err
}

// The names are those of the linker's name section, in which ( * ) and / are
// written as _.

// checks are functions without results that look whether the compiler, the
// linker and the system did their work, and the profile of allocations.
var checks = []string{
	"runtime.check", "runtime.moduledataverify1", "runtime.typelinksinit", "runtime.checkdead",
	"runtime.profilealloc",
}

func returns(name string) bool { return slices.Contains(checks, name) }

// lastWords begin the names of functions that only run when a program dies,
// is traced, is profiled or debugs itself.
var lastWords = []string{
	// dying
	"throw", "fatal", "gopanic", "goPanic", "panicCheck", "panicdivide", "panicdottype",
	"panicshift", "panicunsafe", "panicwrap", "sigpanic", "startpanic_m", "dopanic_m", "canpanic", "preprintpanics",
	"print", "traceback", "fpunwindExpand", "goroutineheader", "show", "funcNamePieces",
	"hexdump", "__hexdumper_", "expandCgoFrames", "callCgoSymbolizer", "__Frames_", "badPointer",
	"waitReason.String", "lockRank.String", "__waitReason_", "__lockRank_",
	"boundsError.Error", "__boundsError_", "__TypeAssertionError_", "errorString.Error", "__errorString_",
	"plainError.Error", "__plainError_", "__PanicNilError_", "recovery", "__mspan_.reportZombies",
	// tracing
	"schedtrace", "traceAdvance", "__traceAdvancerState_", "traceBufFlush", "traceCPUFlush",
	"traceEventWriter.", "traceLocker.", "traceReadCPU",
	"traceRegister", "traceStack", "traceSyncBatch", "traceWriter.", "__traceBuf", "__traceMap_",
	"__traceRegionAlloc_", "__traceStackTable_", "__traceStringTable_", "__traceTypeTable_", "makeTraceFrame",
	"goStatusToTrace", "startPCForTrace",
	// profiling
	"__profBuf_", "stkbucket", "newBucket", "saveblockevent", "setprofilebucket",
	"mProf_Malloc", "doRecordGoroutineProfile", "tryRecordGoroutineProfile", "saveg",
	// the runtime debugging itself
	"dump", "gcDumpObject", "setCheckmark", "runCheckmark", "startCheckmarks", "endCheckmarks",
	"checkFinalizersAndCleanups", "findGoroutineLeaks", "findMaybeRunnableGoroutines", "typesEqual",
	"__synctestBubble_", "__mspan_.setUserArenaChunkToFault", "__godebugInc_",
}

// inUse are exceptions to lastWords.
var inUse = []string{"runtime.traceLocker.ok"}

func stops(name string) bool {
	own, ok := strings.CutPrefix(name, "runtime.")
	return ok && !slices.Contains(inUse, name) &&
		slices.ContainsFunc(lastWords, func(head string) bool { return strings.HasPrefix(own, head) })
}
