import type { Plan } from '#core/plan.ts';
import { space, type Block } from '../block.ts';
import type { Drawing } from '../entity.ts';
import type { OnPaper } from '../sheet.ts';
import { choiceBlocks } from './choices.ts';
import { againPart, loadBlocks, mindPart, untilParts, whenPart, wrongPart } from './notes.ts';
import { pageOf, pagesOf, roomUnder, type Page, type Section } from './page.ts';
import { altsOf, keyOf, picturesOf, row, type Picture } from './pictures.ts';
import { toldOf, type Told } from './told.ts';

/** Heights of a row of pictures. Units: mm. */
const ROW = { least: 92, most: 140 };
const AFTER = 6;

/**
 * What goes where and how it is used, for her and whoever helps her, in her language.
 * Shape: none where nothing has a place.
 */
export function hersSheetsOf(plan: Plan, how: OnPaper): readonly Drawing[] {
	if (plan.marks.length === 0) return [];
	const page = pageOf(plan, how);
	const told = toldOf(plan);
	const pictures = picturesOf(page, told.items);
	const first = firstPage(page, told, pictures);
	const { title, says } = page.words.choices;
	return [
		...pagesOf(page, first.section),
		...pictureAndNotePages(page, told, { pictures: pictures.slice(2), saysWrong: first.saysWrong }),
		...pagesOf(page, { title, says, blocks: choiceBlocks(page, told) })
	];
}

/** The first page: two pictures as large as the words leave room for, and when to stop where that still fits. */
function firstPage(page: Page, told: Told, pictures: readonly Picture[]): { section: Section; saysWrong: boolean } {
	const { title, says } = page.words.pictures;
	const shown = pictures.slice(0, 2);
	const section = (blocks: readonly Block[]): Section => ({ title, says, blocks, pictures: altsOf(shown) });
	const needed = [mindPart(page, told), whenPart(page, told)];
	const all = [...needed, wrongPart(page, told)];
	const key = pictures.length > 2 ? [] : [keyOf(page, told.items)];
	const left = (blocks: readonly Block[]) => roomUnder(page, section([])) - AFTER - heightOf([...blocks, ...key]);
	const saysWrong = left(all) >= ROW.least;
	const under = saysWrong ? all : needed;
	const height = Math.min(ROW.most, Math.max(ROW.least, left(under)));
	return { section: section([row(shown, page.width, height), space(AFTER), ...under, ...key]), saysWrong };
}

/** What the first page has no room for. */
interface Left {
	readonly pictures: readonly Picture[];
	readonly saysWrong: boolean;
}

/** The other pictures, two rows a page, then what is good to know; a last row alone stands over that where it fits. */
function pictureAndNotePages(page: Page, told: Told, { pictures, saysWrong }: Left): readonly Drawing[] {
	const { notes, pictures: words } = page.words;
	const blocks = [
		...(saysWrong ? [] : [wrongPart(page, told)]),
		...untilParts(page, told),
		...loadBlocks(page, told),
		againPart(page, told)
	];
	const key = pictures.length > 0 ? [keyOf(page, told.items)] : [];
	const pairs = rowsOf(pictures);
	const alone = (pairs.length % 2 === 1 && pairs.at(-1)) || [];
	const over = alone.length > 0 ? [row(alone, page.width, ROW.least), space(2), ...key, space(AFTER)] : [];
	const together = { ...notes, blocks: [...over, ...blocks], pictures: altsOf(alone) };
	const joins = alone.length > 0 && heightOf(together.blocks) <= roomUnder(page, together);
	const own = joins ? pictures.slice(0, -alone.length) : pictures;
	const section = { title: words.title, says: words.says, pictures: altsOf(own) };
	const end = joins ? [] : key;
	const rows = rowsOf(own);
	const room = roomUnder(page, { ...section, blocks: [] }) - heightOf(end);
	const height = Math.min(ROW.most, room / Math.min(2, rows.length) - AFTER - 0.1);
	return [
		...(rows.length > 0
			? pagesOf(page, {
					...section,
					blocks: [...rows.flatMap((pair) => [row(pair, page.width, height), space(AFTER)]), ...end]
				})
			: []),
		...pagesOf(page, joins ? together : { ...notes, blocks })
	];
}

const heightOf = (blocks: readonly Block[]): number => blocks.reduce((sum, { height }) => sum + height, 0);

const rowsOf = (pictures: readonly Picture[]): readonly (readonly Picture[])[] =>
	Array.from({ length: Math.ceil(pictures.length / 2) }, (_, i) => pictures.slice(2 * i, 2 * i + 2));
