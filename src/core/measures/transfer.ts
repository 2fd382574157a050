import type { Mark } from '#core/case/accessory.ts';
import type { Person } from '#core/case/record.ts';
import { oppositeWall, type WallId } from '#core/geometry/frame.ts';
import { less, type Vec } from '#core/geometry/vec.ts';
import { FAR } from '#core/structure/carrying.ts';
import { clientOf, handsOf } from './client.ts';
import { targetOf } from './hand.ts';
import type { Measure, Reading, Scene } from './scene.ts';
import { centreLine, seatPoint } from './where.ts';

const ASK_WIDE = 'How wide is the wheeled chair at its widest, hands on the rims?';
const ASK_LONG = 'How long is the wheeled chair, feet on the rests?';
const ASK_ENTRY = 'How wide is the entry, clear?';
const ASK_FLOOR = 'How deep and how long is the clear floor in front of the entry?';
const ASK_APPROACH = 'How is the chair parked to get on the seat: beside it, aslant or facing it?';

/** How far a chair that is parked aslant is turned at most. Units: degrees. Ours: half way. */
const ASLANT = 45;

type Approach = NonNullable<Person['chair']['approach']>['value'];

/** How a parked chair is turned against one that stands beside the seat. Units: degrees. */
const TURNED: Readonly<Record<Approach, number>> = { beside: 0, aslant: ASLANT, facing: 90 };

/** The sides of the box round a turned chair, along the entry line and away from it. Source: geometry. */
function boxOf(long: number, wide: number, degrees: number): readonly [number, number] {
	const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
	return [long * cos + wide * sin, long * sin + wide * cos];
}

/** What is left of the clear floor outside the entry beside a parked chair; not asked how it is parked, between all ways. */
function floorBeyondChair(s: Scene): Reading {
	const { approach, length, width } = clientOf(s.c).person.chair;
	const { clearLength, clearWidth } = s.c.enclosure;
	if (!width) return { missing: ASK_WIDE };
	if (!length) return { missing: ASK_LONG };
	if (!clearLength || !clearWidth) return { missing: ASK_FLOOR };
	const left = (degrees: number): number => {
		const [along, away] = boxOf(length.value, width.value, degrees);
		return Math.min(clearLength.value - along, clearWidth.value - away);
	};
	if (approach) return left(TURNED[approach.value]);
	const all = Object.values(TURNED).map(left);
	return { best: Math.max(...all), sure: Math.min(...all), missing: ASK_APPROACH };
}

function entryBeyond(s: Scene, wide: Person['chair']['width'], ask: string): Reading {
	const { entryWidth } = s.c.enclosure;
	if (!wide) return { missing: ask };
	return entryWidth ? entryWidth.value - wide.value : { missing: ASK_ENTRY };
}

/** The walls at both ends of the seat wall, at the corner the seat is set out from first; the front wall ends at the entry. */
function endsOf({ room }: Scene): readonly [WallId, WallId | null] {
	if (room.seatWall === 'left' || room.seatWall === 'right') return ['back', 'front'];
	const first: WallId = room.sitting.corner[0] < 1 ? 'left' : 'right';
	return [first, room.seatWall === 'front' ? null : oppositeWall(first)];
}

/** From each end of the seat to what stands there; an open side is far. */
function besideSeat(s: Scene, seat: Mark): readonly [number, number] {
	const [first, last] = endsOf(s);
	const middle = centreLine(s, seat);
	const half = seat.variant.length / 2;
	const stands = (wall: WallId | null): boolean =>
		wall !== null &&
		s.room.walls[wall].stands &&
		(wall !== 'front' || s.c.enclosure.frontWall?.side === s.room.seatWall);
	return [stands(first) ? middle - half : FAR, stands(last) ? s.room.sitting.run - middle - half : FAR];
}

/** How far beyond the middle of who sits a mark lies toward the side she overlooks. */
function towardOverlooked(s: Scene, m: Mark, seat: Mark): Reading {
	const side = s.c.people[m.accessory.for]?.overlooks?.value;
	if (side === undefined) return { missing: 'Which side does the client overlook or not see?' };
	const { from, to } = targetOf(m, s.room);
	const middle: Vec = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2, 0];
	const [x, y] = less(middle, seatPoint(s, seat));
	const [ahead, aside] = s.room.sitting.ahead;
	const left = x * aside - y * ahead;
	return side === 'left' ? left : -left;
}

function closesRound(s: Scene, m: Mark): Reading {
	const arms = s.c.people[m.accessory.for]?.arms;
	const known = handsOf(s, m).flatMap((side) => arms?.[side].closesRound?.value ?? []);
	if (known.length === 0) return { missing: 'How thick a bar does the hand that holds it close round?' };
	return Math.max(...known) - m.variant.diameter;
}

/** Getting there and across: chair, aid, helpers, hands and sight. */
export const TRANSFER = {
	'entry-beyond-chair': {
		what: 'Clear width of the entry less the width of the wheeled chair.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) => entryBeyond(s, clientOf(s.c).person.chair.width, ASK_WIDE)
	},
	'entry-beyond-aid': {
		what: 'Clear width of the entry less the width of what the client walks with.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) => entryBeyond(s, clientOf(s.c).person.walkingAid.width, 'How wide is the walking aid at its widest?')
	},
	'floor-beyond-chair': {
		what: 'The less of what is left of length and depth of the clear floor outside the entry with the chair parked there.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: floorBeyondChair
	},
	'obstacle-above-chair': {
		what: 'What stands above the seat of the wheeled chair where the client crosses.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) =>
			clientOf(s.c).person.chair.obstacle?.value ?? {
				missing: 'How high does arm rest or wheel stand above the seat of the chair, where the client crosses?'
			}
	},
	'gap-crossed': {
		what: 'Between the edges of both seats with the chair as it is parked, along the way the client crosses.',
		unit: 'mm',
		slope: 0,
		about: 'case',
		of: (s) =>
			clientOf(s.c).person.chair.gap?.value ?? {
				missing: 'How wide is the gap between the seats, the chair as parked?'
			}
	},
	'seat-floor-beside': {
		what: 'From the end of the seat to what stands beside it, on the side that has more; an open side is far.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, seat) => Math.max(...besideSeat(s, seat))
	},
	'seat-floor-both-sides': {
		what: 'From the end of the seat to what stands beside it, on the side that has less; an open side is far.',
		unit: 'mm',
		slope: 1,
		along: 'x',
		about: 'mark',
		of: (s, seat) => Math.min(...besideSeat(s, seat))
	},
	'toward-overlooked-side': {
		what: 'From the middle of who sits to what the hand works, toward the side she overlooks; below 0 on the other side.',
		unit: 'mm',
		slope: 1,
		about: 'pair',
		of: towardOverlooked
	},
	'hand-beyond-bar': {
		what: 'The thickest bar the hand that holds closes round, less the thickness of this one.',
		unit: 'mm',
		slope: 0,
		about: 'mark',
		of: closesRound
	}
} satisfies Record<string, Measure>;
