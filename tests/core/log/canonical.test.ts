import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonical } from '#core/log/canonical.ts';

describe('canonical form', () => {
	// Source: RFC 8785, section 3.2.2 (input) and 3.2.3 (output).
	test('[log R1] the worked example of RFC 8785', () => {
		const input =
			'{"numbers":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],' +
			'"string":"\\u20ac$\\u000F\\u000aA\'\\u0042\\u0022\\u005c\\\\\\"\\/","literals":[null,true,false]}';
		expect(canonical(JSON.parse(input))).toBe(
			'{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],' +
				'"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}'
		);
	});

	// Source: RFC 8785, section 3.2.3: sorting by UTF-16 units puts the emoji (a surrogate pair) before U+FB33.
	test('[log R1] the sorting example of RFC 8785', () => {
		const names = ['\u20ac', '\r', '\ufb33', '1', '\ud83d\ude00', '\u0080', '\u00f6'];
		const sorted = ['\r', '1', '\u0080', '\u00f6', '\u20ac', '\ud83d\ude00', '\ufb33'];
		const written = canonical(Object.fromEntries(names.map((name) => [name, 0])));
		expect(written).toBe(`{${sorted.map((name) => `${JSON.stringify(name)}:0`).join(',')}}`);
	});

	// Source: RFC 8785, appendix B, table of numbers.
	test.each([
		['0000000000000000', '0'],
		['8000000000000000', '0'],
		['0000000000000001', '5e-324'],
		['7fefffffffffffff', '1.7976931348623157e+308'],
		['4340000000000000', '9007199254740992'],
		['4430000000000000', '295147905179352830000'],
		['44b52d02c7e14af5', '9.999999999999997e+22'],
		['44b52d02c7e14af6', '1e+23'],
		['444b1ae4d6e2ef4f', '999999999999999900000'],
		['444b1ae4d6e2ef50', '1e+21'],
		['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
		['3eb0c6f7a0b5ed8d', '0.000001'],
		['41b3de4355555553', '333333333.3333332'],
		['41b3de4355555554', '333333333.33333325'],
		['41b3de4355555555', '333333333.3333333'],
		['41b3de4355555556', '333333333.3333334'],
		['41b3de4355555557', '333333333.33333343'],
		['43143ff3c1cb0959', '1424953923781206.2'],
		['becbf647612f3696', '-0.0000033333333333333333']
	])('[log R1] the number with the bits %s is written %s', (bits, written) => {
		const view = new DataView(new ArrayBuffer(8));
		view.setBigUint64(0, BigInt(`0x${bits}`));
		expect(canonical(view.getFloat64(0))).toBe(written);
	});

	test('[log R1] the order in which keys were set leaves no trace, and reading it back gives the value', () => {
		const key = fc.string({ unit: 'grapheme', maxLength: 4 });
		fc.assert(
			fc.property(fc.dictionary(key, fc.jsonValue({ stringUnit: 'grapheme' }), { noNullPrototype: true }), (value) => {
				const turned = Object.fromEntries(Object.entries(value).reverse());
				expect(canonical(turned)).toBe(canonical(value));
				expect(canonical(JSON.parse(canonical(value)))).toBe(canonical(value));
			})
		);
	});

	test.each([
		[NaN, /the value must be JSON - saw NaN/],
		[{ a: [1, Infinity] }, /a\.1 must be JSON - saw Infinity/],
		[{ a: { b: undefined } }, /a\.b must be JSON - saw undefined/],
		[new Array(1), /0 must be JSON - saw undefined/],
		[() => 1, /saw function/],
		[1n, /saw bigint/],
		[new Date(0), /saw object/],
		[new Map(), /saw object/],
		['\ud800', /half of a surrogate pair/],
		[{ '\udc00': 1 }, /half of a surrogate pair/]
	])('[log R1] what JSON cannot hold is refused: %o', (value, message) => {
		expect(() => canonical(value)).toThrow(TypeError);
		expect(() => canonical(value)).toThrow(message);
	});
});
