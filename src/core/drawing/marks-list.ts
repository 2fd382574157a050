import { toPlan, WALL_IDS, type Footprint, type WallId } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { driftWords } from '#core/words.ts';
import { paragraph, stacked, type Block } from './block.ts';
import type { Entity, Spot } from './entity.ts';
import { figure, partName } from './figure.ts';
import { planView, roomPlan, swungOut, type PlanView } from './key-plan.ts';
import { line } from './path.ts';
import { AIM, levelFigures } from './schedule.ts';
import { aboveFloor, cornerOf, hasLevel, settingOut, wallName, type SetOut } from './setting-out.ts';
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

/** Every mark with its figures and why it is there, a block a mark under the heads. */
export function marksList(plan: Plan, unit: LengthUnit, width: number): readonly Block[] {
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
	const [first, ...rest] = settingOut(plan).map((set) => row(plan, set, { unit, width, x }));
	return first ? [stacked(head, first), ...rest.map((block) => ({ ...block, again: head }))] : [];
}

interface Row {
	readonly unit: LengthUnit;
	readonly width: number;
	readonly x: { readonly name: number; readonly corner: number; readonly datum: number; readonly above: number };
}

function row(plan: Plan, set: SetOut, { unit, width, x }: Row): Block {
	const { room } = plan.scene;
	const id = `list/${set.id}`;
	const corner = cornerOf(room, set.mark.place.wall);
	const distinct = (texts: readonly string[]) => [...new Set(texts)].join(', ');
	const figures = {
		corner: distinct(set.points.map(([along]) => figure(corner.from(along), unit))),
		datum: distinct(levelFigures(set, unit)),
		above: hasLevel(set) ? distinct(set.points.map((point) => figure(aboveFloor(room, set, point), unit))) : ''
	};
	const tone = set.later ? 'grey' : 'ink';
	const name = partName(set.mark, unit);
	const drift = set.drift ? [`Room to move: ${driftWords(set.drift, { unit })}.`] : [];
	const tall = set.tall === undefined ? [] : [`From floor to ceiling ${figure(set.tall, unit)} ${unit}.`];
	const says = [`${wallName(plan, set.mark.place.wall)}.`, set.mark.accessory.reason, ...tall, ...drift];
	const inner = x.corner - x.name - 2;
	const text = stacked(
		paragraph(`${id}/name`, set.later ? `${name}, later` : name, {
			size: 10.5,
			weight: 'semibold',
			tone,
			width: inner
		}),
		paragraph(`${id}/why`, says.join(' '), { size: 9, tone: 'grey', width: inner })
	);
	const widths = { corner: x.datum - x.corner, datum: x.above - x.datum, above: width - x.above };
	const cells = (['corner', 'datum', 'above'] as const).map((key) => ({
		left: x[key],
		block: paragraph(`${id}/${key}`, figures[key], {
			size: 12,
			weight: key === 'above' || set.later ? 'regular' : 'semibold',
			tone,
			width: widths[key] - 1.5
		})
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
