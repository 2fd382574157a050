import type { Body } from '#core/body/body.ts';
import type { Vec } from '#core/geometry/vec.ts';
import type { Side } from '#core/body/hands.ts';
import { contourOn } from '#core/reach/contour.ts';
import type { PersonArm } from '#core/reach/reach.ts';
import { easySlack, slack, type Posture } from '#core/reach/slack.ts';
import { BEFORE_BACK } from '#core/reach/station.ts';
import { figure } from '#core/drawing/figure.ts';
import type { LengthUnit } from '#core/units/length.ts';
import { figureShapes, isGuess, type Lengths, type SideView } from './sitter-figure.ts';
import { drawn, path, rect, text, type Shape } from './shape.ts';

/** A sitter seen from her side. Units: px for the size. */
export interface SitterAsked {
	readonly body: Body;
	readonly arm: PersonArm;
	readonly side: Side;
	readonly unit: LengthUnit;
	readonly width: number;
	readonly height: number;
}

/** Hip above the seat, as the stations have it. Units: mm. */
const HIP = 90;
const MESH = 20;

/** A person at her own size on a seat as high as her lower leg, one arm straight, with where that hand reaches. */
export function sitterShapes(asked: SitterAsked): readonly Shape[] {
	const lengths = lengthsOf(asked.body, asked.arm);
	if (!lengths) return [];
	const view = viewFor(lengths, asked);
	return [
		...fields(asked.arm, lengths, view),
		...seatedShapes(lengths, view, {
			body: isGuess(asked.body.dims.shoulderAboveSeat?.how) ? 'sketched' : 'drawn',
			arm: isGuess(asked.arm.how) ? 'sketched' : 'drawn'
		}),
		...dimensions(lengths, view, asked)
	];
}

/** Somebody on her seat with the wall behind her. */
export function seatedShapes(l: Lengths, view: SideView, lines: Parameters<typeof figureShapes>[2]): readonly Shape[] {
	const [x, floor] = view.at(0, 0);
	return [
		rect('sitter/earth', 'earth', [x, view.top], [x + 13, floor]),
		path('sitter/wall', 'cut', [
			[x, view.top],
			[x, floor]
		]),
		rect('sitter/seat', 'thing', view.at(l.thigh * 0.86, l.seat), view.at(0, l.seat - 28), 4),
		...figureShapes(l, view, lines)
	];
}

/** A sitter as drawn from her side; the shoulder where a reach test told it. Shape: undefined where only measuring helps. */
export function lengthsOf({ dims, person, arms }: Body, arm: PersonArm): Lengths | undefined {
	const { popliteal, shoulderAboveSeat, sittingHeight, buttockPopliteal } = dims;
	if (!popliteal || !shoulderAboveSeat) return undefined;
	const told = arms[arm.side].tested?.shoulder;
	const shoulder = popliteal.value + (told?.up ?? shoulderAboveSeat.value);
	const forward = person.sittingForward?.value ?? 0;
	return {
		seat: popliteal.value,
		shoulder,
		head: sittingHeight ? popliteal.value + sittingHeight.value : shoulder + 300,
		thigh: (buttockPopliteal?.value ?? 480) + 40,
		forward: BEFORE_BACK + forward,
		ahead: (told?.ahead ?? BEFORE_BACK) + forward,
		grip: arm.spans.grip.outer,
		upper: arm.upper
	};
}

function viewFor({ head, ahead, grip }: Lengths, { width, height }: SitterAsked): SideView {
	const scale = Math.min((width - 40) / (ahead + grip + 90), (height - 24) / (head + 60));
	const back = width - 16;
	return { scale, top: height - (head + 40) * scale, at: (before, up) => [back - before * scale, height - up * scale] };
}

function fields(arm: PersonArm, { shoulder, ahead, seat, head }: Lengths, view: SideView): readonly Shape[] {
	const posture: Posture = { shoulder: [ahead, 0, shoulder], forward: [1, 0, 0], side: arm.side };
	// What lies behind the shoulder is the chair's or the wall's, not the hand's.
	const window = { x0: ahead, x1: ahead + arm.spans.grip.outer + 20, y0: 0, y1: head + 40 };
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

function dimensions(l: Lengths, view: SideView, { unit }: SitterAsked): readonly Shape[] {
	const [handX, armY] = view.at(l.ahead + l.grip, l.shoulder);
	const [shoulderX] = view.at(l.ahead, l.shoulder);
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
