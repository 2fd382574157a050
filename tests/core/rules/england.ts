import { variantOf, type Mark, type Purpose, type Variant } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { bind } from '#core/rules/bind.ts';
import { judge } from '#core/rules/judge.ts';
import type { Answer, Finding, Pack } from '#core/rules/row.ts';
import { caseWith, mark, otherHand, sceneOf } from './baseline.ts';

/** A fact as it was measured. */
export const measured = <T>(value: T) => ({ value, how: 'measured' as const });

/** Findings of one document about marks, whoever leads. */
export function findingsOf(pack: Pack, c: Case, marks: readonly Mark[]): readonly Finding[] {
	const rows = bind(
		[pack],
		marks.map((m) => m.accessory),
		c
	);
	return judge(sceneOf(c), rows, marks);
}

const WORST: readonly Answer[] = ['not-here', 'inside', 'ask', 'unknown', 'borderline', 'outside'];

/** Answers of one document by row, the worst where a row speaks of several marks. */
export function answersOf(pack: Pack, c: Case, marks: readonly Mark[]): Readonly<Record<string, Answer>> {
	const found: Record<string, Answer> = {};
	for (const f of findingsOf(pack, c, marks)) {
		const before = found[f.row.id];
		if (!before || WORST.indexOf(f.answer) > WORST.indexOf(before)) found[f.row.id] = f.answer;
	}
	return found;
}

/** The two hands a room is drawn in. */
export const HANDS = ['as drawn', 'in the mirrored room'] as const;

/** A case and its marks in a hand. */
export const inHand = (hand: (typeof HANDS)[number], c: Case, marks: readonly Mark[]) =>
	hand === 'as drawn' ? ([c, marks] as const) : otherHand(c, marks);

/** The shower of Diagram 23: how far along the wall of the controls and along the wall of the seat it goes. Units: mm. */
const ALONG_CONTROLS = 1500;
const ALONG_SEAT = 1400;

/** The record of a corner shower, the seat on the left wall and the controls on the back wall, in the room of Diagram 23. */
export const corner = (enclosure: object = {}): Case =>
	caseWith({
		case: { reference: 'uk-adm-2', tape: { unit: 'mm', step: 5 } },
		client: { rises: measured('with-help') },
		enclosure: {
			type: 'corner',
			width: measured(ALONG_CONTROLS),
			depth: measured(ALONG_SEAT),
			datum: measured(0),
			threshold: measured(0),
			turning: measured(1500),
			roomAlong: measured(2000),
			roomAhead: measured(2200),
			...enclosure
		}
	});

/** Where the parts of Diagram 23 are. Units: mm; u from the wall of the seat, v from the wall of the controls, z up. */
export interface Drawn {
	readonly seat?: Partial<{ v: number; z: number; front: number }>;
	readonly rail?: Partial<{ off: number; z: number }>;
	readonly ahead?: Partial<{ u: number; z: number }>;
	readonly bar?: Partial<{ u: number; long: number; top: number }>;
	readonly control?: Partial<{ u: number; z: number; wall: WallId }>;
	readonly low?: Partial<{ u: number; z: number; wall: WallId }>;
	readonly high?: Partial<{ u: number; z: number }>;
	readonly cord?: Partial<{ z: number }>;
}

/** One part at a place. Units: mm, wall frame. */
export const at = (id: string, purpose: Purpose, [wall, x, y]: readonly [WallId, number, number], variant: Variant) =>
	mark(id, { purpose, wall, x, y, variant });

/** A level bar as long as asked from end to end, its flanges 40 to each side. */
function barOver(long: number): Variant {
	const model = variantOf('bar-over-all-600');
	const length = long - 80;
	return {
		...model,
		length: length as Variant['length'],
		grip: { ...model.grip, x1: length },
		outline: { ...model.outline, x1: length + 40 }
	};
}

/** Base case U2-K0 with its control at 900 and a head to be had at 1200 and at 1400, changed as asked. */
export function drawn(change: Drawn = {}): readonly Mark[] {
	const seat = { v: 500, z: 480, front: 650, ...change.seat };
	const rail = { off: 320, z: 680, ...change.rail };
	const ahead = { u: 900, z: 680, ...change.ahead };
	const bar = { u: 250, long: 600, top: 680, ...change.bar };
	const control = { u: 500, z: 900, wall: 'back' as WallId, ...change.control };
	const low = { u: 500, z: 1200, wall: 'back' as WallId, ...change.low };
	const high = { u: 500, z: 1400, ...change.high };
	const cord = { z: 900, ...change.cord };
	// The left wall is read from the entry, the back wall from the left wall.
	const onSeatWall = (v: number, z: number) => ['left', ALONG_SEAT - v, z] as const;
	const onBack = (u: number, z: number) => ['back', u, z] as const;
	const offWall = { ...variantOf('seat-off-wall-450'), depth: seat.front as Variant['depth'] };
	return [
		at('seat', 'sit', onSeatWall(seat.v, seat.z), offWall),
		at('rail-other', 'push-up', onSeatWall(seat.v + rail.off, rail.z), variantOf('rail-600')),
		at('rail-ahead', 'hold-ahead', onBack(ahead.u, ahead.z), variantOf('rail-600')),
		at('bar-back', 'rise', onBack(bar.u + 40, bar.top - 16), barOver(bar.long)),
		at('control', 'run-water', [control.wall, control.u, control.z], variantOf('control-lever')),
		at('handset-rest', 'rest-handset', [low.wall, low.u, low.z], variantOf('rest')),
		at('handset-holder', 'hang-handset', onBack(high.u, high.z), variantOf('rest')),
		at('call-cord', 'call', onBack(1200, cord.z), variantOf('call-cord'))
	];
}

/** Without one of the parts. */
export const without = (marks: readonly Mark[], id: string): readonly Mark[] =>
	marks.filter(({ accessory }) => accessory.id !== id);

/** The ids that are neither inside, nor asked, nor speak of nothing here. */
export const amiss = (found: Readonly<Record<string, Answer>>): readonly string[] =>
	Object.keys(found).filter((id) => !['inside', 'ask', 'not-here'].includes(found[id] ?? ''));
