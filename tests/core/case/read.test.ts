import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readCase } from '#core/case/read.ts';
import type { Problem } from '#core/case/record.ts';

const EXAMPLE = readFileSync('personas/clients/turns-left/case.json', 'utf8');

/** The example with one field changed; the path in dots. */
function changed(path: string, value: unknown): string {
	const json = JSON.parse(EXAMPLE) as Record<string, unknown>;
	const keys = path.split('.');
	const last = keys.pop() ?? '';
	let at = json;
	for (const key of keys) at = at[key] as Record<string, unknown>;
	at[last] = value;
	return JSON.stringify(json);
}

/** The example with a wall along its whole front. */
function closed(): string {
	const json = JSON.parse(changed('enclosure.walls.front', { stands: true })) as { enclosure: object };
	const frontWall = { side: 'left', length: { value: 900, how: 'measured' } };
	return JSON.stringify({ ...json, enclosure: { ...json.enclosure, frontWall } });
}

const WOOD = { kind: 'blocking', x0: 0, x1: 300, y0: 0, y1: 300, thickness: 38, how: 'measured' };

function problems(text: string): readonly Problem[] {
	const read = readCase(text);
	return read.kind === 'bad' ? read.problems : [];
}

describe('[case R2] a good file gives the case', () => {
	test.each(['turns-left', 'stands-then-tires'])('%s', (client) => {
		expect(readCase(readFileSync(`personas/clients/${client}/case.json`, 'utf8')).kind).toBe('case');
	});

	test('with the mark some editors put at the start', () => {
		expect(readCase(`\uFEFF${EXAMPLE}`).kind).toBe('case');
	});

	test('lengths come out on the 1/320 mm grid', () => {
		const read = readCase(changed('enclosure.width.value', 914.40001));
		expect(read.kind === 'case' && read.case.enclosure.width.value).toBe(914.4);
	});
});

