import type { Reference } from '#core/case/references.ts';
import { DOCUMENTS } from '#core/rules/packs/index.ts';

/** Where a figure comes from: a document, what the person can, or what is easier for her. */
export type SourceId = Reference | 'body' | 'wish';

/** Whether a source is a document, not the person. */
export const isDocument = (source: SourceId): source is Reference => source !== 'body' && source !== 'wish';

const NAMES = new Map<string, string>([
	...DOCUMENTS.map(({ id, scope }) => [id, scope?.short ?? id] as const),
	['body', 'The person'],
	['wish', 'With ease']
]);

/** A source in one or two words. */
export const nameOf = (source: SourceId): string => NAMES.get(source) ?? source;
