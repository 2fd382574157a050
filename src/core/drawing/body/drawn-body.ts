import { bodiesOf, type Body } from '#core/body/body.ts';
import { person as personSchema } from '#core/case/person.ts';
import type { Scene } from '#core/measures/scene.ts';
import type { Plan } from '#core/plan.ts';
import { reachOf, type PersonArm } from '#core/reach/reach.ts';
import { BEFORE_BACK } from '#core/reach/station.ts';

/** Whose size a figure has: the person's own, or nobody's. */
export type Whose = 'own' | 'neutral';

/** Lengths a figure is drawn from beside its arms. Units: mm, between the middles of joints. */
interface Lengths {
	readonly thigh: number;
	readonly shank: number;
	/** Hip to shoulder, sitting. */
	readonly trunk: number;
	/** Shoulder to the middle of the head. */
	readonly head: number;
}

/** A body ready to be drawn, in a scene that knows no other size of it. */
export interface DrawnBody {
	readonly whose: Whose;
	/** Drawn dashed: lengths that count on a seat, or on her feet, are only estimated. */
	readonly sketched: { readonly sitting: boolean; readonly standing: boolean };
	readonly scene: Scene;
	readonly id: string;
	readonly body: Body;
	readonly arms: { readonly left: PersonArm; readonly right: PersonArm };
	readonly lengths: Lengths;
}

/** Middle of the hip above the seat, as reach has it. */
const HIP = 90;
/** Middle of the knee above the hollow under it, and ahead of it. Ours. */
const KNEE = { above: 65, ahead: 20 };
/** Middle of the ankle above the sole. */
export const ANKLE = 75;
/** Top of the head above its middle. */
export const SKULL = 84;

/**
 * Nobody: the means of a published survey, women and men alike, so that nothing of a person is told by it.
 * Source: ANSUR II 2012, see body/survey.ts.
 */
const NOBODY = personSchema.parse({ role: 'household' });

/** The body a figure is drawn after: hers with her yes and every length known or estimated, else nobody's. */
export function drawnBody({ scene }: Pick<Plan, 'scene'>, id: string): DrawnBody | undefined {
	const own = scene.c.people[id]?.ownFigure?.value === true ? ownBody(scene, id) : undefined;
	return own ?? neutralBody(scene, id);
}

function ownBody(scene: Scene, id: string): DrawnBody | undefined {
	const [body, arms] = [scene.bodies[id], scene.arms[id]];
	if (!body || !arms?.left || !arms.right) return undefined;
	const lengths = lengthsOf(body);
	if (!lengths) return undefined;
	const { dims } = body;
	const guessed = (...hows: readonly (string | undefined)[]) =>
		[...hows, arms.left?.how, arms.right?.how].some((how) => how === 'estimated' || how === 'assumed');
	const sketched = {
		sitting: guessed(dims.shoulderAboveSeat?.how, dims.popliteal?.how),
		standing: guessed(dims.shoulderStanding?.how)
	};
	return { whose: 'own', sketched, scene, id, body, arms: { left: arms.left, right: arms.right }, lengths };
}

function neutralBody(scene: Scene, id: string): DrawnBody | undefined {
	const bodies = bodiesOf({ [id]: NOBODY });
	const reach = reachOf(bodies);
	const [body, arms] = [bodies[id], reach[id]];
	const lengths = body && lengthsOf(body);
	if (!lengths || !arms?.left || !arms.right) return undefined;
	const alone: Scene = {
		...scene,
		c: { ...scene.c, people: { ...scene.c.people, [id]: NOBODY } },
		bodies: { ...scene.bodies, ...bodies },
		arms: { ...scene.arms, ...reach }
	};
	return {
		whose: 'neutral',
		sketched: { sitting: false, standing: false },
		scene: alone,
		id,
		body,
		arms: { left: arms.left, right: arms.right },
		lengths
	};
}

function lengthsOf({ dims }: Body): Lengths | undefined {
	const { popliteal, buttockPopliteal, shoulderAboveSeat, sittingHeight, shoulderBreadth } = dims;
	if (!popliteal || !buttockPopliteal || !shoulderAboveSeat || !sittingHeight || !shoulderBreadth) return undefined;
	return {
		thigh: buttockPopliteal.value + KNEE.ahead - BEFORE_BACK,
		shank: popliteal.value + KNEE.above - ANKLE,
		trunk: shoulderAboveSeat.value - HIP,
		// A slump lowers the shoulder and the head alike.
		head: Math.max(180, sittingHeight.value - shoulderAboveSeat.value - SKULL)
	};
}
