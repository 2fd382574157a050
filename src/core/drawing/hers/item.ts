import type { Side } from '#core/body/hands.ts';
import type { Accessory, Mark, Purpose } from '#core/case/accessory.ts';
import { conditionsOf } from '#core/rules/applies.ts';
import { clientOf } from '#core/measures/client.ts';
import type { Plan } from '#core/plan.ts';
import { lettersOf, settingOut, type SetOut } from '../setting-out.ts';
import type { Helped, Messages, State, Tested, ThingName, Use, Where, Which } from './messages.ts';
import { whereIs } from './where.ts';
import { whichOf } from './which.ts';

/** One thing on her sheets. */
export interface HerItem {
	readonly id: string;
	/** What it is called in every picture, from 1. */
	readonly number: number;
	/** The same on the sheets of who fits it. */
	readonly letter: string;
	readonly thing: ThingName;
	/** Where it is, of what there may be several of. */
	readonly where?: Where;
	/** Which of two that have the same name there. */
	readonly which?: Which;
	readonly use: Use;
	/** With what the water is tested; left out where somebody else does. */
	readonly test?: Tested;
	/** The one hand it is for. */
	readonly hand?: Side;
	/** How many must be with her, where she must not use it alone. */
	readonly helped?: Helped;
	readonly state?: State;
	/** Its mark as it is set out; left out while it has none. */
	readonly set?: SetOut;
	/** It holds a person. */
	readonly holds: boolean;
}

const CARRYING: readonly Accessory['kind'][] = ['seat', 'horizontal-bar', 'vertical-bar', 'fold-down-rail'];
const WATER: readonly Purpose[] = ['run-water', 'set-temperature'];
const BARS: readonly ThingName[] = ['bar', 'l-bar', 'upright-in', 'upright-out', 'rail'];
/** What is used in rising, and in getting in and out. */
const RISING: readonly Purpose[] = ['sit', 'rise', 'push-up'];
const CROSSING: readonly Purpose[] = ['sit', 'step-in', 'step-out'];

/** Everything that is wanted, in the order of the letters. */
export function herItems(plan: Plan): readonly HerItem[] {
	const items = itemsOf(plan);
	return items.map((item) => toldApart(plan, item, items));
}

function itemsOf(plan: Plan): readonly HerItem[] {
	const sets = settingOut(plan);
	const letters = lettersOf(plan);
	return plan.wanted.map((accessory, i): HerItem => {
		const set = sets.find(({ id }) => id === accessory.id);
		const mark = set?.mark;
		const where = mark && whereOf(plan, mark);
		const state = stateOf(set, accessory);
		const hand = handOf(plan, accessory);
		const test = testOf(plan, accessory, hand);
		const helped = helpedOf(plan, accessory);
		return {
			id: accessory.id,
			number: i + 1,
			letter: letters[accessory.id] ?? '',
			thing: thingNamed(accessory, mark),
			use: useOf(plan, accessory, mark),
			holds: CARRYING.includes(accessory.kind),
			...(where && { where }),
			...(hand && { hand }),
			...(test && { test }),
			...(helped && { helped }),
			...(state && { state }),
			...(set && { set })
		};
	});
}

/** Two bars of one name: by where they are on their wall, or by the wall. */
function toldApart(plan: Plan, item: HerItem, items: readonly HerItem[]): HerItem {
	const { set, thing, where } = item;
	const [other, ...more] = items.filter((one) => one !== item && one.thing === thing && one.where === where);
	if (!BARS.includes(thing) || !set || !other?.set || more.length > 0) return item;
	const [mark, its] = [set.mark, other.set.mark];
	if (mark.place.wall !== its.place.wall) return { ...item, where: whereIs(plan, mark.place.wall) };
	return { ...item, which: whichOf(plan, mark, its) };
}

/** What something is called, with where it is and which. */
export const nameOf = ({ thing, where, which }: HerItem, { things, places, which: told }: Messages): string =>
	[where ? `${things[thing]} ${places[where]}` : things[thing], ...(which ? [told[which]] : [])].join(', ');

