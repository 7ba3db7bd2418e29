// The texts of the interface, from the lists that the pages are built from.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './site.mjs';

const english = new Map(rows('themes/plumb/words.tsv').map(([key, text]) => [key, text]));
const spanish = new Map(rows('themes/plumb/words.es.tsv').map((cells) => [cells[0], cells.at(-1)]));

function rows(file) {
	return readFileSync(join(root, file), 'utf8').split('\n')
		.filter((line) => line !== '' && !line.startsWith('#')).map((line) => line.split('\t'));
}

// uiText returns a text of the interface with its slots filled.
export function uiText(key, slots = {}, lang = 'en') {
	let text = (lang === 'es' ? spanish : english).get(key);
	if (text === undefined) throw new Error(`there is no ${lang} text ${key}`);
	for (const [name, value] of Object.entries(slots)) text = text.replaceAll(`{${name}}`, value);
	return text;
}

// uiPattern returns a pattern that matches a text of the interface with any content of
// its slots.
export function uiPattern(key, lang = 'en') {
	const parts = uiText(key, {}, lang).split(/\{\w+\}/);
	return new RegExp('^\\s*' + parts.map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/\s+/g, '\\s+')).join('[^]*?') + '\\s*$');
}
