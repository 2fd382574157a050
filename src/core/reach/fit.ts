import { easyArm, spansOf, type Arm, type ArmSpec } from './arm.ts';
import { least, root, type Least } from './least-squares.ts';
import { MOVABLE, type Movable, type Prior } from './prior.ts';
import { coneOf, type Cone } from './shoulder.ts';
import { slack, type Posture } from './slack.ts';
import type { Taped } from './taped.ts';

/** A point that cannot belong to this arm: how far it lies off the surface the others tell. Units: mm, + inside it. */
export interface LeftOut {
	readonly id: string;
	readonly off: number;
}

/** What the points make of an arm. Shape: `mean` and `cov` as in the prior. */
export interface Fitted extends Prior {
	/** The elbow nobody recorded lifts the hand above the line of the upper arm. */
	readonly lifts: boolean;
	/** How far each point that was kept still lies off, by id. Units: mm, + inside what is reached. */
	readonly off: Readonly<Record<string, number>>;
}

/** A fit, or none where too few points go together. */
export interface Answer {
	readonly leftOut: readonly LeftOut[];
	readonly fitted: Fitted | null;
}

/** Fewer than this are not fitted. Source: house rules of the reach test. */
export const FEWEST = 3;
/** A point farther off than this many standard deviations, once left out, cannot belong. Source: the same. */
const CANNOT_BELONG = 3;
/** What limits of a shoulder the search starts from, besides what is assumed: stiff all round, ahead, or to the side. */
const STIFF = [
	[60, 60],
	[95, 95],
	[130, 130],
	[60, 180],
	[95, 180],
	[180, 60],
	[180, 95]
] as const;
/** What it costs to say that an elbow nobody recorded lifts the hand: two standard deviations. Ours. */
const LIFTS = 4;
/** Steps after which the starts worth following show. */
const A_FEW = 5;
/** Sums of squares nearer than this are the same. */
const SAME = 1e-6;
const MOST_EASY = 1;
const LEAST_EASY = 0.5;
const LEAST_LENGTH = 50;

/** One arm, its prior in unknowns of standard deviation 1. */
interface Asked {
	readonly spec: ArmSpec;
	readonly prior: Prior;
	readonly root: readonly (readonly number[])[];
	/** Most slopes leave the shoulder's limits as they are: its cone is kept. */
	readonly coneFor: (flexion: number, abduction: number) => Cone;
}

function askedOf(spec: ArmSpec, prior: Prior): Asked {
	let kept: { readonly flexion: number; readonly abduction: number; readonly cone: Cone } | undefined;
	const coneFor = (flexion: number, abduction: number): Cone => {
		if (kept?.flexion !== flexion || kept.abduction !== abduction)
			kept = { flexion, abduction, cone: coneOf({ ...spec.range, flexion, abduction }) };
		return kept.cone;
	};
	return { spec, prior, root: root(prior.cov), coneFor };
}

const within = (n: number, least: number, most: number): number => Math.min(most, Math.max(least, n));

/** The arm and shoulder that values of MOVABLE make. Frame: as a taped point's, both hands turned into a right one. */
function made({ spec, coneFor }: Asked, values: readonly number[]): { readonly arm: Arm; readonly posture: Posture } {
	const [upper = 0, fore = 0, up = 0, ahead = 0, outward = 0, flexion = 0, abduction = 0, easy = 1] = values;
	const own = {
		...spec,
		upper: Math.max(LEAST_LENGTH, upper),
		fore: Math.max(LEAST_LENGTH, fore),
		easy: within(easy, LEAST_EASY, MOST_EASY)
	};
	const { grip, push, fingertip } = spansOf(own);
	// Only the outside is taped: a point near the shoulder is no point of the inner limit.
	const outside = (span: Arm['spans']['grip']) => ({ ...span, inner: 0 });
	const spans = { grip: outside(grip), push: outside(push), fingertip: outside(fingertip) };
	return {
		arm: { ...own, spans, cone: coneFor(within(flexion, 0, 180), within(abduction, 0, 180)) },
		posture: { shoulder: [ahead, outward, up], forward: [1, 0, 0], side: 'right' }
	};
}

/** How far each point lies inside the surface it was taped on. Units: mm. */
function offs(asked: Asked, values: readonly number[], points: readonly Taped[]): readonly number[] {
	const { arm, posture } = made(asked, values);
	const easy = easyArm(arm);
	return points.map(({ at, hand, reach }) => slack(reach === 'just' ? arm : easy, posture, at, hand));
}

const valuesAt = ({ prior, root: lower }: Asked, z: readonly number[]): readonly number[] =>
	lower.map((row, i) => row.reduce((sum, n, k) => sum + n * (z[k] ?? 0), prior.mean[i] ?? 0));

