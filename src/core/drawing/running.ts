import type { Room } from '#core/enclosure/room.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { LengthUnit } from '#core/units/length.ts';
import type { Entity } from './entity.ts';
import { figure } from './figure.ts';
import { circle, line } from './path.ts';
import { cornerOf, type SetOut } from './setting-out.ts';
import { spread, type Wish } from './spread.ts';
import { boxOf, widthOf, write } from './type.ts';
import type { View } from './view.ts';
import { endsOf, spanOf } from './wall-ends.ts';

/** What is dimensioned along a wall. */
export interface Along {
	readonly sets: readonly SetOut[];
	readonly room: Room;
	readonly wall: WallId;
	readonly unit: LengthUnit;
	/** Sheet y of the line. */
	readonly y: number;
}

interface Stop {
	readonly id: string;
	/** Sheet x. */
	readonly at: number;
	readonly figure: string;
	readonly under: string;
	readonly kind: 'origin' | 'mark' | 'end';
	/** Nothing at it is wanted now. */
	readonly later: boolean;
}

/** How far the line stands below the lowest floor at least; its figures and the letters under them. Units: mm. */
const LINE = 9;
const FIGURE = 7;
const UNDER = 4.2;
const SMALL = 8.5;
/** Sizes tried for the figures, the last only where they would not fit otherwise, and the most a figure may move aside. */
const SIZES = [14, 11, 9] as const;
const MOST_ASIDE = 4;

/** Sheet y of the line, clear of the figures of a ladder that goes on below the floor. */
export function runningLine(rungs: readonly Entity[], view: View): number {
	const bottoms = rungs.flatMap((e) => (e.kind === 'text' ? [boxOf(e).y1] : []));
	return Math.max(view.window.y1 + LINE, ...bottoms.map((y) => y + 4.2 - FIGURE));
}

/** Running dimensions under a wall, all from one corner; figures that are near move aside with a jog. */
export function running(along: Along, view: View): readonly Entity[] {
	const { y } = along;
	const stops = stopsOf(along, view);
	const ends = { from: view.left, to: view.column.x0 - 1 };
	const tried = SIZES.map((size) => ({
		size,
		places: spread(
			stops.map((s) => roomOf(s, size)),
			ends.from,
			ends.to
		)
	}));
	const calm = tried.find(({ places }) => stops.every((s, i) => Math.abs(s.at - (places[i] ?? 0)) <= MOST_ASIDE));
	const past = (places: readonly number[]) =>
		stops.some((s, i) => (places[i] ?? 0) + roomOf(s, SIZES[1]).after > ends.to + 1e-6);
	const fitting = tried.slice(1).find(({ places }) => !past(places));
	const { size, places } = calm ?? fitting ?? { size: SIZES[2], places: tried[2]?.places ?? [] };
	return [
		line(
			'running/line',
			'dimension',
			[Math.min(...stops.map((s) => s.at)), y],
			[Math.max(...stops.map((s) => s.at)), y]
		),
		...stops.flatMap((stop, i) => draw(stop, { y, size, stands: places[i] ?? stop.at }, view))
	];
}

function stopsOf({ sets, room, wall, unit }: Along, view: View): readonly Stop[] {
	const corner = cornerOf(room, wall);
	const points = sets.flatMap((set) =>
		set.points.map(([x], i) => ({ id: `${set.id}.${String(i)}`, x, set, text: figure(corner.from(x), unit) }))
	);
	const marks = [...new Set(points.map((p) => p.text))].map((text): Stop => {
		const here = points.filter((p) => p.text === text);
		const letters = [...new Set(here.map((p) => p.set.letter))].join(' ');
		const later = here.every((p) => p.set.later);
		return { id: here[0]?.id ?? '', at: view.x(here[0]?.x ?? 0), figure: text, under: letters, kind: 'mark', later };
	});
	const { from, to } = spanOf(room, wall);
	const [first, last] = corner.side === 'left' ? [from, to] : [to, from];
	const far = endsOf(room, wall)[corner.side === 'left' ? 'right' : 'left'];
	const stops: Stop[] = [
		{ id: 'origin', at: view.x(first), figure: '0', under: corner.at, kind: 'origin', later: false },
		...marks,
		{ id: 'end', at: view.x(last), figure: `(${figure(to - from, unit)})`, under: far, kind: 'end', later: false }
	];
	return stops.toSorted((a, b) => a.at - b.at);
}

const figureSize = (kind: Stop['kind'], size: number): number => (kind === 'end' ? 11 : size);

function roomOf(stop: Stop, size: number): Wish {
	const figureWidth = widthOf(stop.figure, figureSize(stop.kind, size), 'semibold');
	const half = Math.max(figureWidth, widthOf(stop.under, SMALL + 0.5, 'semibold')) / 2 + 0.7;
	return { at: stop.at, before: half, after: half, weight: stop.kind === 'origin' ? 100 : 1 };
}

function draw(stop: Stop, on: { y: number; size: number; stands: number }, view: View): readonly Entity[] {
	const { y, size, stands } = on;
	const id = `running/${stop.id}`;
	const edge = stop.kind !== 'mark';
	const jog = Math.abs(stands - stop.at) > 0.2;
	return [
		line(`${id}/extension`, 'dimension', [stop.at, edge ? view.window.y1 + 1 : y - 1.4], [stop.at, y + 1.4]),
		stop.kind === 'origin'
			? circle(`${id}/ring`, 'origin', [stop.at, y], 0.9)
			: line(`${id}/tick`, 'tick', [stop.at - 0.85, y + 0.85], [stop.at + 0.85, y - 0.85]),
		...(jog ? [line(`${id}/jog`, 'leader', [stop.at, y + 1.4], [stands, y + 3.2])] : []),
		write(id, stop.figure, [stands, y + FIGURE], {
			size: figureSize(stop.kind, size),
			weight: stop.kind === 'end' || stop.later ? 'regular' : 'semibold',
			tone: stop.kind === 'end' || stop.later ? 'grey' : 'ink',
			anchor: 'middle'
		}),
		write(`${id}/under`, stop.under, [stands, y + FIGURE + UNDER], {
			size: stop.kind === 'mark' ? SMALL + 0.5 : SMALL,
			weight: stop.kind === 'mark' && !stop.later ? 'semibold' : 'regular',
			tone: stop.kind === 'mark' && !stop.later ? 'ink' : 'grey',
			anchor: 'middle'
		})
	];
}
