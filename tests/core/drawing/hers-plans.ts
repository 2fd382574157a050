import type { Drawing, Path, Text } from '#core/drawing/entity.ts';
import { packOf } from '#core/drawing/pack.ts';
import type { SheetName } from '#core/drawing/sheet.ts';
import { planFrom, questionOf, type Plan } from '#core/plan.ts';
import { clientCase } from './client-plans.ts';
import { CLIENTS, planned } from '../placement/planned.ts';
import { fixtureCase, fixturePlan } from './fixture.ts';
import { planOf, TEST_ROOMS } from './rooms.ts';

/** The languages of her sheets. */
export const LANGUAGES = ['en', 'es', 'fr'] as const;
export type Language = (typeof LANGUAGES)[number];

/** The plan of an example client with the first places that meet every must: her words hang on what is there, not on where. */
function clientPlan(name: (typeof CLIENTS)[number]): Plan {
	const c = clientCase(name);
	const { marks } = planned(c, 1);
	return planFrom(questionOf(c), { marks, status: 'bounded', cost: [], bound: [], evaluations: 0, nodes: 0 });
}

/** Every example client and every room of the fixtures, by name. */
export const allPlans = (): ReadonlyMap<string, Plan> =>
	new Map([
		...CLIENTS.map((name): [string, Plan] => [name, clientPlan(name)]),
		['transfer', fixturePlan(fixtureCase())],
		...Object.entries(TEST_ROOMS).map(([name, room]): [string, Plan] => [name, planOf(room)])
	]);

/** The same plan in another language. */
const inLanguage = (plan: Plan, language: Language): Plan => ({
	...plan,
	scene: { ...plan.scene, c: { ...plan.scene.c, language } }
});

/** Her sheets in a language. */
export const hersIn = (plan: Plan, language: Language, sheet: SheetName = 'A4'): readonly Drawing[] =>
	packOf(inLanguage(plan, language), { reader: 'hers', sheet, tape: { unit: plan.scene.c.tape.unit } });

export const textsOf = (d: Drawing): readonly Text[] => d.entities.filter((e): e is Text => e.kind === 'text');

/** The paragraphs of some sheets by id, their lines joined; what stands on every sheet is said once. */
export function paragraphsOf(sheets: readonly Drawing[]): ReadonlyMap<string, string> {
	const all = new Map<string, string>();
	for (const d of sheets) {
		const own = new Map<string, string>();
		for (const { id, text } of textsOf(d)) {
			const whole = id.replace(/\/\d+$/, '');
			const before = own.get(whole);
			own.set(whole, before === undefined || whole === id ? text : `${before} ${text}`);
		}
		for (const [id, text] of own) all.set(id.startsWith('head/') ? `${id} ${d.title} ${text}` : id, text);
	}
	return all;
}

/** One of some plans. Fails: Error when there is none of that name. */
export function planNamed(plans: ReadonlyMap<string, Plan>, name: string): Plan {
	const plan = plans.get(name);
	if (!plan) throw new Error(name);
	return plan;
}

export const pathsOf = (sheets: readonly Drawing[]): readonly Path[] =>
	sheets.flatMap(({ entities }) => entities.filter((e): e is Path => e.kind === 'path'));
