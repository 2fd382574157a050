import type { IDBPObjectStore } from 'idb';
import type { Log } from '#core/log/log.ts';
import { rowsOf, type Schema, type Store } from './database.ts';
import { failed, type Failed } from './failure.ts';

/** Whether a change of the device's data now stands. */
export type Saved = { readonly kind: 'saved' } | Failed;

type Name = 'entries' | 'cards';
type Writable<N extends Name> = IDBPObjectStore<Schema, Name[], N, 'readwrite'>;

/** Writes all that the device lacks of a log, and its card. A log that another window has overtaken is refused. */
export function writeLog(store: Store, id: string, { log, title }: { log: Log; title: string }): Promise<Saved> {
	return inOneGo(store, async (entries, cards) => {
		const last = log.entries.at(-1);
		if (last === undefined) throw new RangeError('a log without an entry cannot be kept');
		const seq = log.entries.length;
		const kept = await cards.get(id);
		const from = kept?.seq ?? 0;
		if (kept !== undefined && log.entries[from - 1]?.id !== kept.head) throw new OvertakenError();
		const missing = [...log.entries.slice(from), ...(log.open === undefined ? [] : [log.open])];
		// The open entry of the last time goes; it is written anew below, or stands sealed.
		await entries.delete(rowsOf(id, from));
		for (const [i, entry] of missing.entries()) await entries.put({ case: id, seq: from + i, entry });
		await cards.put({ id, title, seq, head: last.id, changed: (log.open ?? last).at });
	});
}

/** Erases a case and its card. */
export function eraseCase(store: Store, id: string): Promise<Saved> {
	return inOneGo(store, async (entries, cards) => {
		await entries.delete(rowsOf(id));
		await cards.delete(id);
	});
}

/** Does the work in one transaction: when this is `saved` all of it is on the disk, when it failed nothing of it is. */
async function inOneGo(
	{ database }: Store,
	work: (entries: Writable<'entries'>, cards: Writable<'cards'>) => Promise<void>
): Promise<Saved> {
	try {
		const names: Name[] = ['entries', 'cards'];
		const writing = database.transaction(names, 'readwrite', { durability: 'strict' });
		const done = writing.done.then(() => ({ kind: 'saved' }) as const, failed);
		try {
			await work(writing.objectStore('entries'), writing.objectStore('cards'));
		} catch (error) {
			abort(writing);
			await done;
			return failed(error);
		}
		return await done;
	} catch (error) {
		return failed(error);
	}
}

/** Takes back what a transaction did so far; one that has failed by itself is past that. */
function abort(writing: { abort(): void }): void {
	try {
		writing.abort();
	} catch {
		// It was taken back already.
	}
}

class OvertakenError extends Error {
	override readonly name = 'OvertakenError';
}
