import { INTO, toPlan, wallLength } from '#core/geometry/frame.ts';
import { add, dot, leftOf, less, size, times, type Vec } from '#core/geometry/vec.ts';
import type { Case, Person, Problem } from './record.ts';
import { footprintOf } from './size.ts';

type Side = keyof Person['arms'];
type Point = NonNullable<Person['arms'][Side]['points']>[string];
type SatAt = NonNullable<Person['reachTest']>;

/** A point taped without stretching lies no farther than this beyond one just reached. Units: mm. Ours. */
const FARTHER = 25;
/** Two points within this angle, seen from the shoulder, were reached the same way. Units: degrees. Ours. */
const SAME_WAY = 10;
/** Near enough to tell one direction from another, where nobody measured. Units: mm. Source: survey means of both sexes. */
const SHOULDER = { ahead: 80, breadth: 390, above: 590 } as const;

/** Taped points that cannot be where they are recorded, each with its path. */
export function mistaped(c: Case): Problem[] {
	return Object.entries(c.people).flatMap(([id, person]) => {
		const path = `people.${id}`;
		const { reachTest } = person;
		const sides = (['left', 'right'] as const).filter((side) => pointsOf(person, side).length > 0);
		if (!reachTest) {
			if (sides.length === 0) return [];
			return [{ path: `${path}.reachTest`, says: 'expected where she sat while points were taped - saw nothing' }];
		}
		return [
			...satOff(c, reachTest).map((says) => ({ path: `${path}.reachTest`, says })),
			...sides.flatMap((side) => {
				const points = pointsOf(person, side);
				const shoulder = roughShoulder(c, person, { side, reachTest });
				return [...points.flatMap(([, point]) => pointOff(c, point)), ...tooFar(c, points, shoulder)].map(
					({ of, says }) => ({ path: `${path}.arms.${side}.points.${nameOf(points, of)}`, says })
				);
			})
		];
	});
}

interface Wrong {
	readonly of: Point;
	readonly says: string;
}

const pointsOf = (person: Person, side: Side): readonly (readonly [string, Point])[] =>
	Object.entries(person.arms[side].points ?? {});

const nameOf = (points: readonly (readonly [string, Point])[], of: Point): string =>
	points.find(([, point]) => point === of)?.[0] ?? '';

function satOff({ enclosure }: Case, { behind, x, off }: SatAt): string[] {
	const room = footprintOf(enclosure);
	if (!enclosure.walls[behind].stands) return [`expected a wall behind her that stands - saw "${behind}"`];
	const [along, ahead] = [wallLength(behind, room), room.width + room.depth - wallLength(behind, room)];
	if (x <= along && off < ahead) return [];
	const says = `expected her back in the room, ${String(along)} along the ${behind} wall and ${String(ahead)} from it`;
	return [`${says} - saw ${String(x)}, ${String(off)}`];
}

/** The bathroom floor at the entry. Units: mm from the datum line. */
const floorOf = ({ enclosure: e }: Case): number => (e.floorToCome?.value ?? 0) - (e.datum?.value ?? 0);

function pointOff(c: Case, point: Point): Wrong[] {
	const { wall, x, y } = point;
	const { walls, height, floorRise } = c.enclosure;
	if (!walls[wall].stands) return [{ of: point, says: `expected a wall that stands - saw "${wall}"` }];
	const length = wallLength(wall, footprintOf(c.enclosure));
	const low = floorOf(c) + Math.min(0, floorRise?.value ?? 0);
	const high = floorOf(c) + height.value;
	if (x <= length && y >= low && y <= high) return [];
	const range = `0 to ${String(length)} along it, ${String(low)} to ${String(high)} from the datum line`;
	return [{ of: point, says: `expected it on its wall, ${range} - saw ${String(x)}, ${String(y)}` }];
}

/** About where the shoulder was. Units and frame: mm, plan frame. */
function roughShoulder(c: Case, { body }: Person, at: { side: Side; reachTest: SatAt }): Vec {
	const { behind, x, off, seatHeight, floor } = at.reachTest;
	const rise = floor === 'shower' ? (c.enclosure.floorRise?.value ?? 0) : 0;
	const up = floorOf(c) + rise + seatHeight + (body.shoulderAboveSeat?.value ?? SHOULDER.above);
	const half = (body.shoulderBreadth?.value ?? SHOULDER.breadth) / 2;
	const back = toPlan(behind, [x, up], off + SHOULDER.ahead, footprintOf(c.enclosure));
	return add(back, times(leftOf(INTO[behind]), at.side === 'left' ? half : -half));
}

/** Points taped without stretching that lie farther than one just reached the same way, with the same kind of hand. */
function tooFar(c: Case, points: readonly (readonly [string, Point])[], shoulder: Vec): Wrong[] {
	const room = footprintOf(c.enclosure);
	const from = (p: Point): Vec => less(toPlan(p.wall, [p.x, p.y], p.hand === 'grip' ? p.off : 0, room), shoulder);
	return points.flatMap(([, comfortable]): Wrong[] => {
		if (comfortable.reach !== 'comfortable') return [];
		const way = from(comfortable);
		const beyond = points.flatMap(([name, just]) => {
			if (just.reach !== 'just' || just.hand !== comfortable.hand) return [];
			const other = from(just);
			const cosine = dot(way, other) / (size(way) * size(other));
			const farther = size(way) - size(other);
			return cosine > Math.cos((SAME_WAY * Math.PI) / 180) && farther > FARTHER ? [{ name, farther }] : [];
		});
		const [first] = beyond;
		if (!first) return [];
		const says = `expected it no farther than "${first.name}", just reached the same way - saw it ${first.farther.toFixed(0)} farther`;
		return [{ of: comfortable, says }];
	});
}
