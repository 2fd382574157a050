import type { Mark } from '#core/case/accessory.ts';
import type { Room } from '#core/enclosure/room.ts';
import { WALL_IDS, type WallId } from '#core/geometry/frame.ts';
import type { WallPoint } from '#core/geometry/vec.ts';
import type { Plan } from '#core/plan.ts';
import { fixingsOf, type Fixing } from '#core/report.ts';

/** A mark as somebody sets it out on a wall. Units and frame: mm, wall frame. */
export interface SetOut {
	readonly id: string;
	/** Its letter on every sheet. */
	readonly letter: string;
	readonly mark: Mark;
	/** Points that are dimensioned, nearest to the corner first: both ends of a bar, the middle of a seat's top, else the middle. */
	readonly points: readonly WallPoint[];
	readonly fixings: readonly Fixing[];
	/** Not to be drilled: what is behind it is not known. */
	readonly open: boolean;
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
	const ends = fixings.map((f): WallPoint => [f.x, f.y]).toSorted((a, b) => from(a[0]) - from(b[0]));
	return {
		id,
		letter,
		mark,
		fixings,
		points: mark.variant.diameter > 0 ? ends : [[x, y]],
		open: plan.findings.some((f) => f.row.origin === 'wall' && f.answer === 'unknown' && f.about.includes(id))
	};
}

/**
 * The inside corner a wall is measured from: the one with the back wall, on the back wall the one on the seat's side.
 * Units: mm; `from` gives the distance of an x of the wall frame from that corner.
 */
export function cornerOf(room: Room, wall: WallId): { side: 'left' | 'right'; from: (x: number) => number } {
	const sides = {
		back: room.seatWall === 'right' ? 'right' : 'left',
		left: 'right',
		right: 'left',
		front: room.walls.front.from === 0 ? 'left' : 'right'
	} as const;
	const side = sides[wall];
	return { side, from: (x) => (side === 'left' ? x : room.walls[wall].length - x) };
}

/** How high a point of a mark stands above its floor: the bathroom floor for a seat, else the floor right below. Units: mm. */
export const aboveFloor = (room: Room, { mark }: SetOut, [x, y]: WallPoint): number =>
	y - (mark.variant.kind === 'seat' ? room.bathroomFloor : room.floorUnder(mark.place.wall, x, x).low);

/** What a wall is called by what it carries. */
export function wallName(room: Room, wall: WallId): string {
	if (wall === room.seatWall) return 'Seat wall';
	if (wall === room.controlWall && wall !== 'back' && wall !== 'front') return 'Control wall';
	return { back: 'Back wall', left: 'Left wall', right: 'Right wall', front: 'Front wall' }[wall];
}

/** Walls with marks: the one faced from the seat first, the one behind it last. */
export function wallsUsed(plan: Plan): readonly WallId[] {
	const { controlWall, seatWall } = plan.scene.room;
	const order = [controlWall, ...WALL_IDS.filter((wall) => wall !== controlWall && wall !== seatWall), seatWall];
	return order.filter((wall) => plan.marks.some((m) => m.place.wall === wall));
}
