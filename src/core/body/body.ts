import type { Case, Person } from '#core/case/record.ts';
import { estimated, type Estimate } from './estimate.ts';
import { armLengths, measuredOf, type ArmLengths, type Dimensions } from './measured.ts';
import { given, mixed, type Normal, type Posterior, type Seen } from './normal.ts';
import { refusalOf, type Refusal } from './refusal.ts';
import { DIMENSIONS, SURVEY, type Dimension, type Sex } from './survey.ts';

/** One person's body: what was recorded and, where allowed, estimates of the rest. Units: mm, mass in kg. */
export interface Body {
	readonly id: string;
	readonly person: Person;
	readonly dims: Dimensions;
	readonly arms: { readonly left: ArmLengths; readonly right: ArmLengths };
	/** Of the estimates, in the order of DIMENSIONS; empty when nothing was estimated. */
	readonly spread: readonly (readonly number[])[];
	readonly refusal?: Refusal;
}

// The record takes these as she really sits, the survey sitting erect: a slump says nothing about the length of an arm.
const AS_SHE_SITS: readonly Dimension[] = ['shoulderAboveSeat', 'elbowAboveSeat'];

// Elbow rest height goes with nothing else (r 0.1-0.2): it is measured or not known.
const NEVER_ESTIMATED: readonly Dimension[] = ['elbowAboveSeat'];

// Ours, no source: the survey is of fit adults. An age nobody gave is taken as over 60.
const OLD = 60;
const WIDER = 1.5;

/** 5th percentile woman of the survey, the helper nobody measured. The choice is the margin, so it has no spread. */
const HELPER: Dimensions = Object.fromEntries(
	Object.entries({
		shoulderStanding: 1242,
		armToGrip: 561,
		handLength: 165,
		wristStanding: 732,
		shoulderBreadth: 335
	}).map(([name, value]) => [name, { value, sd: 0, how: 'assumed' } satisfies Estimate])
);

function priorOf(sex: Sex): Normal {
	const { mean, lower } = SURVEY[sex];
	const cov = lower.map((_, i) => lower.map((_, j) => lower[Math.max(i, j)]?.[Math.min(i, j)] ?? 0));
	return { mean, cov };
}

const PRIORS: Readonly<Record<Sex, Normal>> = { female: priorOf('female'), male: priorOf('male') };

function survey(sex: Sex | undefined, measured: Dimensions): Posterior {
	const seen: Seen[] = DIMENSIONS.flatMap((name, index) => {
		const one = measured[name];
		return one && !AS_SHE_SITS.includes(name) ? [{ index, value: one.value, sd: one.sd }] : [];
	});
	if (sex) return given(PRIORS[sex], seen);
	return mixed(given(PRIORS.female, seen), given(PRIORS.male, seen));
}

function estimates({ mean, cov }: Normal): Dimensions {
	const pairs = DIMENSIONS.map((name, i) => [name, estimated(mean[i] ?? 0, Math.sqrt(cov[i]?.[i] ?? 0))] as const);
	return Object.fromEntries(pairs.filter(([name]) => !NEVER_ESTIMATED.includes(name)));
}

function widened({ mean, cov }: Posterior, by: number): Normal {
	return { mean, cov: cov.map((line) => line.map((c) => c * by * by)) };
}

const shareOf = (sex: Sex | undefined): number =>
	sex ? SURVEY[sex].upperArmShare : (SURVEY.female.upperArmShare + SURVEY.male.upperArmShare) / 2;

/** Whose arms were tried is no stranger: her own estimate is what the points move. */
const taped = ({ arms }: Person): boolean =>
	[arms.left.points, arms.right.points].some((points) => Object.keys(points ?? {}).length > 0);

function bodyOf(id: string, person: Person): Body {
	const sex = person.sex?.value;
	const measured = measuredOf(person);
	const posterior = survey(sex, measured);
	const refusal = refusalOf(person, posterior.distance);
	const bare = Object.keys(measured).length === 0 && person.role === 'helper' && !taped(person);
	const normal = widened(posterior, person.age && person.age.value <= OLD ? 1 : WIDER);
	const rest = refusal ? {} : bare ? HELPER : estimates(normal);
	const dims = { ...rest, ...measured };
	const after = { arm: rest.armToGrip, share: shareOf(sex ?? (bare ? 'female' : undefined)) };
	return {
		id,
		person,
		dims,
		arms: { left: armLengths(person, 'left', after), right: armLengths(person, 'right', after) },
		spread: refusal || bare ? [] : normal.cov,
		...(refusal && { refusal })
	};
}

/** The bodies of a case: recorded values as they stand, the rest after the survey or refused. */
export const bodiesOf = (people: Case['people']): Readonly<Record<string, Body>> =>
	Object.fromEntries(Object.entries(people).map(([id, person]) => [id, bodyOf(id, person)]));

/**
 * How two dimensions of a body err together; of one with itself, its variance. Recorded values err alone.
 * Units: product of both units.
 * Fails: RangeError for a dimension that is not known.
 */
export function covariance(body: Body, a: Dimension, b: Dimension): number {
	const [one, other] = [body.dims[a], body.dims[b]];
	if (!one || !other) throw new RangeError(`not known of ${body.id}: ${one ? b : a}`);
	if (a === b) return one.sd * one.sd;
	if (one.how !== 'estimated' || other.how !== 'estimated') return 0;
	return body.spread[DIMENSIONS.indexOf(a)]?.[DIMENSIONS.indexOf(b)] ?? 0;
}
