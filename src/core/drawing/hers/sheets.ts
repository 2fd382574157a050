import type { Plan } from '#core/plan.ts';
import { space, stacked, type Block } from '../block.ts';
import type { Drawing } from '../entity.ts';
import type { OnPaper } from '../sheet.ts';
import { choiceBlocks, signing } from './choices.ts';
import { againPart, loadPart, mindPart, ratingParts, untilParts, whenPart, wrongPart } from './notes.ts';
import { pageOf, pagesOf, roomUnder, type Page, type Section } from './page.ts';
import { altsOf, keyOf, picturesOf, row, type Picture } from './pictures.ts';
import { toldOf, type Told } from './told.ts';

/** Heights of a row of pictures. Units: mm. */
const ROW = { least: 92, most: 140 };
const AFTER = 6;
/** At most over a page. */
const HEAD = 40;

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
		...pagesOf(page, [first.section]),
		...pagesOf(page, [
			...pictureSections(page, told, pictures.slice(2)),
			{ title, says, blocks: choiceBlocks(page, told) },
			{ title: page.words.notes.title, blocks: noteBlocks(page, told, first.saysWrong), joins: true }
		])
	];
}

/** The first page: two pictures as large as the words leave room for, and when to stop where that still fits. */
function firstPage(page: Page, told: Told, pictures: readonly Picture[]): { section: Section; saysWrong: boolean } {
	const { title, says, keep } = page.words.pictures;
	const shown = pictures.slice(0, 2);
	const section = (blocks: readonly Block[]): Section => ({
		title,
		says: `${says} ${keep}`,
		blocks,
		pictures: altsOf(shown)
	});
	const needed = [mindPart(page, told), whenPart(page, told)];
	const all = [...needed, wrongPart(page, told)];
	const key = pictures.length > 2 ? [] : [keyOf(page, told.items)];
	const left = (blocks: readonly Block[]) => roomUnder(page, section([])) - AFTER - heightOf([...blocks, ...key]);
	const saysWrong = left(all) >= ROW.least;
	const under = saysWrong ? all : needed;
	const height = Math.min(ROW.most, Math.max(ROW.least, left(under)));
	const over = stacked(row(shown, page.width, height), space(AFTER));
	return { section: section([over, ...under, ...key]), saysWrong };
}

/** The other pictures, two rows a page; a last row alone leaves room for what follows. */
function pictureSections(page: Page, told: Told, pictures: readonly Picture[]): readonly Section[] {
	if (pictures.length === 0) return [];
	const { title, says } = page.words.pictures;
	const section = { title, says, pictures: altsOf(pictures) };
	const key = keyOf(page, told.items);
	const rows = rowsOf(pictures);
	const room = roomUnder(page, { ...section, blocks: [] }) - key.height;
	const height = Math.min(ROW.most, room / 2 - AFTER - 0.1);
	const blocks = rows.map((pair, i) => {
		const last = i === rows.length - 1;
		// What follows on its page is to have room for more than one thing.
		const high = last && i % 2 === 0 ? ROW.least : height;
		return stacked(row(pair, page.width, high), space(AFTER), ...(last ? [key] : []));
	});
	return [{ ...section, blocks }];
}

/** What is good to know; the last of it stays with the signing, so that no page is signed that says nothing else. */
function noteBlocks(page: Page, told: Told, saysWrong: boolean): readonly Block[] {
	const last = [...ratingParts(page, told), againPart(page, told), signing(page, told)];
	return [
		...(saysWrong ? [] : [wrongPart(page, told)]),
		...untilParts(page, told),
		loadPart(page, told),
		...(heightOf(last) <= page.field.y1 - page.field.y0 - HEAD ? [stacked(...last)] : last)
	];
}

const heightOf = (blocks: readonly Block[]): number => blocks.reduce((sum, { height }) => sum + height, 0);

const rowsOf = (pictures: readonly Picture[]): readonly (readonly Picture[])[] =>
	Array.from({ length: Math.ceil(pictures.length / 2) }, (_, i) => pictures.slice(2 * i, 2 * i + 2));
