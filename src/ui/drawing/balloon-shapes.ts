import type { Mark } from '#core/case/accessory.ts';
import type { Answer } from '#core/rules/row.ts';
import { circle, drawn, text, type Px, type Shape } from './shape.ts';
import type { ScreenView } from './screen-view.ts';

/** A mark with its letter and the answer that weighs most about it. */
export interface Lettered {
	readonly mark: Mark;
	readonly letter: string;
	readonly answer: Answer;
	/** How many wishes about it are not met. */
	readonly wishes: number;
}

const RADIUS = 15;
/** Balloons nearer than this move apart, px. */
const APART = 36;

/** The letter of each mark in a balloon whose outline says the answer. */
export function balloonShapes(lettered: readonly Lettered[], view: ScreenView): readonly Shape[] {
	const taken: Px[] = [];
	return lettered.flatMap((one) => {
		const wish = wishFor(one.mark, view);
		const at = freeOf(taken, wish, view);
		taken.push(at);
		return balloon(one, at);
	});
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
		case 'fold-down-rail': {
			const [x, y] = view.at(place.x, place.y);
			return [x + Math.max(variant.outline.x1 * view.scale, 13) + 20, y];
		}
		case 'handset-rest': {
			const [x, y] = view.at(place.x, place.y);
			return accessory.purpose === 'hang-handset' ? [x - 34, y] : [x, y - 66];
		}
	}
}

function freeOf(taken: readonly Px[], wish: Px, view: ScreenView): Px {
	const turns: readonly Px[] = [
		[0, 0],
		[APART, 0],
		[-APART, 0],
		[0, -APART],
		[0, APART],
		[APART, -APART],
		[-APART, -APART]
	];
	const tries = turns.map(([dx, dy]): Px => [wish[0] + dx, wish[1] + dy]);
	const free = tries.find(
		([x, y]) =>
			x > view.left + RADIUS &&
			x < view.right - RADIUS &&
			taken.every(([tx, ty]) => Math.hypot(tx - x, ty - y) >= APART)
	);
	return free ?? wish;
}
