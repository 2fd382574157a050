import { applyChange, valueAt, type Edit } from '#core/log/change.ts';
import { isObject, type Json } from '#core/log/json.ts';

/** Where what is there only while there is something in it stands: people, her id, then one of these. */
const ONLY_WITH_SOMETHING = [['later'], ['arms', 'left', 'points'], ['arms', 'right', 'points']] as const;
const PERSON = 2;

/**
 * An edit as the record can take it: what is expected later, and the taped points of a hand, are one whole each, there
 * only while there is something in it.
 * Shape: any other edit is given back as it is.
 */
export function housed(state: Json, edit: Edit): Edit {
	const { path } = edit;
	const below = path.slice(PERSON);
	const house = ONLY_WITH_SOMETHING.find((one) => below.length > one.length && one.every((key, i) => below[i] === key));
	if (!house) return edit;
	const home = path.slice(0, PERSON + house.length);
	const whole = applyChange(valueAt(state, home) ?? {}, { ...edit, path: path.slice(home.length) });
	return isObject(whole) && Object.keys(whole).length === 0 ? { path: home } : { path: home, to: whole };
}
