import { isObject } from './json.ts';

/**
 * The one text of a JSON value: no blanks, keys in order of their UTF-16 units, numbers and strings as JSON.stringify writes them.
 * Fails: TypeError, naming the path, on what JSON cannot hold: NaN, undefined, functions, dates, halves of a surrogate pair.
 * Source: RFC 8785, JSON Canonicalization Scheme, section 3.2.
 */
export function canonical(value: unknown): string {
	return write(value, []);
}

function write(value: unknown, path: readonly (string | number)[]): string {
	if (value === null || typeof value === 'boolean') return String(value);
	if (typeof value === 'number' && Number.isFinite(value)) return JSON.stringify(value);
	if (typeof value === 'string') return writeString(value, path);
	if (Array.isArray(value)) {
		// Array.from also meets the holes of a sparse list, which map would pass over.
		return `[${Array.from<unknown, string>(value, (item, i) => write(item, [...path, i])).join(',')}]`;
	}
	if (isObject(value)) {
		const members = Object.keys(value)
			.sort()
			.map((key) => `${writeString(key, path)}:${write(value[key], [...path, key])}`);
		return `{${members.join(',')}}`;
	}
	return refuse(path, typeof value === 'number' ? String(value) : typeof value);
}

function writeString(text: string, path: readonly (string | number)[]): string {
	return /\p{Surrogate}/u.test(text) ? refuse(path, 'half of a surrogate pair') : JSON.stringify(text);
}

function refuse(path: readonly (string | number)[], saw: string): never {
	throw new TypeError(`${path.length === 0 ? 'the value' : path.join('.')} must be JSON - saw ${saw}`);
}
