import { spawnSync } from 'node:child_process';
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

/** In this order; each has its line. */
const CHECKS = [
	{ name: 'types', run: types },
	{
		name: 'lint',
		run: () => tool('eslint/bin/eslint.js', ['--config', '.config/eslint.config.js', '--max-warnings', '0', '.'])
	},
	{ name: 'format', run: () => tool('prettier/bin/prettier.cjs', ['--check', '--log-level', 'warn', '.']) },
	{ name: 'unused code', run: () => tool('knip/bin/knip.js', ['--config', '.config/knip.json', '--no-progress']) },
	{ name: 'build', run: build }
];

/** The checks that start nothing. */
export function check() {
	return tell(runChecks());
}

/** The checks, then every test; the last line is the count. */
export async function test() {
	const checks = runChecks();
	const browser = await findBrowser();
	const projects = ['node', 'dom'];
	if ('missing' in browser) console.log(`browser        none: ${browser.missing}`);
	else {
		console.log(`browser        ${browser.from}: ${browser.executablePath}`);
		projects.push('walks');
	}
	const tests = runTests(projects);
	if ('missing' in browser) {
		console.log('The walks in a real browser were left out.');
		if (process.env['CI'] === 'true') tests.failed += 1;
	}
	return tell({ passed: checks.passed + tests.passed, failed: checks.failed + tests.failed });
}

/** @param {Count} count */
function tell({ passed, failed }) {
	console.log(`${passed} passed, ${failed} failed`);
	return failed === 0 ? 0 : 1;
}

/** @returns {Count} */
function runChecks() {
	const count = { passed: 0, failed: 0 };
	for (const { name, run } of CHECKS) {
		const began = Date.now();
		process.stdout.write(name.padEnd(15));
		const { ok, output } = run();
		console.log(`${ok ? 'passed' : 'FAILED'} in ${((Date.now() - began) / 1000).toFixed(1)} s`);
		if (!ok) console.log(output);
		count[ok ? 'passed' : 'failed'] += 1;
	}
	return count;
}

/** @returns {Outcome} */
function types() {
	const pages = tool('svelte-check/bin/svelte-check', ['--tsconfig', 'tsconfig.json', '--fail-on-warnings']);
	const serviceWorker = tool('typescript/bin/tsc', ['--noEmit', '-p', 'src/service-worker']);
	return { ok: pages.ok && serviceWorker.ok, output: pages.output + serviceWorker.output };
}

/**
 * @param {string} bin a package's own script
 * @param {string[]} args
 * @returns {Outcome}
 */
function tool(bin, args) {
	const run = spawnSync(process.execPath, [path.join('node_modules', bin), ...args], {
		cwd: ROOT,
		encoding: 'utf8',
		maxBuffer: 64 * 1024 * 1024
	});
	return { ok: run.status === 0, output: run.stdout + run.stderr };
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
