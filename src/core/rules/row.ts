import type { Kind, Purpose, SpecialPart } from '#core/case/accessory.ts';
import type { WallRole } from '#core/case/roles.ts';
import type { MeasureId } from '#core/measures/registry.ts';

/** Where a row comes from; decides its strength together with who leads. */
export type Origin = 'room' | 'body' | 'wall' | 'wish' | 'document' | 'craft';

/** How strongly a row counts, strongest first; reported rows are judged and never steer. */
export const STRENGTHS = ['must', 'should', 'prefer', 'tie-break', 'reported'] as const;

/** One of the strengths. */
export type Strength = (typeof STRENGTHS)[number];

/** A limit in the unit its document prints; `printed` is the mm the document prints beside inches. */
export interface Quantity {
	readonly n: number;
	readonly unit: 'mm' | 'in' | 'N' | 'lbf' | 'degC' | 'degF' | 'ratio';
	readonly printed?: number;
}

/** What a row allows. Both ends of a range belong to it unless `strict`. */
export type Allowed =
	| { readonly min?: Quantity; readonly max?: Quantity; readonly strict?: true }
	| 'yes'
	| 'no'
	| { readonly ask: string };

/** Facts of the case that must have one of the named values; a fact not recorded counts as `unknown`. */
export type Applies = Readonly<Partial<Record<ConditionId, readonly string[]>>>;

/** Conditions a row may name; read from the case by `applies.ts`. */
export type ConditionId =
	| 'washes'
	| 'seat'
	| 'transfer'
	| 'rises'
	| 'runsWater'
	| 'needsHold'
	| 'hipLimit'
	| 'feelsHeat'
	| 'seesBars'
	| 'sits'
	| 'rests'
	| 'helpedBy'
	| 'overlooks'
	| 'followsSteps'
	| 'skinAtRisk'
	| 'washedBelow'
	| 'seizures'
	| 'callsHelp'
	| 'scalds'
	| 'weaker'
	| 'closes'
	| 'elbow'
	| 'aid'
	| 'aidWidth'
	| 'gap'
	| 'worsens'
	| 'growing'
	| 'household'
	| 'consents'
	| 'permission'
	| 'oneHand'
	| 'lean'
	| 'type'
	| 'category'
	| 'newBuilt'
	| 'dwelling'
	| 'step'
	| 'controls'
	| 'secondOutlet'
	| 'roomBeside'
	| 'walks'
	| 'crosses'
	| 'slides'
	| 'hoisted'
	| 'helper'
	| 'chair'
	| 'approach'
	| 'section'
	| 'statement'
	| 'closing'
	| 'drain'
	| 'tiles'
	| 'readOff';

/** Where a figure was read and how: design words of the reference papers. */
interface Source {
	readonly title: string;
	readonly how: 'seen' | 'seen-2' | 'own' | 'derived' | 'judgement';
}

/** One line of a pack: a limit on one measure of the case, of one mark, or of a mark and one other. */
export interface Row {
	readonly id: string;
	readonly document: string;
	readonly edition: string;
	readonly clause: string;
	readonly source: Source;
	readonly origin: Origin;
	readonly when?: Applies;
	readonly of: Kind | 'any' | 'case';
	/** Purposes of the mark the row speaks of; all when absent. */
	readonly purposes?: readonly Purpose[];
	/** The other mark: its kind, with the walls it must be on. */
	readonly and?: Kind | 'any';
	readonly andPurposes?: readonly Purpose[];
	readonly walls?: 'same' | 'other';
	/** The row speaks of the mark only where it is on a wall that does this. */
	readonly on?: WallRole;
	/** The row speaks of a seat or a bar only where it has this shape. */
	readonly shape?: 'rectangular' | 'L';
	readonly measure: MeasureId;
	readonly allowed: Allowed;
	/** Our tolerance on an absolute value, mm. */
	readonly ourTolerance?: number;
	/** Being short by more counts as being short by this: what is not reached is no nearer for some mm. Units: mm. */
	readonly missed?: number;
	/** It is told and never steers, whoever leads: superseded, read off a drawing that does not say it, or against what keeps this person from harm. */
	readonly advice?: true;
	/** Who is to be asked, where the row asks: what it speaks of waits for the answer, nothing else does. */
	readonly whom?: string;
	/** The row in one plain sentence. */
	readonly says: string;
	readonly note?: string;
}

/** A row that asks for an accessory when its conditions hold. */
export interface Require {
	readonly id: string;
	readonly document: string;
	readonly edition: string;
	readonly clause: string;
	readonly source: Source;
	readonly when?: Applies;
	readonly kind: Kind;
	readonly purpose: Purpose;
	/** Walls it may go to, by role. */
	readonly walls: readonly WallRole[];
	/** A special part it asks for; else any usual one. */
	readonly part?: SpecialPart;
	/** Id of the accessory wanted; two rows asking for the same id ask for one thing. */
	readonly accessory: string;
	/** The row in one plain sentence. */
	readonly says: string;
}

/** What a document is law or guidance for, and how a private home stands to it, in plain words. */
interface Scope {
	/** The document in one or two words. */
	readonly short: string;
	readonly binds: string;
	readonly homes: string;
}

/** All rows of one document and edition. `judgement` is what was left to judgement, in plain words. */
export interface Pack {
	readonly id: string;
	readonly name: string;
	/** Of a document; what is ours or the person's has none. */
	readonly scope?: Scope;
	/** It holds only what differs from another pack, whose rows count with it but for those it has instead. */
	readonly differsFrom?: { readonly pack: string; readonly instead: readonly string[] };
	readonly requires: readonly Require[];
	readonly rows: readonly Row[];
	readonly judgement: readonly string[];
}

/** A row tied to marks of one plan, with its strength. `about` names accessory ids, the row's subject first. */
export interface BoundRow {
	readonly row: Row;
	readonly strength: Strength;
	/** It counts for the person as expected later; else for now. */
	readonly later?: true;
	readonly about: readonly string[];
}

/** The six answers. */
export type Answer = 'inside' | 'outside' | 'borderline' | 'unknown' | 'ask' | 'not-here';

/** What a row says about a plan. `slack` in the measure's unit, + inside; `measured` likewise. */
export interface Finding {
	readonly row: Row;
	readonly strength: Strength;
	readonly later?: true;
	readonly about: readonly string[];
	readonly answer: Answer;
	readonly measured?: number;
	readonly slack?: number;
	readonly missing?: string;
}
