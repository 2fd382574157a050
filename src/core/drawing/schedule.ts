import { onTape } from '#core/units/format.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { paragraph, stacked, indented, type Block } from './block.ts';
import { figure, partName, signed } from './figure.ts';
import { line } from './path.ts';
import type { SetOut } from './setting-out.ts';
import { TABLE_TAG, tag } from './tag.ts';
import { widthOf, write } from './type.ts';

/** What the marks schedule of a wall needs. Units: mm; `force` N. */
export interface Scheduled {
	readonly sets: readonly SetOut[];
	readonly from: (x: number) => number;
	readonly unit: LengthUnit;
	readonly force: number;
	readonly width: number;
}

/** Sizes tried for the figures of a row. */
const FIGURES = [12.5, 11] as const;
const INDENT = 7;

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
			write(`${id}/from`, 'from corner', [x + INDENT, y + 9.8], { size: 8.5, tone: 'grey' }),
			write(`${id}/datum`, 'from datum', [x + half, y + 9.8], { size: 8.5, tone: 'grey' })
		]
	});
	const again = stacked(head('schedule/again', 'Marks, continued'), rule('schedule/again/rule'));
	return on.sets.map((set, i) => {
		const block = stacked(row(set, on, half), rule(`schedule/${set.id}/rule`));
		return i === 0 ? stacked(head('schedule', 'Marks'), rule('schedule/rule'), block) : { ...block, again };
	});
}

function row(set: SetOut, on: Scheduled, half: number): Block {
	const id = `schedule/${set.id}`;
	const inner = on.width - INDENT;
	const text = stacked(
		paragraph(`${id}/name`, partName(set.mark.variant, on.unit), {
			size: 10.5,
			weight: 'semibold',
			width: inner,
			leading: 1.2
		}),
		figures(id, set, on, half),
		paragraph(`${id}/into`, onTape(held(set, on.force), on), { size: 9, tone: 'grey', width: inner, leading: 1.25 })
	);
	return {
		height: text.height + 3,
		draw: (x, y) => [
			...tag(`${id}/tag`, { letter: set.letter, open: set.open, id: set.id }, [x + TABLE_TAG, y + 4], TABLE_TAG),
			...indented(INDENT, text).draw(x, y + 1.4)
		]
	};
}

/** One line when both columns have room for all figures in one of the sizes, else a line a point. */
function figures(id: string, set: SetOut, on: Scheduled, half: number): Block {
	const distinct = (texts: readonly string[]) => [...new Set(texts)].join(', ');
	const each = set.points.map(([x, y]) => [figure(on.from(x), on.unit), signed(y, on.unit)] as const);
	const one = [distinct(each.map(([x]) => x)), distinct(each.map(([, y]) => y))] as const;
	const room = [half - INDENT - 1.5, on.width - half] as const;
	const fits = (size: number) => one.every((text, i) => widthOf(text, size, 'semibold') <= (room[i] ?? 0));
	const size = FIGURES.find(fits);
	const rows = size ? [one] : each;
	const hand = { size: size ?? FIGURES[0], weight: 'semibold' } as const;
	return {
		height: 5.4 * rows.length,
		draw: (x, y) =>
			rows.flatMap(([across, level], i) => [
				write(`${id}/x/${String(i)}`, across, [x, y + 4.2 + 5.4 * i], hand),
				write(`${id}/y/${String(i)}`, level, [x + half - INDENT, y + 4.2 + 5.4 * i], hand)
			])
	};
}

/** What holds a mark and what it must hold, in words. Units: N. */
function held(set: SetOut, force: number): string {
	if (set.fixings.length === 0) return 'plate only, nothing hangs on it';
	const load = set.mark.variant.kind === 'handset-rest' ? 'light screws' : `${String(Math.round(force))} N`;
	if (set.open) return `${load}; see the question`;
	const into = [...new Set(set.fixings.map((f) => f.into))];
	if (into.includes('not known')) return `${load}; nothing recorded here carries`;
	return `${load}; ${into.join(' and ')}`;
}
