import {
	clausesOf,
	conflictWords,
	hereWords,
	needsLook,
	scopeWords,
	spanWords,
	standingWords,
	suitedWords,
	toldOnce,
	type Told
} from '#core/needs/comparison-words.ts';
import { comparisonOf, outsideIn, type Comparison, type Quantity } from '#core/needs/comparison.ts';
import type { DocumentSays } from '#core/needs/documents.ts';
import { isDocument, nameOf } from '#core/needs/source.ts';
import type { Plan } from '#core/plan.ts';
import { sentence } from '#core/rules/sentence.ts';
import { onTape, type Tape } from '#core/units/format.ts';
import { paragraph, space, stacked, type Block } from './block.ts';
import { bands, hasStrip, planLine, scaleOf, spanLine } from './comparison-strip.ts';
import type { Drawing } from './entity.ts';
import { partName } from './figure.ts';
import { glyph } from './glyph.ts';
import { itemList, type Item } from './item-list.ts';
import { listSheets, listWidth } from './list-sheet.ts';
import { line } from './path.ts';
import { cornerOf, lettersFor, settingOut, type SetOut } from './setting-out.ts';
import type { OnPaper } from './sheet.ts';
import { TABLE_TAG, tag } from './tag.ts';
import { widthOf, write } from './type.ts';
import type { FootWords } from './title-block.ts';

/** Columns of a row: the source, the strip, what is allowed, how the plan stands to it. Units: mm, as shares of the width. */
const SHARES = { strip: 0.31, allowed: 0.62, glyph: 0.805, words: 0.83 } as const;
const ROW = 5.2;

interface Columns {
	readonly width: number;
	readonly strip: number;
	readonly stripWidth: number;
	readonly allowed: number;
	readonly glyph: number;
	readonly words: number;
}

function columnsOf(width: number): Columns {
	const [strip, allowed] = [SHARES.strip * width, SHARES.allowed * width];
	return {
		width,
		strip,
		stripWidth: allowed - strip - 4,
		allowed,
		glyph: SHARES.glyph * width,
		words: SHARES.words * width
	};
}

/**
 * Documents side by side with the person, for whoever defends a figure clause by clause: first what is outside of one, or
 * what no figure gives two of; then the rest, then what each document is.
 * Shape: as many sheets as it takes; none where no document speaks of anything.
 */
export function comparisonSheetsOf(plan: Plan, how: OnPaper): readonly Drawing[] {
	const compared = comparisonOf({ ...plan, findings: [...plan.findings, ...plan.told] }, cornerOf);
	if (plan.marks.length === 0 || compared.quantities.length === 0) return [];
	const width = listWidth(how);
	return listSheets(plan, how, {
		title: 'Documents compared',
		says: 'The upright line is this plan; every source is told at the point the plan is measured at.',
		blocks: [
			...settingOut(plan).flatMap((set) => ofMark(plan, compared, { set, tape: how.tape, width })),
			...ofRoom(plan, compared, { tape: how.tape, width }),
			...itemList(
				{ id: 'compared/asked', title: 'Asked by a document, and not so', items: asked(plan, compared, how.tape) },
				width
			),
			...itemList(
				{
					id: 'compared/rest',
					title: 'Inside, or not known, for all that speak of it',
					items: rest(plan, compared, how.tape)
				},
				width
			),
			...itemList(
				{
					id: 'compared/documents',
					title: 'The documents',
					items: compared.documents.map((one) => documentItem(one, how.tape))
				},
				width
			)
		],
		foot: FOOT_WORDS
	});
}

interface On {
	readonly tape: Tape;
	readonly width: number;
}

const shown = (one: Quantity): boolean => needsLook(one) && hasStrip(one);

/** What needs looking at of one mark, under its letter and name. */
function ofMark(
	plan: Plan,
	{ quantities }: Comparison,
	{ set, tape, width }: On & { readonly set: SetOut }
): readonly Block[] {
	const id = `compared/${set.id}`;
	const mine = quantities.filter((one) => one.about === set.id && shown(one));
	const name = partName(set.mark, tape.unit);
	const head = (words: string, key: string): Block => ({
		height: 7.5,
		draw: (x, y) => [
			...tag(`${id}/${key}`, set, [x + TABLE_TAG, y + 3.4], TABLE_TAG),
			write(`${id}/${key}/name`, words, [x + 8, y + 4.8], { size: 12, weight: 'semibold' })
		]
	});
	return under(
		head(name, 'head'),
		head(`${name}, continued`, 'again'),
		mine.map((one) => quantityBlock(plan, one, { tape, width }))
	);
}

