import { canonical } from './canonical.ts';
import { changeFor, inverse, type Change, type Edit } from './change.ts';
import { sealed, type Act, type Entry, type Meta, type OpenEntry } from './entry.ts';
import { applyAct } from './fold.ts';
import { same, type Json } from './json.ts';

/** A history: the kept entries, the one still being typed if there is one, and the state they lead to. */
export interface Log {
	readonly entries: readonly Entry[];
	readonly open?: OpenEntry;
	readonly state: Json;
}

/**
 * A new history that begins with a whole state.
 * Fails: TypeError when the state holds what JSON cannot.
 */
export function startLog(state: unknown, meta: Meta): Log {
	// Sealing refuses all that is not JSON, so that here the word can be taken for it.
	return append({ entries: [], state: null }, { kind: 'base', state: state as Json }, meta);
}

/**
 * The history while somebody types at one path: the open entry is overwritten, or begun after the one before is sealed.
 * Shape: typing back what stood there leaves no entry.
 * Fails: TypeError when the value is not JSON; RangeError when no object holds the path.
 */
export function typeInto(log: Log, edit: Edit, meta: Meta): Log {
	canonical(edit.to ?? null); // What is not JSON is refused before it is kept, not when it is sealed.
	const on = isTypedAt(log.open, edit, meta) ? withoutOpen(log) : seal(log);
	const changes = changesFor(on.state, [edit]);
	return changes.length === 0 ? on : opened(on, { kind: 'change', changes }, meta);
}

/**
 * The history after a finished act of one or several edits, kept at once as one step; no entry when nothing changes.
 * Fails: as `typeInto`.
 */
export function change(log: Log, edits: readonly Edit[], meta: Meta): Log {
	const on = seal(log);
	const after = append(on, { kind: 'change', changes: changesFor(on.state, edits) }, meta);
	return same(on.state, after.state) ? on : after;
}

/**
 * The history with another whole state laid on it, as when a record is lifted to what this program reads; nothing before is
 * rewritten, and nothing is undone past it. Shape: unchanged when the state is the same.
 * Fails: TypeError when the state holds what JSON cannot.
 */
export function layDown(log: Log, state: unknown, meta: Meta): Log {
	const on = seal(log);
	return same(on.state, state as Json) ? on : append(on, { kind: 'base', state: state as Json }, meta);
}

/** The history with its open entry kept: to be called on leaving the field, after a second of rest, and before any other act. */
export function seal(log: Log): Log {
	if (log.open === undefined) return log;
	return { entries: [...log.entries, sealed(log.open)], state: log.state };
}

/** The history after the last step not yet undone is taken back, by an entry of its own; unchanged when there is none. */
export function undo(log: Log, meta: Meta): Log {
	const on = seal(log);
	return takeBack(on, stepsOf(on.entries).done.at(-1), meta);
}

/** The history after the last undo is taken back; unchanged when something was done since, or there is none. */
export function redo(log: Log, meta: Meta): Log {
	const on = seal(log);
	return takeBack(on, stepsOf(on.entries).undone.at(-1), meta);
}

/** Whether there is a step to undo. */
export function canUndo(log: Log): boolean {
	return log.open !== undefined || stepsOf(log.entries).done.length > 0;
}

/** Whether there is an undo to take back. */
export function canRedo(log: Log): boolean {
	return log.open === undefined && stepsOf(log.entries).undone.length > 0;
}

interface Step {
	readonly id: string;
	readonly changes: readonly Change[];
}

/** The steps that can be undone and the undos that can be redone, the latest last. A new base cannot be undone. */
function stepsOf(entries: readonly Entry[]): { done: Step[]; undone: Step[] } {
	const done: Step[] = [];
	const undone: Step[] = [];
	for (const { id, act } of entries) {
		if (act.kind === 'base') done.length = undone.length = 0;
		else if (act.undoes === undefined) {
			// A new step: what was undone before it stays undone.
			undone.length = 0;
			done.push({ id, changes: act.changes });
		} else if (act.undoes === done.at(-1)?.id) {
			done.pop();
			undone.push({ id, changes: act.changes });
		} else {
			// It takes back an undo, so it stands as the step it brings back.
			undone.pop();
			done.push({ id, changes: act.changes });
		}
	}
	return { done, undone };
}

function takeBack(log: Log, step: Step | undefined, meta: Meta): Log {
	if (step === undefined) return log;
	return append(log, { kind: 'change', changes: step.changes.map(inverse).reverse(), undoes: step.id }, meta);
}

function append(log: Log, act: Act, meta: Meta): Log {
	return seal(opened(log, act, meta));
}

function opened({ entries, state }: Log, act: Act, { at, by }: Meta): Log {
	return {
		entries,
		open: { parents: entries.slice(-1).map(({ id }) => id), at, by, act },
		state: applyAct(state, act)
	};
}

function withoutOpen({ entries, open, state }: Log): Log {
	const { act } = open ?? {};
	const changes = act?.kind === 'change' ? act.changes.map(inverse).reverse() : [];
	return { entries, state: applyAct(state, { kind: 'change', changes }) };
}

function isTypedAt(open: OpenEntry | undefined, { path }: Edit, { by }: Meta): boolean {
	return open?.by === by && open.act.kind === 'change' && same(open.act.changes[0]?.path, path);
}

/** The changes the edits make, one after the other, without those that change nothing. */
function changesFor(state: Json, edits: readonly Edit[]): readonly Change[] {
	let now = state;
	return edits.flatMap((edit) => {
		const made = changeFor(now, edit);
		if (same(made.from, made.to)) return [];
		now = applyAct(now, { kind: 'change', changes: [made] });
		return [made];
	});
}