/** As it is assumed, and with a shoulder stiffer than that: to one point a stiff shoulder looks like a short arm. */
function startsOf({ prior }: Asked): readonly (readonly number[])[] {
	const toward = (name: Movable, degrees: number): number => {
		const i = MOVABLE.indexOf(name);
		const [mean, sd] = [prior.mean[i] ?? 0, Math.sqrt(prior.cov[i]?.[i] ?? 0)];
		return sd > 0 && degrees < mean ? (degrees - mean) / sd : 0;
	};
	const starts = STIFF.map(([flexion, abduction]) =>
		MOVABLE.map((name) =>
			name === 'flexion' ? toward(name, flexion) : name === 'abduction' ? toward(name, abduction) : 0
		)
	);
	const others = starts.filter(
		(z, i) => z.some((n) => n !== 0) && starts.findIndex((o) => o.every((n, k) => n === z[k])) === i
	);
	return [MOVABLE.map(() => 0), ...others];
}

/** The least there is, and the arm it is of: `spec.elbow` says whether its elbow lifts the hand. */
interface Best extends Least {
	readonly asked: Asked;
}

function bestOf(asked: Asked, points: readonly Taped[], dearer: number): Best {
	const residuals = (z: readonly number[]) =>
		offs(asked, valuesAt(asked, z), points).map((off, i) => off / (points[i]?.sd ?? 1));
	const problem = { unknowns: MOVABLE.length, residuals };
	const begun = startsOf(asked).map((z) => least(problem, z, A_FEW));
	const hopeful = begun.toSorted((a, b) => a.cost - b.cost).slice(0, 2);
	const found = hopeful.map(({ z }) => least(problem, z));
	const best = found.reduce((first, one) => (one.cost < first.cost - SAME ? one : first));
	return { ...best, cost: best.cost + dearer, asked };
}

/** An elbow nobody recorded is taken not to lift the hand unless points taped above the line of the upper arm say so. */
function bestFit(asked: Asked, points: readonly Taped[]): Best {
	const straight = bestOf(asked, points, 0);
	if (asked.spec.elbow === 'recorded' || straight.cost <= LIFTS) return straight;
	const lifting: Asked = { ...asked, spec: { ...asked.spec, elbow: 'recorded' } };
	const values = valuesAt(asked, straight.z);
	const [without, withIt] = [offs(asked, values, points), offs(lifting, values, points)];
	// No point stands where an elbow could lift it to.
	if (without.every((off, i) => off === withIt[i])) return straight;
	const lifted = bestOf(lifting, points, LIFTS);
	return lifted.cost < straight.cost ? lifted : straight;
}

/** Of an estimate in unknowns of its own, how values err together. */
function spread({ root: lower }: Asked, cov: Least['cov']): readonly (readonly number[])[] {
	const half = lower.map((row) => cov.map((line) => row.reduce((sum, n, k) => sum + n * (line[k] ?? 0), 0)));
	return half.map((row) => lower.map((other) => row.reduce((sum, n, k) => sum + n * (other[k] ?? 0), 0)));
}

/**
 * The point without which all others go best with one another; null when every one may belong.
 * Shape: what leaving one out gains is the square of how far it then lies off, in standard deviations of telling so.
 */
function stranger(asked: Asked, points: readonly Taped[], all: Best): { point: Taped; others: Best } | null {
	// No point can gain more than there is.
	let most = CANNOT_BELONG ** 2;
	if (all.cost <= most) return null;
	let found: { point: Taped; others: Best } | null = null;
	for (const point of points) {
		const others = bestFit(
			asked,
			points.filter((p) => p !== point)
		);
		if (all.cost - others.cost <= most) continue;
		most = all.cost - others.cost;
		found = { point, others };
	}
	return found;
}

/**
 * The arm that goes best with its estimate and its taped points.
 * Units and frame: mm and degrees, as in MOVABLE; points in the frame of who sat.
 * Shape: points that cannot belong are left out one by one, the farthest first; `fitted` is null when fewer than FEWEST stay.
 */
export function fitTo(spec: ArmSpec, prior: Prior, points: readonly Taped[]): Answer {
	const asked = askedOf(spec, prior);
	const leftOut: LeftOut[] = [];
	let kept = points;
	let best = bestFit(asked, kept);
	for (let odd = stranger(asked, kept, best); odd; odd = stranger(asked, kept, best)) {
		const { point, others } = odd;
		leftOut.push({ id: point.id, off: offs(others.asked, valuesAt(asked, others.z), [point])[0] ?? 0 });
		kept = kept.filter((p) => p !== point);
		best = others;
		if (kept.length < FEWEST) return { leftOut, fitted: null };
	}
	const mean = valuesAt(asked, best.z);
	const off = offs(best.asked, mean, kept).map((n, i) => [kept[i]?.id ?? '', n] as const);
	const lifts = spec.elbow === 'assumed' && best.asked.spec.elbow === 'recorded';
	return { leftOut, fitted: { mean, cov: spread(asked, best.cov), lifts, off: Object.fromEntries(off) } };
}
