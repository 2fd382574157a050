import type { Body } from '#core/body/body.ts';
import type { Vec } from '#core/geometry/vec.ts';
import type { Side } from '#core/reach/arm.ts';
import { contourOn } from '#core/reach/contour.ts';
import type { PersonArm } from '#core/reach/reach.ts';
import { easySlack, slack, type Posture } from '#core/reach/slack.ts';
import { figure } from '#core/drawing/figure.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { capsule, type Joint } from './capsule.ts';
import { drawn, path, rect, text, type Px, type Shape } from './shape.ts';

/** A sitter seen from her side. Units: px for the size. */
export interface SitterAsked {
	readonly body: Body;
	readonly arm: PersonArm;
	readonly side: Side;
	readonly unit: LengthUnit;
	readonly width: number;
	readonly height: number;
}

/** Shoulder and hip before the back rest, hip above the seat: as the stations have them. Units: mm. */
const BEFORE_BACK = 80;
const HIP = 90;
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
const MESH = 20;

interface Lengths {
	readonly seat: number;
	readonly shoulder: number;
	readonly head: number;
	readonly thigh: number;
	readonly forward: number;
	readonly grip: number;
	readonly upper: number;
}

/** A person at her own size on a seat as high as her lower leg, one arm straight, with where that hand reaches. */
export function sitterShapes(asked: SitterAsked): readonly Shape[] {
	const lengths = lengthsOf(asked.body, asked.arm);
	if (!lengths) return [];
	const view = viewFor(lengths, asked);
	return [
		...fields(asked.arm, lengths, view),
		rect('sitter/earth', 'earth', [view.at(0, 0)[0], view.top], [view.at(0, 0)[0] + 13, asked.height]),
		path('sitter/wall', 'cut', [
			[view.at(0, 0)[0], view.top],
			[view.at(0, 0)[0], asked.height]
		]),
		rect('sitter/seat', 'thing', view.at(lengths.thigh * 0.86, lengths.seat), view.at(0, lengths.seat - 28), 4),
		...figureShapes(lengths, view, asked),
		...dimensions(lengths, view, asked)
	];
}

function lengthsOf({ dims, person }: Body, arm: PersonArm): Lengths | undefined {
	const { popliteal, shoulderAboveSeat, sittingHeight, buttockPopliteal } = dims;
	if (!popliteal || !shoulderAboveSeat) return undefined;
	const shoulder = popliteal.value + shoulderAboveSeat.value;
	return {
		seat: popliteal.value,
		shoulder,
		head: sittingHeight ? popliteal.value + sittingHeight.value : shoulder + 300,
		thigh: (buttockPopliteal?.value ?? 480) + 40,
		forward: BEFORE_BACK + (person.sittingForward?.value ?? 0),
		grip: arm.spans.grip.outer,
		upper: arm.upper
	};
}

interface SideView {
	readonly scale: number;
	readonly top: number;
	/** From mm before the back rest and above the floor. */
	readonly at: (before: number, up: number) => Px;
}

function viewFor({ head, forward, grip }: Lengths, { width, height }: SitterAsked): SideView {
	const scale = Math.min((width - 40) / (forward + grip + 90), (height - 24) / (head + 60));
	const back = width - 16;
	return { scale, top: height - (head + 40) * scale, at: (before, up) => [back - before * scale, height - up * scale] };
}

function fields(arm: PersonArm, { shoulder, forward, seat, head }: Lengths, view: SideView): readonly Shape[] {
	const posture: Posture = { shoulder: [forward, 0, shoulder], forward: [1, 0, 0], side: arm.side };
	// What lies behind the shoulder is the chair's or the wall's, not the hand's.
	const window = { x0: forward, x1: forward + arm.spans.grip.outer + 20, y0: 0, y1: head + 40 };
	const to = (x: number, y: number): Vec => [x, 0, y];
	const stretched = outline((x, y) => slack(arm, posture, to(x, y), 'grip'), window, view);
	const easy = outline((x, y) => easySlack(arm, posture, to(x, y), 'grip', seat + HIP), window, view);
	const edge = arm.how === 'estimated' ? 'sketch' : 'fine';
	return [
		drawn('sitter/stretched', 'stretched', stretched),
		drawn('sitter/easy', 'easy', easy),
		drawn('sitter/easy-edge', edge, easy),
		drawn('sitter/stretched-edge', edge, stretched)
	];
}

