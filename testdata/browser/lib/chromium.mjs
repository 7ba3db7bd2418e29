// Which browser, and how it is started. It reaches nothing but this machine.
// Chromium's headless shell is the same engine without windows, tabs and
// address bar around it, and much quicker. Where there is none the whole browser
// does; COURSEBOOK_CHROMIUM names either.
import { execFileSync } from 'node:child_process';

export const phone = { width: 360, height: 740 };
export const desk = { width: 1280, height: 800 };

// An address that is neither https nor this machine's own, as on a job-site
// network; the browser is configured to find it here.
export const plainHost = 'manual.example';

export const launchOptions = {
	executablePath: process.env.COURSEBOOK_CHROMIUM || execFileSync('sh', ['-c', 'command -v chromium-headless-shell || command -v chromium'], { encoding: 'utf8' }).trim(),
	headless: true,
	args: [
		'--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
		'--disable-component-update', '--disable-sync', `--host-resolver-rules=MAP ${plainHost} 127.0.0.1`,
	],
};
