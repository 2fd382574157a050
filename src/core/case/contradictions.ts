import { wallLength, type WallId } from '#core/geometry/frame.ts';
import type { Rect } from '#core/geometry/vec.ts';
import { PLACEABLE, VARIANTS } from './accessory.ts';
import type { Case, Problem, Wall } from './record.ts';
import { isReadable } from './read-off.ts';
import { misbuilt } from './misbuilt.ts';
import { mistaped } from './mistaped.ts';
import { mayGo, sidesOf } from './roles.ts';
import { footprintOf, LEANING, leaningOf } from './size.ts';

/** A wall beside the entry leaves at least this open. Units: mm. Ours. */
const LEAST_ENTRY = 300;
/** Taped sides and diagonals close to within this. Units: mm. Ours. */
const CLOSING = 25;
/** Studs side by side may be measured this much into one another. Units: mm. Ours. */
const TOUCHING = 2;

/** What parts of a record say against one another, each with its path, what was expected and what was seen. */
export function contradictions(c: Case): readonly Problem[] {
	const { walls } = c.enclosure;
	const room = footprintOf(c.enclosure);
	const behind = (Object.entries(walls) as [WallId, Wall][]).flatMap(([id, wall]) => {
		const on = { path: `enclosure.walls.${id}`, length: wallLength(id, room) };
		return [...offWall(wall, on), ...overlapping(wall, on.path)];
	});
	return [...behind, ...unmade(c), ...misplaced(c), ...misread(c), ...misbuilt(c), ...mistaped(c)];
}

/** Areas that end before they begin, and what lies beyond its wall. */
function offWall(wall: Wall, { path, length }: { readonly path: string; readonly length: number }): Problem[] {
	const range = `0 to ${String(length)} along it`;
	const areas = (['backing', 'keepOuts', 'existing'] as const).flatMap((group) =>
		Object.entries<Rect>(wall[group]).flatMap(([name, r]): Problem[] => {
			const here = `${path}.${group}.${name}`;
			const seen = `x0 ${String(r.x0)}, x1 ${String(r.x1)}, y0 ${String(r.y0)}, y1 ${String(r.y1)}`;
			if (r.x0 >= r.x1 || r.y0 >= r.y1) {
				return [{ path: here, says: `expected x0 less than x1 and y0 less than y1 - saw ${seen}` }];
			}
			if (r.x1 > 0 && r.x0 < length) return [];
			return [{ path: here, says: `expected some of it on its wall, ${range} - saw ${seen}` }];
		})
	);
	const studs = Object.entries(wall.studs)
		.filter(([, { x }]) => x > length)
		.map(([name, { x }]) => ({
			path: `${path}.studs.${name}.x`,
			says: `expected the middle of a stud on its wall, ${range} - saw ${String(x)}`
		}));
	return [...areas, ...studs];
}

/** Two studs in one place, and two pieces of one kind of wood in one place that are not equally thick. */
function overlapping({ studs, backing }: Wall, path: string): Problem[] {
	const problems: Problem[] = [];
	const all = Object.entries(studs);
	for (const [i, [name, one]] of all.entries()) {
		const other = all.slice(0, i).find(([, o]) => Math.abs(o.x - one.x) < (o.width + one.width) / 2 - TOUCHING);
		if (!other) continue;
		const seen = `saw ${String(one.x)} and, of "${other[0]}", ${String(other[1].x)}`;
		problems.push({ path: `${path}.studs.${name}.x`, says: `expected studs beside one another - ${seen}` });
	}
	const wood = Object.entries(backing).flatMap(([name, b]) =>
		b.kind === 'sheet' || b.kind === 'blocking' ? [{ name, ...b }] : []
	);
	for (const [i, one] of wood.entries()) {
		const other = wood.slice(0, i).find((o) => o.kind === one.kind && o.thickness !== one.thickness && meet(o, one));
		if (!other) continue;
		const seen = `saw ${String(one.thickness)} and, of "${other.name}", ${String(other.thickness)}`;
		problems.push({
			path: `${path}.backing.${one.name}.thickness`,
			says: `expected one thickness in one place - ${seen}`
		});
	}
	return problems;
}

const meet = (a: Rect, b: Rect): boolean => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1;

