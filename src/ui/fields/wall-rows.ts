import { isObject, type Json, type JsonObject } from '#core/log/json.ts';
import type { WallTable } from './wall-columns.ts';

/** One thing of a wall, as the record keeps it. */
export interface WallRow {
	readonly id: string;
	readonly thing: JsonObject;
}

/** The things of a group that belong to a table, in the order of the record. */
export function rowsOf(things: Json | undefined, { kinds }: WallTable): readonly WallRow[] {
	if (!isObject(things)) return [];
	return Object.entries(things)
		.flatMap(([id, thing]) => (isObject(thing) ? [{ id, thing }] : []))
		.filter(({ thing: { kind } }) => kinds.length === 0 || (typeof kind === 'string' && kinds.includes(kind)));
}

/** An id no thing of the group has. */
export function freeId(things: Json | undefined, { id }: WallTable): string {
	const taken = isObject(things) ? Object.keys(things) : [];
	let n = taken.length + 1;
	while (taken.includes(`${id}-${String(n)}`)) n += 1;
	return `${id}-${String(n)}`;
}
