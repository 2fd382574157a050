import type { Accessory } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { conditionsOf, holds } from './applies.ts';
import type { BoundRow, Origin, Pack, Row, Strength } from './row.ts';

interface Led {
	readonly lead: Case['lead'];
	/** Backing may be added behind the wall, so that a wall which does not carry yet is no reason to refuse a place. */
	readonly backing: boolean;
	/** The row counts with the chosen document. */
	readonly chosen: boolean;
}

/** How strongly a row of an origin counts. The only place where a strength is given. */
export function strengthOf(origin: Origin, { lead, backing, chosen }: Led): Strength {
	switch (origin) {
		case 'room':
		case 'body':
			return 'must';
		case 'wall':
			return backing ? 'prefer' : 'must';
		case 'wish':
			return lead === 'person-led' ? 'should' : 'prefer';
		case 'document':
			if (!chosen) return 'reported';
			return lead === 'person-led' ? 'prefer' : 'must';
		case 'craft':
			return 'tie-break';
	}
}

/**
 * Every row tied to the accessories it speaks of, with its strength.
 * Shape: in the order of packs, rows, accessories. A row of a document that has nothing to speak of is kept as reported,
 * about nothing, so that a comparison shows it as not here; any other such row is left out.
 */
export function bind(packs: readonly Pack[], wanted: readonly Accessory[], c: Case): readonly BoundRow[] {
	const counts = chosenFrom(packs, c.reference);
	const facts = conditionsOf(c);
	const backing = c.enclosure.backingMayBeAdded?.value === true;
	return packs.flatMap((pack) =>
		pack.rows.flatMap((row): readonly BoundRow[] => {
			const strength = row.advice
				? 'reported'
				: strengthOf(row.origin, { lead: c.lead, backing, chosen: counts(pack, row.id) });
			const speaks = row.when === undefined || holds(row.when, facts);
			const subjects = speaks ? subjectsOf(row, wanted) : [];
			if (subjects.length > 0) return subjects.map((about) => ({ row, strength, about }));
			return row.origin === 'document' ? [{ row, strength: 'reported', about: [] }] : [];
		})
	);
}

/**
 * The rows of what is expected later, beside those of now: what speaks of a person counts for her then too, all else only
 * where it speaks of something that is not wanted yet.
 */
export function bindLater(
	packs: readonly Pack[],
	wanted: readonly Accessory[],
	c: Case,
	now: readonly BoundRow[]
): readonly BoundRow[] {
	const key = ({ row, about }: BoundRow) => [row.id, ...about].join(' ');
	const bound = new Set(now.map(key));
	const when = new Map(wanted.map((a) => [a.id, a.when]));
	return bind(packs, wanted, c).flatMap((row): readonly BoundRow[] => {
		const ofPerson = row.row.origin === 'body' || row.row.origin === 'wish';
		if (row.about.length === 0) return ofPerson && isNews(row, bound.has(key(row))) ? [{ ...row, later: true }] : [];
		// What nobody needs any more is not asked for its reach; it only keeps its place on the wall.
		if (ofPerson && row.about.some((id) => when.get(id) === 'now')) return [];
		return ofPerson || !bound.has(key(row)) ? [{ ...row, later: true }] : [];
	});
}

/** Whether a row about no mark has something to say of later: a question that is put now is put once. */
const isNews = ({ row }: BoundRow, now: boolean): boolean =>
	row.of === 'case' && !(now && typeof row.allowed === 'object' && 'ask' in row.allowed);

/** Whether a row of a pack counts with the chosen document: its own, or one of the pack it differs from that it has no other for. */
export function chosenFrom(packs: readonly Pack[], reference: Case['reference']): (pack: Pack, row: string) => boolean {
	const from = packs.find(({ id }) => id === reference)?.differsFrom;
	return (pack, row) => pack.id === reference || (pack.id === from?.pack && !from.instead.includes(row));
}

/** Ids of what a row speaks of: nothing but the case, one mark each, or a mark and one other each. */
function subjectsOf(row: Row, wanted: readonly Accessory[]): readonly (readonly string[])[] {
	if (row.of === 'case') return [[]];
	const first = wanted.filter((a) => isSubject(row, a));
	if (row.and === undefined) return first.map((a) => [a.id]);
	const rank = (a: Accessory) => wanted.indexOf(a);
	return first.flatMap((a) =>
		wanted
			.filter((b) => b !== a && isOther(row, b) && meet(row, a, b))
			// Two that could each be the subject are asked once.
			.filter((b) => !(isSubject(row, b) && isOther(row, a)) || rank(a) < rank(b))
			.map((b) => [a.id, b.id])
	);
}

const isSubject = (row: Row, a: Accessory): boolean =>
	(row.of === 'any' || row.of === a.kind) && (row.purposes?.includes(a.purpose) ?? true);

const isOther = (row: Row, a: Accessory): boolean =>
	(row.and === 'any' || row.and === a.kind) && (row.andPurposes?.includes(a.purpose) ?? true);

/** Whether two accessories can ever be on walls as the row wants them. */
function meet({ walls }: Row, a: Accessory, b: Accessory): boolean {
	if (walls === undefined) return true;
	return a.slots.some((one) => b.slots.some((other) => (one.wall === other.wall) === (walls === 'same')));
}
