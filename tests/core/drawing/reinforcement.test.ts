import { describe, expect, test } from 'vitest';
import { tableOf } from '#cli/table.ts';
import { elevationOf } from '#core/drawing/elevation.ts';
import type { Drawing, Path } from '#core/drawing/entity.ts';
import { LAYERS } from '#core/drawing/layers.ts';
import { extent } from '#core/drawing/path.ts';
import { packOf } from '#core/drawing/pack.ts';
import { reinforcementOf } from '#core/needs/reinforcement.ts';
import { reportOf } from '#core/report.ts';
import { fixtureCase, fixturePlan, mirrored, EXAMPLE } from './fixture.ts';

const A4 = { reader: 'therapist', sheet: 'A4', tape: { unit: 'mm' } } as const;
const NEW = { newBuilt: { value: true, how: 'told' }, fall: { value: 0, how: 'measured' } } as const;
const [left, old] = [fixturePlan(fixtureCase({ enclosure: NEW })), fixturePlan(fixtureCase())];
const right = fixturePlan(fixtureCase({ enclosure: { ...NEW, seatWall: 'right' } }), mirrored(EXAMPLE, 914));

const textOf = (d: Drawing): string =>
	d.entities
		.flatMap((e) => (e.kind === 'text' ? [e.text] : []))
		.join(' ')
		.replaceAll(/\s+/g, ' ');

function path(d: Drawing, id: string): Path {
	const found = d.entities.find((e) => e.id === id);
	if (found?.kind !== 'path') throw new Error(`no path ${id}`);
	return found;
}

describe('where the wall of a new dwelling is to be solid', () => {
	test.each([
		['seat on the left', left],
		['seat on the right', right]
	] as const)('[drawing R1] %s: an empty box of its own dashes, as large as it is and at its level', (_, plan) => {
		const d = elevationOf(plan, 'back', A4);
		const box = path(d, 'to-keep/0');
		expect(box.layer).toBe('backing-to-keep');
		expect(LAYERS['backing-to-keep']).not.toHaveProperty('fill');
		expect(LAYERS['backing-to-keep'].dash).not.toEqual(LAYERS['backing-to-add'].dash);
		const { x0, x1, y0, y1 } = extent(box);
		// The wall is 914 long. ADA 2010, 609.4 with a 32 mm tube and an 80 mm flange: 782.2 to 938.4 above the floor.
		const scale = 914 / (x1 - x0);
		expect((y1 - y0) * scale).toBeCloseTo(156.2, 1);
		const ring = extent(path(d, 'ladder/datum/ring'));
		expect(((ring.y0 + ring.y1) / 2 - y0) * scale).toBeCloseTo(938.4 - 1000, 1);
		const says = textOf(d);
		expect(says).toContain('keep solid 914 \u00d7 156');
		expect(says).toContain(
			'Keep solid backing here, 0 to 914 from corner, \u2212218 to \u221262 from datum (new dwelling, ADA Standards, 608.3.1).'
		);
		expect(d.entities.map((e) => e.id)).toContain('legend/backing-to-keep/word');
	});

	test('[drawing R1] nothing of it where the dwelling is not new', () => {
		for (const d of packOf(old, A4)) {
			expect(d.entities.some((e) => e.kind === 'path' && e.layer === 'backing-to-keep')).toBe(false);
			expect(textOf(d)).not.toContain('Keep solid');
		}
	});

	test('[drawing R1] a wall without marks has its sheet too, where it is to be solid', () => {
		const none = { ...left, marks: [] };
		const titles = packOf(none, A4).map(({ title }) => title);
		for (const wall of ['Back wall', 'Left wall', 'Right wall']) expect(titles).toContain(wall);
	});

	test('[needs R32] plan.json lists every area with its clause, and nothing where there is none', () => {
		expect(reportOf(left).reinforcement).toEqual(reinforcementOf(left.scene));
		expect(
			reportOf(left)
				.reinforcement?.map(({ wall, clauses }) => `${wall} ${clauses.join()}`)
				.toSorted()
		).toEqual(['back 608.3.1', 'left 608.4', 'right 608.3.1']);
		expect(reportOf(old)).not.toHaveProperty('reinforcement');
	});

	test('[needs R32] the command line tells them, and what they take in', () => {
		const said = (plan: typeof left) =>
			tableOf(plan, { waysOut: [], alternatives: [], worth: [] }, { unit: 'mm' }).replaceAll(/\s+/g, ' ');
		expect(said(left)).toContain('Keep solid backing here: new dwelling');
		expect(said(left)).toContain(
			'back wall, 0 mm to 914 mm along, -217.8 mm to -61.6 mm from the datum line, for bar-back'
		);
		expect(said(left)).toContain('rows between two things are not');
		expect(said(old)).not.toContain('Keep solid backing');
	});
});
