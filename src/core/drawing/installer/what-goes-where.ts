import type { WallId } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import { indented, paragraph, space, stacked, type Block } from '../block.ts';
import { pictured, type Drawing, type Entity } from '../entity.ts';
import { poured, type Column } from '../flow.ts';
import { wayOf } from '../key-plan.ts';
import { listSheets, listWidth } from '../list-sheet.ts';
import { rectangle } from '../path.ts';
import { lettersFor, settingOut, wallName } from '../setting-out.ts';
import { fieldOf, FOOT, SHEETS, type OnPaper } from '../sheet.ts';
import { CAUTIONS, footWords, titleBlock } from '../title-block.ts';
import { write } from '../type.ts';
import { scaleName, SCALES } from '../view.ts';
import { cornerName } from '../wall-says.ts';
import { endsSay } from '../wall-ends.ts';
import { AROUND, beforeEntry, floorPlan, floorView, leftOf } from './floor-plan.ts';
import { readingNotes } from './reading.ts';
import { wallTagAt } from './wall-tag.ts';

/** The other sheets by what they are called, with the wall each shows. */
export interface Following {
	readonly title: string;
	readonly wall?: WallId;
}

const TITLE = 'What goes where';
const SAYS = 'The shower and its entry from above.';
const TOP = 30;
/** Width of the column of words at the right, the space before it, and the least height of the words under the plan. Units: mm. */
const COLUMN = 52;
const GAP = 3.4;
const WORDS = 60;

/**
 * The first sheet: the floor plan to scale with every letter and the sheet of each wall, the list of sheets, and how they
 * are read; what finds no room goes on over the page.
 * Shape: at least one sheet. Sheets that follow are numbered from after its last.
 */
export function whatGoesWhere(plan: Plan, how: OnPaper, following: readonly Following[]): readonly Drawing[] {
	const one = drawn(plan, how, { following, own: 1 });
	// The list of sheets counts the pages of its own sheet.
	return one.length === 1 ? one : drawn(plan, how, { following, own: one.length });
}

interface Numbered {
	readonly following: readonly Following[];
	/** How many sheets stand before the first of them. */
	readonly own: number;
}

function drawn(plan: Plan, how: OnPaper, numbered: Numbered): readonly Drawing[] {
	const { unit } = how.tape;
	const { width, height } = SHEETS[how.sheet];
	const field = fieldOf(how.sheet);
	const { floor, view, bottom, scale } = laidOut(plan, how);
	const sheets = new Map(
		numbered.following.flatMap(({ wall }, i) => (wall ? [[wall, i + 1 + numbered.own] as const] : []))
	);
	const picture = floorPlan({ plan, unit, both: how.both === true, sheets }, view);
	const words = worded(plan, how, numbered, {
		right: { x: field.x1 - COLUMN, y0: TOP, y1: field.y1 - FOOT - 4 },
		below: { x: field.x0, y0: bottom, y1: field.y1 - FOOT - 4 },
		width: floor
	});
	const first: Drawing = {
		title: TITLE,
		size: { width, height },
		pictures: { floor: altOf(plan, scaleName(scale, unit)) },
		entities: [
			rectangle('sheet', 'sheet', { x0: 0, y0: 0, x1: width, y1: height }),
			write('head/title', TITLE, [field.x0, 18.2], { size: 24, weight: 'semibold', heading: 1 }),
			write('head/says', SAYS, [field.x0, 24], { size: 10.5, tone: 'grey' }),
			write('head/scale', scaleName(scale, unit), [field.x1, 18.2], { size: 14, weight: 'semibold', anchor: 'end' }),
			...pictured('floor', picture),
			...words.entities,
			...footWords(CAUTIONS, field),
			...titleBlock({ caseId: plan.scene.c.id, subject: TITLE, digest: plan.digest }, field)
		]
	};
	if (words.left.length === 0) return [first];
	const onward = listSheets(plan, how, {
		title: `${TITLE}, continued`,
		says: 'How these sheets are read.',
		blocks: words.left,
		foot: CAUTIONS
	});
	return [first, ...onward];
}

/** The largest scale of its trade at which the plan leaves room for the words under it, in the middle of its column. */
function laidOut(plan: Plan, { sheet, tape: { unit } }: OnPaper) {
	const before = leftOf(plan, unit);
	const field = fieldOf(sheet);
	const { room } = plan.scene;
	const floor = field.x1 - field.x0 - COLUMN - GAP;
	const high = field.y1 - FOOT - TOP - WORDS;
	const needs = (scale: number) => ({
		wide: before + room.footprint.width / scale + AROUND.right,
		high: AROUND.above + room.footprint.depth / scale + beforeEntry(plan, scale) + AROUND.below
	});
	const scales: readonly number[] = SCALES[unit];
	const scale = scales.find((one) => needs(one).wide <= floor && needs(one).high <= high) ?? scales.at(-1) ?? 1;
	const spare = Math.max(0, floor - needs(scale).wide) / 2;
	const view = floorView(room, scale, [field.x0 + before + spare, TOP + AROUND.above]);
	return { floor, scale, view, bottom: TOP + needs(scale).high };
}

