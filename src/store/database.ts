import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { Entry, OpenEntry } from '#core/log/entry.ts';
import { failed, type Failed } from './failure.ts';

/** What the list of cases shows of one case; `seq` and `head` say which entry was kept last. */
export interface Card {
	readonly id: string;
	readonly title: string;
	readonly seq: number;
	readonly head: string;
	readonly changed: string;
}

interface Row {
	readonly case: string;
	readonly seq: number;
	readonly entry: Entry | OpenEntry;
}

/** What the database holds. */
export interface Schema extends DBSchema {
	entries: { key: [string, number]; value: Row };
	cards: { key: string; value: Card };
}

/** The database of this device, and the locks that keep a second window from writing where the browser has them. */
export interface Store {
	readonly database: IDBPDatabase<Schema>;
	readonly locks: LockManager | undefined;
}

/** Opens the database of a name, and makes it on the first visit. */
export async function openStore(
	name: string,
	locks?: LockManager
): Promise<{ readonly kind: 'store'; readonly store: Store } | Failed> {
	try {
		const database = await openDB<Schema>(name, 1, {
			upgrade(made) {
				made.createObjectStore('entries', { keyPath: ['case', 'seq'] });
				made.createObjectStore('cards', { keyPath: 'id' });
			},
			// A newer version of the page waits for this one to let go.
			blocking: () => {
				database.close();
			}
		});
		return { kind: 'store', store: { database, locks } };
	} catch (error) {
		return failed(error);
	}
}

/** The rows of one case from a place on, in order. */
export function rowsOf(id: string, from = 0): IDBKeyRange {
	return IDBKeyRange.bound([id, from], [id, Infinity]);
}
