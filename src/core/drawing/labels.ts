import { type Box, type Entity, type Spot } from './entity.ts';
import { boxAt, nearestFree, wishThatIsFree } from './free-spot.ts';
import { circle, line, rectangle } from './path.ts';
import { crosses, runsThrough, type Stroke } from './stroke.ts';
import { PT, widthOf, write } from './type.ts';

/** What labels on a wall keep clear of; whatever is placed is added. Units and frame: mm of the sheet. */
export interface Ground {
	/** No label lies on these, and no leader runs through one that is not its own if it can be helped. */
	readonly things: Box[];
	/** No label lies on these, and no leader runs through them. */
	readonly words: Box[];
	/** No label lies on these; a leader may cross them. */
	readonly lines: Box[];
	/** No label lies on these, and no leader crosses them. */
	readonly leaders: Stroke[];
	/** Where labels may stand. */
	readonly within: Box;
}

/** Units: mm. */
interface Size {
	readonly width: number;
	readonly height: number;
}

/** A label that looks for a place. Units and frame: mm of the sheet. */
export interface Sought extends Size {
	/** Where its middle would like to be; there it needs no leader. */
	readonly wishes: readonly Spot[];
	/** Where a leader may end, on what it names. */
	readonly ends: readonly Spot[];
	/** Where it may stand, the best first; anywhere labels may when absent. */
	readonly within?: readonly Box[] | undefined;
	/** What it alone keeps clear of. */
	readonly off?: readonly Box[] | undefined;
	/** How far from every wish it may be at most; any distance when absent. */
	readonly most?: number;
}

/** Where a label stands, and its leader where it stands apart from what it names. */
interface Placed {
	readonly spot: Spot;
	readonly leader?: Stroke;
}

/** A word that belongs to an area of the wall. Units and frame: mm of the sheet. */
export interface Wording extends Pick<Sought, 'within' | 'off'> {
	readonly id: string;
	readonly text: string;
	readonly on: Box;
	/** Where its middle would like to be, when not on the area's edges. */
	readonly wishes?: readonly Spot[];
}

/** Words that stand in the column, called by a number on the wall. */
export interface Note {
	readonly id: string;
	readonly number: number;
	readonly text: string;
}

const SIZE = 8.5;
const HEIGHT = 3.6;
const PAD = 0.5;
const AIR = 1.4;
/** How far a word may stand from its area before a number takes its place. Units: mm. */
const FAR = 45;
/** How far a number may stand from its area if words could stand elsewhere. Units: mm. */
const NEAR = 12;
/** Radius of a number in its ring, and of the dot a leader ends in. Units: mm. */
const RING = 1.9;
const DOT = 0.4;
/** As many ends of a leader are tried. */
const MOST_ENDS = 25;
/** How far inside its area a leader ends, where the area is that deep. Units: mm. */
const INSIDE = 1.2;

/**
 * Words on paper patches, each on its own area where that is free, else in the nearest free place with a leader, else a
 * number in a ring, whose words are handed back. No word is left out.
 */
export function labelled(
	words: readonly Wording[],
	ground: Ground
): { readonly entities: readonly Entity[]; readonly notes: readonly Note[] } {
	const entities: Entity[] = [];
	const notes: Note[] = [];
	for (const word of words) {
		const width = widthOf(word.text, SIZE) + 2 * PAD;
		const sought = { ...soughtBy(word, { width: width + AIR, height: HEIGHT }), most: FAR };
		const ring = soughtBy(word, { width: 2 * RING + 0.4, height: 2 * RING + 0.4 });
		// A number beside what it names is clearer than words at the end of a leader over some part.
		const clear = placeOf(sought, ground, 'past things');
		const beside = clear ? undefined : placeOf({ ...ring, most: NEAR }, ground, 'past things');
		const placed = clear ?? (beside ? undefined : placeOf(sought, ground));
		if (placed) {
			entities.push(...onPatch(word, width, placed, ground));
			continue;
		}
		const note = { id: word.id, number: notes.length + 1, text: word.text };
		notes.push(note);
		entities.push(...numbered(note, beside ?? placeAnyhow(ring, ground), ring, ground));
	}
	return { entities, notes };
}

/**
 * A place for a label: a wish, or the nearest place with a leader that runs through no words, over no other leader and,
 * if it can be helped or is asked for, through no thing.
 * Fails: undefined when there is none.
 */
export function placeOf(
	sought: Sought,
	ground: Ground,
	leader: 'past things' | 'over things' = 'over things'
): Placed | undefined {
	const taken = [...ground.things, ...ground.words, ...ground.lines, ...(sought.off ?? [])];
	const clear = (spot: Spot): boolean => ground.leaders.every((l) => !runsThrough(l, boxAt(spot, sought)));
	const boxes = sought.within ?? [ground.within];
	for (const within of boxes) {
		const spot = wishThatIsFree({ ...sought, taken, within, also: clear });
		if (spot) return { spot };
	}
	for (const things of leader === 'past things' ? [ground.things] : [ground.things, []]) {
		const from = (spot: Spot): Spot | undefined => freeEnd(spot, sought, { ...ground, things });
		const also = (spot: Spot): boolean => clear(spot) && from(spot) !== undefined;
		for (const within of boxes) {
			const spot = nearestFree({ ...sought, taken, within, also });
			const end = spot && from(spot);
			if (spot && end) return { spot, leader: [spot, end] };
		}
	}
	return undefined;
}

