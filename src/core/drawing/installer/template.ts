import type { Plan } from '#core/plan.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { paragraph, space, stacked, type Block } from '../block.ts';
import { pictured, type Box, type Entity, type Spot } from '../entity.ts';
import { line, rectangle, shape } from '../path.ts';
import { cornerOf, wallName } from '../setting-out.ts';
import { tag } from '../tag.ts';
import { stateOf } from '../title-block.ts';
import { write } from '../type.ts';
import { exactly, exactLevel, notYet, type Bored } from './holes-bored.ts';
import { artOf } from './template-art.ts';

/** What a template is made of: the plan, its width in mm, and the units of its figures, the other one too if `both`. */
export interface OnTemplate {
	readonly plan: Plan;
	readonly width: number;
	readonly unit: LengthUnit;
	readonly both: boolean;
}

/** From a flange to the edge of its part of the template, at its sides and above and below it. Units: mm. */
const BESIDE = 9;
const ABOVE = 8;
/** The least half of the width of the part with the flange, and the least that is left for words beside it. Units: mm. */
const HALF = 40;
const WORDS = 66;
const PAD = 3;
/** The row above the level line that is its own. Units: mm. */
const LEVEL_ROW = 7;
const TAG = 3.3;

/**
 * A box to cut out with one flange at its own size, complete in itself: the level line right across, which way is up,
 * where its centre goes, how far the other end is, and what it belongs to. Words stand beside the flange, on the side
 * of the other bracket, or under it where it is too wide. Units: mm.
 */
export function template(bored: Bored, on: OnTemplate): Block {
	const half = Math.max(bored.flange.radius + BESIDE, HALF);
	return on.width - 2 * half >= WORDS ? wordsBeside(bored, on, half) : wordsUnder(bored, on);
}

function wordsBeside(bored: Bored, on: OnTemplate, half: number): Block {
	const width = on.width - 2 * half - PAD;
	const [upper, lower] = [whereBlock(bored, on, width), whatBlock(bored, on, width)];
	const tall = Math.max(bored.flange.radius + ABOVE, upper.height + PAD + LEVEL_ROW, lower.height + 2 * PAD);
	return {
		height: 2 * tall,
		draw: (x, y) => {
			const box = { x0: x, x1: x + on.width, y0: y, y1: y + 2 * tall };
			// Words stand toward the other bracket, so that the arrow to it runs past them.
			const left = bored.side === 'right' ? box.x1 - 2 * half : box.x0;
			const words = bored.side === 'right' ? box.x0 + PAD : box.x0 + 2 * half;
			const art = { ...box, x0: left, x1: left + 2 * half };
			return [
				...drawn(bored, on, { box, art, words }),
				...upper.draw(words, y + PAD),
				...lower.draw(words, y + tall + PAD)
			];
		}
	};
}

function wordsUnder(bored: Bored, on: OnTemplate): Block {
	const gap = 6;
	const width = (on.width - 2 * PAD - gap) / 2;
	const [upper, lower] = [whereBlock(bored, on, width), whatBlock(bored, on, width)];
	const tall = bored.flange.radius + ABOVE;
	return {
		height: 2 * tall + Math.max(upper.height, lower.height) + PAD,
		draw: (x, y) => {
			const art = { x0: x, x1: x + on.width, y0: y, y1: y + 2 * tall };
			const box = { ...art, y1: art.y1 + Math.max(upper.height, lower.height) + PAD };
			return [
				...drawn(bored, on, { box, art, words: undefined }),
				...upper.draw(x + PAD, art.y1),
				...lower.draw(x + PAD + width + gap, art.y1)
			];
		}
	};
}

/** The places of a template: all of it, the flange's part, and where the words beside it begin. Units and frame: mm of the sheet. */
interface Places {
	readonly box: Box;
	readonly art: Box;
	readonly words: number | undefined;
}

/** All of a template but its words. */
function drawn(bored: Bored, on: OnTemplate, { box, art, words }: Places): readonly Entity[] {
	const id = `template/${bored.id}`;
	const centre: Spot = [(art.x0 + art.x1) / 2, (art.y0 + art.y1) / 2];
	const [, y] = centre;
	const cut = notYet(bored) === undefined ? 'cell' : 'question';
	return [
		...pictured(id, [
			rectangle(`${id}/cut`, cut, box),
			...artOf(bored, { centre, art }),
			line(`${id}/level`, 'dimension', [box.x0, y], [box.x1, y])
		]),
		levelWord(bored, { box, art, words }),
		...toOther(bored, on, { box, art, words })
	];
}

/** The name of the level line, at the end where no arrow is. */
function levelWord({ id, side }: Bored, { box, art, words }: Places): Entity {
	const y = (art.y0 + art.y1) / 2 - 1.2;
	const hand = { size: 8, tone: 'grey' } as const;
	const key = `template/${id}/level/word`;
	return side === 'right'
		? write(key, 'level', [box.x1 - 1.2, y], { ...hand, anchor: 'end' })
		: write(key, 'level', [words ?? box.x0 + 1.2, y], hand);
}

