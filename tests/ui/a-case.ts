import { startLog, type Log } from '#core/log/log.ts';
import { blankCase } from '#ui/state/blank.ts';
import { CaseState } from '#ui/state/case-state.svelte.ts';

/** A blank case open for typing, with every history that was kept. */
export function aCase(unit: 'mm' | 'in' = 'mm'): { readonly opened: CaseState; readonly kept: Log[] } {
	const kept: Log[] = [];
	const log = startLog(blankCase('a-case', unit), { at: '2026-01-02T03:04:05.000Z', by: 'a test' });
	const keep = (one: Log): Promise<void> => {
		kept.push(one);
		return Promise.resolve();
	};
	return { opened: new CaseState(log, keep), kept };
}
