import { paragraph } from '../block.ts';
import { pictured, type Box, type Entity, type Spot } from '../entity.ts';
import { cross, lines } from '../path.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { write } from '../type.ts';

/** The two lengths a print is measured by. Units: mm. Source: structure-and-drawing 5.4; 4 in is 101.6 mm exactly. */
const CHECKS = [
	{ id: 'mm', length: 100, words: ['100', 'mm'] },
	{ id: 'in', length: 101.6, words: ['4 in'] }
] as const;

/** The picture the bars are, and what it shows. */
export const CHECK_BARS: Readonly<Record<string, string>> = {
	checks: 'Bars to measure a print by, across and upright: exactly 100 mm and exactly 4 inches.'
};

/** Half of what closes a bar at each end. Units: mm. */
const END = 1.8;
/** From the edge of the art to the middle of the cross at its corner. Units: mm. */
const CORNER = 2;
/** How close to true a print must be to be used. Units: mm. Source: 0.5 % of 100 mm, ours. */
const CLOSE = { mm: '0.5 mm', in: '0.5 mm (1/64 in)' } as const;

/** How high what is checked by is at the foot of a sheet. Units: mm. */
export const CHECKS_FOOT = 18;

/**
 * What a print is measured by before a template is used: bars of two lengths both ways, a cross at each corner, and the
 * words for them. Units and frame: mm of the sheet; `art` is what lies inside its margins.
 */
export function checks(art: Box, unit: LengthUnit): readonly Entity[] {
	const rows = CHECKS.map((check, i) => ({ ...check, y: art.y1 - 13 + 7 * i }));
	const across = rows.flatMap(({ id, length, words, y }) => [
		bar(`checks/${id}/across`, [art.x0 + 10, y], [art.x0 + 10 + length, y]),
		write(`checks/${id}/across/words`, words.join(' '), [art.x0 + 13 + length, y + 1.1], HAND)
	]);
	const columns = CHECKS.map((check, i) => ({ ...check, y: art.y0 + 24 + 106 * i }));
	const upright = columns.flatMap(({ id, length, words, y }) => [
		bar(`checks/${id}/upright`, [art.x0 + END, y], [art.x0 + END, y + length]),
		...words.map((word, i) =>
			write(`checks/${id}/upright/words/${String(i)}`, word, [art.x0 + 2 * END + 0.3, y + length / 2 + 3.4 * i], HAND)
		)
	]);
	const words = `Print at 100 %, never to fit. Measure all four bars: use the sheet only if each is within ${CLOSE[unit]}.`;
	const says = { size: unit === 'in' ? 10 : 9.5, weight: 'semibold', width: art.x1 - art.x0 - 136 } as const;
	return [
		...pictured('checks', [...across, ...upright, ...corners(art)]),
		...paragraph('checks/says', words, says).draw(art.x0 + 130, art.y1 - 16.5)
	];
}

const HAND = { size: 8.5, weight: 'semibold' } as const;

/** A bar between two points with its ends. */
function bar(id: string, from: Spot, to: Spot): Entity {
	const across = from[1] === to[1];
	const end = ([x, y]: Spot): readonly Spot[] =>
		across
			? [
					[x, y - END],
					[x, y + END]
				]
			: [
					[x - END, y],
					[x + END, y]
				];
	return lines(id, 'dimension', [[from, to], end(from), end(to)]);
}

const corners = ({ x0, y0, x1, y1 }: Box): readonly Entity[] =>
	[
		[x0 + CORNER, y0 + CORNER],
		[x1 - CORNER, y0 + CORNER],
		[x0 + CORNER, y1 - CORNER],
		[x1 - CORNER, y1 - CORNER]
	].map(([x = 0, y = 0], i) => cross(`checks/corner/${String(i)}`, 'dimension', [x, y], CORNER));
