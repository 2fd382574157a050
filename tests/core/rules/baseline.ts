import { bodiesOf } from '#core/body/body.ts';
import { variantOf, type Kind, type Mark, type Purpose, type Variant } from '#core/case/accessory.ts';
import { caseSchema, type Case } from '#core/case/record.ts';
import { roomOf } from '#core/enclosure/room.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { Scene } from '#core/measures/scene.ts';
import { reachOf } from '#core/reach/reach.ts';
import { carryingOf } from '#core/structure/carrying.ts';
import { demandOf } from '#core/structure/demand.ts';
import { mirroredCase } from '#core/enclosure/mirrored-case.ts';
import { mirroredWall, wallLength } from '#core/geometry/frame.ts';
import { bind } from '#core/rules/bind.ts';
import { judge } from '#core/rules/judge.ts';
import { ADA_2010 } from '#core/rules/packs/ada-2010.ts';
import type { Answer } from '#core/rules/row.ts';
import { inches, mm } from '#core/units/length.ts';

const measured = <T>(value: T) => ({ value, how: 'measured' as const });
const inch = (n: number) => measured(inches(n));
const reinforced = {
	backing: {
		all: {
			kind: 'declared',
			x0: 0,
			x1: 2000,
			y0: 0,
			y1: 2100,
			load: 1300,
			document: 'drawing',
			fixing: 'screws',
			holds: 'bars-and-seat'
		}
	},
	surveyed: true
};

/** The record of baseline T1 of the clause fixtures: a transfer compartment of 36 by 36 in, seat on the left wall. */
const T1 = {
	schema: 'graspline-case',
	version: 1,
	id: 'baseline',
	tape: { unit: 'in', step: inches(0.25) },
	lead: 'person-led',
	reference: 'ada-2010',
	people: {
		client: {
			role: 'client',
			sex: measured('female'),
			age: measured(50),
			mass: measured(68),
			body: {
				stature: measured(1626),
				shoulderAboveSeat: measured(567),
				shoulderBreadth: measured(365),
				popliteal: measured(388),
				hipBreadth: measured(399),
				shoulderStanding: measured(1332),
				wristStanding: measured(794),
				handLength: measured(181)
			},
			arms: { left: { toGrip: measured(611) }, right: { toGrip: measured(611) } },
			washes: measured('seated'),
			lean: measured({ kind: 'none' }),
			transfer: measured('stand-pivot'),
			rises: measured('with-arms'),
			movesIn: measured('left'),
			movesOut: measured('right'),
			chair: { seatHeight: measured(480) }
		}
	},
	enclosure: {
		type: 'transfer',
		seatWall: 'left',
		width: inch(36),
		depth: inch(36),
		height: inch(84),
		datum: inch(0),
		entryWidth: inch(36),
		clearWidth: inch(36),
		clearLength: inch(48),
		turning: inch(60),
		threshold: inch(0.5),
		fall: measured(0),
		fallsTo: 'back',
		hose: inch(60),
		water: measured(((118 - 32) * 5) / 9),
		walls: { back: reinforced, left: reinforced, right: reinforced }
	}
};

/** A record with some of its branches replaced, read as a case. */
export function caseWith(changes: { enclosure?: object; client?: object; others?: object; case?: object } = {}): Case {
	return caseSchema.parse({
		...T1,
		...changes.case,
		people: { client: { ...T1.people.client, ...changes.client }, ...changes.others },
		enclosure: { ...T1.enclosure, ...changes.enclosure }
	});
}

/** The scene of a case. */
export function sceneOf(c: Case): Scene {
	const bodies = bodiesOf(c.people);
	const room = roomOf(c.enclosure);
	return { c, bodies, arms: reachOf(bodies), room, holds: carryingOf(room, c, demandOf(c)) };
}

/** A part at a place, by the figures a test gives. Units: mm, wall frame. */
export function mark(
	id: string,
	on: { purpose: Purpose; wall: WallId; x: number; y: number; variant: Variant; hands?: readonly ('left' | 'right')[] }
): Mark {
	const { purpose, wall, x, y, variant, hands = ['left', 'right'] } = on;
	return {
		accessory: {
			id,
			when: 'now',
			kind: variant.kind,
			purpose,
			for: 'client',
			hands,
			slots: [{ wall, variant: variant.id }],
			because: 'test',
			reason: 'test'
		},
		place: { wall, variant: variant.id, x: mm(x), y: mm(y), turn: 0 },
		variant,
		stage: 'proposed'
	};
}

const inchRect = (x0: number, y0: number, x1: number, y1: number) => ({
	x0: inches(x0),
	y0: inches(y0),
	x1: inches(x1),
	y1: inches(y1)
});

/** A bar by inches: centre to centre, diameter, gap. Its place is the left or lower flange centre. */
export function barPart(
	kind: Extract<Kind, 'horizontal-bar' | 'vertical-bar'>,
	{ length, diameter = 1.25, gap = 1.5 }: { length: number; diameter?: number; gap?: number }
): Variant {
	const model = variantOf(kind === 'vertical-bar' ? 'post-bar-450' : 'bar-450');
	const [x, y] = kind === 'vertical-bar' ? [0, length] : [length, 0];
	return {
		...model,
		id: `${model.id}-in-inches`,
		grip: inchRect(0, 0, x, y),
		outline: inchRect(-1.5, -1.5, x + 1.5, y + 1.5),
		brackets: [],
		length: inches(length),
		diameter: inches(diameter),
		gap: inches(gap)
	};
}

