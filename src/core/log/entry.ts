import { canonical } from './canonical.ts';
import type { Change } from './change.ts';
import { sha256Hex } from './digest.ts';
import { isObject, type Json } from './json.ts';

/** What an entry does: lay down a whole state, or change places in it. An undo is a change that says which entry it takes back. */
export type Act =
	| { readonly kind: 'base'; readonly state: Json }
	| { readonly kind: 'change'; readonly changes: readonly Change[]; readonly undoes?: string };

/** Who acted, and when. Both are told by the caller: the log knows no clock. */
export interface Meta {
	readonly at: string;
	readonly by: string;
}

/** An entry that is still being typed: it has no id yet and is overwritten at each input. */
export interface OpenEntry extends Meta {
	readonly parents: readonly string[];
	readonly act: Act;
}

/** A kept entry. Its id is the digest of all the rest, which names the entry before it: none can be changed unseen. */
export interface Entry extends OpenEntry {
	readonly id: string;
}

/**
 * The entry with its id.
 * Fails: TypeError when the entry holds what JSON cannot.
 */
export function sealed(open: OpenEntry): Entry {
	return { id: idOf(open), ...open };
}

/** The id an entry must have: the SHA-256 of the canonical form of its four other members. */
export function idOf({ parents, at, by, act }: OpenEntry): string {
	return sha256Hex(canonical({ parents, at, by, act }));
}

/** Whether a value read from elsewhere has the shape of a kept entry. */
export function isEntry(value: unknown): value is Entry {
	return isObject(value) && typeof value['id'] === 'string' && hasShape(value, 5);
}

/** Whether a value read from elsewhere has the shape of an open entry. */
export function isOpenEntry(value: unknown): value is OpenEntry {
	return isObject(value) && hasShape(value, 4);
}

function hasShape(value: Readonly<Record<string, unknown>>, members: number): boolean {
	const { parents, at, by, act } = value;
	return Object.keys(value).length === members && isTexts(parents) && isText(at) && isText(by) && isAct(act);
}

function isAct(value: unknown): boolean {
	if (!isObject(value)) return false;
	if (value['kind'] === 'base') return value['state'] !== undefined;
	const { kind, changes, undoes } = value;
	return (
		kind === 'change' && Array.isArray(changes) && changes.every(isChange) && (undoes === undefined || isText(undoes))
	);
}

function isChange(value: unknown): boolean {
	return isObject(value) && isTexts(value['path']);
}

function isTexts(value: unknown): boolean {
	return Array.isArray(value) && value.every(isText);
}

function isText(value: unknown): boolean {
	return typeof value === 'string';
}