/** What an accessory is called before it has a place. */
export function thingNamed({ kind, purpose }: Accessory, mark?: Mark): ThingName {
	const stands = mark?.variant.stands;
	switch (kind) {
		case 'seat':
			return stands === 'rims' ? 'board' : 'seat';
		case 'control':
			return purpose === 'set-temperature' ? 'temperature' : purpose === 'divert' ? 'diverter' : 'tap';
		case 'outlet':
			return 'outlet';
		case 'handset-rest':
			return purpose === 'hang-handset' ? 'high-holder' : purpose === 'fix-handset' ? 'fixed-holder' : 'rest';
		case 'horizontal-bar':
			return mark?.variant.upright ? 'l-bar' : 'bar';
		case 'vertical-bar':
			return `${stands === 'floor-and-ceiling' ? 'pole' : 'upright'}-${purpose === 'step-out' ? 'out' : 'in'}`;
		case 'fold-down-rail':
			return 'rail';
		case 'call-cord':
			return 'cord';
	}
}

/** Bars lie on any side; a rail lies beside the seat on its wall, or ahead of it. */
function whereOf(plan: Plan, { variant, place }: Mark): Where | undefined {
	if (variant.kind === 'horizontal-bar') return whereIs(plan, place.wall);
	if (variant.kind !== 'fold-down-rail') return undefined;
	const seat = plan.marks.find((m) => m.variant.kind === 'seat' && m.place.wall === place.wall);
	if (!seat) return whereIs(plan, place.wall);
	// What lies to the right on the wall is on the left of who turns the back to it.
	return place.x > seat.place.x ? 'seat-left' : 'seat-right';
}

function stateOf(set: SetOut | undefined, { when }: Accessory): State | undefined {
	if (when === 'later') return 'later';
	if (!set) return 'no-place';
	if (set.mark.stage === 'built') return undefined;
	return set.unseen ? 'asks-wall' : set.waits ? 'asks' : undefined;
}

const turnedForHer = ({ scene }: Plan): boolean => clientOf(scene.c).person.runsWater?.value === 'helper';

function useOf(plan: Plan, { purpose, kind }: Accessory, mark: Mark | undefined): Use {
	const sits = plan.marks.some(({ variant, accessory }) => variant.kind === 'seat' && accessory.when !== 'later');
	switch (purpose) {
		case 'sit':
			return mark?.variant.stands === 'rims' ? 'sit-across' : 'sit';
		case 'run-water':
		case 'set-temperature':
		case 'divert':
			return turnedForHer(plan) ? `${purpose}-helped` : purpose;
		case 'rest-handset':
			return sits ? purpose : 'rest-handset-standing';
		case 'steady':
			if (conditionsOf(plan.scene.c).oneHand === 'yes') return 'steady-one-hand';
			return conditionsOf(plan.scene.c)['washes'] === 'standing' || !sits ? 'steady-standing' : purpose;
		case 'sit-steady':
			return kind === 'fold-down-rail' ? 'sit-steady-rail' : purpose;
		default:
			return purpose;
	}
}

/** The hand that may use it, where only one may and she does. */
function handOf(plan: Plan, { purpose, kind, hands }: Accessory): Side | undefined {
	const [only, other] = hands;
	const byHand = kind !== 'seat' && kind !== 'outlet' && kind !== 'call-cord';
	const byHelper = kind === 'control' && turnedForHer(plan);
	return other || !byHand || byHelper || purpose === 'fix-handset' ? undefined : only;
}

/** How many must be there where she does not rise or cross without help. */
function helpedOf({ scene: { c } }: Plan, { purpose }: Accessory): Helped | undefined {
	const { rises, helpedBy } = conditionsOf(c);
	const crossing = CROSSING.includes(purpose) && (helpedBy === 'one' || helpedBy === 'two');
	if (!crossing && !(RISING.includes(purpose) && rises === 'with-help')) return undefined;
	return helpedBy === 'two' ? 'two' : 'one';
}

/** Who does not feel heat is never told to test with the hand. */
function testOf(plan: Plan, { purpose, hands }: Accessory, hand: Side | undefined): Tested | undefined {
	if (!WATER.includes(purpose) || turnedForHer(plan)) return undefined;
	const { arms, feelsHeat } = clientOf(plan.scene.c).person;
	const feeling = hands.filter((side) => arms[side].feels?.value !== false);
	const [only, other] = feeling;
	if (feelsHeat?.value === false || !only) return 'thermometer';
	return other ? 'hand' : only === hand ? 'same-hand' : `${only}-hand`;
}
