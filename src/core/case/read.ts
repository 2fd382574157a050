import type { z } from 'zod';
import { contradictions } from './contradictions.ts';
import { CASE_VERSION, caseSchema, type Loaded, type Problem } from './record.ts';

const MOST_CHARACTERS = 2_000_000;
const MOST_DEPTH = 30;

const bad = (path: string, says: string): Loaded => ({ kind: 'bad', problems: [{ path, says }] });

function shown(value: unknown): string {
	if (value === undefined) return 'nothing';
	const words = JSON.stringify(value);
	return words.length > 60 ? `${words.slice(0, 57)}...` : words;
}

/** A name of the file as it is shown: a long one cut, as the values are. */
function named(key: PropertyKey): string {
	const words = String(key);
	if (words === '') return '""';
	return words.length > 120 ? `${words.slice(0, 57)}...` : words;
}

function at(json: unknown, path: readonly PropertyKey[]): unknown {
	let value: unknown = json;
	for (const key of path) {
		if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
		value = (value as Record<PropertyKey, unknown>)[key];
	}
	return value;
}

function expected(issue: z.core.$ZodIssue): string {
	switch (issue.code) {
		case 'invalid_type':
			return `expected ${issue.expected === 'record' ? 'an object' : `a value of type ${issue.expected}`}`;
		case 'too_small':
			if (issue.origin === 'string') return 'expected words';
			return `expected at least ${String(issue.minimum)}`;
		case 'too_big':
			return `expected at most ${String(issue.maximum)}${issue.origin === 'string' ? ' characters' : ''}`;
		case 'invalid_value':
			return `expected one of ${issue.values.map(String).join(', ')}${issue.path[0] === 'reference' ? ', or null for none' : ''}`;
		case 'invalid_key': {
			const why = issue.issues[0];
			return why ? `the name of this entry: ${expected(why)}` : 'expected another name for this entry';
		}
		case 'unrecognized_keys':
			return `${issue.keys.map(shown).join(', ')} is not a field of this record`;
		case 'invalid_format':
			return issue.format === 'regex' ? `expected ${issue.message}` : `expected a ${issue.format}`;
		default:
			return `expected ${issue.message.toLowerCase()}`;
	}
}

function problemOf(issue: z.core.$ZodIssue, json: unknown): Problem {
	const path = issue.path.map(named).join('.') || 'the whole file';
	// Of an entry whose name is wrong the name is what was seen, not what it holds.
	const saw = issue.code === 'invalid_key' ? issue.path.at(-1) : at(json, issue.path);
	const seen = issue.code === 'unrecognized_keys' ? '' : ` - saw ${shown(saw)}`;
	return { path, says: `${expected(issue)}${seen}` };
}

/**
 * The case a file holds, or every problem in it.
 * Shape: text of a JSON file, at most 2 million characters; the record is never trimmed or mended.
 * Fails: kind `bad` for empty, torn, foreign or newer files, unknown fields and values out of range, each with its path.
 */
export function readCase(text: string): Loaded {
	if (text.length > MOST_CHARACTERS) {
		return bad('the whole file', `expected at most 2 MB - saw ${(text.length / 1e6).toFixed(1)} MB`);
	}
	// A mark some editors put before the first character is not part of the file.
	const bare = text.replace(/^\uFEFF/, '');
	if (bare.trim() === '') return bad('the whole file', 'expected a case - the file is empty');
	let json: unknown;
	try {
		json = JSON.parse(bare);
	} catch (error) {
		return bad('the whole file', `expected JSON, the file may be torn - ${(error as Error).message}`);
	}
	return caseOf(json);
}

/** Half of a sign that is written in two: no file keeps it. */
const HALF = /\p{Surrogate}/u;
const TORN = 'expected whole signs - one is torn in half (half of a surrogate pair)';

/** What no record holds: values nested without end, and a name that would be lost on the way; null when there is none. */
function unreadable(json: unknown): string | null {
	const waiting: { value: unknown; depth: number }[] = [{ value: json, depth: 0 }];
	for (let next = waiting.pop(); next; next = waiting.pop()) {
		const { value, depth } = next;
		if (typeof value === 'string' && HALF.test(value)) return TORN;
		if (typeof value !== 'object' || value === null) continue;
		if (Object.keys(value).some((key) => HALF.test(key))) return TORN;
		if (depth > MOST_DEPTH) return 'expected a case - values lie in one another without end';
		if (Object.hasOwn(value, '__proto__')) return 'expected another name than "__proto__": it would be lost';
		for (const inner of Object.values(value)) waiting.push({ value: inner, depth: depth + 1 });
	}
	return null;
}

/**
 * The case a JSON value holds, or every problem in it.
 * Fails: as `readCase`.
 */
export function caseOf(json: unknown): Loaded {
	const lost = unreadable(json);
	if (lost !== null) return bad('the whole file', lost);
	if (typeof json !== 'object' || json === null || Array.isArray(json)) {
		return bad('the whole file', `expected an object - saw ${shown(json)}`);
	}
	if (at(json, ['schema']) !== 'graspline-case') {
		return bad('schema', `expected "graspline-case" - saw ${shown(at(json, ['schema']))}`);
	}
	const version = at(json, ['version']);
	if (typeof version === 'number' && version > CASE_VERSION) {
		const newer = `this program reads version ${String(CASE_VERSION)}, the file is of version ${String(version)}`;
		return bad('version', `${newer}: open it with a newer program`);
	}
	const read = caseSchema.safeParse(json);
	if (!read.success) return { kind: 'bad', problems: read.error.issues.map((i) => problemOf(i, json)) };
	const problems = contradictions(read.data);
	return problems.length ? { kind: 'bad', problems } : { kind: 'case', case: read.data };
}
