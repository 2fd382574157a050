import type { Pack, Require, Row } from '../row.ts';

const rows: readonly Row[] = [];

const requires: readonly Require[] = [];

/** British Columbia Building Code 3.8.3.17. */
export const BC_BCBC_2024: Pack = {
	id: 'bc-bcbc-2024',
	name: 'British Columbia Building Code 3.8.3.17',
	scope: { binds: '', homes: '' },
	requires,
	rows,
	judgement: ['']
};