function ofRoom(plan: Plan, { quantities }: Comparison, on: On): readonly Block[] {
	const mine = quantities.filter((one) => one.about === undefined && shown(one));
	const head = (words: string, key: string): Block => ({
		height: 7.5,
		draw: (x, y) => [write(`compared/room/${key}`, words, [x, y + 4.8], { size: 12, weight: 'semibold' })]
	});
	return under(
		head('The room', 'head'),
		head('The room, continued', 'again'),
		mine.map((one) => quantityBlock(plan, one, on))
	);
}

function under(head: Block, again: Block, blocks: readonly Block[]): readonly Block[] {
	const [first, ...others] = blocks;
	return first ? [stacked(head, first), ...others.map((block) => ({ ...block, again }))] : [];
}

/** One quantity: what the plan has, a row a source on one scale, then what nothing meets and what suits most. */
function quantityBlock(plan: Plan, one: Quantity, { tape, width }: On): Block {
	const id = `compared/${one.id}`;
	const columns = columnsOf(width);
	const scale = scaleOf(one, columns.strip, columns.stripWidth);
	const told = toldOnce(one.cells);
	const rows = told.map((row) => sourceRow(`${id}/${row.cell.source}`, one, row, { columns, tape }));
	const words = [
		...one.conflicts.map((conflict) => conflictWords(one, conflict)),
		...(one.suited ? [suitedWords(one, one.suited)] : [])
	].map((says, i) => paragraph(`${id}/says/${String(i)}`, onTape(says, tape), { size: 9, width: width - 2 }));
	const accepted = told.flatMap((row) => acceptedBlocks(plan, id, row, width));
	const body = stacked(...rows);
	const strips = { y0: 0, y1: body.height };
	const below = stacked(space(1), ...words, ...accepted, space(3.4));
	const top = 9.8;
	return {
		height: top + body.height + below.height,
		draw: (x, y) => {
			const at = { ...scale, left: x + scale.left };
			const box = { y0: y + top + strips.y0, y1: y + top + strips.y1 };
			return [
				line(`${id}/rule`, 'rule', [x, y], [x + width, y]),
				write(`${id}/what`, one.what, [x, y + 5], { size: 10.5 }),
				write(`${id}/here`, onTape(hereWords(one), tape), [x + width, y + 5], {
					size: 12,
					weight: 'semibold',
					anchor: 'end'
				}),
				...bands(`${id}/bands`, one, at, box),
				...planLine(`${id}/plan`, one, at, { y0: box.y0 - 0.4, y1: box.y1 }),
				...rowsDrawn(rows, x, box.y0),
				...told.flatMap((row, i) =>
					spanLine(`${id}/${row.cell.source}/span`, row, at, box.y0 + heightOf(rows, i) + ROW / 2)
				),
				...below.draw(x, box.y1)
			];
		}
	};
}

const heightOf = (rows: readonly Block[], n: number): number =>
	rows.slice(0, n).reduce((sum, { height }) => sum + height, 0);

const rowsDrawn = (rows: readonly Block[], x: number, y: number) =>
	rows.flatMap((row, i) => row.draw(x, y + heightOf(rows, i)));

/** A source with its clauses, what it allows and how the plan stands to that; who takes it over stands under it. */
function sourceRow(
	id: string,
	one: Quantity,
	{ cell, also }: Told,
	{ columns, tape }: { columns: Columns; tape: Tape }
): Block {
	const width = columns.strip - 3;
	const name = nameOf(cell.source);
	const clauses = isDocument(cell.source) ? `${clausesOf(cell)}${cell.advice ? ', advice' : ''}` : '';
	const beside = widthOf(name, 9.5) + 2;
	const fits = beside + widthOf(clauses, 8) <= width;
	const so = also.length > 0 ? `So too ${also.map(nameOf).join(', ')}` : '';
	const under = [fits ? '' : clauses, so].filter((words) => words !== '');
	const text = stacked(
		...under.map((words, i) => paragraph(`${id}/under/${String(i)}`, words, { size: 8, tone: 'grey', width }))
	);
	const allowed = cell.span ? onTape(spanWords(cell.span, one.unit), tape) : '';
	const words = onTape(standingWords(one, cell), tape);
	return {
		height: ROW + text.height,
		draw: (x, y) => [
			write(`${id}/name`, name, [x, y + 3.8], { size: 9.5, tone: cell.advice ? 'grey' : 'ink' }),
			...(fits ? [write(`${id}/clauses`, clauses, [x + beside, y + 3.8], { size: 8, tone: 'grey' })] : []),
			...text.draw(x, y + ROW - 0.6),
			write(`${id}/allowed`, allowed, [x + columns.allowed, y + 3.8], { size: 9, tone: 'grey' }),
			...glyph(`${id}/answer`, cell.answer, [x + columns.glyph, y + ROW / 2]),
			write(`${id}/words`, words, [x + columns.words, y + 3.8], {
				size: 9,
				weight: cell.answer === 'outside' ? 'semibold' : 'regular'
			})
		]
	};
}

