import { z } from 'zod';
import { WALL_IDS } from '#core/geometry/frame.ts';
import { enclosure } from './enclosure.ts';
import { length, text } from './fact.ts';
import { person } from './person.ts';
import { readOff } from './read-off.ts';
import { REFERENCES } from './references.ts';

/** The version of the record this program writes. */
export const CASE_VERSION = 1;

const given = z.strictObject({
	wall: z.enum(WALL_IDS),
	variant: text(40),
	x: length(0, 4000),
	y: length(-3000, 4000),
	turn: z.literal(0).default(0),
	stage: z.enum(['pinned', 'tried', 'adopted', 'marked', 'built'])
});

const record = z.strictObject({
	schema: z.literal('graspline-case'),
	version: z.literal(CASE_VERSION),
	id: z.string().regex(/^[a-z0-9][a-z0-9-]{0,39}$/, 'small letters, digits and hyphens'),
	/** The tape of the house: unit, and the step marks are set out in, mm. */
	tape: z.strictObject({ unit: z.enum(['mm', 'in']), step: length(1, 50) }),
	/** The language of her own sheets; English when left out. */
	language: z.enum(['en', 'es', 'fr']).optional(),
	lead: z.enum(['person-led', 'reference-led']),
	/** The chosen document, or none; ids of packs. */
	reference: z.enum(REFERENCES).nullable(),
	people: z
		.record(text(40), person)
		.refine((p) => Object.values(p).filter((one) => one.role === 'client').length === 1, 'exactly one client'),
	enclosure,
	/** Places that are given: judged, never moved. By accessory id. */
	places: z.record(text(40), given).default({}),
	/** Real parts that were read off, by accessory id: they take the place of generic ones. */
	parts: z.record(text(40), readOff).default({}),
	/** Rows outside of which was accepted, by `row/accessory`, with the reason. */
	departures: z
		.record(text(120), z.strictObject({ reason: text(400).regex(/\S/, 'words, not spaces alone'), by: text(80) }))
		.default({})
});

/** One case: what was measured and chosen, never a result. Shape: as read by `readCase`. */
export type Case = z.output<typeof record>;
/** One person of a case. */
export type Person = Case['people'][string];
/** The enclosure as surveyed. */
export type Enclosure = Case['enclosure'];
/** One wall as surveyed. */
export type Wall = Enclosure['walls']['back'];

/** One thing wrong with a record. `path` names the field with dots, `says` what was seen and what was expected. */
export interface Problem {
	readonly path: string;
	readonly says: string;
}

/** What reading a record gives: the case, or every problem found. */
export type Loaded =
	{ readonly kind: 'case'; readonly case: Case } | { readonly kind: 'bad'; readonly problems: readonly Problem[] };

export { record as caseSchema };
