import type { Bracket, Flange } from '#core/case/accessory.ts';
import { depthIn, grown } from '#core/geometry/rect.ts';
import type { Rect } from '#core/geometry/vec.ts';
import { modelOf, radiusOf, screwLoad, type BracketModel } from './bracket.ts';
import { edgeOf, LAG_SCREW, WOOD_SCREW } from './fastener.ts';
import type { Member } from './member.ts';
import { gaugeDiameter, steelPullOut } from './screw.ts';
import { FLANGE } from './flange.ts';
import { centresTurned, stripOf, turnsOf } from './turn.ts';
import { checkScrew, checkWood, type Check } from './wood.ts';

/** A bracket that something must hold. */
export type Fixed = Exclude<Bracket, 'none'>;

/** A member behind the wall as one kind of bracket meets it. */
export interface Region {
	readonly member: Member;
	readonly check: Check;
	/** False when nothing vouches for this bracket: a paper names others, or plugs would have to hold it. */
	readonly named: boolean;
	/** Where the centre of the bracket may be so that all its screws are in the member. Units and frame: mm, wall frame. */
	readonly centres: readonly Rect[];
}

/** What a wall has to answer to. `force` in N. */
export interface Asked {
	readonly bracket: Fixed;
	/** The flange of a real part, once read off. */
	readonly flange?: Flange;
	readonly force: number;
	readonly damp: boolean;
}

/** Plates that want their whole disc in the wood. */
const PLATES: readonly Fixed[] = ['seat-plate', 'leg-plate'];
const LIGHT_EDGE = 13;
const GAUGE_12 = gaugeDiameter(12);

/** How one kind of bracket meets one member. */
export function regionOf(member: Member, asked: Asked): Region {
	const named = asked.bracket === 'rest' || vouchedFor(member, asked.bracket);
	const check = checkOf(member, asked);
	const centres = centresOf(member, asked, check);
	// A thicker screw keeps farther from the edge: where that leaves no place, the wood screw is all there is.
	if (centres.length === 0 && check.fastener === LAG_SCREW && member.kind === 'wood' && asked.bracket !== 'rest') {
		const screw = checkScrew({ ...member, damp: asked.damp }, modelOf(asked.bracket, asked.flange), asked.force);
		return { member, check: screw, named, centres: centresOf(member, asked, screw) };
	}
	return { member, check, named, centres };
}

function vouchedFor(member: Member, bracket: Fixed): boolean {
	switch (member.kind) {
		case 'declared':
			return member.brackets.includes(bracket);
		case 'masonry':
			// Nobody sees what a group of plugs takes: only a test on this wall shows it.
			return false;
		case 'wood':
		case 'stud':
			return true;
	}
}

/** Whether there is a place in a region where its bracket carries. */
export const holdsIn = ({ check, centres }: Region): boolean => check.outcome !== 'does not' && centres.length > 0;

/** Depth of a point inside the centres of a region. Units: mm, + inside, -infinity when there are none. */
export function depthOf({ centres }: Region, x: number, y: number): number {
	let deepest = -Infinity;
	for (const rect of centres) deepest = Math.max(deepest, depthIn(rect, x, y));
	return deepest;
}

const centresOf = (member: Member, asked: Asked, { fastener }: Check): readonly Rect[] =>
	rectsOf(member, asked, edgeOf(fastener ?? WOOD_SCREW)).filter((r) => r.x0 <= r.x1 && r.y0 <= r.y1);

function rectsOf({ kind, rect }: Member, { bracket, flange = FLANGE }: Asked, edge: number): readonly Rect[] {
	if (bracket === 'rest') return [grown(rect, kind === 'declared' ? -radiusOf('rest') : -LIGHT_EDGE)];
	if (PLATES.includes(bracket)) return [grown(rect, -radiusOf(bracket))];
	if (kind === 'declared') return [grown(rect, -(bracket === 'flange' ? flange.radius : radiusOf(bracket)))];
	return turnsOf(flange).map((turn) => centresTurned(rect, turn, { edge, flange }));
}

/** What is said of plugs. Source: distances of a plug maker, two and four times the depth; the rest is common practice. */
const inMasonry = (unit: 'solid' | 'hollow' | 'aerated' | undefined): readonly string[] => [
	'Plugs 50 mm deep want 200 mm from one another and 100 mm from an edge to take their full value; the holes of a bracket are nearer, so no value is calculated for them together.',
	unit === 'solid'
		? 'Into the unit, never into a joint; a test on this wall shows what it takes.'
		: 'Resin with a sleeve, into the unit, never into a joint; a test on this wall shows what it takes.'
];

/** Pull-out of one screw from the flange of a steel stud beside the load. Source: AISI S100, 0.85 t d Fu, by 3 (formula from memory). */
function inSteel(mil: number, model: BracketModel, force: number): string {
	const takes = steelPullOut(mil, GAUGE_12);
	const load = screwLoad(model, force).anyDirection;
	return `A screw #12 in ${String(mil)} mil steel takes ${takes.toFixed(1)} N; the worst screw has ${load.toFixed(1)} N.`;
}

function checkOf(member: Member, { bracket, flange, force, damp }: Asked): Check {
	if (bracket === 'rest') {
		return {
			outcome: 'carries',
			used: [],
			lines: ['Two light screws; nobody holds on to it, so no force is calculated.']
		};
	}
	switch (member.kind) {
		case 'declared':
			return {
				outcome: member.load >= force ? 'carries' : 'does not',
				used: [{ what: 'declared load', share: force / member.load }],
				lines: [
					`Declared: ${member.load.toFixed(0)} N with ${member.fixing}, by ${member.document}.`,
					`Asked: ${force.toFixed(0)} N.`
				]
			};
		case 'masonry':
			return { outcome: 'carries', used: [], lines: inMasonry(member.unit) };
		case 'stud':
			return {
				outcome: 'does not',
				used: [],
				lines: [
					`Its holes and their edges need a strip of ${stripOf(flange ?? FLANGE).toFixed(1)} mm; a stud alone is not counted.`,
					...(member.mil === undefined ? [] : [inSteel(member.mil, modelOf(bracket, flange), force)]),
					'Studs doubled on purpose are recorded as blocking, with their thickness.'
				]
			};
		case 'wood':
			return checkWood({ ...member, damp }, modelOf(bracket, flange), force);
	}
}
