import type { Plan } from '#core/plan.ts';
import { paragraph, space, stacked, type Block } from '../block.ts';
import type { Box, Drawing, Entity } from '../entity.ts';
import { flowed, headed as anew } from '../flow.ts';
import { line, rectangle } from '../path.ts';
import { inHand, SHEETS, type OnPaper } from '../sheet.ts';
import { tag } from '../tag.ts';
import { PT, widthOf, write, type Hand } from '../type.ts';
import type { HerItem } from './item.ts';
import { MESSAGES, type Language, type Messages } from './messages.ts';
import { stateOf } from '../title-block.ts';

/** Sizes of her type. Units: pt. Source: house design, after large-print guidance of 16 pt and more. */
export const SIZE = { title: 27, opening: 24, head: 20, text: 17, small: 16, caseLine: 10.5 } as const;
const LEADING = 1.34;

/** Radius of a number in a picture, and beside a name. Units: mm. */
export const DISC = { picture: 4.4, list: 5.4 } as const;

/** A page of hers: what it shows, in which language, and where it may write. */
export interface Page {
	readonly plan: Plan;
	readonly how: OnPaper;
	readonly words: Messages;
	readonly language: Language;
	/** Units and frame: mm of the sheet. */
	readonly field: Box;
	readonly width: number;
}

/** The pages of a plan. */
export function pageOf(plan: Plan, how: OnPaper): Page {
	const { width, height } = SHEETS[inHand(how).sheet];
	const language = plan.scene.c.language ?? 'en';
	const field = { x0: 20, y0: 14, x1: width - 18, y1: height - 16 };
	return { plan, how, language, words: MESSAGES[language], field, width: field.x1 - field.x0 };
}

/** A heading over a part of a page. */
export const headed = (id: string, text: string, width: number): Block =>
	stacked(paragraph(id, text, { size: SIZE.head, weight: 'semibold', heading: 2, width, leading: 1.28 }), space(0.8));

/** Sentences. */
export const said = (id: string, text: string, width: number, hand: Partial<Hand> = {}): Block =>
	paragraph(id, text, { size: SIZE.text, width, leading: LEADING, ...hand });

/** Quieter sentences. */
export const quiet = (id: string, text: string, width: number): Block =>
	paragraph(id, text, { size: SIZE.small, tone: 'grey', width, leading: LEADING });

/** A heading with its sentences, and the space after them. */
export const part = (id: string, title: string, width: number, ...blocks: readonly Block[]): Block =>
	stacked(headed(`${id}/title`, title, width), ...blocks, space(5));

const SQUARE = 3.4;
const HANGS = 7.5;

/** A list with a solid square before each sentence, in two columns. */
export function squares(id: string, texts: readonly string[], width: number): Block {
	const column = (width - 6) / 2;
	const cells = texts.map((text, i) => ({
		id: `${id}/${String(i)}`,
		block: said(`${id}/${String(i)}/says`, text, column - HANGS)
	}));
	const rows = Array.from({ length: Math.ceil(cells.length / 2) }, (_, i) => cells.slice(2 * i, 2 * i + 2));
	return stacked(
		...rows.map((row): Block => ({
			height: Math.max(...row.map(({ block }) => block.height)) + 0.8,
			draw: (x, y) =>
				row.flatMap((cell, i) => {
					const left = x + i * (column + 6);
					const box = { x0: left, y0: y + 1.9, x1: left + SQUARE, y1: y + 1.9 + SQUARE };
					return [rectangle(`${cell.id}/square`, 'solid', box), ...cell.block.draw(left + HANGS, y)];
				})
		}))
	);
}

/** A word and a line to write on after it. Units: mm; `from` is where the line begins at the earliest. */
export function toFill(id: string, label: string, width: number, from = 0): Block {
	const start = Math.max(from, widthOf(label, SIZE.small) + 3);
	return {
		height: 12,
		draw: (x, y) => [
			write(`${id}/label`, label, [x, y + 9], { size: SIZE.small, tone: 'grey' }),
			line(`${id}/line`, 'cell', [x + start, y + 10.3], [x + width, y + 10.3])
		]
	};
}

