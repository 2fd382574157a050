import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { findBrowser } from './browser.mjs';
import { build, ROOT } from './build.mjs';

/**
 * One thing that is either in order or not, with what there is to say about it.
 * @typedef {{ ok: boolean, output: string }} Outcome
 * @typedef {{ passed: number, failed: number }} Count
 */

const TOLD = path.join(ROOT, 'node_modules/.cache/graspline/tests.json');

/**
 * What needs nothing started; each has its line.
 * @type {readonly { name: string, run: () => Promise<Outcome> }[]}
 */
const CHECKS = [
	{
		name: 'types',
		run: () => tool('svelte-check/bin/svelte-check', '--tsconfig', 'tsconfig.json', '--fail-on-warnings')
	},
	{ name: 'worker types', run: () => tool('typescript/bin/tsc', '--noEmit', '-p', 'src/service-worker') },
	{
		name: 'lint',
		run: () => tool('eslint/bin/eslint.js', '--config', '.config/eslint.config.js', '--max-warnings', '0', '.')
	},
	{ name: 'format', run: () => tool('prettier/bin/prettier.cjs', '--check', '--log-level', 'warn', '.') },
	{ name: 'unused code', run: () => tool('knip/bin/knip.js', '--config', '.config/knip.json', '--no-progress') }
];

export async function check() {
	return tell(await runChecks());
}

/** The checks, then every test; the last line is the count. */
export async function test() {
	const checks = await runChecks();
	const browser = await findBrowser();
	const missing = 'missing' in browser ? browser.missing : checks.built ? null : 'there is no built app';
	console.log(`tests          ${'from' in browser ? `walks in the browser from ${browser.from}` : ''}`.trimEnd());
	const tests = runTests(missing === null ? ['node', 'dom', 'walks'] : ['node', 'dom']);
	if (missing !== null) {
		console.log(`The walks in a real browser were left out: ${missing}.`);
		if (process.env['CI'] === 'true') tests.failed += 1;
	}
	return tell({ passed: checks.passed + tests.passed, failed: checks.failed + tests.failed });
}

/** @param {Count} count */
function tell({ passed, failed }) {
	console.log(`${passed} passed, ${failed} failed`);
	return failed === 0 ? 0 : 1;
}

/**
 * All checks at once, told in their order; then the build, which writes what the others read.
 * @returns {Promise<Count & { built: boolean }>}
 */
async function runChecks() {
	const began = Date.now();
	const count = { passed: 0, failed: 0 };
	// A new route brings new types.
	await tool('@sveltejs/kit/svelte-kit.js', 'sync');
	/** @type {(name: string, outcome: Outcome) => void} */
	const told = (name, { ok, output }) => {
		const seconds = ((Date.now() - began) / 1000).toFixed(1);
		console.log(`${name.padEnd(15)}${ok ? 'passed' : 'FAILED'} at ${seconds} s`);
		if (!ok) console.log(output);
		count[ok ? 'passed' : 'failed'] += 1;
	};
	const running = CHECKS.map(({ name, run }) => ({ name, outcome: run() }));
	for (const { name, outcome } of running) told(name, await outcome);
	const built = build();
	told('build', built);
	return { ...count, built: built.ok };
}

/**
 * @param {string} bin a package's own script
 * @param {string[]} args
 * @returns {Promise<Outcome>}
 */
function tool(bin, ...args) {
	return new Promise((done) => {
		const child = spawn(process.execPath, [path.join('node_modules', bin), ...args], {
			cwd: ROOT,
			env: { ...process.env, NO_COLOR: '1' },
			stdio: ['ignore', 'pipe', 'pipe']
		});
		let output = '';
		for (const stream of [child.stdout, child.stderr]) {
			stream.setEncoding('utf8').on('data', (/** @type {string} */ part) => (output += part));
		}
		child.on('close', (status) => {
			done({ ok: status === 0, output });
		});
	});
}

/**
 * @param {string[]} projects
 * @returns {Count}
 */
function runTests(projects) {
	mkdirSync(path.dirname(TOLD), { recursive: true });
	rmSync(TOLD, { force: true });
	const args = ['run', ...projects.flatMap((name) => ['--project', name])];
	const reporters = ['--reporter', 'dot', '--reporter', 'json', `--outputFile.json=${TOLD}`];
	const run = spawnSync(process.execPath, ['node_modules/vitest/vitest.mjs', ...args, ...reporters], {
		cwd: ROOT,
		stdio: 'inherit'
	});
	const count = countTests();
	// A file that does not load, or an error outside of any test, has no test to its name.
	if (run.status !== 0 && count.failed === 0) count.failed = 1;
	return count;
}

/** @returns {Count} */
function countTests() {
	if (!existsSync(TOLD)) return { passed: 0, failed: 0 };
	const told = /** @type {{ numPassedTests: number, numFailedTests: number }} */ (
		JSON.parse(readFileSync(TOLD, 'utf8'))
	);
	return { passed: told.numPassedTests, failed: told.numFailedTests };
}
