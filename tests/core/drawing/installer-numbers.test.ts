import { cornerOf, settingOut } from '#core/drawing/setting-out.ts';
import type { Drawing } from '#core/drawing/entity.ts';
import { packOf } from '#core/drawing/pack.ts';
import type { Plan } from '#core/plan.ts';
import { reportOf } from '#core/report.ts';
import { describe, expect, test } from 'vitest';
import { CLIENT_PLACES } from './client-places.ts';
import { clientPlan } from './client-plans.ts';
import { PAPERS, texts } from './installer-paper.ts';

type Unit = 'mm' | 'in';

/** The finest a figure on paper shows, half of it: what it may be off the number of the plan. Units: mm. */
const HALF: Readonly<Record<Unit, number>> = { mm: 0.5, in: 25.4 / 32 };

/** A figure as it is read, in mm: "+104", "\u221219 3/4", "1/2". Written here apart from what prints them. */
function read(figure: string, unit: Unit): number {
	const [, sign = '', whole = '', top = '0', under = '1'] =
		/^([+\u2212]?)(?:(\d+)(?!\/))?(?: ?(\d+)\/(\d+))?$/.exec(figure) ?? [];
	if (whole === '' && top === '0') throw new RangeError(`no figure: "${figure}"`);
	const size = Number(whole) + Number(top) / Number(under);
	return (sign === '\u2212' ? -1 : 1) * size * (unit === 'mm' ? 1 : 25.4);
}

/** The figures of a mark in the list of marks, in mm. */
function listed(pack: readonly Drawing[], id: string, unit: Unit): readonly number[] {
	const cell = pack
		.flatMap(texts)
		.filter((t) => new RegExp(`^list/${id}/\\d+$`).test(t.id))
		.map((t) => t.text)
		.join(' ')
		.replace(/[()]/g, '');
	return cell === '' || cell === 'floor' ? [] : cell.split(', ').map((one) => read(one, unit));
}

/** Whether figures are the numbers as far as they can be printed, each number with its figure and none without. */
function sameAs(figures: readonly number[], numbers: readonly number[], unit: Unit): boolean {
	const near = (a: number, b: number): boolean => Math.abs(a - b) <= HALF[unit] + 1e-6;
	return numbers.every((n) => figures.some((f) => near(f, n))) && figures.every((f) => numbers.some((n) => near(f, n)));
}

/** What plan.json has of each mark: its fixings where it is set out by them, else its own place; heights above the floor. */
function numbersOf(plan: Plan) {
	return reportOf(plan).accessories.map((a) => {
		const byFixings = (a.kind === 'horizontal-bar' || a.kind === 'vertical-bar') && a.fixings.length > 0;
		const points = byFixings ? a.fixings : [a];
		const { from } = cornerOf(plan.scene.room, a.wall);
		return {
			id: a.id,
			wall: a.wall,
			across: points.map(({ x }) => from(x)),
			up: points.map(({ y }) => y),
			above: byFixings ? undefined : a.aboveFloor,
			onFloor: a.kind === 'vertical-bar' && a.fixings.length === 0
		};
	});
}

const clients = Object.keys(CLIENT_PLACES).map((name, i) => [name, i] as const);

