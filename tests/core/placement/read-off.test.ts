import { describe, expect, test } from 'vitest';
import { variantOf } from '#core/case/accessory.ts';
import { contradictions } from '#core/case/contradictions.ts';
import { asRead, readOffId } from '#core/case/read-off.ts';
import { caseSchema, type Case } from '#core/case/record.ts';
import { mirroredCase } from '#core/enclosure/mirrored-case.ts';
import { planCase, questionOf } from '#core/plan.ts';
import { reportOf } from '#core/report.ts';
import { inches } from '#core/units/length.ts';
import { client } from './reduced.ts';

const REAL = {
	name: 'bar from the shelf',
	centres: 610,
	diameter: 35,
	standOff: 60,
	flange: { across: 90, circle: 64, holes: 4, hole: 6.5 },
	load: 1500
};
const base = { ...client('turns-left'), tape: { unit: 'in', step: inches(1) } } as const;
const withPart = (id: string, change: Record<string, unknown> = {}, places: Case['places'] = {}): Case =>
	caseSchema.parse(JSON.parse(JSON.stringify({ ...base, places, parts: { [id]: { ...REAL, ...change } } })));
const bought = withPart('bar-back');
const id = readOffId('horizontal-bar', bought.parts['bar-back'] ?? (REAL as never));

describe('a real bar that was read off', { timeout: 120_000 }, () => {
	test('[case R7] its id tells all of it, and its part has its own size', () => {
		const part = variantOf(id);
		expect(part).toMatchObject({
			kind: 'horizontal-bar',
			length: 610,
			diameter: 35,
			gripOff: 60,
			gap: 42.5,
			depth: 77.5
		});
		expect(part.outline).toEqual({ x0: -45, y0: -45, x1: 655, y1: 45 });
		expect(part.brackets.map(({ flange }) => flange)).toEqual([
			{ radius: 45, circle: 32, holes: 4, standOff: 60, hole: 6.5 },
			{ radius: 45, circle: 32, holes: 4, standOff: 60, hole: 6.5 }
		]);
		expect(variantOf(id)).toBe(part);
	});

	test('[case R7] what is no bar, or has its holes beyond its flange, is named', () => {
		const at = (c: Case) => contradictions(c).map(({ path }) => path);
		expect(at(bought)).toEqual([]);
		expect(at(withPart('seat'))).toEqual(['parts.seat']);
		expect(at(withPart('no-such'))).toEqual(['parts.no-such']);
		expect(at(withPart('bar-back', { flange: { ...REAL.flange, circle: 86 } }))).toEqual([
			'parts.bar-back.flange.circle'
		]);
	});

	test('[needs R4] is the only part its accessory may be', () => {
		const slots = questionOf(bought).wanted.find((a) => a.id === 'bar-back')?.slots ?? [];
		expect(slots.length).toBeGreaterThan(0);
		expect(new Set(slots.map(({ variant }) => variant))).toEqual(new Set([id]));
	});

	test('[placement R15] is placed instead of a generic one, and its holes are told', () => {
		const plan = planCase(bought);
		expect(plan.status).not.toBe('impossible');
		const own = reportOf(plan).accessories.find((a) => a.id === 'bar-back');
		expect(own?.length).toBe(610);
		for (const { x, y, holes = [] } of own?.fixings ?? []) {
			expect(holes).toHaveLength(4);
			for (const [hx, hy] of holes) expect(Math.hypot(hx - x, hy - y)).toBeCloseTo(32, 0);
			// Two at the top spare the worst screw.
			expect(holes.filter(([, hy]) => hy > y + 20)).toHaveLength(2);
		}
		const generic = reportOf(plan).accessories.find((a) => a.id === 'bar-control');
		expect(generic?.fixings.every((f) => f.holes === undefined)).toBe(true);
	});

	test('[placement R15] takes the place that was given for it, in a mirrored room too', () => {
		const place = { wall: 'back', variant: 'bar-24in', x: 300, y: -150, turn: 0, stage: 'pinned' } as const;
		const given = withPart('bar-back', {}, { 'bar-back': place } as unknown as Case['places']);
		const bar = planCase(given).marks.find((m) => m.accessory.id === 'bar-back');
		expect(bar).toMatchObject({ place: { x: 300, y: -150, variant: id }, variant: { length: 610 } });
		expect(mirroredCase(mirroredCase(given))).toEqual(asRead(given));
		const turned = mirroredCase(given).places['bar-back'];
		expect(turned?.x).toBeCloseTo(given.enclosure.width.value - 300 - 610, 6);
	});

	test('[placement R15] a load marked on it that is too little is a must not met; none marked is asked about', () => {
		const answers = (load: number | undefined) => {
			const place = { wall: 'back', variant: 'bar-24in', x: 300, y: -150, turn: 0, stage: 'pinned' } as const;
			const c = withPart('bar-back', { load }, { 'bar-back': place } as unknown as Case['places']);
			const found = planCase(c).findings.filter((f) => f.row.id === 'WALL-PART-MARKED' && f.about.includes('bar-back'));
			return found.map(({ answer, strength }) => [strength, answer]);
		};
		expect(answers(1500)).toEqual([['must', 'inside']]);
		expect(answers(1000)).toEqual([['must', 'outside']]);
		expect(answers(undefined)).toEqual([['must', 'unknown']]);
	});
});
