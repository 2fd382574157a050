import { changeOf, valueAt, type Change } from './change.ts';
import { isObject, same, type Json } from './json.ts';

/**
 * What must change to come from one state to another: the deepest places that differ, in order of their keys.
 * Shape: empty when the two are the same; no path leads through another; lists are compared as a whole.
 */
export function difference(from: Json, to: Json): readonly Change[] {
	return between([], from, to);
}

function between(path: readonly string[], from: Json | undefined, to: Json | undefined): readonly Change[] {
	if (same(from, to)) return [];
	if (!isObject(from) || !isObject(to)) return [changeOf(path, from, to)];
	const keys = [...new Set([...Object.keys(from), ...Object.keys(to)])].sort();
	return keys.flatMap((key) => between([...path, key], valueAt(from, [key]), valueAt(to, [key])));
}
