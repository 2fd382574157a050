import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sealed } from '#core/log/entry.ts';
import { stateOf } from '#core/log/fold.ts';
import { same, type Json } from '#core/log/json.ts';
import { canRedo, canUndo, change, redo, seal, startLog, typeInto, undo, type Log } from '#core/log/log.ts';
import { verifyLog } from '#core/log/verify.ts';

const ME = { at: '2026-03-02T09:00:00.000Z', by: 'therapist' };
const LATER = { at: '2026-03-02T09:01:00.000Z', by: 'therapist' };
const BEGIN = startLog({ name: '', room: { width: 914 } }, ME);

const typed = (log: Log, text: string): Log =>
	Array.from(text).reduce((now, _, i) => typeInto(now, { path: ['name'], to: text.slice(0, i + 1) }, LATER), log);

describe('typing', () => {
	test('[log R5] each letter overwrites the one open entry', () => {
		const log = typed(BEGIN, 'Ada');
		expect(log.entries).toHaveLength(1);
		expect(log.open).toEqual({
			parents: [BEGIN.entries[0]?.id],
			...LATER,
			act: { kind: 'change', changes: [{ path: ['name'], from: '', to: 'Ada' }] }
		});
		expect(log.state).toEqual({ name: 'Ada', room: { width: 914 } });
	});

	test('[log R5] leaving the field keeps what was typed as one entry', () => {
		const log = seal(typed(BEGIN, 'Ada'));
		expect(log.open).toBeUndefined();
		expect(log.entries).toHaveLength(2);
		expect(log.entries[1]?.id).toMatch(/^[0-9a-f]{64}$/);
		expect(seal(log)).toBe(log);
	});

	test('[log R5] another field, another person and any other act seal first', () => {
		const log = typed(BEGIN, 'Ada');
		expect(typeInto(log, { path: ['room', 'width'], to: 900 }, LATER).entries).toHaveLength(2);
		expect(typeInto(log, { path: ['name'], to: 'Bea' }, { ...LATER, by: 'helper' }).entries).toHaveLength(2);
		expect(change(log, [{ path: ['room', 'width'], to: 900 }], LATER).entries).toHaveLength(3);
	});

	test('[log R5] typing back what stood there leaves no entry', () => {
		const log = typeInto(typed(BEGIN, 'Ada'), { path: ['name'], to: '' }, LATER);
		expect(log).toEqual(BEGIN);
		expect(change(BEGIN, [{ path: ['name'], to: '' }], LATER)).toEqual(BEGIN);
	});

	test('[log R5] a place can be emptied, and filled again', () => {
		const emptied = typeInto(BEGIN, { path: ['room', 'width'] }, LATER);
		expect(emptied.state).toEqual({ name: '', room: {} });
		expect(typeInto(emptied, { path: ['room', 'width'], to: 914 }, LATER)).toEqual(BEGIN);
	});

	test('[log R5] what is not JSON is refused before it is kept', () => {
		expect(() => startLog({ when: new Date(0) }, ME)).toThrow(TypeError);
		expect(() => typeInto(BEGIN, { path: ['name'], to: NaN }, LATER)).toThrow(TypeError);
		expect(() => typeInto(BEGIN, { path: ['name'], to: '\ud83d' }, LATER)).toThrow(TypeError);
		expect(() => typeInto(BEGIN, { path: ['nobody', 'name'], to: 'x' }, LATER)).toThrow(RangeError);
	});
});

