package main

import (
	"os"
	"path/filepath"
	"regexp"
	"testing"
)

// Thousands are written as the calculators write them: up to four digits without a sign,
// longer numbers with a narrow space. A comma would be a decimal mark to a reader who has
// chosen one.
func TestThousandsHaveNoComma(t *testing.T) {
	comma := regexp.MustCompile(`(^|[^\d.,])\d{1,3}(,\d{3})+([^\d,]|$)`)
	var files []string
	for _, pattern := range []string{"../content/*/*.md", "starter/*/*.md", "../calculators/words/*/*.tsv",
		"../themes/plumb/words*.tsv"} {
		found, err := filepath.Glob(pattern)
		if err != nil || len(found) == 0 {
			t.Fatalf("%s: %d files, %v", pattern, len(found), err)
		}
		files = append(files, found...)
	}
	for _, name := range files {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		for _, at := range comma.FindAllIndex(data, -1) {
			t.Errorf("%s: %q", name, data[at[0]:at[1]])
		}
	}
}
