import type { Body } from '#core/body/body.ts';
import type { Accessory, Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import type { Vec } from '#core/geometry/vec.ts';
import type { Room } from '#core/enclosure/room.ts';
import type { Reach } from '#core/reach/reach.ts';
import type { Holds } from '#core/structure/carrying.ts';

/** All a measure may see besides the marks: people, arms and walls, before anything has a place. */
export interface Scene {
	readonly c: Case;
	readonly bodies: Readonly<Record<string, Body>>;
	readonly arms: Readonly<Record<string, Reach>>;
	readonly room: Room;
	readonly holds: Holds;
	/** The same room with the person as expected later; none when nothing is to be otherwise. */
	readonly later?: Scene;
}

/** Why a quantity cannot be told: the fact that is missing, as a question in plain words. */
export interface Missing {
	readonly missing: string;
}

/**
 * What a measure gives: a number, a number between two bounds because something is not known, or nothing.
 * Shape: `best` is the value most favourable to the row, `sure` the least; a row inside at `sure` is inside, outside at
 * `best` is outside, in between it is unknown and `missing` says what to ask.
 */
export type Reading = number | Between | Missing;

/** A number between two bounds, and what would close them. */
export interface Between {
	readonly best: number;
	readonly sure: number;
	readonly missing: string;
}

interface Quantified {
	/** One line: what is measured, from where to where, and its sign. */
	readonly what: string;
	readonly unit: 'mm' | 'N' | 'degC' | 'ratio' | 'yes';
	/** 1: changes at most by the distance a mark moves along each axis; 0: depends on wall and part only. */
	readonly slope: 0 | 1;
	/** The one axis of its wall along which a mark changes it; the other changes it by a tenth at most, as floors fall. */
	readonly along?: 'x' | 'y';
}

/** A quantity rows may ask of a scene. Yes/no measures give 1 or 0. */
export type Measure = Quantified &
	(
		| { readonly about: 'case'; readonly of: (s: Scene, wanted: readonly Accessory[]) => Reading }
		| { readonly about: 'mark'; readonly of: (s: Scene, a: Mark) => Reading }
		| {
				readonly about: 'pair';
				readonly of: (s: Scene, a: Mark, b: Mark) => Reading;
				/** No less than what `of` gives while each mark lies up to its spread from there, along each axis of the plan. */
				readonly over?: (s: Scene, a: Mark, b: Mark, spreads: readonly [Vec, Vec]) => Reading;
		  }
	);
