import type { Plan } from '#core/plan.ts';
import { indented, paragraph, space, stacked, type Block } from '../block.ts';
import type { Drawing } from '../entity.ts';
import { listSheets, listWidth } from '../list-sheet.ts';
import { line } from '../path.ts';
import { cornerOf, wallName } from '../setting-out.ts';
import type { OnPaper } from '../sheet.ts';
import { write } from '../type.ts';
import { boredOf, exactLevel, exactly, NOT_KNOWN, notYet, type Bored } from './holes-bored.ts';

/** Where the columns begin, from the left. Units: mm. */
const AT = { corner: 20, datum: 58, diameter: 98, into: 128 } as const;
const ROW = 6.2;
const FIGURE = { size: 12, weight: 'semibold' } as const;

/**
 * The schedule of holes of the real parts that were read off: each with its id, from corner and datum line, its
 * diameter, and for its bracket the screw and what it goes into. Shape: none where nothing was read off.
 */
export function holesSheetsOf(plan: Plan, how: OnPaper): readonly Drawing[] {
	const bored = boredOf(plan);
	if (bored.length === 0) return [];
	const width = listWidth(how);
	return listSheets(plan, how, {
		title: 'Holes',
		says: 'Centres of the holes of each part that was read off. A1.2 is the second hole of the first bracket of A.',
		blocks: bored.flatMap((one) => [group(plan, one, { how, width }), space(3)]),
		foot: foot(width - 94)
	});
}

/** The holes of one bracket under its name. */
function group(plan: Plan, one: Bored, { how, width }: { how: OnPaper; width: number }): Block {
	const { id, set, side, holes, flange, screw, into } = one;
	const { unit } = how.tape;
	const key = `holes/${id}`;
	const { wall } = set.mark.place;
	const corner = cornerOf(plan.scene.room, wall);
	const late = notYet(one);
	const name = `${id}, ${side} bracket, ${wallName(plan, wall)}`;
	const held = paragraph(
		`${key}/into`,
		`${screw ?? 'screw not known'}; ${into === NOT_KNOWN ? 'into what is not known' : into}`,
		{
			size: 10,
			width: width - AT.into
		}
	);
	const heads: Block = {
		height: 4.6,
		draw: (x, y) =>
			[
				[`from ${corner.side} ${corner.at}`, AT.corner],
				['from datum', AT.datum],
				['diameter', AT.diameter],
				['screw, into', AT.into]
			].map(([text, at], i) =>
				write(`${key}/head/${String(i)}`, String(text), [x + Number(at), y + 3.2], { size: 8.5, tone: 'grey' })
			)
	};
	const rows: Block = {
		height: Math.max(holes.length * ROW, held.height + 2),
		draw: (x, y) => [
			...holes.flatMap((hole, i) => {
				const base = y + 4.4 + ROW * i;
				return [
					write(`${key}/${hole.id}`, hole.id, [x, base], { size: 10.5, weight: 'semibold' }),
					write(`${key}/${hole.id}/x`, exactly(corner.from(hole.at[0]), unit), [x + AT.corner, base], FIGURE),
					write(`${key}/${hole.id}/y`, exactLevel(hole.at[1], unit), [x + AT.datum, base], FIGURE),
					write(`${key}/${hole.id}/wide`, boring(flange.hole, unit), [x + AT.diameter, base], FIGURE)
				];
			}),
			...indented(AT.into, held).draw(x, y + 1)
		]
	};
	const rule: Block = { height: 1, draw: (x, y) => [line(`${key}/rule`, 'rule', [x, y], [x + width, y])] };
	return stacked(
		paragraph(`${key}/name`, late === undefined ? name : `${name}. ${late}`, { size: 12, weight: 'semibold', width }),
		heads,
		rows,
		rule
	);
}

const boring = (hole: number | undefined, unit: OnPaper['tape']['unit']): string =>
	hole === undefined ? 'not told' : exactly(hole, unit);

/** What is to be known before one of them is bored. */
function foot(width: number): Block {
	const words =
		'They are for the part that was read off: where the one in the hand differs, stop and ring. Holes are numbered clockwise from the first, as on the templates. From datum is up where there is a +, down where there is a minus. The diameter is that of the hole in the flange; the screw decides the drill.';
	const head: Block = {
		height: 5.2,
		draw: (x, y) => [write('foot/title', 'Before a hole is bored', [x, y + 3.4], { size: 11, weight: 'semibold' })]
	};
	return stacked(head, paragraph('foot', words, { size: 8.5, width, leading: 1.32 }));
}
