import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { build, BUILT, ROOT } from './build.mjs';

// Everything npm can be asked for goes through here, and only Node's own modules are needed to get started.

const OLDEST_NODE = [20, 19];
const WANTED_PORT = 4173;

/** @type {Record<string, (args: string[]) => number | Promise<number>>} */
const VERBS = {
	start,
	build: () => report(build()),
	check: async () => (await import('./checks.mjs')).check(),
	test: async () => (await import('./checks.mjs')).test(),
	plan: (args) => script('src/cli/plan.ts', args),
	references: (args) => script('src/cli/references.ts', args),
	bench: (args) => script('src/cli/bench.ts', args),
	format: () => node(['node_modules/prettier/bin/prettier.cjs', '--write', '.'])
};

const [verb = '', ...args] = process.argv.slice(2);
const run = VERBS[verb];
if (run) {
	install();
	process.exitCode = await run(args);
} else {
	console.error(`Say one of ${Object.keys(VERBS).join(', ')} - saw "${verb}".`);
	process.exitCode = 2;
}

/** Packages as the lock file has them, and the framework's generated types; done again only when either is out of date. */
function install() {
	const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
	const [oldest = 0, oldestMinor = 0] = OLDEST_NODE;
	if (major < oldest || (major === oldest && minor < oldestMinor)) {
		console.error(`Node ${OLDEST_NODE.join('.')} or newer is needed, this is ${process.versions.node}.`);
		process.exit(1);
	}
	const wanted = createHash('sha256')
		.update(readFileSync(path.join(ROOT, 'package-lock.json')))
		.update(process.version)
		.digest('hex');
	const stamp = path.join(ROOT, 'node_modules/.installed');
	if (!existsSync(stamp) || readFileSync(stamp, 'utf8') !== wanted) {
		console.error('Installing the packages; this happens once.');
		must(npm(['ci', '--ignore-scripts', '--no-audit', '--no-fund', '--prefer-offline']));
		writeFileSync(stamp, wanted);
	}
	if (!existsSync(path.join(ROOT, '.svelte-kit/tsconfig.json'))) {
		must(node(['node_modules/@sveltejs/kit/svelte-kit.js', 'sync'], 'to stderr'));
	}
}

/** @param {number} status */
function must(status) {
	if (status !== 0) process.exit(status);
}

async function start() {
	const port = Number(process.env['PORT'] ?? WANTED_PORT);
	if (!Number.isInteger(port) || port < 0 || port > 65_535) {
		console.error(`PORT must be a whole number from 0 to 65535 - saw "${process.env['PORT']}".`);
		return 2;
	}
	console.log('Building what changed.');
	const built = report(build());
	if (built !== 0) return built;
	const { serve } = await import('./serve.mjs');
	const { url } = await serve(BUILT, port);
	console.log(`Graspline is at ${url}`);
	return 0;
}

/** @param {{ ok: boolean, output: string }} built */
function report({ ok, output }) {
	if (!ok) process.stderr.write(output);
	return ok ? 0 : 1;
}

/**
 * @param {string} file
 * @param {string[]} given
 */
function script(file, given) {
	return node(['--import', 'tsx', file, ...given]);
}

/**
 * @param {string[]} given
 * @param {'to stdout' | 'to stderr'} says
 */
function node(given, says = 'to stdout') {
	const stdout = says === 'to stdout' ? 'inherit' : 2;
	return spawnSync(process.execPath, given, { cwd: ROOT, stdio: ['inherit', stdout, 'inherit'] }).status ?? 1;
}

/** @param {string[]} given */
function npm(given) {
	const itself = process.env['npm_execpath'];
	if (itself) return node([itself, ...given], 'to stderr');
	const options = { cwd: ROOT, shell: process.platform === 'win32' };
	return spawnSync('npm', given, { ...options, stdio: ['inherit', 2, 'inherit'] }).status ?? 1;
}
