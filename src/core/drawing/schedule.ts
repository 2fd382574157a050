import type { Fact } from '#core/case/fact.ts';
import { LOWER_BANGLE, type Variant } from '#core/case/accessory.ts';
import { withLegs } from '#core/structure/seat-load.ts';
import { formatFigure, onTape } from '#core/units/format.ts';
import { mm, type LengthUnit } from '#core/units/length.ts';
import { paragraph, stacked, indented, type Block } from './block.ts';
import { figure, partName, signed } from './figure.ts';
import { line } from './path.ts';
import { hasLevel, type cornerOf, type SetOut } from './setting-out.ts';
import { TABLE_TAG, tag } from './tag.ts';
import { asKnown } from './seen.ts';
import { widthOf, write, type Hand, type Weight } from './type.ts';

/** What is told of what holds a mark. Units: `force` N. */
interface Holding {
	readonly unit: LengthUnit;
	readonly force: number;
	/** What a face with a hollow behind it is. */
	readonly face: string;
	/** Whether the ceiling takes a post. */
	readonly ceilingHolds?: Fact<boolean> | undefined;
}

/** What the marks schedule of a wall needs. Units: mm. */
export interface Scheduled extends Holding {
	readonly sets: readonly SetOut[];
	readonly corner: ReturnType<typeof cornerOf>;
	readonly width: number;
	/** The unit of the figures in brackets, where both are asked for. */
	readonly other: LengthUnit | undefined;
}

/** Sizes tried for the figures of a row. */
const FIGURES = [12.5, 11] as const;
const INDENT = 7;

/** The room to move is for the drill, not for choice. */
export const AIM = 'aim at the mark';

/** The marks schedule of a wall, a block a mark under the heads: letter, name, figures from corner and datum line, what holds it. */
export function schedule(on: Scheduled): readonly Block[] {
	const half = INDENT + (on.width - INDENT) / 2;
	const rule = (id: string): Block => ({
		height: 0,
		draw: (x, y) => [line(id, 'rule', [x, y], [x + on.width, y])]
	});
	const head = (id: string, title: string): Block => ({
		height: 12.6,
		draw: (x, y) => [
			write(`${id}/title`, title, [x, y + 4.6], { size: 12, weight: 'semibold' }),
			write(`${id}/from`, `from ${on.corner.at}`, [x + INDENT, y + 9.8], { size: 8.5, tone: 'grey' }),
			write(`${id}/datum`, 'from datum', [x + half, y + 9.8], { size: 8.5, tone: 'grey' })
		]
	});
	const aim: Block = {
		height: 0,
		draw: (x, y) => [write('schedule/aim', AIM, [x + on.width, y + 4.6], { size: 8.5, tone: 'grey', anchor: 'end' })]
	};
	const again = stacked(head('schedule/again', 'Marks, continued'), rule('schedule/again/rule'));
	return on.sets.map((set, i) => {
		const block = stacked(row(set, on, half), rule(`schedule/${set.id}/rule`));
		return i === 0 ? stacked(aim, head('schedule', 'Marks'), rule('schedule/rule'), block) : { ...block, again };
	});
}

function row(set: SetOut, on: Scheduled, half: number): Block {
	const id = `schedule/${set.id}`;
	const inner = on.width - INDENT;
	const name = partName(set.mark, on.unit);
	const small = { size: 9, tone: 'grey', width: inner, leading: 1.25 } as const;
	const drift = roomToMove(set, on.unit);
	const text = stacked(
		paragraph(`${id}/name`, set.later ? `${name}, later` : name, {
			size: 10.5,
			weight: set.later ? 'regular' : 'semibold',
			tone: set.later ? 'grey' : 'ink',
			width: inner,
			leading: 1.2
		}),
		figures(id, set, on, half),
		paragraph(`${id}/into`, onTape(held(set, on), on), small),
		// Fractions need larger type.
		...(drift === '' ? [] : [paragraph(`${id}/drift`, drift, { ...small, size: on.unit === 'mm' ? 8.5 : 10 })])
	);
	return {
		height: text.height + 3,
		draw: (x, y) => [
			...tag(`${id}/tag`, set, [x + TABLE_TAG, y + 4], TABLE_TAG),
			...indented(INDENT, text).draw(x, y + 1.4)
		]
	};
}

