import { describe, expect, test } from 'vitest';
import { elevationOf } from '#core/drawing/elevation.ts';
import type { Drawing, Entity } from '#core/drawing/entity.ts';
import { extent } from '#core/drawing/path.ts';
import { CHILD, CLIENT, EXAMPLE, fixtureCase, fixturePlan } from './fixture.ts';

const A4 = { reader: 'therapist', sheet: 'A4', tape: { unit: 'mm' } } as const;
const measured = <T>(value: T) => ({ value, how: 'measured' as const });

/** A seat 440 above the floor, 1000 below the datum line, of somebody 400 under the knee with a chair 480 high. */
const KNOWN = {
	...CLIENT,
	body: { ...CLIENT.body, popliteal: measured(400) },
	chair: { seatHeight: measured(480) }
};
const drawn = (client: object, wall: 'left' | 'right' = 'left'): Drawing =>
	elevationOf(fixturePlan(fixtureCase({ client, enclosure: { fall: measured(0) } }), EXAMPLE), wall, A4);

const called = (d: Drawing, id: string): Entity | undefined => d.entities.find((e) => e.id === id);
/** The name of a line where it stands, or, where a number stands for it, among the notes. */
const says = (d: Drawing, line: string): string =>
	d.entities
		.flatMap((e) =>
			e.kind === 'text' && new RegExp(`^(notes/)?seat-line/${line}/word(/\\d+)?$`).test(e.id) ? [e.text] : []
		)
		.join(' ');

/** How high a line is drawn, from the datum line. Units: mm of the wall at 1:10. */
function levelOf(d: Drawing, id: string): number {
	const [line, datum] = [called(d, id), called(d, 'datum/line')];
	if (line?.kind !== 'path' || datum?.kind !== 'path') throw new RangeError(`no line is called ${id}`);
	return (extent(datum).y0 - extent(line).y0) * 10;
}

describe('[drawing R11] the heights that pull apart are drawn on the wall of the seat', () => {
	test.each([
		['feet-flat', -600, 'feet flat, 400 above F'],
		['easy-rising', -560, 'easy rising, 440 above F'],
		['chair-level', -520, 'level with the chair, 480 above F']
	])('%s is a thin dashed line at its height, named', (line, level, name) => {
		const d = drawn(KNOWN);
		expect(levelOf(d, `seat-line/${line}`)).toBeCloseTo(level, 6);
		expect(called(d, `seat-line/${line}`)).toMatchObject({ layer: 'seat-line' });
		expect(says(d, line)).toBe(name);
	});

	test('what is estimated is sketched in the middle of its band, and told as one', () => {
		const d = drawn(CLIENT);
		expect(called(d, 'seat-line/feet-flat')).toMatchObject({ layer: 'seat-line-sketched' });
		const [, low = 0, high = 0] = /^feet flat, estimated (\d+) to (\d+) above F$/.exec(says(d, 'feet-flat')) ?? [];
		expect(Number(high)).toBeGreaterThan(Number(low));
		expect(levelOf(d, 'seat-line/feet-flat') + 1000).toBeCloseTo((Number(low) + Number(high)) / 2, -0.5);
		expect(called(d, 'seat-line/chair-level')).toBeUndefined();
	});

	test('nothing is drawn on another wall, nor where nobody knows', () => {
		for (const d of [drawn(KNOWN, 'right'), drawn(CHILD)]) {
			expect(d.entities.filter(({ id }) => id.startsWith('seat-line/'))).toEqual([]);
		}
	});
});
