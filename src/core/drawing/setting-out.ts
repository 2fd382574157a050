import type { Kind, Mark } from '#core/case/accessory.ts';
import type { Room } from '#core/enclosure/room.ts';
import { toPlan, WALL_IDS, type WallId } from '#core/geometry/frame.ts';
import type { WallPoint } from '#core/geometry/vec.ts';
import { reinforcementOf } from '#core/needs/reinforcement.ts';
import type { Drift } from '#core/placement/drift.ts';
import type { Plan } from '#core/plan.ts';
import { fixingsOf, type Fixing } from '#core/report.ts';
import { endsOf, spanOf } from './wall-ends.ts';

/** A mark as somebody sets it out on a wall. Units and frame: mm, wall frame. */
export interface SetOut {
	readonly id: string;
	/** Its letter on every sheet. */
	readonly letter: string;
	readonly mark: Mark;
	/**
	 * Points that are dimensioned, nearest to the corner first: the flanges of a bar, the middle of a seat's top, the hinge
	 * of a rail, the foot of a post, else the middle.
	 */
	readonly points: readonly WallPoint[];
	readonly fixings: readonly Fixing[];
	/** Not to be drilled yet, for either of the two reasons below. */
	readonly open: boolean;
	/** What its brackets meet is not known. */
	readonly unseen: boolean;
	/** Somebody is still to be asked about it. */
	readonly waits: boolean;
	/** Wanted only later. */
	readonly later: boolean;
	/** Of a post where the ceiling is recorded: from the floor under it to there. */
	readonly tall?: number;
	/** The room round it; none for what is built. */
	readonly drift?: Drift;
}

/** Letter of the nth accessory wanted: A to Z, then A2, B2. */
const letterOf = (n: number): string =>
	String.fromCharCode(65 + (n % 26)) + (n < 26 ? '' : String(Math.floor(n / 26) + 1));

/** Letters by accessory id, in the order in which accessories are wanted. */
export const lettersOf = (plan: Plan): Readonly<Record<string, string>> =>
	Object.fromEntries(plan.wanted.map((a, i) => [a.id, letterOf(i)]));

/** Letters of some accessories in their order, each once: "A D"; empty where none has one. */
export function lettersFor(plan: Plan, about: readonly string[]): string {
	const letters = lettersOf(plan);
	return [...new Set(about.flatMap((id) => letters[id] ?? []))].join(' ');
}

/** Every mark of a plan as it is set out, in the order of the letters. */
export function settingOut(plan: Plan): readonly SetOut[] {
	return plan.wanted.flatMap((a, i) => {
		const mark = plan.marks.find((m) => m.accessory.id === a.id);
		return mark ? [setOut(plan, mark, letterOf(i))] : [];
	});
}

function setOut(plan: Plan, mark: Mark, letter: string): SetOut {
	const { x, y } = mark.place;
	const id = mark.accessory.id;
	const fixings = fixingsOf(plan.scene, mark);
	const { from } = cornerOf(plan.scene.room, mark.place.wall);
	const flanges = fixings.map((f): WallPoint => [f.x, f.y]).toSorted((a, b) => from(a[0]) - from(b[0]));
	const drift = plan.probes.drifts.find((d) => d.accessory === id);
	const unseen = plan.findings.some((f) => f.row.origin === 'wall' && f.answer === 'unknown' && f.about.includes(id));
	const waits = plan.probes.waits.some(({ about }) => about.includes(id));
	return {
		id,
		letter,
		mark,
		fixings,
		points: mark.variant.diameter > 0 && flanges.length > 0 ? flanges : [[x, y]],
		open: waits || unseen,
		unseen,
		waits,
		later: mark.accessory.when === 'later',
		...tallOf(plan.scene, mark),
		...(drift && { drift })
	};
}

function tallOf({ c, room }: Plan['scene'], { place, variant }: Mark): Pick<SetOut, 'tall'> {
	const { ceiling } = c.enclosure;
	if (!ceiling || variant.stands !== 'floor-and-ceiling') return {};
	const [x, y] = toPlan(place.wall, [place.x, 0], variant.gap + variant.diameter / 2, room.footprint);
	return { tall: room.bathroomFloor + ceiling.value - room.floorAt(x, y) };
}

/** Whether a mark has a height to be set out: what stands on the floor has none. */
export const hasLevel = ({ mark }: SetOut): boolean => mark.variant.stands !== 'floor-and-ceiling';

/** Where the figures along a wall begin. Units: mm; `from` gives the distance of an x of the wall frame from there. */
interface Corner {
	readonly side: 'left' | 'right';
	/** An inside corner, or, where the side has none, its end. */
	readonly at: 'corner' | 'end';
	/** It is the one every such wall is measured from. */
	readonly usual: boolean;
	readonly from: (x: number) => number;
}

/**
 * The inside corner a wall is measured from: the one with the back wall, on the back wall the one on the seat's side, on
 * the front wall its own; where that side is open the other corner, and with no corner the end.
 */
export function cornerOf(room: Room, wall: WallId): Corner {
	const { from, to } = spanOf(room, wall);
	const ends = endsOf(room, wall);
	const usual = usualSide(room, wall);
	const other = usual === 'left' ? 'right' : 'left';
	const side = ends[usual] !== 'corner' && ends[other] === 'corner' ? other : usual;
	return {
		side,
		at: ends[side] === 'corner' ? 'corner' : 'end',
		usual: side === usual,
		from: (x) => (side === 'left' ? x - from : to - x)
	};
}

function usualSide(room: Room, wall: WallId): 'left' | 'right' {
	switch (wall) {
		case 'back':
			return room.seatWall === 'right' ? 'right' : 'left';
		case 'left':
			return 'right';
		case 'right':
			return 'left';
		case 'front':
			return spanOf(room, 'front').from === 0 ? 'left' : 'right';
	}
}

/** How high a point of a mark stands above its floor: the bathroom floor for a seat, else the floor right below. Units: mm. */
export const aboveFloor = (room: Room, { mark }: SetOut, [x, y]: WallPoint): number =>
	y - (mark.variant.kind === 'seat' ? room.bathroomFloor : room.floorUnder(mark.place.wall, x, x).low);

const SIDES = { back: 'Back', left: 'Left', right: 'Right', front: 'Front' } as const;

/** What a wall is called: by the seat or the control on it where it is a side wall, else by where it is. */
export function wallName({ scene, marks }: Pick<Plan, 'scene' | 'marks'>, wall: WallId): string {
	if (!scene.room.walls[wall].stands) return `${SIDES[wall]} side, open`;
	const carries = (kind: Kind) =>
		marks.some((m) => m.variant.kind === kind && m.variant.stands !== 'rims' && m.place.wall === wall);
	if (carries('seat')) return 'Seat wall';
	if (carries('control') && (wall === 'left' || wall === 'right')) return 'Control wall';
	return `${SIDES[wall]} wall`;
}

/** Walls with marks, or that are to be solid for what may be fitted later: the one faced from the seat first, the one behind it last. */
export function wallsUsed(plan: Plan): readonly WallId[] {
	const { controlWall, seatWall } = plan.scene.room;
	const order = [controlWall, ...WALL_IDS.filter((wall) => wall !== controlWall && wall !== seatWall), seatWall];
	const kept = reinforcementOf(plan.scene);
	return order.filter((wall) => [...plan.marks.map(({ place }) => place), ...kept].some((on) => on.wall === wall));
}
