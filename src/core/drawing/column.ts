import { paragraph, space, stacked, type Block } from './block.ts';
import type { DrawnWall } from './drawn-wall.ts';
import { pictured, type Entity } from './entity.ts';
import { figure } from './figure.ts';
import { poured, type Column } from './flow.ts';
import { keyPlan } from './key-plan.ts';
import { questionBox, wallQuestions } from './question.ts';
import { schedule } from './schedule.ts';
import { cornerOf } from './setting-out.ts';
import { write } from './type.ts';
import { wallSays } from './wall-says.ts';

/** What was drawn, the room that is left over the datum line and under it, and what found none. */
interface Filled {
	readonly entities: readonly Entity[];
	readonly parts: Readonly<Record<'above' | 'below', Column>>;
	readonly left: readonly string[];
}

/** Height of the words that send the reader on. Units: mm. */
const ONWARD = 10.2;

/** The column of words: key plan and questions above the datum line, the schedule below it, then what stands nowhere else. */
export function column(on: DrawnWall, elsewhere: readonly Block[]): readonly Entity[] {
	const { column: box, datum } = on.view;
	const whole = sentOn(filled(on, 0), on);
	const { entities, parts } = whole.left.length === 0 ? whole : sentOn(filled(on, ONWARD), on);
	const others = elsewhere.map((block) => stacked(space(3), block));
	const level = figure(-on.plan.scene.room.bathroomFloor, on.unit);
	const words = level === '0' ? 'Datum line: the floor F' : `Datum line, ${level} above F`;
	return [
		...entities,
		...poured(others, parts, ['below', 'above']).entities,
		write('datum/words', words, [box.x0, datum - 1.5], { size: 10.5, weight: 'semibold', tone: 'datum' })
	];
}

/**
 * Key plan, schedule and questions, with a foot kept free. A schedule that must be parted leaves the upper part to the
 * questions, and begins there if that loses no more of it.
 */
function filled({ plan, wall, sets, unit, view, reader }: DrawnWall, foot: number): Filled {
	const { x0, x1, y0, y1 } = view.column;
	const width = x1 - x0;
	const { c, room, holds } = plan.scene;
	const above: Column = { x: x0, y0, y1: view.datum - 7 };
	const below: Column = { x: x0, y0: view.datum + 4, y1: y1 - foot };
	const { ceilingHolds, walls } = c.enclosure;
	const rows = schedule({
		sets,
		corner: cornerOf(room, wall),
		unit,
		force: holds.demand.force,
		width,
		face: walls[wall].facing?.kind ?? '',
		ceilingHolds
	});
	const boxes = wallQuestions(plan, sets, reader).map((q) => questionBox(q, width));
	const key = poured(
		[asPicture('key', keyPlan(plan, wall, width)), ...wholeWall(plan, wall, { unit, width })],
		{ above, below },
		['above', 'below']
	);
	const table = poured([stacked(...rows)], key.columns, ['below', 'above']);
	const whole = table.left === 0;
	const asked = poured(boxes, table.columns, whole ? ['above', 'below'] : ['above']);
	const left = whole ? [] : rows;
	const read = poured(left, asked.columns, ['above', 'below']);
	const full = poured(left, asked.columns, ['below', 'above']);
	const rest = read.left <= full.left ? read : full;
	return {
		entities: [key, table, asked, rest].flatMap((p) => p.entities),
		parts: { ...rest.columns, below: { ...rest.columns.below, y1 } },
		left: [...(rest.left > 0 ? ['marks'] : []), ...(asked.left > 0 ? ['questions'] : [])]
	};
}

const asPicture = (picture: string, block: Block): Block => ({
	...block,
	draw: (x, y) => pictured(picture, block.draw(x, y))
});

/** What is said of the wall as a whole; the marks sheet says it too. */
function wholeWall(
	{ scene }: DrawnWall['plan'],
	wall: DrawnWall['wall'],
	{ unit, width }: { readonly unit: DrawnWall['unit']; readonly width: number }
): readonly Block[] {
	const says = wallSays(scene, wall, unit);
	const each = says.flatMap((text, i) => [paragraph(`wall/${String(i)}`, text, { size: 9, width }), space(1)]);
	return says.length > 0 ? [stacked(...each, space(1))] : [];
}

/** The same with words that send the reader on for what is left. Shape: nothing is left when the words found room. */
function sentOn(on: Filled, { view }: DrawnWall): Filled {
	if (on.left.length === 0) return on;
	const says = `More ${on.left.join(' and ')} on the marks sheet.`;
	const hand = { size: 10, weight: 'semibold', width: view.column.x1 - view.column.x0 } as const;
	const words = stacked(space(1), paragraph('onward', says, hand));
	const placed = poured([words], on.parts, ['above', 'below']);
	return {
		entities: [...on.entities, ...placed.entities],
		parts: placed.columns,
		left: placed.left > 0 ? on.left : []
	};
}
