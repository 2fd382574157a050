import type { Side } from '#core/body/hands.ts';
import type { Case } from '#core/case/record.ts';
import type { LengthUnit } from '#core/units/length.ts';
import type { Pose } from '../body/poses.ts';
import { en } from './en.ts';
import { es } from './es.ts';
import { fr } from './fr.ts';

/** A language her sheets are written in. */
export type Language = NonNullable<Case['language']>;

/** A side of the room as she finds it: from the seat, or as she comes in where she has none. */
export type Where = `${'seat' | 'entry'}-${'ahead' | 'behind' | 'left' | 'right'}`;

/** A thing by the name it goes by at home. */
export type ThingName =
	| 'seat'
	| 'board'
	| 'tap'
	| 'temperature'
	| 'diverter'
	| 'outlet'
	| 'rest'
	| 'high-holder'
	| 'fixed-holder'
	| 'bar'
	| 'l-bar'
	| 'upright-in'
	| 'upright-out'
	| 'pole-in'
	| 'pole-out'
	| 'rail'
	| 'cord';

/** What a thing is used for, and by whom. */
export type Use =
	| 'sit'
	| 'sit-across'
	| 'run-water'
	| 'run-water-helped'
	| 'set-temperature'
	| 'set-temperature-helped'
	| 'divert'
	| 'divert-helped'
	| 'feed-hose'
	| 'rest-handset'
	| 'rest-handset-standing'
	| 'hang-handset'
	| 'fix-handset'
	| 'steady'
	| 'steady-standing'
	| 'steady-one-hand'
	| 'rise'
	| 'push-up'
	| 'sit-steady'
	| 'sit-steady-rail'
	| 'hold-ahead'
	| 'step-in'
	| 'step-out'
	| 'call';

/** With what the water is tested. */
export type Tested = 'hand' | 'left-hand' | 'right-hand' | 'same-hand' | 'thermometer';

/** Which of two bars of the same name on the same wall. */
export type Which =
	| 'higher'
	| 'lower'
	| 'longer'
	| 'shorter'
	| 'left'
	| 'right'
	| 'nearer-seat'
	| 'farther-seat'
	| 'nearer-entry'
	| 'farther-entry';

/** How many must be with her where she must not do it alone. */
export type Helped = 'one' | 'two';

/** Why a thing is not there yet. */
export type State = 'asks-wall' | 'asks' | 'later' | 'no-place';

/** What to keep in mind. */
export type Mind = 'helper-turns' | 'brakes' | 'sit-in-time' | 'one-hand-holds' | 'sit-back' | 'hold-first';

/** Something that is wrong and is to be told at once. */
export type Wrong =
	'bar-moves' | 'seat-wobbles' | 'tile-cracks' | 'water-behind' | 'suddenly-hot' | 'part-loose' | 'cord-silent';

/** How she washes until what is wanted later is fitted. */
export type Until = 'seated' | 'standing' | 'both' | 'in-chair' | 'unknown';

/** What a person may weigh. Units: whole kg, lb, and stone with pounds, each rounded down. */
export interface Weight {
	readonly kg: number;
	readonly lb: number;
	readonly stone: number;
	readonly over: number;
}

/** Every word of her sheets in one language. Blanks to write in are rows of low lines. */
export interface Messages {
	readonly pictures: {
		readonly title: string;
		readonly says: string;
		readonly keep: string;
		/** What dashed and thin lines mean; told only where there are any. */
		readonly dashed: string;
		readonly thin: string;
		readonly poses: Readonly<Record<Pose, string>>;
		readonly walls: Readonly<Record<Where, string>>;
		/** The same numbers as letters on the sheets of who fits them. */
		readonly letters: (pairs: string) => string;
	};
	readonly mind: {
		readonly title: string;
		readonly says: Readonly<Record<Mind, string>>;
		/** How the tap is reached, with a hand on a bar where she needs one. */
		readonly lean: (hold: number | 'something' | 'nothing') => string;
	};
	readonly when: { readonly title: string; readonly bars: string; readonly parts: string };
	readonly wrong: { readonly title: string; readonly says: Readonly<Record<Wrong, string>>; readonly ring: string };
	readonly load: {
		readonly title: string;
		/** Units: as people read them where a tape of this unit is used. */
		readonly says: (most: Weight, tape: LengthUnit) => string;
		readonly more: string;
		readonly table: string;
		readonly lowest: string;
		readonly unit: string;
	};
	readonly again: {
		readonly title: string;
		readonly says: (months: 6 | 12) => string;
		readonly sooner: string;
		readonly who: string;
	};
	readonly until: { readonly title: string; readonly says: Readonly<Record<Until, string>> };
	readonly notes: { readonly title: string };
	readonly choices: {
		readonly title: string;
		readonly says: string;
		readonly answers: readonly [yes: string, notThis: string, notNow: string];
		readonly states: Readonly<Record<State, string>>;
		/** She must not use it alone. */
		readonly helped: Readonly<Record<Helped, string>>;
		/** The one hand it is for. */
		readonly hand: Readonly<Record<Side, string>>;
		readonly nowhere: (names: string) => string;
	};
	readonly things: Readonly<Record<ThingName, string>>;
	/** Follows the name of a bar. */
	readonly places: Readonly<Record<Where, string>>;
	/** Follows that, or the name. */
	readonly which: Readonly<Record<Which, string>>;
	readonly uses: Readonly<Record<Use, { readonly purpose: string; readonly how: string }>>;
	readonly tests: Readonly<Record<Tested, string>>;
	readonly signing: {
		readonly says: string;
		readonly name: string;
		readonly date: string;
		readonly signed: string;
		readonly helped: string;
		readonly owner: Readonly<Record<'wanted' | 'refused', string>>;
		readonly ownerSigns: string;
	};
	readonly caseLine: (id: string, state: string) => string;
}

/** The words in every language. */
export const MESSAGES: Readonly<Record<Language, Messages>> = { en, es, fr };
