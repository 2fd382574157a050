import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import type { Mark } from '#core/case/accessory.ts';
import type { Scene } from '#core/measures/scene.ts';
import { judge } from '#core/rules/judge.ts';
import { CLIENTS, planned } from './planned.ts';
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

const level = (s: Scene, mark: Mark): number => mark.place.y - s.room.bathroomFloor;

describe.each(CLIENTS)('%s', (name) => {
	const { scene, rows, wanted, marks } = planned(client(name));
	const file = readFileSync(`personas/clients/${name}/expected.json`, 'utf8');
	const { contains, without, open } = expected.parse(JSON.parse(file));

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
});
