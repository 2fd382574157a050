import { bodiesOf } from '#core/body/body.ts';
import { variantOf, type Accessory, type Mark } from '#core/case/accessory.ts';
import { caseSchema, type Case } from '#core/case/record.ts';
import { roomOf } from '#core/enclosure/room.ts';
import type { WallId } from '#core/geometry/frame.ts';
import type { Plan } from '#core/plan.ts';
import type { Finding } from '#core/rules/row.ts';
import { carryingOf } from '#core/structure/carrying.ts';
import { reachOf } from '#core/reach/reach.ts';
import { demandOf } from '#core/structure/demand.ts';
import { mm } from '#core/units/length.ts';

const measured = <T>(value: T) => ({ value, how: 'measured' as const });

/** A transfer compartment 914 x 914 x 2134 with its seat on the left, as somebody would record it. */
export function fixtureCase(change: (c: any) => void = () => undefined): Case {
	const c = {
		schema: 'graspline-case',
		version: 1,
		id: 'example-0417',
		tape: { unit: 'mm', step: 5 },
		lead: 'person-led',
		reference: 'ada-2010',
		people: {
			client: {
				role: 'client',
				sex: measured('female'),
				age: measured(71),
				mass: measured(68),
				body: { stature: measured(1600), shoulderAboveSeat: measured(560), shoulderBreadth: measured(360) },
				arms: { left: { toGrip: measured(640) }, right: { toGrip: measured(560) } },
				sittingForward: measured(40)
			}
		},
		enclosure: {
			type: 'transfer',
			seatWall: 'left',
			width: measured(914),
			depth: measured(914),
			height: measured(2134),
			datum: measured(1000),
			fall: measured(0.0208),
			fallsTo: 'back',
			walls: {
				back: {
					studs: { a: { x: 40, width: 38, how: 'measured' }, b: { x: 446, width: 38, how: 'measured' } },
					backing: { sheet: { kind: 'sheet', x0: 38, x1: 876, y0: -320, y1: 230, thickness: 18, how: 'observed' } },
					keepOuts: {},
					surveyed: true
				},
				left: { surveyed: false },
				right: {
					facing: { kind: 'panel', thickness: 6 },
					studs: {
						a: { x: 30, width: 38, how: 'measured' },
						b: { x: 436, width: 38, how: 'measured' },
						c: { x: 842, width: 38, how: 'told' }
					},
					backing: { sheet: { kind: 'declared', x0: 38, x1: 876, y0: -320, y1: 230, load: 1334, document: 'panel paper', fixing: '3 screws' } },
					keepOuts: {
						rodA: { kind: 'rod', x0: 0, x1: 38, y0: -1000, y1: 1030, how: 'measured' },
						rodB: { kind: 'rod', x0: 876, x1: 914, y0: -1000, y1: 1030, how: 'measured' },
						seam: { kind: 'seam', x0: 38, x1: 876, y0: 262, y1: 338, how: 'measured' },
						pipe: { kind: 'pipe', x0: 540, x1: 540.5, y0: -960, y1: 15, how: 'told' }
					},
					surveyed: false
				}
			}
		}
	};
	change(c);
	return caseSchema.parse(c);
}

/** Where each accessory of the example goes. */
export const EXAMPLE: readonly (readonly [string, string, WallId, number, number])[] = [
	['seat', 'seat-600', 'left', 470, -560],
	['control', 'control-lever', 'right', 540, 100],
	['handset-rest', 'rest', 'right', 300, 180],
	['bar-control', 'bar-600', 'right', 100, -150],
	['bar-back', 'bar-450', 'back', 300, -150],
	['entry-bar', 'post-bar-600', 'right', 835, -40]
];

/** A plan with marks at given places; findings about the wall are made from what is behind it. */
export function fixturePlan(c: Case, places = EXAMPLE): Plan {
	const room = roomOf(c.enclosure);
	const bodies = bodiesOf(c.people);
	const holds = carryingOf(room, c, demandOf(c));
	const marks = places.map(([id, part, wall, x, y]): Mark => {
		const variant = variantOf(part);
		const accessory: Accessory = {
			id,
			kind: variant.kind,
			purpose: 'steady',
			for: 'client',
			hands: ['left', 'right'],
			slots: [],
			because: 'row',
			reason: 'To steady oneself while seated.'
		};
		return { accessory, variant, stage: 'proposed', place: { wall, variant: part, x: mm(x), y: mm(y), turn: 0 } };
	});
	const findings = marks.flatMap((m): Finding[] => {
		const asks = m.variant.brackets.flatMap((b) => {
			const held = holds.at(m.place.wall, b.kind, m.place.x + b.x, m.place.y + b.y);
			return held.sure < 0 && held.best >= 0 ? [held.missing ?? ''] : [];
		});
		const row = { id: 'own/carries', origin: 'wall', says: 'It carries.' } as unknown as Finding['row'];
		if (m.variant.brackets.length === 0) return [];
		const about = [m.accessory.id];
		return asks[0] === undefined
			? [{ row, strength: 'must', about, answer: 'inside' }]
			: [{ row, strength: 'must', about, answer: 'unknown', missing: asks[0] }];
	});
	return {
		scene: { c, room, holds, bodies, arms: reachOf(bodies) },
		wanted: marks.map((m) => m.accessory),
		rows: [],
		findings,
		marks,
		status: 'optimal',
		cost: [],
		bound: [],
		evaluations: 0,
		nodes: 0,
		basis: findings.some((f) => f.answer === 'unknown') ? 'provisional' : 'settled',
		digest: '4f3a91c07be24f3a91c07be24f3a91c07be24f3a91c07be24f3a91c07be20000',
		probes: { reasons: [], leans: [], questions: [] }
	};
}
