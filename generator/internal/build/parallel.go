package build

import (
	"runtime"
	"sync"
	"sync/atomic"
)

// parallel calls do for 0 to n-1 from several goroutines, in no fixed order, and returns
// after the last. Callers store results by index, so that builds are the same.
func parallel(n int, do func(i int)) {
	var next atomic.Int64
	var wg sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), n) {
		wg.Go(func() {
			for {
				i := int(next.Add(1)) - 1
				if i >= n {
					return
				}
				do(i)
			}
		})
	}
	wg.Wait()
}
