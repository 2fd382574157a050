import { describe, expect, test } from 'vitest';
import { variantOf, type Mark } from '#core/case/accessory.ts';
import { conditionsOf } from '#core/rules/applies.ts';
import { inches } from '#core/units/length.ts';
import { answers, caseWith, mark, marksOf, otherHand } from './baseline.ts';

const said = <T>(value: T) => ({ value, how: 'told' as const });

/** Inches: the seat as in the baseline, from so far to so far from the back wall; where the cord hangs on its wall, 1 in off it. */
interface Over {
	readonly front?: number;
	readonly top?: number;
	readonly to?: number;
	readonly high: number;
	readonly fromBack?: number;
}

/** A seat on the left wall and a cord on the wall behind it, which is reached over the seat where that is in front of it. */
function hung({ front = 15.5, top = 18, to = 33.5, high, fromBack = 15 }: Over): readonly Mark[] {
	const seat = marksOf({ seat: { from: 1, to, rear: 2, front, top } })[0];
	if (!seat) throw new Error('baseline');
	const cord = mark('call-cord', {
		purpose: 'call',
		wall: 'left',
		x: inches(36 - fromBack),
		y: inches(high),
		variant: { ...variantOf('call-cord'), gripOff: inches(1) }
	});
	return [seat, cord];
}

const parked = (approach: 'beside' | 'aslant' | 'facing', enclosure: object = {}) =>
	caseWith({ enclosure, client: { chair: { seatHeight: said(480), approach: said(approach) } } });

// Every figure: ADA 2010, 308, in inches, as the clause in the title prints it.
describe.each(['as drawn', 'in the mirrored room'])('reach ranges %s', (hand) => {
	const found = (c: ReturnType<typeof caseWith>, marks: readonly Mark[]) => {
		const all = answers(...(hand === 'as drawn' ? ([c, marks] as const) : otherHand(c, marks)));
		return (id: string) => all[`ADA-REACH-${id}`];
	};
	const facing = (over: Over) => found(parked('facing'), hung(over));
	const beside = (over: Over) => found(parked('beside'), hung(over));

	test.each([
		[14.9375, 'outside', 'inside'],
		[15, 'inside', 'inside'],
		[48, 'inside', 'inside'],
		[48.0625, 'inside', 'outside']
	] as const)('[rules R3] 308.2.1, 308.3.1 a cord %s high, from any side', (high, low, top) => {
		for (const c of [parked('facing'), parked('beside'), caseWith()]) {
			const at = found(c, hung({ high }));
			expect([at('LOW'), at('HIGH')]).toEqual([low, top]);
		}
	});

	test('[rules R3] F26a 308.2.2 forward over 22 in to 46 high is outside, to 44 inside', () => {
		expect(facing({ front: 23, high: 46 })('F-OVER')).toBe('outside');
		expect(facing({ front: 23, high: 44 })('F-OVER')).toBe('inside');
		expect(facing({ front: 23, high: 44 })('F-DEPTH')).toBe('inside');
	});

	test('[rules R3] 308.2.2 forward over 16 in and less 48 high is inside', () => {
		expect(facing({ front: 17, high: 48 })('F-OVER')).toBe('inside');
		expect(facing({ high: 48 })('F-OVER')).toBe('inside');
	});

	test('[rules R3] 308.2.2 forward no more than 25 in deep', () => {
		expect(facing({ front: 26, high: 40 })('F-DEPTH')).toBe('inside');
		expect(facing({ front: 26.0625, high: 40 })('F-DEPTH')).toBe('outside');
	});

	test('[rules R3] F26c 308.3.2 from the side over more than 10 in to 47 high is outside, to 46 inside', () => {
		expect(beside({ high: 47 })('S-OVER')).toBe('outside');
		expect(beside({ high: 46 })('S-OVER')).toBe('inside');
		expect(beside({ front: 23, high: 47 })('S-OVER')).toBe('outside');
	});

	test('[rules R3] F26c 308.3.2 from the side over what is 36 high is outside, 34 inside', () => {
		expect(beside({ top: 36, high: 40 })('S-SEAT')).toBe('outside');
		expect(beside({ top: 34, high: 40 })('S-SEAT')).toBe('inside');
	});

	test('[rules R3] F26c 308.3.2 from the side 26 in deep is outside, 24 inside', () => {
		expect(beside({ front: 27, high: 40 })('S-DEPTH')).toBe('outside');
		expect(beside({ front: 25, high: 40 })('S-DEPTH')).toBe('inside');
	});

	test('[rules R3] 308.3.1 from the side over 8 in and less, exception 1, 48 high is inside', () => {
		expect(beside({ front: 9, high: 48 })('S-OVER')).toBe('inside');
	});

	test('[rules R3] 308.3.1 what hangs beside the seat or ahead of it is not reached over it', () => {
		// The seat ends 20 from the back wall, the cord hangs 2 farther on.
		const aside = beside({ to: 20, fromBack: 22, top: 36, high: 48 });
		expect([aside('S-OVER'), aside('S-SEAT'), aside('S-DEPTH')]).toEqual(['inside', 'inside', 'inside']);
		const [seat, cord] = hung({ top: 36, high: 48 });
		if (!seat || !cord) throw new Error('baseline');
		const ahead: Mark = { ...cord, place: { ...cord.place, wall: 'back', x: inches(18) } };
		const at = found(parked('beside'), [seat, ahead]);
		expect([at('S-OVER'), at('S-SEAT'), at('S-DEPTH')]).toEqual(['inside', 'inside', 'inside']);
	});

	test('[rules R5] a chair parked beside or aslant reaches from the side, one facing forward; else neither is asked', () => {
		const speak = (c: ReturnType<typeof caseWith>) => {
			const at = found(c, hung({ high: 40 }));
			return [at('F-OVER'), at('S-OVER')];
		};
		expect(speak(parked('facing'))).toEqual(['inside', 'not-here']);
		for (const approach of ['beside', 'aslant'] as const)
			expect(speak(parked(approach))).toEqual(['not-here', 'inside']);
		expect(speak(caseWith())).toEqual(['not-here', 'not-here']);
		expect(conditionsOf(caseWith()).approach).toBe('unknown');
	});

	test('[rules R3] 308.2.1 the height is the one above the bathroom floor, where the chair stands', () => {
		const falls = { fall: said(0.05), fallsTo: 'back' };
		expect(found(parked('facing', falls), hung({ high: 48 }))('HIGH')).toBe('inside');
	});

	test('[rules R5] 608.5 control and hand shower have heights of their own: 308 does not speak of them', () => {
		const c = parked('facing');
		const at = found(c, marksOf());
		for (const id of ['LOW', 'HIGH', 'F-OVER', 'F-DEPTH']) expect(at(id)).toBe('not-here');
	});
});