describe('undo and redo', () => {
	const edited = change(typed(BEGIN, 'Ada'), [{ path: ['room', 'width'], to: 900 }], LATER);

	test('[log R6] undo appends the inverse, and names what it takes back', () => {
		const log = undo(edited, LATER);
		expect(log.entries).toHaveLength(4);
		expect(log.entries[3]?.act).toEqual({
			kind: 'change',
			changes: [{ path: ['room', 'width'], from: 900, to: 914 }],
			undoes: edited.entries[2]?.id
		});
	});

	test('[log R6] undo goes back step by step to the base, redo forward again to the last', () => {
		const back = undo(undo(edited, LATER), LATER);
		expect(back.state).toEqual(BEGIN.state);
		expect(canUndo(back)).toBe(false);
		expect(undo(back, LATER)).toBe(back);
		const forward = redo(redo(back, LATER), LATER);
		expect(forward.state).toEqual(edited.state);
		expect(canRedo(forward)).toBe(false);
		expect(redo(forward, LATER)).toBe(forward);
		expect(undo(undo(forward, LATER), LATER).state).toEqual(BEGIN.state);
	});

	test('[log R6] what is being typed is the first step to undo, whole', () => {
		const log = typed(BEGIN, 'Ada');
		expect(canUndo(log)).toBe(true);
		expect(undo(log, LATER).state).toEqual(BEGIN.state);
	});

	test('[log R6] a new act forgets what could be redone', () => {
		const log = typed(undo(edited, LATER), 'Bea');
		expect(canRedo(log)).toBe(false);
		expect(canRedo(seal(log))).toBe(false);
		expect(redo(seal(log), LATER)).toEqual(seal(log));
	});

	test('[log R6] a new base cannot be undone, nor what came before it', () => {
		const parents = undo(edited, LATER)
			.entries.slice(-1)
			.map(({ id }) => id);
		const lifted = sealed({ parents, ...LATER, act: { kind: 'base', state: { version: 2 } } });
		const entries = [...undo(edited, LATER).entries, lifted];
		const log = { entries, state: stateOf(entries) };
		expect(log.state).toEqual({ version: 2 });
		expect(canUndo(log)).toBe(false);
		expect(canRedo(log)).toBe(false);
		expect(verifyLog(entries)).toEqual({ kind: 'whole', log });
	});

	test('[log R6] an act of several edits is one step', () => {
		const both = change(BEGIN, [{ path: ['name'], to: 'Ada' }, { path: ['room'] }], LATER);
		expect(both.state).toEqual({ name: 'Ada' });
		expect(undo(both, LATER).state).toEqual(BEGIN.state);
	});

	// The second method is a plain list of states with a finger on the present one, as any editor keeps it.
	test('[log R6] any run of acts agrees with a list of states and a finger on it, and stays a whole history', () => {
		const path = fc.constantFrom(['a'], ['b'], ['c', 'x'], ['c', 'y']);
		const edit = fc.record({ path, to: fc.integer({ min: 0, max: 3 }) }, { requiredKeys: ['path'] });
		const act = fc.oneof(
			fc.record({ kind: fc.constant('change' as const), edits: fc.array(edit, { maxLength: 3 }) }),
			fc.record({
				kind: fc.constant('type' as const),
				path,
				inputs: fc.array(fc.integer({ min: 0, max: 3 }), { maxLength: 3 })
			}),
			fc.constantFrom({ kind: 'undo' } as const, { kind: 'redo' } as const, { kind: 'seal' } as const)
		);
		fc.assert(
			fc.property(fc.array(act, { maxLength: 25 }), (acts) => {
				let log = startLog({ c: {} }, ME);
				let states: Json[] = [log.state];
				let present = 0;
				for (const step of acts) {
					if (step.kind === 'undo' || step.kind === 'redo') {
						present = Math.min(states.length - 1, Math.max(0, present + (step.kind === 'undo' ? -1 : 1)));
						log = step.kind === 'undo' ? undo(log, LATER) : redo(log, LATER);
					} else if (step.kind === 'seal') log = seal(log);
					else {
						const before = log.state;
						if (step.kind === 'change') log = change(log, step.edits, LATER);
						else log = seal(step.inputs.reduce((now, to) => typeInto(now, { path: step.path, to }, LATER), log));
						if (!same(log.state, before)) {
							states = [...states.slice(0, present + 1), log.state];
							present = states.length - 1;
						}
					}
					expect(log.state).toEqual(states[present]);
				}
				expect(stateOf(log.entries)).toEqual(log.state);
				expect(verifyLog(log.entries)).toEqual({ kind: 'whole', log });
			})
		);
	});
});
