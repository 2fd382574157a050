import { toPlan, WALL_IDS, type Footprint, type WallId } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { paragraph, stacked, type Block } from './block.ts';
import type { Entity, Spot } from './entity.ts';
import { figure, partName } from './figure.ts';
import { planView, roomPlan, swungOut, type PlanView } from './key-plan.ts';
import { line } from './path.ts';
import { AIM, levelFigures } from './schedule.ts';
import { aboveFloor, cornerOf, hasLevel, settingOut, type SetOut } from './setting-out.ts';
import { spread } from './spread.ts';
import { TABLE_TAG, tag } from './tag.ts';
import { write } from './type.ts';

const PITCH = 2 * TABLE_TAG + 0.8;

/** The room from above, `size` high, with the letter of every mark outside its wall. */
export function roomWithLetters(plan: Plan, size: number): Block {
	const sets = settingOut(plan);
	const fronts = sets.some((s) => s.mark.place.wall === 'front');
	const at = (spot: Spot) => planView(plan.scene.room, spot, size - 10);
	const clear = Math.max(fronts ? PITCH : 0, swungOut(plan, at([0, 0])));
	return {
		height: size + 6 + clear,
		draw: (x, y) => {
			const view = at([x + 7, y + 8]);
			return [
				...roomPlan(plan, view, fronts ? PITCH + 1 : 0),
				...WALL_IDS.flatMap((wall) => letters(plan.scene.room.footprint, view, { sets, wall }))
			];
		}
	};
}

/** The letters of the marks on one side, in a row outside it. */
function letters(
	footprint: Footprint,
	{ box, spot }: PlanView,
	{ sets, wall }: { sets: readonly SetOut[]; wall: WallId }
): readonly Entity[] {
	const level = wall === 'back' || wall === 'front';
	const here = sets
		.filter((s) => s.mark.place.wall === wall)
		.map((s) => ({ s, at: spot(...middle(s, footprint))[level ? 0 : 1] }))
		.toSorted((a, b) => a.at - b.at);
	const wishes = here.map(({ at }) => ({ at, before: PITCH / 2, after: PITCH / 2 }));
	const places = spread(wishes, -Infinity, Infinity);
	const across = { left: box.x0 - 4, right: box.x1 + 4, back: box.y0 - 4, front: box.y1 + 4 }[wall];
	return here.flatMap(({ s }, i) => {
		const at = places[i] ?? 0;
		return tag(`room/${s.id}`, s, level ? [at, across] : [across, at], TABLE_TAG);
	});
}

function middle({ mark }: SetOut, footprint: Footprint): readonly [number, number] {
	const { outline } = mark.variant;
	const [x, y] = toPlan(mark.place.wall, [mark.place.x + (outline.x0 + outline.x1) / 2, 0], 0, footprint);
	return [x, y];
}

const COLUMNS = [0, 8, 0.5, 0.66, 0.83] as const;

/** How the list of marks is set, and what stands under the name of each. Units: mm. */
export interface Listing {
	readonly unit: LengthUnit;
	readonly width: number;
	/** Every figure stands in the other unit too. */
	readonly both?: boolean | undefined;
	readonly says: (set: SetOut) => readonly string[];
}

const FIGURED = ['corner', 'datum', 'above'] as const;
type Figured = (typeof FIGURED)[number];

const OTHER = { mm: 'in', in: 'mm' } as const;

/** Every mark with its figures and what is said of it, a block a mark under the heads. */
export function marksList(plan: Plan, on: Listing): readonly Block[] {
	const { width } = on;
	const [, name, corner, datum, above] = COLUMNS;
	const x = { name, corner: corner * width, datum: datum * width, above: above * width };
	const head: Block = {
		height: 6,
		draw: (left, y) => [
			write('list/aim', AIM, [left + x.name, y + 3.4], { size: 8.5, tone: 'grey' }),
			...(['corner', 'datum'] as const).map((key) =>
				write(`list/${key}`, `from ${key}`, [left + x[key], y + 3.4], { size: 8.5, tone: 'grey' })
			),
			write('list/above', 'above floor', [left + x.above, y + 3.4], { size: 8.5, tone: 'grey' }),
			line('list/rule', 'rule', [left, y + 6], [left + width, y + 6])
		]
	};
	const [first, ...rest] = settingOut(plan).map((set) => row(plan, set, { ...on, x }));
	return first ? [stacked(head, first), ...rest.map((block) => ({ ...block, again: head }))] : [];
}

interface Row extends Listing {
	readonly x: { readonly name: number; readonly corner: number; readonly datum: number; readonly above: number };
}

/** The figures of a mark on a tape, alike ones once. */
function figuresOf({ room }: Plan['scene'], set: SetOut, unit: LengthUnit): Readonly<Record<Figured, string>> {
	const corner = cornerOf(room, set.mark.place.wall);
	const distinct = (texts: readonly string[]) => [...new Set(texts)].join(', ');
	return {
		corner: distinct(set.points.map(([along]) => figure(corner.from(along), unit))),
		datum: distinct(levelFigures(set, unit)),
		above: hasLevel(set) ? distinct(set.points.map((point) => figure(aboveFloor(room, set, point), unit))) : ''
	};
}

function row(plan: Plan, set: SetOut, on: Row): Block {
	const { unit, width, x } = on;
	const id = `list/${set.id}`;
	const tone = set.later ? 'grey' : 'ink';
	const name = partName(set.mark, unit);
	const inner = x.corner - x.name - 2;
	const text = stacked(
		paragraph(`${id}/name`, set.later ? `${name}, later` : name, {
			size: 10.5,
			weight: 'semibold',
			tone,
			width: inner
		}),
		...on.says(set).map((says, i) =>
			paragraph(`${id}/why${i === 0 ? '' : `/${String(i)}`}`, says, {
				// Fractions need larger type.
				size: unit === 'mm' ? 9 : 10,
				tone: 'grey',
				width: inner
			})
		)
	);
	const widths = { corner: x.datum - x.corner, datum: x.above - x.datum, above: width - x.above };
	const figures = figuresOf(plan.scene, set, unit);
	const others = on.both ? figuresOf(plan.scene, set, OTHER[unit]) : undefined;
	const cells = FIGURED.map((key) => ({
		left: x[key],
		block: stacked(
			paragraph(`${id}/${key}`, figures[key], {
				size: 12,
				weight: key === 'above' || set.later ? 'regular' : 'semibold',
				tone,
				width: widths[key] - 1.5
			}),
			...(others && others[key] !== figures[key]
				? [
						paragraph(`${id}/${key}/other`, `(${others[key]})`, {
							size: unit === 'mm' ? 11 : 9.5,
							tone: 'grey',
							width: widths[key] - 1.5
						})
					]
				: [])
		)
	}));
	const height = Math.max(text.height, ...cells.map(({ block }) => block.height)) + 3.4;
	return {
		height,
		draw: (left, y) => [
			...tag(`${id}/tag`, set, [left + TABLE_TAG, y + 4.4], TABLE_TAG),
			...text.draw(left + x.name, y + 1.6),
			...cells.flatMap((cell) => cell.block.draw(left + cell.left, y + 1.37)),
			line(`${id}/rule`, 'rule', [left, y + height], [left + width, y + height])
		]
	};
}