describe('[case R3] a bad file gives every problem with its path and what was seen', () => {
	test.each([
		['an empty file', '', 'the whole file', 'empty'],
		['spaces only', ' \n', 'the whole file', 'empty'],
		['a torn file', EXAMPLE.slice(0, 900), 'the whole file', 'torn'],
		['an array', '[]', 'the whole file', 'object'],
		['null', 'null', 'the whole file', 'object'],
		['another schema', changed('schema', 'recipe'), 'schema', 'recipe'],
		['a newer version', changed('version', 2), 'version', 'newer'],
		['a wrong type', changed('people.client.mass.value', '66'), 'people.client.mass.value', '"66"'],
		['a negative length', changed('enclosure.depth.value', -5), 'enclosure.depth.value', '-5'],
		['a 9 m wall', changed('enclosure.width.value', 9000), 'enclosure.width.value', '9000'],
		['a length beyond all measure', changed('enclosure.width.value', -1.9e45), 'enclosure.width.value', '-1.9e+45'],
		['not a number', changed('enclosure.width.value', null), 'enclosure.width.value', 'null'],
		['an unknown key', changed('enclosure.colour', 'blue'), 'enclosure', 'colour'],
		['an unknown how', changed('enclosure.width.how', 'guessed'), 'enclosure.width.how', 'guessed'],
		['no client', changed('people.client.role', 'helper'), 'people', 'client'],
		[
			'a part nobody knows',
			changed('places.seat', { wall: 'left', variant: 'sofa', x: 1, y: 1, stage: 'pinned' }),
			'places.seat.variant',
			'sofa'
		],
		[
			'a part of another kind',
			changed('places.seat', { wall: 'left', variant: 'bar-600', x: 1, y: 1, stage: 'pinned' }),
			'places.seat.variant',
			'kind seat'
		],
		[
			'a seat on the wall opposite',
			changed('places.seat', { wall: 'right', variant: 'seat-24in', x: 400, y: -530, stage: 'pinned' }),
			'places.seat.wall',
			'expected the left wall'
		],
		[
			'a place for nothing a plan has',
			changed('places.sofa', { wall: 'left', variant: 'bar-600', x: 1, y: 1, stage: 'pinned' }),
			'places.sofa',
			'bar-control'
		],
		[
			'a seat wall that does not stand',
			changed('enclosure.walls.left', { stands: false }),
			'enclosure.seatWall',
			'expected a wall that stands'
		],
		[
			'a wall beside the entry of no length',
			changed('enclosure.walls.front', { stands: true }),
			'enclosure.frontWall',
			'side and length'
		],
		['a wall beside the entry that leaves no entry', closed(), 'enclosure.frontWall.length', 'leaves an entry'],
		[
			'a stud beyond its wall',
			changed('enclosure.walls.back.studs', { far: { x: 2500, width: 38, how: 'measured' } }),
			'enclosure.walls.back.studs.far.x',
			'saw 2500'
		],
		[
			'two studs in one place',
			changed('enclosure.walls.back.studs', {
				a: { x: 400, width: 38, how: 'measured' },
				b: { x: 420, width: 38, how: 'measured' }
			}),
			'enclosure.walls.back.studs.b.x',
			'of "a", 400'
		],
		[
			'backing beyond its wall',
			changed('enclosure.walls.back.backing', { one: { ...WOOD, x0: 2500, x1: 2600 } }),
			'enclosure.walls.back.backing.one',
			'on its wall'
		],
		[
			'two pieces of wood in one place, not equally thick',
			changed('enclosure.walls.back.backing', { one: WOOD, other: { ...WOOD, x1: 500, thickness: 89 } }),
			'enclosure.walls.back.backing.other.thickness',
			'of "one", 38'
		],
		[
			'strength declared without a paper',
			changed('enclosure.walls.back.backing', {
				one: { kind: 'declared', x0: 0, x1: 300, y0: 0, y1: 300, load: 1300, document: '', fixing: 'bolts' }
			}),
			'enclosure.walls.back.backing.one.document',
			'expected words'
		],
		['an id with a slash', changed('id', '../x'), 'id', '../x'],
		['a document that is not there', changed('reference', 'ada-1991'), 'reference', 'fr-erp-2014, or null for none'],
		[
			'a reason of spaces alone',
			changed('departures', { 'ADA-GB-Z-LOW/bar-back': { reason: '   ', by: 'therapist' } }),
			'departures.ADA-GB-Z-LOW/bar-back.reason',
			'expected words, not spaces alone'
		],
		[
			'a reason of 10000 characters',
			changed('departures', { 'ADA-GB-Z-LOW/bar-back': { reason: 'a'.repeat(10_000), by: 'therapist' } }),
			'departures.ADA-GB-Z-LOW/bar-back.reason',
			'expected at most 400 characters - saw'
		],
		[
			'a departure that names no row',
			changed('departures', { '': { reason: 'the tub is there', by: 'therapist' } }),
			'departures.""',
			'the name of this entry: expected words - saw ""'
		],
		[
			'a departure with a name of 10000 characters, shown cut',
			changed('departures', { ['k'.repeat(10_000)]: { reason: 'the tub is there', by: 'therapist' } }),
			`departures.${'k'.repeat(57)}...`,
			'the name of this entry: expected at most 120 characters - saw'
		]
	])('%s', (_, text, path, seen) => {
		const found = problems(text);
		expect(found.map((p) => p.path)).toContain(path);
		expect(found.find((p) => p.path === path)?.says).toContain(seen);
	});

	test('crossed corners of a backing', () => {
		const torn = changed('enclosure.walls.back.backing.reinforced.x1', -1);
		expect(problems(torn)).toEqual([
			{ path: 'enclosure.walls.back.backing.reinforced', says: expect.stringContaining('x0 less than x1') as string }
		]);
	});

	test('5 MB of junk is refused before it is parsed', () => {
		expect(problems('x'.repeat(5_000_000))).toEqual([
			{ path: 'the whole file', says: 'expected at most 2 MB - saw 5.0 MB' }
		]);
	});

	test('every problem at once, none hidden by another', () => {
		expect(problems('{"schema":"graspline-case","version":1}').length).toBeGreaterThan(4);
	});

	test('a name that would be lost is refused, not dropped', () => {
		const text = EXAMPLE.replace('"seam": {', '"__proto__": {');
		expect(problems(text)).toEqual([{ path: 'the whole file', says: expect.stringContaining('__proto__') as string }]);
		expect(readCase(EXAMPLE.replaceAll('"seam": {', '"constructor": {')).kind).toBe('case');
	});

	test('half of a sign is refused, in a text and in a name', () => {
		for (const torn of [EXAMPLE.replace('"seam": {', '"seam\\ud800": {'), EXAMPLE.replace('"0417"', '"04\\udc00"')]) {
			expect(problems(torn)).toEqual([
				{ path: 'the whole file', says: expect.stringContaining('half of a surrogate pair') as string }
			]);
		}
	});

	test('values nested without end', () => {
		const text = '['.repeat(900_000) + ']'.repeat(900_000);
		expect(problems(text)).toEqual([
			{ path: 'the whole file', says: expect.stringContaining('without end') as string }
		]);
	});
});
