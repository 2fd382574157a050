import { describe, expect, test } from 'vitest';
import { variantOf } from '#core/case/accessory.ts';
import { elevationOf } from '#core/drawing/elevation.ts';
import type { Drawing, Path } from '#core/drawing/entity.ts';
import { planView, roomPlan } from '#core/drawing/key-plan.ts';
import { extent } from '#core/drawing/path.ts';
import { seatPlan } from '#core/drawing/seat-plan.ts';
import { EXAMPLE, fixtureCase, fixturePlan, mirrored, type Put } from './fixture.ts';

const A4 = { reader: 'therapist', sheet: 'A4', tape: { unit: 'mm' } } as const;

/** The example with an L seat of 820, 11 off the back wall, its arm along it. */
const PUTS: readonly Put[] = EXAMPLE.map((put): Put => {
	const [id, , wall, , y] = put;
	return id === 'seat' ? [id, 'l-seat-820-right', wall, 914 - 11 - 410, y] : put;
});
const LEFT = fixturePlan(fixtureCase(), PUTS);
const RIGHT = fixturePlan(fixtureCase({ enclosure: { seatWall: 'right' } }), mirrored(PUTS, 914));

function path(entities: Drawing['entities'], id: string): Path {
	const found = entities.find((e) => e.id === id);
	if (found?.kind !== 'path') throw new Error(`no path ${id}`);
	return found;
}

const textOf = (d: Drawing): string => d.entities.flatMap((e) => (e.kind === 'text' ? [e.text] : [])).join(' ');

/** Twice the area within corners, by the shoelace formula. */
const area = (corners: readonly (readonly [number, number])[]): number =>
	Math.abs(
		corners.reduce((sum, [x, y], i) => {
			const [u = 0, v = 0] = corners[(i + 1) % corners.length] ?? [];
			return sum + x * v - u * y;
		}, 0)
	) / 2;

describe('L seats', () => {
	test.each(['l-seat-820-left', 'l-seat-820-right'])(
		'[drawing R1] %s from above is its body and its arm, without a corner too many',
		(id) => {
			const { arm, ...v } = variantOf(id);
			const corners = seatPlan({ ...v, ...(arm && { arm }) });
			expect(corners).toHaveLength(6);
			const wide = Number(arm?.x1) - Number(arm?.x0);
			expect(area(corners)).toBeCloseTo(820 * (395 - 20) + wide * (570 - 395), 6);
			expect(corners).toContainEqual([id.endsWith('left') ? -410 : 410, 570]);
		}
	);

	test('[drawing R1] on the plan of the room the arm runs along the back wall, as far out as it is', () => {
		const view = planView(LEFT.scene.room, [0, 0], 914);
		const drawn = path(roomPlan(LEFT, view), 'key/seat');
		const spots = drawn.d.map(({ to: [x, y] }) => [Math.round(x), Math.round(y)]);
		// x from the left wall, y from the back wall.
		for (const corner of [
			[20, 11],
			[570, 11],
			[570, 356],
			[395, 356],
			[395, 831],
			[20, 831]
		])
			expect(spots).toContainEqual(corner);
	});

	test.each([
		['the left wall', LEFT, 'left', 914 - 11],
		['the right wall', RIGHT, 'right', 11]
	] as const)('[drawing R1] on %s its edge and its leg are where they will be', (_, plan, wall, corner) => {
		const d = elevationOf(plan, wall, A4);
		const outline = extent(path(d.entities, 'seat/outline'));
		const scale = 820 / (outline.x1 - outline.x0);
		const inward = wall === 'left' ? -1 : 1;
		const atCorner = wall === 'left' ? outline.x1 : outline.x0;
		const edge = extent(path(d.entities, 'seat/arm'));
		expect((edge.x0 - atCorner) * inward * scale).toBeCloseTo(345, 6);
		const leg = extent(path(d.entities, 'seat/arm/leg'));
		expect(((leg.x0 + leg.x1) / 2 - atCorner) * inward * scale).toBeCloseTo(345 / 2, 6);
		const ring = extent(path(d.entities, 'ladder/datum/ring'));
		const middle = corner + (inward * 345) / 2;
		const { low } = plan.scene.room.floorUnder(wall, middle, middle);
		expect(((ring.y0 + ring.y1) / 2 - leg.y1) * scale).toBeCloseTo(low, 6);
	});

	test('[drawing R1] the sheet says which hand it is, how far the arm comes out, and that a leg stands under it', () => {
		const [left, right] = [elevationOf(LEFT, 'left', A4), elevationOf(RIGHT, 'right', A4)].map(textOf);
		expect(left).toContain('Folding L seat 820 wide, arm 570 out on the right');
		expect(right).toContain('Folding L seat 820 wide, arm 570 out on the left');
		expect(left).toContain('a leg on the floor under its arm');
	});
});
