import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { holeSlack } from '#core/enclosure/hole-slack.ts';
import { roomOf } from '#core/enclosure/room.ts';
import { enclosureWith } from './some-room.ts';

const box = { x0: 400, x1: 420, y0: -500, y1: 500 };
const withKeepOut = (keepOut: Record<string, unknown>) =>
	roomOf(
		enclosureWith({ fall: { value: 0, how: 'measured' } }, { back: { keepOuts: { one: { ...box, ...keepOut } } } })
	);

describe('keep-outs', () => {
	// Source: strips of 75 round water and 25 beside a cable, and five screw diameters from an old hole, are judgements
	// of ours; a recorded uncertainty comes on top.
	test.each([
		[{ kind: 'pipe', how: 'measured' }, 0],
		[{ kind: 'pipe', how: 'observed', uncertain: 15 }, 15],
		[{ kind: 'pipe', how: 'told' }, 75],
		[{ kind: 'pipe', how: 'assumed', uncertain: 20 }, 95],
		[{ kind: 'valve-body', how: 'measured' }, 0],
		[{ kind: 'valve-body', how: 'told' }, 75],
		[{ kind: 'cable', how: 'measured' }, 25],
		[{ kind: 'cable', how: 'told', uncertain: 30 }, 55],
		[{ kind: 'old-hole', how: 'observed' }, 31],
		[{ kind: 'rod', how: 'declared' }, 0],
		[{ kind: 'seam', how: 'observed', uncertain: 5 }, 5],
		[{ kind: 'niche', how: 'measured' }, 0]
	])('[enclosure R4] %j is taken %s mm wider on each side', (keepOut, by) => {
		expect(withKeepOut(keepOut).walls.back.keepOuts[0]?.rect).toEqual({
			x0: 400 - by,
			x1: 420 + by,
			y0: -500 - by,
			y1: 500 + by
		});
	});

	test('[enclosure R4] a niche stops bodies as well as holes, a pipe only holes', () => {
		expect(withKeepOut({ kind: 'niche', how: 'measured' }).walls.back.keepOuts[0]?.stops).toBe('holes and bodies');
		expect(withKeepOut({ kind: 'pipe', how: 'measured' }).walls.back.keepOuts[0]?.stops).toBe('holes');
	});

	test('[enclosure R5] the disc of a bracket may touch a pipe strip but not enter it', () => {
		const room = withKeepOut({ kind: 'pipe', how: 'measured' });
		const at = (x: number) => holeSlack(room, 'back', { x, y: 0, radius: 40 });
		expect([at(359), at(360), at(361)]).toEqual([1, 0, -1]);
		expect(at(410)).toBe(-50);
	});

	test('[enclosure R5] the disc may touch the edges of the wall but not cross them', () => {
		const room = roomOf(enclosureWith({ fall: { value: 0, how: 'measured' } }));
		const at = (x: number, y: number) => holeSlack(room, 'left', { x, y, radius: 40 });
		expect([at(39, 0), at(40, 0), at(41, 0)]).toEqual([-1, 0, 1]);
		expect([at(860, 0), at(861, 0)]).toEqual([0, -1]);
		expect([at(450, 1060), at(450, 1061)]).toEqual([0, -1]);
		expect([at(450, -960), at(450, -961)]).toEqual([0, -1]);
	});

	test('[enclosure R5] slack changes by no more than the bracket moves', () => {
		const keepOuts = {
			pipe: { kind: 'pipe', how: 'told', ...box },
			niche: { kind: 'niche', how: 'measured', x0: 500, x1: 800, y0: 100, y1: 400 }
		};
		const room = roomOf(enclosureWith({}, { back: { keepOuts } }));
		const n = fc.double({ min: -1200, max: 1200, noNaN: true });
		const step = fc.double({ min: -80, max: 80, noNaN: true });
		fc.assert(
			fc.property(n, n, step, step, (x, y, dx, dy) => {
				const before = holeSlack(room, 'back', { x, y, radius: 40 });
				const after = holeSlack(room, 'back', { x: x + dx, y: y + dy, radius: 40 });
				expect(Math.abs(after - before)).toBeLessThanOrEqual(Math.hypot(dx, dy) + 1e-9);
			})
		);
	});
});
