import type { Case, Person } from '#core/case/record.ts';
import { footprintOf } from '#core/case/size.ts';
import { clientOf } from '#core/measures/client.ts';
import { demandOf } from '#core/structure/demand.ts';
import type { Applies, ConditionId } from './row.ts';

/** A step in this high is stepped over, not rolled over. Units: mm. Source: ADA 2010, 608.7, 1/2 in. */
const LEVEL_ENTRY = 13;
/** A seat wall this long leaves room for rails on both sides of a seat. Units: mm. Ours. */
const ROOM_BESIDE = 1200;

/** Washing takes this long, on one's feet or not. Units: minutes. Source: common practice, no source. */
const A_SHOWER = 10;
/** Younger than this nobody is let alone to the control. Units: years. Ours. */
const CHILD = 12;
/** From this age on water burns in a fifth of the time. Units: years. Source: Ontario Building Code, appendix; the age is ours. */
const THIN_SKIN = 65;
/** Younger than this the body still grows. Units: years. Source: the survey of bodies begins here. */
const GROWN = 18;

/** Who washes so is offered no seat; where nobody asked, one is. */
const SEATLESS: readonly (string | undefined)[] = ['standing', 'in-chair'];

/** The facts of a case that conditions of rows may name; what is not recorded is `unknown`. */
export function conditionsOf(c: Case): Readonly<Record<ConditionId, string>> {
	const { person } = clientOf(c);
	const { enclosure } = c;
	const transfer = person.transfer?.value ?? 'unknown';
	const washes = washesOf(person);
	const people = Object.values(c.people);
	return {
		washes: washes ?? 'unknown',
		seat: SEATLESS.includes(washes) ? 'no' : 'yes',
		transfer,
		rises: person.rises?.value ?? 'unknown',
		runsWater: person.runsWater?.value ?? 'unknown',
		needsHold: answered(person.needsHold?.value),
		hipLimit: answered(person.hipLimit?.value),
		feelsHeat: answered(person.feelsHeat?.value),
		seesBars: answered(person.seesBars?.value),
		sits: person.sits?.value ?? 'unknown',
		rests: restsOf(person),
		helpedBy: person.helpedBy?.value ?? 'unknown',
		overlooks: overlooksOf(person),
		followsSteps: answered(person.followsSteps?.value),
		skinAtRisk: answered(person.skinAtRisk?.value),
		washedBelow: answered(person.washedBelow?.value),
		seizures: answered(person.seizures?.value),
		callsHelp: person.callsHelp?.value ?? 'unknown',
		scalds: people.some(mayScald) ? 'yes' : 'unknown',
		weaker: weakerOf(person),
		closes: (person.arms.left.closesRound ?? person.arms.right.closesRound) ? 'yes' : 'unknown',
		elbow: person.body.elbowAboveSeat ? 'yes' : 'unknown',
		aid: person.walkingAid.kind?.value ?? 'unknown',
		aidWidth: person.walkingAid.width ? 'yes' : 'unknown',
		gap: person.chair.gap ? 'yes' : 'unknown',
		worsens: person.prognosis?.value === 'worsening' && !person.later ? 'yes' : 'no',
		growing: person.age === undefined ? 'unknown' : person.age.value < GROWN ? 'yes' : 'no',
		household: people.some(({ role }) => role === 'household') ? 'yes' : 'no',
		consents: answered(person.consents?.value),
		permission: permissionOf(enclosure),
		oneHand: oneHanded(person),
		lean: person.lean?.value.kind ?? 'unknown',
		type: enclosure.type,
		category: enclosure.category?.value ?? 'unknown',
		newBuilt: answered(enclosure.newBuilt?.value),
		dwelling: enclosure.dwelling ? 'yes' : 'no',
		step: stepOf(enclosure.threshold?.value),
		controls: enclosure.controls,
		secondOutlet: enclosure.secondOutlet ? 'yes' : 'no',
		roomBeside: seatRun(c) >= ROOM_BESIDE ? 'yes' : 'no',
		walks: walksOf(person),
		crosses: waysOf(person).some((way) => CROSSES.includes(way)) ? 'yes' : 'no',
		slides: waysOf(person).some((way) => SLIDES.includes(way)) ? 'yes' : 'no',
		hoisted: waysOf(person).includes('hoist') ? 'yes' : 'no',
		helper: people.some(({ role }) => role === 'helper') ? 'yes' : 'no',
		chair: chairOf(person),
		approach: approachOf(person),
		// Every generic bar is a round tube.
		section: 'round',
		statement: demandOf(c).statement,
		closing: enclosure.closing?.kind ?? 'unknown',
		drain: enclosure.drain ? 'yes' : 'unknown',
		readOff: Object.keys(c.parts).length > 0 ? 'yes' : 'no',
		tiles: Object.values(enclosure.walls).some(({ facing }) => facing?.tiles) ? 'yes' : 'unknown'
	};
}