/** A place for what must stand somewhere: as `placeOf`, else over things, else anywhere that is free, without a leader. */
export function placeAnyhow(sought: Sought, ground: Ground): Placed {
	const anywhere: Sought = { ...sought, within: [ground.within] };
	const bare = { ...ground, things: [] };
	const placed = placeOf(sought, ground) ?? placeOf(anywhere, ground) ?? placeOf(anywhere, bare);
	if (placed) return placed;
	const taken = [...ground.things, ...ground.words, ...ground.lines];
	const also = (spot: Spot): boolean => ground.leaders.every((l) => !runsThrough(l, boxAt(spot, sought)));
	const [first = [0, 0]] = sought.wishes;
	return { spot: nearestFree({ ...sought, taken, within: ground.within, also }) ?? first };
}

/** The nearest end a leader from a place can have. */
function freeEnd(spot: Spot, { ends }: Sought, ground: Ground): Spot | undefined {
	const away = ([x, y]: Spot) => (x - spot[0]) ** 2 + (y - spot[1]) ** 2;
	return ends
		.filter((end) => holds(ground.within, end))
		.toSorted((a, b) => away(a) - away(b))
		.find((end) => pointsFreely([spot, end], ground));
}

/** Whether a leader crosses no other, and runs through no words and no thing but what it ends on. */
const pointsFreely = (leader: Stroke, { leaders, words, things }: Ground): boolean =>
	leaders.every((other) => !crosses(leader, other)) &&
	words.every((box) => !runsThrough(leader, box)) &&
	things.every((box) => !runsThrough(leader, box) || holds(box, leader[1]));

const holds = (b: Box, [x, y]: Spot): boolean => x >= b.x0 && x <= b.x1 && y >= b.y0 && y <= b.y1;

/** A leader from under a label to a dot on what it names; nothing where it would be hidden by the label. */
export function leaderOf(id: string, { spot, leader }: Placed, size: Size): readonly Entity[] {
	if (!leader || holds(boxAt(spot, size), leader[1])) return [];
	return [line(`${id}/leader`, 'leader', spot, leader[1]), circle(`${id}/dot`, 'solid', leader[1], DOT)];
}

/** Keeps the place of a label, and its leader, from those that come later. */
export function keep({ spot, leader }: Placed, size: Size, ground: Ground): void {
	ground.words.push(boxAt(spot, size));
	if (leader && !holds(boxAt(spot, size), leader[1])) ground.leaders.push(leader);
}

function soughtBy({ on, wishes, within, off }: Wording, size: Size): Sought {
	const at = wishes ?? wishesOn(on, size);
	return {
		...size,
		within,
		off,
		wishes: at,
		ends: (wishes ?? pointsOn(on)).filter((_, i, all) => i % Math.ceil(all.length / MOST_ENDS) === 0)
	};
}

function onPatch({ id, text }: Wording, width: number, placed: Placed, ground: Ground): readonly Entity[] {
	const size = { width, height: HEIGHT };
	const [x, y] = placed.spot;
	keep(placed, size, ground);
	return [
		...leaderOf(id, placed, size),
		rectangle(`${id}/patch`, 'patch', boxAt(placed.spot, size)),
		write(id, text, [x, y + 0.33 * SIZE * PT], { size: SIZE, tone: 'grey', anchor: 'middle' })
	];
}

/** A number in a ring where there is room. */
function numbered({ id, number }: Note, placed: Placed, size: Size, ground: Ground): readonly Entity[] {
	keep(placed, size, ground);
	return [...leaderOf(id, placed, size), ...numberRing(`${id}/number`, number, placed.spot)];
}

/** The number of a note in its ring. Units and frame: mm of the sheet. */
export function numberRing(id: string, number: number, [x, y]: Spot): readonly Entity[] {
	const hand = { size: SIZE, weight: 'semibold', anchor: 'middle' } as const;
	return [circle(`${id}/ring`, 'note', [x, y], RING), write(id, String(number), [x, y + 0.33 * SIZE * PT], hand)];
}

/** Places on an area, the lower edge first, then upward, middle, left and right. */
function wishesOn(on: Box, { width, height }: { width: number; height: number }): readonly Spot[] {
	const half = (width - AIR) / 2 + 1.3;
	const low = on.y1 - height / 2 - 0.8;
	const high = on.y0 + height / 2 + 0.8;
	const columns = [on.x0 + half, (on.x0 + on.x1) / 2, on.x1 - half];
	const flat = on.y1 - on.y0 < height + 1.6;
	const rows = flat ? [(on.y0 + on.y1) / 2] : Array.from({ length: 9 }, (_, i) => low + ((high - low) * i) / 8);
	return rows.flatMap((y) => columns.map((x): Spot => [x, y]));
}

/** Points of an area a leader may end at, a little inside its edge where it is that deep. */
export function pointsOn({ x0, y0, x1, y1 }: Box): readonly Spot[] {
	const along = (from: number, to: number): readonly number[] => {
		const deep = Math.min(INSIDE, (to - from) / 2);
		return [0, 0.25, 0.5, 0.75, 1].map((k) => from + deep + k * (to - from - 2 * deep));
	};
	return along(y0, y1).flatMap((y) => along(x0, x1).map((x): Spot => [x, y]));
}
