import { describe, expect, test } from 'vitest';
import { asked } from '#cli/args.ts';
import { REFERENCES } from '#core/case/references.ts';

describe('[cli R9] the words of the command line', () => {
	test.each(REFERENCES)('%s may be named to lead', (id) => {
		expect(asked(['x.json', '--reference', id])).toMatchObject({ file: 'x.json', reference: id });
	});

	test('nothing named leaves it to the record', () => {
		expect(asked(['x.json'])).toEqual({
			file: 'x.json',
			out: null,
			json: false,
			unit: null,
			reference: null,
			sheet: null,
			both: false
		});
	});

	test('sheets may be named, and both units asked for', () => {
		expect(asked(['x.json', '--sheet', 'A3', '--both'])).toMatchObject({ sheet: 'A3', both: true });
		expect(asked(['x.json', '--sheet', 'A5'])).toBe('--sheet: expected one of A4, A3, Letter, Tabloid - saw "A5"');
	});

	test('a document that is not there is refused with the ids there are', () => {
		const says = asked(['x.json', '--reference', 'din-18040']);
		for (const id of REFERENCES) expect(says).toContain(id);
		expect(says).toContain('saw "din-18040"');
	});

	test('an option named twice is refused: which one was meant is not guessed', () => {
		expect(asked(['x.json', '--reference', 'ada-2010', '--reference', 'uk-adm-1'])).toBe(
			'--reference: expected once - saw it 2 times'
		);
	});

	test.each([
		['no file', []],
		['two files', ['x.json', 'y.json']],
		['an unknown option', ['x.json', '--fast']]
	])('%s: how to call it is told, --reference too', (_, words) => {
		expect(asked(words)).toContain('[--reference ID]');
	});
});
