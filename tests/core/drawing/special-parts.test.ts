import { describe, expect, test } from 'vitest';
import { elevationOf } from '#core/drawing/elevation.ts';
import type { Drawing, Path } from '#core/drawing/entity.ts';
import { planView, roomPlan } from '#core/drawing/key-plan.ts';
import { marksSheetsOf } from '#core/drawing/marks-sheet.ts';
import { extent } from '#core/drawing/path.ts';
import type { OnPaper } from '#core/drawing/sheet.ts';
import { boxOf } from '#core/drawing/type.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import { inches } from '#core/units/length.ts';
import { fixtureCase, fixturePlan, mirrored, type Put } from './fixture.ts';

const measured = <T>(value: T) => ({ value, how: 'measured' as const });
const A4: OnPaper = { reader: 'therapist', sheet: 'A4', tape: { unit: 'mm' } };
const LETTER: OnPaper = { reader: 'therapist', sheet: 'Letter', tape: { unit: 'in' } };
const WIDE = 1600;
const DEEP = 1000;

/** A room 1600 by 1000 with nothing known behind its walls, from its floor 1000 to the datum line. */
const room = (seatWall: 'left' | 'right', tape: object) =>
	fixtureCase({
		enclosure: {
			type: 'roll-in',
			seatWall,
			width: measured(WIDE),
			depth: measured(DEEP),
			height: measured(2300),
			fall: measured(0),
			walls: { left: {}, back: {}, right: {} }
		},
		more: { tape }
	});

/** Seat before a back rest, L bar with its upright farther from the seat, rail ahead, high holder. */
const putsOf = (seat: string, bar: string, rail: string): readonly Put[] => [
	['seat', seat, 'left', 500, -530],
	['handset-holder', 'rest', 'back', 1300, 1030],
	['bar-back', bar, 'back', 450, -190],
	['rail-ahead', rail, 'back', 900, -320]
];
const METRIC = putsOf('seat-off-wall-450', 'l-bar-1000-750-right', 'rail-700');
const INCH = putsOf('seat-off-wall-18in', 'l-bar-40in-30in-right', 'rail-28in');
const across = (puts: readonly Put[]): readonly Put[] =>
	puts.flatMap((put) => mirrored([put], put[2] === 'back' ? WIDE : DEEP));

const MM = { unit: 'mm', step: 5 };
const IN = { unit: 'in', step: inches(0.25) };
const CASES = [
	[
		'in mm, seat on the left',
		fixturePlan(room('left', MM), METRIC),
		A4,
		{ along: 1000, up: 750, rest: 250, front: 650 }
	],
	[
		'in mm, seat on the right',
		fixturePlan(room('right', MM), across(METRIC)),
		A4,
		{ along: 1000, up: 750, rest: 250, front: 650 }
	],
	[
		'in inches, seat on the left',
		fixturePlan(room('left', IN), INCH),
		LETTER,
		{ along: 1016, up: 762, rest: 254, front: 647.7 }
	],
	[
		'in inches, seat on the right',
		fixturePlan(room('right', IN), across(INCH)),
		LETTER,
		{ along: 1016, up: 762, rest: 254, front: 647.7 }
	]
] as const;

function path(entities: Drawing['entities'], id: string): Path {
	const found = entities.find((e) => e.id === id);
	if (found?.kind !== 'path') throw new Error(`no path ${id}`);
	return found;
}

/** Where the middle of something drawn is on its wall, and its size: mm, along the wall from its left end, up from the datum. */
function onWall(plan: Plan, wall: WallId, how: OnPaper) {
	const { entities } = elevationOf(plan, wall, how);
	const ring = extent(path(entities, 'ladder/datum/ring'));
	const datum = (ring.y0 + ring.y1) / 2;
	const { scale, left } = scaleOf(plan, wall, entities);
	return (id: string) => {
		const { x0, x1, y0, y1 } = extent(path(entities, id));
		return {
			x: ((x0 + x1) / 2 - left) * scale,
			y: (datum - (y0 + y1) / 2) * scale,
			wide: (x1 - x0) * scale,
			high: (y1 - y0) * scale
		};
	};
}

/** The scale of a drawing by the distance of two marks that it sets out, or by the seat. */
function scaleOf(plan: Plan, wall: WallId, entities: Drawing['entities']): { scale: number; left: number } {
	const [one, other] = plan.marks
		.filter(({ place }) => place.wall === wall)
		.flatMap(({ accessory, variant, place }) =>
			variant.brackets.map((b, i) => ({
				id: `${accessory.id}/${variant.kind === 'horizontal-bar' ? 'flange' : 'plate'}/${String(i)}/centre`,
				x: place.x + b.x
			}))
		)
		.filter(({ id }) => entities.some((e) => e.id === id));
	if (!one || !other) throw new Error('nothing to scale by');
	const at = ({ id }: { id: string }) => {
		const { x0, x1 } = extent(path(entities, id));
		return (x0 + x1) / 2;
	};
	const scale = (other.x - one.x) / (at(other) - at(one));
	return { scale, left: at(one) - one.x / scale };
}

const textOf = (d: Drawing): string =>
	d.entities
		.flatMap((e) => (e.kind === 'text' ? [e.text] : []))
		.join(' ')
		.replaceAll(/\s+/g, ' ');

