// Package calculators embeds the sources and translations of the calculators
// for the generator: a page shows the listing of each formula, and the list of
// texts to translate is read from the code. It is not part of the WebAssembly
// module.
package calculators

import "embed"

// Sources are the Go files of the calculators, a folder per topic and one per
// calculator below it.
//
//go:embed */*.go */*/*.go
var Sources embed.FS

// Words are the translations, a folder per language and a file per topic: key,
// hash of the English text, text.
//
//go:embed words/*/*.tsv
var Words embed.FS