/** The room round a mark, each side with its arrow; empty for what is built. */
function roomToMove({ drift }: SetOut, unit: LengthUnit): string {
	if (!drift) return '';
	const sides = [
		['\u2190', drift.left],
		['\u2192', drift.right],
		['\u2193', drift.lower],
		['\u2191', drift.higher]
	] as const;
	const none = sides.every(([, by]) => by === 0);
	return none ? 'no room to move' : `room to move ${sides.map(([arrow, by]) => arrow + figure(by, unit)).join(' ')}`;
}

/** The levels of a mark's points as they stand in a table; what stands on the floor has none. */
export const levelFigures = (set: SetOut, unit: LengthUnit): readonly string[] =>
	set.points.map(([, y]) => (hasLevel(set) ? signed(y, unit) : 'floor'));

/** The figures of a mark in one unit, from the corner and from the datum line: a pair a point. */
function pairs(set: SetOut, { corner }: Scheduled, unit: LengthUnit): readonly (readonly [string, string])[] {
	const levels = levelFigures(set, unit);
	return set.points.map(([x], i) => [figure(corner.from(x), unit), levels[i] ?? ''] as const);
}

/** All figures of a mark on one line, each once. */
function onOneLine(each: readonly (readonly [string, string])[]): readonly [string, string] {
	const distinct = (texts: readonly string[]) => [...new Set(texts)].join(', ');
	return [distinct(each.map(([x]) => x)), distinct(each.map(([, y]) => y))];
}

/** In brackets; what is no figure is not said twice. */
const bracketed = (text: string): string => (text === 'floor' ? '' : `(${text})`);

/** Size of the figures in brackets: fractions need larger type. Units: pt. */
const BRACKETS = { mm: 9.5, in: 11 } as const;

/** One line when both columns have room for all figures in one of the sizes, else a line a point; brackets under each. */
function figures(id: string, set: SetOut, on: Scheduled, half: number): Block {
	const each = pairs(set, on, on.unit);
	const others = on.other ? pairs(set, on, on.other) : [];
	const one = onOneLine(each);
	const other = onOneLine(others).map(bracketed);
	const small = BRACKETS[on.other ?? on.unit];
	const room = [half - INDENT - 1.5, on.width - half] as const;
	const inRoom = (texts: readonly string[], size: number, weight: Weight) =>
		texts.every((text, i) => widthOf(text, size, weight) <= (room[i] ?? 0));
	const size = FIGURES.find((n) => inRoom(one, n, 'semibold') && (!on.other || inRoom(other, small, 'regular')));
	const rows = size ? [one] : each;
	const under = !on.other ? [] : size ? [other] : others.map((pair) => pair.map(bracketed));
	const tone = set.later ? 'grey' : 'ink';
	const hand = { size: size ?? FIGURES[0], weight: set.later ? 'regular' : 'semibold', tone } as const;
	const quiet = { size: small, tone: 'grey' } as const;
	const line = (name: string, texts: readonly string[], how: Hand): Block => ({
		height: how === hand ? 5.4 : 4.6,
		draw: (x, y) =>
			['x', 'y'].flatMap((axis, i) => {
				const text = texts[i] ?? '';
				const at = [i === 0 ? x : x + half - INDENT, y + (how === hand ? 4.2 : 3.4)] as const;
				return text === '' ? [] : [write(`${id}/${axis}/${name}`, text, at, how)];
			})
	});
	return stacked(
		...rows.flatMap((texts, i) => [
			line(String(i), texts, hand),
			...(under[i] ? [line(`${String(i)}/other`, under[i], quiet)] : [])
		])
	);
}

/** What holds a mark and what it must hold, in words. */
export function held(set: SetOut, on: Holding): string {
	const { kind, length, arm, backRest } = set.mark.variant;
	const legs = onFrontLegs(set.mark.variant, on);
	const says = [
		...(set.later ? ['no holes now, keep it clear'] : []),
		standsOn(set, on) ?? screwed(set, on.force),
		...flangeOf(set.mark.variant, on.unit),
		...packed(set.fixings, on.unit),
		...solid(set.fixings, on),
		...(arm ? ['a leg on the floor under its arm'] : []),
		...(legs === undefined ? [] : [legs]),
		...(backRest === undefined
			? []
			: [
					`back rest ${figure(backRest, on.unit)} out from the wall, the seat from there to ${figure(set.mark.variant.depth, on.unit)}`
				]),
		...(kind === 'fold-down-rail' ? [`down it is ${figure(length, on.unit)} out from the wall`] : [])
	];
	return says.join('; ');
}

