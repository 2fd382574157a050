import type { Reference } from '#core/case/references.ts';

/** Where a figure comes from: a document, what the person can, or what is easier for her. */
export type SourceId = Reference | 'body' | 'wish';

/** Whether a source is a document, not the person. */
export const isDocument = (source: SourceId): source is Reference => source !== 'body' && source !== 'wish';

const NAMES: Readonly<Record<SourceId, string>> = {
	'ada-2010': 'ADA 2010',
	'a117-1-2003': 'A117.1 2003',
	'cbc-11b': 'California 11B',
	'on-obc-2012': 'Ontario',
	'bc-bcbc-2024': 'British Columbia',
	'uk-adm-2': 'England M 2',
	'uk-adm-1': 'England M 1',
	'fr-erp-2014': 'France',
	body: 'The person',
	wish: 'With ease'
};

/** A source in one or two words. */
export const nameOf = (source: SourceId): string => NAMES[source];
