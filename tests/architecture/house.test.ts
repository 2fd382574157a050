import { readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

const TOP_LEVEL = [
	...['README.md', 'DEVELOPERS.md', 'LICENSE', 'package.json', 'package-lock.json'],
	...['tsconfig.json', 'svelte.config.js', 'vite.config.ts'],
	...['src', 'static', 'tests', 'personas']
];

const PICTURES_AND_FONTS = /\.(png|jpg|pdf|ttf|woff2|ico)$/;
/** Other people's licences say what they say. */
const LICENCES = /(^|\/)(LICENSE|OFL)[^/]*$/;

/** Spelled so that the patterns do not find themselves. */
const OF_ONE_MACHINE = /\/(?:home|Users|root|work|farm|tmp|opt)\/[\w.-]+/;
const REGISTRY = /registry\.(?:npm|yarn)|"resolved"\s*:/;
const UNWANTED_WORDS = /\b(?:compliant|compliance|lorem ipsum|not implemented)\b|\bsafe\b(?!-area-inset)/i;
const UNFINISHED = /\b(?:TO{1}DO|FIX{1}ME)\b/;

/** What git leaves out, and the packages: not part of the house. */
const left = readFileSync(path.join(ROOT, '.gitignore'), 'utf8')
	.split('\n')
	.map((line) => line.replace(/\/$/, ''));

/** The text files under these names, as paths from the top. */
function texts(names: readonly string[]): string[] {
	return names
		.filter((name) => readdirSync(ROOT).includes(name))
		.flatMap((name) =>
			statSync(path.join(ROOT, name)).isFile()
				? [name]
				: readdirSync(path.join(ROOT, name), { recursive: true, withFileTypes: true })
						.filter((entry) => entry.isFile())
						.map((entry) => path.relative(ROOT, path.join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
		)
		.filter((file) => !PICTURES_AND_FONTS.test(file) && !LICENCES.test(file));
}

/** `file:line: text` for every line the pattern finds. */
function found(pattern: RegExp, files: readonly string[]): string[] {
	return files.flatMap((file) =>
		readFileSync(path.join(ROOT, file), 'utf8')
			.split('\n')
			.flatMap((line, index) => (pattern.test(line) ? [`${file}:${index + 1}: ${line.trim().slice(0, 120)}`] : []))
	);
}

const everything = texts([...TOP_LEVEL, '.ci', '.config', '.gitignore', '.npmrc', '.prettierignore']);
const shown = texts(['src', 'static', 'personas', 'README.md', 'DEVELOPERS.md']);

describe('the house is in order', () => {
	test('[house R1] the top level holds only what belongs there', () => {
		const here = readdirSync(ROOT).filter((name) => !name.startsWith('.') && !left.includes(name));
		expect(here.filter((name) => !TOP_LEVEL.includes(name))).toEqual([]);
	});

	test('[house R2] every package is pinned to one version', () => {
		const { dependencies, devDependencies, optionalDependencies } = JSON.parse(
			readFileSync(path.join(ROOT, 'package.json'), 'utf8')
		) as Record<string, Record<string, string>>;
		const loose = Object.entries({ ...dependencies, ...devDependencies, ...optionalDependencies }).filter(
			([, version]) => !/^\d+\.\d+\.\d+$/.test(version)
		);
		expect(loose).toEqual([]);
	});

	test('[house R3] nothing names the machine it was written on or the place its packages came from', () => {
		expect(found(OF_ONE_MACHINE, everything)).toEqual([]);
		expect(found(REGISTRY, everything)).toEqual([]);
	});

	test('[house R4] no verdict word and nothing unfinished in what people read', () => {
		expect(found(UNWANTED_WORDS, shown)).toEqual([]);
		expect(found(UNFINISHED, shown)).toEqual([]);
	});

	test('[house R5] no test is skipped or singled out', () => {
		const marked = /\b(?:it|test|describe)\.(?:skip|only|todo)\b/;
		expect(found(marked, texts(['tests']))).toEqual([]);
	});

	test.each([
		[OF_ONE_MACHINE, `see ${['', 'home', 'me', 'notes.md'].join('/')}`],
		[REGISTRY, ['"resol', 'ved": "x"'].join('')],
		[UNWANTED_WORDS, 'The bar is Safe here.'],
		[UNWANTED_WORDS, 'ADA-compliant'],
		[UNFINISHED, ['TO', 'DO: later'].join('')]
	])('[house R6] %s would find "%s"', (pattern, line) => {
		expect(pattern.test(line)).toBe(true);
	});

	test.each(['safeParse(input)', "'unsafe-hashes'", 'padding: env(safe-area-inset-top)', '/usr/bin/chromium'])(
		'[house R6] "%s" is no offence',
		(line) => {
			expect([OF_ONE_MACHINE, REGISTRY, UNWANTED_WORDS, UNFINISHED].filter((pattern) => pattern.test(line))).toEqual(
				[]
			);
		}
	);
});
