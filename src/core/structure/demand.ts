import type { Case, Enclosure } from '#core/case/record.ts';
import { newtons, type Newton } from '#core/units/force.ts';

/** The force every bracket that holds a person must carry, and where it comes from. No weight is named in the words. */
export interface Demand {
	readonly force: Newton;
	readonly because: string;
	/** Somebody's weight is not recorded, so that the force may be more. */
	readonly open: boolean;
	/** Whether somebody competent is to sign that all of it carries the force, and has. */
	readonly statement: 'not asked' | 'wanted' | 'given';
}

/**
 * Where each preset comes from.
 * Source: 1112 N as ICC A117.1 609.8 and ADA 2010 609.8 and 610.4 print 250 lbf, so that a wall declared for 1112 N
 * carries it; 1300 N from the code's text as quoted, 1100 and 1500 N read at second hand.
 */
export const PRESETS: Readonly<Record<Enclosure['demand'], string>> = {
	1100: '1100 N of AS 1428.1, read at second hand',
	1112: '1112 N (250 lbf) of ICC A117.1 609.8 and ADA 2010 609.8 and 610.4',
	1300: '1300 N of the National Building Code of Canada, 9.31',
	1500: '1500 N of Approved Document M (UK), read at second hand'
};
/** Standard gravity, m/s2. Source: BIPM, The International System of Units. */
const GRAVITY = 9.80665;
/** Mass in kg above which a working load must be marked on the parts: a common trigger, 25 stone. */
const MARKED_ABOVE = 159;

/** A weight asks for whole steps of this force, rounded up: whoever reads the newtons cannot tell it from them. Units: N; ours. */
const STEP = 50;

/**
 * The greater of the preset and the full weight of the heaviest person who uses the room, in whole steps.
 * Units: N. Source: PRESETS; the full weight, once, is a judgement of ours, because a catch can reach it.
 */
export function demandOf(c: Case): Demand {
	// What is fitted must carry whoever it is to carry later as well.
	const masses = Object.values(c.people).map(({ mass, later }) => {
		const most = Math.max(mass?.value ?? 0, later?.mass?.value ?? 0);
		return most > 0 ? most : undefined;
	});
	const heaviest = Math.max(0, ...masses.map((mass) => mass ?? 0));
	const weight = heaviest * GRAVITY;
	const preset = c.enclosure.demand;
	const more = weight > preset;
	const force = newtons(more ? Math.ceil(weight / STEP) * STEP : preset);
	return {
		force,
		because: more ? 'the full weight of the heaviest user' : `the ${PRESETS[preset]}`,
		open: Object.values(c.people).some((p) => p.role === 'client' && p.mass === undefined),
		statement: heaviest > MARKED_ABOVE ? statementFor(c.enclosure, force) : 'not asked'
	};
}

/** Who signs has the force before them in whole newtons, as everything prints it. */
const statementFor = ({ loadStatement }: Enclosure, force: Newton): 'wanted' | 'given' =>
	loadStatement !== undefined && loadStatement.load >= Math.round(force) ? 'given' : 'wanted';
