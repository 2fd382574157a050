import type { Wall } from '#core/case/record.ts';
import { contrastOf, offSquare, SQUARE } from '#core/enclosure/setting.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { Scene } from '#core/measures/scene.ts';
import { reinforcementOf, type Reinforcement } from '#core/needs/reinforcement.ts';
import { figure, inBoth, signed, type Units } from './figure.ts';
import { asTold } from './seen.ts';
import { cornerOf } from './setting-out.ts';
import { BESIDE } from './wall-ends.ts';

/** What whoever drills a wall has to know of it as a whole: its face, what lies behind that, how it is measured along, where it is kept solid. */
export const wallSays = (scene: Scene, wall: WallId, units: Units): readonly string[] => [
	...faceSays(scene, wall, units),
	...reinforcementOf(scene)
		.filter((kept) => kept.wall === wall)
		.map((kept) => keptSays(scene.room, kept, units))
];

/** The same of its face, what lies behind that, and how it is measured along. */
export function faceSays(scene: Scene, wall: WallId, units: Units): readonly string[] {
	const {
		c: { enclosure },
		room
	} = scene;
	if (!room.walls[wall].stands) return [];
	const { facing, membrane } = enclosure.walls[wall];
	return [
		...(facing ? [facingSays(facing, units)] : []),
		...(membrane?.value
			? [`A membrane lies behind${asTold(membrane.how)}: seal inside each hole and round each bracket.`]
			: []),
		...squareSays(Math.abs(offSquare(enclosure) ?? 0), cornerName(room, wall), units)
	];
}

/** Where solid backing is kept for what a document asks for, set out like a mark. */
export const keptSays = (room: Scene['room'], { wall, rect, document, clauses }: Reinforcement, units: Units): string =>
	`Keep solid backing here, ${areaSays(room, { wall, rect }, units)} (new dwelling, ${document}, ${clauses.join(', ')}).`;

/** Where an area of a wall lies, set out like a mark. Units and frame: mm, wall frame. */
export function areaSays(
	room: Scene['room'],
	{ wall, rect }: Pick<Reinforcement, 'wall' | 'rect'>,
	units: Units
): string {
	const corner = cornerOf(room, wall);
	const ends = [corner.from(rect.x0), corner.from(rect.x1)].toSorted((a, b) => a - b);
	const along = inBoth(units, (unit) => ends.map((n) => figure(n, unit)).join(' to '));
	const up = inBoth(units, (unit) => [rect.y0, rect.y1].map((n) => signed(n, unit)).join(' to '));
	return `${along} from ${corner.at}, ${up} from datum`;
}

function facingSays({ kind, thickness, gap, tiles }: NonNullable<Wall['facing']>, units: Units): string {
	const told = (length: number): string => inBoth(units, (unit) => figure(length, unit));
	const size = tiles ? `, ${told(tiles.across)} by ${told(tiles.up)}${asTold(tiles.how)}` : '';
	const hollow = gap !== undefined && gap > 0 ? `, ${told(gap)} hollow behind it` : '';
	return `Face: ${kind} ${told(thickness)} thick${size}${hollow}.`;
}

/** Which corner, or end, a wall is measured from, in words. */
export function cornerName(room: Scene['room'], wall: WallId): string {
	const { at, side } = cornerOf(room, wall);
	return at === 'corner' ? `its corner with the ${BESIDE[wall][side]} wall` : `its ${side} end`;
}

const squareSays = (off: number, from: string, units: Units): readonly string[] =>
	off > SQUARE
		? [
				`The side walls run ${inBoth(units, (unit) => figure(off, unit))} off square: measure along this wall from ${from}, square nothing across.`
			]
		: [];

/** What a part reads in light reflectance to be seen beside a wall; empty where the wall's is not known. */
export function contrastSays(wall: Wall): string {
	const seen = contrastOf(wall);
	if (!seen) return '';
	const ends = [
		...(seen.atMost === undefined ? [] : [`${String(Math.floor(seen.atMost))} or less`]),
		...(seen.atLeast === undefined ? [] : [`${String(Math.ceil(seen.atLeast))} or more`])
	];
	return `To be seen beside this wall, a bar reads ${ends.join(', or ')}, in light reflectance (advice).`;
}
