import { describe, expect, test } from 'vitest';
import { variantOf } from '#core/case/accessory.ts';
import { adviceOn } from '#core/structure/advice.ts';

const said = (part: string, more: { above?: number; ceiling?: number; held?: boolean } = {}) =>
	adviceOn({ variant: variantOf(part), force: 1112, above: 0, held: true, ...more }).join(' ');

describe('advice on a part', () => {
	// Source: PL/4 and PL/8, section of a 32 x 1.2 tube 861.85 mm3: 290.3 and 145.2 MPa at 900 mm, 145.2 and 72.6 at 450; at 0.66 of
	// 205 MPa (ASTM A213) 419 mm free to turn, 839 held.
	test.each(['bar-900', 'post-bar-900'])('[structure R18] %s wants a third post', (part) => {
		expect(said(part)).toContain('wants a third post in the middle: ask for one');
		expect(said(part)).toContain('145 to 290 MPa; with a post in the middle to 73 to 145 MPa');
		expect(said(part)).toMatch(/419 mm free to turn, 839 mm held/);
	});

	test('[structure R18] from 900 mm on, and 36 in, not below', () => {
		expect(said('bar-36in')).toContain('third post');
		expect(said('bar-750')).toBe('');
		expect(said('bar-32in')).toBe('');
		expect(said('l-bar-750-left')).toBe('');
	});

	// Source: statics of a simple beam: 1112 x 1800 / 2400 = 834 N, 1112 x 2100 / 2400 = 973 N, 1112 x 2.4 / 4 = 667 N m.
	test('[structure R18] a post asks its share of ceiling and floor', () => {
		expect(said('post', { ceiling: 2400 })).toContain(
			'1800 mm up asks 834 N of the ceiling; 300 mm up, 973 N of the floor'
		);
		expect(said('post', { ceiling: 2400 })).toContain('667 N m');
		expect(said('post')).toContain('not recorded');
		expect(said('post', { ceiling: 1700 })).toContain('1700 mm up asks 1112 N of the ceiling');
	});

	// Source: exact statics: 1112 x 395 / 365 = 1203 N under the legs, 1112 x 30 / 365 = 91 N up at the hinge.
	test('[structure R19] the legs of a seat say what they bring on the floor', () => {
		expect(said('seat-front-legs-450')).toContain('stand 365 mm out. 1112 N on the front edge ask 1203 N of them');
		expect(said('seat-front-legs-450')).toContain('past them 91 N upward');
		expect(said('seat-450')).toBe('');
	});

	// Source: moment at the foot, force x height: 1112 x 0.7 = 778 N m; at the end 1112 x 0.85 = 945 N m.
	test('[structure R18] a rail that the wall is not sure to hold may have a post on the floor', () => {
		const words = said('rail-850', { above: 700, held: false });
		expect(words).toContain('700 mm up turns its foot with 778 N m, straight down at the end of the rail with 945 N m');
		expect(said('rail-850', { above: 700 })).toBe('');
	});

	test('[structure R18] it is advice: nothing is called held', () => {
		const all = [said('bar-900'), said('post'), said('rail-600', { held: false })];
		for (const words of all) {
			expect(words).toMatch(/ask/);
			expect(words).not.toMatch(/carries|is held|safe/);
		}
	});
});
