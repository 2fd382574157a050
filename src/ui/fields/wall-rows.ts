import { isObject, type Json } from '#core/log/json.ts';
import type { WallTable } from './wall-columns.ts';

/** One thing behind a wall, as the record keeps it. */
export interface WallRow {
	readonly id: string;
	readonly kind: string;
}

/** The things of a group that belong to a table, in the order of the record. */
export function rowsOf(things: Json | undefined, { kinds }: WallTable): readonly WallRow[] {
	if (!isObject(things)) return [];
	return Object.entries(things)
		.map(([id, thing]) => ({ id, kind: isObject(thing) && typeof thing['kind'] === 'string' ? thing['kind'] : '' }))
		.filter(({ kind }) => kinds.length === 0 || kinds.includes(kind));
}

/** An id no thing of the group has. */
export function freeId(things: Json | undefined, { id }: WallTable): string {
	const taken = isObject(things) ? Object.keys(things) : [];
	let n = taken.length + 1;
	while (taken.includes(`${id}-${String(n)}`)) n += 1;
	return `${id}-${String(n)}`;
}
