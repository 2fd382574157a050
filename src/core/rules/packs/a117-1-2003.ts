import type { Pack, Require, Row } from '../row.ts';

const rows: readonly Row[] = [];

const requires: readonly Require[] = [];

/** ICC A117.1-2003. */
export const A117_1_2003: Pack = {
	id: 'a117-1-2003',
	name: 'ICC A117.1-2003',
	scope: { binds: '', homes: '' },
	differsFrom: { pack: 'ada-2010', instead: [] },
	requires,
	rows,
	judgement: ['']
};
