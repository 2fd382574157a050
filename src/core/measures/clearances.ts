import type { Mark, Variant } from '#core/case/accessory.ts';
import { FAR } from '#core/structure/carrying.ts';
import { toPlan } from '#core/geometry/frame.ts';
import { apart, depthIn } from '#core/geometry/rect.ts';
import type { Rect } from '#core/geometry/vec.ts';
import type { Measure, Reading, Scene } from './scene.ts';
import { boxOf, spansOf } from './walls.ts';

/** Legs stand this far in from the outline of what stands on them. Units: mm. Ours, until the part is read off. */
const LEG_IN = 30;

/** Where a part stands on the floor: along its wall from its place, and out from the wall. Units: mm. */
function feetOf({
	stands,
	outline,
	depth,
	gap,
	diameter,
	arm,
	frontLegs
}: Variant): readonly { x: number; out: number }[] {
	const underArm = arm ? [{ x: (arm.x0 + arm.x1) / 2, out: arm.to - LEG_IN }] : [];
	if (stands === 'floor-and-ceiling') return [{ x: 0, out: gap + diameter / 2 }];
	const inFront = [outline.x0 + LEG_IN, outline.x1 - LEG_IN];
	if (frontLegs !== undefined) return inFront.map((x) => ({ x, out: frontLegs }));
	if (stands !== 'legs') return underArm;
	return inFront.flatMap((x) => [
		{ x, out: gap + LEG_IN },
		{ x, out: depth - LEG_IN }
	]);
}

/** A foot is this wide across. Units: mm. Ours, until the part is read off. */
const FOOT = 40;

function feetOffDrain(s: Scene, { place, variant }: Mark): Reading {
	const { drain } = s.c.enclosure;
	if (!drain) return { missing: 'Where is the drain?' };
	const [wide, deep] = [drain.wide / 2, drain.deep / 2];
	const rect: Rect = { x0: drain.x - wide, x1: drain.x + wide, y0: drain.y - deep, y1: drain.y + deep };
	let least = FAR;
	for (const { x, out } of feetOf(variant)) {
		const [px, py] = toPlan(place.wall, [place.x + x, 0], out, s.room.footprint);
		least = Math.min(least, -depthIn(rect, px, py) - FOOT / 2);
	}
	return least;
}

/** What the leaf of a door that opens inward leaves of a part, hung at one end of the entry or the other. */
function clearOfDoor(s: Scene, m: Mark): Reading {
	const { closing, entryWidth } = s.c.enclosure;
	if (closing?.kind !== 'door-in') return FAR;
	const { opening, entryLine } = s.room;
	const leaf = entryWidth?.value ?? opening.x1 - opening.x0;
	const from = (x: number): number =>
		Math.min(
			...spansOf(m).map((span) => {
				const { width, depth } = boxOf(s, m, span);
				const box: Rect = { x0: width[0], x1: width[1], y0: depth[0], y1: depth[1] };
				return apart(box, { x0: x, x1: x, y0: entryLine, y1: entryLine }) - leaf;
			})
		);
	const [left, right] = [from(opening.x0), from(opening.x1)];
	if (closing.hinge) return closing.hinge === 'left' ? left : right;
	const missing = 'On which side is the door of the entry hung?';
	return left === right ? left : { best: Math.max(left, right), sure: Math.min(left, right), missing };
}

function ceilingHolds(s: Scene, { variant }: Mark): Reading {
	if (variant.stands !== 'floor-and-ceiling') return 1;
	const holds = s.c.enclosure.ceilingHolds?.value;
	return holds === undefined ? { missing: 'Does the ceiling take the pressure of a post?' } : holds ? 1 : 0;
}

/** From the nearest crossing of joints to the edge of a bracket; where tiles leave no bracket clear it is not asked. */
function offCrossings(s: Scene, { place, variant }: Mark): Reading {
	const tiles = s.c.enclosure.walls[place.wall].facing?.tiles;
	if (!tiles) return FAR;
	const [across, up] = [tiles.across + tiles.joint, tiles.up + tiles.joint];
	const off = (at: number, module: number): number => Math.abs(at - module * Math.round(at / module));
	let least = FAR;
	for (const { x, y, radius } of variant.brackets) {
		if (Math.hypot(across, up) / 2 <= radius) continue;
		const from = Math.hypot(off(place.x + x - tiles.x, across), off(place.y + y - tiles.y, up));
		least = Math.min(least, from - radius);
	}
	return least;
}

/** What a part keeps clear of beside walls and other parts: the leaf of a door, the drain, the ceiling, crossings of joints. */
export const CLEARANCES = {
	'clear-of-door': {
		what: 'From the leaf of a door that opens inward to what a part takes up, however far the door is opened.',
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: clearOfDoor
	},
	'feet-off-drain': {
		what: 'From the drain to the nearest foot of what stands on the floor.',
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: feetOffDrain
	},
	'ceiling-holds': {
		what: 'Whether the ceiling takes the pressure of a post; 1 for what needs none.',
		unit: 'yes',
		slope: 0,
		about: 'mark',
		of: ceilingHolds
	},
	'off-crossings': {
		what: 'From the nearest crossing of tile joints to the edge of a bracket.',
		unit: 'mm',
		slope: 1,
		about: 'mark',
		of: offCrossings
	}
} satisfies Record<string, Measure>;
