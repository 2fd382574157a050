import type { Mark } from '#core/case/accessory.ts';
import type { Case } from '#core/case/record.ts';
import { REFERENCES, type Reference } from '#core/case/references.ts';
import { applies } from '#core/rules/applies.ts';
import { toleranceOf } from '#core/rules/limit.ts';
import { DOCUMENTS } from '#core/rules/packs/index.ts';
import type { Pack, Require, Row } from '#core/rules/row.ts';

/** What a document is, and what it asks for that a plan does not have. */
export interface DocumentSays {
	readonly id: Reference;
	readonly name: string;
	/** What it binds, and how a private home stands to it. */
	readonly binds: string;
	readonly homes: string;
	readonly chosen: boolean;
	/** The document whose rows count with it where it has no other. */
	readonly as?: Reference;
	/** Ours, on what it prints as a single value. Units: mm. */
	readonly tolerance?: number;
	/** What it asks for that is not among the marks: a plain sentence with its clause each. */
	readonly lacks: readonly string[];
}

/** A document with its pack, and the one it differs from. */
interface Speaking {
	readonly id: Reference;
	readonly pack: Pack;
	readonly base?: { readonly id: Reference; readonly instead: readonly string[] };
}

const isReference = (id: string): id is Reference => (REFERENCES as readonly string[]).includes(id);

/** The documents in the order they are compared in. */
export const SPEAKING: readonly Speaking[] = DOCUMENTS.flatMap((pack): readonly Speaking[] => {
	const { id, differsFrom } = pack;
	if (!isReference(id)) return [];
	if (!differsFrom || !isReference(differsFrom.pack)) return [{ id, pack }];
	return [{ id, pack, base: { id: differsFrom.pack, instead: differsFrom.instead } }];
});

const documents = new Map(DOCUMENTS.flatMap(({ id, rows }) => rows.map((row) => [row.id, id] as const)));

/** The id of the document a row is of; undefined of what is ours or the person's. */
export const documentOf = ({ id }: Row): string | undefined => documents.get(id);

/** What every document says of itself and of what a plan is without. */
export const documentsOf = (c: Case, marks: readonly Mark[]): readonly DocumentSays[] =>
	SPEAKING.map((speaking) => {
		const { id, pack, base } = speaking;
		const tolerance = toleranceOf(pack);
		const missing = requiresOf(speaking).filter(
			(one) => applies(one.when, c) && !marks.some((mark) => isOf(one, mark))
		);
		return {
			id,
			name: pack.name,
			binds: pack.scope?.binds ?? '',
			homes: pack.scope?.homes ?? '',
			chosen: c.reference === id,
			...(base && { as: base.id }),
			...(tolerance !== undefined && { tolerance }),
			lacks: [...new Set(missing.map(({ says, clause }) => `${says} (${clause})`))]
		};
	});

/** What a document asks for, and what it takes over. */
function requiresOf({ pack, base }: Speaking): readonly Require[] {
	const taken =
		base && DOCUMENTS.find(({ id }) => id === base.id)?.requires.filter(({ id }) => !base.instead.includes(id));
	return [...pack.requires, ...(taken ?? [])];
}

/** Whether a mark is what a row asks for, of the special part it asks for. */
const isOf = ({ accessory, part }: Require, { accessory: { id }, variant }: Mark): boolean =>
	id === accessory && (part === undefined || variant.special === part);
