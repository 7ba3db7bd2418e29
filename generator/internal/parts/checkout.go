//go:build !dist

package parts

import "io/fs"

// packed is nil: the parts are read from the checkout.
var packed fs.FS
