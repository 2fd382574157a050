import type { WallPoint } from '#core/geometry/vec.ts';
import type { Plan } from '#core/plan.ts';
import { onTape } from '#core/units/format.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { indented, paragraph, space, stacked, type Block } from '../block.ts';
import type { Drawing } from '../entity.ts';
import { listSheets, listWidth } from '../list-sheet.ts';
import { line } from '../path.ts';
import { cornerOf, wallName } from '../setting-out.ts';
import { unitsOn, type OnPaper } from '../sheet.ts';
import { write } from '../type.ts';
import { unitWords } from '../view.ts';
import { boredOf, exactLevel, exactly, NOT_KNOWN, notYet, type Bored } from './holes-bored.ts';
import type { FootWords } from '../title-block.ts';

/** Where the columns begin, from the left. Units: mm. */
const AT = { corner: 18, datum: 50, diameter: 84, into: 108 } as const;
const ROW = 6.2;
/** What the figures in the other unit add to a row. Units: mm. */
const OTHER = 4.6;
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
		says: 'Of parts that were read off. A1.2 is the second hole of the first bracket of A.',
		blocks: bored.flatMap((one) => [group(plan, one, { how, width }), space(3)]),
		unit: unitWords(unitsOn(how)),
		foot: FOOT_WORDS
	});
}

/** What the rows of one bracket are written with. */
interface Rows {
	readonly key: string;
	readonly unit: LengthUnit;
	/** Figures stand in the other unit too. */
	readonly both: boolean;
	readonly corner: ReturnType<typeof cornerOf>;
	readonly width: number;
}

/** The holes of one bracket under its name. */
function group(plan: Plan, one: Bored, { how, width }: { how: OnPaper; width: number }): Block {
	const { id, set, side } = one;
	const { wall } = set.mark.place;
	const on = {
		key: `holes/${id}`,
		unit: how.tape.unit,
		both: how.both ?? false,
		corner: cornerOf(plan.scene.room, wall),
		width
	};
	const name = `${id}, ${side} bracket, ${wallName(plan, wall)}`;
	const late = notYet(one);
	return stacked(
		paragraph(`${on.key}/name`, late === undefined ? name : `${name}. ${late}`, {
			size: 12,
			weight: 'semibold',
			width
		}),
		heads(on),
		rows(one, on),
		{ height: 1, draw: (x, y) => [line(`${on.key}/rule`, 'rule', [x, y], [x + width, y])] }
	);
}

function heads({ key, corner }: Rows): Block {
	const each = [
		[`from ${corner.side} ${corner.at}`, AT.corner],
		['from datum', AT.datum],
		['diameter', AT.diameter],
		['screw, into', AT.into]
	] as const;
	return {
		height: 4.6,
		draw: (x, y) =>
			each.map(([text, at], i) =>
				write(`${key}/head/${String(i)}`, text, [x + at, y + 3.2], { size: 8.5, tone: 'grey' })
			)
	};
}

function rows({ holes, flange, screw, into }: Bored, on: Rows): Block {
	const { key, unit, both, corner, width } = on;
	const says = `${screw ?? 'screw not known'}; ${into === NOT_KNOWN ? 'into what is not known' : into}`;
	const held = paragraph(`${key}/into`, onTape(says, { unit }), { size: 10, width: width - AT.into });
	const row = both ? ROW + OTHER : ROW;
	const figures = ([x, y]: WallPoint, u: LengthUnit) =>
		[
			['x', exactly(corner.from(x), u), AT.corner],
			['y', exactLevel(y, u), AT.datum],
			['wide', boring(flange.hole, u), AT.diameter]
		] as const;
	return {
		height: Math.max(holes.length * row, held.height + 2),
		draw: (x, y) => [
			...holes.flatMap(({ id, at }, i) => {
				const base = y + 4.4 + row * i;
				const other = both ? figures(at, unit === 'mm' ? 'in' : 'mm') : [];
				return [
					write(`${key}/${id}`, id, [x, base], { size: 10.5, weight: 'semibold' }),
					...figures(at, unit).map(([name, text, to]) => write(`${key}/${id}/${name}`, text, [x + to, base], FIGURE)),
					...other.map(([name, text, to]) =>
						write(`${key}/${id}/${name}/other`, text, [x + to, base + OTHER], { size: 10, tone: 'grey' })
					)
				];
			}),
			...indented(AT.into, held).draw(x, y + 1)
		]
	};
}

const boring = (hole: number | undefined, unit: LengthUnit): string =>
	hole === undefined ? 'not told' : exactly(hole, unit);

/** What is to be known before one of them is bored. */
const FOOT_WORDS: FootWords = {
	id: 'foot',
	title: 'Before a hole is bored',
	words:
		'They are for the part that was read off: where the one in the hand differs, stop and ring. Holes are numbered clockwise from the first, as on the templates. From datum is up where there is a +, down where there is a minus. The diameter is that of the hole in the flange; the screw decides the drill.'
};
