import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { variantOf, type Mark } from '#core/case/accessory.ts';
import { mirroredCase, mirroredPlace } from '#core/enclosure/mirrored-case.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Measure, Scene } from '#core/measures/scene.ts';
import { place } from '#core/placement/place.ts';
import { questionOf, turned } from '#core/plan.ts';
import { judge } from '#core/rules/judge.ts';
import { client } from './reduced.ts';

/** What a good plan for an example client has and has not; every line says why. Heights above the bathroom floor, mm. */
const expected = z.strictObject({
	contains: z.array(
		z.strictObject({
			id: z.string(),
			when: z.enum(['now', 'later', 'both']).optional(),
			wall: z.string().optional(),
			part: z.string().optional(),
			floor: z.tuple([z.number(), z.number()]).optional(),
			widest: z.number().optional(),
			reason: z.string().optional(),
			because: z.string()
		})
	),
	without: z.array(
		z.strictObject({
			id: z.string().optional(),
			kind: z.string().optional(),
			part: z.string().optional(),
			because: z.string()
		})
	),
	/** Musts that cannot be known yet. */
	open: z.array(z.string())
});

const NAMES = [
	'one-good-hand',
	'stands-for-now',
	'stands-then-tires',
	'strong-walls',
	'turns-left',
	'water-by-her-son',
	'wheeled-in'
] as const;

/** Rows a search may ask before its plan in hand is looked at: what a therapist sees within seconds. */
const ENOUGH = 1_200_000;

/** A client's question and the plan in hand, in the client's own room. */
function planned(name: string) {
	const c = client(name);
	const own = questionOf(c);
	const solved = turned(c) ? questionOf(mirroredCase(c)) : own;
	const run = place(solved.scene, solved.rows, solved.wanted);
	let step = run.next();
	while (!step.done && !(step.value.found && step.value.evaluations > ENOUGH)) step = run.next();
	const marks = step.done ? step.value.marks : (step.value.found?.marks ?? []);
	const back = (mark: Mark): Mark => {
		const accessory = own.wanted.find((a) => a.id === mark.accessory.id) ?? mark.accessory;
		if (solved === own) return mark;
		const there = mirroredPlace(mark.place, solved.scene.room.footprint);
		return { ...mark, accessory, place: there, variant: variantOf(there.variant) };
	};
	return { ...own, marks: marks.map(back) };
}

const level = (s: Scene, mark: Mark): number => mark.place.y - s.room.bathroomFloor;

/** What a measure says of a mark, beside the seat where it needs one; NaN where it says nothing for sure. */
function read(id: keyof typeof MEASURES, s: Scene, mark: Mark, seat?: Mark): number {
	const measure = MEASURES[id] as Measure;
	const reading =
		measure.about === 'mark' ? measure.of(s, mark) : measure.about === 'pair' && seat ? measure.of(s, mark, seat) : NaN;
	return typeof reading === 'number' ? reading : NaN;
}

describe.each(NAMES)('%s', (name) => {
	const { scene, rows, wanted, marks } = planned(name);
	const file = readFileSync(`personas/clients/${name}/expected.json`, 'utf8');
	const { contains, without, open } = expected.parse(JSON.parse(file));
	const seat = marks.find((m) => m.accessory.kind === 'seat');

	test.each(contains)('has $id: $because', ({ id, when, wall, part, floor, widest, reason }) => {
		const mark = marks.find((m) => m.accessory.id === id);
		if (!mark) throw new Error(`no ${id}`);
		if (when) expect(mark.accessory.when).toBe(when);
		if (wall) expect(mark.place.wall).toBe(wall);
		if (part) expect(mark.place.variant).toBe(part);
		if (floor) {
			expect(level(scene, mark)).toBeGreaterThanOrEqual(floor[0]);
			expect(level(scene, mark)).toBeLessThanOrEqual(floor[1]);
		}
		if (widest) expect(mark.variant.length).toBeGreaterThanOrEqual(widest);
		if (reason) expect(mark.accessory.reason).toContain(reason);
	});

	test.each(without)('is without $id$kind$part: $because', ({ id, kind, part }) => {
		expect(wanted.some((a) => a.id === id || a.kind === kind)).toBe(false);
		expect(marks.some((m) => m.place.variant === part)).toBe(false);
	});

	test('every must is inside, or open for want of a fact', () => {
		expect(marks.length).toBe(wanted.length);
		for (const f of judge(scene, rows, marks)) {
			if (f.strength !== 'must' || ['inside', 'not-here', 'ask'].includes(f.answer)) continue;
			expect(f.answer, f.row.id).toBe('unknown');
			expect(open).toContain(f.row.id);
		}
	});

	test('not silly: nothing is without a reason, nothing worked is beside the ear', () => {
		for (const mark of marks) {
			expect(mark.accessory.reason).not.toBe('');
			if (!seat || !['control', 'handset-rest'].includes(mark.accessory.kind)) continue;
			if (mark.accessory.when === 'now' && seat.accessory.when === 'later') continue;
			if (mark.accessory.purpose === 'hang-handset') continue;
			// Beside the ear: no farther ahead than the shoulders and at their height, 500 to 800 above the seat.
			const above = mark.place.y - seat.place.y;
			const ahead = read('ahead-of-shoulders', scene, mark);
			expect(above > 500 && above < 800 && ahead < 0, `${mark.accessory.id} beside the ear`).toBe(false);
		}
	});

	test('not silly: bars at nearly one height are at one height', () => {
		const bars = marks.filter((m) => m.accessory.kind === 'horizontal-bar');
		for (const one of bars)
			for (const other of bars) {
				const apart = Math.abs(one.place.y - other.place.y);
				expect(apart === 0 || apart > 60).toBe(true);
			}
	});

	test('not silly: no feet hang from a seat that is risen from', () => {
		if (!seat || seat.variant.stands === 'rims') return;
		const over = read('seat-above-high-rise', scene.later ?? scene, seat);
		if (rows.some((r) => r.row.id === 'BODY-FEET-HOLD')) expect(over).toBeLessThanOrEqual(0);
	});
});
