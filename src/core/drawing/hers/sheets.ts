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
	const { notes, choices } = page.words;
	return [
		...pagesOf(page, first.section),
		...morePictures(page, told, pictures.slice(2)),
		...pagesOf(page, {
			...notes,
			blocks: [
				...(first.saysWrong ? [] : [wrongPart(page, told)]),
				...untilParts(page, told),
				...loadBlocks(page, told),
				againPart(page, told)
			]
		}),
		...pagesOf(page, { title: choices.title, says: choices.says, blocks: choiceBlocks(page, told) })
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
	const left = (blocks: readonly Block[]) =>
		roomUnder(page, section([])) - AFTER - [...blocks, ...key].reduce((sum, { height }) => sum + height, 0);
	const saysWrong = left(all) >= ROW.least;
	const under = saysWrong ? all : needed;
	const height = Math.min(ROW.most, Math.max(ROW.least, left(under)));
	return { section: section([row(shown, page.width, height), space(AFTER), ...under, ...key]), saysWrong };
}

/** The other pictures, two rows a page. */
function morePictures(page: Page, { items }: Told, pictures: readonly Picture[]): readonly Drawing[] {
	if (pictures.length === 0) return [];
	const { title, says } = page.words.pictures;
	const key = keyOf(page, items);
	const section = { title, says, pictures: altsOf(pictures) };
	const rows = Math.min(2, Math.ceil(pictures.length / 2));
	const room = roomUnder(page, { ...section, blocks: [] }) - key.height - AFTER * rows;
	const height = Math.min(ROW.most, room / rows - 0.1);
	const blocks = Array.from({ length: Math.ceil(pictures.length / 2) }, (_, i): readonly Block[] => [
		row(pictures.slice(2 * i, 2 * i + 2), page.width, height),
		space(AFTER)
	]);
	return pagesOf(page, { ...section, blocks: [...blocks.flat(), key] });
}