describe('numbers of the plan', () => {
	test.each(clients)('[drawing R18] every figure of the marks is the number of plan.json: %s', (name, i) => {
		const plan = clientPlan(name);
		expect(numbersOf(plan).length).toBeGreaterThan(0);
		for (const how of PAPERS.filter((_, n) => n % 4 === i % 4)) {
			const pack = packOf(plan, how);
			const { unit } = how.tape;
			for (const { id, across, up, above, onFloor } of numbersOf(plan)) {
				expect(sameAs(listed(pack, `${id}/corner`, unit), across, unit), `${id} corner`).toBe(true);
				if (onFloor) continue;
				expect(sameAs(listed(pack, `${id}/datum`, unit), up, unit), `${id} datum`).toBe(true);
				if (above !== undefined)
					expect(sameAs(listed(pack, `${id}/above`, unit), [above], unit), `${id} above`).toBe(true);
				if (!how.both) continue;
				const other = unit === 'mm' ? 'in' : 'mm';
				const said = listed(pack, `${id}/corner/other`, other);
				// What reads the same in both units is said once.
				if (said.length > 0) expect(sameAs(said, across, other), `${id} other`).toBe(true);
			}
		}
	});

	test.each(clients)('[drawing R18] and so is every running dimension of its walls: %s', (name, i) => {
		const plan = clientPlan(name);
		for (const how of PAPERS.filter((_, n) => n % 4 === i % 4)) {
			const pack = packOf(plan, how);
			const { unit } = how.tape;
			for (const wall of new Set(plan.marks.map(({ place }) => place.wall))) {
				const here = numbersOf(plan).filter((mark) => mark.wall === wall);
				const title = pack.find((d) => here.every(({ id }) => d.entities.some((e) => e.id === `${id}/tag/letter`)));
				const running = (title ? texts(title) : [])
					.filter((t) => /^running\/.+\.\d+$/.test(t.id))
					.map((t) => read(t.text, unit));
				expect(
					sameAs(
						running,
						here.flatMap(({ across }) => across),
						unit
					),
					`${wall} ${how.sheet}`
				).toBe(true);
			}
		}
	});

	test.each(clients)(
		'[drawing R18] every level of the ladder is one of plan.json, and none is left out: %s',
		(name, i) => {
			const plan = clientPlan(name);
			const datum = -plan.scene.room.bathroomFloor;
			for (const how of PAPERS.filter((_, n) => n % 4 === i % 4)) {
				const pack = packOf(plan, how);
				const { unit } = how.tape;
				for (const wall of new Set(plan.marks.map(({ place }) => place.wall))) {
					const here = numbersOf(plan).filter((mark) => mark.wall === wall);
					const sheet = pack.find((d) => here.every(({ id }) => d.entities.some((e) => e.id === `${id}/tag/letter`)));
					const rungs = (sheet ? texts(sheet) : []).filter((t) => /^ladder\/[^/]+$/.test(t.id));
					const level = (id: string) => rungs.filter((t) => t.id === `ladder/${id}`).map((t) => read(t.text, unit));
					expect(level('datum')).toEqual([0]);
					if (datum > 0) expect(sameAs(level('floor'), [-datum], unit), `${wall} floor`).toBe(true);
					const marks = rungs.filter((t) => !/^ladder\/(floor|step|line)$/.test(t.id)).map((t) => read(t.text, unit));
					const up = here.filter(({ onFloor }) => !onFloor).flatMap((mark) => mark.up);
					expect(sameAs(marks, [0, ...up], unit), `${wall} ${how.sheet} levels`).toBe(true);
				}
			}
		}
	);

	test('[drawing R18] the force is the one of plan.json, in newtons, on every mark that holds a person', () => {
		const plan = clientPlan('strong-walls');
		const force = String(Math.round(plan.scene.holds.demand.force));
		const all = packOf(plan, PAPERS[0] ?? { reader: 'installer', sheet: 'A4', tape: { unit: 'mm' } }).flatMap(texts);
		for (const { id, mark } of settingOut(plan)) {
			const says = all.filter((t) => t.id.startsWith(`list/${id}/why/`)).map((t) => t.text);
			const holds = mark.variant.kind === 'seat' || mark.variant.diameter > 0;
			expect(says.join(' ').includes(`${force} N`), id).toBe(holds);
		}
	});

	test('[drawing R18] a figure that is not the plan\u2019s would be seen', () => {
		expect(sameAs([read('18 1/2', 'in')], [469.9], 'in')).toBe(true);
		expect(sameAs([read('18 5/8', 'in')], [469.9], 'in')).toBe(false);
		expect(sameAs([read('\u2212560', 'mm')], [-560.4], 'mm')).toBe(true);
		expect(sameAs([read('\u2212561', 'mm')], [-560.4], 'mm')).toBe(false);
		expect(sameAs([100], [100, 700], 'mm')).toBe(false);
		expect(sameAs([100, 700], [100], 'mm')).toBe(false);
	});
});
