import type { LengthUnit } from '#core/units/length.ts';
import type { Entity, Spot } from './entity.ts';
import { figure, signed } from './figure.ts';
import type { Level } from './level.ts';
import { circle, line } from './path.ts';
import { spread, type Wish } from './spread.ts';
import type { Step } from './step.ts';
import { widthOf, write } from './type.ts';
import type { View } from './view.ts';

/** The figures stand this far left of the ladder's own line; a figure with a jog this much farther where it has room. Units: mm. */
const GAP = 2.2;
const FOR_JOG = 2.4;
const BIG = 14;
const LETTER = 9;
const SMALL = 8.5;
const above = (unit: LengthUnit): number => (unit === 'mm' ? 9.5 : 11);

/** Levels of the room itself: the bathroom floor at the entry, and what is stepped over. Units: mm from the datum line. */
export interface RoomLevels {
	readonly floor: number;
	readonly step: Step | undefined;
}

interface Rung {
	readonly level: Level;
	readonly kind: 'mark' | 'datum' | 'floor' | 'step';
	/** What it is called, where it is none of the marks. */
	readonly name?: string;
}

/** Width the ladder needs for its figures, up to its own line. Units: mm. */
export const ladderWidth = (levels: readonly Level[], unit: LengthUnit): number =>
	Math.max(26, GAP + Math.max(0, ...levels.map((l) => needs(l, unit))));

/** What a level needs for its figures and the air between them. */
function needs({ figure, letters, above: heights }: Level, unit: LengthUnit): number {
	const side = heights.length > 1 ? widthOf('left', SMALL) + 0.9 : 0;
	const up = widthOf(heights[0] ?? '', above(unit)) + side;
	return widthOf(figure, BIG, 'semibold') + widthOf(letters, LETTER, 'semibold') + up + 2.4;
}

/** The ladder of levels left of a wall: signed from the datum line, height above the floor in grey. */
export function ladder(levels: readonly Level[], of: RoomLevels, view: View, unit: LengthUnit): readonly Entity[] {
	const x = view.rail;
	const rungs = rungsOf(levels, of, unit);
	const places = placesOf(rungs, view);
	const top = Math.min(...rungs.map((r) => view.y(r.level.at)));
	const bottom = Math.max(...rungs.map((r) => view.y(r.level.at)));
	const head = Math.min(...rungs.map((r, i) => (places[i] ?? 0) - roomOf(r).before)) - 6;
	return [
		line('ladder/line', 'dimension', [x, top], [x, bottom]),
		...(levels.length > 0 ? heading(view, x - GAP, head) : []),
		...rungs.flatMap((rung, i) => draw(rung, { x, at: view.y(rung.level.at), stands: places[i] ?? 0, view, unit }))
	];
}

function rungsOf(levels: readonly Level[], { floor, step }: RoomLevels, unit: LengthUnit): readonly Rung[] {
	const plain = (at: number): Level => ({ id: '', at, figure: signed(at, unit), letters: '', above: [], later: false });
	const atDatum = levels.find((l) => l.figure === '0');
	const atStep = step && signed(step.level, unit);
	const named = (l: Level) => (step && l.figure === atStep ? { name: step.name } : {});
	const datum = atDatum ?? plain(0);
	const rungs: Rung[] = [
		...levels.filter((l) => l !== atDatum).map((level): Rung => ({ level, kind: 'mark', ...named(level) })),
		{ level: datum, kind: 'datum', ...named(datum) }
	];
	if (signed(floor, unit) !== '0') rungs.push({ level: plain(floor), kind: 'floor', name: 'at floor F' });
	if (step && !rungs.some((r) => r.level.figure === atStep)) {
		rungs.push({ level: { ...plain(step.level), above: [figure(step.height, unit)] }, kind: 'step', name: step.name });
	}
	return rungs.toSorted((a, b) => b.level.at - a.level.at);
}

