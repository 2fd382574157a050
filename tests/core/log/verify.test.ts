import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sealed, type Entry, type OpenEntry } from '#core/log/entry.ts';
import { change, seal, startLog, typeInto, undo, type Log } from '#core/log/log.ts';
import { verifyLog } from '#core/log/verify.ts';

const ME = { at: '2026-03-02T09:00:00.000Z', by: 'therapist' };

function history(): Log {
	let log = startLog({ people: { a: { age: 71 } }, note: '' }, ME);
	log = seal(typeInto(log, { path: ['note'], to: 'sits forward 120 mm — “easily”' }, ME));
	log = change(
		log,
		[
			{ path: ['people', 'b'], to: { age: 48 } },
			{ path: ['people', 'a', 'age'], to: 72 }
		],
		ME
	);
	return undo(log, ME);
}

const WHOLE = history();

describe('verifying', () => {
	test('[log R7] what was sealed is found whole, and gives the log again, open entry included', () => {
		const open = typeInto(WHOLE, { path: ['note'], to: 'x' }, ME);
		const rows: unknown = JSON.parse(JSON.stringify(open.entries));
		expect(verifyLog(rows as unknown[], JSON.parse(JSON.stringify(open.open)))).toEqual({ kind: 'whole', log: open });
	});

	test('[log R7] one character changed anywhere in any entry is found, and the entry named', () => {
		const texts = WHOLE.entries.map((entry) => JSON.stringify(entry));
		const spot = fc
			.nat(WHOLE.entries.length - 1)
			.chain((seq) => fc.tuple(fc.constant(seq), fc.nat(len(texts[seq]) - 1)));
		fc.assert(
			fc.property(spot, fc.integer({ min: 1, max: 127 }), ([seq, at], bits) => {
				const text = texts[seq] ?? '';
				const flipped = text.slice(0, at) + String.fromCharCode(text.charCodeAt(at) ^ bits) + text.slice(at + 1);
				const entry = parsed(flipped);
				fc.pre(entry !== undefined && JSON.stringify(entry) !== text);
				const verdict = verifyLog(WHOLE.entries.map((kept, i) => (i === seq ? entry : kept)));
				expect(verdict).toMatchObject({ kind: 'broken', seq });
			}),
			{ numRuns: 2000 }
		);
	});

	test('[log R7] what stands before the broken entry is given back', () => {
		const [base, first, second] = WHOLE.entries;
		const verdict = verifyLog([base, { ...first, by: 'somebody' }, second]);
		expect(verdict).toEqual({
			kind: 'broken',
			seq: 1,
			id: first?.id,
			why: 'its content is not what was sealed',
			before: { entries: [base], state: { people: { a: { age: 71 } }, note: '' } }
		});
	});

	test.each([
		['one left out', (all: readonly Entry[]) => all.filter((_, i) => i !== 1), 1],
		['two changed about', (all: readonly Entry[]) => [0, 2, 1, 3].map((i) => all[i]), 1],
		['one told twice', (all: readonly Entry[]) => [...all.slice(0, 2), ...all.slice(1)], 2],
		['the base left out', (all: readonly Entry[]) => all.slice(1), 0],
		['none', () => [], 0]
	] as const)('[log R7] entries with %s are found broken', (_, spoil, seq) => {
		expect(verifyLog(spoil(WHOLE.entries))).toMatchObject({ kind: 'broken', seq });
	});

	test.each([
		['changes what was not there', { kind: 'change', changes: [{ path: ['note'], from: 'other', to: 'x' }] }],
		['goes where no object is', { kind: 'change', changes: [{ path: ['nobody', 'age'], to: 1 }] }]
	] as const)('[log R7] an entry sealed rightly that %s is found', (_, act) => {
		const parents = WHOLE.entries.slice(-1).map(({ id }) => id);
		const verdict = verifyLog([...WHOLE.entries, sealed({ parents, ...ME, act })]);
		expect(verdict).toMatchObject({ kind: 'broken', seq: 4, why: 'it does not change what stood there' });
	});

	test('[log R7] a history that does not begin with a base is found', () => {
		const act = { kind: 'change', changes: [{ path: [], to: {} }] } as const;
		expect(verifyLog([sealed({ parents: [], ...ME, act })])).toMatchObject({ kind: 'broken', seq: 0 });
	});

	test('[log R7] an open entry that does not follow the last kept one is found, and the kept ones given back', () => {
		const { entries, state } = WHOLE;
		const stale: OpenEntry = { ...ME, parents: [], act: { kind: 'change', changes: [] } };
		const verdict = verifyLog(entries, stale);
		expect(verdict).toMatchObject({ kind: 'broken', seq: entries.length, before: { entries, state } });
	});

	test.each([[null], [7], ['entry'], [[]], [{}], [{ ...WHOLE.entries[0], id: 1 }], [{ ...WHOLE.entries[0], more: 1 }]])(
		'[log R7] %o is not an entry',
		(junk) => {
			expect(verifyLog([junk])).toMatchObject({ kind: 'broken', seq: 0, why: 'it has not the shape of an entry' });
			expect(verifyLog(WHOLE.entries, junk)).toMatchObject({ kind: 'broken', seq: 4 });
		}
	);

	test('[log R7] what JSON cannot hold was never sealed', () => {
		const [base] = WHOLE.entries;
		const verdict = verifyLog([{ ...base, act: { kind: 'base', state: NaN } }]);
		expect(verdict).toMatchObject({ kind: 'broken', seq: 0, why: 'its content is not what was sealed' });
	});

	test('[log R7] the id of an entry is the digest of its canonical form, worked by hand', () => {
		const [base] = startLog({ b: 1, a: 'é' }, { at: 't', by: 'me' }).entries;
		// printf '{"act":{"kind":"base","state":{"a":"é","b":1}},"at":"t","by":"me","parents":[]}' | sha256sum
		expect(base?.id).toBe('18df05caef4756bbb6dfa708dbff0f001fd1638af62bd12c869252a062216c9b');
	});
});

function len(text: string | undefined): number {
	return text?.length ?? 0;
}

function parsed(text: string): unknown {
	try {
		return JSON.parse(text);
	} catch {
		return undefined;
	}
}
