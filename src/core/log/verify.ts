import { fits } from './change.ts';
import { idOf, isEntry, isOpenEntry, type Act, type Entry } from './entry.ts';
import { applyAct } from './fold.ts';
import type { Json } from './json.ts';
import type { Log } from './log.ts';

/** A history found whole, or the first entry that is not as it was sealed, why, and the history before it if there is any. */
export type Verdict =
	| { readonly kind: 'whole'; readonly log: Log }
	| { readonly kind: 'broken'; readonly seq: number; readonly id: string; readonly why: string; readonly before?: Log };

/**
 * Reads kept entries, and the open one, as a history: each id anew, each entry after the one it names, each change upon what it says it replaces.
 * Shape: a history that lacks its last entries is whole; only a head kept elsewhere tells.
 * Fails: `broken`, naming the first entry that is wrong by place and id.
 */
export function verifyLog(entries: readonly unknown[], open?: unknown): Verdict {
	const good: Entry[] = [];
	let state: Json = null;
	const broken = (found: unknown, why: string): Verdict => ({
		kind: 'broken',
		seq: good.length,
		id: isEntry(found) ? found.id : '',
		why,
		...(good.length === 0 ? {} : { before: { entries: good, state } })
	});
	for (const entry of entries) {
		if (!isEntry(entry)) return broken(entry, 'it has not the shape of an entry');
		const why = isAsSealed(entry) ? breach(good, state, entry) : 'its content is not what was sealed';
		if (why !== null) return broken(entry, why);
		state = applyAct(state, entry.act);
		good.push(entry);
	}
	if (good.length === 0) return broken(undefined, 'there is no entry');
	if (open === undefined) return { kind: 'whole', log: { entries: good, state } };
	if (!isOpenEntry(open)) return broken(open, 'it has not the shape of an open entry');
	const why = breach(good, state, open);
	return why === null
		? { kind: 'whole', log: { entries: good, open, state: applyAct(state, open.act) } }
		: broken(open, why);
}

function isAsSealed(entry: Entry): boolean {
	try {
		return idOf(entry) === entry.id;
	} catch {
		// It holds what JSON cannot, so it was never sealed.
		return false;
	}
}

/** Why an entry cannot come after the entries before it, or null when it can. */
function breach(before: readonly Entry[], state: Json, entry: { parents: readonly string[]; act: Act }): string | null {
	const head = before.slice(-1).map(({ id }) => id);
	if (entry.parents.join() !== head.join()) return 'it does not follow the entry before it';
	if (before.length === 0 && entry.act.kind !== 'base') return 'a history must begin with a whole state';
	return follows(state, entry.act) ? null : 'it does not change what stood there';
}

function follows(state: Json, act: Act): boolean {
	if (act.kind === 'base') return true;
	let now = state;
	return act.changes.every((change) => {
		const right = fits(now, change);
		if (right) now = applyAct(now, { kind: 'change', changes: [change] });
		return right;
	});
}
