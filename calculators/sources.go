// Package calculators holds the calculators' own sources and translations for
// the generator: the listing of each formula is shown beside it, and the
// translators' list is read off the code. It never travels to the phone.
package calculators

import "embed"

// Sources are the Go files of the calculators, one folder per topic.
//
//go:embed */*.go */*/*.go
var Sources embed.FS

// Words are the translations, a folder per language and a file per topic: key,
// hash of the English text, text.
//
//go:embed words/*/*.tsv
var Words embed.FS
