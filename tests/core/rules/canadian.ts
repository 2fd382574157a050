import { variantOf, type Mark, type Variant } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { bind } from '#core/rules/bind.ts';
import { judge } from '#core/rules/judge.ts';
import type { Answer, Pack } from '#core/rules/row.ts';
import { mm } from '#core/units/length.ts';
import { caseWith, mark, otherHand, sceneOf } from './baseline.ts';

const measured = <T>(value: T) => ({ value, how: 'measured' as const });
const strong = {
	backing: {
		all: {
			kind: 'declared',
			x0: 0,
			x1: 2000,
			y0: 0,
			y1: 2100,
			load: 1500,
			document: 'drawing',
			fixing: 'screws',
			holds: 'bars-and-seat'
		}
	},
	surveyed: true
};

/** The room of the base case ON-K0: 1525 by 915, open on its long side, seat on the left wall. Units: mm. */
export const shower = ({ enclosure = {}, client = {}, ...rest }: Parameters<typeof caseWith>[0] = {}): Case =>
	caseWith({
		...rest,
		client: {
			arms: { left: { toGrip: measured(650) }, right: { toGrip: measured(650) } },
			lean: measured({ kind: 'free', at: 300 }),
			sittingForward: measured(0),
			...client
		},
		enclosure: {
			type: 'roll-in',
			width: measured(1525),
			depth: measured(915),
			height: measured(2134),
			entryWidth: measured(1525),
			clearWidth: measured(915),
			clearLength: measured(1525),
			threshold: measured(10),
			hose: measured(1800),
			water: measured(45),
			demand: 1300,
			walls: { back: strong, left: strong, right: strong },
			...enclosure
		}
	});

/** What a test changes in the base case. Units: mm. */
export interface Change {
	readonly seat?: { readonly width?: number; readonly depth?: number; readonly top?: number };
	readonly upright?: { readonly length?: number; readonly axis?: number; readonly foot?: number };
	readonly lBar?: {
		readonly length?: number;
		readonly height?: number;
		readonly leg?: number;
		readonly from?: number;
		readonly plain?: boolean;
	};
	/** From the edge of the seat to its nearest edge, and the height of its middle. */
	readonly valve?: { readonly from?: number; readonly height?: number };
	readonly rest?: number;
	readonly holder?: number;
	readonly gap?: number;
	readonly diameter?: number;
}

const REAR = 20;
/** Half of what the hand works of the valve. */
const HALF = 50;

/**
 * The marks of the base case ON-K0: seat 600 by 410, top 470; vertical bar 1000 long, 65 from the entry line, from 620 up;
 * L bar 1000 long at 810, its upright 750 long at 450; bars 32 thick, gap 40; valve at 1050, 300 from the edge of the seat;
 * holders at 1200 and 2030.
 */
export function marksOf(change: Change = {}): readonly Mark[] {
	const { width = 600, depth = 410, top = 470 } = change.seat ?? {};
	const { length = 1000, axis = 65, foot = 620 } = change.upright ?? {};
	const { length: along = 1000, height = 810, leg = 750, from = 450, plain = false } = change.lBar ?? {};
	const valve = { from: 300, height: 1050, ...change.valve };
	const section = { gap: mm(change.gap ?? 40), diameter: mm(change.diameter ?? 32) };
	const tube = { ...section, gripOff: mm(section.gap + section.diameter / 2), brackets: [] };
	const seat: Variant = {
		...variantOf('seat-600'),
		length: mm(width),
		outline: { x0: -width / 2, y0: -140, x1: width / 2, y1: 0 },
		grip: { x0: -width / 2, y0: 0, x1: width / 2, y1: 0 },
		gap: mm(REAR),
		depth: mm(REAR + depth),
		gripOff: mm(REAR + depth)
	};
	const post: Variant = {
		...variantOf('post-bar-1000'),
		...tube,
		length: mm(length),
		grip: { x0: 0, y0: 0, x1: 0, y1: length }
	};
	const model = variantOf(plain ? 'bar-1060' : 'l-bar-1000-750-left');
	const bar: Variant = {
		...model,
		...tube,
		length: mm(along),
		grip: { x0: 0, y0: 0, x1: along, y1: 0 },
		...(model.upright && { upright: { ...model.upright, length: mm(leg) } })
	};
	const lever: Variant = {
		...variantOf('control-lever'),
		grip: { x0: -HALF, y0: -HALF, x1: HALF, y1: HALF }
	};
	const rest = variantOf('rest');
	return [
		mark('seat', { purpose: 'sit', wall: 'left', x: 560, y: top, variant: seat }),
		mark('entry-bar', { purpose: 'step-in', wall: 'left', x: axis, y: foot, variant: post }),
		mark('bar-back', { purpose: 'rise', wall: 'back', x: from, y: height, variant: bar }),
		mark('control', {
			purpose: 'run-water',
			wall: 'back',
			x: REAR + depth + valve.from + HALF,
			y: valve.height,
			variant: lever
		}),
		mark('handset-rest', { purpose: 'rest-handset', wall: 'back', x: 640, y: change.rest ?? 1200, variant: rest }),
		mark('handset-high', {
			purpose: 'fix-handset',
			wall: 'back',
			x: 640,
			y: change.holder ?? 2030,
			variant: rest
		})
	];
}

/** A mark on another wall. */
export const onto = (marks: readonly Mark[], id: string, wall: WallId): readonly Mark[] =>
	marks.map((m) => (m.accessory.id === id ? { ...m, place: { ...m.place, wall } } : m));

/** The marks but one. */
export const without = (marks: readonly Mark[], id: string): readonly Mark[] =>
	marks.filter((m) => m.accessory.id !== id);

/** The same for the other hand, the upright part of an L bar at its other end. */
export function inMirror(c: Case, marks: readonly Mark[]): readonly [Case, readonly Mark[]] {
	const [other, theirs] = otherHand(c, marks);
	const turned = (m: Mark): Mark => {
		const { upright } = m.variant;
		if (!upright) return m;
		const at = upright.at === 'left' ? 'right' : 'left';
		return { ...m, variant: { ...m.variant, upright: { ...upright, at } } };
	};
	return [other, theirs.map(turned)];
}

const WORST: readonly Answer[] = ['not-here', 'inside', 'ask', 'unknown', 'borderline', 'outside'];

/** Answers of a document by row, the worst where a row speaks of several marks. */
export function answersBy(pack: Pack, c: Case, marks: readonly Mark[]): Readonly<Record<string, Answer>> {
	const wanted = marks.map((m) => m.accessory);
	const found: Record<string, Answer> = {};
	for (const { row, answer } of judge(sceneOf(c), bind([pack], wanted, c), marks)) {
		const before = found[row.id];
		if (!before || WORST.indexOf(answer) > WORST.indexOf(before)) found[row.id] = answer;
	}
	return found;
}
