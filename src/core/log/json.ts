/** A value that JSON can hold. The log knows nothing narrower. */
export type Json = null | boolean | number | string | readonly Json[] | JsonObject;

/** An object of JSON values. Things with an identity sit in such maps, by id. */
export interface JsonObject {
	readonly [key: string]: Json;
}

/** Whether a value is a plain object: neither an array, nor a date, nor anything with a class of its own. */
export function isObject(value: unknown): value is JsonObject {
	if (typeof value !== 'object' || value === null) return false;
	const prototype: unknown = Object.getPrototypeOf(value);
	return prototype === Object.prototype || prototype === null;
}

/**
 * Whether two values are the same JSON; the order of keys does not count, the order of a list does.
 * Shape: absent (undefined) is the same as absent only.
 */
export function same(a: Json | undefined, b: Json | undefined): boolean {
	if (a === b) return true;
	if (isList(a) && isList(b)) return a.length === b.length && a.every((item, i) => same(item, b[i]));
	if (!isObject(a) || !isObject(b)) return false;
	const keys = Object.keys(a);
	return keys.length === Object.keys(b).length && keys.every((key) => Object.hasOwn(b, key) && same(a[key], b[key]));
}

function isList(value: Json | undefined): value is readonly Json[] {
	return Array.isArray(value);
}
