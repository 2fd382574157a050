import { capsule, type Joint } from '#core/drawing/body/capsule.ts';
import { pathData } from './sheet-shapes.ts';
import { drawn, type Px, type Shape } from './shape.ts';

/**
 * What the figure is drawn from. Units: mm; heights from the floor; `thigh`, `forward` of the trunk and `ahead` of the
 * shoulder before the back rest.
 */
export interface Lengths {
	readonly seat: number;
	readonly shoulder: number;
	readonly head: number;
	readonly thigh: number;
	readonly forward: number;
	readonly ahead: number;
	readonly grip: number;
	readonly upper: number;
}

/** Where mm before the back rest and above the floor lie. Units: px. */
export interface SideView {
	readonly scale: number;
	readonly top: number;
	/** From mm before the back rest and above the floor. */
	readonly at: (before: number, up: number) => Px;
}

/** Whether body and arm are drawn or only sketched. */
interface Lines {
	readonly body: 'drawn' | 'sketched';
	readonly arm: 'drawn' | 'sketched';
}

const LINES = { drawn: 'body-line', sketched: 'body-line guessed' } as const;
/** Middle of the hip as drawn, above the seat: a little over the joint, for what is sat on. Units: mm. */
const HIP = 102;
/** Thickness of the drawn body, mm: drawn, never computed with. */
const THICK = {
	head: 84,
	neck: 46,
	chest: 98,
	waist: 104,
	hip: 108,
	knee: 62,
	ankle: 40,
	toe: 27,
	shoulder: 54,
	elbow: 42,
	wrist: 28
};

/** Head, trunk and limbs between their joints, one calm outline; the arm straight before her. */
export function figureShapes(l: Lengths, view: SideView, lines: Lines): readonly Shape[] {
	const joint = (before: number, up: number, thick: number): Joint => ({
		at: view.at(before, up),
		radius: thick * view.scale
	});
	const { forward, seat, shoulder, thigh, head } = l;
	const hip = joint(forward + 10, seat + HIP, THICK.hip);
	const waist = joint(forward + 15, seat + 260, THICK.waist);
	const chest = joint(forward + 22, shoulder - 70, THICK.chest);
	const neck = joint(forward + 35, shoulder + 60, THICK.neck);
	const skull = joint(forward + 55, head - THICK.head, THICK.head);
	const knee = joint(thigh, seat - 10, THICK.knee);
	const ankle = joint(thigh - 10, 66, THICK.ankle);
	const limbs: readonly (readonly [Joint, Joint])[] = [
		[waist, hip],
		[chest, waist],
		[neck, skull],
		[chest, neck],
		[skull, joint(forward + 62, head - THICK.head - 26, THICK.head * 0.92)],
		[hip, knee],
		[knee, ankle],
		[ankle, joint(thigh + 150, 30, THICK.toe)]
	];
	const tip = joint(l.ahead, shoulder, THICK.shoulder);
	const elbow = joint(l.ahead + l.upper, shoulder, THICK.elbow);
	const hand = joint(l.ahead + l.grip - 20, shoulder, THICK.wrist);
	return [
		...limbShapes('body', limbs, LINES[lines.body]),
		...limbShapes(
			'arm',
			[
				[tip, elbow],
				[elbow, hand]
			],
			LINES[lines.arm]
		),
		...[tip, elbow, hip, knee].map(({ at }, i): Shape => ({
			id: `sitter/joint/${String(i)}`,
			tag: 'circle',
			attrs: { class: 'joint', cx: at[0], cy: at[1], r: 3 }
		}))
	];
}

/** What nobody measured is sketched. */
export const isGuess = (how: string | undefined): boolean => how === 'estimated' || how === 'assumed';

/** All outlines first, then all fills: one calm outline round the whole. */
function limbShapes(id: string, limbs: readonly (readonly [Joint, Joint])[], line: string): readonly Shape[] {
	const d = limbs.map(([a, b]) => pathData(capsule(a, b), true));
	return [
		...d.map((one, i) => drawn(`sitter/${id}/line/${String(i)}`, line, one)),
		...d.map((one, i) => drawn(`sitter/${id}/fill/${String(i)}`, 'body-fill', one))
	];
}
