import { vi } from 'vitest';
import { variantOf, type Mark } from '#core/case/accessory.ts';
import { readCase } from '#core/case/read.ts';
import { startLog } from '#core/log/log.ts';
import type { Question } from '#core/plan.ts';
import { mm } from '#core/units/length.ts';
import { CaseState } from '#ui/state/case-state.svelte.ts';
import { EXAMPLES } from '#ui/state/examples.ts';
import type { Answered } from '#ui/state/messages.ts';

/** The case of M.W., open for typing. */
export function openedCase(): CaseState {
	for (const text of EXAMPLES) {
		const read = readCase(text);
		if (read.kind !== 'case' || read.case.id !== '0417') continue;
		const log = startLog(read.case, { at: '2026-01-02T03:04:05.000Z', by: 'a test' });
		return new CaseState(log, () => Promise.resolve());
	}
	throw new RangeError('the examples have no case of M.W.');
}

/** A mark for each thing wanted, somewhere on its first wall: places a search might have found. */
export function someMarks({ wanted }: Question): readonly Mark[] {
	return wanted.flatMap((accessory, i): Mark[] => {
		const [slot] = accessory.slots;
		if (!slot) return [];
		const x = mm(254 + 6.35 * i);
		const y = mm(accessory.line ? -177.8 : -6.35 * (i + 20));
		return [{ accessory, place: { ...slot, x, y, turn: 0 }, variant: variantOf(slot.variant), stage: 'proposed' }];
	});
}

/** The answer of a search that ended at its proof. */
export function answeredWith(marks: readonly Mark[]): Answered {
	return {
		placed: { marks, status: 'optimal', cost: [0], bound: [0], evaluations: 1, nodes: 1 },
		probes: { reasons: [], drifts: [], leans: [], questions: [], waits: [] }
	};
}

/** Stands in for a page on which nothing is laid out: sizes are never told, nothing is scrolled to. */
export function nothingLaidOut(): void {
	vi.stubGlobal(
		'ResizeObserver',
		class {
			observe = (): void => undefined;
			unobserve = (): void => undefined;
			disconnect = (): void => undefined;
		}
	);
	Element.prototype.scrollIntoView = () => undefined;
}
