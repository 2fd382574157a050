import { bodiesOf } from '#core/body/body.ts';
import type { Scene } from '#core/measures/scene.ts';
import { reachTestsOf, type HandTest, type Moved, type ReachTest } from '#core/reach/tested.ts';

const NAMES: Readonly<Record<Moved['dimension'], string>> = {
	reach: 'arm to grip',
	upper: 'upper arm',
	fore: 'elbow to grip',
	up: 'shoulder above the seat',
	ahead: 'shoulder ahead of her back',
	outward: 'shoulder from the middle',
	flexion: 'shoulder raised ahead',
	abduction: 'shoulder raised to the side',
	easy: 'reach without stretching'
};

/** What the taped points of everybody in a scene came to, by person and hand. */
export const reachTestsIn = ({ c, room }: Scene): Readonly<Record<string, ReachTest>> =>
	reachTestsOf(bodiesOf(c.people), room);

const whole = (n: number): string => String(Math.round(n));

function figure(dimension: Moved['dimension'], n: number): string {
	if (dimension === 'easy') return `${whole(n * 100)} % of the arm`;
	return dimension === 'flexion' || dimension === 'abduction' ? `${whole(n)} degrees` : `${whole(n)} mm`;
}

function movedWords({ dimension, before, after, rests }: Moved): string {
	const of = (n: number) => figure(dimension, n);
	const was = `${NAMES[dimension]} ${of(before.value)} -> ${of(after.value)}`;
	const sure = `give or take ${of(before.sd)} -> ${of(after.sd)}`;
	return `${was}, ${sure}${rests === 'estimate' ? '; still rests on the estimate' : ''}`;
}

const unmoved = ({ dimension, before, after, rests }: Moved): boolean =>
	rests === 'estimate' && figure(dimension, before.value) === figure(dimension, after.value);

const named = (says: string, all: readonly Moved[]): readonly string[] =>
	all.length > 0 ? [`${says}: ${all.map(({ dimension }) => NAMES[dimension]).join(', ')}`] : [];

const leftOutWords = ({ id, off }: HandTest['leftOut'][number]): string =>
	`"${id}" cannot belong and was left out: it lies ${whole(Math.abs(off))} mm ${off > 0 ? 'nearer' : 'farther'} than the other points tell`;

/**
 * What the points of one hand came to, a line each: what moved from where to where, what was measured and stayed, what was
 * left out, or why nothing was fitted.
 * Units: figures in mm, to be told on the tape of the house.
 */
export function handTestWords({ moved, leftOut, lifts, refused }: HandTest): readonly string[] {
	const measured = moved.filter(({ rests }) => rests === 'measured');
	return [
		...(refused === undefined ? [] : [refused]),
		...moved.filter((one) => !measured.includes(one) && !unmoved(one)).map(movedWords),
		...named('unmoved, still on the estimate', moved.filter(unmoved)),
		...named('as measured', measured),
		...(lifts ? ['the elbow lifts the hand above the line of the upper arm, as the points show'] : []),
		...leftOut.map(leftOutWords)
	];
}
