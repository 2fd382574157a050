import type { Flange } from '#core/case/accessory.ts';
import { depthIn } from '#core/geometry/rect.ts';
import type { WallPoint } from '#core/geometry/vec.ts';
import type { Plan } from '#core/plan.ts';
import { reportOf, type Fixing } from '#core/report.ts';
import { formatLength } from '#core/units/format.ts';
import { inches, mm, type LengthUnit } from '#core/units/length.ts';
import { settingOut, type SetOut } from '../setting-out.ts';

/** A way along a wall or up and down it. */
type Side = 'left' | 'right' | 'lower' | 'upper';

/** A hole of a real part. Units and frame: mm, wall frame, y from the datum line. */
interface Hole {
	/** Letter and number of its bracket, then its own number clockwise from the first: A1.2. */
	readonly id: string;
	readonly at: WallPoint;
}

/** A bracket of a real part, with the holes that are bored for it. Units and frame: mm, wall frame, y from the datum line. */
export interface Bored {
	/** Letter of its mark and its number along the part: A1. */
	readonly id: string;
	readonly set: SetOut;
	readonly side: Side;
	readonly at: WallPoint;
	readonly flange: Flange;
	readonly holes: readonly Hole[];
	readonly into: string;
	/** The screw that is counted in each hole, or the fixing the paper of a declared wall names; left out where neither is. */
	readonly screw?: string;
	/** From its centre to that of the bracket at the other end. */
	readonly apart: number;
}

/** Every bracket of the real parts that were read off, in the order of the letters; what is on the wall already too. */
export function boredOf(plan: Plan): readonly Bored[] {
	const told = reportOf(plan).accessories;
	return settingOut(plan).flatMap((set) => {
		const fixings = told.find(({ id }) => id === set.id)?.fixings ?? [];
		return set.mark.variant.brackets.flatMap(({ flange }, i): readonly Bored[] => {
			const fixing = fixings[i];
			if (!flange || !fixing?.holes) return [];
			const at: WallPoint = [fixing.x, fixing.y];
			const id = `${set.letter}${String(i + 1)}`;
			const holes = fixing.holes.map((hole, n): Hole => ({ id: `${id}.${String(n + 1)}`, at: hole }));
			const { into, fastener = namedFor(plan, set, fixing) } = fixing;
			const screw = into === NOT_KNOWN ? undefined : fastener;
			return [{ id, set, at, flange, holes, into, ...endOf(set, at), ...(screw && { screw }) }];
		});
	});
}

/** The fixing that is named by the paper of the wall where a bracket is. */
function namedFor({ scene }: Plan, { mark }: SetOut, { x, y }: Fixing): string | undefined {
	const { backing } = scene.c.enclosure.walls[mark.place.wall];
	const here = Object.values(backing).find((b) => depthIn(b, x, y) >= 0 && b.kind === 'declared');
	return here?.kind === 'declared' ? here.fixing : undefined;
}

/** Which end of its part a bracket is, and how far the other end is. */
function endOf({ fixings, mark }: SetOut, [x, y]: WallPoint): Pick<Bored, 'side' | 'apart'> {
	const apart = Math.max(...fixings.map((other) => Math.hypot(other.x - x, other.y - y)));
	if (mark.variant.kind === 'vertical-bar') return { apart, side: fixings.some((f) => f.y < y) ? 'upper' : 'lower' };
	return { apart, side: fixings.some((f) => f.x < x) ? 'right' : 'left' };
}

/** The finest step a hole is told in. */
const STEP = { mm: mm(0.1), in: inches(1 / 64) } as const;

/** A length with its unit as a hole is set out, to a tenth of a millimetre or 1/64 in. Units: mm in. */
export const exactly = (length: number, unit: LengthUnit): string =>
	formatLength(mm(length), { unit, step: STEP[unit] });

/** The same from the datum line, with its sign. Units: mm in. */
export const exactLevel = (level: number, unit: LengthUnit): string =>
	`${level > 0 ? '+' : ''}${exactly(level, unit)}`.replace(/^[+-](?=0 )/, '');

/** What keeps a bracket from being drilled now, in one sentence; nothing where it may be. */
export function notYet({ set: { mark, open, later }, into }: Bored): string | undefined {
	if (mark.stage === 'built') return 'On the wall already.';
	if (later) return 'Do not drill yet: it is wanted only later.';
	if (open) return 'Do not drill yet: its question is open.';
	return into === NOT_KNOWN ? 'Do not drill: nothing recorded here carries it.' : undefined;
}

/** What a fixing says where no wood or panel under it is known. */
export const NOT_KNOWN = 'not known';
