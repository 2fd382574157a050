import type { Mark } from '#core/case/accessory.ts';
import type { How } from '#core/case/fact.ts';
import { MEASURES, type MeasureId } from '#core/measures/registry.ts';
import type { Measure, Scene } from '#core/measures/scene.ts';
import { limitsOf } from '#core/rules/limit.ts';
import { EVIDENCE } from '#core/rules/packs/evidence.ts';
import type { BoundRow } from '#core/rules/row.ts';
import { formatLength } from '#core/units/format.ts';
import { mm } from '#core/units/length.ts';
import type { Span } from './span.ts';

/** The heights of a seat that pull apart: feet whole on the floor, rising with least effort, level with the wheeled chair. */
type LineId = 'feet-flat' | 'easy-rising' | 'chair-level';

/** Who pays where a seat is off a line. */
type Payer = 'nobody' | 'feet' | 'knees' | 'arms' | 'not known';

/** One line, and what it means for the seat as it is. */
export interface SeatLine {
	readonly line: LineId;
	/** What it is called beside its line. */
	readonly name: string;
	/** Where it is, from the least to the most where it is estimated. Units and frame: mm from the datum line. */
	readonly at: Span;
	/** The same above the bathroom floor. Units: mm. */
	readonly aboveFloor: Span;
	readonly how: How | 'estimated';
	/** The way this person moves makes a wish of this line. */
	readonly leads: boolean;
	readonly pays: Payer;
	/** One plain sentence; lengths in mm, for `onTape`. */
	readonly says: string;
}

/** The lines of one seat. */
export interface SeatLines {
	/** Id of its accessory. */
	readonly seat: string;
	/** The top of the seat. Units and frame: mm from the datum line, and above the bathroom floor. */
	readonly at: number;
	readonly aboveFloor: number;
	/** How high the seat is, in one plain sentence; lengths in mm, for `onTape`. */
	readonly says: string;
	/** Only those whose length is recorded, or estimated from others that are; what leads comes first. */
	readonly lines: readonly SeatLine[];
	/** What is to be asked for the others. */
	readonly asks: readonly string[];
}

/** What the lines of a seat are told from. */
interface Planned {
	readonly scene: Scene;
	readonly rows: readonly BoundRow[];
	readonly marks: readonly Mark[];
}

const inMm = (length: number): string => formatLength(mm(length), { unit: 'mm' });
const whole = (length: number): string => String(Math.round(length));

/** How far from the chair nobody pays, as the study of transfers has it. Units: mm. */
const AROUND: Span = (() => {
	const row = EVIDENCE.rows.find(({ measure }) => measure === 'seat-above-chair');
	const { min = 0, max = 0 } = row ? limitsOf(row) : {};
	return { from: min, to: max };
})();

/** Why a seat is on no line: what pays, and how far it is off, in words that go behind a figure. */
interface Off {
	readonly words: string;
	readonly pays: Payer;
	readonly who: string;
}

interface Spec {
	readonly name: string;
	/** What is 0 on the line. */
	readonly measure: MeasureId;
	/** What is 0 where the heights end that nobody pays for, where these begin at the line. */
	readonly until?: MeasureId;
	readonly free: (at: number, until: number) => Span;
	readonly below?: Off;
	readonly above: Off;
	/** What is said of a seat nobody pays for. */
	readonly met: string;
}

const SPECS: Readonly<Record<LineId, Spec>> = {
	'feet-flat': {
		name: 'feet flat',
		measure: 'seat-above-knee-fold',
		free: (at) => ({ from: -Infinity, to: at }),
		above: { words: 'above feet flat', pays: 'feet', who: 'the feet pay, they do not rest whole on the floor' },
		met: 'The feet rest whole on the floor'
	},
	'easy-rising': {
		name: 'easy rising',
		measure: 'seat-above-easy-rise',
		until: 'seat-above-high-rise',
		free: (from, to) => ({ from, to }),
		below: { words: 'below easy rising', pays: 'knees', who: 'the knees pay' },
		above: { words: 'above easy rising', pays: 'feet', who: 'the feet pay, they lose the floor' },
		met: 'The seat is where rising is easy'
	},
	'chair-level': {
		name: 'level with the chair',
		measure: 'seat-above-chair',
		free: (at) => ({ from: at + AROUND.from, to: at + AROUND.to }),
		below: {
			words: `lower than the chair, beyond ${inMm(-AROUND.from)}`,
			pays: 'arms',
			who: 'the arms pay, they lift on the way back'
		},
		above: {
			words: `higher than the chair, beyond ${inMm(AROUND.to)}`,
			pays: 'arms',
			who: 'the arms pay, they lift on the way in'
		},
		met: `The seat is level with the chair within ${inMm(AROUND.to)}`
	}
};
const LINES = Object.keys(SPECS) as readonly LineId[];

/** A line as far as it is known: where it is and the heights nobody pays for, at the least and at the most. */
interface Known {
	readonly at: Span;
	readonly free: readonly [Span, Span];
	readonly how: SeatLine['how'];
	/** What would close a gap between the two. */
	readonly asks: string;
}

/** Where a measure of a seat is 0, at the least and at the most, with what would close the gap; or only the question. */
function zeroOf(scene: Scene, id: MeasureId, seat: Mark): { readonly at?: Span; readonly asks: string } {
	const measure: Measure = MEASURES[id];
	const reading = measure.about === 'mark' ? measure.of(scene, seat) : { missing: '' };
	const { y } = seat.place;
	// On the grid of lengths, so that a seat on its line is on it.
	const at = (...ends: readonly number[]): Span => ({
		from: mm(y - Math.max(...ends)),
		to: mm(y - Math.min(...ends))
	});
	if (typeof reading === 'number') return { at: at(reading), asks: '' };
	if (!('best' in reading)) return { asks: reading.missing };
	return { at: at(reading.best, reading.sure), asks: reading.missing };
}

