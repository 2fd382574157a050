import type { Mark } from '#core/case/accessory.ts';
import { overlap, type Box } from '#core/drawing/entity.ts';
import type { Answer } from '#core/rules/row.ts';
import { partBox, partBoxes } from './part-box.ts';
import { circle, drawn, path, text, type Px, type Shape } from './shape.ts';
import type { ScreenView } from './screen-view.ts';
import { boxAround } from './words.ts';

/** A mark with its letter and the answer that weighs most about it. */
export interface Lettered {
	readonly mark: Mark;
	readonly letter: string;
	readonly answer: Answer;
	/** How many wishes about it are not met. */
	readonly wishes: number;
}

const RADIUS = 15;
/** How far from its part a letter stands that finds no room close by, px. */
const APART = 30;
/** How far the word under a letter goes down, px. */
const LATER = 22;

/** The letter of each mark in a balloon whose outline says the answer, on no other part and no other letter. */
export function balloonShapes(lettered: readonly Lettered[], view: ScreenView): readonly Shape[] {
	const taken: Box[] = [];
	return lettered.flatMap((one) => {
		const own = partBox(one.mark, view);
		const others = lettered.filter((other) => other !== one).flatMap(({ mark }) => partBoxes(mark, view));
		const width = 2 * RADIUS + 4;
		const height = width + (one.mark.accessory.when === 'later' ? 2 * LATER : 0);
		const wish = wishFor(one.mark, view);
		const spots = [wish, ...alongUpright(one.mark, view), ...ring(own, RADIUS + 5), ...ring(own, RADIUS + APART)];
		const free = spots.find((spot) => {
			const box = boxAround(spot, width, height);
			return isWithin(spot, view) && ![...others, ...taken].some((other) => overlap(box, other));
		});
		const at = free ?? wish;
		taken.push(boxAround(at, width, height));
		return [...leader(one.mark.accessory.id, at, partBoxes(one.mark, view)), ...balloon(one, at)];
	});
}

/** Places round a box at a distance: beside it first, then at its corners. */
function ring({ x0, y0, x1, y1 }: Box, off: number): readonly Px[] {
	const [x, y] = [(x0 + x1) / 2, (y0 + y1) / 2];
	const [left, right, high, low] = [x0 - off, x1 + off, y0 - off, y1 + off];
	const beside: readonly Px[] = [
		[right, y],
		[left, y],
		[x, high],
		[x, low]
	];
	const corners: readonly Px[] = [
		[right, high],
		[left, high],
		[right, low],
		[left, low]
	];
	return [...beside, ...corners];
}

function isWithin([x, y]: Px, { left, right, top, bottom }: ScreenView): boolean {
	return x > left + RADIUS && x < right - RADIUS && y > top + RADIUS - 4 && y < bottom - RADIUS;
}

/** A line to the part from a letter that stands off it. */
function leader(id: string, [x, y]: Px, own: readonly Box[]): readonly Shape[] {
	const off = ([u, v]: Px): number => Math.hypot(u - x, v - y);
	const [to] = own
		.map(({ x0, y0, x1, y1 }): Px => [Math.min(Math.max(x, x0), x1), Math.min(Math.max(y, y0), y1)])
		.toSorted((a, b) => off(a) - off(b));
	return !to || off(to) < RADIUS + 10 ? [] : [path(`${id}/leader`, 'fine', [[x, y], to])];
}

/** On the upright leg of an L bar, where its level part has no room. */
function alongUpright({ place, variant: { upright, length } }: Mark, view: ScreenView): readonly Px[] {
	if (!upright) return [];
	const x = place.x + (upright.at === 'left' ? 0 : length);
	return [0.45, 0.7].map((share) => view.at(x, place.y + upright.length * share));
}

function balloon({ mark, letter, answer }: Lettered, at: Px): readonly Shape[] {
	const { id } = mark.accessory;
	const [x, y] = at;
	const outline =
		answer === 'ask'
			? drawn(`${id}/balloon`, 'balloon', `M${String(x)} ${String(y - 19)}l19 19l-19 19l-19 -19Z`)
			: circle(`${id}/balloon`, `balloon balloon-${answer}`, at, RADIUS);
	const shapes = [
		outline,
		...(answer === 'borderline' ? [circle(`${id}/balloon-ring`, 'balloon-ring', at, RADIUS + 4)] : []),
		...(mark.stage === 'proposed' ? [] : heldShapes(id, at)),
		...(mark.accessory.when === 'later' ? [text(`${id}/later`, 'mid t-note halo', [x, y + 34], 'later')] : []),
		text(`${id}/letter`, `mid t-text strong${answer === 'inside' ? ' knocked' : ''}`, [x, y + 6], letter)
	];
	return shapes.map((shape) => ({ ...shape, about: id }));
}

/** A nail beside the letter: what is held, tried, agreed, marked or built does not move by itself. */
function heldShapes(id: string, [x, y]: Px): readonly Shape[] {
	return [
		drawn(`${id}/nail`, 'nail', `M${String(x + 19)} ${String(y - 19)}l-8 8`),
		circle(`${id}/nail-head`, 'ink', [x + 19, y - 19], 5)
	];
}

/** The level of the letter of a post that stands on a level and is held along a length. Units: mm. */
export const postLetterAt = (level: number, length: number): number => level + length * 0.55;

/** On a bar a third along it, beside everything else. */
function wishFor({ accessory, place, variant }: Mark, view: ScreenView): Px {
	switch (variant.kind) {
		case 'horizontal-bar':
			return view.at(place.x + variant.length * 0.3, place.y);
		case 'vertical-bar':
			return view.at(place.x, variant.stands ? postLetterAt(place.y, variant.length) : place.y + variant.length * 0.45);
		case 'seat': {
			const [x, y] = view.at(place.x, place.y);
			return [x, y + 30];
		}
		case 'control': {
			const [x, y] = view.at(place.x, place.y);
			const off = variant.outline.x1 * view.scale + 22;
			return [x + off * 0.8, y - off * 0.8];
		}
		case 'outlet':
		case 'call-cord':
		case 'fold-down-rail': {
			const [x, y] = view.at(place.x, place.y);
			return [x + Math.max(variant.outline.x1 * view.scale, 13) + 20, y];
		}
		case 'handset-rest': {
			const [x, y] = view.at(place.x, place.y);
			return accessory.purpose === 'rest-handset' ? [x, y - 66] : [x - 34, y];
		}
	}
}
