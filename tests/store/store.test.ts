import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { canRedo, change, redo, seal, startLog, typeInto, undo, type Log } from '#core/log/log.ts';
import { openStore } from '#store/database.ts';
import { holdCase, removeCase } from '#store/hold.ts';
import { listCards, loadLog } from '#store/read.ts';
import { freshDevice, LATER, ME, someLocks, someLog, newWindow, writerOf } from './device.ts';

beforeEach(freshDevice);
afterEach(() => vi.restoreAllMocks());

async function kept(log: Log): Promise<void> {
	expect(await (await writerOf(await newWindow(), 'a')).save(log, 'Ada')).toEqual({ kind: 'saved' });
}

describe('keeping and loading', () => {
	test('[store R1] a reload brings back all that was kept, the open entry included', async () => {
		await kept(someLog());
		expect(await loadLog(await newWindow(), 'a')).toEqual({ kind: 'log', log: someLog() });
	});

	test('[store R1] after every single input a reload shows that input', async () => {
		const writer = await writerOf(await newWindow(), 'a');
		let log = startLog({ name: '' }, ME);
		for (const name of ['A', 'Ad', 'Ada', 'Ad', '', 'B']) {
			log = typeInto(log, { path: ['name'], to: name }, LATER);
			await writer.save(log, name);
			expect(await loadLog(await newWindow(), 'a')).toEqual({ kind: 'log', log });
		}
	});

	test('[store R1] typing goes on after a reload as the same step, and sealing replaces the open row', async () => {
		await kept(someLog());
		const loaded = await loadLog(await newWindow(), 'a');
		if (loaded.kind !== 'log') throw new Error(loaded.kind);
		const log = seal(typeInto(loaded.log, { path: ['name'], to: 'Ada Bell' }, LATER));
		expect(log.entries).toHaveLength(4);
		await kept(log);
		expect(await loadLog(await newWindow(), 'a')).toEqual({ kind: 'log', log });
		expect(await (await newWindow()).database.count('entries')).toBe(4);
	});

	test('[store R1] undo and redo go on after a reload', async () => {
		await kept(undo(someLog(), LATER));
		const loaded = await loadLog(await newWindow(), 'a');
		if (loaded.kind !== 'log') throw new Error(loaded.kind);
		expect(canRedo(loaded.log)).toBe(true);
		expect(redo(loaded.log, LATER).state).toEqual(someLog().state);
		const twice = undo(loaded.log, LATER);
		expect(twice.state).toEqual({ name: 'Ada', room: { width: 914 } });
		await kept(twice);
		expect(await loadLog(await newWindow(), 'a')).toEqual({ kind: 'log', log: twice });
	});

	test('[store R2] saves asked for all at once are kept in the order they were asked for', async () => {
		const writer = await writerOf(await newWindow(), 'a');
		let log = startLog({ name: '' }, ME);
		const saves = Array.from('a long name in one go').map((_, i, all) => {
			log = typeInto(log, { path: ['name'], to: all.slice(0, i + 1).join('') }, LATER);
			return writer.save(log, 'Ada');
		});
		expect(new Set((await Promise.all(saves)).map(({ kind }) => kind))).toEqual(new Set(['saved']));
		expect(await loadLog(await newWindow(), 'a')).toEqual({ kind: 'log', log });
	});

	test('[store R1] a case that is not there is none, and cases do not mix', async () => {
		await kept(someLog());
		const other = startLog({ name: 'Bea' }, LATER);
		for (const id of ['', 'a ', 'b']) {
			const store = await newWindow();
			expect(await loadLog(store, id)).toEqual({ kind: 'none' });
			await (await writerOf(store, id)).save(other, 'Bea');
			expect(await loadLog(store, id)).toEqual({ kind: 'log', log: other });
		}
		expect(await loadLog(await newWindow(), 'a')).toEqual({ kind: 'log', log: someLog() });
	});

	test('[store R3] one card a case, the last changed first', async () => {
		const store = await newWindow();
		await (await writerOf(store, 'a')).save(startLog({ name: 'Bea' }, ME), 'Bea');
		await (await writerOf(store, 'b')).save(someLog(), 'Ada B');
		const head = someLog().entries.at(-1)?.id;
		expect(await listCards(store)).toMatchObject({
			kind: 'cards',
			cards: [
				{ id: 'b', title: 'Ada B', seq: 3, head, changed: LATER.at },
				{ id: 'a', title: 'Bea', seq: 1, changed: ME.at }
			]
		});
	});

	test('[store R3] a removed case leaves nothing behind', async () => {
		await kept(someLog());
		const store = await newWindow();
		expect(await removeCase(store, 'a')).toEqual({ kind: 'saved' });
		expect(await loadLog(store, 'a')).toEqual({ kind: 'none' });
		expect(await listCards(store)).toEqual({ kind: 'cards', cards: [] });
		expect(await store.database.count('entries')).toBe(0);
	});
});

