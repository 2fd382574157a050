import type { Mark } from '#core/case/accessory.ts';
import { handsOf } from './client.ts';
import { targetOf } from './hand.ts';
import { seatPoint } from './where.ts';
import type { Scene } from './scene.ts';
import { leastLean, type Lean } from '#core/reach/least-lean.ts';
import { hipOf, isMissing, seatedPosture } from '#core/reach/station.ts';

/** The least lean a target needs from the seat: degrees at the hip, mm of travel of the shoulder; null when none does. */
export interface LeanNeed {
	readonly accessory: string;
	readonly degrees: number | null;
	readonly travel: number | null;
	/** Plain sentence with its numbers. */
	readonly says: string;
}

/** What is to spare of the arm when a lean is called enough. Units: mm. Source: margin of the reach model, human data. */
const TO_SPARE = 50;

const TOWARD = { ahead: 'forward', left: 'to the left', right: 'to the right' } as const;

/** The least lean with which one of the hands meant for a mark reaches it from the seat; null when none does. */
function leastOf(scene: Scene, mark: Mark, seat: Mark, spare: number): Lean | null | undefined {
	const { accessory } = mark;
	const body = scene.bodies[accessory.for];
	const arms = scene.arms[accessory.for];
	if (!body || !arms) return undefined;
	const { room } = scene;
	const seated = {
		body,
		backPlanePoint: seatPoint(scene, seat),
		facing: room.sitting.ahead,
		sittingForward: body.person.sittingForward?.value ?? 0
	};
	const { from, kind } = targetOf(mark, room);
	let least: Lean | null = null;
	for (const side of handsOf(scene, mark)) {
		const arm = arms[side];
		const posture = seatedPosture({ ...seated, side });
		if (!arm || isMissing(posture)) return undefined;
		const lean = leastLean(arm, posture, hipOf(seated), from, kind, spare);
		if (lean && lean.degrees < (least?.degrees ?? Infinity)) least = lean;
	}
	return least;
}

const rounded = ({ travel, degrees }: Lean) => `${travel.toFixed(0)} mm (${degrees.toFixed(0)} degrees)`;

function needOf(scene: Scene, mark: Mark, seat: Mark): LeanNeed[] {
	const bare = leastOf(scene, mark, seat, 0);
	if (bare === undefined || bare?.degrees === 0) return [];
	const name = mark.variant.name;
	if (bare === null)
		return [
			{ accessory: mark.accessory.id, degrees: null, travel: null, says: `No lean brings the ${name} within reach.` }
		];
	const spared = leastOf(scene, mark, seat, TO_SPARE);
	const more = spared ? `, ${rounded(spared)} with ${String(TO_SPARE)} mm to spare` : '';
	const says = `The ${name} is reached from the seat only by leaning ${TOWARD[bare.toward]} ${rounded(bare)}${more}: watch it done.`;
	return [{ accessory: mark.accessory.id, degrees: bare.degrees, travel: bare.travel, says }];
}

/** The leans from the seat that control and handset rest need where they are. Shape: empty when nobody sits. */
export function leansOf(scene: Scene, marks: readonly Mark[]): readonly LeanNeed[] {
	const seat = marks.find((m) => m.accessory.kind === 'seat');
	if (!seat) return [];
	// Nobody is to be seen reaching for what she must not turn.
	const hers = scene.c.people[seat.accessory.for]?.runsWater?.value !== 'helper';
	// A place to fix the hand shower at head height is nobody's to reach from the seat.
	const worked = marks.filter(
		({ accessory: { kind, purpose } }) =>
			(hers && kind === 'control') || (kind === 'handset-rest' && purpose !== 'fix-handset')
	);
	return worked.flatMap((mark) => needOf(scene, mark, seat));
}
