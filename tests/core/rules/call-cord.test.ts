import { describe, expect, test } from 'vitest';
import { variantOf } from '#core/case/accessory.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { bind } from '#core/rules/bind.ts';
import { judge } from '#core/rules/judge.ts';
import { CRAFT } from '#core/rules/packs/craft.ts';
import { EVIDENCE } from '#core/rules/packs/evidence.ts';
import { PERSON } from '#core/rules/packs/person.ts';
import type { Answer } from '#core/rules/row.ts';
import { inches } from '#core/units/length.ts';
import { caseWith, mark, sceneOf } from './baseline.ts';

const said = <T>(value: T) => ({ value, how: 'told' as const });

interface Hung {
	readonly client?: Record<string, unknown>;
	readonly enclosure?: Record<string, unknown>;
	readonly wall?: WallId;
	readonly x?: number;
	readonly y?: number;
}

const SEAT = mark('seat', {
	purpose: 'sit',
	wall: 'left',
	x: inches(18),
	y: inches(18),
	variant: variantOf('seat-600')
});
const CONTROL = mark('control', {
	purpose: 'run-water',
	wall: 'right',
	x: inches(18),
	y: inches(40),
	variant: variantOf('control-lever')
});

/** What rows answer about a cord whose upper bangle hangs there, beside the seat and the control of the baseline; with what is left. */
function about({ client = {}, enclosure = {}, wall = 'back', x = 400, y = 900 }: Hung) {
	const c = caseWith({ client, enclosure });
	const cord = mark('call-cord', { purpose: 'call', wall, x, y, variant: variantOf('call-cord') });
	const marks = c.people['client']?.washes?.value === 'seated' ? [SEAT, CONTROL, cord] : [CONTROL, cord];
	const rows = bind(
		[PERSON, EVIDENCE, CRAFT],
		marks.map((m) => m.accessory),
		c
	);
	return judge(sceneOf(c), rows, marks).filter((f) => f.about.includes('call-cord'));
}

const answer = (row: string, hung: Hung): Answer | undefined => about(hung).find((f) => f.row.id === row)?.answer;

describe('a call cord', () => {
	// Source: Approved Document M Volume 2, 4.30(e): bangles at 100 mm and at 800 to 1000 mm above the floor.
	test.each([
		[799, 'outside'],
		[800, 'inside'],
		[1000, 'inside'],
		[1001, 'outside']
	] as const)('[rules R13] with its upper bangle %d mm above the floor: %s', (y, is) => {
		expect(answer('EV-CORD-HEIGHT', { y })).toBe(is);
	});

	test('[rules R13] the floor is the one below the cord, not the one of the bathroom', () => {
		const enclosure = { fall: said(0.05), fallsTo: 'back' };
		expect(answer('EV-CORD-HEIGHT', { enclosure, y: 800 })).toBe('inside');
		// Over the low end of the fall, 914 mm from the entry, the floor is 46 mm lower.
		expect(answer('EV-CORD-HEIGHT', { enclosure, y: 960 })).toBe('outside');
		expect(answer('EV-CORD-HEIGHT', { enclosure, y: 950 })).toBe('inside');
	});

	test.each([
		['seated', ['BODY-REACH-CORD', 'WISH-REACH-CORD']],
		['standing', ['BODY-REACH-CORD-STANDING']],
		['both', ['WISH-REACH-CORD-STANDING']],
		['in-chair', ['BODY-REACH-CORD-CHAIR', 'WISH-REACH-CORD-CHAIR']]
	] as const)('[rules R13] who washes %s is asked whether she reaches it from there', (washes, ids) => {
		const asked = about({ client: { washes: said(washes) } }).map((f) => f.row.id);
		expect(asked.filter((id) => id.includes('REACH-CORD'))).toEqual(ids);
	});

	test('[rules R13] whoever runs the water, she reaches the cord herself', () => {
		const client = { runsWater: said('helper') };
		expect(answer('BODY-REACH-CORD', { client })).toBe('inside');
	});

	test('[rules R13] beside the seat it is reached, on the far wall by one who does not lean it is not', () => {
		expect(answer('BODY-REACH-CORD', { wall: 'back', x: 400 })).toBe('inside');
		expect(answer('WISH-REACH-CORD', { wall: 'back', x: 400 })).toBe('inside');
		expect(answer('BODY-REACH-CORD', { wall: 'right', x: 600 })).toBe('outside');
	});

	test('[rules R13] nothing on its wall crosses it, from the lower bangle up past the upper one', () => {
		const c = caseWith();
		const cord = mark('call-cord', { purpose: 'call', wall: 'back', x: 400, y: 900, variant: variantOf('call-cord') });
		const apart = (x: number, y: number): Answer | undefined => {
			const bar = mark('bar-back', { purpose: 'rise', wall: 'back', x, y, variant: variantOf('bar-300') });
			const rows = bind([PERSON], [cord.accessory, bar.accessory], c);
			return judge(sceneOf(c), rows, [cord, bar]).find((f) => f.row.id === 'ROOM-APART')?.answer;
		};
		// A flange of 40, half a bangle of 30, and 10 between them.
		expect(apart(480, 700)).toBe('inside');
		expect(apart(479, 700)).toBe('outside');
		expect(apart(300, 300)).toBe('outside');
		expect(apart(300, 1400)).toBe('outside');
	});

	// The seat of the baseline ends 395 from the wall behind it.
	test.each([
		['CRAFT-CORD-SEAT', { x: 245 }, 'inside'],
		['CRAFT-CORD-SEAT', { x: 244 }, 'outside'],
		['CRAFT-CORD-SEAT', { x: 545 }, 'inside'],
		['CRAFT-CORD-SEAT', { x: 546 }, 'outside'],
		['CRAFT-CORD-HEIGHT', { y: 849 }, 'outside'],
		['CRAFT-CORD-HEIGHT', { y: 850 }, 'inside'],
		['CRAFT-CORD-HEIGHT', { y: 950 }, 'inside'],
		['CRAFT-CORD-HEIGHT', { y: 951 }, 'outside'],
		['CRAFT-CORD-CONTROL', { wall: 'right', x: inches(18) + 287, y: inches(40) }, 'inside'],
		['CRAFT-CORD-CONTROL', { wall: 'right', x: inches(18) + 286, y: inches(40) }, 'outside']
	] as const)('[rules R13] %s at %j: %s', (row, hung, is) => {
		expect(answer(row, hung)).toBe(is);
	});

	test('[rules R13] how she calls for help is asked until it is recorded', () => {
		const asked = (client: Record<string, unknown>) => {
			const c = caseWith({ client });
			const rows = bind([EVIDENCE], [], c);
			return judge(sceneOf(c), rows, []).filter((f) => f.row.id === 'EV-CALL-ASK');
		};
		expect(asked({}).map((f) => f.answer)).toEqual(['ask']);
		for (const way of ['cord', 'worn', 'none-wanted']) expect(asked({ callsHelp: said(way) })).toEqual([]);
	});
});
