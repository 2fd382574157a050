import { describe, expect, test } from 'vitest';
import { VERDICTS } from '#core/structure/arithmetic.ts';
import { backWall } from './some-case.ts';

const area = { x0: 100, x1: 800, y0: -700, y1: 800 };
const lines = (change: Record<string, unknown>, enclosure = {}, x = 400) =>
	backWall(
		{ backing: { one: { kind: 'blocking', ...area, thickness: 38, gravity: 0.5, how: 'measured', ...change } } },
		enclosure
	).arithmetic('back', 'flange', x, 0);

describe('the arithmetic', () => {
	// Source: structure of the checks worked by hand: 19.650 x 0.5^2 x 6.147 = 30.20 N/mm, x 31.9 mm = 961.9 N; against
	// 777.5, 683.5 and 1054.1 N; shear 1112 cos 28.47 / 3 = 325.8 N; lateral value 1031.6 N at 38 of 43.0 mm = 911.1 N;
	// (325.8^2 / 911.1 + 777.5^2 / 961.9) / 843.0 = 0.884.
	test('[structure R12] shows every figure of the calculation, with its unit', () => {
		expect(lines({}).lines).toEqual([
			'Three-hole flange into wood blocking 38 mm thick.',
			'Wood: specific gravity 0.50.',
			'One screw #14 (6.15 mm): 38.0 mm of wood, 6.1 mm tip not counted: 31.9 mm thread.',
			'It holds 30.20 N/mm x 31.9 mm = 961.9 N.',
			'Worst screw, one force in any direction: 777.5 N, held.',
			'One force along the wall: 683.5 N, held.',
			'Pull and moment together, the superseded 1991 sum: 1054.1 N, not held.',
			'Tension with 325.8 N shear on the same screw: 88 % of what it takes.',
			'Turn the flange so that two holes are at the top.',
			'Pushed straight down its worst screw then has 537.0 N.',
			VERDICTS.marginal
		]);
	});

	// Source: exact geometry; the wood begins at 100, and 15.37 + 25.98 mm is what two holes at the top need beside them.
	test('[structure R15] says how the flange is turned, there where wood takes it', () => {
		const turn = (change: Record<string, unknown>, x: number) =>
			lines(change, {}, x).lines.filter((line) => line.startsWith('Turn'));
		expect(turn({}, 141.4)).toEqual(['Turn the flange so that two holes are at the top.']);
		expect(turn({}, 141.3)).toEqual(['Turn the flange so that one hole is at the right.']);
		expect(turn({ how: 'told' }, 400)).toHaveLength(1);
		expect(turn({ thickness: 12 }, 400)).toEqual([]);
		expect(turn({}, 110)).toEqual([]);
		const masonry = backWall({ backing: { one: { kind: 'masonry', ...area, unit: 'solid', how: 'measured' } } });
		expect(masonry.arithmetic('back', 'flange', 400, 0).lines.join(' ')).not.toContain('Turn');
	});

	// Source: the same figures, each load by what the screw takes.
	test('[structure R12] each load is told beside what takes it, the one that decides first', () => {
		const { used } = lines({});
		expect(used.map(({ what }) => what)).toEqual(['any direction', 'along the wall', '1991 sum']);
		const shares = [777.5, 683.5, 1054.1].map((load) => load / 961.9);
		for (const [i, { share }] of used.entries()) expect(share).toBeCloseTo(shares[i] ?? NaN, 3);
		expect(lines({ thickness: 12 }).used).toEqual([]);
		expect(lines({}, {}, 50).used).toEqual([]);
	});

	// Source: statics by hand: 1112 N x 850 mm / 200 mm / 2 screws = 2363 N and 1112 / 4 = 278 N out of the wall: 2379.3 N.
	test('[structure R8] a fold-down rail is loaded at the end of the longest', () => {
		const rail = backWall({
			backing: { one: { kind: 'blocking', ...area, thickness: 89, gravity: 0.55, how: 'measured' } }
		}).arithmetic('back', 'rail-plate', 400, 0);
		expect(rail.lines.join(' ')).toContain('2379.3 N, not held');
		expect(rail.verdict).toBe('does not');
	});

	// Source: arithmetic as above; 1054.1 N needs 34.9 mm of thread and the tip, 41.05 mm.
	test.each([
		[{ thickness: 36.8 }, 'does not'],
		[{ thickness: 36.9 }, 'marginal'],
		[{ thickness: 41.0 }, 'marginal'],
		[{ thickness: 41.1 }, 'carries'],
		[{ thickness: 38, gravity: 0.42 }, 'does not']
	])('[structure R12] %j: %s', (change, verdict) => {
		expect(lines(change).verdict).toBe(verdict);
	});

	test('[structure R12] names what takes strength away', () => {
		const text = lines(
			{ kind: 'sheet', gravity: undefined },
			{ dampBehind: { value: true, how: 'observed' } }
		).lines.join('\n');
		expect(text).toContain('specific gravity 0.37, the weakest, because it is not recorded');
		expect(text).toContain('x 0.75 (screw ends in a sheet) x 0.7 (damp behind)');
		expect(lines({ thickness: 12 }).lines.join('\n')).toContain('thinner than 36.9 mm');
	});

	test('[structure R12] beside the wood it says that the screws would miss it, further off that nothing is there', () => {
		expect(lines({}, {}, 110).lines[0]).toContain('not all its screws would be in it here');
		expect(lines({}, {}, 50).lines[0]).toContain('nothing is recorded behind the wall here');
		expect(lines({}, {}, 50).verdict).toBe('does not');
	});

	test('[structure R12] declared strength names its paper and its fixing', () => {
		const one = { kind: 'declared', ...area, load: 1500, document: 'drawing 12', fixing: 'the named anchor' };
		expect(backWall({ backing: { one } }).arithmetic('back', 'flange', 400, 0)).toEqual({
			verdict: 'carries',
			used: [{ what: 'declared load', share: 1112 / 1500 }],
			lines: [
				'Three-hole flange into area declared for 1500 N.',
				'Declared: 1500 N with the named anchor, by drawing 12.',
				'Asked: 1112 N.',
				VERDICTS.carries
			]
		});
	});

	test('[structure R12] what was told only is shown with its doubt', () => {
		const told = lines({ how: 'told' });
		expect(told.verdict).toBe('not known');
		expect(told.lines[1]).toContain('probe before drilling');
	});
});