/** A part whose operable envelope and outline are given in inches about its place. */
export const workedPart = (kind: 'control' | 'handset-rest', half: { across: number; up: number }): Variant => ({
	...variantOf(kind === 'control' ? 'control-lever' : 'rest'),
	grip: inchRect(-half.across, -half.up, half.across, half.up),
	outline: inchRect(-half.across, -half.up, half.across, half.up)
});

interface Inches {
	readonly seat?: { from: number; to: number; rear: number; front: number; top: number };
	readonly control?: { fromBack: number; bottom: number; top: number };
	readonly barTop?: number;
	readonly gap?: number;
	readonly diameter?: number;
}

/**
 * The marks of baseline T1: seat 1.0 to 33.5 from the back wall, rear 2.0, front 15.5, top 18.0; bars 1.25 thick, gap 1.5,
 * tops 34.0, the back-wall bar ending 18.0 from the control wall; control 40-46 high, 24.0 from the back wall.
 */
export function marksOf(change: Inches = {}): readonly Mark[] {
	const seat = change.seat ?? { from: 1, to: 33.5, rear: 2, front: 15.5, top: 18 };
	const control = change.control ?? { fromBack: 24, bottom: 40, top: 46 };
	const { barTop = 34, gap = 1.5, diameter = 1.25 } = change;
	const seatPart: Variant = {
		...variantOf('seat-820'),
		length: inches(seat.to - seat.from),
		gap: inches(seat.rear),
		depth: inches(seat.front)
	};
	const axis = inches(barTop - diameter / 2);
	return [
		mark('seat', {
			purpose: 'sit',
			wall: 'left',
			x: inches(36 - (seat.from + seat.to) / 2),
			y: inches(seat.top),
			variant: seatPart
		}),
		mark('control', {
			purpose: 'run-water',
			wall: 'right',
			x: inches(control.fromBack),
			y: inches((control.top + control.bottom) / 2),
			variant: workedPart('control', { across: 0, up: (control.top - control.bottom) / 2 })
		}),
		mark('bar-back', {
			purpose: 'rise',
			wall: 'back',
			x: inches(18),
			y: axis,
			variant: barPart('horizontal-bar', { length: 13, diameter, gap })
		}),
		mark('bar-control', {
			purpose: 'steady',
			wall: 'right',
			x: inches(5),
			y: axis,
			variant: barPart('horizontal-bar', { length: 29, diameter, gap })
		})
	];
}

/** A record of a standard roll-in compartment of 60 by 30 in, seat or who washes on the left wall. */
export const rollIn = ({ enclosure = {}, ...rest }: Parameters<typeof caseWith>[0] = {}): Case =>
	caseWith({
		...rest,
		enclosure: {
			type: 'roll-in',
			width: inch(60),
			depth: inch(30),
			entryWidth: inch(60),
			clearWidth: inch(30),
			clearLength: inch(60),
			threshold: inch(0.25),
			...enclosure
		}
	});

/** A record of an alternate roll-in of 60 by 36 in, the wall beside the entry 24 in long at the left, the seat on it. */
export const alternate = ({ enclosure = {}, ...rest }: Parameters<typeof caseWith>[0] = {}): Case =>
	rollIn({
		...rest,
		enclosure: {
			type: 'alternate-roll-in',
			depth: inch(36),
			entryWidth: inch(36),
			seatWall: 'front',
			frontWall: { side: 'left', length: inch(24) },
			walls: { back: reinforced, left: reinforced, right: reinforced, front: { ...reinforced, stands: true } },
			...enclosure
		}
	});

/** Who washes on her feet, so that no seat is wanted. */
export const STANDING = { washes: measured('standing') } as const;

/** The same case and marks for the other hand. */
export function otherHand(c: Case, marks: readonly Mark[]): readonly [Case, readonly Mark[]] {
	const room = { width: c.enclosure.width.value, depth: c.enclosure.depth.value };
	const across = ({ accessory, place, variant, stage }: Mark): Mark => {
		const wall = mirroredWall(place.wall);
		const along = variant.kind === 'horizontal-bar' ? variant.length : 0;
		return {
			accessory: { ...accessory, slots: [{ wall, variant: variant.id }] },
			place: { ...place, wall, x: mm(wallLength(place.wall, room) - place.x - along) },
			variant,
			stage
		};
	};
	return [mirroredCase(c), marks.map(across)];
}

/** Answers of the document by row, the worst where a row speaks of several marks. */
export function answers(c: Case, marks: readonly Mark[]): Readonly<Record<string, Answer>> {
	const scene = sceneOf(c);
	const rows = bind(
		[ADA_2010],
		marks.map((m) => m.accessory),
		c
	);
	const worst: readonly Answer[] = ['not-here', 'inside', 'ask', 'unknown', 'borderline', 'outside'];
	const found: Record<string, Answer> = {};
	for (const f of judge(scene, rows, marks)) {
		const before = found[f.row.id];
		if (!before || worst.indexOf(f.answer) > worst.indexOf(before)) found[f.row.id] = f.answer;
	}
	return found;
}

/** Rows that are neither inside nor ask nor speak of anything here. */
export const outside = (found: Readonly<Record<string, Answer>>): readonly string[] =>
	Object.keys(found).filter((id) => !['inside', 'ask', 'not-here'].includes(found[id] ?? ''));