describe.each(CASES)('special parts %s', (_, plan, how, size) => {
	const { seatWall } = plan.scene.room;
	const toRight = seatWall === 'left';
	const fromSeat = (x: number) => (toRight ? x : WIDE - x);

	test('[drawing R1] the L bar has both legs and three flanges, its upright at the end away from the seat', () => {
		const of = onWall(plan, 'back', how);
		const tube = of('bar-back/tube');
		// O. Reg. 332/12, 3.8.3.13.(2)(g)(iii): 1000 along and 750 up; the tube is 32 thick, half of it past each axis at the corner.
		expect(tube.wide).toBeCloseTo(size.along + 16, 1);
		expect(tube.high).toBeCloseTo(size.up + 16, 1);
		const flanges = [0, 1, 2].map((i) => of(`bar-back/flange/${String(i)}`));
		const spots = flanges.map(({ x, y }) => [Math.round(fromSeat(x)), Math.round(y)]);
		for (const spot of [
			[450, -190],
			[450 + size.along, -190],
			[450 + size.along, size.up - 190]
		])
			expect(spots).toContainEqual(spot.map(Math.round));
		for (const { wide } of flanges) expect(wide).toBeCloseTo(80, 1);
	});

	test('[drawing R1] the rail is drawn where its hinge is, folded up, with how far it comes down', () => {
		const of = onWall(plan, 'back', how);
		const hinge = of('rail-ahead/centre');
		expect([fromSeat(hinge.x), hinge.y].map(Math.round)).toEqual([900, -320]);
		const length = how.tape.unit === 'mm' ? 700 : 28 * 25.4;
		const { y, high } = of('rail-ahead/folded');
		expect(y + high / 2).toBeCloseTo(length - 320, 1);
		expect(textOf(elevationOf(plan, 'back', how))).toContain(
			`folded up; down ${how.tape.unit === 'mm' ? '700' : '28'} out`
		);
	});

	test('[drawing R1] the high holder is where it hangs and is called so', () => {
		const of = onWall(plan, 'back', how);
		const { x, y } = of('handset-holder/body');
		expect([fromSeat(x), y].map(Math.round)).toEqual([1300, 1030]);
		expect(textOf(elevationOf(plan, 'back', how))).toContain('High holder for hand shower');
	});

	test('[drawing R1] the seat off its wall shows its back rest above it and its front legs down to the floor', () => {
		const of = onWall(plan, seatWall, how);
		const [seat, rest, leg] = ['seat/outline', 'seat/back-rest', 'seat/leg/0'].map(of);
		if (!seat || !rest || !leg) throw new Error('not drawn');
		expect(rest.x).toBeCloseTo(seat.x, 3);
		expect(rest.y - rest.high / 2).toBeGreaterThan(-530);
		expect(leg.y - leg.high / 2).toBeCloseTo(-1000, 1);
		const says = textOf(elevationOf(plan, seatWall, how));
		expect(says).toContain('Folding seat before a back rest');
		expect(says).toContain(
			how.tape.unit === 'mm'
				? 'back rest 250 out from the wall, the seat from there to 650'
				: 'back rest 10 out from the wall, the seat from there to 25 1/2'
		);
	});

	test('[drawing R1] from above the seat begins at its back rest, and the rail comes down into the room', () => {
		const entities = roomPlan(plan, planView(plan.scene.room, [0, 0], WIDE));
		const seat = extent(path(entities, 'key/seat'));
		const ends = [seat.x0, seat.x1].map(fromSeat).toSorted((a, b) => a - b);
		// Approved Document M Volume 2, Diagram 23: the front edge 650 from the wall.
		expect(ends[0]).toBeCloseTo(size.rest, 3);
		expect(ends[1]).toBeCloseTo(size.front, 3);
		const rest = extent(path(entities, 'key/seat/back-rest'));
		expect(Math.max(...[rest.x0, rest.x1].map(fromSeat))).toBeCloseTo(size.rest, 3);
		const held = extent(path(entities, 'key/seat/held'));
		expect(Math.min(...[held.x0, held.x1].map(fromSeat))).toBeCloseTo(0, 3);
		const rail = extent(path(entities, 'key/rail-ahead'));
		expect(fromSeat(rail.x0)).toBeCloseTo(900, 3);
		expect(rail.y0).toBeCloseTo(0, 6);
		expect(rail.y1).toBeCloseTo(how.tape.unit === 'mm' ? 700 : 28 * 25.4, 6);
	});

	test('[drawing R1] nothing of them is off the sheet, and each has its letter', () => {
		for (const wall of ['back', seatWall] as const) {
			const { entities, size: page } = elevationOf(plan, wall, how);
			for (const e of entities) {
				const { x0, x1, y0, y1 } = e.kind === 'text' ? boxOf(e) : extent(e);
				expect(Math.min(x0, y0), e.id).toBeGreaterThanOrEqual(-0.01);
				expect(x1, e.id).toBeLessThanOrEqual(page.width + 0.01);
				expect(y1, e.id).toBeLessThanOrEqual(page.height + 0.01);
			}
			for (const { accessory, place } of plan.marks) {
				if (place.wall === wall) expect(entities.map((e) => e.id)).toContain(`${accessory.id}/tag/disc`);
			}
		}
		const says = marksSheetsOf(plan, how).map(textOf).join(' ');
		expect(says).toContain('upright on the ' + (toRight ? 'right' : 'left'));
	});
});
