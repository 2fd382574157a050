import type { Room } from '#core/enclosure/room.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { figure, signed } from './figure.ts';
import { aboveFloor, hasLevel, type SetOut } from './setting-out.ts';

/** One level of the ladder: every mark that has a point at it. Units: mm from the datum line. */
export interface Level {
	/** The first point at it: accessory id and number. */
	readonly id: string;
	readonly at: number;
	readonly figure: string;
	readonly letters: string;
	/** Heights above the floor right below, left end first where the floor falls. */
	readonly above: readonly string[];
	/** Nothing at it is wanted now. */
	readonly later: boolean;
}

/** Levels of the marks on a wall, highest first; levels that print alike are one. */
export function levelsOf(room: Room, sets: readonly SetOut[], unit: LengthUnit): readonly Level[] {
	const points = sets
		.filter(hasLevel)
		.flatMap((set) => set.points.map((point, i) => ({ set, point, id: `${set.id}.${String(i)}` })));
	const figures = [...new Set(points.map(({ point }) => signed(point[1], unit)))];
	const levels = figures.map((text): Level => {
		const here = points.filter(({ point }) => signed(point[1], unit) === text);
		const inRow = here.toSorted((a, b) => a.point[0] - b.point[0]);
		const heights = inRow.map(({ set, point }) => figure(aboveFloor(room, set, point), unit));
		const ends = [heights[0] ?? '', heights.at(-1) ?? ''];
		return {
			id: here[0]?.id ?? '',
			at: here[0]?.point[1] ?? 0,
			figure: text,
			letters: [...new Set(here.map(({ set }) => set.letter))].join(' '),
			above: ends[0] === ends[1] ? ends.slice(0, 1) : ends,
			later: here.every(({ set }) => set.later)
		};
	});
	return levels.toSorted((a, b) => b.at - a.at);
}
