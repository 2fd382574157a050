import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import type { Report } from '#core/report.ts';

const EXAMPLE = readFileSync('personas/clients/turns-left/case.json', 'utf8');
const folder = mkdtempSync(path.join(tmpdir(), 'graspline-'));

afterAll(() => {
	rmSync(folder, { recursive: true });
});

function plan(...words: readonly string[]) {
	const args = ['node_modules/tsx/dist/cli.mjs', 'src/cli/plan.ts', ...words];
	const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8', timeout: 60_000 });
	return { status, stdout, stderr };
}

function fileOf(name: string, text: string): string {
	const file = path.join(folder, `${name}.json`);
	writeFileSync(file, text);
	return file;
}

/** The example with fields set, each by its path in dots. */
function changed(...edits: readonly (readonly [path: string, value: unknown])[]): string {
	const json = JSON.parse(EXAMPLE) as Record<string, unknown>;
	for (const [fields, value] of edits) {
		const keys = fields.split('.');
		const last = keys.pop() ?? '';
		let at = json;
		for (const key of keys) at = at[key] as Record<string, unknown>;
		at[last] = value;
	}
	return JSON.stringify(json);
}

/** The circle its document asks for, 60 in (304.3.1), which the example leaves open. */
const TURNS = ['enclosure.turning', { value: 1524, how: 'measured' }] as const;
/** Led by its document the example is quick to prove. */
const QUICK = changed(['lead', 'reference-led'], TURNS);

/** Text as read: a phrase may run over the end of a line. */
const flowing = (text: string): string => text.replace(/\s+/g, ' ');