/** A room without the walls its words name. */
function unmade({ enclosure: room }: Case): Problem[] {
	const { walls, frontWall, seatWall } = room;
	const { width } = footprintOf(room);
	const problems: Problem[] = [...unclosed(room), ...leaning(room), ...undrained(room)];
	if (!walls[seatWall].stands) {
		problems.push({ path: 'enclosure.seatWall', says: `expected a wall that stands - saw "${seatWall}"` });
	}
	if (walls.front.stands && frontWall && frontWall.length.value > width - LEAST_ENTRY) {
		const seen = `saw ${String(frontWall.length.value)} in a room ${String(width)} wide`;
		problems.push({
			path: 'enclosure.frontWall.length',
			says: `expected a wall that leaves an entry of at least ${String(LEAST_ENTRY)} - ${seen}`
		});
	}
	if (walls.front.stands && !frontWall) {
		problems.push({ path: 'enclosure.frontWall', says: 'expected side and length of the wall beside the entry' });
	}
	return problems;
}

/** In a room with equal opposite sides the squares of the diagonals sum to those of the four sides. Source: parallelogram law. */
function unclosed(e: Case['enclosure']): Problem[] {
	const { diagonals } = e;
	if (!diagonals) return [];
	const mean = Math.sqrt((diagonals.fromLeft.value ** 2 + diagonals.fromRight.value ** 2) / 2);
	const due = Math.hypot((e.widthLow ?? e.width).value, (e.depthLow ?? e.depth).value);
	if (Math.abs(mean - due) <= CLOSING) return [];
	const seen = `saw ${String(diagonals.fromLeft.value)} and ${String(diagonals.fromRight.value)}`;
	const says = `expected diagonals about ${due.toFixed(0)}, as width and depth make them - ${seen}`;
	return [{ path: 'enclosure.diagonals', says }];
}

/** Sizes at several heights that cannot be of one room. */
function leaning(e: Case['enclosure']): Problem[] {
	const off = leaningOf(e);
	return (['width', 'depth'] as const)
		.filter((way) => off[way] > LEANING)
		.map((way) => ({
			path: `enclosure.${way}`,
			says: `expected it within ${String(LEANING)} at every height - saw them differ by ${String(off[way])}`
		}));
}

/** A drain beyond the floor. */
function undrained(e: Case['enclosure']): Problem[] {
	const { drain } = e;
	const { width, depth } = footprintOf(e);
	if (!drain || (drain.x <= width && drain.y <= depth)) return [];
	const says = `expected its middle on the floor, ${String(width)} by ${String(depth)} - saw ${String(drain.x)}, ${String(drain.y)}`;
	return [{ path: 'enclosure.drain', says }];
}

/** Parts read off for what has no real part to read, and flanges that no drill makes. */
function misread({ parts }: Case): Problem[] {
	return Object.entries(parts).flatMap(([id, { flange, standOff, diameter }]): Problem[] => {
		const path = `parts.${id}`;
		const kind = Object.hasOwn(PLACEABLE, id) ? PLACEABLE[id]?.kind : undefined;
		if (!kind || !isReadable(kind)) return [{ path, says: `expected a bar of this plan - saw "${id}"` }];
		const { across, circle, hole } = flange;
		if (circle + hole > across) {
			const says = `expected holes of ${String(hole)} inside a flange ${String(across)} across - saw them on a circle of ${String(circle)}`;
			return [{ path: `${path}.flange.circle`, says }];
		}
		if (standOff > diameter / 2) return [];
		const says = `expected its axis in front of the wall by more than half its thickness - saw ${String(standOff)}`;
		return [{ path: `${path}.standOff`, says }];
	});
}

/** Given places that name nothing a plan has, a part of another kind, or a wall the thing is not meant for. */
function misplaced({ places, enclosure }: Case): Problem[] {
	return Object.entries(places).flatMap(([id, { variant, wall }]) => {
		const meant = Object.hasOwn(PLACEABLE, id) ? PLACEABLE[id] : undefined;
		if (!meant) {
			return [{ path: `places.${id}`, says: `expected one of ${Object.keys(PLACEABLE).join(', ')} - saw "${id}"` }];
		}
		const part = VARIANTS.find((v) => v.id === variant && v.kind === meant.kind);
		if (!part) {
			const says = `expected the id of a part of kind ${meant.kind} - saw "${variant}"`;
			return [{ path: `places.${id}.variant`, says }];
		}
		const sides = [...new Set(meant.walls.flatMap((role) => sidesOf(enclosure, role)))];
		const walls = sides.filter((side) => mayGo(part, side, enclosure));
		if (walls.includes(wall)) return [];
		const may = walls.length > 0 ? `the ${walls.join(' or ')} wall` : 'no place for it in this enclosure';
		return [{ path: `places.${id}.wall`, says: `expected ${may} - saw "${wall}"` }];
	});
}
