import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { DOCUMENTS } from '#core/rules/packs/index.ts';

function references(...words: readonly string[]) {
	const args = ['node_modules/tsx/dist/cli.mjs', 'src/cli/references.ts', ...words];
	const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8', timeout: 60_000 });
	return { status, stdout, stderr };
}

/** Text as read: a phrase may run over the end of a line. */
const flowing = (text: string): string => text.replace(/\s+/g, ' ');

const packOf = (id: string) => {
	const pack = DOCUMENTS.find((one) => one.id === id);
	if (!pack) throw new RangeError(`no document is called ${id}`);
	return pack;
};

describe('[cli R8] the documents as they are read here', { timeout: 90_000 }, () => {
	const all = references();
	const text = flowing(all.stdout);

	test('every document, every row with its clause and sentence, and everything left to judgement', () => {
		expect([all.status, all.stderr]).toEqual([0, '']);
		for (const { id, name, scope, requires, rows, judgement } of DOCUMENTS) {
			expect(text).toContain(`${name} [${id}]`);
			expect(text).toContain(`Binds: ${scope?.binds ?? ''} Homes: ${scope?.homes ?? ''}`.trim());
			for (const row of rows) {
				expect(text).toContain(`${row.id}: ${row.clause};`);
				expect(text).toContain(row.says);
			}
			for (const row of requires) expect(text).toContain(`${row.id}: ${row.clause}; ${row.says}`);
			for (const one of judgement) expect(text).toContain(one);
		}
	});

	test('no line is wider than 100 columns, and none ends in a space', () => {
		for (const line of all.stdout.split('\n')) {
			expect(line.length, line).toBeLessThanOrEqual(100);
			expect(line).toBe(line.trimEnd());
		}
	});

	test('the rows are counted, each once by kind and once by how it is known', () => {
		const counts = [...text.matchAll(/(\d+) rows: ([^.]*)\. Known: ([^.]*)\./g)];
		expect(counts.map(([, n]) => Number(n))).toEqual(DOCUMENTS.map(({ rows }) => rows.length));
		const sum = (words = '') => [...words.matchAll(/\d+/g)].reduce((n, [one]) => n + Number(one), 0);
		expect(counts.map(([, , kinds]) => sum(kinds))).toEqual(DOCUMENTS.map(({ rows }) => rows.length));
		expect(counts.map(([, , , hows]) => sum(hows))).toEqual(DOCUMENTS.map(({ rows }) => rows.length));
	});

	test('one alone, its limits in its own unit: inches with the millimetres printed beside them', () => {
		const { status, stdout } = references('ada-2010');
		const ada = flowing(stdout);
		expect(status).toBe(0);
		// 609.4, 609.3, 608.6 as the document prints them; the 3 mm are ours.
		expect(ada).toContain('ADA-GB-Z-LOW: 609.4; 33 to 36 in (840 to 915 mm)');
		expect(ada).toContain('ADA-GB-WALLGAP: 609.3; 1 1/2 in (38 mm), 3 mm of ours either way');
		expect(ada).toContain('ADA-TEMP: 608.6; at most 120 F (49 C)');
		expect(ada).toContain('Tolerance of ours: 3 mm either way on what is printed as one value.');
		for (const { id } of DOCUMENTS.filter((pack) => pack.id !== 'ada-2010')) expect(ada).not.toContain(`[${id}]`);
	});

	test('a fall is told as one in so many', () => {
		// 11B-809.10.6.2: 1/2 in in a foot.
		expect(text).toContain('CA-FALL: 11B-809.10.6.2; at most 1:24');
	});

	test('what is so or is not has no figure', () => {
		for (const one of ['ADA-LOAD-BAR: 609.8; so', 'ON-04: 3.8.3.13.(2)(b); so']) expect(text).toContain(one);
		expect(text).not.toMatch(/at least 0 /);
	});

	test('what has to be exceeded is told from what has to be met, and what is superseded is advice', () => {
		const france = text.slice(text.indexOf('[fr-erp-2014]'));
		// Order of 8 December 2014, art. 11 II 2 a; order of 31 May 1994, art. 10.
		expect(france).toContain('FR-02: art. 11 II 2 a; more than 400 mm');
		expect(france).toContain('FR-L1: art. 10; 460 to 500 mm; advice');
		expect(france).toContain('Editions read: French order of 8 December 2014; French order of 31 May 1994.');
		expect(france).toContain('Tolerance of ours: none.');
	});

	test('what only differs from another names it, and what it has instead', () => {
		const differing = DOCUMENTS.filter(({ differsFrom }) => differsFrom);
		expect(differing.length).toBeGreaterThan(0);
		for (const { differsFrom } of differing) {
			expect(text).toContain(`Holds what differs from ${packOf(differsFrom?.pack ?? '').name}`);
			for (const id of differsFrom?.instead ?? []) expect(text).toMatch(new RegExp(`Instead of: [^.]*${id}`));
		}
	});

	test.each([[['din-18040']], [['ada-2010', 'cbc-11b']]])(
		'%j is refused with the ids there are, in lines of at most 100 columns',
		(words) => {
			const { status, stdout, stderr } = references(...words);
			expect([status, stdout]).toEqual([2, '']);
			for (const line of stderr.split('\n')) expect(line.length, line).toBeLessThanOrEqual(100);
			for (const { id } of DOCUMENTS) expect(stderr).toContain(id);
		}
	);
});
