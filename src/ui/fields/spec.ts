import type { How } from '#core/case/fact.ts';
import type { Edit } from '#core/log/change.ts';
import type { Json } from '#core/log/json.ts';
import type { Quantity } from './quantity.ts';

/** Where a field stands in the record. */
export type FieldPath = readonly string[];

/** What every field says of itself. `plain` values stand in the record without how they are known. */
interface Named {
	readonly label: string;
	readonly path: FieldPath;
	readonly plain?: true;
	/** The record cannot be without it. */
	readonly needed?: true;
	/** How it is known when somebody enters it; measured when not told. */
	readonly how?: How;
	/** What it is a part of, where the record holds that only whole. */
	readonly whole?: Whole;
}

/** Facts the record holds all at once or not at all. */
export interface Whole {
	/** Where it stands. */
	readonly path: FieldPath;
	/** The parts it cannot be without, from there. */
	readonly needs: readonly FieldPath[];
	/** What it begins with beside its parts. */
	readonly fixed: Readonly<Record<string, Json>>;
}

/** A number with a unit. `dimension` names the estimate shown while it is not measured. */
export interface NumberField extends Named {
	readonly kind: 'number';
	readonly quantity: Quantity;
	readonly dimension?: string;
	/** It may lie below zero: a height from the datum line. */
	readonly signed?: true;
	/** Where the number stands inside a fact whose value is more than the number, and what it becomes part of. */
	readonly within?: { readonly key: string; readonly wrap: (n: number) => Json };
}

/** One of a few words. */
export interface ChoiceField extends Named {
	readonly kind: 'choice';
	readonly choices: readonly Choice[];
	/** What else changes in the same act, by the value that is chosen. */
	readonly along?: Readonly<Record<string, readonly Edit[]>>;
}

/** One word of a choice; `value` is what the record keeps, null where that is none. */
export interface Choice {
	readonly value: string | boolean | number | null;
	readonly label: string;
	/** What a cell says of it where the label would be too long; empty where it says nothing. */
	readonly short?: string;
}

/** A few words, as they were typed. */
interface WordsField extends Named {
	readonly kind: 'words';
	readonly most: number;
}

/** How the trunk leans: a word, and how far. */
export interface LeanField extends Named {
	readonly kind: 'lean';
}

/** One field of the record. */
export type Field = NumberField | ChoiceField | WordsField | LeanField;

/** One cell of a grid of numbers: a label and one field, or two that are said in one breath. */
export interface Cell {
	readonly id: string;
	readonly label: string;
	readonly fields: readonly Field[];
	/** What to look at or where to hold the tape, in one sentence. */
	readonly hint: string;
	/** How many of its fields, from the first, it shows on its face; all when not told. */
	readonly faced?: number;
	/** What stands between the figures on its face; a times sign when not told. */
	readonly between?: string;
	/** Where its fields are kept all at once or not at all, and what says how they are known. */
	readonly whole?: { readonly path: FieldPath; readonly known: WholeKnown };
}

/** How a whole says it is known: kept with it, each of its parts by itself, or always the same. */
export type WholeKnown = 'kept' | 'each' | 'measured' | 'declared' | 'assumed' | 'chosen';

/** A field below a place of the record. */
export function rooted<F extends Field>(field: F, at: FieldPath): F {
	return { ...field, path: [...at, ...field.path] };
}
