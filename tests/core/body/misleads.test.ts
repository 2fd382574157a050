import { describe, expect, test } from 'vitest';
import { bodiesOf } from '#core/body/body.ts';
import { misleadsIn } from '#core/body/misleads.ts';
import { person } from '#core/case/person.ts';
import { mm } from '#core/units/length.ts';

const told = <T>(value: T) => ({ value, how: 'told' as const });
const sentences = (record: Record<string, unknown>): string => {
	const read = person.parse({ role: 'client', sex: told('female'), ...record });
	return Object.values(bodiesOf({ client: read }))
		.flatMap(misleadsIn)
		.join(' ');
};

describe('[body R11] where an estimate misleads it is said', () => {
	test('from the stature of who is old: the seat comes out too low, the arm too short', () => {
		const old = { age: told(78), body: { stature: told(1560) } };
		expect(sentences(old)).toContain('Measure under the knee');
		expect(sentences(old)).toContain('Measure the arm');
		expect(sentences({ ...old, age: told(59) })).not.toContain('Spines shorten');
		expect(sentences({ body: old.body })).toContain('Spines shorten');
		expect(sentences({ ...old, body: { ...old.body, kneeHeight: told(480) } })).not.toContain('Spines shorten');
		expect(sentences({ ...old, body: { ...old.body, popliteal: told(380) } })).not.toContain('Measure under the knee');
	});

	test('the sums are those of the regressions: 0.30 mm of the knee fold and 0.40 of the arm a mm of stature', () => {
		// Source: ANSUR II, regressions on stature, women: 0.2962 and 0.4054.
		const at = (stature: number) =>
			bodiesOf({
				client: person.parse({
					role: 'client',
					sex: told('female'),
					body: { stature: { value: mm(stature), how: 'measured', sd: 0.01 } }
				})
			})['client']?.dims;
		const [tall, short] = [at(1620), at(1560)];
		expect((tall?.popliteal?.value ?? 0) - (short?.popliteal?.value ?? 0)).toBeCloseTo(18, 0);
		expect((tall?.armToGrip?.value ?? 0) - (short?.armToGrip?.value ?? 0)).toBeCloseTo(24, 0);
	});

	test('a shoulder above the seat that was estimated sat erect; a measured one says nothing', () => {
		expect(sentences({ age: told(40), body: { stature: told(1600) } })).toContain('sat erect');
		expect(sentences({ age: told(40), body: { stature: told(1600), shoulderAboveSeat: told(520) } })).toBe('');
		expect(sentences({ role: 'helper', age: told(40), body: { stature: told(1600) } })).toBe('');
	});
});
