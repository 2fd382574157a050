import type { Purpose } from '#core/case/accessory.ts';
import { clientOf } from '#core/measures/client.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { paragraph, space, stacked, type Block } from '../block.ts';
import { pictured, type Box, type Entity } from '../entity.ts';
import { actingIn } from '../body/acting.ts';
import { posePicture, posesFor, type Pose } from '../body/poses.ts';
import { wallsUsed } from '../setting-out.ts';
import { nameOf, type HerItem } from './item.ts';
import type { Messages } from './messages.ts';
import { numbersOn } from './numbers.ts';
import { extent } from '../path.ts';
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
	const [pose] = posesFor(page.plan);
	const holds = (pose && actingIn(page.plan, pose)?.holds) ?? [];
	const onIt = (wall: WallId) => items.filter(({ set }) => set?.mark.place.wall === wall);
	// Beside the first pose stands the wall her hands are on there, of two the fuller one.
	const worth = (wall: WallId) => 100 * holds.filter(({ mark }) => mark.place.wall === wall).length + onIt(wall).length;
	const walls = wallsUsed(page.plan).filter((wall) => onIt(wall).length > 0);
	const [first, ...others] = posesFor(page.plan).map((pose) => ofPose(page, pose, items));
	const [faced, ...rest] = walls.toSorted((a, b) => worth(b) - worth(a)).map((wall) => ofWall(page, wall, items));
	return [...(first ? [first] : []), ...(faced ? [faced] : []), ...others, ...rest];
}

/** What a pose is about: only that and what the hands are on has its number there, so that a picture says one thing. */
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
	const held = actingIn(plan, pose)?.holds.map(({ mark }) => mark.accessory.id) ?? [];
	const turns = pose === 'helper' || clientOf(plan.scene.c).person.runsWater?.value !== 'helper';
	const about = ABOUT[pose].filter((purpose) => turns || purpose !== 'run-water');
	const shown = items.filter(({ id, set }) => set && (held.includes(id) || about.includes(set.mark.accessory.purpose)));
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
			return { entities: [...unbroken(entities, shown), ...numbers], shares: { scale, datum } };
		}
	};
}

/** What lies before who looks is drawn in whole lines: to her a dashed thing is one that is asked about. */
const unbroken = (entities: readonly Entity[], items: readonly HerItem[]): readonly Entity[] =>
	entities.map((e) => {
		const asked = items.some(({ id, state }) => id === e.about && state !== undefined);
		return e.kind === 'path' && e.layer === 'folded' && !asked ? { ...e, layer: 'section' } : e;
	});

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

/** Two pictures side by side, or one alone in the middle. Units: mm; `height` with captions, at most: nothing is left empty above. */
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
	const drawn = (x: number, y: number): readonly Entity[] => {
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
	};
	const above = Math.min(...drawn(0, 0).flatMap((e) => (e.kind === 'path' ? [extent(e).y0] : [])));
	return { height: height - above, draw: (x, y) => drawn(x, y - above) };
}

/** What dashed and thin lines mean, where there are any, and the letters the fitter has for the numbers. */
export function keyOf({ words, width }: Page, items: readonly HerItem[]): Block {
	const { dashed, thin, letters } = words.pictures;
	const asked = items.some(({ state }) => state !== undefined && state !== 'later');
	const later = items.some(({ state }) => state === 'later');
	const pairs = items.map(({ number, letter }) => `${String(number)}\u00a0=\u00a0${letter}`).join(', ');
	return stacked(
		...(asked ? [quiet('key/dashed', dashed, width)] : []),
		...(later ? [quiet('key/thin', thin, width)] : []),
		quiet('key/letters', letters(pairs), width),
		space(3)
	);
}

/** What each picture shows, by its key. */
export const altsOf = (pictures: readonly Picture[]): Readonly<Record<string, string>> =>
	Object.fromEntries(pictures.map(({ key, alt }) => [key, alt]));
