import type { WallId } from '#core/geometry/frame.ts';
import { seatLinesOf, type SeatLine } from '#core/needs/seat-lines.ts';
import type { Plan } from '#core/plan.ts';
import type { LengthUnit } from '#core/units/length.ts';
import type { Entity } from './entity.ts';
import { figure } from './figure.ts';
import type { Wording } from './labels.ts';
import { line } from './path.ts';
import type { View } from './view.ts';

/** Where words of the lines may stand, above and below the lines themselves. Units: mm of the sheet. */
const NEAR = 14;

/** Where a line is drawn: in the middle of what is only estimated. Units and frame: mm from the datum line. */
export const levelOf = ({ at }: SeatLine): number => (at.from + at.to) / 2;

/** What a line is called, with its height above the bathroom floor; in the tape's unit, which is not said. */
function lineWords({ name, how, aboveFloor: { from, to } }: SeatLine, unit: LengthUnit): string {
	if (how !== 'estimated') return `${name}, ${figure(from, unit)} above F`;
	return `${name}, estimated ${figure(from, unit)} to ${figure(to, unit)} above F`;
}

/** The heights that pull apart for the seat, across its wall: thin, dashed, each with its name. What is estimated is sketched. */
export function seatLinesOn(
	plan: Plan,
	wall: WallId,
	{ view, unit }: { view: View; unit: LengthUnit }
): { readonly lines: readonly Entity[]; readonly words: readonly Wording[] } {
	const told = seatLinesOf(plan);
	const seat = plan.marks.find(({ accessory }) => accessory.id === told?.seat);
	if (!told || seat?.place.wall !== wall) return { lines: [], words: [] };
	const { from, to } = plan.scene.room.walls[wall];
	const { outline } = seat.variant;
	const [x0, x1] = [view.x(from), view.x(to)];
	/** Beside the seat a line is seen: between the wall's end and the seat on either side. */
	const seen = [
		[x0, view.x(seat.place.x + outline.x0)],
		[view.x(seat.place.x + outline.x1), x1]
	] as const;
	const lines = told.lines.toSorted((a, b) => levelOf(b) - levelOf(a));
	const levels = lines.map((one) => view.y(levelOf(one)));
	const near = { x0: x0 + 1, x1: x1 - 1, y0: Math.min(...levels) - NEAR, y1: Math.max(...levels) + NEAR };
	return {
		lines: lines.map((one) => {
			const y = view.y(levelOf(one));
			const layer = one.how === 'estimated' ? 'seat-line-sketched' : 'seat-line';
			return line(`seat-line/${one.line}`, layer, [x0, y], [x1, y]);
		}),
		words: lines.map((one, i): Wording => {
			const y = view.y(levelOf(one));
			// From side to side in turn, so that no pointer crosses another's name.
			const [a, b] = seen[i % 2 === 0 ? 0 : 1];
			return {
				id: `seat-line/${one.line}/word`,
				text: lineWords(one, unit),
				on: { x0, x1, y0: y, y1: y },
				wishes: [[(a + b) / 2, y]],
				within: [near]
			};
		})
	};
}