describe('[cli R1] a good case gives marks and findings, and the sheets', { timeout: 90_000 }, () => {
	const out = path.join(folder, 'out');
	const ran = plan(fileOf('quick', QUICK), '--out', out);
	const report = JSON.parse(readFileSync(path.join(out, 'plan.json'), 'utf8')) as Report;

	test('exit 0: every must inside, and the proof', () => {
		expect(ran.stderr).toBe('');
		expect(ran.status).toBe(0);
		expect(report.status).toBe('optimal');
		expect(
			report.findings.filter((f) => f.strength === 'must' && !['inside', 'ask', 'not-here'].includes(f.answer))
		).toEqual([]);
	});

	test('the files and nothing else', () => {
		expect(readdirSync(out).toSorted()).toEqual(
			[
				'back-wall.svg',
				'back-wall.dxf',
				'left-wall.svg',
				'left-wall.dxf',
				'holes.csv',
				'marks.csv',
				'plan.json',
				'right-wall.svg',
				'right-wall.dxf',
				'installer.pdf',
				'hers.pdf',
				'therapist.pdf',
				'summary.txt'
			].toSorted()
		);
		expect(readFileSync(path.join(out, 'installer.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
	});

	test('the text for a record names every mark of the plan and what is worth measuring by what plan.json has', () => {
		const text = readFileSync(path.join(out, 'summary.txt'), 'utf8');
		const proposed = text.slice(text.indexOf('\nPROPOSED'), text.indexOf('\nNOT MET'));
		expect(proposed.match(/^- [A-Z] .*/gm)).toHaveLength(report.accessories.length);
		expect(report.worthMeasuring).toHaveLength(flowing(text).split('It could move:').length - 1);
	});

	test('the table names every mark and its findings', () => {
		for (const { id } of report.accessories) expect(ran.stdout).toContain(id);
		expect(ran.stdout).toContain('no better place on these figures');
		expect(ran.stdout).toContain('608.5.1');
	});

	test('and why each is where it is, the room round it, and what is to be asked', () => {
		const text = flowing(ran.stdout);
		const heads = ['Why here', 'Room round each mark', 'Open', 'Seat height', 'Not asked yet', 'To be looked at again'];
		for (const head of heads) expect(text).toContain(head);
		expect(text).toContain('Is the clear floor outside the entry no steeper than 1:48');
		expect(text).toMatch(/The seat is 19 in above the floor (so that|to come as near as it can to this:)/);
		expect(text).toMatch(/seat: (no room|.* (left|right|lower|higher))/);
	});

	test('a document named on the command line leads instead of what the record says', () => {
		expect(JSON.parse(EXAMPLE)).toMatchObject({ lead: 'person-led' });
		const led = plan(fileOf('named', changed(['reference', null], TURNS)), '--reference', 'ada-2010', '--json');
		expect([led.status, led.stderr]).toEqual([0, '']);
		expect(JSON.parse(led.stdout)).toEqual(report);
	});

	test('the fields others rely on are there', () => {
		expect(report.accessories[0]).toMatchObject({ id: 'seat', kind: 'seat', wall: 'left', turn: 0 });
		expect(report.accessories.flatMap((a) => a.fixings).every((f) => f.into.length > 0)).toBe(true);
		expect(report.findings[0]).toHaveProperty('allowed');
		for (const a of report.accessories) {
			expect(a.why).toHaveLength(5);
			expect(Object.keys(a.drift ?? {})).toEqual(['left', 'right', 'lower', 'higher']);
		}
		expect([report.clashes, report.waysOut]).toEqual([[], []]);
		for (const other of report.alternatives ?? []) expect(other.places).toHaveLength(report.accessories.length);
		expect(report.caseDigest).toMatch(/^[0-9a-f]{64}$/);
	});
});

test('[cli R2] the unit asked for changes what is printed and moves nothing', { timeout: 90_000 }, () => {
	const file = fileOf('quick-again', QUICK);
	const [inches, millimetres] = [plan(file, '--json', '--units', 'in'), plan(file, '--json', '--units', 'mm')];
	expect(JSON.parse(millimetres.stdout)).toEqual(JSON.parse(inches.stdout));
});

test('[cli R3] something open gives exit 1, with the question', { timeout: 90_000 }, () => {
	const open = changed(
		['lead', 'reference-led'],
		['enclosure.walls.right.backing', {}],
		['enclosure.walls.right.surveyed', false]
	);
	const ran = plan(fileOf('open', open));
	expect(ran.status).toBe(1);
	expect(ran.stdout).toContain('provisional');
	expect(flowing(ran.stdout)).toContain('What is behind the right wall?');
});

test(
	'[cli R7] a reach test: before and after of each hand, what still rests on the estimate, the point left out',
	{ timeout: 90_000 },
	() => {
		const at = (x: number, y: number) => ({ wall: 'back', x, y, reach: 'just', hand: 'fingertip', how: 'measured' });
		// An arm 40 longer than estimated, its shoulder 15 lower than recorded; "wet" was taped 230 too low.
		const points = { ahead: at(752, -272), down: at(360, -664), 'ahead-low': at(630, -474), 'ahead-up': at(794, 54) };
		const tried = changed(
			['lead', 'reference-led'],
			[
				'people.client.arms',
				{ left: { points: { ...points, wet: at(360, -894) } }, right: { points: { one: at(700, 0) } } }
			],
			[
				'people.client.reachTest',
				{ behind: 'left', x: 440, off: 30, seatHeight: 455, floor: 'shower', how: 'measured' }
			]
		);
		const out = path.join(folder, 'tried');
		const ran = plan(fileOf('tried', tried), '--units', 'mm', '--out', out);
		const text = flowing(ran.stdout);
		expect(text).toMatch(/client, left hand, 5 points taped: arm to grip 59\d mm -> 6\d\d mm, give or take/);
		expect(text).toMatch(/upper arm \d+ mm -> \d+ mm, give or take \d+ mm -> \d+ mm/);
		expect(text).toMatch(/unmoved, still on the estimate: .*reach without stretching/);
		expect(text).toContain('as measured: shoulder above the seat');
		expect(text).toMatch(/"wet" cannot belong and was left out: it lies \d+ mm farther than the other points tell/);
		expect(text).toContain(
			'client, right hand, 1 point taped: 1 point is too few: tape at least 3. The estimate stays.'
		);
		const { reachTests } = JSON.parse(readFileSync(path.join(out, 'plan.json'), 'utf8')) as Report;
		expect(reachTests?.['client']?.left?.leftOut.map(({ id }) => id)).toEqual(['wet']);
		expect(reachTests?.['client']?.left?.moved[0]?.dimension).toBe('reach');
	}
);

test('[cli R5] where nothing fits, the rows that clash and the ways out are told', { timeout: 90_000 }, () => {
	const impossible = changed(
		['lead', 'reference-led'],
		['tape.step', 25.4],
		['people.client.lean', { value: { kind: 'none' }, how: 'observed' }],
		['people.client.sittingForward', { value: 0, how: 'observed' }]
	);
	const file = fileOf('impossible', impossible);
	const [ran, json] = [plan(file), plan(file, '--json')];
	expect([ran.status, json.status]).toEqual([1, 1]);
	const text = flowing(ran.stdout);
	for (const says of ['Cannot be met together', 'Ways out', 'Give up', 'Next: ']) expect(text).toContain(says);
	const report = JSON.parse(json.stdout) as Report;
	expect(report.clashes.length).toBeGreaterThan(0);
	expect(report.waysOut?.length).toBeGreaterThan(0);
	expect(report.waysOut?.every((way) => way.gives.length > 0 && way.places.length > 0)).toBe(true);
});

test(
	'[cli R6] no line is wider than 100 columns, and nothing of a record steers the terminal',
	{ timeout: 90_000 },
	() => {
		const reason = 'her \u001b[31mown\u001b[0m wish\u202e, as \u0007 told '.repeat(9);
		const file = fileOf(
			'steering',
			changed(
				['lead', 'reference-led'],
				['tape.step', 25.4],
				['departures', { 'ADA-SLOPE/case': { reason, by: 'S.K.' } }]
			)
		);
		const ran = plan(file);
		expect(ran.stdout).toContain('Findings');
		for (const line of ran.stdout.split('\n')) {
			expect(line.length, line).toBeLessThanOrEqual(100);
			expect(line).not.toMatch(/[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2066-\u2069]/);
		}
	}
);

test(
	'[cli R10] a sign the fonts lack: exit 2, every one of them told at once, nothing written',
	{ timeout: 90_000 },
	() => {
		const out = path.join(folder, 'lacking');
		const reason = 'as told \u65e5 \u672c';
		const edits = [
			['lead', 'reference-led'],
			['departures', { 'ADA-SLOPE/case': { reason, by: 'S.K.' } }]
		] as const;
		const ran = plan(fileOf('lacking', changed(...edits)), '--out', out);
		expect(ran.status).toBe(2);
		const says = flowing(ran.stderr);
		for (const code of ['U+65E5', 'U+672C']) expect(says).toContain(`(${code})`);
		expect(says).toContain('Write it another way: the font has Latin, Greek and Cyrillic letters, not all of them.');
		expect(ran.stdout).toBe('');
		expect(existsSync(out)).toBe(false);
	}
);

describe('[cli R4] bad input: exit 2, one clear sentence a problem, nothing written', { timeout: 90_000 }, () => {
	test.each([
		['an empty file', '', 'the whole file'],
		['a torn file', EXAMPLE.slice(0, 700), 'the whole file'],
		['a wrong type', changed(['people', 7]), 'people'],
		['a negative length', changed(['enclosure.depth.value', -5]), 'saw -5'],
		['a 9 m wall', changed(['enclosure.width.value', 9000]), 'enclosure.width.value'],
		['an unknown key', changed(['colour', 1]), 'colour'],
		['a newer version', changed(['version', 2]), 'newer'],
		['5 MB of junk', 'junk '.repeat(1_000_000), '5.0 MB']
	])('%s', (name, text, says) => {
		const out = path.join(folder, `none-${name.replaceAll(' ', '-')}`);
		const ran = plan(fileOf(name.replaceAll(' ', '-'), text), '--out', out);
		expect(ran.status).toBe(2);
		expect(ran.stderr).toContain(says);
		expect(ran.stderr).not.toMatch(/\n\s+at /);
		expect(ran.stdout).toBe('');
		expect(existsSync(out)).toBe(false);
	});

	test.each([
		['no file', []],
		['a file that is not there', ['nowhere.json']],
		['a folder', ['src']],
		['an unknown option', ['x.json', '--fast']],
		['an unknown unit', ['x.json', '--units', 'cubits']],
		['an unknown document', ['x.json', '--reference', 'din-18040']]
	])('%s', (_, words) => {
		const ran = plan(...words);
		expect(ran.status).toBe(2);
		const lines = ran.stderr.trim().split('\n');
		// One sentence, wrapped where it is long; what goes on is indented.
		expect(lines.slice(1).filter((line) => !line.startsWith('    '))).toEqual([]);
		expect(lines.filter((line) => line.length > 100 || /^\s+at /.test(line))).toEqual([]);
	});
});