/** Where the words go: the column at the right, and the space under the plan with its width. */
interface Columns {
	readonly right: Column;
	readonly below: Column;
	readonly width: number;
}

/** The list of sheets at the right, the walls under the plan, the notes where there is room; the rest at the width of a list. */
function worded(
	plan: Plan,
	how: OnPaper,
	numbered: Numbered,
	{ right, below, width }: Columns
): { readonly entities: readonly Entity[]; readonly left: readonly Block[] } {
	const whole = listWidth(how);
	const sheets = poured(sheetList(numbered, COLUMN), { right }, ['right']);
	const walls = poured(wallKey(plan, numbered, width), { below }, ['below']);
	const beside = poured(notes(plan, how, COLUMN), sheets.columns, ['right']);
	const wide = notes(plan, how, width);
	const under = poured(wide.slice(wide.length - beside.left), walls.columns, ['below']);
	const last = (blocks: readonly Block[], left: number) => (left === 0 ? [] : blocks.slice(-left));
	return {
		entities: [sheets, walls, beside, under].flatMap(({ entities }) => entities),
		left: [
			...last(sheetList(numbered, whole), sheets.left),
			...last(wallKey(plan, numbered, whole), walls.left),
			...last(notes(plan, how, whole), under.left)
		]
	};
}

const headed = (id: string, title: string): Block => ({
	height: 6.4,
	draw: (x, y) => [write(`${id}/title`, title, [x, y + 4.2], { size: 12, weight: 'semibold', heading: 2 })]
});

/** What each sheet is called, sheets of one name in a row together. */
function sheetList({ following, own }: Numbered, width: number): readonly Block[] {
	const rows = [{ title: TITLE, from: 1, to: own }];
	for (const [i, { title }] of following.entries()) {
		const at = i + 1 + own;
		const last = rows.at(-1);
		if (last && last.title === title) rows[rows.length - 1] = { ...last, to: at };
		else rows.push({ title, from: at, to: at });
	}
	const blocks = rows.map(({ title, from, to }): Block => {
		const id = `sheets/${String(from)}`;
		const text = paragraph(`${id}/title`, title, { size: 10, width: width - 11 });
		const number = from === to ? String(from) : `${String(from)}\u2013${String(to)}`;
		return {
			height: text.height + 0.6,
			draw: (x, y) => [
				write(id, number, [x, y + 3.52], { size: 10, weight: 'semibold' }),
				...indented(11, text).draw(x, y)
			]
		};
	});
	const [first, ...rest] = blocks;
	return first ? [stacked(headed('sheets', 'Sheets'), first), ...rest, space(3)] : [];
}

const TAG = 15;

/** Each wall with its tag: its sheet, how one looks at it, what it has on either side, where its figures begin. */
function wallKey(plan: Plan, { following, own }: Numbered, width: number): readonly Block[] {
	const { room } = plan.scene;
	const blocks = following.flatMap(({ wall }, i): readonly Block[] => {
		if (!wall) return [];
		const sheet = i + 1 + own;
		const id = `walls/${wall}`;
		const here = settingOut(plan).filter((s) => s.mark.place.wall === wall);
		const letters = lettersFor(
			plan,
			here.map((s) => s.id)
		);
		const marks = letters === '' ? '' : `: ${letters}`;
		const text = stacked(
			paragraph(`${id}/name`, `${wallName(plan, wall)}, sheet ${String(sheet)}${marks}`, {
				size: 10,
				weight: 'semibold',
				width: width - TAG
			}),
			paragraph(`${id}/says`, `${wayOf(plan, wall)} ${endsSay(room, wall)} From ${cornerName(room, wall)}.`, {
				size: 9,
				width: width - TAG
			})
		);
		const height = Math.max(text.height, 12.6) + 1.2;
		return [
			{
				height,
				draw: (x, y) => [
					...wallTagAt(`${id}/tag`, { wall, sheet }, [x + 6.4, y + 6.3]),
					...indented(TAG, text).draw(x, y + Math.max(0, (12.6 - text.height) / 2))
				]
			}
		];
	});
	const [first, ...rest] = blocks;
	return first ? [stacked(headed('walls', 'Walls'), first), ...rest, space(2)] : [];
}

/** The notes, a block each under its head. */
function notes(plan: Plan, how: OnPaper, width: number): readonly Block[] {
	const size = how.tape.unit === 'mm' ? 9 : 10;
	return readingNotes(plan, how).map(({ id, head, says }) =>
		stacked(
			...(head === ''
				? []
				: [paragraph(`notes/${id}/head`, head, { size: 10, weight: 'semibold', width }), space(0.2)]),
			paragraph(`notes/${id}`, says, { size, width }),
			space(1.8)
		)
	);
}

/** The plan in words. */
function altOf(plan: Plan, scale: string): string {
	const walls = [...new Set(settingOut(plan).map((s) => s.mark.place.wall))].map((wall) => {
		const here = settingOut(plan).filter((s) => s.mark.place.wall === wall);
		return `${wallName(plan, wall)}: ${here.map(({ letter }) => letter).join(', ')}.`;
	});
	return [`Plan of the shower from above, ${scale}, with the letter of each mark at its place.`, ...walls].join(' ');
}
