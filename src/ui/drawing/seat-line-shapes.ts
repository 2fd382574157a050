import type { Box } from '#core/drawing/entity.ts';
import { freeSpot } from '#core/drawing/free-spot.ts';
import { levelOf } from '#core/drawing/seat-lines.ts';
import type { Room } from '#core/enclosure/room.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { SeatLine } from '#core/needs/seat-lines.ts';
import { drawn, path, text, type Px, type Shape } from './shape.ts';
import type { ScreenView } from './screen-view.ts';
import { noteWidth } from './words.ts';

/** The heights that pull apart for the seat, on its wall. */
export interface SeatLinesAsked {
	readonly room: Room;
	readonly wall: WallId;
	readonly lines: readonly SeatLine[];
	readonly view: ScreenView;
}

/** Names one under the other, each with a pointer to its line: a row, from pointer to pointer, to the name, px. */
const ROW = 18;
const STEP = 9;
const BESIDE = 5;
/** From the lines to their names at first, and at most, px. */
const NEAR = 8;
const FAR = 150;

/**
 * The lines across the wall, thin and dashed, sketched where estimated, and their names where nothing is taken.
 * Shape: nothing where the names find no room: a line nobody can tell is no help.
 */
export function seatLineShapes({ room, wall, lines, view }: SeatLinesAsked, taken: readonly Box[]): readonly Shape[] {
	if (lines.length === 0) return [];
	const { from, to } = room.walls[wall];
	const [left, right] = [view.x(from), view.x(to)];
	const rows = lines
		.toSorted((a, b) => levelOf(a) - levelOf(b))
		.map((one) => ({ one, y: view.y(levelOf(one)), says: nameOf(one) }));
	const [bottom, top] = [Math.max(...rows.map(({ y }) => y)), Math.min(...rows.map(({ y }) => y))];
	const width = Math.max(...rows.map(({ says }) => noteWidth(says))) + rows.length * STEP + BESIDE;
	const height = rows.length * ROW;
	const middle = left + 4 + width / 2;
	const wishes: readonly Px[] = [
		[middle, bottom + NEAR + height / 2],
		[middle, top - NEAR - height / 2]
	];
	const within = { x0: left + 2, x1: right - 2, y0: top - FAR, y1: Math.min(bottom + FAR, view.bottom - 2) };
	const band = { x0: left, x1: right, y0: top - 3, y1: bottom + 3 };
	const at = freeSpot({ width, height, wishes, taken: [...taken, band], within });
	if (!at) return [];
	return rows.flatMap(({ one, y, says }, i): readonly Shape[] => {
		// The name farthest from the lines has the first pointer, so that none runs through another name.
		const nth = at[1] > bottom ? rows.length - 1 - i : i;
		const [x, row] = [at[0] - width / 2 + nth * STEP, at[1] - height / 2 + (i + 0.5) * ROW];
		const id = `seat-line/${one.line}`;
		return [
			path(id, one.how === 'estimated' ? 'sketch2' : 'hidden', [
				[left, y],
				[right, y]
			]),
			drawn(`${id}/pointer`, 'fine2', `M${String(x)} ${String(y)}V${String(row)}h${String(BESIDE - 2)}`),
			text(`${id}/words`, 't-note halo soft', [x + BESIDE, row + 5], says)
		];
	});
}

const nameOf = ({ name, how }: SeatLine): string => (how === 'estimated' ? `${name}, estimated` : name);
