import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Case } from '#core/case/record.ts';
import { readCase } from '#core/case/read.ts';
import { furtherOf, type Further } from '#core/further.ts';
import { planCase, type Plan } from '#core/plan.ts';
import { backingFor } from '#core/structure/backing.ts';

const WALLS = ['not-looked-at', 'hollow', 'backing-may-be-added'] as const;

/** One client before walls nobody looked behind, hollow ones, and ones that may be opened for backing. */
function before(walls: (typeof WALLS)[number]): Case {
	const read = readCase(readFileSync(`personas/walls/${walls}.json`, 'utf8'));
	if (read.kind === 'bad') throw new Error(JSON.stringify(read.problems));
	return read.case;
}

function furtherFor(plan: Plan): Further {
	const run = furtherOf(plan);
	let step = run.next();
	while (!step.done) step = run.next();
	return step.value;
}

const holding = (plan: Plan, marks = plan.marks) =>
	marks.filter((m) => m.variant.brackets.some(({ kind }) => kind !== 'none' && kind !== 'rest'));

describe('one client, three walls', { timeout: 120_000 }, () => {
	test('[placement R7] nothing but the walls is otherwise', () => {
		const known = WALLS.map((walls) => {
			const { people, enclosure, ...rest } = before(walls);
			const { width, depth, type, seatWall } = enclosure;
			return { people, rest: { ...rest, id: '' }, width, depth, type, seatWall };
		});
		expect(new Set(known.map((one) => JSON.stringify(one))).size).toBe(1);
	});

	test('[placement R7] not looked at: a provisional plan with questions, nothing called impossible or held', () => {
		const plan = planCase(before('not-looked-at'));
		expect([plan.status, plan.basis]).toEqual(['optimal', 'provisional']);
		expect(plan.probes.questions.map((q) => q.asks).join(' ')).toContain('What is behind the back wall?');
		expect(plan.backing).toEqual([]);
	});

	test('[placement R7] looked at and hollow, nothing to be added: a clash, and a way out with a next step', () => {
		const plan = planCase(before('hollow'));
		expect(plan.status).toBe('impossible');
		expect(plan.clashes?.flatMap(({ rows }) => rows.map(({ row }) => row))).toContain('WALL-CARRIES');
		const ways = furtherFor(plan).waysOut;
		expect(ways.length).toBeGreaterThan(0);
		for (const { next } of ways.flatMap(({ gives }) => gives)) expect(next).toMatch(/Add backing|post|legs/);
		// One reckoning of backing: what a way out tells is what a plan shows where it may be added.
		for (const { gives, marks } of ways) {
			const told = backingFor(plan.scene, marks);
			for (const { row, about, next } of gives.filter((g) => g.row === 'WALL-CARRIES')) {
				const own = told.filter((one) => one.marks.includes(about[0] ?? ''));
				expect(own.length > 0, row).toBe(holding(plan, marks).some((m) => m.accessory.id === about[0]));
				for (const { how } of own) expect(next).toContain(how);
			}
		}
	});

	test('[placement R7] backing may be added: a plan with the backing it needs behind every bracket', () => {
		const plan = planCase(before('backing-may-be-added'));
		expect([plan.status, plan.basis]).toEqual(['optimal', 'provisional']);
		for (const { accessory, place, variant } of holding(plan)) {
			for (const { x, y } of variant.brackets) {
				const there = plan.backing.some(
					({ wall, marks, rect: { x0, x1, y0, y1 } }) =>
						wall === place.wall &&
						marks.includes(accessory.id) &&
						place.x + x > x0 &&
						place.x + x < x1 &&
						place.y + y > y0 &&
						place.y + y < y1
				);
				expect(there, accessory.id).toBe(true);
			}
		}
	});
});
