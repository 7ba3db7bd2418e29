package theme

import (
	"html/template"
	"reflect"
)

// kept is what a template made of a view the last time.
type kept struct {
	view any
	html template.HTML
}

// reuse is a template's HTML for a view, made only where it differs from the
// last. Most of a page's frame is the same on the next page, and a template
// takes far longer than a comparison; so the view given should hold just what
// the template uses. Best is a pointer to what pages share.
func (t *Theme) reuse(name string, view any) (template.HTML, error) {
	if last, ok := t.kept.Load(name); ok && alike(last.(kept).view, view) {
		return last.(kept).html, nil
	}
	html, err := t.Render(name, view)
	if err != nil {
		return "", err
	}
	t.kept.Store(name, kept{view, template.HTML(html)})
	return template.HTML(html), nil
}

// alike compares two views. One that is the other itself is not looked into.
func alike(a, b any) bool {
	if reflect.ValueOf(a).Kind() == reflect.Pointer && a == b {
		return true
	}
	return reflect.DeepEqual(a, b)
}
