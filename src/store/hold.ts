import type { Log } from '#core/log/log.ts';
import type { Store } from './database.ts';
import { failed, type Failed } from './failure.ts';
import { eraseCase, writeLog, type Saved } from './write.ts';

/** The one who may write a case. */
export interface Writer {
	/** Keeps the log; ready when it is on the device. Calls are done in the order they were made. */
	save(log: Log, title: string): Promise<Saved>;
	/** Lets another window write, after what this one has begun to keep. */
	release(): void;
}

/** The right to write a case, or `read-only` while another window has it. */
export type Held = { readonly kind: 'held'; readonly writer: Writer } | { readonly kind: 'read-only' } | Failed;

/** Asks for the right to write a case. A window that is closed gives it back by itself. */
export function holdCase(store: Store, id: string): Promise<Held> {
	const { database, locks } = store;
	// Without locks two windows may both hold a case; the one whose log is overtaken is refused when it writes.
	if (locks === undefined) return Promise.resolve({ kind: 'held', writer: writerOf(store, id, () => undefined) });
	return new Promise((resolve) => {
		const hold = (lock: Lock | null): Promise<void> | undefined => {
			if (lock === null) {
				resolve({ kind: 'read-only' });
				return undefined;
			}
			return new Promise((letGo) => {
				resolve({ kind: 'held', writer: writerOf(store, id, letGo) });
			});
		};
		locks.request(`${database.name}/${id}`, { ifAvailable: true }, hold).catch((error: unknown) => {
			resolve(failed(error));
		});
	});
}

/** Removes a case and its card, unless somebody is writing it. */
export async function removeCase(store: Store, id: string): Promise<Saved | { readonly kind: 'read-only' }> {
	const held = await holdCase(store, id);
	if (held.kind !== 'held') return held;
	const erased = await eraseCase(store, id);
	held.writer.release();
	return erased;
}

function writerOf(store: Store, id: string, release: () => void): Writer {
	// The order of saves needs no queue: IndexedDB runs writing transactions one by one, as they were begun.
	return { save: (log, title) => writeLog(store, id, { log, title }), release };
}
