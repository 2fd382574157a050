import type { How } from '#core/case/fact.ts';
import type { Case } from '#core/case/record.ts';
import { valueAt, type Edit } from '#core/log/change.ts';
import type { Json } from '#core/log/json.ts';
import { canRedo, canUndo, change, redo, seal, typeInto, undo, type Log } from '#core/log/log.ts';
import type { LengthUnit } from '#core/units/length.ts';
import type { Tape } from '#core/units/format.ts';
import type { Reading } from '#ui/fields/quantity.ts';
import type { FieldPath } from '#ui/fields/spec.ts';
import { clientOf, nameOf, type Named } from './client.ts';
import { clockOf, moment } from './clock.ts';
import { housed } from './housed.ts';
import { refusalAt } from './refusal.ts';
import { settings } from './settings.svelte.ts';

/** What was typed and could not be taken, and why. */
export interface Draft {
	readonly text: string;
	readonly why: string;
}

/** How what was typed becomes what the record keeps. */
export interface Entering {
	readonly path: FieldPath;
	readonly text: string;
	readonly reading: Reading;
	/** The value to keep for the number that was read. */
	readonly kept: (n: number) => Json;
	readonly show: (n: number) => string;
	readonly needed: boolean;
}

/** Where a history is kept; told after every change of it. */
export type Keep = (log: Log) => Promise<void>;

const REST = 1000;

/** One open case: its history, what is being typed, and what could not be taken. */
export class CaseState {
	drafts = $state.raw<Readonly<Record<string, Draft>>>({});
	private log = $state.raw<Log>() as Log;
	/** When it was last kept, as a clock says it. */
	private keptAt = $state.raw(clockOf(moment()));
	private keeping = $state.raw<'kept' | 'keeping' | 'failed'>('kept');
	private resting: ReturnType<typeof setTimeout> | undefined;
	private readonly keep: Keep;

	readonly case = $derived(this.log.state as unknown as Case);
	readonly client: Named = $derived(clientOf(this.case));
	readonly name = $derived(nameOf(this.case));
	readonly canUndo = $derived(canUndo(this.log));
	readonly canRedo = $derived(canRedo(this.log));
	/** The tape lengths are shown on: the reader's wish, else the house's own. */
	readonly tape: Tape = $derived({ unit: settings.shownUnit ?? this.case.tape.unit });
	readonly keptWords = $derived(this.wordsOfKeeping());

	constructor(log: Log, keep: Keep) {
		this.log = log;
		this.keep = keep;
	}

	/** The value at a path of the case, or undefined. */
	at(path: FieldPath): Json | undefined {
		return valueAt(this.log.state, path);
	}

	draftAt(path: FieldPath): Draft | undefined {
		return this.drafts[path.join('.')];
	}

	/** At each input event: what can be taken is kept at once as the open entry; what cannot stays as it was typed. */
	enter({ path, text, reading, kept, show, needed }: Entering): void {
		if (reading.kind === 'refused') {
			this.refuse(path, text, reading.why);
			return;
		}
		if (reading.kind === 'empty' && needed) {
			this.refuse(path, text, 'The plan cannot be without this one.');
			return;
		}
		const edit = reading.kind === 'empty' ? { path } : { path, to: kept(reading.value) };
		const why = this.whyNot([edit], path, show);
		if (why === null) this.type(edit);
		else this.refuse(path, text, why);
	}

	/** The same for words. */
	enterWords(path: FieldPath, text: string, optional: boolean): void {
		if (text.trim() !== '') {
			this.type({ path, to: text });
			return;
		}
		if (optional) this.type({ path });
		else this.refuse(path, text, 'The record cannot be without these words.');
	}

	/** A finished act, kept as one step. Gives why it cannot be, or null. */
	act(edits: readonly Edit[]): string | null {
		const why = this.whyNot(edits, edits[0]?.path ?? [], String);
		if (why !== null) return why;
		for (const { path } of edits) this.forget(path);
		this.take(change(this.log, this.housed(edits), meta()));
		return null;
	}

	/** How a fact is known, said after it was entered. */
	setHow(path: FieldPath, how: How): void {
		const fact = this.at(path);
		if (typeof fact === 'object' && fact !== null) this.act([{ path: [...path, 'how'], to: how }]);
	}

	/** On leaving a field, and after a second of rest. */
	seal(): void {
		clearTimeout(this.resting);
		this.take(seal(this.log));
	}

	undo(): void {
		this.drafts = {};
		this.take(undo(this.log, meta()));
	}

	redo(): void {
		this.drafts = {};
		this.take(redo(this.log, meta()));
	}

	showIn(unit: LengthUnit): void {
		settings.shownUnit = unit;
	}

	private housed(edits: readonly Edit[]): readonly Edit[] {
		return edits.map((edit) => housed(this.log.state, edit));
	}

	private type(edit: Edit): void {
		this.forget(edit.path);
		this.take(typeInto(this.log, housed(this.log.state, edit), meta()));
		clearTimeout(this.resting);
		this.resting = setTimeout(() => {
			this.seal();
		}, REST);
	}

	private take(log: Log): void {
		if (log === this.log) return;
		this.log = log;
		this.keeping = 'keeping';
		this.keep(log).then(
			() => {
				if (this.log !== log) return;
				this.keptAt = clockOf(moment());
				this.keeping = 'kept';
			},
			() => {
				this.keeping = 'failed';
			}
		);
	}

	private whyNot(edits: readonly Edit[], path: FieldPath, show: (n: number) => string): string | null {
		return refusalAt(change(this.log, this.housed(edits), meta()).state, path, show);
	}

	private refuse(path: FieldPath, text: string, why: string): void {
		this.drafts = { ...this.drafts, [path.join('.')]: { text, why } };
	}

	private forget(path: FieldPath): void {
		const gone = path.join('.');
		if (gone in this.drafts) {
			this.drafts = Object.fromEntries(Object.entries(this.drafts).filter(([key]) => key !== gone));
		}
	}

	private wordsOfKeeping(): string {
		if (this.keeping === 'failed') return 'not kept: this device refuses';
		return `kept ${this.keptAt}`;
	}
}

function meta(): { at: string; by: string } {
	return { at: moment(), by: 'this device' };
}
