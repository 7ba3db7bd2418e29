// A static file server for tests that can imitate peculiarities of other servers.
import { createServer } from 'node:http';
import { gzipSync } from 'node:zlib';
import { readFileSync, statSync } from 'node:fs';
import { extname, join } from 'node:path';

const types = {
	'.html': 'text/html; charset=utf-8', '.css': 'text/css', '.js': 'text/javascript', '.svg': 'image/svg+xml',
	'.png': 'image/png', '.jpg': 'image/jpeg', '.webp': 'image/webp', '.webmanifest': 'application/manifest+json',
	'.wasmz': 'application/octet-stream', '.json': 'application/json', '.txt': 'text/plain; charset=utf-8',
};

// serve starts a server for a folder and stops it when the test ends.
//   base           path of the folder on the server: '/', '/a/b/'
//   redirectIndex  /x/index.html answers 301 to /x/, as Go's file server does
//   maxAge         seconds of Cache-Control on everything but sw.js
//   types          content types by extension, replacing the defaults
//   zip            texts are sent with gzip, as most servers do
//   answer         (path) => {status, type, body} or undefined; path relative to the base
export async function serve(t, folder, options = {}) {
	const site = new Site(folder, options);
	await site.start();
	t.after(() => site.stop());
	return site;
}

// Site is one server; serve() stops it with its test.
export class Site {
	// requests lists the path of each request, relative to the base.
	requests = [];

	constructor(folder, { base = '/', redirectIndex = false, maxAge, types: more = {}, zip, answer, host = '127.0.0.1' }) {
		Object.assign(this, { folder, base, redirectIndex, maxAge, zip, answer, host });
		this.types = { ...types, ...more };
	}

	get origin() { return `http://${this.host}:${this.port}`; }
	get url() { return this.origin + this.base; }

	// count is the number of requests for a path.
	count(path) { return this.requests.filter((r) => r === path).length; }

	// start listens; after a stop on the same port, so that the origin is the same.
	async start() {
		this.server = createServer((request, response) => this.handle(request, response));
		await new Promise((done, fail) => this.server.on('error', fail).listen(this.port ?? 0, '127.0.0.1', done));
		this.port = this.server.address().port;
	}

	// stop closes the server and all connections, as at a loss of signal.
	async stop() {
		if (!this.server.listening) return;
		const closed = new Promise((done) => this.server.close(done));
		this.server.closeAllConnections();
		await closed;
	}

	handle(request, response) {
		const path = decodeURIComponent(new URL(request.url, 'http://x').pathname);
		if (!path.startsWith(this.base)) return send(response, 404, 'text/plain', 'outside the manual');
		const name = path.slice(this.base.length);
		this.requests.push(name);
		const custom = this.answer?.(name);
		if (custom) return send(response, custom.status ?? 200, custom.type ?? 'text/html', custom.body ?? '');
		if (this.redirectIndex && /(^|\/)index\.html$/.test(name)) {
			response.writeHead(301, { Location: './' }).end();
			return;
		}
		this.file(response, name === '' || name.endsWith('/') ? name + 'index.html' : name);
	}

	file(response, name) {
		const full = join(this.folder, name);
		if (!full.startsWith(this.folder) || !statSync(full, { throwIfNoEntry: false })?.isFile()) {
			return send(response, 404, types['.html'], readFileSync(join(this.folder, '404.html')));
		}
		const headers = this.maxAge && name !== 'sw.js' ? { 'Cache-Control': `max-age=${this.maxAge}` } : {};
		let body = readFileSync(full);
		if (this.zip && /^\.(html|css|js|svg|json|txt|tsv|webmanifest)$/.test(extname(name))) {
			body = gzipSync(body);
			headers['Content-Encoding'] = 'gzip';
		}
		send(response, 200, this.types[extname(name)] ?? 'application/octet-stream', body, headers);
	}
}

function send(response, status, type, body, headers = {}) {
	response.writeHead(status, { 'Content-Type': type, 'Content-Length': Buffer.byteLength(body), ...headers }).end(body);
}
