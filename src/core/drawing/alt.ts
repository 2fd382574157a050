import type { DrawnWall } from './drawn-wall.ts';
import { figure, partName, signed } from './figure.ts';
import { aboveFloor, cornerOf, hasLevel, wallName, type SetOut } from './setting-out.ts';
import { scaleName } from './view.ts';

/**
 * The drawing of a wall in words, for who cannot see it: wall, scale, and each mark with its letter, its name and where
 * the points lie that are set out, in the order of the letters.
 * Units: those of the sheet.
 */
export function wallAlt(on: DrawnWall): string {
	const { plan, wall, sets, unit, view } = on;
	const name = wallName(plan, wall);
	const corner = cornerOf(plan.scene.room, wall);
	const scale = `Drawing of the ${name[0]?.toLowerCase() ?? ''}${name.slice(1)}, ${scaleName(view.scale, unit)}.`;
	if (sets.length === 0) return `${scale} No mark is on it.`;
	const from = `Figures count from the ${corner.at} at the ${corner.side} and from the datum line.`;
	return [scale, from, ...sets.map((set) => markSays(set, on))].join(' ');
}

function markSays(set: SetOut, { plan, wall, unit }: DrawnWall): string {
	const { room } = plan.scene;
	const { at, from } = cornerOf(room, wall);
	const points = set.points.map((point) => {
		const [x, y] = point;
		const above = figure(aboveFloor(room, set, point), unit);
		const level = hasLevel(set) ? `, ${signed(y, unit)} from the datum line, ${above} above the floor` : '';
		return `${figure(from(x), unit)} from the ${at}${level}`;
	});
	const state = set.later ? ', for later' : set.open ? ', open' : '';
	return `${set.letter}, ${partName(set.mark, unit)}${state}: ${points.join('; ')}.`;
}

/** The plan of the room beside a wall's drawing in words. */
export const keyAlt = ({ wall }: Pick<DrawnWall, 'wall'>): string =>
	`The room from above, not to scale, with the ${wall} wall drawn heavy.`;