/** The arrow along the axis of the bar to its other bracket, with how far its centre is. */
function toOther({ id, side, apart }: Bored, { unit }: OnTemplate, { box, art, words }: Places): readonly Entity[] {
	const [x, y] = [(art.x0 + art.x1) / 2, (art.y0 + art.y1) / 2];
	const text = `${exactly(apart, unit)} to the other`;
	const hand = { size: 10, weight: 'semibold' } as const;
	const key = `template/${id}/other`;
	// Where words stand beside the flange they leave a row above the level line; else there is room under the flange.
	const base = words === undefined ? art.y1 - 2.4 : y - 1.6;
	switch (side) {
		case 'left':
			return [
				tip(`${key}/tip`, [box.x1, y], [-1, 0]),
				write(key, text, [box.x1 - 4.5, base], { ...hand, anchor: 'end' })
			];
		case 'right':
			return [
				tip(`${key}/tip`, [box.x0, y], [1, 0]),
				words === undefined
					? write(key, text, [box.x0 + 4.5, base], hand)
					: write(key, text, [art.x0 - 2, base], { ...hand, anchor: 'end' })
			];
		case 'lower':
			return [tip(`${key}/tip`, [x, art.y0], [0, 1]), write(key, text, [x + 2.6, art.y0 + 4.6], hand)];
		case 'upper':
			return [tip(`${key}/tip`, [x, art.y1], [0, -1]), write(key, text, [x + 2.6, art.y1 - 2.4], hand)];
	}
}

/** The head of an arrow; `back` is the way its shaft lies. */
const tip = (id: string, [x, y]: Spot, [dx, dy]: Spot): Entity =>
	shape(
		id,
		'solid',
		[x, y],
		[x + 3.4 * dx + 1.4 * dy, y + 3.4 * dy + 1.4 * dx],
		[x + 3.4 * dx - 1.4 * dy, y + 3.4 * dy - 1.4 * dx]
	);

/** What it is, on which wall, and where its centre goes. */
function whereBlock(bored: Bored, on: OnTemplate, width: number): Block {
	const { set, side, at } = bored;
	const { plan, unit } = on;
	const id = `template/${bored.id}`;
	const { wall } = set.mark.place;
	const corner = cornerOf(plan.scene.room, wall);
	const head: Block = {
		height: 9.4,
		draw: (x, y) => [
			...tag(`${id}/tag`, set, [x + TAG, y + TAG], TAG),
			write(`${id}/title`, `${side} bracket, ${bored.id}`, [x + 2 * TAG + 2, y + 4.9], { size: 14, weight: 'semibold' })
		]
	};
	const along = corner.from(at[0]);
	const column = width / 2;
	const figures: Block = {
		height: on.both ? 15 : 10.4,
		draw: (x, y) =>
			[
				{ key: 'x', head: `from ${corner.side} ${corner.at}`, told: (u: LengthUnit) => exactly(along, u) },
				{ key: 'y', head: 'from datum', told: (u: LengthUnit) => exactLevel(at[1], u) }
			].flatMap(({ key, head, told }, i) => {
				const left = x + column * i;
				const other = unit === 'mm' ? 'in' : 'mm';
				return [
					write(`${id}/${key}/head`, head, [left, y + 3], { size: 8.5, tone: 'grey' }),
					write(`${id}/${key}`, told(unit), [left, y + 8.6], { size: 14, weight: 'semibold' }),
					...(on.both ? [write(`${id}/${key}/other`, told(other), [left, y + 13.4], { size: 10.5, tone: 'grey' })] : [])
				];
			})
	};
	const name = `${wallName(plan, wall)}. ${nameOf(bored, on)}`;
	return stacked(head, paragraph(`${id}/name`, name, { size: 10.5, width }), space(1.5), figures);
}

/** What the part is, and what is written on it. */
function nameOf({ set: { id, mark } }: Bored, { plan }: OnTemplate): string {
	const kind = mark.variant.kind === 'vertical-bar' ? 'Vertical bar' : 'Horizontal bar';
	const read = plan.scene.c.parts[id];
	return read ? `${kind}, read off: ${read.name}.` : `${kind}, read off.`;
}

/** Whether it may be drilled, what the flange is, how it is laid, and what it belongs to. */
function whatBlock(bored: Bored, { plan, unit }: OnTemplate, width: number): Block {
	const { flange, holes, side } = bored;
	const id = `template/${bored.id}`;
	const late = notYet(bored);
	const wide = flange.hole === undefined ? '' : ` of ${exactly(flange.hole, unit)}`;
	const axis = side === 'left' || side === 'right' ? 'level' : 'plumb';
	const says = [
		`${String(holes.length)} holes${wide} on a circle of ${exactly(2 * flange.circle, unit)}, flange ${exactly(2 * flange.radius, unit)} across.`,
		`The bar runs along the ${axis} line.`,
		'Lay it with this face toward you.'
	].join(' ');
	return stacked(
		...(late === undefined ? [] : [paragraph(`${id}/late`, late, { size: 11, weight: 'semibold', width }), space(1)]),
		paragraph(`${id}/says`, says, { size: 10, width }),
		space(1.4),
		paragraph(`${id}/ids`, idsOf(plan), { size: 8.5, tone: 'grey', width })
	);
}

/** Case, state and revision as they stand on what leaves the sheet. */
export const idsOf = ({ scene, digest }: Plan): string =>
	`${scene.c.id} \u00b7 state ${stateOf(digest)} \u00b7 revision \u2013`;
