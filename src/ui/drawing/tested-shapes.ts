import { bodiesOf, type Body } from '#core/body/body.ts';
import type { Side } from '#core/body/hands.ts';
import type { Person } from '#core/case/record.ts';
import { widened } from '#core/drawing/entity.ts';
import { INTO, toPlan, type WallId } from '#core/geometry/frame.ts';
import type { Scene } from '#core/measures/scene.ts';
import { easyArm, type Arm } from '#core/reach/arm.ts';
import { reachOf, type PersonArm } from '#core/reach/reach.ts';
import { slack } from '#core/reach/slack.ts';
import { isMissing, seatedPosture } from '#core/reach/station.ts';
import { backOf } from '#core/reach/taped.ts';
import { onItsLine, outlineOn, type Outline } from './outline.ts';
import type { ScreenView } from './screen-view.ts';
import { circle, drawn, type Px, type Shape } from './shape.ts';
import { datumShapes, wallShapes, wallWords } from './wall-shapes.ts';
import { covered, laidWords, type Words } from './words.ts';

/** What a reach test came to on one wall. */
export interface TestedAsked {
	readonly scene: Scene;
	/** The id of the person. */
	readonly person: string;
	readonly side: Side;
	readonly wall: WallId;
	/** Ids of points that cannot belong. */
	readonly leftOut: readonly string[];
	readonly view: ScreenView;
}

type Point = NonNullable<Person['arms'][Side]['points']>[string];

/** Mesh of the contours, mm. */
const MESH = 30;
const DOT = 6;

/** The points of one hand on a wall, in the order of their ids. */
export const pointsOn = (person: Person | undefined, side: Side, wall: WallId): readonly (readonly [string, Point])[] =>
	Object.entries(person?.arms[side].points ?? {})
		.filter(([, point]) => point.wall === wall)
		.toSorted(([a], [b]) => (a < b ? -1 : 1));

/**
 * A wall with the taped points on it, and as far as the hand goes there: before the test as a broken line, after it as a
 * drawn one, for what the first point was taped with. Where points were taped without stretching, that line too.
 */
export function testedShapes(asked: TestedAsked): readonly Shape[] {
	const { scene, wall, view } = asked;
	const side = { room: scene.room, type: scene.c.enclosure.type, wall, view };
	const points = pointsOn(scene.c.people[asked.person], asked.side, wall);
	const { before, after, easy } = outlinesOf(asked, points);
	const sides = wallShapes(side);
	const datum = datumShapes(view);
	const dots = points.map(([id, point]) => dotShape(id, point, asked));
	const lines: readonly NamedLine[] = [
		...(before ? [{ name: after ? 'before' : 'estimate', line: before }] : []),
		...(after ? [{ name: 'after', line: after }] : []),
		...(easy ? [{ name: 'comfortable', line: easy }] : [])
	];
	const words = [
		...points.map(([id, point]) => letterWords(id, point, asked)),
		...lines.map(nameOn),
		...wallWords(side)
	];
	return [
		...(after ? [drawn('tested/field', 'stretched', after.d)] : []),
		...sides,
		...(before ? [drawn('tested/before', 'hidden', before.d)] : []),
		...(easy ? [drawn('tested/easy', 'fine', easy.d)] : []),
		...(after ? [drawn('tested/after', 'line', after.d)] : []),
		...datum,
		...dots,
		...laidWords(words, covered([...sides, ...datum, ...dots]))
	];
}

interface NamedLine {
	readonly name: string;
	readonly line: Outline;
}

const nameOn = ({ name, line }: NamedLine, _: number, all: readonly NamedLine[]): Words =>
	onItsLine(
		{ id: `tested/${name}-words`, tone: name === 'after' ? 'ink' : 'soft', name },
		line,
		all.flatMap((other) => (other.line === line ? [] : [other.line]))
	);

interface Outlines {
	readonly before?: Outline | undefined;
	readonly after?: Outline | undefined;
	readonly easy?: Outline | undefined;
}

function outlinesOf({ scene, person, side, wall, view }: TestedAsked, points: ReturnType<typeof pointsOn>): Outlines {
	const { c, room, arms, bodies } = scene;
	const sat = c.people[person]?.reachTest;
	const estimated = bodiesOf(c.people);
	if (!sat) return {};
	const [, first] = points[0] ?? [];
	const off = first?.hand === 'grip' ? first.off : 0;
	const lineOf = (body: Body | undefined, arm: Arm | null | undefined): Outline | undefined => {
		if (!body || !arm) return undefined;
		const seated = { body, side, backPlanePoint: backOf(sat, room), facing: INTO[sat.behind], sittingForward: 0 };
		const posture = seatedPosture(seated);
		if (isMissing(posture)) return undefined;
		const at = (x: number, y: number) =>
			slack(arm, posture, toPlan(wall, [x, y], off, room.footprint), first?.hand ?? 'fingertip');
		return outlineOn(room.walls[wall], at, { view, mesh: MESH });
	};
	const guess: PersonArm | null | undefined = reachOf(estimated)[person]?.[side];
	const [body, arm] = [bodies[person], arms[person]?.[side]];
	const before = lineOf(estimated[person], guess);
	if (!body?.arms[side].tested || !arm) return { before };
	const unstretched = points.some(([, { reach }]) => reach === 'comfortable');
	return { before, after: lineOf(body, arm), easy: unstretched ? lineOf(body, easyArm(arm)) : undefined };
}

/** A dot just reached, a ring where it was comfortable, a cross what cannot belong. */
function dotShape(id: string, { x, y, reach }: Point, { view, leftOut }: TestedAsked): Shape {
	const at = view.at(x, y);
	if (leftOut.includes(id)) return drawn(`tested/${id}`, 'line', cross(at));
	return circle(`tested/${id}`, reach === 'just' ? 'ink' : 'thing', at, DOT);
}

const cross = ([x, y]: Px): string =>
	[1, -1]
		.map((way) => `M${String(x - DOT)} ${String(y - way * DOT)}L${String(x + DOT)} ${String(y + way * DOT)}`)
		.join('');

function letterWords(id: string, { x, y }: Point, { scene, wall, view }: TestedAsked): Words {
	const [px, py] = view.at(x, y);
	const beside = 9 + DOT;
	const { from, to } = scene.room.walls[wall];
	return {
		id: `tested/${id}-words`,
		tone: 'ink',
		says: [id],
		wishes: [
			[px + beside, py],
			[px - beside, py],
			[px, py - beside],
			[px, py + beside]
		],
		within: widened({ x0: view.x(from), y0: view.top, x1: view.x(to), y1: view.bottom }, 2 * beside)
	};
}
