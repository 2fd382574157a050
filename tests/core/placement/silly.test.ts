import { describe, expect, test } from 'vitest';
import type { Mark } from '#core/case/accessory.ts';
import { laterCase } from '#core/case/later.ts';
import type { Case } from '#core/case/record.ts';
import { MEASURES } from '#core/measures/registry.ts';
import type { Measure } from '#core/measures/scene.ts';
import { alongSeatWall, centreLine } from '#core/measures/where.ts';
import { countsMore, sameRow, STEERING } from '#core/placement/worse.ts';
import type { Question } from '#core/plan.ts';
import { judge } from '#core/rules/judge.ts';
import { DOCUMENTS } from '#core/rules/packs/index.ts';
import { mm } from '#core/units/length.ts';
import { CLIENTS, planned } from './planned.ts';
import { client } from './reduced.ts';

type Planned = Question & { readonly marks: readonly Mark[] };

/** Rows asked before a plan is looked at here. */
const ENOUGH = 600_000;

const number = (id: keyof typeof MEASURES, { scene }: Planned, mark: Mark): number => {
	const measure = MEASURES[id] as Measure;
	const reading = measure.about === 'mark' ? measure.of(scene.later ?? scene, mark) : NaN;
	return typeof reading === 'number' ? reading : NaN;
};

const seatOf = ({ marks }: Planned): Mark | undefined => marks.find((m) => m.accessory.kind === 'seat');

/** What a mark holds out into the room, from its foot to its head, lies at the height of the ears. Units: mm. Source: ours. */
function atEars(p: Planned, mark: Mark, seat: Mark | undefined): boolean {
	const { y0, y1 } = mark.variant.grip;
	const above = seat ? mark.place.y - seat.place.y : number('above-chair-seat', p, mark) - (y0 + y1) / 2;
	return above + Math.max(0, y1) > 500 && above + Math.min(0, y0) < 850;
}

/** How far to the side of the middle of the head what is nearest of a mark lies. Units: mm. */
function aside({ scene }: Planned, { place, variant }: Mark, seat: Mark): number {
	const { x0, x1 } = variant.grip;
	const ends = [x0, x1].map((x) => alongSeatWall(scene, place.wall, { x: place.x + x, off: variant.gripOff }));
	const middle = centreLine(scene, seat);
	return Math.max(0, Math.min(...ends) - middle, middle - Math.max(...ends));
}

/**
 * What the one who sits works less than 200 mm ahead of the shoulders at the height of the head, however far to the side,
 * and whatever else is within 200 mm of an ear, which is some 75 from the middle of the head. Source: ours.
 */
function besideTheEar(p: Planned): readonly string[] {
	const seat = seatOf(p);
	const together = ({ accessory: { when } }: Mark) => when !== 'now' || seat?.accessory.when !== 'later';
	const worked = ({ accessory: { kind, purpose } }: Mark) =>
		['control', 'handset-rest'].includes(kind) && purpose !== 'hang-handset';
	return p.marks
		.filter((m) => m !== seat && together(m) && atEars(p, m, seat))
		.filter((m) => Math.abs(number(seat ? 'ahead-of-shoulders' : 'ahead-in-chair', p, m)) < 200)
		.filter((m) => worked(m) || (seat && aside(p, m, seat) < 275))
		.map((m) => m.accessory.id);
}

/** Level bars that lie a little above one another. */
function nearlyLevel({ marks }: Planned): readonly string[] {
	const bars = marks.filter((m) => m.accessory.kind === 'horizontal-bar');
	return bars
		.filter((one) => bars.some((o) => o.place.y !== one.place.y && Math.abs(o.place.y - one.place.y) <= 60))
		.map((m) => m.accessory.id);
}

/** Nothing asks for it, or it says nothing for itself. */
const withoutFunction = ({ marks, wanted }: Planned): readonly string[] =>
	marks
		.filter((m) => !wanted.some((a) => a.id === m.accessory.id && a.because !== '' && a.reason !== ''))
		.map((m) => m.accessory.id);