/** The flanges of a real part, for whoever drills their holes. */
function flangeOf({ brackets }: Variant, unit: LengthUnit): readonly string[] {
	const flange = brackets.find((bracket) => bracket.flange)?.flange;
	if (!flange) return [];
	const said = (n: number): string => formatFigure(mm(n), { unit });
	const [across, circle] = [said(2 * flange.radius), said(2 * flange.circle)];
	const hole = flange.hole === undefined ? '' : ` of ${said(flange.hole)}`;
	return [`flange ${across} across, ${String(flange.holes)} holes${hole} on a circle of ${circle}`];
}

/** Where the front legs of a seat stand, and what one of them brings on the floor when somebody sits on its corner. */
function onFrontLegs({ frontLegs, depth }: Variant, { unit, force }: Holding): string | undefined {
	if (frontLegs === undefined) return undefined;
	const { leg } = withLegs({ weight: force, out: depth }, frontLegs);
	return `front legs on the floor ${figure(frontLegs, unit)} out from the wall, ${leg.toFixed(0)} N under one`;
}

/** What a part stands on instead of being held by the wall; undefined when the wall holds it. */
function standsOn({ mark: { variant }, tall }: SetOut, { unit, ceilingHolds }: Holding): string | undefined {
	switch (variant.stands) {
		case 'legs':
			return 'on its own legs, nothing into the wall';
		case 'rims':
			return 'lies on both rims, nothing into the wall';
		case 'floor-and-ceiling':
			return [
				...(tall === undefined ? [] : [`${figure(tall, unit)} from floor to ceiling`]),
				...underPost(ceilingHolds),
				`tube ${figure(variant.gap, unit)} in from the line of the wall`
			].join('; ');
		case 'ceiling':
			return `hangs from the ceiling or a box high up, nothing into the wall here; lower bangle ${figure(LOWER_BANGLE, unit)} above the floor`;
		case undefined:
			return undefined;
	}
}

/** What a post is pressed between, as far as it is known to hold it. */
function underPost(ceiling: Holding['ceilingHolds']): readonly string[] {
	if (!ceiling) return ['the floor and ceiling must hold it: ask'];
	const known = asKnown(ceiling.how);
	return ceiling.value
		? [`the ceiling holds it ${known}`, 'the floor must hold it: ask']
		: [`the ceiling does not hold it, ${known}`];
}

/** Units: N. */
function screwed({ fixings, mark: { variant }, unseen }: SetOut, force: number): string {
	if (variant.kind === 'outlet') return 'the hose only, nothing hangs on it';
	if (fixings.length === 0) return 'plate only, nothing hangs on it';
	const load = variant.kind === 'handset-rest' ? 'light screws' : `${String(Math.round(force))} N`;
	if (unseen) return `${load}; see the question`;
	const into = [...new Set(fixings.map((f) => f.into))];
	if (into.includes('not known')) return `${load}; nothing recorded here carries`;
	return `${load}; ${into.join(' and ')}`;
}

/** What goes behind brackets where the wall is out of plumb. */
export function packed(fixings: SetOut['fixings'], unit: LengthUnit): readonly string[] {
	const middle = fixings.reduce((sum, { y }) => sum + y, 0) / fixings.length;
	const says = fixings.flatMap(({ y, packing }) =>
		packing === undefined ? [] : [`pack ${figure(packing, unit)} behind the ${y < middle ? 'lower' : 'upper'} bracket`]
	);
	return [...new Set(says)];
}

/** A hollow behind the face, which a bracket would press in. */
export function solid(fixings: SetOut['fixings'], { unit, face }: Pick<Holding, 'unit' | 'face'>): readonly string[] {
	const deep = fixings.find(({ hollow }) => hollow !== undefined)?.hollow;
	return deep === undefined ? [] : [`pack the ${figure(deep, unit)} hollow behind the ${face} solid at each bracket`];
}
