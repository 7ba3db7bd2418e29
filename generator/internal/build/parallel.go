package build

import (
	"runtime"
	"sync"
	"sync/atomic"
)

// parallel calls do for 0 to n-1, on every core. The order of calls is not
// fixed; results belong into a slice by index, so that builds are identical.
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
