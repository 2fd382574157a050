import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

/**
 * A browser the walks can start, or why there is none.
 * @typedef {{ executablePath: string, env: Record<string, string>, from: string }} Browser
 * @typedef {{ missing: string }} NoBrowser
 */

const MODULES = fileURLToPath(new URL('../../node_modules', import.meta.url));

const INSTALLED = [
	'/usr/bin/chromium',
	'/usr/bin/chromium-browser',
	'/usr/bin/google-chrome-stable',
	'/usr/bin/google-chrome',
	'/usr/bin/microsoft-edge',
	'/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
	'/Applications/Chromium.app/Contents/MacOS/Chromium',
	'/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
	'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
	'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
	'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe'
];

/** For a headless run that asks nothing of the network; the web's own protections stay on. */
export const BROWSER_ARGS = [
	'--no-sandbox',
	'--disable-gpu',
	'--disable-quic',
	'--no-first-run',
	'--disable-background-networking',
	'--disable-component-update',
	'--disable-sync'
];

/**
 * The browser CHROME names (`npm` names the one shipped among the packages), else an installed one, else the shipped one.
 * @returns {Promise<Browser | NoBrowser>}
 */
export async function findBrowser() {
	const asked = process.env['CHROME'];
	if (asked === 'npm') return shippedBrowser();
	if (asked) {
		return existsSync(asked)
			? { executablePath: asked, env: {}, from: 'CHROME' }
			: { missing: `CHROME names ${asked}, and there is no such file` };
	}
	const installed = INSTALLED.find((file) => existsSync(file));
	return installed ? { executablePath: installed, env: {}, from: 'this machine' } : shippedBrowser();
}

/**
 * The headless browser inside an npm package, unpacked once next to the packages.
 * @returns {Promise<Browser | NoBrowser>}
 */
async function shippedBrowser() {
	const none = 'no Chromium, Chrome or Edge was found; install one, or name one in CHROME';
	const shipped = path.join(MODULES, '@sparticuz/chromium');
	if (process.platform !== 'linux' || process.arch !== 'x64' || !existsSync(shipped)) return { missing: none };

	const { version } = /** @type {{ version: string }} */ (
		JSON.parse(readFileSync(path.join(shipped, 'package.json'), 'utf8'))
	);
	const home = path.join(MODULES, '.cache', `chromium-${version}`);
	if (!existsSync(path.join(home, 'complete'))) await unpack(shipped, home);
	return {
		executablePath: path.join(home, 'chromium'),
		env: { LD_LIBRARY_PATH: path.join(home, 'al2023/lib'), FONTCONFIG_PATH: path.join(home, 'fonts') },
		from: `the npm package, version ${version}`
	};
}

/**
 * The package would unpack itself and its libraries only on the cloud it is made for, and into a folder that knows no
 * version; so its own inflate is called here, with the folder we want as the place for temporary files.
 * @param {string} shipped
 * @param {string} home
 */
async function unpack(shipped, home) {
	rmSync(home, { recursive: true, force: true });
	mkdirSync(home, { recursive: true });
	const { inflate } = /** @type {{ inflate: (file: string) => Promise<string> }} */ (
		await import(pathToFileURL(path.join(shipped, 'build/esm/lambdafs.js')).href)
	);
	const usual = process.env['TMPDIR'];
	process.env['TMPDIR'] = home;
	const parts = ['chromium.br', 'fonts.tar.br', 'al2023.tar.br'].map((file) =>
		inflate(path.join(shipped, 'bin', file))
	);
	if (usual === undefined) delete process.env['TMPDIR'];
	else process.env['TMPDIR'] = usual;
	await Promise.all(parts);

	// With no font at all a page with text crashes; the package's own file looks for them elsewhere.
	writeFileSync(
		path.join(home, 'fonts/fonts.conf'),
		`<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><dir>${home}/fonts</dir><dir>/usr/share/fonts</dir><cachedir>${home}/fonts-cache</cachedir></fontconfig>`
	);
	writeFileSync(path.join(home, 'complete'), '');
}
