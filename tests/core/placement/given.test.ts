import { expect, test } from 'vitest';
import type { Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { planCase } from '#core/plan.ts';
import { mm } from '#core/units/length.ts';
import { axisOf } from '#core/placement/lattice.ts';
import { PART_COUNT } from '#core/placement/cost.ts';
import type { Problem, Unknown } from '#core/placement/problem.ts';
import { Search, type Found } from '#core/placement/search.ts';
import { random } from './random.ts';
import { price } from './priced.ts';
import { client, placesOf, reduced, varied } from './reduced.ts';

const INSTANCES = 60;

function best(problem: Problem): Found | null {
	const search = new Search(problem, { until: 'proof', evaluations: 1e9 });
	const run = search.run();
	while (!run.next().done);
	return search.found;
}

/** The problem with an unknown left one place only, and what shares its height line left that height. */
function narrowed(problem: Problem, at: number, mark: Mark): Problem {
	const { tape } = problem.scene.c;
	const { wall, variant, x, y } = mark.place;
	const ys = axisOf([y], tape);
	const one = (u: Unknown): Unknown => {
		if (u.index === at) {
			const own = u.spots.filter(({ slot }) => slot.wall === wall && slot.variant === variant);
			return { ...u, spots: own.map((spot) => ({ ...spot, xs: axisOf([x], tape), ys })) };
		}
		const mate = u.accessory.line !== undefined && u.accessory.line === mark.accessory.line;
		return mate ? { ...u, spots: u.spots.map((spot) => ({ ...spot, ys })) } : u;
	};
	return { ...problem, unknowns: problem.unknowns.map(one) };
}

/** The same problem with that place given instead. */
function pinned(problem: Problem, at: number, mark: Mark): Problem {
	const rest = narrowed(problem, at, mark).unknowns.filter((u) => u.index !== at);
	return { ...problem, unknowns: rest.map((u, index) => ({ ...u, index })), given: [{ ...mark, stage: 'pinned' }] };
}

const written = (marks: readonly Mark[] | undefined) => marks?.map((m) => [m.accessory.id, m.place]);

test('[placement R6] a mark given at random holds the rest as if it had no other place, and is not paid for', () => {
	let met = 0;
	for (let seed = 0; seed < INSTANCES; seed++) {
		const next = random(seed + 31);
		const c = varied(client(seed % 2 ? 'stands-then-tires' : 'turns-left'), 300 + seed);
		const problem = reduced(c, 300 + seed, { accessories: 5, values: 5 });
		const at = Math.floor(next() * problem.unknowns.length);
		const [unknown] = problem.unknowns.slice(at, at + 1);
		const places = unknown ? placesOf(unknown) : [];
		const own = (mark: Mark) => price(problem.scene, problem.rows, [mark]);
		const fit = places.filter((mark) => own(mark)[0] === 0);
		const mark = fit[Math.floor(next() * fit.length)];
		if (!mark) continue;
		const round = best(pinned(problem, at, mark));
		const alone = best(narrowed(problem, at, mark));
		const others = alone?.marks.filter((m) => m.accessory.id !== mark.accessory.id);
		expect(written(round?.marks), `seed ${String(seed)}`).toEqual(written(others));
		if (!round || !alone) continue;
		met++;
		const [, ...spared] = own(mark);
		const whole = round.cost.slice(0, PART_COUNT).map((n, i) => n + (spared[i] ?? 0));
		expect(whole, `seed ${String(seed)}`).toEqual(alone.cost.slice(0, PART_COUNT));
	}
	expect(met).toBeGreaterThan(INSTANCES / 5);
});

const COARSE: Case = { ...client('turns-left'), lead: 'reference-led', tape: { unit: 'mm', step: mm(25) } };
const FREE = planCase(COARSE);

test.each(['pinned', 'tried', 'adopted', 'marked', 'built'] as const)(
	'[placement R6] a bar that is %s stays between the steps of the tape, and its companion takes its height',
	(stage) => {
		const bar = FREE.marks.find((m) => m.accessory.id === 'bar-control');
		if (!bar) throw new Error('the example wants a bar on the control wall');
		const there = { ...bar.place, y: mm(bar.place.y + 7.3) };
		const plan = planCase({ ...COARSE, places: { 'bar-control': { ...there, stage } } });
		const now = plan.marks.find((m) => m.accessory.id === 'bar-control');
		expect(now).toEqual({ ...bar, place: there, stage });
		expect(plan.marks.find((m) => m.accessory.id === 'bar-back')?.place.y).toBe(there.y);
		expect(plan.marks.map((m) => m.accessory.id)).toEqual(FREE.marks.map((m) => m.accessory.id));
		expect(plan.status).toBe('optimal');
	}
);

test('[placement R6] two bars given at two heights are both kept there', () => {
	const given = Object.fromEntries(
		FREE.marks.map((m, i) => [m.accessory.id, { ...m.place, y: mm(m.place.y + 3 * i), stage: 'marked' as const }])
	);
	const plan = planCase({ ...COARSE, places: given });
	expect(plan.status).toBe('given');
	expect(Object.fromEntries(plan.marks.map((m) => [m.accessory.id, { ...m.place, stage: m.stage }]))).toEqual(given);
});

test('[placement R6] what is given where nothing is reached from it stays, and the rest is impossible', () => {
	const seat = FREE.marks.find((m) => m.accessory.id === 'seat');
	if (!seat) throw new Error('the example wants a seat');
	const none = { value: { kind: 'none' as const }, how: 'observed' as const };
	const her = COARSE.people['client'];
	if (!her) throw new Error('the example has a client');
	const there = { ...seat.place, x: mm(250), stage: 'built' as const };
	const c: Case = { ...COARSE, people: { ...COARSE.people, client: { ...her, lean: none } }, places: { seat: there } };
	const plan = planCase(c);
	expect(plan.status).toBe('impossible');
	expect(plan.marks.map((m) => ({ ...m.place, stage: m.stage }))).toEqual([there]);
	expect(plan.clashes?.flatMap(({ rows }) => rows).map((r) => [r.row, r.about])).toContainEqual([
		'BODY-REACH',
		['control', 'seat']
	]);
});
