import type { Body } from '#core/body/body.ts';
import { KINDS, VARIANTS, type Accessory, type Slot } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { applies } from '#core/rules/applies.ts';
import { DOCUMENTS } from '#core/rules/packs/index.ts';
import type { Pack, Require } from '#core/rules/row.ts';
import { handsFor } from './hands.ts';

/** What all horizontal bars share: one height. */
const LINE = 'bars';

type WallId = Slot['wall'];

const WALLS: readonly WallId[] = ['back', 'left', 'right'];

/**
 * What is wanted, for whom, with which hand, on which walls and because of which row.
 * Shape: in the order of KINDS, then of the rows that ask; a document asks only where it is the chosen one.
 */
export function wantedFor(
	packs: readonly Pack[],
	c: Case,
	bodies: Readonly<Record<string, Body>>
): readonly Accessory[] {
	const client = Object.values(bodies).find((body) => body.person.role === 'client');
	if (!client) return [];
	const byId = new Map<string, [Require, ...Require[]]>();
	for (const row of packs.filter((pack) => asks(pack, c)).flatMap((pack) => pack.requires)) {
		if (!applies(row.when, c)) continue;
		const others = byId.get(row.accessory);
		if (others) others.push(row);
		else byId.set(row.accessory, [row]);
	}
	return [...byId.values()]
		.map((rows) => accessoryFrom(rows, c, client))
		.toSorted((a, b) => KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind));
}

const asks = (pack: Pack, c: Case): boolean => pack.id === c.reference || !DOCUMENTS.some(({ id }) => id === pack.id);

function accessoryFrom(rows: readonly [Require, ...Require[]], c: Case, client: Body): Accessory {
	const [first] = rows;
	return {
		id: first.accessory,
		kind: first.kind,
		purpose: first.purpose,
		for: client.id,
		hands: handsFor(first.purpose, client.person),
		slots: slotsOf(rows, c),
		...(first.kind === 'horizontal-bar' && { line: LINE }),
		because: first.id,
		reason: [first.says, ...askedBy(rows)].join(' ')
	};
}

/** Which clauses ask for a thing: beside a need of the person, or with nothing but the document behind it. */
function askedBy(rows: readonly [Require, ...Require[]]): readonly string[] {
	const clauses = rows.filter((row) => DOCUMENTS.some((pack) => pack.requires.includes(row)));
	const words = clauses.length < rows.length ? 'asks for it too' : 'alone asks for it';
	return clauses.map(({ document, edition, clause }) => `${document} ${edition}, ${clause} ${words}.`);
}

/** Every part of the kind, sold by the tape of the house, that is no longer than the wall, on every wall a row names. */
function slotsOf(rows: readonly [Require, ...Require[]], { enclosure, tape }: Case): readonly Slot[] {
	const roles = {
		'seat-wall': enclosure.seatWall,
		'control-wall': enclosure.seatWall === 'left' ? 'right' : 'left',
		back: 'back'
	} as const;
	const walls = new Set<WallId>(rows.flatMap((row) => row.walls.map((role) => roles[role])));
	return WALLS.filter((wall) => walls.has(wall)).flatMap((wall) => {
		const length = (wall === 'back' ? enclosure.width : enclosure.depth).value;
		const sold = VARIANTS.filter((v) => v.kind === rows[0].kind && (v.tape ?? tape.unit) === tape.unit);
		return sold.filter(({ outline }) => outline.x1 - outline.x0 <= length).map(({ id }) => ({ wall, variant: id }));
	});
}
