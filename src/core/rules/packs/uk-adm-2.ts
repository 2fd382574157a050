import type { Pack, Require, Row } from '../row.ts';

const rows: readonly Row[] = [];

const requires: readonly Require[] = [];

/** Approved Document M Volume 2. */
export const UK_ADM_2: Pack = {
	id: 'uk-adm-2',
	name: 'Approved Document M Volume 2',
	scope: { binds: '', homes: '' },
	requires,
	rows,
	judgement: ['']
};
