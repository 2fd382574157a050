import { csvOf } from '#core/render/csv.ts';
import { describe, expect, test } from 'vitest';

describe('a table as CSV', () => {
	test('[render R4] cells are quoted as RFC 4180 says, lines end in CR LF', () => {
		expect(
			csvOf([
				['a', 'b'],
				['x,y', 'say "so"'],
				['two\nlines', 1.5]
			])
		).toBe('a,b\r\n"x,y","say ""so"""\r\n"two\nlines",1.5\r\n');
	});

	test.each(['=1+1', '+1', '-1', '@x', '\tx', '\rx'])(
		'[render R4] a text that a spreadsheet would run is kept from it: %j',
		(text) => {
			expect(csvOf([[text]]).replace(/^"/, '')).toMatch(/^'/);
		}
	);

	test('[render R4] a negative number stays a number', () => {
		expect(csvOf([[-560]])).toBe('-560\r\n');
	});
});