/** A bar to steady on while standing, for one who never stands, with no document named that asks for it. */
function farForSitter({ marks, scene: { c } }: Planned): readonly string[] {
	const stands = (one: Case | null) =>
		Object.values(one?.people ?? {}).some(
			(p) => p.role === 'client' && p.washes?.value !== undefined && ['standing', 'both'].includes(p.washes.value)
		);
	if (stands(c) || stands(laterCase(c))) return [];
	const said = (m: Mark) =>
		DOCUMENTS.some(({ requires }) => requires.some((r) => m.accessory.reason.includes(r.clause)));
	return marks.filter((m) => m.accessory.purpose === 'steady' && !said(m)).map((m) => m.accessory.id);
}

/** Feet that hang: a whole step of a wish, 25 mm, past 120 % of the lower leg. Over a bath its rim decides. */
function hangingFeet(p: Planned): readonly string[] {
	const seat = seatOf(p);
	if (!seat || seat.variant.stands === 'rims') return [];
	return number('seat-above-high-rise', p, seat) >= 25 ? [seat.accessory.id] : [];
}

/** How far a mark, with what shares its line, may slide before a row that steers says less or counts more. */
function slides({ scene, rows, marks }: Planned, mark: Mark, axis: 'x' | 'y'): number {
	const moves = (m: Mark) =>
		m === mark || (axis === 'y' && mark.accessory.line !== undefined && m.accessory.line === mark.accessory.line);
	const ids = marks.filter(moves).map((m) => m.accessory.id);
	const touching = rows.filter((r) => STEERING.some((s) => s === r.strength) && r.about.some((id) => ids.includes(id)));
	const before = judge(scene, touching, marks);
	const holds = (by: number): boolean => {
		const moved = marks.map((m) => (moves(m) ? { ...m, place: { ...m.place, [axis]: mm(m.place[axis] + by) } } : m));
		return judge(scene, touching, moved).some((is) => {
			const was = before.find((one) => sameRow(one, is));
			return !was || countsMore(was, is);
		});
	};
	const free = (step: number): number => {
		let by = 0;
		while (Math.abs(by) < 1000 && !holds(by + step)) by += step;
		return Math.abs(by);
	};
	return free(-10) + free(10);
}

/** A hand shower's part, or any other, that no row holds where it is: the order of walls and heights put it there. */
const byAccident = (p: Planned): readonly string[] =>
	p.marks.flatMap((m) =>
		(['x', 'y'] as const).flatMap((axis) => {
			const free = slides(p, m, axis);
			return free > 300 ? [`${m.accessory.id} slides ${String(free)} mm along ${axis}`] : [];
		})
	);

const CHECKS = { besideTheEar, nearlyLevel, withoutFunction, farForSitter, hangingFeet, byAccident };

/** Its room is not the one the document describes: led by the document no plan meets every must, and the clash is told. */
const ANOTHER_ROOM = 'strong-walls';

const LED = CLIENTS.flatMap((name) =>
	(['person-led', 'reference-led'] as const).map((lead) => ({ name, lead }))
).filter(({ name, lead }) => name !== ANOTHER_ROOM || lead === 'person-led');

test('a room the document does not describe has no plan to look at', () => {
	expect(planned({ ...client(ANOTHER_ROOM), lead: 'reference-led' }, ENOUGH).marks).toEqual([]);
});

describe.each(LED)('$name, $lead', ({ name, lead }) => {
	const plan = planned({ ...client(name), lead }, ENOUGH);

	test('there is a plan to look at', () => {
		expect(plan.marks.length).toBe(plan.wanted.length);
	});

	test.each(Object.entries(CHECKS))('not silly: %s', (_, check) => {
		expect(check(plan)).toEqual([]);
	});
});

/** A plan with one of its marks elsewhere or other than it is. */
const spoilt = (p: Planned, id: string, change: (mark: Mark) => Mark): Planned => ({
	...p,
	marks: p.marks.map((m) => (m.accessory.id === id ? change(m) : m))
});

