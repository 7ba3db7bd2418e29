// Measurements inside a page. Each function runs in the page, so it refers to nothing
// outside itself. It returns its findings as lines.
export const measure = {
	// contrast measures all visible text: 15 to 1 is required of body text, numbers and
	// cautions, 7 to 1 of all other text. Links, marked words, signal words and the
	// labels beside them are not body text.
	contrast() {
		const parse = (colour) => {
			const parts = colour.match(/[\d.]+/g).map(Number);
			return { rgb: parts.slice(0, 3), alpha: parts[3] ?? 1 };
		};
		const canvas = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
		const rgba = (colour) => {
			if (/^rgba?\(/.test(colour)) return parse(colour);
			canvas.clearRect(0, 0, 1, 1);
			canvas.fillStyle = colour;
			canvas.fillRect(0, 0, 1, 1);
			const [r, g, b, a] = canvas.getImageData(0, 0, 1, 1).data;
			return { rgb: [r, g, b], alpha: a / 255 };
		};
		const over = (top, below) => top.rgb.map((part, i) => part * top.alpha + below[i] * (1 - top.alpha));
		const luminance = (rgb) => {
			const [r, g, b] = rgb.map((part) => {
				const c = part / 255;
				return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
			});
			return 0.2126 * r + 0.7152 * g + 0.0722 * b;
		};
		const backdrop = (node) => {
			const layers = [];
			for (let e = node; e; e = e.parentElement) {
				const colour = rgba(getComputedStyle(e).backgroundColor);
				if (colour.alpha > 0) layers.push(colour);
				if (colour.alpha === 1) break;
			}
			return layers.reverse().reduce((below, layer) => over(layer, below), [255, 255, 255]);
		};
		const opacity = (node) => {
			let value = 1;
			for (let e = node; e; e = e.parentElement) value *= Number(getComputedStyle(e).opacity);
			return value;
		};
		const ratio = (a, b) => {
			const [x, y] = [luminance(a), luminance(b)].sort((p, q) => q - p);
			return (x + 0.05) / (y + 0.05);
		};
		const notBody = 'a, .signal, mark, .stage, .hint, .time, .unit, .range, .optional, .tag, .also, button, summary, label, legend, .live, .sources, .mine, small, h1, h2, h3, h4, h5, caption, figcaption, .plain, code, .foot, .next-title, em';
		const body = '.sheet p, .sheet li, .sheet dd, .sheet td, .sheet input, .sheet select, .caution p, .outs dd, .step';
		const found = [];
		const check = (node, text, foreground) => {
			const style = getComputedStyle(node);
			const paper = backdrop(node);
			const ink = rgba(foreground ?? style.color);
			ink.alpha *= opacity(node);
			const value = ratio(over(ink, paper), paper);
			const strict = node.closest(body) && !node.closest(notBody);
			const limit = strict ? 15 : 7;
			if (value < limit - 0.005) found.push(`${value.toFixed(2)} to 1, not ${limit}: ${node.tagName.toLowerCase()}${node.className && typeof node.className === 'string' ? `.${node.className.replaceAll(' ', '.')}` : ''} “${text.trim().slice(0, 30)}”`);
		};
		const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
		while (walker.nextNode()) {
			const node = walker.currentNode.parentElement;
			const text = walker.currentNode.data;
			if (!text.trim() || !node.checkVisibility({ checkOpacity: true, checkVisibilityCSS: true }) || node.closest('template, script, style, title, desc, option')) continue;
			if (node.closest('[disabled]')) continue;
			const box = node.getBoundingClientRect();
			if (box.width <= 1 || box.height <= 1) continue;
			check(node, text, node instanceof SVGElement ? getComputedStyle(node).fill : undefined);
		}
		for (const input of document.querySelectorAll('input:not([type=radio]):not([type=checkbox]):not([type=file]), select')) {
			if (input.checkVisibility({ checkVisibilityCSS: true }) && !input.disabled) check(input, input.value || input.placeholder || '');
			if (input.placeholder && input.checkVisibility()) check(input, input.placeholder, getComputedStyle(input, '::placeholder').color);
		}
		return [...new Set(found)];
	},

	// targets measures every touch target. The target of a radio or checkbox inside a
	// label is the label. Links inside a sentence are exempt.
	targets() {
		const found = [];
		const seen = (node) => node.checkVisibility({ checkVisibilityCSS: true, checkOpacity: true });
		for (const node of document.querySelectorAll('a[href], button, summary, input, select, textarea, label:has(input[type=radio], input[type=checkbox]), [role=button]')) {
			if (!seen(node) || node.disabled || node.type === 'hidden' || node.closest('[inert]')) continue;
			if (node.matches('input[type=radio], input[type=checkbox]') && node.closest('label')) continue;
			const box = area(node).getBoundingClientRect();
			if (box.right <= 0 || box.bottom <= 0 || box.width <= 1) continue; // outside the screen until it has the focus
			if (node.matches('a') && getComputedStyle(node).display === 'inline' && inSentence(node)) continue;
			const primary = node.closest('.calc .inputs') && node.matches('input, select, label, button');
			const high = primary ? 60 : 44;
			if (box.height < high - 0.5 || box.width < 44 - 0.5) {
				const name = (node.innerText || node.value || node.getAttribute('aria-label') || '').trim().slice(0, 30);
				found.push(`${Math.round(box.width)} × ${Math.round(box.height)} px, not 44 × ${high}: ${node.tagName.toLowerCase()}${node.className && `.${String(node.className).replaceAll(' ', '.')}`} “${name}”`);
			}
		}
		return [...new Set(found)];

		// The target of a link whose ::after covers its card is the card.
		function area(link) {
			const cover = getComputedStyle(link, '::after');
			return cover.content !== 'none' && cover.position === 'absolute' && cover.inset === '0px' ? link.offsetParent ?? link : link;
		}

		// inSentence reports whether the block of a link contains other text.
		function inSentence(link) {
			const block = link.parentElement.closest('p, li, dd, td, dt, th, figcaption, summary, span');
			return block && block.textContent.trim().length > link.textContent.trim().length;
		}
	},

	// gaps measures the distance between neighbouring controls of calculators.
	gaps() {
		const found = [];
		for (const form of document.querySelectorAll('.calc form')) {
			const boxes = [...form.querySelectorAll('.fields input:not([type=radio]):not([type=checkbox]), .fields select, .fields label:has(input), .fields button')]
				.filter((node) => node.checkVisibility()).map((node) => ({ node, box: node.getBoundingClientRect() }));
			for (const [i, a] of boxes.entries()) {
				for (const b of boxes.slice(i + 1)) {
					if (a.node.contains(b.node) || b.node.contains(a.node)) continue;
					const x = Math.max(a.box.left, b.box.left) - Math.min(a.box.right, b.box.right);
					const y = Math.max(a.box.top, b.box.top) - Math.min(a.box.bottom, b.box.bottom);
					if (Math.max(x, y) < 7.5) found.push(`${Math.max(x, y).toFixed(1)} px between ${name(a.node)} and ${name(b.node)}`);
				}
			}
		}
		return [...new Set(found)];

		function name(node) { return `${node.tagName.toLowerCase()} “${(node.innerText || node.value || '').trim().slice(0, 24)}”`; }
	},

	// reflow finds elements that make the page wider than the screen. The row of jump
	// marks scrolls by itself.
	reflow() {
		const wide = document.documentElement.clientWidth;
		const found = [];
		if (document.documentElement.scrollWidth > wide) found.push(`the page is ${document.documentElement.scrollWidth} px wide on a screen of ${wide}`);
		for (const node of document.querySelectorAll('body *')) {
			const style = getComputedStyle(node);
			const box = node.getBoundingClientRect();
			if (box.right > wide + 1 && !node.closest('svg, .wide, .marks, .unseen, table, template') && node.checkVisibility() && style.position !== 'fixed' && !clipped(node)) {
				found.push(`reaches ${Math.round(box.right)} px: ${node.tagName.toLowerCase()}.${node.className} “${node.textContent.trim().slice(0, 30)}”`);
			}
			if (/(auto|scroll)/.test(style.overflowX) && node.scrollWidth > node.clientWidth + 1 && node.checkVisibility() && !node.querySelector('table, math, pre, svg') && !node.matches('pre, table, .marks')) {
				found.push(`scrolls sideways: ${node.tagName.toLowerCase()}.${node.className}`);
			}
		}
		return [...new Set(found)];

		function clipped(node) {
			for (let e = node.parentElement; e && e !== document.body; e = e.parentElement) {
				if (getComputedStyle(e).overflowX !== 'visible') return true;
			}
			return false;
		}
	},

	// edges finds inputs of a calculator whose left edge differs from the first.
	edges() {
		const found = [];
		for (const fields of document.querySelectorAll('section.calc .fields')) {
			const places = [...fields.querySelectorAll(':scope > [data-field]')].filter((place) => place.checkVisibility());
			const edge = (place) => Math.round(place.getBoundingClientRect().left + parseFloat(getComputedStyle(place).paddingLeft));
			for (const place of places.filter((place) => edge(place) !== edge(places[0]))) found.push(`${place.dataset.field} begins at ${edge(place)} px, not ${edge(places[0])}`);
		}
		return found;
	},

	// clipped finds boxes that hide a part of their text, other than boxes that scroll.
	clipped() {
		const found = [];
		for (const node of document.querySelectorAll('body *')) {
			const style = getComputedStyle(node);
			if (!/(hidden|clip)/.test(style.overflowY + style.overflowX) || !node.checkVisibility() || node.closest('.unseen, svg, template')) continue;
			const box = node.getBoundingClientRect();
			if (box.width <= 1 || box.height <= 1 || !node.innerText?.trim()) continue;
			if (node.scrollHeight > node.clientHeight + 1 || node.scrollWidth > node.clientWidth + 1) {
				found.push(`cut off: ${node.tagName.toLowerCase()}.${node.className} “${node.innerText.trim().slice(0, 30)}”`);
			}
		}
		return [...new Set(found)];
	},

	// space sets the text spacing of WCAG 1.4.12.
	space() {
		const sheet = new CSSStyleSheet();
		sheet.replaceSync('* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-bottom: 2em !important }');
		document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
	},

	// enlarge doubles the size of all text, for WCAG 1.4.4.
	enlarge() {
		const sheet = new CSSStyleSheet();
		sheet.replaceSync(':root { font-size: 200% !important }');
		document.adoptedStyleSheets = [sheet];
	},

	// focus reports the element that has the focus, whether it is visible and has a focus
	// ring; past is true from the footer on.
	focus() {
		const node = document.activeElement;
		if (!node || node === document.body) return null;
		const target = node.matches('input[type=radio], input[type=checkbox]') ? node.closest('label') ?? node : node;
		const box = target.getBoundingClientRect();
		const what = `${node.tagName.toLowerCase()}#${node.id}.${node.className} “${(node.innerText || node.value || '').trim().slice(0, 24)}”`;
		let why = '';
		if (box.bottom <= 0 || box.top >= innerHeight) why = 'it lies outside the screen';
		else {
			const points = [0.15, 0.5, 0.85].flatMap((x) => [0.15, 0.5, 0.85].map((y) => [box.left + box.width * x, box.top + box.height * y]))
				.filter(([x, y]) => x >= 0 && y >= 0 && x < innerWidth && y < innerHeight);
			const free = points.filter(([x, y]) => {
				const top = document.elementFromPoint(x, y);
				return top && (target.contains(top) || top.contains(target));
			});
			if (free.length === 0) why = 'something covers it';
		}
		const rings = [node, target, node.nextElementSibling].filter(Boolean).map((e) => getComputedStyle(e));
		const marked = rings.some((style) => (style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2) || /inset|px/.test(style.boxShadow));
		const place = node.closest('[data-field], [data-rows]');
		return { what, why, visible: why === '', marked, field: place && (place.dataset.field ?? place.dataset.rows), past: Boolean(node.closest('footer')) };
	},
};
