import { toPlan } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { paragraph, stacked, type Block } from './block.ts';
import type { Spot } from './entity.ts';
import { figure, partName, signed } from './figure.ts';
import { planView, roomPlan } from './key-plan.ts';
import { line } from './path.ts';
import { aboveFloor, cornerOf, settingOut, wallName, type SetOut } from './setting-out.ts';
import { spread } from './spread.ts';
import { TABLE_TAG, tag } from './tag.ts';
import { write } from './type.ts';

const PITCH = 2 * TABLE_TAG + 0.8;

/** The room from above, `size` high, with the letter of every mark outside its wall. */
export function roomWithLetters(plan: Plan, size: number): Block {
	const { footprint } = plan.scene.room;
	const sets = settingOut(plan);
	return {
		height: size + 6,
		draw: (x, y) => {
			const view = planView(plan.scene.room, [x + 7, y + 8], size - 10);
			const on = (wall: 'left' | 'right' | 'back') => {
				const along = wall === 'back' ? 0 : 1;
				const here = sets
					.filter((s) => s.mark.place.wall === wall)
					.map((s) => ({ s, at: view.spot(...middle(s, footprint))[along] }))
					.toSorted((a, b) => a.at - b.at);
				const wishes = here.map(({ at }) => ({ at, before: PITCH / 2, after: PITCH / 2 }));
				const places = spread(wishes, -Infinity, Infinity);
				const across = { left: view.box.x0 - 4, right: view.box.x1 + 4, back: view.box.y0 - 4 }[wall];
				return here.flatMap(({ s }, i) => {
					const at = places[i] ?? 0;
					const spot: Spot = wall === 'back' ? [at, across] : [across, at];
					return tag(`room/${s.id}`, s, spot, TABLE_TAG);
				});
			};
			return [...roomPlan(plan, view), ...on('left'), ...on('right'), ...on('back')];
		}
	};
}

function middle({ mark }: SetOut, footprint: { width: number; depth: number }): readonly [number, number] {
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
	const each = (of: (point: readonly [number, number]) => string) => [...new Set(set.points.map(of))].join(', ');
	const figures = {
		corner: each(([along]) => figure(corner.from(along), unit)),
		datum: each(([, level]) => signed(level, unit)),
		above: each((point) => figure(aboveFloor(room, set, point), unit))
	};
	const text = stacked(
		paragraph(`${id}/name`, partName(set.mark.variant, unit), {
			size: 10.5,
			weight: 'semibold',
			width: x.corner - x.name - 2
		}),
		paragraph(`${id}/why`, `${wallName(room, set.mark.place.wall)}. ${set.mark.accessory.reason}`, {
			size: 9,
			tone: 'grey',
			width: x.corner - x.name - 2
		})
	);
	return {
		height: text.height + 3.4,
		draw: (left, y) => [
			...tag(`${id}/tag`, set, [left + TABLE_TAG, y + 4.4], TABLE_TAG),
			...text.draw(left + x.name, y + 1.6),
			...(['corner', 'datum', 'above'] as const).map((key) =>
				write(`${id}/${key}`, figures[key], [left + x[key], y + 5.6], {
					size: 12,
					weight: key === 'above' ? 'regular' : 'semibold'
				})
			),
			line(`${id}/rule`, 'rule', [left, y + text.height + 3.4], [left + width, y + text.height + 3.4])
		]
	};
}