const at = (mark: Mark, place: Partial<Record<'x' | 'y', number>>): Mark => ({
	...mark,
	place: {
		...mark.place,
		...(place.x !== undefined && { x: mm(place.x) }),
		...(place.y !== undefined && { y: mm(place.y) })
	}
});

describe('each check finds what is silly', () => {
	const plan = planned(client('turns-left'), ENOUGH);
	const seat = seatOf(plan) as Mark;
	const bar = plan.marks.find((m) => m.accessory.id === 'bar-back') as Mark;

	test('a rest beside the ear', () => {
		const near = spoilt(plan, 'handset-rest', (m) => ({
			...at(m, { x: seat.place.x, y: seat.place.y + 650 }),
			place: { ...m.place, wall: 'back', x: mm(200), y: mm(seat.place.y + 650) }
		}));
		const ahead = number('ahead-of-shoulders', near, near.marks.find((m) => m.accessory.id === 'handset-rest') as Mark);
		expect(Math.abs(ahead)).toBeLessThan(200);
		expect(besideTheEar(near)).toEqual(['handset-rest']);
	});

	test('a rest beside the ear of who washes in her chair', () => {
		const wheeled = planned(client('wheeled-in'), ENOUGH);
		const rest = wheeled.marks.find((m) => m.accessory.id === 'handset-rest') as Mark;
		const forward = number('ahead-in-chair', wheeled, rest);
		const up = 650 - number('above-chair-seat', wheeled, rest);
		const ear = [forward, -forward].map((by) =>
			spoilt(wheeled, 'handset-rest', (m) => at(m, { x: m.place.x + by, y: m.place.y + up }))
		);
		expect(besideTheEar(wheeled)).toEqual([]);
		expect(ear.flatMap(besideTheEar)).toEqual(['handset-rest']);
	});

	test('a bar beside the ear', () => {
		const near = spoilt(plan, 'bar-back', (m) => ({
			...m,
			place: { ...m.place, wall: seat.place.wall, x: mm(seat.place.x - 100), y: mm(seat.place.y + 650) }
		}));
		expect(besideTheEar(near)).toContain('bar-back');
	});

	test('three bars at three nearly equal heights', () => {
		const more = [30, 60].map((up, i) => ({
			...at(bar, { y: bar.place.y + up }),
			accessory: { ...bar.accessory, id: `bar-${String(i)}` }
		}));
		const bars = { ...plan, marks: [...plan.marks.filter((m) => m.accessory.kind !== 'horizontal-bar'), bar, ...more] };
		expect(nearlyLevel(bars)).toEqual(['bar-back', 'bar-0', 'bar-1']);
	});

	test('a thing nobody asked for', () => {
		const stray = { ...bar, accessory: { ...bar.accessory, id: 'shelf' } };
		expect(withoutFunction({ ...plan, marks: [...plan.marks, stray] })).toEqual(['shelf']);
	});

	test('a bar to stand by for one who never stands', () => {
		const far = spoilt(plan, 'bar-back', (m) => ({
			...m,
			accessory: { ...m.accessory, purpose: 'steady', reason: 'A bar.' }
		}));
		expect(farForSitter(far)).toEqual(['bar-back']);
	});

	test('a seat from which feet hang', () => {
		const risen = planned(client('one-good-hand'), ENOUGH);
		expect(hangingFeet(risen)).toEqual([]);
		const up = spoilt(risen, 'seat', (m) => at(m, { y: m.place.y + 150 }));
		expect(hangingFeet(up)).toEqual(['seat']);
	});

	test('a holder that nothing holds', () => {
		const stander = planned(client('stands-for-now'), ENOUGH);
		const loose = { ...stander, rows: stander.rows.filter((r) => r.row.id !== 'CRAFT-HOLDER') };
		expect(byAccident(loose).some((says) => says.startsWith('handset-holder'))).toBe(true);
	});
});
