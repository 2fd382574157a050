import { verifyLog, type Verdict } from '#core/log/verify.ts';
import type { Log } from '#core/log/log.ts';
import { rowsOf, type Card, type Store } from './database.ts';
import { failed, type Failed } from './failure.ts';

/** What was found of a case: its log, nothing, a log that is not as it was kept, or a device that would not read. */
export type Loaded =
	| { readonly kind: 'log'; readonly log: Log }
	| { readonly kind: 'none' }
	| Extract<Verdict, { kind: 'broken' }>
	| Failed;

/** The log of a case, its open entry included, verified from the first entry to the one its card names as the last. */
export async function loadLog({ database }: Store, id: string): Promise<Loaded> {
	try {
		const reading = database.transaction(['entries', 'cards']);
		const [card, rows] = await Promise.all([
			reading.objectStore('cards').get(id),
			reading.objectStore('entries').getAll(rowsOf(id))
		]);
		if (card === undefined && rows.length === 0) return { kind: 'none' };
		const entries: unknown[] = rows.map(({ entry }) => entry);
		const open = isOpen(entries.at(-1)) ? entries.pop() : undefined;
		return upTo(card, verifyLog(entries, open));
	} catch (error) {
		return failed(error);
	}
}

/** The cards of all cases, the last changed first. */
export async function listCards({
	database
}: Store): Promise<{ readonly kind: 'cards'; readonly cards: readonly Card[] } | Failed> {
	try {
		const cards = await database.getAll('cards');
		return { kind: 'cards', cards: cards.sort((a, b) => (a.changed < b.changed ? 1 : -1)) };
	} catch (error) {
		return failed(error);
	}
}

/** A chain of entries cannot show that its end is missing; the card can. */
function upTo(card: Card | undefined, verdict: Verdict): Loaded {
	if (verdict.kind === 'broken') return verdict;
	const { log } = verdict;
	if (log.entries.length === card?.seq && log.entries.at(-1)?.id === card.head) return { kind: 'log', log };
	const why = 'the entries do not end where the card of the case says';
	return { kind: 'broken', seq: log.entries.length, id: '', why, before: log };
}

function isOpen(entry: unknown): boolean {
	return typeof entry === 'object' && entry !== null && !('id' in entry);
}