describe('what is not as it was kept', () => {
	test('[store R4] a write that breaks off leaves the log of before, whole', async () => {
		await kept(someLog());
		const store = await newWindow();
		fillTheDisk();
		const saved = await (await writerOf(store, 'a')).save(change(someLog(), [{ path: ['room'] }], LATER), 'Ada');
		expect(saved).toMatchObject({ kind: 'failed', why: expect.stringContaining('no room left') as unknown });
		expect(await loadLog(await newWindow(), 'a')).toEqual({ kind: 'log', log: someLog() });
	});

	test('[store R4] after a failed save the next one keeps all that is missing', async () => {
		const store = await newWindow();
		const writer = await writerOf(store, 'a');
		fillTheDisk();
		const saves = [writer.save(startLog({ name: '' }, ME), 'Ada'), writer.save(someLog(), 'Ada')];
		expect((await Promise.all(saves)).map(({ kind }) => kind)).toEqual(['failed', 'saved']);
		expect(await loadLog(await newWindow(), 'a')).toEqual({ kind: 'log', log: someLog() });
	});

	test('[store R4] what the database cannot hold fails as a value and leaves the log of before', async () => {
		await kept(someLog());
		const sealed = seal(someLog());
		const bad = { ...sealed, open: { ...ME, parents: [], act: { kind: 'base', state: () => 1 } } } as unknown as Log;
		const saved = await (await writerOf(await newWindow(), 'a')).save(bad, 'Ada');
		expect(saved).toMatchObject({ kind: 'failed', why: expect.stringContaining('DataCloneError') as unknown });
		expect(await loadLog(await newWindow(), 'a')).toEqual({ kind: 'log', log: someLog() });
	});

	test.each([
		[0, { kind: 'broken', seq: 0 }],
		[1, { kind: 'broken', seq: 1 }],
		[2, { kind: 'broken', seq: 2 }]
	] as const)('[store R5] row %s gone from the device is found', async (seq, verdict) => {
		await kept(seal(someLog()));
		const { database } = await newWindow();
		await database.delete('entries', ['a', seq]);
		expect(await loadLog(await newWindow(), 'a')).toMatchObject(verdict);
	});

	test('[store R5] the last row gone is found by the card, and what is left is given back', async () => {
		const log = seal(someLog());
		await kept(log);
		const { database } = await newWindow();
		await database.delete('entries', ['a', 3]);
		const found = await loadLog(await newWindow(), 'a');
		expect(found).toMatchObject({ kind: 'broken', seq: 3, before: { entries: log.entries.slice(0, 3) } });
	});

	test('[store R5] one altered letter is found', async () => {
		await kept(someLog());
		const { database } = await newWindow();
		const row = await database.get('entries', ['a', 1]);
		if (row === undefined) throw new Error('row 1 is missing');
		await database.put('entries', { ...row, entry: { ...row.entry, by: 'therapisT' } });
		expect(await loadLog(await newWindow(), 'a')).toMatchObject({ kind: 'broken', seq: 1 });
	});

	test('[store R5] a card without rows and rows without a card are found', async () => {
		await kept(someLog());
		const store = await newWindow();
		await store.database.delete('cards', 'a');
		expect(await loadLog(store, 'a')).toMatchObject({ kind: 'broken', before: { entries: someLog().entries } });
		await kept(startLog({}, ME));
		await store.database.clear('entries');
		expect(await loadLog(store, 'a')).toMatchObject({ kind: 'broken', seq: 0 });
	});
});

describe('two windows', () => {
	test('[store R6] the second window is read-only until the first lets go', async () => {
		const locks = someLocks();
		const [first, second] = [await newWindow(locks), await newWindow(locks)];
		const writer = await writerOf(first, 'a');
		expect(await holdCase(second, 'a')).toEqual({ kind: 'read-only' });
		expect(await removeCase(second, 'a')).toEqual({ kind: 'read-only' });
		expect((await holdCase(second, 'b')).kind).toBe('held');
		const saved = writer.save(someLog(), 'Ada');
		writer.release();
		expect((await holdCase(second, 'a')).kind).toBe('held');
		expect(await saved).toEqual({ kind: 'saved' });
		expect(await loadLog(second, 'a')).toEqual({ kind: 'log', log: someLog() });
	});

	test('[store R6] without locks the window that was overtaken is refused, and nothing kept is overwritten', async () => {
		await kept(someLog());
		const [first, second] = [await writerOf(await newWindow(), 'a'), await writerOf(await newWindow(), 'a')];
		const ahead = change(someLog(), [{ path: ['room', 'width'], to: 950 }], LATER);
		const behind = change(someLog(), [{ path: ['room', 'width'], to: 800 }], { ...LATER, by: 'somebody' });
		expect(await first.save(ahead, 'Ada')).toEqual({ kind: 'saved' });
		const overtaken = { kind: 'failed', why: expect.stringContaining('another window') as unknown };
		expect(await second.save(behind, 'Ada')).toMatchObject(overtaken);
		expect(await second.save(someLog(), 'Ada')).toMatchObject(overtaken);
		expect(await loadLog(await newWindow(), 'a')).toEqual({ kind: 'log', log: ahead });
	});

	test('[store R6] locks that the browser refuses are a failure in words', async () => {
		const request = () => Promise.reject(new DOMException('no', 'SecurityError'));
		const held = await holdCase(await newWindow({ request } as unknown as LockManager), 'a');
		expect(held).toMatchObject({ kind: 'failed', why: expect.stringContaining('private window') as unknown });
	});

	test('[store R7] a newer page can take over, and the old one then says so instead of losing words', async () => {
		const old = await newWindow();
		const writer = await writerOf(old, 'a');
		const newer = await openDB('graspline', 2);
		const taken = { kind: 'failed', why: expect.stringContaining('newer version') as unknown };
		expect(await writer.save(someLog(), 'Ada')).toMatchObject(taken);
		expect(await loadLog(old, 'a')).toMatchObject(taken);
		expect(await listCards(old)).toMatchObject(taken);
		expect(await openStore('graspline')).toMatchObject(taken);
		newer.close();
	});
});

/** The next put on any store fails as on a full disk. Source: Indexed DB API 3.0, W3C, QuotaExceededError. */
function fillTheDisk(): void {
	vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementationOnce(() => {
		throw new DOMException('full', 'QuotaExceededError');
	});
}
