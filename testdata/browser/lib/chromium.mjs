// The path and options of the browser. Chromium's headless shell is preferred: it is
// the same engine without a window and starts faster. Otherwise the full browser
// is used. COURSEBOOK_CHROMIUM sets the path of either.
import { execFileSync } from 'node:child_process';

export const phone = { width: 360, height: 740 };
export const desktop = { width: 1280, height: 800 };

// A host that is neither https nor local, as on a job-site network. The browser
// resolves it to 127.0.0.1.
export const plainHost = 'manual.example';

export const launchOptions = {
	executablePath: process.env.COURSEBOOK_CHROMIUM || execFileSync('sh', ['-c', 'command -v chromium-headless-shell || command -v chromium'], { encoding: 'utf8' }).trim(),
	headless: true,
	args: [
		'--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
		'--disable-component-update', '--disable-sync', `--host-resolver-rules=MAP ${plainHost} 127.0.0.1`,
	],
};
