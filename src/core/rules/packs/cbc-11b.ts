import type { Pack, Require, Row } from '../row.ts';

const rows: readonly Row[] = [];

const requires: readonly Require[] = [];

/** California Building Code 11B. */
export const CBC_11B: Pack = {
	id: 'cbc-11b',
	name: 'California Building Code 11B',
	scope: { binds: '', homes: '' },
	differsFrom: { pack: 'ada-2010', instead: [] },
	requires,
	rows,
	judgement: ['']
};
