import type { Body } from '#core/body/body.ts';
import { KINDS, variantOf, VARIANTS, type Accessory, type Slot } from '#core/case/accessory.ts';
import type { Case, Person } from '#core/case/record.ts';
import { applies, washesOf } from '#core/rules/applies.ts';
import { chosenFrom } from '#core/rules/bind.ts';
import { DOCUMENTS } from '#core/rules/packs/index.ts';
import type { Pack, Require } from '#core/rules/row.ts';
import { handsFor } from '#core/body/hands.ts';
import { isReadable, readOffId } from '#core/case/read-off.ts';
import { clientOf } from '#core/measures/client.ts';
import { mayGo, sidesOf } from '#core/case/roles.ts';
import { footprintOf } from '#core/case/size.ts';
import { WALL_IDS, wallLength, type WallId } from '#core/geometry/frame.ts';

/** What all horizontal bars share: one height. */
const LINE = 'bars';

/**
 * What is wanted, for whom, with which hand, on which walls and because of which row.
 * Shape: in the order of KINDS, then of the rows that ask; a document asks only where it is the chosen one. `onLegs` are the
 * walls that hold a seat with front legs better than one without.
 */
export function wantedFor(
	packs: readonly Pack[],
	c: Case,
	bodies: Readonly<Record<string, Body>>,
	onLegs: readonly WallId[] = []
): readonly Accessory[] {
	const client = Object.values(bodies).find((body) => body.person.role === 'client');
	if (!client) return [];
	const byId = new Map<string, [Require, ...Require[]]>();
	const chosen = chosenFrom(packs, c.reference);
	const asks = (pack: Pack) => pack.requires.filter(({ id }) => pack.scope === undefined || chosen(pack, id));
	for (const row of packs.flatMap(asks)) {
		if (!applies(row.when, c)) continue;
		const others = byId.get(row.accessory);
		if (others) others.push(row);
		else byId.set(row.accessory, [row]);
	}
	return [...byId.values()]
		.map((rows) => accessoryFrom(rows, c, { client, onLegs }))
		.toSorted((a, b) => KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind));
}

/** How one washes until something is fitted that is wanted only later. */
const UNTIL = {
	seated: 'sitting as now',
	standing: 'standing, a hand on what is fitted',
	both: 'as now, standing or sitting',
	'in-chair': 'in the shower chair',
	unknown: 'as now'
} as const;

/**
 * What is wanted now and what later, in one list: each thing once, with when it is wanted.
 * Shape: in the order of KINDS; the slots of both count.
 */
export function laterToo(now: readonly Accessory[], later: readonly Accessory[], c: Case): readonly Accessory[] {
	const washes = washesOf(clientOf(c).person) ?? 'unknown';
	const both = now.map((a): Accessory => {
		const then = later.find(({ id }) => id === a.id);
		if (!then) return a;
		const more = then.slots.filter((s) => !a.slots.some((t) => t.wall === s.wall && t.variant === s.variant));
		return { ...a, when: 'both', slots: [...a.slots, ...more] };
	});
	const only = later
		.filter(({ id }) => !now.some((a) => a.id === id))
		.map((a): Accessory => {
			const reason = `${a.reason} Wanted later; until it is fitted the client washes ${UNTIL[washes]}.`;
			return { ...a, when: 'later', reason };
		});
	return [...both, ...only].toSorted((a, b) => KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind));
}

/** Who it is for, and the walls that hold a seat with front legs better than one without. */
interface For {
	readonly client: Body;
	readonly onLegs: readonly WallId[];
}

function accessoryFrom(rows: readonly [Require, ...Require[]], c: Case, { client, onLegs }: For): Accessory {
	const [first] = rows;
	return {
		id: first.accessory,
		kind: first.kind,
		purpose: first.purpose,
		for: client.id,
		hands: handsFor(first.purpose, client.person),
		when: 'now',
		slots: slotsOf(rows, c, onLegs),
		...(first.kind === 'horizontal-bar' && { line: LINE }),
		because: first.id,
		reason: [...saidBy(rows), ...seenBy(client.person), ...askedBy(rows)].join(' ')
	};
}

/** Who does not see a thing on its wall is offered one that can be seen. */
const seenBy = ({ seesBars }: Person): readonly string[] =>
	seesBars?.value === false ? ['In a colour that stands out from the wall.'] : [];

const isClause = (row: Require): boolean => DOCUMENTS.some((pack) => pack.requires.includes(row));

/** Every need of the person behind a thing, or what the document says where there is none. */
function saidBy(rows: readonly [Require, ...Require[]]): readonly string[] {
	const needs = rows.filter((row) => !isClause(row));
	return [...new Set((needs.length > 0 ? needs : rows.slice(0, 1)).map(({ says }) => says))];
}

/** Which clauses ask for a thing: beside a need of the person, or with nothing but the document behind it. */
function askedBy(rows: readonly [Require, ...Require[]]): readonly string[] {
	const clauses = rows.filter(isClause);
	const words = clauses.length < rows.length ? 'asks for it too' : 'alone asks for it';
	return clauses.map(({ document, edition, clause }) => `${document} ${edition}, ${clause} ${words}.`);
}

/**
 * Every part of the kind, sold by the tape of the house, on every side a row names where it fits; on an open side only
 * what stands between floor and ceiling. A seat with front legs is offered where the wall holds it better than one without.
 * A real part that was read off is the only one then.
 * A special part is offered only where a row asks for it. An L seat is never offered: no row asks for one, and where it may
 * go a rectangular one may.
 */
function slotsOf(
	rows: readonly [Require, ...Require[]],
	{ enclosure, tape, parts }: Case,
	onLegs: readonly WallId[]
): readonly Slot[] {
	const { kind, accessory } = rows[0];
	const real = parts[accessory];
	const bought = real && isReadable(kind) ? [variantOf(readOffId(kind, real))] : undefined;
	const sides = new Set(rows.flatMap((row) => row.walls.flatMap((role) => sidesOf(enclosure, role))));
	const room = footprintOf(enclosure);
	return WALL_IDS.filter((wall) => sides.has(wall)).flatMap((wall) => {
		const length = wallLength(wall, room);
		const sold = VARIANTS.filter((v) => v.kind === kind && !v.arm && (v.tape ?? tape.unit) === tape.unit);
		return (bought ?? sold.filter((v) => rows.some(({ part }) => part === v.special)))
			.filter((v) => v.outline.x1 - v.outline.x0 <= length && mayGo(v, wall, enclosure))
			.filter((v) => v.frontLegs === undefined || v.special !== undefined || onLegs.includes(wall))
			.map(({ id }) => ({ wall, variant: id }));
	});
}
