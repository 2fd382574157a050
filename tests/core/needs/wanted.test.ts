import { describe, expect, test } from 'vitest';
import { variantOf } from '#core/case/accessory.ts';
import { sidesOf } from '#core/case/roles.ts';
import type { Case } from '#core/case/record.ts';
import { handsFor } from '#core/body/hands.ts';
import { wantedFor } from '#core/needs/wanted.ts';
import { questionOf } from '#core/plan.ts';
import { packsFor } from '#core/rules/packs/index.ts';
import type { Pack, Require } from '#core/rules/row.ts';
import { betterOnLegs } from '#core/structure/carrying.ts';
import { caseWith, sceneOf } from '../rules/baseline.ts';

const told = <T>(value: T) => ({ value, how: 'told' as const });
const wanted = (c: Case) => wantedFor(packsFor(c.reference), c, sceneOf(c).bodies, betterOnLegs(sceneOf(c).holds));
const ids = (c: Case) => wanted(c).map((a) => a.id);
const alone = { case: { reference: null } };

describe('what is wanted', () => {
	test('[needs R1] washing seated, walking in, with the document chosen', () => {
		expect(ids(caseWith())).toEqual(['seat', 'control', 'handset-rest', 'bar-back', 'bar-control', 'entry-bar']);
	});

	test('[needs R2] without a document no bar on the far wall for one who never stands to wash', () => {
		expect(ids(caseWith(alone))).toEqual(['seat', 'control', 'handset-rest', 'bar-back', 'entry-bar']);
	});

	test('[needs R2] where a document alone asks for it, the reason says so', () => {
		const bar = wanted(caseWith()).find((a) => a.id === 'bar-control');
		expect(bar).toMatchObject({ because: 'ADA-REQ-BAR-CONTROL' });
		expect(bar?.reason).toContain('ADA Standards 2010, 608.3.1');
	});

	test('[needs R1] one who stands to wash gets no seat and a bar to steady on', () => {
		const c = caseWith({ ...alone, client: { washes: told('standing'), transfer: told('walks') } });
		expect(ids(c)).toEqual(['control', 'handset-rest', 'handset-holder', 'bar-control', 'entry-bar']);
	});

	test.each([
		['walks', true],
		['stand-pivot', true],
		['sitting-pivot', false],
		['slide-board', false],
		['hoist', false]
	])('[needs R1] who comes in by %s gets an entry bar: %s', (transfer, has) => {
		expect(ids(caseWith({ ...alone, client: { transfer: told(transfer) } })).includes('entry-bar')).toBe(has);
	});

	test('[needs R1] who cannot rise gets no bar to rise by', () => {
		expect(ids(caseWith({ ...alone, client: { rises: told('cannot') } }))).not.toContain('bar-back');
	});

	test('[needs R3] every accessory has a reason, a row, slots, and a purpose', () => {
		for (const a of wanted(caseWith())) {
			expect(a.reason).toMatch(/\.$/);
			expect(a.because).not.toBe('');
			expect(a.slots.length).toBeGreaterThan(0);
			expect(a.for).toBe('client');
		}
	});

	test.each(['left', 'right'] as const)(
		'[needs R4] seat on the %s: slots keep to the walls and to parts that fit them',
		(seatWall) => {
			const c = caseWith({ enclosure: { seatWall } });
			const other = seatWall === 'left' ? 'right' : 'left';
			const walls = Object.fromEntries(wanted(c).map((a) => [a.id, [...new Set(a.slots.map((s) => s.wall))]]));
			expect(walls).toEqual({
				seat: [seatWall],
				control: seatWall === 'left' ? ['back', 'right'] : ['back', 'left'],
				'handset-rest': seatWall === 'left' ? ['back', 'right'] : ['back', 'left'],
				'bar-back': ['back'],
				'bar-control': [other],
				'entry-bar': ['left', 'right']
			});
			for (const { slots } of wanted(c)) {
				for (const { variant } of slots) {
					const { outline } = variantOf(variant);
					expect(outline.x1 - outline.x0).toBeLessThanOrEqual(914.4);
				}
			}
		}
	);

	test('[needs R4] bars share one height line, nothing else does', () => {
		const lines = wanted(caseWith()).filter((a) => a.line === 'bars');
		expect(lines.map((a) => a.id)).toEqual(['bar-back', 'bar-control']);
	});

	test.each([
		['right', ['left'], ['left', 'right']],
		['left', ['right'], ['left', 'right']],
		['both', ['left', 'right'], ['left', 'right']],
		['neither', ['left', 'right'], ['left', 'right']]
	] as const)('[needs R5] weaker on the %s: water by %j, bars by %j', (side, water, bars) => {
		const { person } = sceneOf(caseWith({ client: { weakerSide: told(side) } })).bodies['client'] ?? {};
		if (!person) throw new Error('client');
		expect(handsFor('run-water', person)).toEqual(water);
		expect(handsFor('rest-handset', person)).toEqual(water);
		expect(handsFor('rise', person)).toEqual(bars);
		expect(handsFor('call', person)).toEqual(bars);
	});

	test('[needs R5] a weaker hand seen not to hold gets no bar', () => {
		const client = { weakerSide: told('left'), weakerHolds: told(false) };
		const { person } = sceneOf(caseWith({ client })).bodies['client'] ?? {};
		if (!person) throw new Error('client');
		for (const purpose of ['steady', 'rise', 'step-in', 'step-out', 'call'] as const) {
			expect(handsFor(purpose, person)).toEqual(['right']);
		}
	});

	test('[needs R6] with one hand that holds there is a bar on both sides of the entry', () => {
		const one = { weakerSide: told('left'), weakerHolds: told(false), transfer: told('walks') };
		expect(ids(caseWith({ ...alone, client: one }))).toContain('exit-bar');
		expect(ids(caseWith({ ...alone, client: { transfer: told('walks') } }))).not.toContain('exit-bar');
	});

	test('[needs R7] in a shower chair, lifted in: no seat and no bar', () => {
		const client = { washes: told('in-chair'), transfer: told('hoist'), rises: told('cannot') };
		expect(ids(caseWith({ ...alone, client }))).toEqual(['control', 'handset-rest']);
	});

	test.each([
		['declared for a seat', {}, false],
		['spruce of one board', { kind: 'blocking', thickness: 38, gravity: 0.42, how: 'measured' }, true],
		['the same, told', { kind: 'blocking', thickness: 38, gravity: 0.42, how: 'told' }, true],
		['thin sheet', { kind: 'sheet', thickness: 12, how: 'measured' }, false]
	])('[needs R10] on a wall with %s a seat with front legs is offered: %s', (_, change, offered) => {
		const { walls } = caseWith().enclosure;
		const area = { x0: 0, x1: 914, y0: 0, y1: 900 };
		const backing = Object.keys(change).length > 0 ? { one: { ...area, ...change } } : walls.left.backing;
		const c = caseWith({ enclosure: { walls: { ...walls, left: { ...walls.left, surveyed: true, backing } } } });
		const seats = wanted(c).find(({ id }) => id === 'seat')?.slots ?? [];
		expect(seats.some(({ variant }) => variant === 'seat-front-legs-18in')).toBe(offered);
		expect(seats.some(({ variant }) => variant === 'seat-18in')).toBe(true);
		expect(seats.some(({ variant }) => variant === 'seat-legs-20in')).toBe(true);
	});

	test('[needs R10] nor on a wall nobody looked behind', () => {
		const { walls } = caseWith().enclosure;
		const c = caseWith({ enclosure: { walls: { ...walls, left: { ...walls.left, surveyed: false, backing: {} } } } });
		const seats = wanted(c).find(({ id }) => id === 'seat')?.slots ?? [];
		expect(seats.some(({ variant }) => variant.startsWith('seat-front-legs'))).toBe(false);
	});

	test('[needs R8] controls apart and a second outlet are wanted each by itself', () => {
		const c = caseWith({ ...alone, enclosure: { controls: 'apart', secondOutlet: true } });
		const kinds = ids(c).filter((id) => ['control', 'temperature', 'diverter', 'outlet'].includes(id));
		expect(kinds).toEqual(['control', 'temperature', 'diverter', 'outlet']);
	});

	test.each([
		['cord', true],
		['worn', false],
		['none-wanted', false],
		[undefined, false]
	])('[needs R8] who calls for help by %s wants a call cord: %s', (way, has) => {
		const c = caseWith({ ...alone, client: way === undefined ? {} : { callsHelp: told(way) } });
		const cord = wanted(c).find(({ kind }) => kind === 'call-cord');
		expect(cord !== undefined).toBe(has);
		if (!cord) return;
		expect(cord).toMatchObject({ id: 'call-cord', purpose: 'call', because: 'EV-REQ-CORD' });
		expect(cord.slots.map(({ wall }) => wall)).toEqual(['back', 'left', 'right']);
	});

	test('[needs R4] on an open side only a post may stand, over a bath only a board is sat on', () => {
		const { walls } = caseWith().enclosure;
		const open = { ...walls, right: { ...walls.right, stands: false } };
		const entry = wanted(caseWith({ enclosure: { type: 'corner', walls: open } })).find((a) => a.id === 'entry-bar');
		expect(entry?.slots.filter((s) => s.wall === 'right').map((s) => s.variant)).toEqual(['post']);
		const seat = wanted(caseWith({ enclosure: { type: 'over-bath' } })).find((a) => a.id === 'seat');
		expect(seat?.slots).toEqual([{ wall: 'back', variant: 'bath-board' }]);
	});

	test('[needs R9] what is wanted later stands beside what is wanted now, and says how to wash until then', () => {
		const client = { washes: told('standing'), transfer: told('walks'), later: { washes: told('seated') } };
		const { wanted: all } = questionOf(caseWith({ ...alone, client }));
		const when = Object.fromEntries(all.map((a) => [a.id, a.when]));
		expect(when).toEqual({
			seat: 'later',
			control: 'both',
			'handset-rest': 'both',
			'handset-holder': 'now',
			'bar-back': 'later',
			'bar-control': 'now',
			'entry-bar': 'both'
		});
		expect(all.find((a) => a.id === 'seat')?.reason).toContain('until it is fitted the client washes standing');
	});

	test('[needs R28] an L bar and a seat before a back rest are offered only where a row asks for one', () => {
		const parts = (c: Case) => wanted(c).flatMap((a) => a.slots.map(({ variant }) => variantOf(variant)));
		const special = (c: Case) => parts(c).filter((v) => v.upright ?? v.backRest);
		const asks = (row: Partial<Require>): Pack => ({
			id: 'test',
			name: 'test',
			judgement: [],
			rows: [],
			requires: [
				{
					id: 'TEST-REQ',
					document: 'Invented document',
					edition: '1',
					clause: '1',
					source: { title: 'invented for this test', how: 'own' },
					kind: 'horizontal-bar',
					purpose: 'rise',
					walls: ['beside'],
					accessory: 'bar-back',
					says: 'A bar with an upright leg.',
					...row
				}
			]
		});
		expect(special(caseWith())).toEqual([]);
		const c = caseWith({ enclosure: { width: told(1600) }, case: { tape: { unit: 'mm', step: 5 } } });
		const slots = (row: Partial<Require>) =>
			wantedFor([asks(row)], c, sceneOf(c).bodies).flatMap((a) => a.slots.map(({ variant }) => variant));
		expect(slots({ part: 'l-bar' })).toEqual([
			'l-bar-600-left',
			'l-bar-600-right',
			'l-bar-750-left',
			'l-bar-750-right',
			'l-bar-1000-750-left',
			'l-bar-1000-750-right'
		]);
		expect(slots({}).filter((id) => id.startsWith('l-bar'))).toEqual([]);
		const seat = { kind: 'seat', purpose: 'sit', walls: ['seat-wall'], accessory: 'seat' } as const;
		expect(slots({ ...seat, part: 'seat-off-wall' })).toEqual(['seat-off-wall-450', 'seat-off-wall-500']);
	});

	test.each([
		['left', 'back'],
		['right', 'back'],
		['back', 'left']
	] as const)(
		'[needs R28] seat on the %s wall: the wall at the corner it is set out from is the %s one',
		(seatWall, corner) => {
			expect(sidesOf(caseWith({ enclosure: { seatWall } }).enclosure, 'corner-wall')).toEqual([corner]);
		}
	);
});