function outline(
	at: (x: number, y: number) => number,
	window: Parameters<typeof contourOn>[1],
	view: SideView
): string {
	return contourOn(at, window, MESH)
		.map(
			(line) =>
				`M${line
					.map(([x, y]) =>
						view
							.at(x, y)
							.map((n) => n.toFixed(1))
							.join(' ')
					)
					.join('L')}Z`
		)
		.join('');
}

function figureShapes(l: Lengths, view: SideView, { body, arm }: SitterAsked): readonly Shape[] {
	const joint = (before: number, up: number, thick: number): Joint => ({
		at: view.at(before, up),
		radius: thick * view.scale
	});
	const { forward, seat, shoulder, thigh, head } = l;
	const hip = joint(forward + 10, seat + HIP + 12, THICK.hip);
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
	const tip = joint(forward, shoulder, THICK.shoulder);
	const elbow = joint(forward + l.upper, shoulder, THICK.elbow);
	const hand = joint(forward + l.grip - 20, shoulder, THICK.wrist);
	return [
		...limbShapes('body', limbs, isGuess(body.dims.shoulderAboveSeat?.how) ? 'body-line guessed' : 'body-line'),
		...limbShapes(
			'arm',
			[
				[tip, elbow],
				[elbow, hand]
			],
			isGuess(arm.how) ? 'body-line guessed' : 'body-line'
		),
		...[tip, elbow, hip, knee].map(({ at }, i): Shape => ({
			id: `sitter/joint/${String(i)}`,
			tag: 'circle',
			attrs: { class: 'joint', cx: at[0], cy: at[1], r: 3 }
		}))
	];
}

/** What nobody measured is sketched. */
const isGuess = (how: string | undefined): boolean => how === 'estimated' || how === 'assumed';

/** All outlines first, then all fills: one calm outline round the whole. */
function limbShapes(id: string, limbs: readonly (readonly [Joint, Joint])[], line: string): readonly Shape[] {
	const d = limbs.map(([a, b]) => capsule(a, b));
	return [
		...d.map((one, i) => drawn(`sitter/${id}/line/${String(i)}`, line, one)),
		...d.map((one, i) => drawn(`sitter/${id}/fill/${String(i)}`, 'body-fill', one))
	];
}

function dimensions(l: Lengths, view: SideView, { unit }: SitterAsked): readonly Shape[] {
	const [handX, armY] = view.at(l.forward + l.grip, l.shoulder);
	const [shoulderX] = view.at(l.forward, l.shoulder);
	const under = armY + 74 * view.scale + 18;
	const [kneeX] = view.at(l.thigh + 200, 0);
	const [seatY, floorY] = [view.at(0, l.seat)[1], view.at(0, 0)[1]];
	return [
		drawn('sitter/arm-dimension', 'line', `M${String(handX)} ${String(under)}H${String(shoulderX)}`),
		drawn(
			'sitter/arm-ends',
			'fine',
			[handX, shoulderX]
				.map(
					(x) => `M${String(x)} ${String(armY + 8)}V${String(under + 8)}M${String(x - 5)} ${String(under + 5)}l10 -10`
				)
				.join('')
		),
		text(
			'sitter/arm-figure',
			't-ask strong mid halo',
			[(handX + shoulderX) / 2, under + 36],
			`${figure(l.grip, unit)} ${unit}`
		),
		drawn(
			'sitter/seat-dimension',
			'fine',
			`M${String(kneeX)} ${String(floorY)}V${String(seatY)}M${String(kneeX - 7)} ${String(seatY)}h14M${String(kneeX - 5)} ${String(seatY + 5)}l10 -10`
		),
		text('sitter/seat-figure', 't-text halo', [kneeX + 8, (seatY + floorY) / 2 + 6], figure(l.seat, unit))
	];
}