/** Whether conditions hold for a case. A row without conditions speaks of every case. */
export function applies(when: Applies | undefined, c: Case): boolean {
	return when === undefined || holds(when, conditionsOf(c));
}

/** Whether conditions hold for the facts of a case. */
export function holds(when: Applies, facts: Readonly<Record<ConditionId, string>>): boolean {
	for (const id in when) {
		const allowed = when[id as ConditionId];
		if (allowed && !allowed.includes(facts[id as ConditionId])) return false;
	}
	return true;
}

type Way = NonNullable<Person['transfer']>['value'];

/** Ways from seat to seat, and those of them sitting. */
const CROSSES: readonly Way[] = ['stand-pivot', 'sitting-pivot', 'slide-board'];
const SLIDES: readonly Way[] = ['sitting-pivot', 'slide-board'];
const ON_FEET: readonly Way[] = ['walks', 'stand-pivot'];

/** How somebody gets in and out, as far as it was asked. */
const waysOf = ({ transfer, leaves }: Person): readonly Way[] =>
	[transfer, leaves].flatMap((way) => (way ? [way.value] : []));

/** Whether somebody comes in or goes out on the own feet, alone or held. */
function walksOf(person: Person): string {
	if (waysOf(person).some((way) => ON_FEET.includes(way))) return 'yes';
	return person.transfer === undefined ? 'unknown' : 'no';
}

const answered = (fact: boolean | undefined): string => (fact === undefined ? 'unknown' : fact ? 'yes' : 'no');

function stepOf(height: number | undefined): string {
	if (height === undefined) return 'unknown';
	return height > LEVEL_ENTRY ? 'yes' : 'no';
}

/**
 * Where somebody washes: who stands for less than a shower takes, is worn out before it is over or may lose consciousness
 * sits down in it.
 */
export function washesOf(person: Person): NonNullable<Person['washes']>['value'] | undefined {
	const said = person.washes?.value;
	return said === 'standing' && restsOf(person) === 'yes' ? 'both' : said;
}

function restsOf({ standsFor, tires, seizures }: Person): string {
	if (tires?.value || seizures?.value) return 'yes';
	if (standsFor === undefined) return answered(tires?.value);
	return standsFor.value < A_SHOWER ? 'yes' : 'no';
}

function overlooksOf({ overlooks }: Person): string {
	if (overlooks === undefined) return 'unknown';
	return overlooks.value === 'neither' ? 'no' : 'yes';
}

/** Whether water that is too hot may not be felt, told or turned down in time, by whoever showers here. */
function mayScald(p: Person): boolean {
	if (p.role === 'helper') return false;
	const numb =
		p.feelsHeat?.value === false || p.arms.left.feels?.value === false || p.arms.right.feels?.value === false;
	const unable = p.followsSteps?.value === false || p.seizures?.value === true;
	return numb || unable || (p.age !== undefined && (p.age.value < CHILD || p.age.value >= THIN_SKIN));
}

function weakerOf({ weakerSide }: Person): string {
	if (weakerSide === undefined) return 'unknown';
	return weakerSide.value === 'left' || weakerSide.value === 'right' ? 'one' : weakerSide.value;
}

/** Whether somebody else's walls may be drilled. */
function permissionOf({ tenure, permission }: Case['enclosure']): string {
	if (permission) return permission.value ? 'given' : 'refused';
	if (tenure === undefined) return 'unknown';
	return tenure.value === 'own' ? 'not asked' : 'wanted';
}

/** Whether only one hand can hold. */
function oneHanded({ weakerSide, weakerHolds }: Person): string {
	const weaker = weakerSide?.value;
	if (weaker !== 'left' && weaker !== 'right') return weaker === undefined ? 'unknown' : 'no';
	return weakerHolds === undefined ? 'unknown' : weakerHolds.value ? 'no' : 'yes';
}

function seatRun({ enclosure }: Case): number {
	const { seatWall, frontWall } = enclosure;
	const { width, depth } = footprintOf(enclosure);
	if (seatWall === 'front') return frontWall?.length.value ?? width;
	return seatWall === 'back' ? width : depth;
}

/** Whether she comes from a wheeled chair. */
function chairOf(person: Person): string {
	const { seatHeight, width, length } = person.chair;
	if (seatHeight ?? width ?? length) return 'yes';
	if (waysOf(person).some((way) => way !== 'walks')) return 'yes';
	return person.transfer === undefined ? 'unknown' : 'no';
}

/** Which of its sides the parked chair turns to the seat, as reach ranges speak of it. */
function approachOf({ chair: { approach } }: Person): string {
	if (approach === undefined) return 'unknown';
	return approach.value === 'facing' ? 'forward' : 'side';
}