/** The number of a thing in its disc: full, dashed while it is asked about, thin for later. */
export function numberDisc(id: string, item: HerItem, [x, y]: readonly [number, number], radius: number): Entity[] {
	const open = item.state !== undefined && item.state !== 'later';
	const mark = { id: item.id, letter: String(item.number), open, later: item.state === 'later' };
	return tag(id, mark, [x, y], radius);
}

/** What stands together under a title; it begins where the one before it ends, when there is room. */
export interface Section {
	readonly title: string;
	readonly says?: string;
	/** None of them only space. */
	readonly blocks: readonly Block[];
	/** It has no title but at the top of a page. */
	readonly joins?: boolean;
	/** What each of its pictures shows. */
	readonly pictures?: Alts;
}

/** What each picture shows, by its key. */
type Alts = Readonly<Record<string, string>>;

/** The words over a page or, smaller, over what begins farther down. */
const headOf = ({ title, says }: Section, width: number, id: string, size: number): Block =>
	stacked(
		paragraph(`${id}/title`, title, { size, weight: 'semibold', heading: 1, width, leading: 1.2 }),
		...(says === undefined ? [] : [space(1), quiet(`${id}/says`, says, width)]),
		space(5)
	);

/** Id of the words over a page. */
const HEAD = 'head';
const overPage = (section: Section, width: number): Block => headOf(section, width, HEAD, SIZE.title);

/** Room for blocks on a page under its words. Units: mm. */
export const roomUnder = (page: Page, section: Section): number =>
	page.field.y1 - page.field.y0 - overPage(section, page.width).height;

/** The blocks of sections, each with what stands over it where it begins a section or a page. */
const blocksOf = (sections: readonly Section[], width: number): readonly Block[] =>
	sections.flatMap((section, s) =>
		section.blocks.map((block, i): Block => {
			const opens = i === 0 && section.joins !== true;
			const opening = opens ? [space(2), headOf(section, width, `${HEAD}/opens/${String(s)}`, SIZE.opening)] : [];
			return { ...stacked(...opening, block), anew: stacked(overPage(section, width), block) };
		})
	);

/** The pages of some sections, one after the other. Shape: as many as it takes. */
export function pagesOf(page: Page, sections: readonly Section[]): readonly Drawing[] {
	const { field, width } = page;
	const pictures = Object.fromEntries(sections.flatMap((section) => Object.entries(section.pictures ?? {})));
	const [first, ...rest] = blocksOf(sections, width);
	if (!first) return [];
	return flowed([anew(first), ...rest], { x: field.x0, y0: field.y0, y1: field.y1 }).map((entities) =>
		sheetOf(page, entities, pictures)
	);
}

function sheetOf({ plan, how, words, language, field }: Page, entities: readonly Entity[], alts: Alts): Drawing {
	const size = SHEETS[inHand(how).sheet];
	const state = stateOf(plan.digest);
	const shown = Object.entries(alts).filter(([key]) => entities.some((e) => e.picture === key));
	const title = entities.flatMap((e) => (e.kind === 'text' && e.id.startsWith(`${HEAD}/title/`) ? [e.text] : []));
	return {
		title: title.join(' '),
		language,
		size: { width: size.width, height: size.height },
		...(shown.length > 0 && { pictures: Object.fromEntries(shown) }),
		entities: [
			rectangle('sheet', 'sheet', { x0: 0, y0: 0, x1: size.width, y1: size.height }),
			...entities,
			write('foot/case', words.caseLine(plan.scene.c.id, state), [field.x0, size.height - 11], {
				size: SIZE.caseLine,
				tone: 'grey'
			})
		]
	};
}

/** Height of a line of her text. Units: mm. */
export const LINE = SIZE.text * PT * LEADING;
