import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { change, seal, startLog, typeInto, type Log } from '#core/log/log.ts';
import { openStore, type Store } from '#store/database.ts';
import { holdCase, type Writer } from '#store/hold.ts';

export const ME = { at: '2026-03-02T09:00:00.000Z', by: 'therapist' };
export const LATER = { at: '2026-03-02T09:01:00.000Z', by: 'therapist' };

/** An empty device: what IndexedDB holds is in memory and belongs to one test. */
export function freshDevice(): void {
	Object.assign(globalThis, { indexedDB: new IDBFactory() });
}

/** A window on the device: a page that has just been loaded. */
export async function newWindow(locks?: LockManager): Promise<Store> {
	const opened = await openStore('graspline', locks);
	if (opened.kind === 'failed') throw new Error(opened.why);
	return opened.store;
}

export async function writerOf(store: Store, id: string): Promise<Writer> {
	const held = await holdCase(store, id);
	if (held.kind !== 'held') throw new Error(held.kind);
	return held.writer;
}

/** A case with three kept entries and one being typed. */
export function someLog(): Log {
	let log = startLog({ name: '', room: { width: 914 } }, ME);
	log = seal(typeInto(log, { path: ['name'], to: 'Ada' }, ME));
	log = change(log, [{ path: ['room', 'width'], to: 900 }], ME);
	return typeInto(log, { path: ['name'], to: 'Ada B' }, LATER);
}

/** Web Locks as far as the store asks for them, for Node 20, which has none. Source: Web Locks API, W3C, section 3. */
export function someLocks(): LockManager {
	const taken = new Set<string>();
	const request = async (name: string, _: unknown, callback: (lock: unknown) => Promise<void> | undefined) => {
		await Promise.resolve();
		if (taken.has(name)) return callback(null);
		taken.add(name);
		await callback({ name, mode: 'exclusive' });
		taken.delete(name);
	};
	return { request } as unknown as LockManager;
}
