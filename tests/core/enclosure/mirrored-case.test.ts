import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { VARIANTS, variantOf, type Mark, type Place } from '#core/case/accessory.ts';
import { readCase } from '#core/case/read.ts';
import type { Case } from '#core/case/record.ts';
import { mirroredCase, mirroredPlace } from '#core/enclosure/mirrored-case.ts';
import { mirroredWall, wallLength } from '#core/geometry/frame.ts';
import { questionOf } from '#core/plan.ts';
import { judge } from '#core/rules/judge.ts';
import { mm } from '#core/units/length.ts';

const CLIENTS = readdirSync('personas/clients').map((name): readonly [string, Case] => {
	const read = readCase(readFileSync(`personas/clients/${name}/case.json`, 'utf8'));
	if (read.kind === 'bad') throw new Error(JSON.stringify(read.problems));
	return [name, read.case];
});

const ROOM = { width: 914.4, depth: 920 };
const tick = (most: number) => fc.integer({ min: 0, max: most * 320 }).map((n) => mm(n / 320));
const places: fc.Arbitrary<Place> = fc.record({
	wall: fc.constantFrom('back', 'left', 'right'),
	variant: fc.constantFrom(...VARIANTS.map((v) => v.id)),
	x: tick(900),
	y: tick(1500),
	turn: fc.constant(0 as const)
});

/** Where a place begins and ends along its wall. */
function ends(place: Place): readonly [number, number] {
	const { kind, length } = variantOf(place.variant);
	return [place.x, place.x + (kind === 'horizontal-bar' ? length : 0)];
}

/** A mark somewhere on a slot of each accessory wanted, by a share of the wall's length and of a height. */
function marksAt(c: Case, shares: readonly (readonly [slot: number, along: number, up: number])[]): readonly Mark[] {
	const { wanted, scene } = questionOf(c);
	return wanted.flatMap((accessory, i): readonly Mark[] => {
		const [s, along, up] = shares[i] ?? [0, 0, 0];
		const slot = accessory.slots[Math.floor(s * accessory.slots.length)];
		if (!slot) return [];
		const x = mm(along * wallLength(slot.wall, scene.room.footprint));
		const place: Place = { ...slot, x, y: mm(scene.room.bathroomFloor + 300 + up * 1100), turn: 0 };
		return [{ accessory, place, variant: variantOf(slot.variant), stage: 'proposed' }];
	});
}

describe('the mirrored case', () => {
	test('[enclosure R6] a place twice mirrored is the first one, and covers the same wall read from the other end', () => {
		fc.assert(
			fc.property(places, (place) => {
				const across = mirroredPlace(place, ROOM);
				expect(mirroredPlace(across, ROOM)).toEqual(place);
				const length = wallLength(place.wall, ROOM);
				const [from, to] = ends(across);
				expect(across.wall).toBe(mirroredWall(place.wall));
				expect(ends(place)[0]).toBeCloseTo(length - to, 9);
				expect(ends(place)[1]).toBeCloseTo(length - from, 9);
				expect(across.y).toBe(place.y);
			})
		);
	});

	test.each(CLIENTS)('[enclosure R6] %s twice mirrored is the first one, with its places', (_, c) => {
		const pinned = { ...c, places: { 'bar-back': placed('back', 'bar-600', 130) } };
		const once = mirroredCase(pinned);
		expect(once).not.toEqual(pinned);
		expect(mirroredCase(once)).toEqual(pinned);
	});

	test('[enclosure R6] left and right change places in the person too, and nothing else of her does', () => {
		const fact = <const T>(value: T) => ({ value, how: 'told' as const });
		for (const [, c] of CLIENTS) {
			const her = c.people['client'];
			if (!her) throw new Error('every example has a client');
			const sides = { weakerSide: fact('right'), movesIn: fact('left'), movesOut: fact('right') } as const;
			const { client, ...others } = mirroredCase({
				...c,
				people: { ...c.people, client: { ...her, ...sides } }
			}).people;
			expect(Object.keys(others)).toEqual(Object.keys(c.people).filter((id) => id !== 'client'));
			expect(client).toEqual({
				...her,
				arms: { left: her.arms.right, right: her.arms.left },
				weakerSide: fact('left'),
				movesIn: fact('right'),
				movesOut: fact('left')
			});
		}
	});

	test.each(CLIENTS)('[enclosure R6] %s: every row says the same of marks and of their mirror image', (_, c) => {
		const share = fc.double({ min: 0, max: 0.999, noNaN: true });
		const question = questionOf(c);
		const other = questionOf(mirroredCase(c));
		const { footprint } = question.scene.room;
		let spoken = 0;
		fc.assert(
			fc.property(fc.array(fc.tuple(share, share, share), { minLength: 6, maxLength: 6 }), (shares) => {
				const marks = marksAt(c, shares);
				const across = marks.map((m): Mark => {
					const accessory = other.wanted.find((a) => a.id === m.accessory.id);
					if (!accessory) throw new Error(`${m.accessory.id} is not wanted in the mirror`);
					const place = mirroredPlace(m.place, footprint);
					return { ...m, accessory, place, variant: variantOf(place.variant) };
				});
				const here = judge(question.scene, question.rows, marks);
				const there = judge(other.scene, other.rows, across);
				expect(there.map((f) => [f.row.id, f.about])).toEqual(here.map((f) => [f.row.id, f.about]));
				here.forEach((f, i) => {
					const g = there[i];
					if (f.slack === undefined || Math.abs(f.slack) > 0.01) expect(g?.answer, f.row.id).toBe(f.answer);
					if (f.slack !== undefined) {
						spoken++;
						expect(Math.abs((g?.slack ?? NaN) - f.slack), f.row.id).toBeLessThan(0.02);
					}
				});
			}),
			{ numRuns: 60 }
		);
		expect(spoken).toBeGreaterThan(1000);
	});
});

function placed(wall: Place['wall'], variant: string, x: number): Case['places'][string] {
	return { wall, variant, x: mm(x), y: mm(800), turn: 0, stage: 'pinned' };
}
