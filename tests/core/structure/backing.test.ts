import { describe, expect, test } from 'vitest';
import { variantOf, type Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { roomOf } from '#core/enclosure/room.ts';
import type { WallId } from '#core/geometry/frame.ts';
import { backingNeeded } from '#core/structure/backing.ts';
import { mm } from '#core/units/length.ts';
import { caseWith, holdsOf } from './some-case.ts';

const may = { backingMayBeAdded: { value: true, how: 'told' } };

function mark(id: string, part: string, [wall, x, y]: readonly [WallId, number, number]): Mark {
	const variant = variantOf(part);
	const { kind } = variant;
	const accessory = {
		id,
		kind,
		purpose: 'rise',
		for: 'client',
		hands: [],
		when: 'now',
		slots: [],
		because: 'ROW',
		reason: 'It is wanted.'
	} as const;
	return { accessory, variant, place: { wall, variant: part, x: mm(x), y: mm(y), turn: 0 }, stage: 'proposed' };
}

const BAR = mark('bar', 'bar-450', ['back', 200, -150]);
const needed = (c: Case, ...marks: readonly Mark[]) =>
	backingNeeded({ c, room: roomOf(c.enclosure), holds: holdsOf(c) }, marks);

describe('backing to be added', () => {
	const c = caseWith({}, may);

	// Source: arithmetic. Past each 40 mm disc 30 mm; #14 in gravity 0.42 takes 21.31 N/mm (NDS), 1054.1 N of the 1991 sum
	// need 49.5 mm of thread and 6.1 mm of tip: one board of 38 is too thin, two are 76.
	test('[structure R13] one band behind both posts of a bar, past the discs, of wood that carries', () => {
		expect(needed(c, BAR)).toMatchObject([
			{ wall: 'back', rect: { x0: 130, x1: 720, y0: -220, y1: -80 }, marks: ['bar'], thickness: 76 }
		]);
	});

	// Source: arithmetic. 1500 N ask 1421.9 N of the 1991 sum: a #14 takes 21.31 x 64 = 1364 N at most, a lag screw 30.34 x 59.5 = 1806 N.
	test('[structure R17] where wood screws do not do, wood is named with lag screws', () => {
		const [piece] = needed(caseWith({}, { ...may, demand: 1500 }), BAR);
		expect(piece?.thickness).toBe(76);
		expect(piece?.how).toContain('lag screws of 1/4 in');
		expect(needed(c, BAR)[0]?.how).not.toContain('lag');
	});

	test('[structure R13] with that wood recorded, every bracket carries by calculation and nothing more is needed', () => {
		const [first] = needed(c, BAR);
		if (!first) throw new Error('nothing is needed');
		const one = { kind: 'blocking', ...first.rect, thickness: first.thickness, gravity: 0.42, how: 'measured' };
		const mended = caseWith({ back: { surveyed: true, backing: { one } } }, may);
		expect(needed(mended, BAR)).toEqual([]);
		for (const x of [200, 650]) {
			expect(holdsOf(mended).arithmetic('back', { kind: 'flange' }, x, -150).verdict).toBe('carries');
		}
		const thinner = caseWith({ back: { surveyed: true, backing: { one: { ...one, thickness: 38 } } } }, may);
		expect(needed(thinner, BAR)).toHaveLength(1);
	});

	test('[structure R13] the posts of an upright bar far apart have a piece each', () => {
		const pieces = needed(c, mark('entry', 'post-bar-600', ['left', 800, -40]));
		expect(pieces.map(({ rect }) => rect.y1 - rect.y0)).toEqual([140, 140]);
	});

	test('[structure R13] it runs on to the measured studs beside it, not to those somebody told of', () => {
		const studs = (how: string) => ({ a: { x: 40, width: 38, how }, b: { x: 860, width: 38, how } });
		const seen = needed(caseWith({ back: { studs: studs('measured') } }, may), BAR);
		expect(seen[0]?.rect).toMatchObject({ x0: 40, x1: 860 });
		expect(seen[0]?.how).toContain('From stud to stud');
		const told = needed(caseWith({ back: { studs: studs('told') } }, may), BAR);
		expect(told[0]?.rect).toMatchObject({ x0: 130, x1: 720 });
		expect(told[0]?.how).toContain('to be found');
	});

	// Source: statics by hand: 1112 N x 380 / 100 / 2 = 2113 N on one screw, more than 64 mm of thread hold in gravity 0.42.
	test('[structure R13] no wood is named for a seat without legs, and what to do is', () => {
		const [seat] = needed(c, mark('seat', 'seat-450', ['left', 450, -560]));
		expect(seat?.thickness).toBeUndefined();
		expect(seat?.how).toContain('seat on legs');
	});

	test('[structure R13] none where no backing may be added, for a rest, or for what stands on the floor', () => {
		expect(needed(caseWith(), BAR)).toEqual([]);
		expect(needed(c, mark('rest', 'rest', ['back', 300, 100]))).toEqual([]);
		expect(needed(c, mark('seat', 'seat-legs-500', ['left', 450, -560]))).toEqual([]);
	});

	test('[structure R13] the order of the marks and the hand of the room change nothing but the side', () => {
		const other = mark('other', 'bar-300', ['back', 480, 400]);
		expect(needed(c, BAR, other)).toEqual(needed(c, other, BAR));
		const { width } = roomOf(c.enclosure).footprint;
		const [there] = needed(c, BAR);
		const [here] = needed(c, mark('bar', 'bar-450', ['back', width - 650, -150]));
		expect(here?.rect).toMatchObject({ x0: width - (there?.rect.x1 ?? NaN), x1: width - (there?.rect.x0 ?? NaN) });
	});
});
