import { expect, test } from 'vitest';
import type { Case } from '#core/case/record.ts';
import { isObject } from '#core/log/json.ts';
import { canUndo, change, startLog, type Log } from '#core/log/log.ts';
import { questionOf } from '#core/plan.ts';
import { blankCase } from '#ui/state/blank.ts';
import { lifted } from '#ui/state/lifted.ts';

const WHO = { at: '2026-01-01T00:00:00Z', by: 'a device' };

/** A history from before real parts and existing things were in the record. */
function kept(): Log {
	const rest: Partial<Case> & Omit<Case, 'parts'> = structuredClone(blankCase('kept', 'mm'));
	delete rest.parts;
	for (const wall of Object.values(rest.enclosure.walls)) delete (wall as { existing?: unknown }).existing;
	return change(startLog(rest, WHO), [{ path: ['lead'], to: 'reference-led' }], WHO);
}

test('[ui R25] a case kept before the record knew parts and existing things opens, and keeps all it said', () => {
	const old = kept();
	const log = lifted(old);
	const c = log.state as unknown as Case;
	expect([c.parts, c.enclosure.walls.back.existing, c.lead]).toEqual([{}, {}, 'reference-led']);
	expect(() => questionOf(c)).not.toThrow();
	expect(log.entries.slice(0, old.entries.length)).toEqual(old.entries);
	expect(canUndo(log)).toBe(false);
	expect(lifted(log)).toBe(log);
});

test('[ui R25] what this program cannot read is left as it is', () => {
	const old = change(kept(), [{ path: ['lead'], to: 'nobody' }], WHO);
	expect(lifted(old)).toBe(old);
	expect(isObject(old.state)).toBe(true);
});
