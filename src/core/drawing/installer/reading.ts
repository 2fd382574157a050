import type { Plan } from '#core/plan.ts';
import { figure } from '../figure.ts';
import { cornerWords } from '../marks-sheet.ts';
import { roomSays } from '../room-says.ts';
import { lettersOf, settingOut } from '../setting-out.ts';
import type { OnPaper } from '../sheet.ts';
import { fallOf } from './fall.ts';

/** A note: what it explains, and its words. */
export interface Note {
	readonly id: string;
	readonly head: string;
	readonly says: string;
}

/** How exact a mark is. Source: layout under 10 ft +-1/8 in, structure-and-drawing reference; a judgement of ours. */
const EXACT = { mm: '\u00b13 mm', in: '\u00b11/8 in' } as const;
const UNITS = { mm: 'in mm', in: 'in inches, to 1/16' } as const;
const OTHER = { mm: 'inches', in: 'mm' } as const;

/** How the sheets are read: units, datum line and F, corners, signs of the letters, the two lefts, then the room itself. */
export function readingNotes(plan: Plan, how: OnPaper): readonly Note[] {
	const { unit } = how.tape;
	const { room } = plan.scene;
	const level = figure(-room.bathroomFloor, unit);
	const also = how.both ? ` Those in brackets are in ${OTHER[unit]}.` : '';
	const at = level === '0' ? 'at the height of F' : `${level} ${unit} above F`;
	const sets = settingOut(plan);
	return [
		{
			id: 'figures',
			head: 'Figures',
			says: `Dimensions are ${UNITS[unit]}.${also} Do not scale. ${EXACT[unit]} unless a mark has less room to move; limits are rounded inward. Verify studs, pipes and cables on site.`
		},
		{
			id: 'datum',
			head: 'Datum line and floor F',
			says: `F is the bathroom floor at the entry. The datum line is one level line round all walls, ${at}: + is above it, \u2212 below. Mark it first. What is told above floor counts from the shower floor under the mark, of a seat from F.`
		},
		...(sets.length > 0 ? [{ id: 'corner', head: 'Corner', says: cornerWords(plan) }] : []),
		{ id: 'letters', head: 'Letters', says: lettersSay(plan) },
		{ id: 'sides', head: 'Left and right', says: sidesSay(plan) },
		...[...fallSays(plan), ...roomSays(plan.scene, unit)].map((says, i) => ({
			id: `room/${String(i)}`,
			head: i === 0 ? 'The room' : '',
			says
		}))
	];
}

/** How the floor falls, where it does. */
function fallSays({ scene: { room } }: Plan): readonly string[] {
	const falls = fallOf(room);
	if (!falls) return [];
	const [x, y] = falls.down;
	const along = Math.abs(x) > Math.abs(y) ? (x < 0 ? 'left' : 'right') : y < 0 ? 'back' : 'entry';
	return [`The shower floor falls ${falls.ratio} towards the ${along}.`];
}

function lettersSay(plan: Plan): string {
	const sets = settingOut(plan);
	const here = new Set(sets.map(({ letter }) => letter));
	const without = Object.values(lettersOf(plan)).filter((letter) => !here.has(letter));
	return [
		'A mark has the same letter on every sheet. Black: settled.',
		...(sets.some((s) => s.open && !s.later)
			? ['Dashed ring: open, nothing is drilled there before its question is answered.']
			: []),
		...(sets.some((s) => s.later) ? ['Thin ring: for later, nothing is drilled there now, keep it clear.'] : []),
		...(without.length > 0 ? [`No place yet, so nothing is fitted: ${without.join(', ')}.`] : [])
	].join(' ');
}

/** Where the left of who sits on the seat is, with the seat on each wall. */
const SEATED_LEFT = {
	left: 'towards the back wall',
	right: 'towards the entry',
	back: 'towards the right wall',
	front: 'towards the left wall'
} as const;

function sidesSay(plan: Plan): string {
	const seat = plan.marks.find(({ variant }) => variant.kind === 'seat' && variant.stands !== 'rims');
	const drawn =
		'On a wall, left and right are as one looks at it from inside. On this plan, and in the names of the walls, they are as one looks in from the entry.';
	return seat
		? `${drawn} The left of whoever sits on the seat is another one: it is ${SEATED_LEFT[seat.place.wall]}.`
		: drawn;
}
