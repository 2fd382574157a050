import type { Box, Drawing, Entity } from '#core/drawing/entity.ts';
import { extent } from '#core/drawing/path.ts';
import { boxOf } from '#core/drawing/type.ts';

/** What a piece of a sheet is to who listens to it. Source: standard structure types of ISO 32000-1, 14.8.4. */
export type Role = 'H1' | 'H2' | 'P' | 'Figure';

/** Entities that are heard as one. */
export interface Piece {
	/** None for what is only looked at. */
	readonly role: Role | null;
	/** Pieces of one picture have one. */
	readonly key: string;
	readonly entities: readonly Entity[];
	/** What a figure shows, in words. */
	readonly alt?: string;
}

/**
 * A drawing cut into what is heard and what is only looked at, in drawing order: headings, paragraphs, whose lines have
 * ids that differ in the number at the end, rows, whose cells have ids of three parts and more that differ in the last, and
 * pictures with words for them.
 * Shape: every entity once; a picture without words is taken apart.
 */
export function piecesOf({ entities, pictures = {} }: Drawing): readonly Piece[] {
	const pieces: (Piece & { entities: Entity[] })[] = [];
	for (const e of entities) {
		const next = pieceOf(e, pictures);
		const last = pieces.at(-1);
		if (last?.key === next.key) last.entities.push(e);
		else pieces.push({ ...next, entities: [e] });
	}
	return pieces;
}

function pieceOf(e: Entity, pictures: Readonly<Record<string, string>>): Omit<Piece, 'entities'> {
	const alt = e.picture === undefined ? undefined : pictures[e.picture];
	if (alt !== undefined) return { role: 'Figure', key: `picture/${e.picture ?? ''}`, alt };
	if (e.kind === 'path') return { role: null, key: 'path' };
	const role = e.heading ? (`H${e.heading}` as const) : 'P';
	return { role, key: `${role}/${rowOf(e.id)}` };
}

/** The row an id is a cell of, else the paragraph it is a line of. */
function rowOf(id: string): string {
	const parts = id.replace(/\/\d+$/, '').split('/');
	return (parts.length > 2 ? parts.slice(0, -1) : parts).join('/');
}

/** The rectangle round some entities. Units and frame: mm of the sheet. */
export function boxAround(entities: readonly Entity[]): Box {
	const boxes = entities.map((e) => (e.kind === 'text' ? boxOf(e) : extent(e)));
	return {
		x0: Math.min(...boxes.map((b) => b.x0)),
		y0: Math.min(...boxes.map((b) => b.y0)),
		x1: Math.max(...boxes.map((b) => b.x1)),
		y1: Math.max(...boxes.map((b) => b.y1))
	};
}
