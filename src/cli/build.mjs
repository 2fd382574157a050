import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));
/** Where the built app lies. */
export const BUILT = path.join(ROOT, 'build');

const STAMP = path.join(ROOT, '.svelte-kit/built');
const SOURCES = ['src', 'static', 'package.json', 'package-lock.json', 'svelte.config.js', 'vite.config.ts'];

/**
 * Builds the app, unless what is built came from these very sources.
 * @returns {{ ok: boolean, output: string }}
 */
export function build() {
	const sources = sourcesDigest();
	if (existsSync(path.join(BUILT, 'index.html')) && existsSync(STAMP) && readFileSync(STAMP, 'utf8') === sources) {
		return { ok: true, output: '' };
	}
	const vite = path.join(ROOT, 'node_modules/vite/bin/vite.js');
	const run = spawnSync(process.execPath, [vite, 'build', '--logLevel', 'warn'], { cwd: ROOT, encoding: 'utf8' });
	const ok = run.status === 0;
	if (ok) writeFileSync(STAMP, sources);
	return { ok, output: run.stdout + run.stderr };
}

/** @returns {string} */
function sourcesDigest() {
	const hash = createHash('sha256');
	for (const file of SOURCES.flatMap(filesIn).sort()) {
		hash.update(`${file}\0`).update(readFileSync(path.join(ROOT, file)));
	}
	return hash.digest('hex');
}

/**
 * @param {string} name
 * @returns {string[]}
 */
function filesIn(name) {
	if (path.extname(name) !== '' || !existsSync(path.join(ROOT, name))) return [name];
	return readdirSync(path.join(ROOT, name), { recursive: true, withFileTypes: true })
		.filter((entry) => entry.isFile())
		.map((entry) => path.relative(ROOT, path.join(entry.parentPath, entry.name)));
}
