package figure

import "strings"

// SVG returns a drawing as an inline svg element; the page's style sheet sets its
// colours by class. Title and Desc are its title and desc; an empty Desc is left
// out.
func SVG(d Drawing) string { return svg(d, "") }

// File returns a drawing as a standalone SVG document that includes the colours of
// the roles, for print shops and the command line.
func File(d Drawing) string {
	return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg(d, fileStyle) + "\n"
}

// fileStyle sets the colours of roles in a file without a theme: the light
// colours of the default theme, which also print well in grey.
const fileStyle = `<style>svg{background:#fff;font:14px system-ui,sans-serif}` +
	`line,polyline,path{fill:none;stroke:#16181d;stroke-width:2}` +
	`text{fill:#16181d}.f-thin{stroke:#9aa0a8;stroke-width:1}` +
	`.f-concrete{fill:#c3c6cc;stroke:#16181d;stroke-width:1.5}` +
	`.f-foam{fill:#efe9da;stroke:#16181d;stroke-width:1.5}.f-steel{fill:#5a5f69;stroke:#3c4048;stroke-width:3}` +
	`.f-ground{fill:#ddd3c2;stroke:#6b6250;stroke-width:1.5}.f-opening{fill:#fff;stroke:#16181d;stroke-width:1.5}` +
	`.f-line{fill:none;stroke:#1f4e9c;stroke-width:2.5}.f-measure{stroke:#3c4048;stroke-width:1.5}` +
	`.f-limit{fill:none;stroke:#9b2423;stroke-width:2;stroke-dasharray:6 4}` +
	`.f-within{fill:#fff;stroke:#16181d;stroke-width:2}` +
	`.f-beyond{fill:#9b2423;stroke:#9b2423;stroke-width:2}` +
	`text.f-number{font-weight:700}text.f-line{fill:#1f4e9c;stroke:none}` +
	`text.f-limit{fill:#9b2423;stroke:none}text.f-beyond{fill:#9b2423;stroke:none}</style>`

// svg returns a drawing as an svg element; style is a style element inside it, or
// "".
func svg(d Drawing, style string) string {
	var b strings.Builder
	b.WriteString(`<svg xmlns="http://www.w3.org/2000/svg" class="figure" role="img" viewBox="0 0 ` +
		Coordinate(d.Width) + " " + Coordinate(d.Height) + `"><title>` + escape(d.Title) + `</title>`)
	if d.Desc != "" {
		b.WriteString("<desc>" + escape(d.Desc) + "</desc>")
	}
	b.WriteString(style)
	for _, n := range d.Nodes {
		write(&b, n)
	}
	b.WriteString("</svg>")
	return b.String()
}

// write writes a node and the nodes below it as SVG, with texts and values
// escaped.
func write(b *strings.Builder, n Node) {
	b.WriteString("<" + n.Tag)
	for _, a := range n.Attrs {
		b.WriteString(" " + a.Name + `="` + escape(a.Value) + `"`)
	}
	if n.Text == "" && len(n.Kids) == 0 {
		b.WriteString("/>")
		return
	}
	b.WriteString(">" + escape(n.Text))
	for _, k := range n.Kids {
		write(b, k)
	}
	b.WriteString("</" + n.Tag + ">")
}

var escaper = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&#34;")

// escape returns s with the characters that XML reserves as references.
func escape(s string) string { return escaper.Replace(s) }
