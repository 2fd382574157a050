import { describe, expect, test } from 'vitest';
import { variantOf } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { mirroredCase, mirroredPlace } from '#core/enclosure/mirrored-case.ts';
import { planCase, turned } from '#core/plan.ts';
import { mm } from '#core/units/length.ts';
import { client } from './reduced.ts';

/** Clients in rooms of four types: a tray, a roll-in, an alternate roll-in or bath, a transfer compartment. */
const NAMES = ['one-good-hand', 'wheeled-in', 'water-by-her-son', 'turns-left'] as const;

function coarse(name: string): Case {
	const c = client(name);
	return { ...c, tape: { unit: c.tape.unit, step: mm(25) } };
}

describe.each(NAMES)('[placement R5] %s', (name) => {
	const c = coarse(name);

	test('one of a room and its mirror image is solved, never both turned', () => {
		expect(turned(c)).not.toBe(turned(mirroredCase(c)));
		expect(mirroredCase(mirroredCase(c))).toEqual(c);
	});

	test('the mirrored room gets the mirrored plan', () => {
		const [plan, other] = [planCase(c), planCase(mirroredCase(c))];
		const { footprint } = plan.scene.room;
		expect(plan.marks.length).toBeGreaterThan(0);
		expect(other.status).toBe(plan.status);
		expect(other.marks.map(({ accessory, place }) => [accessory.id, place])).toEqual(
			plan.marks.map(({ accessory, place }) => [accessory.id, mirroredPlace(place, footprint)])
		);
	});
});

test('[placement R5] a part with a hand comes out of the mirror as its like, and is judged as that', () => {
	const base = coarse('turns-left');
	const { seatWall, depth } = base.enclosure;
	expect(seatWall).toBe('left');
	const place = {
		wall: seatWall,
		variant: 'l-seat-32in-right',
		x: mm(depth.value - 425),
		y: mm(457),
		turn: 0
	} as const;
	const c: Case = { ...base, places: { seat: { ...place, stage: 'pinned' } } };
	const arms = [c, mirroredCase(c)].map((one) => {
		const { marks, findings } = planCase(one);
		const seat = marks.find((m) => m.accessory.id === 'seat');
		expect(seat?.variant).toEqual(variantOf(seat?.place.variant ?? ''));
		return [seat?.variant.id, findings.find(({ row }) => row.id === 'ADA-ST-LREAR')?.answer];
	});
	expect(arms).toEqual([
		['l-seat-32in-right', 'inside'],
		['l-seat-32in-left', 'inside']
	]);
});