function acceptedBlocks({ scene }: Plan, id: string, { cell }: Told, width: number): readonly Block[] {
	const reasons = new Set(outsideIn(scene, cell).flatMap(({ reason }) => reason ?? []));
	return [...reasons].map((reason, i) =>
		paragraph(`${id}/${cell.source}/accepted/${String(i)}`, `${nameOf(cell.source)}: outside, accepted: ${reason}`, {
			size: 9,
			weight: 'semibold',
			width: width - 2
		})
	);
}

/** What is outside and is no strip: things asked with yes or no, or by one document alone; asked by several, said once. */
function asked(plan: Plan, { quantities }: Comparison, tape: Tape): readonly Item[] {
	const items = quantities
		.filter((one) => needsLook(one) && !hasStrip(one))
		.flatMap(({ cells }) => toldOnce(cells))
		.flatMap(({ cell, also }) =>
			outsideIn(plan.scene, cell).map(({ finding, reason }) => ({
				letters: lettersFor(plan, finding.about.slice(0, 1)),
				says: `${sentence(finding, tape)}${reason === undefined ? '' : ` Outside, accepted: ${reason}`}`,
				note: [`${nameOf(cell.source)}, ${finding.row.clause}`, ...also.map(nameOf)].join('; '),
				answer: finding.answer
			}))
		);
	const isSame = (a: Item, b: Item): boolean => a.letters === b.letters && a.says === b.says;
	return items
		.filter((one, i) => items.findIndex((other) => isSame(one, other)) === i)
		.map((one) => ({
			...one,
			note: items
				.filter((other) => isSame(one, other))
				.map(({ note }) => note)
				.join('; ')
		}));
}

/** What is not outside of anything, a line a mark; what is not known apart. */
function rest(plan: Plan, { quantities }: Comparison, tape: Tape): readonly Item[] {
	const abouts = [...settingOut(plan).map(({ id }) => id), undefined];
	return abouts.flatMap((about) => {
		const mine = quantities.filter((one) => one.about === about && !needsLook(one));
		return (['inside', 'unknown'] as const).flatMap((answer) => {
			const told = mine.filter(
				({ cells }) => cells.some((cell) => cell.answer === 'unknown') === (answer === 'unknown')
			);
			const says = told.map((one) => (answer === 'unknown' ? one.what : `${one.what}: ${hereWords(one)}`));
			if (says.length === 0) return [];
			return [
				{
					letters: about === undefined ? '' : lettersFor(plan, [about]),
					says: onTape(`${says.join('. ')}.`, tape),
					answer
				}
			];
		});
	});
}

function documentItem(one: DocumentSays, tape: Tape): Item {
	const { id, name, chosen, lacks } = one;
	const says = [
		`${nameOf(id)}: ${name}${chosen ? ', chosen here' : ''}.`,
		...scopeWords(one),
		...(lacks.length > 0 ? [`Asked for, and not in this plan: ${lacks.join(' ')}`] : [])
	];
	return { letters: '', says: onTape(says.join(' '), tape) };
}

/** How a row is read. */
const FOOT_WORDS: FootWords = {
	id: 'compared/foot',
	title: 'How to read the strips',
	words:
		'A line is what a source allows, with an arrow where it has no end; a broken grey one is advice that never steers. Between broken edges lies what the person can, between whole ones what is easy. What is allowed counts tolerances; inches decide where a document prints inches. Wording is reference, never verdict.'
};
