import { variantOf, type Accessory, type Mark, type Place } from '#core/case/accessory.ts';
import type { Case, Person } from '#core/case/record.ts';
import { asRead } from '#core/case/read-off.ts';
import { footprintOf } from '#core/case/size.ts';
import { mirroredEnclosure } from './mirror.ts';
import { mirroredWall, wallLength, type Footprint } from '#core/geometry/frame.ts';
import { mm } from '#core/units/length.ts';

const OTHER = { left: 'right', right: 'left', both: 'both', neither: 'neither' } as const;

function sided<T extends { readonly value: keyof typeof OTHER }>(fact: T | undefined): T | undefined {
	return fact && { ...fact, value: OTHER[fact.value] };
}

type Abilities = Pick<Person, 'weakerSide' | 'movesIn' | 'movesOut' | 'overlooks'>;

function mirroredAbilities(p: Abilities): Abilities {
	const [weakerSide, movesIn, movesOut] = [sided(p.weakerSide), sided(p.movesIn), sided(p.movesOut)];
	const overlooks = sided(p.overlooks);
	return {
		...(weakerSide && { weakerSide }),
		...(movesIn && { movesIn }),
		...(movesOut && { movesOut }),
		...(overlooks && { overlooks })
	};
}

/** An arm with the points it was seen to reach. */
function mirroredArm({ points, ...arm }: Person['arms']['left'], room: Footprint): Person['arms']['left'] {
	if (!points) return arm;
	const each = Object.entries(points).map(([id, p]) => [
		id,
		{ ...p, wall: mirroredWall(p.wall), x: mm(wallLength(p.wall, room) - p.x) }
	]);
	return { ...arm, points: Object.fromEntries(each) as typeof points };
}

function mirroredTest(test: Person['reachTest'], room: Footprint): Pick<Person, 'reachTest'> {
	if (!test) return {};
	const { behind, x } = test;
	return { reachTest: { ...test, behind: mirroredWall(behind), x: mm(wallLength(behind, room) - x) } };
}

const mirroredPerson = (p: Person, room: Footprint): Person => ({
	...p,
	arms: { left: mirroredArm(p.arms.right, room), right: mirroredArm(p.arms.left, room) },
	...mirroredTest(p.reachTest, room),
	...mirroredAbilities(p),
	...(p.later && { later: { ...p.later, ...mirroredAbilities(p.later) } })
});

/** A place seen in a mirror. A horizontal bar is held by its left flange, so its length goes to the other side. */
export function mirroredPlace<T extends Place>(place: T, room: Footprint): T {
	const { kind, length, mirror } = variantOf(place.variant);
	const along = kind === 'horizontal-bar' ? length : 0;
	return {
		...place,
		variant: mirror ?? place.variant,
		wall: mirroredWall(place.wall),
		x: mm(wallLength(place.wall, room) - place.x - along)
	};
}

/** A mark seen in a mirror, as one of what is wanted there: its place, and its part for the other hand. */
export function mirroredMark(mark: Mark, accessory: Accessory, room: Footprint): Mark {
	const place = mirroredPlace(mark.place, room);
	return { ...mark, accessory, place, variant: variantOf(place.variant) };
}

/** The same case with left and right exchanged. Shape: doing it twice gives the case back. */
export function mirroredCase(recorded: Case): Case {
	const c = asRead(recorded);
	const room = footprintOf(c.enclosure);
	const each = <T, U>(all: Readonly<Record<string, T>>, of: (one: T) => U): Record<string, U> =>
		Object.fromEntries(Object.entries(all).map(([id, one]) => [id, of(one)]));
	return {
		...c,
		people: each(c.people, (one) => mirroredPerson(one, room)),
		enclosure: mirroredEnclosure(c.enclosure),
		places: each(c.places, (place) => mirroredPlace(place, room))
	};
}
