import type { Variant } from '#core/case/accessory.ts';
import { simpleShares } from './beam.ts';
import { withLegs } from './seat-load.ts';
import { longestSpan, midSpanStress, tubeSection } from './tube.ts';

/** A part that is asked about. Units: N and mm; `above` the floor below it. */
export interface Advised {
	readonly variant: Variant;
	readonly force: number;
	readonly above: number;
	/** From floor to ceiling, where it is recorded. */
	readonly ceiling?: number;
	/** Whether every bracket of it carries by calculation. */
	readonly held: boolean;
}

/** A bar as long as this wants a third post. Units: mm. Source: a judgement of ours, from the bending of the tube. */
const LONG = 900;
/** Wall of the generic tube, the thinner of those on the shelf. Units: mm. */
const TUBE_WALL = 1.2;
/** What stainless steel 304 may take, two thirds of its yield of 205 MPa. Source: ASTM A213; the part, old allowable stresses. */
const MAY_TAKE = 0.66 * 205;
/** From floor to ceiling where nobody recorded it. Units: mm. Ours. */
const CEILING = 2400;

/**
 * What a part itself, and what it stands on, take of the force, in plain words: advice, never a verdict.
 * Units: N, mm and MPa in the words. Shape: empty where there is nothing to say. Source: exact statics; see beam.ts and tube.ts.
 */
export function adviceOn(part: Advised): readonly string[] {
	if (part.variant.stands === 'floor-and-ceiling') return onPost(part);
	if (part.variant.frontLegs !== undefined) return onFrontLegs(part, part.variant.frontLegs);
	if (part.variant.kind === 'fold-down-rail') return part.held ? [] : onFloorPost(part);
	return part.variant.diameter > 0 && part.variant.length >= LONG ? onLongBar(part) : [];
}

function onLongBar({ variant: { diameter, length }, force }: Advised): readonly string[] {
	const section = tubeSection(diameter, TUBE_WALL);
	const [whole, half] = [length, length / 2].map((span) => {
		const { simple, fixed } = midSpanStress(section, force, span);
		return `${fixed.toFixed(0)} to ${simple.toFixed(0)} MPa`;
	});
	const most = longestSpan(section, force, MAY_TAKE);
	return [
		'A bar this long wants a third post in the middle: ask for one.',
		`${force.toFixed(0)} N half way along ${length.toFixed(0)} mm bends a tube of ${diameter.toFixed(0)} by ${TUBE_WALL.toFixed(1)} mm, held or free to turn at its posts, to ${whole ?? ''}; with a post in the middle to ${half ?? ''}.`,
		`Stainless steel 304 may take ${MAY_TAKE.toFixed(0)} MPa, two thirds of its yield: ${most.toFixed(0)} mm free to turn, ${(2 * most).toFixed(0)} mm held.`
	];
}

function onFrontLegs({ variant: { depth }, force }: Advised, legs: number): readonly string[] {
	const { leg, wall } = withLegs({ weight: force, out: depth }, legs);
	return [
		`The front legs stand ${legs.toFixed(0)} mm out. ${force.toFixed(0)} N on the front edge ask ${leg.toFixed(0)} N of them, all of it on one where somebody sits at its end: ask whether the floor and what seals it take that under a foot.`,
		`Up to the legs the wall takes no pull from who sits, past them ${(-wall).toFixed(0)} N upward. The legs are to stand within 30 mm of the front edge, and on every foot at once.`
	];
}

function onPost({ variant, force, above, ceiling: recorded }: Advised): readonly string[] {
	const ceiling = recorded ?? CEILING;
	const [low, high] = [above + variant.grip.y0, above + variant.grip.y1].map((y) => Math.min(Math.max(y, 0), ceiling));
	const from = (at: number) => simpleShares({ force, span: ceiling, at });
	return [
		`A post ${ceiling.toFixed(0)} mm from floor to ceiling${recorded === undefined ? ', which is not recorded' : ''}: ${force.toFixed(0)} N across it ${(high ?? 0).toFixed(0)} mm up asks ${from(high ?? 0).far.toFixed(0)} N of the ceiling; ${(low ?? 0).toFixed(0)} mm up, ${from(low ?? 0).near.toFixed(0)} N of the floor.`,
		`Half way up it bends the post with ${((force * ceiling) / 4000).toFixed(0)} N m. The paper of the post must say that it takes this, floor and ceiling what is asked of them: ask.`
	];
}

function onFloorPost({ variant, force, above }: Advised): readonly string[] {
	const moment = (arm: number) => ((force * arm) / 1000).toFixed(0);
	return [
		`A post screwed to the floor can take this rail where the wall does not: ${force.toFixed(0)} N across it ${above.toFixed(0)} mm up turns its foot with ${moment(above)} N m, straight down at the end of the rail with ${moment(variant.length)} N m.`,
		'The paper of the post and the floor under it must say that they take this: ask.'
	];
}
