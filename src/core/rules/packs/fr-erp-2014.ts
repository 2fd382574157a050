import type { Pack, Require, Row } from '../row.ts';

const rows: readonly Row[] = [];

const requires: readonly Require[] = [];

/** France, order of 8 December 2014. */
export const FR_ERP_2014: Pack = {
	id: 'fr-erp-2014',
	name: 'France, order of 8 December 2014',
	scope: { binds: '', homes: '' },
	requires,
	rows,
	judgement: ['']
};