/** How the length is known that a line hangs on; an estimate from nothing that was recorded is none. */
function howOf(scene: Scene, line: LineId, person: string): SeatLine['how'] | undefined {
	if (line === 'chair-level') return scene.c.people[person]?.chair.seatHeight?.how;
	const dims = scene.bodies[person]?.dims ?? {};
	const recorded = Object.values(dims).some(({ how }) => how !== 'estimated');
	return recorded ? dims.popliteal?.how : undefined;
}

/** A line as far as it is known, or the question that would tell. */
function knownOf(scene: Scene, line: LineId, seat: Mark): Known | string {
	const { measure, until = measure, free } = SPECS[line];
	const [{ at, asks }, { at: end }] = [zeroOf(scene, measure, seat), zeroOf(scene, until, seat)];
	const how = howOf(scene, line, seat.accessory.for);
	if (!at || !end || how === undefined) return asks;
	return { at, free: [free(at.from, end.from), free(at.to, end.to)], how, asks };
}

/** How far a height is off a range: + above, - below, 0 in it. Units: mm. */
const offBy = ({ from, to }: Span, y: number): number => Math.min(y - from, Math.max(y - to, 0));

/** Who pays for a seat, said. Shape: what is estimated is told as a range, or as not known where the range decides. */
function paid(line: LineId, { at, free, how, asks }: Known, told: Told): Pick<SeatLine, 'pays' | 'says'> {
	const spec = SPECS[line];
	const [least, most] = [offBy(free[1], told.y), offBy(free[0], told.y)];
	const guess = how === 'estimated' ? ', as estimated' : '';
	if (Math.sign(least) !== Math.sign(most)) {
		const [low, high] = [at.from, at.to].map((y) => whole(y - told.floor));
		const where = `By the estimate ${spec.name} is ${low ?? ''} to ${high ?? ''} mm above the bathroom floor`;
		return {
			pays: 'not known',
			says: `${where}, the seat ${inMm(told.y - told.floor)}: who pays is not known. ${asks}`
		};
	}
	const off = least < 0 ? spec.below : most > 0 ? spec.above : undefined;
	if (!off) return { pays: 'nobody', says: `${spec.met}${guess}: nobody pays.` };
	const ends = line === 'chair-level' ? [told.y - at.from] : [least, most];
	const [near, far] = ends.map(Math.abs).toSorted((a, b) => a - b);
	const by = how === 'estimated' ? `${whole(near ?? 0)} to ${whole(far ?? 0)} mm` : inMm(near ?? 0);
	return { pays: off.pays, says: `The seat is ${by} ${off.words}${guess}: ${off.who}.` };
}

/** A seat with the floor its height is told above. Units and frame: mm from the datum line. */
interface Told {
	readonly y: number;
	readonly floor: number;
}

/** How high a seat is, and how much that is of the lower leg where somebody took it. */
function highWords(scene: Scene, person: string, { y, floor }: Told, feet: Known | string): string {
	const under = scene.bodies[person]?.dims.popliteal?.value;
	const high = `The seat is ${inMm(y - floor)} above the bathroom floor`;
	if (under === undefined || typeof feet === 'string' || feet.how === 'estimated') return `${high}.`;
	const share = Math.round((1000 * (y - feet.at.to + under)) / under) / 10;
	return `${high}, ${String(share)} % of the height under the knee.`;
}

/**
 * The heights that pull apart for the seat of a plan, and who pays for the one it has. Which leads is told by the wishes
 * that were bound to the seat: it is decided there.
 * Shape: undefined without a seat; a line nobody can tell is left out, and asked for.
 */
export function seatLinesOf({ scene: both, rows, marks }: Planned): SeatLines | undefined {
	const seat = marks.find(({ accessory }) => accessory.kind === 'seat');
	if (!seat) return undefined;
	const { id, when, for: person } = seat.accessory;
	const later = when === 'later';
	const scene = (later && both.later) || both;
	const floor = scene.room.bathroomFloor;
	const told = { y: seat.place.y, floor };
	const wishes = rows.filter((b) => b.row.origin === 'wish' && b.about[0] === id && (b.later ?? false) === later);
	const all = LINES.map((line) => {
		const leads = wishes.some(({ row }) => row.measure === SPECS[line].measure);
		return { line, leads, known: knownOf(scene, line, seat) };
	});
	const lines = all.flatMap(({ line, leads, known }): readonly SeatLine[] => {
		if (typeof known === 'string') return [];
		const { at, how } = known;
		const aboveFloor = { from: mm(at.from - floor), to: mm(at.to - floor) };
		return [{ line, name: SPECS[line].name, at, aboveFloor, how, leads, ...paid(line, known, told) }];
	});
	// Nobody is asked how high a chair is that is not there.
	const asks = all.flatMap(({ line, leads, known }) =>
		typeof known === 'string' && (leads || line !== 'chair-level') ? [known] : []
	);
	return {
		seat: id,
		at: told.y,
		aboveFloor: mm(told.y - floor),
		says: highWords(scene, person, told, knownOf(scene, 'feet-flat', seat)),
		lines: lines.toSorted((a, b) => Number(b.leads) - Number(a.leads)),
		asks: [...new Set(asks)]
	};
}
