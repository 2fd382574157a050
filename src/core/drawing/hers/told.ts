import { lookAgainOf } from '#core/needs/look-again.ts';
import type { Plan } from '#core/plan.ts';
import { conditionsOf, washesOf } from '#core/rules/applies.ts';
import { clientOf } from '#core/measures/client.ts';
import type { Newton } from '#core/units/force.ts';
import { herItems, type HerItem } from './item.ts';
import type { Mind, Until, Weight, Wrong } from './messages.ts';

/** What her sheets say, chosen by the facts of the plan, without a word of any language. */
export interface Told {
	readonly items: readonly HerItem[];
	/** The one thing, and what may follow it. */
	readonly mind: Mind;
	readonly then?: 'sit-back' | { readonly lean: number | 'something' | 'nothing' };
	/** There is a bar or rail to pull on. */
	readonly bars: boolean;
	readonly wrong: readonly Wrong[];
	readonly most: Weight;
	readonly every: 6 | 12;
	/** How she washes until what is wanted later is fitted; left out where nothing is. */
	readonly until?: Until;
	/** The walls are somebody else's, who has not agreed yet. */
	readonly owner?: 'wanted' | 'refused';
}

/** What her sheets say of a plan. */
export function toldOf(plan: Plan): Told {
	const items = herItems(plan);
	const { c, holds } = plan.scene;
	const { permission } = conditionsOf(c);
	const mind = mindOf(plan);
	const then = thenOf(plan, items, mind);
	return {
		items,
		mind,
		bars: has(items.filter(fromNow), ['bar', 'l-bar', 'upright-in', 'upright-out', 'pole-in', 'pole-out', 'rail']),
		wrong: wrongOf(items.filter(fromNow)),
		most: weightOf(holds.demand.force),
		every: lookAgainOf(c).every,
		...(then && { then }),
		...(items.some(({ state }) => state === 'later') && { until: washesOf(clientOf(c).person) ?? 'unknown' }),
		...((permission === 'wanted' || permission === 'refused') && { owner: permission })
	};
}

/** It is there from the start. */
const fromNow = ({ state }: HerItem): boolean => state !== 'later';

const has = (items: readonly HerItem[], names: readonly HerItem['thing'][]): boolean =>
	items.some(({ thing }) => names.includes(thing));

/** The one thing to keep in mind: the first of these that speaks of her. */
function mindOf({ scene: { c } }: Plan): Mind {
	const { runsWater, washes, rests, needsHold, oneHand, seat } = conditionsOf(c);
	if (runsWater === 'helper') return 'helper-turns';
	if (washes === 'in-chair') return 'brakes';
	if (washes === 'both' && rests === 'yes') return 'sit-in-time';
	if (needsHold === 'yes') return oneHand === 'yes' ? 'hold-first' : 'one-hand-holds';
	return seat === 'yes' ? 'sit-back' : 'hold-first';
}

/** What follows: the lean to the tap, where one is needed and she turns it, else how to sit. */
function thenOf(plan: Plan, items: readonly HerItem[], mind: Mind): Told['then'] {
	const tap = items.find(({ thing, state }) => thing === 'tap' && state !== 'later');
	const leans = plan.probes.leans.some(({ accessory, degrees }) => accessory === tap?.id && degrees !== null);
	const hold = leans && mind !== 'helper-turns' ? holdFor(plan, items) : undefined;
	// Who has one hand for everything cannot turn the tap and hold on.
	if (hold !== undefined && (hold === 'nothing' || conditionsOf(plan.scene.c).oneHand !== 'yes')) return { lean: hold };
	const seat = items.find(({ thing }) => thing === 'seat');
	return seat && seat.state !== 'later' && mind !== 'sit-back' ? 'sit-back' : undefined;
}

/** What to hold when leaning: nothing where she leans free; else a bar near the tap, which is there from the start. */
function holdFor(plan: Plan, items: readonly HerItem[]): number | 'something' | 'nothing' {
	const { lean } = clientOf(plan.scene.c).person;
	if (lean?.value.kind === 'free') return 'nothing';
	const wallOf = ({ set }: HerItem) => set?.mark.place.wall;
	const tap = items.find(({ thing }) => thing === 'tap');
	const bars = items.filter(({ thing, state }) => (thing === 'bar' || thing === 'l-bar') && state !== 'later');
	const best = bars.find((bar) => tap && wallOf(bar) === wallOf(tap)) ?? bars[0];
	return best?.number ?? 'something';
}

function wrongOf(items: readonly HerItem[]): readonly Wrong[] {
	const bars = items.some(({ holds, thing }) => holds && thing !== 'seat' && thing !== 'board');
	return [
		...(bars ? (['bar-moves'] as const) : (['part-loose'] as const)),
		...(has(items, ['seat', 'board']) ? (['seat-wobbles'] as const) : []),
		'tile-cracks',
		'water-behind',
		...(has(items, ['tap', 'temperature']) ? (['suddenly-hot'] as const) : []),
		...(has(items, ['cord']) ? (['cord-silent'] as const) : [])
	];
}

/** Standard gravity, m/s2. Source: BIPM, The International System of Units. */
const GRAVITY = 9.80665;
/** Mass of a pound in kg, exactly. Source: NIST Special Publication 811, appendix B.8. */
const POUND = 0.45359237;
const STONE = 14;

/** The weight a force can bear, in whole units rounded down. */
export function weightOf(force: Newton): Weight {
	// A force worked out from whole kilograms may come back a hair below them.
	const kg = force / GRAVITY + 1e-9;
	const lb = Math.floor(kg / POUND);
	return { kg: Math.floor(kg), lb, stone: Math.floor(lb / STONE), over: lb % STONE };
}
