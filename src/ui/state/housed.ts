import { applyChange, valueAt, type Edit } from '#core/log/change.ts';
import { isObject, type Json } from '#core/log/json.ts';

/** Where what is expected later stands below a person: people, her id, `later`. */
const LATER = 2;

/**
 * An edit as the record can take it: what is expected later is one whole, there only while there is something in it.
 * Shape: any other edit is given back as it is.
 */
export function housed(state: Json, edit: Edit): Edit {
	const { path } = edit;
	if (path[LATER] !== 'later' || path.length === LATER + 1) return edit;
	const home = path.slice(0, LATER + 1);
	const rest = path.slice(LATER + 1);
	const whole = applyChange(valueAt(state, home) ?? {}, { ...edit, path: rest });
	return isObject(whole) && Object.keys(whole).length === 0 ? { path: home } : { path: home, to: whole };
}
