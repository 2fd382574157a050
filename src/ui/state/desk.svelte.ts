import { caseOf, readCase } from '#core/case/read.ts';
import type { Case, Problem } from '#core/case/record.ts';
import { startLog } from '#core/log/log.ts';
import { openStore, type Card, type Store } from '#store/database.ts';
import { holdCase, type Writer } from '#store/hold.ts';
import { listCards, loadLog } from '#store/read.ts';
import { CaseState } from './case-state.svelte.ts';
import { nameOf } from './client.ts';
import { moment } from './clock.ts';
import { lifted } from './lifted.ts';
import { EXAMPLES } from './examples.ts';

const DATABASE = 'graspline';

/** What became of an act on the desk: done, or why not, in plain sentences. */
export type Done =
	{ readonly kind: 'done'; readonly id: string } | { readonly kind: 'not'; readonly problems: readonly Problem[] };

/** What became of opening a case. */
export type Opening =
	| { readonly kind: 'open'; readonly opened: CaseState; readonly close: () => void }
	| { readonly kind: 'not'; readonly why: string };

/** All cases of this device. */
class Desk {
	cards = $state.raw<readonly Card[]>([]);
	cases = $state.raw<Readonly<Record<string, Case>>>({});
	trouble = $state.raw<string>();
	ready = $state.raw(false);
	private store: Promise<Store | undefined> | undefined;

	/** Reads the cards; the first time on a device it lays the examples out. */
	async look(): Promise<void> {
		const store = await this.opened();
		if (!store) return;
		await this.list(store);
		if (this.cards.length === 0 && !this.trouble) await this.putExamplesBack();
		this.ready = true;
	}

	/** Puts back every example that is not on the desk. */
	async putExamplesBack(): Promise<void> {
		for (const text of EXAMPLES) {
			const read = readCase(text);
			if (read.kind === 'case' && !this.cards.some(({ id }) => id === read.case.id)) await this.add(read.case);
		}
	}

	/** Reads a file into the desk. A file with anything wrong in it changes nothing. */
	async take(text: string): Promise<Done> {
		const read = readCase(text);
		if (read.kind === 'bad') return { kind: 'not', problems: read.problems };
		return this.add({ ...read.case, id: this.freeId(read.case.id) });
	}

	/** Keeps a new case. */
	async add(c: Case): Promise<Done> {
		const store = await this.opened();
		if (!store) return not(this.trouble ?? 'This device keeps nothing.');
		const held = await holdCase(store, c.id);
		if (held.kind !== 'held') return not(held.kind === 'failed' ? held.why : 'Another window is writing this case.');
		const log = startLog(c, { at: moment(), by: 'this device' });
		const saved = await held.writer.save(log, nameOf(c));
		held.writer.release();
		if (saved.kind === 'failed') return not(saved.why);
		await this.list(store);
		return { kind: 'done', id: c.id };
	}

	/** Opens a case for writing. */
	async open(id: string): Promise<Opening> {
		const store = await this.opened();
		if (!store) return { kind: 'not', why: this.trouble ?? 'This device keeps nothing.' };
		const loaded = await loadLog(store, id);
		if (loaded.kind === 'none') return { kind: 'not', why: 'There is no such case on this device.' };
		if (loaded.kind !== 'log') return { kind: 'not', why: loaded.why };
		const held = await holdCase(store, id);
		if (held.kind === 'failed') return { kind: 'not', why: held.why };
		if (held.kind === 'read-only')
			return { kind: 'not', why: 'This case is open in another window. Close it there first.' };
		const { writer } = held;
		const opened = new CaseState(lifted(loaded.log), keeping(writer));
		return {
			kind: 'open',
			opened,
			close: () => {
				writer.release();
			}
		};
	}

	/** An id no case of this desk has. */
	freeId(wish: string): string {
		const taken = (id: string): boolean => this.cards.some((card) => card.id === id);
		if (!taken(wish)) return wish;
		let n = 2;
		while (taken(`${wish.slice(0, 36)}-${String(n)}`)) n += 1;
		return `${wish.slice(0, 36)}-${String(n)}`;
	}

	private opened(): Promise<Store | undefined> {
		this.store ??= openStore(DATABASE, navigator.locks).then((found) => {
			if (found.kind === 'store') return found.store;
			this.trouble = found.why;
			return undefined;
		});
		return this.store;
	}

	private async list(store: Store): Promise<void> {
		const listed = await listCards(store);
		if (listed.kind === 'failed') {
			this.trouble = listed.why;
			return;
		}
		const pairs = await Promise.all(listed.cards.map(async ({ id }) => [id, await caseIn(store, id)] as const));
		this.cases = Object.fromEntries(pairs.flatMap(([id, c]) => (c ? [[id, c] as const] : [])));
		this.cards = listed.cards;
	}
}

/** The one desk of this page. */
export const desk = new Desk();

async function caseIn(store: Store, id: string): Promise<Case | undefined> {
	const loaded = await loadLog(store, id);
	if (loaded.kind !== 'log') return undefined;
	const read = caseOf(loaded.log.state);
	return read.kind === 'case' ? read.case : undefined;
}

function keeping(writer: Writer): ConstructorParameters<typeof CaseState>[1] {
	return async (log) => {
		const title = nameOf(log.state as unknown as Case);
		const saved = await writer.save(log, title);
		if (saved.kind === 'failed') throw new Error(saved.why);
	};
}

function not(says: string): Done {
	return { kind: 'not', problems: [{ path: '', says }] };
}
