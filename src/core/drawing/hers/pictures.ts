import type { Purpose } from '#core/case/accessory.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { paragraph, space, stacked, type Block } from '../block.ts';
import { pictured, type Box, type Entity } from '../entity.ts';
import { posePicture, posesFor, type Pose } from '../body/poses.ts';
import { wallsUsed } from '../setting-out.ts';
import { nameOf, type HerItem } from './item.ts';
import type { Messages } from './messages.ts';
import { numbersOn } from './numbers.ts';
import { quiet, SIZE, type Page } from './page.ts';
import { wallPicture, type Neighbour } from './wall-picture.ts';
import { whereIs } from './where.ts';

interface Drawn {
	readonly entities: readonly Entity[];
	/** What the picture beside it can share with it. */
	readonly shares?: Neighbour;
}

/** One picture with its caption, and what it shows for who cannot see it. */
export interface Picture {
	readonly key: string;
	readonly caption: string;
	readonly alt: string;
	/** Drawn into a box; beside another picture at its scale and level where it fits so. */
	readonly draw: (box: Box, neighbour?: Neighbour) => Drawn;
}

/** Every picture of a plan: the first two belong side by side on the first page. */
export function picturesOf(page: Page, items: readonly HerItem[]): readonly Picture[] {
	const walls = wallsUsed(page.plan)
		.filter((wall) => items.some(({ set }) => set?.mark.place.wall === wall))
		.map((wall) => ofWall(page, wall, items));
	const [first, ...others] = posesFor(page.plan).map((pose) => ofPose(page, pose, items));
	const [faced, ...rest] = walls;
	return [...(first ? [first] : []), ...(faced ? [faced] : []), ...others, ...rest];
}

/** What a pose is about: only that has its number there, so that a picture says one thing. */
const ABOUT: Readonly<Record<Pose, readonly Purpose[]>> = {
	sitting: ['sit', 'run-water', 'steady', 'sit-steady', 'hold-ahead'],
	standing: ['run-water', 'steady'],
	rising: ['sit', 'rise', 'push-up'],
	stepping: ['step-in', 'step-out'],
	helper: ['run-water', 'set-temperature', 'divert']
};

function ofPose({ plan, words }: Page, pose: Pose, items: readonly HerItem[]): Picture {
	const key = `pose-${pose}`;
	const caption = words.pictures.poses[pose];
	const shown = items.filter(({ set }) => set && ABOUT[pose].includes(set.mark.accessory.purpose));
	return {
		key,
		caption,
		alt: altOf(caption, shown, words),
		draw: (box) => {
			const { entities, points, covers, scale, datum } = posePicture(plan, pose, box, key, 'any');
			const things = points.map(({ about, at: [x, y] }) => ({ id: about, on: { x0: x, y0: y, x1: x, y1: y } }));
			const figure = entities.filter((e) => e.id.startsWith(`${key}/figure`));
			// The first cover is a box round the whole figure; its outline leaves more room.
			const numbers = numbersOn(things, shown, { taken: covers.slice(1), box, id: key, figure });
			return { entities: [...entities, ...numbers], shares: { scale, datum } };
		}
	};
}

function ofWall({ plan, words }: Page, wall: WallId, items: readonly HerItem[]): Picture {
	const key = `wall-${wall}`;
	const caption = words.pictures.walls[whereIs(plan, wall)];
	const shown = items.filter(({ set }) => set?.mark.place.wall === wall);
	return {
		key,
		caption,
		alt: altOf(caption, shown, words),
		draw: (box, neighbour) => ({
			entities: wallPicture(plan, wall, { items, box, id: key, ...(neighbour && { neighbour }) })
		})
	};
}

const altOf = (caption: string, shown: readonly HerItem[], words: Messages): string =>
	`${caption}: ${shown.map((item) => `${String(item.number)} ${nameOf(item, words)}`).join(', ')}.`;

/** Between two pictures, and from a picture to its caption. Units: mm. */
const GAP = 12;
const OVER = 2;

/** Two pictures side by side, or one alone in the middle. Units: mm; `height` with captions. */
export function row(pictures: readonly Picture[], width: number, height: number): Block {
	const wide = (width - GAP) / 2;
	const captions = pictures.map(({ key, caption }) =>
		paragraph(`${key}/caption`, caption, {
			size: SIZE.small,
			tone: 'grey',
			width: wide,
			leading: 1.25,
			anchor: 'middle'
		})
	);
	const under = Math.max(...captions.map((caption) => caption.height));
	const first = pictures.length === 1 ? (width - wide) / 2 : 0;
	return {
		height,
		draw: (x, y) => {
			const boxOf = (i: number): Box => {
				const left = x + first + i * (wide + GAP);
				return { x0: left, y0: y, x1: left + wide, y1: y + height - under - OVER };
			};
			// The first of a row is as large as it can be; what stands beside it shares its floor where it can.
			const shares = pictures[0]?.draw(boxOf(0)).shares;
			return pictures.flatMap(({ key, draw }, i) => {
				const box = boxOf(i);
				const caption = captions[i]?.draw((box.x0 + box.x1) / 2, box.y1 + OVER) ?? [];
				return [...pictured(key, draw(box, i === 0 ? undefined : shares).entities), ...caption];
			});
		}
	};
}

/** What dashed and thin lines mean, where there are any, and the letters the fitter has for the numbers. */
export function keyOf({ words, width }: Page, items: readonly HerItem[]): Block {
	const { dashed, thin, letters } = words.pictures;
	const asked = items.some(({ state }) => state !== undefined && state !== 'later');
	const later = items.some(({ state }) => state === 'later');
	const pairs = items.map(({ number, letter }) => `${String(number)}\u00a0=\u00a0${letter}`).join(', ');
	return stacked(
		space(3),
		...(asked ? [quiet('key/dashed', dashed, width)] : []),
		...(later ? [quiet('key/thin', thin, width)] : []),
		quiet('key/letters', letters(pairs), width)
	);
}

/** What each picture shows, by its key. */
export const altsOf = (pictures: readonly Picture[]): Readonly<Record<string, string>> =>
	Object.fromEntries(pictures.map(({ key, alt }) => [key, alt]));
