import type { Pack, Require, Row } from '../row.ts';

const rows: readonly Row[] = [];

const requires: readonly Require[] = [];

/** Approved Document M Volume 1. */
export const UK_ADM_1: Pack = {
	id: 'uk-adm-1',
	name: 'Approved Document M Volume 1',
	scope: { binds: '', homes: '' },
	requires,
	rows,
	judgement: ['']
};
