import type { How } from '#core/case/fact.ts';
import type { Case } from '#core/case/record.ts';
import { valueAt, type Edit } from '#core/log/change.ts';
import type { Json } from '#core/log/json.ts';
import { canRedo, canUndo, change, redo, seal, typeInto, undo, type Log } from '#core/log/log.ts';
import type { LengthUnit } from '#core/units/length.ts';
import type { Tape } from '#core/units/format.ts';
import type { Reading } from '#ui/fields/quantity.ts';
import type { FieldPath, Whole } from '#ui/fields/spec.ts';
import { begunAt, homeOf, partsBegun, togetherWith, without, withPart, type Begun, type NewForm } from './begun.ts';
import { clientOf, nameOf, type Named } from './client.ts';
import { clockOf, moment } from './clock.ts';
import { housed } from './housed.ts';
import { limitAt, refusalAt } from './refusal.ts';
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
	readonly show: Show;
	readonly needed: boolean;
	readonly whole?: Whole | undefined;
}

/** How a limit is said. */
type Show = (n: number) => string;

/** Where a history is kept; told after every change of it. */
export type Keep = (log: Log) => Promise<void>;

const REST = 1000;

/** One open case: its history, what is being typed, and what could not be taken. */
export class CaseState {
	drafts = $state.raw<Readonly<Record<string, Draft>>>({});
	private begun = $state.raw<Begun>({});
	private forms = $state.raw<Readonly<Record<string, NewForm>>>({});
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

	/** The same, or what is begun there and not whole yet. */
	seen(path: FieldPath): Json | undefined {
		const there = this.at(path);
		return there === undefined ? begunAt(this.begun, path) : there;
	}

	draftAt(path: FieldPath): Draft | undefined {
		return this.drafts[path.join('.')];
	}

	/** At each input event: what can be taken is kept at once as the open entry; what cannot stays as it was typed. */
	enter({ path, text, reading, kept, show, needed, whole }: Entering): void {
		if (reading.kind === 'refused') {
			if (whole) this.begun = withPart(this.begun, { path }, whole.path);
			this.refuse(path, text, reading.why);
			return;
		}
		const edit = reading.kind === 'empty' ? { path } : { path, to: kept(reading.value) };
		this.typed(edit, { text, show, needed, whole });
	}

	/** The same for words. */
	enterWords(path: FieldPath, text: string, { needed, whole }: Pick<Entering, 'needed' | 'whole'>): void {
		this.typed(text.trim() === '' ? { path } : { path, to: text }, { text, show: String, needed, whole });
	}

	/** A finished act, kept as one step. Gives why it cannot be, or null. */
	act(edits: readonly Edit[]): string | null {
		const why = this.whyNot(edits, edits[0]?.path ?? [], String);
		if (why !== null) return why;
		for (const { path, to } of edits) {
			this.forget(path);
			if (to === undefined) this.leave(path);
		}
		this.take(change(this.log, this.housed(edits), meta()));
		return null;
	}

	/** The same for a part of what may not be whole yet. */
	actPart(edits: readonly [Edit, ...Edit[]], whole: Whole): string | null {
		if (this.at(whole.path) !== undefined) return this.act(edits);
		const why = this.typePart(edits[0], whole, String);
		// Whatever else mends it takes the reason away.
		if (why !== null) this.refuse(edits[0].path, '', why);
		this.seal();
		return why;
	}

	/** Why one part of a new thing could not stand in the record, whatever is missing beside it; or null. */
	limitOf(path: FieldPath, thing: Readonly<Record<string, Json>>, show: Show): string | null {
		return limitAt(this.changed([{ path: homeOf(path), to: thing }]), path, show);
	}

	/** The new thing that is filled in for a table, by the name of that; or undefined. */
	formOf(table: string): NewForm | undefined {
		return this.forms[table];
	}

	/** Goes on with a new thing, or leaves it. */
	fill(table: string, form: NewForm | undefined): void {
		const rest = Object.entries(this.forms).filter(([key]) => key !== table);
		this.forms = Object.fromEntries(form ? [...rest, [table, form] as const] : rest);
	}

	/** Drops what is begun of a thing, and what was typed there and could not be taken. */
	leave(path: FieldPath): void {
		this.begun = without(this.begun, path);
		const below = `${path.join('.')}.`;
		this.drafts = Object.fromEntries(Object.entries(this.drafts).filter(([key]) => !key.startsWith(below)));
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

	private typed(edit: Edit, { text, show, needed, whole }: Omit<Entering, 'path' | 'reading' | 'kept'>): void {
		const { path, to } = edit;
		const held = whole === undefined || this.at(whole.path) !== undefined;
		if (to === undefined && needed && held) {
			this.refuse(path, text, 'The plan cannot be without this one.');
			return;
		}
		const why = whole ? this.typePart(edit, whole, show) : this.whyNot([edit], path, show);
		if (why !== null) this.refuse(path, text, why);
		else if (!whole) this.type(edit);
	}

	/** Takes a part of a thing: alone where the thing is recorded, with all of it where it is whole now, else as begun. */
	private typePart(edit: Edit, whole: Whole, show: Show): string | null {
		const home = whole.path;
		const recorded = this.at(home);
		const all = togetherWith(edit, { recorded, begun: this.begun, whole });
		if (recorded === undefined) {
			const beyond = limitAt(this.changed([all]), edit.path, show);
			this.begun = withPart(this.begun, beyond === null ? edit : { path: edit.path }, home);
			if (beyond !== null) return beyond;
			for (const part of partsBegun(this.begun, home)) this.forget(part);
			if (whole.needs.some((part) => valueAt(all.to, part) === undefined)) return null;
		}
		// While the thing itself is what is being typed it stays one step.
		const one = recorded === undefined || this.isTyping(home) ? all : edit;
		const why = this.whyNot([one], edit.path, show);
		if (why !== null) return why;
		this.forget(edit.path);
		this.begun = without(this.begun, home);
		this.type(one);
		return null;
	}

	private isTyping(path: FieldPath): boolean {
		const act = this.log.open?.act;
		return act?.kind === 'change' && act.changes[0]?.path.join('.') === path.join('.');
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

	private whyNot(edits: readonly Edit[], path: FieldPath, show: Show): string | null {
		return refusalAt(this.changed(edits), path, show);
	}

	private changed(edits: readonly Edit[]): Json {
		return change(this.log, this.housed(edits), meta()).state;
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
