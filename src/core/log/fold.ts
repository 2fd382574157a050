import { applyChange } from './change.ts';
import type { Act, OpenEntry } from './entry.ts';
import type { Json } from './json.ts';

/**
 * The state a history leads to. A later base replaces all before it.
 * Shape: null before the first base.
 * Fails: RangeError when a change has no object to go into.
 */
export function stateOf(entries: readonly OpenEntry[]): Json {
	return entries.reduce<Json>((state, { act }) => applyAct(state, act), null);
}

/**
 * The state after one act.
 * Fails: RangeError when a change has no object to go into.
 */
export function applyAct(state: Json, act: Act): Json {
	return act.kind === 'base' ? act.state : act.changes.reduce(applyChange, state);
}
