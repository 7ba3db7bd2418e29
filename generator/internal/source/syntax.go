package source

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"regexp"
	"strconv"
	"strings"
	"unicode/utf8"

	"coursebook/generator/internal/fault"

	"go.yaml.in/yaml/v3"
)

// maxSearched is the number of lines up to which a syntax error is searched by
// parsing again and again; beyond, the library's own line is taken.
const maxSearched = 400

// complaint is what we say for one message of the YAML library.
type complaint struct {
	library string         // part of the library's message
	at      *regexp.Regexp // must match the line, its group is the column; nil for any line and its first word
	code    string         // our code
	text    string         // our text
	hint    string         // our hint
}

// complaints are tried in order; the last one fits every message.
var complaints = []complaint{
	{"mapping values are not allowed", regexp.MustCompile(`^[^:]*:[^:]*?(:)(?:\s|$)`), "yaml-colon",
		"a second colon stands on this line", `put the value in quotes: "…: …"`},
	{"mapping values are not allowed", nil, "yaml-key",
		"a key cannot stand here", "check the line above: it lacks a colon, or this one is indented too far"},
	{"cannot start any token", regexp.MustCompile("^\\s*?(\t)"), "yaml-tab",
		"a tab stands where only spaces may", "indent with spaces"},
	{"cannot start any token", regexp.MustCompile("([@`%\t])"), "yaml-character",
		"a value cannot start with this character", "put the value in quotes"},
	{"tab character", regexp.MustCompile(`(\t)`), "yaml-tab",
		"a tab stands where only spaces may", "indent with spaces"},
	{"unexpected end of stream", regexp.MustCompile(`^[^"']*(["'])`), "yaml-quote",
		"a quotation mark is opened and not closed", "close it on the same line"},
	{"unknown escape character", regexp.MustCompile(`(\\)`), "yaml-escape",
		"a backslash in double quotes starts no known escape", `use single quotes, or write \\ for a backslash`},
	{"hexdecimal number", regexp.MustCompile(`(\\)`), "yaml-escape",
		"an escape lacks its hexadecimal digits", `use single quotes, or write \\ for a backslash`},
	{"Unicode character escape", regexp.MustCompile(`(\\)`), "yaml-escape",
		"an escape names no character", "write the character itself"},
	{"',' or ']'", regexp.MustCompile(`(\[)`), "yaml-bracket",
		"a bracket [ is opened and not closed, or a comma is missing",
		"close the list with ], with commas between its items"},
	{"',' or '}'", regexp.MustCompile(`(\{)`), "yaml-bracket",
		"a brace { is opened and not closed, or a comma is missing", "close it with }, with commas between the pairs"},
	{"could not find expected ':'", nil, "yaml-no-colon",
		"this line has no colon", "write key: value, or a hyphen and a space before an item of a list"},
	{"did not find expected key", regexp.MustCompile(`^[^:'"\[{]*:\s+(["'\[{])`), "yaml-rest",
		"something stands behind the closing quotation mark or bracket", "put the whole value in quotes"},
	{"did not find expected key", nil, "yaml-key",
		"this line does not go on with what stands above",
		"write key: value, starting in the same column as the keys above"},
	{"expected '-' indicator", nil, "yaml-list",
		"this line does not go on with the list above", "start it with a hyphen in the same column, or end the list"},
	{"block sequence entries are not allowed", regexp.MustCompile(`(-)(?:\s|$)`), "yaml-list",
		"a list cannot start here", "start the list on the next line"},
	{"expected <document start>", nil, "yaml-outside",
		"text stands outside the keys", "write key: value"},
	{"unknown anchor", regexp.MustCompile(`(\*)`), "yaml-alias",
		"an alias is not allowed", "write the value out; put text that starts with * in quotes"},
	{"exceeded max depth", nil, "yaml-depth",
		"values are nested too deep", "write them flat"},
	{"", nil, "yaml-syntax",
		"this line is not valid YAML", "write key: value; put values with special characters in quotes"},
}

// syntax reports an error of the YAML library as an error of the file. The library
// names at most a line, and often the one where the surrounding value began; so
// the line is found as the first one that cannot follow the longest good
// beginning.
func (r *reader) syntax(err error) {
	line := r.culprit(err)
	message := err.Error()
	if cause := r.parse(line); cause != nil {
		message = cause.Error() // of this line alone, not of what it led to further down
	}
	source := fault.Line(r.src, line)
	for _, c := range complaints {
		if !strings.Contains(message, c.library) || c.at != nil && !c.at.MatchString(source) {
			continue
		}
		text := c.text
		if c.code == "yaml-syntax" {
			text += " (" + clip(strings.TrimPrefix(message, "yaml: ")) + ")"
		}
		r.report(fault.Error, line, column(source, c.at), c.code, text, c.hint)
		return
	}
}

// culprit returns the line at which err is reported, from 1 within the text: the
// first one after the longest beginning that parses. In a text of more than
// maxSearched lines it is the line that the library names.
func (r *reader) culprit(err error) int {
	total := bytes.Count(r.src, []byte("\n")) + 1
	if total > maxSearched {
		return min(max(1, libraryLine(err)), total)
	}
	good := total - 1
	for good > 0 && r.parse(good) != nil {
		good--
	}
	line := good + 1
	for line < total && strings.TrimSpace(fault.Line(r.src, line)) == "" {
		line++
	}
	return line
}

// parse returns the error of the first n lines of the text, read as one or two
// documents; nil if they are good.
func (r *reader) parse(n int) error {
	end := 0
	for ; n > 0 && end < len(r.src); n-- {
		i := bytes.IndexByte(r.src[end:], '\n')
		if i < 0 {
			end = len(r.src)
			break
		}
		end += i + 1
	}
	err := guard(func() error { return decodeTwo(r.src[:end], new(yaml.Node), new(yaml.Node)) })
	if errors.Is(err, io.EOF) {
		return nil
	}
	return err
}

var lineOf = regexp.MustCompile(`line (\d+):`)

// libraryLine returns the line that an error of the YAML library names; 1 if it
// names none.
func libraryLine(err error) int {
	m := lineOf.FindStringSubmatch(fmt.Sprint(err))
	if m == nil {
		return 1
	}
	n, _ := strconv.Atoi(m[1])
	return n
}

// column returns the column in runes, from 1, of the first group of at in line, or
// of the first word if at is nil or does not match.
func column(line string, at *regexp.Regexp) int {
	offset := len(line) - len(strings.TrimLeft(line, " \t"))
	if at != nil {
		if m := at.FindStringSubmatchIndex(line); m != nil {
			offset = m[2]
		}
	}
	return utf8.RuneCountInString(line[:offset]) + 1
}