/** Sheet y of the rungs: what is at the datum line holds its place, the others keep clear of it, upward and downward. */
function placesOf(rungs: readonly Rung[], view: View): readonly number[] {
	const middle = rungs.findIndex((r) => r.kind === 'datum');
	const wishes = rungs.map((rung): Wish => ({ at: view.y(rung.level.at), ...roomOf(rung) }));
	const [above, below] = [wishes.slice(0, middle), wishes.slice(middle + 1)];
	const { at, before, after } = wishes[middle] ?? { at: view.datum, before: 0, after: 0 };
	const need = above.reduce((sum, w) => sum + w.before + w.after, 0);
	const top = Math.min(view.window.y0 + 9, at - before - need);
	return [...spread(above, top, at - before), at, ...spread(below, at + after, view.window.y1 + 9)];
}

function roomOf({ kind, level, name }: Rung): { before: number; after: number } {
	// What stands at the datum line has its height under the line, clear of the line's own sign.
	if (kind === 'datum')
		return { before: 5.4, after: 0.6 + 4.4 * Math.max(level.above.length, name === undefined ? 0 : 1.1) };
	if (kind === 'floor' || kind === 'step') return { before: 3.2, after: 5.2 };
	return { before: 2.6, after: level.above.length > 1 || name !== undefined ? 6.6 : 2.6 };
}

function heading(view: View, right: number, y: number): readonly Entity[] {
	const hand = { size: SMALL, tone: 'grey' } as const;
	return [
		write('ladder/head/from', 'from', [right, y], { ...hand, anchor: 'end' }),
		write('ladder/head/datum', 'datum', [right, y + 3.6], { ...hand, anchor: 'end' }),
		write('ladder/head/above', 'above', [view.ladder, y], hand),
		write('ladder/head/floor', 'floor', [view.ladder, y + 3.6], hand)
	];
}

interface Place {
	readonly x: number;
	/** Where the level is, and where its figure stands. */
	readonly at: number;
	readonly stands: number;
	readonly view: View;
	readonly unit: LengthUnit;
}

function draw({ level, kind, name }: Rung, place: Place): readonly Entity[] {
	const { x, at, stands, view, unit } = place;
	const id = `ladder/${kind === 'mark' ? level.id : kind}`;
	const jogs = Math.abs(stands - at) > 0.2;
	const spare = x - view.ladder - GAP - needs(level, unit);
	const right = x - GAP - (jogs ? Math.max(0, Math.min(FOR_JOG, spare)) : 0);
	const base = stands + { mark: 1.65, datum: -1, floor: 0.5, step: 0.5 }[kind];
	const tone = kind === 'datum' ? 'datum' : level.later ? 'grey' : 'ink';
	const weight = level.later ? 'regular' : 'semibold';
	const left = right - widthOf(level.figure, BIG, 'semibold') - 1.2;
	const jog = jogs ? [line(`${id}/jog`, 'leader', [x, at], [right + 0.4, stands])] : [];
	return [
		...sign(id, kind, [x, at]),
		...jog,
		write(id, level.figure, [right, base], { size: BIG, weight, tone, anchor: 'end' }),
		...(level.letters === ''
			? []
			: [
					write(`${id}/letters`, level.letters, [left, base], {
						size: LETTER,
						weight,
						tone: level.later ? 'grey' : 'ink',
						anchor: 'end'
					})
				]),
		...level.above.flatMap((text, i) =>
			height(`${id}/above/${String(i)}`, text, [view.ladder, base + (kind === 'datum' ? 5.2 : 0) + 4.2 * i], {
				unit,
				level,
				i
			})
		),
		...(name === undefined
			? []
			: [write(`${id}/at`, name, [right, base + 4], { size: SMALL, tone: 'grey', anchor: 'end' })])
	];
}

function sign(id: string, kind: Rung['kind'], [x, y]: Spot): readonly Entity[] {
	return kind === 'datum'
		? [circle(`${id}/ring`, 'datum-ring', [x, y], 0.9)]
		: [line(`${id}/tick`, 'tick', [x - 0.85, y + 0.85], [x + 0.85, y - 0.85])];
}

function height(
	id: string,
	text: string,
	at: Spot,
	on: { unit: LengthUnit; level: Level; i: number }
): readonly Entity[] {
	const size = above(on.unit);
	const side = { x: at[0] + widthOf(text, size) + 0.9, text: on.i === 0 ? 'left' : 'right' };
	return [
		write(id, text, at, { size, tone: 'grey' }),
		...(on.level.above.length > 1
			? [write(`${id}/side`, side.text, [side.x, at[1]], { size: SMALL, tone: 'grey' })]
			: [])
	];
}
