import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

const SRC = fileURLToPath(new URL('../../src', import.meta.url));

/** What each folder may read from; all of it stands above the folder, so the data flows one way. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
	'core/units': [],
	'core/geometry': core('units'),
	'core/case': core('units geometry'),
	'core/log': [],
	'core/body': core('units case'),
	'core/reach': core('units geometry body'),
	'core/enclosure': core('units geometry case'),
	'core/structure': core('units geometry case enclosure'),
	'core/measures': core('units geometry case body reach enclosure structure'),
	'core/rules': core('units case structure measures'),
	'core/needs': core('units geometry case body measures rules'),
	'core/placement': core('units geometry case structure measures rules'),
	// The files beside the folders: the table of contents calls every stage of the plan; sheets come after it.
	'core/plan': core('units geometry case log body reach enclosure structure measures rules needs placement'),
	'core/drawing': core('units geometry case log body reach enclosure structure measures rules needs placement plan'),
	'core/render': core('units geometry drawing'),
	'core/files': core('geometry plan drawing render'),
	store: core('log case'),
	ui: ['core', 'store', 'ui'],
	routes: ['core', 'store', 'ui'],
	cli: ['core'],
	'service-worker': []
};

/** The packages a folder may use; a core folder with none computes from what is ours alone. */
const MAY_USE: Readonly<Record<string, readonly string[]>> = {
	'core/case': ['zod'],
	'core/render': ['jspdf'],
	store: ['idb'],
	ui: ['svelte', '$app', '@svgdotjs/svg.js'],
	routes: ['svelte', '$app'],
	cli: ['node', 'playwright-core', 'highs'],
	'service-worker': ['$service-worker']
};

interface Import {
	file: string;
	folder: string;
	from: string;
}

function core(names: string): string[] {
	return names.split(' ').map((name) => `core/${name}`);
}

/** `core/rules` for src/core/rules/packs/x.ts, `core/plan` for src/core/plan.ts, `ui/fields` for src/ui/fields/x.svelte. */
function folderOf(file: string): string {
	const [first = '', second = '', third] = file.split('/');
	if (first === 'core') return third === undefined ? 'core/plan' : `core/${second}`;
	return first === 'ui' && third !== undefined ? `ui/${second}` : first;
}

/** What a folder's line in a table says; the folders of ui share one line. */
function line(table: Readonly<Record<string, readonly string[]>>, folder: string): readonly string[] {
	return table[folder] ?? table[folder.split('/')[0] ?? ''] ?? [];
}

function imports(): Import[] {
	return sources().flatMap((file) => {
		const text = readFileSync(path.join(SRC, file), 'utf8');
		const script = file.endsWith('.svelte')
			? [...text.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map((found) => found[1]).join('\n')
			: text;
		return ts
			.preProcessFile(script, true, true)
			.importedFiles.map(({ fileName }) => ({ file, folder: folderOf(file), from: fileName }));
	});
}

function sources(): string[] {
	return readdirSync(SRC, { recursive: true, encoding: 'utf8' })
		.map((file) => file.replaceAll('\\', '/'))
		.filter((file) => /\.(ts|js|mjs|svelte)$/.test(file));
}

/** What is wrong with one import and how to put it right, or null. */
function fault(asked: Import): string | null {
	const wrong = /^[.#]/.test(asked.from) ? faultOfPath(asked) : faultOfPackage(asked);
	return wrong === null ? null : `src/${asked.file} imports '${asked.from}': ${wrong}`;
}

function faultOfPath({ file, folder, from }: Import): string | null {
	const target = from.startsWith('#')
		? from.slice(1).replace(/\?.*$/, '')
		: path.posix.join(path.posix.dirname(file), from);
	const there = folderOf(target);
	if (there === folder) return from.startsWith('#') ? "inside a folder write './...'." : null;
	const allowed = line(MAY_IMPORT, folder);
	if (!allowed.some((name) => there === name || there.startsWith(`${name}/`)) && target !== 'app.css') {
		return `${folder} may read ${allowed.join(', ') || 'no other folder'}. Move what is shared up into one of those, or hand it over as an argument.`;
	}
	return from.startsWith('#') || target === 'app.css' ? null : `across folders write '#${target}'.`;
}

function faultOfPackage({ folder, from }: Import): string | null {
	const used = from.replace(/^node:.*/, 'node').replace(/^((?:@[^/]+\/)?[^/]+).*/, '$1');
	const packages = line(MAY_USE, folder);
	return packages.includes(used)
		? null
		: `${folder} may use ${packages.join(', ') || 'no package'}. Do it with what is ours, or in a folder that may.`;
}

describe('every import follows the table', () => {
	test('[architecture R1] each folder reads only what stands above it, by the agreed path, and uses only its packages', () => {
		expect(
			imports()
				.map(fault)
				.filter((said) => said !== null)
		).toEqual([]);
	});

	test('[architecture R2] every folder that holds sources has its line in the table', () => {
		const loose = ['app.d.ts'];
		const folders = new Set(
			sources()
				.filter((file) => !loose.includes(file))
				.map(folderOf)
		);
		expect([...folders].filter((folder) => !(folder in MAY_IMPORT) && !folder.startsWith('ui/'))).toEqual([]);
	});

	test('[architecture R3] the table itself has no circle', () => {
		const reaches = (folder: string, seen: readonly string[]): boolean =>
			(MAY_IMPORT[folder] ?? []).some((next) => seen.includes(next) || reaches(next, [...seen, next]));
		expect(
			Object.keys(MAY_IMPORT)
				.filter((folder) => folder.startsWith('core/'))
				.filter((folder) => reaches(folder, [folder]))
		).toEqual([]);
	});

	test.each([
		[
			{ file: 'core/log/entry.ts', folder: 'core/log', from: '#core/case/record.ts' },
			'core/log may read no other folder'
		],
		[
			{ file: 'core/rules/row.ts', folder: 'core/rules', from: '../measures/registry.ts' },
			"write '#core/measures/registry.ts'"
		],
		[
			{ file: 'core/rules/row.ts', folder: 'core/rules', from: '#core/rules/judge.ts' },
			"inside a folder write './...'"
		],
		[{ file: 'core/reach/arm.ts', folder: 'core/reach', from: 'svelte/store' }, 'core/reach may use no package'],
		[{ file: 'core/case/record.ts', folder: 'core/case', from: 'node:fs' }, 'core/case may use zod'],
		[{ file: 'ui/views/a.svelte', folder: 'ui/views', from: '#cli/plan.ts' }, 'ui/views may read core, store, ui']
	])('[architecture R4] a wrong import is told with the way out: %o', (wrong, way) => {
		expect(fault(wrong)).toContain(way);
	});
});
