import { bodiesOf, type Body } from '#core/body/body.ts';
import { person } from '#core/case/person.ts';
import type { Vec } from '#core/geometry/vec.ts';
import { armFrom, easyArm, type Arm, type ArmSpec, type ReachKind } from '#core/reach/arm.ts';
import { MOVABLE, priorOf, type Prior } from '#core/reach/prior.ts';
import { reachOf } from '#core/reach/reach.ts';
import { slack, type Posture } from '#core/reach/slack.ts';
import type { Taped } from '#core/reach/taped.ts';

/** A value somebody told. */
export const told = <T>(value: T) => ({ value, how: 'told' });

/** A body of 1600 and 74 years, estimated, with what differs. */
export function bodyOf(input: object = {}): Body {
	const who = { role: 'client', sex: told('female'), age: told(74), body: { stature: told(1600) } };
	const body = bodiesOf({ one: person.parse({ ...who, ...input }) })['one'];
	if (!body) throw new Error('no body');
	return body;
}

/** The left arm of a body and what is known of it before its points. */
export function armOf(body: Body): { readonly spec: ArmSpec; readonly prior: Prior } {
	const spec = reachOf({ one: body })['one']?.left;
	if (!spec) throw new Error('no arm');
	return { spec, prior: priorOf(body, 'left', spec) };
}

/** A known arm of a known sitter, in the frame of her seat. */
export interface Truth {
	readonly arm: Arm;
	readonly posture: Posture;
}

/** The arm that values of MOVABLE make. */
export function truthOf(spec: ArmSpec, values: readonly number[]): Truth {
	const of = (name: (typeof MOVABLE)[number]) => values[MOVABLE.indexOf(name)] ?? NaN;
	const range = { ...spec.range, flexion: of('flexion'), abduction: of('abduction') };
	return {
		arm: armFrom({ ...spec, upper: of('upper'), fore: of('fore'), range, easy: of('easy') }),
		posture: { shoulder: [of('ahead'), of('outward'), of('up')], forward: [1, 0, 0], side: 'right' }
	};
}

/** Where a hand that goes from a place in a direction stops, starting where it is still reached. */
function stop({ arm, posture }: Truth, from: Vec, way: Vec, kind: ReachKind): Vec {
	const at = (t: number): Vec => [from[0] + way[0] * t, from[1] + way[1] * t, from[2] + way[2] * t];
	const inside = (t: number) => slack(arm, posture, at(t), kind) >= 0;
	if (!inside(0)) throw new Error('it starts out of reach');
	let [near, far] = [0, 1500 / Math.hypot(...way)];
	for (let i = 0; i < 60; i++) {
		const middle = (near + far) / 2;
		if (inside(middle)) near = middle;
		else far = middle;
	}
	return at(near);
}

/** A point taped exactly where the hand stops, going out from a place well below and ahead of the shoulder. */
export function taped(truth: Truth, id: string, way: Vec, rest: Partial<Taped> = {}): Taped {
	const { shoulder } = truth.posture;
	const from: Vec = [shoulder[0] + 280, shoulder[1] + 80, shoulder[2] - 270];
	const one: Taped = { id, at: from, reach: 'just', hand: 'fingertip', sd: 21, ...rest };
	const arm = one.reach === 'just' ? truth.arm : easyArm(truth.arm);
	return { ...one, at: stop({ ...truth, arm }, from, way, one.hand) };
}

/** Ways that spread over what an arm reaches. */
const WAYS: Readonly<Record<string, Vec>> = {
	ahead: [1, 0, 0.4],
	down: [0.3, 0, -1],
	out: [0.1, 1, 0.2],
	'out-low': [0.4, 0.6, -0.8],
	'ahead-in': [1, -0.5, -0.1]
};

/** One point each of WAYS. */
export const round = (truth: Truth, rest: Partial<Taped> = {}): readonly Taped[] =>
	Object.entries(WAYS).map(([id, way]) => taped(truth, id, way, rest));
