import { paragraph } from './block.ts';
import type { Box, Entity } from './entity.ts';
import { rectangle } from './path.ts';
import { FOOT } from './sheet.ts';
import { fitting, write } from './type.ts';

/** What the title block of a sheet says. */
export interface Titled {
	readonly caseId: string;
	readonly subject: string;
	readonly digest: string;
}

const LABEL = 8;
const VALUE = 10;
const WIDTH = 90;

interface Cell {
	readonly label: string;
	readonly value: string;
	readonly box: Box;
}

/** A state as it stands on paper: the first twelve digits, four by four. */
export const stateOf = (digest: string): string => digest.slice(0, 12).replace(/(.{4})(?=.)/g, '$1 ');

/** The title block at the foot right: case, state, blanks to sign. Units and frame: mm of the sheet. */
export function titleBlock({ caseId, subject, digest }: Titled, field: Box): readonly Entity[] {
	const x = [field.x1 - WIDTH, field.x1 - 45, field.x1] as const;
	const y = [field.y1 - FOOT, field.y1 - FOOT + 7.6, field.y1 - FOOT + 15.2, field.y1] as const;
	const third = x[0] + 22.5;
	const cell = (label: string, value: string, x0: number, y0: number, x1: number, y1: number): Cell => ({
		label,
		value,
		box: { x0, y0, x1, y1 }
	});
	const cells = [
		cell('Case, sheet, revision', `${caseId} \u00b7 ${subject} \u00b7 \u2013`, x[0], y[0], x[2], y[1]),
		cell('Status', 'draft', x[0], y[1], third, y[2]),
		cell('Date', '', third, y[1], x[1], y[2]),
		cell('State', stateOf(digest), x[1], y[1], x[2], y[2]),
		cell('Drawn by', '', x[0], y[2], x[0] + 30, y[3]),
		cell('Installer', '', x[0] + 30, y[2], x[0] + 60, y[3]),
		cell('Agreed by', '', x[0] + 60, y[2], x[2], y[3])
	];
	return [
		...cells.flatMap((c, i) => draw(`title/${String(i)}`, c)),
		rectangle('title/frame', 'frame', { x0: x[0], y0: y[0], x1: x[2], y1: y[3] })
	];
}

function draw(id: string, { label, value, box }: Cell): readonly Entity[] {
	const size = fitting(value, box.x1 - box.x0 - 2.6, { size: VALUE, weight: 'semibold' });
	return [
		rectangle(`${id}/cell`, 'cell', box),
		write(`${id}/label`, label, [box.x0 + 1.3, box.y0 + 2.9], { size: LABEL, tone: 'grey' }),
		...(value === '' ? [] : [write(`${id}/value`, value, [box.x0 + 1.3, box.y0 + 6.4], { size, weight: 'semibold' })])
	];
}

/** Words at the foot, under a title of their own. */
export interface FootWords {
	readonly id: string;
	readonly title: string;
	readonly words: string;
}

/** What is to be known before the first hole. */
export const CAUTIONS: FootWords = {
	id: 'cautions',
	title: 'Before you drill',
	words: [
		'Local codes and licensed practice come first.',
		'Aim at the mark: room to move is for the drill, not for choice. If drawing and table differ, stop and ring; do not scale.',
		'Scan for cables and pipes; prove the backing. No hammer on tile. Seal every hole.',
		'Limit the hot water and measure it at the handset. No load test with a person.'
	].join(' ')
};

/** Words at the foot left, beside the title block. Units and frame: mm of the sheet. */
export function footWords({ id, title, words }: FootWords, field: Box): readonly Entity[] {
	const top = field.y1 - FOOT;
	const text = paragraph(id, words, { size: 8.5, width: field.x1 - field.x0 - WIDTH - 4, leading: 1.32 });
	return [
		write(`${id}/title`, title, [field.x0, top + 3.4], { size: 11, weight: 'semibold' }),
		...text.draw(field.x0, top + 5.2)
	];
}
