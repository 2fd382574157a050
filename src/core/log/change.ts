import { isObject, same, type Json } from './json.ts';

/** One place in a state and what became of it. Without `from` it was not there, without `to` it is not there any more. */
export interface Change {
	readonly path: readonly string[];
	readonly from?: Json;
	readonly to?: Json;
}

/** A change as it is asked for; what was there before is read off the state. Without `to` the place is emptied. */
export type Edit = Omit<Change, 'from'>;

/**
 * What stands at a path, or undefined where nothing does.
 * Shape: paths go through objects only; a list is changed as a whole.
 */
export function valueAt(state: Json, path: readonly string[]): Json | undefined {
	return path.reduce<Json | undefined>(
		(value, key) => (isObject(value) && Object.hasOwn(value, key) ? value[key] : undefined),
		state
	);
}

/** The edit together with what it replaces. */
export function changeFor(state: Json, { path, to }: Edit): Change {
	return changeOf(path, valueAt(state, path), to);
}

/** The change between two values at one path; undefined is absent. */
export function changeOf(path: readonly string[], from: Json | undefined, to: Json | undefined): Change {
	return { path, ...(from === undefined ? {} : { from }), ...(to === undefined ? {} : { to }) };
}

/** The change that takes this one back. */
export function inverse({ path, from, to }: Change): Change {
	return changeOf(path, to, from);
}

/** Whether a state has, at the path, exactly what the change says it replaces, and an object to hold what it brings. */
export function fits(state: Json, { path, from, to }: Change): boolean {
	const held = path.length === 0 ? to !== undefined : isObject(valueAt(state, path.slice(0, -1)));
	return held && same(valueAt(state, path), from);
}

/**
 * The state after the change. Only the objects along the path are new; all else is shared with the state before.
 * Fails: RangeError when no object stands where the path leads through, or the whole state would be emptied.
 */
export function applyChange(state: Json, { path, to }: Change): Json {
	const [key, ...rest] = path;
	if (key === undefined) {
		if (to === undefined) throw new RangeError('the whole state cannot be emptied');
		return to;
	}
	if (!isObject(state)) throw new RangeError(`no object holds ${path.join('.')}`);
	if (rest.length === 0 && to === undefined) {
		return Object.fromEntries(Object.entries(state).filter(([name]) => name !== key));
	}
	const child = Object.hasOwn(state, key) ? state[key] : undefined;
	return { ...state, [key]: applyChange(child ?? null, changeOf(rest, undefined, to)) };
}
