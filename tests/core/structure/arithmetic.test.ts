import { describe, expect, test } from 'vitest';
import { VERDICTS } from '#core/structure/arithmetic.ts';
import { backWall } from './some-case.ts';

const area = { x0: 100, x1: 800, y0: -700, y1: 800 };
const lines = (change: Record<string, unknown>, enclosure = {}, x = 400) =>
	backWall(
		{ backing: { one: { kind: 'blocking', ...area, thickness: 38, gravity: 0.5, how: 'measured', ...change } } },
		enclosure
	).arithmetic('back', { kind: 'flange' }, x, 0);

describe('the arithmetic', () => {
	// Source: structure of the checks worked by hand: 19.650 x 0.5^2 x 6.147 = 30.20 N/mm, x 38.9 mm = 1173.2 N; against
	// 777.5, 683.5 and 1054.1 N; shear 1112 cos 28.47 / 3 = 325.8 N; lateral value 1031.6 N, all of it from 43.0 mm;
	// (325.8^2 / 1031.6 + 777.5^2 / 1173.2) / 843.0 = 0.733.
	test('[structure R12] shows every figure of the calculation, with its unit', () => {
		expect(lines({ thickness: 45 })).toMatchObject({ fastener: '#14 wood screw' });
		expect(lines({ thickness: 45 }).lines).toEqual([
			'Three-hole flange into wood blocking 45 mm thick.',
			'Wood: specific gravity 0.50.',
			'One #14 wood screw (6.15 mm): 45.0 mm of wood, 6.1 mm tip not counted: 38.9 mm thread.',
			'It holds 30.20 N/mm x 38.9 mm = 1173.2 N.',
			'Worst screw, one force in any direction: 777.5 N, held.',
			'One force along the wall: 683.5 N, held.',
			'Pull and moment together, the superseded 1991 sum: 1054.1 N, held.',
			'Tension with 325.8 N shear on the same screw: 73 % of what it takes.',
			'Turn the flange so that two holes are at the top.',
			'Pushed straight down its worst screw then has 537.0 N.',
			VERDICTS.carries
		]);
	});

	// Source: NDS table 12.2A, 225 lbf/in = 39.40 N/mm at 0.50, x 31.65 mm = 1247.1 N; table 12K, 110 lbf = 489.3 N across the
	// grain at eight diameters, at 31.65 of 50.8 mm 304.9 N; (325.8^2 / 304.9 + 777.5^2 / 1247.1) / 843.0 = 0.988.
	test('[structure R17] where the wood screw is marginal a lag screw is counted, and the lines say what it asks', () => {
		expect(lines({})).toMatchObject({ fastener: '1/4 in lag screw', verdict: 'carries' });
		expect(lines({}).lines.slice(1, 9)).toEqual([
			'A #14 wood screw is marginal here; counted is a 1/4 in lag screw. Every hole of the real part must take it: holes of 5 to 7 mm are usual.',
			'Wood: specific gravity 0.50.',
			'One 1/4 in lag screw (6.35 mm): 38.0 mm of wood, 6.3 mm tip not counted: 31.6 mm thread.',
			'It holds 39.40 N/mm x 31.6 mm = 1247.1 N.',
			'Worst screw, one force in any direction: 777.5 N, held.',
			'One force along the wall: 683.5 N, held.',
			'Pull and moment together, the superseded 1991 sum: 1054.1 N, held.',
			'Tension with 325.8 N shear on the same screw: 99 % of what it takes.'
		]);
		expect(lines({ gravity: 0.42 }).lines[1]).toContain('A #14 wood screw does not carry here');
		expect(lines({ thickness: 12 }).lines).toContain('A 1/4 in lag screw would come to the same.');
	});

	// Source: exact geometry; the wood begins at 100, and 15.37 + 25.98 mm is what two holes at the top need beside them.
	test('[structure R15] says how the flange is turned, there where wood takes it', () => {
		const turn = (change: Record<string, unknown>, x: number) =>
			lines({ thickness: 45, ...change }, {}, x).lines.filter((line) => line.startsWith('Turn'));
		expect(turn({}, 141.4)).toEqual(['Turn the flange so that two holes are at the top.']);
		expect(turn({}, 141.3)).toEqual(['Turn the flange so that one hole is at the right.']);
		expect(turn({ how: 'told' }, 400)).toHaveLength(1);
		expect(turn({ thickness: 12 }, 400)).toEqual([]);
		expect(turn({}, 110)).toEqual([]);
		const masonry = backWall({ backing: { one: { kind: 'masonry', ...area, unit: 'solid', how: 'measured' } } });
		expect(masonry.arithmetic('back', { kind: 'flange' }, 400, 0).lines.join(' ')).not.toContain('Turn');
	});

	// Source: the same figures, each load by what the screw takes.
	test('[structure R12] each load is told beside what takes it, the one that decides first', () => {
		const { used } = lines({ thickness: 45 });
		expect(used.map(({ what }) => what)).toEqual(['any direction', 'along the wall', '1991 sum']);
		const shares = [777.5, 683.5, 1054.1].map((load) => load / 1173.2);
		for (const [i, { share }] of used.entries()) expect(share).toBeCloseTo(shares[i] ?? NaN, 3);
		expect(lines({ thickness: 12 }).used).toEqual([]);
		expect(lines({}, {}, 50).used).toEqual([]);
	});

	// Source: statics by hand: 1112 N x 850 mm / 200 mm / 2 screws = 2363 N and 1112 / 4 = 278 N out of the wall: 2379.3 N.
	// A #14 takes 36.54 x 64 = 2339 N at 0.55, a lag screw 260 lbf/in = 45.5 N/mm x 59.5 mm = 2706 N; at 0.50 39.4 x 59.5 = 2346.
	test.each([
		[0.5, 'does not'],
		[0.55, 'carries']
	])('[structure R8] a fold-down rail is loaded at the end of the longest: at %s it %s', (gravity, verdict) => {
		const rail = backWall({
			backing: { one: { kind: 'blocking', ...area, thickness: 89, gravity, how: 'measured' } }
		}).arithmetic('back', { kind: 'rail-plate' }, 400, 0);
		expect(rail.lines.join(' ')).toContain(`2379.3 N, ${verdict === 'carries' ? 'held' : 'not held'}`);
		expect(rail.verdict).toBe(verdict);
	});

	// Source: statics by hand, 1112 / 3 = 370.7 N and 1112 x 30 / 100 / 2 = 166.8 N, 406.5 N together and 537.5 N as a sum; a #14 in
	// spruce 38 mm thick 21.31 x 31.85 = 678.7 N, across 2520 x 0.242^2 lbf x 38 / 43.0 = 579.7 N;
	// (370.7^2 / 579.7 + 166.8^2 / 678.7) / 406.5 = 0.684.
	test('[structure R19] spruce of one board takes the hinge plate of a seat with front legs', () => {
		const legs = (change: Record<string, unknown>) =>
			backWall({
				backing: { one: { kind: 'blocking', ...area, thickness: 38, gravity: 0.42, how: 'measured', ...change } }
			}).arithmetic('back', { kind: 'leg-plate' }, 400, 0);
		expect(legs({})).toMatchObject({ verdict: 'carries', fastener: '#14 wood screw' });
		expect(legs({}).lines).toContain(
			'Along the wall alone, 166.8 N tension with 370.7 N shear: 68 % of what it takes.'
		);
		expect(legs({}).lines[0]).toBe('Hinge plate of a seat with front legs into wood blocking 38 mm thick.');
		expect(legs({ thickness: 18, kind: 'sheet' }).verdict).toBe('does not');
		expect(lines({}).lines.join(' ')).not.toContain('Along the wall alone');
	});

	// Source: arithmetic as above. A lag screw wants 4 diameters and the tip, 31.75 mm; tension and shear together need
	// 37.6 mm of wood for it; 1054.1 N need 34.9 mm of thread of a #14 and the tip, 41.05 mm.
	test.each([
		[{ thickness: 31.7 }, 'does not', '#14 wood screw'],
		[{ thickness: 31.8 }, 'marginal', '1/4 in lag screw'],
		[{ thickness: 37.0 }, 'marginal', '#14 wood screw'],
		[{ thickness: 37.7 }, 'carries', '1/4 in lag screw'],
		[{ thickness: 41.1 }, 'carries', '#14 wood screw'],
		[{ thickness: 38, gravity: 0.42 }, 'marginal', '1/4 in lag screw'],
		[{ thickness: 31, gravity: 0.42 }, 'does not', '#14 wood screw']
	])('[structure R17] %j: %s, with a %s', (change, verdict, fastener) => {
		expect(lines(change)).toMatchObject({ verdict, fastener });
	});

	// Source: exact geometry: 1.5 x 30 + 2 x 2.5 x 6.35 = 76.75 mm of strip for the thicker screw, 75.73 for the #14.
	test.each([
		[76.7, 'marginal', '#14 wood screw'],
		[76.8, 'carries', '1/4 in lag screw']
	])('[structure R17] in a strip %s mm high: %s, with a %s', (high, verdict, fastener) => {
		const one = lines({ y0: -high / 2 + 7.5, y1: high / 2 + 7.5 });
		expect(one).toMatchObject({ verdict, fastener });
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
		expect(backWall({ backing: { one } }).arithmetic('back', { kind: 'flange' }, 400, 0)).toEqual({
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
