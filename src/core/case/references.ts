/** Ids of the packs of documents, one of which may be the chosen reference; in the order they are compared in. */
export const REFERENCES = [
	'ada-2010',
	'a117-1-2003',
	'cbc-11b',
	'on-obc-2012',
	'bc-bcbc-2024',
	'uk-adm-2',
	'uk-adm-1',
	'fr-erp-2014'
] as const;

/** The id of a document. */
export type Reference = (typeof REFERENCES)[number];
