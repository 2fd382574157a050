import type { Pack, Require, Row } from '../row.ts';

const rows: readonly Row[] = [];

const requires: readonly Require[] = [];

/** Ontario Building Code 3.8.3.13. */
export const ON_OBC_2012: Pack = {
	id: 'on-obc-2012',
	name: 'Ontario Building Code 3.8.3.13',
	scope: { binds: '', homes: '' },
	requires,
	rows,
	judgement: ['']
};
