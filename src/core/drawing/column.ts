import { paragraph, space, stacked, type Block } from './block.ts';
import type { DrawnWall } from './drawn-wall.ts';
import { pictured, type Entity } from './entity.ts';
import { datumWords } from './figure.ts';
import { headed, poured, type Column } from './flow.ts';
import { keyPlan } from './key-plan.ts';
import type { Note } from './labels.ts';
import { noteBlocks } from './notes.ts';
import { questionBox, wallQuestions } from './question.ts';
import { schedule } from './schedule.ts';
import { cornerOf } from './setting-out.ts';
import { fitting, write } from './type.ts';
import { wallSays } from './wall-says.ts';

/** What stands in the column beside what every wall has there. */
export interface Beside {
	/** The legend, where it found no room elsewhere. */
	readonly legend: readonly Block[];
	readonly notes: readonly Note[];
}

/** What found no room, by what it is called. */
type Left = Readonly<Partial<Record<'words' | 'marks' | 'questions' | 'notes' | 'lines', readonly Block[]>>>;

/** What was drawn, the room that is left over the datum line and under it, and what found none. */
interface Filled {
	readonly entities: readonly Entity[];
	readonly parts: Readonly<Record<'above' | 'below', Column>>;
	readonly left: Left;
}

/** The column of words of a wall, and what goes on to the next sheet. */
interface Columned {
	readonly entities: readonly Entity[];
	readonly rest: readonly Block[];
}

/** Height of the words that send the reader on. Units: mm. */
const ONWARD = 10.2;

/**
 * The column of words: key plan and questions above the datum line, the schedule below it, then notes and legend. What
 * finds no room is handed back, and a line sends the reader on.
 */
export function column(on: DrawnWall, beside: Beside): Columned {
	const { column: box, datum } = on.view;
	const whole = filled(on, beside, 0);
	const { entities, left, parts } = isEmpty(whole.left) ? whole : filled(on, beside, ONWARD);
	const words = datumWords(-on.plan.scene.room.bathroomFloor, on.unit);
	const size = fitting(words, box.x1 - box.x0, { size: 10.5, weight: 'semibold' });
	return {
		entities: [
			...entities,
			...sentOn(left, on, parts),
			write('datum/words', words, [box.x0, datum - 1.5], { size, weight: 'semibold', tone: 'datum' })
		],
		rest: Object.values(left).flat()
	};
}

const isEmpty = (left: Left): boolean => Object.values(left).flat().length === 0;

/**
 * Key plan, schedule and questions, with a foot kept free. A schedule that must be parted leaves the upper part to the
 * questions, and begins there if that loses no more of it.
 */
function filled(on: DrawnWall, { legend, notes }: Beside, foot: number): Filled {
	const { plan, wall, sets, unit, view, reader } = on;
	const { x0, x1, y0, y1 } = view.column;
	const width = x1 - x0;
	const above: Column = { x: x0, y0, y1: view.datum - 7 };
	const below: Column = { x: x0, y0: view.datum + 4, y1: y1 - foot };
	const rows = rowsOf(on, width);
	const boxes = wallQuestions(plan, sets, reader).map((q) => questionBox(q, width));
	const says = wholeWall(plan, wall, { unit, other: on.other, width });
	const key = poured([asPicture('key', keyPlan(plan, wall, { width, reader })), ...says], { above, below }, [
		'above',
		'below'
	]);
	const table = poured([stacked(...rows)], key.columns, ['below', 'above']);
	const whole = table.left === 0;
	const asked = poured(boxes, table.columns, whole ? ['above', 'below'] : ['above']);
	const left = whole ? [] : rows;
	const read = poured(left, asked.columns, ['above', 'below']);
	const full = poured(left, asked.columns, ['below', 'above']);
	const rest = read.left <= full.left ? read : full;
	const numbered = noteBlocks(notes, width);
	const noted = pouredWhereFree(numbered.length > 0 ? [space(2), ...numbered] : [], rest.columns);
	const lines = pouredWhereFree(
		legend.map((block) => stacked(space(3), block)),
		noted.columns
	);
	return {
		entities: [key, table, asked, rest, noted, lines].flatMap((p) => p.entities),
		parts: { ...lines.columns, below: { ...lines.columns.below, y1 } },
		left: {
			words: says.slice(says.length - Math.min(key.left, says.length)),
			marks: headedFirst(left.slice(left.length - rest.left)),
			questions: boxes.slice(boxes.length - asked.left),
			notes: headedFirst(numbered.slice(numbered.length - Math.min(noted.left, numbered.length))),
			lines: legend.slice(legend.length - lines.left)
		}
	};
}

/** Blocks into whichever part has room for more of them, the lower first. */
function pouredWhereFree(
	blocks: readonly Block[],
	parts: Filled['parts']
): ReturnType<typeof poured<'above' | 'below'>> {
	const low = poured(blocks, parts, ['below', 'above']);
	const high = poured(blocks, parts, ['above', 'below']);
	return low.left <= high.left ? low : high;
}

/** What goes on elsewhere begins with its head. */
const headedFirst = ([first, ...others]: readonly Block[]): readonly Block[] =>
	first ? [headed(first), ...others] : [];

/** The schedule of a wall, a block a mark. */
function rowsOf({ plan: { scene }, wall, sets, unit, other }: DrawnWall, width: number): readonly Block[] {
	const { ceilingHolds, walls } = scene.c.enclosure;
	return schedule({
		sets,
		corner: cornerOf(scene.room, wall),
		unit,
		other,
		force: scene.holds.demand.force,
		width,
		face: walls[wall].facing?.kind ?? '',
		ceilingHolds
	});
}

const asPicture = (picture: string, block: Block): Block => ({
	...block,
	draw: (x, y) => pictured(picture, block.draw(x, y))
});

/** What is said of the wall as a whole; the marks sheet says it too. */
function wholeWall(
	{ scene }: DrawnWall['plan'],
	wall: DrawnWall['wall'],
	{ unit, other, width }: Pick<DrawnWall, 'unit' | 'other'> & { readonly width: number }
): readonly Block[] {
	const says = wallSays(scene, wall, { unit, other });
	const each = says.flatMap((text, i) => [paragraph(`wall/${String(i)}`, text, { size: 9, width }), space(1)]);
	return says.length > 0 ? [stacked(...each, space(1))] : [];
}

/** A line that sends the reader on for what is left; nothing when all found room. */
function sentOn(left: Left, { view }: DrawnWall, parts: Filled['parts']): readonly Entity[] {
	const names = Object.entries(left).flatMap(([name, blocks]) => (blocks.length > 0 ? [name] : []));
	if (names.length === 0) return [];
	const [last = '', ...others] = names.toReversed();
	const list = others.length > 0 ? `${others.toReversed().join(', ')} and ${last}` : last;
	const hand = { size: 10, weight: 'semibold', width: view.column.x1 - view.column.x0 } as const;
	const words = stacked(space(1), paragraph('onward', `More ${list} on the next sheet.`, hand));
	return poured([words], parts, ['below', 'above']).entities;
}
